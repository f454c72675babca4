//! Refusals: which probe or layer cannot stand, and what would.

use core::fmt;
use core::ops::RangeInclusive;

/// What a refused number is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum DepthField {
    /// How many probes there are.
    ProbeCount,
    /// Foam depth of a probe, m.
    ProbeDepth,
    /// Area a probe stands for, m².
    ProbeArea,
    /// Area of the wall that probes share alike, m².
    WallArea,
    /// Foam depth that was asked for, m.
    RequiredDepth,
    /// Inside surface resistance, m²·K/W.
    InsideSurface,
    /// Outside surface resistance, m²·K/W.
    OutsideSurface,
    /// Resistance of the layers beside foam and air, m²·K/W.
    OtherLayers,
    /// Conductivity of the foam, W/(m·K).
    Conductivity,
    /// From the steel to the back of the lining, m.
    LiningBack,
}

impl DepthField {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::ProbeCount => "probe_count",
            Self::ProbeDepth => "probe_depth",
            Self::ProbeArea => "probe_area",
            Self::WallArea => "wall_area",
            Self::RequiredDepth => "required_depth",
            Self::InsideSurface => "inside_surface",
            Self::OutsideSurface => "outside_surface",
            Self::OtherLayers => "other_layers",
            Self::Conductivity => "conductivity",
            Self::LiningBack => "lining_back",
        }
    }

    /// The unit that its value and range are given in; none for a count.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::ProbeCount => "",
            Self::ProbeDepth | Self::RequiredDepth | Self::LiningBack => "m",
            Self::ProbeArea | Self::WallArea => "m²",
            Self::InsideSurface | Self::OutsideSurface | Self::OtherLayers => "m²·K/W",
            Self::Conductivity => "W/(m·K)",
        }
    }
}

/// One number that cannot stand.
#[derive(Clone, Debug, PartialEq)]
pub struct DepthRefusal {
    /// What it is.
    pub field: DepthField,
    /// Which probe, from 0; `None` of what is no probe's.
    pub probe: Option<usize>,
    /// Its value, in the unit of the field.
    pub given: f64,
    /// What would be allowed.
    pub allowed: RangeInclusive<f64>,
}

impl fmt::Display for DepthRefusal {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.field.key())?;
        if let Some(probe) = self.probe {
            write!(out, " of probe {probe}")?;
        }
        let unit = self.field.unit();
        let space = if unit.is_empty() { "" } else { " " };
        let (least, most) = (self.allowed.start(), self.allowed.end());
        write!(out, " is {}, allowed is from {least} to {most}{space}{unit}", self.given)
    }
}

/// Every number that cannot stand, together.
#[derive(Clone, Debug, PartialEq)]
pub struct DepthError {
    /// In the order they were found, at least one.
    pub refusals: Vec<DepthRefusal>,
}

impl fmt::Display for DepthError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (n, refusal) in self.refusals.iter().enumerate() {
            let before = if n == 0 { "" } else { "; " };
            write!(out, "{before}{refusal}")?;
        }
        Ok(())
    }
}

impl std::error::Error for DepthError {}

/// Gathers refusals.
#[derive(Default)]
pub(super) struct Refusals {
    found: Vec<DepthRefusal>,
}

impl Refusals {
    /// Refuses a number out of its range; a NaN is in no range.
    pub(super) fn check(&mut self, field: DepthField, given: f64, allowed: RangeInclusive<f64>) {
        self.check_probe(None, field, given, allowed);
    }

    /// As [`Self::check`], of a probe.
    pub(super) fn check_probe(
        &mut self,
        probe: Option<usize>,
        field: DepthField,
        given: f64,
        allowed: RangeInclusive<f64>,
    ) {
        if !allowed.contains(&given) {
            self.found.push(DepthRefusal { field, probe, given, allowed });
        }
    }

    /// Nothing refused, or all that was.
    pub(super) fn done(self) -> Result<(), DepthError> {
        if self.found.is_empty() { Ok(()) } else { Err(DepthError { refusals: self.found }) }
    }
}
