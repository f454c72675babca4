//! Names of boxes, surfaces, walls and of every option that is not a number.

use inchwise_core::design::{
    DamperScreen, DoorEndFinish, EndWallTreatment, FanGiven, FloorRecesses, FoamMeasure,
    FramePosition, LiningMaterial, OutdoorAirRule, PersonnelDoor, RoomUse, SleeveEnd, Surface,
    Wall, WeatherCover, WindowSpacer,
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

    /// Where studs and joists stand.
    pub const fn frame_position(self, position: FramePosition) -> &'static str {
        match (position, self) {
            (FramePosition::OnCrests, English) => "on ribs, or wherever they fall",
            (FramePosition::OnCrests, French) => "sur les nervures, ou là où ils tombent",
            (FramePosition::OverTroughs, English) => "over troughs, each moved to one",
            (FramePosition::OverTroughs, French) => "sur les creux, chacun décalé vers l’un d’eux",
        }
    }

    /// A rule for outdoor air.
    pub const fn outdoor_air_rule(self, rule: OutdoorAirRule) -> &'static str {
        match (rule, self) {
            (OutdoorAirRule::Office, English) => "of offices: by people and floor",
            (OutdoorAirRule::Office, French) => "des bureaux : par personne et plancher",
            (OutdoorAirRule::Dwelling, English) => "of dwellings: by people and floor",
            (OutdoorAirRule::Dwelling, French) => "des logements : par personne et plancher",
            (OutdoorAirRule::AirChanges, English) => "of animal rooms: air changes",
            (OutdoorAirRule::AirChanges, French) => "des animaleries : renouvellements d’air",
            (OutdoorAirRule::None, English) => "none: leaks alone",
            (OutdoorAirRule::None, French) => "aucune : les fuites seules",
        }
    }

    /// What is done about forklift pockets and gooseneck tunnel.
    pub const fn floor_recesses(self, recesses: FloorRecesses) -> &'static str {
        match (recesses, self) {
            (FloorRecesses::KeptFree, English) => "kept free, where this size has them",
            (FloorRecesses::KeptFree, French) => "gardés libres, si ce conteneur en a",
            (FloorRecesses::Filled, English) => "filled with foam, never lifted by them again",
            (FloorRecesses::Filled, French) => "remplis de mousse, plus jamais levé par eux",
            (FloorRecesses::None, English) => "this box has none",
            (FloorRecesses::None, French) => "ce conteneur n’en a pas",
        }
    }

    /// How the end with the cargo doors is finished.
    pub const fn door_end_finish(self, finish: DoorEndFinish) -> &'static str {
        match (finish, self) {
            (DoorEndFinish::FramedWall, English) => "a framed wall before them, they stay shut",
            (DoorEndFinish::FramedWall, French) => {
                "une paroi à ossature devant, elles restent fermées"
            }
            (DoorEndFinish::FoamedLeaves, English) => "foam in their leaves, they open",
            (DoorEndFinish::FoamedLeaves, French) => "mousse dans les vantaux, elles s’ouvrent",
        }
    }

    /// What keeps panes apart at their edge.
    pub const fn window_spacer(self, spacer: WindowSpacer) -> &'static str {
        match (spacer, self) {
            (WindowSpacer::Aluminium, English) => "aluminium bar",
            (WindowSpacer::Aluminium, French) => "barre d’aluminium",
            (WindowSpacer::WarmEdge, English) => "plastic or thin stainless bar",
            (WindowSpacer::WarmEdge, French) => "barre de plastique ou d’inox mince",
        }
    }

    /// How dampers' sleeves end.
    pub const fn sleeve_end(self, end: SleeveEnd) -> &'static str {
        match (end, self) {
            (SleeveEnd::ThroughLining, English) => "at the face of the lining",
            (SleeveEnd::ThroughLining, French) => "à la face du parement",
            (SleeveEnd::Recessed, English) => "behind the studs, plastic pipe from there",
            (SleeveEnd::Recessed, French) => "derrière les montants, puis tuyau de plastique",
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

    /// A use of the room.
    pub const fn room_use(self, room_use: RoomUse) -> &'static str {
        match (room_use, self) {
            (RoomUse::Store, English) => "store, hardly anyone inside",
            (RoomUse::Store, French) => "entrepôt, presque personne dedans",
            (RoomUse::Workshop, English) => "workshop",
            (RoomUse::Workshop, French) => "atelier",
            (RoomUse::Office, English) => "office",
            (RoomUse::Office, French) => "bureau",
            (RoomUse::Sleeping, English) => "sleeping",
            (RoomUse::Sleeping, French) => "coucher",
            (RoomUse::LaundryAndDrying, English) => "laundry and drying",
            (RoomUse::LaundryAndDrying, French) => "lavage et séchage du linge",
            (RoomUse::Growing, English) => "growing plants",
            (RoomUse::Growing, French) => "culture de plantes",
            (RoomUse::WashingDown, English) => "washing down",
            (RoomUse::WashingDown, French) => "lavage au jet",
            (RoomUse::Animals, English) => "animals",
            (RoomUse::Animals, French) => "animaux",
        }
    }

    /// What keeps rain out of a damper.
    pub const fn weather_cover(self, cover: WeatherCover) -> &'static str {
        match (cover, self) {
            (WeatherCover::Hood, English) => "hood",
            (WeatherCover::Hood, French) => "capot",
            (WeatherCover::Louvre, English) => "louvre",
            (WeatherCover::Louvre, French) => "persienne",
            (WeatherCover::None, English) => "nothing",
            (WeatherCover::None, French) => "rien",
        }
    }

    /// Whether dampers are screened.
    pub const fn damper_screen(self, screen: DamperScreen) -> &'static str {
        match (screen, self) {
            (DamperScreen::Screened, English) => "screened",
            (DamperScreen::Screened, French) => "grillagés",
            (DamperScreen::None, English) => "open",
            (DamperScreen::None, French) => "sans grillage",
        }
    }

    /// What is known of the fan.
    pub const fn fan_given(self, given: FanGiven) -> &'static str {
        match (given, self) {
            (FanGiven::Label, English) => "by the two figures on its label",
            (FanGiven::Label, French) => "par les deux chiffres de sa plaque",
            (FanGiven::Curve, English) => "by points of its maker’s curve",
            (FanGiven::Curve, French) => "par des points de la courbe du fabricant",
        }
    }
}
