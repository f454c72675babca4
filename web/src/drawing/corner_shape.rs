//! What the temperature picture of a cold place shows, and from what it follows.

use std::sync::Arc;

use inchwise_core::conduction::Point as InTheBody;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture as CutPicture, View, drawn_detail};
use inchwise_core::envelope::ThermalBridge;
use inchwise_core::moisture::{SpotPlace, surface_temperature};
use inchwise_core::psychro::iso_13788::{dew_point, vapour_pressure};
use inchwise_core::units::{RelativeHumidity, Temperature};
use leptos::prelude::*;

use super::geometry::{Climate, Rect, TemperaturePicture, Window};
use super::handle::Handle;
use crate::measure::UnitSystem;
use crate::state::{Planner, Seen, Shared};

/// What is drawn.
#[derive(Clone, PartialEq)]
pub struct Shown {
    /// The shapes, once they are there.
    pub shapes: Option<Shared<TemperaturePicture>>,
    /// Room and outdoors.
    pub climate: Climate,
    /// How humid the room is taken to be.
    pub humidity: RelativeHumidity,
    /// The coldest surface.
    pub coldest: Option<Temperature>,
    /// Whether it is the present design's.
    pub is_fresh: bool,
    /// The place.
    pub place: ThermalBridge,
    /// The paper while there are no shapes.
    pub paper_to_come: Rect,
}

impl Shown {
    /// Its paper.
    pub fn paper(&self) -> Rect {
        self.shapes.as_ref().map_or(self.paper_to_come, |shapes| shapes.paper)
    }
}

/// The views of a place but for where the cuts stand exactly, which its field decides.
pub fn views_to_come(checked: &CheckedDesign, place: ThermalBridge) -> Vec<View> {
    let detail = drawn_detail(checked, place);
    detail.map_or_else(Vec::new, |detail| detail.views(InTheBody::default()))
}

/// Temperature of the dew point in the room; none where the formulas do not reach.
fn dew(indoor: Temperature, humidity: RelativeHumidity) -> Option<Temperature> {
    dew_point(vapour_pressure(indoor, humidity).ok()?).ok()
}

/// How humid the room stands through a cold spell with its own use and air; as it is to be held
/// where a formula does not reach.
fn humidity(planner: Planner) -> RelativeHumidity {
    planner.look(|evaluation| {
        let held = evaluation.checked.design().target_humidity;
        evaluation.damp().map_or(held, |damp| damp.cold_spots.room.relative_humidity())
    })
}

fn climate(planner: Planner) -> Climate {
    let (indoor, outdoor) = planner.look(|evaluation| {
        let design = evaluation.checked.design();
        (design.indoor_temperature, design.outdoor_temperature)
    });
    Climate { indoor, outdoor, dew: dew(indoor, humidity(planner)) }
}

/// Between two isotherms, kelvins, and where they are counted from: round numbers of what is shown.
pub fn steps(climate: &Climate, units: UnitSystem) -> (Temperature, f64) {
    let (zero, one) = match units {
        UnitSystem::Metric => (Temperature::celsius(0.0), 1.0),
        UnitSystem::Imperial => (Temperature::fahrenheit(0.0), 1.0 / 1.8),
    };
    let span = (climate.indoor - climate.outdoor).value().abs() / one;
    let step = [1.0, 2.5, 5.0, 10.0].into_iter().find(|step| span / step <= 12.0);
    (zero, step.unwrap_or(20.0) * one)
}

/// The cut that is looked at.
pub fn cut(seen: &Seen, number: usize) -> Option<&CutPicture> {
    seen.pictures.get(number).or_else(|| seen.pictures.first())
}

/// What was seen of a place, whichever design it is of.
pub fn seen_of(planner: Planner, place: ThermalBridge) -> Option<Seen> {
    planner.seen.get().filter(|seen| seen.place == place)
}

/// The view that is looked at with the detail as it is chosen now.
pub fn looked_at(planner: Planner, place: ThermalBridge) -> Memo<Option<(Detail, View)>> {
    Memo::new(move |_| {
        let seen = seen_of(planner, place)?;
        let view = cut(&seen, planner.view.cut.get())?.view;
        let detail = planner.look(|evaluation| drawn_detail(&evaluation.checked, place))?;
        Some((detail, view))
    })
}

/// What is drawn of a place.
pub fn shown(planner: Planner, place: ThermalBridge, held: Arc<[Handle]>) -> Memo<Shown> {
    let climate = Memo::new(move |_| climate(planner));
    let seen = Memo::new(move |_| seen_of(planner, place));
    let shapes = Memo::new(move |_| {
        let (climate, units) = (climate.get(), planner.units.get());
        let seen = seen.get()?;
        let picture = cut(&seen, planner.view.cut.get())?;
        let paper = Window::of(&picture.view).paper;
        let cover = |handle: &Handle| {
            let at = handle.hold(&seen.detail, &picture.view)?;
            Some(handle.cover(at, &seen.detail, &paper))
        };
        let taken: Vec<Rect> = held.iter().filter_map(cover).flatten().collect();
        let steps = steps(&climate, units);
        let shapes = TemperaturePicture::of(picture, &climate, seen.coldest.at, steps, &taken);
        Some(Shared(Arc::new(shapes)))
    });
    Memo::new(move |_| {
        let climate = climate.get();
        let views = planner.look(|evaluation| views_to_come(&evaluation.checked, place));
        let view = views.get(planner.view.cut.get()).or_else(|| views.first());
        let paper_to_come =
            view.map_or(Rect::new(0.0, 0.0, 300.0, 200.0), |view| Window::of(view).paper);
        let seen = seen.get();
        let is_fresh = planner
            .look(|evaluation| seen.as_ref().is_some_and(|seen| seen.is_of(&evaluation.checked)));
        let known = planner.look(|evaluation| {
            let spots = &evaluation.cold_spots.spots;
            spots.iter().find(|spot| spot.place == SpotPlace::of(place)).copied()
        });
        let of_picture = seen
            .as_ref()
            .map(|seen| surface_temperature(seen.coldest.factor, climate.indoor, climate.outdoor));
        Shown {
            shapes: shapes.get(),
            climate,
            humidity: humidity(planner),
            coldest: known.map(|spot| spot.surface_temperature).or(of_picture),
            is_fresh,
            place,
            paper_to_come,
        }
    })
}
