//! What the server answers.

use super::{request::Request, shelf::Shelf};

/// The strictest policy the page is meant to run under: its own files, compiled wasm, and one
/// named way to make an address for the worker. No inline script, no inline style, nobody else's.
const POLICY: &str = "default-src 'none'; \
    script-src 'self' 'wasm-unsafe-eval'; \
    worker-src 'self'; \
    connect-src 'self'; \
    style-src 'self'; \
    img-src 'self'; \
    base-uri 'none'; \
    form-action 'none'; \
    frame-ancestors 'none'; \
    require-trusted-types-for 'script'; \
    trusted-types inchwise";

/// The bytes that answer a request.
pub(crate) fn to(request: &Request, shelf: &Shelf) -> Vec<u8> {
    let with_body = request.method == "GET";
    if !with_body && request.method != "HEAD" {
        let headers = [("Allow", "GET, HEAD")];
        return message("405 Method Not Allowed", &headers, b"Only reading here.\n", true);
    }
    if let Some(address) = shelf.redirect(&request.path) {
        return message("301 Moved Permanently", &[("Location", address)], b"", with_body);
    }
    let Some(item) = shelf.find(&request.path) else {
        let headers = [("Content-Type", "text/plain; charset=utf-8")];
        return message("404 Not Found", &headers, b"No such file here.\n", with_body);
    };

    let squeezed = item.brotli.as_ref().filter(|_| request.takes_brotli);
    // The two forms are different bytes, so they carry different tags.
    let tag = format!("\"{}{}\"", item.tag, if squeezed.is_some() { "-br" } else { "" });
    let keep = if item.versioned { "public, max-age=31536000, immutable" } else { "no-cache" };
    let mut headers = vec![
        ("Content-Type", item.media_type),
        ("Cache-Control", keep),
        ("ETag", &tag),
        ("Vary", "Accept-Encoding"),
        ("Content-Security-Policy", POLICY),
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
    ];
    if request.known_tag.as_ref() == Some(&tag) {
        return message("304 Not Modified", &headers, b"", false);
    }
    if squeezed.is_some() {
        headers.push(("Content-Encoding", "br"));
    }
    message("200 OK", &headers, squeezed.unwrap_or(&item.bytes), with_body)
}

fn message(status: &str, headers: &[(&str, &str)], body: &[u8], with_body: bool) -> Vec<u8> {
    let mut text = format!("HTTP/1.1 {status}\r\n");
    for (name, value) in headers {
        text.push_str(&format!("{name}: {value}\r\n"));
    }
    if !status.starts_with("304") {
        text.push_str(&format!("Content-Length: {}\r\n", body.len()));
    }
    text.push_str("\r\n");
    let mut bytes = text.into_bytes();
    if with_body {
        bytes.extend_from_slice(body);
    }
    bytes
}

#[cfg(test)]
mod tests {
    use super::{Request, Shelf, to};

    fn shelf() -> Shelf {
        let files =
            [("index.html", "<p>page"), ("element/01/a.js", "1;"), ("picture.png", "not really")];
        Shelf::of("/shop/", &files)
    }

    fn ask(request: &Request) -> String {
        String::from_utf8_lossy(&to(request, &shelf())).into_owned()
    }

    fn get(path: &str) -> Request {
        Request { method: "GET".to_owned(), path: path.to_owned(), ..Request::default() }
    }

    #[test]
    fn a_folder_stands_for_its_page() {
        let reply = ask(&get("/shop/"));
        assert!(reply.starts_with("HTTP/1.1 200 OK\r\n"));
        assert!(reply.contains("Content-Type: text/html; charset=utf-8\r\n"));
        assert!(reply.contains("Cache-Control: no-cache\r\n"));
        assert!(reply.contains("require-trusted-types-for 'script'; trusted-types inchwise\r\n"));
        assert!(reply.ends_with("\r\n\r\n<p>page"));
    }

    #[test]
    fn versioned_files_may_be_kept() {
        assert!(ask(&get("/shop/element/01/a.js")).contains("immutable"));
    }

    #[test]
    fn a_known_copy_is_not_sent_again() {
        let first = ask(&get("/shop/"));
        let tag = first.split("ETag: ").nth(1).unwrap().split("\r\n").next().unwrap();
        let again = ask(&Request { known_tag: Some(tag.to_owned()), ..get("/shop/") });
        assert!(again.starts_with("HTTP/1.1 304 Not Modified\r\n"));
        assert!(again.ends_with("\r\n\r\n"));
        // The tag of the plain form does not stand for the squeezed one.
        let squeezed =
            Request { known_tag: Some(tag.to_owned()), takes_brotli: true, ..get("/shop/") };
        assert!(ask(&squeezed).starts_with("HTTP/1.1 200 OK\r\n"));
    }

    #[test]
    fn only_what_shrinks_is_squeezed() {
        let page = ask(&Request { takes_brotli: true, ..get("/shop/") });
        assert!(page.contains("Content-Encoding: br\r\n"));
        let picture = ask(&Request { takes_brotli: true, ..get("/shop/picture.png") });
        assert!(!picture.contains("Content-Encoding"));
    }

    #[test]
    fn nothing_outside_the_shelf_is_reached() {
        for path in ["/", "/index.html", "/shop/../shop/index.html", "/shop/style", "*"] {
            assert!(ask(&get(path)).starts_with("HTTP/1.1 404 "), "{path}");
        }
        assert!(ask(&get("/shop")).contains("Location: /shop/\r\n"));
    }

    #[test]
    fn head_sends_no_body_and_post_is_refused() {
        let head = ask(&Request { method: "HEAD".to_owned(), ..get("/shop/") });
        assert!(head.contains("Content-Length: 7\r\n") && head.ends_with("\r\n\r\n"));
        let post = ask(&Request { method: "POST".to_owned(), ..get("/shop/") });
        assert!(post.starts_with("HTTP/1.1 405 "));
    }
}
