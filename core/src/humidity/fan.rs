//! The dampers and fan of a design as a system of openings, and where it settles.

use super::Setting;
use crate::design::{DamperScreen, Design, FanGiven, PersonnelDoor, WeatherCover};
use crate::moisture::MoistureError;
use crate::psychro::MoistAir;
use crate::units::{
    Area, Force, FrictionFactor, Length, LossCoefficient, Power, Pressure, Speed, VolumeFlow,
};
use crate::ventilation::{
    AirPath, DryAirFlow, ElementKind, Exhaust, FanCurve, FlowElement, OperatingPoint, StackFlow,
    VentilationError, VentilationSystem, heat_to_warm, stack_flow, typical_loss,
};

/// Friction factor of smooth sheet-metal duct. Common practice, no source.
const DUCT_FRICTION: FrictionFactor = FrictionFactor::new(0.02);

/// Speed on an intake's face above which rain and snow come in with the air, 500 ft/min: an
/// outdoor-air intake design note (read as quoted).
pub const FASTEST_INTAKE: Speed = Speed::feet_per_minute(500.0);

/// Suction from which a flue that draws by warmth alone may spill into the room, 5 Pa. From
/// memory.
pub const FLUE_SPILLS_AT: Pressure = Pressure::new(5.0);

/// Where a system settles, and what that does in the room.
#[derive(Clone, Debug, PartialEq)]
pub struct FanPoint {
    /// The point itself.
    pub point: OperatingPoint,
    /// What passes, as dry air.
    pub moved: DryAirFlow,
    /// Highest speed on an intake's damper.
    pub intake_speed: Speed,
    /// Highest speed on an exhaust's damper.
    pub exhaust_speed: Speed,
    /// Pull of the suction on the whole leaf of the personnel door; nothing where there is none.
    pub pull_on_door: Force,
}

impl FanPoint {
    fn of(
        system: &VentilationSystem,
        design: &Design,
        outdoor: &MoistAir,
        room: &MoistAir,
    ) -> Result<Self, VentilationError> {
        let point = system.operating_point(outdoor.density(), room.density())?;
        let fastest = |diameter: Length, flows: &mut dyn Iterator<Item = VolumeFlow>| {
            flows.fold(Speed::ZERO, |fastest, flow| fastest.max(flow / round_area(diameter)))
        };
        let intakes = &mut point.intakes.iter().map(|path| path.flow);
        let exhausts = &mut point.exhausts.iter().map(|fan| fan.path.flow);
        let leaf = if design.personnel_door == PersonnelDoor::None {
            Area::ZERO
        } else {
            design.door_width * design.door_height
        };
        Ok(Self {
            moved: DryAirFlow::from_volume(point.exhausted(), room)?,
            intake_speed: fastest(design.damper_diameter, intakes),
            exhaust_speed: fastest(design.exhaust_diameter, exhausts),
            pull_on_door: point.pull_on_door(leaf),
            point,
        })
    }

    /// All that is drawn out, as room air.
    pub fn exhausted(&self) -> VolumeFlow {
        self.point.exhausted()
    }

    /// How far the room is drawn below outdoors.
    pub fn suction(&self) -> Pressure {
        self.point.room_suction
    }

    /// Whether a flue that draws by warmth alone may spill into the room.
    pub fn spills_flues(&self) -> bool {
        self.suction() >= FLUE_SPILLS_AT
    }
}

/// The fan against its openings.
#[derive(Clone, Debug, PartialEq)]
pub struct FanRun {
    /// The openings and the fan.
    pub system: VentilationSystem,
    /// The fan's own curve.
    pub curve: FanCurve,
    /// Everything open and clean.
    pub clean: FanPoint,
    /// The screens as dirty as they get.
    pub dirty: FanPoint,
    /// One intake's damper stuck shut; nothing moves where it was the only one.
    pub intake_stuck: Option<FanPoint>,
    /// One exhaust's damper stuck shut; nothing moves where it was the only one.
    pub exhaust_stuck: Option<FanPoint>,
    /// What warmth alone moves while the dampers stand open and the fan is still.
    pub open_dampers: StackFlow,
    /// The heat that takes, W.
    pub open_dampers_heat: Power,
}

/// The fan of a design.
#[derive(Clone, Debug, PartialEq)]
pub enum Fan {
    /// There are no dampers.
    None,
    /// It settles.
    Runs(Box<FanRun>),
}

/// Area of a round damper, π·d² / 4.
fn round_area(diameter: Length) -> Area {
    diameter * diameter * (core::f64::consts::PI / 4.0)
}

