//! Keys of earlier designs and years: what each says now, so that links and files written long ago still open.
//!
//! An earlier design held the weather of its place in a few figures of its own, and an earlier year its own people,
//! hours of use, fan and sun. All of it stands in the design now.

use core::f64::consts::PI;

use inchwise_core::climate::{DAYS_IN_MONTH, DAYS_IN_YEAR, MonthMeans, Place};
use inchwise_core::design::{Design, Field};
use inchwise_core::psychro::hyland_wexler::saturation_pressure;
use inchwise_core::units::{Length, Temperature};

/// What is made of a key of an earlier form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormerKey<T> {
    /// It is this now.
    Is(T),
    /// It is not used any more.
    NotUsed,
}

/// Keys of an earlier year, which held numbers in SI: the field of the design that each is now; `None` for a
/// key that no earlier year had.
pub fn former_year_key(key: &str) -> Option<FormerKey<Field>> {
    use FormerKey::{Is, NotUsed};
    Some(match key {
        "people" => Is(Field::PersonCount),
        "heat_of_person" => Is(Field::HeatOfPerson),
        "equipment_in_use" => Is(Field::EquipmentInUse),
        "equipment_always" => Is(Field::EquipmentAlways),
        "setback" => Is(Field::Setback),
        "used_from" => Is(Field::UsedFrom),
        "used_until" => Is(Field::UsedUntil),
        "used_days" => Is(Field::UsedDays),
        "too_warm" => Is(Field::TooWarm),
        "paint" => Is(Field::Paint),
        "sun_on_roof" => Is(Field::SunOnRoof),
        "window_sun" => Is(Field::WindowSun),
        "sun_on_windows" => Is(Field::SunOnWindows),
        "front_faces" => Is(Field::FrontFaces),
        "contents" => Is(Field::Contents),
        "fan_power" => Is(Field::FanPower),
        "fan_above" => Is(Field::FanCoolsAbove),
        "fan_over" => Is(Field::TargetHumidity),
        "moisture_in_use" | "moisture_always" | "moisture_drying" | "fan_flow" => NotUsed,
        _ => return None,
    })
}

/// A number of an earlier design that is put otherwise now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormerNumber {
    /// Hours a day for which people were there.
    PersonTime,
    /// Height over the sea, mm.
    SiteAltitude,
    /// Mean temperature of January, °C.
    ColdestMonth,
    /// Mean temperature of July, °C.
    WarmestMonth,
    /// Humidity outdoors in winter, %.
    OutdoorHumidity,
    /// Humidity outdoors in July, %.
    WarmestMonthHumidity,
    /// A hot day outdoors, °C.
    SummerOutdoorTemperature,
    /// Room temperature on it, °C.
    SummerRoomTemperature,
}

/// Keys of an earlier design that no design has now; `None` for any other.
pub fn former_design_key(key: &str) -> Option<FormerKey<FormerNumber>> {
    use FormerKey::{Is, NotUsed};
    Some(match key {
        "person_time_h" => Is(FormerNumber::PersonTime),
        "site_altitude_mm" => Is(FormerNumber::SiteAltitude),
        "coldest_month_c" => Is(FormerNumber::ColdestMonth),
        "warmest_month_c" => Is(FormerNumber::WarmestMonth),
        "outdoor_humidity_percent" => Is(FormerNumber::OutdoorHumidity),
        "warmest_month_humidity_percent" => Is(FormerNumber::WarmestMonthHumidity),
        "summer_outdoor_temperature_c" => Is(FormerNumber::SummerOutdoorTemperature),
        "summer_room_temperature_c" => Is(FormerNumber::SummerRoomTemperature),
        "steel_sun_rise_k" | "heat_gain_w" => NotUsed,
        _ => return None,
    })
}

/// The numbers of an earlier design, gathered while it is read and put into the design once all of it is.
#[derive(Clone, Debug, Default)]
pub struct FormerDesign {
    numbers: Vec<(FormerNumber, f64)>,
}

/// What an earlier design had where it said nothing: °C and % of January, then of July.
const USUAL_MONTHS: [[f64; 2]; 2] = [[-15.0, 80.0], [19.0, 65.0]];

