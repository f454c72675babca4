//! What follows from the state and is worked out again only when that changes.

use std::any::Any;
use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::{Get, Memo};

/// A value of any type, and how two of its type are told apart: every memo holds this one type,
/// so that the reactive graph's machinery is there once and not for each thing that is kept.
#[derive(Clone)]
struct Anything {
    value: Arc<dyn Any + Send + Sync>,
    same: fn(&dyn Any, &dyn Any) -> bool,
}

impl PartialEq for Anything {
    fn eq(&self, other: &Self) -> bool {
        (self.same)(&*self.value, &*other.value)
    }
}

fn same<T: PartialEq + 'static>(one: &dyn Any, other: &dyn Any) -> bool {
    one.downcast_ref::<T>() == other.downcast_ref::<T>()
}

/// A thing that follows from others. Whoever looks at it is told when it becomes another.
pub struct Kept<T> {
    memo: Memo<Anything>,
    of: PhantomData<fn() -> T>,
}

impl<T> Clone for Kept<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Kept<T> {}

impl<T: PartialEq + Send + Sync + 'static> Kept<T> {
    /// Follows from what `make` reads.
    pub fn new(make: impl Fn() -> T + Send + Sync + 'static) -> Self {
        let make = Box::new(move || Anything { value: Arc::new(make()), same: same::<T> });
        Self { memo: followed(make), of: PhantomData }
    }

    /// As it is now.
    pub fn now(&self) -> Arc<T> {
        match self.memo.get().value.downcast() {
            Ok(value) => value,
            Err(_) => unreachable!("a memo holds what its maker makes"),
        }
    }

    /// Something about it.
    pub fn with<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        look(&self.now())
    }

    /// A copy of it.
    pub fn get(&self) -> T
    where
        T: Copy,
    {
        *self.now()
    }
}

fn followed(make: Box<dyn Fn() -> Anything + Send + Sync>) -> Memo<Anything> {
    Memo::new(move |_| make())
}
