//! The list of cold places. Signs and words say what becomes of each without colour.

use inchwise_core::moisture::SpotPlace;
use leptos::prelude::*;

use crate::state::{Planner, Risk, Spot, pictured};
use crate::ui::Disclosure;

/// Places that stand in sight.
const COLDEST: usize = 5;

/// The list.
#[component]
pub fn SpotList() -> impl IntoView {
    let planner = Planner::here();
    // Until every field is solved the places stand in the order of before, so that nothing jumps.
    let order = Memo::new(move |before: Option<&Vec<SpotPlace>>| {
        planner.spots.with(|spots| {
            let all: Vec<SpotPlace> = spots.iter().map(|spot| spot.place).collect();
            match before {
                Some(before) if !planner.is_whole() => {
                    let stays = before.iter().filter(|place| all.contains(place)).copied();
                    let mut order: Vec<SpotPlace> = stays.collect();
                    let fresh = all.iter().filter(|place| !before.contains(place));
                    order.extend(fresh.copied());
                    order
                }
                _ => all,
            }
        })
    });
    let first = move || order.with(|order| order.iter().take(COLDEST).copied().collect::<Vec<_>>());
    let rest = move || order.with(|order| order.iter().skip(COLDEST).copied().collect::<Vec<_>>());
    let all = Signal::derive(move || {
        let notation = planner.notation();
        let count = order.with(Vec::len) as f64;
        notation.language.sheets().all_places.with(&[&notation.count(count)])
    });
    view! {
        <ol class="spot-list" data-testid="spot-list">
            <For each=first key=|place| *place children=|place| view! { <Row place/> }/>
        </ol>
        <Disclosure test_id="all-spots" heading=all>
            <ol class="spot-list">
                <For each=rest key=|place| *place children=|place| view! { <Row place/> }/>
            </ol>
        </Disclosure>
    }
}

/// A sign for each risk, read by nobody but those who see it.
const fn sign(risk: Risk) -> &'static str {
    match risk {
        Risk::Frost => "❄",
        Risk::Drip => "●",
        Risk::Mould => "◌",
        Risk::Dry => "✓",
    }
}

/// One place.
#[component]
fn Row(place: SpotPlace) -> impl IntoView {
    let planner = Planner::here();
    let spot = Memo::new(move |_| {
        planner.spots.with(|spots| spots.iter().find(|spot| spot.place == place).copied())
    });
    let with =
        move |at: fn(&Spot) -> String| spot.with(|it| it.as_ref().map(at).unwrap_or_default());
    let number = move || with(|spot| spot.number.map_or_else(String::new, |it| it.to_string()));
    let surface = move || {
        let notation = planner.notation();
        let known = spot.with(|it| it.as_ref().and_then(|it| it.known));
        known.map_or_else(
            || "…".to_owned(),
            |(spot, _)| notation.temperature_finely(spot.surface_temperature),
        )
    };
    let risk = move || {
        let words = planner.language.get().spots();
        let known = spot.with(|it| it.as_ref().and_then(|it| it.known));
        known.map_or_else(
            || words.waiting.to_owned(),
            |(_, risk)| {
                let word = match risk {
                    Risk::Frost => words.frosts,
                    Risk::Drip => words.drips,
                    Risk::Mould => words.moulds,
                    Risk::Dry => words.stays_dry,
                };
                [sign(risk), " ", word].concat()
            },
        )
    };
    let is_dry = move || {
        spot.with(|it| it.as_ref().and_then(|it| it.known).is_none_or(|(_, it)| it == Risk::Dry))
    };
    let pictured = Memo::new(move |_| planner.look(|evaluation| pictured(evaluation, place)));
    let stands = move || {
        let notation = planner.notation();
        let words = notation.language.spots();
        let known = spot.with(|it| it.as_ref().and_then(|it| it.known))?;
        let limit = |share: f64| notation.percent(share.min(1.0));
        let limits = known.0.limit;
        Some(
            [
                words.mould_from,
                " ",
                &limit(limits.mould.value()),
                ", ",
                &words.drips_from.to_lowercase(),
                " ",
                &limit(limits.drip.value()),
            ]
            .concat(),
        )
    };
    let is_looked_at =
        move || pictured.get().is_some() && planner.looked_at.get() == pictured.get();
    let show = move |_| {
        if let Some(place) = pictured.get_untracked() {
            planner.view.cut.set(0);
            planner.view.spot.set(Some(place));
        }
    };
    view! {
        <li data-testid=["spot-", place.key()].concat()>
            <button
                type="button"
                class="spot"
                aria-pressed=move || is_looked_at().to_string()
                disabled=move || pictured.get().is_none()
                on:click=show
            >
                <span class="round">{number}</span>
                <span class="spot-place">{move || planner.language.get().spot_name(place)}</span>
                <b>{surface}</b>
                <span class="risk" class:is-dry=is_dry>{risk}</span>
                <span class="stands">{stands}</span>
            </button>
        </li>
    }
}
