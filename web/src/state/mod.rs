//! What one planner knows: what was chosen, the fields solved so far, and all that follows.
//!
//! [`Planner`] stands in the context of every component. Whatever follows from what was chosen is a
//! memo; effects lead outward only.

mod fields;
mod history;
mod inputs;
mod outcome;
mod places;
mod pool;
mod spots;
mod variations;
mod verdict;
mod view;
mod wanted;
mod year;

use std::sync::Arc;

use inchwise_core::design::{Design, Field};
use inchwise_core::detail::{Detail, drawn_detail};
use inchwise_core::envelope::ThermalBridge;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::year::YearField;
use inchwise_link::Figure;
use js_sys::Function;
use leptos::prelude::*;

pub use fields::Fields;
pub use history::History;
pub use inputs::{Inputs, USUAL_HEIGHT};
pub use outcome::{Headline, Outcome, known};
pub use places::{Places, Table, warn};
pub use pool::{Health, Pool};
pub use spots::{NUMBERED, Seen, Spot, pictured, spots_of};
pub use variations::{Change, Variations};
pub use verdict::{Risk, Verdict, risk_at};
pub use view::{Control, DrawingName, View};
pub use wanted::{Asked, Lacking};
pub use year::{COOLED_TO, DEGREE_DAY_BASES, Hours, Shared, WARM_ENOUGH, YearAnswer, YearDay};

use crate::measure::{Notation, UnitSystem, Unread};
use crate::sheets::Sheet;
use crate::text::Language;

/// Who made the last change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChangedBy {
    /// The person at the page.
    Visitor,
    /// The page, through attributes or properties.
    Host,
}

/// What a typed text was to set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// A number of the design.
    Design(Field),
    /// A number of the year.
    Year(YearField),
    /// A figure of the place.
    Place(Figure),
    /// The currency.
    Currency,
    /// The day of the prices.
    PricesOf,
}

/// Something typed that is no value, kept as it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Typed {
    /// Where.
    pub subject: Subject,
    /// What stands there.
    pub text: String,
    /// Why it is no value.
    pub fault: Unread,
}

/// What is to be solved for what is shown: the present design first, then what else it could be.
#[derive(Clone, Debug, Default)]
pub struct Wanted {
    /// The designs.
    pub designs: Vec<Arc<Asked>>,
    /// The place that is looked at.
    pub picture: Option<(ThermalBridge, Detail)>,
}

impl PartialEq for Wanted {
    fn eq(&self, other: &Self) -> bool {
        self.picture == other.picture
            && self.designs.len() == other.designs.len()
            && self.designs.iter().zip(&other.designs).all(|(a, b)| a.link == b.link)
    }
}

/// The state of one planner on the page.
#[derive(Clone, Copy)]
pub struct Planner {
    /// Everything that is chosen.
    pub inputs: RwSignal<Inputs>,
    /// Typed texts that are no values.
    pub typed: RwSignal<Vec<Typed>>,
    /// Metric or imperial.
    pub units: RwSignal<UnitSystem>,
    /// The language of every word.
    pub language: RwSignal<Language>,
    /// The design alone.
    pub design: Memo<Design>,
    /// What follows from the design.
    pub outcome: Memo<Outcome>,
    /// Its first figures.
    pub headline: Memo<Headline>,
    /// Those of the design before the last change, where that is known in full.
    pub before: Memo<Option<Headline>>,
    /// Its cold places.
    pub spots: Memo<Vec<Spot>>,
    /// Its year; none while a field is being solved, or something chosen cannot stand.
    pub year: Memo<Option<Shared<YearAnswer>>>,
    /// The year of the design before the last change.
    pub year_before: Memo<Option<Shared<YearAnswer>>>,
    /// What else the design could be.
    pub variations: Variations,
    /// The place that is looked at, if a picture of it is shown.
    pub looked_at: Memo<Option<ThermalBridge>>,
    /// The last pictures that came.
    pub seen: RwSignal<Option<Seen>>,
    /// The workers.
    pub pool: Pool,
    /// Changes that were made.
    pub history: History,
    /// What is looked at.
    pub view: View,
    /// The tables of places.
    pub places: Places,
    /// What the host chose.
    pub usual: StoredValue<(Inputs, inchwise_link::YearText)>,
    /// Who made the last change.
    pub changed_by: RwSignal<ChangedBy>,
    /// Whether something told the page which could not be read in full, and which keys.
    pub unread_link: RwSignal<Option<Vec<String>>>,
}

