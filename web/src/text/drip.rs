//! Words of the answer to "will it drip?".

use inchwise_core::humidity::SpotPlace;
use inchwise_core::moisture::SurfaceRisk;

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Drip {
    /// The question.
    pub question: &'static str,
    /// How humid the room may be: {0} outdoors, {1} humidity, {2} the weakest spot.
    pub stands: Phrase,
    /// At the room's own humidity: {0}.
    pub stays_dry: Phrase,
    /// The same, where mould may grow: {1}.
    pub moulds: Phrase,
    /// The same, where it drips: {1}.
    pub drips: Phrase,
    /// The same, where it frosts: {1}.
    pub frosts: Phrase,
}

const ENGLISH: Drip = Drip {
    question: "Will it drip?",
    stands: Phrase("Nothing drips down to {0} up to about {1} indoor humidity; weakest spot: {2}."),
    stays_dry: Phrase("No: this use brings {0}."),
    moulds: Phrase("No: this use brings {0}. But mould may grow: {1}."),
    drips: Phrase("Yes: this use brings {0}. Drops: {1}."),
    frosts: Phrase("Yes: this use brings {0}. Frost, then drips: {1}."),
};

const FRENCH: Drip = Drip {
    question: "Ça va dégoutter?",
    stands: Phrase(
        "Rien ne dégoutte jusqu’à {0} si l’humidité reste sous environ {1}; point faible : {2}.",
    ),
    stays_dry: Phrase("Non : cet usage donne {0}."),
    moulds: Phrase("Non : cet usage donne {0}. Mais moisissure possible : {1}."),
    drips: Phrase("Oui : cet usage donne {0}. Gouttes : {1}."),
    frosts: Phrase("Oui : cet usage donne {0}. Givre, puis gouttes : {1}."),
};

impl Drip {
    /// What a humidity comes to.
    pub const fn comes_to(&self, risk: SurfaceRisk, freezes: bool) -> Phrase {
        match risk {
            SurfaceRisk::None => self.stays_dry,
            SurfaceRisk::Mould => self.moulds,
            SurfaceRisk::Drip if freezes => self.frosts,
            SurfaceRisk::Drip => self.drips,
        }
    }
}

impl Language {
    /// Words of that answer.
    pub const fn drip(self) -> &'static Drip {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// A place of the room's surface, in the middle of a sentence.
    pub fn spot(self, place: SpotPlace) -> String {
        let name = match (place, self) {
            (SpotPlace::Detail(detail), _) => self.place(detail),
            (SpotPlace::Plain(surface), _) => self.surface(surface),
            (SpotPlace::PersonnelDoor, English) => "the door",
            (SpotPlace::PersonnelDoor, French) => "la porte",
            (SpotPlace::Windows, English) => "the windows",
            (SpotPlace::Windows, French) => "les fenêtres",
        };
        let mut name = name.to_owned();
        // Names begin with a plain letter in both languages.
        if let Some(first) = name.get_mut(..1) {
            first.make_ascii_lowercase();
        }
        name
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |drip: &Drip| {
            [drip.stands, drip.stays_dry, drip.moulds, drip.drips, drip.frosts].map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
