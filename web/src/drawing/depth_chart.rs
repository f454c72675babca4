//! Room lost against heating load along the depth of the wall foam, drawn.

use inchwise_core::design::EndWallTreatment;
use inchwise_core::tradeoff::WallDepthPoint;
use inchwise_core::units::{Length, METRES_PER_INCH};
use leptos::prelude::*;

use super::geometry::{ChartPlane, Curve, Point, all_open, curves, frame_face, open};
use super::paper::{Paper, heading, label, together};
use crate::measure::{Notation, UnitSystem, decimal};
use crate::state::State;

const NAME: &str = "chart";

/// Everything the chart shows at once.
#[derive(Clone, PartialEq)]
struct Chart {
    plane: ChartPlane,
    curves: Vec<Curve>,
    present: Option<WallDepthPoint>,
    treatment: EndWallTreatment,
    frame: Length,
    finished: bool,
}

impl Chart {
    fn of(state: State) -> Self {
        let (treatment, frame, present) = state.outcome.with(|outcome| {
            let design = outcome.good.checked.design();
            (design.end_wall_treatment, frame_face(design), outcome.point)
        });
        state.curve.with(|found| {
            let curves = found.as_ref().map(|(_, points)| curves(points)).unwrap_or_default();
            // Points at the depths of other units stay drawn until the new ones are there.
            let units = found.as_ref().map_or_else(|| state.units.get(), |((_, units), _)| *units);
            let points = curves.iter().flat_map(|curve| &curve.points).chain(&present);
            Self {
                plane: ChartPlane::holding(points, units),
                present,
                treatment,
                frame,
                finished: finished(state),
                curves,
            }
        })
    }

    /// The curve the present design lies on.
    fn own(&self) -> Option<&Curve> {
        self.curves.iter().find(|curve| curve.treatments.contains(&self.treatment))
    }
}

/// Whether the curve follows from the present choices.
fn finished(state: State) -> bool {
    state.curve.with(|curve| {
        curve.as_ref().is_some_and(|(key, _)| state.curve_key.with(|present| key == present))
    })
}

/// The chart, its axes named, and under it the same as a table.
pub fn depth_chart(state: State) -> AnyView {
    let chart = Memo::new(move |_| Chart::of(state));
    let size = Memo::new(move |_| chart.with(|chart| chart.plane.paper));
    let words = move || state.language.get().drawing();
    let title = Signal::derive(move || words().chart);
    let told = Signal::derive(move || {
        let notation = state.notation();
        chart.with(|chart| told(chart, notation)).unwrap_or_else(|| words().working_out.to_owned())
    });
    let paper = Paper { name: NAME, size, title, told };
    let labels = move || {
        let notation = state.notation();
        chart.with(|chart| labels(chart, notation))
    };
    let table = move || {
        let notation = state.notation();
        chart.with(|chart| table(chart, notation))
    };
    let drawn = paper.drawn(move || chart.with(picture), labels, ().into_any());
    view! {
        <figure
            class="drawing-figure chart-figure"
            class:working=move || !finished(state)
            data-testid=NAME
        >
            {heading(title)}
            {drawn}
            <details>
                <summary>{move || words().as_table}</summary>
                {table}
            </details>
        </figure>
    }
    .into_any()
}

fn told(chart: &Chart, notation: Notation) -> Option<String> {
    let points = chart.own().filter(|_| chart.finished)?;
    let (first, last) = (points.points.first()?, points.points.last()?);
    let words = notation.language.drawing();
    Some(words.chart_told.with(&[
        &notation.length(first.depth),
        &notation.volume(first.lost_volume),
        &notation.load(first.design_load),
        &notation.length(last.depth),
        &notation.volume(last.lost_volume),
        &notation.load(last.design_load),
        &notation.length(chart.frame),
    ]))
}

/// The names of the treatments that share a curve.
fn named(curve: &Curve, notation: Notation) -> String {
    let names: Vec<_> =
        curve.treatments.iter().map(|&one| notation.language.treatment_label(one)).collect();
    names.join(" / ")
}

/// Whether a depth stands at a whole step of the units, and so carries its figure.
fn is_round(depth: Length, units: UnitSystem) -> bool {
    let steps = match units {
        UnitSystem::Metric => depth.as_mm() / 25.0,
        UnitSystem::Imperial => depth.value() / METRES_PER_INCH,
    };
    (steps - steps.round()).abs() < 1e-6
}

