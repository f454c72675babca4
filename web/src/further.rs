//! The further part of the page: everything that the first part can be used without. It keeps a
//! state of its own, told by the first part what is chosen, and hears the same worker.

use std::time::Duration;

use js_sys::Function;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, ShadowRoot, Worker};

use crate::address;
use crate::app::further_part;
use crate::choices::Packed;
use crate::ledger::{Ledger, Request};
use crate::line::Line;
use crate::measure::UnitSystem;
use crate::reactive::Scope;
use crate::sight;
use crate::state::State;
use crate::text::Language;
use crate::year::{Places, YearState};

/// The further part of one planner.
pub struct Further {
    root: HtmlElement,
    state: State,
    line: Line,
    ledger: Ledger,
    worker: Worker,
    places: Places,
    scope: Scope,
}

impl Further {
    /// A further part for the block `root`. It shows nothing before the first part has told what
    /// is chosen. `load_places` gives a promise of the text of the table of places.
    pub fn new(
        root: HtmlElement,
        worker: Worker,
        load_places: Function,
        say: Box<dyn Fn(&Packed)>,
    ) -> Self {
        let scope = Scope::new();
        let (state, line, ledger, places) = scope.with(|| {
            let state = State::new(Default::default(), UnitSystem::default(), Language::default());
            let ledger = Ledger::new(state);
            ledger.listen(worker.clone(), |state, answer| state.sight.learn(&answer.to_vec()));
            sight::ask(state, worker.clone());
            (state, Line::new(state), ledger, Places::new(load_places))
        });
        let further = Self { root, state, line, ledger, worker, places, scope };
        further.scope.with(|| further.line.answer(Duration::ZERO, say));
        further
    }

    /// Takes over what was chosen in the first part; the first time, shows everything.
    pub fn hear(&self, packed: Packed) {
        self.line.hear(packed);
        if !self.root.has_child_nodes() {
            let part = self.scope.with(|| {
                let year =
                    YearState::start(self.state, self.worker.clone(), self.places, self.host());
                address::keep(year);
                further_part(self.state, year)
            });
            let _ = self.root.append_child(part.element());
            if let Some(sheet) = part.closest(".sheet") {
                sheet.toggle("awaiting", false);
            }
        }
    }

    /// The element on the host's page.
    fn host(&self) -> Option<Element> {
        Some(self.root.get_root_node().dyn_into::<ShadowRoot>().ok()?.host())
    }

    /// Notes what the worker was asked.
    pub fn note(&self, request: Request) {
        self.ledger.note(request);
    }

    /// Takes it out of the document and ends everything it started.
    pub fn unmount(&self) {
        self.scope.end();
    }
}
