//! Whether the lines of a file of hours follow one another.

use inchwise_core::climate::DAYS_IN_MONTH;

use super::error::HourlyFileError;

/// Hours of a leap year, and where its 29 February begins and ends.
const LEAP_YEAR: usize = 8784;
pub(super) const LEAP_DAY: core::ops::Range<usize> = 59 * 24..60 * 24;

/// How a file says which hour a line is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Clock {
    /// Month, day and hour, as `2026-01-31T13:00`; the year may change from month to month, as in a
    /// typical year. Hours may be named by their beginning or their end.
    Time,
    /// The hour of the year or of the day, counted from 0 or from 1.
    Hour,
}

/// A line's number, what it says of its hour, and that as a number.
type Said = (usize, String, usize);

/// Follows the lines.
#[derive(Debug, Default)]
pub(super) struct Order {
    said: Vec<Said>,
}

impl Order {
    /// Takes what a line says of its hour.
    pub(super) fn take(
        &mut self,
        clock: Clock,
        line: usize,
        text: &str,
    ) -> Result<(), HourlyFileError> {
        let hour = match clock {
            Clock::Time => hour_of_leap_year(text),
            Clock::Hour => text.parse().ok().filter(|&hour: &usize| hour <= LEAP_YEAR),
        };
        let text = text.to_owned();
        match hour {
            Some(hour) => self.said.push((line, text, hour)),
            None => return Err(HourlyFileError::NotATime { line, text }),
        }
        Ok(())
    }

    /// Every line whose hour does not follow that of the line before.
    pub(super) fn faults(self, clock: Clock) -> Vec<HourlyFileError> {
        let of_day = clock == Clock::Hour && self.said.iter().all(|&(_, _, hour)| hour <= 24);
        let mut before = None;
        let mut faults = Vec::new();
        for (line, text, hour) in self.said {
            let follows = match before {
                // By its beginning or by its end.
                None => hour <= 1,
                Some(23) if of_day => hour == 24 || hour == 0,
                Some(24) if of_day => hour == 1,
                Some(before) => {
                    let over_leap_day = LEAP_DAY.start..=LEAP_DAY.start + 1;
                    hour == before + 1
                        || clock == Clock::Time
                            && (hour == 0 && before + 1 == LEAP_YEAR
                                || over_leap_day.contains(&(before + 1))
                                    && hour == before + 1 + LEAP_DAY.len())
                }
            };
            if !follows {
                faults.push(HourlyFileError::NotTheNextHour { line, text });
            }
            before = Some(hour);
        }
        faults
    }
}

/// The hour of a leap year that a time names, from 0; the 24th hour of a day is the first of the next.
fn hour_of_leap_year(text: &str) -> Option<usize> {
    let (date, time) = text.split_once(['T', ' '])?;
    let mut parts = date.split('-');
    let (_, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let number = |text: &str| text.parse::<usize>().ok();
    let (month, day) = (number(month)?.checked_sub(1)?, number(day)?.checked_sub(1)?);
    let hour = number(time.split(':').next()?)?;
    // Of a leap year.
    let length = |month: usize| DAYS_IN_MONTH.get(month).map(|days| days + usize::from(month == 1));
    let stands = day < length(month)? && hour <= 24 && parts.next().is_none();
    let days = (0..month).filter_map(length).sum::<usize>() + day;
    stands.then_some((days * 24 + hour) % LEAP_YEAR)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faulty(clock: Clock, times: &[&str]) -> Vec<usize> {
        let mut order = Order::default();
        for (line, text) in times.iter().enumerate() {
            order.take(clock, line, text).expect("a time");
        }
        let faults = order.faults(clock);
        let lines = faults.into_iter().map(|fault| match fault {
            HourlyFileError::NotTheNextHour { line, .. } => line,
            other => panic!("{other:?}"),
        });
        lines.collect()
    }

    #[test]
    fn times_follow_one_another_over_the_ends_of_months() {
        let time = Clock::Time;
        assert_eq!(faulty(time, &["2019-01-01T00:00", "2019-01-01T01:00"]), [0; 0]);
        assert_eq!(faulty(time, &["2019-01-01 01:00", "2019-01-01 02:00:00Z"]), [0; 0]);
        assert_eq!(faulty(time, &["2019-01-01T02:00"]), [0], "not the first of January");
        let from = |first: &str, then: &str| {
            let mut order = Order { said: vec![(0, String::new(), 0)] };
            order.said[0].2 = hour_of_leap_year(first).expect("a time");
            order.take(time, 1, then).expect("a time");
            // The first line is not of January; what counts is the second.
            order
                .faults(time)
                .iter()
                .any(|fault| matches!(fault, HourlyFileError::NotTheNextHour { line: 1, .. }))
        };
        assert!(!from("2012-01-31T23:00", "2007-02-01T00:00"), "a typical year");
        assert!(!from("2012-02-28T23:00", "2012-02-29T00:00"));
        assert!(!from("2013-02-28T23:00", "2013-03-01T00:00"));
        assert!(!from("2013-02-28T24:00", "2013-03-01T01:00"), "named by its end");
        assert!(!from("2013-12-31T23:00", "2014-01-01T00:00"), "the end of the last hour");
        assert!(from("2013-05-01T03:00", "2013-05-01T03:00"), "twice");
        assert!(from("2013-05-01T03:00", "2013-05-01T05:00"), "one is missing");
        assert!(from("2013-05-01T03:00", "2013-05-01T02:00"), "back");
    }

    #[test]
    fn hours_are_counted_through_the_day_or_the_year() {
        let mut of_day: Vec<String> = (0..72).map(|hour| (hour % 24).to_string()).collect();
        let lines = |said: &[String]| {
            let said: Vec<&str> = said.iter().map(String::as_str).collect();
            faulty(Clock::Hour, &said)
        };
        assert_eq!(lines(&of_day), [0; 0]);
        of_day[30] = "5".to_owned();
        assert_eq!(lines(&of_day), [30, 31]);
        let mut of_year: Vec<String> = (1..=8760).map(|hour| hour.to_string()).collect();
        assert_eq!(lines(&of_year), [0; 0]);
        of_year.swap(100, 101);
        assert_eq!(lines(&of_year), [100, 101, 102]);
    }

    #[test]
    fn what_is_no_time_is_none() {
        for text in ["", "2019-13-01T00:00", "2019-02-30T00:00", "2019-01-01T25:00", "01/02/2019 1"]
        {
            assert_eq!(hour_of_leap_year(text), None, "{text}");
        }
    }
}
