//! How energy, cost and carbon dioxide of a year come about, in words.

use super::Language::{English, French};
use super::{Language, Phrase};

/// The phrases. A rule says a formula in words, a step puts the numbers into it.
pub struct YearEnergyWorkings {
    /// Heat: the rule.
    pub heat: &'static str,
    /// What went out and came in: {0} walls, {1} openings, {2} leaks, {3} fan, {4} kept, {5} people, {6} equipment, {7} sun, {8} heat, {9} drying, {10} condensing.
    pub balance: Phrase,
    /// {0} H, {1} degree days, {2} parts of a kWh, {3} heat, {4} base.
    pub degree_days: Phrase,
    /// {0} envelope, {1} leaks, {2} H.
    pub loss_here: Phrase,
    /// {0} window area, {1} let in, {2} reaching them, {3} paint, {4} film.
    pub sun_rule: Phrase,
    /// {0} month, {1} H, {2} set-point, {3} outdoors, {4} hours, {5} parts of a kWh, {6} lost.
    pub month_lost: Phrase,
    /// {0} lost, {1} by the fan, {2} together.
    pub month_fan: Phrase,
    /// {0} people, {1} equipment, {2} sun in, {3} sun on steel, {4} sky, {5} drying, {6} gained.
    pub month_gained: Phrase,
    /// {0} gained, {1} lost, {2} γ.
    pub gains_over_losses: Phrase,
    /// {0} heat capacity, {1} H, {2} hours.
    pub time_constant: Phrase,
    /// {0} τ, {1} hours, {2} a.
    pub exponent: Phrase,
    /// {0} γ, {1} a, {2} share.
    pub utilisation: Phrase,
    /// {0} lost, {1} share, {2} gained, {3} heat.
    pub month_needed: Phrase,
    /// {0} list of months, {1} together.
    pub months_sum: Phrase,
    /// {0} by months, {1} of the hours’, {2} by hours.
    pub months_apart: Phrase,
    /// {0} hours.
    pub months_unmet: Phrase,
    /// Its source.
    pub heat_source: &'static str,
    /// What is bought: the rule.
    pub bought: &'static str,
    /// {0} heat, {1} performance, {2} drawn.
    pub input: Phrase,
    /// {0} at {1}, {2} at {3}, {4} drawn by the months’ means.
    pub pump: Phrase,
    /// {0} drawn, {1} a unit, {2} units.
    pub units: Phrase,
    /// {0} power, {1} hours, {2} drawn.
    pub own: Phrase,
    /// {0} heater, {1} backup, {2} own, {3} together.
    pub electricity: Phrase,
    /// Cost: the rule.
    pub cost: &'static str,
    /// {0} amount, {1} price, {2} cost.
    pub priced: Phrase,
    /// {0} electricity, {1} fuel, {2} together.
    pub cost_sum: Phrase,
    /// {0} a year, {1} a month.
    pub cost_month: Phrase,
    /// {0} month, {1} its heat, {2} cost.
    pub cost_dearest: Phrase,
    /// {0} what is bought.
    pub no_price: Phrase,
    /// {0} day.
    pub price_source: Phrase,
    /// The coldest day: the rule.
    pub coldest_day: &'static str,
    /// {0} day, {1} heat, {2} parts of a kWh, {3} power.
    pub day_heat: Phrase,
    /// {0} people, {1} equipment, {2} sun in, {3} sun on steel, {4} sky, {5} drying, {6} together.
    pub day_gains: Phrase,
    /// {0} H, {1} set-point, {2} outdoors, {3} gains, {4} power.
    pub day_steady: Phrase,
    /// {0} by hours, {1} steady.
    pub day_apart: Phrase,
    /// {0} day of the month, {1} month.
    pub date: Phrase,
    /// Source of hours.
    pub hours_source: &'static str,
    /// Carbon dioxide: the rule.
    pub carbon: &'static str,
    /// {0} energy, {1} a kWh, {2} mass.
    pub emitted: Phrase,
    /// {0} electricity.
    pub no_grid: Phrase,
    /// Of wood.
    pub wood_carbon: &'static str,
    /// The grid’s figure.
    pub grid_source: &'static str,
    /// What fuel gives off.
    pub fuel_source: &'static str,
}

