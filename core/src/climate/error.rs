//! Refusals: what about a place or an hour cannot be.

/// What a figure of a place or an hour means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ClimateQuantity {
    /// Mean temperature of a month, or temperature of an hour, °C.
    Temperature,
    /// Mean of the daily highest less the daily lowest, K.
    DailyRange,
    /// Partial pressure of water vapour, Pa.
    VapourPressure,
    /// Mean daily global irradiation, kWh/m².
    DailyGlobalIrradiation,
    /// Mean global horizontal irradiance of an hour, W/m².
    GlobalHorizontalIrradiance,
    /// Height over the sea, m.
    Elevation,
    /// Latitude, degrees, north above 0.
    Latitude,
    /// Temperature exceeded in 99 % of the hours, °C.
    WinterDesign,
    /// Temperature exceeded in 1 % of the hours, °C.
    SummerDesign,
}

impl ClimateQuantity {
    /// Every quantity.
    pub const ALL: [Self; 9] = [
        Self::Temperature,
        Self::DailyRange,
        Self::VapourPressure,
        Self::DailyGlobalIrradiation,
        Self::GlobalHorizontalIrradiance,
        Self::Elevation,
        Self::Latitude,
        Self::WinterDesign,
        Self::SummerDesign,
    ];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Temperature => "temperature",
            Self::DailyRange => "daily_range",
            Self::VapourPressure => "vapour_pressure",
            Self::DailyGlobalIrradiation => "daily_global_irradiation",
            Self::GlobalHorizontalIrradiance => "global_horizontal_irradiance",
            Self::Elevation => "elevation",
            Self::Latitude => "latitude",
            Self::WinterDesign => "winter_design",
            Self::SummerDesign => "summer_design",
        }
    }

    /// Least and most that a figure may be, in its unit: a little beyond what has been measured on
    /// earth (from memory).
    pub const fn range(self) -> [f64; 2] {
        match self {
            Self::Temperature | Self::WinterDesign | Self::SummerDesign => [-75.0, 60.0],
            Self::DailyRange => [0.5, 35.0],
            Self::VapourPressure => [0.1, 5000.0],
            Self::DailyGlobalIrradiation => [0.0, 12.0],
            Self::GlobalHorizontalIrradiance => [0.0, 1500.0],
            Self::Elevation => [-450.0, 6000.0],
            Self::Latitude => [-90.0, 90.0],
        }
    }
}

/// One figure that cannot stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClimateError {
    /// What it is.
    pub quantity: ClimateQuantity,
    /// The month it is of, from 0, or the hour; `None` for a figure of the whole place.
    pub index: Option<usize>,
    /// What was given.
    pub given: f64,
    /// What is wrong.
    pub problem: ClimateProblem,
}

/// What is wrong with a figure.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ClimateProblem {
    /// Not a number, or outside [`ClimateQuantity::range`].
    OutOfRange,
    /// More vapour than air of the month's mean temperature holds.
    AboveSaturation {
        /// The most it holds, Pa.
        saturation: f64,
    },
    /// The winter design temperature is not below the summer one.
    WinterNotBelowSummer,
    /// Not as many hours as the year has.
    NotAYear,
    /// More than the extraterrestrial irradiation.
    AboveExtraterrestrial {
        /// What reaches it, in the figure's unit.
        extraterrestrial: f64,
    },
}

/// A refusal, if a figure is outside the range of its quantity.
pub(super) fn out_of_range(
    quantity: ClimateQuantity,
    index: Option<usize>,
    given: f64,
) -> Option<ClimateError> {
    let [least, most] = quantity.range();
    let allowed = least <= given && given <= most;
    (!allowed).then_some(ClimateError {
        quantity,
        index,
        given,
        problem: ClimateProblem::OutOfRange,
    })
}
