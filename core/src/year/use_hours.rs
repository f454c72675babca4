//! When the room is used.

use super::choices::YearChoices;
use crate::climate::DAYS_IN_YEAR;

impl YearChoices {
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
    use super::YearChoices;
    use crate::climate::{DAYS_IN_YEAR, HOURS_IN_YEAR};

    /// Which hours of the first week are used, as day and clock.
    fn used(from: f64, until: f64, days: f64) -> Vec<[usize; 2]> {
        let choices = YearChoices {
            used_from: from,
            used_until: until,
            used_days: days,
            ..YearChoices::default()
        };
        let hours = (0..7 * 24).filter(|&hour| choices.is_used(hour));
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
                    let choices = YearChoices {
                        used_from: from as f64,
                        used_until: until as f64,
                        used_days: days as f64,
                        ..YearChoices::default()
                    };
                    let found = (0..HOURS_IN_YEAR).filter(|&hour| choices.is_used(hour)).count();
                    let lasting = if from < until { until - from } else { 24 - from + until };
                    let of_use = (0..DAYS_IN_YEAR).filter(|day| day % 7 < days).count();
                    assert_eq!(found, lasting * of_use, "{from} until {until}, {days} days");
                }
            }
        }
    }
}
