//! Surface and air-layer resistances of ISO 6946:2017.

use crate::design::Surface;
use crate::units::{Length, ThermalResistance};

/// Which way the heat flows in winter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeatFlow {
    /// Through a ceiling.
    Upwards,
    /// Through a wall.
    Horizontal,
    /// Through a floor.
    Downwards,
}

impl HeatFlow {
    /// The direction through a surface of the room.
    pub const fn through(surface: Surface) -> Self {
        match surface {
            Surface::Ceiling => Self::Upwards,
            Surface::Floor => Self::Downwards,
            Surface::SideWall | Surface::FrontEnd | Surface::DoorEnd => Self::Horizontal,
        }
    }

    /// Inside surface resistance R_si, m²·K/W: 0.10, 0.13, 0.17 (ISO 6946:2017 table 7).
    pub const fn inside_surface_resistance(self) -> ThermalResistance {
        ThermalResistance::new(match self {
            Self::Upwards => 0.10,
            Self::Horizontal => 0.13,
            Self::Downwards => 0.17,
        })
    }
}

/// Outside surface resistance R_se = 0.04 m²·K/W, any direction (ISO 6946:2017 table 7). The box
/// stands on blocks: the air under the floor is outdoor air.
pub const OUTSIDE_SURFACE_RESISTANCE: ThermalResistance = ThermalResistance::new(0.04);

/// Inside surface resistance for the risk of damp, 0.25 m²·K/W: a corner, or behind furniture,
/// where the room's air hardly moves (ISO 13788:2012, opaque surfaces).
pub const DAMP_SURFACE_RESISTANCE: ThermalResistance = ThermalResistance::new(0.25);

/// What a surface of the room is, where damp is judged: opaque ones must stay clear of mould in the
/// critical month, frames and glazing of condensation on the coldest day (ISO 13788:2012, clause 5, from
/// memory).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SurfaceKind {
    /// Lining, reveal, deck, and the steel of box and framing: mould can grow on it.
    Opaque,
    /// The frame, leaf or glazing of a window or door: drops can be wiped off it.
    FrameOrGlazing,
}

impl SurfaceKind {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Opaque, Self::FrameOrGlazing];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Opaque => "opaque",
            Self::FrameOrGlazing => "frame_or_glazing",
        }
    }

    /// Inside surface resistance for the risk of damp, m²·K/W: 0.25 on opaque surfaces
    /// ([`DAMP_SURFACE_RESISTANCE`]), 0.13 on frames and glazing (ISO 13788:2012, clause 4, and the plain
    /// frame surfaces of ISO 10077-2; both from memory).
    pub const fn damp_surface_resistance(self) -> ThermalResistance {
        match self {
            Self::Opaque => DAMP_SURFACE_RESISTANCE,
            Self::FrameOrGlazing => ThermalResistance::new(0.13),
        }
    }
}

/// Thermal resistance of an unventilated air layer between surfaces of emissivity 0.9 at 10 °C.
///
/// R = 1 / (h_a + E·h_r0), with E = 1 / (1/0.9 + 1/0.9 − 1) and h_r0 = 4σT³ at 10 °C; h_a =
/// max(1.25, 0.025/d) horizontal, max(1.95, 0.025/d) upwards, max(0.12·d^−0.44, 0.025/d)
/// downwards, W/(m²·K) (ISO 6946:2017 annex D). Thickness above 0 and up to 300 mm; a thicker gap
/// is taken as 300 mm, beyond which the standard treats the layer as a space of its own and the
/// resistance no longer grows.
pub fn air_layer_resistance(thickness: Length, direction: HeatFlow) -> ThermalResistance {
    const STEFAN_BOLTZMANN: f64 = 5.67e-8;
    const MEAN_TEMPERATURE: f64 = 283.15;
    const EMISSIVITY: f64 = 0.9;
    let exchange = 1.0 / (2.0 / EMISSIVITY - 1.0);
    let black_body =
        4.0 * STEFAN_BOLTZMANN * MEAN_TEMPERATURE * MEAN_TEMPERATURE * MEAN_TEMPERATURE;
    let thickness = thickness.min(Length::mm(300.0)).value();
    let still = 0.025 / thickness;
    let moving = match direction {
        HeatFlow::Upwards => 1.95,
        HeatFlow::Horizontal => 1.25,
        HeatFlow::Downwards => 0.12 * libm::pow(thickness, -0.44),
    };
    ThermalResistance::new(1.0 / (still.max(moving) + exchange * black_body))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thin_layers_insulate_by_still_air_alone() {
        let resistance = air_layer_resistance(Length::mm(5.0), HeatFlow::Horizontal);
        assert!((resistance.value() - 0.1085).abs() < 0.0005, "{resistance:?}");
    }

    #[test]
    fn a_very_deep_layer_is_no_better_than_the_deepest_tabulated_one() {
        let deep = air_layer_resistance(Length::mm(900.0), HeatFlow::Downwards);
        let tabulated = air_layer_resistance(Length::mm(300.0), HeatFlow::Downwards);
        assert_eq!(deep, tabulated, "no growth past 300 mm");
    }
}
