//! Words of the controls: headings, hints beside them, and what a choice costs.

use super::{Language, Phrase};

/// The phrases.
pub struct Controls {
    /// Over the first controls.
    pub title: &'static str,
    /// The switch between the systems of units.
    pub units: &'static str,
    /// Its options.
    pub metric: &'static str,
    /// Its options.
    pub imperial: &'static str,
    /// The choice of box.
    pub box_size: &'static str,
    /// Inside of the bare box: {0}.
    pub inside: Phrase,
    /// Foam on all walls.
    pub wall_foam: &'static str,
    /// The walls differ: side walls {0}, front end {1}, door end {2}.
    pub walls_differ: Phrase,
    /// Foam stays behind the frame's face at {0}.
    pub within_frame: Phrase,
    /// Foam goes past the frame's face by {0}.
    pub past_frame: Phrase,
    /// The choice of treatment.
    pub treatment: &'static str,
    /// What it is about.
    pub treatment_hint: &'static str,
    /// Consequence: length {0}, volume {1}.
    pub costs_length: Phrase,
    /// Consequence: headroom {0}, volume {1}.
    pub costs_height: Phrase,
    /// Consequence: boxes {0}, each {1}.
    pub corner_boxes: Phrase,
    /// Consequence: boxes {0} and {1} at the other end, all four {2}.
    pub corner_boxes_two_sizes: Phrase,
    /// Consequence: two boxes {0} at one end, both {1}.
    pub corner_boxes_one_end: Phrase,
    /// Consequence: nothing stands out.
    pub nothing_stands_out: &'static str,
    /// Consequence of bare castings.
    pub bare_steel: &'static str,
    /// Consequence of castings left alone behind the lining.
    pub bare_behind_lining: &'static str,
    /// The treatment would break another choice.
    pub does_not_fit: &'static str,
    /// Nothing is left to hide.
    pub hidden_already: &'static str,
    /// From which ceiling depth {0} or wall depth {1} on nothing is left to hide.
    pub hidden_from: Phrase,
    /// Allowed range: {0} to {1}.
    pub range: Phrase,
    /// A measurement not taken: nominal {0}, range {1}.
    pub not_measured: Phrase,
    /// Name of a slider: of {0}.
    pub slider: Phrase,
    /// Name of the − button: {0} by {1}.
    pub less: Phrase,
    /// Name of the + button: {0} by {1}.
    pub more: Phrase,
    /// Starts over.
    pub start_over: &'static str,
    /// An address that reopens this design.
    pub link: &'static str,
    /// The address could not be read.
    pub link_unread: &'static str,
}

const ENGLISH: Controls = Controls {
    title: "Choose",
    units: "Units",
    metric: "mm",
    imperial: "ft-in",
    box_size: "Box",
    inside: Phrase("{0} inside the bare steel"),
    wall_foam: "Wall foam",
    walls_differ: Phrase(
        "The walls differ: side walls {0}, front end {1}, door end {2}. Moving this sets all three.",
    ),
    within_frame: Phrase("Behind the frame’s face at {0}: this foam costs no room."),
    past_frame: Phrase("{0} past the frame’s face: all of that comes off the room."),
    treatment: "Corner castings at the end walls",
    treatment_hint: "Four lumps of steel in the top corners, as cold as outdoors.",
    costs_length: Phrase("{0} length, {1}"),
    costs_height: Phrase("{0} headroom, {1}"),
    corner_boxes: Phrase("four corner boxes {0}, {1} each"),
    corner_boxes_two_sizes: Phrase("corner boxes {0} and {1}, {2} in all"),
    corner_boxes_one_end: Phrase("two corner boxes {0}, {1} in all"),
    nothing_stands_out: "nothing stands out, no room lost",
    bare_steel: "bare steel in the room: it will frost and drip",
    bare_behind_lining: "behind the lining, with no foam cover of its own",
    does_not_fit: "does not fit the other choices",
    hidden_already: "Nothing is left to hide: frame and foam already stand past the castings and \
                     their cover.",
    hidden_from: Phrase("Nothing is left to hide once the ceiling reaches {0} or the walls {1}."),
    range: Phrase("{0} to {1}"),
    not_measured: Phrase("not measured: {0} taken · {1}"),
    slider: Phrase("{0}, slider"),
    less: Phrase("{0}: {1} less"),
    more: Phrase("{0}: {1} more"),
    start_over: "Start over",
    link: "Link to this design",
    link_unread: "The link could not be read in full, so this is the usual design.",
};

const FRENCH: Controls = Controls {
    title: "Choisissez",
    units: "Unités",
    metric: "mm",
    imperial: "pi-po",
    box_size: "Conteneur",
    inside: Phrase("{0} à l’intérieur de l’acier nu"),
    wall_foam: "Mousse des parois",
    walls_differ: Phrase(
        "Les parois diffèrent : latérales {0}, fond {1}, bout des portes {2}. Ce réglage agit sur \
         les trois.",
    ),
    within_frame: Phrase(
        "Derrière la face de l’ossature à {0} : cette mousse ne coûte pas d’espace.",
    ),
    past_frame: Phrase("{0} au-delà de l’ossature : tout cela est pris sur la pièce."),
    treatment: "Pièces de coin aux extrémités",
    treatment_hint: "Quatre blocs d’acier dans les coins du haut, aussi froids que dehors.",
    costs_length: Phrase("{0} de longueur, {1}"),
    costs_height: Phrase("{0} de hauteur libre, {1}"),
    corner_boxes: Phrase("quatre coffrets {0}, {1} chacun"),
    corner_boxes_two_sizes: Phrase("coffrets {0} et {1}, {2} en tout"),
    corner_boxes_one_end: Phrase("deux coffrets {0}, {1} en tout"),
    nothing_stands_out: "rien ne dépasse, aucun espace perdu",
    bare_steel: "acier nu dans la pièce : il va givrer et goutter",
    bare_behind_lining: "derrière le parement, sans couverture de mousse",
    does_not_fit: "ne va pas avec les autres choix",
    hidden_already: "Il ne reste rien à cacher : l’ossature et la mousse dépassent déjà les pièces \
                     de coin et leur couverture.",
    hidden_from: Phrase(
        "Il ne reste rien à cacher dès que le plafond atteint {0} ou les parois {1}.",
    ),
    range: Phrase("{0} à {1}"),
    not_measured: Phrase("non mesuré : {0} retenu · {1}"),
    slider: Phrase("{0}, curseur"),
    less: Phrase("{0} : {1} de moins"),
    more: Phrase("{0} : {1} de plus"),
    start_over: "Recommencer",
    link: "Lien vers ce projet",
    link_unread: "Le lien n’a pas pu être lu en entier; voici le projet habituel.",
};

impl Language {
    /// Words of the controls.
    pub const fn controls(self) -> &'static Controls {
        match self {
            Self::English => &ENGLISH,
            Self::French => &FRENCH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |controls: &Controls| {
            [
                controls.inside,
                controls.walls_differ,
                controls.within_frame,
                controls.past_frame,
                controls.costs_length,
                controls.costs_height,
                controls.corner_boxes,
                controls.corner_boxes_two_sizes,
                controls.corner_boxes_one_end,
                controls.hidden_from,
                controls.range,
                controls.not_measured,
                controls.slider,
                controls.less,
                controls.more,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
