//! Will it drip? The answer, always in sight. What the use makes of the room's air is told further
//! down, by what is loaded behind.

use crate::dom::{El, el};
use crate::reactive::keep_up;
use crate::state::{Outcome, State};
use crate::text::Language;

/// How humid the room may be and where it is weakest, and what the humidity to be held does. While
/// fields are being solved the last answer stands, and says that it is about to change.
pub fn drip(state: State, language: Language) -> El {
    let words = language.drip();
    let [verdict, limit] = [el("b"), el("span")];
    let line = el("p")
        .class("drip")
        .test_id("answer-drip")
        .child(&el("span").class("question").text(words.question))
        .text(" ")
        .child(&verdict)
        .text(" ")
        .child(&limit);
    let whole = line.clone();
    let mut shown = [String::new(), language.answer().working.to_owned()];
    let mut written: Option<[String; 2]> = None;
    keep_up(Box::new(move || {
        let notation = state.notation();
        let refining = state.look(Outcome::is_refining);
        if !refining {
            shown = state.look(|outcome| answer(outcome, notation));
        }
        whole.toggle("refining", refining);
        let [judged, mut stands] = shown.clone();
        if refining {
            stands.push(' ');
            stands.push_str(notation.language.answer().refining);
        }
        let now = [judged, stands];
        if written.as_ref() != Some(&now) {
            verdict.say(&now[0]);
            limit.say(&now[1]);
            written = Some(now);
        }
    }));
    line.class_with("stands-in", move || state.stands_in())
}

/// The verdict at the humidity that is to be held, and the sentence of the limit.
fn answer(outcome: &Outcome, notation: crate::measure::Notation) -> [String; 2] {
    let words = notation.language.drip();
    let evaluation = &outcome.good;
    let Some(weakest) = evaluation.cold_spots.weakest() else { return Default::default() };
    let stands = words.stands.with(&[
        &notation.temperature(evaluation.cold_spots.outdoor),
        &notation.percent(weakest.limit.mould.value()),
        &notation.language.spot(weakest.place),
    ]);
    let held = evaluation.checked.design().target_humidity;
    let phrase = words.comes_to(weakest.limit.risk(held), weakest.frosts());
    [phrase.with(&[&notation.percent(held.value())]), stands]
}
