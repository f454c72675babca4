//! What stands behind a heading until it is opened. What is shut is not there.

use leptos::prelude::*;

/// A part under its heading.
#[component]
pub fn Disclosure(
    /// Its name for checks in a browser.
    test_id: &'static str,
    /// The heading.
    #[prop(into)]
    heading: Signal<String>,
    /// Whether it stands open from the start.
    #[prop(optional)]
    open: bool,
    /// What is behind it.
    children: ChildrenFn,
) -> impl IntoView {
    let is_open = RwSignal::new(open);
    let toggle = move |event: leptos::ev::Event| {
        let details: web_sys::Element = event_target(&event);
        let now = details.has_attribute("open");
        if is_open.get_untracked() != now {
            is_open.set(now);
        }
    };
    view! {
        <details class="disclosure" data-testid=test_id open=move || is_open.get() on:toggle=toggle>
            <summary>{move || heading.get()}</summary>
            <div class="disclosed">{move || is_open.get().then(|| children())}</div>
        </details>
    }
}
