//! Names of boxes, surfaces, walls and of every option that is not a number.

use inchwise_core::design::{
    EndWallTreatment, FoamMeasure, LiningMaterial, PersonnelDoor, Surface, Wall,
};
use inchwise_core::freight_box::BoxSize;

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A box size.
    pub const fn box_size(self, size: BoxSize) -> &'static str {
        match (size, self) {
            (BoxSize::TenStandard, English) => "10 ft standard",
            (BoxSize::TenStandard, French) => "10 pi standard",
            (BoxSize::TwentyStandard, English) => "20 ft standard",
            (BoxSize::TwentyStandard, French) => "20 pi standard",
            (BoxSize::TwentyHighCube, English) => "20 ft high-cube",
            (BoxSize::TwentyHighCube, French) => "20 pi grande hauteur",
            (BoxSize::FortyStandard, English) => "40 ft standard",
            (BoxSize::FortyStandard, French) => "40 pi standard",
            (BoxSize::FortyHighCube, English) => "40 ft high-cube",
            (BoxSize::FortyHighCube, French) => "40 pi grande hauteur",
            (BoxSize::FortyFiveHighCube, English) => "45 ft high-cube",
            (BoxSize::FortyFiveHighCube, French) => "45 pi grande hauteur",
        }
    }

    /// A treatment of the castings.
    pub const fn treatment(self, treatment: EndWallTreatment) -> &'static str {
        match (treatment, self) {
            (EndWallTreatment::CoverCastings, English) => "Cover each casting",
            (EndWallTreatment::CoverCastings, French) => "Habiller chaque pièce de coin",
            (EndWallTreatment::BuildOutEndWalls, English) => "Build the end walls out",
            (EndWallTreatment::BuildOutEndWalls, French) => "Avancer les parois d’extrémité",
            (EndWallTreatment::DropCeiling, English) => "Drop the ceiling",
            (EndWallTreatment::DropCeiling, French) => "Abaisser le plafond",
            (EndWallTreatment::LeaveBare, English) => "Leave them bare",
            (EndWallTreatment::LeaveBare, French) => "Les laisser nues",
        }
    }

    /// From where foam depth is measured.
    pub const fn foam_measure(self, measure: FoamMeasure) -> &'static str {
        match (measure, self) {
            (FoamMeasure::Flat, English) => "as if the steel were flat",
            (FoamMeasure::Flat, French) => "comme si l’acier était plat",
            (FoamMeasure::FollowingTheSteel, English) => "same depth along the waves",
            (FoamMeasure::FollowingTheSteel, French) => "même épaisseur le long des ondes",
            (FoamMeasure::FlushOverTheRibs, English) => "over the ribs, troughs filled",
            (FoamMeasure::FlushOverTheRibs, French) => "sur les nervures, creux remplis",
        }
    }

    /// A lining board.
    pub const fn lining_material(self, material: LiningMaterial) -> &'static str {
        match (material, self) {
            (LiningMaterial::Plywood, English) => "plywood",
            (LiningMaterial::Plywood, French) => "contreplaqué",
            (LiningMaterial::GypsumBoard, English) => "gypsum board",
            (LiningMaterial::GypsumBoard, French) => "plaque de plâtre",
        }
    }

    /// A wall, as seen looking in through the cargo doors.
    pub const fn wall(self, wall: Wall) -> &'static str {
        match (wall, self) {
            (Wall::RightSide, English) => "right side wall",
            (Wall::RightSide, French) => "paroi latérale droite",
            (Wall::LeftSide, English) => "left side wall",
            (Wall::LeftSide, French) => "paroi latérale gauche",
            (Wall::FrontEnd, English) => "front end wall",
            (Wall::FrontEnd, French) => "paroi du fond",
            (Wall::DoorEnd, English) => "wall behind the cargo doors",
            (Wall::DoorEnd, French) => "paroi derrière les portes",
        }
    }

    /// Where the personnel door stands.
    pub const fn personnel_door(self, door: PersonnelDoor) -> &'static str {
        match (door.wall(), self) {
            (Some(wall), _) => self.wall(wall),
            (None, English) => "none: use the cargo doors",
            (None, French) => "aucune : on passe par les portes du conteneur",
        }
    }

    /// A surface of the room, in the middle of a sentence.
    pub const fn surface(self, surface: Surface) -> &'static str {
        match (surface, self) {
            (Surface::SideWall, English) => "side walls",
            (Surface::SideWall, French) => "parois latérales",
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
}
