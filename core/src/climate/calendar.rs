//! Months, days and hours of a year of 365 days.

/// Hours in the year.
pub const HOURS_IN_YEAR: usize = 8760;

/// Days in the year.
pub const DAYS_IN_YEAR: usize = 365;

/// Days in each month; February has 28.
pub const DAYS_IN_MONTH: [usize; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/// The first day of each month, counted from 0 on 1 January.
pub const FIRST_DAY_OF_MONTH: [usize; 12] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/// The days of a month, counted from 0 on 1 January; a month from 0 to 11.
pub const fn days_of(month: usize) -> core::ops::Range<usize> {
    FIRST_DAY_OF_MONTH[month]..FIRST_DAY_OF_MONTH[month] + DAYS_IN_MONTH[month]
}

/// The hours of a month, counted from 0 at the start of 1 January; a month from 0 to 11.
pub const fn hours_of(month: usize) -> core::ops::Range<usize> {
    FIRST_DAY_OF_MONTH[month] * 24..(FIRST_DAY_OF_MONTH[month] + DAYS_IN_MONTH[month]) * 24
}

/// The month of a day, both counted from 0; a day past the year belongs to December.
pub fn month_of_day(day: usize) -> usize {
    FIRST_DAY_OF_MONTH.iter().rposition(|&first| first <= day).unwrap_or(0)
}
