//! A length that is pulled: by pointer, by key, by a screen reader.
//!
//! Nothing is held before the pointer has gone some way along its own direction; a swipe across it
//! is the page's, and scrolls.

use inchwise_core::units::Length;
use leptos::ev::{KeyboardEvent, PointerEvent};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

use super::Entry;
use crate::drawing::geometry::Point;
use crate::measure::{FieldUnit, Scale, UnitSystem};
use crate::state::Planner;

/// Which way a length grows on the screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Towards {
    /// To the right.
    Right,
    /// To the left.
    Left,
    /// Downwards.
    Down,
    /// Upwards.
    Up,
}

impl Towards {
    /// The class of what is pulled so.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Right => "grip towards-right",
            Self::Left => "grip towards-left",
            Self::Down => "grip towards-down",
            Self::Up => "grip towards-up",
        }
    }

    const fn is_upright(self) -> bool {
        matches!(self, Self::Down | Self::Up)
    }

    /// How far a movement on the screen goes the way the length grows. A finger that goes up or down
    /// scrolls the page, so that what grows up or down is pulled sideways by it.
    pub fn along(self, x: f64, y: f64, by_touch: bool) -> f64 {
        match self {
            Self::Right => x,
            Self::Left => -x,
            Self::Down | Self::Up if by_touch => x,
            Self::Down => y,
            Self::Up => -y,
        }
    }

    /// The face of foam that grew so far from a point.
    pub const fn from(self, steel: Point, foam: f64) -> Point {
        match self {
            Self::Right => Point::new(steel.x + foam, steel.y),
            Self::Left => Point::new(steel.x - foam, steel.y),
            Self::Down => Point::new(steel.x, steel.y + foam),
            Self::Up => Point::new(steel.x, steel.y - foam),
        }
    }

    /// As a screen reader names it.
    pub const fn orientation(self) -> &'static str {
        if self.is_upright() { "vertical" } else { "horizontal" }
    }
}

/// Pixels a pointer goes before it holds anything.
const SLACK: f64 = 6.0;

/// Millimetres that a screen pixel moves a face at most: on a small drawing the hand travels
/// further than the face, or a millimetre could not be hit.
const COARSEST: f64 = 2.0;

/// The step of the bench, in steps of a scale: 5 mm or a quarter of an inch.
pub fn bench_step(units: UnitSystem, scale: &Scale) -> i64 {
    match (scale.unit, units) {
        (FieldUnit::Millimetre, _) => (5.0 / scale.step).round() as i64,
        (FieldUnit::Inch, _) => (0.25 / scale.step).round() as i64,
        _ => 1,
    }
}

/// A pull that is going on.
#[derive(Clone, Copy)]
struct Drag {
    x: f64,
    y: f64,
    from: f64,
    /// What a pixel moves.
    per_pixel: f64,
    is_held: bool,
}

/// What is pulled, as its events see it.
#[derive(Clone, Copy)]
pub struct Pull {
    planner: Planner,
    entry: Entry,
    towards: Towards,
    hand: &'static str,
    drag: StoredValue<Option<Drag>>,
    /// Whether it is held.
    pub is_held: RwSignal<bool>,
}

/// What a pixel moves of a length drawn on a paper so many millimetres wide.
pub fn per_pixel_of_paper(element: &Element, paper_millimetres: f64) -> Option<f64> {
    let paper = element.closest(".paper").ok().flatten()?;
    let width = f64::from(paper.client_width());
    (width > 0.0).then(|| Length::mm((paper_millimetres / width).min(COARSEST)).value())
}

impl Pull {
    /// Nobody pulls yet.
    pub fn new(planner: Planner, entry: Entry, towards: Towards, hand: &'static str) -> Self {
        let (drag, is_held) = (StoredValue::new(None), RwSignal::new(false));
        Self { planner, entry, towards, hand, drag, is_held }
    }

    fn scale(self) -> Option<Scale> {
        self.entry.scale(self.planner.units.get_untracked())
    }

    fn now(self) -> f64 {
        self.planner.inputs.with_untracked(|inputs| self.entry.shown(inputs)).unwrap_or_default()
    }

