//! A foam face that can be taken hold of: by pointer, by key, by a screen reader.

use inchwise_core::design::{Design, Field, Stack, Surface};
use inchwise_core::units::Length;
use leptos::prelude::{Get, GetUntracked, GetValue, SetValue, StoredValue, WithUntracked, untrack};
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, KeyboardEvent, PointerEvent};

use super::geometry::{FoamFace, Point, Rect};
use crate::dom::{El, el};
use crate::kept::Kept;
use crate::measure::{Notation, Scale, plain};
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

    const fn orientation(self) -> &'static str {
        match self {
            Self::Right | Self::Left => "horizontal",
            Self::Down => "vertical",
        }
    }
}

/// One grip.
pub struct Grip {
    /// The planner it moves.
    pub state: State,
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
    /// The paper it lies on.
    pub paper: Kept<Rect>,
    /// Where the face lies for a foam depth, mm.
    pub at: Box<dyn Fn(f64) -> Point + Send + Sync>,
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

/// What a grip moves, as its events see it.
#[derive(Clone, Copy)]
struct Hold {
    state: State,
    fields: &'static [Field],
    field: Field,
    towards: Towards,
    paper: Kept<Rect>,
    drag: StoredValue<Option<Drag>>,
}

impl Hold {
    fn scale(self) -> Scale {
        Scale::of(self.field, self.state.units.get_untracked())
    }

    fn depth(self) -> f64 {
        self.state.design.with_untracked(|design| design.get(self.field).unwrap_or_default())
    }

    fn put(self, position: i64) {
        let scale = self.scale();
        let chosen = scale.si(position.clamp(scale.lowest, scale.highest));
        if chosen != self.depth() {
            self.state.put_all(self.fields, Some(chosen));
        }
    }

    fn take(self, grip: &El, event: &Event) {
        let Some(pointer) = event.dyn_ref::<PointerEvent>() else { return };
        let tag = event.current_target().and_then(|target| target.dyn_into::<HtmlElement>().ok());
        let (Some(tag), 0) = (tag, pointer.button()) else { return };
        let Some(width) = paper_width(&tag) else { return };
        event.prevent_default();
        // Without capture the drag still works for as long as the pointer stays on the grip.
        let _ = tag.set_pointer_capture(pointer.pointer_id());
        let _ = tag.focus();
        grip.toggle("dragging", true);
        self.drag.set_value(Some(Drag {
            x: f64::from(pointer.client_x()),
            y: f64::from(pointer.client_y()),
            depth: self.depth(),
            mm_per_pixel: (untrack(|| self.paper.get()).width() / width).min(COARSEST),
        }));
    }

    fn pull(self, event: &Event) {
        let (Some(pointer), Some(drag)) = (event.dyn_ref::<PointerEvent>(), self.drag.get_value())
        else {
            return;
        };
        let (x, y) = (f64::from(pointer.client_x()), f64::from(pointer.client_y()));
        let moved = self.towards.along(x - drag.x, y - drag.y) * drag.mm_per_pixel;
        self.put(self.scale().position(drag.depth + Length::mm(moved).value()));
    }

    fn let_go(self, grip: &El) {
        grip.toggle("dragging", false);
        self.drag.set_value(None);
    }

    fn nudge(self, event: &Event) {
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
}

impl Grip {
    /// The grip as drawn.
    pub fn drawn(self) -> El {
        let Self { state, key, fields, surface, towards, name, paper, at, with_note } = self;
        let grip = el("div").class(towards.class());
        let Some(&field) = fields.first() else { return grip };
        let depth = move || state.chosen(|design| design.get(field).unwrap_or_default());
        let stack = move || state.chosen(|design: &Design| design.stack(surface));
        let reading = move || state.notation().length(Length::new(depth()));
        let words = move || state.language.get().drawing();
        let cost = move || cost(&stack(), state.notation(), words());
        // How far the room lies from the foam, over the width of the drawing.
        let past = move || {
            let stack = stack();
            plain((stack.total() - stack.foam).as_mm() / paper.get().width(), 4, "")
        };
        let place = Kept::new(move || paper.get().percent(at(Length::new(depth()).as_mm())));
        let in_unit = move |position: fn(&Scale, f64) -> i64| {
            move || {
                let scale = Scale::of(field, state.units.get());
                plain(scale.step * position(&scale, depth()) as f64, 3, "")
            }
        };

        let hold = Hold { state, fields, field, towards, paper, drag: StoredValue::new(None) };
        let [taken, left, lost, cancelled] = [(); 4].map(|()| grip.clone());
        let plate = el("span")
            .class("plate")
            .child(&el("span").class("way back"))
            .child(&el("span").class("reading").text_with(reading))
            .child(&el("span").class("way on"));
        let tag = el("div")
            .class("tag")
            .attr("role", "slider")
            .attr("tabindex", "0")
            .test_id(&format!("grip-{key}"))
            .attr("aria-orientation", towards.orientation())
            .attr_with("aria-label", move || name(words()).to_owned())
            .attr_with("aria-valuemin", in_unit(|scale, _| scale.lowest))
            .attr_with("aria-valuemax", in_unit(|scale, _| scale.highest))
            .attr_with("aria-valuenow", in_unit(|scale, depth| scale.position(depth)))
            .attr_with("aria-valuetext", move || format!("{}, {}", reading(), cost()))
            .on("pointerdown", move |event| hold.take(&taken, &event))
            .on("pointermove", move |event| hold.pull(&event))
            .on("pointerup", move |_| hold.let_go(&left))
            .on("pointercancel", move |_| hold.let_go(&cancelled))
            .on("lostpointercapture", move |_| hold.let_go(&lost))
            .on("keydown", move |event| hold.nudge(&event))
            .child(&plate);
        let grip = grip
            .style_with("--past", past)
            .style_with("left", move || plain(place.get().0, 3, "%"))
            .style_with("top", move || plain(place.get().1, 3, "%"))
            .child(&el("span").class("lead").attr("aria-hidden", "true"))
            .child(&tag);
        if !with_note {
            return grip;
        }
        grip.child(&el("span").class("cost").attr("aria-hidden", "true").text_with(cost))
    }
}
