//! How what holds in a year, and what to expect, comes about, in words.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases. A rule says a formula in words, a step puts the numbers into it.
pub struct YearRoomWorkings {
    /// Heater: the rule.
    pub heater: &'static str,
    /// {0} H, {1} difference, {2} fan, {3} reheat, {4} drying, {5} load.
    pub needed: Phrase,
    /// {0} limit, {1} share, {2} backup, {3} together.
    pub given: Phrase,
    /// {0} given, {1} needed, {2} left.
    pub to_spare: Phrase,
    /// {0} source of the heater’s figures.
    pub heater_source: Phrase,
    /// Supply: the rule.
    pub supply: &'static str,
    /// {0} volts, {1} amperes, {2} share, {3} largest.
    pub carried: Phrase,
    /// {0} limit, {1} share, {2} performance, {3} outdoors, {4} drawn.
    pub drawn: Phrase,
    /// {0} heater, {1} backup, {2} fan, {3} equipment always, {4} in use, {5} together.
    pub asked: Phrase,
    /// Its source.
    pub supply_source: &'static str,
    /// Hours the heater cannot hold: the rule.
    pub unmet: &'static str,
    /// {0} set-point, {1} given, {2} H, {3} outdoors.
    pub down_to: Phrase,
    /// {0} short, {1} unmet, {2} bridged.
    pub bridged: Phrase,
    /// {0} unmet, {1} short, {2} more.
    pub lagging: Phrase,
    /// Its source.
    pub unmet_source: &'static str,
    /// Power cut: the rule.
    pub power_cut: &'static str,
    /// Warm-up: the rule.
    pub warm_up: &'static str,
    /// {0} capacity, {1} loss, {2} hours.
    pub constant: Phrase,
    /// {0} outdoors, {1} heat, {2} H, {3} end.
    pub tends: Phrase,
    /// {0} what, {1} τ, {2} one, {3} end, {4} one, {5} asked, {6} hours.
    pub until: Phrase,
    /// {0} what, {1} start.
    pub at_once: Phrase,
    /// {0} what, {1} end.
    pub not_reached: Phrase,
    /// {0} temperature.
    pub to: Phrase,
    /// {0} temperature.
    pub air_to: Phrase,
    /// {0} temperature.
    pub walls_to: Phrase,
    /// Its source.
    pub course_source: &'static str,
    /// Frost and drip: the rule.
    pub damp: &'static str,
    /// {0} month, {1} outdoors, {2} g/kg outdoors, {3} given off, {4} air that leaks in, {5} g/kg in the room.
    pub in_mean: Phrase,
    /// Without leaks.
    pub no_leaks: &'static str,
    /// {0} surface, {1} g/kg.
    pub spot_holds: Phrase,
    /// {0} month, {1} frost, {2} drip, {3} hours.
    pub landed_hours: Phrase,
    /// Its source.
    pub damp_source: &'static str,
    /// Water onto cold places: the rule.
    pub water: &'static str,
    /// {0} list of months, {1} together.
    pub water_months: Phrase,
    /// {0} water, {1} frost, {2} dried back, {3} ran off, {4} left.
    pub water_left: Phrase,
    /// Its source.
    pub water_source: &'static str,
    /// Summer: the rule.
    pub summer: &'static str,
    /// {0} outdoors, {1} gains, {2} H, {3} room.
    pub stands_at: Phrase,
    /// {0} outdoors, {1} gains, {2} H, {3} fan, {4} room.
    pub blown_at: Phrase,
    /// {0} mean, {1} warmest.
    pub the_day: Phrase,
    /// {0} sun, {1} light, {2} paint, {3} sun with light paint.
    pub lighter: Phrase,
    /// {0} sun, {1} shade, {2} now, {3} sun in shade.
    pub shaded: Phrase,
    /// {0} less, {1} H, {2} cooler.
    pub cooler: Phrase,
    /// Its source.
    pub summer_source: &'static str,
    /// Hours that are too warm: the rule.
    pub too_warm: &'static str,
    /// {0} list, {1} together.
    pub warm_months: Phrase,
    /// {0} days, {1} limit.
    pub warm_days: Phrase,
    /// {0} gains, {1} heat capacity of air, {2} difference, {3} flow.
    pub purge: Phrase,
    /// Its source.
    pub too_warm_source: &'static str,
}

