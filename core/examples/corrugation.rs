//! What our details leave out of the sheet's waves: studs and joists of the default design over the
//! true corrugation on fine cells, `cargo run --release -p inchwise-core --example corrugation`.
//!
//! Prints a line of tab-separated figures per case. Two waves are drawn, cut through the middle of
//! flats, where no heat crosses; ψ is the loss with the member less the loss without it. The detail
//! they are held against has the sheet flat where the member stands on a crest, and as it is where it
//! stands over a trough.

use std::process::ExitCode;

use inchwise_core::conduction::{
    Accuracy, Axis, Block, CellSizes, ConductionError, Dimensionality, Extreme, Problem,
    RefinementCriterion, Shape, Side, refine_until, solve,
};
use inchwise_core::design::{CheckedDesign, Surface};
use inchwise_core::detail::{Detail, FrameSlice, OUTDOORS, OUTSIDE, ROOM, Surfaces, Waves};
use inchwise_core::freight_box::Corrugation;
use inchwise_core::material::STEEL;
use inchwise_core::units::{Length, Temperature, TemperatureDifference};

/// Cells this narrow beside every face; twice as wide moves ψ by 1 % and the lowest temperature by
/// 0.04 K at 50 K.
const FINEST: Length = Length::mm(0.4);

/// What the member stands over.
#[derive(Clone, Copy, PartialEq)]
enum Over {
    /// The flat that lies towards the room.
    Crest,
    /// The flat that lies outwards, its depth filled with foam.
    Trough,
}

/// A member over a corrugated sheet.
struct Section {
    slice: FrameSlice,
    sheet: Corrugation,
    over: Over,
}

impl Section {
    /// Where the sheet's inner face turns, from the middle of the flat under the member.
    fn turns(&self) -> [(Length, Length); 4] {
        let (near, far) = match self.over {
            Over::Crest => (self.sheet.inner_flat, self.sheet.outer_flat),
            Over::Trough => (self.sheet.outer_flat, self.sheet.inner_flat),
        };
        let (near_at, far_at) = match self.over {
            Over::Crest => (Length::ZERO, -self.sheet.depth),
            Over::Trough => (-self.sheet.depth, Length::ZERO),
        };
        let end = near / 2.0 + self.sheet.slope;
        [(Length::ZERO, near_at), (near / 2.0, near_at), (end, far_at), (end + far / 2.0, far_at)]
    }

    /// The inner face from cut to cut, moved outwards by `by`.
    fn inner_face(&self, by: Length) -> Vec<[Length; 2]> {
        let pitch = self.sheet.pitch();
        let half = self.turns();
        let right: Vec<(Length, Length)> = half
            .into_iter()
            .chain(half.into_iter().rev().skip(1).map(|(x, y)| (pitch - x, y)))
            .collect();
        let left = right.iter().rev().map(|&(x, y)| (-x, y)).filter(|&(x, _)| x < Length::ZERO);
        left.chain(right.iter().copied()).map(|(x, y)| [x + pitch, y - by]).collect()
    }

    fn problem(&self, with_member: bool, surfaces: Surfaces) -> Problem {
        let (slice, sheet, build_up) = (&self.slice, &self.sheet, &self.slice.build_up);
        let width = sheet.pitch() * 2.0;
        let bottom = -(sheet.depth + sheet.thickness);
        let domain = Block::flat(Length::ZERO, bottom, width, build_up.face());
        let cells = CellSizes::new(FINEST, Length::mm(8.0));
        let mut problem =
            Problem::new(domain, Dimensionality::Two, build_up.foam_conductivity, cells);
        let prism = |outline: Vec<[Length; 2]>| Shape::Prism {
            axis: Axis::Z,
            outline,
            from: Length::ZERO,
            to: Length::new(1.0),
        };
        let flat = |x: [Length; 2], y: [Length; 2]| Block::flat(x[0], y[0], x[1], y[1]);
        let along = [Length::ZERO, width];
        let mut band = self.inner_face(Length::ZERO);
        band.extend(self.inner_face(sheet.thickness).into_iter().rev());
        problem.paint(prism(band), STEEL.conductivity);
        for (span, conductivity) in [
            (build_up.gap_span(), build_up.gap_conductivity()),
            (build_up.lining_span(), build_up.lining_conductivity),
        ] {
            if span[0] < span[1] {
                problem.paint(flat(along, span), conductivity);
            }
        }
        if with_member {
            let web = sheet.pitch() - slice.flange / 2.0;
            let (thin, flange) = (slice.steel_thickness, [web, web + slice.flange]);
            let (outer, inner) = (slice.stand_off, slice.stand_off + slice.member);
            for (x, y) in [
                ([web, web + thin], [outer, inner]),
                (flange, [outer, outer + thin]),
                (flange, [inner - thin, inner]),
            ] {
                problem.paint(flat(x, y), STEEL.conductivity);
            }
        }
        let mut outside = self.inner_face(sheet.thickness);
        let below = bottom - Length::mm(1.0);
        outside.extend([[width, below], [Length::ZERO, below]]);
        problem.open_to(prism(outside), OUTDOORS, OUTSIDE);
        problem.expose(Side::YMinimum, OUTDOORS, OUTSIDE.of(Side::YMinimum));
        problem.expose(Side::YMaximum, ROOM, surfaces.inside(build_up.direction));
        problem
    }

