//! The fan at its openings: clean, dirty, and with an intake stuck.

use inchwise_core::damp::FanPoint;

use crate::dom::{El, el};
use crate::measure::Notation;
use crate::reactive::keep_up;
use crate::state::State;

/// One row: its name, then a figure for each column.
type Row = Vec<String>;

fn rows(points: &[&FanPoint], notation: Notation) -> Vec<Row> {
    let words = notation.language.damp();
    let row = |name: &str, write: &dyn Fn(&FanPoint) -> String| {
        let figures = points.iter().map(|point| write(point));
        core::iter::once(name.to_owned()).chain(figures).collect()
    };
    vec![
        row(words.row_flow, &|point| notation.air_flow(point.exhausted())),
        row(words.row_suction, &|point| notation.small_pressure(point.suction())),
        row(words.row_pull, &|point| notation.force(point.pull_on_door)),
        row(words.row_intake, &|point| notation.air_speed(point.intake_speed)),
        row(words.row_exhaust, &|point| notation.air_speed(point.exhaust_speed)),
    ]
}

/// The table; empty without a fan. It is made anew only when a figure of it changed.
pub fn table(state: State) -> El {
    let holder = el("div").class("fan-table");
    let held = holder.clone();
    let mut last = None;
    keep_up(Box::new(move || {
        let notation = state.notation();
        let words = notation.language.damp();
        let mut heads = vec![words.clean, words.dirty];
        let found = state.look(|outcome| {
            let run = outcome.good.damp().ok()?.fan.run()?;
            let points = [Some(&run.clean), Some(&run.dirty), run.intake_stuck.as_ref()];
            let points: Vec<&FanPoint> = points.into_iter().flatten().collect();
            Some((points.len(), rows(&points, notation)))
        });
        if found.as_ref().is_some_and(|(count, _)| *count == 3) {
            heads.push(words.stuck);
        }
        if last.as_ref() != Some(&found) {
            let drawn = found.as_ref().map(|(_, rows)| drawn(&heads, rows));
            held.refill(drawn.as_slice());
            last = Some(found);
        }
    }));
    holder
}

fn drawn(heads: &[&str], rows: &[Row]) -> El {
    let head = |name: &str| el("th").attr("scope", "col").class("number").text(name);
    let heads: Vec<El> = heads.iter().map(|name| head(name)).collect();
    let body: Vec<El> = rows
        .iter()
        .map(|row| {
            let mut cells = row.iter();
            let name = cells.next().map(|name| el("th").attr("scope", "row").text(name));
            let figures: Vec<El> = cells.map(|cell| el("td").class("number").text(cell)).collect();
            el("tr").with(name.as_slice()).with(&figures)
        })
        .collect();
    let top = el("tr").child(&el("td")).with(&heads);
    el("table").test_id("fan-table").with(&[el("thead").child(&top), el("tbody").with(&body)])
}
