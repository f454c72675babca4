//! A small server for dist, with the headers a careful host would send.

mod reply;
mod request;
mod shelf;

use std::{
    io::{BufReader, Write},
    net::{TcpListener, TcpStream},
    sync::Arc,
    thread,
    time::Duration,
};

use anyhow::{Context, Result, bail};

use request::Request;
use shelf::Shelf;

/// What is built before anything is served.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Build {
    /// Nothing.
    None,
    /// What a host gets.
    Shipped,
    /// The same, large and slow, in half a minute.
    Quick,
}

/// How to serve.
#[derive(Debug, PartialEq)]
pub(crate) struct Options {
    /// What to build first.
    pub(crate) build: Build,
    port: u16,
    /// The sub-path dist stands under: begins and ends with a slash.
    under: String,
}

impl Options {
    /// Reads the words after `cargo site serve`.
    pub(crate) fn parse(words: &[String]) -> Result<Self> {
        let mut options = Self { build: Build::Shipped, port: 8080, under: "/".to_owned() };
        let mut words = words.iter();
        while let Some(word) = words.next() {
            match word.as_str() {
                "--no-build" => options.build = Build::None,
                "--quick" => options.build = Build::Quick,
                "--port" => {
                    let port = words.next().context("--port wants a number after it.")?;
                    options.port = port
                        .parse()
                        .with_context(|| format!("`{port}` is no port: use 0 to 65535."))?;
                }
                "--under" => {
                    let path = words.next().context("--under wants a path after it.")?;
                    options.under = match path.trim_matches('/') {
                        "" => "/".to_owned(),
                        path => format!("/{path}/"),
                    };
                }
                word => bail!("`cargo site serve` does not know `{word}`."),
            }
        }
        Ok(options)
    }
}

/// Serves dist until stopped.
pub(crate) fn run(options: &Options) -> Result<()> {
    let shelf = Arc::new(Shelf::stock(&options.under)?);
    let listener = TcpListener::bind(("127.0.0.1", options.port)).with_context(|| {
        format!("Port {} is taken. Choose another with --port, or 0 for any.", options.port)
    })?;
    let address = listener.local_addr().context("The server has no address.")?;
    println!("Serving dist at http://{address}{}", options.under);
    for stream in listener.incoming().flatten() {
        let shelf = Arc::clone(&shelf);
        // A visitor who hangs up in the middle is no failure of ours.
        thread::spawn(move || converse(stream, &shelf).ok());
    }
    Ok(())
}

fn converse(stream: TcpStream, shelf: &Shelf) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(30)))?;
    stream.set_nodelay(true)?;
    let mut reader = BufReader::new(stream.try_clone()?);
    let mut writer = stream;
    while let Some(request) = Request::read(&mut reader)? {
        writer.write_all(&reply::to(&request, shelf))?;
        if request.last {
            break;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{Build, Options};

    fn parse(words: &[&str]) -> anyhow::Result<Options> {
        Options::parse(&words.iter().map(|&word| word.to_owned()).collect::<Vec<_>>())
    }

    #[test]
    fn options_have_plain_defaults() {
        let expected = Options { build: Build::Shipped, port: 8080, under: "/".to_owned() };
        assert_eq!(parse(&[]).unwrap(), expected);
    }

    #[test]
    fn a_sub_path_is_given_both_slashes() {
        for path in ["shop/planner", "/shop/planner", "/shop/planner/"] {
            assert_eq!(parse(&["--under", path]).unwrap().under, "/shop/planner/");
        }
        assert_eq!(parse(&["--under", "/"]).unwrap().under, "/");
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(parse(&["--port"]).is_err());
        assert!(parse(&["--port", "seventy"]).is_err());
        assert!(parse(&["--port", "70000"]).is_err());
        assert!(parse(&["--fast"]).is_err());
    }
}
