//! How figures of the year come about: the rule of an hour, the numbers in it, and what a person can reckon
//! by hand beside the hours.

mod damp;
mod energy;
mod heat;
mod room;
mod summer;
#[cfg(test)]
mod tests;

use inchwise_aside::YearAnswer;
use inchwise_core::climate::{FIRST_DAY_OF_MONTH, SUNNY_SURFACE_COEFFICIENT, month_of_day};
use inchwise_core::design::Design;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::units::{Power, Temperature, ThermalTransmittance};
use inchwise_core::year::{MeanHour, YearChoices};

use super::super::asked::Working;
use crate::measure::Notation;

/// A figure of the year that can be asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum YearFigure {
    /// Heat of the year.
    Heat,
    /// What is bought for it.
    Bought,
    /// Its cost.
    Cost,
    /// The day that takes the most.
    ColdestDay,
    /// Carbon dioxide.
    Carbon,
    /// Whether the heater holds.
    Heater,
    /// Whether the supply does.
    Supply,
    /// Hours under the set-point.
    Unmet,
    /// After a power cut.
    PowerCut,
    /// From stone cold.
    WarmUp,
    /// Frost and drip.
    Damp,
    /// Water onto cold places.
    Water,
    /// The warmest hour.
    Summer,
    /// Hours that are too warm.
    TooWarm,
}

/// What a year's figures were reckoned from.
pub(super) struct Behind<'a> {
    /// The design.
    pub(super) evaluation: &'a Evaluation,
    /// What the worker made of the year.
    pub(super) answer: &'a YearAnswer,
    /// The choices about it.
    pub(super) choices: &'a YearChoices,
    /// The temperature heaters are sized for in these hours.
    pub(super) winter: Temperature,
    /// How it is written.
    pub(super) notation: Notation,
}

/// The working of a figure; nothing where there is no such figure now.
pub(super) fn working(figure: YearFigure, behind: &Behind<'_>) -> Option<Working> {
    Some(match figure {
        YearFigure::Heat => heat::heat(behind),
        YearFigure::ColdestDay => heat::coldest_day(behind),
        YearFigure::Bought => energy::bought(behind),
        YearFigure::Cost => energy::cost(behind),
        YearFigure::Carbon => energy::carbon(behind),
        YearFigure::Heater => room::heater(behind),
        YearFigure::Supply => room::supply(behind),
        YearFigure::Unmet => room::unmet(behind),
        YearFigure::PowerCut => room::power_cut(behind),
        YearFigure::WarmUp => room::warm_up(behind),
        YearFigure::Damp => damp::damp(behind)?,
        YearFigure::Water => damp::water(behind),
        YearFigure::Summer => summer::summer(behind),
        YearFigure::TooWarm => summer::too_warm(behind),
    })
}

/// People, equipment, sun through windows and on steel, sky, drying, and what they come to.
fn parts_of(mean: &MeanHour) -> [Power; 7] {
    let gains = mean.gains();
    [mean.people, mean.equipment, mean.sun, mean.sun_on_steel, mean.sky, mean.drying, gains]
}

impl Behind<'_> {
    fn design(&self) -> &Design {
        self.evaluation.checked.design()
    }

    /// How the sun of an hour comes in.
    fn sun_rule(&self) -> String {
        let (notation, design) = (self.notation, self.design());
        let film = SUNNY_SURFACE_COEFFICIENT.value();
        notation.language.year_energy_workings().sun_rule.with(&[
            &notation.area_finely(self.evaluation.envelope.windows.area),
            &notation.percent(design.window_sun.value()),
            &notation.percent(design.sun_on_windows.value()),
            &notation.percent(design.paint.value()),
            &notation.transmittance(ThermalTransmittance::new(film), 1),
        ])
    }

    fn tenth(&self, temperature: Temperature) -> String {
        self.notation.temperature_to_a_tenth(temperature)
    }

    /// People, equipment, sun, sky and what they come to, in words.
    fn gains_of(&self, mean: &MeanHour) -> String {
        let parts = parts_of(mean).map(|part| self.power(part));
        let words = self.notation.language.year_energy_workings();
        words.day_gains.with(&parts.each_ref().map(String::as_str))
    }

    fn power(&self, power: Power) -> String {
        self.notation.part_of_load(power)
    }

    /// A day of the year with the name of its month.
    fn day(&self, day: usize) -> String {
        let month = month_of_day(day);
        let date = (day - FIRST_DAY_OF_MONTH[month] + 1) as f64;
        let name = self.notation.language.month(month);
        self.notation.language.year_energy_workings().date.with(&[&self.notation.count(date), name])
    }
}
