//! Refusals: which reading is not worth a factor, and what would be.

use crate::bounds::{Bounds, Refusal, Refused, bounded_quantities};
use crate::psychro::PsychroError;

/// Temperatures that the saturation formula of ISO 13788 is used for here, °C.
pub(super) const TEMPERATURES: Bounds = Bounds::between(-60.0, 100.0);

/// How far a thermometer may be off, K.
const UNCERTAINTIES: Bounds = Bounds::between(0.01, 5.0);

/// What air or a surface may change in an hour, K.
const DRIFTS: Bounds = Bounds::between(-20.0, 20.0);

bounded_quantities! {
    /// What a refused number is.
    ReadingField {
        /// Inside air temperature θ_i, °C.
        InsideTemperature: "inside_temperature", "°C", TEMPERATURES;
        /// Outside air temperature θ_e, °C.
        OutsideTemperature: "outside_temperature", "°C", TEMPERATURES;
        /// Surface temperature θ_si, °C.
        SurfaceTemperature: "surface_temperature", "°C", TEMPERATURES;
        /// How far the inside thermometer may be off, K.
        InsideUncertainty: "inside_uncertainty", "K", UNCERTAINTIES;
        /// How far the outside thermometer may be off, K.
        OutsideUncertainty: "outside_uncertainty", "K", UNCERTAINTIES;
        /// How far the surface thermometer may be off, K.
        SurfaceUncertainty: "surface_uncertainty", "K", UNCERTAINTIES;
        /// What the inside air changes in an hour, K.
        InsideDrift: "inside_drift", "K/h", DRIFTS;
        /// What the outside air changes in an hour, K.
        OutsideDrift: "outside_drift", "K/h", DRIFTS;
        /// What the surface changes in an hour, K.
        SurfaceDrift: "surface_drift", "K/h", DRIFTS;
        /// Time constant of the place, h: from a second to 30 days.
        TimeConstant: "time_constant", "h", Bounds::between(1.0 / 3600.0, 720.0);
        /// How long inside and outside have stood, h.
        SteadyFor: "steady_for", "h", Bounds::at_least(0.0);
        /// How long the sun has been off the steel, h.
        SinceSun: "since_sun", "h", Bounds::at_least(0.0);
        /// Inside less outside temperature, K.
        Difference: "difference", "K", Bounds::at_least(super::LEAST_READING_DIFFERENCE.value());
        /// Half the width of the factor's band.
        HalfBand: "half_band", "", Bounds::between(0.0, super::WIDEST_HALF_BAND.value());
        /// How many times the thermometers were read.
        LogRows: "log_rows", "", Bounds::between(3.0, 10_000.0);
        /// When a row of a log was read, h: at most 366 days from the beginning.
        RowTime: "row_time", "h", Bounds::between(-8784.0, 8784.0);
        /// Room temperature of the design, °C.
        DesignIndoor: "design_indoor", "°C", TEMPERATURES;
        /// Outdoor temperature of the design, °C.
        DesignOutdoor: "design_outdoor", "°C", TEMPERATURES;
        /// Surface temperature at the design's temperatures, °C.
        DesignSurface: "design_surface", "°C", TEMPERATURES;
        /// The factor that was predicted.
        PredictedFactor: "predicted_factor", "", Bounds::between(0.0, 1.0);
    }
}

/// Every number that cannot stand, together; the index is that of a row of a log.
pub type ReadingError = Refused<ReadingField>;

/// A surface or room temperature of the design that the saturation formula is not stated for.
pub(super) fn beyond_saturation(error: &PsychroError) -> ReadingError {
    let PsychroError { given, allowed, .. } = *error;
    let quantity = ReadingField::DesignSurface;
    ReadingError { refusals: vec![Refusal { quantity, index: None, given, allowed }] }
}
