//! Refusals: why a year cannot be reckoned.

use crate::evaluate::NotReckoned;
use crate::units::Angle;

/// Why a design and its surroundings make no year.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearModelError {
    /// Air and heat of the design itself were not reckoned.
    NoBalance(NotReckoned),
    /// The sun was reckoned for a box that faces otherwise than chosen.
    FacesOtherwise {
        /// The direction of the surroundings.
        surroundings: Angle,
        /// The direction chosen.
        chosen: Angle,
    },
}

impl core::fmt::Display for YearModelError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::NoBalance(error) => {
                write!(f, "the design's air and heat were not reckoned: {error}")
            }
            Self::FacesOtherwise { surroundings, chosen } => write!(
                f,
                "the sun was reckoned for a front end that faces {} degrees, and {} are chosen",
                surroundings.as_degrees(),
                chosen.as_degrees()
            ),
        }
    }
}

impl std::error::Error for YearModelError {}

impl From<NotReckoned> for YearModelError {
    fn from(error: NotReckoned) -> Self {
        Self::NoBalance(error)
    }
}
