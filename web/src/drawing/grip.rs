//! A foam face that can be taken hold of: by pointer, by key, by a screen reader.

use std::rc::Rc;

use inchwise_core::design::{Design, Field, Stack, Surface};
use inchwise_core::units::Length;

use super::geometry::{FoamFace, Point, Rect, numbers, percent};
use super::pull::{Pull, Towards};
use super::slot::Slot;
use crate::dom::{El, el};
use crate::measure::{Notation, Scale};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::DrawingWords;

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

impl Grip {
    /// The grip as drawn.
    pub fn drawn(self, state: State) -> El {
        let whole = el("div").class(self.towards.class());
        let paper_width =
            move || state.chosen_untracked(|design| (self.hold)(design).paper.width());
        let pull = Pull::new(self.fields, self.towards, state, Rc::new(paper_width));
        let Some(pull) = pull else { return whole };
        let field = pull.field;
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
        let tag = pull.listening(tag, &whole);
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
