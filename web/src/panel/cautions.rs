//! What to mind: all warnings in two groups, and short notes where they apply.

use inchwise_core::caution::{Caution, RoomMinimum};
use inchwise_core::evaluate::Evaluation;
use leptos::html;
use leptos::prelude::*;

use crate::measure::{Notation, UnitSystem};
use crate::state::State;
use crate::text::Language;

/// The place of the warnings on the page, so that a note can lead there.
pub type See = NodeRef<html::Section>;

/// Whether a warning is about sizes and damp rather than about working safely.
const fn is_about_sizes(caution: Caution) -> bool {
    matches!(
        caution,
        Caution::PlanningAid
            | Caution::NominalSizes
            | Caution::ThinFoamForVapour
            | Caution::BareCastings
            | Caution::FrameTouchesSteel
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
pub fn cautions(state: State, language: Language, place: See) -> AnyView {
    let words = language.cautions();
    let list = move |about_sizes: bool| {
        move || {
            let notation = state.notation();
            state.outcome.with(|outcome| {
                let good = &outcome.good;
                good.cautions
                    .iter()
                    .filter(|&&caution| is_about_sizes(caution) == about_sizes)
                    .map(|&caution| {
                        let (heading, body) = written(caution, good, notation);
                        view! {
                            <li>
                                <strong>{heading}</strong>
                                <span>{body}</span>
                            </li>
                        }
                    })
                    .collect_view()
            })
        }
    };
    view! {
        <section class="cautions" data-testid="cautions" tabindex="-1" node_ref=place aria-label=words.title>
            <h3>{words.title}</h3>
            <div class="groups">
                <div>
                    <h4>{words.sizes}</h4>
                    <ul>{list(true)}</ul>
                </div>
                <div>
                    <h4>{words.safety}</h4>
                    <ul>{list(false)}</ul>
                </div>
            </div>
        </section>
    }
    .into_any()
}

/// A short note that leads to a warning, where and while it applies.
pub fn note(state: State, language: Language, caution: Caution, see: See) -> AnyView {
    let Some(words) = language.warning(caution) else { return ().into_any() };
    let applies = move || state.outcome.with(|outcome| outcome.good.cautions.contains(&caution));
    view! {
        <button
            type="button"
            class="mind"
            hidden=move || !applies()
            on:click=move |_| {
                if let Some(section) = see.get_untracked() {
                    section.scroll_into_view();
                    let _ = section.focus();
                }
            }
        >
            {language.cautions().see_below.with(&[words.heading])}
        </button>
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::CheckedDesign;
    use inchwise_core::detail::DetailMemory;
    use inchwise_core::evaluate::evaluate;

    use super::*;

    #[test]
    fn a_room_minimum_names_edition_place_and_both_figures() {
        let evaluation = evaluate(&CheckedDesign::default(), &mut DetailMemory::default());
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
            let evaluation = evaluate(&CheckedDesign::default(), &mut DetailMemory::default());
            for &caution in &evaluation.cautions {
                let (heading, body) = written(caution, &evaluation, notation);
                assert!(!heading.is_empty() && !body.is_empty(), "{caution:?} {language:?}");
            }
        }
    }
}
