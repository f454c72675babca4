//! The tree keeps its own rules.

use std::path::{Path, PathBuf};

use inchwise_tests::Table;

fn tables_below(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            tables_below(&path, found);
        } else if path.extension().is_some_and(|kind| kind == "tsv") {
            found.push(path);
        }
    }
}

#[test]
fn every_reference_table_accounts_for_itself() {
    let mut tables = Vec::new();
    tables_below(&Path::new(env!("CARGO_MANIFEST_DIR")).join("reference"), &mut tables);
    assert!(!tables.is_empty());
    for path in tables {
        let text = std::fs::read_to_string(&path).unwrap();
        if let Err(wrong) = Table::parse(&text) {
            panic!("{}: {wrong}", path.display());
        }
    }
}

/// The rooms of core in the order `lib.rs` declares them.
fn rooms() -> Vec<String> {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src/lib.rs");
    let text = std::fs::read_to_string(source).expect("core's lib.rs");
    text.lines()
        .filter_map(|line| line.trim_start_matches("pub ").strip_prefix("mod "))
        .filter_map(|rest| rest.strip_suffix(';').map(str::to_owned))
        .collect()
}

fn sources_below(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources_below(&path, found);
        } else if path.extension().is_some_and(|kind| kind == "rs") {
            found.push(path);
        }
    }
}

/// The room named behind every `crate::` of a source text.
fn looks_into(text: &str) -> Vec<String> {
    text.match_indices("crate::")
        .map(|(at, found)| {
            let rest = &text[at + found.len()..];
            let end = rest.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(rest.len());
            rest[..end].to_owned()
        })
        .collect()
}

#[test]
fn every_room_of_core_looks_only_at_rooms_above_it() {
    let rooms = rooms();
    assert!(rooms.len() > 8, "rooms found: {rooms:?}");
    let core = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src");
    let mut seen = 0;
    for (n, room) in rooms.iter().enumerate() {
        let mut sources = Vec::new();
        if core.join(room).is_dir() {
            sources_below(&core.join(room), &mut sources);
        } else {
            sources.push(core.join(format!("{room}.rs")));
        }
        for source in sources {
            let text = std::fs::read_to_string(&source).expect("a source file");
            for other in looks_into(&text) {
                seen += 1;
                let place = rooms.iter().position(|room| *room == other);
                assert!(
                    place.is_some_and(|place| place <= n),
                    "{} looks into {other}, which is not above {room}",
                    source.display()
                );
            }
        }
    }
    assert!(seen > 20, "only {seen} uses were found: is the reading broken?");
}

#[test]
fn no_file_holds_more_than_one_idea_can_fill() {
    const LONGEST: usize = 600;
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    for folder in ["core", "web", "tests"] {
        let mut sources = Vec::new();
        sources_below(&root.join(folder), &mut sources);
        sources.retain(|path| !path.components().any(|part| part.as_os_str() == "node_modules"));
        for source in sources {
            let lines = std::fs::read_to_string(&source).expect("a source file").lines().count();
            assert!(lines <= LONGEST, "{}: {lines} lines", source.display());
        }
    }
}