impl FormerDesign {
    /// Takes a number as it is written, in the unit of its key.
    pub fn take(&mut self, number: FormerNumber, written: f64) {
        self.numbers.push((number, written));
    }

    /// Puts what was gathered into a design. A place that cannot be is not put, and the check of the design speaks
    /// of all else.
    pub fn put_into(&self, design: &mut Design) {
        let given = |wanted: FormerNumber| {
            self.numbers.iter().find(|(number, _)| *number == wanted).map(|&(_, written)| written)
        };
        if let Some(hours) = given(FormerNumber::PersonTime) {
            use_for(design, hours);
        }
        if let Some(celsius) = given(FormerNumber::SummerRoomTemperature) {
            design.too_warm = Temperature::celsius(celsius);
        }
        let mut place = design.place.place().clone();
        if let Some(millimetres) = given(FormerNumber::SiteAltitude) {
            place.elevation = Length::mm(millimetres);
        }
        if let Some(celsius) = given(FormerNumber::SummerOutdoorTemperature) {
            place.summer_design = Temperature::celsius(celsius);
        }
        let ends = [
            [given(FormerNumber::ColdestMonth), given(FormerNumber::OutdoorHumidity)],
            [given(FormerNumber::WarmestMonth), given(FormerNumber::WarmestMonthHumidity)],
        ];
        if ends.iter().flatten().any(Option::is_some) {
            let or_usual = |end: usize, of: usize| ends[end][of].unwrap_or(USUAL_MONTHS[end][of]);
            let ends = [0, 1].map(|end| [or_usual(end, 0), or_usual(end, 1)]);
            put_months(&mut place, ends);
        }
        if place != *design.place.place()
            && let Ok(checked) = place.check()
        {
            design.place = checked;
        }
    }
}

/// Hours of use of a day, from the hour from which the design is used; whole ones, as its clock counts.
fn use_for(design: &mut Design, hours: f64) {
    let hours = hours.round().max(1.0);
    if hours == 24.0 {
        design.used_from = 0.0;
    }
    let until = design.used_from + hours;
    // More hours than a day has stay more than its clock allows, so that the check speaks of them.
    design.used_until = if until > 24.0 && hours <= 24.0 { until - 24.0 } else { until };
}

/// Months between January and July, temperature and humidity each (1 − cos(2π·(d − d_January)/365))/2 of the way with
/// d the middle of the month; vapour is φ·p_sat(θ).
///
/// Common practice, no source: so the earlier designs had it.
fn put_months(place: &mut Place, [january, july]: [[f64; 2]; 2]) {
    let middle = |month: usize| {
        let before: usize = DAYS_IN_MONTH[..month].iter().sum();
        before as f64 + DAYS_IN_MONTH[month] as f64 / 2.0
    };
    for month in 0..12 {
        let turn = 2.0 * PI * (middle(month) - middle(0)) / DAYS_IN_YEAR as f64;
        let part = (1.0 - libm::cos(turn)) / 2.0;
        let [celsius, percent] = [0, 1].map(|of| january[of] + (july[of] - january[of]) * part);
        let temperature = Temperature::celsius(celsius);
        let Ok(saturation) = saturation_pressure(temperature) else { continue };
        let vapour_pressure = saturation * (percent / 100.0);
        place.months[month] = MonthMeans { temperature, vapour_pressure, ..place.months[month] };
    }
}

#[cfg(test)]
mod tests {
    use inchwise_core::units::RelativeHumidity;

    use super::*;

    fn with(numbers: &[(FormerNumber, f64)]) -> Design {
        let mut former = FormerDesign::default();
        for &(number, written) in numbers {
            former.take(number, written);
        }
        let mut design = Design::default();
        former.put_into(&mut design);
        design
    }

    #[test]
    fn no_former_key_is_a_key_of_today() {
        for &field in Field::ALL {
            assert_eq!(former_design_key(&crate::field_key(field)), None);
        }
        assert_eq!(former_year_key("heater_limit"), None);
        assert_eq!(former_year_key("fan_flow"), Some(FormerKey::NotUsed));
        assert_eq!(former_design_key("heat_gain_w"), Some(FormerKey::NotUsed));
        assert_eq!(with(&[]), Design::default());
    }

