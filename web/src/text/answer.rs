//! Words of the answer: clear size, room lost, heating load.

use super::{Language, Phrase};

/// The phrases.
pub struct Answer {
    /// Name of the whole strip.
    pub title: &'static str,
    /// Over length × width × height.
    pub clear: &'static str,
    /// What L × W × H stand for.
    pub order: &'static str,
    /// Over the litres.
    pub lost: &'static str,
    /// Behind the share: of what.
    pub of_bare: Phrase,
    /// Over the heating load.
    pub load: &'static str,
    /// In front of a figure that is not exact.
    pub about: Phrase,
    /// At which temperatures the load holds: outdoors {0}, room {1}.
    pub at: Phrase,
    /// Behind it: {0} at rest, {1} at work.
    pub rest_and_work: Phrase,
    /// In place of a load before the first.
    pub working: &'static str,
    /// Beside a load that is about to change.
    pub refining: &'static str,
    /// That some parts are left out of the load.
    pub without: &'static str,
    /// Over the clear height.
    pub headroom: &'static str,
    /// Headroom under the corner boxes: {0}.
    pub under_corners: Phrase,
    /// Headroom under the header of the cargo doors: {0}.
    pub under_header: Phrase,
    /// Over the floor area.
    pub floor: &'static str,
    /// That sizes come from nominal boxes.
    pub nominal: &'static str,
    /// That sizes come from a measured box.
    pub measured: &'static str,
    /// That the picture is the last good one.
    pub stands_in: &'static str,
    /// More than one error: {0} more.
    pub more_faults: Phrase,
    /// The sentence read out after a change: {0} clear size, {1} lost, {2} share, {3} load.
    pub spoken: Phrase,
    /// The permanent line.
    pub planning_aid: &'static str,
}

const ENGLISH: Answer = Answer {
    title: "What you get",
    clear: "Clear room",
    order: "length × width × height",
    lost: "Room lost",
    of_bare: Phrase("{0} of the bare box"),
    load: "Heating load",
    about: Phrase("about {0}"),
    at: Phrase("at {0} outdoors, {1} inside"),
    rest_and_work: Phrase("; fan off {0}, in use {1}"),
    working: "working it out",
    refining: "refining …",
    without: "Parts not counted are listed under Where the heat goes.",
    headroom: "Headroom",
    under_corners: Phrase("{0} under the corner boxes"),
    under_header: Phrase("{0} under the door header"),
    floor: "Floor",
    nominal: "Nominal box sizes: measure before you cut.",
    measured: "From your measured box.",
    stands_in: "You still see the last design that works.",
    more_faults: Phrase("And {0} more, marked below."),
    spoken: Phrase("Clear room {0}. Lost {1}, {2}. Heating load about {3}."),
    planning_aid: "A planning aid. It does not show that a building meets any code. Your local \
                   authority decides, and a survey confirms the sizes.",
};

const FRENCH: Answer = Answer {
    title: "Ce que vous obtenez",
    clear: "Espace libre",
    order: "longueur × largeur × hauteur",
    lost: "Espace perdu",
    of_bare: Phrase("{0} du conteneur nu"),
    load: "Charge de chauffage",
    about: Phrase("environ {0}"),
    at: Phrase("à {0} dehors, {1} dedans"),
    rest_and_work: Phrase("; ventilateur arrêté {0}, en usage {1}"),
    working: "calcul en cours",
    refining: "on affine…",
    without: "Les parties non comptées sont nommées sous Où va la chaleur.",
    headroom: "Hauteur libre",
    under_corners: Phrase("{0} sous les coffrets de coin"),
    under_header: Phrase("{0} sous le linteau des portes"),
    floor: "Plancher",
    nominal: "Dimensions nominales : mesurez avant de couper.",
    measured: "D’après votre conteneur mesuré.",
    stands_in: "Vous voyez encore le dernier projet qui fonctionne.",
    more_faults: Phrase("Et {0} de plus, à l’endroit marqué plus bas."),
    spoken: Phrase("Espace libre {0}. Perdu {1}, {2}. Charge de chauffage environ {3}."),
    planning_aid: "Un outil de planification. Il ne prouve pas qu’un bâtiment respecte un code. \
                   L’autorité locale décide, et un relevé confirme les dimensions.",
};

impl Language {
    /// Words of the answer.
    pub const fn answer(self) -> &'static Answer {
        match self {
            Self::English => &ENGLISH,
            Self::French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |answer: &Answer| {
            [
                answer.of_bare,
                answer.about,
                answer.at,
                answer.rest_and_work,
                answer.under_corners,
                answer.under_header,
                answer.more_faults,
                answer.spoken,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
