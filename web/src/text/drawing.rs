//! Words on and about the drawings.

mod names;

use super::{Language, Phrase};

/// The phrases.
pub struct DrawingWords {
    /// At a damper that lets air in.
    pub intake: &'static str,
    /// At a damper with a fan.
    pub exhaust: &'static str,
    /// Title of the cross-section.
    pub section: &'static str,
    /// Title of the plan.
    pub plan: &'static str,
    /// Title of the close-up.
    pub close_up: &'static str,
    /// Title of the ladder.
    pub ladder: &'static str,
    /// Title of the chart.
    pub chart: &'static str,

    /// The cross-section told: {0} bare width, {1} bare height, {2} clear width, {3} clear height,
    /// {4} side wall foam, {5} ceiling foam, {6} what became of the castings.
    pub section_told: Phrase,
    /// The plan told: {0} bare length, {1} bare width, {2} clear length, {3} clear width, {4} front
    /// end foam, {5} side wall foam, {6} door end foam, {7} what became of the castings.
    pub plan_told: Phrase,
    /// The close-up told: {0} sheet and frame, {1} foam and what follows, {2} what sets the lining.
    pub close_up_told: Phrase,
    /// The chart told: {0} least foam, {1} room lost there, {2} load there, {3} most foam, {4} room
    /// lost there, {5} load there, {6} the frame's face.
    pub chart_told: Phrase,

    /// Name of the grip on the side walls.
    pub wall_grip: &'static str,
    /// Name of the grip on the ceiling.
    pub ceiling_grip: &'static str,
    /// Name of the grip on the front end.
    pub front_grip: &'static str,
    /// Name of the grip on the door end.
    pub door_grip: &'static str,
    /// Beside a grip, foam short of the frame's face by {0}.
    pub still_free: Phrase,
    /// Beside a grip, foam just at the frame's face.
    pub at_frame: &'static str,
    /// Beside a grip, foam past the frame's face by {0}.
    pub past_frame: Phrase,
    /// Beside a grip on a surface brought in to hide the castings: {0} of foam still fit behind it.
    pub hides_castings: Phrase,

    /// Under the corner boxes, {0} of headroom.
    pub under_corners: Phrase,
    /// Under bare castings, {0} of headroom.
    pub under_castings: Phrase,
    /// Height of the figure, {0}.
    pub tall: Phrase,
    /// One end of the plan.
    pub front_end: &'static str,
    /// The other end of the plan.
    pub cargo_doors: &'static str,

    /// Above the sheet.
    pub outdoors: &'static str,
    /// Below the lining.
    pub room: &'static str,
    /// Under the close-up where the frame sets the lining: {0} its place, {1} gap behind the stud, {2} stud,
    /// {3} foam that is still free.
    pub set_by_frame: Phrase,
    /// The same with foam just up to the frame: {0} its place, {1} gap behind the stud, {2} stud.
    pub set_by_both: Phrase,
    /// Under the close-up where the foam sets the lining: {0} its place, {1} foam past the frame.
    pub set_by_foam: Phrase,

    /// Steel to steel, {0}.
    pub steel_to_steel: Phrase,
    /// On both side walls alike.
    pub each_side_wall: &'static str,
    /// The room's own rung.
    pub clear: &'static str,
    /// Where nothing is taken.
    pub nothing: &'static str,

    /// Along the chart's lower edge: {0} unit.
    pub room_lost: Phrase,
    /// Up the chart's side: {0} unit.
    pub heating_load: Phrase,
    /// While the chart is not ready.
    pub working_out: &'static str,
    /// At the kink: {0} depth of the frame's face.
    pub kink: Phrase,
    /// At the mark of the present design.
    pub this_design: &'static str,
    /// Opens the chart's table.
    pub as_table: &'static str,
    /// What the table lists.
    pub table_caption: &'static str,
    /// Head of the first column.
    pub wall_foam: &'static str,
    /// Head of the columns of room lost.
    pub lost: &'static str,
    /// Head of the columns of heating load.
    pub load: &'static str,
}

const ENGLISH: DrawingWords = DrawingWords {
    intake: "intake",
    exhaust: "fan",
    section: "Cross-section, towards the front end",
    plan: "Plan, cut above the floor",
    close_up: "One stud of the side wall, cut level",
    ladder: "What took each millimetre",
    chart: "Wall foam: room lost against heat lost",

    section_told: Phrase(
        "Bare steel {0} wide and {1} high. Clear room {2} wide and {3} high. {4} of foam on the \
         side walls, {5} under the roof. {6}",
    ),
    plan_told: Phrase(
        "Bare steel {0} long and {1} wide. Clear room {2} long and {3} wide. {4} of foam on the \
         front end, {5} on the side walls, {6} behind the cargo doors. {7}",
    ),
    close_up_told: Phrase("From outdoors inwards: {0}. Over the crests of the sheet: {1}. {2}"),
    chart_told: Phrase(
        "With {0} of wall foam {1} of room is lost and about {2} of heat with the fan off; with {3} it \
         is {4} and about {5}. Foam up to the frame’s face at {6} takes no room.",
    ),

    wall_grip: "Foam on side and end walls",
    ceiling_grip: "Foam under the roof",
    front_grip: "Foam on the front end",
    door_grip: "Foam behind the cargo doors",
    still_free: Phrase("up to the frame: {0} more is free"),
    at_frame: "at the frame’s face: still free",
    past_frame: Phrase("past the frame: takes {0} of room"),
    hides_castings: Phrase("brought in to hide castings: {0} more is free"),

    under_corners: Phrase("{0} under the corner boxes"),
    under_castings: Phrase("{0} under the castings"),
    tall: Phrase("{0} tall"),
    front_end: "front end",
    cargo_doors: "cargo doors",

    outdoors: "outdoors",
    room: "room",
    set_by_frame: Phrase(
        "The frame sets the lining: a {1} gap and a {2} stud put it {0} from the steel. {3} more foam \
         would cost no room.",
    ),
    set_by_both: Phrase(
        "The frame sets the lining: a {1} gap and a {2} stud put it {0} from the steel, and the foam \
         just fills it. More foam takes room.",
    ),
    set_by_foam: Phrase(
        "The foam sets the lining, {0} from the steel: it goes {1} past the frame, and that much \
         room is gone.",
    ),

    steel_to_steel: Phrase("{0} steel to steel"),
    each_side_wall: "each side wall",
    clear: "clear",
    nothing: "nothing",

    room_lost: Phrase("room lost, {0}"),
    heating_load: Phrase("heat lost, fan off, {0}"),
    working_out: "working out …",
    kink: Phrase("frame’s face, {0}: foam up to here takes no room"),
    this_design: "this design",
    as_table: "The same as a table",
    table_caption: "Room lost and heat lost, fan off, by foam on side and end walls",
    wall_foam: "Wall foam",
    lost: "lost",
    load: "heat",
};

