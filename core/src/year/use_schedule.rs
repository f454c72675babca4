//! What the use of the room gives off in every hour: who is there, heat, water.

use crate::climate::DAYS_IN_YEAR;
use crate::design::Design;
use crate::heat_load::drying_heat;
use crate::humidity::{Sources, Timing};
use crate::units::MassFlow;

/// One hour of use, W and kg/s.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct HourOfUse {
    /// Whether the room is used.
    pub(super) used: bool,
    /// Dry heat of people and animals.
    pub(super) occupants: f64,
    /// Heat of equipment.
    pub(super) equipment: f64,
    /// Moisture given to the air.
    pub(super) source: f64,
    /// Heat that the part of it takes which evaporates in the room.
    pub(super) drying: f64,
}

/// The hours of a week, and those of the first day of the year, whose night before is that of 31 December.
#[derive(Clone, Debug)]
pub(super) struct UseSchedule([[HourOfUse; 24]; 8]);

/// The row of the first day.
const FIRST_DAY: usize = 7;

impl UseSchedule {
    pub(super) fn of(design: &Design, sources: &Sources) -> Self {
        let row = |row: usize| {
            // A day in the middle of the year stands for its weekday.
            let day = if row == FIRST_DAY { 0 } else { 7 + row };
            core::array::from_fn(|clock| hour_of_use(design, sources, day * 24 + clock))
        };
        Self(core::array::from_fn(row))
    }

    /// An hour of the year, from 0 in the first of 1 January.
    pub(super) fn at(&self, hour: usize) -> &HourOfUse {
        let day = hour / 24 % DAYS_IN_YEAR;
        &self.0[if day == 0 { FIRST_DAY } else { day % 7 }][hour % 24]
    }
}

fn hour_of_use(design: &Design, sources: &Sources, hour: usize) -> HourOfUse {
    let used = design.is_used(hour);
    let since = design.hours_since_use_began(hour);
    let (mut source, mut drying) = (0.0, MassFlow::ZERO);
    for each in &sources.each {
        let share = match each.timing {
            Timing::Always => 1.0,
            Timing::WhileUsed => f64::from(u8::from(used)),
            // What is left of it at the beginning of the hour, an hour's worth at most.
            Timing::FromStartOfUse => {
                since.map_or(0.0, |since| (each.load.active().as_hours() - since).clamp(0.0, 1.0))
            }
        };
        let rate = each.load.while_active().typical * share;
        source += rate.value();
        if each.takes_heat_of_the_room {
            drying += rate;
        }
    }
    let people = if used { design.heat_of_person.value() * design.person_count } else { 0.0 };
    let in_use = if used { design.equipment_in_use.value() } else { 0.0 };
    HourOfUse {
        used,
        occupants: people + design.animal_heat.value(),
        equipment: design.equipment_always.value() + in_use,
        source,
        drying: drying_heat(drying).value(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Three loads and a shower a day on two days of the week: the year gives off as many as there are days of use,
    /// each load 5.45 US pints, each shower half of one (the table of emissions), to the gram.
    #[test]
    fn a_year_gives_off_what_its_days_bring() {
        let design = Design {
            person_count: 0.0,
            laundry_loads: 3.0,
            showers: 1.0,
            used_from: 20.0,
            used_until: 23.0,
            used_days: 2.0,
            ..Design::default()
        };
        let sources = Sources::of(&design).expect("in range");
        let schedule = UseSchedule::of(&design, &sources);
        let given: f64 = (0..8760).map(|hour| schedule.at(hour).source * 3600.0).sum();
        let days = (0..365).filter(|day| day % 7 < 2).count() as f64;
        let pint = 0.473_176_473;
        // What the last evening leaves over for the new year comes in its first night instead.
        assert!((given - days * pint * (3.0 * 5.45 + 0.5)).abs() < 1e-6, "{given}");
        let dried: f64 = (0..8760).map(|hour| schedule.at(hour).drying * 3600.0).sum();
        let expected = days * pint * 3.0 * 5.45 * 2.454_48e6;
        assert!((dried / expected - 1.0).abs() < 1e-9, "{dried}");
    }
}