/// What a planner starts from.
pub struct Start {
    /// What the host chose.
    pub usual: (Inputs, inchwise_link::YearText),
    /// Metric or imperial.
    pub units: UnitSystem,
    /// The language.
    pub language: Language,
    /// Gives a fresh worker.
    pub spawn: Function,
    /// Gives a promise of the text of the table of places.
    pub load_places: Function,
    /// Where the shop's own places stand.
    pub own_places: Option<String>,
}

impl Planner {
    /// The planner of the present component.
    pub fn here() -> Self {
        expect_context()
    }

    /// A planner that starts so.
    pub fn new(start: Start) -> Self {
        let fields = Fields::new();
        let inputs = RwSignal::new(start.usual.0.clone());
        let history = History::new();
        let view = View::new();
        let design = Memo::new(move |_| inputs.with(|inputs| inputs.design.clone()));
        let outcome = Memo::new(move |last: Option<&Outcome>| {
            design.with(|design| fields.reckon(|memory| Outcome::of(design, memory, last)))
        });
        let headline = Memo::new(move |_| outcome.with(|outcome| Headline::of(&outcome.good)));
        let earlier = Memo::new(move |_| history.past.with(|past| past.last().cloned()));
        let evaluated_before = Memo::new(move |_| {
            let design = earlier.with(|earlier| Some(earlier.as_ref()?.design.clone()))?;
            let checked = design.check().ok()?;
            let evaluation = Arc::new(fields.reckon(|memory| known(&checked, memory)));
            Some(Outcome { good: evaluation, errors: Vec::new() })
        });
        let before = Memo::new(move |_| {
            evaluated_before.with(|it| it.as_ref().map(|it| Headline::of(&it.good)))
        });
        let spots = Memo::new(move |_| outcome.with(|outcome| spots_of(&outcome.good)));
        let hours = Memo::new(move |_| {
            let key = inputs.with(|it| (it.place.place.clone(), it.year.front_faces));
            let own = inputs.with(|it| it.hours.clone());
            Hours::of(&key.0, own.as_deref(), key.1).map(|hours| Shared(Arc::new(hours)))
        });
        let year_of = move |outcome: &Outcome, inputs: &Inputs| {
            if !outcome.is_whole() || !outcome.errors.is_empty() {
                return None;
            }
            let checked = inputs.year.check(inputs.set_point()).ok()?;
            let winter = winter_of(inputs);
            hours
                .with(|hours| YearAnswer::of(&outcome.good, hours.as_ref()?, &checked, winter).ok())
        };
        let year = Memo::new(move |_| {
            inputs.with(|inputs| outcome.with(|outcome| year_of(outcome, inputs)))
        });
        let year_before = Memo::new(move |_| {
            earlier.with(|inputs| {
                let inputs = inputs.as_ref()?;
                evaluated_before.with(|outcome| year_of(outcome.as_ref()?, inputs))
            })
        });
        let variations = Variations::new(fields);
        let seen = RwSignal::new(None);
        let looked_at = looked_at(view, outcome);
        let wanted = Memo::new(move |_| wanted(outcome, variations, looked_at));
        let pool = Pool::start(start.spawn, fields, wanted, seen);
        Self {
            inputs,
            typed: RwSignal::new(Vec::new()),
            units: RwSignal::new(start.units),
            language: RwSignal::new(start.language),
            design,
            outcome,
            headline,
            before,
            spots,
            year,
            year_before,
            variations,
            looked_at,
            seen,
            pool,
            history,
            view,
            places: Places::new(start.load_places, start.own_places),
            usual: StoredValue::new(start.usual),
            changed_by: RwSignal::new(ChangedBy::Host),
            unread_link: RwSignal::new(None),
        }
    }

    /// How figures are written now; whoever asks is told when it changes.
    pub fn notation(self) -> Notation {
        Notation { units: self.units.get(), language: self.language.get() }
    }

    /// Something about the last good evaluation; whoever asks is told when it changes.
    pub fn look<R>(self, at: impl FnOnce(&Evaluation) -> R) -> R {
        self.outcome.with(|outcome| at(&outcome.good))
    }

    /// Whether every figure is of the present design.
    pub fn is_whole(self) -> bool {
        self.outcome.with(Outcome::is_whole)
    }

