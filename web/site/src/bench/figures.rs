//! Least, median and greatest of what was measured.

/// A spread of figures; there is at least one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Spread {
    pub(crate) least: f64,
    pub(crate) median: f64,
    pub(crate) greatest: f64,
}

impl Spread {
    /// Of some figures, nothing if there are none.
    pub(crate) fn of(figures: impl IntoIterator<Item = f64>) -> Option<Self> {
        let mut sorted: Vec<f64> = figures.into_iter().collect();
        sorted.sort_by(f64::total_cmp);
        let (least, greatest) = (*sorted.first()?, *sorted.last()?);
        let median = (sorted[(sorted.len() - 1) / 2] + sorted[sorted.len() / 2]) / 2.0;
        Some(Self { least, median, greatest })
    }
}

/// A figure with three digits that count.
pub(crate) fn shown(figure: f64) -> String {
    let decimals = if figure >= 100.0 {
        0
    } else if figure >= 10.0 {
        1
    } else if figure >= 1.0 {
        2
    } else {
        3
    };
    format!("{figure:.decimals$}")
}

#[cfg(test)]
mod tests {
    use super::{Spread, shown};

    #[test]
    fn the_median_of_an_even_count_lies_between() {
        let spread = Spread::of([4.0, 1.0, 3.0, 2.0]).unwrap();
        assert_eq!(spread, Spread { least: 1.0, median: 2.5, greatest: 4.0 });
        assert_eq!(Spread::of([7.0]).unwrap().median, 7.0);
        assert_eq!(Spread::of([]), None);
    }

    #[test]
    fn three_digits_count() {
        assert_eq!([1234.5, 23.45, 2.345, 0.0761].map(shown), ["1234", "23.4", "2.35", "0.076"]);
    }
}
