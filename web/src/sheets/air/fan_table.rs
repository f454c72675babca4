//! The fan at its openings: clean, dirty, and with a damper stuck.

use inchwise_core::damp::FanPoint;
use inchwise_core::units::Force;
use leptos::prelude::*;

use super::said::Figure;
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::{Working, WorkingView};

/// One row: what it is a figure of, its name, then a figure for each column.
#[derive(Clone, PartialEq)]
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

/// The table; nothing without a fan.
#[component]
pub fn FanTable(
    /// How a figure comes about.
    how: fn(Planner, Figure) -> Option<Working>,
) -> impl IntoView {
    let planner = Planner::here();
    let found = Memo::new(move |_| {
        let notation = planner.notation();
        let words = notation.language.air_words();
        planner.look(|evaluation| {
            let run = evaluation.damp().ok()?.fan.run()?;
            let points = [
                (words.clean, Some(&run.clean)),
                (words.dirty, Some(&run.dirty)),
                (words.stuck, run.intake_stuck.as_ref()),
                (words.exhaust_stuck, run.exhaust_stuck.as_ref()),
            ];
            let known = points.into_iter().filter_map(|(head, point)| Some((head, point?)));
            let (heads, points): (Vec<&'static str>, Vec<&FanPoint>) = known.unzip();
            Some((heads, rows(&points, notation)))
        })
    });
    let is_there = Memo::new(move |_| found.with(Option::is_some));
    let heads = move || {
        let heads = found.with(|found| found.as_ref().map(|it| it.0.clone())).unwrap_or_default();
        heads
            .into_iter()
            .map(|head| view! { <th scope="col" class="number">{head}</th> })
            .collect_view()
    };
    let figures = move || {
        found.with(|found| {
            let rows = found.as_ref().map(|(_, rows)| rows.iter().map(|row| row.figure).collect());
            rows.unwrap_or_else(Vec::new)
        })
    };
    let row = move |figure: Figure| {
        let of = move |found: &Option<(Vec<&'static str>, Vec<Row>)>| {
            let rows = found.as_ref().map(|(_, rows)| rows.as_slice()).unwrap_or_default();
            rows.iter().find(|row| row.figure == figure).cloned()
        };
        let name = move || found.with(of).map(|row| row.name);
        let cells = move || {
            let cells = found.with(of).map(|row| row.cells).unwrap_or_default();
            cells.into_iter().map(|it| view! { <td class="number">{it}</td> }).collect_view()
        };
        let is_open = RwSignal::new(false);
        let toggle = move |event: leptos::ev::Event| {
            let details: web_sys::Element = event_target(&event);
            is_open.set(details.has_attribute("open"));
        };
        let inside = move || {
            let working = if is_open.get() { how(planner, figure) } else { None };
            working.map(|working| view! { <WorkingView working/> })
        };
        view! {
            <tr>
                <th scope="row">
                    <details on:toggle=toggle>
                        <summary>
                            {name} {"\u{a0}"}
                            <span class="how">{move || planner.language.get().losses().how}</span>
                        </summary>
                        <div class="working">{inside}</div>
                    </details>
                </th>
                {cells}
            </tr>
        }
    };
    move || {
        is_there.get().then(|| {
            view! {
                <div class="scrolled">
                    <table data-testid="fan-table">
                        <thead><tr><td>{""}</td>{heads}</tr></thead>
                        <tbody><For each=figures key=|figure| *figure children=row/></tbody>
                    </table>
                </div>
            }
        })
    }
}
