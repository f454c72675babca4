//! Warnings in our own words, and the published room sizes to ask about.

use inchwise_core::caution::{Caution, RoomMinimum};

use super::Language::{English, French};
use super::{Language, Phrase};

/// A warning: what it is about, and what to mind.
#[derive(Clone, Copy)]
pub struct Warning {
    /// A few words.
    pub heading: &'static str,
    /// One to three sentences.
    pub body: &'static str,
}

/// The phrases around the warnings.
pub struct Cautions {
    /// Heading.
    pub title: &'static str,
    /// Group: what the numbers mean.
    pub sizes: &'static str,
    /// Group: working safely.
    pub safety: &'static str,
    /// A room smaller than a text asks for: {0} text and clause, {1} place, {2} least, {3} for
    /// what, {4} has.
    pub below_minimum: Phrase,
    /// Heading of those.
    pub below_minimum_heading: Phrase,
    /// Under a control: more about it below.
    pub see_below: Phrase,
}

const ENGLISH: Cautions = Cautions {
    title: "What to mind",
    sizes: "Sizes to know",
    safety: "Building it safely",
    below_minimum: Phrase(
        "{0} ({1}) asks {2} for {3}; this room has {4}. Your local authority decides.",
    ),
    below_minimum_heading: Phrase("Below {0}"),
    see_below: Phrase("{0}: see What to mind."),
};

const FRENCH: Cautions = Cautions {
    title: "À surveiller",
    sizes: "Dimensions à connaître",
    safety: "Construire en sécurité",
    below_minimum: Phrase(
        "{0} ({1}) demande {2} pour {3}; cette pièce a {4}. L’autorité locale décide.",
    ),
    below_minimum_heading: Phrase("Moins de {0}"),
    see_below: Phrase("{0} : voir À surveiller."),
};

impl Language {
    /// Words around the warnings.
    pub const fn cautions(self) -> &'static Cautions {
        match self {
            English => &ENGLISH,
            French => &FRENCH,
        }
    }

    /// A warning that needs no figures; `None` for a room minimum, which does.
    pub const fn warning(self, caution: Caution) -> Option<Warning> {
        let (heading, body) = match self {
            English => match english(caution) {
                Some(words) => words,
                None => return None,
            },
            French => match french(caution) {
                Some(words) => words,
                None => return None,
            },
        };
        Some(Warning { heading, body })
    }

    /// The text that asks for a minimum, with edition and clause.
    pub const fn minimum_text(self, minimum: RoomMinimum) -> &'static str {
        match minimum {
            RoomMinimum::IrcHabitableHeight | RoomMinimum::IrcBathroomHeight => {
                "International Residential Code 2021, R305.1"
            }
            RoomMinimum::IrcHabitableWidth => "International Residential Code 2021, R304.2",
            RoomMinimum::IbcOccupiableHeight => "International Building Code 2021, 1208.2",
            RoomMinimum::OntarioLivingHeight => match self {
                English => "Ontario Building Code 2012, table 9.5.3.1",
                French => "Code du bâtiment de l’Ontario 2012, tableau 9.5.3.1",
            },
        }
    }

    /// Where that text may hold.
    pub const fn minimum_place(self, minimum: RoomMinimum) -> &'static str {
        match (minimum, self) {
            (RoomMinimum::OntarioLivingHeight, English) => "Ontario, Canada",
            (RoomMinimum::OntarioLivingHeight, French) => "Ontario, Canada",
            (_, English) => "United States",
            (_, French) => "États-Unis",
        }
    }

    /// For what it asks.
    pub const fn minimum_use(self, minimum: RoomMinimum) -> &'static str {
        match (minimum, self) {
            (RoomMinimum::IrcHabitableHeight, English) => "the height of habitable rooms",
            (RoomMinimum::IrcHabitableHeight, French) => "la hauteur des pièces habitables",
            (RoomMinimum::IrcBathroomHeight, English) => "the height of bathrooms and laundries",
            (RoomMinimum::IrcBathroomHeight, French) => {
                "la hauteur des salles de bains et buanderies"
            }
            (RoomMinimum::IrcHabitableWidth, English) => {
                "every horizontal dimension of habitable rooms"
            }
            (RoomMinimum::IrcHabitableWidth, French) => {
                "chaque dimension horizontale des pièces habitables"
            }
            (RoomMinimum::IbcOccupiableHeight, English) => "the height of occupiable spaces",
            (RoomMinimum::IbcOccupiableHeight, French) => "la hauteur des espaces occupables",
            (RoomMinimum::OntarioLivingHeight, English) => {
                "the height of living rooms over three quarters of their area"
            }
            (RoomMinimum::OntarioLivingHeight, French) => {
                "la hauteur des salles de séjour sur les trois quarts de leur aire"
            }
        }
    }
}

