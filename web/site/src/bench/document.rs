//! Blocks of DEVELOPERS.md that only this tool writes.

use std::fs;

use anyhow::{Context, Result, bail};

use crate::project;

/// Puts a text between the marks `<!-- measured: NAME -->` and `<!-- end of NAME -->`.
pub(crate) fn write(name: &str, text: &str) -> Result<()> {
    let path = project::root().join("DEVELOPERS.md");
    let document = fs::read_to_string(&path).context("DEVELOPERS.md cannot be read.")?;
    let document = replaced(&document, name, text)?;
    fs::write(&path, document).context("DEVELOPERS.md cannot be written.")?;
    println!("{text}\nWritten to DEVELOPERS.md.");
    Ok(())
}

fn replaced(document: &str, name: &str, text: &str) -> Result<String> {
    let (begin, end) = (format!("<!-- measured: {name} -->\n"), format!("<!-- end of {name} -->"));
    let parts = document.split_once(&begin).and_then(|(before, rest)| {
        let (_, after) = rest.split_once(&end)?;
        Some((before, after))
    });
    let Some((before, after)) = parts else {
        bail!("DEVELOPERS.md has no block between `{}` and `{end}`.", begin.trim_end());
    };
    Ok(format!("{before}{begin}\n{}\n\n{end}{after}", text.trim()))
}

/// A table as Markdown.
pub(crate) fn table(heading: &[&str], rows: &[Vec<String>]) -> String {
    let line = |cells: &[String]| format!("| {} |\n", cells.join(" | "));
    let heading: Vec<String> = heading.iter().map(|cell| (*cell).to_owned()).collect();
    let rule = format!("|{}\n", "---|".repeat(heading.len()));
    line(&heading) + &rule + &rows.iter().map(|row| line(row)).collect::<String>()
}

#[cfg(test)]
mod tests {
    use super::{replaced, table};

    #[test]
    fn a_block_is_replaced_and_nothing_else() {
        let before = "a\n<!-- measured: x -->\nold\n<!-- end of x -->\nb\n";
        let after = "a\n<!-- measured: x -->\n\nnew\n\n<!-- end of x -->\nb\n";
        assert_eq!(replaced(before, "x", "new\n").unwrap(), after);
        assert_eq!(replaced(after, "x", "new").unwrap(), after);
        assert!(replaced(before, "y", "new").is_err());
    }

    #[test]
    fn tables_have_a_rule_under_their_heading() {
        let rows = [vec!["1".to_owned(), "2".to_owned()]];
        assert_eq!(table(&["a", "b"], &rows), "| a | b |\n|---|---|\n| 1 | 2 |\n");
    }
}
