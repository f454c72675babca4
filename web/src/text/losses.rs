//! Words of the table of losses and of what is not yet counted.

use inchwise_core::design::Surface;
use inchwise_core::envelope::LayerKind;
use inchwise_core::heat_loss::{Element, NotCounted, Reason};

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Losses {
    /// Heading.
    pub title: &'static str,
    /// Column: where.
    pub part: &'static str,
    /// Column: heat flow.
    pub loss: &'static str,
    /// Column: share.
    pub share: &'static str,
    /// Opens the reckoning of a figure.
    pub how: &'static str,
    /// Small losses together: {0} of them, each below {1}.
    pub small: Phrase,
    /// Row: all of the above.
    pub at_rest: &'static str,
    /// Row: the air that the fan brings.
    pub by_fan: &'static str,
    /// Row: warming up after a setback.
    pub reheat: &'static str,
    /// Row: water that dries.
    pub drying: &'static str,
    /// The last row.
    pub total: &'static str,
    /// Layers of a plain area.
    pub layers: &'static str,
    /// Inside surface.
    pub inside_surface: &'static str,
    /// Outside surface.
    pub outside_surface: &'static str,
    /// Plain area: where U comes from when the troughs count.
    pub troughs: &'static str,
    /// Waves: one is {0} wide, so {1} of surface hold {2} of waves.
    pub waves: Phrase,
    /// Waves: that ψ is solved.
    pub solved_wave: &'static str,
    /// Frame lines: {0} members, {1} long together.
    pub members: Phrase,
    /// Frame lines: that ψ is solved.
    pub solved: &'static str,
    /// Air: {0} air changes of {1} room at {2}.
    pub air: Phrase,
    /// Openings: U as chosen.
    pub as_chosen: &'static str,
    /// Heading of what is left out.
    pub not_counted: &'static str,
    /// What leaving out means.
    pub not_counted_note: &'static str,
    /// Bodies: that χ is solved.
    pub solved_body: &'static str,
    /// A place that did not solve: {0}.
    pub unsolved: Phrase,
    /// A place that is being solved: {0}.
    pub waiting: Phrase,
    /// Under the curves of load over depth, of what they leave out: {0} of this design's {1}.
    pub not_in_curves: Phrase,
}

const ENGLISH: Losses = Losses {
    title: "Where the heat goes",
    part: "Through",
    loss: "Loss",
    share: "Share",
    how: "how",
    small: Phrase("{0} smaller parts, each under {1}"),
    at_rest: "At rest, fan off",
    by_fan: "Air that the fan adds",
    reheat: "Warming up again",
    drying: "Drying",
    total: "Heating load",
    layers: "From the room outwards:",
    inside_surface: "inside surface",
    outside_surface: "outside surface",
    troughs: "U counts the foam as measured along the corrugation, by a formula. What a solved wave \
              of the sheet loses more, or less, stands on a line of its own.",
    waves: Phrase("One wave is {0} wide, so {1} hold {2} of waves."),
    solved_wave: "ψ is what a metre of one wave loses more than the formula’s U says, solved across \
                  it from this design; below zero where it loses less.",
    members: Phrase("{0} members, {1} together."),
    solved: "ψ is what a member adds to the plain wall, solved across it from this design.",
    air: Phrase("{0} of {1} of room."),
    as_chosen: "U as chosen, frame included.",
    not_counted: "Not counted",
    not_counted_note: "These lose heat too. Nothing is guessed for them, so the real load is a \
                       little higher.",
    solved_body: "χ is what one piece adds to the surfaces and edges beside it, solved in three \
                  dimensions from this design.",
    unsolved: Phrase("{0} (did not solve)"),
    waiting: Phrase("{0} (being worked out)"),
    not_in_curves: Phrase(
        "The curves leave out castings, stud heads and damper sleeves, which hardly change along \
         them: {0} of this design’s {1}.",
    ),
};

