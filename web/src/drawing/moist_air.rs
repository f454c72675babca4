//! Why it drips: outdoor air is warmed along a level line, the use adds its water straight up, and
//! what air at the coldest surface can hold is a ceiling; what stands above it lands there.

use inchwise_core::psychro::{MoistAir, saturation_humidity_ratio};
use inchwise_core::units::{
    HumidityRatio, Pressure, RelativeHumidity, Temperature, TemperatureDifference,
};

use super::geometry::{Axis, Pen, Plane, Point, Rect};
use super::paper::{Label, Picture, figure};
use super::pattern::Patterns;
use super::plot::{LINE, Plotted, axis_labels, degrees, grid, legend, ring};
use crate::dom::{El, el};
use crate::measure::{Notation, UnitSystem};
use crate::state::State;
use crate::text::Language;

/// Through how many places the curve of saturation is drawn.
const PLACES: usize = 64;

/// Half the width of what stands above the ceiling.
const HALF: f64 = 18.0;

/// Room on the chart past the warmest air, K.
const BESIDE: f64 = 4.0;

/// Air as a place on the chart.
type AirState = (Temperature, HumidityRatio);

/// Everything the chart shows at once.
#[derive(Clone, PartialEq)]
struct Chart {
    plane: Plane,
    units: UnitSystem,
    saturation: Vec<AirState>,
    /// Outdoor air, the room's, and saturated air at the coldest surface.
    air: Option<[AirState; 3]>,
    humidity: RelativeHumidity,
}

/// Water in air, in the unit of the axis: g/kg or grains a pound.
const fn water(ratio: HumidityRatio, units: UnitSystem) -> f64 {
    match units {
        UnitSystem::Metric => ratio.value() * 1000.0,
        UnitSystem::Imperial => ratio.value() * 7000.0,
    }
}

fn saturated(temperature: Temperature, pressure: Pressure) -> Option<AirState> {
    Some((temperature, saturation_humidity_ratio(temperature, pressure).ok()?))
}

fn state_of(air: &MoistAir) -> AirState {
    (air.temperature(), air.humidity_ratio())
}

impl Plotted for Chart {
    const NAME: &'static str = "moist-air";

    fn of(state: State) -> Self {
        let units = state.units.get();
        let found = state.look(|outcome| {
            let humidity = &outcome.balance()?.humidity;
            let spot = outcome.best().cold_spots.weakest()?;
            let pressure = humidity.target.air_pressure();
            let room = state_of(&humidity.day.with_fan.air);
            let spot = saturated(spot.surface_temperature, pressure)?;
            Some(([state_of(&humidity.outdoor), room, spot], humidity.day.ventilated(), pressure))
        });
        let Some((air, humidity, pressure)) = found else {
            let nothing = || Axis::holding(&[0.0, 1.0], 2);
            let plane = Plane::new(nothing(), nothing());
            let humidity = RelativeHumidity::new(0.0);
            return Self { plane, units, saturation: Vec::new(), air: None, humidity };
        };
        let [outdoor, room, spot] = air;
        let [coldest, warmest] = [outdoor.0.min(room.0), room.0.max(outdoor.0)];
        let step = (warmest - coldest) / (PLACES - 1) as f64;
        let saturation = (0..PLACES).filter_map(|n| saturated(coldest + step * n as f64, pressure));
        // Room over the higher of the two, so that it is seen which that is.
        let highest = water(room.1, units).max(water(spot.1, units)) * 1.25;
        let across = [coldest, warmest + TemperatureDifference::new(BESIDE)]
            .map(|temperature| degrees(temperature, units));
        Self {
            plane: Plane::new(Axis::holding(&across, 7), Axis::holding(&[0.0, highest], 5)),
            units,
            saturation: saturation.collect(),
            air: Some(air),
            humidity,
        }
    }

    fn paper(&self) -> Rect {
        self.plane.paper
    }

    fn told(&self, notation: Notation) -> String {
        let words = notation.language.damp_pictures();
        let Some([outdoor, room, spot]) = self.air else {
            return notation.language.drawing().working_out.to_owned();
        };
        let written = |ratio| notation.humidity_ratio(ratio);
        let phrase = if room.1 > spot.1 { words.moist_air_drips } else { words.moist_air_dry };
        phrase.with(&[
            &notation.temperature(outdoor.0),
            &written(outdoor.1),
            &written(HumidityRatio::new((room.1.value() - outdoor.1.value()).max(0.0))),
            &notation.temperature(spot.0),
            &written(spot.1),
        ])
    }

