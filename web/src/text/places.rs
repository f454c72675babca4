//! Names of the cold places.

use inchwise_core::design::Surface;
use inchwise_core::envelope::{End, Opening, ThermalBridge};

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A place where heat finds a way past the foam.
    pub const fn place(self, place: ThermalBridge) -> &'static str {
        match (place, self) {
            (ThermalBridge::FrameLine(Surface::SideWall), English) => "Studs, side walls",
            (ThermalBridge::FrameLine(Surface::SideWall), French) => "Montants, parois latérales",
            (ThermalBridge::FrameLine(Surface::FrontEnd), English) => "Studs, front end",
            (ThermalBridge::FrameLine(Surface::FrontEnd), French) => "Montants, fond",
            (ThermalBridge::FrameLine(Surface::DoorEnd), English) => "Studs, door end",
            (ThermalBridge::FrameLine(Surface::DoorEnd), French) => "Montants, bout des portes",
            (ThermalBridge::FrameLine(Surface::Ceiling), English) => "Ceiling joists",
            (ThermalBridge::FrameLine(Surface::Ceiling), French) => "Solives du plafond",
            (ThermalBridge::FrameLine(Surface::Floor) | ThermalBridge::FloorMember, English) => {
                "Steel members under the floor"
            }
            (ThermalBridge::FrameLine(Surface::Floor) | ThermalBridge::FloorMember, French) => {
                "Traverses d’acier du plancher"
            }
            (ThermalBridge::Waves(Surface::FrontEnd), English) => "Waves of the sheet, front end",
            (ThermalBridge::Waves(Surface::FrontEnd), French) => "Ondes de la tôle, fond",
            (ThermalBridge::Waves(Surface::Ceiling), English) => "Waves of the sheet, roof",
            (ThermalBridge::Waves(Surface::Ceiling), French) => "Ondes de la tôle, toit",
            (ThermalBridge::Waves(_), English) => "Waves of the sheet, side walls",
            (ThermalBridge::Waves(_), French) => "Ondes de la tôle, côtés",
            (ThermalBridge::StudHead, English) => "Stud heads at the top rail",
            (ThermalBridge::StudHead, French) => "Têtes de montants au longeron",
            (ThermalBridge::RoofEdge(Surface::FrontEnd), English) => "Roof edge, front end",
            (ThermalBridge::RoofEdge(Surface::FrontEnd), French) => "Bord du toit, fond",
            (ThermalBridge::RoofEdge(Surface::DoorEnd), English) => "Roof edge, door end",
            (ThermalBridge::RoofEdge(Surface::DoorEnd), French) => "Bord du toit, portes",
            (ThermalBridge::RoofEdge(_), English) => "Roof edges, side walls",
            (ThermalBridge::RoofEdge(_), French) => "Bords du toit, côtés",
            (ThermalBridge::CornerPost(End::Front), English) => "Corner posts, front end",
            (ThermalBridge::CornerPost(End::Front), French) => "Poteaux d’angle, fond",
            (ThermalBridge::CornerPost(End::Door), English) => "Corner posts, door end",
            (ThermalBridge::CornerPost(End::Door), French) => "Poteaux d’angle, portes",
            (ThermalBridge::FloorEdge(Surface::FrontEnd), English) => "Floor edge, front end",
            (ThermalBridge::FloorEdge(Surface::FrontEnd), French) => "Bord du plancher, fond",
            (ThermalBridge::FloorEdge(Surface::DoorEnd), English) => "Floor edge, door end",
            (ThermalBridge::FloorEdge(Surface::DoorEnd), French) => "Bord du plancher, portes",
            (ThermalBridge::FloorEdge(_), English) => "Floor edges, side walls",
            (ThermalBridge::FloorEdge(_), French) => "Bords du plancher, côtés",
            (ThermalBridge::OpeningFrame(Opening::PersonnelDoor), English) => {
                "Steel frame of the door"
            }
            (ThermalBridge::OpeningFrame(Opening::PersonnelDoor), French) => {
                "Cadre d’acier de la porte"
            }
            (ThermalBridge::OpeningFrame(Opening::Window), English) => "Steel frames of windows",
            (ThermalBridge::OpeningFrame(Opening::Window), French) => "Cadres d’acier des fenêtres",
            (ThermalBridge::DoorThreshold, English) => "Threshold of the door",
            (ThermalBridge::DoorThreshold, French) => "Seuil de la porte",
            (ThermalBridge::WindowSill, English) => "Steel frames under windows",
            (ThermalBridge::WindowSill, French) => "Cadres d’acier sous les fenêtres",
            (ThermalBridge::CargoDoorHeader, English) => "Header of the cargo doors",
            (ThermalBridge::CargoDoorHeader, French) => "Linteau des portes de cargo",
            (ThermalBridge::CargoDoorSill, English) => "Sill of the cargo doors",
            (ThermalBridge::CargoDoorSill, French) => "Seuil des portes de cargo",
            (ThermalBridge::CargoDoorHinges, English) => "Hinge edges of the cargo doors",
            (ThermalBridge::CargoDoorHinges, French) => "Bords à charnières des portes de cargo",
            (ThermalBridge::CargoDoorMeeting, English) => "Where the cargo doors meet",
            (ThermalBridge::CargoDoorMeeting, French) => "Jonction des portes de cargo",
            (ThermalBridge::CargoDoorBatten, English) => "Battens in the cargo doors",
            (ThermalBridge::CargoDoorBatten, French) => "Tasseaux des portes de cargo",
            (ThermalBridge::ScrewThrough, English) => "Long screws through the foam",
            (ThermalBridge::ScrewThrough, French) => "Longues vis à travers la mousse",
            (ThermalBridge::ThinFoam, English) => "Where the foam is too thin",
            (ThermalBridge::ThinFoam, French) => "Où la mousse est trop mince",
            (ThermalBridge::JoistEnd, English) => "Ends of joists at the top rail",
            (ThermalBridge::JoistEnd, French) => "Bouts de solives au longeron",
            (ThermalBridge::ForkliftPocket, English) => "Forklift pockets",
            (ThermalBridge::ForkliftPocket, French) => "Passages de fourches",
            (ThermalBridge::GooseneckTunnel, English) => "Gooseneck tunnel",
            (ThermalBridge::GooseneckTunnel, French) => "Tunnel de col de cygne",
            (ThermalBridge::FloorDrain, English) => "Floor drains",
            (ThermalBridge::FloorDrain, French) => "Avaloirs de sol",
            (ThermalBridge::TopCasting(End::Front), English) => "Top corner castings, front end",
            (ThermalBridge::TopCasting(End::Front), French) => "Pièces de coin du haut, fond",
            (ThermalBridge::TopCasting(End::Door), English) => "Top corner castings, door end",
            (ThermalBridge::TopCasting(End::Door), French) => "Pièces de coin du haut, portes",
            (ThermalBridge::BottomCasting(End::Front), English) => {
                "Bottom corner castings, front end"
            }
            (ThermalBridge::BottomCasting(End::Front), French) => "Pièces de coin du bas, fond",
            (ThermalBridge::BottomCasting(End::Door), English) => {
                "Bottom corner castings, door end"
            }
            (ThermalBridge::BottomCasting(End::Door), French) => "Pièces de coin du bas, portes",
            (ThermalBridge::DamperSleeve, English) => "Sleeves of the intakes",
            (ThermalBridge::DamperSleeve, French) => "Manchons des prises d’air",
            (ThermalBridge::ExhaustSleeve, English) => "Sleeves of the exhausts",
            (ThermalBridge::ExhaustSleeve, French) => "Manchons des sorties",
        }
    }
}
