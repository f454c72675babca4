//! Where the heat goes: one table, largest first, every figure with its reckoning.

use inchwise_core::heat_load::HeatLoad;
use inchwise_core::heat_loss::{Element, HeatLoss, Loss, NotCounted, Reason};
use inchwise_core::units::Power;

use super::how::{Open, disclosure};
use super::reckoning::reckoning;
use crate::dom::{El, el};
use crate::measure::{Notation, plain};
use crate::reactive::{Scope, Watched, keep_up};
use crate::state::{Outcome, State};
use crate::text::{Language, Losses};

/// Losses below this share stand together in one row until they are asked for.
const SMALL: f64 = 0.02;

/// Losses in the order they are read.
fn largest_first(losses: &[Loss]) -> Vec<Loss> {
    // Two dozen at most: each goes in front of the first that is smaller.
    let mut sorted: Vec<Loss> = Vec::new();
    for &loss in losses {
        let smaller = |other: &Loss| other.power < loss.power;
        let place = sorted.iter().position(smaller).unwrap_or(sorted.len());
        sorted.insert(place, loss);
    }
    sorted
}

/// What is shown: with parts taken over where there is something to take over.
fn shown(outcome: &Outcome) -> &HeatLoss {
    &outcome.best().heat_loss
}

/// A part of the load: its label, and how much it is.
type Added = (fn(&Losses) -> &'static str, fn(&HeatLoad) -> Power);

/// What stands under the losses: their sum, then what the use adds, then the load.
const ADDED: [Added; 4] = [
    (|words| words.at_rest, |load| load.at_rest.total()),
    (|words| words.by_fan, |load| load.at_work.mechanical),
    (|words| words.reheat, |load| load.at_work.reheat),
    (|words| words.drying, |load| load.at_work.drying),
];

/// The rows of [`ADDED`]; none where the use adds nothing.
fn added(state: State, language: Language) -> Vec<El> {
    let rows = ADDED.iter().enumerate().map(|(number, &(label, of))| {
        let power = move || {
            state.look(|outcome| {
                let load = &outcome.balance()?.load;
                let adds = load.at_work.total() > load.at_rest.total();
                Some(of(load)).filter(|power| adds && (number == 0 || *power > Power::ZERO))
            })
        };
        let row = el("tr").class("added").with(&[
            el("th").attr("scope", "row").text(label(language.losses())),
            el("td").class("number").text_with(move || {
                let notation = state.notation();
                power().map(|power| notation.part_of_load(power)).unwrap_or_default()
            }),
            el("td").attr("colspan", "2"),
        ]);
        let whole = row.clone();
        keep_up(Box::new(move || whole.flag("hidden", power().is_none())));
        row
    });
    rows.collect()
}

/// Whether a part is left out: it has no figure in the table, its own or one taken over, and is not
/// about to have one.
fn is_left_out(heat_loss: &HeatLoss, part: NotCounted) -> bool {
    let NotCounted::Detail(place, reason) = part else { return true };
    reason != Reason::Waiting
        && !heat_loss.losses.iter().any(|loss| loss.element == Element::Detail(place))
}

/// The table and what it leaves out.
pub fn losses(state: State, language: Language) -> El {
    let words = language.losses();
    let body = el("tbody");
    let table = body.clone();
    let scope = Scope::present();
    // What is open goes with the element, not with the row's place.
    let open = Watched::new(Vec::new());
    let mut rows: Vec<Row> = Vec::new();
    keep_up(Box::new(move || {
        let notation = state.notation();
        let losses = state.look(|outcome| largest_first(&shown(outcome).losses));
        let largest = losses.first().map_or(1.0, |loss| loss.share);
        let before: Vec<Element> = rows.iter().map(|row| row.element).collect();
        let mut known = std::mem::take(&mut rows);
        for loss in &losses {
            let row = match known.iter().position(|row| row.element == loss.element) {
                Some(place) => known.swap_remove(place),
                // Rows outlive this run: a row that is kept must keep up.
                None => scope.with(|| Row::new(state, language, loss.element, open)),
            };
            row.show(loss, largest, notation);
            row.whole.toggle("small", loss.share < SMALL);
            rows.push(row);
        }
        if !rows.iter().map(|row| row.element).eq(before) {
            let whole: Vec<El> = rows.iter().map(|row| row.whole.clone()).collect();
            table.put_in_order(&whole);
        }
    }));
    let left_out = el("ul").class("not-counted").rows_with(["li", "span", "span"], move || {
        state.look(|outcome| {
            let heat_loss = shown(outcome);
            let parts = heat_loss.not_counted.iter().filter(|part| is_left_out(heat_loss, **part));
            parts.map(|&part| [language.not_counted(part), String::new()]).collect()
        })
    });
    let column = |name| el("th").attr("scope", "col").text(name);
    let head = el("tr").with(&[
        column(words.part),
        column(words.loss).class("number"),
        column(words.share).class("number").attr("colspan", "2"),
    ]);
    let with_small = Watched::new(false);
    let together = move || state.look(|outcome| shown(outcome).below(SMALL));
    let toggle = el("button")
        .attr("type", "button")
        .class("mind")
        .test_id("small-losses")
        .attr_with("aria-expanded", move || with_small.get().to_string())
        .on("click", move |_| with_small.update(|with| *with = !*with))
        .text_with(move || {
            let count = state.notation().count(together().count as f64);
            words.small.with(&[&count, &state.notation().percent(SMALL)])
        });
    let small = el("tr").class("together").with(&[
        el("th").attr("scope", "row").child(&toggle),
        el("td").class("number").text_with(move || state.notation().part_of_load(together().power)),
        el("td").class("number").text_with(move || state.notation().percent(together().share)),
        el("td"),
    ]);
    let foot = el("tr").class("total").with(&[
        el("th").attr("scope", "row").text(words.total),
        el("td").class("number").text_with(move || total(state)),
        el("td").attr("colspan", "2").class("aside").text_with(move || about(state)),
    ]);
    let whole = el("section").class("losses").test_id("losses").attr("aria-label", words.title);
    let mut is_first = true;
    let settling = whole.clone();
    keep_up(Box::new(move || {
        // From the second design on, rows are taken over until they are solved.
        is_first &= state.look(Outcome::is_refining);
        settling.toggle("settling", is_first);
    }));
    whole.with(&[
        el("h3").text(words.title),
        el("table").class_with("with-small", move || with_small.get()).with(&[
            el("thead").child(&head),
            body,
            el("tfoot").child(&small).with(&added(state, language)).child(&foot),
        ]),
        el("h4").text(words.not_counted),
        el("p").class("remark").text(words.not_counted_note),
        left_out,
    ])
}

/// The sum as the answer says it.
fn about(state: State) -> String {
    let notation = state.notation();
    let load = state.look(|outcome| notation.load(needed(outcome)));
    notation.language.answer().about.with(&[&load])
}

fn total(state: State) -> String {
    let notation = state.notation();
    state.look(|outcome| notation.part_of_load(needed(outcome)))
}

fn needed(outcome: &Outcome) -> Power {
    outcome.balance().map_or(Power::ZERO, |balance| balance.load.greatest())
}

/// One row of the table.
struct Row {
    element: Element,
    whole: El,
    power: El,
    share: El,
    bar: El,
}

impl Row {
    fn new(state: State, language: Language, element: Element, open: Open<Element>) -> Self {
        let row = Self {
            element,
            whole: el("tr"),
            power: el("td").class("number"),
            share: el("td").class("number"),
            bar: el("span"),
        };
        let summary = el("summary")
            .text(language.element(element))
            // Never on a line of its own.
            .text("\u{a0}")
            .child(&el("span").class("how").text(language.losses().how));
        let details = disclosure(element, open, summary, move || {
            let notation = state.notation();
            state.look(|outcome| {
                let loss = shown(outcome).losses.iter().find(|loss| loss.element == element);
                let Some(loss) = loss else { return Vec::new() };
                let how = reckoning(outcome.best(), loss, notation);
                let behind: Vec<El> = how.behind.iter().map(|line| el("li").text(line)).collect();
                vec![el("p").class("formula").text(&how.formula), el("ul").with(&behind)]
            })
        });
        let whole = row.whole.clone();
        whole.with(&[
            el("th").attr("scope", "row").child(&details),
            row.power.clone(),
            row.share.clone(),
            el("td").class("share-bar").attr("aria-hidden", "true").child(&row.bar),
        ]);
        row
    }

    /// Writes the figures; the largest share fills the bar's cell.
    fn show(&self, loss: &Loss, largest: f64, notation: Notation) {
        self.power.say(&notation.part_of_load(loss.power));
        self.share.say(&notation.percent(loss.share));
        // What brings heat in has no bar.
        let width = plain((loss.share / largest).max(0.0) * 100.0, 1, "%");
        let _ = self.bar.html().style().set_property("inline-size", &width);
    }
}
