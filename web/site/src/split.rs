//! Cutting the planner's wasm at its split points: each sheet a file of its own, loaded when it is
//! opened.

use std::{
    fs,
    path::{Path, PathBuf},
};

use anyhow::{Context, Result, anyhow};

/// Cuts what is behind split points into modules of their own in `out`, with a script that loads
/// them, and gives the rest, which is still to have its own script made.
pub(crate) fn split(wasm: &Path, out: &Path, name: &str) -> Result<PathBuf> {
    let input = fs::read(wasm).with_context(|| format!("{} cannot be read.", wasm.display()))?;
    let main = out.join(format!("{name}.split.wasm"));
    let (script, link) = (format!("./{name}.js"), format!("./{name}_parts.js"));
    let mut options = wasm_split_cli_support::Options::new(&input);
    options.output_dir = out;
    options.main_out_path = &main;
    options.main_module = &script;
    options.link_name = &link;
    wasm_split_cli_support::transform(options)
        .map_err(|failure| anyhow!("the planner's wasm could not be split: {failure:?}"))?;
    Ok(main)
}

/// Takes out what no browser reads from every wasm in a folder.
pub(crate) fn strip_all(folder: &Path) -> Result<()> {
    let entries =
        fs::read_dir(folder).with_context(|| format!("{} is stuck.", folder.display()))?;
    for path in entries.flatten().map(|entry| entry.path()) {
        if path.extension().is_some_and(|kind| kind == "wasm") {
            let wasm = fs::read(&path).with_context(|| format!("{} is stuck.", path.display()))?;
            let bare = bare(&wasm).with_context(|| format!("{} is no wasm.", path.display()))?;
            fs::write(&path, bare).with_context(|| format!("{} is stuck.", path.display()))?;
        }
    }
    Ok(())
}

/// A wasm without its custom sections; `None` for what is none.
fn bare(wasm: &[u8]) -> Option<Vec<u8>> {
    let mut out = wasm.get(..8)?.to_vec();
    let mut at = 8;
    while at < wasm.len() {
        let (start, id) = (at, wasm[at]);
        at += 1;
        let (mut size, mut shift) = (0_usize, 0);
        loop {
            let byte = *wasm.get(at)?;
            at += 1;
            size |= usize::from(byte & 0x7f) << shift;
            shift += 7;
            if byte & 0x80 == 0 {
                break;
            }
        }
        at += size;
        let section = wasm.get(start..at)?;
        if id != 0 {
            out.extend(section);
        }
    }
    Some(out)
}

#[cfg(test)]
mod tests {
    use super::bare;

    #[test]
    fn only_custom_sections_go() {
        let head = *b"\0asm\x01\0\0\0";
        let wasm = [&head[..], &[0, 3, 1, b'x', 7], &[1, 2, 9, 9], &[0, 1, 0]].concat();
        assert_eq!(bare(&wasm), Some([&head[..], &[1, 2, 9, 9]].concat()));
        assert_eq!(bare(&wasm[..10]), None, "cut short");
    }
}
