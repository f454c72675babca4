//! Where the dampers are drawn along the side walls.
//!
//! Intakes stand high in the right side wall, the first and the last at its ends, exhausts high in
//! the middle of the left one, so that the air sweeps the whole box (common practice, no source).

use inchwise_core::design::Design;
use inchwise_core::units::Length;

use super::shape::{Point, Rect};

/// A damper on the paper.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnDamper {
    /// What it cuts out of sheet and build-up.
    pub hole: Rect,
    /// Which way the air goes, from and to.
    pub way: [Point; 2],
    /// Whether a fan stands in it.
    pub is_exhaust: bool,
}

/// From a corner to the middle of the nearest damper, mm.
const FROM_CORNER: f64 = 400.0;

/// How far the air's arrow reaches past the hole, mm.
const REACH: f64 = 260.0;

/// So many places from end to end of a run; a single one at its start.
fn from_end_to_end(count: usize, run: f64) -> Vec<f64> {
    let last = count.saturating_sub(1).max(1) as f64;
    (0..count).map(|n| FROM_CORNER + (run - 2.0 * FROM_CORNER) * n as f64 / last).collect()
}

/// So many places evenly between the ends of a run.
fn between_ends(count: usize, run: f64) -> Vec<f64> {
    (0..count).map(|n| run * (n + 1) as f64 / (count + 1) as f64).collect()
}

/// The dampers of a design: through the right side wall, at the top of the paper, and the left one.
/// `clear` is the finished room, `outside` the box from outside.
pub fn dampers(design: &Design, clear: &Rect, outside: &Rect) -> Vec<DrawnDamper> {
    if design.damper_count == 0.0 {
        return Vec::new();
    }
    let exhausts = design.exhaust_count as usize;
    let intakes = (design.damper_count as usize).saturating_sub(exhausts);
    let run = clear.width();
    let hole = |at: f64, diameter: Length, top: f64, bottom: f64| {
        let (middle, half) = (clear.left + at, diameter.as_mm() / 2.0);
        Rect::new(middle - half, top, middle + half, bottom)
    };
    let intake = |at: f64| {
        let hole = hole(at, design.damper_diameter, outside.top, clear.top);
        let x = hole.centre().x;
        let way = [Point::new(x, hole.top), Point::new(x, hole.bottom + REACH)];
        DrawnDamper { hole, way, is_exhaust: false }
    };
    let exhaust = |at: f64| {
        let hole = hole(at, design.exhaust_diameter, clear.bottom, outside.bottom);
        let x = hole.centre().x;
        let way = [Point::new(x, hole.top - REACH), Point::new(x, hole.bottom)];
        DrawnDamper { hole, way, is_exhaust: true }
    };
    // A single intake at one end wants its exhaust at the other.
    let out = if intakes == 1 && exhausts == 1 {
        vec![run - FROM_CORNER]
    } else {
        between_ends(exhausts, run)
    };
    from_end_to_end(intakes, run)
        .into_iter()
        .map(intake)
        .chain(out.into_iter().map(exhaust))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_intakes_stand_at_the_ends_and_the_exhaust_between_them() {
        let design = Design { damper_count: 3.0, ..Design::default() };
        let clear = Rect::new(75.0, 75.0, 5823.0, 2277.0);
        let outside = Rect::new(-80.0, -43.0, 5978.0, 2395.0);
        let drawn = dampers(&design, &clear, &outside);
        let middles: Vec<f64> = drawn.iter().map(|damper| damper.hole.centre().x).collect();
        assert_eq!(middles, [475.0, 5423.0, 2949.0]);
        let wider = Design { exhaust_diameter: Length::mm(300.0), ..design };
        let widths = dampers(&wider, &clear, &outside).into_iter().map(|one| one.hole.width());
        assert_eq!(widths.collect::<Vec<_>>(), [200.0, 200.0, 300.0]);
        assert_eq!(drawn.iter().filter(|damper| damper.is_exhaust).count(), 1);
        for damper in drawn {
            assert!(outside.holds(damper.way[0]) && outside.holds(damper.way[1]), "{damper:?}");
        }
        assert!(dampers(&Design::default(), &clear, &outside).is_empty());
    }
}