    fn labels(&self, notation: Notation) -> Vec<Label> {
        let words = notation.language.damp_pictures();
        let Some([_, room, spot]) = self.air else { return Vec::new() };
        let [across, up] = match notation.units {
            UnitSystem::Metric => ["°C", "g/kg"],
            UnitSystem::Imperial => ["°F", "gr/lb"],
        };
        let up = words.water_axis.with(&[up]);
        let mut labels = axis_labels(&self.plane, across.to_owned(), up, notation);
        let (room, spot) = (self.at(room), self.at(spot));
        let humidity = notation.percent(self.humidity.value());
        labels.push(Label::new(room.x - 24.0, room.y - 30.0, "before this-design", humidity));
        labels.push(Label::new(spot.x - 22.0, spot.y - 26.0, "before", words.spot_label));
        labels
    }

    fn picture() -> Picture<Self> {
        let patterns = Patterns { name: Self::NAME, unit: 1.7 };
        let mut picture = Picture::new();
        picture.elements.push(patterns.defined());
        picture
            .path(
                "grid",
                |chart: &Chart| {
                    if chart.air.is_some() { grid(&chart.plane) } else { String::new() }
                },
            )
            .path("limit", |chart| Pen::new().line(&chart.curve()).done())
            .path("limit drips", |chart| {
                chart.air.map_or(String::new(), |[_, room, spot]| {
                    let (room, spot) = (chart.at(room), chart.at(spot));
                    Pen::new().between(spot.x, spot.y, room.x, spot.y).done()
                })
            })
            .painted("landed", &patterns.lost(), over)
            .path("own", |chart| {
                chart.air.map_or(String::new(), |[outdoor, room, _]| {
                    let [from, to] = [outdoor, room].map(|state| chart.at(state));
                    let warmed = Point::new(to.x, from.y);
                    Pen::new().line(&[from, warmed, to]).done()
                })
            })
            .path("other", |chart| {
                chart.air.map_or(String::new(), |[outdoor, _, spot]| {
                    let [outdoor, spot] = [outdoor, spot].map(|state| ring(chart.at(state), 7.0));
                    [outdoor, spot].concat()
                })
            })
            .path("present", |chart| {
                chart.air.map_or(String::new(), |[_, room, _]| ring(chart.at(room), 11.0))
            });
        picture
    }
}

impl Chart {
    fn at(&self, (temperature, ratio): AirState) -> Point {
        self.plane.at(degrees(temperature, self.units), water(ratio, self.units))
    }

    /// The curve of saturation up to the top of the plot.
    fn curve(&self) -> Vec<Point> {
        let points: Vec<Point> = self.saturation.iter().map(|&state| self.at(state)).collect();
        let top = self.plane.plot.top;
        let inside = points.iter().position(|point| point.y <= top).unwrap_or(points.len());
        points[..points.len().min(inside + 1)].to_vec()
    }
}

const RING: &str = "M15 8a7 7 0 0 1 14 0a7 7 0 0 1 -14 0";
const HATCHED: &str = "M14 1H30V15H14ZM14 9L22 1M14 15L28 1M20 15L30 5M27 15L30 12";

/// The chart, what it says in words, and its legend.
pub fn moist_air(state: State, language: Language) -> El {
    let words = language.damp_pictures();
    let said = el("p").text_with(move || Chart::of(state).told(state.notation()));
    let legend = legend(&[
        ("limit", LINE, words.most_line),
        ("own", LINE, words.warmed_line),
        ("limit drips", LINE, words.ceiling_line),
        ("present", RING, words.room_ring),
        ("other", HATCHED, words.over_bar),
    ]);
    figure(Chart::NAME, words.moist_air, &[said, Chart::drawn(state, words.moist_air), legend])
        .class_with("refining", move || state.look(|outcome| outcome.is_refining()))
}

/// What stands above the ceiling.
fn over(chart: &Chart) -> String {
    let Some([_, room, spot]) = chart.air else { return String::new() };
    let (room, spot) = (chart.at(room), chart.at(spot));
    if room.y >= spot.y {
        return String::new();
    }
    Pen::new().rect(&Rect::new(room.x - HALF, room.y, room.x + HALF, spot.y)).done()
}
