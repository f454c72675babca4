//! The greater and the lesser of two numbers in loops over many.

/// The greater; the second where one is no number.
///
/// `f64::max` promises the number of the two, for which wasm has no instruction: it calls a function.
pub(crate) const fn greater(one: f64, other: f64) -> f64 {
    if one > other { one } else { other }
}

/// The lesser; the second where one is no number.
pub(crate) const fn lesser(one: f64, other: f64) -> f64 {
    if one < other { one } else { other }
}
