//! Words of damp and air.

use inchwise_core::moisture::{Deferral, Remedy};

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
    /// {0} in the busy hours, {1} in a day.
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
    /// The weakest spot {0} stays dry.
    pub verdict_dry: Phrase,
    /// Mould may grow on it.
    pub verdict_mould: Phrase,
    /// It drips.
    pub verdict_drip: Phrase,
    /// It frosts.
    pub verdict_frost: Phrase,
    /// Label: next weakest.
    pub next: &'static str,
    /// {0} remedy, {1} next spot, {2} humidity without mould.
    pub next_said: Phrase,
    /// Label: people's air.
    pub people: &'static str,
    /// {0} flow while they are there.
    pub people_said: Phrase,
    /// The same without a fan: {0}.
    pub people_no_fan: Phrase,
    /// Label: heat for the air.
    pub heat: &'static str,
    /// {0} in the busy hours, {1} in the mean of a day, {2} outdoors.
    pub heat_said: Phrase,
    /// The exchanger is held back by frost: {0} effectiveness left.
    pub heat_frost: Phrase,
    /// Label: hot day.
    pub hot_day: &'static str,
    /// {0} of outdoor air carry {1} off.
    pub hot_day_said: Phrase,
    /// Outdoor air cannot.
    pub hot_day_cannot: &'static str,
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
    /// Heading: the humidity chart.
    pub curve: &'static str,
    /// Chart told: {0} coldest, {1} limit there, {2} warmest, {3} limit there, {4} own humidity.
    pub curve_told: Phrase,
    /// Along the axis across.
    pub outdoors: &'static str,
    /// Along the axis up.
    pub humidity: &'static str,
    /// Line: mould from here.
    pub mould_line: &'static str,
    /// Line: drips from here.
    pub drip_line: &'static str,
    /// Line: once the weakest is mended.
    pub next_line: &'static str,
    /// Line: this use, leaks alone.
    pub alone_line: &'static str,
    /// Line: this use with the fan.
    pub fan_line: &'static str,
    /// Heading: the balance.
    pub balance: &'static str,
    /// Balance told: {0} in, {1} by air, {2} frost, {3} water.
    pub balance_told: Phrase,
    /// Bar: in.
    pub comes_in: &'static str,
    /// Bar: out by air.
    pub by_air: &'static str,
    /// Bar: frost.
    pub as_frost: &'static str,
    /// Bar: water.
    pub as_water: &'static str,
    /// Bar: wherever it can.
    pub anywhere: &'static str,
    /// Nothing to draw.
    pub no_moisture: &'static str,
    /// {0} days at {1} leave at most {2} of frost on: {3}. It melts to {4}.
    pub spell: Phrase,
    /// Nothing freezes in the spell.
    pub spell_dry: &'static str,
    /// The cold spots could take {0}; there is {1}.
    pub limited: Phrase,
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
    /// Heading: ask others.
    pub ask: &'static str,
    /// What the estimate leaves out.
    pub estimate: &'static str,
}

const ENGLISH_WORDS: DampWords = DampWords {
    title: "Damp and air",
    room_use: "What the room is used for",
    use_note: "Sets people, loads, animals and the humidity to hold. Change any of them under Use \
               of the room.",
    gives: "The use gives off",
    gives_said: Phrase("{0} in its busy hours, {1} of water a day"),
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
    verdict: "At the weakest spot",
    verdict_dry: Phrase("{0}: stays dry"),
    verdict_mould: Phrase("{0}: does not drip, but mould may grow"),
    verdict_drip: Phrase("{0}: drips"),
    verdict_frost: Phrase("{0}: frost, and drips at the thaw"),
    next: "Mend it",
    next_said: Phrase("({0}) and the next weakest is {1}, free of mould up to {2}"),
    people: "Fresh air for those inside",
    people_said: Phrase("{0} while they are there"),
    people_no_fan: Phrase("{0} while they are there, and no fan to bring it"),
    heat: "Warming that air takes",
    heat_said: Phrase("{0} in the busy hours and {1} in the mean of a day, at {2} outdoors"),
    heat_frost: Phrase("; frost holds the exchanger back to {0}"),
    hot_day: "On a hot day",
    hot_day_said: Phrase("{0} of outdoor air carry off {1}"),
    hot_day_cannot: "outdoor air is too warm to carry the heat off",
    mild: "In mild weather",
    mild_said: Phrase("outdoor air holds {0} until it is about {1} outdoors"),
    mild_never: Phrase("this air never holds {0}"),
    mild_always: Phrase("outdoor air holds {0} all year"),
    other_ways: Phrase("; past that, a dehumidifier that takes out {0} a day, or wait"),
    heat_to: Phrase(", or heat the room to {0}"),
    curve: "How humid the room may be, by outdoor temperature",
    curve_told: Phrase(
        "At {0} outdoors the weakest spot is free of mould up to {1}, at {2} up to {3}. This use \
         brings {4} at the coldest.",
    ),
    outdoors: "outdoors",
    humidity: "indoor humidity, %",
    mould_line: "mould from here",
    drip_line: "drips from here",
    next_line: "mould, weakest mended",
    alone_line: "this use, leaks alone",
    fan_line: "this use, with the fan",
    balance: "Where the water goes in a cold spell",
    balance_told: Phrase("{0} comes in; air takes {1}, {2} lands as frost and {3} as water."),
    comes_in: "given off",
    by_air: "out with the air",
    as_frost: "onto cold spots, frost",
    as_water: "onto cold spots, water",
    anywhere: "wherever it can",
    no_moisture: "This use gives off no moisture.",
    spell: Phrase(
        "{0} days at {1} leave at most {2} of frost, most on {3}; at the thaw it is {4} of water.",
    ),
    spell_dry: "Nothing freezes onto the cold spots.",
    limited: Phrase("The cold spots could take {0}; no more than {1} is left for them."),
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
    row_flow: "Moves",
    row_suction: "Draws the room down",
    row_pull: "Pulls on the door",
    row_intake: "On the intakes",
    row_exhaust: "On the exhaust",
    too_fast: Phrase("Over {0} on the intakes, rain and snow come in with the air."),
    open_dampers: Phrase(
        "Left open with the fan off, warmth alone moves {0} and takes {1}: use dampers that close.",
    ),
    inside: "Inside the walls, over the year",
    dries: Phrase("up to {0} at the steel by the end of {1}; dries out within the year"),
    stays_wet: Phrase("up to {0} at the steel by the end of {1}; some stays from year to year"),
    never_wet: "no water gathers",
    thin: Phrase("; this foam holds vapour back only from {0}"),
    ask: "Ask before you build",
    estimate: "An upper estimate: whole places are taken to be as cold as their coldest point, the \
               whole spell as cold as your coldest day, and frost does not insulate.",
};

