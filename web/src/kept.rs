//! What follows from the state and is worked out again only when that changes.

use std::sync::Arc;

use leptos::prelude::{Get, Memo};

/// A thing that follows from others. Whoever looks at it is told when it becomes another.
///
/// It is handed out whole: every look by reference would be machine code of its own.
pub struct Kept<T: Send + Sync + 'static>(Memo<Arc<T>>);

impl<T: Send + Sync> Clone for Kept<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T: Send + Sync> Copy for Kept<T> {}

impl<T: PartialEq + Send + Sync> Kept<T> {
    /// Follows from what `make` reads.
    pub fn new(make: impl Fn() -> T + Send + Sync + 'static) -> Self {
        Self(Memo::new(move |_| Arc::new(make())))
    }

    /// As it is now.
    #[inline(never)]
    pub fn now(&self) -> Arc<T> {
        self.0.get()
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
