//! When the room is used.

use super::field::Design;
use crate::climate::DAYS_IN_YEAR;
use crate::units::Time;

impl Design {
    /// How long the room is used on a day of use.
    pub fn use_time(&self) -> Time {
        let (from, until) = (self.used_from, self.used_until);
        Time::hours(if from < until { until - from } else { until + 24.0 - from })
    }

    /// Part of the days on which the room is used, 0 to 1.
    pub fn share_of_days(&self) -> f64 {
        self.used_days / 7.0
    }

    /// Hours since a use began, in an hour of the year from 0 in the first of 1 January: for what a day of use
    /// sets going, as laundry that dries. Counted to the beginning of the hour, from the last use that
    /// began; `None` on a clock before the first.
    ///
    /// Range: what was set going must last a day at most.
    pub fn hours_since_use_began(&self, hour: usize) -> Option<f64> {
        let clock = (hour % 24) as f64;
        let day = hour / 24 % DAYS_IN_YEAR;
        let (day, since) = if clock >= self.used_from {
            (day, clock - self.used_from)
        } else {
            ((day + DAYS_IN_YEAR - 1) % DAYS_IN_YEAR, clock + 24.0 - self.used_from)
        };
        (((day % 7) as f64) < self.used_days).then_some(since)
    }

    /// Whether the room is used in an hour of the year, from 0 in the first of 1 January.
    ///
    /// 1 January is the first day of a week, and the room is used on the first
    /// [`used_days`](Self::used_days) of each. Hours that run over midnight belong to the day on which
    /// they began; those of the first morning began on 31 December.
    pub fn is_used(&self, hour: usize) -> bool {
        let clock = (hour % 24) as f64;
        let day = hour / 24 % DAYS_IN_YEAR;
        let (from, until) = (self.used_from, self.used_until);
        let began = if from < until {
            (from <= clock && clock < until).then_some(day)
        } else if clock >= from {
            Some(day)
        } else if clock < until {
            Some((day + DAYS_IN_YEAR - 1) % DAYS_IN_YEAR)
        } else {
            None
        };
        began.is_some_and(|day| ((day % 7) as f64) < self.used_days)
    }
}

#[cfg(test)]
mod tests {
    use super::Design;
    use crate::climate::{DAYS_IN_YEAR, HOURS_IN_YEAR};

    /// Which hours of the first week are used, as day and clock.
    fn used(from: f64, until: f64, days: f64) -> Vec<[usize; 2]> {
        let design =
            Design { used_from: from, used_until: until, used_days: days, ..Design::default() };
        let hours = (0..7 * 24).filter(|&hour| design.is_used(hour));
        hours.map(|hour| [hour / 24, hour % 24]).collect()
    }

    #[test]
    fn a_night_belongs_to_the_evening_it_began_on() {
        // From 22 until 2 on the first two days of the week; 31 December is a first day too.
        let expected =
            [[0, 0], [0, 1], [0, 22], [0, 23], [1, 0], [1, 1], [1, 22], [1, 23], [2, 0], [2, 1]];
        assert_eq!(used(22.0, 2.0, 2.0), expected);
        assert_eq!(used(8.0, 10.0, 1.0), [[0, 8], [0, 9]]);
        assert_eq!(used(0.0, 24.0, 1.0).len(), 24);
        assert_eq!(used(22.0, 2.0, 0.0), [[0; 2]; 0]);
    }

    /// Counting: as many hours as the clock passes from the first to the last, on each day of use.
    #[test]
    fn a_year_has_its_hours_of_use() {
        for from in 0..24_usize {
            for until in (1..=24_usize).filter(|&until| until != from) {
                for days in 0..=7_usize {
                    let design = Design {
                        used_from: from as f64,
                        used_until: until as f64,
                        used_days: days as f64,
                        ..Design::default()
                    };
                    let found = (0..HOURS_IN_YEAR).filter(|&hour| design.is_used(hour)).count();
                    let lasting = if from < until { until - from } else { 24 - from + until };
                    let of_use = (0..DAYS_IN_YEAR).filter(|day| day % 7 < days).count();
                    assert_eq!(found, lasting * of_use, "{from} until {until}, {days} days");
                }
            }
        }
    }
}
