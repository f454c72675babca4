//! A choice among named options.

use inchwise_core::design::Design;
use leptos::prelude::*;

use crate::state::State;

/// An option: its stable name and its words.
pub type Named = (&'static str, &'static str);

/// A choice among named options.
#[derive(Clone)]
pub struct Choice {
    /// What is chosen.
    pub label: &'static str,
    /// Its name in the page, without spaces.
    pub key: &'static str,
    /// The options in the order they are shown.
    pub options: Vec<Named>,
    /// The stable name of the option that is chosen.
    pub chosen: fn(&Design) -> &'static str,
    /// Chooses the option of a stable name; an unknown name changes nothing.
    pub choose: fn(&mut Design, &str),
}

/// Reads and sets one enumerated choice of the design by its stable name.
macro_rules! chooser {
    ($place:ident, $options:ty) => {
        (
            (|design| design.$place.key()) as fn(&inchwise_core::design::Design) -> &'static str,
            (|design, key| {
                if let Some(option) = <$options>::from_key(key) {
                    design.$place = option;
                }
            }) as fn(&mut inchwise_core::design::Design, &str),
        )
    };
}
pub(super) use chooser;

/// A list to choose from.
pub fn select(state: State, choice: Choice) -> AnyView {
    let chosen = move || state.design.with(choice.chosen);
    let options = choice
        .options
        .iter()
        .map(|&(key, words)| {
            view! { <option value=key selected=move || chosen() == key>{words}</option> }
        })
        .collect_view();
    view! {
        <div class="field">
            <label for=choice.key>{choice.label}</label>
            <select
                id=choice.key
                data-testid=format!("control-{}", choice.key)
                prop:value=chosen
                on:change:target=move |event| {
                    let key = event.target().value();
                    state.choose(|design| (choice.choose)(design, &key));
                }
            >
                {options}
            </select>
        </div>
    }
    .into_any()
}
