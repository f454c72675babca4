//! For how much of an hour the fan runs to cool or to dry.

use super::model::YearModel;
use super::run::HOUR;
use super::vapour_balance::{Terms, VapourBalance, VapourDrive, VapourState};
use crate::moisture::Sink;
use crate::room_network::{Drive, NetworkStep};

/// Kelvin that outdoors must be colder than the room for the fan to cool.
const COLDER: f64 = 0.5;

/// Pascals of vapour that outdoor air must hold less than the room for the fan to dry, about
/// 0.15 g/kg: what a controller that compares two humidities can tell. Common practice, no source.
const DRIER: f64 = 25.0;

/// The room's air and lining, °C, and the H of all air let in, W/K.
#[derive(Clone, Copy, Debug)]
pub(super) struct Air {
    pub(super) celsius: f64,
    pub(super) lining: f64,
    pub(super) let_in: f64,
}

/// Share of the hour that the fan runs to cool.
///
/// While the mass stands still the air falls towards outdoors as K/(K + g) with the H of the fan's
/// air g. The mass moves a little, so K is found from the full fan and once more from the duty it gives.
pub(super) fn duty_to_cool(
    model: &YearModel<'_>,
    blown: &NetworkStep,
    free: f64,
    drive: &Drive,
    mass: f64,
) -> f64 {
    let network = &model.network;
    let above = model.design.fan_cools_above.as_celsius();
    let outdoors = drive.outdoors;
    if free <= above || outdoors > free - COLDER {
        return 0.0;
    }
    let full = model.fan.full;
    let at_full = blown.go(network, drive, mass).air;
    if at_full >= above {
        return 1.0;
    }
    let air_for = |flow: f64, found: f64| {
        flow * (found - outdoors) / (free - found) * (free - above) / (above - outdoors)
    };
    let near = air_for(full, at_full);
    let found = network.step(near, HOUR).go(network, drive, mass).air;
    (air_for(near, found) / full).clamp(0.0, 1.0)
}

/// Share of the hour that the fan runs to hold the humidity that the design holds.
pub(super) fn duty_to_dry(
    model: &YearModel<'_>,
    drive: &VapourDrive,
    terms: &Terms,
    sinks: &[Sink],
    before: &VapourState,
) -> f64 {
    let wanted = model.design.target_humidity.value() * drive.at_air;
    let without = VapourBalance::pressure(terms, drive, sinks, before);
    if without <= wanted || drive.outdoors > without - DRIER {
        return 0.0;
    }
    let needed = model.vapour.air_to_hold(wanted, terms, sinks);
    needed.map_or(1.0, |needed| (needed / model.fan.full).clamp(0.0, 1.0))
}
