//! Room lost against heating load along the depth of the wall foam, drawn.

use inchwise_core::design::EndWallTreatment;
use inchwise_core::heat_loss::Element;
use inchwise_core::tradeoff::WallDepthPoint;
use inchwise_core::units::{Length, METRES_PER_INCH};

use super::geometry::{ChartPlane, Curve, Pen, Point, Rect, curves, frame_face};
use super::paper::{Label, Picture, figure};
use super::plot::{Plotted, grid, ring};
use crate::dom::{El, el};
use crate::measure::{Notation, UnitSystem, decimal};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

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

impl Plotted for Chart {
    const NAME: &'static str = "chart";

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

    fn paper(&self) -> Rect {
        self.plane.plane.paper
    }

    fn told(&self, notation: Notation) -> String {
        let words = notation.language.drawing();
        let points = self.own().filter(|_| self.finished).map(|curve| &curve.points[..]);
        let Some([first, .., last]) = points else { return words.working_out.to_owned() };
        words.chart_told.with(&[
            &notation.length(first.depth),
            &notation.volume(first.lost_volume),
            &notation.load(first.loss),
            &notation.length(last.depth),
            &notation.volume(last.lost_volume),
            &notation.load(last.loss),
            &notation.length(self.frame),
        ])
    }

    fn labels(&self, notation: Notation) -> Vec<Label> {
        let words = notation.language.drawing();
        let plane = &self.plane.plane;
        let plot = &plane.plot;
        let number = |value: f64| decimal(value, 0, notation.language);
        let mut labels = Vec::new();
        // Ticks stand at round figures once there are curves to hold them.
        let told = !self.curves.is_empty();
        for tick in plane.across.ticks().into_iter().filter(|_| told) {
            labels.push(Label::new(
                plane.at(tick, plane.up.low).x,
                plot.bottom + 24.0,
                "tick",
                number(tick),
            ));
        }
        for tick in plane.up.ticks().into_iter().filter(|_| told) {
            let y = plane.at(plane.across.low, tick).y;
            // On a narrow page the lowest would touch the first along the edge.
            let class = if tick > plane.up.low { "before tick" } else { "before tick roomy" };
            labels.push(Label::new(plot.left - 10.0, y, class, number(tick)));
        }
        let [lost, load] = axis_units(notation);
        labels.push(Label::new(
            plot.right,
            plot.bottom + 66.0,
            "before small",
            words.room_lost.with(&[lost]),
        ));
        labels.push(Label::new(
            plot.left,
            plot.top - 26.0,
            "after small",
            words.heating_load.with(&[load]),
        ));
        if !self.finished {
            let centre = plot.centre();
            labels.push(Label::new(centre.x, centre.y, "waiting", words.working_out));
        }
        depth_labels(self, notation, &mut labels);
        if let Some([_, note]) = kink_leader(self) {
            let text = words.kink.with(&[&notation.length(self.frame)]);
            labels.push(Label::new(note.x + 6.0, note.y - 30.0, "after kink", text));
        }
        for (curve, [_, _, name]) in treatment_leaders(self) {
            let class = if is_own(self, curve) { "after own" } else { "after" };
            labels.push(Label::new(name.x + 6.0, name.y, class, named(curve, notation)));
        }
        if let Some(present) = &self.present {
            let mark = self.plane.place(present);
            // The curves come from above on the left and go on below on the right.
            let (x, y, class) = if mark.x < plot.left + 0.7 * plot.width() {
                (mark.x + 16.0, mark.y - 26.0, "after this-design")
            } else {
                ((mark.x + 100.0).min(plane.paper.right), mark.y + 46.0, "before this-design")
            };
            labels.push(Label::new(x, y, class, words.this_design));
        }
        labels
    }

    fn picture() -> Picture<Self> {
        let mut picture = Picture::new();
        picture
            .path("grid", |chart: &Self| grid(&chart.plane.plane))
            .path("curve", |chart| lines(chart, false))
            .path("curve own", |chart| lines(chart, true))
            .path("curve-dot", dots)
            .path("fine", leaders)
            .path("present", |chart| {
                chart
                    .present
                    .map_or(String::new(), |present| ring(chart.plane.place(&present), 11.0))
            });
        picture
    }
}

