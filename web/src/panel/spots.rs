//! Where it drips first: the humidity of the room, the picture of a place, and all cold spots in
//! order. Drops, a mould's ring and plain dots say it without colour.

use inchwise_core::envelope::{SurfaceKind, ThermalBridge};
use inchwise_core::humidity::{ColdSpot, Humidity, SpotPlace, UnknownReason, Verdict};
use inchwise_core::moisture::{HumidityLimit, SurfaceRisk, surface_temperature};
use inchwise_core::units::RelativeHumidity;

use crate::dom::{El, el, in_sight, svg};
use crate::drawing;
use crate::measure::plain;
use crate::reactive::{Scope, Watched, keep_up};
use crate::sight::{Spots, pictured};
use crate::state::State;
use crate::text::Language;

/// Rows that are shown before all are asked for.
const COLDEST: usize = 6;

/// What a row shows.
#[derive(Clone, PartialEq)]
struct Line {
    place: SpotPlace,
    /// Where its picture is taken, if one is.
    pictured: Option<ThermalBridge>,
    surface: String,
    drips: String,
    moulds: String,
    /// Humidity from which it drips, per cent.
    limit: Option<f64>,
    verdict: &'static str,
    /// Names the verdict's sign.
    sign: &'static str,
    is_stale: bool,
}

/// What the use brings to a place; nothing while that is not known.
fn word(language: Language, spot: &ColdSpot, verdict: Option<&Verdict>) -> [&'static str; 2] {
    let words = language.spots();
    let places = verdict.map(|verdict| &verdict.places[..]).unwrap_or_default();
    match places.iter().find(|place| place.place == spot.place) {
        None => ["unknown", words.waiting],
        Some(place) => match place.risk {
            SurfaceRisk::Drip if place.freezes => ["drips", words.frosts],
            SurfaceRisk::Drip => ["drips", words.drips],
            SurfaceRisk::Mould => ["moulds", words.moulds],
            SurfaceRisk::None => ["dry", words.stays_dry],
        },
    }
}

/// Humidity of the room in the mean of the critical month from which mould may grow at a place; none for frames and
/// glazing, which are not judged by mould, and where no month is heated.
fn mould_limit(spot: &ColdSpot, humidity: &Humidity) -> Option<RelativeHumidity> {
    let critical = humidity.months.critical.filter(|_| spot.kind == SurfaceKind::Opaque)?;
    let state = &humidity.months.states[critical.month];
    let surface = surface_temperature(spot.temperature_factor, state.indoor, state.outdoor);
    Some(HumidityLimit::at_surface(surface, state.indoor).ok()?.mould)
}

/// All rows in order: known ones, then those nothing is known of.
fn lines(state: State, language: Language) -> Vec<Line> {
    let notation = state.notation();
    let words = language.spots();
    let balance = state.look(|outcome| outcome.balance().map(|balance| balance.humidity.clone()));
    let verdict = balance.as_ref().map(|humidity| &humidity.verdict);
    let spots = Spots::of(state);
    // More than all the water the air can hold is no limit.
    let limit = |limit: RelativeHumidity| notation.percent(limit.value().min(1.0));
    let known = spots.list.spots.iter().map(|spot| {
        let [sign, verdict] = word(language, spot, verdict);
        let moulds = balance.as_ref().and_then(|humidity| mould_limit(spot, humidity));
        let is_stale = spots.stale.contains(&spot.place);
        Line {
            place: spot.place,
            pictured: pictured(state, spot.place),
            surface: notation.temperature_finely(spot.surface_temperature),
            drips: limit(spot.limit.drip),
            moulds: moulds.map_or_else(|| "–".to_owned(), limit),
            limit: Some(spot.limit.drip.value().min(1.0) * 100.0),
            verdict: if is_stale { words.refining } else { verdict },
            sign,
            is_stale,
        }
    });
    let unknown = spots.list.unknown.iter().map(|spot| Line {
        place: spot.place,
        pictured: pictured(state, spot.place),
        surface: String::new(),
        drips: String::new(),
        moulds: String::new(),
        limit: None,
        verdict: match spot.reason {
            UnknownReason::Waiting => words.waiting,
            UnknownReason::DidNotSolve => words.did_not_solve,
            UnknownReason::OutOfRange(_) => words.out_of_range,
        },
        sign: "unknown",
        is_stale: true,
    });
    known.chain(unknown).collect()
}

