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
    /// Under the load: {0}, money or energy.
    pub heats_for: Phrase,
    /// Where no price is given.
    pub no_price: &'static str,
    /// Label: the day that takes the most.
    pub coldest_day: &'static str,
    /// Label: carbon dioxide.
    pub carbon: &'static str,
    /// Where the grid's factor is not given.
    pub no_grid: &'static str,
    /// Opens the table of months.
    pub as_table: &'static str,
    /// How its figures come about.
    pub table_note: &'static str,
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
}

const ENGLISH: Year = Year {
    title: "The year",
    note: "Estimates for a typical year; check your local code. Wind, snow and clearing skies of \
           your own site are not in them.",
    strip: "Heat, damp and warmth through the year",
    heat_axis: Phrase("Heating, {0}"),
    month_letters: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
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
    heats_for: Phrase("{0} a year to heat"),
    no_price: "give a price under Prices",
    coldest_day: "On the coldest day",
    carbon: "Carbon dioxide",
    no_grid: "give the grid’s figure under Prices",
    as_table: "The year as a table",
    table_note: "Sums of each month’s hours, by the rules that stand with the year’s figures.",
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
};

const FRENCH: Year = Year {
    title: "L’année",
    note: "Estimations pour une année type; vérifiez le code local. Le vent, la neige et les \
           nuits claires de votre terrain n’y sont pas.",
    strip: "Chauffage, humidité et chaleur au fil de l’année",
    heat_axis: Phrase("Chauffage, {0}"),
    month_letters: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
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
    heats_for: Phrase("chauffage : {0} par an"),
    no_price: "donnez un prix sous Prix",
    coldest_day: "Le jour le plus froid",
    carbon: "Dioxyde de carbone",
    no_grid: "donnez le facteur du réseau sous Prix",
    as_table: "L’année en tableau",
    table_note: "Sommes des heures de chaque mois, selon les règles données avec les chiffres de \
                 l’année.",
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
                words.heats_for,
                words.estimate,
                words.missed,
                words.found,
                words.size_for,
            ]
        };
        let items = |words: &super::Year| words.missed_items;
        let both = phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH));
        for (english, french) in both.chain(items(&ENGLISH).into_iter().zip(items(&FRENCH))) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
