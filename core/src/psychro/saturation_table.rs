//! Saturation pressure looked up, for loops over many hours.

use super::hyland_wexler::saturation_pascals;

/// Step of the table, K, and its ends, °C.
const STEP: f64 = 0.25;
const COLDEST: f64 = -100.0;
const HOTTEST: f64 = 150.0;
const CELLS: usize = ((HOTTEST - COLDEST) / STEP) as usize;

/// 1.5·2⁵². A number added to it is rounded to a whole one, which stands in the last bits of the sum:
/// a conversion that keeps to Rust's rules for numbers out of range takes longer, in wasm much longer.
const WHOLE_IN_LAST_BITS: f64 = 6_755_399_441_055_744.0;

/// [`super::hyland_wexler::saturation_pressure`] at every quarter kelvin from −100 °C to 150 °C, with parabolas
/// between: within 3·10⁻⁶ of the formula, but for the cell of 0 °C where ice turns to water, within 2·10⁻⁴.
#[derive(Clone, Debug)]
pub struct SaturationTable {
    /// Value in the middle, slope there and curvature of every cell.
    cells: Vec<[f64; 3]>,
}

impl Default for SaturationTable {
    fn default() -> Self {
        Self::new()
    }
}

impl SaturationTable {
    /// Reckons the table.
    pub fn new() -> Self {
        let at = |half: usize| saturation_pascals(COLDEST + half as f64 * (STEP / 2.0));
        let cells = (0..CELLS)
            .map(|cell| {
                let [left, middle, right] = [at(2 * cell), at(2 * cell + 1), at(2 * cell + 2)];
                [middle, right - left, 2.0 * (left + right - 2.0 * middle)]
            })
            .collect();
        Self { cells }
    }

    /// p_ws in Pa at a temperature in °C. Beyond the ends of the table, which no weather on
    /// earth and no room reaches, the outermost parabola goes on.
    pub fn pascals(&self, celsius: f64) -> f64 {
        // Cells counted from the middle of the first.
        let at = celsius * (1.0 / STEP) - (COLDEST / STEP + 0.5);
        let nearest = (at + WHOLE_IN_LAST_BITS).to_bits() as i32;
        let cell = nearest.clamp(0, CELLS as i32 - 1);
        let x = at - f64::from(cell);
        self.cells
            .get(cell as usize)
            .map_or(0.0, |&[middle, slope, curvature]| middle + x * (slope + x * curvature))
    }
}

#[cfg(test)]
mod tests {
    use super::SaturationTable;
    use crate::psychro::hyland_wexler::saturation_pascals;

    #[test]
    fn the_table_is_the_formula() {
        let table = SaturationTable::new();
        for n in -9990..14_990 {
            let celsius = f64::from(n) * 0.01;
            let exact = saturation_pascals(celsius);
            let off = (table.pascals(celsius) / exact - 1.0).abs();
            let allowed = if (0.0..0.25).contains(&celsius) { 2e-4 } else { 3e-6 };
            assert!(off < allowed, "{celsius} °C: off by {off:e}");
        }
    }

    #[test]
    fn it_goes_on_evenly_from_cell_to_cell_and_beyond_its_ends() {
        let table = SaturationTable::new();
        for quarter in (-404..=604).filter(|&quarter| quarter != 0) {
            let edge = f64::from(quarter) * 0.25;
            let (before, after) = (table.pascals(edge - 1e-9), table.pascals(edge + 1e-9));
            assert!((after / before - 1.0).abs() < 1e-8, "{edge} °C: {before} and {after}");
        }
        assert!(table.pascals(f64::NAN).is_nan());
    }
}
