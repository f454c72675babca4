//! The fan's curve and that of the openings, and where they meet, drawn.

use inchwise_core::humidity::{FanPoint, FanRun};
use inchwise_core::units::{Pressure, VolumeFlow};
use inchwise_core::ventilation::FAN_RATING_DENSITY;

use super::geometry::{Axis, Pen, Plane, Point, Rect};
use super::paper::{Label, Picture, figure};
use super::plot::{LINE, Plotted, axis_labels, grid, legend, ring};
use crate::dom::{El, el};
use crate::measure::{FieldUnit, Notation, UnitSystem};
use crate::state::State;
use crate::text::Language;

/// How many places a curve is drawn through.
const PLACES: usize = 25;

/// A curve or place on the chart: flow of all fans together, pressure each makes.
type Pair = (VolumeFlow, Pressure);

/// Everything the chart shows at once.
#[derive(Clone, PartialEq)]
struct Chart {
    plane: Plane,
    units: UnitSystem,
    fan: Vec<Pair>,
    openings: Vec<Pair>,
    clean: Option<Pair>,
    dirty: Option<Pair>,
    stuck: Option<Pair>,
}

fn pair(point: &FanPoint) -> Pair {
    let pressure = point.point.exhausts.first().map(|exhaust| exhaust.fan_pressure);
    (point.exhausted(), pressure.unwrap_or(Pressure::ZERO))
}

impl Plotted for Chart {
    const NAME: &'static str = "fan";

    fn of(state: State) -> Self {
        let units = state.units.get();
        let nothing = |axis: Axis| Self {
            plane: Plane::new(axis.clone(), axis),
            units,
            fan: Vec::new(),
            openings: Vec::new(),
            clean: None,
            dirty: None,
            stuck: None,
        };
        let empty = || nothing(Axis::holding(&[], 2));
        state.look(|outcome| {
            let Some(balance) = outcome.balance() else { return empty() };
            balance.humidity.fan.run().map_or_else(empty, |run| Self::running(run, units))
        })
    }

    fn paper(&self) -> Rect {
        self.plane.paper
    }

    fn told(&self, notation: Notation) -> String {
        let words = notation.language.air_words();
        let Some((flow, pressure)) = self.clean else { return words.no_fan_drawn.to_owned() };
        words.fan_told.with(&[&notation.air_flow(flow), &notation.small_pressure(pressure)])
    }

    fn labels(&self, notation: Notation) -> Vec<Label> {
        let words = notation.language.air_words();
        let Some((flow, pressure)) = self.clean else { return Vec::new() };
        let (across, up) = scales(notation.units);
        let across = words.flow_axis.with(&[notation.unit_name(across)]);
        let up = words.pressure_axis.with(&[notation.unit_name(up)]);
        let mut labels = axis_labels(&self.plane, across, up, notation);
        let at = self.at((flow, pressure));
        let text = [notation.air_flow(flow), notation.small_pressure(pressure)].join(", ");
        labels.push(Label::new(at.x + 20.0, at.y - 30.0, "after this-design", text));
        labels
    }

    fn picture() -> Picture<Self> {
        let mut picture = Picture::new();
        picture
            .path(
                "grid",
                |chart: &Chart| {
                    if chart.clean.is_some() { grid(&chart.plane) } else { String::new() }
                },
            )
            .path("openings-line", |chart| chart.line(&chart.openings))
            .path("fan-line", |chart| {
                let points: Vec<Point> = chart.fan.iter().map(|&pair| chart.at(pair)).collect();
                Pen::new().line(&points).done()
            })
            .path("other", others)
            .path("present", |chart| {
                chart.clean.map_or(String::new(), |pair| ring(chart.at(pair), 11.0))
            });
        picture
    }
}

impl Chart {
    fn running(run: &FanRun, units: UnitSystem) -> Self {
        let fans = run.clean.point.exhausts.len() as f64;
        let last = run.curve.last_flow();
        let part = |n: usize| n as f64 / (PLACES - 1) as f64;
        // The fan is rated in air of 1.2 kg/m³ and moves the room's.
        let denser = run.clean.point.room_density / FAN_RATING_DENSITY;
        let fan: Vec<Pair> = (0..PLACES)
            .filter_map(|n| {
                let flow = last * part(n);
                Some((flow * fans, run.curve.pressure_at(flow).ok()? * denser))
            })
            .collect();
        let openings: Vec<Pair> = (0..PLACES)
            .map(|n| last * fans * part(n))
            .map(|flow| (flow, run.system_pressure(flow)))
            .collect();
        let (flow, pressure) = scales(units);
        let across: Vec<f64> = fan.iter().map(|pair| flow.of_si(pair.0.value())).collect();
        let up: Vec<f64> = fan.iter().map(|pair| pressure.of_si(pair.1.value())).collect();
        Self {
            plane: Plane::new(Axis::holding(&across, 6), Axis::holding(&up, 5)),
            units,
            fan,
            openings,
            clean: Some(pair(&run.clean)),
            dirty: Some(pair(&run.dirty)),
            stuck: run.intake_stuck.as_ref().map(pair),
        }
    }

    fn at(&self, (flow, pressure): Pair) -> Point {
        let units = scales(self.units);
        self.plane.at(units.0.of_si(flow.value()), units.1.of_si(pressure.value()))
    }

    /// A curve up to the top of the plot.
    fn line(&self, pairs: &[Pair]) -> String {
        let top = self.plane.plot.top;
        let points: Vec<Point> = pairs.iter().map(|&pair| self.at(pair)).collect();
        let inside = points.iter().position(|point| point.y <= top).unwrap_or(points.len());
        Pen::new().line(&points[..points.len().min(inside + 1)]).done()
    }
}

const fn scales(units: UnitSystem) -> (FieldUnit, FieldUnit) {
    match units {
        UnitSystem::Metric => (FieldUnit::CubicMetrePerHour, FieldUnit::Pascal),
        UnitSystem::Imperial => (FieldUnit::CubicFootPerMinute, FieldUnit::InchOfWater),
    }
}

const TRIANGLE: &str = "M15 14L22 2L29 14Z";
const SQUARE: &str = "M16 2H28V14H16Z";
const RING: &str = "M15 8a7 7 0 0 1 14 0a7 7 0 0 1 -14 0";

/// The chart and its legend; words alone while there are no dampers.
pub fn fan_chart(state: State, language: Language) -> El {
    let words = language.air_words();
    let legend = legend(&[
        ("fan-line", LINE, words.fan_curve),
        ("openings-line", LINE, words.system_curve),
        ("present", RING, words.meets),
        ("other", TRIANGLE, words.dirty),
        ("other", SQUARE, words.stuck),
    ]);
    let none = el("p").class("no-fan").text(words.no_fan_drawn);
    figure(Chart::NAME, words.fan, &[none, Chart::drawn(state, words.fan), legend])
        .class_with("without-fan", move || {
            state.look(|outcome| outcome.good.checked.design().damper_count == 0.0)
        })
}

/// A triangle and a square about their places.
fn others(chart: &Chart) -> String {
    const HALF: f64 = 10.0;
    let mut pen = Pen::new();
    if let Some(pair) = chart.dirty {
        let at = chart.at(pair);
        pen = pen.outline(&[
            Point::new(at.x - HALF, at.y + HALF),
            Point::new(at.x, at.y - HALF),
            Point::new(at.x + HALF, at.y + HALF),
        ]);
    }
    if let Some(pair) = chart.stuck {
        let at = chart.at(pair);
        pen = pen.rect(&Rect::new(at.x - HALF, at.y - HALF, at.x + HALF, at.y + HALF));
    }
    pen.done()
}
