//! A place to and from JSON.

use inchwise_core::climate::{CheckedPlace, ClimateError, MonthMeans, Place};
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};
use serde_json::{Value, json};

/// Why a value is no place.
#[derive(Clone, Debug, PartialEq)]
pub enum NoPlace {
    /// A figure that is missing or no number, by its path.
    NotANumber(String),
    /// Figures that cannot be.
    Refused(Vec<ClimateError>),
}

/// Reads a place: every figure must be there.
///
/// # Errors
/// The first figure that is no number, or every one that cannot be.
pub fn place_from_value(value: &Value) -> Result<CheckedPlace, NoPlace> {
    let number = |holder: &Value, path: &str, key: &str| {
        holder[key].as_f64().ok_or_else(|| NoPlace::NotANumber(format!("{path}{key}")))
    };
    let month = |n: usize| {
        let (holder, path) = (&value["months"][n], format!("months.{n}."));
        Ok(MonthMeans {
            temperature: Temperature::celsius(number(holder, &path, "temperature_c")?),
            daily_range: TemperatureDifference::new(number(holder, &path, "daily_range_k")?),
            vapour_pressure: Pressure::new(number(holder, &path, "vapour_pressure_pa")?),
            daily_global_irradiation: Irradiation::kilowatt_hours(number(
                holder,
                &path,
                "daily_sun_kwh_per_m2",
            )?),
        })
    };
    let months = (0..12).map(month).collect::<Result<Vec<_>, NoPlace>>()?;
    let months = months.try_into().map_err(|_| NoPlace::NotANumber("months".to_owned()))?;
    let place = Place {
        elevation: Length::new(number(value, "", "elevation_m")?),
        latitude: Angle::degrees(number(value, "", "latitude_degrees")?),
        months,
        winter_design: Temperature::celsius(number(value, "", "winter_design_c")?),
        summer_design: Temperature::celsius(number(value, "", "summer_design_c")?),
    };
    place.check().map_err(NoPlace::Refused)
}

/// Writes a place in full.
pub fn place_to_value(place: &Place) -> Value {
    let month = |month: &MonthMeans| {
        json!({
            "temperature_c": month.temperature.as_celsius(),
            "daily_range_k": month.daily_range.value(),
            "vapour_pressure_pa": month.vapour_pressure.value(),
            "daily_sun_kwh_per_m2": month.daily_global_irradiation.as_kilowatt_hours(),
        })
    };
    json!({
        "elevation_m": place.elevation.value(),
        "latitude_degrees": place.latitude.as_degrees(),
        "winter_design_c": place.winter_design.as_celsius(),
        "summer_design_c": place.summer_design.as_celsius(),
        "months": place.months.iter().map(month).collect::<Vec<_>>(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_comes_back_as_it_went() {
        let place = CheckedPlace::default();
        let written = place_to_value(place.place());
        let back = place_from_value(&written).expect("a place");
        let near = |one: f64, other: f64| (one - other).abs() < 1e-9;
        assert!(near(back.place().latitude.as_degrees(), place.place().latitude.as_degrees()));
        for (one, other) in back.place().months.iter().zip(&place.place().months) {
            assert_eq!(one.temperature, other.temperature);
            assert!(near(
                one.daily_global_irradiation.as_kilowatt_hours(),
                other.daily_global_irradiation.as_kilowatt_hours()
            ));
        }
        let mut lacking = written.clone();
        lacking["months"][3]["daily_range_k"] = json!(null);
        let expected = NoPlace::NotANumber("months.3.daily_range_k".to_owned());
        assert_eq!(place_from_value(&lacking), Err(expected));
        let mut absurd = written;
        absurd["months"][3]["temperature_c"] = json!(300.0);
        assert!(
            matches!(place_from_value(&absurd), Err(NoPlace::Refused(errors)) if errors.len() == 1)
        );
    }
}
