//! The further part of the page: everything that the first part can be used without. It keeps a
//! state of its own, told by the first part what is chosen, and hears the same worker.

use std::time::Duration;

use web_sys::{HtmlElement, Worker};

use crate::app::further_part;
use crate::choices::Packed;
use crate::ledger::{Ledger, Request};
use crate::line::Line;
use crate::measure::UnitSystem;
use crate::reactive::Scope;
use crate::state::State;
use crate::text::Language;

/// The further part of one planner.
pub struct Further {
    root: HtmlElement,
    state: State,
    line: Line,
    ledger: Ledger,
    scope: Scope,
}

impl Further {
    /// A further part for the block `root`. It shows nothing before the first part has told what
    /// is chosen.
    pub fn new(root: HtmlElement, worker: Worker, say: Box<dyn Fn(&Packed)>) -> Self {
        let scope = Scope::new();
        let (state, line, ledger) = scope.with(|| {
            let state = State::new(Default::default(), UnitSystem::default(), Language::default());
            let ledger = Ledger::new(state);
            ledger.listen(worker);
            (state, Line::new(state), ledger)
        });
        let further = Self { root, state, line, ledger, scope };
        further.scope.with(|| further.line.answer(Duration::ZERO, say));
        further
    }

    /// Takes over what was chosen in the first part; the first time, shows everything.
    pub fn hear(&self, packed: Packed) {
        self.line.hear(packed);
        if !self.root.has_child_nodes() {
            let part = self.scope.with(|| further_part(self.state));
            let _ = self.root.append_child(part.element());
        }
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