const fn english(caution: Caution) -> Option<(&'static str, &'static str)> {
    Some(match caution {
        Caution::PlanningAid => (
            "A plan, not a permit",
            "These figures do not show that a building meets any code. Your local authority \
             decides; the survey confirms every size.",
        ),
        Caution::NominalSizes => (
            "Nominal box sizes",
            "Used boxes are dented and differ by a centimetre. Measure length, width, height and \
             the castings before you order or cut, and put them under Measured box.",
        ),
        Caution::SprayFoam => (
            "Spraying foam",
            "The mist can damage lungs for good. Trained crew only, air-fed masks, forced air, \
             everyone else out, and nobody back in for the time the foam maker states: often one \
             to three days.",
        ),
        Caution::FoamInLifts => (
            "Foam in several lifts",
            "This depth is more than one lift. Sprayed too thick at once, foam overheats and can \
             catch fire hours later. Keep to the maker’s depth and let each lift cool.",
        ),
        Caution::ThermalBarrier => (
            "Lining as a fire barrier",
            "Foam in a room people use must be covered by a thermal barrier. United States codes \
             take ½ in (12.7 mm) gypsum board, and wood panel only from 23/32 in (18.3 mm). This \
             lining is thinner: ask before you order it.",
        ),
        Caution::HotWork => (
            "No hot work on a foamed box",
            "Weld, cut and grind before the foam goes in, never after, inside or out. The steel \
             carries the heat straight into the foam.",
        ),
        Caution::Structure => (
            "Openings and snow",
            "The corrugated walls brace the box. Large or close cuts, cut rails, stacking, earth \
             cover and snow on the roof need an engineer.",
        ),
        Caution::OldFloorAndPaint => (
            "Old floor and paint",
            "The floor may be treated against insects and soaked with old cargo; the paint may \
             hold lead or chromate. Read the data plate, test, and seal or replace.",
        ),
        Caution::SealedHeaters => (
            "Only sealed heaters",
            "A tight box has no air to spare. Use electric or sealed-combustion heaters, with \
             smoke and carbon monoxide alarms, and keep exhausts away from the intakes.",
        ),
        Caution::Electrical => (
            "Electricity in a steel room",
            "Bond the shell, use residual-current protection, keep cables clear of sharp steel, \
             and have a licensed electrician do it.",
        ),
        Caution::ThinFoamForVapour => (
            "Thin foam and damp",
            "Foam under 50 mm (2 in) is not usually counted on to hold back water vapour by \
             itself. Somewhere here it is thinner.",
        ),
        Caution::BareCastings => (
            "Bare castings",
            "The castings are as cold as outdoors. Bare in the room they collect frost through a \
             cold spell and let it go as water in the first thaw.",
        ),
        Caution::BareCastingsBehindLining => (
            "Bare castings behind the lining",
            "Here the castings are hidden, not covered: frost grows on them where nobody sees it, \
             and thaws into the lining. Foam them before it goes on.",
        ),
        Caution::SuctionAndFlues => (
            "The fan draws on the room",
            "A closed room is drawn below outdoors, and a flue that draws by warmth alone then \
             spills fumes inside. Sealed heaters only, and dampers that open before the fan starts.",
        ),
        Caution::UnventedFlame => (
            "A flame without a flue",
            "Each kilogram of propane gives the room 1.6 kg of water, one of kerosene 1.2 kg, and \
             both give it their fumes. In a tight box that kills: carbon monoxide has no smell. \
             Heat with something else.",
        ),
        Caution::SleepersWayOut => (
            "Sleeping in a box",
            "Sleepers need a second way out that opens from inside without a key, alarms for smoke \
             and carbon monoxide, and bars on the cargo doors that cannot lock them in.",
        ),
        Caution::WetUse => (
            "A wet use",
            "A use that keeps a room humid in winter calls for an engineered design: ask about \
             drains, metal that does not rust, and rules for animals before you build.",
        ),
        Caution::FrameTouchesSteel => (
            "Frame on the steel",
            "Studs or joists that touch the box carry heat straight out and turn cold enough to \
             sweat. A gap of 25 mm (1 in), foamed, cures most of it.",
        ),
        Caution::BareOpeningFrames => (
            "Bare frames of openings",
            "The welded frame is part of the skin: with no foam between it and the room it frosts \
             before anything else. Foam over its face and back along the reveal, 25 mm (1 in).",
        ),
        Caution::BelowRoomMinimum(_) => return None,
    })
}

