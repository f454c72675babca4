//! What the planner knows: the visitor's choices, and everything that follows from them.
//!
//! One signal holds the design; the outcome is derived from it. Nothing writes a signal from an
//! effect.

use std::rc::Rc;

use inchwise_core::design::{CheckedDesign, Design, DesignError, Field};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Balance, Evaluation, evaluate_with};
use inchwise_core::tradeoff::{WallDepthPoint, point_of};
use inchwise_core::units::RelativeHumidity;

use crate::choices::Choices;
use crate::drawing::geometry::swept_away;
use crate::ledger::CurvePoints;
use crate::measure::{Notation, UnitSystem, Unread};
use crate::reactive::Watched;
use crate::sight::Sight;
use crate::text::Language;

/// What follows from the present choices.
#[derive(Clone)]
pub struct Outcome {
    /// The evaluation of the last design that passed its check.
    pub good: Rc<Evaluation>,
    /// What is wrong with the present choices; empty when `good` is theirs.
    pub errors: Vec<DesignError>,
    /// The evaluation to show; none before the first with every part in it. While parts are being
    /// solved, theirs are taken over from the last such one.
    pub shown: Option<Rc<Evaluation>>,
    /// The last evaluation with every part in it.
    complete: Option<Rc<Evaluation>>,
    /// The last point on the curve over wall depth; none before the first.
    pub point: Option<WallDepthPoint>,
}

impl Outcome {
    /// The evaluation to show, or what is known so far.
    pub fn best(&self) -> &Rc<Evaluation> {
        self.shown.as_ref().unwrap_or(&self.good)
    }

    /// Air, water and heat of what is shown.
    pub fn balance(&self) -> Option<&Balance> {
        self.best().balance.as_ref().ok()
    }

    /// Whether fields of the present design are still being solved: what is shown is then partly,
    /// and the curve's point wholly, that of an earlier one.
    pub fn is_refining(&self) -> bool {
        self.good.heat_loss.is_waiting()
    }
}

impl PartialEq for Outcome {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.good, &other.good) && self.errors == other.errors
    }
}

/// Who made the last change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChangedBy {
    /// The person at the page.
    Visitor,
    /// The page, through attributes or properties.
    Host,
}

/// Something typed that is no value, kept as it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnreadText {
    /// Where.
    pub field: Field,
    /// What stands there.
    pub typed: String,
    /// Why it is no value.
    pub fault: Unread,
}

/// Everything the curve over wall depth depends on: the design without what is swept, and the
/// units, whose round depths its points stand at.
pub type CurveKey = (Design, UnitSystem);

/// The state of one planner on the page.
#[derive(Clone, Copy)]
pub struct State {
    /// The choices as given, lawful or not.
    design: Watched<Design>,
    /// Moves on whenever a field was learned.
    learned: Watched<u32>,
    /// What follows, and whether choices or fields have changed since.
    latest: Watched<(Option<Outcome>, bool)>,
    /// Typed texts that are no values; the design does not know of them.
    pub unread: Watched<Vec<UnreadText>>,
    /// Metric or imperial.
    pub units: Watched<UnitSystem>,
    /// The language of every word.
    pub language: Watched<Language>,
    /// Solved fields, kept so that a change that does not touch them solves nothing.
    pub cache: Watched<FieldCache>,
    /// The last curve, with what it follows from; none before the first.
    pub curve: Watched<Option<(CurveKey, CurvePoints)>>,
    /// The place whose temperatures are looked at.
    pub sight: Sight,
    /// The last year that the worker ran, packed, under the number it was asked by.
    pub year: Watched<Option<(u32, Rc<Vec<f64>>)>>,
    /// Who made the last change.
    pub changed_by: Watched<ChangedBy>,
    /// Whether the page's address held a design that could not be read.
    pub link_unread: Watched<bool>,
}

/// Everything that follows from choices and the fields known so far. Fields that wait are taken
/// over from what followed last.
fn follow(design: &Design, cache: &mut FieldCache, last: Option<&Outcome>) -> Outcome {
    let mut known = |checked: &CheckedDesign| Rc::new(evaluate_with(checked, cache, Effort::Known));
    let (good, errors) = match design.check() {
        Ok(checked) => (known(&checked), Vec::new()),
        Err(errors) => {
            let checked = last.map(|last| last.good.checked.clone()).unwrap_or_default();
            (known(&checked), errors)
        }
    };
    let (shown, complete) = if good.heat_loss.is_waiting() {
        let complete = last.and_then(|last| last.complete.clone());
        let filled = complete.as_ref().map(|it| good.with_waiting_from(it));
        (filled.map(Rc::new), complete)
    } else {
        (Some(Rc::clone(&good)), Some(Rc::clone(&good)))
    };
    Outcome { shown, complete, point: point_of(&good).or_else(|| last?.point), good, errors }
}

fn set_if_other<T: PartialEq + 'static>(value: Watched<T>, other: T) {
    if value.with_untracked(|value| *value != other) {
        value.set(other);
    }
}

impl State {
    /// A planner that starts from a design; one that does not pass its check starts greyed over
    /// the default design.
    pub fn new(design: Design, units: UnitSystem, language: Language) -> Self {
        Self {
            design: Watched::new(design),
            learned: Watched::new(0),
            latest: Watched::new((None, true)),
            unread: Watched::new(Vec::new()),
            units: Watched::new(units),
            language: Watched::new(language),
            cache: Watched::new(FieldCache::without_solver()),
            curve: Watched::new(None),
            sight: Sight::default(),
            year: Watched::new(None),
            changed_by: Watched::new(ChangedBy::Host),
            link_unread: Watched::new(false),
        }
    }

