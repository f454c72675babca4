//! A year as plain numbers: what is asked of the worker, and what it answers.

use inchwise_core::climate::{ClimateQuantity, DAYS_IN_YEAR, NotReached};
use inchwise_core::room_network::Course;
use inchwise_core::units::{
    Energy, Mass, Power, SurfaceMoisture, Temperature, TemperatureDifference, Time,
};
use inchwise_core::year::{
    EnergyByPurpose, HeaterCheck, HeaterKind, Period, PriceDate, Summer, SummerCase, SupplyCheck,
    YearChoices, YearField, YearGrounds,
};

use crate::pack::{at_place, place_of};
use crate::year_grounds::{
    IN_COURSE, IN_GROUNDS, pack_course, pack_grounds, unpack_course, unpack_grounds,
};

/// Choices as numbers: heater, currency, date of the prices, then every field, NaN for a price
/// not given.
pub fn pack_choices(choices: &YearChoices) -> Vec<f64> {
    let date = choices.prices_of.map_or([f64::NAN; 3], |date| {
        [f64::from(date.year), f64::from(date.month), f64::from(date.day)]
    });
    let mut numbers = vec![place_of(&HeaterKind::LAWFUL, &choices.heater)];
    numbers.extend(choices.currency.map(f64::from));
    numbers.extend(date);
    numbers.extend(YearField::ALL.iter().map(|&field| choices.get(field).unwrap_or(f64::NAN)));
    numbers
}

/// The choices that were packed; `None` if these are not the numbers of some.
pub fn unpack_choices(numbers: &[f64]) -> Option<YearChoices> {
    let (&[heater, first, second, third, year, month, day], fields) =
        numbers.split_first_chunk::<7>()?;
    if fields.len() != YearField::ALL.len() {
        return None;
    }
    let prices_of = (!year.is_nan()).then_some(PriceDate {
        year: year as u16,
        month: month as u8,
        day: day as u8,
    });
    let mut choices = YearChoices {
        heater: at_place(&HeaterKind::LAWFUL, heater)?,
        currency: [first, second, third].map(|letter| letter as u8),
        prices_of,
        ..YearChoices::default()
    };
    for (&field, &number) in YearField::ALL.iter().zip(fields) {
        choices.set(field, (!number.is_nan()).then_some(number));
    }
    Some(choices)
}

/// One day of a year: heat, and hours of each state.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct YearDay {
    /// Heat of heater and backup.
    pub heat: Energy,
    /// Hours in which frost grew on the coldest spot.
    pub frost: f64,
    /// Hours in which it dripped.
    pub drip: f64,
    /// Hours in which the room was too warm.
    pub too_warm: f64,
    /// Hours in which the heater could not hold the set-point.
    pub too_cold: f64,
}

/// What the page shows of a year.
#[derive(Clone, Debug, PartialEq)]
pub struct YearAnswer {
    /// Whether fields of the design are still being solved: theirs are those of an earlier one.
    pub is_waiting: bool,
    /// January to December.
    pub months: Vec<Period>,
    /// The whole year.
    pub year: Period,
    /// 1 January to 31 December.
    pub days: Vec<YearDay>,
    /// Greatest heat of an hour.
    pub greatest_heat: Power,
    /// Mean heat of the day that took the most.
    pub coldest_day: Power,
    /// Most frost on the coldest spot.
    pub most_frost: SurfaceMoisture,
    /// The summer as chosen and otherwise.
    pub summer: Summer,
    /// After a power cut at the place's winter temperature: until each of [`COOLED_TO`]; none if never.
    pub cool_down: [Option<Time>; 2],
    /// From as cold as outdoors to [`WARM_ENOUGH`] of the set-point: air, surfaces; none if never.
    pub warm_up: [Option<Time>; 2],
    /// Whether the heater holds the room.
    pub heater: HeaterCheck,
    /// Whether the supply carries it.
    pub supply: SupplyCheck,
    /// Heating degree days of the hours to each of [`DEGREE_DAY_BASES`], K·d.
    pub degree_days: [f64; 2],
    /// How the room cools after a power cut, and how air and surfaces warm up.
    pub courses: [Course; 3],
    /// What the figures rest on.
    pub grounds: YearGrounds,
    /// What of the place its hours do not have.
    pub not_reached: Vec<NotReached>,
}

