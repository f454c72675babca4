//! The workers: started, given one piece each, looked after, and started again when they die.

use inchwise_core::conduction::ConductionError;
use inchwise_core::detail::Detail;
use inchwise_core::envelope::ThermalBridge;
use inchwise_protocol::{FromWorker, ToWorker, Wish, unpack_pictures};
use js_sys::{Array, Float64Array, Function, Reflect};
use leptos::prelude::*;
use serde::Serialize;
use std::sync::Arc;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::{MessageEvent, Worker};

use super::{Fields, Seen, Wanted};

/// A worker that says nothing for so long is taken to be dead, ms.
const SILENCE: f64 = 10_000.0;

/// Pauses before a worker is started again grow up to this, ms.
const LONGEST_PAUSE: f64 = 60_000.0;

/// Workers at most.
const MOST: usize = 4;

/// How the workers fare.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Health {
    /// They stand, or are on their way.
    Well,
    /// None can be had. It is tried again by itself.
    Lost,
}

/// What a worker is at.
struct Job {
    request: u32,
    detail: Detail,
    /// The place, where pictures of it are made.
    pictured: Option<ThermalBridge>,
}

/// What a listener does with what it hears.
type Listener = Closure<dyn FnMut(JsValue)>;

/// One worker.
struct Slot {
    worker: Worker,
    is_ready: bool,
    job: Option<Job>,
    /// When it was last heard of, ms.
    heard: f64,
    _listeners: [Listener; 2],
}

impl Drop for Slot {
    fn drop(&mut self) {
        self.worker.set_onmessage(None);
        self.worker.set_onerror(None);
        self.worker.terminate();
    }
}

/// The workers of one planner. It ends with its owner.
#[derive(Clone, Copy)]
pub struct Pool {
    slots: StoredValue<Vec<Option<Slot>>, LocalStorage>,
    spawn: StoredValue<Function, LocalStorage>,
    fields: Fields,
    wanted: Memo<Wanted>,
    seen: RwSignal<Option<Seen>>,
    /// How they fare.
    pub health: RwSignal<Health>,
    next_request: StoredValue<u32>,
    /// Deaths in a row, and when the next may be started, ms.
    deaths: StoredValue<(u32, f64)>,
}

fn now() -> f64 {
    js_sys::Date::now()
}

/// As many as the machine has cores, but one where memory is short.
fn size() -> usize {
    let navigator = web_sys::window().map(|window| JsValue::from(window.navigator()));
    let number =
        |key: &str| Reflect::get(navigator.as_ref()?, &JsValue::from_str(key)).ok()?.as_f64();
    if number("deviceMemory").is_some_and(|gigabytes| gigabytes < 2.0) {
        return 1;
    }
    (number("hardwareConcurrency").unwrap_or(1.0) as usize).clamp(1, MOST)
}

impl Pool {
    /// Workers for what is wanted; `spawn` gives a fresh one.
    pub fn start(
        spawn: Function,
        fields: Fields,
        wanted: Memo<Wanted>,
        seen: RwSignal<Option<Seen>>,
    ) -> Self {
        let pool = Self {
            slots: StoredValue::new_local((0..size()).map(|_| None).collect()),
            spawn: StoredValue::new_local(spawn),
            fields,
            wanted,
            seen,
            health: RwSignal::new(Health::Well),
            next_request: StoredValue::new(0),
            deaths: StoredValue::new((0, 0.0)),
        };
        pool.fill();
        Effect::new(move |_| {
            wanted.track();
            fields.learned.track();
            pool.give();
        });
        let watch = gloo_timers::callback::Interval::new(1000, move || pool.watch());
        StoredValue::new_local(watch);
        pool
    }

    /// Starts all that are lacking at once.
    pub fn try_again(self) {
        self.deaths.set_value((0, 0.0));
        self.health.set(Health::Well);
        self.fill();
    }