/// What the air passes one after another in openings of a diameter, so many side by side taken as
/// one.
fn path(design: &Design, diameter: Length, count: f64) -> Result<AirPath, VentilationError> {
    let area = round_area(diameter) * count;
    let usual = |kind| typical_loss(kind).map_or(LossCoefficient::new(1.0), |loss| loss.typical);
    let element = |kind| FlowElement::new(kind, usual(kind), area);
    let mut elements = Vec::with_capacity(5);
    match design.weather_cover {
        WeatherCover::Hood => elements.push(element(ElementKind::Hood)?),
        WeatherCover::Louvre => elements.push(element(ElementKind::Louvre)?),
        WeatherCover::None => {}
    }
    if design.damper_screen == DamperScreen::Screened {
        elements.push(FlowElement::screen(design.screen_free_area, area)?);
    }
    elements.push(element(ElementKind::Damper)?);
    if design.duct_length > Length::ZERO {
        let duct = FlowElement::duct(design.duct_length, diameter, DUCT_FRICTION)?;
        elements.push(FlowElement::new(ElementKind::Duct, duct.coefficient(), area)?);
    }
    elements.push(element(ElementKind::Grille)?);
    AirPath::new(elements)
}

/// The fan's curve as it is given.
fn fan_curve(design: &Design) -> Result<FanCurve, VentilationError> {
    let (free_air, shut_off) = (design.fan_free_air_flow, design.fan_shut_off_pressure);
    match design.fan_given {
        FanGiven::Label => FanCurve::from_free_air_and_shut_off(free_air, shut_off),
        FanGiven::Curve => FanCurve::from_points(&[
            (VolumeFlow::ZERO, shut_off),
            (design.fan_first_flow, design.fan_first_pressure),
            (design.fan_second_flow, design.fan_second_pressure),
            (design.fan_third_flow, design.fan_third_pressure),
            (free_air, Pressure::ZERO),
        ]),
    }
}

impl Fan {
    /// The fan of a design against outdoor air.
    pub(super) fn of(setting: &Setting, outdoor: &MoistAir) -> Result<Self, MoistureError> {
        let design = setting.design;
        let exhausts = design.exhaust_count;
        let intakes = design.damper_count - exhausts;
        if design.damper_count == 0.0 {
            return Ok(Self::None);
        }
        let curve = fan_curve(design)?;
        let intake = |count| path(design, design.damper_diameter, count);
        let way_out = |count| path(design, design.exhaust_diameter, count);
        let exhaust = Exhaust { path: way_out(1.0)?, fan: curve.clone() };
        let system = VentilationSystem::new(
            vec![intake(1.0)?; intakes as usize],
            vec![exhaust; exhausts as usize],
        )?;
        let room = &setting.target;
        let at = |system: &VentilationSystem| FanPoint::of(system, design, outdoor, room);
        let intake_stuck =
            if intakes > 1.0 { Some(at(&system.with_intake_shut(0)?)?) } else { None };
        let exhaust_stuck =
            if exhausts > 1.0 { Some(at(&system.with_exhaust_shut(0)?)?) } else { None };
        let open_dampers = stack_flow(
            &intake(intakes)?,
            &way_out(exhausts)?,
            design.damper_rise,
            outdoor.density(),
            room.density(),
        )?;
        let by_warmth = DryAirFlow::from_volume(open_dampers.let_in, outdoor)?;
        Ok(Self::Runs(Box::new(FanRun {
            clean: at(&system)?,
            dirty: at(&system.clogged(design.screen_clogged)?)?,
            intake_stuck,
            exhaust_stuck,
            open_dampers,
            open_dampers_heat: heat_to_warm(by_warmth, room, outdoor),
            system,
            curve,
        })))
    }

    /// The fan, where there is one.
    pub fn run(&self) -> Option<&FanRun> {
        match self {
            Self::None => None,
            Self::Runs(run) => Some(run),
        }
    }

    /// What would pass against other outdoor air; nothing without a fan.
    ///
    /// # Errors
    /// As [`VentilationSystem::operating_point`].
    pub fn moves_against(
        &self,
        outdoor: &MoistAir,
        room: &MoistAir,
    ) -> Result<Option<DryAirFlow>, VentilationError> {
        let Some(run) = self.run() else { return Ok(None) };
        let point = run.system.operating_point(outdoor.density(), room.density())?;
        Ok(Some(DryAirFlow::from_volume(point.exhausted(), room)?))
    }

    /// What passes with everything open and clean; nothing without a fan.
    pub fn moves(&self) -> Option<DryAirFlow> {
        self.run().map(|run| run.clean.moved)
    }
}

impl FanRun {
    /// The pressure that the openings take over what passes, as room air: flow and pressure at the
    /// operating point scaled by q², from no flow to the last of the fans together.
    pub fn system_pressure(&self, flow: VolumeFlow) -> Pressure {
        let part = flow / self.clean.exhausted();
        self.fan_pressure() * (part * part)
    }

    /// The pressure the fan makes where it settles, which is what the openings take.
    pub fn fan_pressure(&self) -> Pressure {
        self.clean.point.exhausts.first().map_or(Pressure::ZERO, |exhaust| exhaust.fan_pressure)
    }
}