    /// By hand: from 8, ten hours are until 18, seventeen until 1, a whole day from 0 until 24.
    #[test]
    fn hours_of_people_are_hours_of_use() {
        let used = |hours| {
            let design = with(&[(FormerNumber::PersonTime, hours)]);
            [design.used_from, design.used_until]
        };
        assert_eq!(used(10.0), [8.0, 18.0]);
        assert_eq!(used(16.0), [8.0, 24.0]);
        assert_eq!(used(17.0), [8.0, 1.0]);
        assert_eq!(used(24.0), [0.0, 24.0]);
        assert_eq!(used(0.5), [8.0, 9.0], "an hour is the least that its clock counts");
        let absurd = with(&[(FormerNumber::PersonTime, 30.0)]);
        assert!(absurd.check().is_err_and(|errors| errors[0].field == Field::UsedUntil));
    }

    #[test]
    fn an_earlier_json_is_read() {
        let read = crate::design_from_json;
        let expected = Design { used_until: 18.0, ..Design::default() };
        assert_eq!(read(r#"{"person_time_h": 10, "steel_sun_rise_k": 3}"#), Ok(expected));
        let fault = crate::Unreadable::NotANumber("heat_gain_w".to_owned());
        assert_eq!(read(r#"{"heat_gain_w": "much"}"#), Err(fault));
    }

    /// By hand. January stands at its end of the cosine. The middle of July is day 196.5, 181 after that of January:
    /// (1 − cos(2π·181/365))/2 = 0.99983 of the way from −20 to 20 °C: 19.993. April, day 105 − 15.5 = 89.5 on, is 0.48494
    /// of the way by 1 − cos(1.54067) = 0.96988: −0.602 °C.
    #[test]
    fn a_year_of_two_months_is_a_year_of_twelve() {
        use FormerNumber as F;
        let design = with(&[
            (F::ColdestMonth, -20.0),
            (F::WarmestMonth, 20.0),
            (F::OutdoorHumidity, 90.0),
            (F::WarmestMonthHumidity, 50.0),
        ]);
        let place = design.place.place();
        let near =
            |one: f64, other: f64, off: f64| assert!((one - other).abs() < off, "{one} {other}");
        near(place.months[0].temperature.as_celsius(), -20.0, 1e-12);
        near(place.months[6].temperature.as_celsius(), 19.993, 1e-3);
        near(place.months[3].temperature.as_celsius(), -0.602, 1e-3);
        let humidity = |month: usize| place.months[month].relative_humidity().expect("in range");
        near(humidity(0).value(), 0.9, 1e-12);
        near(humidity(6).value(), 0.5, 1e-3);
        assert!(
            humidity(3) < RelativeHumidity::new(0.9) && humidity(3) > RelativeHumidity::new(0.5)
        );
        let before = Design::default();
        assert_eq!(place.winter_design, before.place.place().winter_design);
        assert_eq!(place.months[5].daily_range, before.place.place().months[5].daily_range);
        // What was not said is as it was usual then, not as at the place of today.
        let only = with(&[(F::ColdestMonth, -20.0)]);
        near(only.place.place().months[6].temperature.as_celsius(), 18.994, 1e-3);
    }

    #[test]
    fn height_and_hot_day_are_those_of_the_place() {
        use FormerNumber as F;
        let design = with(&[
            (F::SiteAltitude, 1_500_000.0),
            (F::SummerOutdoorTemperature, 31.0),
            (F::SummerRoomTemperature, 30.0),
        ]);
        assert_eq!(design.place.place().elevation, Length::new(1500.0));
        assert_eq!(design.place.place().summer_design, Temperature::celsius(31.0));
        assert_eq!(design.too_warm, Temperature::celsius(30.0));
        assert_eq!(design.place.place().months, Design::default().place.place().months);
        // A place that cannot be is not put.
        assert_eq!(with(&[(F::SiteAltitude, 1e9)]), Design::default());
    }
}
