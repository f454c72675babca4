//! The parts that every sheet is made of, each once.

mod announcer;
mod choice;
mod disclosure;
mod entry;
mod fault;
mod number_field;
mod pull;
mod said;
mod slider;
mod text_field;
mod working;
mod year_fault;

pub use announcer::Announcer;
pub(crate) use choice::chooser;
pub use choice::{Choice, Select};
pub use disclosure::Disclosure;
pub use entry::{CEILING, Entry, WALLS, place_shown};
pub use fault::{fault_words, unread_words};
pub use number_field::{NumberField, NumberFields};
pub use pull::{Pull, Towards, bench_step, per_pixel_of_paper};
pub use said::{SaidList, SaidRow};
pub use slider::Slider;
pub use text_field::{TextChoice, TextField};
pub use working::{Working, WorkingView};
pub use year_fault::{water_of_propane, year_fault};
