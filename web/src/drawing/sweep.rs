//! The sweep of wall foam depths behind the chart, worked out in short slices between the
//! visitor's doings.

use std::time::Duration;

use inchwise_core::design::{CheckedDesign, Design, EndWallTreatment};
use inchwise_core::detail::DetailMemory;
use inchwise_core::tradeoff::{WallDepthPoint, wall_depth_point};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::geometry::{depths, swept_away};
use crate::measure::UnitSystem;
use crate::state::State;

/// A slice stops after this long, ms: two fit into a frame.
const SLICE: f64 = 8.0;

/// The sweep waits this long for the choices to come to rest.
const REST: Duration = Duration::from_millis(250);

/// Between two slices, so that input goes first.
const PAUSE: Duration = Duration::from_millis(4);

/// Everything a sweep depends on: wall foam and treatment are what it sweeps over.
type Key = (Design, UnitSystem);

/// What a sweep found.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The points of each treatment.
    pub by_treatment: Vec<(EndWallTreatment, Vec<WallDepthPoint>)>,
    /// What they follow from.
    key: Key,
}

impl Found {
    /// The units whose round depths the points stand at.
    pub const fn units(&self) -> UnitSystem {
        self.key.1
    }
}

/// A sweep as it stands.
#[derive(Clone, Copy)]
pub struct Sweep {
    /// The last sweep that was finished; nothing before the first.
    pub found: RwSignal<Option<Found>>,
    /// Whether `found` follows from the present choices.
    pub finished: Memo<bool>,
}

/// A sweep that is going on.
struct Job {
    checked: CheckedDesign,
    todo: Vec<(EndWallTreatment, Length)>,
    found: Found,
    memory: DetailMemory,
}

impl Job {
    fn of(checked: CheckedDesign, key: Key) -> Self {
        let depths = depths(checked.design(), key.1);
        let mut todo: Vec<(EndWallTreatment, Length)> = EndWallTreatment::ALL
            .iter()
            .flat_map(|&treatment| depths.iter().map(move |&depth| (treatment, depth)))
            .collect();
        todo.reverse();
        let found = Found { by_treatment: Vec::new(), key };
        Self { checked, todo, found, memory: DetailMemory::default() }
    }

    /// Works out the next point; false once there is none.
    fn step(&mut self) -> bool {
        let Some((treatment, depth)) = self.todo.pop() else { return false };
        let last = self.found.by_treatment.last().map(|&(last, _)| last);
        if last != Some(treatment) {
            self.found.by_treatment.push((treatment, Vec::new()));
        }
        let point = wall_depth_point(&self.checked, depth, treatment, &mut self.memory);
        if let (Some(point), Some((_, points))) = (point, self.found.by_treatment.last_mut()) {
            points.push(point);
        }
        true
    }
}

impl Sweep {
    /// Sweeps anew whenever anything changes that the sweep depends on.
    pub fn following(state: State) -> Self {
        let key = Memo::new(move |_| -> Key {
            (swept_away(state.good().checked.design()), state.units.get())
        });
        let found = RwSignal::new(None::<Found>);
        let finished = Memo::new(move |_| {
            found
                .with(|found| found.as_ref().is_some_and(|found| key.with(|key| found.key == *key)))
        });
        let sweep = Self { found, finished };
        let job = StoredValue::new(None::<Job>);
        let timer = StoredValue::new(None::<TimeoutHandle>);
        let stop = move || {
            if let Some(timer) = timer.try_update_value(Option::take).flatten() {
                timer.clear();
            }
        };
        Effect::new(move |_| {
            let key = key.get();
            stop();
            let checked = untrack(|| state.good().checked.clone());
            job.set_value(Some(Job::of(checked, key)));
            schedule(sweep, job, timer, REST);
        });
        on_cleanup(stop);
        sweep
    }

    /// Works until the slice is over, then asks for the next or hands over what was found.
    fn slice(self, job: StoredValue<Option<Job>>, timer: StoredValue<Option<TimeoutHandle>>) {
        let end = js_sys::Date::now() + SLICE;
        let going_on = job.try_update_value(|job| {
            let Some(job) = job.as_mut() else { return false };
            while job.step() {
                if js_sys::Date::now() >= end {
                    return true;
                }
            }
            false
        });
        match going_on {
            Some(true) => schedule(self, job, timer, PAUSE),
            Some(false) => {
                if let Some(job) = job.try_update_value(Option::take).flatten() {
                    self.found.try_set(Some(job.found));
                }
            }
            // The drawing was taken off the page.
            None => {}
        }
    }
}

fn schedule(
    sweep: Sweep,
    job: StoredValue<Option<Job>>,
    timer: StoredValue<Option<TimeoutHandle>>,
    after: Duration,
) {
    let handle = set_timeout_with_handle(move || sweep.slice(job, timer), after).ok();
    timer.try_set_value(handle);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_job_sweeps_every_treatment_once() {
        let key = (swept_away(&Design::default()), UnitSystem::Metric);
        let mut job = Job::of(CheckedDesign::default(), key);
        let depths = depths(job.checked.design(), UnitSystem::Metric).len();
        let mut steps = 0;
        while job.step() {
            steps += 1;
        }
        assert_eq!(steps, depths * EndWallTreatment::ALL.len());
        let treatments: Vec<_> = job.found.by_treatment.iter().map(|&(one, _)| one).collect();
        assert_eq!(treatments, EndWallTreatment::ALL);
        for (_, points) in &job.found.by_treatment {
            assert_eq!(points.len(), depths);
        }
    }
}
