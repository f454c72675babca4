//! The solver alone in wasm: what the worker runs. It stays out of the page's own wasm, which is
//! there sooner without it.

use inchwise_aside::Solver;
use wasm_bindgen::prelude::wasm_bindgen;

/// Solves what the page asks, one piece a step.
#[wasm_bindgen]
#[derive(Default)]
pub struct AsideSolver(Solver);

#[wasm_bindgen]
impl AsideSolver {
    /// A solver that knows nothing yet.
    #[wasm_bindgen(constructor)]
    pub fn new() -> Self {
        Self::default()
    }

    /// Takes a design in place of whatever was being worked on, with the wall depths of the curve
    /// in metres, none for no curve.
    pub fn take(&mut self, request: u32, design: &[f64], depths: &[f64]) {
        self.0.take(request, design, depths);
    }

    /// Looks at a place by its number, or at none, in this design and every one that comes.
    pub fn look(&mut self, place: Option<usize>, design: &[f64]) {
        self.0.look(place, design);
    }

    /// Takes a year in place of the one before.
    pub fn take_year(&mut self, request: u32, design: &[f64], choices: &[f64], hours: &[f64]) {
        self.0.take_year(request, design, choices, hours);
    }

    /// Works on for one piece and says what came of it, which may be no number yet; nothing once
    /// all is done.
    pub fn step(&mut self) -> Option<Box<[f64]>> {
        self.0.step().map(Vec::into_boxed_slice)
    }
}
