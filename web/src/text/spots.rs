//! Words of the cold spots: the list, the temperature picture, its cuts.

use inchwise_core::conduction::Axis;
use inchwise_core::envelope::ThermalBridge;

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct Spots {
    /// Heading.
    pub title: &'static str,
    /// At {0} outdoors the coldest place, {1}, drips from {2} humidity of the room on.
    pub first: Phrase,
    /// The same, frost instead of drops.
    pub first_frosts: Phrase,
    /// How humid the room stands: {0}.
    pub humidity: Phrase,
    /// Heading of the list.
    pub list: &'static str,
    /// What the list says of {0} outdoors and {1} in the room.
    pub list_told: Phrase,
    /// Behind it: mould by the mean of {0}.
    pub mould_told: Phrase,
    /// Column: where, and what {0} humidity brings there.
    pub place: Phrase,
    /// Column: temperature of the surface.
    pub surface: &'static str,
    /// Column: humidity from which it drips.
    pub drips_from: &'static str,
    /// Column: humidity from which mould may grow.
    pub mould_from: &'static str,
    /// Water.
    pub drips: &'static str,
    /// Frost.
    pub frosts: &'static str,
    /// Mould.
    pub moulds: &'static str,
    /// Nothing.
    pub stays_dry: &'static str,
    /// A figure of an earlier design.
    pub refining: &'static str,
    /// A place that is being solved for the first time.
    pub waiting: &'static str,
    /// A place that did not solve.
    pub did_not_solve: &'static str,
    /// A place out of the formulas' range.
    pub out_of_range: &'static str,
    /// Shows all {0} places.
    pub show_all: Phrase,
    /// Shows the coldest only.
    pub show_fewer: &'static str,
    /// The choice of a body's cut.
    pub cuts: &'static str,
    /// In the picture: the coldest place, {0}.
    pub coldest: Phrase,
    /// In the picture: the dew point, {0}.
    pub dew_line: Phrase,
    /// Under the picture: lines {0} apart, {1} outdoors, {2} in the room.
    pub lines: Phrase,
    /// Under the picture: colder than {0} drips at {1} humidity, and nothing the room touches is.
    pub dry: Phrase,
    /// Under the picture: colder than {0} drips at {1} humidity, along the beaded edge.
    pub wet: Phrase,
    /// Under the picture: colder than {0} drips at {1} humidity, just where it is coldest.
    pub wet_at_coldest: Phrase,
    /// Under the picture: the coldest place lies in front of or behind the cut.
    pub not_in_cut: &'static str,
    /// The picture told: {0} place, {1} coldest surface, {2} what is said under it.
    pub told: Phrase,
    /// The picture told before it is there.
    pub told_waiting: &'static str,
    /// The room.
    pub room: &'static str,
    /// Outdoors.
    pub outdoors: &'static str,
}

const ENGLISH: Spots = Spots {
    title: "Where it drips first",
    first: Phrase(
        "At {0} outside, the coldest place is: {1}. It drips once the room is over {2} humid.",
    ),
    first_frosts: Phrase(
        "At {0} outside, the coldest place is: {1}. It frosts once the room is over {2} humid.",
    ),
    humidity: Phrase("The room stands at {0} on a day of use."),
    list: "Cold spots, coldest first",
    list_told: Phrase(
        "At {0} outside and {1} in the room. Choose a place to see its temperatures.",
    ),
    mould_told: Phrase(
        " Mould is told of the mean of {0}, which asks most; frames and panes are told by drops alone.",
    ),
    place: Phrase("Place, at {0} humidity"),
    surface: "Surface",
    drips_from: "Drips over",
    mould_from: "Mould over",
    drips: "drips",
    frosts: "frosts",
    moulds: "mould",
    stays_dry: "dry",
    refining: "refining",
    waiting: "being worked out",
    did_not_solve: "did not solve",
    out_of_range: "colder than the formulas reach",
    show_all: Phrase("Show all {0} places"),
    show_fewer: "Show only the coldest",
    cuts: "Where it is cut",
    coldest: Phrase("coldest {0}"),
    dew_line: Phrase("dew point {0}"),
    lines: Phrase("Lines of equal temperature, {0} apart, at {1} outside and {2} in the room."),
    dry: Phrase(
        "The heavy dashed line is {0}: air at {1} humidity drips on what is colder. Nothing the \
         room touches here is.",
    ),
    wet: Phrase(
        "The heavy dashed line is {0}: air at {1} humidity drips on what is colder, here along \
         the beaded edge.",
    ),
    wet_at_coldest: Phrase(
        "The heavy dashed line is {0}: air at {1} humidity drips on what is colder, here just at \
         the coldest place.",
    ),
    not_in_cut: "The coldest place is not in this cut.",
    told: Phrase("{0}. Coldest surface {1}. {2}"),
    told_waiting: "The picture is being worked out.",
    room: "room",
    outdoors: "outdoors",
};

