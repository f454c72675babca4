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

/// Brotli at its highest setting, as a host would prepare it once per release.
pub(crate) fn squeeze(bytes: &[u8]) -> Vec<u8> {
    let parameters = brotli::enc::BrotliEncoderParams { quality: 11, ..Default::default() };
    let mut squeezed = Vec::new();
    let mut reader = bytes;
    match brotli::BrotliCompress(&mut reader, &mut squeezed, &parameters) {
        Ok(_) => squeezed,
        // Writing to memory does not fail; unsqueezed bytes are the honest answer if it ever did.
        Err(_) => bytes.to_vec(),
    }
}
