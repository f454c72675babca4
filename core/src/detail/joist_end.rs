//! The end of a ceiling joist, hung from the top rail over a side wall.

use super::bracket::{BRACKET_LAP, BRACKET_THICKNESS, BRACKET_WIDTH, RailCut};
use super::edge::EdgeSection;
use super::frame_line::FrameSlice;
use super::model::{Drawing, Model, Surfaces};
use crate::conduction::Problem;
use crate::material::{RIGID_PLASTIC, STEEL};
use crate::units::{
    HeatTransferCoefficient, Length, LinearThermalTransmittance, ThermalConductivity,
};

/// How far a joist ends before the inner flange of the wall's track. Common practice, no source.
pub const JOIST_END_GAP: Length = Length::mm(5.0);

/// One spacing of the edge between side wall and roof, with the end of a joist; x along the wall, y the depth
/// into the room from the wall's steel, z down from the roof's.
///
/// A joist hangs as a stud is held: its bracket has its foot, with the studs' pad, on the inner face of the rail,
/// goes through a notch in the wall's track and laps the joist's web; where the joist lies lower than the foot the
/// bracket comes down to it. It is drawn touching the track where it crosses it, the safe side. Common practice, no
/// source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JoistEndBody {
    /// The edge it hangs in.
    pub edge: EdgeSection,
    /// The joist, under a flat roof sheet whatever it lies under: what its end adds is judged against the same joist.
    pub joist: FrameSlice,
    /// Thickness of the pad; zero for steel on steel.
    pub pad: Length,
    /// ψ of the edge and of the joist, as their own sections give them.
    pub line_transmittance: [LinearThermalTransmittance; 2],
}

impl JoistEndBody {
    const fn rail_cut(&self) -> RailCut<'_> {
        RailCut { edge: &self.edge, spacing: self.joist.spacing }
    }

    /// Where the joist begins: before the track, or before the bracket's foot where that stands further in.
    fn begins(&self) -> Length {
        let track = self.edge.track.map_or(Length::ZERO, |track| track.depth()[1]);
        (track + JOIST_END_GAP).max(self.foot()[1])
    }

    /// The foot of the bracket on its pad.
    fn foot(&self) -> [Length; 2] {
        let foot = self.edge.steel.x[1] + self.pad;
        [foot, foot + BRACKET_THICKNESS]
    }

    fn draw_joist(&self, drawing: &mut Drawing) {
        let joist = &self.joist;
        let steel = STEEL.conductivity;
        let (web, thin) = (joist.web_at(), joist.steel_thickness);
        let (upper, lower) = (joist.stand_off, joist.stand_off + joist.member);
        let flange = [web, web + joist.flange];
        let into = [self.begins(), self.rail_cut().cut()];
        drawing.fill_block([web, web + thin], into, [upper, lower], steel);
        drawing.fill_block(flange, into, [upper, upper + thin], steel);
        drawing.fill_block(flange, into, [lower - thin, lower], steel);
    }

    fn draw_bracket(&self, drawing: &mut Drawing) {
        let (joist, rail) = (&self.joist, &self.edge.steel);
        let (web, steel) = (joist.web_at(), STEEL.conductivity);
        let [foot, foot_inner] = self.foot();
        let middle = rail.y[1] / 2.0;
        let high = [middle - BRACKET_WIDTH / 2.0, middle + BRACKET_WIDTH / 2.0];
        let foot_along = [web - BRACKET_WIDTH, web];
        drawing.fill_block(foot_along, [rail.x[1], foot], high, RIGID_PLASTIC.conductivity);
        drawing.fill_block(foot_along, [foot, foot_inner], high, steel);
        let down_to =
            high[1].max((joist.stand_off + BRACKET_WIDTH).min(joist.stand_off + joist.member));
        let plate = [web - BRACKET_THICKNESS, web];
        drawing.fill_block(plate, [foot, self.begins() + BRACKET_LAP], [high[0], down_to], steel);
    }
}

