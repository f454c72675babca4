//! What to mind: all warnings, in two groups.

use inchwise_core::caution::{Caution, RoomMinimum};
use inchwise_core::evaluate::Evaluation;
use leptos::prelude::*;

use super::super::part::words;
use crate::measure::{Notation, UnitSystem};
use crate::state::Planner;
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
#[component]
pub fn Cautions() -> impl IntoView {
    let planner = Planner::here();
    let list = move |about_sizes: bool| {
        move || {
            let notation = planner.notation();
            planner.look(|evaluation| {
                let of_group = |caution: &&Caution| is_about_sizes(**caution) == about_sizes;
                let cautions = evaluation.cautions.iter().filter(of_group);
                cautions
                    .map(|&caution| {
                        let (heading, body) = written(caution, evaluation, notation);
                        view! { <li><strong>{heading}</strong> {" "} <span>{body}</span></li> }
                    })
                    .collect_view()
            })
        }
    };
    let heading = move |say: fn(Language) -> &'static str| words(planner, say);
    view! {
        <section class="cautions part" data-testid="cautions">
            <h3>{heading(|language| language.cautions().title)}</h3>
            <h4>{heading(|language| language.cautions().sizes)}</h4>
            <ul>{list(true)}</ul>
            <h4>{heading(|language| language.cautions().safety)}</h4>
            <ul>{list(false)}</ul>
        </section>
    }
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