/// The name of a place of the room's surface.
fn name(language: Language, place: SpotPlace) -> &'static str {
    use inchwise_core::heat_loss::Element;
    language.element(match place {
        SpotPlace::Detail(place) => Element::Detail(place),
        SpotPlace::Plain(surface) => Element::Plain(surface),
        SpotPlace::PersonnelDoor => Element::PersonnelDoor,
        SpotPlace::Windows => Element::Windows,
    })
}

/// The panel.
pub fn spots(state: State, language: Language) -> El {
    let words = language.spots();
    let whole = el("section").class("spots").test_id("spots").attr("aria-label", words.title);
    in_sight(&whole, state.sight.is_open);
    whole.with(&[
        el("div").class("spots-picture").with(&[
            el("h3").text(words.title),
            el("p").class("spots-first").text_with(move || first(state, language)),
            el("p").class("humidity").text_with(move || {
                let humidity = state.notation().percent(state.humidity().value());
                words.humidity.with(&[&humidity])
            }),
            drawing::temperature(state, language),
        ]),
        el("div").class("spots-list").with(&[
            el("h4").text(words.list),
            el("p").class("remark").text_with(move || {
                let notation = state.notation();
                state.look(|outcome| {
                    let design = outcome.good.checked.design();
                    let [outdoor, indoor] = [design.outdoor_temperature, design.indoor_temperature]
                        .map(|temperature| notation.temperature(temperature));
                    let told = words.list_told.with(&[&outdoor, &indoor]);
                    let month = outcome.balance().and_then(|it| it.humidity.verdict.critical_month);
                    let month = month.map(|month| words.mould_told.with(&[language.month(month)]));
                    [told, month.unwrap_or_default()].concat()
                })
            }),
            list(state, language),
        ]),
    ])
}

/// The answer in one sentence.
fn first(state: State, language: Language) -> String {
    let words = language.spots();
    let notation = state.notation();
    let spots = Spots::of(state);
    let Some(spot) = spots.list.weakest() else { return words.waiting.to_owned() };
    let phrase = if spot.frosts() { words.first_frosts } else { words.first };
    let mut said = phrase.with(&[
        &notation.temperature(spots.list.outdoor),
        &in_a_sentence(name(language, spot.place)),
        &notation.percent(spot.limit.drip.value().min(1.0)),
    ]);
    if !spots.stale.is_empty() || spots.list.is_waiting() {
        said.push_str(" (");
        said.push_str(words.refining);
        said.push(')');
    }
    said
}

