//! A foam face that can be taken hold of: by pointer, by key, by a screen reader.

use inchwise_core::design::{Design, Field, Stack, Surface};
use inchwise_core::units::Length;
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use super::geometry::{FoamFace, Point, Rect};
use crate::measure::{Notation, Scale};
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
    pub paper: Memo<Rect>,
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
        words.hides_castings.to_owned()
    } else if past > NOTHING {
        words.past_frame.with(&[&notation.length(Length::mm(past))])
    } else if past < -NOTHING {
        words.still_free.with(&[&notation.length(Length::mm(-past))])
    } else {
        words.at_frame.to_owned()
    }
}

/// The width of the paper an element lies on, in pixels.
fn paper_width(element: &web_sys::Element) -> Option<f64> {
    let paper = element.closest(".paper").ok().flatten()?;
    Some(f64::from(paper.client_width())).filter(|&width| width > 0.0)
}

impl Grip {
    /// The grip as drawn.
    pub fn drawn(self) -> AnyView {
        let Self { state, key, fields, surface, towards, name, paper, at, with_note } = self;
        let Some(&field) = fields.first() else { return ().into_any() };
        let scale = move || Scale::of(field, state.units.get());
        let depth = move || state.design.with(|design| design.get(field).unwrap_or_default());
        let depth_now =
            move || state.design.with_untracked(|design| design.get(field).unwrap_or_default());
        let words = move || state.language.get().drawing();
        let reading = move || state.notation().length(Length::new(depth()));
        let cost = move || {
            let stack = state.design.with(|design: &Design| design.stack(surface));
            cost(&stack, state.notation(), words())
        };
        let put = move |position: i64| {
            let scale = Scale::of(field, state.units.get_untracked());
            let chosen = scale.si(position.clamp(scale.lowest, scale.highest));
            if chosen != depth_now() {
                state.put_all(fields, Some(chosen));
            }
        };

        let drag = RwSignal::new(None::<Drag>);
        let take = move |event: ev::PointerEvent| {
            let element = event
                .current_target()
                .and_then(|target| target.dyn_into::<web_sys::HtmlElement>().ok());
            let (Some(element), 0) = (element, event.button()) else { return };
            let Some(width) = paper_width(&element) else { return };
            event.prevent_default();
            // Without capture the drag still works for as long as the pointer stays on the grip.
            let _ = element.set_pointer_capture(event.pointer_id());
            let _ = element.focus();
            drag.set(Some(Drag {
                x: f64::from(event.client_x()),
                y: f64::from(event.client_y()),
                depth: depth_now(),
                mm_per_pixel: (paper.get_untracked().width() / width).min(COARSEST),
            }));
        };
        let pull = move |event: ev::PointerEvent| {
            let Some(drag) = drag.get_untracked() else { return };
            let (x, y) = (f64::from(event.client_x()), f64::from(event.client_y()));
            let moved = towards.along(x - drag.x, y - drag.y) * drag.mm_per_pixel;
            let wanted = drag.depth + Length::mm(moved).value();
            put(Scale::of(field, state.units.get_untracked()).position(wanted));
        };
        let let_go = move |_: ev::PointerEvent| drag.set(None);
        let nudge = move |event: ev::KeyboardEvent| {
            let scale = Scale::of(field, state.units.get_untracked());
            let now = depth_now();
            let direction = match event.key().as_str() {
                "ArrowRight" if towards == Towards::Left => -1,
                "ArrowLeft" if towards == Towards::Left => 1,
                "ArrowUp" if towards == Towards::Down => -1,
                "ArrowDown" if towards == Towards::Down => 1,
                "ArrowRight" | "ArrowUp" | "PageUp" => 1,
                "ArrowLeft" | "ArrowDown" | "PageDown" => -1,
                "Home" | "End" => 0,
                _ => return,
            };
            event.prevent_default();
            let far = event.shift_key() || event.key().starts_with("Page");
            match event.key().as_str() {
                "Home" => put(scale.lowest),
                "End" => put(scale.highest),
                _ if far => put(scale.position(scale.moved(now, direction * scale.nudge))),
                _ => put(scale.position(now) + direction),
            }
        };

        let place = Memo::new(move |_| {
            let point = at(Length::new(depth()).as_mm());
            paper.get().percent(point)
        });
        let note = with_note
            .then(|| view! { <span class="note" aria-hidden="true">{cost}</span> }.into_any());
        let in_unit = move |position: i64| scale().step * position as f64;
        view! {
            <div
                class=towards.class()
                class:dragging=move || drag.with(Option::is_some)
                style:left=move || format!("{:.3}%", place.get().0)
                style:top=move || format!("{:.3}%", place.get().1)
            >
                <span class="lead" aria-hidden="true"></span>
                <div
                    class="tag"
                    role="slider"
                    tabindex="0"
                    data-testid=format!("grip-{key}")
                    aria-label=move || name(words())
                    aria-orientation=towards.orientation()
                    aria-valuemin=move || in_unit(scale().lowest)
                    aria-valuemax=move || in_unit(scale().highest)
                    aria-valuenow=move || in_unit(scale().position(depth()))
                    aria-valuetext=move || format!("{}, {}", reading(), cost())
                    on:pointerdown=take
                    on:pointermove=pull
                    on:pointerup=let_go
                    on:pointercancel=let_go
                    on:lostpointercapture=let_go
                    on:keydown=nudge
                >
                    <span class="plate">
                        <span class="way back" aria-hidden="true"></span>
                        <span class="reading">{reading}</span>
                        <span class="way on" aria-hidden="true"></span>
                    </span>
                </div>
                {note}
            </div>
        }
        .into_any()
    }
}