/// What heating degree days are counted to: 18 °C in metric and 65 °F in imperial units (common
/// practice, no source).
pub const DEGREE_DAY_BASES: [Temperature; 2] =
    [Temperature::celsius(18.0), Temperature::fahrenheit(65.0)];

/// How near the set-point the room counts as warmed up, K.
pub const WARM_ENOUGH: TemperatureDifference = TemperatureDifference::new(3.0);

/// How cold the room gets after a power cut until the times that are told: +5 °C, and freezing.
pub const COOLED_TO: [Temperature; 2] = [Temperature::celsius(5.0), Temperature::celsius(0.0)];

/// Numbers of a period.
const IN_PERIOD: usize = 26;

fn pack_period(period: &Period) -> [f64; IN_PERIOD] {
    let energy = &period.energy;
    [
        energy.heater_heat.value(),
        energy.backup_heat.value(),
        energy.heater_input.value(),
        energy.heater_own.value(),
        energy.fan.value(),
        energy.equipment.value(),
        energy.people.value(),
        energy.sun.value(),
        energy.through_envelope.value(),
        energy.through_openings.value(),
        energy.by_leaks.value(),
        energy.by_fan.value(),
        f64::from(period.unmet_hours),
        f64::from(period.too_warm_hours),
        f64::from(period.drip_hours),
        f64::from(period.frost_hours),
        period.fan_hours,
        period.condensed.value(),
        period.water_on_lining.value(),
        energy.by_drying.value(),
        energy.condensing.value(),
        period.frosted.value(),
        period.dried_back.value(),
        period.ran_off.value(),
        period.mean_celsius,
        period.mean_humidity,
    ]
}

fn unpack_period(numbers: &[f64; IN_PERIOD]) -> Period {
    let water = |place: usize| Mass::new(numbers[place]);
    let energy = |place: usize| Energy::new(numbers[place]);
    let hours = |place: usize| numbers[place] as u32;
    Period {
        energy: EnergyByPurpose {
            heater_heat: energy(0),
            backup_heat: energy(1),
            heater_input: energy(2),
            heater_own: energy(3),
            fan: energy(4),
            equipment: energy(5),
            people: energy(6),
            sun: energy(7),
            through_envelope: energy(8),
            through_openings: energy(9),
            by_leaks: energy(10),
            by_fan: energy(11),
            by_drying: energy(19),
            condensing: energy(20),
        },
        unmet_hours: hours(12),
        too_warm_hours: hours(13),
        drip_hours: hours(14),
        frost_hours: hours(15),
        fan_hours: numbers[16],
        condensed: water(17),
        water_on_lining: water(18),
        frosted: water(21),
        dried_back: water(22),
        ran_off: water(23),
        mean_celsius: numbers[24],
        mean_humidity: numbers[25],
    }
}

/// Numbers of a day.
const IN_DAY: usize = 5;

fn unpack_not_reached(&[quantity, month, asked, reached]: &[f64; 4]) -> Option<NotReached> {
    Some(NotReached {
        quantity: at_place(ClimateQuantity::ALL, quantity)?,
        month: (!month.is_nan()).then_some(month as usize),
        asked,
        reached,
    })
}

/// Numbers in front of the periods.
const IN_HEAD: usize = 25;

