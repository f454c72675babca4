//! Metric or imperial: quantities to and from the words of each.

/// Which units are shown and taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum UnitSystem {
    /// Millimetres, metres, litres, watts.
    #[default]
    Metric,
    /// Feet and inches, cubic feet, Btu/h, R-values.
    Imperial,
}
