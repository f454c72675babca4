//! A wall whose foam is of any depth and whose other layers stay.

use super::probes::DEEPEST;
use super::refusal::{DepthError, DepthField, Refusals};
use crate::design::{CheckedDesign, FoamMeasure, Surface};
use crate::envelope::{
    DAMP_SURFACE_RESISTANCE, HeatFlow, LayerKind, OUTSIDE_SURFACE_RESISTANCE, PlainArea,
    air_layer_resistance, counted_waves,
};
use crate::freight_box::Corrugation;
use crate::units::{
    Length, TemperatureFactor, ThermalConductivity, ThermalResistance, ThermalTransmittance,
};

/// Where the lining stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Lining {
    /// On the foam wherever its face lies, or none is up yet: no air between.
    OnFoam,
    /// On a plane, that of frame or foam, whichever is deeper. Behind it shallower foam leaves still
    /// air; deeper foam is cut back to it, or the lining would not lie.
    AtPlane {
        /// From the inner crests of the steel to the back of the lining.
        back: Length,
        /// Which way heat crosses the air.
        heat_flow: HeatFlow,
    },
}

/// A wall with foam of any depth.
#[derive(Clone, Debug, PartialEq)]
pub struct FoamedWall {
    /// R_si.
    inside_surface: ThermalResistance,
    /// R_se.
    outside_surface: ThermalResistance,
    /// Steel, lining and the like.
    other_layers: ThermalResistance,
    /// λ of the foam, times the developed ratio of the steel where it follows that.
    conductivity: ThermalConductivity,
    lining: Lining,
    /// The sheet whose troughs are filled as well.
    troughs: Option<Corrugation>,
}

impl FoamedWall {
    /// A wall of flat steel.
    ///
    /// Range: surface resistances from 0 to 10 m²·K/W and other layers from 0.01 to 100 m²·K/W, λ from
    /// 0.01 to 1 W/(m·K), the back of the lining from 0 to 0.5 m.
    ///
    /// # Errors
    /// Every number that cannot stand, together.
    pub fn new(
        inside_surface: ThermalResistance,
        other_layers: ThermalResistance,
        outside_surface: ThermalResistance,
        conductivity: ThermalConductivity,
        lining: Lining,
    ) -> Result<Self, DepthError> {
        let mut refusals = Refusals::default();
        refusals.check(DepthField::InsideSurface, inside_surface.value(), 0.0..=10.0);
        refusals.check(DepthField::OutsideSurface, outside_surface.value(), 0.0..=10.0);
        refusals.check(DepthField::OtherLayers, other_layers.value(), 0.01..=100.0);
        refusals.check(DepthField::Conductivity, conductivity.value(), 0.01..=1.0);
        if let Lining::AtPlane { back, .. } = lining {
            refusals.check(DepthField::LiningBack, back.value(), 0.0..=DEEPEST);
        }
        refusals.done()?;
        Ok(Self {
            inside_surface,
            outside_surface,
            other_layers,
            conductivity,
            lining,
            troughs: None,
        })
    }

    /// A plain area of a design, its sprayed foam free to vary and every other layer as it is; the
    /// lining stands where the design has it. Under the floor it is the foam between the members.
    ///
    /// Surface resistances are those of ISO 6946. How foam is measured counts as in
    /// [`crate::envelope::transmittance`]: over the ribs the filled troughs are deeper than the probe
    /// says, along the steel the foam's resistance is divided by the developed ratio.
    pub fn of_plain_area(checked: &CheckedDesign, plain: &PlainArea) -> Self {
        let design = checked.design();
        let heat_flow = HeatFlow::through(plain.surface);
        let is_fixed = |kind| !matches!(kind, LayerKind::Foam | LayerKind::AirGap);
        let waves = counted_waves(checked, plain.surface);
        let (troughs, ratio) = match design.foam_measure {
            FoamMeasure::FlushOverTheRibs => (waves, 1.0),
            FoamMeasure::FollowingTheSteel => {
                (None, waves.map_or(1.0, |sheet| sheet.developed_ratio()))
            }
            FoamMeasure::Flat => (None, 1.0),
        };
        Self {
            inside_surface: heat_flow.inside_surface_resistance(),
            outside_surface: OUTSIDE_SURFACE_RESISTANCE,
            other_layers: plain
                .layers
                .iter()
                .filter(|layer| is_fixed(layer.kind))
                .map(|layer| layer.resistance)
                .sum(),
            conductivity: design.foam_conductivity * ratio,
            lining: if plain.surface == Surface::Floor {
                Lining::OnFoam
            } else {
                Lining::AtPlane { back: design.stack(plain.surface).lining_back(), heat_flow }
            },
            troughs,
        }
    }

