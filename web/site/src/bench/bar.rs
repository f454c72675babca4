//! A ratio or figure against the bar set for it.

use super::competitor::Answer;
use super::figures::{Spread, shown};

/// The heading over rows of bars.
pub(crate) const HEADING: [&str; 7] =
    ["what", "bar", "of the least times", "least", "median", "greatest", "by least times"];

/// A row: what is judged, the most it should be, what it is by the least times, and the spread of
/// what was found round by round, if there were rounds.
pub(crate) fn row(what: &str, bar: f64, of_least: f64, by_round: Option<Spread>) -> Vec<String> {
    let spread = by_round.map_or_else(
        || ["-", "-", "-"].map(str::to_owned),
        |found| [found.least, found.median, found.greatest].map(shown),
    );
    let met = if of_least <= bar { "met" } else { "**missed**" };
    let mut cells = vec![what.to_owned(), format!("≤ {bar}"), shown(of_least)];
    cells.extend(spread);
    cells.push(met.to_owned());
    cells
}

/// The row of one program's times over another's; nothing if either has none.
pub(crate) fn of_times(
    what: &str,
    bar: f64,
    ours: &[Answer],
    others: &[Answer],
) -> Option<Vec<String>> {
    let least = |answers: &[Answer]| times(answers).map(|times| times.least);
    let pairs = ours.iter().zip(others);
    let ratios = Spread::of(pairs.map(|(a, b)| a.milliseconds / b.milliseconds));
    Some(row(what, bar, least(ours)? / least(others)?, ratios))
}

/// The spread of an amount of answers' times.
pub(crate) fn times(answers: &[Answer]) -> Option<Spread> {
    Spread::of(answers.iter().map(|answer| answer.milliseconds))
}

#[cfg(test)]
mod tests {
    use super::{Answer, of_times, row};

    #[test]
    fn a_bar_is_met_from_below() {
        assert_eq!(row("a", 1.3, 1.25, None)[2..], ["1.25", "-", "-", "-", "met"]);
        assert_eq!(row("a", 1.3, f64::NAN, None)[6], "**missed**");
    }

    #[test]
    fn ratios_are_taken_round_by_round() {
        let answer =
            |milliseconds| Answer { milliseconds, iterations: None, residual: 0.0, result: 1.0 };
        let (ours, others) = ([answer(1.0), answer(4.0)], [answer(2.0), answer(4.0)]);
        let row = of_times("a", 0.4, &ours, &others).unwrap();
        assert_eq!(row[2..], ["0.500", "0.500", "0.750", "1.00", "**missed**"]);
        assert_eq!(of_times("a", 0.4, &ours, &[]), None);
    }
}