const FRENCH_WORDS: DampWords = DampWords {
    title: "Humidité et air",
    room_use: "Usage de la pièce",
    use_note: "Fixe personnes, brassées, animaux et humidité à tenir. Changez-les sous Usage de la \
               pièce.",
    gives: "L’usage dégage",
    gives_said: Phrase("{0} aux heures chargées, {1} d’eau par jour"),
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
    verdict: "Au point faible",
    verdict_dry: Phrase("{0} : reste sec"),
    verdict_mould: Phrase("{0} : ne dégoutte pas, mais la moisissure peut venir"),
    verdict_drip: Phrase("{0} : dégoutte"),
    verdict_frost: Phrase("{0} : givre, et dégoutte au redoux"),
    next: "Corrigez-le",
    next_said: Phrase("({0}) et le suivant est {1}, sans moisissure jusqu’à {2}"),
    people: "Air neuf pour les occupants",
    people_said: Phrase("{0} pendant leur présence"),
    people_no_fan: Phrase("{0} pendant leur présence, et aucun ventilateur pour l’amener"),
    heat: "Réchauffer cet air demande",
    heat_said: Phrase("{0} aux heures chargées et {1} en moyenne sur le jour, à {2} dehors"),
    heat_frost: Phrase("; le givre retient l’échangeur à {0}"),
    hot_day: "Un jour chaud",
    hot_day_said: Phrase("{0} d’air du dehors emporte {1}"),
    hot_day_cannot: "l’air du dehors est trop chaud pour emporter la chaleur",
    mild: "Par temps doux",
    mild_said: Phrase("l’air du dehors tient {0} jusqu’à environ {1} dehors"),
    mild_never: Phrase("cet air ne tient jamais {0}"),
    mild_always: Phrase("l’air du dehors tient {0} toute l’année"),
    other_ways: Phrase("; au-delà, un déshumidificateur qui retire {0} par jour, ou attendre"),
    heat_to: Phrase(", ou chauffer la pièce à {0}"),
    curve: "Humidité permise selon la température dehors",
    curve_told: Phrase(
        "À {0} dehors, le point faible reste sans moisissure jusqu’à {1}; à {2}, jusqu’à {3}. Cet \
         usage donne {4} au plus froid.",
    ),
    outdoors: "dehors",
    humidity: "humidité intérieure, %",
    mould_line: "moisissure dès ici",
    drip_line: "dégoutte dès ici",
    next_line: "moisissure, point faible corrigé",
    alone_line: "cet usage, fuites seules",
    fan_line: "cet usage, avec ventilateur",
    balance: "Où va l’eau par grand froid",
    balance_told: Phrase("{0} arrive; l’air emporte {1}, {2} se pose en givre et {3} en eau."),
    comes_in: "dégagé",
    by_air: "avec l’air",
    as_frost: "aux points froids, givre",
    as_water: "aux points froids, eau",
    anywhere: "où elle peut",
    no_moisture: "Cet usage ne dégage aucune humidité.",
    spell: Phrase(
        "{0} jours à {1} laissent au plus {2} de givre, surtout sur {3}; au redoux, c’est {4} \
         d’eau.",
    ),
    spell_dry: "Rien ne gèle aux points froids.",
    limited: Phrase("Les points froids pourraient prendre {0}; il n’en reste pas plus de {1}."),
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
    inside: "Dans les parois, au fil de l’année",
    dries: Phrase("jusqu’à {0} contre l’acier fin {1}; sèche dans l’année"),
    stays_wet: Phrase("jusqu’à {0} contre l’acier fin {1}; il en reste d’une année à l’autre"),
    never_wet: "aucune eau ne s’amasse",
    thin: Phrase("; cette mousse retient la vapeur seulement dès {0}"),
    ask: "À demander avant de construire",
    estimate: "Estimation haute : chaque endroit est pris aussi froid que son point le plus froid, \
               toute la période aussi froide que votre jour le plus froid, et le givre n’isole pas.",
};

