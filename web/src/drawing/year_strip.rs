//! The year drawn: heat by days, and the hours of frost, drip, warmth and cold under it.

use inchwise_core::units::Power;
use leptos::prelude::*;

use super::geometry::{Band, PAPER, YearStrip};
use super::paper::{Drawing, Label, Picture, figure};
use crate::measure::{Notation, UnitSystem, decimal, shortest};
use crate::state::Planner;

const NAME: &str = "year-strip";

/// Everything the strip shows at once.
#[derive(Clone, PartialEq)]
struct Shown {
    strip: YearStrip,
    known: bool,
    told: String,
}

/// Kilowatts in the unit of the scale: a kilowatt, or a thousand Btu/h.
fn unit(units: UnitSystem) -> f64 {
    match units {
        UnitSystem::Metric => 1.0,
        UnitSystem::Imperial => 1000.0 / Power::new(1000.0).as_btu_per_hour(),
    }
}

/// The strip; `told` says it to those who do not see it.
pub fn year_strip(planner: Planner, told: fn(Planner) -> String) -> AnyView {
    let title = planner.language.get_untracked().year().strip;
    let shape = Memo::new(move |_| {
        let answer = planner.year.get();
        let days = answer.as_ref().map(|answer| &answer.days[..]).unwrap_or_default();
        Shown {
            strip: YearStrip::of(days, unit(planner.units.get())),
            known: answer.is_some(),
            told: told(planner),
        }
    });
    let drawing = Drawing {
        paper: |_: &Shown| PAPER,
        told: |shown, _| shown.told.clone(),
        labels,
        under: Some(patterns()),
        ..Drawing::plain(NAME, title, shape, picture())
    };
    figure(NAME, title, vec![drawing.drawn(planner)])
}

fn labels(shown: &Shown, notation: Notation) -> Vec<Label> {
    let words = notation.language.year();
    let strip = &shown.strip;
    let mut labels = Vec::new();
    let unit = match notation.units {
        UnitSystem::Metric => "kW".to_owned(),
        UnitSystem::Imperial => {
            [&decimal(1000.0, 0, notation.language), " ", notation.btu()].concat()
        }
    };
    labels.push(Label::new(0.0, -42.0, "after small", words.heat_axis.with(&[&unit])));
    if shown.known {
        for tick in strip.scale.ticks() {
            let written = shortest(tick, 2, notation.language);
            labels.push(Label::new(-10.0, strip.y(tick), "before tick", written));
        }
    }
    for (month, name) in words.month_letters.iter().enumerate() {
        let (x, y) = YearStrip::month_at(month);
        labels.push(Label::new(x, y, "tick", *name));
    }
    for (band, name) in words.bands.iter().enumerate() {
        let [top, _] = YearStrip::band_at(band);
        let hours: f64 = strip.bands[band].iter().sum();
        let written = if shown.known {
            words.band.with(&[name, &notation.count(hours)])
        } else {
            (*name).to_owned()
        };
        labels.push(Label::new(0.0, top - 27.0, "after small", written));
    }
    if !shown.known {
        labels.push(Label::new(500.0, 120.0, "waiting", words.working_out));
    }
    labels
}

/// How a kind of hour is painted: told apart by pattern, so that it reads in one colour.
const fn paint(band: Band) -> &'static str {
    match band {
        Band::Frost => "url(#year-frost)",
        Band::Drip => "url(#year-drip)",
        Band::TooWarm => "url(#year-warm)",
        Band::TooCold => "currentColor",
    }
}

fn patterns() -> AnyView {
    let tile = |id: &'static str, side: &'static str, class: &'static str, data: &'static str| {
        view! {
            <pattern id=id width=side height=side patternUnits="userSpaceOnUse">
                <path class=class d=data></path>
            </pattern>
        }
    };
    let tiles = vec![
        tile("year-frost", "12", "year-dots", "M3 3h0M9 9h0"),
        tile("year-drip", "12", "year-lines", "M0 12L12 0M-3 3L3 -3M9 15L15 9"),
        tile("year-warm", "12", "year-lines", "M0 6H12M6 0V12"),
    ];
    view! {
        <svg class="picture patterns" aria-hidden="true"><defs>{tiles}</defs></svg>
    }
    .into_any()
}

fn picture() -> Picture<Shown> {
    let mut picture = Picture::new();
    picture
        .path("grid", |shown: &Shown| shown.strip.grid())
        .painted("year-heat", "currentColor", |shown| shown.strip.heat_outline())
        .painted("year-band", paint(Band::ALL[0]), |shown| shown.strip.band_outline(0))
        .painted("year-band", paint(Band::ALL[1]), |shown| shown.strip.band_outline(1))
        .painted("year-band", paint(Band::ALL[2]), |shown| shown.strip.band_outline(2))
        .painted("year-band", paint(Band::ALL[3]), |shown| shown.strip.band_outline(3))
        .path("year-base", |shown| shown.strip.base_lines());
    picture
}
