//! The fan at its openings: clean, dirty, and with a damper stuck.

use inchwise_core::humidity::FanPoint;
use inchwise_core::units::Force;

use super::damp_line::{Figure, asked_of_damp};
use super::how::Open;
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::reactive::{Scope, keep_up};
use crate::state::State;

/// One row: what it is a figure of, its name, then a figure for each column.
#[derive(PartialEq)]
struct Row {
    figure: Figure,
    name: &'static str,
    cells: Vec<String>,
}

fn rows(points: &[&FanPoint], notation: Notation) -> Vec<Row> {
    let words = notation.language.air_words();
    let row = |figure, name, write: &dyn Fn(&FanPoint) -> String| Row {
        figure,
        name,
        cells: points.iter().map(|point| write(point)).collect(),
    };
    let mut rows = vec![
        row(Figure::Moves, words.row_flow, &|point| notation.air_flow(point.exhausted())),
        row(Figure::Suction, words.row_suction, &|point| notation.small_pressure(point.suction())),
        row(Figure::Pull, words.row_pull, &|point| notation.force(point.pull_on_door)),
        row(Figure::IntakeSpeed, words.row_intake, &|point| notation.air_speed(point.intake_speed)),
        row(Figure::ExhaustSpeed, words.row_exhaust, &|point| {
            notation.air_speed(point.exhaust_speed)
        }),
    ];
    // People use the cargo doors: there is no leaf to pull at.
    if points.iter().all(|point| point.pull_on_door == Force::ZERO) {
        rows.retain(|row| row.figure != Figure::Pull);
    }
    rows
}

/// The table; empty without a fan. It is made anew only when a figure of it changed.
pub fn table(state: State, open: Open<Figure>) -> El {
    let holder = el("div").class("fan-table");
    let held = holder.clone();
    let scope = Scope::present();
    // Made once: what is open of a name stays open while the figures beside it change.
    let mut names: Vec<(Figure, El)> = Vec::new();
    let mut last = None;
    keep_up(Box::new(move || {
        let notation = state.notation();
        let words = notation.language.air_words();
        let found = state.look(|outcome| {
            let run = outcome.balance()?.humidity.fan.run()?;
            let points = [
                (words.clean, Some(&run.clean)),
                (words.dirty, Some(&run.dirty)),
                (words.stuck, run.intake_stuck.as_ref()),
                (words.exhaust_stuck, run.exhaust_stuck.as_ref()),
            ];
            let known = points.into_iter().filter_map(|(head, point)| Some((head, point?)));
            let (heads, points): (Vec<&str>, Vec<&FanPoint>) = known.unzip();
            Some((heads, rows(&points, notation)))
        });
        if last.as_ref() != Some(&found) {
            let drawn = found.as_ref().map(|(heads, rows)| {
                for row in rows {
                    if !names.iter().any(|(figure, _)| *figure == row.figure) {
                        let name = el("summary").text(row.name);
                        let asked = scope.with(|| asked_of_damp(state, row.figure, open, name));
                        names.push((row.figure, asked));
                    }
                }
                drawn(heads, rows, &names)
            });
            held.refill(drawn.as_slice());
            last = Some(found);
        }
    }));
    holder
}

fn drawn(heads: &[&str], rows: &[Row], names: &[(Figure, El)]) -> El {
    let head = |name: &str| el("th").attr("scope", "col").class("number").text(name);
    let heads: Vec<El> = heads.iter().map(|name| head(name)).collect();
    let body: Vec<El> = rows
        .iter()
        .map(|row| {
            let named = names.iter().find(|(figure, _)| *figure == row.figure);
            let name = named.map(|(_, name)| name.clone());
            let cells = row.cells.iter();
            let figures: Vec<El> = cells.map(|cell| el("td").class("number").text(cell)).collect();
            el("tr").child(&el("th").attr("scope", "row").with(name.as_slice())).with(&figures)
        })
        .collect();
    let top = el("tr").child(&el("td")).with(&heads);
    el("table").test_id("fan-table").with(&[el("thead").child(&top), el("tbody").with(&body)])
}