impl Chart {
    /// The curve the present design lies on.
    fn own(&self) -> Option<&Curve> {
        self.curves.iter().find(|curve| curve.treatments.contains(&self.treatment))
    }
}

/// Whether the curve follows from the present choices.
fn finished(state: State) -> bool {
    state.curve.with(|curve| curve.as_ref().is_some_and(|(key, _)| *key == state.curve_key()))
}

/// The chart, its axes named, and under it the same as a table.
pub fn depth_chart(state: State, language: Language) -> El {
    let words = language.drawing();
    let table_holder = el("div");
    let held = table_holder.clone();
    let mut last = None;
    keep_up(Box::new(move || {
        let chart = Chart::of(state);
        let now = (chart.curves, chart.finished, chart.frame, state.notation());
        if last.as_ref() != Some(&now) {
            let (curves, finished, frame, notation) = &now;
            held.refill(&[table(curves, *finished, *frame, *notation)]);
            last = Some(now);
        }
    }));
    let details = el("details").child(&el("summary").text(words.as_table)).child(&table_holder);
    let caption = el("figcaption").text_with(move || apart(state));
    figure(Chart::NAME, words.chart, &[Chart::drawn(state, words.chart), caption, details])
        .class_with("working", move || !finished(state))
        // While fields are still being solved the mark is that of an earlier design.
        .class_with("refining", move || state.look(|outcome| outcome.is_refining()))
}

/// What the answer counts and the curves do not, so that nobody takes one for the other.
fn apart(state: State) -> String {
    let notation = state.notation();
    state.look(|outcome| {
        let Some(shown) = &outcome.shown else { return String::new() };
        let heat_loss = &shown.heat_loss;
        let is_body = |element| matches!(element, Element::Detail(place) if place.takes_a_body());
        let bodies = heat_loss.losses.iter().filter(|loss| is_body(loss.element));
        notation.language.losses().not_in_curves.with(&[
            &notation.part_of_load(bodies.map(|loss| loss.power).sum()),
            &notation.load(heat_loss.losses.iter().map(|loss| loss.power).sum()),
        ])
    })
}

/// The names of the treatments that share a curve.
fn named(curve: &Curve, notation: Notation) -> String {
    let names: Vec<_> =
        curve.treatments.iter().map(|&one| notation.language.treatment_label(one)).collect();
    names.join(" / ")
}

/// A depth in the round steps of the units.
fn steps(depth: Length, units: UnitSystem) -> f64 {
    match units {
        UnitSystem::Metric => depth.as_mm() / 25.0,
        UnitSystem::Imperial => depth.value() / METRES_PER_INCH,
    }
}

/// Whether a depth stands at so many whole steps of the units: each carries its figure, every
/// second also on a narrow page.
fn is_round(depth: Length, units: UnitSystem, every: f64) -> bool {
    let steps = steps(depth, units) / every;
    (steps - steps.round()).abs() < 1e-6
}

/// The units along the axes: room lost, heating load.
const fn axis_units(notation: Notation) -> [&'static str; 2] {
    match (notation.units, notation.language) {
        (UnitSystem::Metric, _) => ["L", "W"],
        (UnitSystem::Imperial, Language::English) => ["ft³", notation.btu()],
        (UnitSystem::Imperial, Language::French) => ["pi³", notation.btu()],
    }
}

/// The depths along the own curve.
fn depth_labels(chart: &Chart, notation: Notation, labels: &mut Vec<Label>) {
    let Some(own) = chart.own() else { return };
    let present = chart.present.map(|present| (present.depth, chart.plane.place(&present)));
    for point in own.points.iter().filter(|point| is_round(point.depth, notation.units, 1.0)) {
        let place = chart.plane.place(point);
        // The present design's own mark goes before a figure it would cover.
        let covered = present.is_some_and(|(depth, mark)| {
            let apart = (place.x - mark.x).abs() + (place.y - mark.y).abs();
            apart < 40.0 && depth != point.depth
        });
        if !covered {
            let below = if point.depth > chart.frame { 22.0 } else { 4.0 };
            let text = notation.length(point.depth);
            let is_second = is_round(point.depth, notation.units, 2.0);
            let class = if is_second { "before depth" } else { "before depth roomy" };
            labels.push(Label::new(place.x - 12.0, place.y + below, class, text));
        }
    }
}

