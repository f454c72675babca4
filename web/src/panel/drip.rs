//! Will it drip? The answer, always in sight. What the use makes of the room's air is told further
//! down, by what is loaded behind.

use crate::dom::{El, el};
use crate::reactive::keep_up;
use crate::state::{Outcome, State};
use crate::text::Language;

/// How humid the room may be and where it is weakest, and what its own humidity does. While
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

/// The verdict of this room, and the sentence of the limit.
fn answer(outcome: &Outcome, notation: crate::measure::Notation) -> [String; 2] {
    let words = notation.language.drip();
    let evaluation = outcome.best();
    let weakest = evaluation.cold_spots.weakest();
    let Some((weakest, balance)) = weakest.zip(outcome.balance()) else {
        return Default::default();
    };
    let verdict = &balance.humidity.verdict;
    let stands = words.stands.with(&[
        &notation.temperature(evaluation.cold_spots.outdoor),
        &notation.percent(weakest.limit.drip.value().min(1.0)),
        &notation.language.spot(weakest.place),
    ]);
    let worst = verdict.at_risk().next();
    let phrase = worst.map_or(words.stays_dry, |place| words.comes_to(place.risk, place.freezes));
    let place = worst.map(|place| notation.language.spot(place.place)).unwrap_or_default();
    [phrase.with(&[&notation.percent(verdict.design_day.value()), &place]), stands]
}