const ENGLISH_MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];
const FRENCH_MONTHS: [&str; 12] = [
    "janvier",
    "février",
    "mars",
    "avril",
    "mai",
    "juin",
    "juillet",
    "août",
    "septembre",
    "octobre",
    "novembre",
    "décembre",
];

impl Language {
    /// Words of damp and air.
    pub const fn damp(self) -> &'static DampWords {
        match self {
            English => &ENGLISH_WORDS,
            French => &FRENCH_WORDS,
        }
    }

    /// A month by its index from January.
    pub const fn month(self, month: usize) -> &'static str {
        match self {
            English => ENGLISH_MONTHS[month % 12],
            French => FRENCH_MONTHS[month % 12],
        }
    }

    /// What mends a cold spot, as a short clause.
    pub const fn remedy(self, remedy: Remedy) -> &'static str {
        match (remedy, self) {
            (Remedy::CoverCastings, English) => "cover the castings",
            (Remedy::CoverCastings, French) => "habiller les pièces de coin",
            (Remedy::HoldStudsOff, English) => "hold the studs off the steel",
            (Remedy::HoldStudsOff, French) => "écarter les montants de l’acier",
            (Remedy::HoldJoistsOff, English) => "hold the joists off the roof",
            (Remedy::HoldJoistsOff, French) => "écarter les solives du toit",
            (Remedy::PadBrackets, English) => "pad the brackets",
            (Remedy::PadBrackets, French) => "caler les équerres",
            (Remedy::InsulateFloor, English) => "wrap or cover the floor’s members",
            (Remedy::InsulateFloor, French) => "envelopper ou couvrir les traverses",
            (Remedy::PackOpeningFrames, English) => "foam over the opening frames",
            (Remedy::PackOpeningFrames, French) => "mousser les cadres d’ouverture",
            (Remedy::InsulateDampers, English) => "use insulated dampers",
            (Remedy::InsulateDampers, French) => "prendre des volets isolés",
            (Remedy::DeepenFoam, English) => "deepen the foam",
            (Remedy::DeepenFoam, French) => "épaissir la mousse",
            (Remedy::BetterDoor, English) => "take a better door",
            (Remedy::BetterDoor, French) => "prendre une meilleure porte",
            (Remedy::BetterWindows, English) => "take better windows",
            (Remedy::BetterWindows, French) => "prendre de meilleures fenêtres",
        }
    }

    /// A matter to ask about.
    pub const fn deferral(self, deferral: Deferral) -> &'static str {
        match (deferral, self) {
            (Deferral::EngineeredDesign, English) => {
                "A use this humid in winter calls for an engineered design."
            }
            (Deferral::EngineeredDesign, French) => {
                "Un usage aussi humide l’hiver demande une conception d’ingénieur."
            }
            (Deferral::AnimalWelfare, English) => "Welfare rules for the animals you keep.",
            (Deferral::AnimalWelfare, French) => "Les règles de bien-être des animaux gardés.",
            (Deferral::Drainage, English) => "Where the water drains to.",
            (Deferral::Drainage, French) => "Où l’eau s’écoule.",
            (Deferral::Corrosion, English) => "Galvanised or stainless metal, sealed edges.",
            (Deferral::Corrosion, French) => "Métal galvanisé ou inoxydable, bords scellés.",
            (Deferral::ContinuousAir, English) => "Outdoor air that runs whatever the weather.",
            (Deferral::ContinuousAir, French) => "De l’air du dehors par tous les temps.",
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
                words.holding,
                words.by_fan,
                words.fan_too_small,
                words.no_fan,
                words.verdict_dry,
                words.verdict_mould,
                words.verdict_drip,
                words.verdict_frost,
                words.next_said,
                words.people_said,
                words.people_no_fan,
                words.heat_said,
                words.heat_frost,
                words.hot_day_said,
                words.mild_said,
                words.mild_never,
                words.mild_always,
                words.other_ways,
                words.heat_to,
                words.curve_told,
                words.balance_told,
                words.spell,
                words.limited,
                words.fan_told,
                words.flow_axis,
                words.pressure_axis,
                words.too_fast,
                words.open_dampers,
                words.dries,
                words.stays_wet,
                words.thin,
                words.alone_said,
                words.alone_soaked,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH_WORDS), phrases(&FRENCH_WORDS));
    }
}
