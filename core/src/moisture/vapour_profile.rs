//! Vapour pressure through a build-up, and what condenses at its interfaces.

use super::assembly::{Assembly, VapourLayer};
use super::error::{MoistureError, MoistureQuantity};
use super::month::MonthState;
use super::vapour_control::STILL_AIR_PERMEABILITY;
use crate::bounds::BoundedQuantity;
use crate::units::{MoistureFlux, Pressure};

/// Vapour pressure at the interfaces of a build-up and the flows it drives.
#[derive(Clone, Debug, PartialEq)]
pub struct VapourProfile {
    /// At every interface, from the inside; saturation where it is wet or condensing.
    pub pressures: Vec<Pressure>,
    /// What condenses at every interface; below 0 what a wet one gives up, 0 at a dry one.
    pub condensing: Vec<MoistureFlux>,
    /// From the room into the build-up.
    pub inflow: MoistureFlux,
    /// From the build-up outdoors.
    pub outflow: MoistureFlux,
}

impl VapourProfile {
    /// The profile of a build-up in a steady state, with water lying at the interfaces of the given
    /// indices, counted from the inside.
    ///
    /// Condensing on the inner surface itself is not looked at. Range: −90 °C to 100 °C, vapour
    /// pressures from 0 to 110 kPa.
    ///
    /// # Errors
    /// Refuses a state out of range, or an index that no interface has.
    pub fn of(
        assembly: &Assembly,
        state: &MonthState,
        wet: &[usize],
    ) -> Result<Self, MoistureError> {
        if let Some(&index) = wet.iter().find(|&&index| index >= assembly.interfaces()) {
            return Err(MoistureError::NoSuchInterface { index });
        }
        let wet: Vec<bool> = (0..assembly.interfaces()).map(|n| wet.contains(&n)).collect();
        let saturation = checked_saturations(assembly, state)?;
        let (indoor, outdoor) = (state.indoor_vapour, state.outdoor_vapour);
        Ok(vapour_profile(assembly.layers(), indoor, outdoor, &saturation, &wet))
    }
}

/// Saturation at every interface in a state whose vapour pressures are in range too.
pub(super) fn checked_saturations(
    assembly: &Assembly,
    state: &MonthState,
) -> Result<Vec<Pressure>, MoistureError> {
    for pressure in [state.indoor_vapour, state.outdoor_vapour] {
        MoistureQuantity::VapourPressure.check(pressure.value())?;
    }
    Ok(assembly.interface_saturations(state.indoor, state.outdoor)?)
}

/// The steady vapour pressures between a room and outdoors.
///
/// Drawn over the equivalent air thickness, the pressure is the tightest curve from p_i to p_e that
/// stays at or under the saturation pressure of every interface, and at it where there is water.
/// It bends where vapour condenses, and by the bend:
/// g = δ₀·((p₋ − p) / s₋ − (p − p₊) / s₊) (ISO 13788:2012, clause 6).
///
/// `saturation` and `wet` hold one entry per interface.
pub(super) fn vapour_profile(
    layers: &[VapourLayer],
    indoor: Pressure,
    outdoor: Pressure,
    saturation: &[Pressure],
    wet: &[bool],
) -> VapourProfile {
    let end = layers.len();
    let mut points: Vec<f64> = Vec::with_capacity(end + 1);
    points.push(indoor.value());
    points.extend(saturation.iter().map(|pressure| pressure.value()));
    points.push(outdoor.value());
    // How far out each point lies; the last without end behind a tight layer.
    let depths: Vec<f64> = core::iter::once(0.0)
        .chain(layers.iter().scan(0.0, |depth, layer| {
            *depth += layer.equivalent_air_thickness.value();
            Some(*depth)
        }))
        .collect();
    let slope = |from: usize, to: usize| (points[to] - points[from]) / (depths[to] - depths[from]);

    let mut held = vec![0];
    let mut at = 0;
    while at < end {
        // The steepest way down, no farther than the next point that is held by water.
        let next_held = (at + 1..end).find(|&point| wet[point - 1]).unwrap_or(end);
        let steepest = (at + 1..=next_held)
            .reduce(|best, point| if slope(at, point) <= slope(at, best) { point } else { best });
        at = steepest.unwrap_or(end);
        held.push(at);
    }

    let mut pressures = points.clone();
    let mut flows = vec![0.0; end];
    for pair in held.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let fall = slope(from, to);
        flows[from..to].fill(-fall * STILL_AIR_PERMEABILITY.value());
        for point in from + 1..to {
            pressures[point] = points[from] + fall * (depths[point] - depths[from]);
        }
    }
    let mut condensing = vec![MoistureFlux::ZERO; end - 1];
    for &point in &held[1..held.len() - 1] {
        condensing[point - 1] = MoistureFlux::new(flows[point - 1] - flows[point]);
    }
    VapourProfile {
        pressures: pressures[1..end].iter().map(|&pressure| Pressure::new(pressure)).collect(),
        condensing,
        inflow: MoistureFlux::new(flows[0]),
        outflow: MoistureFlux::new(flows[end - 1]),
    }
}
