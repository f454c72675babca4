//! What to mind: all warnings in two groups, and short notes where they apply.

use inchwise_core::caution::{Caution, RoomMinimum};
use inchwise_core::evaluate::Evaluation;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement};

use crate::dom::{El, el};
use crate::measure::{Notation, UnitSystem};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

/// Whether a warning is about sizes and damp rather than about working safely.
const fn is_about_sizes(caution: Caution) -> bool {
    matches!(
        caution,
        Caution::PlanningAid
            | Caution::NominalSizes
            | Caution::ThinFoamForVapour
            | Caution::BareCastings
            | Caution::BareCastingsBehindLining
            | Caution::WetUse
            | Caution::FrameTouchesSteel
            | Caution::BareOpeningFrames
            | Caution::BelowRoomMinimum(_)
    )
}

/// A warning's heading and words.
fn written(caution: Caution, evaluation: &Evaluation, notation: Notation) -> (String, String) {
    let language = notation.language;
    if let Some(words) = language.warning(caution) {
        return (words.heading.to_owned(), words.body.to_owned());
    }
    match caution {
        Caution::BelowRoomMinimum(minimum) => below_minimum(minimum, evaluation, notation),
        other => (other.key().to_owned(), String::new()),
    }
}

fn below_minimum(
    minimum: RoomMinimum,
    evaluation: &Evaluation,
    notation: Notation,
) -> (String, String) {
    let language = notation.language;
    let words = language.cautions();
    let imperial = Notation { units: UnitSystem::Imperial, language }.length(minimum.least());
    let metric = Notation { units: UnitSystem::Metric, language }.length(minimum.least());
    // The figure the text itself prints stands first.
    let least = if minimum == RoomMinimum::OntarioLivingHeight {
        format!("{metric} ({imperial})")
    } else {
        format!("{imperial} ({metric})")
    };
    let body = words.below_minimum.with(&[
        language.minimum_text(minimum),
        language.minimum_place(minimum),
        &least,
        language.minimum_use(minimum),
        &notation.length(minimum.has(&evaluation.room)),
    ]);
    (words.below_minimum_heading.with(&[&least]), body)
}

/// All warnings.
pub fn cautions(state: State, language: Language) -> El {
    let words = language.cautions();
    let group = move |heading, about_sizes: bool| {
        let list = el("ul").rows_with(["li", "strong", "span"], move || {
            let notation = state.notation();
            state.look(|outcome| listed(&outcome.good, about_sizes, notation))
        });
        el("div").with(&[el("h4").text(heading), list])
    };
    let groups =
        el("div").class("groups").with(&[group(words.sizes, true), group(words.safety, false)]);
    el("section")
        .class("cautions")
        .test_id("cautions")
        .attr("tabindex", "-1")
        .attr("aria-label", words.title)
        .with(&[el("h3").text(words.title), groups])
}

fn listed(evaluation: &Evaluation, about_sizes: bool, notation: Notation) -> Vec<[String; 2]> {
    let of_group = |caution: &&Caution| is_about_sizes(**caution) == about_sizes;
    let cautions = evaluation.cautions.iter().filter(of_group);
    cautions
        .map(|&caution| {
            let (heading, body) = written(caution, evaluation, notation);
            [heading, body]
        })
        .collect()
}

/// A short note that leads to a warning, where and while it applies.
pub fn note(state: State, language: Language, caution: Caution) -> El {
    let Some(words) = language.warning(caution) else { return el("span") };
    let note = el("button")
        .attr("type", "button")
        .class("mind")
        .text(&language.cautions().see_below.with(&[words.heading]))
        .on("click", |event| {
            if let Some(place) = warnings_near(&event) {
                place.scroll_into_view();
                let _ = place.focus();
            }
        });
    let shown = note.clone();
    keep_up(Box::new(move || {
        let applies = state.look(|outcome| outcome.good.cautions.contains(&caution));
        shown.flag("hidden", !applies);
    }));
    note
}

/// The warnings of the planner that an event happened in.
fn warnings_near(event: &Event) -> Option<HtmlElement> {
    let note: Element = event.current_target()?.dyn_into().ok()?;
    let planner = note.closest(".planner").ok()??;
    planner.query_selector(".cautions").ok()??.dyn_into().ok()
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::CheckedDesign;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;

    use super::*;

    #[test]
    fn a_room_minimum_names_edition_place_and_both_figures() {
        let evaluation = evaluate(&CheckedDesign::default(), &mut FieldCache::default());
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        let minimum = RoomMinimum::IrcHabitableHeight;
        let (heading, body) = below_minimum(minimum, &evaluation, notation);
        assert_eq!(heading.replace('\u{a0}', " "), "Below 7′ 0″ (2,134 mm)");
        assert_eq!(
            body.replace('\u{a0}', " "),
            "International Residential Code 2021, R305.1 (United States) asks 7′ 0″ (2,134 mm) for \
             the height of habitable rooms; this room has 2,289 mm. Your local authority decides."
        );
    }

    #[test]
    fn every_warning_that_can_arise_has_words_in_both_languages() {
        for language in Language::ALL {
            let notation = Notation { units: UnitSystem::Imperial, language };
            let evaluation = evaluate(&CheckedDesign::default(), &mut FieldCache::default());
            for &caution in &evaluation.cautions {
                let (heading, body) = written(caution, &evaluation, notation);
                assert!(!heading.is_empty() && !body.is_empty(), "{caution:?} {language:?}");
            }
        }
    }
}
