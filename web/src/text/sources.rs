//! Where figures come from, and the names of what they are figures of.

use inchwise_core::moisture::MoistureSource;
use inchwise_core::source::Source;
use inchwise_core::ventilation::ElementKind;

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A published work by author, title and year; or that there is none.
    pub const fn source(self, source: Source) -> &'static str {
        match (source, self) {
            (Source::Iso13788, _) => "ISO 13788:2012",
            (Source::Iso10211, _) => "ISO 10211:2017",
            (Source::AshraeFundamentals2017, _) => "ASHRAE Fundamentals 2017",
            (Source::NationalBuildingCodeOfCanada2020, English) => {
                "National Building Code of Canada 2020"
            }
            (Source::NationalBuildingCodeOfCanada2020, French) => {
                "Code national du bâtiment du Canada 2020"
            }
            (Source::SustainableSolarHousing2007, _) => {
                "Hastings, Wall: Sustainable Solar Housing, 2007"
            }
            (Source::AngellOlson1988, _) => "Angell, Olson: Moisture sources, 1988",
            (Source::NewZealandMetalRoofCode, _) => {
                "New Zealand Metal Roof and Wall Cladding Code of Practice"
            }
            (Source::CommonPractice, English) => "common practice, no source",
            (Source::CommonPractice, French) => "usage du métier, sans source",
            (Source::FromMemory, English) => "from memory, not checked",
            (Source::FromMemory, French) => "de mémoire, non vérifié",
            // None of these stands behind a figure that is asked about.
            (_, English) => "a standard named in the project’s notes",
            (_, French) => "une norme nommée dans les notes du projet",
        }
    }

    /// What gives off moisture, one unit of it.
    pub const fn moisture_source(self, source: MoistureSource) -> &'static str {
        match (source, self) {
            (MoistureSource::PersonResting, English) => "person at a desk",
            (MoistureSource::PersonResting, French) => "personne assise",
            (MoistureSource::PersonActive, English) => "person at ordinary work",
            (MoistureSource::PersonActive, French) => "personne au travail",
            (MoistureSource::PersonAtHardWork, English) => "person at hard work",
            (MoistureSource::PersonAtHardWork, French) => "personne au travail dur",
            (MoistureSource::PersonAsleep, English) => "sleeper",
            (MoistureSource::PersonAsleep, French) => "dormeur",
            (MoistureSource::LaundryLoad, English) => "washer load",
            (MoistureSource::LaundryLoad, French) => "brassée",
            (MoistureSource::Shower, English) => "five-minute shower",
            (MoistureSource::Shower, French) => "douche de cinq minutes",
            (MoistureSource::PottedPlant, English) => "potted plant",
            (MoistureSource::PottedPlant, French) => "plante en pot",
            (MoistureSource::WaterGivenToPlants, English) => "kg of water to plants",
            (MoistureSource::WaterGivenToPlants, French) => "kg d’eau aux plantes",
            (MoistureSource::AnimalKilogram, English) => "kg of animal",
            (MoistureSource::AnimalKilogram, French) => "kg d’animal",
            (MoistureSource::MoppedFloor, English) => "m² mopped",
            (MoistureSource::MoppedFloor, French) => "m² lavé",
            (MoistureSource::HoseDown, English) => "hosing down",
            (MoistureSource::HoseDown, French) => "lavage au jet",
            (MoistureSource::UnventedPropane, English) => "kg of propane",
            (MoistureSource::UnventedPropane, French) => "kg de propane",
            (MoistureSource::UnventedKerosene, English) => "L of kerosene",
            (MoistureSource::UnventedKerosene, French) => "L de kérosène",
        }
    }

    /// What the air passes in an opening.
    pub const fn flow_element(self, kind: ElementKind) -> &'static str {
        match (kind, self) {
            (ElementKind::Hood, English) => "hood",
            (ElementKind::Hood, French) => "capuchon",
            (ElementKind::Louvre, English) => "louvre",
            (ElementKind::Louvre, French) => "persienne",
            (ElementKind::Grille, English) => "grille",
            (ElementKind::Grille, French) => "grille",
            (ElementKind::Screen, English) => "screen",
            (ElementKind::Screen, French) => "grillage",
            (ElementKind::Damper, English) => "damper",
            (ElementKind::Damper, French) => "volet",
            (ElementKind::Duct, English) => "duct",
            (ElementKind::Duct, French) => "conduit",
            (_, English) => "other",
            (_, French) => "autre",
        }
    }
}
