//! What of a place the hours made from it do not have.

use inchwise_core::climate::{ClimateQuantity, NotReached};
use inchwise_core::units::Temperature;

use crate::dom::{El, el};
use crate::measure::Notation;
use crate::text::Language;
use crate::year::YearState;

use ClimateQuantity as Q;

/// One line under the place; empty where its hours have all of it.
pub(super) fn missed(year: YearState, language: Language) -> El {
    el("p").class("year-missed").test_id("year-missed").text_with(move || {
        year.answer().map_or(String::new(), |answer| {
            told(&answer.not_reached, year.state.notation(), language)
        })
    })
}

fn told(not_reached: &[NotReached], notation: Notation, language: Language) -> String {
    let words = language.year();
    let [winter, summer, months @ ..] = words.missed_items;
    let celsius = |value: f64| notation.temperature(Temperature::celsius(value));
    let mut items = Vec::new();
    for (quantity, phrase) in [(Q::WinterDesign, winter), (Q::SummerDesign, summer)] {
        let of_it = not_reached.iter().find(|missed| missed.quantity == quantity);
        items.extend(of_it.map(|it| phrase.with(&[&celsius(it.asked), &celsius(it.reached)])));
    }
    let monthly = [Q::Temperature, Q::DailyRange, Q::VapourPressure, Q::DailyGlobalIrradiation];
    for (quantity, phrase) in monthly.into_iter().zip(months) {
        let count = not_reached.iter().filter(|it| it.quantity == quantity).count();
        if count > 0 {
            items.push(phrase.with(&[&notation.count(count as f64)]));
        }
    }
    if items.is_empty() { String::new() } else { words.missed.with(&[&items.join("; ")]) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;

    #[test]
    fn every_kind_of_miss_is_told_once() {
        let of = |quantity, month| NotReached { quantity, month, asked: -50.0, reached: -42.3 };
        let missed = [
            of(Q::WinterDesign, None),
            of(Q::DailyRange, Some(0)),
            of(Q::DailyRange, Some(11)),
            of(Q::DailyGlobalIrradiation, Some(5)),
        ];
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        let said = told(&missed, notation, Language::English);
        let items = said.split("; ").count();
        assert_eq!(items, 3, "{said}");
        assert!(said.contains("\u{2212}50") && said.contains("daily range in 2 months"), "{said}");
        assert_eq!(told(&[], notation, Language::English), "");
    }
}
