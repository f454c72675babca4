//! Reads a table of outside truth, which says where it comes from and how near one must come.
//!
//! A table is tab-separated text with a heading of `#` lines, each needed at least once:
//!
//! ```text
//! # source: who published the figures, and where in the document
//! # edition: which edition, or which version of a library and the date
//! # tolerance: column 0.02 absolute
//! # tolerance: another_column 1e-4 relative
//! # why: why the tolerances are what they are
//! temperature_c   column   another_column
//! 20              9.27     0.0073
//! ```
//!
//! A cell `-` holds nothing. Tables are compiled in, so that the same checks run in a browser.

use crate::tolerance::{Tolerance, difference};

const NOTHING: &str = "-";

/// A table of expected values with its source.
#[derive(Debug)]
pub struct Table {
    source: String,
    edition: String,
    why: String,
    tolerances: Vec<(String, Tolerance)>,
    columns: Vec<String>,
    /// Number of the line in the file, and its cells.
    rows: Vec<(usize, Vec<String>)>,
}

impl Table {
    /// Reads a table, or says what is wrong with its text.
    ///
    /// # Errors
    /// A heading line that is missing, unknown or unreadable, a tolerance for no column, a row of
    /// the wrong length, or no rows.
    pub fn parse(text: &str) -> Result<Self, String> {
        let mut table = Self {
            source: String::new(),
            edition: String::new(),
            why: String::new(),
            tolerances: Vec::new(),
            columns: Vec::new(),
            rows: Vec::new(),
        };
        for (index, line) in text.lines().enumerate() {
            let number = index + 1;
            if let Some(heading) = line.strip_prefix("# ") {
                table.read_heading(heading).map_err(|wrong| format!("line {number}: {wrong}"))?;
                continue;
            }
            let cells: Vec<String> = line.split('\t').map(str::to_owned).collect();
            if table.columns.is_empty() {
                table.columns = cells;
            } else if cells.len() == table.columns.len() {
                table.rows.push((number, cells));
            } else {
                return Err(format!(
                    "line {number}: {} cells under {} columns",
                    cells.len(),
                    table.columns.len()
                ));
            }
        }
        table.complete()
    }

    /// Reads a table that is part of the checks.
    ///
    /// # Panics
    /// If the text is not a table.
    #[track_caller]
    pub fn read(text: &str) -> Self {
        Self::parse(text).unwrap_or_else(|wrong| panic!("not a reference table: {wrong}"))
    }

    fn read_heading(&mut self, heading: &str) -> Result<(), String> {
        let (key, value) =
            heading.split_once(": ").ok_or("a heading is a key, a colon, a value")?;
        let text = match key {
            "source" => &mut self.source,
            "edition" => &mut self.edition,
            "why" => &mut self.why,
            "tolerance" => {
                let (column, size) = value.split_once(' ').ok_or("a tolerance names a column")?;
                self.tolerances.push((column.to_owned(), Tolerance::parse(size)?));
                return Ok(());
            }
            _ => return Err(format!("no heading is called {key:?}")),
        };
        if !text.is_empty() {
            return Err(format!("{key:?} is said twice"));
        }
        *text = value.to_owned();
        Ok(())
    }

    fn complete(self) -> Result<Self, String> {
        let said = [("source", &self.source), ("edition", &self.edition), ("why", &self.why)];
        if let Some((missing, _)) = said.iter().find(|(_, text)| text.trim().is_empty()) {
            return Err(format!("it does not say its {missing}"));
        }
        if self.tolerances.is_empty() {
            return Err("it states no tolerance".to_owned());
        }
        if let Some((stray, _)) = self.tolerances.iter().find(|(n, _)| !self.columns.contains(n)) {
            return Err(format!("a tolerance is stated for {stray:?}, which is no column"));
        }
        if self.rows.is_empty() {
            return Err("it has no rows".to_owned());
        }
        Ok(self)
    }

    /// Who published the figures.
    pub fn source(&self) -> &str {
        &self.source
    }

    /// The rows in order.
    pub fn rows(&self) -> impl ExactSizeIterator<Item = Row<'_>> {
        self.rows.iter().map(|(line, cells)| Row { table: self, line: *line, cells })
    }

    /// The row whose first cell is as given.
    ///
    /// # Panics
    /// If there is none.
    #[track_caller]
    pub fn row(&self, first_cell: &str) -> Row<'_> {
        self.rows()
            .find(|row| row.cells[0] == first_cell)
            .unwrap_or_else(|| panic!("no row {first_cell:?} from {}", self.source))
    }
}