const FRENCH: Spots = Spots {
    title: "Où ça goutte en premier",
    first: Phrase(
        "À {0} dehors, l’endroit le plus froid : {1}. Il goutte dès que la pièce dépasse {2} \
         d’humidité.",
    ),
    first_frosts: Phrase(
        "À {0} dehors, l’endroit le plus froid : {1}. Il givre dès que la pièce dépasse {2} \
         d’humidité.",
    ),
    humidity: Phrase("La pièce est à {0} un jour d’usage."),
    list: "Points froids, le plus froid d’abord",
    list_told: Phrase(
        "À {0} dehors et {1} dans la pièce. Choisissez un endroit pour voir ses températures.",
    ),
    mould_told: Phrase(
        " La moisissure est dite de la moyenne de {0}, le mois le plus exigeant; cadres et vitres, des gouttes \
         seules.",
    ),
    place: Phrase("Endroit, à {0} d’humidité"),
    surface: "Surface",
    drips_from: "Goutte dès",
    mould_from: "Moisit dès",
    drips: "goutte",
    frosts: "givre",
    moulds: "moisit",
    stays_dry: "sec",
    refining: "calcul en cours",
    waiting: "calcul en cours",
    did_not_solve: "non résolu",
    out_of_range: "plus froid que les formules",
    show_all: Phrase("Montrer les {0} endroits"),
    show_fewer: "Montrer les plus froids",
    cuts: "Où l’on coupe",
    coldest: Phrase("le plus froid {0}"),
    dew_line: Phrase("point de rosée {0}"),
    lines: Phrase("Lignes d’égale température, tous les {0}, à {1} dehors et {2} dans la pièce."),
    dry: Phrase(
        "La ligne épaisse en tirets est à {0} : l’air à {1} d’humidité goutte sur ce qui est plus \
         froid. Rien de ce que touche la pièce ne l’est ici.",
    ),
    wet: Phrase(
        "La ligne épaisse en tirets est à {0} : l’air à {1} d’humidité goutte sur ce qui est plus \
         froid, ici le long du bord perlé.",
    ),
    wet_at_coldest: Phrase(
        "La ligne épaisse en tirets est à {0} : l’air à {1} d’humidité goutte sur ce qui est plus \
         froid, ici juste à l’endroit le plus froid.",
    ),
    not_in_cut: "L’endroit le plus froid n’est pas dans cette coupe.",
    told: Phrase("{0}. Surface la plus froide {1}. {2}"),
    told_waiting: "L’image est en cours de calcul.",
    room: "pièce",
    outdoors: "dehors",
};

impl Language {
    /// Words of the cold spots.
    pub const fn spots(self) -> &'static Spots {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// What a cut square to an axis shows at a place.
    pub const fn cut(self, place: ThermalBridge, axis: Axis) -> &'static str {
        match (place, axis, self) {
            (ThermalBridge::TopCasting(_), Axis::Y, English) => "Side wall and ceiling",
            (ThermalBridge::TopCasting(_), Axis::Y, French) => "Côté et plafond",
            (ThermalBridge::TopCasting(_), Axis::X, English) => "End and ceiling",
            (ThermalBridge::TopCasting(_), Axis::X, French) => "Bout et plafond",
            (ThermalBridge::BottomCasting(_), Axis::Y, English) => "Side wall and floor",
            (ThermalBridge::BottomCasting(_), Axis::Y, French) => "Côté et plancher",
            (ThermalBridge::BottomCasting(_), Axis::X, English) => "End and floor",
            (ThermalBridge::BottomCasting(_), Axis::X, French) => "Bout et plancher",
            (ThermalBridge::TopCasting(_) | ThermalBridge::BottomCasting(_), Axis::Z, English) => {
                "Side wall and end"
            }
            (ThermalBridge::TopCasting(_) | ThermalBridge::BottomCasting(_), Axis::Z, French) => {
                "Côté et bout"
            }
            (_, Axis::X, English) => "Across the wall",
            (_, Axis::X, French) => "En travers de la paroi",
            (_, Axis::Z, English) => "Level",
            (_, Axis::Z, French) => "À plat",
            (_, Axis::Y, English) => "Along the wall",
            (_, Axis::Y, French) => "Le long de la paroi",
        }
    }
}