    /// The depth that stays of a probed one: no more than the lining leaves.
    pub fn depth_kept(&self, probed: Length) -> Length {
        match self.lining {
            Lining::OnFoam => probed,
            Lining::AtPlane { back, .. } => probed.min(back),
        }
    }

    /// Resistance of foam and still air over the inner crests, d/λ + R_g(back − d), in series: the
    /// gap is taken as wide as it is at the probe (ISO 6946:2017, 6.9 and annex D).
    pub(super) fn foam_and_gap(&self, probed: Length) -> ThermalResistance {
        let depth = self.depth_kept(probed);
        let foam = depth / self.conductivity;
        match self.lining {
            Lining::AtPlane { back, heat_flow } if depth < back => {
                foam + air_layer_resistance(back - depth, heat_flow)
            }
            _ => foam,
        }
    }

    /// Resistance of all that is not foam and air, R_si + Σ R + R_se.
    pub(super) fn beside_foam(&self) -> ThermalResistance {
        self.inside_surface + self.other_layers + self.outside_surface
    }

    /// Thermal transmittance of the wall were its foam as deep as this everywhere,
    /// U = 1 / (R_si + Σ R + d/λ + R_g + R_se) (ISO 6946:2017, 6.7.1.1); with filled troughs its
    /// mean over a wave. Depth from 0 to 0.5 m.
    pub fn transmittance(&self, probed: Length) -> ThermalTransmittance {
        self.mean_over_wave(self.beside_foam() + self.foam_and_gap(probed))
    }

    /// The mean of 1 / (R + t/λ) over a wave, t the foam in the trough behind the inner plane; over a
    /// slope, where t grows evenly to the depth T, ln(1 + T/(λ·R))·λ/T. Without troughs 1 / R. Without
    /// end where R is 0.
    pub(super) fn mean_over_wave(&self, over_crest: ThermalResistance) -> ThermalTransmittance {
        let crest = over_crest.transmittance();
        match &self.troughs {
            Some(sheet) if over_crest > ThermalResistance::ZERO => {
                let trough = sheet.depth / self.conductivity;
                let bottom = (over_crest + trough).transmittance();
                let slope =
                    ThermalTransmittance::new(libm::log1p(trough / over_crest) / trough.value());
                let share = |width: Length| width / sheet.pitch();
                crest * share(sheet.inner_flat)
                    + bottom * share(sheet.outer_flat)
                    + slope * share(sheet.slope * 2.0)
            }
            _ => crest,
        }
    }

    /// Temperature factor behind foam of this depth for the risk of damp, over an inner crest, in one
    /// dimension: f_Rsi = 1 − R_si / R_tot with R_si = 0.25 m²·K/W in both (ISO 13788:2012).
    ///
    /// A thin spot is warmed by the deeper foam around it, so it is no colder than this; a member or
    /// bare steel through it is another matter and a detail of its own. Depth from 0 to 0.5 m.
    pub fn temperature_factor(&self, probed: Length) -> TemperatureFactor {
        let total = DAMP_SURFACE_RESISTANCE
            + self.other_layers
            + self.foam_and_gap(probed)
            + self.outside_surface;
        TemperatureFactor::new(1.0 - DAMP_SURFACE_RESISTANCE / total)
    }
}
