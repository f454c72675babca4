//! A dimension that can be taken hold of on a drawing: by pointer, by key, by a screen reader.

use inchwise_core::design::{Design, Stack, Surface};
use inchwise_core::units::Length;
use leptos::prelude::*;
use web_sys::Element;

use super::geometry::{FoamFace, Point, Rect, numbers, percent};
use crate::measure::Notation;
use crate::state::Planner;
use crate::text::DrawingWords;
use crate::ui::{Entry, Pull, Towards};

/// Where a grip takes hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hold {
    /// The drawing's paper.
    pub paper: Rect,
    /// Where the face would lie without any foam.
    pub at: Point,
}

/// A grip on a foam face.
#[derive(Clone, Copy)]
pub struct Grip {
    /// The hand that moves it; its name for tests.
    pub hand: &'static str,
    /// What it sets.
    pub entry: Entry,
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

/// Where a grip stands: to the right and down in per cent of the paper, and how far its tag stands
/// off, in hundredths of the paper's width.
pub type Standing = (f64, f64, f64);

/// A tag with its lead and a note, however it was come by.
pub struct Tag {
    /// What it sets.
    pub entry: Entry,
    /// The hand that moves it.
    pub hand: &'static str,
    /// Its name for tests.
    pub test_id: String,
    /// Which way the length grows.
    pub towards: Towards,
    /// What it is called.
    pub name: Signal<String>,
    /// What is said beside it.
    pub note: Option<Signal<String>>,
    /// Where it stands; nowhere while the picture does not show it.
    pub standing: Signal<Option<Standing>>,
    /// Millimetres across the paper.
    pub paper_width: Signal<f64>,
}

/// What the foam costs at this depth.
pub fn cost(stack: &Stack, notation: Notation) -> String {
    // Less than half a step of what is shown reads as nothing.
    const NOTHING: f64 = 0.5;
    let words = notation.language.drawing();
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

impl Grip {
    /// The grip as drawn.
    pub fn drawn(self, planner: Planner) -> AnyView {
        let hold = self.hold;
        let depth =
            move || planner.inputs.with(|inputs| self.entry.shown(inputs)).unwrap_or_default();
        let standing = move || {
            planner.design.with(|design| {
                let stack = design.stack(self.surface);
                let hold = hold(design);
                let face = self.towards.from(hold.at, Length::new(depth()).as_mm());
                let (x, y) = hold.paper.percent(face);
                // How far the room lies from the foam, in hundredths of the drawing's width.
                let gap = (stack.total() - stack.foam).as_mm() / hold.paper.width();
                Some((x, y, gap * 100.0))
            })
        };
        let said = Signal::derive(move || {
            let notation = planner.notation();
            planner.design.with(|design| cost(&design.stack(self.surface), notation))
        });
        Tag {
            entry: self.entry,
            hand: self.hand,
            test_id: ["grip-", self.hand].concat(),
            towards: self.towards,
            name: Signal::derive(move || (self.name)(planner.language.get().drawing()).to_owned()),
            note: self.with_note.then_some(said),
            standing: Signal::derive(standing),
            paper_width: Signal::derive(move || {
                planner.design.with(|design| hold(design).paper.width())
            }),
        }
        .drawn(planner)
    }
}

impl Tag {
    /// The tag on the page.
    pub fn drawn(self, planner: Planner) -> AnyView {
        let Self { entry, hand, test_id, towards, name, note, standing, paper_width } = self;
        let pull = Pull::new(planner, entry, towards, hand);
        let per_pixel = move |element: &Element| {
            crate::ui::per_pixel_of_paper(element, paper_width.get_untracked())
        };
        let shown = move || planner.inputs.with(|inputs| entry.shown(inputs)).unwrap_or_default();
        let read = move || entry.said(shown(), planner.notation());
        let in_unit = move |si: f64| {
            let scale = entry.scale(planner.units.get());
            scale.map_or_else(String::new, |scale| numbers(&[scale.unit.of_si(si)]))
        };
        let end = move |highest: bool| {
            let scale = entry.scale(planner.units.get());
            let at = |scale: &crate::measure::Scale| {
                scale.si(if highest { scale.highest } else { scale.lowest })
            };
            in_unit(scale.as_ref().map_or(0.0, at))
        };
        let told = move || match note {
            Some(note) => [read().as_str(), ", ", &note.get()].concat(),
            None => read(),
        };
        let at = move |which: fn(Standing) -> f64| {
            standing.get().map_or_else(String::new, |it| percent(which(it)))
        };
        let past = move || standing.get().map_or_else(String::new, |(_, _, past)| numbers(&[past]));
        view! {
            <div
                class=towards.class()
                class:dragging=move || pull.is_held.get()
                hidden=move || standing.get().is_none()
                style:left=move || at(|(x, _, _)| x)
                style:top=move || at(|(_, y, _)| y)
                style:--past=past
            >
                <span class="lead" aria-hidden="true">{""}</span>
                <div
                    class="tag"
                    role="slider"
                    tabindex="0"
                    data-testid=test_id
                    aria-orientation=towards.orientation()
                    aria-label=move || name.get()
                    aria-valuemin=move || end(false)
                    aria-valuemax=move || end(true)
                    aria-valuenow=move || in_unit(shown())
                    aria-valuetext=told
                    on:pointerdown=move |event| pull.take(&event, per_pixel)
                    on:pointermove=move |event| pull.pull(&event)
                    on:pointerup=move |_| pull.let_go()
                    on:pointercancel=move |_| pull.let_go()
                    on:keydown=move |event| pull.press(&event)
                >
                    <span class="plate">
                        <span class="way back">{""}</span>
                        <span class="reading">{read}</span>
                        <span class="way on">{""}</span>
                    </span>
                </div>
                {note.map(|note| view! {
                    <span class="cost" aria-hidden="true">{move || note.get()}</span>
                })}
            </div>
        }
        .into_any()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;
    use crate::text::Language;

    #[test]
    fn what_foam_costs_is_said_on_either_side_of_the_frame() {
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        let said = |mm: f64| {
            let design = Design { side_wall_foam: Length::mm(mm), ..Design::default() };
            cost(&design.stack(Surface::SideWall), notation)
        };
        // Stand-off 22 and stud 41 put the frame's face at 63 mm.
        assert_eq!(said(50.0), "up to the frame: 13\u{a0}mm more is free");
        assert_eq!(said(63.0), "at the frame’s face: still free");
        assert_eq!(said(75.0), "past the frame: takes 12\u{a0}mm of room");
    }
}
