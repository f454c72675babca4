//! Values that are watched, and what keeps up with them.
//!
//! Everything goes through one signal type, one effect type and one place in the arena of the
//! reactive graph, whatever a value's own type: the graph's code is then in the page once, not
//! once for each type.

use std::any::Any;
use std::cell::{Cell, RefCell};
use std::marker::PhantomData;
use std::rc::Rc;

use any_spawner::Executor;
use reactive_graph::effect::RenderEffect;
use reactive_graph::owner::{LocalStorage, Owner, StoredValue};
use reactive_graph::signal::ArcTrigger;
use reactive_graph::traits::{GetValue, Notify, Track};

/// A value in the present scope; whoever reads it while keeping up is told when it changes. A
/// copy is the same value. It ends with its scope.
pub struct Watched<T> {
    place: StoredValue<Rc<dyn Any>, LocalStorage>,
    of: PhantomData<fn() -> T>,
}

impl<T> Clone for Watched<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Watched<T> {}

struct Slot<T> {
    value: RefCell<T>,
    changed: ArcTrigger,
}

/// Keeps something for as long as the present scope stands.
fn keep(thing: Rc<dyn Any>) -> StoredValue<Rc<dyn Any>, LocalStorage> {
    StoredValue::new_local(thing)
}

impl<T: 'static> Watched<T> {
    /// A value that begins so.
    pub fn new(value: T) -> Self {
        let slot = Slot { value: RefCell::new(value), changed: ArcTrigger::new() };
        Self { place: keep(Rc::new(slot)), of: PhantomData }
    }

    /// None after its scope has ended.
    fn slot(self) -> Option<Rc<Slot<T>>> {
        self.place.try_get_value()?.downcast().ok()
    }

    fn standing(self) -> Rc<Slot<T>> {
        self.slot().expect("a value is read only while its planner stands")
    }

    /// Asks to be told when it changes.
    pub fn track(self) {
        if let Some(slot) = self.slot() {
            slot.changed.track();
        }
    }

    /// Something about it; whoever asks is told when it changes.
    pub fn with<R>(self, at: impl FnOnce(&T) -> R) -> R {
        let slot = self.standing();
        slot.changed.track();
        at(&slot.value.borrow())
    }

    /// Something about it as it stands.
    pub fn with_untracked<R>(self, at: impl FnOnce(&T) -> R) -> R {
        at(&self.standing().value.borrow())
    }

    /// Changes it and tells whoever asked. After the end of its scope nothing happens.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        if let Some(slot) = self.slot() {
            change(&mut slot.value.borrow_mut());
            slot.changed.notify();
        }
    }

    /// Changes it and tells nobody.
    pub fn update_untracked<R>(self, change: impl FnOnce(&mut T) -> R) -> Option<R> {
        self.slot().map(|slot| change(&mut slot.value.borrow_mut()))
    }

    /// Puts another in its place.
    pub fn set(self, value: T) {
        self.update(|now| *now = value);
    }
}

impl<T: Clone + 'static> Watched<T> {
    /// A copy of it; whoever asks is told when it changes.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// A copy of it as it stands.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

/// Runs at once, and again after each change of what it read, as long as its scope stands. In a
/// patient part of the page it waits while that part may wait.
pub fn keep_up(mut update: Box<dyn FnMut()>) {
    let Some(patience) = PRESENT.get() else {
        keep(Rc::new(RenderEffect::new(move |_: Option<()>| update())));
        return;
    };
    // What a run made must outlive the runs that only wait.
    let made = Scope::new();
    let mut wait = None;
    let mut is_made = false;
    keep(Rc::new(RenderEffect::new(move |_: Option<()>| {
        if !is_made || !patience.may_wait(&mut wait) {
            is_made = true;
            made.end();
            made.with(|| patience.over(&mut update));
        }
    })));
}

/// For whom what keeps up may wait: a part of the page is brought up to date while it is in sight,
/// and whenever the planner comes to rest.
#[derive(Clone, Copy)]
pub struct Patience {
    /// Whether the part is in sight.
    pub in_sight: Watched<bool>,
    /// How often the planner came to rest.
    pub rests: Watched<u32>,
    /// Asks for a rest, when something begins to wait.
    pub ask: Watched<Box<dyn Fn()>>,
}

thread_local! {
    /// Over what is being made or brought up to date.
    static PRESENT: Cell<Option<Patience>> = const { Cell::new(None) };
}

impl Patience {
    /// Makes something that keeps up patiently.
    pub fn over<R>(self, make: impl FnOnce() -> R) -> R {
        let before = PRESENT.replace(Some(self));
        let made = make();
        PRESENT.set(before);
        made
    }

