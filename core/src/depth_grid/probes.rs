//! The probes of a wall.

use super::refusal::{DepthError, DepthField, Refusals};
use crate::units::{Area, Length};

/// One probe of the foam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Probe {
    /// Foam over the inner crests of the steel, square to the wall; 0 of bare steel.
    pub depth: Length,
    /// The area it stands for.
    pub area: Area,
}

/// Most that a probe may stand for, 1 m². Common practice, no source: one probe a square metre.
pub const DENSE_PROBE_AREA: Area = Area::new(1.0);

/// Deepest foam that is reckoned.
pub(super) const DEEPEST: f64 = 0.5;

/// Checked probes of one wall.
#[derive(Clone, Debug, PartialEq)]
pub struct DepthGrid {
    probes: Vec<Probe>,
}

impl DepthGrid {
    /// Probes that each stand for an area of their own.
    ///
    /// Range: 1 to 10 000 probes, depths from 0 to 0.5 m, areas from 1 cm² to 1000 m².
    ///
    /// # Errors
    /// Every number that cannot stand, together.
    pub fn new(probes: Vec<Probe>) -> Result<Self, DepthError> {
        let mut refusals = Refusals::default();
        check_count(&mut refusals, probes.len());
        for (n, probe) in probes.iter().enumerate() {
            check_depth(&mut refusals, n, probe.depth);
            let area = probe.area.value();
            refusals.check_probe(Some(n), DepthField::ProbeArea, area, 1e-4..=1000.0);
        }
        refusals.done()?;
        Ok(Self { probes })
    }

    /// Probes that share a wall alike.
    ///
    /// Range: as [`Self::new`], the wall from 0.01 m² to 1000 m².
    ///
    /// # Errors
    /// Every number that cannot stand, together.
    pub fn of_equal_areas(depths: &[Length], wall: Area) -> Result<Self, DepthError> {
        let mut refusals = Refusals::default();
        check_count(&mut refusals, depths.len());
        for (n, &depth) in depths.iter().enumerate() {
            check_depth(&mut refusals, n, depth);
        }
        refusals.check(DepthField::WallArea, wall.value(), 0.01..=1000.0);
        refusals.done()?;
        let area = wall / depths.len() as f64;
        Self::new(depths.iter().map(|&depth| Probe { depth, area }).collect())
    }

    /// The probes, as they were given.
    pub fn probes(&self) -> &[Probe] {
        &self.probes
    }

    /// All areas together.
    pub fn area(&self) -> Area {
        self.probes.iter().map(|probe| probe.area).sum()
    }

    /// The largest area that hangs on one probe.
    pub fn largest_area(&self) -> Area {
        self.probes.iter().map(|probe| probe.area).fold(Area::ZERO, Area::max)
    }

    /// Whether no probe stands for more than [`DENSE_PROBE_AREA`].
    pub fn is_dense(&self) -> bool {
        self.largest_area() <= DENSE_PROBE_AREA
    }
}

fn check_count(refusals: &mut Refusals, count: usize) {
    refusals.check(DepthField::ProbeCount, count as f64, 1.0..=10_000.0);
}

fn check_depth(refusals: &mut Refusals, probe: usize, depth: Length) {
    refusals.check_probe(Some(probe), DepthField::ProbeDepth, depth.value(), 0.0..=DEEPEST);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_that_cannot_stand_is_told_together() {
        let depths = [Length::mm(50.0), Length::mm(-1.0), Length::new(f64::NAN)];
        let refused = DepthGrid::of_equal_areas(&depths, Area::ZERO);
        let refusals = refused.map_or_else(|error| error.refusals, |_| Vec::new());
        let named: Vec<_> = refusals.iter().map(|one| (one.probe, one.field)).collect();
        assert_eq!(
            named,
            [
                (Some(1), DepthField::ProbeDepth),
                (Some(2), DepthField::ProbeDepth),
                (None, DepthField::WallArea),
            ]
        );
        assert_eq!(
            refusals[0].to_string(),
            "probe_depth of probe 1 is -0.001, allowed is from 0 to 0.5 m"
        );
        let none = DepthGrid::new(Vec::new()).map_or_else(|error| error.to_string(), |_| "".into());
        assert_eq!(none, "probe_count is 0, allowed is from 1 to 10000");
    }

    #[test]
    fn the_largest_patch_decides_whether_a_grid_is_dense() {
        let probe = |area| Probe { depth: Length::mm(50.0), area: Area::new(area) };
        let uneven = DepthGrid::new(vec![probe(0.2), probe(0.2), probe(1.1)]);
        assert_eq!(uneven.map(|grid| grid.is_dense()), Ok(false));
    }
}
