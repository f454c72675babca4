//! Words of damp: what a use makes of the room, what a cold spell leaves, what gathers in the walls.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct DampWords {
    /// Heading of the whole.
    pub title: &'static str,
    /// Over the list of uses.
    pub room_use: &'static str,
    /// That a use sets other choices.
    pub use_note: &'static str,
    /// Label: what the use gives off.
    pub gives: &'static str,
    /// {0} in the busy hours, {1} on a day of use.
    pub gives_said: Phrase,
    /// Nothing is given off.
    pub gives_nothing: &'static str,
    /// Label: the room with leaks alone.
    pub alone: &'static str,
    /// {0} humidity, from {1} of outdoor air at {2}.
    pub alone_said: Phrase,
    /// The same, where the room is saturated.
    pub alone_soaked: Phrase,
    /// Label: what holds the humidity {0}.
    pub holding: Phrase,
    /// Leaks alone hold it.
    pub by_leaks: &'static str,
    /// The fan holds it, {0} of its time.
    pub by_fan: Phrase,
    /// The fan is too small: needs {0}, comes to {1}.
    pub fan_too_small: Phrase,
    /// No fan: needs {0}.
    pub no_fan: Phrase,
    /// Outdoor air is too damp.
    pub too_damp: &'static str,
    /// Label: what this does to the weakest spot.
    pub verdict: &'static str,
    /// The spot {0} stays dry as the room stands at {1}.
    pub verdict_dry: Phrase,
    /// Mould may grow on it.
    pub verdict_mould: Phrase,
    /// It drips.
    pub verdict_drip: Phrase,
    /// It frosts.
    pub verdict_frost: Phrase,
    /// Label: next weakest.
    pub next: &'static str,
    /// {0} next spot, {1} humidity from which it drips.
    pub next_said: Phrase,
    /// Label: warm end of the year.
    pub mild: &'static str,
    /// Outdoor air holds the target {0} until {1}; in the warmest month: {2}.
    pub mild_said: Phrase,
    /// It never does.
    pub mild_never: Phrase,
    /// All year.
    pub mild_always: Phrase,
    /// Other ways: dehumidifier taking {0} a day, or waiting.
    pub other_ways: Phrase,
    /// Also heating to {0}.
    pub heat_to: Phrase,
    /// {0} days at {1} leave at most {2} of frost on: {3}. It melts to {4}.
    pub spell: Phrase,
    /// Nothing freezes in the spell.
    pub spell_dry: &'static str,
    /// The cold spots could take {0}; there is {1}.
    pub limited: Phrase,
    /// Heading: inside the walls.
    pub inside: &'static str,
    /// {0} at most at the steel by the end of {1}; dries.
    pub dries: Phrase,
    /// The same; does not dry.
    pub stays_wet: Phrase,
    /// Nothing gathers.
    pub never_wet: &'static str,
    /// Foam thinner than vapour control: {0} least.
    pub thin: Phrase,
    /// Foam deep enough for it: {0} least.
    pub deep_enough: Phrase,
    /// Label: the room in a cold spell.
    pub settles: &'static str,
    /// It settles at {0}.
    pub settles_said: Phrase,
    /// Heading: ask others.
    pub ask: &'static str,
    /// What the estimate leaves out.
    pub estimate: &'static str,
}

const ENGLISH: DampWords = DampWords {
    title: "Damp and air",
    room_use: "What the room is used for",
    use_note: "Sets people, loads, animals and the humidity to hold. Change any of them under Use \
               of the room.",
    gives: "The use gives off",
    gives_said: Phrase("{0} in its busy hours, {1} of water on a day of use"),
    gives_nothing: "no moisture",
    alone: "With leaks alone",
    alone_said: Phrase("the room comes to {0} on {1} of outdoor air at {2}"),
    alone_soaked: Phrase("the room is soaked: {1} of outdoor air at {2} cannot carry it out"),
    holding: Phrase("To hold {0}"),
    by_leaks: "the leaks carry out enough",
    by_fan: Phrase("the fan runs {0} of the time, or at that part of its speed"),
    fan_too_small: Phrase("the fan is too small: {0} are needed, and the room comes to {1}"),
    no_fan: Phrase("{0} of outdoor air are needed: fit dampers and a fan, or give off less"),
    too_damp: "outdoor air is damper than the room is to be: no fan helps",
    verdict: "What that does",
    verdict_dry: Phrase("{0}: stays dry, the room standing at {1} on a cold day of use"),
    verdict_mould: Phrase("{0}: does not drip at {1}, but mould may grow over the weeks"),
    verdict_drip: Phrase("{0}: drips, the room standing at {1} on a cold day of use"),
    verdict_frost: Phrase(
        "{0}: frost, and drips at the thaw, the room standing at {1} on a cold day of use",
    ),
    next: "The next weakest of another sort",
    next_said: Phrase("{0}, dry up to {1}"),
    mild: "In mild weather",
    mild_said: Phrase("outdoor air holds {0} until it is about {1} outdoors"),
    mild_never: Phrase("this air never holds {0}"),
    mild_always: Phrase("outdoor air holds {0} all year"),
    other_ways: Phrase("; past that, a dehumidifier that takes out {0} a day, or wait"),
    heat_to: Phrase(", or heat the room to {0}"),
    spell: Phrase(
        "{0} days at {1} leave at most {2} of frost, most on {3}; at the thaw it is {4} of water.",
    ),
    spell_dry: "Nothing freezes onto the cold spots.",
    limited: Phrase("The cold spots could take {0}; no more than {1} is left for them."),
    inside: "Inside the walls, over the year",
    dries: Phrase("up to {0} at the steel by the end of {1}; dries out within the year"),
    stays_wet: Phrase("up to {0} at the steel by the end of {1}; some stays from year to year"),
    never_wet: "no water gathers",
    thin: Phrase("; this foam holds vapour back only from {0}"),
    deep_enough: Phrase("; foam holds vapour back from {0} on"),
    settles: "Through the spell",
    settles_said: Phrase("the room settles at {0}. "),
    ask: "Ask before you build",
    estimate: "An upper estimate: whole places are taken to be as cold as their coldest point, the \
               whole spell as cold as your coldest day, and frost does not insulate.",
};

