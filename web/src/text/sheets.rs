//! Words of the sheets: their names, what each says first, and the headings within.

use inchwise_core::heat_loss::Element;
use inchwise_core::moisture::SpotPlace;
use inchwise_link::Figure;

use super::Language::{English, French};
use super::{Language, Phrase};
use crate::sheets::Sheet;

/// The phrases.
pub struct SheetWords {
    /// Brief: what it is.
    pub brief_told: &'static str,
    /// Where the box stands.
    pub place: &'static str,
    /// Use and people.
    pub people: &'static str,
    /// What gives off moisture.
    pub sources: &'static str,
    /// Inside and outside.
    pub temperatures: &'static str,
    /// When it is used.
    pub when: &'static str,
    /// Air of the place.
    pub air_of_place: &'static str,
    /// Sun.
    pub sun: &'static str,
    /// Fit: your own height.
    pub own_height: &'static str,
    /// Clear sizes.
    pub sizes: &'static str,
    /// {0} over your head.
    pub over_head: Phrase,
    /// {0} short over your head.
    pub under_head: Phrase,
    /// Length, width, height.
    pub directions: [&'static str; 3],
    /// Bare, clear, taken.
    pub size_columns: [&'static str; 3],
    /// Something that is to stand in it.
    pub furniture: &'static str,
    /// How long.
    pub furniture_length: &'static str,
    /// How wide.
    pub furniture_width: &'static str,
    /// It fits; left free beside it {0}.
    pub furniture_fits: Phrase,
    /// It does not fit.
    pub furniture_not: &'static str,
    /// A bench, a bed, a table.
    pub furniture_names: [&'static str; 3],
    /// Dry: the list.
    pub cold_places: &'static str,
    /// All {0} places.
    pub all_places: Phrase,
    /// What helps.
    pub helps: &'static str,
    /// Nothing needs help.
    pub nothing_to_help: &'static str,
    /// Does it.
    pub do_it: &'static str,
    /// Nothing tried helps.
    pub no_help: &'static str,
    /// What a remedy leaves: {0}.
    pub leaves: Phrase,
    /// How this comes about.
    pub how: &'static str,
    /// What the humidity is to be.
    pub held: &'static str,
    /// Heat: losses.
    pub losses: &'static str,
    /// The year.
    pub year: &'static str,
    /// Heater and supply.
    pub heater: &'static str,
    /// Prices.
    pub prices: &'static str,
    /// Air: what holds it.
    pub air_told: &'static str,
    /// Fan that cools.
    pub cooling: &'static str,
    /// Build: everything chosen.
    pub everything: &'static str,
    /// Shown on the drawing.
    pub show: &'static str,
    /// The year's figures wait for {0} fields.
    pub waits: &'static str,
}

const ENGLISH: SheetWords = SheetWords {
    brief_told: "Say what the room is for and where it stands. Heat, damp and cost follow from it.",
    place: "Where it stands",
    people: "Use and people",
    sources: "What gives off moisture",
    temperatures: "Warm inside, cold outside",
    when: "When it is used",
    air_of_place: "Air of the place",
    sun: "Sun and paint",
    own_height: "Your height",
    sizes: "Clear sizes",
    over_head: Phrase("{0} over your head."),
    under_head: Phrase("{0} too low for you."),
    directions: ["Length", "Width", "Height"],
    size_columns: ["Bare steel", "Clear", "Taken"],
    furniture: "Will it stand in it?",
    furniture_length: "Length",
    furniture_width: "Depth",
    furniture_fits: Phrase("It fits, with {0} to walk past."),
    furniture_not: "It does not fit.",
    furniture_names: ["Bench", "Bed", "Table"],
    cold_places: "Cold places, coldest first",
    all_places: Phrase("All {0} places"),
    helps: "What helps most, tried on this design",
    nothing_to_help: "Nothing needs mending.",
    do_it: "Do it",
    no_help: "Nothing that was tried helps. Air or use may: see Air and Brief.",
    leaves: Phrase("leaves {0}"),
    how: "How this was worked out",
    held: "Humidity to hold",
    losses: "Where the heat goes",
    year: "The year",
    heater: "Heater and supply",
    prices: "Prices",
    air_told: "What carries the moisture out, and what that takes.",
    cooling: "The fan on warm days",
    everything: "Everything chosen",
    show: "Show",
    waits: "Being worked out: it follows once every cold place is solved.",
};

const FRENCH: SheetWords = SheetWords {
    brief_told: "Dites à quoi sert la pièce et où elle se trouve. Chaleur, humidité et coût en \
                 découlent.",
    place: "Où il se trouve",
    people: "Usage et personnes",
    sources: "Ce qui dégage de l’humidité",
    temperatures: "Chaud dedans, froid dehors",
    when: "Quand il sert",
    air_of_place: "L’air du lieu",
    sun: "Soleil et peinture",
    own_height: "Votre taille",
    sizes: "Dimensions libres",
    over_head: Phrase("{0} au-dessus de votre tête."),
    under_head: Phrase("{0} trop bas pour vous."),
    directions: ["Longueur", "Largeur", "Hauteur"],
    size_columns: ["Acier nu", "Libre", "Pris"],
    furniture: "Est-ce que ça entre?",
    furniture_length: "Longueur",
    furniture_width: "Profondeur",
    furniture_fits: Phrase("Ça entre, et il reste {0} pour passer."),
    furniture_not: "Ça n’entre pas.",
    furniture_names: ["Établi", "Lit", "Table"],
    cold_places: "Points froids, le plus froid d’abord",
    all_places: Phrase("Les {0} endroits"),
    helps: "Ce qui aide le plus, essayé sur ce projet",
    nothing_to_help: "Rien n’est à corriger.",
    do_it: "Le faire",
    no_help: "Rien de ce qui a été essayé n’aide. L’air ou l’usage peut-être : voyez Air et Besoin.",
    leaves: Phrase("reste {0}"),
    how: "Comment c’est calculé",
    held: "Humidité à tenir",
    losses: "Où va la chaleur",
    year: "L’année",
    heater: "Chauffage et alimentation",
    prices: "Prix",
    air_told: "Ce qui emporte l’humidité, et ce que ça demande.",
    cooling: "Le ventilateur par temps chaud",
    everything: "Tout ce qui est choisi",
    show: "Montrer",
    waits: "Calcul en cours : ça suit dès que chaque point froid est résolu.",
};

impl Language {
    /// Words of the sheets.
    pub const fn sheets(self) -> &'static SheetWords {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// The name of a sheet.
    pub const fn sheet(self, sheet: Sheet) -> &'static str {
        match (sheet, self) {
            (Sheet::Brief, English) => "Brief",
            (Sheet::Brief, French) => "Besoin",
            (Sheet::Fit, English) => "Fit",
            (Sheet::Fit, French) => "Espace",
            (Sheet::Dry, English) => "Dry",
            (Sheet::Dry, French) => "Sec",
            (Sheet::Heat, English) => "Heat",
            (Sheet::Heat, French) => "Chaleur",
            (Sheet::Air, English | French) => "Air",
            (Sheet::Build, English) => "Build",
            (Sheet::Build, French) => "Bâtir",
        }
    }

    /// The name of a place of the room's surface, as it stands by itself.
    pub const fn spot_name(self, place: SpotPlace) -> &'static str {
        self.element(match place {
            SpotPlace::Detail(place) => Element::Detail(place),
            SpotPlace::Plain(surface) => Element::Plain(surface),
            SpotPlace::PersonnelDoor => Element::PersonnelDoor,
            SpotPlace::Windows => Element::Windows,
        })
    }

    /// The name of a figure of the place.
    pub fn figure(self, figure: Figure) -> String {
        use inchwise_core::climate::ClimateQuantity as Q;
        let words = self.year();
        let of_month = |column: usize| {
            let month = self.months()[figure.month];
            [month, ", ", words.figure_columns[column]].concat()
        };
        match figure.quantity {
            Q::Elevation => words.elevation.to_owned(),
            Q::Latitude => words.latitude.to_owned(),
            Q::WinterDesign => words.winter.to_owned(),
            Q::SummerDesign => words.summer_temperature.to_owned(),
            Q::Temperature => of_month(1),
            Q::DailyRange => of_month(2),
            Q::VapourPressure => of_month(3),
            _ => of_month(4),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{ENGLISH, FRENCH, Phrase, SheetWords};

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &SheetWords| {
            [
                words.over_head,
                words.under_head,
                words.furniture_fits,
                words.all_places,
                words.leaves,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
