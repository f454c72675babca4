//! A choice among named options.

use inchwise_core::design::Design;

use crate::dom::{El, el, select_of};
use crate::reactive::keep_up;
use crate::state::State;

/// An option: its stable name and its words.
pub type Named = (&'static str, &'static str);

/// A choice among named options.
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
pub fn select(state: State, choice: &Choice) -> El {
    let (chosen, choose) = (choice.chosen, choice.choose);
    let options: Vec<El> = choice
        .options
        .iter()
        .map(|&(key, words)| el("option").attr("value", key).text(words))
        .collect();
    let list = el("select")
        .attr("id", choice.key)
        .test_id(&format!("control-{}", choice.key))
        .with(&options)
        .on("change", move |event| {
            if let Some(list) = select_of(&event) {
                state.choose(|design| choose(design, &list.value()));
            }
        });
    let shown = list.clone();
    keep_up(Box::new(move || {
        shown.property("value", &state.chosen(chosen).into());
    }));
    el("div").class("field").with(&[el("label").attr("for", choice.key).text(choice.label), list])
}
