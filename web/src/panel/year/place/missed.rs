//! What of the place the hours made from it do not have.

use inchwise_core::climate::{ClimateQuantity, NotReached};
use inchwise_core::units::Temperature;

use crate::dom::{El, el};
use crate::measure::Notation;
use crate::text::Language;
use crate::year::{MONTHLY, YearState};

/// One sentence; nothing where the hours have all of it.
pub(super) fn missed(year: YearState, language: Language) -> El {
    el("p").class("year-missed").test_id("year-missed").text_with(move || {
        year.answer().map_or(String::new(), |answer| {
            sentence(&answer.not_reached, year.state.notation(), language)
        })
    })
}

fn sentence(not_reached: &[NotReached], notation: Notation, language: Language) -> String {
    let words = language.year();
    let [winter, summer, months @ ..] = words.missed_items;
    let celsius = |value: f64| notation.temperature(Temperature::celsius(value));
    let mut items = Vec::new();
    for (quantity, phrase) in
        [(ClimateQuantity::WinterDesign, winter), (ClimateQuantity::SummerDesign, summer)]
    {
        let of_it = not_reached.iter().find(|missed| missed.quantity == quantity);
        items.extend(of_it.map(|it| phrase.with(&[&celsius(it.asked), &celsius(it.reached)])));
    }
    for (quantity, phrase) in MONTHLY.into_iter().zip(months) {
        let count = not_reached.iter().filter(|it| it.quantity == quantity).count();
        if count > 0 {
            items.push(phrase.with(&[&notation.count(count as f64)]));
        }
    }
    if items.is_empty() { String::new() } else { words.missed.with(&[&items.join("; ")]) }
}