fn is_own(chart: &Chart, curve: &Curve) -> bool {
    curve.treatments.contains(&chart.treatment)
}

/// From the kink of the own curve down to its note, where the curve has one.
fn kink_leader(chart: &Chart) -> Option<[Point; 2]> {
    let points = &chart.own()?.points;
    let kink = points.iter().find(|point| point.depth == chart.frame)?;
    let place = chart.plane.place(kink);
    Some([place, Point::new(place.x, chart.plane.plane.plot.bottom - 40.0)])
}

/// From the thin end of each curve up and over to its name. The curve furthest left goes up
/// furthest, so that no leader crosses another.
fn treatment_leaders(chart: &Chart) -> Vec<(&Curve, [Point; 3])> {
    let plane = &chart.plane;
    let mut tops: Vec<(&Curve, Point)> = chart
        .curves
        .iter()
        .filter_map(|curve| Some((curve, plane.place(curve.points.first()?))))
        .collect();
    tops.sort_by(|(_, one), (_, other)| one.x.total_cmp(&other.x));
    let Some(&(_, last)) = tops.last() else { return Vec::new() };
    const ROW: f64 = 46.0;
    let names = last.x + 40.0;
    let row = |index: usize| plane.plane.plot.top + 26.0 + ROW * index as f64;
    tops.into_iter()
        .enumerate()
        .map(|(index, (curve, top))| {
            let y = row(index).min(top.y);
            (curve, [top, Point::new(top.x, y), Point::new(names, y)])
        })
        .collect()
}

fn leaders(chart: &Chart) -> String {
    let mut pen = Pen::new();
    for (_, line) in treatment_leaders(chart) {
        pen = pen.line(&line);
    }
    kink_leader(chart).iter().fold(pen, |pen, line| pen.line(line)).done()
}

/// The curve the design lies on, or the others.
fn lines(chart: &Chart, own: bool) -> String {
    let mut pen = Pen::new();
    for curve in chart.curves.iter().filter(|curve| is_own(chart, curve) == own) {
        let points: Vec<Point> =
            curve.points.iter().map(|point| chart.plane.place(point)).collect();
        pen = pen.line(&points);
    }
    pen.done()
}

/// A line of no length with round ends is a dot.
fn dot(pen: Pen, at: Point) -> Pen {
    pen.command('M', &[at.x, at.y]).command('h', &[0.0])
}

fn dots(chart: &Chart) -> String {
    let points = chart.own().map(|curve| &curve.points[..]).unwrap_or_default();
    points.iter().fold(Pen::new(), |pen, point| dot(pen, chart.plane.place(point))).done()
}

fn table(curves: &[Curve], finished: bool, frame: Length, notation: Notation) -> El {
    let words = notation.language.drawing();
    let Some(first) = curves.first().filter(|_| finished) else {
        return el("p").text(words.working_out);
    };
    let head = |text: &str| el("th").attr("scope", "col").text(text);
    let mut heads = el("tr").child(&head(words.wall_foam));
    for curve in curves {
        let name = named(curve, notation);
        for what in [words.lost, words.load] {
            heads = heads.child(&head(&[name.as_str(), what].join(": ")));
        }
    }
    let mut body = el("tbody");
    for depth in first.points.iter().map(|point| point.depth) {
        if !is_round(depth, notation.units, 1.0) && depth != frame {
            continue;
        }
        let mut row = el("tr").child(&el("th").attr("scope", "row").text(&notation.length(depth)));
        for curve in curves {
            let point = curve.points.iter().find(|point| point.depth == depth);
            let lost = point.map(|point| notation.volume(point.lost_volume));
            let load = point.map(|point| notation.load(point.loss));
            row = row
                .child(&el("td").text(&lost.unwrap_or_default()))
                .child(&el("td").text(&load.unwrap_or_default()));
        }
        body = body.child(&row);
    }
    let caption = el("caption").text(words.table_caption);
    el("table").with(&[caption, el("thead").child(&heads), body])
}