    /// Loss of the two waves with and without the member, W/(m·K), and the lowest temperature factor.
    fn solve(&self) -> Result<(f64, f64, f64, usize), ConductionError> {
        let accuracy = Accuracy::default();
        let with = solve(&self.problem(true, Surfaces::Ordinary), &accuracy)?;
        let without = solve(&self.problem(false, Surfaces::Ordinary), &accuracy)?;
        let refining = RefinementCriterion {
            environment: ROOM,
            extreme: Extreme::Coldest,
            temperatures: vec![Temperature::celsius(1.0), Temperature::celsius(0.0)],
            tolerance: TemperatureDifference::new(0.0005),
            maximum_rounds: 6,
        };
        let damp = refine_until(&self.problem(true, Surfaces::Damp), &accuracy, &refining)?;
        let factor = damp.solution.lowest_temperature_factor(ROOM)?.factor.value();
        let loss = |s: &inchwise_core::conduction::Solution| s.coupling(ROOM, OUTDOORS).value();
        Ok((loss(&with), loss(&without), factor, with.cells()))
    }
}

fn study(name: &str, slice: FrameSlice, sheet: Corrugation) -> Result<(), ConductionError> {
    let stand_off = 1000.0 * slice.stand_off.value();
    let over_trough = slice.over(Waves { sheet, foam_follows: false, count: 1 });
    for (over_name, over, detail) in
        [("crest", Over::Crest, slice), ("trough", Over::Trough, over_trough)]
    {
        let drawn = Detail::FrameLine(detail).solve()?;
        let psi_drawn = drawn.linear_transmittance().value();
        let section = Section { slice, sheet, over };
        let (with, without, factor, cells) = section.solve()?;
        let psi = with - without;
        let plain = without / (2.0 * sheet.pitch().value());
        let wall = |psi: f64| plain + psi / slice.spacing.value();
        println!(
            "{name}\t{stand_off}\t{over_name}\t{cells}\t{psi_drawn:.4}\t{psi:.4}\t{:+.1}\t{:+.2}",
            100.0 * (wall(psi) / wall(psi_drawn) - 1.0),
            50.0 * (factor - drawn.temperature_factor.value()),
        );
    }
    Ok(())
}

fn main() -> ExitCode {
    println!("member\tstand_off_mm\tover\tcells\tpsi_drawn\tpsi\twall_u_percent\tkelvin_at_50");
    let checked = CheckedDesign::default();
    let freight_box = checked.freight_box();
    let run = || -> Result<(), ConductionError> {
        for (name, surface, sheet) in [
            ("side wall stud", Surface::SideWall, freight_box.side_corrugation),
            ("front end stud", Surface::FrontEnd, freight_box.front_corrugation),
            ("joist", Surface::Ceiling, freight_box.roof_corrugation),
        ] {
            let slice = FrameSlice::of(&checked, surface);
            for stand_off in [0.0, 10.0, 1000.0 * slice.stand_off.value()] {
                let mut slice = slice;
                let moved = Length::mm(stand_off) - slice.stand_off;
                slice.stand_off += moved;
                slice.build_up.lining_back =
                    (slice.build_up.lining_back + moved).max(slice.build_up.foam);
                slice.member = slice.build_up.lining_back - slice.stand_off;
                study(name, slice, sheet)?;
            }
        }
        Ok(())
    };
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error:?}");
            ExitCode::FAILURE
        }
    }
}
