//! The hours of a place as a box stands in them, prepared once for many runs.

use crate::climate::{SunOnBox, WeatherYear};
use crate::psychro::SaturationTable;
use crate::units::Angle;

/// Weather, sun on the box's faces, and what is reckoned once for both.
#[derive(Clone, Debug)]
pub struct Surroundings {
    pub(super) weather: WeatherYear,
    pub(super) sun: SunOnBox,
    pub(super) saturation: SaturationTable,
    pub(super) front_faces: Angle,
}

impl Surroundings {
    /// A year of weather about a box whose front end faces a compass direction, clockwise from
    /// north.
    pub fn new(weather: WeatherYear, front_faces: Angle) -> Self {
        let sun = SunOnBox::of(&weather, front_faces);
        Self { weather, sun, saturation: SaturationTable::new(), front_faces }
    }

    /// The weather.
    pub fn weather(&self) -> &WeatherYear {
        &self.weather
    }

    /// The direction the box's front end faces.
    pub fn front_faces(&self) -> Angle {
        self.front_faces
    }

    /// The same weather about a box turned another way.
    #[must_use]
    pub fn turned(self, front_faces: Angle) -> Self {
        let sun = SunOnBox::of(&self.weather, front_faces);
        Self { sun, front_faces, ..self }
    }
}
