//! The name of every numeric choice.

use inchwise_core::design::Field;

use super::Language;

impl Language {
    /// The label of a field.
    pub const fn field(self, field: Field) -> &'static str {
        match self {
            Self::English => english(field),
            Self::French => french(field),
        }
    }
}

const fn english(field: Field) -> &'static str {
    match field {
        Field::StudDepth => "Stud depth",
        Field::StudStandOff => "Gap behind the studs",
        Field::StudSpacing => "Stud spacing",
        Field::StudSteelThickness => "Stud steel",
        Field::FlangeWidth => "Flange width",
        Field::JoistDepth => "Ceiling joist depth",
        Field::JoistStandOff => "Gap above the joists",
        Field::JoistSpacing => "Joist spacing",
        Field::JoistSteelThickness => "Joist steel",
        Field::SideWallFoam => "Side wall foam",
        Field::FrontEndFoam => "Front end foam",
        Field::DoorEndFoam => "Door end foam",
        Field::CeilingFoam => "Ceiling foam",
        Field::FloorFoamBetween => "Foam between the floor members",
        Field::FloorFoamUnder => "Foam wrapped under the members",
        Field::FloorFoamOver => "Foam board over the floor",
        Field::FloorDeck => "Deck over the foam board",
        Field::FloorLevelling => "Seal or levelling coat",
        Field::FoamConductivity => "Foam conductivity, aged",
        Field::LiningThickness => "Lining thickness",
        Field::CastingCover => "Foam over the castings",
        Field::BracketPad => "Plastic pad under the brackets",
        Field::OpeningFrameFoam => "Foam over the opening frames",
        Field::DamperCount => "Damper openings",
        Field::DamperDiameter => "Damper diameter",
        Field::DoorWidth => "Door width",
        Field::DoorHeight => "Door height",
        Field::DoorTransmittance => "Door U-value",
        Field::WindowCount => "Windows",
        Field::WindowWidth => "Window width",
        Field::WindowHeight => "Window height",
        Field::WindowTransmittance => "Window U-value",
        Field::IndoorTemperature => "Room temperature",
        Field::OutdoorTemperature => "Coldest outdoors",
        Field::AirChanges => "Air changes",
        Field::MeasuredLength => "Inside length",
        Field::MeasuredWidth => "Inside width",
        Field::MeasuredHeight => "Inside height",
        Field::MeasuredCastingFront => "Casting past the front end",
        Field::MeasuredCastingDoor => "Casting past the door plane",
        Field::MeasuredCastingWidth => "Casting past the side wall",
        Field::MeasuredCastingHeight => "Casting below the roof",
    }
}

const fn french(field: Field) -> &'static str {
    match field {
        Field::StudDepth => "Profondeur des montants",
        Field::StudStandOff => "Jeu derrière les montants",
        Field::StudSpacing => "Entraxe des montants",
        Field::StudSteelThickness => "Tôle des montants",
        Field::FlangeWidth => "Largeur des ailes",
        Field::JoistDepth => "Profondeur des solives de plafond",
        Field::JoistStandOff => "Jeu au-dessus des solives",
        Field::JoistSpacing => "Entraxe des solives",
        Field::JoistSteelThickness => "Tôle des solives",
        Field::SideWallFoam => "Mousse des parois latérales",
        Field::FrontEndFoam => "Mousse du fond",
        Field::DoorEndFoam => "Mousse du bout des portes",
        Field::CeilingFoam => "Mousse du plafond",
        Field::FloorFoamBetween => "Mousse entre les traverses du plancher",
        Field::FloorFoamUnder => "Mousse autour et sous les traverses",
        Field::FloorFoamOver => "Panneau de mousse sur le plancher",
        Field::FloorDeck => "Platelage sur le panneau",
        Field::FloorLevelling => "Scellement ou ragréage",
        Field::FoamConductivity => "Conductivité de la mousse, vieillie",
        Field::LiningThickness => "Épaisseur du parement",
        Field::CastingCover => "Mousse sur les pièces de coin",
        Field::BracketPad => "Cale de plastique sous les équerres",
        Field::OpeningFrameFoam => "Mousse sur les cadres d’ouverture",
        Field::DamperCount => "Ouvertures de volets",
        Field::DamperDiameter => "Diamètre des volets",
        Field::DoorWidth => "Largeur de la porte",
        Field::DoorHeight => "Hauteur de la porte",
        Field::DoorTransmittance => "Coefficient U de la porte",
        Field::WindowCount => "Fenêtres",
        Field::WindowWidth => "Largeur d’une fenêtre",
        Field::WindowHeight => "Hauteur d’une fenêtre",
        Field::WindowTransmittance => "Coefficient U des fenêtres",
        Field::IndoorTemperature => "Température de la pièce",
        Field::OutdoorTemperature => "Froid extrême dehors",
        Field::AirChanges => "Renouvellement d’air",
        Field::MeasuredLength => "Longueur intérieure",
        Field::MeasuredWidth => "Largeur intérieure",
        Field::MeasuredHeight => "Hauteur intérieure",
        Field::MeasuredCastingFront => "Pièce de coin, saillie au fond",
        Field::MeasuredCastingDoor => "Pièce de coin, saillie aux portes",
        Field::MeasuredCastingWidth => "Pièce de coin, saillie latérale",
        Field::MeasuredCastingHeight => "Pièce de coin, saillie sous le toit",
    }
}
