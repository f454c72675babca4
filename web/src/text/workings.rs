//! How figures of damp and air come about, in words.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases. A rule says a formula in words, a step puts the numbers into it.
pub struct Workings {
    /// Where it comes from: {0}.
    pub source: Phrase,
    /// Given off: the rule.
    pub gives: &'static str,
    /// Given off by one source: {0} how many, {1} of what, {2} usual, {3} least, {4} most, {5} source.
    pub gives_step: Phrase,
    /// All of them: {0} busy, {1} in the mean of a day of use, {2} of a week.
    pub gives_together: Phrase,
    /// The room left alone: the rule.
    pub alone: &'static str,
    /// {0} given off, {1} taken by cold places, {2} left.
    pub onto_places: Phrase,
    /// {0} outdoors, {1} given off, {2} of air, {3} comes to.
    pub alone_step: Phrase,
    /// {0} vapour, {1} at saturation, {2} temperature, {3} humidity.
    pub of_saturation: Phrase,
    /// {0} temperature, {1} at saturation, {2} condenses.
    pub soaked: Phrase,
    /// What holds the humidity: the rule.
    pub holding: &'static str,
    /// {0} given off, {1} in the room, {2} outdoors, {3} dry air, {4} as room air.
    pub needs: Phrase,
    /// {0} outdoors, {1} to be held.
    pub cannot: Phrase,
    /// {0} leaks, {1} the fan moves, {2} it adds.
    pub adds: Phrase,
    /// {0} a fan with an exchanger adds.
    pub adds_all: Phrase,
    /// {0} needed, {1} leaks, {2} the fan adds, {3} of its time.
    pub duty: Phrase,
    /// {0} for those inside, {1} the fan moves, {2} of its time.
    pub duty_for_them: Phrase,
    /// The fan runs all the time.
    pub without_pause: &'static str,
    /// {0} of its speed, {1} pressure, {2} power.
    pub part_speed: Phrase,
    /// The humidity a spot stands: the rule.
    pub limit: &'static str,
    /// {0} outdoors, {1} factor, {2} difference, {3} surface.
    pub surface: Phrase,
    /// {0} vapour at the surface, {1} in the room, {2} drips, {3} mould.
    pub limits: Phrase,
    /// {0} month, {1} vapour in it, {2} surface at 80 %, {3} outdoors, {4} room, {5} factor asked, {6} factor here.
    pub critical: Phrase,
    /// {0} the room's humidity.
    pub held_at: Phrase,
    /// In mild weather: the rule.
    pub mild: &'static str,
    /// {0} held, {1} given off, {2} air that can pass, {3} left, {4} outdoor humidity, {5} temperature.
    pub may_bring: Phrase,
    /// {0} given off, {1} leaks, {2} outdoors, {3} held, {4} to be taken out.
    pub dehumidify: Phrase,
    /// The spell's balance: the rule.
    pub balance: &'static str,
    /// {0} dry air, {1} in the room, {2} outdoors, {3} carried out.
    pub carried: Phrase,
    /// {0} given off, {1} carried out, {2} left.
    pub lands_in_all: Phrase,
    /// Frost: the rule.
    pub spell: &'static str,
    /// {0} convection, {1} Lewis number, {2} β.
    pub transfer: Phrase,
    /// {0} place, {1} area, {2} β, {3} in the room, {4} at the surface, {5} rate.
    pub lands: Phrase,
    /// {0} rate, {1} days, {2} parts of the greater unit, {3} ice.
    pub days: Phrase,
    /// {0} dew point, {1} coldest spot.
    pub dew_point: Phrase,
    /// Sources of the above.
    pub spell_source: &'static str,
    /// Air for people at work: the rule.
    pub office: &'static str,
    /// Its source.
    pub office_source: &'static str,
    /// Its source for sleepers.
    pub dwelling_source: &'static str,
    /// {0} people, {1} each, {2} floor, {3} by area, {4} in all.
    pub people_step: Phrase,
    /// Air for animals: the rule.
    pub animals: &'static str,
    /// {0} changes an hour, {1} room, {2} in all.
    pub animals_step: Phrase,
    /// Its source.
    pub animals_source: &'static str,
    /// Warming: the rule.
    pub warming: &'static str,
    /// Its source.
    pub warming_source: &'static str,
    /// {0} the fan adds, {1} of its time, {2} in the mean.
    pub in_its_time: Phrase,
    /// {0} air, {1} heat capacity, {2} difference, {3} heat.
    pub warm_step: Phrase,
    /// {0} heat, {1} effectiveness, {2} left.
    pub exchanger: Phrase,
    /// {0} room, {1} frost limit, {2} outdoors, {3} at most.
    pub frost_limit: Phrase,
    /// Hot day: the rule.
    pub hot_day: &'static str,
    /// {0} people, {1} each, {2} animals, {3} equipment in use, {4} always on, {5} together.
    pub gains_step: Phrase,
    /// {0} heat, {1} heat capacity, {2} difference, {3} dry air, {4} as room air.
    pub hot_step: Phrase,
    /// {0} outdoors, {1} room.
    pub hot_cannot: Phrase,
    /// Speed on a damper: the rule.
    pub speed: &'static str,
    /// {0} over {1} is {2}.
    pub quotient: Phrase,
    /// {0} times {1} is {2}.
    pub product: Phrase,
    /// The intake's speed limit.
    pub rain_source: &'static str,
    /// Open dampers: the rule.
    pub open_dampers: &'static str,
    /// {0} height, {1} outdoors, {2} inside, {3} pressure, {4} flow.
    pub stack: Phrase,
    /// Fan and openings: the rule.
    pub meets: &'static str,
    /// {0} shut-off, {1} flow, {2} free air, {3} density, {4} rated density, {5} pressure.
    pub fan_label: Phrase,
    /// {0} flow, {1} pressure.
    pub fan_points: Phrase,
    /// {0} intake or exhaust, {1} its parts, {2} together, {3} dynamic pressure, {4} speed, {5} taken.
    pub opening: Phrase,
    /// Name of an intake.
    pub intake: &'static str,
    /// Name of an exhaust.
    pub exhaust: &'static str,
    /// {0} and {1} is {2}.
    pub sum: Phrase,
    /// Its sources.
    pub meets_source: &'static str,
    /// Suction: the rule.
    pub suction: &'static str,
    /// Pull on the door: the rule.
    pub pull: &'static str,
    /// A formula that needs no source.
    pub by_definition: &'static str,
    /// Inside the walls: the rule.
    pub inside: &'static str,
    /// {0} still air, {1} foam.
    pub still_air: Phrase,
    /// {0} month, {1} in the room, {2} at the steel, {3} still air, {4} gained.
    pub month: Phrase,
    /// {0} list of months.
    pub month_ends: Phrase,
    /// {0} permeance, {1} foam.
    pub control: Phrase,
}