    /// Whether what is drawn is not what is chosen: the last good picture stands in.
    pub fn stands_in(self) -> bool {
        self.outcome.with(|outcome| !outcome.errors.is_empty())
            || self.typed.with(|typed| !typed.is_empty())
    }

    /// Changes what is chosen on behalf of the visitor. What one `hand` moves without letting go is
    /// one change.
    pub fn change(self, hand: Option<&'static str>, change: impl FnOnce(&mut Inputs)) {
        let before = self.inputs.get_untracked();
        let mut after = before.clone();
        change(&mut after);
        if after == before {
            return;
        }
        self.changed_by.set(ChangedBy::Visitor);
        self.history.note(before, hand);
        self.inputs.set(after);
    }

    /// Changes the design on behalf of the visitor.
    pub fn choose(self, change: impl FnOnce(&mut Design)) {
        self.change(None, |inputs| change(&mut inputs.design));
    }

    /// Puts all that is chosen in place on behalf of the page.
    pub fn replace(self, inputs: Inputs) {
        self.changed_by.set(ChangedBy::Host);
        self.typed.set(Vec::new());
        self.inputs.set(inputs);
    }

    /// Takes back the last change.
    pub fn undo(self) {
        if let Some(inputs) = self.history.undo(self.inputs.get_untracked()) {
            self.put_back(inputs);
        }
    }

    /// Does again what was taken back last.
    pub fn redo(self) {
        if let Some(inputs) = self.history.redo(self.inputs.get_untracked()) {
            self.put_back(inputs);
        }
    }

    fn put_back(self, inputs: Inputs) {
        self.changed_by.set(ChangedBy::Visitor);
        self.typed.set(Vec::new());
        self.inputs.set(inputs);
    }

    /// Goes back to what the host chose; it can be undone like any change.
    pub fn start_over(self) {
        let usual = self.usual.with_value(|(inputs, _)| inputs.clone());
        self.typed.set(Vec::new());
        self.change(None, |inputs| *inputs = usual);
    }

    /// Keeps a typed text that is no value.
    pub fn keep_typed(self, text: Typed) {
        self.forget_typed(text.subject);
        self.typed.update(|typed| typed.push(text));
    }

    /// Lets go of a typed text.
    pub fn forget_typed(self, subject: Subject) {
        if self.typed.with_untracked(|typed| typed.iter().any(|text| text.subject == subject)) {
            self.typed.update(|typed| typed.retain(|text| text.subject != subject));
        }
    }
}

/// The temperature that heaters are sized for at a place.
pub fn winter_of(inputs: &Inputs) -> inchwise_core::units::Temperature {
    match &inputs.hours {
        Some(hours) => hours.figures_at(&inputs.place.place).winter_design,
        None => inputs.place.place.winter_design,
    }
}

/// The place whose temperatures are drawn: the chosen one if the design has it, else the coldest.
/// Until every field is solved that is the one of before, so that the picture does not wander.
fn looked_at(view: View, outcome: Memo<Outcome>) -> Memo<Option<ThermalBridge>> {
    Memo::new(move |last: Option<&Option<ThermalBridge>>| {
        let is_shown = view.drawing.get() == DrawingName::Corner || view.sheet.get() == Sheet::Dry;
        if !is_shown {
            return None;
        }
        let chosen = view.spot.get();
        outcome.with(|outcome| {
            let good = &outcome.good;
            let stands = |place: &ThermalBridge| {
                good.envelope.thermal_bridges.iter().any(|(standing, _)| standing == place)
            };
            let before = last.copied().flatten().filter(stands);
            let coldest = || {
                let spots = &good.cold_spots.spots;
                spots.iter().find_map(|spot| pictured(good, spot.place))
            };
            let waits = !outcome.is_whole();
            chosen.filter(stands).or(if waits { before } else { None }).or_else(coldest)
        })
    })
}

fn wanted(
    outcome: Memo<Outcome>,
    variations: Variations,
    looked_at: Memo<Option<ThermalBridge>>,
) -> Wanted {
    let (present, picture) = outcome.with(|outcome| {
        let checked = &outcome.good.checked;
        let place = looked_at.get();
        let picture = place.and_then(|place| Some((place, drawn_detail(checked, place)?)));
        (Asked::of(checked), picture)
    });
    let mut designs = vec![present];
    // What else it could be comes when all of what it is stands.
    if outcome.with(Outcome::is_whole) {
        designs.extend(variations.asked());
    }
    Wanted { designs, picture }
}
