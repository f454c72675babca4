//! The months.

use super::Language;
use super::Language::{English, French};

const ENGLISH: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];
const FRENCH: [&str; 12] = [
    "janvier",
    "février",
    "mars",
    "avril",
    "mai",
    "juin",
    "juillet",
    "août",
    "septembre",
    "octobre",
    "novembre",
    "décembre",
];

impl Language {
    /// The months from January.
    pub const fn months(self) -> &'static [&'static str; 12] {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// A month by its index from January.
    pub const fn month(self, month: usize) -> &'static str {
        self.months()[month]
    }
}