impl YearAnswer {
    /// As numbers: what there is one of, then thirteen periods, then the days, then what the figures
    /// rest on, then what is not reached.
    pub fn pack(&self) -> Vec<f64> {
        let case = |case: &SummerCase| [case.warmest.as_celsius(), f64::from(case.too_warm_hours)];
        let seconds = |time: &Option<Time>| time.map_or(f64::NAN, Time::value);
        let mut numbers = vec![
            f64::from(u8::from(self.is_waiting)),
            self.greatest_heat.value(),
            self.coldest_day.value(),
            self.most_frost.value(),
            self.heater.capacity.value(),
            self.heater.backup.value(),
            self.heater.unattended.value(),
            self.heater.needed.value(),
            self.supply.largest.value(),
            self.supply.for_heat.value(),
            self.supply.for_other.value(),
        ];
        numbers.extend(self.cool_down.iter().chain(&self.warm_up).map(seconds));
        let summer = &self.summer;
        let cases = [&summer.as_chosen, &summer.without_fan, &summer.light_paint, &summer.shaded];
        numbers.extend(cases.into_iter().flat_map(case));
        numbers.extend(self.degree_days);
        numbers.extend(self.months.iter().chain([&self.year]).flat_map(pack_period));
        for day in &self.days {
            numbers.extend([day.heat.value(), day.frost, day.drip, day.too_warm, day.too_cold]);
        }
        numbers.extend(self.courses.iter().flat_map(pack_course));
        numbers.extend(pack_grounds(&self.grounds));
        for missed in &self.not_reached {
            numbers.extend([
                place_of(ClimateQuantity::ALL, &missed.quantity),
                missed.month.map_or(f64::NAN, |month| month as f64),
                missed.asked,
                missed.reached,
            ]);
        }
        numbers
    }

    /// From numbers; `None` if these are not the numbers of a year.
    pub fn unpack(numbers: &[f64]) -> Option<Self> {
        let (head, rest) = numbers.split_first_chunk::<IN_HEAD>()?;
        let (periods, rest) = rest.split_at_checked(13 * IN_PERIOD)?;
        let (days, rest) = rest.split_at_checked(DAYS_IN_YEAR * IN_DAY)?;
        let (courses, rest) = rest.split_at_checked(3 * IN_COURSE)?;
        let (grounds, not_reached) = rest.split_at_checked(IN_GROUNDS)?;
        let courses: Vec<Course> =
            courses.as_chunks::<IN_COURSE>().0.iter().map(unpack_course).collect();
        let not_reached: Option<Vec<_>> =
            not_reached.as_chunks::<4>().0.iter().map(unpack_not_reached).collect();
        let mut months: Vec<Period> =
            periods.as_chunks::<IN_PERIOD>().0.iter().map(unpack_period).collect();
        let year = months.pop()?;
        let power = |place: usize| Power::new(head[place]);
        let time = |place: usize| (!head[place].is_nan()).then_some(Time::new(head[place]));
        let case = |place: usize| SummerCase {
            warmest: Temperature::celsius(head[place]),
            too_warm_hours: head[place + 1] as u32,
        };
        Some(Self {
            is_waiting: head[0] == 1.0,
            months,
            year,
            days: days
                .as_chunks::<IN_DAY>()
                .0
                .iter()
                .map(|&[heat, frost, drip, too_warm, too_cold]| YearDay {
                    heat: Energy::new(heat),
                    frost,
                    drip,
                    too_warm,
                    too_cold,
                })
                .collect(),
            greatest_heat: power(1),
            coldest_day: power(2),
            most_frost: SurfaceMoisture::new(head[3]),
            heater: HeaterCheck {
                capacity: power(4),
                backup: power(5),
                unattended: power(6),
                needed: power(7),
            },
            supply: SupplyCheck { largest: power(8), for_heat: power(9), for_other: power(10) },
            cool_down: [time(11), time(12)],
            warm_up: [time(13), time(14)],
            summer: Summer {
                as_chosen: case(15),
                without_fan: case(17),
                light_paint: case(19),
                shaded: case(21),
            },
            degree_days: [head[23], head[24]],
            courses: courses.try_into().ok()?,
            grounds: unpack_grounds(grounds)?,
            not_reached: not_reached?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_period_comes_back_bit_for_bit() {
        let numbers: [f64; IN_PERIOD] = core::array::from_fn(|place| place as f64 + 1.0);
        assert_eq!(pack_period(&unpack_period(&numbers)), numbers);
    }

    #[test]
    fn choices_come_back_bit_for_bit() {
        let choices = YearChoices {
            heater: HeaterKind::VentedDiesel,
            currency: *b"XTS",
            prices_of: Some(PriceDate { year: 2026, month: 1, day: 31 }),
            fuel_price: Some(0.1 + 0.2),
            ..YearChoices::default()
        };
        assert_eq!(unpack_choices(&pack_choices(&choices)), Some(choices.clone()));
        assert_eq!(unpack_choices(&pack_choices(&choices)[1..]), None);
    }
}
