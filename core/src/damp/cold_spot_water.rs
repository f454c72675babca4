//! What lands on the cold spots through a cold spell, as water or frost, and never more than the
//! use gives off.

use super::Setting;
use crate::design::{Design, Surface};
use crate::envelope::{Amount, Envelope, ThermalBridge};
use crate::freight_box::Dimensions;
use crate::moisture::{
    ColdSpellWater, ColdSpots, Condensing, MoistureError, STILL_CORNER_COEFFICIENT, SpotPlace,
    limited_by_source, mass_transfer_coefficient,
};
use crate::psychro::{MoistAir, hyland_wexler, saturation_humidity_ratio, vapour_concentration};
use crate::room::Room;
use crate::root_finding::root_between;
use crate::units::{
    Area, HumidityRatio, Length, Mass, MassFlow, Speed, Temperature, Time, VapourConcentration,
    Volume,
};
use crate::ventilation::DryAirFlow;

/// Width of an edge or frame that is taken to be as cold as its coldest point. Common practice, no
/// source: about the depth of the foam beside it.
const COLD_STRIP: Length = Length::mm(40.0);

/// How near the room's humidity ratio is found, kg/kg.
const RATIO_ACCURACY: f64 = 1e-12;

/// What lands on one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpotWater {
    /// Where.
    pub place: SpotPlace,
    /// Area taken to be as cold as the coldest point there, so that what lands is the most it can
    /// be.
    pub area: Area,
    /// How fast.
    pub rate: MassFlow,
    /// Whether it freezes.
    pub is_frost: bool,
    /// What a cold spell leaves.
    pub spell: ColdSpellWater,
}

/// The moisture of the room in a cold spell: what comes, and where it goes.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdSpotWater {
    /// The room's air once the cold spots take their part.
    pub room: MoistAir,
    /// What the use gives off in the mean of a day.
    pub source: MassFlow,
    /// What air carries out; below 0 where outdoor air brings moisture.
    pub carried_out: MassFlow,
    /// What the places could take if the use kept the room as humid as without them.
    pub could_take: MassFlow,
    /// What they do take, and what holds it there.
    pub condensing: Condensing,
    /// What is left over in a saturated room and condenses wherever it can.
    pub anywhere: MassFlow,
    /// Every place that takes water, coldest first.
    pub places: Vec<SpotWater>,
    /// How long the spell is.
    pub spell: Time,
}

impl ColdSpotWater {
    /// What freezes, how fast.
    pub fn frosting(&self) -> MassFlow {
        self.places.iter().filter(|place| place.is_frost).map(|place| place.rate).sum()
    }

    /// What drips at once, how fast.
    pub fn dripping(&self) -> MassFlow {
        self.places.iter().filter(|place| !place.is_frost).map(|place| place.rate).sum()
    }

    /// Frost at the end of the spell.
    pub fn frost(&self) -> Mass {
        self.places.iter().map(|place| place.spell.frost).sum()
    }

    /// The water it melts to.
    pub fn released_at_thaw(&self) -> Volume {
        self.places.iter().map(|place| place.spell.released_at_thaw()).sum()
    }