    /// What the curve over wall depth depends on.
    pub fn curve_key(self) -> CurveKey {
        (self.look(|outcome| swept_away(outcome.good.checked.design())), self.units.get())
    }

    /// Says that fields were learned.
    pub fn has_learned(self) {
        self.grow_stale();
        self.learned.update(|count| *count = count.wrapping_add(1));
    }

    fn grow_stale(self) {
        self.latest.update_untracked(|(_, stale)| *stale = true);
    }

    /// What follows from the present choices; whoever asks is told when it changes.
    #[inline(never)]
    pub fn now(self) -> Outcome {
        self.learned.track();
        self.design.with(|design| {
            let follows = self.latest.update_untracked(|(last, stale)| {
                if let (Some(outcome), false) = (&last, *stale) {
                    return outcome.clone();
                }
                let outcome = self
                    .cache
                    .update_untracked(|cache| follow(design, cache, last.as_ref()))
                    .expect("values of one planner end together");
                (*last, *stale) = (Some(outcome.clone()), false);
                outcome
            });
            follows.expect("values of one planner end together")
        })
    }

    /// Something about what follows from the present choices.
    pub fn look<R>(self, at: impl FnOnce(&Outcome) -> R) -> R {
        at(&self.now())
    }

    /// Everything that was chosen; whoever asks is told when it changes.
    pub fn choices(self) -> Choices {
        Choices {
            design: self.design.get(),
            units: self.units.get(),
            language: self.language.get(),
            changed_by: self.changed_by.get_untracked(),
            unread: self.unread.get(),
        }
    }

    /// Takes over what was chosen in the other part of the page.
    pub fn adopt(self, choices: Choices) {
        self.changed_by.set(choices.changed_by);
        set_if_other(self.units, choices.units);
        set_if_other(self.language, choices.language);
        set_if_other(self.unread, choices.unread);
        if self.chosen_untracked(|design| *design != choices.design) {
            self.grow_stale();
            self.design.set(choices.design);
        }
    }

    /// Something about the design; whoever asks is told when it changes.
    pub fn chosen<R>(self, at: impl FnOnce(&Design) -> R) -> R {
        self.design.with(at)
    }

    /// Something about the choices as they stand.
    pub fn chosen_untracked<R>(self, at: impl FnOnce(&Design) -> R) -> R {
        self.design.with_untracked(at)
    }

    /// How humid the room stands on a day of use at its winter temperature, as its places are judged by it;
    /// whoever asks is told when it changes.
    pub fn humidity(self) -> RelativeHumidity {
        self.look(|outcome| {
            let held = outcome.good.checked.design().target_humidity;
            outcome.balance().map_or(held, |balance| balance.humidity.verdict.design_day)
        })
    }

    /// The last good evaluation; whoever asks is told when it changes.
    pub fn good(self) -> Rc<Evaluation> {
        self.look(|outcome| Rc::clone(&outcome.good))
    }

    /// How figures are written now; whoever asks is told when it changes.
    pub fn notation(self) -> Notation {
        Notation { units: self.units.get(), language: self.language.get() }
    }

    /// Whether what is drawn is not what is chosen: the last good picture stands in.
    pub fn stands_in(self) -> bool {
        self.look(|outcome| !outcome.errors.is_empty())
            || self.unread.with(|unread| !unread.is_empty())
    }

    /// Sets a numeric choice from its SI number; `None` takes back a measurement.
    pub fn put(self, field: Field, number: Option<f64>) {
        self.put_all(&[field], number);
    }

    /// Sets several numeric choices to one SI number.
    pub fn put_all(self, fields: &[Field], number: Option<f64>) {
        self.forget_unread(fields);
        self.choose(|design| {
            for &field in fields {
                design.set(field, number);
            }
        });
    }

    /// Changes the choices on behalf of the visitor.
    pub fn choose(self, change: impl FnOnce(&mut Design)) {
        self.changed_by.set(ChangedBy::Visitor);
        self.grow_stale();
        self.design.update(change);
    }

    /// Changes the choices without telling who did: what the page's address or its attributes say is no change of
    /// the visitor's.
    pub fn amend(self, change: impl FnOnce(&mut Design)) {
        let mut changed = self.design.get_untracked();
        change(&mut changed);
        if self.chosen_untracked(|design| *design != changed) {
            self.forget_unread(Field::ALL);
            self.grow_stale();
            self.design.set(changed);
        }
    }

    /// Replaces all choices on behalf of the page.
    pub fn replace(self, design: Design) {
        self.changed_by.set(ChangedBy::Host);
        self.forget_unread(Field::ALL);
        self.grow_stale();
        self.design.set(design);
    }

    /// Goes back to a design on behalf of the visitor, and forgets what was typed.
    pub fn start_over(self, from: Design) {
        self.forget_unread(Field::ALL);
        self.choose(|design| *design = from);
    }

    /// Keeps a typed text that is no value. It stands in the way of the answer until it is
    /// replaced.
    pub fn keep_unread(self, text: UnreadText) {
        self.unread.update(|unread| {
            unread.retain(|other| other.field != text.field);
            unread.push(text);
        });
    }

    fn forget_unread(self, fields: &[Field]) {
        let concerned = |text: &UnreadText| fields.contains(&text.field);
        if self.unread.with_untracked(|unread| unread.iter().any(concerned)) {
            self.unread.update(|unread| unread.retain(|text| !concerned(text)));
        }
    }
}
