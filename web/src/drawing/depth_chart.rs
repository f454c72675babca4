//! Room lost against heating load along the depth of the wall foam, drawn.

use inchwise_core::design::EndWallTreatment;
use inchwise_core::tradeoff::WallDepthPoint;
use inchwise_core::units::{Length, METRES_PER_INCH};
use leptos::prelude::{Get, With};

use super::geometry::{ChartPlane, Curve, Point, all_open, curves, frame_face, open};
use super::paper::{Paper, label, path, still_path};
use crate::dom::{El, el, svg};
use crate::kept::Kept;
use crate::measure::{Notation, UnitSystem, decimal, plain};
use crate::state::State;
use crate::text::Language;

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
        let (treatment, frame, present) = state.look(|outcome| {
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
pub fn depth_chart(state: State, language: Language) -> El {
    let chart = Kept::new(move || Chart::of(state));
    let size = Kept::new(move || chart.with(|chart| chart.plane.paper));
    let words = language.drawing();
    let told = move || {
        let notation = state.notation();
        chart.with(|chart| told(chart, notation)).unwrap_or_else(|| words.working_out.to_owned())
    };
    let labels = move || {
        let notation = state.notation();
        chart.with(|chart| labels(chart, notation))
    };
    let table = el("div").children_with(move || {
        let notation = state.notation();
        vec![chart.with(|chart| table(chart, notation))]
    });
    let details = el("details").child(&el("summary").text(words.as_table)).child(&table);
    let paper = Paper { name: NAME, size, title: words.chart };
    let drawn = paper.drawn(told, &picture(chart), labels, &[]);
    paper
        .figure("chart-figure", &[drawn, details])
        .class_with("working", move || !finished(state))
        // While fields are still being solved the mark is that of an earlier design.
        .class_with("refining", move || state.look(|outcome| outcome.is_refining()))
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

fn labels(chart: &Chart, notation: Notation) -> Vec<El> {
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
        labels.push(label(paper, at, "tick", &figure(tick)));
    }
    for tick in plane.load.ticks() {
        let at = Point::new(plot.left - 10.0, plane.load_at(tick));
        labels.push(label(paper, at, "before tick", &figure(tick)));
    }
    let cubic = match notation.language {
        crate::text::Language::English => "ft³",
        crate::text::Language::French => "pi³",
    };
    labels.push(label(
        paper,
        Point::new(plot.right, plot.bottom + 66.0),
        "before small",
        &words.room_lost.with(&[units("L", cubic)]),
    ));
    labels.push(label(
        paper,
        Point::new(plot.left, plot.top - 26.0),
        "after small",
        &words.heating_load.with(&[units("W", notation.btu())]),
    ));
    if !chart.finished {
        labels.push(label(paper, plot.centre(), "waiting", words.working_out));
    }
    if let Some(own) = chart.own() {
        let present = chart.present.map(|present| (present.depth, plane.place(&present)));
        for point in own.points.iter().filter(|point| is_round(point.depth, notation.units)) {
            let place = plane.place(point);
            // The present design's own mark goes before a figure it would cover.
            let covered = present.is_some_and(|(depth, mark)| {
                let apart = (place.x - mark.x).abs() + (place.y - mark.y).abs();
                apart < 40.0 && depth != point.depth
            });
            if covered {
                continue;
            }
            let below = if point.depth > chart.frame { 22.0 } else { 4.0 };
            let at = Point::new(place.x - 12.0, place.y + below);
            labels.push(label(paper, at, "before depth", &notation.length(point.depth)));
        }
    }
    if let Some([_, note]) = kink_leader(chart) {
        let text = words.kink.with(&[&notation.length(chart.frame)]);
        labels.push(label(paper, Point::new(note.x + 6.0, note.y - 30.0), "after kink", &text));
    }
    for (curve, leader) in treatment_leaders(chart) {
        let class = if is_own(chart, curve) { "after own" } else { "after" };
        labels.push(label(
            paper,
            Point::new(leader[2].x + 6.0, leader[2].y),
            class,
            &named(curve, notation),
        ));
    }
    if let Some(present) = &chart.present {
        let present = plane.place(present);
        // The curves come from above on the left and go on below on the right.
        let (at, class) = if present.x < plot.left + 0.7 * plot.width() {
            (Point::new(present.x + 16.0, present.y - 26.0), "after this-design")
        } else {
            let x = (present.x + 100.0).min(paper.right);
            (Point::new(x, present.y + 46.0), "before this-design")
        };
        labels.push(label(paper, at, class, words.this_design));
    }
    labels
}

fn is_own(chart: &Chart, curve: &Curve) -> bool {
    curve.treatments.contains(&chart.treatment)
}

/// From the kink of the own curve down to its note, where the curve has one.
fn kink_leader(chart: &Chart) -> Option<[Point; 2]> {
    let points = &chart.own()?.points;
    let kink = points.iter().find(|point| point.depth == chart.frame)?;
    let place = chart.plane.place(kink);
    Some([place, Point::new(place.x, chart.plane.plot.bottom - 40.0)])
}

/// From the thin end of each curve up and over to its name. The curve furthest left goes up
/// furthest, so that no leader crosses another.
fn treatment_leaders(chart: &Chart) -> Vec<(&Curve, [Point; 3])> {
    let plane = &chart.plane;
    let mut tops: Vec<(&Curve, Point)> = Vec::new();
    for curve in &chart.curves {
        if let Some(point) = curve.points.first() {
            let top = plane.place(point);
            let further = tops.iter().position(|(_, other)| other.x > top.x);
            tops.insert(further.unwrap_or(tops.len()), (curve, top));
        }
    }
    let Some(&(_, last)) = tops.last() else { return Vec::new() };
    const ROW: f64 = 46.0;
    let names = last.x + 40.0;
    let row = |index: usize| plane.plot.top + 26.0 + ROW * index as f64;
    tops.into_iter()
        .enumerate()
        .map(|(index, (curve, top))| {
            let y = row(index).min(top.y);
            (curve, [top, Point::new(top.x, y), Point::new(names, y)])
        })
        .collect()
}

fn grid(chart: &Chart) -> String {
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
    let lines: Vec<[Point; 2]> = across.chain(up).collect();
    all_open(lines.iter().map(|line| &line[..]))
}

fn leaders(chart: &Chart) -> String {
    let to_names = treatment_leaders(chart);
    all_open(to_names.iter().map(|(_, line)| &line[..]))
        + &all_open(kink_leader(chart).iter().map(|line| &line[..]))
}

/// Every curve; the one the design lies on with a dot at each point.
fn lines(chart: &Chart) -> Vec<El> {
    let mut lines = Vec::new();
    for curve in &chart.curves {
        let own = is_own(chart, curve);
        let points: Vec<Point> =
            curve.points.iter().map(|point| chart.plane.place(point)).collect();
        lines.push(still_path(if own { "curve own" } else { "curve" }, &open(&points)));
        if own {
            lines.extend(points.iter().map(|&point| circle("curve-dot", point, 5.0)));
        }
    }
    lines
}

fn circle(class: &str, at: Point, radius: f64) -> El {
    svg("circle")
        .class(class)
        .attr("cx", &plain(at.x, 1, ""))
        .attr("cy", &plain(at.y, 1, ""))
        .attr("r", &plain(radius, 0, ""))
}

fn picture(chart: Kept<Chart>) -> Vec<El> {
    let present = move || {
        chart.with(|chart| {
            let place = chart.present.as_ref().map(|present| chart.plane.place(present));
            place.map(|at| circle("present", at, 11.0)).into_iter().collect()
        })
    };
    vec![
        path("grid", move || chart.with(grid)),
        svg("g").class("curves").children_with(move || chart.with(lines)),
        path("fine", move || chart.with(leaders)),
        svg("g").children_with(present),
    ]
}

fn table(chart: &Chart, notation: Notation) -> El {
    let words = notation.language.drawing();
    let Some(first) = chart.curves.first().filter(|_| chart.finished) else {
        return el("p").text(words.working_out);
    };
    let head = |text: &str| el("th").attr("scope", "col").text(text);
    let heads = chart.curves.iter().flat_map(|curve| {
        [words.lost, words.load].map(|what| head(&format!("{}: {what}", named(curve, notation))))
    });
    let heads: Vec<El> = [head(words.wall_foam)].into_iter().chain(heads).collect();
    let depths = first.points.iter().map(|point| point.depth);
    let rows = depths.filter(|&depth| is_round(depth, notation.units) || depth == chart.frame);
    let rows: Vec<El> = rows
        .map(|depth| {
            let cells = chart.curves.iter().flat_map(|curve| {
                let point = curve.points.iter().find(|point| point.depth == depth);
                let lost = point.map(|point| notation.volume(point.lost_volume));
                let load = point.map(|point| notation.load(point.design_load));
                [lost, load].map(|cell| el("td").text(&cell.unwrap_or_default()))
            });
            let depth = el("th").attr("scope", "row").text(&notation.length(depth));
            el("tr").child(&depth).with(&cells.collect::<Vec<_>>())
        })
        .collect();
    el("table").with(&[
        el("caption").text(words.table_caption),
        el("thead").child(&el("tr").with(&heads)),
        el("tbody").with(&rows),
    ])
}
