//! The months of the year as a table.

use inchwise_core::year::{Costs, Period, YearChoices};
use leptos::prelude::*;

use super::figures::{energy, money};
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::Disclosure;

/// The table, made only while it is open.
#[component]
pub fn Months() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().year();
    let heading = Signal::derive(move || words().as_table.to_owned());
    let rows = move || {
        let notation = planner.notation();
        let choices = planner.inputs.with(|inputs| inputs.year.clone());
        let Some(answer) = planner.year.get() else { return Vec::new() };
        let months = answer.months.iter().zip(notation.language.months());
        months.map(|(month, name)| row(month, name, &choices, notation)).collect()
    };
    let heads =
        move || words().columns.map(|name| view! { <th scope="col">{name}</th> }).collect_view();
    view! {
        <Disclosure test_id="year-table" heading>
            <p class="hint">{words().table_note}</p>
            <div class="scrolled" tabindex="0" role="region" aria-label=words().as_table>
                <table>
                    <thead><tr>{heads}</tr></thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </Disclosure>
    }
}

fn row(month: &Period, name: &'static str, choices: &YearChoices, notation: Notation) -> AnyView {
    let cost = Costs::of(choices, &month.energy).heating;
    let hours = |count: u32| [&notation.count(f64::from(count)), "\u{a0}h"].concat();
    let cells = [
        energy(month.energy.heat(), notation),
        cost.map_or_else(|| "–".to_owned(), |cost| money(cost, choices, notation)),
        hours(month.frost_hours),
        hours(month.drip_hours),
        hours(month.too_warm_hours),
        hours(month.unmet_hours),
    ];
    let cells = cells.map(|cell| view! { <td class="number">{cell}</td> }).collect_view();
    view! { <tr><th scope="row">{name}</th>{cells}</tr> }.into_any()
}
