//! A choice among named options.

use leptos::prelude::*;

use crate::state::{Inputs, Planner};
use crate::text::Language;

/// A choice among named options.
#[derive(Clone, Copy)]
pub struct Choice {
    /// Its name in the page, without spaces.
    pub key: &'static str,
    /// What is chosen.
    pub label: fn(Language) -> &'static str,
    /// The options in the order they are shown: stable names and words.
    pub options: fn(Language) -> Vec<(&'static str, &'static str)>,
    /// The stable name of the option that is chosen.
    pub chosen: fn(&Inputs) -> &'static str,
    /// Chooses the option of a stable name; an unknown name changes nothing.
    pub choose: fn(&mut Inputs, &str),
}

/// A choice of the design whose options are the variants of a type, by its name in the design.
macro_rules! chooser {
    ($key:literal, $place:ident, $options:ty, $label:expr, $words:expr) => {
        $crate::ui::Choice {
            key: $key,
            label: $label,
            options: |language| {
                let name: fn($crate::text::Language, $options) -> &'static str = $words;
                <$options>::ALL.iter().map(|&it| (it.key(), name(language, it))).collect()
            },
            chosen: |inputs| inputs.design.$place.key(),
            choose: |inputs, key| {
                if let Some(option) = <$options>::from_key(key) {
                    inputs.design.$place = option;
                }
            },
        }
    };
}
pub(crate) use chooser;

/// A list to choose from.
#[component]
pub fn Select(
    /// The choice.
    choice: Choice,
) -> impl IntoView {
    let planner = Planner::here();
    let chosen = Memo::new(move |_| planner.inputs.with(choice.chosen));
    let options = move || {
        let language = planner.language.get();
        let option = |(key, words): (&'static str, &'static str)| {
            let is_chosen = move || chosen.get() == key;
            view! { <option value=key selected=is_chosen>{words}</option> }
        };
        (choice.options)(language).into_iter().map(option).collect_view()
    };
    view! {
        <div class="field choice">
            <label for=choice.key>{move || (choice.label)(planner.language.get())}</label>
            <select
                id=choice.key
                data-testid=["control-", choice.key].concat()
                prop:value=move || chosen.get()
                on:change=move |event| {
                    let key = event_target_value(&event);
                    planner.change(None, |inputs| (choice.choose)(inputs, &key));
                }
            >
                {options}
            </select>
        </div>
    }
}
