//! The corrugated sheet as a line, and the foam face over it.

use inchwise_core::design::FoamMeasure;
use inchwise_core::freight_box::Corrugation;

/// A trapezoidal wave along a wall, mm: how far the sheet lies behind its inner crests.
///
/// Positions run along the wall. The wave is whole: it starts and ends on an inner flat, and what
/// is left of the wall at either end is flat in the crests' plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wave {
    /// From the inner to the outer flat.
    pub depth: f64,
    /// Width of the outer flat.
    pub outer_flat: f64,
    /// Width of one slope.
    pub slope: f64,
    /// Width of a whole wave.
    pub pitch: f64,
    /// Sheet thickness.
    pub thickness: f64,
    /// Middle of the first outer flat.
    first_trough: f64,
    /// How many outer flats.
    troughs: usize,
}

impl Wave {
    /// The most whole waves that fit between two ends, in their middle.
    pub fn between(corrugation: &Corrugation, from: f64, to: f64) -> Self {
        let pitch = corrugation.pitch().as_mm();
        let troughs = ((to - from) / pitch).floor().max(0.0);
        let start = (from + to - troughs * pitch) / 2.0;
        Self::new(corrugation, start + pitch / 2.0, troughs as usize)
    }

    /// So many waves, a crest in the middle at `crest`.
    pub fn about_crest(corrugation: &Corrugation, crest: f64, waves_each_side: usize) -> Self {
        let pitch = corrugation.pitch().as_mm();
        let first = crest + pitch * (0.5 - waves_each_side as f64);
        Self::new(corrugation, first, waves_each_side * 2)
    }

    fn new(corrugation: &Corrugation, first_trough: f64, troughs: usize) -> Self {
        Self {
            depth: corrugation.depth.as_mm(),
            outer_flat: corrugation.outer_flat.as_mm(),
            slope: corrugation.slope.as_mm(),
            pitch: corrugation.pitch().as_mm(),
            thickness: corrugation.thickness.as_mm(),
            first_trough,
            troughs,
        }
    }

    /// How far the sheet lies behind the crests' plane at a place.
    pub fn behind(&self, at: f64) -> f64 {
        if self.troughs == 0 {
            return 0.0;
        }
        let waves = ((at - self.first_trough) / self.pitch).round();
        let last = (self.troughs - 1) as f64;
        let trough = self.first_trough + waves.clamp(0.0, last) * self.pitch;
        let beside_flat = (at - trough).abs() - self.outer_flat / 2.0;
        (self.depth * (1.0 - beside_flat / self.slope)).clamp(0.0, self.depth)
    }

    /// The bends of the sheet between two places, both of them included, with how far each lies
    /// behind the crests' plane.
    pub fn bends(&self, from: f64, to: f64) -> Vec<(f64, f64)> {
        let half = self.outer_flat / 2.0;
        let bends = (0..self.troughs).flat_map(|index| {
            let trough = self.first_trough + index as f64 * self.pitch;
            [-half - self.slope, -half, half, half + self.slope].map(|off| trough + off)
        });
        std::iter::once(from)
            .chain(bends.filter(|&at| at > from && at < to))
            .chain([to])
            .map(|at| (at, self.behind(at)))
            .collect()
    }