const FRENCH: Losses = Losses {
    title: "Où va la chaleur",
    part: "À travers",
    loss: "Perte",
    share: "Part",
    how: "calcul",
    small: Phrase("{0} parties plus petites, chacune sous {1}"),
    at_rest: "Au repos, ventilateur arrêté",
    by_fan: "Air que le ventilateur ajoute",
    reheat: "Relance",
    drying: "Séchage",
    total: "Charge de chauffage",
    layers: "De la pièce vers dehors :",
    inside_surface: "surface intérieure",
    outside_surface: "surface extérieure",
    troughs: "U tient compte de la mousse telle que mesurée sur la tôle ondulée, par une formule. \
              Ce qu’une onde résolue perd de plus, ou de moins, a sa propre ligne.",
    waves: Phrase("Une onde fait {0} de large : {1} portent {2} d’ondes."),
    solved_wave: "ψ est ce qu’un mètre d’une onde perd de plus que ne dit le U de la formule, résolu \
                  pour ce projet ; sous zéro, elle perd moins.",
    members: Phrase("{0} membrures, {1} en tout."),
    solved: "ψ est ce qu’une membrure ajoute à la paroi courante, résolu pour ce projet.",
    air: Phrase("{0} de {1} de pièce."),
    as_chosen: "U tel que choisi, cadre compris.",
    not_counted: "Non compté",
    not_counted_note: "Ces parties perdent aussi de la chaleur. Rien n’est deviné pour elles : la \
                       charge réelle est un peu plus élevée.",
    solved_body: "χ est ce qu’une pièce ajoute aux parois et arêtes voisines, résolu en trois \
                  dimensions pour ce projet.",
    unsolved: Phrase("{0} (non résolu)"),
    waiting: Phrase("{0} (calcul en cours)"),
    not_in_curves: Phrase(
        "Les courbes laissent de côté les pièces de coin, les têtes de montants et les \
         manchons, qui y varient à peine : {0} des {1} de ce projet.",
    ),
};