/// A name that stands in the middle of a sentence.
fn in_a_sentence(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// The list.
fn list(state: State, language: Language) -> El {
    let words = language.spots();
    let body = el("tbody");
    let table = body.clone();
    let scope = Scope::present();
    let with_all = Watched::new(false);
    let count = Watched::new(0);
    let mut rows: Vec<Row> = Vec::new();
    keep_up(Box::new(move || {
        let lines = lines(state, language);
        let name_of = |row: &Row| (row.place, row.pictured);
        let before: Vec<_> = rows.iter().map(name_of).collect();
        let mut known = std::mem::take(&mut rows);
        for (number, line) in lines.into_iter().enumerate() {
            let is_of_line = |row: &Row| row.place == line.place && row.pictured == line.pictured;
            let mut row = match known.iter().position(is_of_line) {
                Some(place) => known.swap_remove(place),
                // Rows outlive this run: a row that is kept must keep up.
                None => scope.with(|| Row::new(state, language, line.place, line.pictured)),
            };
            row.whole.toggle("further-row", number >= COLDEST);
            row.show(line);
            rows.push(row);
        }
        if !rows.iter().map(name_of).eq(before) {
            let whole: Vec<El> = rows.iter().map(|row| row.whole.clone()).collect();
            table.put_in_order(&whole);
        }
        count.update_untracked(|count| *count = rows.len());
    }));
    let toggle = el("button")
        .attr("type", "button")
        .class("mind")
        .test_id("all-spots")
        .attr_with("aria-expanded", move || with_all.get().to_string())
        .on("click", move |_| with_all.update(|all| *all = !*all))
        .text_with(move || {
            if with_all.get() {
                return words.show_fewer.to_owned();
            }
            let spots = Spots::of(state);
            let all = &spots.list;
            let count = (all.spots.len() + all.unknown.len()) as f64;
            words.show_all.with(&[&state.notation().count(count)])
        });
    let column = |name| el("th").attr("scope", "col").text(name);
    let head = el("tr").with(&[
        el("th").attr("scope", "col").text_with(move || {
            let humidity = state.notation().percent(state.humidity().value());
            words.place.with(&[&humidity])
        }),
        column(words.surface).class("number"),
        column(words.mould_from).class("number"),
        column(words.drips_from).class("number"),
    ]);
    let table = el("table")
        .class_with("with-all", move || with_all.get())
        .with(&[el("thead").child(&head), body]);
    el("div").class("spots-table").with(&[table, toggle])
}

/// One row of the list.
struct Row {
    place: SpotPlace,
    pictured: Option<ThermalBridge>,
    whole: El,
    surface: El,
    moulds: El,
    drips: El,
    bar: El,
    sign: El,
    verdict: El,
    last: Option<Line>,
}

/// The sign of a verdict: a drop, a ring, or a dot.
const SIGNS: &str = "M6 1C6 1 10 6 10 8.2A4 4 0 0 1 2 8.2C2 6 6 1 6 1Z";

impl Row {
    fn new(
        state: State,
        language: Language,
        place: SpotPlace,
        pictured: Option<ThermalBridge>,
    ) -> Self {
        let named = name(language, place);
        let title = match pictured {
            Some(pictured) => chooser(state, named, pictured),
            None => el("span").text(named),
        };
        let mark =
            svg("svg").class("sign").attr("viewBox", "0 0 12 13").attr("aria-hidden", "true");
        let sign = svg("g");
        let mark = mark.child(&sign.clone().with(&[
            svg("path").class("sign-drop").attr("d", SIGNS),
            svg("circle").class("sign-ring").attr("cx", "6").attr("cy", "7").attr("r", "3.6"),
            svg("circle").class("sign-dot").attr("cx", "6").attr("cy", "7").attr("r", "1.6"),
        ]));
        let bar = el("span")
            .class("limit-bar")
            .attr("aria-hidden", "true")
            .with(&[el("span").class("limit-drip"), el("span").class("limit-now")]);
        let verdict = el("span");
        let number = || el("td").class("number");
        let row = Self {
            place,
            pictured,
            whole: el("tr").test_id(&["spot-", place.key()].concat()),
            surface: number(),
            moulds: number(),
            drips: number(),
            bar,
            sign,
            verdict,
            last: None,
        };
        let said = el("span").class("verdict-word").with(&[mark, row.verdict.clone()]);
        let verdict = el("div").class("verdict").with(&[said, row.bar.clone()]);
        let name = el("th").attr("scope", "row").with(&[title, verdict]);
        let cells = [name, row.surface.clone(), row.moulds.clone(), row.drips.clone()];
        let _ = row.whole.clone().with(&cells);
        let (whole, bar) = (row.whole.clone(), row.bar.clone());
        keep_up(Box::new(move || {
            let chosen = pictured.is_some() && state.sight.place(state) == pictured;
            whole.toggle("chosen", chosen);
            let now = state.humidity().value() * 100.0;
            bar.set_style("--now", &plain(now, 0, "%"));
        }));
        row
    }

    fn show(&mut self, line: Line) {
        if self.last.as_ref() == Some(&line) {
            return;
        }
        self.surface.say(&line.surface);
        self.moulds.say(&line.moulds);
        self.drips.say(&line.drips);
        self.verdict.say(line.verdict);
        self.sign.set("class", line.sign);
        self.whole.toggle("refining", line.is_stale);
        self.bar.flag("hidden", line.limit.is_none());
        if let Some(drip) = line.limit {
            self.bar.set_style("--drip", &plain(drip, 1, "%"));
        }
        self.last = Some(line);
    }
}

/// A name that shows its place's picture.
fn chooser(state: State, named: &str, place: ThermalBridge) -> El {
    let sight = state.sight;
    el("button")
        .attr("type", "button")
        .class("spot-chooser")
        .attr_with("aria-pressed", move || (sight.place(state) == Some(place)).to_string())
        .on("click", move |_| {
            sight.cut.set(0);
            sight.chosen.set(Some(place));
        })
        .text(named)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_in_a_sentence_begins_small() {
        assert_eq!(in_a_sentence("Steel frames of windows"), "steel frames of windows");
        assert_eq!(in_a_sentence("Éléments"), "éléments");
        assert_eq!(in_a_sentence(""), "");
    }
}
