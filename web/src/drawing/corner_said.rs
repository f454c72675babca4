//! The words on a temperature picture and under it.

use inchwise_core::units::TemperatureDifference;

use super::corner_shape::{Shown, steps};
use super::geometry::TemperaturePicture;
use super::paper::Label;
use crate::measure::Notation;

/// What is said under the picture.
pub(super) fn said(shown: &Shown, notation: Notation) -> String {
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

pub(super) fn told(shown: &Shown, notation: Notation) -> String {
    let words = notation.language.spots();
    let Some(coldest) = shown.coldest else { return words.told_waiting.to_owned() };
    let place = notation.language.place(shown.place);
    words.told.with(&[place, &notation.temperature_finely(coldest), &said(shown, notation)])
}

pub(super) fn labels(shown: &Shown, notation: Notation) -> Vec<Label> {
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