impl Language {
    /// Words of the table of losses.
    pub const fn losses(self) -> &'static Losses {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// A way that heat leaves.
    pub const fn element(self, element: Element) -> &'static str {
        match (element, self) {
            (Element::Plain(Surface::SideWall), English) => "Side walls",
            (Element::Plain(Surface::SideWall), French) => "Parois latérales",
            (Element::Plain(Surface::FrontEnd), English) => "Front end wall",
            (Element::Plain(Surface::FrontEnd), French) => "Paroi du fond",
            (Element::Plain(Surface::DoorEnd), English) => "Door end wall",
            (Element::Plain(Surface::DoorEnd), French) => "Bout des portes",
            (Element::Plain(Surface::Ceiling), English) => "Ceiling",
            (Element::Plain(Surface::Ceiling), French) => "Plafond",
            (Element::Plain(Surface::Floor), English) => "Floor",
            (Element::Plain(Surface::Floor), French) => "Plancher",
            (Element::Detail(place), _) => self.place(place),
            (Element::PersonnelDoor, English) => "Door",
            (Element::PersonnelDoor, French) => "Porte",
            (Element::Windows, English) => "Windows",
            (Element::Windows, French) => "Fenêtres",
            (Element::Air, English) => "Outdoor air",
            (Element::Air, French) => "Air extérieur",
        }
    }

    /// A layer of a build-up.
    pub const fn layer(self, layer: LayerKind) -> &'static str {
        match (layer, self) {
            (LayerKind::SteelSheet, English) => "steel",
            (LayerKind::SteelSheet, French) => "acier",
            (LayerKind::Foam, English) => "foam",
            (LayerKind::Foam, French) => "mousse",
            (LayerKind::AirGap, English) => "still air",
            (LayerKind::AirGap, French) => "air immobile",
            (LayerKind::Lining, English) => "lining",
            (LayerKind::Lining, French) => "parement",
            (LayerKind::Panel, English) => "wipeable panel",
            (LayerKind::Panel, French) => "panneau lavable",
            (LayerKind::FloorPlywood, English) => "floor plywood",
            (LayerKind::FloorPlywood, French) => "contreplaqué du plancher",
            (LayerKind::FloorFoam, English) => "foam board",
            (LayerKind::FloorFoam, French) => "panneau de mousse",
            (LayerKind::FloorDeck, English) => "deck",
            (LayerKind::FloorDeck, French) => "platelage",
        }
    }

    /// A part that is not counted.
    pub fn not_counted(self, part: NotCounted) -> String {
        let words = self.losses();
        match (part, self) {
            (NotCounted::Detail(place, Reason::Waiting), _) => {
                words.waiting.with(&[self.place(place)])
            }
            (NotCounted::Detail(place, _), _) => words.unsolved.with(&[self.place(place)]),
            (NotCounted::CargoDoorSeals, English) => {
                "leaky seals of the cargo doors, beyond the air changes chosen".to_owned()
            }
            (NotCounted::CargoDoorSeals, French) => {
                "joints des portes de cargo, au-delà des renouvellements d’air choisis".to_owned()
            }
            (NotCounted::OtherFixings, English) => {
                "brackets and fixings through the foam other than those chosen".to_owned()
            }
            (NotCounted::OtherFixings, French) => {
                "équerres et fixations à travers la mousse autres que celles choisies".to_owned()
            }
            (NotCounted::CargoDoorFittings, English) => {
                "hinge pins, locking bars and hollow frames of the cargo doors".to_owned()
            }
            (NotCounted::CargoDoorFittings, French) => {
                "axes de charnières, barres de verrouillage et cadres creux des portes de cargo"
                    .to_owned()
            }
            (NotCounted::OpeningCorners, English) => {
                "corners of the steel frames round door and windows".to_owned()
            }
            (NotCounted::OpeningCorners, French) => {
                "coins des cadres d’acier de la porte et des fenêtres".to_owned()
            }
            (NotCounted::LiningScrews, English) => {
                "screws that hold the lining to the studs".to_owned()
            }
            (NotCounted::LiningScrews, French) => "vis du parement dans les montants".to_owned(),
            (NotCounted::LashingRings, English) => {
                "rings and bars for lashing, welded to rails and posts".to_owned()
            }
            (NotCounted::LashingRings, French) => {
                "anneaux et barres d’arrimage soudés aux longerons et poteaux".to_owned()
            }
            (NotCounted::CargoVents, English) => "the box’s own vents".to_owned(),
            (NotCounted::CargoVents, French) => "évents du conteneur".to_owned(),
            (NotCounted::ConduitsAndGlands, English) => {
                "boxes and conduits in the foam, glands through the skin".to_owned()
            }
            (NotCounted::ConduitsAndGlands, French) => {
                "boîtes et conduits dans la mousse, presse-étoupes à travers la tôle".to_owned()
            }
            (NotCounted::ExteriorSteel, English) => {
                "steel welded to the outside: hinges, awnings, hooks".to_owned()
            }
            (NotCounted::ExteriorSteel, French) => {
                "acier soudé dehors : charnières, auvents, crochets".to_owned()
            }
            (NotCounted::RecessEnds, English) => {
                "ends of forklift pockets and gooseneck tunnel at the rails".to_owned()
            }
            (NotCounted::RecessEnds, French) => {
                "bouts des passages de fourches et du tunnel de col de cygne aux longerons"
                    .to_owned()
            }
            (NotCounted::RoofJoints, English) => "joints of the roof’s sheets".to_owned(),
            (NotCounted::RoofJoints, French) => "joints des tôles du toit".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |losses: &Losses| {
            let Losses { members, waves, air, unsolved, waiting, small, not_in_curves, .. } =
                *losses;
            [members, waves, air, unsolved, waiting, small, not_in_curves].map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
