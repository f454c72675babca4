//! What the sun gives to roof and walls, hour by hour.

use super::calendar::HOURS_IN_YEAR;
use super::hourly_sun::diffuse_fraction;
use super::sun_position::{SunDirection, declination, extraterrestrial_irradiance};
use super::weather_year::WeatherYear;
use crate::units::{Angle, Irradiance};

/// Reflectance of the ground for the sun, 0.2: grass or gravel (Duffie and
/// Beckman, section 2.15); snow would throw back 0.7, which is left out.
pub const GROUND_REFLECTANCE: f64 = 0.2;

/// Below this cosine of the zenith angle, 3 degrees over the horizon, all sun counts as from the
/// sky: the beam on a wall would be a quotient of two small numbers.
const LOWEST_SUN: f64 = 0.05;

/// A face of the box that the sun reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BoxFace {
    /// The roof, level.
    Roof,
    /// The end opposite the cargo doors.
    FrontEnd,
    /// The cargo doors.
    DoorEnd,
    /// The long wall on the left when looking in through the cargo doors.
    LeftSide,
    /// The long wall on the right when looking in through the cargo doors.
    RightSide,
}

impl BoxFace {
    /// Every face, in the order of the columns of [`SunOnBox`].
    pub const ALL: [Self; 5] =
        [Self::Roof, Self::FrontEnd, Self::DoorEnd, Self::LeftSide, Self::RightSide];

    /// Degrees clockwise from the direction of the front end; `None` for the roof.
    const fn turned(self) -> Option<f64> {
        match self {
            Self::Roof => None,
            Self::FrontEnd => Some(0.0),
            Self::RightSide => Some(90.0),
            Self::DoorEnd => Some(180.0),
            Self::LeftSide => Some(270.0),
        }
    }
}

/// Sun on each face in every hour of a year.
#[derive(Clone, Debug, PartialEq)]
pub struct SunOnBox {
    hours: Vec<[f64; 5]>,
}

impl SunOnBox {
    /// For a box whose front end faces a compass direction, clockwise from north.
    ///
    /// On a wall: beam by its angle to the sun, half of the even sky, half of the ground's reflection
    /// (B. Y. H. Liu and R. C. Jordan, 1963, as in Duffie and Beckman, section 2.15). The beam is
    /// global irradiance less its diffuse fraction ([`diffuse_fraction`]), never more than the
    /// extraterrestrial.
    /// The sun stands where it does in the middle of the hour.
    pub fn of(year: &WeatherYear, front_faces: Angle) -> Self {
        let mut hours = Vec::with_capacity(HOURS_IN_YEAR);
        let facings =
            BoxFace::ALL.map(|face| face.turned().map(|turn| front_faces + Angle::degrees(turn)));
        for (hour, &level) in year.global_horizontal_irradiance().iter().enumerate() {
            if level <= 0.0 {
                hours.push([0.0; 5]);
                continue;
            }
            let day = hour / 24;
            let hour_angle = Angle::degrees(((hour % 24) as f64 + 0.5 - 12.0) * 15.0);
            let sun = SunDirection::at(year.latitude, declination(day), hour_angle);
            let above = extraterrestrial_irradiance(day).value();
            let (beam, sky) = if sun.up < LOWEST_SUN {
                (0.0, level)
            } else {
                let sky = level * diffuse_fraction(level / (above * sun.up));
                (((level - sky) / sun.up).min(above), sky)
            };
            let around = 0.5 * sky + 0.5 * GROUND_REFLECTANCE * level;
            hours.push(facings.map(|facing| match facing {
                None => level,
                Some(facing) => beam * sun.on_wall(facing).max(0.0) + around,
            }));
        }
        Self { hours }
    }

    /// Sun on a face in an hour, from 0 in the first of 1 January; `None` past the year.
    pub fn on(&self, face: BoxFace, hour: usize) -> Option<Irradiance> {
        let column = BoxFace::ALL.iter().position(|&other| other == face)?;
        Some(Irradiance::new(self.hours.get(hour)?[column]))
    }

    /// W/m² on every face in the order of [`BoxFace::ALL`], hour by hour, for numeric loops.
    pub fn hours(&self) -> &[[f64; 5]] {
        &self.hours
    }
}
