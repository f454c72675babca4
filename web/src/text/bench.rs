//! Words of the bench: the answer's deltas, the drawings' names, the controls, the steps taken.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Bench {
    /// Over the clear sizes, in {0}.
    pub clear: Phrase,
    /// Over the room lost.
    pub lost: &'static str,
    /// Volume {0}, share {1}.
    pub lost_is: Phrase,
    /// Over the load, at {0} outdoors.
    pub load: Phrase,
    /// Over the cost.
    pub cost: &'static str,
    /// A year's cost {0}.
    pub a_year: Phrase,
    /// Nothing changed.
    pub as_before: &'static str,
    /// Being worked out.
    pub working: &'static str,
    /// Over the damp, with the use {0}.
    pub damp: Phrase,
    /// In cold spells the room stands at about {0}.
    pub stands_at: Phrase,
    /// Dry everywhere.
    pub dry: &'static str,
    /// Frost on one place.
    pub frost_one: &'static str,
    /// Frost on {0} places.
    pub frost: Phrase,
    /// Drips on one place.
    pub drip_one: &'static str,
    /// Drips on {0} places.
    pub drip: Phrase,
    /// Mould may grow on one place.
    pub mould_one: &'static str,
    /// Mould may grow on {0} places.
    pub mould: Phrase,
    /// At most {0} a day.
    pub a_day: Phrase,
    /// Short: dry.
    pub dry_short: &'static str,
    /// Short: frost on {0}.
    pub frost_short: Phrase,
    /// Short: drips on {0}.
    pub drip_short: Phrase,
    /// Short: mould on {0}.
    pub mould_short: Phrase,
    /// The drawings.
    pub drawings: &'static str,
    /// Section.
    pub section: &'static str,
    /// Plan.
    pub plan: &'static str,
    /// Corner.
    pub corner: &'static str,
    /// Takes back {0}.
    pub undo: Phrase,
    /// Takes back, in one word.
    pub undo_short: &'static str,
    /// Does again.
    pub redo: &'static str,
    /// Over the steps.
    pub steps: &'static str,
    /// The newest step.
    pub now: &'static str,
    /// Several choices at once.
    pub several: &'static str,
    /// From {1} to {2} of {0}.
    pub step: Phrase,
    /// Copies the link.
    pub copy_link: &'static str,
    /// The link is copied.
    pub copied: &'static str,
    /// The link could not be copied.
    pub not_copied: &'static str,
    /// The four controls.
    pub controls: &'static str,
    /// Chip: walls {0}.
    pub chip_walls: Phrase,
    /// Chip: ceiling {0}.
    pub chip_ceiling: Phrase,
    /// Chip: castings {0}.
    pub chip_castings: Phrase,
    /// Less by {1} of {0}.
    pub less: Phrase,
    /// More by {1} of {0}.
    pub more: Phrase,
    /// What {0} more would do: {1}.
    pub one_more: Phrase,
    /// No room.
    pub no_room: &'static str,
    /// It does not fit the other choices.
    pub does_not_fit: &'static str,
    /// Treatment names, short: build out, drop, box, bare.
    pub treatments_short: [&'static str; 4],
    /// Length changes by {0}.
    pub of_length: Phrase,
    /// Width changes by {0}.
    pub of_width: Phrase,
    /// Height changes by {0}.
    pub of_height: Phrase,
    /// Room changes by {0}.
    pub of_room: Phrase,
    /// The same room.
    pub same_room: &'static str,
    /// The sheets.
    pub sheets: &'static str,
    /// The sheet is loading.
    pub loading: &'static str,
    /// The sheet did not come.
    pub not_loaded: &'static str,
    /// Asks again.
    pub try_again: &'static str,
    /// The solver did not come.
    pub solver_lost: &'static str,
    /// Pulls the sheet up.
    pub pull_up: &'static str,
    /// Lets the sheet down.
    pub let_down: &'static str,
    /// Place {0} of the list: {1}.
    pub spot_numbered: Phrase,
    /// Sum of the height.
    pub height: &'static str,
    /// Sum of the width.
    pub width: &'static str,
    /// Sum of the length.
    pub length: &'static str,
    /// The clear part of a sum, named.
    pub clear_part: &'static str,
    /// On paper: made on {0}.
    pub printed: Phrase,
    /// What of a link could not be used.
    pub link_unread: &'static str,
}

