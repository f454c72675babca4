//! Names of what stands on the drawings.

use inchwise_core::design::{EndWallTreatment, Surface};
use inchwise_core::room::Taker;

use super::Language;
use super::Language::{English, French};
use crate::drawing::geometry::{Direction, Fate, Part, SetBy};

impl Language {
    /// What became of a casting, as a short label.
    pub const fn casting_label(self, fate: Fate) -> &'static str {
        match (fate, self) {
            (Fate::Boxed, English) => "casting in its own box",
            (Fate::Boxed, French) => "pièce de coin en coffret",
            (Fate::BehindEndWall, English) => "casting behind the end wall",
            (Fate::BehindEndWall, French) => "pièce de coin derrière la paroi",
            (Fate::AboveCeiling, English) => "casting above the ceiling",
            (Fate::AboveCeiling, French) => "pièce de coin au-dessus du plafond",
            (Fate::WithinBuildUp, English) => "casting inside the build-up",
            (Fate::WithinBuildUp, French) => "pièce de coin dans l’épaisseur",
            (Fate::Bare, English) => "bare steel: frosts, drips",
            (Fate::Bare, French) => "acier nu : givre, goutte",
        }
    }

    /// What became of the castings, as a sentence.
    pub const fn castings_told(self, fate: Fate) -> &'static str {
        match (fate, self) {
            (Fate::Boxed, English) => {
                "The corner castings stand in the corners in foam-filled boxes of their own."
            }
            (Fate::Boxed, French) => {
                "Les pièces de coin sont dans leurs propres coffrets remplis de mousse."
            }
            (Fate::BehindEndWall, English) => {
                "The end walls come forward and hide the corner castings."
            }
            (Fate::BehindEndWall, French) => {
                "Les parois d’extrémité sont avancées et cachent les pièces de coin."
            }
            (Fate::AboveCeiling, English) => {
                "The ceiling comes down and hides the corner castings."
            }
            (Fate::AboveCeiling, French) => "Le plafond est abaissé et cache les pièces de coin.",
            (Fate::WithinBuildUp, English) => {
                "Frame and foam already stand past the corner castings."
            }
            (Fate::WithinBuildUp, French) => {
                "L’ossature et la mousse dépassent déjà les pièces de coin."
            }
            (Fate::Bare, English) => {
                "The corner castings stand in the room as bare steel, which frosts and drips."
            }
            (Fate::Bare, French) => {
                "Les pièces de coin restent en acier nu dans la pièce : elles givrent et gouttent."
            }
        }
    }

    /// A treatment at the end of its curve.
    pub const fn treatment_label(self, treatment: EndWallTreatment) -> &'static str {
        use EndWallTreatment as Treatment;
        match (treatment, self) {
            (Treatment::CoverCastings, English) => "cover",
            (Treatment::CoverCastings, French) => "coffret",
            (Treatment::BuildOutEndWalls, English) => "build out",
            (Treatment::BuildOutEndWalls, French) => "avancer",
            (Treatment::DropCeiling, English) => "drop ceiling",
            (Treatment::DropCeiling, French) => "abaisser",
            (Treatment::LeaveBare, English) => "bare",
            (Treatment::LeaveBare, French) => "nu",
        }
    }

    /// A part of the close-up.
    pub const fn part(self, part: Part) -> &'static str {
        match (part, self) {
            (Part::Corrugation, English) => "corrugation",
            (Part::Corrugation, French) => "ondulation",
            (Part::StandOff, English) => "gap behind",
            (Part::StandOff, French) => "jeu derrière",
            (Part::Stud, English) => "stud",
            (Part::Stud, French) => "montant",
            (Part::Foam, English) => "foam",
            (Part::Foam, French) => "mousse",
            (Part::AirGap, English) => "air gap",
            (Part::AirGap, French) => "lame d’air",
            (Part::Lining, English) => "lining",
            (Part::Lining, French) => "parement",
        }
    }

    /// Beside the lining: what sets it.
    pub const fn set_by(self, set_by: SetBy) -> &'static str {
        match (set_by, self) {
            (SetBy::Frame, English) => "set by the frame",
            (SetBy::Frame, French) => "fixé par l’ossature",
            (SetBy::Foam, English) => "set by the foam",
            (SetBy::Foam, French) => "fixé par la mousse",
        }
    }

    /// What takes room.
    pub const fn taker(self, taker: Taker) -> &'static str {
        match (taker, self) {
            (Taker::StandOff, English) => "gap",
            (Taker::StandOff, French) => "jeu",
            (Taker::Frame, English) => "frame",
            (Taker::Frame, French) => "ossature",
            (Taker::FoamPastFrame, English) => "foam past it",
            (Taker::FoamPastFrame, French) => "mousse au-delà",
            (Taker::LeafFoam, English) => "foam in the leaves",
            (Taker::LeafFoam, French) => "mousse des vantaux",
            (Taker::Panel, English) => "panel",
            (Taker::Panel, French) => "panneau lavable",
            (Taker::BroughtIn, English) => "to hide castings",
            (Taker::BroughtIn, French) => "pour cacher les coins",
            (Taker::Lining, English) => "lining",
            (Taker::Lining, French) => "parement",
            (Taker::Levelling, English) => "levelling",
            (Taker::Levelling, French) => "nivellement",
            (Taker::FloorFoam, English) => "foam board",
            (Taker::FloorFoam, French) => "panneau de mousse",
            (Taker::FloorDeck, English) => "deck",
            (Taker::FloorDeck, French) => "pontage",
            (Taker::ClearRoom, English) => "clear room",
            (Taker::ClearRoom, French) => "espace libre",
        }
    }

    /// A surface on the ladder.
    pub const fn ladder_surface(self, surface: Surface) -> &'static str {
        match (surface, self) {
            (Surface::SideWall, English) => "side wall",
            (Surface::SideWall, French) => "paroi latérale",
            (Surface::FrontEnd, English) => "front end",
            (Surface::FrontEnd, French) => "fond",
            (Surface::DoorEnd, English) => "door end",
            (Surface::DoorEnd, French) => "bout des portes",
            (Surface::Ceiling, English) => "ceiling",
            (Surface::Ceiling, French) => "plafond",
            (Surface::Floor, English) => "floor",
            (Surface::Floor, French) => "plancher",
        }
    }

    /// A direction of the ladder.
    pub const fn direction(self, direction: Direction) -> &'static str {
        match (direction, self) {
            (Direction::Length, English) => "Length",
            (Direction::Length, French) => "Longueur",
            (Direction::Width, English) => "Width",
            (Direction::Width, French) => "Largeur",
            (Direction::Height, English) => "Height",
            (Direction::Height, French) => "Hauteur",
        }
    }
}
