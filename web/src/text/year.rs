//! Words of the year.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Year {
    /// Heading.
    pub title: &'static str,
    /// What the year rests on.
    pub note: &'static str,
    /// Title of the strip.
    pub strip: &'static str,
    /// Over the heat's scale: in {0}.
    pub heat_axis: Phrase,
    /// First letters of the months.
    pub month_letters: [&'static str; 12],
    /// Names of the months.
    pub months: [&'static str; 12],
    /// The kinds of bad hours: frost, drip, too warm, too cold.
    pub bands: [&'static str; 4],
    /// Kind {0}: {1} hours.
    pub band: Phrase,
    /// While nothing is known.
    pub working_out: &'static str,
    /// Where a design has no year.
    pub no_year: &'static str,
    /// The strip for those who do not see it: heat {0}, frost {1}, drip {2}, too warm {3}, too cold {4}
    /// hours.
    pub strip_told: Phrase,
    /// Label: heat of the year.
    pub heat: &'static str,
    /// Label: what is bought for it.
    pub bought: &'static str,
    /// Label: its cost.
    pub cost: &'static str,
    /// {0} a year, {1} a month in the mean, {2} in {3}, prices of {4}.
    pub cost_is: Phrase,
    /// Where no price is given.
    pub no_price: &'static str,
    /// Label: the day that takes the most.
    pub coldest_day: &'static str,
    /// Label: carbon dioxide.
    pub carbon: &'static str,
    /// Where the grid's factor is not given.
    pub no_grid: &'static str,
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
    /// That the heat of drying is not counted.
    pub drying_note: &'static str,
    /// What the supply's share rests on.
    pub supply_note: &'static str,
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
    /// Water on the windows {0} litres.
    pub windows: Phrase,
    /// Summer: up to {0}; light paint {1}, shaded {2}.
    pub summer: Phrase,
    /// With the fan off {0}.
    pub without_fan: Phrase,
    /// Too warm for {0} hours over {1}.
    pub too_warm: Phrase,
    /// Hours and minutes: {0} h {1} min.
    pub hours_minutes: Phrase,
    /// Hours without minutes: {0}.
    pub whole_hours: Phrase,
    /// Days: {0}.
    pub days: Phrase,
    /// Opens the table of months.
    pub as_table: &'static str,
    /// Columns of it: month, heat, cost, frost, drip, too warm, too cold.
    pub columns: [&'static str; 7],
    /// Heading of the place.
    pub place: &'static str,
    /// The invented place.
    pub varnholm: &'static str,
    /// That it is invented.
    pub invented: &'static str,
    /// What the made hours miss of the place: {0}.
    pub missed: Phrase,
    /// Items of it: winter {0} made {1}, summer {0} made {1}; temperature, daily range, vapour and sun in {0} months.
    pub missed_items: [Phrase; 6],
    /// That the figures are estimates of error {0}.
    pub estimate: Phrase,
    /// That figures were changed.
    pub changed: &'static str,
    /// Label of the search.
    pub search: &'static str,
    /// What the search does.
    pub search_note: &'static str,
    /// {0} places found.
    pub found: Phrase,
    /// The table could not be loaded.
    pub no_table: &'static str,
    /// Back to the invented place.
    pub back: &'static str,
    /// Sizes the heater for {0}.
    pub size_for: Phrase,
    /// Opens the sources of the table.
    pub sources: &'static str,
    /// Opens the figures of the place.
    pub figures: &'static str,
    /// Columns of them: month, temperature, daily range, vapour pressure, sun.
    pub figure_columns: [&'static str; 5],
    /// Elevation.
    pub elevation: &'static str,
    /// Latitude.
    pub latitude: &'static str,
    /// Winter temperature.
    pub winter: &'static str,
    /// Summer temperature.
    pub summer_temperature: &'static str,
    /// A figure of the place that cannot be.
    pub bad_figure: &'static str,
    /// Headings of the groups: heater and supply, use, fan, sun, prices.
    pub groups: [&'static str; 5],
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
    /// Fault: the room's hours end when they begin.
    pub used_hours: &'static str,
    /// Fault: the fan cools below the set-point {0}.
    pub cools_below: Phrase,
    /// Fault: a price without a day.
    pub undated: &'static str,
    /// Fault: no such day.
    pub no_day: &'static str,
    /// Fault: not a currency.
    pub no_currency: &'static str,
    /// Over the faults of the choices.
    pub earlier: &'static str,
    /// That flames without a flue are not offered: {0} kg of water.
    pub refused: Phrase,
}

const ENGLISH: Year = Year {
    title: "The year",
    note: "Estimates for a typical year; check your local code. Wind, snow and clearing skies of \
           your own site are not in them.",
    strip: "Heat, damp and warmth through the year",
    heat_axis: Phrase("Heating, {0}"),
    month_letters: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
    months: [
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
    ],
    bands: [
        "Frost on the coldest spot",
        "Drip from the coldest spot",
        "Too warm",
        "Heater cannot hold",
    ],
    band: Phrase("{0}: {1} h"),
    working_out: "Being worked out",
    no_year: "No year can be worked out for this design.",
    strip_told: Phrase(
        "Heating of {0} over the year. Hours of frost on the coldest spot {1}, of drip {2}, too \
         warm {3}, heater cannot hold {4}.",
    ),
    heat: "Heat in a year",
    bought: "Bought for it",
    cost: "Cost of heating",
    cost_is: Phrase("{0} a year: {1} a month on average, {2} in {3}; prices of {4}"),
    no_price: "give a price under Prices",
    coldest_day: "On the coldest day",
    carbon: "Carbon dioxide",
    no_grid: "give the grid’s figure under Prices",
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
    drying_note: "Water that dries in the room, as laundry does, takes 0.68 kWh of heat a kilogram; \
                  that is not counted.",
    supply_note: "Four fifths of the breaker’s rating. Ask an electrician.",
    power_cut: Phrase("After a power cut at {0}: {1}, {2}."),
    down_after: Phrase("{0} after {1}"),
    down_never: Phrase("never {0}"),
    warm_up: Phrase("From stone cold at {0}: air at {1} {2}, walls {3}."),
    while_fed: "Only while someone feeds the stove.",
    after: Phrase("after {0}"),
    never: "not with this heater",
    wet: Phrase("Coldest spot: {0}. Frost in {1} hours, drip in {2} hours of the year."),
    dry: Phrase("Coldest spot: {0}. No frost and no drip."),
    windows: Phrase("Windows: {0} of water run down them in a year."),
    summer: Phrase(
        "Summer: up to {0} as chosen; {1} with light paint, {2} with roof and windows shaded.",
    ),
    without_fan: Phrase("{0} with the fan off."),
    too_warm: Phrase("Summer: {0} hours over {1}."),
    hours_minutes: Phrase("{0} h {1} min"),
    whole_hours: Phrase("{0} h"),
    days: Phrase("{0} days"),
    as_table: "The year as a table",
    columns: ["Month", "Heat", "Cost", "Frost", "Drip", "Too warm", "Cannot hold"],
    place: "Place",
    varnholm: "Varnholm Flats",
    invented: "Invented: a northern plain.",
    missed: Phrase("The hours made from these figures miss some of them: {0}."),
    missed_items: [
        Phrase("winter {0}, made {1}"),
        Phrase("summer {0}, made {1}"),
        Phrase("temperature in {0} months"),
        Phrase("daily range in {0} months"),
        Phrase("vapour in {0} months"),
        Phrase("sun in {0} months"),
    ],
    estimate: Phrase("Means of 1991 to 2020, monthly temperatures to about {0}. Estimate."),
    changed: "Changed by hand.",
    search: "Find a place",
    search_note: "676 places. The table is loaded when you start to type, and nothing you type \
                  leaves this page.",
    found: Phrase("Found: {0}"),
    no_table: "The table of places could not be loaded. Every figure can be typed below.",
    back: "Back to Varnholm Flats",
    size_for: Phrase("Size the heater for {0} outdoors"),
    sources: "Where these figures come from",
    figures: "Figures of the place",
    figure_columns: ["Month", "Mean", "Daily range", "Vapour", "Sun of a day"],
    elevation: "Height over the sea",
    latitude: "Latitude, north",
    winter: "Winter: 99 % of hours above",
    summer_temperature: "Summer: 1 % of hours above",
    bad_figure: "This cannot be; the year shown is that of the figures before.",
    groups: ["Heater and supply", "Use", "Fan", "Sun and summer", "Prices"],
    what_heats: "Heater",
    currency: "Currency, three letters",
    prices_of: "Day the prices are of",
    date_hint: "year-month-day, 2026-01-31",
    range: Phrase("{0} to {1}"),
    no_number: "No number could be read.",
    whole: "A whole number, please.",
    used_hours: "The same hour twice. All day is 0 until 24; past midnight is fine, as 20 until 4.",
    cools_below: Phrase("The heater holds {0}; the fan may cool above that only."),
    undated: "Prices need the day they are of.",
    no_day: "There is no such day.",
    no_currency: "Three capital letters, as XTS.",
    earlier: "The year shown is that of the choices before:",
    refused: Phrase(
        "Flames without a flue are not offered: each kilogram of propane gives {0} kg of water to \
         the room, with its fumes.",
    ),
};

const FRENCH: Year = Year {
    title: "L’année",
    note: "Estimations pour une année type; vérifiez le code local. Le vent, la neige et les \
           nuits claires de votre terrain n’y sont pas.",
    strip: "Chauffage, humidité et chaleur au fil de l’année",
    heat_axis: Phrase("Chauffage, {0}"),
    month_letters: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
    months: [
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
    ],
    bands: [
        "Givre au point le plus froid",
        "Gouttes au point le plus froid",
        "Trop chaud",
        "Chauffage insuffisant",
    ],
    band: Phrase("{0} : {1} h"),
    working_out: "Calcul en cours",
    no_year: "Aucune année ne peut être calculée pour ce projet.",
    strip_told: Phrase(
        "Chauffage de {0} dans l’année. Heures de givre au point le plus froid {1}, de gouttes \
         {2}, trop chaudes {3}, de chauffage insuffisant {4}.",
    ),
    heat: "Chaleur par année",
    bought: "Énergie achetée",
    cost: "Coût du chauffage",
    cost_is: Phrase("{0} par année : {1} par mois en moyenne, {2} en {3}; prix du {4}"),
    no_price: "donnez un prix sous Prix",
    coldest_day: "Le jour le plus froid",
    carbon: "Dioxyde de carbone",
    no_grid: "donnez le facteur du réseau sous Prix",
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
    drying_note: "L’eau qui sèche dans la pièce, comme la lessive, prend 0,68 kWh de chaleur par \
                  kilogramme; ce n’est pas compté.",
    supply_note: "Quatre cinquièmes du calibre du disjoncteur. Consultez un électricien.",
    power_cut: Phrase("Après une panne à {0} : {1}, {2}."),
    down_after: Phrase("{0} après {1}"),
    down_never: Phrase("jamais {0}"),
    warm_up: Phrase("Départ à froid à {0} : air à {1} {2}, parois {3}."),
    while_fed: "Seulement si quelqu’un charge le poêle.",
    after: Phrase("après {0}"),
    never: "pas avec ce chauffage",
    wet: Phrase("Point le plus froid : {0}. Givre {1} heures, gouttes {2} heures par année."),
    dry: Phrase("Point le plus froid : {0}. Ni givre ni gouttes."),
    windows: Phrase("Fenêtres : {0} d’eau y coulent en une année."),
    summer: Phrase(
        "Été : jusqu’à {0} tel que choisi; {1} avec peinture claire, {2} avec toit et fenêtres \
         ombragés.",
    ),
    without_fan: Phrase("{0} sans ventilateur."),
    too_warm: Phrase("Été : {0} heures au-dessus de {1}."),
    hours_minutes: Phrase("{0} h {1} min"),
    whole_hours: Phrase("{0} h"),
    days: Phrase("{0} jours"),
    as_table: "L’année en tableau",
    columns: ["Mois", "Chaleur", "Coût", "Givre", "Gouttes", "Trop chaud", "Insuffisant"],
    place: "Lieu",
    varnholm: "Varnholm Flats",
    invented: "Inventé : une plaine du Nord.",
    missed: Phrase("Les heures tirées de ces chiffres en manquent : {0}."),
    missed_items: [
        Phrase("hiver {0}, obtenu {1}"),
        Phrase("été {0}, obtenu {1}"),
        Phrase("température de {0} mois"),
        Phrase("écart du jour de {0} mois"),
        Phrase("vapeur de {0} mois"),
        Phrase("soleil de {0} mois"),
    ],
    estimate: Phrase("Moyennes de 1991 à 2020, températures mensuelles à {0} près. Estimation."),
    changed: "Modifié à la main.",
    search: "Trouver un lieu",
    search_note: "676 lieux. Le tableau se charge quand vous commencez à écrire; rien de ce que \
                  vous écrivez ne quitte cette page.",
    found: Phrase("Trouvés : {0}"),
    no_table: "Le tableau des lieux n’a pas pu être chargé. Chaque valeur peut être saisie plus \
               bas.",
    back: "Revenir à Varnholm Flats",
    size_for: Phrase("Dimensionner le chauffage pour {0} dehors"),
    sources: "D’où viennent ces chiffres",
    figures: "Chiffres du lieu",
    figure_columns: ["Mois", "Moyenne", "Écart du jour", "Vapeur", "Soleil d’un jour"],
    elevation: "Altitude",
    latitude: "Latitude, nord",
    winter: "Hiver : 99 % des heures au-dessus",
    summer_temperature: "Été : 1 % des heures au-dessus",
    bad_figure: "C’est impossible; l’année montrée est celle des chiffres d’avant.",
    groups: ["Chauffage et alimentation", "Usage", "Ventilateur", "Soleil et été", "Prix"],
    what_heats: "Chauffage",
    currency: "Monnaie, trois lettres",
    prices_of: "Date des prix",
    date_hint: "année-mois-jour, 2026-01-31",
    range: Phrase("{0} à {1}"),
    no_number: "Aucun nombre lisible.",
    whole: "Un nombre entier, s’il vous plaît.",
    used_hours: "Deux fois la même heure. Tout le jour : 0 à 24; après minuit va aussi, comme 20 à 4.",
    cools_below: Phrase("Le chauffage tient {0}; le ventilateur ne rafraîchit qu’au-dessus."),
    undated: "Il faut la date des prix.",
    no_day: "Ce jour n’existe pas.",
    no_currency: "Trois majuscules, comme XTS.",
    earlier: "L’année montrée est celle des choix d’avant :",
    refused: Phrase(
        "Les flammes sans conduit ne sont pas offertes : chaque kilogramme de propane donne {0} kg \
         d’eau à la pièce, avec ses fumées.",
    ),
};

impl Language {
    /// The phrases.
    pub const fn year(self) -> &'static Year {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{ENGLISH, FRENCH};

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &super::Year| {
            [
                words.heat_axis,
                words.band,
                words.strip_told,
                words.cost_is,
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
                words.windows,
                words.summer,
                words.without_fan,
                words.too_warm,
                words.hours_minutes,
                words.days,
                words.estimate,
                words.missed,
                words.cools_below,
                words.found,
                words.size_for,
                words.range,
                words.refused,
            ]
        };
        let items = |words: &super::Year| words.missed_items;
        let both = phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH));
        for (english, french) in both.chain(items(&ENGLISH).into_iter().zip(items(&FRENCH))) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