const ENGLISH: YearRoomWorkings = YearRoomWorkings {
    heater: "Needed = H of the table of losses × (room − outdoors), the air that the fan adds, warming up \
           again and drying, without any gains. Given = the heater’s limit × what it can at that \
           temperature, and the backup.",
    needed: Phrase("{0} × {1} + fan {2} + warming up {3} + drying {4} = {5} needed"),
    given: Phrase("{0} × {1} + {2} backup = {3} given"),
    to_spare: Phrase("{0} − {1} = {2} to spare"),
    heater_source: Phrase(
        "load: EN 12831-1:2017, the heat of drying added; what the heater can: {0}",
    ),
    supply: "For hours on end a breaker carries four fifths of its rating. Asked = heaters at full \
           load + fan + equipment: a thermostat switches a heater on whole.",
    carried: Phrase("{0} × {1} × {2} = {3} carried"),
    drawn: Phrase("Heater at {3}: {0} × {1} ÷ {2} = {4} drawn"),
    asked: Phrase(
        "heater {0} + backup {1} + fan {2} + equipment always on {3} + while used {4} = {5} asked",
    ),
    supply_source: "National Electrical Code 2020, 210.20(A), and Canadian Electrical Code 8-104 (from \
           memory); an electrician decides",
    unmet: "An hour counts when the heater at full load leaves its mean more than half a degree \
           under the set-point.",
    down_to: Phrase(
        "Standing still and without gains it holds the room down to: {0} − {1} ÷ {2} = {3} \
           outdoors",
    ),
    bridged: Phrase(
        "Hours in which H × (set-point − outdoors) is more than it gives, less those counted: {0} \
            h − {1} h = {2} h that gains and warm walls bridge",
    ),
    lagging: Phrase(
        "Hours counted, less those in which H × (set-point − outdoors) is more than it gives: {0} \
            h − {1} h = {2} h more, while cold walls are warmed up again",
    ),
    unmet_source: "ISO 13790:2008, annex C (from memory); half a degree: common practice, no source",
    power_cut: "The air falls at once by what the heater held it above the walls; then what it stands \
           above outdoors shrinks with the walls’ heat. τ = heat held ÷ heat lost; time = τ × \
           ln((start − outdoors) ÷ (end − outdoors)).",
    warm_up: "At full load all tends to where heat given and lost are even; what is missing shrinks \
           with the walls’ heat. τ = heat held ÷ heat lost; time = τ × ln((end − start) ÷ (end − \
           asked)). Air starts above the walls, for it follows the heater at once.",
    constant: Phrase("τ: {0} ÷ {1} = {2}"),
    tends: Phrase("The air tends to: {0} + {1} ÷ {2} = {3}"),
    until: Phrase("{0}: {1} × ln(({2} − {3}) ÷ ({4} − {5})) = {6}"),
    at_once: Phrase("{0}: at once, for it starts at {1}"),
    not_reached: Phrase("{0}: never, for it ends at {1}"),
    to: Phrase("To {0}"),
    air_to: Phrase("Air to {0}"),
    walls_to: Phrase("Walls to {0}"),
    course_source: "one capacity and its resistances after ISO 13790:2008, annex C (from memory), solved in \
           closed form; capacity by ISO 13786:2007 (from memory)",
    damp: "Each hour the coldest spot stands at outdoors + factor × (room − outdoors). Where the \
           room’s air holds more water than air that cold can, water lands: as frost below \
           freezing, else it drips, and so does frost that thaws. The lining takes up water and \
           gives it back, other cold places take their part, and the fan runs for those inside and to dry.",
    in_mean: Phrase(
        "{0} in its mean, {1} outdoors, fan, lining and cold places aside: {2} + {3} ÷ {4} = {5} in the room",
    ),
    no_leaks: "No air leaks in: only the fan carries water out",
    spot_holds: Phrase("Air at {0} can hold {1}"),
    landed_hours: Phrase("Hour by hour, {0} has {1} h of frost and {2} h of drip among its {3} h"),
    damp_source: "ISO 13788:2012 and ISO 10211:2017 for the spot, ASHRAE Fundamentals 2017 for air and \
           lining; sorption from memory",
    water: "Each hour, water onto a place = β × area × (vapour of the room − vapour that air as cold as the \
           place can hold), and it leaves the room’s air. Frost stays until it thaws; of water a film stays and \
           dries back, the rest runs off.",
    water_months: Phrase("Water and frost by months: {0} = {1}"),
    water_left: Phrase(
        "Over the year: water {0} + frost {1} − dried back {2} − ran off {3} = {4} more lies at its end than at \
            its start",
    ),
    water_source: "β by the Lewis relation, ASHRAE Fundamentals 2017; convection of a still corner: common \
           practice, no source; Lewis number from memory",
    summer: "The warmest hour of the year, walls that store heat between hours; light paint, shade \
           and a fan that is off are years of their own. By hand, the day of that hour in its \
           means:",
    stands_at: Phrase("Standing still, the fan off: {0} + {1} ÷ {2} = {3}"),
    blown_at: Phrase("The fan at full flow all day: {0} + {1} ÷ ({2} + {3}) = {4}"),
    the_day: Phrase("Hour by hour the day’s mean is {0}, its warmest hour {1}"),
    lighter: Phrase("Light paint, sun on the steel: {0} × {1} ÷ {2} = {3}"),
    shaded: Phrase("Shaded, and on the roof alike, sun through windows: {0} × {1} ÷ {2} = {3}"),
    cooler: Phrase("{0} less of gains ÷ {1} = {2} cooler in the mean"),
    summer_source: "ASHRAE Fundamentals 2017, chapters 18 and 26 (from memory); light paint, fly roof and \
           awning: common practice, no source",
    too_warm: "An hour counts when the room’s mean is above what was chosen as too warm.",
    warm_months: Phrase("By months: {0} = {1}"),
    warm_days: Phrase(
        "Days whose means, standing still and the fan off, would bring the room past {1}: {0}",
    ),
    purge: Phrase(
        "Outdoor air that carries off the warmest day’s gains while the room stays {2} over \
           outdoors: {0} ÷ ({1} × {2}) = {3}",
    ),
    too_warm_source: "counted hour by hour; purge by heat = density × heat capacity × flow × difference, air \
           at sea level; three degrees: common practice, no source",
};

