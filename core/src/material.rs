//! What things are made of: conductivity, vapour resistance, density, heat capacity, each with
//! its source.

use crate::source::Source;
use crate::units::{
    Density, Length, SpecificHeatCapacity, ThermalConductivity, VapourPermeability,
    VapourPermeance, VapourResistanceFactor,
};

/// A building material with its design values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Material {
    /// Thermal conductivity λ, W/(m·K).
    pub conductivity: ThermalConductivity,
    /// Water vapour resistance factor µ (dry cup).
    pub vapour_resistance_factor: VapourResistanceFactor,
    /// Density ρ, kg/m³.
    pub density: Density,
    /// Specific heat capacity c, J/(kg·K).
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Where the values come from.
    pub source: Source,
}

impl Material {
    /// Depth from which a layer of it passes no more than counts as vapour control, d = δ₀/(µ·W).
    ///
    /// δ₀ is [`STILL_AIR_PERMEABILITY`], W [`VAPOUR_CONTROL_PERMEANCE`]. Nothing of a tight material.
    pub fn least_depth_for_vapour_control(&self) -> Length {
        let permeability = STILL_AIR_PERMEABILITY / self.vapour_resistance_factor.value();
        permeability / VAPOUR_CONTROL_PERMEANCE
    }
}

/// Water vapour permeability of still air δ₀ = 2·10⁻¹⁰ kg/(m·s·Pa) (ISO 13788:2012, clause 4).
pub const STILL_AIR_PERMEABILITY: VapourPermeability = VapourPermeability::new(2.0e-10);

/// The most a layer may pass to count as vapour control in a cold climate, 60 ng/(Pa·s·m²), about
/// 1.05 perm (National Building Code of Canada, 9.25.4; quoted by the standards for sprayed foam).
pub const VAPOUR_CONTROL_PERMEANCE: VapourPermeance =
    VapourPermeance::nanograms_per_pascal_second_square_metre(60.0);

const fn material(
    conductivity: f64,
    vapour_resistance_factor: f64,
    density: f64,
    specific_heat_capacity: f64,
    source: Source,
) -> Material {
    Material {
        conductivity: ThermalConductivity::new(conductivity),
        vapour_resistance_factor: VapourResistanceFactor::new(vapour_resistance_factor),
        density: Density::new(density),
        specific_heat_capacity: SpecificHeatCapacity::new(specific_heat_capacity),
        source,
    }
}

/// Steel. A metal skin passes no vapour; ISO 10456 table 3 lets µ be taken as infinite.
pub const STEEL: Material = material(50.0, f64::INFINITY, 7800.0, 450.0, Source::Iso10456);

/// Plywood of 500 kg/m³ (ISO 10456:2007 table 3; µ is the dry-cup figure).
pub const PLYWOOD: Material = material(0.13, 200.0, 500.0, 1600.0, Source::Iso10456);

/// Gypsum board of 900 kg/m³ (ISO 10456:2007 table 3).
pub const GYPSUM_BOARD: Material = material(0.25, 10.0, 900.0, 1000.0, Source::Iso10456);

/// Sprayed closed-cell polyurethane foam, aged design value.
///
/// Makers state 0.022 fresh to 0.028 aged; 0.026 is an inch. The design may override the
/// conductivity. µ is that of the most permeable foam that the standard for it passes: 60 ng/(Pa·s·m²) through
/// 50 mm (CAN/ULC-S705.1), so µ = δ₀/(W·d) = 2·10⁻¹⁰/(60·10⁻¹²·0.05).
pub const CLOSED_CELL_FOAM: Material =
    material(0.026, 2.0e-10 / (60.0e-12 * 0.05), 32.0, 1400.0, Source::CommonPractice);

/// Rigid plastic, as in a thermal pad under a bracket (ISO 10456:2007 table 3, rigid PVC).
pub const RIGID_PLASTIC: Material = material(0.17, 50_000.0, 1390.0, 900.0, Source::Iso10456);

/// Wipeable panel of glass-fibre reinforced polyester.
///
/// λ, µ and c are those of solid polyester resin in ISO 10456:2007 table 3, from memory: glass raises λ to 0.2 or
/// 0.3, which a panel of millimetres does not show. Density as makers weigh their panels, 3.45 kg/m² at 2.3 mm.
pub const REINFORCED_PLASTIC: Material =
    material(0.19, 10_000.0, 1500.0, 1200.0, Source::FromMemory);

/// Softwood of 500 kg/m³ (ISO 10456:2007 table 3; µ is the dry-cup figure).
pub const SOFTWOOD: Material = material(0.13, 50.0, 500.0, 1600.0, Source::Iso10456);
