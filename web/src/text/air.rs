//! Words of fan, dampers and fresh air.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct AirWords {
    /// Label: people's air.
    pub people: &'static str,
    /// {0} flow while they are there.
    pub people_said: Phrase,
    /// The same without a fan: {0}.
    pub people_no_fan: Phrase,
    /// {0} flow, of which the fan cannot bring {1}.
    pub people_lack: Phrase,
    /// Label: heat for the air.
    pub heat: &'static str,
    /// {0} in the busy hours, {1} outdoors.
    pub heat_said: Phrase,
    /// The exchanger is held back by frost: {0} effectiveness left.
    pub heat_frost: Phrase,
    /// Label: hot day.
    pub hot_day: &'static str,
    /// {0} of outdoor air carry {1} off.
    pub hot_day_said: Phrase,
    /// Outdoor air cannot.
    pub hot_day_cannot: &'static str,
    /// Heading: fan.
    pub fan: &'static str,
    /// No fan drawn.
    pub no_fan_drawn: &'static str,
    /// Fan told: {0} flow, {1} pressure.
    pub fan_told: Phrase,
    /// Along the axis across, with unit {0}.
    pub flow_axis: Phrase,
    /// Along the axis up, with unit {0}.
    pub pressure_axis: Phrase,
    /// The fan's curve.
    pub fan_curve: &'static str,
    /// The openings' curve.
    pub system_curve: &'static str,
    /// Where they meet.
    pub meets: &'static str,
    /// Column: all clean.
    pub clean: &'static str,
    /// Column: screens dirty.
    pub dirty: &'static str,
    /// Column: one intake stuck.
    pub stuck: &'static str,
    /// Column: one exhaust stuck.
    pub exhaust_stuck: &'static str,
    /// Row: flow.
    pub row_flow: &'static str,
    /// Row: suction of the room.
    pub row_suction: &'static str,
    /// Row: pull on the door.
    pub row_pull: &'static str,
    /// Row: speed on the intakes.
    pub row_intake: &'static str,
    /// Row: speed on the exhaust.
    pub row_exhaust: &'static str,
    /// Intakes too fast: {0}.
    pub too_fast: Phrase,
    /// Open dampers with the fan off: {0} flow, {1} heat.
    pub open_dampers: Phrase,
}

const ENGLISH: AirWords = AirWords {
    people: "Fresh air for those inside",
    people_said: Phrase("{0} while they are there"),
    people_no_fan: Phrase("{0} while they are there, and no fan to bring it"),
    people_lack: Phrase("{0} while they are there; the fan cannot bring {1} of it"),
    heat: "Warming the air that the fan adds takes",
    heat_said: Phrase("{0} in the busy hours, at {1} outdoors"),
    heat_frost: Phrase("; frost holds the exchanger back to {0}"),
    hot_day: "On a hot day",
    hot_day_said: Phrase("{0} of outdoor air carry off {1}"),
    hot_day_cannot: "outdoor air is too warm to carry the heat off",
    fan: "Fan and dampers",
    no_fan_drawn: "No dampers yet. Three, of which one is an exhaust with a fan, suit most rooms: \
                   intakes high at both ends of one side, the exhaust high in the middle of the \
                   other.",
    fan_told: Phrase("Fan and openings meet at {0} and {1}."),
    flow_axis: Phrase("flow, {0}"),
    pressure_axis: Phrase("pressure, {0}"),
    fan_curve: "fan",
    system_curve: "openings",
    meets: "here they meet",
    clean: "Clean",
    dirty: "Dirty screens",
    stuck: "One intake stuck",
    exhaust_stuck: "One exhaust stuck",
    row_flow: "Moves",
    row_suction: "Draws the room down",
    row_pull: "Pulls on the door",
    row_intake: "On the intakes",
    row_exhaust: "On the exhaust",
    too_fast: Phrase("Over {0} on the intakes, rain and snow come in with the air."),
    open_dampers: Phrase(
        "Left open with the fan off, warmth alone moves {0} and takes {1}: use dampers that close.",
    ),
};

const FRENCH: AirWords = AirWords {
    people: "Air neuf pour les occupants",
    people_said: Phrase("{0} pendant leur présence"),
    people_no_fan: Phrase("{0} pendant leur présence, et aucun ventilateur pour l’amener"),
    people_lack: Phrase("{0} pendant leur présence; le ventilateur ne peut en amener {1}"),
    heat: "Réchauffer l’air que le ventilateur ajoute demande",
    heat_said: Phrase("{0} aux heures chargées, à {1} dehors"),
    heat_frost: Phrase("; le givre retient l’échangeur à {0}"),
    hot_day: "Un jour chaud",
    hot_day_said: Phrase("{0} d’air du dehors emporte {1}"),
    hot_day_cannot: "l’air du dehors est trop chaud pour emporter la chaleur",
    fan: "Ventilateur et volets",
    no_fan_drawn: "Pas encore de volets. Trois, dont une sortie avec ventilateur, conviennent à la \
                   plupart des pièces : prises d’air en haut aux deux bouts d’un côté, sortie en \
                   haut au milieu de l’autre.",
    fan_told: Phrase("Ventilateur et ouvertures se rencontrent à {0} et {1}."),
    flow_axis: Phrase("débit, {0}"),
    pressure_axis: Phrase("pression, {0}"),
    fan_curve: "ventilateur",
    system_curve: "ouvertures",
    meets: "point de rencontre",
    clean: "Propre",
    dirty: "Grillages sales",
    stuck: "Une prise bloquée",
    exhaust_stuck: "Une sortie bloquée",
    row_flow: "Débit",
    row_suction: "Dépression dans la pièce",
    row_pull: "Tire sur la porte",
    row_intake: "Aux prises d’air",
    row_exhaust: "À la sortie",
    too_fast: Phrase("Au-dessus de {0} aux prises, pluie et neige entrent avec l’air."),
    open_dampers: Phrase(
        "Laissés ouverts, ventilateur arrêté, la chaleur seule fait passer {0} et prend {1} : \
         posez des volets qui se ferment.",
    ),
};

impl Language {
    /// Words of fan, dampers and fresh air.
    pub const fn air_words(self) -> &'static AirWords {
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
        let phrases = |words: &AirWords| {
            [
                words.people_said,
                words.people_no_fan,
                words.people_lack,
                words.heat_said,
                words.heat_frost,
                words.hot_day_said,
                words.fan_told,
                words.flow_axis,
                words.pressure_axis,
                words.too_fast,
                words.open_dampers,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