const FRENCH: YearRoomWorkings = YearRoomWorkings {
    heater: "Nécessaire = H du tableau des pertes × (pièce − dehors), l’air que le ventilateur ajoute, la \
            relance et le séchage, sans apports. Donné = la limite du chauffage × ce qu’il peut à cette \
            température, et l’appoint.",
    needed: Phrase("{0} × {1} + ventilateur {2} + relance {3} + séchage {4} = {5} nécessaires"),
    given: Phrase("{0} × {1} + {2} d’appoint = {3} donnés"),
    to_spare: Phrase("{0} − {1} = {2} de marge"),
    heater_source: Phrase(
        "charge : EN 12831-1:2017, chaleur du séchage ajoutée; ce que peut le chauffage : {0}",
    ),
    supply: "Pendant des heures, un disjoncteur porte quatre cinquièmes de son calibre. Demandé = \
           chauffages à pleine charge + ventilateur + appareils : un thermostat allume un chauffage \
            en entier.",
    carried: Phrase("{0} × {1} × {2} = {3} portés"),
    drawn: Phrase("Chauffage à {3} : {0} × {1} ÷ {2} = {4} pris"),
    asked: Phrase(
        "chauffage {0} + appoint {1} + ventilateur {2} + appareils toujours allumés {3} + pendant \
            l’usage {4} = {5} demandés",
    ),
    supply_source: "National Electrical Code 2020, 210.20(A), et Code canadien de l’électricité 8-104 (de \
           mémoire); un électricien décide",
    unmet: "Une heure compte quand le chauffage à pleine charge laisse sa moyenne à plus d’un \
           demi-degré sous la consigne.",
    down_to: Phrase(
        "En régime fixe et sans apports, il tient la pièce jusqu’à : {0} − {1} ÷ {2} = {3} dehors",
    ),
    bridged: Phrase(
        "Heures où H × (consigne − dehors) dépasse ce qu’il donne, moins celles comptées : {0} h \
           − {1} h = {2} h que les apports et les parois chaudes comblent",
    ),
    lagging: Phrase(
        "Heures comptées, moins celles où H × (consigne − dehors) dépasse ce qu’il donne : {0} h \
           − {1} h = {2} h de plus, où des parois froides se réchauffent",
    ),
    unmet_source: "ISO 13790:2008, annexe C (de mémoire); demi-degré : usage du métier, sans source",
    power_cut: "L’air tombe aussitôt de ce que le chauffage le tenait au-dessus des parois; puis son \
           écart avec le dehors diminue avec la chaleur des parois. τ = chaleur gardée ÷ chaleur \
           perdue; temps = τ × ln((début − dehors) ÷ (fin − dehors)).",
    warm_up: "À pleine charge, tout tend vers l’équilibre entre chaleur donnée et perdue; l’écart \
           diminue avec la chaleur des parois. τ = chaleur gardée ÷ chaleur perdue; temps = τ × \
           ln((fin − début) ÷ (fin − voulu)). L’air part au-dessus des parois, car il suit aussitôt \
            le chauffage.",
    constant: Phrase("τ : {0} ÷ {1} = {2}"),
    tends: Phrase("L’air tend vers : {0} + {1} ÷ {2} = {3}"),
    until: Phrase("{0} : {1} × ln(({2} − {3}) ÷ ({4} − {5})) = {6}"),
    at_once: Phrase("{0} : aussitôt, car le départ est à {1}"),
    not_reached: Phrase("{0} : jamais, car l’arrivée est à {1}"),
    to: Phrase("À {0}"),
    air_to: Phrase("Air à {0}"),
    walls_to: Phrase("Parois à {0}"),
    course_source: "une capacité et ses résistances selon ISO 13790:2008, annexe C (de mémoire), résolues \
           exactement; capacité selon ISO 13786:2007 (de mémoire)",
    damp: "À chaque heure, le point le plus froid est à dehors + facteur × (pièce − dehors). Si \
           l’air de la pièce tient plus d’eau que l’air aussi froid ne peut, l’eau se pose : en \
           givre sous zéro, sinon elle dégoutte, comme le givre qui fond. Le revêtement prend de \
           l’eau et la rend, d’autres endroits froids en prennent leur part, et le ventilateur tourne pour les \
           occupants et pour assécher.",
    in_mean: Phrase(
        "{0} en moyenne, {1} dehors, sans ventilateur, revêtement ni endroits froids : {2} + {3} ÷ {4} = {5} dans \
           la pièce",
    ),
    no_leaks: "Aucun air ne fuit : seul le ventilateur sort l’eau",
    spot_holds: Phrase("L’air à {0} peut tenir {1}"),
    landed_hours: Phrase("Heure par heure, {0} a {1} h de givre et {2} h de gouttes sur {3} h"),
    damp_source: "ISO 13788:2012 et ISO 10211:2017 pour le point, ASHRAE Fundamentals 2017 pour l’air et \
           le revêtement; sorption de mémoire",
    water: "À chaque heure, eau à un endroit = β × aire × (vapeur de la pièce − vapeur que l’air aussi froid \
           que l’endroit peut tenir), et elle quitte l’air de la pièce. Le givre reste jusqu’au redoux; de l’eau, \
           un film reste et sèche, le reste coule.",
    water_months: Phrase("Eau et givre par mois : {0} = {1}"),
    water_left: Phrase(
        "Sur l’année : eau {0} + givre {1} − séché {2} − coulé {3} = {4} de plus à la fin qu’au début",
    ),
    water_source: "β par la relation de Lewis, ASHRAE Fundamentals 2017; convection d’un coin calme : usage \
            du métier, sans source; nombre de Lewis de mémoire",
    summer: "L’heure la plus chaude de l’année, les parois gardant de la chaleur d’une heure à \
           l’autre; peinture claire, ombre et ventilateur arrêté sont d’autres années. À la main, \
           le jour de cette heure en moyenne :",
    stands_at: Phrase("En régime fixe, sans ventilateur : {0} + {1} ÷ {2} = {3}"),
    blown_at: Phrase("Ventilateur à plein débit tout le jour : {0} + {1} ÷ ({2} + {3}) = {4}"),
    the_day: Phrase("Heure par heure, la moyenne du jour est {0}, l’heure la plus chaude {1}"),
    lighter: Phrase("Peinture claire, soleil sur l’acier : {0} × {1} ÷ {2} = {3}"),
    shaded: Phrase(
        "À l’ombre, et sur le toit de même, soleil par les fenêtres : {0} × {1} ÷ {2} = {3}",
    ),
    cooler: Phrase("{0} d’apports en moins ÷ {1} = {2} de moins en moyenne"),
    summer_source: "ASHRAE Fundamentals 2017, chapitres 18 et 26 (de mémoire); peinture claire, double toit \
           et auvent : usage du métier, sans source",
    too_warm: "Une heure compte quand la moyenne de la pièce dépasse ce qui est choisi comme trop \
           chaud.",
    warm_months: Phrase("Par mois : {0} = {1}"),
    warm_days: Phrase(
        "Jours dont les moyennes, en régime fixe et sans ventilateur, mèneraient la pièce \
           au-dessus de {1} : {0}",
    ),
    purge: Phrase(
        "Air du dehors qui emporte les apports du jour le plus chaud, la pièce restant à {2} \
           au-dessus du dehors : {0} ÷ ({1} × {2}) = {3}",
    ),
    too_warm_source: "compté heure par heure; balayage par chaleur = masse volumique × chaleur massique × \
           débit × écart, air au niveau de la mer; trois degrés : usage du métier, sans source",
};

impl Language {
    /// The phrases.
    pub const fn year_room_workings(self) -> &'static YearRoomWorkings {
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
        let phrases = |words: &YearRoomWorkings| {
            [
                words.needed,
                words.given,
                words.to_spare,
                words.heater_source,
                words.carried,
                words.drawn,
                words.asked,
                words.down_to,
                words.bridged,
                words.lagging,
                words.constant,
                words.tends,
                words.until,
                words.at_once,
                words.not_reached,
                words.to,
                words.air_to,
                words.walls_to,
                words.in_mean,
                words.spot_holds,
                words.landed_hours,
                words.water_months,
                words.water_left,
                words.stands_at,
                words.blown_at,
                words.the_day,
                words.lighter,
                words.shaded,
                words.cooler,
                words.warm_months,
                words.warm_days,
                words.purge,
            ]
        };
        for (english, french) in phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH)) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