const ENGLISH: YearEnergyWorkings = YearEnergyWorkings {
    heat: "Each hour the heater gives what brings the room from where it would stand by itself to \
           its set-point, as far as it can; 8,760 hours, walls that store heat between them. By \
           hand it can be checked in three ways:",
    balance: Phrase(
        "Out and in: walls, roof and floor {0} + windows and door {1} + leaks {2} + fan {3} + drying {9} + kept in the walls {4} − people {5} − equipment {6} − sun through windows {7} − condensing {10} = {8}",
    ),
    degree_days: Phrase("Degree days below {4}: {0} × {1} × 24 h ÷ {2} = {3}, gains not taken off"),
    loss_here: Phrase("H, the air as light as it is at this height: {0} + leaks {1} = {2}"),
    sun_rule: Phrase(
        "Sun of an hour, through windows: {0} × {1} × {2} × sun on their wall; on the steel: H \
           behind each face × {3} × sun on it ÷ {4}",
    ),
    month_lost: Phrase("{0}, by the monthly method: {1} × ({2} − {3}) × {4} h ÷ {5} = {6} lost"),
    month_fan: Phrase("{0} + fan {1} = {2}"),
    month_gained: Phrase(
        "people {0} + equipment {1} + sun through windows {2} + sun on the steel {3} − cold sky \
           {4} − wet things {5} = {6} gained",
    ),
    gains_over_losses: Phrase("γ, gained over lost: {0} ÷ {1} = {2}"),
    time_constant: Phrase("τ, heat held over heat lost: {0} ÷ {1} = {2}"),
    exponent: Phrase("a: 1 + {0} ÷ {1} = {2}"),
    utilisation: Phrase(
        "η, the share of gains that saves heat: (1 − {0}^{1}) ÷ (1 − {0}^({1} + 1)) = {2}",
    ),
    month_needed: Phrase("{0} − {1} × {2} = {3} of heat"),
    months_sum: Phrase("Each month so: {0} = {1}"),
    months_apart: Phrase("By months {0}, that is {1} of the {2} hour by hour"),
    months_unmet: Phrase(
        "The months reckon with a heater that always holds; this one falls short in {0} hours",
    ),
    heat_source: "ISO 13790:2008, hours by annex C, months by 7.2 and 12.2 (from memory); sun on steel by \
           ASHRAE Fundamentals 2017, chapter 18; base of degree days: common practice, no source",
    bought: "Bought = heat ÷ heat made of a kilowatt hour; fuel = that ÷ the heat of one unit, gross: \
            the water of its fumes counted as condensed.",
    input: Phrase("{0} of heat ÷ {1} = {2} drawn"),
    pump: Phrase(
        "A heat pump’s performance goes by the hour’s outdoor temperature: {0} at {1}, {2} at \
           {3}. By the months’ mean temperatures it would draw {4}",
    ),
    units: Phrase("{0} ÷ {1} = {2}"),
    own: Phrase("Its own fan and pump while it burns: {0} × {1} ÷ 1,000 = {2}"),
    electricity: Phrase("Electricity for heat: heater {0} + backup {1} + its own fan {2} = {3}"),
    cost: "Cost = what is bought × its price. Equipment and the room’s fan are not in it.",
    priced: Phrase("{0} × {1} = {2}"),
    cost_sum: Phrase("{0} + {1} = {2} a year"),
    cost_month: Phrase("A month in the mean: {0} ÷ 12 = {1}"),
    cost_dearest: Phrase("{0} takes the most, {1} of heat: {2}"),
    no_price: Phrase("Bought: {0}; no price is given for it yet"),
    price_source: Phrase("prices of {0}, as given under Prices"),
    coldest_day: "Of 365 days the one that takes the most heat; its heat over 24 hours.",
    day_heat: Phrase("{0}: {1} × {2} ÷ 24 h = {3}"),
    day_gains: Phrase(
        "Gains in its mean: people {0} + equipment {1} + sun through windows {2} + sun on the \
           steel {3} − cold sky {4} − wet things {5} = {6}",
    ),
    day_steady: Phrase("If that day’s means stood still: {0} × ({1} − {2}) − {3} = {4}"),
    day_apart: Phrase(
        "Hour by hour {0}, steady {1}: the rest is heat that walls and air held from the day \
           before, the fan, or a heater at its limit",
    ),
    date: Phrase("{1} {0}"),
    hours_source: "ISO 13790:2008, annex C (from memory)",
    carbon: "Carbon dioxide = electricity for heat × the grid’s figure + heat in the fuel × what \
           burning it gives off.",
    emitted: Phrase("{0} × {1} = {2}"),
    no_grid: Phrase("Electricity: {0}; the grid’s figure is not given yet"),
    wood_carbon: "A tree took what wood gives off from the air while it grew; here it is counted whole",
    grid_source: "the grid’s figure as given under Prices",
    fuel_source: "coefficients of US greenhouse-gas reporting (propane and wood from memory)",
};

