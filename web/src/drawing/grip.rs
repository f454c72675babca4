//! A foam face that can be taken hold of: by pointer, by key, by a screen reader.

use inchwise_core::design::{Design, Field, Stack, Surface};
use inchwise_core::units::Length;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, KeyboardEvent, PointerEvent};

use super::geometry::{FoamFace, Point, Rect, numbers, percent};
use super::slot::Slot;
use crate::dom::{El, el};
use crate::measure::{Notation, Scale};
use crate::reactive::{Watched, keep_up};
use crate::state::State;
use crate::text::DrawingWords;

/// Which way the foam grows on the paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Towards {
    /// To the right.
    Right,
    /// To the left.
    Left,
    /// Downwards.
    Down,
}

impl Towards {
    const fn class(self) -> &'static str {
        match self {
            Self::Right => "grip towards-right",
            Self::Left => "grip towards-left",
            Self::Down => "grip towards-down",
        }
    }

    /// How far a movement on the screen goes the way the foam grows.
    fn along(self, x: f64, y: f64) -> f64 {
        match self {
            Self::Right => x,
            Self::Left => -x,
            Self::Down => y,
        }
    }

    /// The face of foam that grew so far from a point.
    const fn from(self, steel: Point, foam: f64) -> Point {
        match self {
            Self::Right => Point::new(steel.x + foam, steel.y),
            Self::Left => Point::new(steel.x - foam, steel.y),
            Self::Down => Point::new(steel.x, steel.y + foam),
        }
    }

    const fn orientation(self) -> &'static str {
        match self {
            Self::Right | Self::Left => "horizontal",
            Self::Down => "vertical",
        }
    }
}

/// Where a grip takes hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hold {
    /// The drawing's paper.
    pub paper: Rect,
    /// Where the face would lie without any foam.
    pub at: Point,
}

/// One grip.
#[derive(Clone, Copy)]
pub struct Grip {
    /// For tests.
    pub key: &'static str,
    /// The choices it sets, all to the same depth; the first is the one it shows.
    pub fields: &'static [Field],
    /// Whose foam it is.
    pub surface: Surface,
    /// Which way the foam grows.
    pub towards: Towards,
    /// Its name.
    pub name: fn(&DrawingWords) -> &'static str,
    /// Where it takes hold in a design.
    pub hold: fn(&Design) -> Hold,
    /// Whether it says beside it what the foam costs.
    pub with_note: bool,
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

/// What the foam costs at this depth.
fn cost(stack: &Stack, notation: Notation, words: &DrawingWords) -> String {
    // Less than half a step of what is shown reads as nothing.
    const NOTHING: f64 = 0.5;
    let past = FoamFace::of(stack).past_frame();
    if stack.brought_in > Length::ZERO {
        words.hides_castings.with(&[&notation.length(stack.air_gap())])
    } else if past > NOTHING {
        words.past_frame.with(&[&notation.length(Length::mm(past))])
    } else if past < -NOTHING {
        words.still_free.with(&[&notation.length(Length::mm(-past))])
    } else {
        words.at_frame.to_owned()
    }
}

/// The width of the paper an element lies on, in pixels.
fn paper_width(element: &Element) -> Option<f64> {
    let paper = element.closest(".paper").ok().flatten()?;
    Some(f64::from(paper.client_width())).filter(|&width| width > 0.0)
}

/// A grip as its events see it.
#[derive(Clone, Copy)]
struct Held {
    grip: Grip,
    field: Field,
    state: State,
    drag: Watched<Option<Drag>>,
}

impl Held {
    fn scale(self) -> Scale {
        Scale::of(self.field, self.state.units.get_untracked())
    }

    fn depth(self) -> f64 {
        self.state.chosen_untracked(|design| design.get(self.field).unwrap_or_default())
    }

    fn put(self, position: i64) {
        let scale = self.scale();
        let chosen = scale.si(position.clamp(scale.lowest, scale.highest));
        if chosen != self.depth() {
            self.state.put_all(self.grip.fields, Some(chosen));
        }
    }

    fn take(self, whole: &El, event: &Event) {
        let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
        let tag = event.current_target().and_then(|target| target.dyn_into::<HtmlElement>().ok());
        let (Some(tag), 0) = (tag, pointer.button()) else { return };
        let Some(width) = paper_width(&tag) else { return };
        event.prevent_default();
        // Without capture the drag still works for as long as the pointer stays on the grip.
        let _ = tag.set_pointer_capture(pointer.pointer_id());
        let _ = tag.focus();
        whole.toggle("dragging", true);
        let paper = self.state.chosen_untracked(|design| (self.grip.hold)(design).paper);
        self.drag.set(Some(Drag {
            x: f64::from(pointer.client_x()),
            y: f64::from(pointer.client_y()),
            depth: self.depth(),
            mm_per_pixel: (paper.width() / width).min(COARSEST),
        }));
    }

    fn pull(self, event: &Event) {
        let pointer = event.dyn_ref::<PointerEvent>();
        let (Some(pointer), Some(drag)) = (pointer, self.drag.get_untracked()) else { return };
        let (x, y) = (f64::from(pointer.client_x()), f64::from(pointer.client_y()));
        let moved = self.grip.towards.along(x - drag.x, y - drag.y) * drag.mm_per_pixel;
        self.put(self.scale().position(drag.depth + Length::mm(moved).value()));
    }

