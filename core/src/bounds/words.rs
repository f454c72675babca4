//! Numbers, units and keys as a developer reads them.

use core::fmt;

/// A number as a developer reads it: with a power of ten where it is very small or very great.
pub(crate) struct Figure(pub f64);

impl fmt::Display for Figure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let size = self.0.abs();
        if size.is_finite() && size != 0.0 && !(1e-4..1e9).contains(&size) {
            write!(out, "{:e}", self.0)
        } else {
            write!(out, "{}", self.0)
        }
    }
}

/// Writes a key as words.
pub(crate) fn write_words(out: &mut fmt::Formatter<'_>, key: &str) -> fmt::Result {
    for (n, word) in key.split('_').enumerate() {
        out.write_str(if n > 0 { " " } else { "" })?;
        out.write_str(word)?;
    }
    Ok(())
}

/// Writes a unit after a number, if there is one.
pub(crate) fn write_unit(out: &mut fmt::Formatter<'_>, unit: &str) -> fmt::Result {
    out.write_str(if unit.is_empty() { "" } else { " " })?;
    out.write_str(unit)
}
