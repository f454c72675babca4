//! Words of the choices about the year, and of what is wrong with them.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct YearChoiceWords {
    /// What the supply's share rests on.
    pub supply_note: &'static str,
    /// Headings of the groups: heater and supply, prices.
    pub groups: [&'static str; 2],
    /// Label: what heats.
    pub what_heats: &'static str,
    /// Label: the currency.
    pub currency: &'static str,
    /// Label: the day of the prices.
    pub prices_of: &'static str,
    /// How a day is written.
    pub date_hint: &'static str,
    /// Range: {0} to {1}.
    pub range: Phrase,
    /// Fault: no number.
    pub no_number: &'static str,
    /// Fault: whole number.
    pub whole: &'static str,
    /// Fault: a price without a day.
    pub undated: &'static str,
    /// Fault: no such day.
    pub no_day: &'static str,
    /// Fault: not a currency.
    pub no_currency: &'static str,
    /// Over the faults of the choices.
    pub earlier: &'static str,
    /// Before a fault of {0}.
    pub named: Phrase,
    /// That flames without a flue are not offered: {0} kg of water.
    pub refused: Phrase,
}

const ENGLISH: YearChoiceWords = YearChoiceWords {
    supply_note: "Four fifths of the breaker’s rating. Ask an electrician.",
    groups: ["Heater and supply", "Prices"],
    what_heats: "Heater",
    currency: "Currency, three letters",
    prices_of: "Day the prices are of",
    date_hint: "year-month-day, 2026-01-31",
    range: Phrase("{0} to {1}"),
    no_number: "No number could be read.",
    whole: "A whole number, please.",
    undated: "Prices need the day they are of.",
    no_day: "There is no such day.",
    no_currency: "Three capital letters, as XTS.",
    earlier: "The year shown is that of the choices before:",
    named: Phrase("{0}: "),
    refused: Phrase(
        "Flames without a flue are not offered: each kilogram of propane gives {0} kg of water to \
         the room, with its fumes.",
    ),
};

const FRENCH: YearChoiceWords = YearChoiceWords {
    supply_note: "Quatre cinquièmes du calibre du disjoncteur. Consultez un électricien.",
    groups: ["Chauffage et alimentation", "Prix"],
    what_heats: "Chauffage",
    currency: "Monnaie, trois lettres",
    prices_of: "Date des prix",
    date_hint: "année-mois-jour, 2026-01-31",
    range: Phrase("{0} à {1}"),
    no_number: "Aucun nombre lisible.",
    whole: "Un nombre entier, s’il vous plaît.",
    undated: "Il faut la date des prix.",
    no_day: "Ce jour n’existe pas.",
    no_currency: "Trois majuscules, comme XTS.",
    earlier: "L’année montrée est celle des choix d’avant :",
    named: Phrase("{0} : "),
    refused: Phrase(
        "Les flammes sans conduit ne sont pas offertes : chaque kilogramme de propane donne {0} kg \
         d’eau à la pièce, avec ses fumées.",
    ),
};

impl Language {
    /// The phrases.
    pub const fn year_choices(self) -> &'static YearChoiceWords {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{ENGLISH, FRENCH, YearChoiceWords};

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &YearChoiceWords| [words.named, words.range, words.refused];
        for (english, french) in phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH)) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
