//! The year drawn as a strip: heat by days over a base line, and under it one band for each kind
//! of bad hour, as high as the day had of them.

use crate::state::YearDay;
use inchwise_core::climate::{DAYS_IN_YEAR, FIRST_DAY_OF_MONTH};

use super::pen::Pen;
use super::shape::Rect;
use super::ticks::Axis;

/// Hours that a band shows, from the top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Band {
    /// Frost on the coldest spot.
    Frost,
    /// Drip from it.
    Drip,
    /// Too warm.
    TooWarm,
    /// Too cold.
    TooCold,
}

impl Band {
    /// Every band.
    pub const ALL: [Self; 4] = [Self::Frost, Self::Drip, Self::TooWarm, Self::TooCold];

    /// Its hours in a day.
    pub const fn hours(self, day: &YearDay) -> f64 {
        match self {
            Self::Frost => day.frost,
            Self::Drip => day.drip,
            Self::TooWarm => day.too_warm,
            Self::TooCold => day.too_cold,
        }
    }
}

const WIDTH: f64 = 1000.0;
const HEAT: f64 = 240.0;
const BAND: f64 = 46.0;
const NAME: f64 = 62.0;

/// The paper of every strip, room for words round the plot.
pub const PAPER: Rect =
    Rect::new(-70.0, -70.0, WIDTH + 6.0, HEAT + 44.0 + 4.0 * (NAME + BAND) + 4.0);

/// A year as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct YearStrip {
    /// Mean heat of each day, in the unit of the scale.
    pub heat: Vec<f64>,
    /// Hours of each band, day by day.
    pub bands: [Vec<f64>; 4],
    /// The heat's scale.
    pub scale: Axis,
}

impl YearStrip {
    /// Of the days of a year, heat in so many kilowatts.
    pub fn of(days: &[YearDay], kilowatts: f64) -> Self {
        let heat: Vec<f64> =
            days.iter().map(|day| day.heat.as_kilowatt_hours() / 24.0 / kilowatts).collect();
        let most = heat.iter().copied().fold(0.0, f64::max);
        let bands = Band::ALL.map(|band| days.iter().map(|day| band.hours(day)).collect());
        Self { heat, bands, scale: Axis::holding(&[0.0, most], 4) }
    }

    /// Where a day begins.
    pub fn x(day: usize) -> f64 {
        day as f64 / DAYS_IN_YEAR as f64 * WIDTH
    }

    /// Where a heat stands.
    pub fn y(&self, heat: f64) -> f64 {
        HEAT * (1.0 - self.scale.share(heat))
    }

    /// The heat's base line.
    pub const fn base(&self) -> f64 {
        HEAT
    }

    /// The middle of a month's name.
    pub fn month_at(month: usize) -> (f64, f64) {
        (Self::x(FIRST_DAY_OF_MONTH[month] + 15), HEAT + 28.0)
    }

    /// Top and bottom of a band.
    pub fn band_at(band: usize) -> [f64; 2] {
        let bottom = HEAT + 44.0 + (NAME + BAND) * (band as f64 + 1.0);
        [bottom - BAND, bottom]
    }

    /// Heat as an outline over its base line.
    pub fn heat_outline(&self) -> String {
        outline(&self.heat, HEAT, |heat| self.y(heat))
    }

    /// A band as an outline over its base line.
    pub fn band_outline(&self, band: usize) -> String {
        let [top, bottom] = Self::band_at(band);
        outline(&self.bands[band], bottom, |hours| bottom - (bottom - top) * hours / 24.0)
    }

    /// Base lines of heat and bands.
    pub fn base_lines(&self) -> String {
        let lines = [HEAT].into_iter().chain((0..4).map(|band| Self::band_at(band)[1]));
        lines.fold(Pen::new(), |pen, y| pen.between(0.0, y, WIDTH, y)).done()
    }

    /// Lines at the start of every month, and level ones at the ticks.
    pub fn grid(&self) -> String {
        let [_, bottom] = Self::band_at(3);
        let months = FIRST_DAY_OF_MONTH.iter().fold(Pen::new(), |pen, &day| {
            let x = Self::x(day);
            pen.between(x, 0.0, x, HEAT).between(x, HEAT + 44.0, x, bottom)
        });
        let ticks = self.scale.ticks();
        ticks
            .iter()
            .fold(months, |pen, &tick| pen.between(0.0, self.y(tick), WIDTH, self.y(tick)))
            .done()
    }
}

/// Steps over a base line; days alike next to one another make one step.
fn outline(values: &[f64], base: f64, at: impl Fn(f64) -> f64) -> String {
    let mut pen = Pen::new();
    let mut last = 0.0;
    for (day, &value) in values.iter().enumerate() {
        if value == last {
            continue;
        }
        let x = YearStrip::x(day);
        pen = if last == 0.0 { pen.command('M', &[x, base]) } else { pen.command('H', &[x]) };
        pen = pen.command('V', &[at(value)]);
        if value == 0.0 {
            pen = pen.command('Z', &[]);
        }
        last = value;
    }
    if last != 0.0 {
        pen = pen.command('H', &[WIDTH]).command('V', &[base]).command('Z', &[]);
    }
    pen.done()
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::units::Energy;

    fn day(kilowatt_hours: f64, frost: f64) -> YearDay {
        YearDay { heat: Energy::kilowatt_hours(kilowatt_hours), frost, ..YearDay::default() }
    }

    #[test]
    fn days_alike_make_one_step_and_nothing_makes_none() {
        let mut days = vec![day(24.0, 0.0); DAYS_IN_YEAR];
        days[100] = day(48.0, 24.0);
        let strip = YearStrip::of(&days, 1.0);
        assert_eq!(strip.heat_outline().matches('V').count(), 4, "{}", strip.heat_outline());
        let frost = strip.band_outline(0);
        let [top, bottom] = YearStrip::band_at(0);
        assert_eq!(frost.matches('M').count(), 1);
        assert!(
            frost.contains(&format!("V{top}")) && frost.contains(&format!("V{bottom}")),
            "{frost}"
        );
        assert_eq!(strip.band_outline(1), "");
        assert_eq!(strip.scale.high, 2.0);
    }

    #[test]
    fn bands_lie_apart_on_the_paper() {
        for band in 0..4 {
            let [top, bottom] = YearStrip::band_at(band);
            assert!(top < bottom && bottom <= PAPER.bottom);
            if band > 0 {
                assert!(top - YearStrip::band_at(band - 1)[1] >= 38.0, "room for its name");
            }
        }
    }
}