const FRENCH: YearEnergyWorkings = YearEnergyWorkings {
    heat: "À chaque heure, le chauffage donne ce qui amène la pièce d’où elle serait seule à sa \
           consigne, autant qu’il peut; 8 760 heures, entre lesquelles les parois gardent de la \
           chaleur. À la main, cela se vérifie de trois façons :",
    balance: Phrase(
        "Sorti et entré : parois, toit et plancher {0} + fenêtres et porte {1} + fuites {2} + ventilateur {3} + séchage {9} + gardé par les parois {4} − personnes {5} − appareils {6} − soleil par \
           les fenêtres {7} − condensation {10} = {8}",
    ),
    degree_days: Phrase(
        "Degrés-jours sous {4} : {0} × {1} × 24 h ÷ {2} = {3}, sans déduire les apports",
    ),
    loss_here: Phrase("H, l’air aussi léger qu’il l’est à cette altitude : {0} + fuites {1} = {2}"),
    sun_rule: Phrase(
        "Soleil d’une heure, par les fenêtres : {0} × {1} × {2} × soleil sur leur paroi; sur \
           l’acier : H derrière chaque face × {3} × soleil reçu ÷ {4}",
    ),
    month_lost: Phrase(
        "{0}, par la méthode mensuelle : {1} × ({2} − {3}) × {4} h ÷ {5} = {6} perdus",
    ),
    month_fan: Phrase("{0} + ventilateur {1} = {2}"),
    month_gained: Phrase(
        "personnes {0} + appareils {1} + soleil par les fenêtres {2} + soleil sur l’acier {3} − \
           ciel froid {4} − choses humides {5} = {6} reçus",
    ),
    gains_over_losses: Phrase("γ, reçu sur perdu : {0} ÷ {1} = {2}"),
    time_constant: Phrase("τ, chaleur gardée sur chaleur perdue : {0} ÷ {1} = {2}"),
    exponent: Phrase("a : 1 + {0} ÷ {1} = {2}"),
    utilisation: Phrase(
        "η, la part des apports qui épargne du chauffage : (1 − {0}^{1}) ÷ (1 − {0}^({1} + 1)) = \
           {2}",
    ),
    month_needed: Phrase("{0} − {1} × {2} = {3} de chauffage"),
    months_sum: Phrase("Chaque mois ainsi : {0} = {1}"),
    months_apart: Phrase("Par mois {0}, soit {1} des {2} heure par heure"),
    months_unmet: Phrase(
        "Les mois comptent un chauffage qui tient toujours; celui-ci manque pendant {0} heures",
    ),
    heat_source: "ISO 13790:2008, heures selon l’annexe C, mois selon 7.2 et 12.2 (de mémoire); soleil sur \
            l’acier selon ASHRAE Fundamentals 2017, chapitre 18; base des degrés-jours : usage du \
           métier, sans source",
    bought: "Acheté = chaleur ÷ chaleur tirée d’un kilowattheure; combustible = cela ÷ la chaleur \
           d’une unité, brute : l’eau des fumées comptée condensée.",
    input: Phrase("{0} de chaleur ÷ {1} = {2} pris"),
    pump: Phrase(
        "Le rendement d’une thermopompe suit la température de l’heure : {0} à {1}, {2} à {3}. \
           Selon les moyennes des mois, elle prendrait {4}",
    ),
    units: Phrase("{0} ÷ {1} = {2}"),
    own: Phrase("Son ventilateur et sa pompe en marche : {0} × {1} ÷ 1 000 = {2}"),
    electricity: Phrase(
        "Électricité pour chauffer : chauffage {0} + appoint {1} + son ventilateur {2} = {3}",
    ),
    cost: "Coût = ce qui est acheté × son prix. Les appareils et le ventilateur de la pièce n’y \
           sont pas.",
    priced: Phrase("{0} × {1} = {2}"),
    cost_sum: Phrase("{0} + {1} = {2} par année"),
    cost_month: Phrase("Un mois en moyenne : {0} ÷ 12 = {1}"),
    cost_dearest: Phrase("{0} prend le plus, {1} de chaleur : {2}"),
    no_price: Phrase("Acheté : {0}; aucun prix n’est encore donné"),
    price_source: Phrase("prix du {0}, donnés sous Prix"),
    coldest_day: "Des 365 jours, celui qui prend le plus de chaleur; sa chaleur sur 24 heures.",
    day_heat: Phrase("{0} : {1} × {2} ÷ 24 h = {3}"),
    day_gains: Phrase(
        "Apports en moyenne : personnes {0} + appareils {1} + soleil par les fenêtres {2} + \
           soleil sur l’acier {3} − ciel froid {4} − choses humides {5} = {6}",
    ),
    day_steady: Phrase(
        "Si les moyennes de ce jour restaient fixes : {0} × ({1} − {2}) − {3} = {4}",
    ),
    day_apart: Phrase(
        "Heure par heure {0}, en régime fixe {1} : le reste est la chaleur gardée de la veille, \
           le ventilateur, ou un chauffage à sa limite",
    ),
    date: Phrase("{0} {1}"),
    hours_source: "ISO 13790:2008, annexe C (de mémoire)",
    carbon: "Dioxyde de carbone = électricité pour chauffer × facteur du réseau + chaleur du \
           combustible × ce que sa combustion dégage.",
    emitted: Phrase("{0} × {1} = {2}"),
    no_grid: Phrase("Électricité : {0}; le facteur du réseau n’est pas encore donné"),
    wood_carbon: "L’arbre a pris dans l’air ce que le bois dégage; ici, tout est compté",
    grid_source: "facteur du réseau donné sous Prix",
    fuel_source: "coefficients de déclaration des gaz à effet de serre des États-Unis (propane et bois de \
           mémoire)",
};

impl Language {
    /// The phrases.
    pub const fn year_energy_workings(self) -> &'static YearEnergyWorkings {
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
        let phrases = |words: &YearEnergyWorkings| {
            [
                words.balance,
                words.degree_days,
                words.loss_here,
                words.sun_rule,
                words.month_lost,
                words.month_fan,
                words.month_gained,
                words.gains_over_losses,
                words.time_constant,
                words.exponent,
                words.utilisation,
                words.month_needed,
                words.months_sum,
                words.months_apart,
                words.months_unmet,
                words.input,
                words.pump,
                words.units,
                words.own,
                words.electricity,
                words.priced,
                words.cost_sum,
                words.cost_month,
                words.cost_dearest,
                words.no_price,
                words.price_source,
                words.day_heat,
                words.day_gains,
                words.day_steady,
                words.day_apart,
                words.date,
                words.emitted,
                words.no_grid,
            ]
        };
        for (english, french) in phrases(&ENGLISH).into_iter().zip(phrases(&FRENCH)) {
            assert_eq!(english.places(), french.places(), "{} / {}", english.0, french.0);
        }
    }
}
