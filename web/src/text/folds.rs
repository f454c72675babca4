//! Headings of the folded parts, labels inside them, and headings of the rest of the page.

use super::{Language, Phrase};

/// The phrases.
pub struct Folds {
    /// Studs and joists.
    pub framing: &'static str,
    /// What the frame does to the room.
    pub framing_note: &'static str,
    /// Where members stand over the waves.
    pub frame_position: &'static str,
    /// What standing over troughs asks for.
    pub frame_position_note: &'static str,
    /// The depths members are sold in.
    pub stock_depths: &'static str,
    /// The same for those who hear it: of what.
    pub stock_depths_of: Phrase,
    /// Foam wall by wall.
    pub foam: &'static str,
    /// From where it is measured.
    pub foam_measure: &'static str,
    /// The floor.
    pub floor: &'static str,
    /// That foam under the floor costs no headroom.
    pub floor_note: &'static str,
    /// The lining.
    pub lining: &'static str,
    /// Which board.
    pub lining_material: &'static str,
    /// Castings and end walls.
    pub castings: &'static str,
    /// Door and windows.
    pub openings: &'static str,
    /// Where the door stands.
    pub personnel_door: &'static str,
    /// Where the windows are.
    pub window_wall: &'static str,
    /// Air and temperature.
    pub air: &'static str,
    /// That air may be the load.
    pub air_note: &'static str,
    /// The use, what it brings, and the place's air.
    pub room_use: &'static str,
    /// Where figures of the place are chosen.
    pub place_note: &'static str,
    /// What drying and condensing do to the heat.
    pub drying_note: &'static str,
    /// By which rule outdoor air is counted.
    pub outdoor_air_rule: &'static str,
    /// Forklift pockets and gooseneck tunnel.
    pub floor_recesses: &'static str,
    /// How the end with the cargo doors is finished.
    pub door_end_finish: &'static str,
    /// What keeps panes apart.
    pub window_spacer: &'static str,
    /// How sleeves end.
    pub sleeve_end: &'static str,
    /// Sun and summer.
    pub sun: &'static str,
    /// Dampers and fan.
    pub ventilation: &'static str,
    /// What keeps the rain out.
    pub weather_cover: &'static str,
    /// Whether screened.
    pub damper_screen: &'static str,
    /// How the fan is given.
    pub fan_given: &'static str,
    /// Where curve points stand.
    pub fan_note: &'static str,
    /// The box as measured.
    pub measured: &'static str,
    /// Leave empty what was not measured.
    pub measured_note: &'static str,
    /// Heading of the drawings.
    pub drawings: &'static str,
    /// Heading of the printed list of choices.
    pub chosen: &'static str,
}

const ENGLISH: Folds = Folds {
    framing: "Framing",
    framing_note: "The frame takes the room, not the foam: gap and stud together set where the \
                   lining stands.",
    frame_position: "Studs and joists stand",
    frame_position_note: "Over a trough the wave’s depth lies behind the flange, too: with troughs \
                          filled, far less heat gets through. But troughs do not keep to the \
                          spacing, and boards must still end on a stud. Reckoned as if the steel \
                          were flat, it makes no difference.",
    stock_depths: "in stock",
    stock_depths_of: Phrase("Stock sizes: {0}"),
    foam: "Foam by surface",
    foam_measure: "Foam depth is measured",
    floor: "Floor",
    floor_note: "Foam under the floor costs no headroom. Board over it does.",
    lining: "Lining",
    lining_material: "Board",
    castings: "Castings and end walls",
    openings: "Door and windows",
    personnel_door: "Door stands in",
    window_wall: "Windows are in",
    air: "Air and temperature",
    air_note: "0.3 an hour is a tight room with the fan off. A kennel or a drying room may need \
               ten and more.",
    place_note: "The months outdoors, their humidity and sun, the height above the sea and a hot day are \
                 those of the place, under The year.",
    room_use: "Use of the room",
    drying_note: "Water that dries takes 0.68 kWh of the room’s heat a kilogram. What condenses gives a part \
                  of it back.",
    outdoor_air_rule: "Fresh air by the rule",
    floor_recesses: "Forklift pockets and tunnel",
    door_end_finish: "At the cargo doors",
    window_spacer: "Edge of the glass",
    sleeve_end: "Damper sleeves end",
    sun: "Sun and summer",
    ventilation: "Dampers and fan",
    weather_cover: "Over each damper",
    damper_screen: "Dampers are",
    fan_given: "The fan is given",
    fan_note: "Points of a curve stand in order: flow rises and pressure falls from each to the \
               next. They count only when the fan is given by them.",
    measured: "Measured box",
    measured_note: "Leave empty what you have not measured. The usual size of the box stands in.",
    drawings: "Drawings",
    chosen: "Chosen",
};

const FRENCH: Folds = Folds {
    framing: "Ossature",
    framing_note: "C’est l’ossature qui prend l’espace, pas la mousse : le jeu et le montant \
                   fixent ensemble la place du parement.",
    frame_position: "Montants et solives se trouvent",
    frame_position_note: "Sur un creux, la profondeur de l’onde s’ajoute derrière l’aile : creux \
                          remplis, bien moins de chaleur passe. Mais les creux ne suivent pas \
                          l’entraxe, et chaque panneau doit quand même finir sur un montant. \
                          Compté comme si l’acier était plat, cela ne change rien.",
    stock_depths: "en stock",
    stock_depths_of: Phrase("Dimensions en stock : {0}"),
    foam: "Mousse par surface",
    foam_measure: "L’épaisseur est mesurée",
    floor: "Plancher",
    floor_note: "La mousse sous le plancher ne coûte pas de hauteur. Un panneau dessus, oui.",
    lining: "Parement",
    lining_material: "Panneau",
    castings: "Pièces de coin et extrémités",
    openings: "Porte et fenêtres",
    personnel_door: "La porte est dans",
    window_wall: "Les fenêtres sont dans",
    air: "Air et température",
    air_note: "0,3 à l’heure, c’est une pièce étanche, ventilateur arrêté. Un chenil ou un séchoir \
               peut demander dix et plus.",
    place_note: "Les mois dehors, leur humidité et leur soleil, l’altitude et un jour chaud sont ceux du lieu, \
                 sous L’année.",
    room_use: "Usage de la pièce",
    drying_note: "L’eau qui sèche prend à la pièce 0,68 kWh de chaleur par kilogramme. Celle qui condense en \
                  rend une part.",
    outdoor_air_rule: "Air neuf selon la règle",
    floor_recesses: "Passages de fourches et tunnel",
    door_end_finish: "Aux portes de cargo",
    window_spacer: "Bord du vitrage",
    sleeve_end: "Les manchons finissent",
    sun: "Soleil et été",
    ventilation: "Volets et ventilateur",
    weather_cover: "Sur chaque volet",
    damper_screen: "Les volets sont",
    fan_given: "Le ventilateur est donné",
    fan_note: "Les points d’une courbe se suivent : de l’un à l’autre, le débit monte et la \
               pression baisse. Ils ne comptent que si le ventilateur est donné par eux.",
    measured: "Conteneur mesuré",
    measured_note: "Laissez vide ce que vous n’avez pas mesuré : la dimension habituelle du \
                    conteneur est retenue.",
    drawings: "Dessins",
    chosen: "Choix",
};

impl Language {
    /// Words of the folded parts.
    pub const fn folds(self) -> &'static Folds {
        match self {
            Self::English => &ENGLISH,
            Self::French => &FRENCH,
        }
    }
}