    /// Starts the first worker that is lacking; the others when it stands, for their program is then
    /// at hand.
    fn fill(self) {
        let lacking = self.slots.try_with_value(|slots| {
            let some_stands = slots.iter().flatten().any(|slot| slot.is_ready);
            let some_comes = slots.iter().flatten().any(|slot| !slot.is_ready);
            let lacking = slots.iter().enumerate().filter(|(_, slot)| slot.is_none());
            let lacking: Vec<usize> = lacking.map(|(index, _)| index).collect();
            match (some_stands, some_comes) {
                (true, _) => lacking,
                (false, true) => Vec::new(),
                (false, false) => lacking.into_iter().take(1).collect(),
            }
        });
        for index in lacking.unwrap_or_default() {
            self.spawn(index);
        }
    }

    fn spawn(self, index: usize) {
        let spawned = self.spawn.try_with_value(|spawn| spawn.call0(&JsValue::NULL));
        let Some(Ok(worker)) = spawned else { return self.died(index) };
        // It behaves like a worker, even where it is none.
        let worker: Worker = worker.unchecked_into();
        let hear = Closure::<dyn FnMut(JsValue)>::new(move |event: JsValue| {
            let data = event.unchecked_into::<MessageEvent>().data();
            self.hear(index, data.unchecked_into());
        });
        let die = Closure::<dyn FnMut(JsValue)>::new(move |_| self.died(index));
        worker.set_onmessage(Some(hear.as_ref().unchecked_ref()));
        worker.set_onerror(Some(die.as_ref().unchecked_ref()));
        let slot =
            Slot { worker, is_ready: false, job: None, heard: now(), _listeners: [hear, die] };
        self.slots.update_value(|slots| slots[index] = Some(slot));
    }

    /// Lets go of a worker; another takes its place after a pause that grows.
    fn died(self, index: usize) {
        let slot = self.slots.try_update_value(|slots| slots.get_mut(index).and_then(Option::take));
        // Its listener may be what is running: it goes once that has ended.
        let gone = gloo_timers::callback::Timeout::new(0, move || drop(slot));
        gone.forget();
        self.deaths.update_value(|(count, next)| {
            *count += 1;
            *next = now() + (500.0 * f64::from(1_u32 << (*count).min(10))).min(LONGEST_PAUSE);
        });
        let none = self.slots.try_with_value(|slots| slots.iter().all(Option::is_none));
        if none == Some(true) && self.deaths.get_value().0 >= 2 {
            self.health.set(Health::Lost);
        }
    }

    /// Looks after them once a second.
    fn watch(self) {
        let now = now();
        let silent = self.slots.try_with_value(|slots| {
            let silent =
                |slot: &Slot| (!slot.is_ready || slot.job.is_some()) && now - slot.heard > SILENCE;
            let all = slots.iter().enumerate();
            all.filter(|(_, slot)| slot.as_ref().is_some_and(silent))
                .map(|(index, _)| index)
                .collect::<Vec<_>>()
        });
        for index in silent.unwrap_or_default() {
            self.deaths.update_value(|(count, _)| *count = (*count).max(1));
            self.died(index);
        }
        if self.deaths.try_get_value().is_some_and(|(_, next)| now >= next) {
            self.fill();
        }
    }

    fn hear(self, index: usize, data: Array) {
        let Ok(message) = serde_wasm_bindgen::from_value::<FromWorker>(data.get(0)) else { return };
        let job = self.slots.try_update_value(|slots| {
            let slot = slots.get_mut(index)?.as_mut()?;
            slot.heard = now();
            match &message {
                FromWorker::Ready => {
                    slot.is_ready = true;
                    None
                }
                FromWorker::Busy { .. } => None,
                // Answers to wishes that were overtaken are let go.
                other => slot.job.take_if(|job| Some(job.request) == other.request()),
            }
        });
        if message == FromWorker::Ready {
            self.fill();
        }
        let Some(Some(job)) = job else { return self.give() };
        self.deaths.set_value((0, 0.0));
        if self.health.get_untracked() != Health::Well {
            self.health.set(Health::Well);
        }
        match message {
            FromWorker::Solved { field, .. } => self.fields.learn(job.detail, Ok(field.into())),
            FromWorker::Failed { residual, .. } if job.pictured.is_none() => {
                // A lawful design draws lawful problems, so all that can fail is to converge.
                let residual = residual.unwrap_or(f64::NAN);
                let error = ConductionError::NotConverged { residual, iterations: 0 };
                self.fields.learn(job.detail, Err(error));
            }
            FromWorker::Pictured { coldest, pictures, .. } => {
                let numbers = data.get(1).dyn_into::<Float64Array>();
                let numbers = numbers.map(|numbers| numbers.to_vec()).unwrap_or_default();
                if let (Some(place), Some(pictures)) =
                    (job.pictured, unpack_pictures(&pictures, &numbers))
                {
                    let (detail, coldest) = (job.detail, coldest.into());
                    let pictures = Arc::new(pictures);
                    self.seen.set(Some(Seen { place, detail, coldest, pictures }));
                }
                self.give();
            }
            _ => self.give(),
        }
    }

