//! Refusals: which probe or layer cannot stand, and what would.

use crate::bounds::{Bounds, Refused, bounded_quantities};

/// Deepest foam that is reckoned, m.
pub(super) const DEEPEST: f64 = 0.5;

bounded_quantities! {
    /// What a refused number is.
    DepthField {
        /// How many probes there are.
        ProbeCount: "probe_count", "", Bounds::between(1.0, 10_000.0);
        /// Foam depth of a probe, m.
        ProbeDepth: "probe_depth", "m", Bounds::between(0.0, DEEPEST);
        /// Area a probe stands for, m².
        ProbeArea: "probe_area", "m²", Bounds::between(1e-4, 1000.0);
        /// Area of the wall that probes share alike, m².
        WallArea: "wall_area", "m²", Bounds::between(0.01, 1000.0);
        /// Foam depth that was asked for, m.
        RequiredDepth: "required_depth", "m", Bounds::between(0.0, DEEPEST);
        /// Inside surface resistance, m²·K/W.
        InsideSurface: "inside_surface", "m²·K/W", Bounds::between(0.0, 10.0);
        /// Outside surface resistance, m²·K/W.
        OutsideSurface: "outside_surface", "m²·K/W", Bounds::between(0.0, 10.0);
        /// Resistance of the layers beside foam and air, m²·K/W.
        OtherLayers: "other_layers", "m²·K/W", Bounds::between(0.01, 100.0);
        /// Conductivity of the foam, W/(m·K).
        Conductivity: "conductivity", "W/(m·K)", Bounds::between(0.01, 1.0);
        /// From the steel to the back of the lining, m.
        LiningBack: "lining_back", "m", Bounds::between(0.0, DEEPEST);
    }
}

/// Every number that cannot stand, together; the index is that of a probe.
pub type DepthError = Refused<DepthField>;
