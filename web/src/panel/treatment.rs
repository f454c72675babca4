//! The treatment of the castings: each with what it would cost here.

use inchwise_core::design::EndWallTreatment;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::room::Room;
use inchwise_core::units::Volume;

use super::figure::figure;
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

/// What a treatment would cost, in one line.
fn consequence(evaluation: &Evaluation, treatment: EndWallTreatment, notation: Notation) -> String {
    let words = notation.language.controls();
    let rooms = &evaluation.rooms_by_treatment;
    let Some((_, room)) = rooms.iter().find(|(other, _)| *other == treatment) else {
        return words.does_not_fit.to_owned();
    };
    let cost = room.casting_cost();
    if treatment == EndWallTreatment::LeaveBare {
        let bare = room.front_corner.bare_steel || room.door_corner.bare_steel;
        return if bare { words.bare_steel } else { words.bare_behind_lining }.to_owned();
    }
    if cost.volume <= Volume::ZERO {
        return words.nothing_stands_out.to_owned();
    }
    let volume = notation.volume(cost.volume);
    match treatment {
        EndWallTreatment::BuildOutEndWalls => {
            words.costs_length.with(&[&notation.length_change(-cost.length), &volume])
        }
        EndWallTreatment::DropCeiling => {
            words.costs_height.with(&[&notation.length_change(-cost.height), &volume])
        }
        EndWallTreatment::CoverCastings | EndWallTreatment::LeaveBare => {
            corner_boxes(room, &volume, notation)
        }
    }
}

fn corner_boxes(room: &Room, all: &str, notation: Notation) -> String {
    let words = notation.language.controls();
    let (front, door) = (room.front_corner, room.door_corner);
    let one = notation.dimensions(&front.size);
    match (front.stands_out(), door.stands_out()) {
        (true, true) if front.size == door.size => {
            words.corner_boxes.with(&[&one, &notation.volume(front.volume())])
        }
        (true, true) => {
            words.corner_boxes_two_sizes.with(&[&one, &notation.dimensions(&door.size), all])
        }
        (true, false) => words.corner_boxes_one_end.with(&[&one, all]),
        _ => words.corner_boxes_one_end.with(&[&notation.dimensions(&door.size), all]),
    }
}

/// The choice of treatment.
pub fn treatment(state: State, language: Language) -> El {
    let words = language.controls();
    let options: Vec<El> =
        EndWallTreatment::ALL.iter().map(|&treatment| option(state, language, treatment)).collect();
    el("fieldset")
        .class("treatment")
        .test_id("control-treatment")
        .with(&[
            el("legend").text(words.treatment),
            el("p").class("hint").text(words.treatment_hint),
        ])
        .with(&options)
        .child(&el("p").class("remark").text_with(figure(state, hidden_from)))
}

fn option(state: State, language: Language, treatment: EndWallTreatment) -> El {
    let button = el("input")
        .attr("type", "radio")
        .attr("name", "end_wall_treatment")
        .attr("value", treatment.key())
        .test_id(&format!("treatment-{}", treatment.key()))
        .on("change", move |_| state.choose(|design| design.end_wall_treatment = treatment));
    let shown = button.clone();
    keep_up(Box::new(move || {
        let chosen = state.chosen(|design| design.end_wall_treatment == treatment);
        shown.property("checked", &chosen.into());
    }));
    let line = move || {
        let notation = state.notation();
        state.look(|outcome| consequence(&outcome.good, treatment, notation))
    };
    el("label").class("option").with(&[
        button,
        el("span").class("option-name").text(language.treatment(treatment)),
        el("span").class("consequence").text_with(line),
    ])
}

/// From where on there is nothing to choose.
fn hidden_from(evaluation: &Evaluation, notation: Notation) -> String {
    let words = notation.language.controls();
    let hidden = &evaluation.room.castings_hidden_from;
    if hidden.hidden_already {
        return words.hidden_already.to_owned();
    }
    words.hidden_from.with(&[&notation.length(hidden.ceiling), &notation.length(hidden.side_wall)])
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::{CheckedDesign, Design};
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;
    use inchwise_core::units::Length;

    use super::*;
    use crate::measure::UnitSystem;

    fn lines(design: &CheckedDesign) -> Vec<String> {
        let evaluation = evaluate(design, &mut FieldCache::default());
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        EndWallTreatment::ALL
            .iter()
            .map(|&t| consequence(&evaluation, t, notation).replace('\u{a0}', " "))
            .collect()
    }

    #[test]
    fn each_treatment_says_what_it_costs() {
        let lines = lines(&CheckedDesign::default());
        // Castings 116 and 80 past the ends, 119 past the sides, 90 below the roof; 50 of cover;
        // frame faces 63 in, 89 under the roof. Front end 116 + 50 − 63 = 103, door end 80 + 50 −
        // 63 = 67; together 170. Ceiling 90 + 50 − 89 = 51.
        assert!(
            lines[0].starts_with("corner boxes 103 × 106 × 51 mm and 67 × 106 × 51 mm"),
            "{lines:?}"
        );
        assert!(lines[1].starts_with("−170 mm length, "), "{lines:?}");
        assert!(lines[2].starts_with("−51 mm headroom, "), "{lines:?}");
        // Joists 89 under the roof and 12 of lining reach past the casting's 90.
        assert_eq!(lines[3], "behind the lining, with no foam cover of its own");
    }

    #[test]
    fn castings_that_stand_out_bare_are_told_of() {
        let shallow = Design {
            joist_depth: Length::mm(25.0),
            joist_stand_off: Length::mm(10.0),
            ceiling_foam: Length::mm(35.0),
            ..Design::default()
        };
        let lines = lines(&shallow.check().expect("lawful"));
        assert_eq!(lines[3], "bare steel in the room: it will frost and drip");
    }

    #[test]
    fn nothing_is_lost_where_nothing_is_left_to_hide() {
        let deep = Design { ceiling_foam: Length::mm(150.0), ..Design::default() };
        let lines = lines(&deep.check().expect("lawful"));
        assert_eq!(lines[0], "nothing stands out, no room lost");
        assert_eq!(lines[2], "nothing stands out, no room lost");
    }
}