    /// Gives whoever is idle something to do. Who is at something that nobody wants any more is
    /// given something that is wanted.
    fn give(self) {
        let Some(wanted) = self.wanted.try_get_untracked() else { return };
        let _ = self.slots.try_update_value(|slots| {
            for index in 0..slots.len() {
                let is_idle = slots[index].as_ref().is_some_and(|s| s.is_ready && s.job.is_none());
                if is_idle && let Some((message, job)) = self.next(&wanted, slots) {
                    let slot = slots[index].as_mut();
                    slot.into_iter().for_each(|slot| slot.take(message.clone(), &job));
                    if let Some(slot) = slots[index].as_mut() {
                        slot.job = Some(job);
                    }
                }
            }
            let stale = slots.iter().position(|slot| {
                let job = slot.as_ref().and_then(|slot| slot.job.as_ref());
                job.is_some_and(|job| job.pictured.is_none() && !self.is_wanted(&wanted, job))
            });
            if let Some(index) = stale
                && let Some((message, job)) = self.next(&wanted, slots)
                && let Some(slot) = slots[index].as_mut()
            {
                slot.take(message, &job);
                slot.job = Some(job);
            }
        });
    }

    fn is_wanted(self, wanted: &Wanted, job: &Job) -> bool {
        let designs = wanted.designs.iter();
        self.fields.with(|memory| {
            designs
                .flat_map(|asked| asked.lacking(None, memory))
                .any(|lacking| lacking.detail == job.detail)
        })
    }

    /// The next wish that nobody is at: pictures, then the fields of the present design, then those
    /// of what else it could be.
    fn next(self, wanted: &Wanted, slots: &[Option<Slot>]) -> Option<(ToWorker, Job)> {
        let jobs = || slots.iter().flatten().filter_map(|slot| slot.job.as_ref());
        let present = wanted.designs.first()?;
        let request = self.next_request.get_value().wrapping_add(1);
        if let Some((place, detail)) = wanted.picture {
            let is_there =
                self.seen.with_untracked(|seen| seen.as_ref().is_some_and(|s| s.detail == detail));
            let is_coming = jobs().any(|job| job.pictured.is_some() && job.detail == detail);
            if !is_there && !is_coming {
                let number = present.number_of(place)?;
                let wish = Wish {
                    request,
                    design: present.link.clone(),
                    place: number,
                    lines: Vec::new(),
                };
                self.next_request.set_value(request);
                let job = Job { request, detail, pictured: Some(place) };
                return Some((ToWorker::Picture(wish), job));
            }
        }
        self.fields.with(|memory| {
            wanted.designs.iter().find_map(|asked| {
                let first = wanted.picture.map(|(place, _)| place);
                let lacking = asked.lacking(first, memory).into_iter();
                let open = lacking.filter(|one| {
                    !jobs().any(|job| job.pictured.is_none() && job.detail == one.detail)
                });
                let one = open.into_iter().next()?;
                self.next_request.set_value(request);
                let design = asked.link.clone();
                let wish = Wish { request, design, place: one.place, lines: one.lines };
                let job = Job { request, detail: one.detail, pictured: None };
                Some((ToWorker::Solve(wish), job))
            })
        })
    }
}

impl Slot {
    fn take(&mut self, message: ToWorker, _: &Job) {
        self.heard = now();
        let plain = serde_wasm_bindgen::Serializer::json_compatible();
        // A message is made of numbers and names: all of it can be written.
        if let Ok(message) = message.serialize(&plain) {
            let _ = self.worker.post_message(&message);
        }
    }
}