const ENGLISH: Workings = Workings {
    source: Phrase("Source: {0}"),
    gives: "What each gives off, times how many. In the busy hours all of it comes at once.",
    gives_step: Phrase("{0} × {1}: {2}, known from {3} to {4} ({5})"),
    gives_together: Phrase("Together {0}; in the mean of a day of use {1}, of a week {2}"),
    alone: "Water in the room’s air = water outdoors + moisture given off ÷ dry air that leaks \
            in, the busy hours lasting. Places colder than the room’s dew point take their part first.",
    onto_places: Phrase("{0} − {1} onto cold places = {2}"),
    alone_step: Phrase("{0} + {1} ÷ {2} = {3}"),
    of_saturation: Phrase("Its vapour presses with {0}, of the {1} that air at {2} can hold: {3}"),
    soaked: Phrase("Air at {0} holds no more than {1}: {2} condenses somewhere"),
    holding: "Dry air needed = moisture given off ÷ (water to be held − water outdoors). Leaks \
              count.",
    needs: Phrase("{0} ÷ ({1} − {2}) = {3}, {4} as room air"),
    cannot: Phrase("Outdoor air has {0}, no less than the {1} to be held"),
    adds: Phrase(
        "Drawing air out, it lessens the leaks: √({0} × {0} + {1} × {1}) − {0} = {2} that it adds",
    ),
    adds_all: Phrase(
        "With an exchanger it leaves the leaks as they are and adds all it moves, {0}",
    ),
    duty: Phrase("({0} − {1} that leaks in) ÷ {2} that the fan adds = {3}"),
    duty_for_them: Phrase("For those inside: {0} ÷ {1} that the fan moves = {2}"),
    without_pause: "It runs without a pause",
    part_speed: Phrase(
        "Run at {0} of its speed without a pause, a fan makes {1} of its pressure and draws {2} \
         of its power (fan laws)",
    ),
    limit: "Surface = outdoors + factor × (room − outdoors); the factor is solved from this \
            design. It drips once the room’s vapour is more than air at the surface can hold; \
            mould is asked in the mean of the month that asks most, by 80 % at the surface.",
    surface: Phrase("{0} + {1} × {2} = {3} at the surface"),
    limits: Phrase("{0} ÷ {1} = {2} before it drips, {3} where 80 % stands at it"),
    critical: Phrase(
        "{0}, vapour of {1} is 80 % at {2}: ({2} − {3}) ÷ ({4} − {3}) = {5} asked, {6} here",
    ),
    held_at: Phrase("The room comes to {0}"),
    mild: "As it gets warmer outdoor air brings more water itself. It holds the room until what \
           it brings and what is given off come to what is to be held.",
    may_bring: Phrase("{0} − {1} ÷ {2} = {3}: at {4} humidity, air of {5}"),
    dehumidify: Phrase(
        "Dampers shut, in the warmest month: {0} + {1} × ({2} − {3}) = {4} for a dehumidifier",
    ),
    balance: "What is given off goes out with the air or lands on what is colder than the room’s \
              dew point. The room settles where the two add up.",
    carried: Phrase("{0} × ({1} − {2}) = {3} with the air"),
    lands_in_all: Phrase("{0} − {1} = {2} lands"),
    spell: "Frost = area × β × (vapour in the room’s air − vapour that air at the surface can \
            hold). β = convection ÷ (density × heat capacity × Lewis number^⅔).",
    transfer: Phrase("β = {0} ÷ (1206 J/m³K × {1}^⅔) = {2}"),
    lands: Phrase("{0}: {1} × {2} × ({3} − {4}) = {5}"),
    days: Phrase("{0} × 24 × {1} days ÷ {2} = {3}"),
    dew_point: Phrase("The room’s dew point is {0}; the coldest spot is at {1}"),
    spell_source: "Lewis relation, ASHRAE Fundamentals 2017; convection of a still corner: common \
                   practice, no source; Lewis number from memory",
    office: "So much for each person and so much for the floor.",
    office_source: "ASHRAE 62.1-2016, table 6.2.2.1, offices (from memory)",
    dwelling_source: "ASHRAE 62.2-2013, equation 4.1 (from memory)",
    people_step: Phrase("{0} × {1} + {2} × {3} = {4}"),
    animals: "Air changes of the whole room.",
    animals_step: Phrase("{0} an hour × {1} = {2}"),
    animals_source: "as chosen; Guide for the Care and Use of Laboratory Animals, 10 to 15 (as quoted)",
    warming: "Heat = dry air that the fan adds beside the leaks × heat capacity × (room − outdoors). The \
              leaks’ own heat stands under Where the heat goes.",
    warming_source: "EN 12831-1:2017; leaks beside an exhaust fan: ASHRAE Fundamentals 2017, chapter 16 (from \
                     memory)",
    in_its_time: Phrase("{0} × {1} of its time = {2}"),
    warm_step: Phrase("{0} × {1} × {2} = {3}"),
    exchanger: Phrase("{0} × (1 − {1} taken back) = {2}"),
    frost_limit: Phrase(
        "So that leaving air is not cooled past {1}: ({0} − {1}) ÷ ({0} − {2}) = {3} at most",
    ),
    hot_day: "Dry air needed = heat given off ÷ (heat capacity × (room − outdoors)).",
    gains_step: Phrase("people {0} × {1} + animals {2} + equipment {3} + always on {4} = {5}"),
    hot_step: Phrase("{0} ÷ ({1} × {2}) = {3}, {4} as room air"),
    hot_cannot: Phrase("Outdoors is {0} when the room may be {1}"),
    speed: "Speed = flow through one damper ÷ its area.",
    quotient: Phrase("{0} ÷ {1} = {2}"),
    product: Phrase("{0} × {1} = {2}"),
    rain_source: "an outdoor-air intake design note (as quoted)",
    open_dampers: "Warm air is lighter: the pull is height × g × (density outdoors − density \
                   inside), and the flow is what the open dampers let through at that.",
    stack: Phrase("{0} high, {1} outdoors, {2} inside: {3}, which moves {4}"),
    meets: "They meet where the fan makes just what the openings take. Each opening takes ζ × \
            ½·density·speed².",
    fan_label: Phrase("Fan: {0} × (1 − ({1} ÷ {2})²) × {3} ÷ {4} = {5}"),
    fan_points: Phrase("Fan, between its maker’s points, in the room’s air: {1} at {0}"),
    opening: Phrase("{0}: ζ {1} = {2}; × {3} at {4} = {5}"),
    intake: "Intake",
    exhaust: "Exhaust",
    sum: Phrase("{0} + {1} = {2}"),
    meets_source: "fan laws, ISO 5801:2017; ζ of a screen after Idelchik, of a damper by makers’ \
                   charts (common practice, no source), of the others from memory; a label’s two \
                   figures: common practice, no source",
    suction: "The room is drawn down by what its intakes take.",
    pull: "Pull = suction × leaf of the door. At a handle across from the hinges half of it opens \
           the door.",
    by_definition: "by definition",
    inside: "Vapour that comes to the cold steel in a month = (vapour in the room − what air at \
             the steel can hold) × δ₀ ÷ still air that resists as much × time; a warm month takes \
             it back. The room stands as its use makes it in the mean of the month, what it has over \
             outdoors counted 1.10-fold for a bad year, and is aired in months that need no heat; the steel stands as warm as outdoors and the month’s sun \
             make it.",
    still_air: Phrase("Lining, gap and {1} of foam resist as {0} of still air"),
    month: Phrase("{0}: ({1} − {2}) × 2·10⁻¹⁰ kg/(m·s·Pa) ÷ {3} × the month = {4}"),
    month_ends: Phrase("At the end of each month: {0}"),
    control: Phrase("Foam counts as vapour control where it passes no more than {0}: from {1}"),
};