const ENGLISH: Bench = Bench {
    clear: Phrase("Clear room"),
    lost: "Room lost",
    lost_is: Phrase("{0}, {1}"),
    load: Phrase("Heat at {0}"),
    cost: "To heat it",
    a_year: Phrase("{0} a year"),
    as_before: "as before",
    working: "working it out",
    damp: Phrase("Damp, {0}"),
    stands_at: Phrase("In cold spells the room stands at about {0}: "),
    dry: "dry everywhere",
    frost_one: "frost on one place",
    frost: Phrase("frost on {0} places"),
    drip_one: "drips on one place",
    drip: Phrase("drips on {0} places"),
    mould_one: "mould may grow on one place",
    mould: Phrase("mould may grow on {0} places"),
    a_day: Phrase(", {0} a day at most"),
    dry_short: "dry",
    frost_short: Phrase("frost on {0}"),
    drip_short: Phrase("drips on {0}"),
    mould_short: Phrase("mould on {0}"),
    drawings: "Drawing",
    section: "Section",
    plan: "Plan",
    corner: "Cold place",
    undo: Phrase("Undo {0}"),
    undo_short: "Undo",
    redo: "Redo",
    steps: "Steps",
    now: "now",
    several: "several choices",
    step: Phrase("{0} {1} → {2}"),
    copy_link: "Copy link",
    copied: "The link is copied.",
    not_copied: "The link could not be copied; it stands in the address of this page.",
    controls: "The build",
    chip_walls: Phrase("Walls {0}"),
    chip_ceiling: Phrase("Ceiling {0}"),
    chip_castings: Phrase("Castings: {0}"),
    less: Phrase("{0}: {1} less"),
    more: Phrase("{0}: {1} more"),
    one_more: Phrase("+{0}: {1}"),
    no_room: "no room",
    does_not_fit: "does not fit the other choices",
    treatments_short: ["boxed in", "end walls out", "ceiling down", "bare"],
    of_length: Phrase("{0} length"),
    of_width: Phrase("{0} width"),
    of_height: Phrase("{0} height"),
    of_room: Phrase("{0} of room"),
    same_room: "same room",
    sheets: "Sheets",
    loading: "Loading …",
    not_loaded: "This part could not be loaded. What you chose still stands.",
    try_again: "Try again",
    solver_lost: "Heat and damp cannot be worked out just now: the part that does it did not come. \
                  Sizes still hold.",
    pull_up: "Pull the sheet up",
    let_down: "Let the sheet down",
    spot_numbered: Phrase("Cold place {0}: {1}"),
    height: "Height",
    width: "Width",
    length: "Length",
    clear_part: "clear",
    printed: Phrase("Printed {0}"),
    link_unread: "The link could not be read in full, so this is the usual design.",
};

const FRENCH: Bench = Bench {
    clear: Phrase("Espace libre"),
    lost: "Espace perdu",
    lost_is: Phrase("{0}, {1}"),
    load: Phrase("Chaleur à {0}"),
    cost: "Pour le chauffer",
    a_year: Phrase("{0} par an"),
    as_before: "comme avant",
    working: "calcul en cours",
    damp: Phrase("Humidité, {0}"),
    stands_at: Phrase("Par grand froid, la pièce reste à environ {0} : "),
    dry: "sec partout",
    frost_one: "givre à un endroit",
    frost: Phrase("givre à {0} endroits"),
    drip_one: "gouttes à un endroit",
    drip: Phrase("gouttes à {0} endroits"),
    mould_one: "moisissure possible à un endroit",
    mould: Phrase("moisissure possible à {0} endroits"),
    a_day: Phrase(", {0} par jour au plus"),
    dry_short: "sec",
    frost_short: Phrase("givre : {0}"),
    drip_short: Phrase("gouttes : {0}"),
    mould_short: Phrase("moisissure : {0}"),
    drawings: "Dessin",
    section: "Coupe",
    plan: "Plan",
    corner: "Point froid",
    undo: Phrase("Annuler {0}"),
    undo_short: "Annuler",
    redo: "Rétablir",
    steps: "Étapes",
    now: "maintenant",
    several: "plusieurs choix",
    step: Phrase("{0} {1} → {2}"),
    copy_link: "Copier le lien",
    copied: "Le lien est copié.",
    not_copied: "Le lien n’a pas pu être copié; il est dans l’adresse de cette page.",
    controls: "La construction",
    chip_walls: Phrase("Murs {0}"),
    chip_ceiling: Phrase("Plafond {0}"),
    chip_castings: Phrase("Coins : {0}"),
    less: Phrase("{0} : {1} de moins"),
    more: Phrase("{0} : {1} de plus"),
    one_more: Phrase("+{0} : {1}"),
    no_room: "aucun espace",
    does_not_fit: "ne va pas avec les autres choix",
    treatments_short: ["encoffrés", "murs avancés", "plafond abaissé", "nus"],
    of_length: Phrase("{0} en longueur"),
    of_width: Phrase("{0} en largeur"),
    of_height: Phrase("{0} en hauteur"),
    of_room: Phrase("{0} d’espace"),
    same_room: "même espace",
    sheets: "Feuilles",
    loading: "Chargement…",
    not_loaded: "Cette partie n’a pas pu être chargée. Vos choix restent.",
    try_again: "Réessayer",
    solver_lost: "La chaleur et l’humidité ne peuvent pas être calculées en ce moment : la partie \
                  qui le fait n’est pas venue. Les dimensions restent valables.",
    pull_up: "Remonter la feuille",
    let_down: "Abaisser la feuille",
    spot_numbered: Phrase("Point froid {0} : {1}"),
    height: "Hauteur",
    width: "Largeur",
    length: "Longueur",
    clear_part: "libre",
    printed: Phrase("Imprimé le {0}"),
    link_unread: "Le lien n’a pas pu être lu en entier : voici le projet habituel.",
};

impl Language {
    /// Words of the bench.
    pub const fn bench(self) -> &'static Bench {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Bench, ENGLISH, FRENCH, Phrase};

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &Bench| {
            [
                words.lost_is,
                words.load,
                words.a_year,
                words.damp,
                words.stands_at,
                words.frost,
                words.drip,
                words.mould,
                words.a_day,
                words.undo,
                words.step,
                words.less,
                words.more,
                words.one_more,
                words.spot_numbered,
                words.printed,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
