//! Words of the pictures of damp.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases.
pub struct DampPictures {
    /// Heading: the humidity chart.
    pub curve: &'static str,
    /// Chart told: {0} coldest, {1} limit there, {2} warmest, {3} limit there, {4} own humidity.
    pub curve_told: Phrase,
    /// Along the axis across.
    pub outdoors: &'static str,
    /// Along the axis up.
    pub humidity: &'static str,
    /// Line: mould from here.
    pub mould_line: &'static str,
    /// Line: drips from here.
    pub drip_line: &'static str,
    /// Line: once the weakest is mended.
    pub next_line: &'static str,
    /// Line: this use, leaks alone.
    pub alone_line: &'static str,
    /// Line: this use with the fan.
    pub fan_line: &'static str,
    /// Heading: why it drips.
    pub moist_air: &'static str,
    /// It drips: {0} outdoors with {1} of water, {2} added, {3} the weakest spot, {4} held there.
    pub moist_air_drips: Phrase,
    /// It does not: the same places.
    pub moist_air_dry: Phrase,
    /// Along the axis up, with unit {0}.
    pub water_axis: Phrase,
    /// Line: saturation.
    pub most_line: &'static str,
    /// Line: outdoor air warmed, then wetted.
    pub warmed_line: &'static str,
    /// Line: what the weakest spot holds.
    pub ceiling_line: &'static str,
    /// Ring: the room.
    pub room_ring: &'static str,
    /// Bar: above the ceiling.
    pub over_bar: &'static str,
    /// Beside the weakest spot.
    pub spot_label: &'static str,
    /// Heading: the balance.
    pub balance: &'static str,
    /// Balance told: {0} in, {1} by air, {2} frost, {3} water.
    pub balance_told: Phrase,
    /// Bar: in.
    pub comes_in: &'static str,
    /// Bar: out by air.
    pub by_air: &'static str,
    /// Bar: frost.
    pub as_frost: &'static str,
    /// Bar: water.
    pub as_water: &'static str,
    /// Bar: wherever it can.
    pub anywhere: &'static str,
    /// Nothing to draw.
    pub no_moisture: &'static str,
}

const ENGLISH: DampPictures = DampPictures {
    curve: "How humid the room may be, by outdoor temperature",
    curve_told: Phrase(
        "At {0} outdoors the weakest spot is free of mould up to {1}, at {2} up to {3}. This use \
         brings {4} at the coldest.",
    ),
    outdoors: "outdoors",
    humidity: "indoor humidity, %",
    mould_line: "mould from here, if it lasts",
    drip_line: "drips from here",
    next_line: "mould, weakest mended",
    alone_line: "this use, leaks alone",
    fan_line: "this use, with the fan if there is one",
    moist_air: "Why it drips, or does not",
    moist_air_drips: Phrase(
        "Outdoor air of {0} brings {1} of water, and takes up {2} more in the room. At the weakest \
         spot, {3}, air can hold {4}: the rest lands there.",
    ),
    moist_air_dry: Phrase(
        "Outdoor air of {0} brings {1} of water, and takes up {2} more in the room. At the weakest \
         spot, {3}, air can hold {4}: nothing lands there.",
    ),
    water_axis: Phrase("water in the air, {0}"),
    most_line: "the most that air can hold",
    warmed_line: "outdoor air, warmed, then wetted by the use",
    ceiling_line: "what air at the weakest spot can hold",
    room_ring: "the room on a day of use",
    over_bar: "too much for the weakest spot",
    spot_label: "weakest spot",
    balance: "Where the water goes in a cold spell",
    balance_told: Phrase("{0} comes in; air takes {1}, {2} lands as frost and {3} as water."),
    comes_in: "given off",
    by_air: "out with the air",
    as_frost: "onto cold spots, frost",
    as_water: "onto cold spots, water",
    anywhere: "wherever it can",
    no_moisture: "This use gives off no moisture.",
};

const FRENCH: DampPictures = DampPictures {
    curve: "Humidité permise selon la température dehors",
    curve_told: Phrase(
        "À {0} dehors, le point faible reste sans moisissure jusqu’à {1}; à {2}, jusqu’à {3}. Cet \
         usage donne {4} au plus froid.",
    ),
    outdoors: "dehors",
    humidity: "humidité intérieure, %",
    mould_line: "moisissure dès ici, si cela dure",
    drip_line: "dégoutte dès ici",
    next_line: "moisissure, point faible corrigé",
    alone_line: "cet usage, fuites seules",
    fan_line: "cet usage, avec le ventilateur s’il y en a un",
    moist_air: "Pourquoi ça dégoutte, ou non",
    moist_air_drips: Phrase(
        "L’air du dehors à {0} apporte {1} d’eau et en prend {2} de plus dans la pièce. Au point \
         faible, {3}, l’air peut en tenir {4} : le reste s’y pose.",
    ),
    moist_air_dry: Phrase(
        "L’air du dehors à {0} apporte {1} d’eau et en prend {2} de plus dans la pièce. Au point \
         faible, {3}, l’air peut en tenir {4} : rien ne s’y pose.",
    ),
    water_axis: Phrase("eau dans l’air, {0}"),
    most_line: "le plus que l’air peut tenir",
    warmed_line: "air du dehors, réchauffé, puis humidifié par l’usage",
    ceiling_line: "ce que l’air peut tenir au point faible",
    room_ring: "la pièce, un jour d’usage",
    over_bar: "de trop pour le point faible",
    spot_label: "point faible",
    balance: "Où va l’eau par grand froid",
    balance_told: Phrase("{0} arrive; l’air emporte {1}, {2} se pose en givre et {3} en eau."),
    comes_in: "dégagé",
    by_air: "avec l’air",
    as_frost: "aux points froids, givre",
    as_water: "aux points froids, eau",
    anywhere: "où elle peut",
    no_moisture: "Cet usage ne dégage aucune humidité.",
};

impl Language {
    /// Words of the pictures of damp.
    pub const fn damp_pictures(self) -> &'static DampPictures {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |words: &DampPictures| {
            [
                words.curve_told,
                words.moist_air_drips,
                words.moist_air_dry,
                words.water_axis,
                words.balance_told,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
