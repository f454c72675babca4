//! A ruler with a mark on it that is pulled along. What is free of room lies open on it, what takes
//! room is hatched.

use leptos::prelude::*;
use web_sys::Element;

use super::{Entry, Pull, Towards};
use crate::measure::plain;
use crate::state::Planner;

/// The ruler of an entry.
#[component]
pub fn Slider(
    /// What it sets.
    entry: Entry,
    /// Its name for checks in a browser, and the hand that moves it.
    hand: &'static str,
    /// From where on it takes room, in the unit that the entry is kept in.
    #[prop(into)]
    free_until: Signal<f64>,
    /// What is said beside the value.
    #[prop(into)]
    said: Signal<String>,
) -> impl IntoView {
    let planner = Planner::here();
    let pull = Pull::new(planner, entry, Towards::Right, hand);
    let ends = move || {
        let scale = entry.scale(planner.units.get());
        scale.map_or((0.0, 1.0), |scale| (scale.si(scale.lowest), scale.si(scale.highest)))
    };
    let share = move |si: f64| {
        let (lowest, highest) = ends();
        plain(((si - lowest) / (highest - lowest)).clamp(0.0, 1.0) * 100.0, 2, "%")
    };
    let shown = move || planner.inputs.with(|inputs| entry.shown(inputs)).unwrap_or_default();
    let in_unit = move |si: f64| {
        let scale = entry.scale(planner.units.get());
        scale.map_or_else(String::new, |scale| plain(scale.unit.of_si(si), 3, ""))
    };
    let per_pixel = move |element: &Element| {
        let width = element.get_bounding_client_rect().width();
        let (lowest, highest) = untrack(ends);
        (width > 0.0).then(|| (highest - lowest) / width)
    };
    let told = move || {
        let notation = planner.notation();
        [&entry.said(shown(), notation), ", ", &said.get()].concat()
    };
    view! {
        <div
            class="ruler"
            class:held=move || pull.is_held.get()
            role="slider"
            tabindex="0"
            data-testid=["slider-", hand].concat()
            aria-label=move || entry.label(planner.language.get())
            aria-valuemin=move || in_unit(ends().0)
            aria-valuemax=move || in_unit(ends().1)
            aria-valuenow=move || in_unit(shown())
            aria-valuetext=told
            on:pointerdown=move |event| pull.take(&event, per_pixel)
            on:pointermove=move |event| pull.pull(&event)
            on:pointerup=move |_| pull.let_go()
            on:pointercancel=move |_| pull.let_go()
            on:keydown=move |event| pull.press(&event)
            style:--at=move || share(shown())
            style:--free=move || share(free_until.get())
        >
            <span class="scale" aria-hidden="true">{""}</span>
            <span class="taken" aria-hidden="true">{""}</span>
            <span class="mark" aria-hidden="true">{""}</span>
        </div>
    }
}
