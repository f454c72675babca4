//! What a grid of depths comes to.

use super::build_up::FoamedWall;
use super::probes::{DEEPEST, DepthGrid, Probe};
use super::refusal::{DepthError, DepthField, Refusals};
use crate::units::{
    Area, HeatTransferCoefficient, Length, TemperatureFactor, ThermalTransmittance,
};

/// A wall as it was sprayed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GridOutcome {
    /// All areas together.
    pub area: Area,
    /// Mean of the depths that stay behind the lining, weighted by area.
    pub mean_depth: Length,
    /// The least.
    pub least_depth: Length,
    /// U of the wall, the mean of U(d) weighted by area: heat goes straight through each patch.
    ///
    /// Parallel paths give the least loss there can be (the upper limit of resistance, ISO 6946:2017,
    /// 6.7.2): they let no heat run aside to a thin place. It does so only within about a foam depth of
    /// a border, and patches are much wider than foam is deep, a square metre against a tenth of a metre.
    pub transmittance: ThermalTransmittance,
    /// The other bound: U were both faces of foam and gap each of one temperature (the lower limit of
    /// resistance). Patches as narrow as foam is deep come near it.
    pub isothermal_transmittance: ThermalTransmittance,
    /// U of an even wall of the mean depth.
    pub at_mean_depth: ThermalTransmittance,
    /// U of an even wall of the least depth.
    pub at_least_depth: ThermalTransmittance,
    /// Loss H = U·A, members apart.
    pub loss: HeatTransferCoefficient,
    /// What it loses more than an even wall of the same mean, (U − U(d̄))·A; never below 0 but for
    /// rounding, because U(d) is convex.
    pub excess_loss: HeatTransferCoefficient,
    /// f_Rsi behind the least depth, in one dimension, with 0.25 m²·K/W inside.
    pub least_factor: TemperatureFactor,
    /// Probes that found less than required.
    pub below_required: usize,
    /// The area they stand for.
    pub area_below: Area,
    /// Probes that found foam past the lining's plane: to be cut back, and counted so.
    pub to_cut_back: usize,
    /// The largest area that hangs on one probe.
    pub largest_probe_area: Area,
    /// Whether no probe stands for more than [`super::DENSE_PROBE_AREA`].
    pub is_dense: bool,
}

impl GridOutcome {
    /// The excess as a share of the loss of the even wall.
    pub fn excess_share(&self) -> f64 {
        self.excess_loss / (self.at_mean_depth * self.area)
    }
}

impl FoamedWall {
    /// What a grid of probed depths comes to. Range: required depth from 0 to 0.5 m.
    ///
    /// # Errors
    /// Refuses a required depth out of range.
    pub fn over(&self, grid: &DepthGrid, required: Length) -> Result<GridOutcome, DepthError> {
        let mut refusals = Refusals::default();
        refusals.check(DepthField::RequiredDepth, required.value(), 0.0..=DEEPEST);
        refusals.done()?;

        let area = grid.area();
        let mean = |of: &dyn Fn(&Probe) -> f64| {
            grid.probes().iter().map(|probe| (probe.area / area) * of(probe)).sum::<f64>()
        };
        let kept = |probe: &Probe| self.depth_kept(probe.depth);
        let depths = || grid.probes().iter().map(kept);
        let least_depth = depths().fold(Length::new(DEEPEST), Length::min);
        let most_depth = depths().fold(Length::ZERO, Length::max);
        // Rounding must not carry a mean past its ends.
        let mean_depth =
            Length::new(mean(&|probe| kept(probe).value())).max(least_depth).min(most_depth);

        let transmittance =
            ThermalTransmittance::new(mean(&|probe| self.transmittance(probe.depth).value()));
        let at_mean_depth = self.transmittance(mean_depth);
        let foam_alone = ThermalTransmittance::new(mean(&|probe| {
            self.mean_over_wave(self.foam_and_gap(probe.depth)).value()
        }));
        let below = || grid.probes().iter().filter(|probe| probe.depth < required);
        Ok(GridOutcome {
            area,
            mean_depth,
            least_depth,
            transmittance,
            isothermal_transmittance: (self.beside_foam() + foam_alone.resistance())
                .transmittance(),
            at_mean_depth,
            at_least_depth: self.transmittance(least_depth),
            loss: transmittance * area,
            excess_loss: (transmittance - at_mean_depth) * area,
            least_factor: self.temperature_factor(least_depth),
            below_required: below().count(),
            area_below: below().map(|probe| probe.area).sum(),
            to_cut_back: grid
                .probes()
                .iter()
                .filter(|probe| probe.depth > self.depth_kept(probe.depth))
                .count(),
            largest_probe_area: grid.largest_area(),
            is_dense: grid.is_dense(),
        })
    }
}
