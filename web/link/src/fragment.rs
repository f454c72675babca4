//! The fragment of a page's address: `#v=1&side_wall_foam_mm=89;people=3;dry`.

use crate::LONGEST;

/// What stands in a fragment: design, year, open sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Fragment<'a> {
    /// The design, as [`crate::link_of`] writes it.
    pub design: &'a str,
    /// The year, as [`crate::YearText`] writes it.
    pub year: &'a str,
    /// The name of the open sheet; empty where none is said.
    pub sheet: &'a str,
}

impl<'a> Fragment<'a> {
    /// Reads a fragment, with or without its `#`; `None` for one that is the page's own business,
    /// or too long to be one of ours.
    pub fn read(hash: &'a str) -> Option<Self> {
        let text = hash.trim_start_matches('#');
        if !text.starts_with("v=") || text.len() > LONGEST {
            return None;
        }
        let mut parts = text.splitn(3, ';');
        let mut next = || parts.next().unwrap_or_default();
        Some(Self { design: next(), year: next(), sheet: next() })
    }

    /// Writes it, without its `#`; what is empty at its end is left out.
    pub fn written(&self) -> String {
        let whole = [self.design, ";", self.year, ";", self.sheet].concat();
        whole.trim_end_matches(';').to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fragment_holds_design_year_and_sheet_or_is_the_pages_own() {
        let read = |text| Fragment::read(text).map(|it| (it.design, it.year, it.sheet));
        assert_eq!(read("#v=1&a=2"), Some(("v=1&a=2", "", "")));
        assert_eq!(read("#v=1;b=3&c=;dry"), Some(("v=1", "b=3&c=", "dry")));
        assert_eq!(read("#v=1;;dry;x"), Some(("v=1", "", "dry;x")));
        assert_eq!(read("#section-2"), None);
        assert_eq!(read(""), None);
        assert_eq!(read(&["#v=1", &"&a=1".repeat(300_000)].concat()), None, "a megabyte");
    }

    #[test]
    fn what_is_written_reads_back() {
        for (design, year, sheet) in [("v=1", "", ""), ("v=1", "people=3", ""), ("v=1", "", "dry")]
        {
            let fragment = Fragment { design, year, sheet };
            assert_eq!(Fragment::read(&fragment.written()), Some(fragment));
        }
    }
}