    /// Whether a change may wait, which began to wait at the rest of this number. Only what waits
    /// asks to be told of sight and rests: what is up to date is never made anew by them.
    fn may_wait(self, wait: &mut Option<u32>) -> bool {
        let rests = self.rests.get_untracked();
        if self.in_sight.get_untracked() || wait.is_some_and(|since| since != rests) {
            *wait = None;
            return false;
        }
        if wait.replace(rests).is_none() {
            self.ask.with_untracked(|ask| ask());
        }
        self.in_sight.track();
        self.rests.track();
        true
    }
}

struct AtEnd(Option<Box<dyn FnOnce()>>);

impl Drop for AtEnd {
    fn drop(&mut self) {
        if let Some(act) = self.0.take() {
            act();
        }
    }
}

/// Does something when the present scope ends.
pub fn at_end(act: Box<dyn FnOnce()>) {
    keep(Rc::new(AtEnd(Some(act))));
}

/// What values and all that keeps up belong to, and end with.
#[derive(Clone, Debug, Default)]
pub struct Scope(Owner);

impl Scope {
    /// A scope that stands until it is ended.
    pub fn new() -> Self {
        // Fails only where another planner on the page has set it up already.
        let _ = Executor::init_wasm_bindgen();
        Self(Owner::new())
    }

    /// The present scope.
    pub fn present() -> Self {
        Self(Owner::current().unwrap_or_default())
    }

    /// Makes something in this scope.
    pub fn with<R>(&self, make: impl FnOnce() -> R) -> R {
        let mut make = Some(make);
        let mut made = None;
        self.run(&mut || made = make.take().map(|make| make()));
        made.expect("a scope makes what it is asked to")
    }

    fn run(&self, act: &mut dyn FnMut()) {
        self.0.with(act);
    }

    /// Ends everything in it.
    pub fn end(&self) {
        self.0.cleanup();
    }
}

/// Reads without asking to be told of changes.
pub fn untracked<R>(read: impl FnOnce() -> R) -> R {
    let mut read = Some(read);
    let mut answer = None;
    let act: &mut dyn FnMut() = &mut || answer = read.take().map(|read| read());
    reactive_graph::graph::untrack(act);
    answer.expect("what is asked is read")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_read_and_changed_through_any_copy() {
        let scope = Scope(Owner::new());
        scope.with(|| {
            let one = Watched::new(1);
            let other = one;
            other.update(|value| *value += 1);
            assert_eq!(one.get_untracked(), 2);
            assert_eq!(one.update_untracked(|value| std::mem::replace(value, 5)), Some(2));
            assert_eq!(other.with_untracked(|value| *value), 5);
        });
    }

    #[test]
    fn out_of_sight_it_waits_for_a_rest() {
        let scope = Scope::new();
        scope.with(|| {
            let asked = Rc::new(Cell::new(0));
            let told = Rc::clone(&asked);
            let patience = Patience {
                in_sight: Watched::new(true),
                rests: Watched::new(0),
                ask: Watched::new(Box::new(move || told.set(told.get() + 1))),
            };
            let mut wait = None;
            assert!(!patience.may_wait(&mut wait), "in sight it never waits");
            patience.in_sight.set(false);
            assert!(patience.may_wait(&mut wait));
            assert!(patience.may_wait(&mut wait), "still no rest");
            assert_eq!(asked.get(), 1, "a rest is asked for once");
            patience.rests.set(1);
            assert!(!patience.may_wait(&mut wait), "a rest has come");
            assert!(patience.may_wait(&mut wait), "the next change waits for the next rest");
            patience.in_sight.set(true);
            assert!(!patience.may_wait(&mut wait), "it has come into sight");
            assert!(PRESENT.get().is_none());
            patience.over(|| assert!(PRESENT.get().is_some()));
            assert!(PRESENT.get().is_none(), "patience is over what is made in it alone");
        });
        scope.end();
    }

    #[test]
    fn what_was_kept_ends_with_its_scope() {
        let scope = Scope(Owner::new());
        let ended = Rc::new(RefCell::new(false));
        let told = Rc::clone(&ended);
        let value = scope.with(|| {
            at_end(Box::new(move || *told.borrow_mut() = true));
            Watched::new(1)
        });
        assert!(!*ended.borrow());
        scope.end();
        assert!(*ended.borrow());
        value.set(2);
        assert_eq!(value.update_untracked(|value| *value), None, "changes after the end are lost");
    }
}