    /// The foam's inner face between two places, over the crests' plane.
    ///
    /// A plane where the troughs are filled. Where the foam keeps its depth square to the sheet:
    /// the greatest of h(t) + √(depth² − (s − t)²) over the sheet, h its height at t.
    pub fn foam_face(
        &self,
        foam: f64,
        measure: FoamMeasure,
        from: f64,
        to: f64,
    ) -> Vec<(f64, f64)> {
        if measure != FoamMeasure::FollowingTheSteel || self.troughs == 0 {
            return vec![(from, foam), (to, foam)];
        }
        const STEP: f64 = 7.0;
        let steps = ((to - from) / STEP).ceil().max(1.0) as usize;
        // One wave is worked out and repeated: a long wall has dozens.
        let samples = (self.pitch / STEP).ceil() as usize;
        let first_crest = self.first_trough - self.pitch / 2.0;
        let last_crest = first_crest + self.pitch * self.troughs as f64;
        let one: Vec<f64> = (0..=samples)
            .map(|index| {
                let at = self.first_trough + self.pitch * (index as f64 / samples as f64 - 0.5);
                self.dilated(foam, at)
            })
            .collect();
        (0..=steps)
            .map(|index| {
                let at = from + (to - from) * index as f64 / steps as f64;
                if at <= first_crest || at >= last_crest {
                    return (at, foam);
                }
                let phase = ((at - first_crest) / self.pitch).fract() * samples as f64;
                let low = (phase.floor() as usize).min(samples - 1);
                let share = phase - low as f64;
                (at, one[low] * (1.0 - share) + one[low + 1] * share)
            })
            .collect()
    }

    fn dilated(&self, foam: f64, at: f64) -> f64 {
        const STEPS: i32 = 240;
        (-STEPS..=STEPS)
            .map(|step| {
                let aside = foam * f64::from(step) / f64::from(STEPS);
                (foam * foam - aside * aside).max(0.0).sqrt() - self.endless(at + aside)
            })
            .fold(f64::NEG_INFINITY, f64::max)
    }

    /// As [`Wave::behind`], of a sheet that waves on without end.
    fn endless(&self, at: f64) -> f64 {
        let off = (at - self.first_trough) / self.pitch;
        let beside_flat = (off - off.round()).abs() * self.pitch - self.outer_flat / 2.0;
        (self.depth * (1.0 - beside_flat / self.slope)).clamp(0.0, self.depth)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::freight_box::SIDE_WALL;

    fn wall() -> Wave {
        Wave::between(&SIDE_WALL, 0.0, 5898.0)
    }

    #[test]
    fn the_wave_is_the_sheet_s_own() {
        let wave = wall();
        // 21 waves of 278 mm are 5838 mm, so 30 mm stay flat at either end.
        assert_eq!(wave.troughs, 21);
        assert_eq!(wave.behind(0.0), 0.0);
        assert_eq!(wave.behind(30.0 + 139.0), 36.0);
        // Half-way down a slope of 68 mm beside an outer flat of 72 mm.
        assert!((wave.behind(30.0 + 139.0 + 36.0 + 34.0) - 18.0).abs() < 1e-9);
        assert_eq!(wave.behind(5898.0), 0.0);
    }

    #[test]
    fn the_drawn_line_is_as_long_as_the_developed_sheet() {
        let wave = Wave::between(&SIDE_WALL, 0.0, 2780.0);
        let line = wave.bends(0.0, 2780.0);
        let length: f64 = line
            .windows(2)
            .map(|pair| {
                let (along, up) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
                (along * along + up * up).sqrt()
            })
            .sum();
        assert!((length / 2780.0 - SIDE_WALL.developed_ratio()).abs() < 1e-9, "{length}");
    }

    #[test]
    fn filled_troughs_give_a_plane() {
        let face = wall().foam_face(50.0, FoamMeasure::FlushOverTheRibs, 0.0, 5898.0);
        assert_eq!(face, vec![(0.0, 50.0), (5898.0, 50.0)]);
    }

    #[test]
    fn foam_that_follows_the_steel_keeps_its_depth_square_to_it() {
        let wave = wall();
        for foam in [10.0, 50.0, 120.0, 200.0] {
            let face = wave.foam_face(foam, FoamMeasure::FollowingTheSteel, 400.0, 1200.0);
            let sheet: Vec<(f64, f64)> = (0..=6000)
                .map(|step| f64::from(step) * 0.3)
                .map(|at| (at, -wave.behind(at)))
                .collect();
            for (at, height) in face {
                let nearest = sheet
                    .iter()
                    .map(|&(x, y)| ((x - at) * (x - at) + (y - height) * (y - height)).sqrt())
                    .fold(f64::INFINITY, f64::min);
                assert!((nearest - foam).abs() < 1.0, "{foam}: {nearest} at {at}");
            }
        }
    }
}
