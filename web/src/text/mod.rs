//! Every word a visitor reads: one record per language, so that a missing phrase does not compile.

/// A language the planner speaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// French, as in Canada.
    French,
}