fn labels(chart: &Chart, notation: Notation) -> AnyView {
    let words = notation.language.drawing();
    let plane = &chart.plane;
    let (paper, plot) = (&plane.paper, &plane.plot);
    let units = |metric: &'static str, imperial: &'static str| match notation.units {
        UnitSystem::Metric => metric,
        UnitSystem::Imperial => imperial,
    };
    let figure = |value: f64| decimal(value, 0, notation.language);
    let mut labels = Vec::new();
    for tick in plane.lost.ticks() {
        let at = Point::new(plane.lost_at(tick), plot.bottom + 24.0);
        labels.push(label(paper, at, "tick", figure(tick)));
    }
    for tick in plane.load.ticks() {
        let at = Point::new(plot.left - 10.0, plane.load_at(tick));
        labels.push(label(paper, at, "before tick", figure(tick)));
    }
    let cubic = match notation.language {
        crate::text::Language::English => "ft³",
        crate::text::Language::French => "pi³",
    };
    labels.push(label(
        paper,
        Point::new(plot.right, plot.bottom + 66.0),
        "before small",
        words.room_lost.with(&[units("L", cubic)]),
    ));
    labels.push(label(
        paper,
        Point::new(plot.left, plot.top - 26.0),
        "after small",
        words.heating_load.with(&[units("W", notation.btu())]),
    ));
    if !chart.finished {
        labels.push(label(paper, plot.centre(), "waiting", words.working_out));
    }
    if let Some(own) = chart.own() {
        for point in own.points.iter().filter(|point| is_round(point.depth, notation.units)) {
            let place = plane.place(point);
            let at = Point::new(place.x - 12.0, place.y + 6.0);
            labels.push(label(paper, at, "before depth", notation.length(point.depth)));
        }
        let kink = own.points.iter().find(|point| point.depth == chart.frame);
        if let Some(kink) = kink {
            let place = plane.place(kink);
            let at = Point::new(place.x - 12.0, place.y + 6.0);
            let text = words.kink.with(&[&notation.length(chart.frame)]);
            labels.push(label(paper, at, "before kink", text));
        }
    }
    for curve in &chart.curves {
        if let Some(first) = curve.points.first() {
            let place = plane.place(first);
            let at = Point::new(place.x, place.y - 10.0);
            labels.push(label(paper, at, "treatment", named(curve, notation)));
        }
    }
    if let Some(present) = &chart.present {
        let present = plane.place(present);
        let at = Point::new(present.x + 16.0, present.y - 16.0);
        labels.push(label(paper, at, "after this-design", words.this_design));
    }
    together(labels)
}

fn picture(chart: &Chart) -> AnyView {
    let plane = &chart.plane;
    let plot = plane.plot;
    let across = plane.load.ticks().into_iter().map(|tick| {
        let y = plane.load_at(tick);
        [Point::new(plot.left, y), Point::new(plot.right, y)]
    });
    let up = plane.lost.ticks().into_iter().map(|tick| {
        let x = plane.lost_at(tick);
        [Point::new(x, plot.top), Point::new(x, plot.bottom)]
    });
    let grid: Vec<[Point; 2]> = across.chain(up).collect();
    let lines = chart.curves.iter().map(|curve| {
        let own = curve.treatments.contains(&chart.treatment);
        let line: Vec<Point> = curve.points.iter().map(|point| plane.place(point)).collect();
        let dots = own.then(|| {
            let dots = line.iter().map(|&point| {
                view! { <circle class="curve-dot" cx=point.x cy=point.y r="5" /> }.into_any()
            });
            together(dots.collect())
        });
        let class = if own { "curve own" } else { "curve" };
        view! {
            <path class=class d=open(&line) />
            {dots}
        }
        .into_any()
    });
    let present = chart.present.as_ref().map(|present| {
        let at = plane.place(present);
        view! { <circle class="present" cx=at.x cy=at.y r="11" /> }
    });
    view! {
        <path class="grid" d=all_open(grid.iter().map(|line| &line[..])) />
        <g class="curves">{together(lines.collect())}</g>
        {present}
    }
    .into_any()
}

fn table(chart: &Chart, notation: Notation) -> AnyView {
    let words = notation.language.drawing();
    let Some(first) = chart.curves.first().filter(|_| chart.finished) else {
        return view! { <p>{words.working_out}</p> }.into_any();
    };
    let heads = chart.curves.iter().map(|curve| {
        view! {
            <th scope="col">{format!("{}: {}", named(curve, notation), words.lost)}</th>
            <th scope="col">{format!("{}: {}", named(curve, notation), words.load)}</th>
        }
        .into_any()
    });
    let depths = first.points.iter().map(|point| point.depth);
    let rows = depths.filter(|&depth| is_round(depth, notation.units) || depth == chart.frame);
    let rows = rows.map(|depth| {
        let cells = chart.curves.iter().map(|curve| {
            let point = curve.points.iter().find(|point| point.depth == depth);
            let lost = point.map(|point| notation.volume(point.lost_volume));
            let load = point.map(|point| notation.load(point.design_load));
            view! {
                <td>{lost}</td>
                <td>{load}</td>
            }
            .into_any()
        });
        view! {
            <tr>
                <th scope="row">{notation.length(depth)}</th>
                {together(cells.collect())}
            </tr>
        }
        .into_any()
    });
    view! {
        <table>
            <caption>{words.table_caption}</caption>
            <thead>
                <tr>
                    <th scope="col">{words.wall_foam}</th>
                    {together(heads.collect())}
                </tr>
            </thead>
            <tbody>{together(rows.collect())}</tbody>
        </table>
    }
    .into_any()
}