impl Model for JoistEndBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        self.rail_cut().problem(surfaces, |drawing| {
            self.draw_joist(drawing);
            self.draw_bracket(drawing);
        })
    }

    fn foam(&self) -> ThermalConductivity {
        self.edge.first.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.edge.first.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let [edge, joist] = self.line_transmittance;
        let into = self.rail_cut().cut() - self.edge.first.face();
        self.rail_cut().flanking(edge) + joist * into
    }

    fn rounds_of_refinement(&self) -> usize {
        3
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::{Accuracy, solve};
    use crate::design::{CheckedDesign, Design};
    use crate::detail::{Detail, DetailField, Effort, FieldCache, OUTDOORS, ROOM, placed_detail};
    use crate::envelope::{Amount, Envelope, ThermalBridge};
    use crate::room::Room;

    fn solved(design: Design) -> (CheckedDesign, JoistEndBody, DetailField) {
        let checked = design.check().unwrap();
        let mut cache = FieldCache::default();
        let place = ThermalBridge::JoistEnd;
        let placed = placed_detail(&checked, place, Amount::Pieces(1.0), &mut cache, Effort::All);
        let Some(Detail::JoistEnd(body)) = placed.detail else { panic!("a joist's end") };
        (checked, body, placed.field().unwrap().clone())
    }

    fn coupling(problem: &Problem) -> f64 {
        solve(problem, &Accuracy::default()).unwrap().coupling(ROOM, OUTDOORS).value()
    }

    /// All that a bracket takes to the rail goes through its pad or past it: 6 mm of plastic under 50 × 50 mm pass
    /// 0.17 · 0.0025/0.006 = 0.071 W/K at most. Without a pad it loses more, with a thicker one less, never nothing.
    #[test]
    fn what_a_joist_end_adds_is_what_its_bracket_lets_by() {
        let chi = |pad: f64| {
            let design = Design { bracket_pad: Length::mm(pad), ..Design::default() };
            solved(design).2.point_transmittance().value()
        };
        let (steel_on_steel, padded, thick) = (chi(0.0), chi(6.0), chi(25.0));
        assert!(steel_on_steel > padded && padded > thick, "{steel_on_steel} {padded} {thick}");
        assert!(thick > 0.0 && padded < 0.071, "{thick} {padded}");
    }

    /// Without its bracket the joist loses its own ψ over its length in the room, and near the rail somewhat more or less.
    #[test]
    fn a_joist_without_bracket_loses_what_its_metres_do() {
        let (_, body, _) = solved(Design::default());
        let problem =
            body.rail_cut().problem(Surfaces::Ordinary, |drawing| body.draw_joist(drawing));
        let left = coupling(&problem) - body.flanking().value();
        let [_, joist] = body.line_transmittance;
        let metres = joist.value() * (body.rail_cut().cut() - body.edge.first.face()).value();
        assert!(left.abs() < 0.5 * metres, "{left} of {metres}");
    }

    /// Without joist and bracket the body is the edge and the two plane surfaces beside it, and nothing is left.
    #[test]
    fn an_edge_without_joist_leaves_nothing_over() {
        let (_, body, field) = solved(Design::default());
        let problem = body.rail_cut().problem(Surfaces::Ordinary, |_| ());
        let [edge, _] = body.line_transmittance;
        let left = coupling(&problem) - body.rail_cut().flanking(edge).value();
        // The body's cells are coarser than the section's: a hundredth of what the joist's end adds, or of the edge.
        let allowed = 0.1 * field.point_transmittance().value();
        assert!(left.abs() < allowed, "{left} of {allowed}");
        assert!(field.is_settled);
    }

    /// Joists hang at both ends: 5748 mm at 406 mm take 14 + 2 = 16 joists and 32 ends.
    #[test]
    fn a_joist_has_two_ends() {
        let (checked, ..) = solved(Design::default());
        let clear = Room::of(&checked).clear;
        let places = Envelope::of(&checked, &clear).thermal_bridges;
        let amount = |wanted| places.iter().find(|(place, _)| *place == wanted).unwrap().1;
        let joists = (clear.length.as_mm() / 406.0).floor() + 2.0;
        assert_eq!(amount(ThermalBridge::JoistEnd), Amount::Pieces(2.0 * joists));
    }
}
