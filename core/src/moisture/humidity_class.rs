//! How much damper a room is than outdoors, by what it is used for.

use crate::units::{Pressure, Temperature};

/// Internal humidity class.
///
/// The limits between the classes are from memory; 270 Pa is 2 g/m³ at 20 °C.
/// Source: ISO 13788:2012, annex A.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HumidityClass {
    /// Class 1: unoccupied buildings, storage of dry goods.
    DryStore,
    /// Class 2: offices, dwellings with ordinary occupancy and ventilation.
    OfficeOrDwelling,
    /// Class 3: buildings whose occupancy is not known.
    UnknownOccupancy,
    /// Class 4: sports halls, kitchens, canteens.
    SportsHallOrKitchen,
    /// Class 5: laundries, breweries, swimming pools. It has no upper limit.
    LaundryOrPool,
}

/// Outdoor temperature up to which the excess of a class is whole, °C.
const WHOLE_UP_TO: f64 = 0.0;
/// Outdoor temperature from which there is no excess, °C.
const NONE_FROM: f64 = 20.0;

impl HumidityClass {
    /// Every class, from dry to damp.
    pub const ALL: [Self; 5] = [
        Self::DryStore,
        Self::OfficeOrDwelling,
        Self::UnknownOccupancy,
        Self::SportsHallOrKitchen,
        Self::LaundryOrPool,
    ];

    /// Its number, 1 to 5.
    pub const fn number(self) -> u8 {
        match self {
            Self::DryStore => 1,
            Self::OfficeOrDwelling => 2,
            Self::UnknownOccupancy => 3,
            Self::SportsHallOrKitchen => 4,
            Self::LaundryOrPool => 5,
        }
    }

    /// Upper limit of the excess of indoor over outdoor vapour pressure, Pa: 270, 540, 810, 1080
    /// up to 0 °C outdoors, falling in a straight line to none at 20 °C. `None` for class 5.
    pub fn vapour_excess(self, outdoor: Temperature) -> Option<Pressure> {
        let whole = match self {
            Self::LaundryOrPool => return None,
            _ => 270.0 * f64::from(self.number()),
        };
        let share = (NONE_FROM - outdoor.as_celsius()) / (NONE_FROM - WHOLE_UP_TO);
        Some(Pressure::new(whole * share.clamp(0.0, 1.0)))
    }
}
