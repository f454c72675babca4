//! Where the hours of the year come from: a place and its figures, or hours of the visitor's own.

use inchwise_core::climate::{
    CheckedPlace, ClimateError, ClimateQuantity, Place, WeatherYear, exceeded_for, varnholm_flats,
};
use inchwise_core::units::TemperatureDifference;

/// Where a place's figures come from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PlaceKind {
    /// The invented default.
    Invented,
    /// The table of places: estimates with a standard error of monthly temperatures.
    Table(TemperatureDifference),
    /// A table of the shop's own.
    OfTheShop(TemperatureDifference),
}

/// The place that is chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct ChosenPlace {
    /// Its name; nothing for the invented one, which every language names itself.
    pub name: String,
    /// Where its figures come from.
    pub kind: PlaceKind,
    /// Its figures.
    pub place: Place,
    /// Its figures before any was changed by hand.
    pub unchanged: Place,
}

impl ChosenPlace {
    /// A place as its table has it.
    pub fn new(name: String, kind: PlaceKind, place: Place) -> Self {
        Self { name, kind, unchanged: place.clone(), place }
    }

    /// A place of which figures alone are told.
    pub fn told(place: &CheckedPlace) -> Self {
        Self { place: place.place().clone(), ..Self::default() }
    }

    /// Whether a figure was changed by hand.
    pub fn is_changed(&self) -> bool {
        self.place != self.unchanged
    }
}

impl Default for ChosenPlace {
    fn default() -> Self {
        Self::new(String::new(), PlaceKind::Invented, varnholm_flats())
    }
}

/// Hours that the visitor gave.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnHours {
    /// The name of their file.
    pub name: String,
    /// The hours. Elevation and latitude are those of the place.
    pub weather: WeatherYear,
    /// What they come to, as figures of a place.
    figures: Place,
}

impl OwnHours {
    /// Hours from a file.
    pub fn new(name: String, weather: WeatherYear) -> Self {
        let figures = Place {
            elevation: weather.elevation,
            latitude: weather.latitude,
            winter_design: exceeded_for(&weather, 0.99),
            summer_design: exceeded_for(&weather, 0.01),
            months: weather.month_means(),
        };
        Self { name, weather, figures }
    }

    /// The figures of these hours at a place's height and latitude, which no file holds.
    pub fn figures_at(&self, place: &Place) -> Place {
        Place { elevation: place.elevation, latitude: place.latitude, ..self.figures.clone() }
    }
}

/// What is wrong with a place, or with what measured hours take from it.
pub fn place_errors(place: &Place, measured: bool) -> Vec<ClimateError> {
    let mut errors = place.check().err().unwrap_or_default();
    if measured {
        // The rest is as it was measured.
        let taken = [ClimateQuantity::Elevation, ClimateQuantity::Latitude];
        errors.retain(|error| taken.contains(&error.quantity));
    }
    errors
}
