//! Round numbers along an axis.

/// An axis from one round number to another, with round numbers between.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// The first tick.
    pub low: f64,
    /// The last tick.
    pub high: f64,
    /// From one tick to the next: 1, 2 or 5 times a power of ten.
    pub step: f64,
}

impl Axis {
    /// The axis that holds all values with at most `most` steps, two at the least: values on both
    /// sides of zero need as many. Values that are not finite are left out; with none left it runs
    /// from 0 to 1.
    pub fn holding(values: impl IntoIterator<Item = f64>, most: usize) -> Self {
        let (low, high) = values
            .into_iter()
            .filter(|value| value.is_finite())
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
                (low.min(value), high.max(value))
            });
        if low > high {
            return Self { low: 0.0, high: 1.0, step: 1.0 };
        }
        let most = most.max(2) as f64;
        let mut step = 1.0;
        while step > (high - low).max(f64::MIN_POSITIVE) && step > 1e-9 {
            step /= 10.0;
        }
        loop {
            for factor in [1.0, 2.0, 5.0] {
                let step = step * factor;
                let (low, high) = ((low / step).floor() * step, (high / step).ceil() * step);
                let high = if high > low { high } else { low + step };
                if (high - low) / step <= most + 0.5 {
                    return Self { low, high, step };
                }
            }
            step *= 10.0;
        }
    }

    /// The ticks, in rising order.
    pub fn ticks(&self) -> Vec<f64> {
        let count = ((self.high - self.low) / self.step).round() as usize;
        (0..=count).map(|index| self.low + self.step * index as f64).collect()
    }

    /// Where a value lies between the ends, 0 to 1.
    pub fn share(&self, value: f64) -> f64 {
        (value - self.low) / (self.high - self.low)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_axis_runs_between_round_numbers() {
        let axis = Axis::holding([3944.0, 8019.0], 6);
        assert_eq!((axis.low, axis.high, axis.step), (3000.0, 9000.0, 1000.0));
        assert_eq!(axis.ticks().len(), 7);
        assert_eq!(axis.share(6000.0), 0.5);
    }

    #[test]
    fn every_axis_holds_its_values_with_few_steps() {
        for (low, high) in [(0.0, 0.0), (5.0, 5.0), (0.02, 0.07), (-3.0, 1e6), (140.0, 311.0)] {
            for most in 2..8 {
                let axis = Axis::holding([low, high], most);
                assert!(axis.low <= low && high <= axis.high, "{axis:?}");
                assert!(axis.ticks().len() <= most + 1, "{axis:?}");
            }
        }
    }

    #[test]
    fn no_values_make_a_plain_axis() {
        assert_eq!(Axis::holding([f64::NAN], 5).ticks(), vec![0.0, 1.0]);
    }
}
