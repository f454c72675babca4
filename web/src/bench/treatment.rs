//! The treatment of the castings: each with what it would change, tried on the engine.

use inchwise_core::design::EndWallTreatment;
use leptos::prelude::*;

use super::{changes, damp_short};
use crate::state::{Change, Planner};

/// The choice of treatment.
#[component]
pub fn Treatment() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().controls();
    planner.variations.ask(move || {
        let design = planner.design.get();
        let others = EndWallTreatment::ALL.iter().filter(|it| **it != design.end_wall_treatment);
        let others = others.map(|&treatment| {
            let mut other = design.clone();
            other.end_wall_treatment = treatment;
            (Change::Treatment(treatment), other)
        });
        others.collect()
    });
    let options =
        EndWallTreatment::ALL.iter().map(|&treatment| view! { <Card treatment/> }).collect_view();
    view! {
        <fieldset class="treatment" data-testid="control-treatment">
            <legend>{move || words().treatment}</legend>
            <div class="cards">{options}</div>
        </fieldset>
    }
}

/// One treatment.
#[component]
fn Card(treatment: EndWallTreatment) -> impl IntoView {
    let planner = Planner::here();
    let is_chosen =
        Memo::new(move |_| planner.design.with(|design| design.end_wall_treatment == treatment));
    let said = move || {
        let notation = planner.notation();
        let words = notation.language.bench();
        let now = planner.headline.get();
        if is_chosen.get() {
            let mut said = Vec::new();
            if let Some(load) = now.load() {
                said.push(notation.load(load));
            }
            if let Some(verdict) = now.verdict() {
                said.push(damp_short(&verdict, notation));
            }
            return said;
        }
        match planner.variations.of(&Change::Treatment(treatment)) {
            None => vec![words.does_not_fit.to_owned()],
            Some(to) => {
                let mut said = changes(&to, &now, notation);
                if to.solved.is_none() {
                    said.push("…".to_owned());
                }
                said
            }
        }
    };
    let said = move || said().into_iter().map(|part| view! { <span>{part}</span> }).collect_view();
    view! {
        <label class="card" class:chosen=move || is_chosen.get()>
            <input
                type="radio"
                name="end_wall_treatment"
                value=treatment.key()
                data-testid=["treatment-", treatment.key()].concat()
                prop:checked=move || is_chosen.get()
                on:change=move |_| planner.choose(|design| design.end_wall_treatment = treatment)
            />
            <span class="card-name">{move || planner.language.get().treatment(treatment)}</span>
            <span class="card-said">{said}</span>
        </label>
    }
}
