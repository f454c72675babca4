//! What is said at a field whose value cannot stand.

use super::{Language, Phrase};

/// The phrases.
pub struct Faults {
    /// The word in front of every fault, so that it is not told by colour alone.
    pub sign: &'static str,
    /// Nothing typed.
    pub empty: &'static str,
    /// Not a number: {0} typed, {1} an example.
    pub not_a_number: Phrase,
    /// Unknown unit: {0} typed, {1} the unit, {2} an example.
    pub unknown_unit: Phrase,
    /// Outside the range: {0} read, {1} smallest, {2} largest.
    pub out_of_range: Phrase,
    /// Not whole: {0} read.
    pub not_whole: Phrase,
    /// Not a finite number.
    pub not_finite: &'static str,
    /// Does not fit: needs {0}, has {1}, short by {2}, {3} could give way.
    pub does_not_fit: Phrase,
    /// Outdoors not colder: {0} read, {1} warmest allowed.
    pub not_colder: Phrase,
    /// Not this box: {0} read, {1} nominal, {2} tolerance.
    pub far_from_nominal: Phrase,
    /// Not more than another: {0} read, {1} the other's name, {2} what it is.
    pub must_exceed: Phrase,
    /// Not less than another: {0} read, {1} the other's name, {2} what it is.
    pub must_be_below: Phrase,
    /// Below another: {0} read, {1} the other's name, {2} what it is.
    pub must_not_be_below: Phrase,
    /// An opening in a wall that is not there.
    pub no_wall_there: &'static str,
    /// The room's hours end when they begin.
    pub used_hours: &'static str,
    /// Moisture is given off and no air carries it out.
    pub source_without_air: &'static str,
    /// A fault away from its field: {0} label, {1} fault.
    pub at_field: Phrase,
}

const ENGLISH: Faults = Faults {
    sign: "Check:",
    empty: "Nothing is typed here.",
    not_a_number: Phrase("“{0}” is not a value. Type it as {1}."),
    unknown_unit: Phrase("“{0}”: the unit “{1}” is not known here. Type it as {2}."),
    out_of_range: Phrase("Read as {0}. Allowed: {1} to {2}."),
    not_whole: Phrase("Read as {0}. It must be a whole number."),
    not_finite: "This is not a number.",
    does_not_fit: Phrase("Needs {0}, has {1}: {2} short. {3} could give way."),
    not_colder: Phrase(
        "Read as {0}. Outdoors must be colder than the room: {1} at the warmest, or there is no \
         heating load.",
    ),
    far_from_nominal: Phrase(
        "Read as {0}. The chosen box has {1}, give or take {2}: is it another box?",
    ),
    must_exceed: Phrase(
        "Read as {0}. It must be more than {1}, {2}: the flow rises along a fan’s curve.",
    ),
    must_be_below: Phrase(
        "Read as {0}. It must be less than {1}, {2}: the pressure falls along a fan’s curve.",
    ),
    must_not_be_below: Phrase(
        "Read as {0}. It must not be below {1}, {2}: the fan may cool above that only.",
    ),
    no_wall_there: "There is no framed wall before the cargo doors: the foam is in their leaves.",
    used_hours: "The same hour twice. All day is 0 until 24; past midnight is fine, as 20 until 4.",
    source_without_air: "The use gives off moisture and no air carries it out. Let air leak in, or fit dampers and a fan.",
    at_field: Phrase("{0}: {1}"),
};

const FRENCH: Faults = Faults {
    sign: "À vérifier :",
    empty: "Rien n’est écrit ici.",
    not_a_number: Phrase("« {0} » n’est pas une valeur. Écrivez par exemple {1}."),
    unknown_unit: Phrase(
        "« {0} » : l’unité « {1} » n’est pas connue ici. Écrivez par exemple {2}.",
    ),
    out_of_range: Phrase("Lu comme {0}. Permis : {1} à {2}."),
    not_whole: Phrase("Lu comme {0}. Il faut un nombre entier."),
    not_finite: "Ce n’est pas un nombre.",
    does_not_fit: Phrase("Il faut {0}, il y a {1} : il manque {2}. À réduire peut-être : {3}."),
    not_colder: Phrase(
        "Lu comme {0}. Dehors doit être plus froid que la pièce : {1} au plus, sinon il n’y a pas \
         de charge de chauffage.",
    ),
    far_from_nominal: Phrase(
        "Lu comme {0}. Le conteneur choisi a {1}, à {2} près : est-ce un autre conteneur?",
    ),
    must_exceed: Phrase(
        "Lu comme {0}. Il faut plus que {1}, {2} : le débit monte le long de la courbe.",
    ),
    must_be_below: Phrase(
        "Lu comme {0}. Il faut moins que {1}, {2} : la pression baisse le long de la courbe.",
    ),
    must_not_be_below: Phrase(
        "Lu comme {0}. Pas sous {1}, {2} : le ventilateur ne rafraîchit qu’au-dessus.",
    ),
    no_wall_there: "Il n’y a pas de paroi devant les portes de cargo : la mousse est dans leurs vantaux.",
    used_hours: "Deux fois la même heure. Tout le jour : 0 à 24; après minuit va aussi, comme 20 à 4.",
    source_without_air: "L’usage dégage de l’humidité et aucun air ne l’emporte. Laissez entrer de l’air, ou posez volets et ventilateur.",
    at_field: Phrase("{0} : {1}"),
};

impl Language {
    /// Words of faults.
    pub const fn faults(self) -> &'static Faults {
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
        let phrases = |faults: &Faults| {
            [
                faults.not_a_number,
                faults.unknown_unit,
                faults.out_of_range,
                faults.not_whole,
                faults.does_not_fit,
                faults.not_colder,
                faults.far_from_nominal,
                faults.must_exceed,
                faults.must_be_below,
                faults.must_not_be_below,
                faults.at_field,
            ]
            .map(Phrase::places)
        };
        assert_eq!(phrases(&ENGLISH), phrases(&FRENCH));
    }
}
