//! Counting what passed and failed from what the test harnesses print.

use std::{fmt, ops::AddAssign};

#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Tally {
    pub(crate) passed: usize,
    pub(crate) failed: usize,
}

impl Tally {
    /// One check that stands or falls as a whole.
    pub(crate) const ONE_PASSED: Self = Self { passed: 1, failed: 0 };

    /// One check that fell.
    pub(crate) const ONE_FAILED: Self = Self { passed: 0, failed: 1 };

    /// Adds what one line reports, if it is a harness's summary.
    pub(crate) fn read(&mut self, line: &str) {
        let line = line.trim();
        // Cargo's harness and the one for wasm: "test result: ok. 12 passed; 0 failed; ..."
        if let Some(summary) = line.strip_prefix("test result: ") {
            for part in summary.split([';', '.']) {
                match part.trim().split_once(' ') {
                    Some((count, "passed")) => self.passed += count.parse().unwrap_or(0),
                    Some((count, "failed")) => self.failed += count.parse().unwrap_or(0),
                    _ => {}
                }
            }
        }
        // Node's harness, for people and for pipes: "ℹ pass 12", "# fail 0"
        match line.split(' ').collect::<Vec<_>>()[..] {
            ["ℹ" | "#", "pass", count] => self.passed += count.parse().unwrap_or(0),
            ["ℹ" | "#", "fail", count] => self.failed += count.parse().unwrap_or(0),
            _ => {}
        }
    }
}

impl AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} passed, {} failed", self.passed, self.failed)
    }
}

#[cfg(test)]
mod tests {
    use super::Tally;

    fn read(lines: &[&str]) -> Tally {
        let mut tally = Tally::default();
        lines.iter().for_each(|line| tally.read(line));
        tally
    }

    #[test]
    fn cargo_summaries_add_up() {
        let lines = [
            "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out",
            "test something ... ok",
            "test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out",
        ];
        assert_eq!(read(&lines), Tally { passed: 15, failed: 2 });
    }

    #[test]
    fn node_summaries_add_up() {
        let lines = ["ℹ tests 5", "ℹ pass 4", "ℹ fail 1", "# pass 2", "# fail 0"];
        assert_eq!(read(&lines), Tally { passed: 6, failed: 1 });
    }

    #[test]
    fn other_words_count_nothing() {
        assert_eq!(read(&["we pass 3 doors", "# pass the salt"]), Tally::default());
    }
}
