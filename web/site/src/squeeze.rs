//! Files squeezed as a host would prepare them once per release.

use std::{
    fs,
    hash::{DefaultHasher, Hasher},
    path::Path,
    process,
};

use crate::project;

/// Brotli at its highest setting. What was squeezed once is kept below the build folder: a release
/// takes seconds, and every check in a browser serves it anew.
pub(crate) fn squeeze(bytes: &[u8]) -> Vec<u8> {
    let folder = project::target().join("squeezed");
    let name = format!("{}-{:016x}.br", bytes.len(), tag(bytes));
    let kept = folder.join(&name);
    if let Some(squeezed) = fs::read(&kept).ok().filter(|squeezed| holds(squeezed, bytes)) {
        return squeezed;
    }
    let squeezed = brotli_of(bytes);
    keep(&folder, &kept, &squeezed);
    squeezed
}

/// A number that another content will hardly have.
pub(crate) fn tag(bytes: &[u8]) -> u64 {
    let mut hasher = DefaultHasher::new();
    hasher.write(bytes);
    hasher.finish()
}

/// Whether one is the other, squeezed.
fn holds(mut squeezed: &[u8], bytes: &[u8]) -> bool {
    let mut whole = Vec::with_capacity(bytes.len());
    brotli::BrotliDecompress(&mut squeezed, &mut whole).is_ok() && whole == bytes
}

fn brotli_of(bytes: &[u8]) -> Vec<u8> {
    let parameters = brotli::enc::BrotliEncoderParams { quality: 11, ..Default::default() };
    let mut squeezed = Vec::new();
    let mut reader = bytes;
    match brotli::BrotliCompress(&mut reader, &mut squeezed, &parameters) {
        Ok(_) => squeezed,
        // Writing to memory does not fail; unsqueezed bytes are the honest answer if it ever did.
        Err(_) => bytes.to_vec(),
    }
}

/// Keeps it for the next time. A folder that takes nothing costs time, not truth.
fn keep(folder: &Path, kept: &Path, squeezed: &[u8]) {
    // Two servers may start at once: neither may read what the other has half written.
    let half = folder.join(format!("{}.part", process::id()));
    let _ = fs::create_dir_all(folder)
        .and_then(|()| fs::write(&half, squeezed))
        .and_then(|()| fs::rename(&half, kept));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_kept_is_whole_and_a_spoilt_copy_is_known() {
        let folder = std::env::temp_dir().join(format!("inchwise-squeeze-{}", process::id()));
        let text = "foam and steel, ".repeat(500).into_bytes();
        let squeezed = brotli_of(&text);
        assert!(squeezed.len() < text.len() / 10, "{} bytes", squeezed.len());
        let kept = folder.join("one.br");
        keep(&folder, &kept, &squeezed);
        let read = fs::read(&kept).expect("it was kept");
        assert!(holds(&read, &text), "it does not hold the text");
        assert!(!holds(&read[..read.len() / 2], &text), "half of it holds the text");
        assert!(!holds(&brotli_of(b"another text"), &text), "another holds the text");
        fs::remove_dir_all(&folder).expect("the folder is ours");
    }
}
