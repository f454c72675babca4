//! The places that take water from a room's air, each with its temperature factor and its area.

use super::{ColdSpots, SpotPlace};
use crate::design::{Design, SleeveEnd, Surface};
use crate::detail::{DRAIN_PLATE, HEAD_DIAMETER};
use crate::envelope::{Amount, End, Envelope, ThermalBridge};
use crate::freight_box::{Dimensions, FORKLIFT_POCKET, GOOSENECK_TUNNEL};
use crate::moisture::{
    MoistureError, STILL_CORNER_COEFFICIENT, Sink, mass_transfer_coefficient, surface_temperature,
};
use crate::psychro::hyland_wexler::saturation_pressure;
use crate::psychro::{GAS_CONSTANT_OF_VAPOUR, PsychroError};
use crate::room::Room;
use crate::units::{Area, Length, Pressure, Temperature, TemperatureFactor};

/// Width of an edge or frame that is taken to be as cold as its coldest point. Common practice, no
/// source: about the depth of the foam beside it.
const COLD_STRIP: Length = Length::mm(40.0);

/// A place that takes water from the air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColdPlace {
    /// Where.
    pub place: SpotPlace,
    /// Temperature factor with ordinary surface resistances, which are there while it takes water.
    pub factor: TemperatureFactor,
    /// Area taken to be as cold as the coldest point there, so that what lands is the most it can be.
    pub area: Area,
}

/// The known places of a room, coldest first; those of no area take nothing.
pub fn cold_places(
    spots: &ColdSpots,
    design: &Design,
    room: &Room,
    envelope: &Envelope,
) -> Vec<ColdPlace> {
    let mut places: Vec<ColdPlace> = spots
        .spots
        .iter()
        .map(|spot| ColdPlace {
            place: spot.place,
            factor: spot.ordinary_factor,
            area: cold_area(spot.place, design, room, envelope),
        })
        .filter(|place| place.area > Area::ZERO)
        .collect();
    places.sort_by(|one, other| one.factor.value().total_cmp(&other.factor.value()));
    places
}

/// Conductance onto a square metre of cold surface in a room, β/(R_v·T_room) with β by the Lewis relation,
/// kg/(m²·s·Pa) ([`mass_transfer_coefficient`]).
///
/// # Errors
/// None: the coefficient is in range.
pub fn conductance_onto_surface(indoor: Temperature) -> Result<f64, MoistureError> {
    let beta = mass_transfer_coefficient(STILL_CORNER_COEFFICIENT)?;
    Ok(beta.value() / (GAS_CONSTANT_OF_VAPOUR * indoor.as_kelvin()))
}

/// The sinks that dry places are between a room and outdoors, coldest first: of those that take water from air of a
/// vapour pressure or less.
pub(super) fn sinks(
    places: &[ColdPlace],
    [indoor, outdoor]: [Temperature; 2],
    most: Pressure,
) -> Result<Vec<Sink>, MoistureError> {
    let onto = conductance_onto_surface(indoor)?;
    let mut sinks = Vec::with_capacity(places.len());
    for place in places {
        let surface = surface_temperature(place.factor, indoor, outdoor);
        let balance = balance(surface, indoor)?;
        // Coldest first: where one stays dry so do those after it.
        if balance >= most && indoor >= outdoor {
            break;
        }
        let conductance = onto * place.area.value();
        sinks.push(Sink { conductance, balance: balance.value(), gives_at_most: 0.0 });
    }
    Ok(sinks)
}

/// The vapour pressure of a room with which a surface is in balance, p_sat(θ_s)·T_room/T_s.
fn balance(surface: Temperature, indoor: Temperature) -> Result<Pressure, PsychroError> {
    Ok(saturation_pressure(surface)? * (indoor.as_kelvin() / surface.as_kelvin()))
}

/// The area of a place that is taken to be as cold as its coldest point.
pub fn cold_area(place: SpotPlace, design: &Design, room: &Room, envelope: &Envelope) -> Area {
    let detail = match place {
        SpotPlace::Plain(surface) => {
            let plain = envelope.plain.iter().find(|plain| plain.surface == surface);
            return plain.map_or(Area::ZERO, |plain| plain.area);
        }
        SpotPlace::PersonnelDoor => return envelope.personnel_door.area,
        SpotPlace::Windows => return envelope.windows.area,
        SpotPlace::Detail(detail) => detail,
    };
    let amount = envelope.thermal_bridges.iter().find(|(place, _)| *place == detail);
    let each = match detail {
        ThermalBridge::TopCasting(end) => {
            let corner = match end {
                End::Front => &room.front_corner,
                End::Door => &room.door_corner,
            };
            if corner.stands_out() { open_faces(&corner.size) } else { COLD_STRIP * COLD_STRIP }
        }
        ThermalBridge::BottomCasting(_) => COLD_STRIP * COLD_STRIP,
        ThermalBridge::StudHead | ThermalBridge::JoistEnd => {
            design.flange_width * design.flange_width
        }
        ThermalBridge::DamperSleeve => sleeve_area(design, design.damper_diameter),
        ThermalBridge::ExhaustSleeve => sleeve_area(design, design.exhaust_diameter),
        ThermalBridge::ScrewThrough => {
            HEAD_DIAMETER * HEAD_DIAMETER * (core::f64::consts::PI / 4.0)
        }
        ThermalBridge::FloorDrain => DRAIN_PLATE * DRAIN_PLATE,
        _ => Area::ZERO,
    };
    match amount {
        Some((_, Amount::Pieces(count))) => each * *count,
        Some((_, Amount::Metres(length))) => {
            let across = match detail {
                ThermalBridge::FrameLine(_) | ThermalBridge::FloorMember => design.flange_width,
                ThermalBridge::ThinFoam => design.thin_foam_width,
                ThermalBridge::ForkliftPocket => FORKLIFT_POCKET.width,
                ThermalBridge::GooseneckTunnel => GOOSENECK_TUNNEL.width,
                _ => COLD_STRIP,
            };
            across * *length
        }
        None => Area::ZERO,
    }
}

/// The inner face of a sleeve through a side wall; of a recessed one the steel up to its end, and the blade.
fn sleeve_area(design: &Design, diameter: Length) -> Area {
    let wall = design.stack(Surface::SideWall);
    let depth = match design.sleeve_end {
        SleeveEnd::ThroughLining => wall.total(),
        SleeveEnd::Recessed => wall.frame_stand_off() + diameter / 4.0,
    };
    diameter * core::f64::consts::PI * depth
}

/// The three faces of a corner block that the room's air reaches.
fn open_faces(size: &Dimensions) -> Area {
    size.length * size.width + size.length * size.height + size.width * size.height
}
