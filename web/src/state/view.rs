//! What of the planner is looked at. It changes nothing that is chosen.

use inchwise_core::envelope::ThermalBridge;
use leptos::prelude::*;

use crate::sheets::Sheet;

/// Which drawing stands on the bench.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum DrawingName {
    /// The box cut across.
    #[default]
    Section,
    /// The box from above.
    Plan,
    /// The coldest place, or the one that was chosen, with its temperatures.
    Corner,
}

/// One of the four controls of the bench.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Control {
    /// The box.
    Box,
    /// Foam on the walls.
    Walls,
    /// Foam under the roof.
    #[default]
    Ceiling,
    /// What is done about the corner castings.
    Castings,
}

/// What is looked at.
#[derive(Clone, Copy)]
pub struct View {
    /// The open sheet.
    pub sheet: RwSignal<Sheet>,
    /// The drawing on the bench.
    pub drawing: RwSignal<DrawingName>,
    /// The control that a narrow bench shows.
    pub control: RwSignal<Control>,
    /// The cold place that was chosen to be seen; the coldest where none was.
    pub spot: RwSignal<Option<ThermalBridge>>,
    /// Which of the cuts through it.
    pub cut: RwSignal<usize>,
    /// Whether the sheet is pulled up over most of the drawing.
    pub pulled_up: RwSignal<bool>,
}

impl View {
    /// What is looked at first.
    pub fn new() -> Self {
        Self {
            sheet: RwSignal::new(Sheet::default()),
            drawing: RwSignal::new(DrawingName::default()),
            control: RwSignal::new(Control::default()),
            spot: RwSignal::new(None),
            cut: RwSignal::new(0),
            pulled_up: RwSignal::new(false),
        }
    }
}
