//! The smallest element that proves the pipeline: a heading, one range input and what it reads.

use leptos::prelude::*;
use web_sys::HtmlElement;

#[derive(Clone, Copy)]
pub(crate) struct State {
    depth: RwSignal<String>,
}

impl State {
    pub(crate) fn from_host(host: &HtmlElement) -> Self {
        let depth = host.get_attribute("depth").unwrap_or_else(|| "75".to_owned());
        Self { depth: RwSignal::new(depth) }
    }

    pub(crate) fn set(self, attribute: &str, value: Option<String>) {
        if let ("depth", Some(value)) = (attribute, value) {
            self.depth.set(value);
        }
    }
}

#[expect(non_snake_case, reason = "view components read as elements")]
pub(crate) fn Planner(state: State) -> impl IntoView {
    view! {
        <section aria-labelledby="heading">
            <h3 id="heading">{"Foam depth"}</h3>
            <label>
                {"Side walls"}
                <input
                    type="range"
                    min="25"
                    max="150"
                    data-testid="depth"
                    prop:value=state.depth
                    on:input:target=move |event| state.depth.set(event.target().value())
                />
            </label>
            <output data-testid="depth-reading">{move || format!("{} mm", state.depth.get())}</output>
        </section>
    }
}

#[cfg(test)]
mod tests {
    use leptos::prelude::*;

    use super::State;

    #[test]
    fn only_its_own_attribute_changes_the_depth() {
        let owner = Owner::new();
        let depth = owner.with(|| {
            let state = State { depth: RwSignal::new("75".to_owned()) };
            state.set("class", Some("wide".to_owned()));
            state.set("depth", None);
            state.set("depth", Some("90".to_owned()));
            state.depth.get_untracked()
        });
        assert_eq!(depth, "90");
    }
}
