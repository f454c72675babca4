//! What is wrong at a field, in words.

use inchwise_core::choice_table::RangeProblem;
use inchwise_core::design::{DesignError, DesignProblem, Field};

use crate::measure::{Notation, Unread};
use crate::state::UnreadText;

/// What is wrong with a value that was read.
pub fn fault_words(error: &DesignError, notation: Notation) -> String {
    let words = notation.language.faults();
    let written = |si: f64| notation.field(error.field, si);
    let given = written(error.given);
    match error.problem {
        DesignProblem::ByItself(RangeProblem::NotFinite) => words.not_finite.to_owned(),
        DesignProblem::ByItself(RangeProblem::NotWhole) => words.not_whole.with(&[&given]),
        DesignProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }) => {
            let ends = in_order(error.field, minimum, maximum, notation);
            words.out_of_range.with(&[&given, &ends.0, &ends.1])
        }
        DesignProblem::DoesNotFit { needs, has, clashes_with } => words.does_not_fit.with(&[
            &written(needs),
            &written(has),
            &written(needs - has),
            notation.language.field(clashes_with),
        ]),
        DesignProblem::NotColderThanRoom { maximum } => {
            words.not_colder.with(&[&given, &written(maximum)])
        }
        DesignProblem::FarFromNominal { nominal, tolerance } => {
            words.far_from_nominal.with(&[&given, &written(nominal), &written(tolerance)])
        }
        DesignProblem::MustExceed { field, than } => {
            words.must_exceed.with(&[&given, notation.language.field(field), &written(than)])
        }
        DesignProblem::MustBeBelow { field, than } => {
            words.must_be_below.with(&[&given, notation.language.field(field), &written(than)])
        }
        DesignProblem::MustNotBeBelow { field, than } => {
            words.must_not_be_below.with(&[&given, notation.language.field(field), &written(than)])
        }
        DesignProblem::NoWallThere => words.no_wall_there.to_owned(),
        DesignProblem::UsedUntilIsUsedFrom => words.used_hours.to_owned(),
        DesignProblem::SourceWithoutAir => words.source_without_air.to_owned(),
    }
}

/// What is wrong with a text that could not be read, with an example that can.
pub fn unread_words(text: &UnreadText, notation: Notation) -> String {
    let words = notation.language.faults();
    let range = text.field.range();
    let example = notation.field(text.field, range.default.unwrap_or(range.maximum));
    match &text.fault {
        Unread::Empty => words.empty.to_owned(),
        Unread::NotANumber => words.not_a_number.with(&[&text.typed, &example]),
        Unread::UnknownUnit(unit) => words.unknown_unit.with(&[&text.typed, unit, &example]),
    }
}

/// The ends of a range as written, the smaller figure first: an R-value falls as the conductivity
/// rises.
pub fn in_order(field: Field, minimum: f64, maximum: f64, notation: Notation) -> (String, String) {
    let scale = crate::measure::Scale::of(field, notation.units);
    let ends = if scale.unit.of_si(minimum) <= scale.unit.of_si(maximum) {
        (minimum, maximum)
    } else {
        (maximum, minimum)
    };
    (notation.field(field, ends.0), notation.field(field, ends.1))
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::Design;
    use inchwise_core::units::Length;

    use super::*;
    use crate::measure::UnitSystem;
    use crate::text::Language;

    fn words_of(design: Design, units: UnitSystem, language: Language) -> Vec<String> {
        let errors = design.check().expect_err("wrong on purpose");
        let notation = Notation { units, language };
        errors
            .iter()
            .map(|error| fault_words(error, notation).replace(['\u{a0}', '\u{202f}'], " "))
            .collect()
    }

    #[test]
    fn a_door_too_high_says_by_how_much_and_what_could_give_way() {
        let design = Design { ceiling_foam: Length::mm(250.0), ..Design::default() };
        // 2,393 less 250 foam, 12 lining and 3 levelling leaves 2,128.
        let design = Design { door_height: Length::mm(2200.0), ..design };
        let words = words_of(design.clone(), UnitSystem::Metric, Language::English);
        assert_eq!(
            words,
            ["Needs 2,200 mm, has 2,128 mm: 72 mm short. Ceiling foam could give way."]
        );
        let words = words_of(design, UnitSystem::Metric, Language::French);
        assert!(words[0].starts_with("Il faut 2 200 mm, il y a 2 128 mm : il manque 72 mm."));
    }

    #[test]
    fn out_of_range_says_what_was_read_and_what_is_allowed() {
        let design = Design { side_wall_foam: Length::mm(250.0), ..Design::default() };
        assert_eq!(
            words_of(design, UnitSystem::Metric, Language::English),
            ["Read as 250 mm. Allowed: 10 mm to 200 mm."]
        );
        let mut design = Design::default();
        design.set(Field::FoamConductivity, Some(0.05));
        assert_eq!(
            words_of(design, UnitSystem::Imperial, Language::English),
            ["Read as R-2.9/in. Allowed: R-3.6/in to R-8.0/in."]
        );
    }
}
