//! How hours of frost and drip, and the water on windows, come about.

use inchwise_core::climate::hours_of;
use inchwise_core::heat_loss::AIR_HEAT_CAPACITY;
use inchwise_core::psychro::{MoistAir, hyland_wexler, saturation_humidity_ratio};
use inchwise_core::units::{HumidityRatio, Mass, MassFlow, Temperature, TemperatureFactor};
use inchwise_core::ventilation::DryAirFlow;
use inchwise_core::year::Period;

use super::super::figures::most_of;
use super::Behind;
use crate::ui::Working;

/// A month's mean with the water that the use gives and the leaks carry out.
struct DampMonth {
    month: usize,
    outdoors: MoistAir,
    given: MassFlow,
    leaks: MassFlow,
}

impl DampMonth {
    fn of(behind: &Behind<'_>, month: usize) -> Option<Self> {
        let (grounds, choices) = (&behind.answer.grounds, behind.choices);
        let mean = &grounds.months[month];
        let hours = hours_of(month);
        let used = hours.clone().filter(|&hour| choices.is_used(hour)).count() as f64;
        let always = choices.moisture_always + choices.moisture_drying;
        let given = always + choices.moisture_in_use * (used / hours.len() as f64);
        let leaks = MassFlow::new(grounds.leaks.value() / AIR_HEAT_CAPACITY.value());
        let outdoors = MoistAir::from_vapour_pressure(
            mean.outdoors,
            mean.outdoor_vapour,
            grounds.air_pressure,
        );
        Some(Self { month, outdoors: outdoors.ok()?, given, leaks })
    }

    /// Water in the room's air, if no more goes than leaks take.
    fn room(&self) -> Option<HumidityRatio> {
        let leaks = self.leaks > MassFlow::ZERO;
        leaks.then(|| {
            HumidityRatio::new(self.outdoors.humidity_ratio().value() + self.given / self.leaks)
        })
    }

    fn step(&self, behind: &Behind<'_>) -> String {
        let notation = behind.notation;
        let words = notation.language.year_room_workings();
        let (Some(room), Ok(air)) = (self.room(), DryAirFlow::new(self.leaks)) else {
            return words.no_leaks.to_owned();
        };
        words.in_mean.with(&[
            notation.language.month(self.month),
            &behind.tenth(self.outdoors.temperature()),
            &notation.humidity_ratio(self.outdoors.humidity_ratio()),
            &notation.moisture_finely(self.given),
            &notation.dry_air(air),
            &notation.humidity_ratio(room),
        ])
    }
}

/// The temperature of a place in a month's mean, said with its factor.
fn surface(behind: &Behind<'_>, month: usize, factor: TemperatureFactor) -> (Temperature, String) {
    let notation = behind.notation;
    let mean = &behind.answer.grounds.months[month];
    let surface = mean.outdoors + (mean.room - mean.outdoors) * factor.value();
    let said = notation.language.workings().surface.with(&[
        &behind.tenth(mean.outdoors),
        &notation.number(factor.value(), 3),
        &notation.difference_to_a_tenth(mean.room - mean.outdoors),
        &behind.tenth(surface),
    ]);
    (surface, said)
}

pub(super) fn damp(behind: &Behind<'_>) -> Option<Working> {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let answer = behind.answer;
    let spot = behind.evaluation.cold_spots.weakest()?;
    let wet = |period: &Period| f64::from(period.frost_hours + period.drip_hours);
    // The wettest month, or where none is wet the coldest.
    let month = if answer.year.frost_hours + answer.year.drip_hours > 0 {
        most_of(&answer.months, wet)
    } else {
        most_of(&answer.months, |period| period.energy.heat().value())
    };
    let mean = DampMonth::of(behind, month)?;
    let (celsius, said) = surface(behind, month, spot.temperature_factor);
    let holds = saturation_humidity_ratio(celsius, answer.grounds.air_pressure).ok()?;
    let [frost, drip] = [answer.months[month].frost_hours, answer.months[month].drip_hours]
        .map(|hours| notation.count(f64::from(hours)));
    let steps = vec![
        mean.step(behind),
        said,
        words.spot_holds.with(&[&behind.tenth(celsius), &notation.humidity_ratio(holds)]),
        words.landed_hours.with(&[
            notation.language.month(month),
            &frost,
            &drip,
            &notation.count(hours_of(month).len() as f64),
        ]),
    ];
    Some(Working { rule: words.damp, steps, source: words.damp_source.to_owned() })
}

pub(super) fn windows(behind: &Behind<'_>) -> Option<Working> {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let (answer, grounds) = (behind.answer, &behind.answer.grounds);
    let source = words.window_source.to_owned();
    if grounds.onto_windows == 0.0 {
        let steps = vec![words.no_windows.to_owned()];
        return Some(Working { rule: words.windows, steps, source });
    }
    let month = if answer.year.water_on_windows > Mass::ZERO {
        most_of(&answer.months, |period| period.water_on_windows.value())
    } else {
        most_of(&answer.months, |period| period.energy.heat().value())
    };
    let mean = DampMonth::of(behind, month)?;
    let (celsius, said) = surface(behind, month, grounds.window_factor);
    let mut steps = vec![mean.step(behind), said];
    let room_air = mean.room().and_then(|ratio| {
        let room = grounds.months[month].room;
        MoistAir::from_humidity_ratio(room, ratio, grounds.air_pressure).ok()
    });
    let at_windows = hyland_wexler::saturation_pressure(celsius).ok()?;
    if let Some(room) = room_air {
        let pressure = room.vapour_pressure();
        let [inside, there] = [pressure, at_windows].map(|one| notation.vapour_pressure(one));
        let hours = hours_of(month).len() as f64;
        let over = (pressure - at_windows).value();
        steps.push(if over > 0.0 {
            let water = Mass::new(grounds.onto_windows * over * hours * 3600.0);
            words.window_water.with(&[
                &notation.water_a_pressure(grounds.onto_windows),
                &inside,
                &there,
                &notation.count(hours),
                &notation.number(notation.parts_of_a_mass(), 0),
                &notation.water(water),
            ])
        } else {
            words.window_dry.with(&[&inside, &there])
        });
    }
    let water = notation.water(answer.months[month].water_on_windows);
    steps.push(words.window_month.with(&[notation.language.month(month), &water]));
    Some(Working { rule: words.windows, steps, source })
}
