//! Water that gathers at the steel through the year.

use super::RoomMonths;
use crate::climate::SUNNY_SURFACE_COEFFICIENT;
use crate::design::{CheckedDesign, Design, Surface};
use crate::envelope::{
    Envelope, HeatFlow, Layer, LayerKind, OUTSIDE_SURFACE_RESISTANCE, PlainArea, foam_material,
    lining_material,
};
use crate::material::{PLYWOOD, REINFORCED_PLASTIC, STEEL};
use crate::moisture::{
    AIR_LAYER_EQUIVALENT_THICKNESS, Assembly, MoistureError, MonthBalance, MonthState, VapourLayer,
    YearBalance, monthly_balance,
};
use crate::units::{Length, Pressure, SurfaceMoisture, TemperatureDifference};

/// A surface through the year.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildUpWater {
    /// Which surface.
    pub surface: Surface,
    /// Its foam.
    pub foam: Length,
    /// Foam from which on it holds vapour back by itself.
    pub least_foam: Length,
    /// Still air that resists vapour as much as all that stands before the steel, Σ s_d.
    pub equivalent_air_thickness: Length,
    /// The twelve months.
    pub year: YearBalance,
    /// The month in which most gathers; `None` where nothing does.
    pub wettest: Option<WettestMonth>,
}

/// The month in which most water gathers at the steel, g = δ₀·(p_i − p_sat(θ)) / Σ s_d · t.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WettestMonth {
    /// Its index from January.
    pub month: usize,
    /// Vapour pressure in the room.
    pub indoor_vapour: Pressure,
    /// What air at the steel can hold.
    pub steel_saturation: Pressure,
    /// What gathers in the month.
    pub gained: SurfaceMoisture,
}

impl WettestMonth {
    fn of(
        year: &YearBalance,
        assembly: &Assembly,
        months: &[MonthState; 12],
    ) -> Result<Option<Self>, MoistureError> {
        let gained = |month: &MonthBalance| month.change.iter().copied().sum::<SurfaceMoisture>();
        let most = |most, next| if gained(next) > gained(most) { next } else { most };
        let Some(wettest) = year.months.iter().reduce(most) else { return Ok(None) };
        let state = &months[wettest.month];
        let saturations = assembly.interface_saturations(state.indoor, state.outdoor)?;
        Ok(saturations.last().map(|&steel_saturation| Self {
            month: wettest.month,
            indoor_vapour: state.indoor_vapour,
            steel_saturation,
            gained: gained(wettest),
        }))
    }
}

impl BuildUpWater {
    /// The most that lies in it at the end of any month.
    pub fn peak(&self) -> SurfaceMoisture {
        self.year.peak().map_or(SurfaceMoisture::ZERO, |month| month.total())
    }

    /// Whether its foam holds vapour back by itself.
    pub fn controls_vapour(&self) -> bool {
        controls_vapour(self.foam, self.least_foam)
    }
}

/// Surfaces behind whose foam steel lies; the floor has none under it.
const BEFORE_STEEL: [Surface; 4] =
    [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd, Surface::Ceiling];

/// How much warmer than the air the sun keeps the steel in the mean of a month, α·s·I/h_o over the whole
/// day: under a roof the level sun I of the month, on walls half of it.
///
/// That upright faces get half of the level sun in the mean of all four is common practice, no source; the
/// true share is greater in winter. What the sky draws is left out.
fn sun_rise(design: &Design, surface: Surface, month: usize) -> TemperatureDifference {
    let daily = design.place.place().months[month].daily_global_irradiation;
    let level = daily.as_kilowatt_hours() * 1000.0 / 24.0;
    let share = match surface {
        Surface::Ceiling => design.sun_on_roof.value(),
        _ => 0.5,
    };
    let taken = design.paint.value() * share * level;
    TemperatureDifference::new(taken / SUNNY_SURFACE_COEFFICIENT.value())
}

/// The months of the room with the steel of a surface as warm as the sun keeps it.
fn months_at(design: &Design, surface: Surface, months: &[MonthState; 12]) -> [MonthState; 12] {
    core::array::from_fn(|month| {
        let state = months[month];
        let steel = state.outdoor + sun_rise(design, surface, month);
        let indoor_vapour = state.indoor_vapour.max(state.outdoor_vapour);
        MonthState { indoor_vapour, outdoor: steel, ..state }
    })
}

/// Whether a depth of foam holds vapour back by itself, to a rounding.
pub fn controls_vapour(foam: Length, least: Length) -> bool {
    foam - least >= Length::new(-1e-9)
}

/// The plain build-up of a surface of a design, over the inner crests of the sheet, with the
/// surface resistances of ISO 6946. Steel is tight; under the floor there is none.
///
/// # Errors
/// As [`Assembly::new`]; none for a checked design.
pub fn assembly_of(checked: &CheckedDesign, plain: &PlainArea) -> Result<Assembly, MoistureError> {
    let design = checked.design();
    let of_layer = |layer: &Layer| {
        let material = match layer.kind {
            LayerKind::AirGap => {
                return VapourLayer {
                    resistance: layer.resistance,
                    equivalent_air_thickness: AIR_LAYER_EQUIVALENT_THICKNESS,
                };
            }
            LayerKind::SteelSheet => STEEL,
            LayerKind::Foam | LayerKind::FloorFoam => foam_material(design),
            LayerKind::Lining => lining_material(design),
            LayerKind::Panel => REINFORCED_PLASTIC,
            LayerKind::FloorPlywood | LayerKind::FloorDeck => PLYWOOD,
        };
        VapourLayer::new(layer.thickness, layer.resistance, material.vapour_resistance_factor)
    };
    let layers = plain.layers.iter().rev().map(of_layer).collect();
    let inside = HeatFlow::through(plain.surface).inside_surface_resistance();
    Assembly::new(inside, layers, OUTSIDE_SURFACE_RESISTANCE)
}

/// The surfaces before steel through a year of monthly means in this room: diffusion through lining and foam
/// to the sheet, which is tight, layers divided so that water within one is found (ISO 13788:2012, clause 6).
///
/// # Errors
/// Where a state lies outside the range of a formula; none for a checked design.
pub fn build_up_water(
    checked: &CheckedDesign,
    envelope: &Envelope,
    room: &RoomMonths,
) -> Result<Vec<BuildUpWater>, MoistureError> {
    let design = checked.design();
    let foam = foam_material(design);
    let least_foam = foam.least_depth_for_vapour_control();
    let plain = envelope.plain.iter().filter(|plain| BEFORE_STEEL.contains(&plain.surface));
    plain
        .map(|plain| {
            let months = months_at(design, plain.surface, &room.states);
            let assembly = assembly_of(checked, plain)?.divided();
            let year = monthly_balance(&assembly, &months)?;
            let before_steel = assembly.layers().iter().map(|layer| layer.equivalent_air_thickness);
            let finite = before_steel.filter(|thickness| thickness.value().is_finite());
            let foam = plain.layers.iter().filter(|layer| layer.kind == LayerKind::Foam);
            let foam = foam.map(|layer| layer.thickness).sum();
            Ok(BuildUpWater {
                surface: plain.surface,
                foam,
                least_foam,
                equivalent_air_thickness: finite.sum(),
                wettest: WettestMonth::of(&year, &assembly, &months)?,
                year,
            })
        })
        .collect()
}
