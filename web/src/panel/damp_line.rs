//! Lines of figures, each with its working one touch away.

use inchwise_core::design::Surface;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::humidity::Humidity;

use super::asked::{Row, asked, rows};
use super::damp_working::working;
use super::how::Open;
use crate::dom::{El, el};
use crate::measure::Notation;
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
pub type Lines = fn(&Evaluation, &Humidity, Notation) -> Vec<Line>;

/// A figure's name or sentence that unfolds its working.
pub fn asked_of_damp(state: State, figure: Figure, open: Open<Figure>, summary: El) -> El {
    asked(state, figure, open, summary, move || {
        let notation = state.notation();
        state
            .look(|outcome| working(figure, outcome.best(), &outcome.balance()?.humidity, notation))
    })
}

/// Lines that keep up.
pub fn lines(state: State, open: Open<Figure>, test_id: &str, write: Lines) -> El {
    let make = move |figure| {
        let cells = [el("b"), el("span")];
        let summary = el("summary").child(&cells[0]).text(" ").child(&cells[1]);
        let whole = el("li").child(&asked_of_damp(state, figure, open, summary));
        Row { figure, whole, cells }
    };
    rows(el("ul").class("said").test_id(test_id), make, move || {
        let notation = state.notation();
        let lines = state.look(|outcome| {
            let balance = outcome.balance();
            let written = balance.map(|it| write(outcome.best(), &it.humidity, notation));
            written.unwrap_or_default()
        });
        lines.into_iter().map(|line| (line.figure, [line.label, line.said])).collect()
    })
}
