//! What a browser asks for.

use std::io::{BufRead, Error, ErrorKind, Read, Result};

/// The longest request head we read, in bytes.
const LONGEST: u64 = 16 * 1024;

/// The parts of a request that decide the reply.
#[derive(Debug, Default, PartialEq)]
pub(crate) struct Request {
    pub(crate) method: String,
    /// The path alone, without a query.
    pub(crate) path: String,
    /// The tag of the copy the browser already has.
    pub(crate) known_tag: Option<String>,
    pub(crate) takes_brotli: bool,
    /// Whether the browser hangs up after this reply.
    pub(crate) last: bool,
}

impl Request {
    /// The next request of a conversation, or nothing once the browser has hung up.
    pub(crate) fn read(reader: &mut impl BufRead) -> Result<Option<Self>> {
        let mut head = reader.take(LONGEST);
        let mut line = String::new();
        if head.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        let mut words = line.split_ascii_whitespace();
        let (Some(method), Some(target), Some(protocol)) =
            (words.next(), words.next(), words.next())
        else {
            return Err(Error::new(ErrorKind::InvalidData, "not a request"));
        };
        let mut request = Self {
            method: method.to_owned(),
            path: target.split(['?', '#']).next().unwrap_or_default().to_owned(),
            last: protocol == "HTTP/1.0",
            ..Self::default()
        };
        loop {
            line.clear();
            if head.read_line(&mut line)? == 0 {
                return Err(Error::new(ErrorKind::UnexpectedEof, "the request breaks off"));
            }
            let Some((name, value)) = line.split_once(':') else {
                return Ok(Some(request));
            };
            request.note(&name.to_ascii_lowercase(), value.trim());
        }
    }

    fn note(&mut self, name: &str, value: &str) {
        match name {
            "if-none-match" => self.known_tag = Some(value.to_owned()),
            "accept-encoding" => {
                let mut codings = value.split(',').map(|coding| coding.trim());
                self.takes_brotli = codings.any(|coding| coding.split(';').next() == Some("br"));
            }
            "connection" => self.last = value.eq_ignore_ascii_case("close"),
            _ => {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Request;

    fn read(text: &str) -> std::io::Result<Option<Request>> {
        Request::read(&mut text.as_bytes())
    }

    #[test]
    fn the_deciding_parts_are_read() {
        let text = "GET /a/b.js?v=1 HTTP/1.1\r\nHost: x\r\nAccept-Encoding: gzip, br;q=0.9\r\n\
                    If-None-Match: \"abc\"\r\nConnection: close\r\n\r\n";
        let expected = Request {
            method: "GET".to_owned(),
            path: "/a/b.js".to_owned(),
            known_tag: Some("\"abc\"".to_owned()),
            takes_brotli: true,
            last: true,
        };
        assert_eq!(read(text).unwrap(), Some(expected));
    }

    #[test]
    fn a_closed_line_ends_the_conversation() {
        assert_eq!(read("").unwrap(), None);
    }

    #[test]
    fn broken_requests_are_refused() {
        assert!(read("GET\r\n\r\n").is_err());
        assert!(read("GET / HTTP/1.1\r\nHost: x\r\n").is_err());
        let endless = format!("GET / HTTP/1.1\r\nA: {}", "a".repeat(20_000));
        assert!(read(&endless).is_err());
    }
}
