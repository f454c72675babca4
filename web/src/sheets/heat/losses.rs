//! Where the heat goes: each part of the loss, the largest first, with how it comes about.

use inchwise_core::heat_loss::{Element, Loss};
use leptos::prelude::*;

use super::reckoning::reckoning;
use crate::measure::plain;
use crate::state::Planner;

/// Parts below this share are put together.
const SMALL: f64 = 0.02;

/// The table.
#[component]
pub fn Losses() -> impl IntoView {
    let planner = Planner::here();
    let with_small = RwSignal::new(false);
    let words = move || planner.language.get().losses();
    let losses = Memo::new(move |_| {
        let mut losses = planner.look(|evaluation| evaluation.heat_loss.losses.clone());
        losses.sort_by(|a, b| b.share.total_cmp(&a.share));
        if planner.is_whole() { losses } else { Vec::new() }
    });
    let shown = move || {
        let with_small = with_small.get();
        losses.with(|losses| {
            let large = losses.iter().filter(|loss| with_small || loss.share >= SMALL);
            large.map(|loss| loss.element).collect::<Vec<_>>()
        })
    };
    let small = move || {
        losses.with(|losses| {
            losses.iter().filter(|loss| loss.share < SMALL).copied().collect::<Vec<_>>()
        })
    };
    let small_name = move || {
        let notation = planner.notation();
        words().small.with(&[&notation.count(small().len() as f64), &notation.percent(SMALL)])
    };
    let together = move || {
        let power = small().iter().map(|loss| loss.power.value()).sum();
        planner.notation().part_of_load(inchwise_core::units::Power::new(power))
    };
    let share = move || planner.notation().percent(small().iter().map(|loss| loss.share).sum());
    let total = move || {
        let load = planner.headline.get().load();
        load.map(|load| planner.notation().part_of_load(load))
    };
    let waits = move || (!planner.is_whole()).then(|| planner.language.get().sheets().waits);
    let left_out = move || {
        let language = planner.language.get();
        planner.look(|evaluation| {
            let parts = evaluation.heat_loss.not_counted.iter();
            parts.map(|&part| view! { <li>{language.not_counted(part)}</li> }).collect_view()
        })
    };
    view! {
        <p class="hint" role="status">{waits}</p>
        <table class="losses">
            <thead>
                <tr>
                    <th scope="col">{move || words().part}</th>
                    <th scope="col" class="number">{move || words().loss}</th>
                    <th scope="col" class="number" colspan="2">{move || words().share}</th>
                </tr>
            </thead>
            <tbody>
                <For each=shown key=|element| *element
                    children=move |element| view! { <Row element losses/> }
                />
            </tbody>
            <tfoot>
                <tr>
                    <th scope="row">
                        <button type="button" class="plain" data-testid="small-losses"
                            aria-expanded=move || with_small.get().to_string()
                            on:click=move |_| with_small.update(|with| *with = !*with)
                        >{small_name}</button>
                    </th>
                    <td class="number">{together}</td>
                    <td class="number">{share}</td>
                    <td>{""}</td>
                </tr>
                <tr class="total">
                    <th scope="row">{move || words().total}</th>
                    <td class="number" data-testid="losses-total">{total}</td>
                    <td colspan="2">{""}</td>
                </tr>
            </tfoot>
        </table>
        <h4>{move || words().not_counted}</h4>
        <p class="hint">{move || words().not_counted_note}</p>
        <ul class="not-counted hint">{left_out}</ul>
    }
}

/// One part.
#[component]
fn Row(element: Element, losses: Memo<Vec<Loss>>) -> impl IntoView {
    let planner = Planner::here();
    let is_open = RwSignal::new(false);
    let loss = Memo::new(move |_| {
        losses.with(|losses| losses.iter().find(|loss| loss.element == element).copied())
    });
    let largest = move || losses.with(|losses| losses.first().map_or(1.0, |loss| loss.share));
    let how = move || {
        let notation = planner.notation();
        let loss = if is_open.get() { loss.get() } else { None }?;
        let how = planner.look(|evaluation| reckoning(evaluation, &loss, notation));
        let behind = how.behind.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
        Some(view! { <p class="formula">{how.formula}</p> <ul>{behind}</ul> })
    };
    let toggle = move |event: leptos::ev::Event| {
        let details: web_sys::Element = event_target(&event);
        is_open.set(details.has_attribute("open"));
    };
    let share = move || loss.get().map_or(0.0, |loss| loss.share);
    view! {
        <tr>
            <th scope="row">
                <details on:toggle=toggle>
                    <summary>
                        {move || planner.language.get().element(element)} {"\u{a0}"}
                        <span class="how">{move || planner.language.get().losses().how}</span>
                    </summary>
                    <div class="working">{how}</div>
                </details>
            </th>
            <td class="number">
                {move || loss.get().map(|loss| planner.notation().part_of_load(loss.power))}
            </td>
            <td class="number">{move || planner.notation().percent(share())}</td>
            <td class="share-bar" aria-hidden="true">
                <span style:inline-size=move || {
                    plain((share() / largest()).max(0.0) * 100.0, 1, "%")
                }>{""}</span>
            </td>
        </tr>
    }
}
