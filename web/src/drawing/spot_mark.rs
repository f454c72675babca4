//! The numbers of the cold places on a drawing, the same as in the list.

use leptos::prelude::*;

use super::geometry::{Pen, Rect, SpotMark, percent};
use crate::sheets::Sheet;
use crate::state::Planner;

/// The numbers on a drawing of this size.
#[derive(Clone, Copy)]
pub struct SpotMarks {
    /// The numbers.
    pub marks: Memo<Vec<SpotMark>>,
    /// The drawing's paper.
    pub size: Memo<Rect>,
}

impl SpotMarks {
    /// From each number to its place.
    pub fn leads(self) -> AnyView {
        let data = move || {
            self.marks.with(|marks| {
                let lead = |pen: Pen, mark: &SpotMark| pen.line(&[mark.at, mark.place]);
                marks.iter().fold(Pen::new(), lead).done()
            })
        };
        view! { <path class="spot-lead" d=data></path> }.into_any()
    }

    /// The numbers: each opens the sheet of the cold places at its own.
    pub fn buttons(self, planner: Planner) -> AnyView {
        let button = move |mark: SpotMark| {
            let (x, y) = self.size.get().percent(mark.at);
            let name = move || {
                let language = planner.language.get();
                let number = mark.number.to_string();
                language.bench().spot_numbered.with(&[&number, &language.spot_name(mark.spot)])
            };
            let open = move |_| {
                let place = planner
                    .outcome
                    .with_untracked(|outcome| crate::state::pictured(&outcome.good, mark.spot));
                planner.view.spot.set(place);
                planner.view.sheet.set(Sheet::Dry);
            };
            view! {
                <button
                    type="button"
                    class="spot-number"
                    style:left=percent(x)
                    style:top=percent(y)
                    aria-label=name
                    on:click=open
                >
                    {mark.number.to_string()}
                </button>
            }
        };
        let all = move || self.marks.get().into_iter().map(button).collect_view();
        view! { <div class="spot-numbers">{all}</div> }.into_any()
    }
}
