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
