//! Where the heat goes: one table, largest first, every figure with its reckoning.

use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_loss::{Element, Loss};
use leptos::prelude::*;

use super::figure::figure;
use super::reckoning::reckoning;
use crate::measure::{Notation, decimal};
use crate::state::State;
use crate::text::Language;

/// Losses in the order they are read.
fn largest_first(evaluation: &Evaluation) -> Vec<Loss> {
    let mut losses = evaluation.heat_loss.losses.clone();
    losses.sort_by(|a, b| b.power.value().total_cmp(&a.power.value()));
    losses
}

/// The table and what it leaves out.
pub fn losses(state: State, language: Language) -> AnyView {
    let words = language.losses();
    // Rows change places as shares change: what is open goes with the element, not with the row.
    let open = RwSignal::new(None::<Element>);
    let rows = move || {
        let notation = state.notation();
        state.outcome.with(|outcome| {
            largest_first(&outcome.good)
                .into_iter()
                .map(|loss| row(state, loss, notation, open))
                .collect_view()
        })
    };
    let left_out = move || {
        state.outcome.with(|outcome| {
            outcome
                .good
                .heat_loss
                .not_counted
                .iter()
                .map(|&part| view! { <li>{language.not_counted(part)}</li> })
                .collect_view()
        })
    };
    view! {
        <section class="losses" data-testid="losses" aria-label=words.title>
            <h3>{words.title}</h3>
            <table>
                <thead>
                    <tr>
                        <th scope="col">{words.part}</th>
                        <th scope="col" class="number">{words.loss}</th>
                        <th scope="col" class="number" colspan="2">{words.share}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{words.total}</th>
                        <td class="number">{figure(state, total)}</td>
                        <td class="number" colspan="2"></td>
                    </tr>
                </tfoot>
            </table>
            <h4>{words.not_counted}</h4>
            <p class="note">{words.not_counted_note}</p>
            <ul class="not-counted">{left_out}</ul>
        </section>
    }
    .into_any()
}

fn total(evaluation: &Evaluation, notation: Notation) -> String {
    notation.part_of_load(evaluation.heat_loss.design_load)
}

fn row(
    state: State,
    loss: Loss,
    notation: Notation,
    open: RwSignal<Option<Element>>,
) -> impl IntoView {
    let language = notation.language;
    let element = loss.element;
    let is_open = move || open.get() == Some(element);
    let how = move || {
        is_open().then(|| {
            state.outcome.with(|outcome| {
                let how = reckoning(&outcome.good, &loss, notation);
                let behind = how.behind.into_iter().map(|line| view! { <li>{line}</li> });
                view! {
                    <p class="formula">{how.formula}</p>
                    <ul>{behind.collect_view()}</ul>
                }
            })
        })
    };
    let bar = format!("{}%", decimal(loss.share * 100.0, 1, Language::English));
    view! {
        <tr>
            <th scope="row">
                <details
                    prop:open=is_open
                    on:toggle:target=move |event| {
                        if event.target().has_attribute("open") {
                            open.set(Some(element));
                        } else if open.get_untracked() == Some(element) {
                            open.set(None);
                        }
                    }
                >
                    <summary>
                        {language.element(element)}
                        " "
                        <span class="how">{language.losses().how}</span>
                    </summary>
                    {how}
                </details>
            </th>
            <td class="number">{notation.part_of_load(loss.power)}</td>
            <td class="number">{notation.percent(loss.share)}</td>
            <td class="bar" aria-hidden="true">
                <span style:inline-size=bar></span>
            </td>
        </tr>
    }
}