    /// The balance G = carried out + frost + water + anywhere.
    ///
    /// The room's humidity ratio W is the one at which G − m·(W − W_out) = Σ A·β·(v − v_sat(θ_s))
    /// over the places colder than its dew point. The left side falls with W and the right rises,
    /// so there is one; where even saturated air does not balance, the rest condenses anywhere.
    /// Left out: the heat that condensing sets free and the insulation of the frost.
    pub(super) fn of(
        setting: &Setting,
        room: &Room,
        envelope: &Envelope,
        spots: &ColdSpots,
        source: MassFlow,
        air: DryAirFlow,
        outdoor: &MoistAir,
    ) -> Result<Self, MoistureError> {
        let indoor = setting.target.temperature();
        let beta = mass_transfer_coefficient(STILL_CORNER_COEFFICIENT)?;
        let places = cold_places(setting.design, room, envelope, spots)?;
        let dry_air = air.dry_air();
        let outside = outdoor.humidity_ratio().value();
        let state = |ratio: f64| {
            MoistAir::from_humidity_ratio(indoor, HumidityRatio::new(ratio), setting.pressure)
        };
        let carried = |ratio: f64| dry_air * (ratio - outside);
        let saturated = saturation_humidity_ratio(indoor, setting.pressure)?.value();
        let unless_it_lands = if dry_air > MassFlow::ZERO {
            (outside + source / dry_air).min(saturated)
        } else if source > MassFlow::ZERO {
            saturated
        } else {
            outside
        };
        let could_take = potential(&places, beta, &state(unless_it_lands)?);
        let left = |ratio: f64| {
            let landing = state(ratio).map_or(MassFlow::ZERO, |air| potential(&places, beta, &air));
            (source - carried(ratio) - landing).value()
        };
        let ratio = if could_take == MassFlow::ZERO || left(unless_it_lands) >= 0.0 {
            unless_it_lands
        } else {
            // Dry enough that nothing lands, and more comes than goes.
            root_between(left, outside * 1e-3, unless_it_lands, RATIO_ACCURACY)
                .unwrap_or(unless_it_lands)
        };
        let held = state(ratio)?;
        let carried_out = carried(ratio);
        let condensing = limited_by_source(could_take, source, carried_out)?;
        let taken = potential(&places, beta, &held);
        // The two are a rounding apart; the source has the last word.
        let share = if taken > MassFlow::ZERO { condensing.rate / taken } else { 0.0 };
        let spell = Time::days(setting.design.cold_spell_days);
        let mut wet = Vec::new();
        for place in &places {
            let rate = place.takes(beta, &held) * share;
            if rate > MassFlow::ZERO {
                let is_frost = place.surface < Temperature::celsius(0.0);
                let spell = ColdSpellWater::over(rate, is_frost, spell)?;
                wet.push(SpotWater { place: place.place, area: place.area, rate, is_frost, spell });
            }
        }
        let over = (source - carried_out - condensing.rate).max(MassFlow::ZERO);
        // What does not balance in air drier than saturated is rounding.
        let anywhere = if ratio < saturated { MassFlow::ZERO } else { over };
        Ok(Self {
            room: held,
            source,
            carried_out,
            could_take,
            condensing,
            anywhere,
            places: wet,
            spell,
        })
    }
}

/// A place with its area and the vapour that its temperature holds.
struct ColdPlace {
    place: SpotPlace,
    area: Area,
    surface: Temperature,
    saturation: VapourConcentration,
}

impl ColdPlace {
    fn takes(&self, beta: Speed, air: &MoistAir) -> MassFlow {
        let beyond = air.vapour_concentration() - self.saturation;
        if beyond > VapourConcentration::ZERO { beta * beyond * self.area } else { MassFlow::ZERO }
    }
}

fn potential(places: &[ColdPlace], beta: Speed, air: &MoistAir) -> MassFlow {
    places.iter().map(|place| place.takes(beta, air)).sum()
}

fn cold_places(
    design: &Design,
    room: &Room,
    envelope: &Envelope,
    spots: &ColdSpots,
) -> Result<Vec<ColdPlace>, MoistureError> {
    let place = |spot: &crate::moisture::ColdSpot| {
        let saturation = hyland_wexler::saturation_pressure(spot.surface_temperature)?;
        Ok(ColdPlace {
            place: spot.place,
            area: cold_area(spot.place, design, room, envelope),
            surface: spot.surface_temperature,
            saturation: vapour_concentration(spot.surface_temperature, saturation)?,
        })
    };
    spots.spots.iter().map(place).collect()
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
                crate::envelope::End::Front => &room.front_corner,
                crate::envelope::End::Door => &room.door_corner,
            };
            if corner.stands_out() { open_faces(&corner.size) } else { COLD_STRIP * COLD_STRIP }
        }
        ThermalBridge::BottomCasting(_) => COLD_STRIP * COLD_STRIP,
        ThermalBridge::StudHead => design.flange_width * design.flange_width,
        ThermalBridge::DamperSleeve => sleeve_area(design, design.damper_diameter),
        ThermalBridge::ExhaustSleeve => sleeve_area(design, design.exhaust_diameter),
        _ => Area::ZERO,
    };
    match amount {
        Some((_, Amount::Pieces(count))) => each * *count,
        Some((_, Amount::Metres(length))) => {
            let across = match detail {
                ThermalBridge::FrameLine(_) | ThermalBridge::FloorMember => design.flange_width,
                _ => COLD_STRIP,
            };
            across * *length
        }
        None => Area::ZERO,
    }
}

/// The inner face of a sleeve through a side wall.
fn sleeve_area(design: &Design, diameter: Length) -> Area {
    diameter * core::f64::consts::PI * design.stack(Surface::SideWall).total()
}

/// The three faces of a corner block that the room's air reaches.
fn open_faces(size: &Dimensions) -> Area {
    size.length * size.width + size.length * size.height + size.width * size.height
}