const FRENCH: Workings = Workings {
    source: Phrase("Source : {0}"),
    gives: "Ce que chacun dégage, fois le nombre. Aux heures chargées, tout vient à la fois.",
    gives_step: Phrase("{0} × {1} : {2}, entre {3} et {4} ({5})"),
    gives_together: Phrase("Ensemble {0}; en moyenne sur un jour d’usage {1}, sur une semaine {2}"),
    alone: "Eau dans l’air de la pièce = eau dehors + humidité dégagée ÷ air sec qui fuit, les heures \
            chargées durant. Les endroits plus froids que le point de rosée prennent d’abord leur part.",
    onto_places: Phrase("{0} − {1} aux endroits froids = {2}"),
    alone_step: Phrase("{0} + {1} ÷ {2} = {3}"),
    of_saturation: Phrase("Sa vapeur presse de {0}, sur les {1} que l’air à {2} peut tenir : {3}"),
    soaked: Phrase("L’air à {0} ne tient que {1} : {2} se condense quelque part"),
    holding: "Air sec qu’il faut = humidité dégagée ÷ (eau à tenir − eau dehors). Les fuites \
              comptent.",
    needs: Phrase("{0} ÷ ({1} − {2}) = {3}, soit {4} d’air de la pièce"),
    cannot: Phrase("L’air du dehors a {0}, pas moins que les {1} à tenir"),
    adds: Phrase(
        "En tirant l’air, il réduit les fuites : √({0} × {0} + {1} × {1}) − {0} = {2} qu’il ajoute",
    ),
    adds_all: Phrase(
        "Avec un échangeur, il laisse les fuites telles quelles et ajoute tout ce qu’il déplace, {0}",
    ),
    duty: Phrase("({0} − {1} de fuites) ÷ {2} que le ventilateur ajoute = {3}"),
    duty_for_them: Phrase("Pour les occupants : {0} ÷ {1} que le ventilateur déplace = {2}"),
    without_pause: "Il tourne sans arrêt",
    part_speed: Phrase(
        "À {0} de sa vitesse sans arrêt, un ventilateur fait {1} de sa pression et prend {2} de \
         sa puissance (lois des ventilateurs)",
    ),
    limit: "Surface = dehors + facteur × (pièce − dehors); le facteur est calculé pour ce projet. \
            Ça dégoutte quand la vapeur de la pièce dépasse ce que l’air peut tenir à la surface; \
            la moisissure est jugée sur la moyenne du mois le plus exigeant, à 80 % à la surface.",
    surface: Phrase("{0} + {1} × {2} = {3} à la surface"),
    limits: Phrase("{0} ÷ {1} = {2} avant de dégoutter, {3} où 80 % s’y trouve"),
    critical: Phrase(
        "{0}, une vapeur de {1} est 80 % à {2} : ({2} − {3}) ÷ ({4} − {3}) = {5} demandé, {6} ici",
    ),
    held_at: Phrase("La pièce arrive à {0}"),
    mild: "Plus il fait doux, plus l’air du dehors apporte d’eau. Il tient la pièce tant que ce \
           qu’il apporte et ce qui est dégagé n’en dépassent pas l’eau à tenir.",
    may_bring: Phrase("{0} − {1} ÷ {2} = {3} : à {4} d’humidité, de l’air à {5}"),
    dehumidify: Phrase(
        "Volets fermés, le mois le plus chaud : {0} + {1} × ({2} − {3}) = {4} pour un \
         déshumidificateur",
    ),
    balance: "Ce qui est dégagé sort avec l’air ou se pose sur ce qui est plus froid que le point \
              de rosée. La pièce se stabilise où les deux s’additionnent.",
    carried: Phrase("{0} × ({1} − {2}) = {3} avec l’air"),
    lands_in_all: Phrase("{0} − {1} = {2} se pose"),
    spell: "Givre = aire × β × (vapeur dans l’air − vapeur que l’air peut tenir à la surface). β \
            = convection ÷ (masse volumique × chaleur massique × nombre de Lewis^⅔).",
    transfer: Phrase("β = {0} ÷ (1206 J/m³K × {1}^⅔) = {2}"),
    lands: Phrase("{0} : {1} × {2} × ({3} − {4}) = {5}"),
    days: Phrase("{0} × 24 × {1} jours ÷ {2} = {3}"),
    dew_point: Phrase("Le point de rosée de la pièce est {0}; le point le plus froid est à {1}"),
    spell_source: "relation de Lewis, ASHRAE Fundamentals 2017; convection d’un coin calme : \
                   usage du métier, sans source; nombre de Lewis de mémoire",
    office: "Tant par personne et tant pour le plancher.",
    office_source: "ASHRAE 62.1-2016, tableau 6.2.2.1, bureaux (de mémoire)",
    dwelling_source: "ASHRAE 62.2-2013, équation 4.1 (de mémoire)",
    people_step: Phrase("{0} × {1} + {2} × {3} = {4}"),
    animals: "Renouvellements d’air de toute la pièce.",
    animals_step: Phrase("{0} à l’heure × {1} = {2}"),
    animals_source: "tel que choisi; Guide for the Care and Use of Laboratory Animals, 10 à 15 (tel que cité)",
    warming: "Chaleur = air sec que le ventilateur ajoute aux fuites × chaleur massique × (pièce − dehors). La \
              chaleur des fuites est sous Où va la chaleur.",
    warming_source: "EN 12831-1:2017; fuites avec un ventilateur d’extraction : ASHRAE Fundamentals 2017, \
                     chapitre 16 (de mémoire)",
    in_its_time: Phrase("{0} × {1} du temps = {2}"),
    warm_step: Phrase("{0} × {1} × {2} = {3}"),
    exchanger: Phrase("{0} × (1 − {1} récupéré) = {2}"),
    frost_limit: Phrase(
        "Pour ne pas refroidir l’air sortant sous {1} : ({0} − {1}) ÷ ({0} − {2}) = {3} au plus",
    ),
    hot_day: "Air sec qu’il faut = chaleur dégagée ÷ (chaleur massique × (pièce − dehors)).",
    gains_step: Phrase(
        "personnes {0} × {1} + animaux {2} + appareils {3} + toujours allumés {4} = {5}",
    ),
    hot_step: Phrase("{0} ÷ ({1} × {2}) = {3}, soit {4} d’air de la pièce"),
    hot_cannot: Phrase("Il fait {0} dehors quand la pièce peut être à {1}"),
    speed: "Vitesse = débit d’un volet ÷ son aire.",
    quotient: Phrase("{0} ÷ {1} = {2}"),
    product: Phrase("{0} × {1} = {2}"),
    rain_source: "une note de conception de prises d’air (telle que citée)",
    open_dampers: "L’air chaud est plus léger : la force est hauteur × g × (masse volumique \
                   dehors − dedans), et le débit ce que les volets ouverts laissent passer.",
    stack: Phrase("{0} de haut, {1} dehors, {2} dedans : {3}, ce qui déplace {4}"),
    meets: "Ils se rencontrent où le ventilateur fait juste ce que les ouvertures prennent. \
            Chacune prend ζ × ½·masse volumique·vitesse².",
    fan_label: Phrase("Ventilateur : {0} × (1 − ({1} ÷ {2})²) × {3} ÷ {4} = {5}"),
    fan_points: Phrase(
        "Ventilateur, entre les points du fabricant, dans l’air de la pièce : {1} à {0}",
    ),
    opening: Phrase("{0} : ζ {1} = {2}; × {3} à {4} = {5}"),
    intake: "Prise d’air",
    exhaust: "Sortie",
    sum: Phrase("{0} + {1} = {2}"),
    meets_source: "lois des ventilateurs, ISO 5801:2017; ζ d’un grillage selon Idelchik, d’un \
                   volet selon les fabricants (usage du métier, sans source), des autres de \
                   mémoire; deux chiffres d’étiquette : usage du métier, sans source",
    suction: "La pièce est en dépression de ce que prennent ses prises d’air.",
    pull: "Force = dépression × vantail. À une poignée face aux charnières, la moitié ouvre la \
           porte.",
    by_definition: "par définition",
    inside: "Vapeur qui vient à l’acier en un mois = (vapeur de la pièce − ce que l’air tient \
             contre l’acier) × δ₀ ÷ air immobile qui résiste autant × durée; un mois chaud la \
             reprend. La pièce est comme son usage la fait en moyenne du mois, son excès sur le dehors compté \
             1,10 fois pour une mauvaise année, et aérée dans les mois sans chauffage; l’acier est aussi chaud que le font le dehors et le soleil du \
             mois.",
    still_air: Phrase("Revêtement, vide et {1} de mousse résistent comme {0} d’air immobile"),
    month: Phrase("{0} : ({1} − {2}) × 2·10⁻¹⁰ kg/(m·s·Pa) ÷ {3} × le mois = {4}"),
    month_ends: Phrase("À la fin de chaque mois : {0}"),
    control: Phrase(
        "La mousse compte comme pare-vapeur où elle laisse passer au plus {0} : dès {1}",
    ),
};

impl Language {
    /// Words of workings.
    pub const fn workings(self) -> &'static Workings {
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
        let phrases = |words: &Workings| {
            [
                words.source,
                words.gives_step,
                words.gives_together,
                words.onto_places,
                words.alone_step,
                words.of_saturation,
                words.soaked,
                words.needs,
                words.cannot,
                words.adds,
                words.adds_all,
                words.duty,
                words.duty_for_them,
                words.part_speed,
                words.surface,
                words.limits,
                words.critical,
                words.held_at,
                words.may_bring,
                words.dehumidify,
                words.carried,
                words.lands_in_all,
                words.transfer,
                words.lands,
                words.days,
                words.dew_point,
                words.people_step,
                words.animals_step,
                words.in_its_time,
                words.warm_step,
                words.exchanger,
                words.frost_limit,
                words.gains_step,
                words.hot_step,
                words.hot_cannot,
                words.quotient,
                words.product,
                words.stack,
                words.fan_label,
                words.fan_points,
                words.opening,
                words.sum,
                words.still_air,
                words.month,
                words.month_ends,
                words.control,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
