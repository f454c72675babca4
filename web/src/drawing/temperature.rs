//! The temperature picture of the place that is looked at, drawn.

use std::cell::RefCell;
use std::rc::Rc;

use inchwise_core::conduction::Point as InTheBody;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture as CutPicture, View, drawn_detail};
use inchwise_core::envelope::Place;
use inchwise_core::moisture::{SpotPlace, surface_temperature};
use inchwise_core::psychro::iso_13788::{dew_point, vapour_pressure};
use inchwise_core::units::{RelativeHumidity, Temperature, TemperatureDifference};

use super::geometry::{Climate, Pen, Rect, Run, TemperaturePicture, Window};
use super::handle::{Handle, handles, walls_of_openings};
use super::isometric::isometric;
use super::paper::{Drawing, Label, Picture};
use super::pattern::{Patterns, unit_of};
use super::tint;
use crate::dom::{El, el};
use crate::measure::{Notation, UnitSystem};
use crate::reactive::{Scope, keep_up};
use crate::sight::{Seen, Spots};
use crate::state::State;
use crate::text::Language;

const NAME: &str = "temperature";

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
struct Shown {
    shapes: Option<Rc<TemperaturePicture>>,
    climate: Climate,
    humidity: RelativeHumidity,
    /// The coldest surface.
    coldest: Option<Temperature>,
    /// Whether it is the present design's.
    is_fresh: bool,
    place: Place,
    /// The paper while there are no shapes.
    paper_to_come: Rect,
}

impl Shown {
    fn paper(&self) -> Rect {
        self.shapes.as_ref().map_or(self.paper_to_come, |shapes| shapes.paper)
    }
}

/// The paper of a place's picture before there is one, so that nothing moves when it comes.
fn paper_to_come(state: State, place: Place) -> Rect {
    let views = state.look(|outcome| views_to_come(&outcome.good.checked, place));
    let view = views.get(state.sight.cut.get()).or_else(|| views.first());
    view.map_or(Rect::new(0.0, 0.0, 300.0, 200.0), |view| Window::of(view).paper)
}

