//! Where the floor has less depth: over forklift pockets and over the gooseneck tunnel.

use super::floor::FloorBuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{CellSizes, Problem, Side};
use crate::design::{CheckedDesign, FloorRecesses};
use crate::envelope::{HeatFlow, air_layer_conductivity};
use crate::freight_box::FloorRecess;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Half a section across a pocket or tunnel; x from its middle, y up, y = 0 on the plywood's top.
///
/// A steel plate is its ceiling, a steel web with flanges like a floor member's its side. Between plate and plywood
/// stands still air: nobody can spray there. Kept free, the plate faces outdoor air, and neither it nor its side is
/// wrapped; filled, foam hangs under the plate as deep as it is between the members beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorRecessSection {
    /// The floor beside it.
    pub floor: FloorBuildUp,
    /// What it is.
    pub recess: FloorRecess,
    /// Whether it is filled with foam.
    pub is_filled: bool,
}

impl FloorRecessSection {
    /// The section across a recess of a design.
    pub fn of(checked: &CheckedDesign, recess: FloorRecess) -> Self {
        let is_filled = checked.design().floor_recesses == FloorRecesses::Filled;
        Self { floor: FloorBuildUp::of(checked), recess, is_filled }
    }

    fn half(&self) -> Length {
        self.recess.width / 2.0
    }

    fn cut(&self) -> Length {
        self.half() + CUT_DISTANCE
    }

    /// The lowest of steel and foam.
    pub fn lowest(&self) -> Length {
        self.floor.member_bottom().min(self.floor.foam_bottom())
    }
}