const fn french(caution: Caution) -> Option<(&'static str, &'static str)> {
    Some(match caution {
        Caution::PlanningAid => (
            "Un plan, pas un permis",
            "Ces chiffres ne prouvent pas qu’un bâtiment respecte un code. L’autorité locale \
             décide; le relevé confirme chaque dimension.",
        ),
        Caution::NominalSizes => (
            "Dimensions nominales",
            "Un conteneur usagé est bosselé et varie d’un centimètre. Mesurez longueur, largeur, \
             hauteur et pièces de coin avant de commander ou de couper, et inscrivez-les sous \
             Conteneur mesuré.",
        ),
        Caution::SprayFoam => (
            "Projection de la mousse",
            "Le brouillard peut abîmer les poumons à vie. Équipe formée seulement, masques à \
             adduction d’air, ventilation forcée, tous les autres dehors, et personne ne rentre \
             avant le délai du fabricant : souvent un à trois jours.",
        ),
        Caution::FoamInLifts => (
            "Mousse en plusieurs passes",
            "Cette épaisseur dépasse une passe. Projetée trop épaisse d’un coup, la mousse \
             surchauffe et peut prendre feu des heures plus tard. Respectez l’épaisseur du \
             fabricant et laissez refroidir chaque passe.",
        ),
        Caution::ThermalBarrier => (
            "Le parement comme barrière au feu",
            "Dans une pièce occupée, la mousse doit être couverte d’une barrière thermique. Les \
             codes des États-Unis acceptent une plaque de plâtre de 12,7 mm (½ po), et le panneau \
             de bois seulement à partir de 18,3 mm (23/32 po). Ce parement est plus mince : \
             demandez avant de commander.",
        ),
        Caution::HotWork => (
            "Aucun travail à chaud après la mousse",
            "Soudez, coupez et meulez avant la mousse, jamais après, dedans comme dehors. L’acier \
             mène la chaleur droit dans la mousse.",
        ),
        Caution::Structure => (
            "Ouvertures et neige",
            "Les parois ondulées contreventent le conteneur. Grandes ouvertures ou rapprochées, \
             longerons coupés, empilage, terre et neige sur le toit demandent un ingénieur.",
        ),
        Caution::OldFloorAndPaint => (
            "Vieux plancher et peinture",
            "Le plancher peut être traité contre les insectes et imbibé d’anciennes cargaisons; la \
             peinture peut contenir plomb ou chromate. Lisez la plaque, faites analyser, scellez \
             ou remplacez.",
        ),
        Caution::SealedHeaters => (
            "Chauffage étanche seulement",
            "Un conteneur étanche n’a pas d’air à perdre. Chauffage électrique ou à combustion \
             étanche, avertisseurs de fumée et de monoxyde de carbone, évacuations loin des \
             prises d’air.",
        ),
        Caution::Electrical => (
            "Électricité dans une pièce d’acier",
            "Reliez la coque à la terre, protégez par disjoncteur différentiel, tenez les câbles \
             loin des arêtes, et confiez le travail à un électricien qualifié.",
        ),
        Caution::ThinFoamForVapour => (
            "Mousse mince et humidité",
            "Sous 50 mm (2 po), on ne compte habituellement pas sur la mousse seule pour retenir \
             la vapeur d’eau. Ici, elle est plus mince par endroits.",
        ),
        Caution::BareCastings => (
            "Pièces de coin nues",
            "Les pièces de coin sont aussi froides que dehors. Nues dans la pièce, elles amassent \
             du givre par grand froid et le rendent en eau au premier redoux.",
        ),
        Caution::BareCastingsBehindLining => (
            "Pièces de coin nues derrière le parement",
            "Ici les pièces de coin sont cachées, pas habillées : le givre s’y forme sans qu’on le \
             voie et fond dans le parement. Moussez-les avant de le poser.",
        ),
        Caution::SuctionAndFlues => (
            "Le ventilateur tire sur la pièce",
            "Une pièce fermée passe sous la pression du dehors, et un conduit à tirage naturel \
             refoule alors ses fumées. Chauffage étanche seulement, et des volets qui s’ouvrent \
             avant le ventilateur.",
        ),
        Caution::UnventedFlame => (
            "Une flamme sans conduit",
            "Un kilogramme de propane donne à la pièce 1,6 kg d’eau, un de kérosène 1,2 kg, et tous \
             deux leurs fumées. Dans un conteneur étanche, cela tue : le monoxyde de carbone n’a \
             pas d’odeur. Chauffez autrement.",
        ),
        Caution::SleepersWayOut => (
            "Dormir dans un conteneur",
            "Il faut une deuxième issue qui s’ouvre de l’intérieur sans clé, des avertisseurs de \
             fumée et de monoxyde de carbone, et des barres de portes qui ne peuvent enfermer \
             personne.",
        ),
        Caution::WetUse => (
            "Un usage humide",
            "Un usage qui garde la pièce humide l’hiver demande une conception d’ingénieur : \
             renseignez-vous sur les drains, les métaux qui ne rouillent pas et les règles pour \
             les animaux avant de construire.",
        ),
        Caution::FrameTouchesSteel => (
            "Ossature contre l’acier",
            "Des montants ou solives qui touchent le conteneur mènent la chaleur dehors et \
             deviennent assez froids pour suer. Un jeu de 25 mm (1 po), moussé, en guérit \
             l’essentiel.",
        ),
        Caution::BareOpeningFrames => (
            "Cadres d’ouverture nus",
            "Le cadre soudé fait partie de la tôle : sans mousse entre lui et la pièce, il givre \
             avant tout le reste. Mousser sa face et l’embrasure, 25 mm (1 po).",
        ),
        Caution::BelowRoomMinimum(_) => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_languages_fill_the_same_places() {
        let phrases = |cautions: &Cautions| {
            [cautions.below_minimum, cautions.below_minimum_heading, cautions.see_below]
                .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
