//! Every word a visitor reads.
//!
//! One file per area of the page. Each holds a record of its phrases and one value of the record
//! per language, or a function whose `match` is exhaustive: a missing phrase does not compile.

mod air;
mod answer;
mod bench;
mod cautions;
mod choices;
mod controls;
mod damp;
mod damp_pictures;
mod drawing;
mod drip;
mod faults;
mod fields;
mod folds;
mod losses;
mod months;
mod phrase;
mod places;
mod remedies;
mod sheets;
mod sources;
mod spots;
mod weather;
mod workings;
mod year;
mod year_choices;
mod year_energy_workings;
mod year_fields;
mod year_heater;
mod year_room_workings;
mod year_verdicts;

pub use air::AirWords;
pub use answer::Answer;
pub use bench::Bench;
pub use cautions::{Cautions, Warning};
pub use controls::Controls;
pub use damp::DampWords;
pub use damp_pictures::DampPictures;
pub use drawing::DrawingWords;
pub use drip::Drip;
pub use faults::Faults;
pub use folds::Folds;
pub use losses::Losses;
pub use phrase::Phrase;
pub use sheets::SheetWords;
pub use spots::Spots;
pub use weather::Weather;
pub use workings::Workings;
pub use year::Year;
pub use year_choices::YearChoiceWords;
pub use year_verdicts::YearVerdicts;

/// A language the planner speaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// French, as in Canada.
    French,
}

impl Language {
    /// Every language.
    pub const ALL: [Self; 2] = [Self::English, Self::French];

    /// Its code, as in a `lang` attribute.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::French => "fr",
        }
    }

    /// The language of a tag such as `fr`, `fr-CA` or `EN_us`; `None` for one that is not spoken.
    pub fn from_tag(tag: &str) -> Option<Self> {
        let code = tag.split(['-', '_']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| language.code().eq_ignore_ascii_case(code))
    }
}