/// One row of a [`Table`].
#[derive(Clone, Copy, Debug)]
pub struct Row<'t> {
    table: &'t Table,
    line: usize,
    cells: &'t [String],
}

impl<'t> Row<'t> {
    /// The text in a column.
    ///
    /// # Panics
    /// If there is no such column.
    #[track_caller]
    pub fn text(&self, column: &str) -> &'t str {
        match self.table.columns.iter().position(|name| name == column) {
            Some(index) => &self.cells[index],
            None => panic!("no column {column:?}, only {:?}", self.table.columns),
        }
    }

    /// The number in a column, nothing if the cell is `-`.
    ///
    /// # Panics
    /// If there is no such column, or the cell is neither a number nor `-`.
    #[track_caller]
    pub fn number_if_given(&self, column: &str) -> Option<f64> {
        let text = self.text(column);
        (text != NOTHING).then(|| match text.parse::<f64>() {
            Ok(number) if number.is_finite() => number,
            _ => panic!("{text:?} in column {column:?} of {self} is no number"),
        })
    }

    /// The number in a column.
    ///
    /// # Panics
    /// If there is none.
    #[track_caller]
    pub fn number(&self, column: &str) -> f64 {
        match self.number_if_given(column) {
            Some(number) => number,
            None => panic!("column {column:?} of {self} is empty"),
        }
    }

    /// Fails, naming column, row and source, unless a value is as near to the number in a column
    /// as the table's heading asks. An empty cell asks nothing.
    ///
    /// # Panics
    /// If it is not, or the table states no tolerance for the column.
    #[track_caller]
    pub fn close_to(&self, column: &str, actual: f64) {
        let stated = self.table.tolerances.iter().find(|(name, _)| name == column);
        let Some((_, tolerance)) = stated else {
            panic!("no tolerance is stated for column {column:?} of {self}");
        };
        if let Some(expected) = self.number_if_given(column) {
            assert!(
                tolerance.admits(actual, expected),
                "{}\n  {self}\n  edition {}\n  because {}",
                difference(column, actual, expected, *tolerance),
                self.table.edition,
                self.table.why
            );
        }
    }
}

impl std::fmt::Display for Row<'_> {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let cells: Vec<String> = std::iter::zip(&self.table.columns, self.cells)
            .map(|(name, cell)| format!("{name} {cell}"))
            .collect();
        write!(out, "line {} ({}) from {}", self.line, cells.join(", "), self.table.source)
    }
}

#[cfg(test)]
mod tests {
    use super::Table;

    const GOOD: &str = "# source: a handbook, table 1\n# edition: 2017\n\
        # tolerance: b 0.1 absolute\n# why: rounded\na\tb\n1\t2.5\n2\t-\n";

    #[test]
    fn reads_numbers_and_empty_cells() {
        let table = Table::read(GOOD);
        assert_eq!(table.source(), "a handbook, table 1");
        assert_eq!(table.rows().len(), 2);
        let row = table.row("1");
        assert_eq!((row.number("a"), row.number("b")), (1.0, 2.5));
        row.close_to("b", 2.45);
        assert_eq!(table.row("2").number_if_given("b"), None);
    }

    #[test]
    #[should_panic(expected = "line 6 (a 1, b 2.5) from a handbook, table 1")]
    fn names_row_and_source_of_a_miss() {
        Table::read(GOOD).row("1").close_to("b", 2.7);
    }

    #[test]
    #[should_panic(expected = "no tolerance is stated for column \"a\"")]
    fn refuses_to_compare_without_a_tolerance() {
        Table::read(GOOD).row("1").close_to("a", 1.0);
    }

    #[test]
    #[should_panic(expected = "off by NaN")]
    fn not_a_number_is_a_miss() {
        Table::read(GOOD).row("1").close_to("b", f64::NAN);
    }

    #[test]
    fn refuses_a_table_that_does_not_account_for_itself() {
        for heading in ["source", "edition", "tolerance", "why"] {
            let without: String = GOOD
                .split_inclusive('\n')
                .filter(|line| !line.starts_with(&format!("# {heading}:")))
                .collect();
            assert!(Table::parse(&without).is_err(), "accepted without {heading}");
        }
        for (good, bad) in [("1\t2.5", "1"), ("b 0.1", "c 0.1"), ("# why", "# because")] {
            assert!(Table::parse(&GOOD.replace(good, bad)).is_err(), "accepted {bad:?}");
        }
    }
}
