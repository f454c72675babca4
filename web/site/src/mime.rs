//! What kind of file each name in dist is, and whether squeezing it helps.

/// A media type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Kind {
    /// The media type, as a server states it.
    pub(crate) media_type: &'static str,
    /// Whether compression makes it smaller.
    pub(crate) compresses: bool,
}

/// The kind a file's name tells.
pub(crate) fn of(name: &str) -> Kind {
    let (media_type, compresses) = match name.rsplit('.').next() {
        Some("html") => ("text/html; charset=utf-8", true),
        Some("css") => ("text/css; charset=utf-8", true),
        Some("js" | "mjs") => ("text/javascript; charset=utf-8", true),
        Some("wasm") => ("application/wasm", true),
        Some("json") => ("application/json", true),
        Some("svg") => ("image/svg+xml", true),
        Some("txt") => ("text/plain; charset=utf-8", true),
        Some("png") => ("image/png", false),
        Some("webp") => ("image/webp", false),
        _ => ("application/octet-stream", false),
    };
    Kind { media_type, compresses }
}