    fn put(self, position: i64, hand: Option<&'static str>) {
        let Some(scale) = self.scale() else { return };
        let chosen = scale.si(position.clamp(scale.lowest, scale.highest));
        if chosen != self.now() {
            match hand {
                Some(hand) => self.entry.move_to(self.planner, chosen, hand),
                None => self.entry.step_by(self.planner, |scale| {
                    scale.position(chosen) - scale.position(self.now())
                }),
            }
        }
    }

    /// A pointer goes down; `per_pixel` says what a pixel of its way moves.
    pub fn take(self, event: &PointerEvent, per_pixel: impl Fn(&Element) -> Option<f64>) {
        let target = event.current_target().and_then(|target| target.dyn_into::<Element>().ok());
        let (Some(target), 0) = (target, event.button()) else { return };
        let Some(per_pixel) = per_pixel(&target) else { return };
        let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
        let from = self.now();
        self.drag.set_value(Some(Drag { x, y, from, per_pixel, is_held: false }));
    }

    /// A pointer moves.
    pub fn pull(self, event: &PointerEvent) {
        let Some(mut drag) = self.drag.get_value() else { return };
        let by_touch = event.pointer_type() != "mouse";
        let (x, y) = (f64::from(event.client_x()) - drag.x, f64::from(event.client_y()) - drag.y);
        let along = self.towards.along(x, y, by_touch);
        if !drag.is_held {
            let across = if self.towards.is_upright() && !by_touch { x } else { y };
            if along.abs() < SLACK || along.abs() < across.abs() {
                return;
            }
            drag.is_held = true;
            self.drag.set_value(Some(drag));
            self.is_held.set(true);
            let target = event.current_target().and_then(|it| it.dyn_into::<HtmlElement>().ok());
            if let Some(target) = target {
                // Without capture the pull still works for as long as the pointer stays on it.
                let _ = target.set_pointer_capture(event.pointer_id());
                let _ = target.focus();
            }
        }
        event.prevent_default();
        let Some(scale) = self.scale() else { return };
        let step = bench_step(self.planner.units.get_untracked(), &scale);
        let position = scale.position(drag.from + along * drag.per_pixel);
        self.put((position as f64 / step as f64).round() as i64 * step, Some(self.hand));
    }

    /// A pointer goes up, or is taken away.
    pub fn let_go(self) {
        if self.drag.get_value().is_some() {
            self.drag.set_value(None);
            self.is_held.set(false);
            self.planner.history.let_go();
        }
    }

    /// A key. An arrow moves the face the way it points, so far as the bench steps, and with Shift
    /// by the finest step.
    pub fn press(self, event: &KeyboardEvent) {
        let Some(scale) = self.scale() else { return };
        let key = event.key();
        let direction = match (key.as_str(), self.towards) {
            ("ArrowRight", Towards::Left) | ("ArrowUp", Towards::Down) => -1,
            ("ArrowLeft", Towards::Left) | ("ArrowDown", Towards::Down) => 1,
            ("ArrowRight" | "ArrowUp" | "PageUp", _) => 1,
            ("ArrowLeft" | "ArrowDown" | "PageDown", _) => -1,
            ("Home" | "End", _) => 0,
            _ => return,
        };
        event.prevent_default();
        let now = scale.position(self.now());
        let step = bench_step(self.planner.units.get_untracked(), &scale);
        let to = match key.as_str() {
            "Home" => scale.lowest,
            "End" => scale.highest,
            _ if key.starts_with("Page") => now + direction * step * 5,
            _ if event.shift_key() => now + direction,
            _ => now + direction * step,
        };
        self.put(to, None);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Towards; 4] = [Towards::Right, Towards::Left, Towards::Down, Towards::Up];

    #[test]
    fn a_face_that_is_moved_so_far_is_foam_that_grew_so_far() {
        let steel = Point::new(2352.0, 400.0);
        for towards in ALL {
            for foam in [10.0, 63.0, 200.0] {
                let face = towards.from(steel, foam);
                assert_eq!(towards.along(face.x - steel.x, face.y - steel.y, false), foam);
            }
        }
    }

    #[test]
    fn a_finger_that_goes_up_or_down_pulls_nothing() {
        for towards in ALL {
            assert_eq!(towards.along(0.0, 120.0, true).abs(), 0.0, "{towards:?}");
        }
    }
}
