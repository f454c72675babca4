//! The fields solved so far. They change how soon a figure comes, and never the figure.

use inchwise_core::conduction::ConductionError;
use inchwise_core::detail::{Detail, DetailField, FieldCache};
use leptos::prelude::*;

/// The fields of one planner.
#[derive(Clone, Copy)]
pub struct Fields {
    memory: StoredValue<FieldCache>,
    /// Moves on whenever a field was learned.
    pub learned: RwSignal<u32>,
}

impl Fields {
    /// None is known yet.
    pub fn new() -> Self {
        Self { memory: StoredValue::new(FieldCache::without_solver()), learned: RwSignal::new(0) }
    }

    /// Takes in a field, and says so.
    pub fn learn(self, detail: Detail, outcome: Result<DetailField, ConductionError>) {
        let _ = self.memory.try_update_value(|memory| memory.insert(detail, outcome));
        self.learned.try_update(|count| *count = count.wrapping_add(1));
    }

    /// Something about them.
    pub fn with<R>(self, at: impl FnOnce(&FieldCache) -> R) -> R {
        self.memory.with_value(at)
    }

    /// Something reckoned with them; whoever asks is told when more are known.
    pub fn reckon<R>(self, at: impl FnOnce(&mut FieldCache) -> R) -> R {
        self.learned.track();
        self.memory.try_update_value(at).expect("values of one planner end together")
    }
}
