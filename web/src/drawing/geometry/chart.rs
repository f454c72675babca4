//! Room lost against heating load along the depth of the walls' foam.

use inchwise_core::design::{Design, EndWallTreatment, Surface};
use inchwise_core::tradeoff::{WallDepthPoint, with_wall_depth};
use inchwise_core::units::Length;

use super::plane::Plane;
use super::shape::{Point, Rect};
use super::ticks::Axis;
use crate::measure::UnitSystem;

/// The depths that are worked out: whole steps of 25 mm or 1 in, one between each two, and the
/// frame's face, where foam stops being free of room.
pub fn depths(design: &Design, units: UnitSystem) -> Vec<Length> {
    let at = |count: u32| match units {
        UnitSystem::Metric => Length::mm(12.5 * f64::from(count)),
        UnitSystem::Imperial => Length::inches(0.5 * f64::from(count)),
    };
    let mut depths: Vec<Length> = (2..=12).map(at).collect();
    let frame = frame_face(design);
    if frame > depths[0] && frame < depths[depths.len() - 1] && !depths.contains(&frame) {
        let deeper = depths.iter().position(|&depth| depth > frame);
        depths.insert(deeper.unwrap_or(depths.len()), frame);
    }
    depths
}

/// How deep the wall frame's inner face lies.
pub fn frame_face(design: &Design) -> Length {
    let stack = design.stack(Surface::SideWall);
    stack.stand_off + stack.member
}

/// Everything the sweep depends on: the design without what is swept.
pub fn swept_away(design: &Design) -> Design {
    with_wall_depth(design, Length::mm(50.0), EndWallTreatment::CoverCastings)
}

/// The points of one treatment, from the thinnest foam to the thickest.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// The treatments that come to this curve: more than one where they look alike.
    pub treatments: Vec<EndWallTreatment>,
    /// Its points.
    pub points: Vec<WallDepthPoint>,
}

/// Points as one curve a treatment; treatments that lie within a hundredth of the room lost of one
/// another at every depth are drawn as one.
pub fn curves(found: &[(EndWallTreatment, Vec<WallDepthPoint>)]) -> Vec<Curve> {
    let mut curves: Vec<Curve> = Vec::new();
    for (treatment, points) in found.iter().filter(|(_, points)| !points.is_empty()) {
        let alike = |curve: &&mut Curve| {
            curve.points.len() == points.len()
                && curve.points.iter().zip(points).all(|(one, other)| {
                    let (one, other) = (one.lost_volume.value(), other.lost_volume.value());
                    (one - other).abs() <= 0.01 * one.abs().max(other.abs())
                })
        };
        match curves.iter_mut().find(alike) {
            Some(curve) => curve.treatments.push(*treatment),
            None => {
                curves.push(Curve { treatments: vec![*treatment], points: points.clone() });
            }
        }
    }
    curves
}

/// The chart's plane: room lost to the right, heating load upwards, in the units shown.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartPlane {
    /// Room lost, L or ft³, across; heating load, W or Btu/h, up.
    pub plane: Plane,
    units: UnitSystem,
}

