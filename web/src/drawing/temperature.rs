//! The temperature picture of the place that is looked at, drawn.

mod said;
mod shown;

use std::rc::Rc;

use inchwise_core::detail::View;
use inchwise_core::envelope::ThermalBridge;

use super::geometry::{Pen, Rect, Run, TemperaturePicture};
use super::handle::{Handle, handles, walls_of_openings};
use super::isometric::isometric;
use super::paper::{Drawing, Picture};
use super::pattern::{Patterns, unit_of};
use super::tint;
use crate::dom::{El, el};
use crate::reactive::{Scope, keep_up};
use crate::state::State;
use crate::text::Language;
use said::{labels, said, told};
use shown::{Shown, cut, looked_at, shape, views_to_come};

const NAME: &str = "temperature";

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

fn parts(state: State, language: Language, place: ThermalBridge) -> Vec<El> {
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

/// Which of a body's cuts: each with a small drawing of where it is.
fn cuts(state: State, language: Language, place: ThermalBridge) -> El {
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
