//! Lines of figures, each with its working one touch away.

use inchwise_core::damp::Damp;
use inchwise_core::design::Surface;
use inchwise_core::evaluate::Evaluation;

use super::damp_working::working;
use super::how::{Open, disclosure};
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::reactive::{Scope, keep_up};
use crate::state::State;

/// A figure of damp and air that can be asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// What the use gives off.
    Gives,
    /// The room with leaks alone.
    Alone,
    /// What holds the humidity.
    Holding,
    /// What the weakest spot stands.
    Weakest,
    /// What the next one stands.
    Next,
    /// Until when outdoor air holds the room.
    Mild,
    /// What the room settles at in a cold spell.
    Balance,
    /// What lands on the cold spots.
    Spell,
    /// Air for those inside.
    Occupants,
    /// What warming the air takes.
    Warming,
    /// Air on a hot day.
    HotDay,
    /// Open dampers with the fan off.
    OpenDampers,
    /// What the fan moves.
    Moves,
    /// How far the room is drawn down.
    Suction,
    /// The pull on the door.
    Pull,
    /// The speed on the intakes.
    IntakeSpeed,
    /// The speed on the exhaust.
    ExhaustSpeed,
    /// What gathers inside a surface.
    Inside(Surface),
}

/// A line: what it is a figure of, its label, and what is said behind it.
pub struct Line {
    /// What can be asked about it.
    pub figure: Figure,
    /// In bold.
    pub label: String,
    /// Behind that.
    pub said: String,
}

/// Writes lines from an evaluation.
pub type Lines = fn(&Evaluation, &Damp, Notation) -> Vec<Line>;

/// How a figure comes about.
#[derive(Debug)]
pub struct Working {
    /// The formula in words.
    pub rule: &'static str,
    /// The numbers put in, a step each.
    pub steps: Vec<String>,
    /// Where the formula and its constants come from.
    pub source: String,
}

/// A figure's name or sentence that unfolds its working.
pub fn asked(state: State, figure: Figure, open: Open<Figure>, summary: El) -> El {
    let how = move || state.notation().language.losses().how.to_owned();
    let summary = summary.text("\u{a0}").child(&el("span").class("how").text_with(how));
    disclosure(figure, open, summary, move || {
        let notation = state.notation();
        state.look(|outcome| {
            let Ok(damp) = outcome.good.damp() else { return Vec::new() };
            let Some(working) = working(figure, &outcome.good, damp, notation) else {
                return Vec::new();
            };
            let steps: Vec<El> = working.steps.iter().map(|step| el("li").text(step)).collect();
            let source = notation.language.workings().source.with(&[&working.source]);
            vec![
                el("p").text(working.rule),
                el("ul").with(&steps),
                el("p").class("hint").text(&source),
            ]
        })
    })
}

/// Lines that keep up; only what changed is written.
pub fn lines(state: State, open: Open<Figure>, test_id: &str, write: Lines) -> El {
    let list = el("ul").class("said").test_id(test_id);
    let held = list.clone();
    let scope = Scope::present();
    // A row once made is kept for when its line comes back.
    let mut rows: Vec<Row> = Vec::new();
    let mut shown: Vec<Figure> = Vec::new();
    keep_up(Box::new(move || {
        let notation = state.notation();
        let lines = state.look(|outcome| {
            let damp = outcome.good.damp();
            damp.map(|damp| write(&outcome.good, damp, notation)).unwrap_or_default()
        });
        let now: Vec<Figure> = lines.iter().map(|line| line.figure).collect();
        for line in lines {
            if !rows.iter().any(|row| row.figure == line.figure) {
                // Rows outlive this run: a row that is kept must keep up.
                rows.push(scope.with(|| Row::new(state, line.figure, open)));
            }
            if let Some(row) = rows.iter_mut().find(|row| row.figure == line.figure) {
                row.show(line);
            }
        }
        if now != shown {
            let whole = now.iter().filter_map(|figure| {
                rows.iter().find(|row| row.figure == *figure).map(|row| row.whole.clone())
            });
            held.refill(&whole.collect::<Vec<_>>());
            shown = now;
        }
    }));
    list
}

struct Row {
    figure: Figure,
    whole: El,
    cells: [El; 2],
    last: [String; 2],
}

impl Row {
    fn new(state: State, figure: Figure, open: Open<Figure>) -> Self {
        let cells = [el("b"), el("span")];
        let summary = el("summary").child(&cells[0]).text(" ").child(&cells[1]);
        let whole = el("li").child(&asked(state, figure, open, summary));
        Self { figure, whole, cells, last: Default::default() }
    }

    fn show(&mut self, line: Line) {
        let now = [line.label, line.said];
        for ((cell, last), text) in self.cells.iter().zip(&mut self.last).zip(now) {
            if *last != text {
                cell.say(&text);
                *last = text;
            }
        }
    }
}