impl ChartPlane {
    /// The plane that holds all points.
    pub fn holding<'a>(
        points: impl IntoIterator<Item = &'a WallDepthPoint>,
        units: UnitSystem,
    ) -> Self {
        let (mut lost, mut load) = (Vec::new(), Vec::new());
        for point in points {
            let (volume, power) = Self::values(point, units);
            lost.push(volume);
            load.push(power);
        }
        // Words stand to the left of the steep part, over the curves and under them.
        let (lost_low, lost_high) = ends(&lost);
        let (load_low, load_high) = ends(&load);
        lost.push(lost_low - 0.16 * (lost_high - lost_low));
        load.push(load_high + 0.3 * (load_high - load_low));
        load.push(load_low - 0.4 * (load_high - load_low));
        let plane = Plane {
            paper: Rect::new(0.0, 0.0, 1000.0, 800.0),
            plot: Rect::new(150.0, 40.0, 950.0, 710.0),
            across: Axis::holding(&lost, 6),
            up: Axis::holding(&load, 8),
        };
        Self { plane, units }
    }

    fn values(point: &WallDepthPoint, units: UnitSystem) -> (f64, f64) {
        match units {
            UnitSystem::Metric => (point.lost_volume.as_litres(), point.loss.value()),
            UnitSystem::Imperial => {
                (point.lost_volume.as_cubic_feet(), point.loss.as_btu_per_hour())
            }
        }
    }

    /// Where a point lies on the paper.
    pub fn place(&self, point: &WallDepthPoint) -> Point {
        let (lost, load) = Self::values(point, self.units);
        self.plane.at(lost, load)
    }
}

/// The least and the greatest value.
fn ends(values: &[f64]) -> (f64, f64) {
    values.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &value| {
        (low.min(value), high.max(value))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::tradeoff::wall_depth_point;

    fn sweep(units: UnitSystem) -> Vec<(EndWallTreatment, Vec<WallDepthPoint>)> {
        let checked = inchwise_core::design::CheckedDesign::default();
        let mut cache = FieldCache::default();
        EndWallTreatment::ALL
            .iter()
            .map(|&treatment| {
                let points = depths(checked.design(), units)
                    .into_iter()
                    .filter_map(|depth| wall_depth_point(&checked, depth, treatment, &mut cache))
                    .collect();
                (treatment, points)
            })
            .collect()
    }

    #[test]
    fn the_sweep_runs_from_25_to_150_mm_and_stops_at_the_frame() {
        let metric = depths(&Design::default(), UnitSystem::Metric);
        assert_eq!(metric[0], Length::mm(25.0));
        assert_eq!(metric[metric.len() - 1], Length::mm(150.0));
        assert!(metric.contains(&frame_face(&Design::default())));
        let imperial = depths(&Design::default(), UnitSystem::Imperial);
        assert_eq!(imperial[imperial.len() - 1], Length::inches(6.0));
    }

    #[test]
    fn every_point_lies_on_the_plot_and_foam_up_to_the_frame_is_free() {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            let found = sweep(units);
            let plane = ChartPlane::holding(found.iter().flat_map(|(_, points)| points), units);
            let frame = frame_face(&Design::default());
            for (treatment, points) in &found {
                for pair in points.windows(2) {
                    let (one, next) = (plane.place(&pair[0]), plane.place(&pair[1]));
                    assert!(plane.plane.plot.holds(one) && plane.plane.plot.holds(next));
                    assert!(next.y > one.y, "deeper foam takes less heat");
                    if *treatment == EndWallTreatment::LeaveBare && pair[1].depth <= frame {
                        assert!((next.x - one.x).abs() < 1e-6, "free up to the frame");
                    }
                    if *treatment == EndWallTreatment::LeaveBare && pair[0].depth >= frame {
                        assert!(next.x > one.x, "past the frame it takes room");
                    }
                }
            }
        }
    }

    #[test]
    fn a_cover_s_quarter_of_a_litre_makes_no_curve_of_its_own() {
        let curves = curves(&sweep(UnitSystem::Metric));
        assert_eq!(curves.len(), 3);
        assert_eq!(
            curves[0].treatments,
            vec![EndWallTreatment::CoverCastings, EndWallTreatment::LeaveBare]
        );
    }

    #[test]
    fn what_is_swept_does_not_start_the_sweep_again() {
        let design = Design::default();
        let moved = with_wall_depth(&design, Length::mm(88.0), EndWallTreatment::LeaveBare);
        assert_eq!(swept_away(&design), swept_away(&moved));
        let other = Design { ceiling_foam: Length::mm(88.0), ..design.clone() };
        assert_ne!(swept_away(&design), swept_away(&other));
    }
}
