//! Words of what holds in a year, and what to expect.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct YearVerdicts {
    /// Heading of what to know.
    pub verdicts: &'static str,
    /// What holds.
    pub holds: &'static str,
    /// What does not hold.
    pub short: &'static str,
    /// What holds only while someone feeds a stove.
    pub tended: &'static str,
    /// What gets wet.
    pub damp: &'static str,
    /// What stays dry.
    pub stays_dry: &'static str,
    /// What is no more than said.
    pub said: &'static str,
    /// Heater: gives {0} at {1}, needed {2}.
    pub heater: Phrase,
    /// What of a stove's heat is given with nobody there: {0}.
    pub unattended: Phrase,
    /// Heater: hours under the set-point {0}.
    pub unmet: Phrase,
    /// Supply: {0} V, {1} A carries {2}; asked {3}, of it for heat {4}.
    pub supply: Phrase,
    /// Power cut at {0}: {1}, {2}.
    pub power_cut: Phrase,
    /// Down to {0} after {1}.
    pub down_after: Phrase,
    /// Never down to {0}.
    pub down_never: Phrase,
    /// From cold at {0}: air at {1} {2}, walls {3}.
    pub warm_up: Phrase,
    /// That this takes someone to feed the stove.
    pub while_fed: &'static str,
    /// After {0}.
    pub after: Phrase,
    /// Not with this heater.
    pub never: &'static str,
    /// Coldest spot {0}: frost {1} hours, drip {2} hours.
    pub wet: Phrase,
    /// Coldest spot {0} stays dry.
    pub dry: Phrase,
    /// Onto cold places {0} of water, {1} of frost; {2} dried back, {3} ran off.
    pub water: Phrase,
    /// Summer: up to {0}; light paint {1}, shaded {2}.
    pub summer: Phrase,
    /// With the fan off {0}.
    pub without_fan: Phrase,
    /// Too warm for {0} hours over {1}.
    pub too_warm: Phrase,
    /// Hours and minutes: {0} h {1} min.
    pub hours_minutes: Phrase,
    /// Minutes alone: {0}.
    pub minutes: Phrase,
    /// Hours without minutes: {0}.
    pub whole_hours: Phrase,
    /// Days: {0}.
    pub days: Phrase,
}

const ENGLISH: YearVerdicts = YearVerdicts {
    verdicts: "Will it hold?",
    holds: "Holds",
    short: "Too little",
    tended: "While tended",
    damp: "Wet",
    stays_dry: "Dry",
    said: "Expect",
    heater: Phrase("Heater: up to {0} at {1} outdoors, {2} needed."),
    unattended: Phrase("With nobody there to feed the stove: {0}."),
    unmet: Phrase("Heater: {0} hours of the year more than half a degree under the set-point."),
    supply: Phrase("Supply: {0} V and {1} A carry {2} for hours; {3} asked, {4} of it for heat."),
    power_cut: Phrase("After a power cut at {0}: {1}, {2}."),
    down_after: Phrase("{0} after {1}"),
    down_never: Phrase("never {0}"),
    warm_up: Phrase("From stone cold at {0}: air at {1} {2}, walls {3}."),
    while_fed: "Only while someone feeds the stove.",
    after: Phrase("after {0}"),
    never: "not with this heater",
    wet: Phrase("Coldest spot: {0}. Frost in {1} hours, drip in {2} hours of the year."),
    dry: Phrase("Coldest spot: {0}. No frost and no drip."),
    water: Phrase(
        "Onto cold places come {0} of water and {1} of frost in a year; {2} dries back, {3} runs off.",
    ),
    summer: Phrase(
        "Summer: up to {0} as chosen; {1} with light paint, {2} with roof and windows shaded.",
    ),
    without_fan: Phrase("{0} with the fan off."),
    too_warm: Phrase("Summer: {0} hours over {1}."),
    hours_minutes: Phrase("{0} h {1} min"),
    minutes: Phrase("{0} min"),
    whole_hours: Phrase("{0} h"),
    days: Phrase("{0} days"),
};

const FRENCH: YearVerdicts = YearVerdicts {
    verdicts: "Est-ce que ça tient?",
    holds: "Tient",
    short: "Trop peu",
    tended: "Si surveillé",
    damp: "Mouillé",
    stays_dry: "Sec",
    said: "À prévoir",
    heater: Phrase("Chauffage : jusqu’à {0} à {1} dehors, {2} nécessaires."),
    unattended: Phrase("Sans personne pour charger le poêle : {0}."),
    unmet: Phrase("Chauffage : {0} heures par année à plus d’un demi-degré sous la consigne."),
    supply: Phrase(
        "Alimentation : {0} V et {1} A portent {2} pendant des heures; {3} demandés, dont {4} \
         pour chauffer.",
    ),
    power_cut: Phrase("Après une panne à {0} : {1}, {2}."),
    down_after: Phrase("{0} après {1}"),
    down_never: Phrase("jamais {0}"),
    warm_up: Phrase("Départ à froid à {0} : air à {1} {2}, parois {3}."),
    while_fed: "Seulement si quelqu’un charge le poêle.",
    after: Phrase("après {0}"),
    never: "pas avec ce chauffage",
    wet: Phrase("Point le plus froid : {0}. Givre {1} heures, gouttes {2} heures par année."),
    dry: Phrase("Point le plus froid : {0}. Ni givre ni gouttes."),
    water: Phrase(
        "Aux endroits froids viennent {0} d’eau et {1} de givre en une année; {2} sèche, {3} coule.",
    ),
    summer: Phrase(
        "Été : jusqu’à {0} tel que choisi; {1} avec peinture claire, {2} avec toit et fenêtres \
         ombragés.",
    ),
    without_fan: Phrase("{0} sans ventilateur."),
    too_warm: Phrase("Été : {0} heures au-dessus de {1}."),
    hours_minutes: Phrase("{0} h {1} min"),
    minutes: Phrase("{0} min"),
    whole_hours: Phrase("{0} h"),
    days: Phrase("{0} jours"),
};

impl Language {
    /// The phrases.
    pub const fn year_verdicts(self) -> &'static YearVerdicts {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{ENGLISH, FRENCH, YearVerdicts};

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &YearVerdicts| {
            [
                words.heater,
                words.unattended,
                words.unmet,
                words.supply,
                words.power_cut,
                words.down_after,
                words.down_never,
                words.warm_up,
                words.after,
                words.wet,
                words.dry,
                words.water,
                words.summer,
                words.without_fan,
                words.too_warm,
                words.hours_minutes,
                words.minutes,
                words.whole_hours,
                words.days,
            ]
        };
        for (english, french) in phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH)) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
