//! Asks the worker for the fields that the present design lacks.

use inchwise_aside::{ONLY_SEEN, pack_design};
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::prelude::JsValue;
use web_sys::Worker;

use crate::drawing::geometry::depths;
use crate::ledger::{Ledger, Request};
use crate::reactive::{Watched, keep_up, untracked};
use crate::state::{Outcome, State};

/// Who else is told of a request.
pub type Told = Box<dyn Fn(&Request)>;

/// The work aside of one planner.
#[derive(Clone, Copy)]
pub struct Aside {
    state: State,
    ledger: Ledger,
    worker: Watched<Worker>,
    told: Watched<Option<Told>>,
}

impl Aside {
    /// Sets a worker to work for as long as the planner stands.
    pub fn start(state: State, worker: Worker) -> Self {
        let ledger = Ledger::new(state);
        // Pictures stand in the further part.
        ledger.listen(worker.clone(), |_, _| {});
        let told = Watched::new(None);
        let aside = Self { state, ledger, worker: Watched::new(worker), told };
        keep_up(Box::new(move || aside.ask(false)));
        aside
    }

    /// Tells somebody of each request from now on, and asks for everything once more, so that he
    /// hears of it.
    pub fn tell(self, told: Told) {
        self.told.update_untracked(|now| *now = Some(told));
        untracked(|| self.ask(true));
    }

    /// Asks for the present design, unless nothing of it is lacking. The further part may look at a
    /// picture of it all the same: where there is one, the worker is told then, too.
    fn ask(self, again: bool) {
        let (is_lawful, is_lacking) =
            self.state.look(|outcome| (outcome.errors.is_empty(), outcome.is_refining()));
        let key = self.state.curve_key();
        let with_curve = self
            .state
            .curve
            .with_untracked(|curve| curve.as_ref().is_none_or(|(known, _)| *known != key));
        let lacks = is_lacking || with_curve || again;
        let is_followed = self.told.with_untracked(Option::is_some);
        if !is_lawful || !(lacks || is_followed) {
            return;
        }
        let curve = (with_curve || again).then_some(key.1);
        let request = self.state.look(|outcome: &Outcome| Request {
            number: if lacks { self.ledger.next_number() } else { ONLY_SEEN },
            design: pack_design(outcome.good.checked.design()),
            curve,
        });
        let sweep: Vec<f64> =
            curve.iter().flat_map(|&units| depths(&key.0, units)).map(|d| d.value()).collect();
        self.worker.with_untracked(|worker| post(worker, &request, &sweep));
        if lacks {
            self.told.with_untracked(|told| {
                if let Some(told) = told {
                    told(&request);
                }
            });
            self.ledger.note(request);
        }
    }
}

fn post(worker: &Worker, request: &Request, depths: &[f64]) {
    let message = Object::new();
    let entries: [(&str, JsValue); 3] = [
        ("request", JsValue::from(request.number)),
        ("design", Float64Array::from(&*request.design).into()),
        ("depths", Float64Array::from(depths).into()),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
