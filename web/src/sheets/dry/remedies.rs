//! What helps most: changes tried on the engine, each with what it leaves and a button that does it.

use inchwise_core::design::{Design, EndWallTreatment, Field};
use inchwise_core::moisture::Remedy;
use leptos::prelude::*;

use crate::bench::{changes, damp_short, step_words};
use crate::state::{Change, Headline, Inputs, Planner, Risk};

/// Changes that are shown.
const SHOWN: usize = 4;

/// Adds so much to a number of a design, at the end of its range at the latest.
fn add(design: &mut Design, field: Field, by: f64) {
    let range = field.range();
    let now = design.get(field).unwrap_or(range.minimum);
    design.set(field, Some((now + by).min(range.maximum).max(range.minimum)));
}

/// How a remedy is carried out on a design: the changes that are worth trying.
fn carried_out(remedy: Remedy, design: &Design) -> Vec<Design> {
    const INCH: f64 = 0.025;
    let with = |change: &dyn Fn(&mut Design)| {
        let mut other = design.clone();
        change(&mut other);
        other
    };
    let more = |field, by| with(&move |design| add(design, field, by));
    match remedy {
        Remedy::CoverCastings if design.end_wall_treatment == EndWallTreatment::LeaveBare => {
            vec![with(&|it| it.end_wall_treatment = EndWallTreatment::CoverCastings)]
        }
        Remedy::CoverCastings => vec![more(Field::CastingCover, INCH)],
        Remedy::HoldStudsOff => vec![more(Field::StudStandOff, INCH)],
        Remedy::HoldJoistsOff => vec![more(Field::JoistStandOff, INCH)],
        Remedy::PadBrackets => vec![more(Field::BracketPad, 0.012)],
        Remedy::InsulateFloor => {
            vec![more(Field::FloorFoamOver, INCH), more(Field::FloorFoamUnder, 2.0 * INCH)]
        }
        Remedy::PackOpeningFrames => vec![more(Field::OpeningFrameFoam, INCH)],
        Remedy::InsulateDampers => Vec::new(),
        Remedy::DeepenFoam => vec![with(&|it| {
            for field in
                [Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam]
            {
                add(it, field, INCH);
            }
        })],
        Remedy::BetterDoor => vec![more(Field::DoorTransmittance, -0.6)],
        Remedy::BetterWindows => vec![more(Field::WindowTransmittance, -0.8)],
    }
}

/// What is tried on the present design: each remedy by itself, then the first of each together.
fn tried(planner: Planner) -> Vec<Design> {
    let mut remedies: Vec<Remedy> = Vec::new();
    planner.spots.with(|spots| {
        for (spot, risk) in spots.iter().filter_map(|spot| spot.known) {
            if risk != Risk::Dry && !remedies.contains(&spot.remedy()) {
                remedies.push(spot.remedy());
            }
        }
    });
    planner.design.with(|design| {
        let mut tried: Vec<Design> = Vec::new();
        let mut together = design.clone();
        for remedy in remedies {
            if let Some(first) = carried_out(remedy, &together).into_iter().next() {
                together = first;
            }
            tried.extend(carried_out(remedy, design));
        }
        if tried.len() > 1 {
            tried.push(together);
        }
        tried.retain(|other| other != design && other.check().is_ok());
        tried
    })
}

/// One change that was tried.
#[derive(Clone, PartialEq)]
struct Help {
    design: Design,
    headline: Headline,
}

/// Worse first: frost, then drips, then mould.
fn badness(headline: &Headline) -> (usize, usize, usize) {
    headline.verdict().map_or((usize::MAX, 0, 0), |it| (it.frost, it.drip, it.mould))
}