    fn let_go(self, whole: &El) {
        whole.toggle("dragging", false);
        self.drag.set(None);
    }

    fn nudge(self, event: &Event) {
        let Some(press) = event.dyn_ref::<KeyboardEvent>() else { return };
        let (scale, now, key) = (self.scale(), self.depth(), press.key());
        // An arrow moves the face the way it points; the other two raise and lower.
        let direction = match (key.as_str(), self.grip.towards) {
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

    /// Listens to pointer and keys.
    fn listening(self, tag: El, whole: &El) -> El {
        let taken = whole.clone();
        let mut tag = tag
            .on("pointerdown", move |event| self.take(&taken, &event))
            .on("pointermove", move |event| self.pull(&event))
            .on("keydown", move |event| self.nudge(&event));
        for end in ["pointerup", "pointercancel", "lostpointercapture"] {
            let left = whole.clone();
            tag = tag.on(end, move |_| self.let_go(&left));
        }
        tag
    }
}

impl Grip {
    /// The grip as drawn.
    pub fn drawn(self, state: State) -> El {
        let whole = el("div").class(self.towards.class());
        let Some(&field) = self.fields.first() else { return whole };
        let held = Held { grip: self, field, state, drag: Watched::new(None) };
        let reading = el("span").class("reading");
        let note = el("span").class("cost").attr("aria-hidden", "true");
        let plate = el("span").class("plate").with(&[
            el("span").class("way back"),
            reading.clone(),
            el("span").class("way on"),
        ]);
        let tag = el("div")
            .class("tag")
            .attr("role", "slider")
            .attr("tabindex", "0")
            .test_id(&["grip-", self.key].concat())
            .attr("aria-orientation", self.towards.orientation())
            .child(&plate);
        let tag = held.listening(tag, &whole);
        let lead = el("span").class("lead").attr("aria-hidden", "true");
        let whole = whole.with(&[lead, tag.clone()]);
        let whole = if self.with_note { whole.child(&note) } else { whole };
        self.keep_up(state, field, &whole, &tag, reading, note);
        whole
    }

    fn keep_up(self, state: State, field: Field, whole: &El, tag: &El, reading: El, note: El) {
        let [mut left, mut top, mut past] =
            ["left", "top", "--past"].map(|name| Slot::style(whole.clone(), name));
        let [mut label, mut least, mut most, mut now, mut told] =
            ["aria-label", "aria-valuemin", "aria-valuemax", "aria-valuenow", "aria-valuetext"]
                .map(|name| Slot::attribute(tag.clone(), name));
        let (mut reading, mut note) = (Slot::text(reading), Slot::text(note));
        keep_up(Box::new(move || {
            let notation = state.notation();
            let words = notation.language.drawing();
            let scale = Scale::of(field, notation.units);
            let in_unit = |position: i64| numbers(&[scale.step * position as f64]);
            state.chosen(|design: &Design| {
                let depth = design.get(field).unwrap_or_default();
                let stack = design.stack(self.surface);
                let hold = (self.hold)(design);
                let face = self.towards.from(hold.at, Length::new(depth).as_mm());
                let (x, y) = hold.paper.percent(face);
                left.write(percent(x));
                top.write(percent(y));
                // How far the room lies from the foam, in hundredths of the drawing's width.
                let gap = (stack.total() - stack.foam).as_mm() / hold.paper.width();
                past.write(numbers(&[gap * 100.0]));
                let read = notation.length(Length::new(depth));
                let cost = cost(&stack, notation, words);
                label.write((self.name)(words).to_owned());
                least.write(in_unit(scale.lowest));
                most.write(in_unit(scale.highest));
                now.write(in_unit(scale.position(depth)));
                told.write([read.as_str(), &cost].join(", "));
                reading.write(read);
                note.write(cost);
            });
        }));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;
    use crate::text::Language;

    #[test]
    fn a_face_that_is_moved_so_far_is_foam_that_grew_so_far() {
        let steel = Point::new(2352.0, 400.0);
        for towards in [Towards::Right, Towards::Left, Towards::Down] {
            for foam in [10.0, 63.0, 200.0] {
                let face = towards.from(steel, foam);
                assert_eq!(towards.along(face.x - steel.x, face.y - steel.y), foam);
            }
        }
    }

    #[test]
    fn what_foam_costs_is_said_on_either_side_of_the_frame() {
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        let words = Language::English.drawing();
        let said = |mm: f64| {
            let design = Design { side_wall_foam: Length::mm(mm), ..Design::default() };
            cost(&design.stack(Surface::SideWall), notation, words)
        };
        // Stand-off 22 and stud 41 put the frame's face at 63 mm.
        assert_eq!(said(50.0), "up to the frame: 13\u{a0}mm more is free");
        assert_eq!(said(63.0), "at the frame’s face: still free");
        assert_eq!(said(75.0), "past the frame: takes 12\u{a0}mm of room");
    }
}
