//! A dimension that is pulled: by pointer, by key, by a screen reader.

use std::rc::Rc;

use inchwise_core::design::Field;
use inchwise_core::units::Length;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, KeyboardEvent, PointerEvent};

use super::geometry::Point;
use crate::dom::El;
use crate::measure::Scale;
use crate::reactive::Watched;
use crate::state::State;

/// Which way the foam grows on the paper.
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
    pub const fn class(self) -> &'static str {
        match self {
            Self::Right => "grip towards-right",
            Self::Left => "grip towards-left",
            Self::Down => "grip towards-down",
            Self::Up => "grip towards-up",
        }
    }

    /// How far a movement on the screen goes the way the foam grows.
    pub fn along(self, x: f64, y: f64) -> f64 {
        match self {
            Self::Right => x,
            Self::Left => -x,
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

    pub const fn orientation(self) -> &'static str {
        match self {
            Self::Right | Self::Left => "horizontal",
            Self::Down | Self::Up => "vertical",
        }
    }
}

/// Millimetres that a screen pixel moves the face at most: on a small drawing the hand travels
/// further than the face, or a millimetre could not be hit.
const COARSEST: f64 = 2.0;

/// A drag that is going on.
#[derive(Clone, Copy)]
struct Drag {
    x: f64,
    y: f64,
    depth: f64,
    mm_per_pixel: f64,
}

/// The width of the paper an element lies on, in pixels.
fn paper_width(element: &Element) -> Option<f64> {
    let paper = element.closest(".paper").ok().flatten()?;
    Some(f64::from(paper.client_width())).filter(|&width| width > 0.0)
}

/// What is pulled, as its events see it.
#[derive(Clone)]
pub struct Pull {
    /// The choices it sets, all to the same length.
    pub fields: &'static [Field],
    /// The one of them it shows.
    pub field: Field,
    /// Which way the length grows.
    pub towards: Towards,
    /// Millimetres across the drawing's paper.
    pub paper_width: Rc<dyn Fn() -> f64>,
    /// Where the choices are.
    pub state: State,
    drag: Watched<Option<Drag>>,
}

impl Pull {
    /// Nobody pulls yet; none where there is nothing to set.
    pub fn new(
        fields: &'static [Field],
        towards: Towards,
        state: State,
        paper_width: Rc<dyn Fn() -> f64>,
    ) -> Option<Self> {
        let &field = fields.first()?;
        Some(Self { fields, field, towards, paper_width, state, drag: Watched::new(None) })
    }

    fn scale(&self) -> Scale {
        Scale::of(self.field, self.state.units.get_untracked())
    }

    fn depth(&self) -> f64 {
        self.state.chosen_untracked(|design| design.get(self.field).unwrap_or_default())
    }

    fn put(&self, position: i64) {
        let scale = self.scale();
        let chosen = scale.si(position.clamp(scale.lowest, scale.highest));
        if chosen != self.depth() {
            self.state.put_all(self.fields, Some(chosen));
        }
    }

    fn take(&self, whole: &El, event: &Event) {
        let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
        let tag = event.current_target().and_then(|target| target.dyn_into::<HtmlElement>().ok());
        let (Some(tag), 0) = (tag, pointer.button()) else { return };
        let Some(width) = paper_width(&tag) else { return };
        event.prevent_default();
        // Without capture the drag still works for as long as the pointer stays on the grip.
        let _ = tag.set_pointer_capture(pointer.pointer_id());
        let _ = tag.focus();
        whole.toggle("dragging", true);
        self.drag.set(Some(Drag {
            x: f64::from(pointer.client_x()),
            y: f64::from(pointer.client_y()),
            depth: self.depth(),
            mm_per_pixel: ((self.paper_width)() / width).min(COARSEST),
        }));
    }

    fn pull(&self, event: &Event) {
        let pointer = event.dyn_ref::<PointerEvent>();
        let (Some(pointer), Some(drag)) = (pointer, self.drag.get_untracked()) else { return };
        let (x, y) = (f64::from(pointer.client_x()), f64::from(pointer.client_y()));
        let moved = self.towards.along(x - drag.x, y - drag.y) * drag.mm_per_pixel;
        self.put(self.scale().position(drag.depth + Length::mm(moved).value()));
    }

    fn let_go(&self, whole: &El) {
        whole.toggle("dragging", false);
        self.drag.set(None);
    }

    fn nudge(&self, event: &Event) {
        let Some(press) = event.dyn_ref::<KeyboardEvent>() else { return };
        let (scale, now, key) = (self.scale(), self.depth(), press.key());
        // An arrow moves the face the way it points; the other two raise and lower.
        let direction = match (key.as_str(), self.towards) {
            ("ArrowRight", Towards::Left) | ("ArrowUp", Towards::Down) => -1,
            ("ArrowLeft", Towards::Left) | ("ArrowDown", Towards::Down) => 1,
            ("ArrowRight" | "ArrowUp" | "PageUp", _) => 1,
            ("ArrowLeft" | "ArrowDown" | "PageDown", _) => -1,
            ("Home" | "End", _) => 0,
            _ => return,
        };
        event.prevent_default();
        match key.as_str() {
            "Home" => self.put(scale.lowest),
            "End" => self.put(scale.highest),
            _ if press.shift_key() || key.starts_with("Page") => {
                self.put(scale.position(scale.moved(now, direction * scale.nudge)));
            }
            _ => self.put(scale.position(now) + direction),
        }
    }

    /// Makes a tag listen to pointer and keys; `whole` shows that it is held.
    pub fn listening(self, tag: El, whole: &El) -> El {
        let pull = Rc::new(self);
        let hear = |act: fn(&Self, &El, &Event)| {
            let (pull, whole) = (Rc::clone(&pull), whole.clone());
            move |event: Event| act(&pull, &whole, &event)
        };
        let mut tag = tag
            .on("pointerdown", hear(|pull, whole, event| pull.take(whole, event)))
            .on("pointermove", hear(|pull, _, event| pull.pull(event)))
            .on("keydown", hear(|pull, _, event| pull.nudge(event)));
        for end in ["pointerup", "pointercancel", "lostpointercapture"] {
            tag = tag.on(end, hear(|pull, whole, _| pull.let_go(whole)));
        }
        tag
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_face_that_is_moved_so_far_is_foam_that_grew_so_far() {
        let steel = Point::new(2352.0, 400.0);
        for towards in [Towards::Right, Towards::Left, Towards::Down, Towards::Up] {
            for foam in [10.0, 63.0, 200.0] {
                let face = towards.from(steel, foam);
                assert_eq!(towards.along(face.x - steel.x, face.y - steel.y), foam);
            }
        }
    }
}
