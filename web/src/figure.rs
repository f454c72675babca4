//! The figures of a place: each read, set and named.

use inchwise_core::climate::{ClimateQuantity, Place};
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};

use ClimateQuantity as Q;

/// Figures of the whole place.
pub const WHOLE: [ClimateQuantity; 4] =
    [Q::Elevation, Q::Latitude, Q::WinterDesign, Q::SummerDesign];

/// Figures of a month.
pub const MONTHLY: [ClimateQuantity; 4] =
    [Q::Temperature, Q::DailyRange, Q::VapourPressure, Q::DailyGlobalIrradiation];

/// One figure of a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Figure {
    /// What it is.
    pub quantity: ClimateQuantity,
    /// The month it is of, from 0; 0 for one of the whole place.
    pub month: usize,
}

impl Figure {
    /// Every figure of a place.
    pub fn all() -> impl Iterator<Item = Self> {
        let whole = WHOLE.into_iter().map(|quantity| Self { quantity, month: 0 });
        let of_month = |month| MONTHLY.into_iter().map(move |quantity| Self { quantity, month });
        whole.chain((0..12).flat_map(of_month))
    }

    /// Its value in a place: °C, K, Pa, kWh/m² a day, m, degrees.
    pub fn of(self, place: &Place) -> f64 {
        let month = &place.months[self.month];
        match self.quantity {
            Q::Elevation => place.elevation.value(),
            Q::Latitude => place.latitude.as_degrees(),
            Q::WinterDesign => place.winter_design.as_celsius(),
            Q::SummerDesign => place.summer_design.as_celsius(),
            Q::Temperature => month.temperature.as_celsius(),
            Q::DailyRange => month.daily_range.value(),
            Q::VapourPressure => month.vapour_pressure.value(),
            Q::DailyGlobalIrradiation => month.daily_global_irradiation.as_kilowatt_hours(),
            // No figure of a place.
            _ => f64::NAN,
        }
    }

    /// Sets it in a place.
    pub fn set(self, place: &mut Place, value: f64) {
        let month = &mut place.months[self.month];
        match self.quantity {
            Q::Elevation => place.elevation = Length::new(value),
            Q::Latitude => place.latitude = Angle::degrees(value),
            Q::WinterDesign => place.winter_design = Temperature::celsius(value),
            Q::SummerDesign => place.summer_design = Temperature::celsius(value),
            Q::Temperature => month.temperature = Temperature::celsius(value),
            Q::DailyRange => month.daily_range = TemperatureDifference::new(value),
            Q::VapourPressure => month.vapour_pressure = Pressure::new(value),
            Q::DailyGlobalIrradiation => {
                month.daily_global_irradiation = Irradiation::kilowatt_hours(value)
            }
            _ => {}
        }
    }

    /// Its name in links and attributes: `winter_design`, `temperature_1` for January.
    pub fn key(self) -> String {
        let name = match self.quantity {
            Q::Elevation => "elevation",
            Q::Latitude => "latitude",
            Q::WinterDesign => "winter_design",
            Q::SummerDesign => "summer_design",
            Q::Temperature => "temperature",
            Q::DailyRange => "daily_range",
            Q::VapourPressure => "vapour_pressure",
            Q::DailyGlobalIrradiation => "daily_global_irradiation",
            _ => "",
        };
        if WHOLE.contains(&self.quantity) {
            return name.to_owned();
        }
        [name, "_", &(self.month + 1).to_string()].concat()
    }

    /// Its path in the JSON form of a design: `place.elevation_m`, `place.months.0.temperature_c`.
    pub fn path(self) -> String {
        let name = match self.quantity {
            Q::Elevation => "elevation_m",
            Q::Latitude => "latitude_degrees",
            Q::WinterDesign => "winter_design_c",
            Q::SummerDesign => "summer_design_c",
            Q::Temperature => "temperature_c",
            Q::DailyRange => "daily_range_k",
            Q::VapourPressure => "vapour_pressure_pa",
            Q::DailyGlobalIrradiation => "daily_sun_kwh_per_m2",
            _ => "",
        };
        if WHOLE.contains(&self.quantity) {
            return ["place.", name].concat();
        }
        ["place.months.", &self.month.to_string(), ".", name].concat()
    }

    /// The figure at this path.
    pub fn from_path(path: &str) -> Option<Self> {
        path.starts_with("place.").then(|| Self::all().find(|figure| figure.path() == path))?
    }

    /// The figure of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::all().find(|figure| figure.key() == key)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::climate::varnholm_flats;
    use inchwise_core::year::YearField;

    #[test]
    fn every_figure_is_set_where_it_is_read_and_nowhere_else() {
        let place = varnholm_flats();
        for figure in Figure::all() {
            let mut other = place.clone();
            figure.set(&mut other, 7.25);
            for read in Figure::all() {
                let expected = if read == figure { 7.25 } else { read.of(&place) };
                assert!((read.of(&other) - expected).abs() < 1e-12, "{figure:?} {read:?}");
            }
        }
        assert_eq!(Figure::all().count(), 52);
    }

    #[test]
    fn names_are_of_one_figure_each_and_of_no_choice() {
        for figure in Figure::all() {
            assert_eq!(Figure::from_key(&figure.key()), Some(figure));
            assert_eq!(Figure::from_path(&figure.path()), Some(figure));
            assert!(YearField::from_key(&figure.key()).is_none());
        }
        assert_eq!(Figure::from_key("temperature_13"), None);
        assert_eq!(Figure::from_path("place.months.12.temperature_c"), None);
    }

    /// The paths are those that the JSON form has.
    #[test]
    fn a_path_leads_to_its_figure_in_json() {
        let place = varnholm_flats();
        let json = inchwise_wire::place_to_value(&place);
        for figure in Figure::all() {
            let path = figure.path().replacen("place", "", 1).replace('.', "/");
            let there = json.pointer(&path).and_then(|value| value.as_f64());
            assert_eq!(there, Some(figure.of(&place)), "{path}");
        }
    }
}
