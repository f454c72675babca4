//! Saturation pressure looked up, for loops over many hours.

use super::hyland_wexler::saturation_pascals;

/// Step of the table, K, and its ends, °C.
const STEP: f64 = 0.25;
const COLDEST: f64 = -100.0;
const HOTTEST: f64 = 150.0;
const CELLS: usize = ((HOTTEST - COLDEST) / STEP) as usize;

/// [`super::hyland_wexler::saturation_pressure`] at every quarter kelvin from −100 °C to 150 °C, with parabolas
/// between: within 3·10⁻⁶ of the formula, but for the cell of 0 °C where ice turns to water, within 2·10⁻⁴.
#[derive(Clone, Debug)]
pub struct SaturationTable {
    /// Value at the left end, slope and curvature of every cell.
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
                let curvature = 2.0 * (left + right - 2.0 * middle);
                [left, right - left - curvature, curvature]
            })
            .collect();
        Self { cells }
    }

    /// p_ws in Pa at a temperature in °C. Beyond the ends of the table, which no weather on
    /// earth and no room reaches, the outermost parabola goes on.
    pub fn pascals(&self, celsius: f64) -> f64 {
        let at = (celsius - COLDEST) * (1.0 / STEP);
        let cell = (at.max(0.0) as usize).min(CELLS - 1);
        let x = at - cell as f64;
        self.cells
            .get(cell)
            .map_or(0.0, |&[left, slope, curvature]| left + x * (slope + x * curvature))
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
}