const FRENCH: DrawingWords = DrawingWords {
    intake: "prise d’air",
    exhaust: "ventilateur",
    section: "Coupe transversale, vue vers le fond",
    plan: "Plan, coupé au-dessus du plancher",
    close_up: "Un montant de la paroi latérale, coupe horizontale",
    ladder: "Ce qui a pris chaque millimètre",
    chart: "Mousse des parois : espace perdu et chaleur perdue",

    section_told: Phrase(
        "Acier nu : {0} de large et {1} de haut. Espace libre : {2} de large et {3} de haut. {4} \
         de mousse sur les parois latérales, {5} sous le toit. {6}",
    ),
    plan_told: Phrase(
        "Acier nu : {0} de long et {1} de large. Espace libre : {2} de long et {3} de large. {4} \
         de mousse au fond, {5} sur les parois latérales, {6} derrière les portes. {7}",
    ),
    close_up_told: Phrase("Du dehors vers le dedans : {0}. Sur les crêtes de la tôle : {1}. {2}"),
    chart_told: Phrase(
        "Avec {0} de mousse aux parois, {1} d’espace est perdu et environ {2} de chaleur, ventilateur \
         arrêté ; avec {3}, c’est {4} et environ {5}. La mousse jusqu’à la face de l’ossature, à {6}, ne \
         prend pas d’espace.",
    ),

    wall_grip: "Mousse des parois latérales et d’extrémité",
    ceiling_grip: "Mousse sous le toit",
    front_grip: "Mousse de la paroi du fond",
    door_grip: "Mousse au bout des portes",
    still_free: Phrase("jusqu’à l’ossature : encore {0} sans perte"),
    at_frame: "à la face de l’ossature : sans perte",
    past_frame: Phrase("au-delà de l’ossature : prend {0}"),
    hides_castings: Phrase("déplacé pour cacher les coins : encore {0} sans perte"),

    under_corners: Phrase("{0} sous les coffrets de coin"),
    under_castings: Phrase("{0} sous les pièces de coin"),
    tall: Phrase("taille {0}"),
    front_end: "fond",
    cargo_doors: "portes",

    outdoors: "dehors",
    room: "pièce",
    set_by_frame: Phrase(
        "L’ossature fixe le parement : {1} de jeu et {2} de montant le placent à {0} de l’acier. \
         {3} de mousse de plus ne coûterait pas d’espace.",
    ),
    set_by_both: Phrase(
        "L’ossature fixe le parement : {1} de jeu et {2} de montant le placent à {0} de l’acier, \
         et la mousse la remplit tout juste. Plus de mousse prend de l’espace.",
    ),
    set_by_foam: Phrase(
        "La mousse fixe le parement, à {0} de l’acier : elle dépasse l’ossature de {1}, et autant \
         d’espace est perdu.",
    ),

    steel_to_steel: Phrase("{0} d’acier à acier"),
    each_side_wall: "chaque paroi latérale",
    clear: "libre",
    nothing: "rien",

    room_lost: Phrase("espace perdu, {0}"),
    heating_load: Phrase("chaleur perdue, ventilateur arrêté, {0}"),
    working_out: "calcul en cours…",
    kink: Phrase("face de l’ossature, {0} : jusqu’ici la mousse ne prend pas d’espace"),
    this_design: "ce projet",
    as_table: "La même chose en tableau",
    table_caption: "Espace perdu et chaleur perdue, ventilateur arrêté, selon la mousse des parois",
    wall_foam: "Mousse des parois",
    lost: "perdu",
    load: "chaleur",
};

impl Language {
    /// Words of the drawings.
    pub const fn drawing(self) -> &'static DrawingWords {
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
        let phrases = |words: &DrawingWords| {
            [
                words.section_told,
                words.plan_told,
                words.close_up_told,
                words.chart_told,
                words.still_free,
                words.past_frame,
                words.hides_castings,
                words.under_corners,
                words.under_castings,
                words.tall,
                words.set_by_frame,
                words.set_by_both,
                words.set_by_foam,
                words.steel_to_steel,
                words.room_lost,
                words.heating_load,
                words.kink,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
