//! How humid the room may be over the outdoor temperature, and how humid the use makes it, drawn.

use inchwise_core::humidity::HumidityPoint;
use inchwise_core::units::{RelativeHumidity, Temperature};

use super::geometry::{Axis, Pen, Plane, Point, Rect};
use super::paper::{Label, Picture, figure};
use super::pattern::Patterns;
use super::plot::{LINE, Plotted, axis_labels, degrees, grid, legend, ring};
use crate::dom::El;
use crate::measure::{Notation, UnitSystem};
use crate::state::State;
use crate::text::Language;

/// How many outdoor temperatures are looked at.
const POINTS: usize = 16;

/// Mildest outdoors that is drawn, °C.
const MILDEST: f64 = 15.0;

/// Everything the chart shows at once.
#[derive(Clone, PartialEq)]
struct Chart {
    plane: Plane,
    units: UnitSystem,
    points: Vec<HumidityPoint>,
    /// The design's own outdoor temperature, and the humidity with the fan there.
    present: Option<(Temperature, RelativeHumidity)>,
}

impl Plotted for Chart {
    const NAME: &'static str = "humidity";

    fn of(state: State) -> Self {
        let units = state.units.get();
        let (points, present) = state.look(|outcome| {
            let evaluation = outcome.best();
            let design = evaluation.checked.design();
            let coldest = design.outdoor_temperature.as_celsius() - 5.0;
            let mildest = MILDEST.min(design.indoor_temperature.as_celsius() - 1.0);
            let step = (mildest - coldest) / (POINTS - 1) as f64;
            let outdoors = (0..POINTS).map(|n| Temperature::celsius(coldest + step * n as f64));
            let found = outcome.balance().and_then(|balance| {
                let (room, spots) = (&evaluation.room, &evaluation.cold_spots);
                let humidity = &balance.humidity;
                let points = humidity.over_outdoors(&evaluation.checked, room, spots, outdoors);
                Some((points.ok()?, (design.outdoor_temperature, humidity.day.ventilated())))
            });
            found.map_or((Vec::new(), None), |(points, present)| (points, Some(present)))
        });
        let across: Vec<f64> = points.iter().map(|point| degrees(point.outdoor, units)).collect();
        let plane = Plane::new(Axis::holding(&across, 7), Axis::holding(&[0.0, 100.0], 5));
        Self { plane, units, points, present }
    }

    fn paper(&self) -> Rect {
        self.plane.paper
    }

    fn told(&self, notation: Notation) -> String {
        let words = notation.language;
        let ends = self.points.first().zip(self.points.last());
        let Some((cold, mild)) = ends else { return words.drawing().working_out.to_owned() };
        let limit = |point: &HumidityPoint| {
            let mould = point.weakest.map(|limit| notation.percent(limit.mould.value()));
            mould.unwrap_or_default()
        };
        words.damp_pictures().curve_told.with(&[
            &notation.temperature(cold.outdoor),
            &limit(cold),
            &notation.temperature(mild.outdoor),
            &limit(mild),
            &notation.percent(cold.with_fan.value()),
        ])
    }

    fn labels(&self, notation: Notation) -> Vec<Label> {
        let words = notation.language.damp_pictures();
        let unit = match notation.units {
            UnitSystem::Metric => "°C",
            UnitSystem::Imperial => "°F",
        };
        let across = [unit, words.outdoors].join(" ");
        let mut labels = axis_labels(&self.plane, across, words.humidity.to_owned(), notation);
        if let Some((outdoor, humidity)) = self.present {
            let at = self.at(outdoor, humidity);
            // Beside the ring, on the side where the plot is.
            let y = (at.y + 34.0).min(self.plane.plot.bottom - 20.0);
            let text = notation.percent(humidity.value());
            labels.push(Label::new(at.x + 18.0, y, "after this-design", text));
        }
        labels
    }

    fn picture() -> Picture<Self> {
        let patterns = Patterns { name: Self::NAME, unit: 1.7 };
        let mut picture = Picture::new();
        picture.elements.push(patterns.defined());
        picture
            .painted("wet", &patterns.lost(), wet)
            .path("grid", |chart: &Chart| grid(&chart.plane))
            .path("limit next", |chart| {
                drawn(&chart.line(|point| point.next.map(|limit| limit.mould)))
            })
            .path("limit drips", |chart| drawn(&chart.drip()))
            .path("limit", |chart| {
                drawn(&chart.line(|point| point.weakest.map(|limit| limit.mould)))
            })
            .path("own alone", |chart| drawn(&chart.line(|point| Some(point.left_alone))))
            .path("own", |chart| drawn(&chart.line(|point| Some(point.with_fan))))
            .path("present", |chart| {
                let present = chart.present;
                present.map_or(String::new(), |(t, humidity)| ring(chart.at(t, humidity), 11.0))
            });
        picture
    }
}

impl Chart {
    fn at(&self, outdoor: Temperature, humidity: RelativeHumidity) -> Point {
        self.plane.at(degrees(outdoor, self.units), humidity.as_percent())
    }

    fn line(&self, of: fn(&HumidityPoint) -> Option<RelativeHumidity>) -> Vec<Point> {
        let points = self.points.iter();
        points.filter_map(|point| Some(self.at(point.outdoor, of(point)?))).collect()
    }

    fn drip(&self) -> Vec<Point> {
        self.line(|point| point.weakest.map(|limit| limit.drip))
    }
}

fn drawn(line: &[Point]) -> String {
    Pen::new().line(line).done()
}

/// From the drip line up: where it drips.
fn wet(chart: &Chart) -> String {
    let mut outline = chart.drip();
    let (Some(first), Some(last)) = (outline.first().copied(), outline.last().copied()) else {
        return String::new();
    };
    let top = chart.plane.plot.top;
    outline.extend([Point::new(last.x, top), Point::new(first.x, top)]);
    Pen::new().outline(&outline).done()
}

/// The chart and its legend.
pub fn humidity_chart(state: State, language: Language) -> El {
    let words = language.damp_pictures();
    let legend = legend(&[
        ("limit", LINE, words.mould_line),
        ("limit drips", LINE, words.drip_line),
        ("limit next", LINE, words.next_line),
        ("own alone", LINE, words.alone_line),
        ("own", LINE, words.fan_line),
    ]);
    figure(Chart::NAME, words.curve, &[Chart::drawn(state, words.curve), legend])
        .class_with("refining", move || state.look(|outcome| outcome.is_refining()))
}