impl Model for FloorRecessSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (floor, recess) = (&self.floor, &self.recess);
        let (zero, half, cut) = (Length::ZERO, self.half(), self.cut());
        let (all, within, beside) = ([zero, cut], [zero, half], [half, cut]);
        let under = -floor.plywood;
        let mut drawing = Drawing::section(
            all,
            [self.lowest(), floor.face()],
            surfaces,
            CellSizes::new(Length::mm(1.5), Length::mm(60.0)),
        );
        let foam = floor.foam_conductivity;
        drawing.fill(beside, [floor.foam_bottom(), under], foam);
        if self.is_filled {
            drawing.fill(within, [floor.foam_bottom(), under], foam);
        }
        drawing.fill(all, [zero, floor.over], foam);
        drawing.fill(all, [under, zero], PLYWOOD.conductivity);
        drawing.fill(all, [floor.over, floor.face()], PLYWOOD.conductivity);
        let plate = under - recess.below_plywood;
        let still_air = air_layer_conductivity(recess.below_plywood, HeatFlow::Downwards);
        drawing.fill(within, [plate, under], still_air);
        drawing.fill(within, [plate - recess.plate, plate], STEEL.conductivity);
        let (thin, bottom) = (floor.member.thickness, floor.member_bottom());
        let flange = [half, half + floor.member.flange];
        drawing.fill([half, half + thin], [bottom, under], STEEL.conductivity);
        drawing.fill(flange, [under - thin, under], STEEL.conductivity);
        drawing.fill(flange, [bottom, bottom + thin], STEEL.conductivity);
        drawing.outdoors(all, [self.lowest(), under]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, HeatFlow::Downwards);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.floor.transmittance() * (self.cut() * Length::new(1.0))
    }

    fn copies(&self) -> f64 {
        2.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::Design;
    use crate::detail::{Detail, DetailField, FloorMemberSlice};
    use crate::envelope::{Amount, Envelope, ThermalBridge};
    use crate::freight_box::{BoxSize, FORKLIFT_POCKET};
    use crate::room::Room;

    fn of(design: Design) -> FloorRecessSection {
        FloorRecessSection::of(&design.check().unwrap(), FORKLIFT_POCKET)
    }

    fn solved(section: FloorRecessSection) -> DetailField {
        Detail::FloorRecess(section).solve().unwrap()
    }

    /// Over the plate the floor is plywood and 4 mm of still air, R = 0.17 + 0.028/0.13 + R_g + 0.04; R_g is the inverse of
    /// 0.025/0.004 and radiation of about 4 W/(m²·K), so 0.09 to 0.10 m²·K/W, and U = 1.9 to 2.0. A recess that is wider by a
    /// metre loses as much more: ψ(w₂) − ψ(w₁) is U over it less U of the floor, times that metre.
    #[test]
    fn a_wider_recess_loses_as_much_more_as_bare_plywood_does() {
        let section = of(Design::default());
        let psi = |width: f64| {
            let recess = FloorRecess { width: Length::mm(width), ..section.recess };
            let field = solved(FloorRecessSection { recess, ..section });
            assert!(field.is_settled);
            field.linear_transmittance().value()
        };
        let gained = psi(1600.0) - psi(600.0);
        let floor = section.floor.transmittance().value();
        let resistance = |air: f64| 0.17 + 0.028 / 0.13 + air + 0.04;
        let (least, most) = (1.0 / resistance(0.105) - floor, 1.0 / resistance(0.085) - floor);
        assert!(gained > least && gained < most, "{gained} of {least} to {most}");
    }

    /// Filled with 75 mm of foam a pocket loses less than kept free, and the floor over it is warmer; but its two sides are
    /// as good as two floor members, which with a plate between them lose no less than alone.
    #[test]
    fn a_filled_pocket_is_a_floor_with_two_members() {
        let [free, filled] = [FloorRecesses::KeptFree, FloorRecesses::Filled]
            .map(|floor_recesses| solved(of(Design { floor_recesses, ..Design::default() })));
        let psi = |field: &DetailField| field.linear_transmittance().value();
        let floor = of(Design::default()).floor;
        let member = Detail::FloorMember(FloorMemberSlice { floor }).solve().unwrap();
        assert!(psi(&filled) < psi(&free), "{} {}", psi(&filled), psi(&free));
        // Kept free, 360 mm of bare plywood at 1.9 instead of 0.30 W/(m²·K), 0.58 W/(m·K), and something of its sides.
        let sides = psi(&free) - 0.58;
        assert!(sides > psi(&member) && sides < 2.5 * psi(&member), "{sides} {}", psi(&member));
        assert!(psi(&filled) > 2.0 * psi(&member), "{} {}", psi(&filled), psi(&member));
        assert!(filled.temperature_factor.value() > free.temperature_factor.value());
    }

    /// Two pockets right across a 20 ft box, a tunnel under the front of a 40 ft one, none where a used box has none; and
    /// where pockets are, floor members are not.
    #[test]
    fn pockets_and_tunnel_are_where_the_box_has_them() {
        let places = |box_size, floor_recesses| {
            let checked = Design { box_size, floor_recesses, ..Design::default() }.check().unwrap();
            let clear = Room::of(&checked).clear;
            (Envelope::of(&checked, &clear).thermal_bridges, clear)
        };
        let metres = |places: &[(ThermalBridge, Amount)], wanted| {
            let found = places.iter().find(|(place, _)| *place == wanted);
            found.map_or(Length::ZERO, |(_, amount)| match amount {
                Amount::Metres(length) => *length,
                Amount::Pieces(_) => panic!("a line"),
            })
        };
        let (twenty, clear) = places(BoxSize::TwentyStandard, FloorRecesses::KeptFree);
        let pockets = metres(&twenty, ThermalBridge::ForkliftPocket);
        assert!((pockets / (clear.width * 2.0) - 1.0).abs() < 1e-12);
        assert_eq!(metres(&twenty, ThermalBridge::GooseneckTunnel), Length::ZERO);
        let (without, _) = places(BoxSize::TwentyStandard, FloorRecesses::None);
        assert_eq!(metres(&without, ThermalBridge::ForkliftPocket), Length::ZERO);
        // (5748 − 2·360)/305 = 16.5 members beside pockets, 5748/305 = 18.8 without.
        let members = |places| metres(places, ThermalBridge::FloorMember) / clear.width;
        let [beside, all] = [members(&twenty), members(&without)].map(|it: f64| it.round());
        assert_eq!([beside, all], [16.0, 18.0]);
        let (forty, _) = places(BoxSize::FortyHighCube, FloorRecesses::KeptFree);
        assert_eq!(metres(&forty, ThermalBridge::ForkliftPocket), Length::ZERO);
        let tunnel = metres(&forty, ThermalBridge::GooseneckTunnel).as_mm();
        // 3150 mm from the outside, less 62 mm to the sheet and what the wall takes: 63 of frame and 12 of lining.
        assert!((tunnel - (3150.0 - 62.0 - 75.0)).abs() < 1e-6, "{tunnel}");
    }
}