const FRENCH: DampWords = DampWords {
    title: "Humidité et air",
    room_use: "Usage de la pièce",
    use_note: "Fixe personnes, brassées, animaux et humidité à tenir. Changez-les sous Usage de la \
               pièce.",
    gives: "L’usage dégage",
    gives_said: Phrase("{0} aux heures chargées, {1} d’eau un jour d’usage"),
    gives_nothing: "aucune humidité",
    alone: "Avec les fuites seules",
    alone_said: Phrase("la pièce arrive à {0} avec {1} d’air du dehors à {2}"),
    alone_soaked: Phrase("la pièce est trempée : {1} d’air à {2} ne peut tout emporter"),
    holding: Phrase("Pour tenir {0}"),
    by_leaks: "les fuites en emportent assez",
    by_fan: Phrase("le ventilateur tourne {0} du temps, ou à cette part de sa vitesse"),
    fan_too_small: Phrase("le ventilateur est trop petit : il faut {0}, et la pièce arrive à {1}"),
    no_fan: Phrase("il faut {0} d’air du dehors : posez volets et ventilateur, ou dégagez moins"),
    too_damp: "l’air du dehors est plus humide que la pièce ne doit l’être : aucun ventilateur n’y \
               peut rien",
    verdict: "Ce que cela fait",
    verdict_dry: Phrase("{0} : reste sec, la pièce étant à {1} un jour froid d’usage"),
    verdict_mould: Phrase(
        "{0} : ne dégoutte pas à {1}, mais la moisissure peut venir au fil des semaines",
    ),
    verdict_drip: Phrase("{0} : dégoutte, la pièce étant à {1} un jour froid d’usage"),
    verdict_frost: Phrase(
        "{0} : givre, et dégoutte au redoux, la pièce étant à {1} un jour froid d’usage",
    ),
    next: "Le suivant, d’une autre sorte",
    next_said: Phrase("{0}, sec jusqu’à {1}"),
    mild: "Par temps doux",
    mild_said: Phrase("l’air du dehors tient {0} jusqu’à environ {1} dehors"),
    mild_never: Phrase("cet air ne tient jamais {0}"),
    mild_always: Phrase("l’air du dehors tient {0} toute l’année"),
    other_ways: Phrase("; au-delà, un déshumidificateur qui retire {0} par jour, ou attendre"),
    heat_to: Phrase(", ou chauffer la pièce à {0}"),
    spell: Phrase(
        "{0} jours à {1} laissent au plus {2} de givre, surtout sur {3}; au redoux, c’est {4} \
         d’eau.",
    ),
    spell_dry: "Rien ne gèle aux points froids.",
    limited: Phrase("Les points froids pourraient prendre {0}; il n’en reste pas plus de {1}."),
    inside: "Dans les parois, au fil de l’année",
    dries: Phrase("jusqu’à {0} contre l’acier fin {1}; sèche dans l’année"),
    stays_wet: Phrase("jusqu’à {0} contre l’acier fin {1}; il en reste d’une année à l’autre"),
    never_wet: "aucune eau ne s’amasse",
    thin: Phrase("; cette mousse retient la vapeur seulement dès {0}"),
    deep_enough: Phrase("; la mousse retient la vapeur dès {0}"),
    settles: "Pendant la période",
    settles_said: Phrase("la pièce se stabilise à {0}. "),
    ask: "À demander avant de construire",
    estimate: "Estimation haute : chaque endroit est pris aussi froid que son point le plus froid, \
               toute la période aussi froide que votre jour le plus froid, et le givre n’isole pas.",
};

impl Language {
    /// Words of damp.
    pub const fn damp(self) -> &'static DampWords {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &DampWords| {
            [
                words.gives_said,
                words.alone_said,
                words.alone_soaked,
                words.holding,
                words.by_fan,
                words.fan_too_small,
                words.no_fan,
                words.verdict_dry,
                words.verdict_mould,
                words.verdict_drip,
                words.verdict_frost,
                words.next_said,
                words.mild_said,
                words.mild_never,
                words.mild_always,
                words.other_ways,
                words.heat_to,
                words.spell,
                words.limited,
                words.dries,
                words.stays_wet,
                words.thin,
                words.deep_enough,
                words.settles_said,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
