//! How much outdoor air a purpose needs.

use super::error::{VentilationError, VentilationQuantity, check, check_not_negative};
use crate::psychro::{HEAT_CAPACITY_OF_DRY_AIR, HEAT_CAPACITY_OF_VAPOUR, MoistAir};
use crate::units::*;
use core::ops::Bound;

/// Least flow that is told from none, kg/s.
const LEAST_FLOW: f64 = 1e-9;

/// Outdoor air by the mass of its dry air, kg/s: the same going in cold and going out warm, while
/// cubic metres are not.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct DryAirFlow(MassFlow);

impl DryAirFlow {
    /// From a mass flow of dry air.
    ///
    /// Range: from 0 to 100 kg/s.
    ///
    /// # Errors
    /// Refuses a flow out of range.
    pub fn new(dry_air: MassFlow) -> Result<Self, VentilationError> {
        check_not_negative(VentilationQuantity::DryAirFlow, dry_air.value(), 100.0)?;
        Ok(Self(dry_air))
    }

    /// From a volume flow of air in a state.
    ///
    /// Range: from 0 to 100 m³/s.
    ///
    /// # Errors
    /// Refuses a flow out of range.
    pub fn from_volume(flow: VolumeFlow, state: &MoistAir) -> Result<Self, VentilationError> {
        check_not_negative(VentilationQuantity::VolumeFlow, flow.value(), 100.0)?;
        Ok(Self(MassFlow::new(flow.value() / state.specific_volume().value())))
    }

    /// Mass of dry air, kg/s.
    pub fn dry_air(self) -> MassFlow {
        self.0
    }

    /// Both flows together.
    ///
    /// # Errors
    /// Refuses a sum out of range.
    pub fn plus(self, other: Self) -> Result<Self, VentilationError> {
        Self::new(self.0 + other.0)
    }

    /// What is left of the flow beyond another; nothing where that is the greater.
    #[must_use]
    pub fn less(self, other: Self) -> Self {
        Self((self.0 - other.0).max(MassFlow::ZERO))
    }

    /// The greater of two.
    #[must_use]
    pub fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }

    /// Volume that the flow takes up in a state, m³/s: as room air what a fan must draw.
    pub fn volume_as(self, state: &MoistAir) -> VolumeFlow {
        VolumeFlow::new(self.0.value() * state.specific_volume().value())
    }
}

/// Flow of outdoor air that holds a room at a humidity against a moisture source G,
/// m = G / (W_room − W_outdoor), kg/s of dry air.
///
/// Range: G from 0 to 1 kg/s. Steady state: nothing condenses, nothing is stored in the lining.
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 1, mass balance of water.
///
/// # Errors
/// [`VentilationError::CannotHold`] if outdoor air is not drier than the room is to be, however
/// small the source; refuses a source out of range.
pub fn flow_to_hold(
    source: MassFlow,
    room: &MoistAir,
    outdoor: &MoistAir,
) -> Result<DryAirFlow, VentilationError> {
    check_source(source)?;
    let (room, outdoor) = (room.humidity_ratio(), outdoor.humidity_ratio());
    let carried = room.value() - outdoor.value();
    if carried > 0.0 {
        Ok(DryAirFlow(source / carried))
    } else {
        Err(VentilationError::CannotHold { room, outdoor })
    }
}

/// Humidity ratio that a room comes to with a moisture source G and outdoor air m,
/// W = W_outdoor + G / m. It may lie above saturation: then vapour condenses.
///
/// Range: G from 0 to 1 kg/s, m from 10⁻⁹ kg/s. Steady state: nothing is stored in the lining.
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 1, mass balance of water.
///
/// # Errors
/// Refuses a source or flow out of range.
pub fn steady_humidity_ratio(
    source: MassFlow,
    flow: DryAirFlow,
    outdoor: &MoistAir,
) -> Result<HumidityRatio, VentilationError> {
    check_source(source)?;
    let some = (Bound::Included(LEAST_FLOW), Bound::Excluded(f64::INFINITY));
    check(VentilationQuantity::DryAirFlow, flow.0.value(), some)?;
    let gained = source / flow.0;
    Ok(HumidityRatio::new(outdoor.humidity_ratio().value() + gained))
}

/// Specific heat capacity of air with its vapour per mass of its dry air, 1006 + 1860·W,
/// J/(kg·K) (ASHRAE Fundamentals 2017, chapter 1, equation 30).
pub fn heat_capacity(air: &MoistAir) -> f64 {
    HEAT_CAPACITY_OF_DRY_AIR + HEAT_CAPACITY_OF_VAPOUR * air.humidity_ratio().value()
}

/// Flow of outdoor air that carries off a heat gain Φ while the room stays at its temperature,
/// m = Φ / (c·(t_room − t_outdoor)), c = 1006 + 1860·W_outdoor, kg/s of dry air.
///
/// Range: Φ from 0 to 1 MW. Source: ASHRAE Handbook of Fundamentals 2017, chapter 1, equation 30.
///
/// # Errors
/// [`VentilationError::CannotCool`] if outdoor air is not colder than the room is to be; refuses a
/// gain out of range.
pub fn flow_to_carry_heat(
    gain: Power,
    room: &MoistAir,
    outdoor: &MoistAir,
) -> Result<DryAirFlow, VentilationError> {
    check_not_negative(VentilationQuantity::HeatGain, gain.value(), 1e6)?;
    let rise = (room.temperature() - outdoor.temperature()).value();
    if rise > 0.0 {
        Ok(DryAirFlow(MassFlow::new(gain.value() / (heat_capacity(outdoor) * rise))))
    } else {
        Err(VentilationError::CannotCool {
            room: room.temperature(),
            outdoor: outdoor.temperature(),
        })
    }
}

/// A rule of so much outdoor air for each person and so much for each square metre of floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutdoorAirRate {
    /// Flow for each person, m³/s.
    pub per_person: VolumeFlow,
    /// Flow for each square metre of floor, m³/(s·m²).
    pub per_floor_area: Speed,
}

impl OutdoorAirRate {
    /// Office: 5 cubic feet a minute for each person and 0.06 for each square foot.
    /// Source: ASHRAE 62.1-2016, table 6.2.2.1 (from memory).
    pub const OFFICE: Self = Self {
        per_person: VolumeFlow::cubic_feet_per_minute(5.0),
        per_floor_area: Speed::feet_per_minute(0.06),
    };

    /// Dwelling: 7.5 cubic feet a minute for each person and 0.03 for each square foot, people being
    /// one more than the bedrooms unless more are known.
    /// Source: ASHRAE 62.2-2013, equation 4.1 (from memory).
    pub const DWELLING: Self = Self {
        per_person: VolumeFlow::cubic_feet_per_minute(7.5),
        per_floor_area: Speed::feet_per_minute(0.03),
    };

    /// Outdoor air for a number of people on a floor, m³/s.
    ///
    /// Range: floor from 0 to 1000 m².
    ///
    /// # Errors
    /// Refuses a floor out of range.
    pub fn flow(&self, people: u32, floor: Area) -> Result<VolumeFlow, VentilationError> {
        check_not_negative(VentilationQuantity::Area, floor.value(), 1000.0)?;
        Ok(self.per_person * f64::from(people) + self.per_floor_area * floor)
    }
}

fn check_source(source: MassFlow) -> Result<f64, VentilationError> {
    check_not_negative(VentilationQuantity::MoistureSource, source.value(), 1.0)
}
