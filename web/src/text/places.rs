//! Names of the cold places.

use inchwise_core::design::Surface;
use inchwise_core::envelope::{End, Opening, Place};

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A place where heat finds a way past the foam.
    pub const fn place(self, place: Place) -> &'static str {
        match (place, self) {
            (Place::FrameLine(Surface::SideWall), English) => "Studs, side walls",
            (Place::FrameLine(Surface::SideWall), French) => "Montants, parois latérales",
            (Place::FrameLine(Surface::FrontEnd), English) => "Studs, front end",
            (Place::FrameLine(Surface::FrontEnd), French) => "Montants, fond",
            (Place::FrameLine(Surface::DoorEnd), English) => "Studs, door end",
            (Place::FrameLine(Surface::DoorEnd), French) => "Montants, bout des portes",
            (Place::FrameLine(Surface::Ceiling), English) => "Ceiling joists",
            (Place::FrameLine(Surface::Ceiling), French) => "Solives du plafond",
            (Place::FrameLine(Surface::Floor) | Place::FloorMember, English) => {
                "Steel members under the floor"
            }
            (Place::FrameLine(Surface::Floor) | Place::FloorMember, French) => {
                "Traverses d’acier du plancher"
            }
            (Place::Waves(Surface::FrontEnd), English) => "Waves of the sheet, front end",
            (Place::Waves(Surface::FrontEnd), French) => "Ondes de la tôle, fond",
            (Place::Waves(Surface::Ceiling), English) => "Waves of the sheet, roof",
            (Place::Waves(Surface::Ceiling), French) => "Ondes de la tôle, toit",
            (Place::Waves(_), English) => "Waves of the sheet, side walls",
            (Place::Waves(_), French) => "Ondes de la tôle, côtés",
            (Place::StudHead, English) => "Stud heads at the top rail",
            (Place::StudHead, French) => "Têtes de montants au longeron",
            (Place::RoofEdge(Surface::FrontEnd), English) => "Roof edge, front end",
            (Place::RoofEdge(Surface::FrontEnd), French) => "Bord du toit, fond",
            (Place::RoofEdge(Surface::DoorEnd), English) => "Roof edge, door end",
            (Place::RoofEdge(Surface::DoorEnd), French) => "Bord du toit, portes",
            (Place::RoofEdge(_), English) => "Roof edges, side walls",
            (Place::RoofEdge(_), French) => "Bords du toit, côtés",
            (Place::CornerPost(End::Front), English) => "Corner posts, front end",
            (Place::CornerPost(End::Front), French) => "Poteaux d’angle, fond",
            (Place::CornerPost(End::Door), English) => "Corner posts, door end",
            (Place::CornerPost(End::Door), French) => "Poteaux d’angle, portes",
            (Place::FloorEdge(Surface::FrontEnd), English) => "Floor edge, front end",
            (Place::FloorEdge(Surface::FrontEnd), French) => "Bord du plancher, fond",
            (Place::FloorEdge(Surface::DoorEnd), English) => "Floor edge, door end",
            (Place::FloorEdge(Surface::DoorEnd), French) => "Bord du plancher, portes",
            (Place::FloorEdge(_), English) => "Floor edges, side walls",
            (Place::FloorEdge(_), French) => "Bords du plancher, côtés",
            (Place::OpeningFrame(Opening::PersonnelDoor), English) => "Steel frame of the door",
            (Place::OpeningFrame(Opening::PersonnelDoor), French) => "Cadre d’acier de la porte",
            (Place::OpeningFrame(Opening::Window), English) => "Steel frames of windows",
            (Place::OpeningFrame(Opening::Window), French) => "Cadres d’acier des fenêtres",
            (Place::TopCasting(End::Front), English) => "Top corner castings, front end",
            (Place::TopCasting(End::Front), French) => "Pièces de coin du haut, fond",
            (Place::TopCasting(End::Door), English) => "Top corner castings, door end",
            (Place::TopCasting(End::Door), French) => "Pièces de coin du haut, portes",
            (Place::BottomCasting(End::Front), English) => "Bottom corner castings, front end",
            (Place::BottomCasting(End::Front), French) => "Pièces de coin du bas, fond",
            (Place::BottomCasting(End::Door), English) => "Bottom corner castings, door end",
            (Place::BottomCasting(End::Door), French) => "Pièces de coin du bas, portes",
            (Place::DamperSleeve, English) => "Sleeves of the intakes",
            (Place::DamperSleeve, French) => "Manchons des prises d’air",
            (Place::ExhaustSleeve, English) => "Sleeves of the exhausts",
            (Place::ExhaustSleeve, French) => "Manchons des sorties",
        }
    }
}
