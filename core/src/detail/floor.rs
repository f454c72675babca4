//! The floor as the details see it: plywood on steel members, foam between, round and over them.

use crate::design::CheckedDesign;
use crate::envelope::{HeatFlow, OUTSIDE_SURFACE_RESISTANCE, foam_material, series_resistance};
use crate::freight_box::FloorMember;
use crate::material::PLYWOOD;
use crate::units::{Length, ThermalConductivity, ThermalResistance, ThermalTransmittance};

/// The floor's build-up, measured from the top of the plywood: up into the room positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorBuildUp {
    /// Thickness of the box's plywood.
    pub plywood: Length,
    /// Foam under the plywood, between the members.
    pub between: Length,
    /// Foam wrapped round what the members show below it.
    pub wrap: Length,
    /// Foam board over the plywood.
    pub over: Length,
    /// Deck over that board.
    pub deck: Length,
    /// The members.
    pub member: FloorMember,
    /// Conductivity of the foam.
    pub foam_conductivity: ThermalConductivity,
}

impl FloorBuildUp {
    /// The floor of a design. A levelling coat is taken as a skin of no resistance.
    pub fn of(checked: &CheckedDesign) -> Self {
        let (design, freight_box) = (checked.design(), checked.freight_box());
        let deck = design.stack(crate::design::Surface::Floor).lining;
        Self {
            plywood: freight_box.floor_plywood,
            between: design.floor_foam_between,
            wrap: design.floor_foam_under,
            over: design.floor_foam_over,
            deck,
            member: freight_box.floor_member,
            foam_conductivity: foam_material(design).conductivity,
        }
    }

    /// Where the finished floor lies.
    pub fn face(&self) -> Length {
        self.over + self.deck
    }

    /// Underside of the foam between the members.
    pub fn foam_bottom(&self) -> Length {
        -(self.plywood + self.between)
    }

    /// Underside of the members.
    pub fn member_bottom(&self) -> Length {
        -(self.plywood + self.member.depth)
    }

    /// U of the plain floor between members.
    pub fn transmittance(&self) -> ThermalTransmittance {
        let layers: [ThermalResistance; 4] = [
            self.between / self.foam_conductivity,
            self.plywood / PLYWOOD.conductivity,
            self.over / self.foam_conductivity,
            self.deck / PLYWOOD.conductivity,
        ];
        series_resistance(
            HeatFlow::Downwards.inside_surface_resistance(),
            layers,
            OUTSIDE_SURFACE_RESISTANCE,
        )
        .transmittance()
    }
}