/// The views of a place but for where the cuts stand exactly, which its field decides.
fn views_to_come(checked: &CheckedDesign, place: Place) -> Vec<View> {
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
fn steps(climate: &Climate, units: UnitSystem) -> (Temperature, f64) {
    let (zero, one) = match units {
        UnitSystem::Metric => (Temperature::celsius(0.0), 1.0),
        UnitSystem::Imperial => (Temperature::fahrenheit(0.0), 1.0 / 1.8),
    };
    let span = (climate.indoor - climate.outdoor).value().abs() / one;
    let step = [1.0, 2.5, 5.0, 10.0].into_iter().find(|step| span / step <= 12.0);
    (zero, step.unwrap_or(20.0) * one)
}

/// The cut that is looked at.
fn cut(seen: &Seen, number: usize) -> Option<&CutPicture> {
    seen.pictures.get(number).or_else(|| seen.pictures.first())
}

/// The view that is looked at with the detail as it is chosen now.
fn looked_at(state: State, place: Place) -> Option<(Detail, View)> {
    let seen = state.sight.seen_of(place)?;
    let view = cut(&seen, state.sight.cut.get())?.view;
    let detail = state.look(|outcome| drawn_detail(&outcome.good.checked, place))?;
    Some((detail, view))
}

/// The picture of the place that is looked at, made anew when that is another.
pub fn temperature(state: State, language: Language) -> El {
    let holder = el("div").class("temperature-figure drawing-figure").test_id(NAME);
    let scope = Scope::present();
    let whole = holder.clone();
    let mut last = None;
    let mut before: Option<Scope> = None;
    keep_up(Box::new(move || {
        let place = state.sight.place(state);
        if place == last && before.is_some() {
            return;
        }
        last = place;
        if let Some(before) = before.take() {
            before.end();
        }
        let fresh = scope.with(Scope::new);
        let parts =
            place.map_or_else(Vec::new, |place| fresh.with(|| parts(state, language, place)));
        holder.refill(&parts);
        before = Some(fresh);
    }));
    whole
}

fn parts(state: State, language: Language, place: Place) -> Vec<El> {
    let [door, window] = walls_of_openings(state);
    let held: Rc<[Handle]> = handles(place, door, window).into();
    let shows = move || looked_at(state, place);
    let grips = held.iter().map(|handle| handle.drawn(state, shows)).collect();
    let shape = shape(state, place, held);
    let caption = {
        let shape = shape.clone();
        el("p").class("remark").text_with(move || said(&shape(), state.notation()))
    };
    let refining = {
        let shape = shape.clone();
        el("span").class("refining-word").attr("role", "status").text_with(move || {
            let word = if shape().is_fresh { "" } else { language.spots().refining };
            word.to_owned()
        })
    };
    let drawing = Drawing {
        name: NAME,
        title: language.place(place),
        shape: Box::new(shape),
        paper: Shown::paper,
        told,
        labels,
        picture: picture(),
        grips,
    };
    let paper = drawing.drawn(state);
    let canvas = el("canvas").attr("aria-hidden", "true");
    paper.prepend(&canvas);
    keep_up(Box::new(move || {
        let Some(seen) = state.sight.seen_of(place) else { return };
        if let Some(picture) = cut(&seen, state.sight.cut.get()) {
            tint::lay(&canvas, picture);
        }
    }));
    let title = el("h4").class("spot-name").text(language.place(place)).text(" ").child(&refining);
    vec![title, cuts(state, language, place), paper, caption]
}

/// The shapes, reckoned anew only when what they follow from is another.
fn shape(state: State, place: Place, held: Rc<[Handle]>) -> impl Fn() -> Shown + Clone + 'static {
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
        let refined = spots.list.spots.iter().find(|spot| spot.place == SpotPlace::Detail(place));
        let known =
            refined.filter(|_| is_fresh && !spots.stale.contains(&SpotPlace::Detail(place)));
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

/// Which of a body's cuts: each with a small drawing of where it is.
fn cuts(state: State, language: Language, place: Place) -> El {
    let whole = el("fieldset").class("cuts");
    let checked = state.look(|outcome| outcome.good.checked.clone());
    let views = views_to_come(&checked, place);
    if views.len() < 2 {
        return whole;
    }
    let options = views.iter().enumerate().map(|(number, view)| {
        let button = el("input")
            .attr("type", "radio")
            .attr("name", "cut")
            .test_id(&["cut-", &number.to_string()].concat())
            .on("change", move |_| state.sight.cut.set(number));
        let shown = button.clone();
        keep_up(Box::new(move || {
            shown.property("checked", &(state.sight.cut.get() == number).into());
        }));
        let seen = move || {
            let seen = state.sight.seen_of(place)?;
            let views: Vec<View> = seen.pictures.iter().map(|picture| picture.view).collect();
            Some((seen.detail, views))
        };
        let small = isometric(number, seen);
        let name = el("span").text(language.cut(place, view.axis));
        el("label").with(&[button, small, name])
    });
    let options: Vec<El> = options.collect();
    let legend = el("legend").class("spoken").text(language.spots().cuts);
    whole.child(&legend).with(&options)
}

/// What is said under the picture.
fn said(shown: &Shown, notation: Notation) -> String {
    let words = notation.language.spots();
    let Some(shapes) = &shown.shapes else { return words.told_waiting.to_owned() };
    let climate = &shown.climate;
    let step = TemperatureDifference::new(steps(climate, notation.units).1);
    let mut said = words.lines.with(&[
        &notation.temperature_difference(step),
        &notation.temperature(climate.outdoor),
        &notation.temperature(climate.indoor),
    ]);
    if let Some(dew) = climate.dew {
        let phrase = if !shapes.wet.is_empty() {
            words.wet
        } else if shown.coldest.is_some_and(|coldest| coldest < dew) {
            words.wet_at_coldest
        } else {
            words.dry
        };
        let humidity = notation.percent(shown.humidity.value());
        said.push(' ');
        said.push_str(&phrase.with(&[&notation.temperature_finely(dew), &humidity]));
    }
    if shapes.coldest.is_none() {
        said.push(' ');
        said.push_str(words.not_in_cut);
    }
    said
}

fn told(shown: &Shown, notation: Notation) -> String {
    let words = notation.language.spots();
    let Some(coldest) = shown.coldest else { return words.told_waiting.to_owned() };
    let place = notation.language.place(shown.place);
    words.told.with(&[place, &notation.temperature_finely(coldest), &said(shown, notation)])
}

fn labels(shown: &Shown, notation: Notation) -> Vec<Label> {
    let words = notation.language.spots();
    let Some(shapes) = &shown.shapes else {
        let middle = shown.paper_to_come.centre();
        return vec![Label::new(middle.x, middle.y, "waiting", words.told_waiting)];
    };
    let mut labels = Vec::new();
    for isotherm in &shapes.isotherms {
        for (at, class) in isotherm.labels.iter().zip(["isotherm on-narrow", "isotherm on-wide"]) {
            if let Some(at) = at {
                let degrees = notation.degrees(isotherm.temperature);
                labels.push(Label::new(at.x, at.y, class, degrees));
            }
        }
    }
    for (at, class) in shapes.dew_labels.iter().zip(["dew on-narrow", "dew on-wide"]) {
        if let (Some(at), Some(dew)) = (at, shown.climate.dew) {
            let said = words.dew_line.with(&[&notation.temperature_finely(dew)]);
            labels.push(Label::new(at.x, at.y, class, said));
        }
    }
    for (rects, word) in [(&shapes.room, words.room), (&shapes.outdoors, words.outdoors)] {
        if let Some(at) = TemperaturePicture::word_place(rects, &shapes.taken) {
            labels.push(Label::new(at.x, at.y, "small air", word));
        }
    }
    for (at, class) in shapes.coldest_labels.iter().zip(["coldest on-narrow", "coldest on-wide"]) {
        if let (Some(at), Some(coldest)) = (at, shown.coldest) {
            let said = words.coldest.with(&[&notation.temperature_finely(coldest)]);
            labels.push(Label::new(at.x, at.y, class, said));
        }
    }
    labels
}

fn rects(of: &Shown, which: fn(&TemperaturePicture) -> &Vec<Rect>) -> String {
    of.shapes.as_deref().map_or_else(String::new, |shapes| Pen::new().rects(which(shapes)).done())
}

fn runs(of: &Shown, which: fn(&TemperaturePicture) -> &Vec<Run>) -> String {
    let draw = |shapes: &TemperaturePicture| {
        which(shapes).iter().fold(Pen::new(), |pen, run| pen.line(run)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

fn isotherms(of: &Shown, main: bool) -> String {
    let draw = |shapes: &TemperaturePicture| {
        let lines = shapes.isotherms.iter().filter(|isotherm| isotherm.is_main == main);
        let lines = lines.flat_map(|isotherm| &isotherm.lines);
        lines.fold(Pen::new(), |pen, line| pen.line(line)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

fn dew_line(of: &Shown) -> String {
    let draw = |shapes: &TemperaturePicture| {
        shapes.dew.iter().fold(Pen::new(), |pen, line| pen.line(line)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

/// A ring with a cross through it on the coldest place.
fn mark(of: &Shown) -> String {
    let draw = |shapes: &TemperaturePicture| {
        let at = shapes.coldest?;
        let unit = unit_of(&shapes.paper);
        let (ring, arm) = (9.0 * unit, 15.0 * unit);
        let pen = Pen::new()
            .command('M', &[at.x - ring, at.y])
            .command('a', &[ring, ring, 0.0, 0.0, 1.0, 2.0 * ring, 0.0])
            .command('a', &[ring, ring, 0.0, 0.0, 1.0, -2.0 * ring, 0.0])
            .between(at.x - arm, at.y, at.x + arm, at.y)
            .between(at.x, at.y - arm, at.x, at.y + arm);
        Some(pen.done())
    };
    of.shapes.as_deref().and_then(draw).unwrap_or_default()
}

fn picture() -> Picture<Shown> {
    let patterns = Patterns { name: NAME, unit: 0.55 };
    let mut picture = Picture::new();
    picture.elements.push(patterns.defined());
    picture
        .path("room", |shown: &Shown| rects(shown, |shapes| &shapes.room))
        .painted("stipple", &patterns.foam(), |shown| rects(shown, |shapes| &shapes.foam))
        .painted("hatch", &patterns.wood(), |shown| rects(shown, |shapes| &shapes.board))
        .painted("pad", &patterns.lost(), |shown| rects(shown, |shapes| &shapes.plastic))
        .path("isotherm fine-isotherm", |shown| isotherms(shown, false))
        .path("isotherm main-isotherm", |shown| isotherms(shown, true))
        .path("dew-line", dew_line)
        .path("steel", |shown| rects(shown, |shapes| &shapes.steel))
        .path("material-edge", |shown| runs(shown, |shapes| &shapes.edges))
        .path("wet-edge", |shown| runs(shown, |shapes| &shapes.wet))
        .path("mark-halo", mark)
        .path("coldest-mark", mark);
    picture
}