/// The list.
#[component]
pub fn Helps() -> impl IntoView {
    let planner = Planner::here();
    let designs = Memo::new(move |before: Option<&Vec<Design>>| {
        // While fields are missing nobody knows what is to be mended.
        match before {
            Some(before) if !planner.is_whole() => before.clone(),
            _ => tried(planner),
        }
    });
    planner.variations.ask(move || {
        let designs = designs.get();
        designs.into_iter().enumerate().map(|(n, it)| (Change::Remedy(n), it)).collect()
    });
    let is_dry = move || planner.headline.get().verdict().is_some_and(|it| it.wet_places() == 0);
    let is_done = move || {
        let count = designs.with(Vec::len);
        (0..count)
            .all(|n| planner.variations.of(&Change::Remedy(n)).is_none_or(|it| it.solved.is_some()))
    };
    let helps = Memo::new(move |_| {
        let now = planner.headline.get();
        if now.solved.is_none() {
            return Vec::new();
        }
        let mut helps: Vec<Help> = designs.with(|designs| {
            let found = designs.iter().enumerate().filter_map(|(n, design)| {
                let headline = planner.variations.of(&Change::Remedy(n))?;
                headline.solved?;
                Some(Help { design: design.clone(), headline })
            });
            found.filter(|help| badness(&help.headline) < badness(&now)).collect()
        });
        helps.sort_by_key(|help| badness(&help.headline));
        helps.truncate(SHOWN);
        helps
    });
    let row = move |help: Help| {
        let notation = planner.notation();
        let words = notation.language.sheets();
        let now = planner.headline.get();
        let named = names(planner, &help.design);
        let mut said = changes(&help.headline, &now, notation);
        if let Some(verdict) = help.headline.verdict() {
            let left = damp_short(&verdict, notation);
            said.retain(|part| *part != left);
            said.push(words.leaves.with(&[&left]));
        }
        let design = help.design;
        view! {
            <li>
                <b>{named}</b>
                <small>{said.join(", ")}</small>
                <button type="button" class="do" data-testid="do-it"
                    on:click=move |_| planner.choose(|now| *now = design.clone())
                >
                    {words.do_it}
                </button>
            </li>
        }
    };
    let rows = move || helps.get().into_iter().map(row).collect_view();
    let said = move || {
        let words = planner.language.get().sheets();
        if is_dry() {
            words.nothing_to_help
        } else if !planner.is_whole() || !is_done() {
            planner.language.get().bench().working
        } else if helps.with(Vec::is_empty) {
            words.no_help
        } else {
            ""
        }
    };
    view! {
        <ul class="helps">{rows}</ul>
        <p class="hint" role="status" data-testid="helps-said">{said}</p>
    }
}

/// What a design changes, change by change.
fn names(planner: Planner, design: &Design) -> String {
    let notation = planner.notation();
    let now = planner.inputs.get();
    let differs = |field: &&Field| now.design.get(**field) != design.get(**field);
    let fields: Vec<Field> = Field::ALL.iter().filter(differs).copied().collect();
    let mut parts: Vec<Inputs> = Vec::new();
    for field in fields {
        let mut part = now.clone();
        part.design.set(field, design.get(field));
        parts.push(part);
    }
    if now.design.end_wall_treatment != design.end_wall_treatment {
        let mut part = now.clone();
        part.design.end_wall_treatment = design.end_wall_treatment;
        parts.push(part);
    }
    let said: Vec<String> = parts.iter().map(|part| step_words(&now, part, notation)).collect();
    said.join(" + ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::CheckedDesign;
    use inchwise_core::units::Length;

    #[test]
    fn every_remedy_that_is_tried_changes_something_and_is_lawful() {
        let design = CheckedDesign::default().design().clone();
        for remedy in [
            Remedy::CoverCastings,
            Remedy::HoldStudsOff,
            Remedy::HoldJoistsOff,
            Remedy::PadBrackets,
            Remedy::InsulateFloor,
            Remedy::PackOpeningFrames,
            Remedy::DeepenFoam,
            Remedy::BetterDoor,
            Remedy::BetterWindows,
        ] {
            for other in carried_out(remedy, &design) {
                assert_ne!(other, design, "{remedy:?}");
                assert!(other.check().is_ok(), "{remedy:?}");
            }
        }
    }

    #[test]
    fn nothing_is_moved_past_the_end_of_its_range() {
        let mut design = Design { bracket_pad: Length::mm(24.0), ..Design::default() };
        add(&mut design, Field::BracketPad, 0.012);
        assert_eq!(design.get(Field::BracketPad), Some(Field::BracketPad.range().maximum));
    }
}
