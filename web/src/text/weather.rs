//! Words of hours of one's own, of a shop's own places, and of a link's year.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Weather {
    /// Heating degree days {0}, counted to {1}.
    pub degree_days: Phrase,
    /// Label: a file of hours.
    pub own_hours: &'static str,
    /// What is done with it.
    pub own_hours_note: &'static str,
    /// What stands under its name; height and latitude are those of {0}.
    pub own_hours_are: Phrase,
    /// That the hours have more sun than reaches the latitude.
    pub too_much_sun: &'static str,
    /// That figures are those of the hours.
    pub measured_figures: &'static str,
    /// File {0} is being read.
    pub reading: Phrase,
    /// File {0} is in use.
    pub in_use: Phrase,
    /// File {0} is larger than {1} megabytes.
    pub too_large: Phrase,
    /// File {0} could not be read.
    pub not_read: Phrase,
    /// File {0} has faults.
    pub not_used: Phrase,
    /// Back to the place {0}.
    pub back_to: Phrase,
    /// Fault: no column {0}.
    pub no_column: Phrase,
    /// Between names of which one is enough.
    pub or: &'static str,
    /// Fault: not commas between the columns.
    pub not_commas: &'static str,
    /// Fault: column {0} twice.
    pub column_twice: Phrase,
    /// Fault: line {0} is short.
    pub short_line: Phrase,
    /// Fault: line {0} is long.
    pub long_line: Phrase,
    /// Fault: line {0}, time {1} cannot be read.
    pub not_a_time: Phrase,
    /// Fault: line {0}, time {1} does not follow.
    pub not_the_next_hour: Phrase,
    /// Fault: column {0}, found {1}, least {2}, most {3}.
    pub not_in_its_unit: Phrase,
    /// Fault: line {0}, column {1}, text {2}.
    pub not_a_number: Phrase,
    /// Fault: line {0}, what {1}, given {2}, least {3}, most {4}.
    pub out_of_range: Phrase,
    /// A temperature of an hour.
    pub temperature_of_hour: &'static str,
    /// Vapour of an hour.
    pub vapour_of_hour: &'static str,
    /// Sun of an hour.
    pub sun_of_hour: &'static str,
    /// Fault: line {0}, column {1}, given {2}.
    pub no_humidity: Phrase,
    /// Fault: {0} hours.
    pub not_a_year: Phrase,
    /// Fault: height or latitude.
    pub bad_place: &'static str,
    /// {0} more faults.
    pub more_faults: Phrase,
    /// Opens what the file must hold.
    pub format: &'static str,
    /// Columns and what they mean.
    pub columns: [[&'static str; 2]; 3],
    /// What else holds of the file.
    pub format_note: &'static str,
    /// Name of the example.
    pub example: &'static str,
    /// Saves the example.
    pub save: &'static str,
    /// Mark of a place of the shop's own.
    pub of_the_shop: &'static str,
    /// A place of the shop's own, to {0}.
    pub shop_estimate: Phrase,
    /// What was asked for and could not be used: {0}.
    pub unused: Phrase,
    /// That hours of a file are not in the link.
    pub hours_not_linked: &'static str,
}

const ENGLISH: Weather = Weather {
    degree_days: Phrase("Heating degree days: {0} below {1}."),
    own_hours: "Hours of your own",
    own_hours_note: "A CSV file of the 8,760 hours of a year, chosen or dropped here. It is read by \
                     your browser and stays on this page.",
    own_hours_are: Phrase(
        "Your own hours, kept on this page only. Height and latitude are those of {0}; change them \
         under the figures.",
    ),
    too_much_sun: "They have more sun than can reach this latitude: check it, and the file.",
    measured_figures: "Worked out from your hours. Height and latitude can be changed.",
    reading: Phrase("{0} is being read."),
    in_use: Phrase("The year runs on the hours of {0}."),
    too_large: Phrase("{0} is larger than {1} MB; a year of hours is not. It was not read."),
    not_read: Phrase("{0} could not be read."),
    not_used: Phrase("{0} cannot be used:"),
    back_to: Phrase("Back to the hours of {0}"),
    no_column: Phrase("The first line names no column {0}."),
    or: " or ",
    not_commas: "Commas must stand between the columns, and points in the numbers.",
    column_twice: Phrase("The first line names {0} twice."),
    short_line: Phrase("Line {0}: fewer cells than the first line."),
    long_line: Phrase("Line {0}: more cells than the first line; numbers need decimal points."),
    not_a_time: Phrase("Line {0}: “{1}” is no time."),
    not_the_next_hour: Phrase("Line {0}: “{1}” is not the hour after the line before."),
    not_in_its_unit: Phrase(
        "{0} is likely in another unit: the year has {1}, and no place on earth is beyond {2} to {3}.",
    ),
    not_a_number: Phrase("Line {0}, {1}: “{2}” is no number."),
    out_of_range: Phrase("Line {0}: {1} of {2} is beyond {3} to {4}."),
    temperature_of_hour: "a temperature, °C,",
    vapour_of_hour: "a vapour pressure, Pa,",
    sun_of_hour: "sun, W/m²,",
    no_humidity: Phrase("Line {0}, {1}: no air has {2}."),
    not_a_year: Phrase("{0} hours; a year has 8,760, or 8,784 with 29 February."),
    bad_place: "Height or latitude of the place cannot be; put them right under the figures.",
    more_faults: Phrase("And {0} more."),
    format: "What the file must hold",
    columns: [
        ["temperature_c", "temperature, °C"],
        [
            "dew_point_c / relative_humidity_percent / vapour_pressure_pa",
            "one of them: dew point, °C, or relative humidity, %, both over water in frost too, as \
             weather services give them; vapour pressure, Pa",
        ],
        ["global_horizontal_w_m2", "sun on level ground, W/m²"],
    ],
    format_note: "Means of each hour, from the first of 1 January, in the sun’s own time or near it; \
                  29 February may be there and is left out. The first line names the columns. One \
                  named time (2026-01-31T13:00) or hour is held to run on without a gap; others, and \
                  lines that begin with #, are passed over.",
    example: "The first lines of such a file",
    save: "Save these lines",
    of_the_shop: "(this shop’s own)",
    shop_estimate: Phrase("The shop’s own figures, monthly temperatures to about {0}. Estimate."),
    unused: Phrase(
        "Of what this page was opened with, this could not be used: {0}. The usual stands instead.",
    ),
    hours_not_linked: "Hours from your file are not in this link.",
};

const FRENCH: Weather = Weather {
    degree_days: Phrase("Degrés-jours de chauffage : {0} sous {1}."),
    own_hours: "Vos propres heures",
    own_hours_note: "Un fichier CSV des 8 760 heures d’une année, choisi ou déposé ici. Votre \
                     navigateur le lit, et il reste sur cette page.",
    own_hours_are: Phrase(
        "Vos propres heures, gardées sur cette page seulement. Altitude et latitude sont celles de \
         {0}; changez-les sous les chiffres.",
    ),
    too_much_sun: "Elles ont plus de soleil que n’en reçoit cette latitude : vérifiez-la, et le \
                   fichier.",
    measured_figures: "Calculés à partir de vos heures. Altitude et latitude peuvent être changées.",
    reading: Phrase("Lecture de {0}."),
    in_use: Phrase("L’année suit les heures de {0}."),
    too_large: Phrase("{0} dépasse {1} Mo; une année d’heures, non. Il n’a pas été lu."),
    not_read: Phrase("{0} n’a pas pu être lu."),
    not_used: Phrase("{0} ne peut pas servir :"),
    back_to: Phrase("Revenir aux heures de {0}"),
    no_column: Phrase("La première ligne ne nomme aucune colonne {0}."),
    or: " ou ",
    not_commas: "Il faut des virgules entre les colonnes et des points dans les nombres.",
    column_twice: Phrase("La première ligne nomme {0} deux fois."),
    short_line: Phrase("Ligne {0} : moins de cases que la première ligne."),
    long_line: Phrase(
        "Ligne {0} : plus de cases que la première ligne; les nombres ont un point décimal.",
    ),
    not_a_time: Phrase("Ligne {0} : « {1} » n’est pas une heure."),
    not_the_next_hour: Phrase("Ligne {0} : « {1} » ne suit pas l’heure de la ligne d’avant."),
    not_in_its_unit: Phrase(
        "{0} est sans doute dans une autre unité : l’année a {1}, et aucun lieu du monde ne sort \
         de {2} à {3}.",
    ),
    not_a_number: Phrase("Ligne {0}, {1} : « {2} » n’est pas un nombre."),
    out_of_range: Phrase("Ligne {0} : {1} de {2} sort de {3} à {4}."),
    temperature_of_hour: "une température, °C,",
    vapour_of_hour: "une pression de vapeur, Pa,",
    sun_of_hour: "un soleil, W/m²,",
    no_humidity: Phrase("Ligne {0}, {1} : aucun air n’a {2}."),
    not_a_year: Phrase("{0} heures; une année en a 8 760, ou 8 784 avec le 29 février."),
    bad_place: "L’altitude ou la latitude du lieu est impossible; corrigez-la sous les chiffres.",
    more_faults: Phrase("Et {0} de plus."),
    format: "Ce que le fichier doit contenir",
    columns: [
        ["temperature_c", "température, °C"],
        [
            "dew_point_c / relative_humidity_percent / vapour_pressure_pa",
            "l’une d’elles : point de rosée, °C, ou humidité relative, %, par rapport à l’eau même par \
             gel, comme les donnent les services météo; pression de vapeur, Pa",
        ],
        ["global_horizontal_w_m2", "soleil sur sol plat, W/m²"],
    ],
    format_note: "Moyennes de chaque heure, dès la première du 1er janvier, à l’heure solaire ou \
                  presque; le 29 février peut y être et n’est pas pris. La première ligne nomme les \
                  colonnes. Une colonne time (2026-01-31T13:00) ou hour doit se suivre sans trou; \
                  les autres, et les lignes qui commencent par #, sont ignorées.",
    example: "Les premières lignes d’un tel fichier",
    save: "Enregistrer ces lignes",
    of_the_shop: "(propre à cet atelier)",
    shop_estimate: Phrase(
        "Chiffres propres à l’atelier, températures mensuelles à {0} près. Estimation.",
    ),
    unused: Phrase(
        "De ce avec quoi cette page a été ouverte, ceci n’a pas pu servir : {0}. L’usuel en tient \
         lieu.",
    ),
    hours_not_linked: "Les heures de votre fichier ne sont pas dans ce lien.",
};

impl Language {
    /// The phrases.
    pub const fn weather(self) -> &'static Weather {
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
        let phrases = |words: &super::Weather| {
            [
                words.degree_days,
                words.own_hours_are,
                words.reading,
                words.in_use,
                words.too_large,
                words.not_read,
                words.not_used,
                words.back_to,
                words.no_column,
                words.column_twice,
                words.short_line,
                words.long_line,
                words.not_a_time,
                words.not_the_next_hour,
                words.not_in_its_unit,
                words.not_a_number,
                words.out_of_range,
                words.no_humidity,
                words.not_a_year,
                words.more_faults,
                words.shop_estimate,
                words.unused,
            ]
        };
        for (english, french) in phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH)) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
        for (english, french) in ENGLISH.columns.iter().zip(FRENCH.columns) {
            assert_eq!(english[0], french[0], "names of columns are the same in every language");
        }
    }
}
