//! What a temperature picture shows, and from what it follows.

use std::cell::RefCell;
use std::rc::Rc;

use inchwise_core::conduction::Point as InTheBody;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture as CutPicture, View, drawn_detail};
use inchwise_core::envelope::ThermalBridge;
use inchwise_core::humidity::SpotPlace;
use inchwise_core::moisture::surface_temperature;
use inchwise_core::psychro::iso_13788::{dew_point, vapour_pressure};
use inchwise_core::units::{RelativeHumidity, Temperature};

use super::super::geometry::{Climate, Rect, TemperaturePicture, Window};
use super::super::handle::Handle;
use crate::measure::UnitSystem;
use crate::sight::{Seen, Spots};
use crate::state::State;

/// Everything the shapes follow from.
#[derive(Clone)]
struct From {
    seen: Rc<Seen>,
    cut: usize,
    climate: Climate,
    units: UnitSystem,
    /// Where handles lie.
    taken: Vec<Rect>,
}

impl PartialEq for From {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.seen, &other.seen)
            && (self.cut, self.climate, self.units) == (other.cut, other.climate, other.units)
            && self.taken == other.taken
    }
}

/// The last shapes with what they followed from.
type Kept = Option<(From, Rc<TemperaturePicture>)>;

/// What is drawn.
#[derive(Clone)]
pub(super) struct Shown {
    pub shapes: Option<Rc<TemperaturePicture>>,
    pub climate: Climate,
    pub humidity: RelativeHumidity,
    /// The coldest surface.
    pub coldest: Option<Temperature>,
    /// Whether it is the present design's.
    pub is_fresh: bool,
    pub place: ThermalBridge,
    /// The paper while there are no shapes.
    pub paper_to_come: Rect,
}

impl Shown {
    pub fn paper(&self) -> Rect {
        self.shapes.as_ref().map_or(self.paper_to_come, |shapes| shapes.paper)
    }
}

/// The paper of a place's picture before there is one, so that nothing moves when it comes.
fn paper_to_come(state: State, place: ThermalBridge) -> Rect {
    let views = state.look(|outcome| views_to_come(&outcome.good.checked, place));
    let view = views.get(state.sight.cut.get()).or_else(|| views.first());
    view.map_or(Rect::new(0.0, 0.0, 300.0, 200.0), |view| Window::of(view).paper)
}

/// The views of a place but for where the cuts stand exactly, which its field decides.
pub(super) fn views_to_come(checked: &CheckedDesign, place: ThermalBridge) -> Vec<View> {
    let detail = drawn_detail(checked, place);
    detail.map_or_else(Vec::new, |detail| detail.views(InTheBody::default()))
}

/// Temperature of the dew point in the room; none where the formulas do not reach.
fn dew(indoor: Temperature, humidity: RelativeHumidity) -> Option<Temperature> {
    dew_point(vapour_pressure(indoor, humidity).ok()?).ok()
}

fn climate(state: State) -> Climate {
    let (indoor, outdoor) = state.look(|outcome| {
        let design = outcome.good.checked.design();
        (design.indoor_temperature, design.outdoor_temperature)
    });
    Climate { indoor, outdoor, dew: dew(indoor, state.humidity()) }
}

/// Between two isotherms, kelvins, and where they are counted from: round numbers of what is shown.
pub(super) fn steps(climate: &Climate, units: UnitSystem) -> (Temperature, f64) {
    let (zero, one) = match units {
        UnitSystem::Metric => (Temperature::celsius(0.0), 1.0),
        UnitSystem::Imperial => (Temperature::fahrenheit(0.0), 1.0 / 1.8),
    };
    let span = (climate.indoor - climate.outdoor).value().abs() / one;
    let step = [1.0, 2.5, 5.0, 10.0].into_iter().find(|step| span / step <= 12.0);
    (zero, step.unwrap_or(20.0) * one)
}

/// The cut that is looked at.
pub(super) fn cut(seen: &Seen, number: usize) -> Option<&CutPicture> {
    seen.pictures.get(number).or_else(|| seen.pictures.first())
}

/// The view that is looked at with the detail as it is chosen now.
pub(super) fn looked_at(state: State, place: ThermalBridge) -> Option<(Detail, View)> {
    let seen = state.sight.seen_of(place)?;
    let view = cut(&seen, state.sight.cut.get())?.view;
    let detail = state.look(|outcome| drawn_detail(&outcome.good.checked, place))?;
    Some((detail, view))
}

/// The shapes, reckoned anew only when what they follow from is another.
pub(super) fn shape(
    state: State,
    place: ThermalBridge,
    held: Rc<[Handle]>,
) -> impl Fn() -> Shown + Clone + 'static {
    let kept: Rc<RefCell<Kept>> = Rc::default();
    move || {
        let (climate, humidity) = (climate(state), state.humidity());
        let seen = state.sight.seen_of(place);
        let number = state.sight.cut.get();
        let picture = seen.as_ref().and_then(|seen| cut(seen, number));
        let (Some(seen), Some(picture)) = (&seen, picture) else {
            return Shown {
                shapes: None,
                climate,
                humidity,
                coldest: None,
                is_fresh: false,
                place,
                paper_to_come: paper_to_come(state, place),
            };
        };
        let is_fresh = state.look(|outcome| seen.is_of(&outcome.good.checked));
        let spots = Spots::of(state);
        let of_place = SpotPlace::of(place);
        let refined = spots.list.spots.iter().find(|spot| spot.place == of_place);
        let known = refined.filter(|_| is_fresh && !spots.stale.contains(&of_place));
        let coldest = known.map_or_else(
            || surface_temperature(seen.coldest.factor, climate.indoor, climate.outdoor),
            |spot| spot.surface_temperature,
        );
        let paper_to_come = Window::of(&picture.view).paper;
        let cover = |handle: &Handle| {
            let at = handle.hold(&seen.detail, &picture.view)?;
            Some(handle.cover(at, &seen.detail, &paper_to_come))
        };
        let taken = held.iter().filter_map(cover).flatten().collect();
        let units = state.units.get();
        let from = From { seen: Rc::clone(seen), cut: number, climate, units, taken };
        let mut kept = kept.borrow_mut();
        if kept.as_ref().is_none_or(|(known, _)| *known != from) {
            let steps = steps(&climate, units);
            let coldest = seen.coldest.at;
            let shapes = TemperaturePicture::of(picture, &climate, coldest, steps, &from.taken);
            *kept = Some((from, Rc::new(shapes)));
        }
        let shapes = kept.as_ref().map(|(_, shapes)| Rc::clone(shapes));
        Shown { shapes, climate, humidity, coldest: Some(coldest), is_fresh, place, paper_to_come }
    }
}
