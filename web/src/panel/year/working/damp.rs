//! How hours of frost and drip, and the water onto cold places, come about.

use inchwise_core::climate::hours_of;
use inchwise_core::heat_loss::AIR_HEAT_CAPACITY;
use inchwise_core::psychro::{MoistAir, saturation_humidity_ratio};
use inchwise_core::units::{HumidityRatio, Mass, MassFlow, Temperature, TemperatureFactor};
use inchwise_core::ventilation::DryAirFlow;
use inchwise_core::year::Period;

use super::super::super::asked::Working;
use super::super::figures::most_of;
use super::Behind;

/// A month's mean with the water that the use gives and the leaks carry out.
struct DampMonth {
    month: usize,
    outdoors: MoistAir,
    given: MassFlow,
    leaks: MassFlow,
}

impl DampMonth {
    fn of(behind: &Behind<'_>, month: usize) -> Option<Self> {
        let grounds = &behind.answer.grounds;
        let mean = &grounds.months[month];
        let given = behind.evaluation.balance.as_ref().ok()?.humidity.sources.mean.typical;
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
    let spot = behind.evaluation.balance.as_ref().ok()?.humidity.places.first()?;
    let wet = |period: &Period| f64::from(period.frost_hours + period.drip_hours);
    // The wettest month, or where none is wet the coldest.
    let month = if answer.year.frost_hours + answer.year.drip_hours > 0 {
        most_of(&answer.months, wet)
    } else {
        most_of(&answer.months, |period| period.energy.heat().value())
    };
    let mean = DampMonth::of(behind, month)?;
    let (celsius, said) = surface(behind, month, spot.factor);
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

pub(super) fn water(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let year = &behind.answer.year;
    let came = |period: &Period| period.condensed + period.frosted;
    let mut steps = Vec::new();
    if came(year) > Mass::ZERO {
        let wet = behind.answer.months.iter().enumerate();
        let wet = wet.filter(|(_, period)| came(period) > Mass::ZERO);
        let list = wet.map(|(month, period)| {
            [notation.language.month(month), "\u{a0}", &notation.water_finely(came(period))]
                .concat()
        });
        let list = list.collect::<Vec<_>>().join(" + ");
        steps.push(words.water_months.with(&[&list, &notation.water_finely(came(year))]));
    }
    let left = came(year) - year.dried_back - year.ran_off;
    let parts = [year.condensed, year.frosted, year.dried_back, year.ran_off, left];
    let parts = parts.map(|mass| notation.water_finely(mass));
    steps.push(words.water_left.with(&parts.each_ref().map(String::as_str)));
    Working { rule: words.water, steps, source: words.water_source.to_owned() }
}
