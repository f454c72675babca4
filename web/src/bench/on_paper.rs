//! What paper has and a screen has not: the drawing that is not on the bench, and the day.

use leptos::prelude::*;

use crate::drawing;
use crate::state::{DrawingName, Planner};

/// The other drawings, and the day of the print. A screen hides them.
#[component]
pub fn OnPaper() -> impl IntoView {
    let planner = Planner::here();
    let day = move || {
        let language = planner.language.get();
        let today = js_sys::Date::new_0();
        let today = today.to_locale_date_string(language.code(), &js_sys::Object::new());
        language.bench().printed.with(&[&String::from(today)])
    };
    let others = move || {
        planner.language.track();
        let shown = planner.view.drawing.get();
        let section = (shown != DrawingName::Section).then(|| drawing::section(planner));
        let plan = (shown != DrawingName::Plan).then(|| drawing::plan(planner));
        view! { {section} {plan} }
    };
    view! {
        <div class="on-paper" aria-hidden="true">
            <p class="printed">{day}</p>
            {others}
        </div>
    }
}
