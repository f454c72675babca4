//! Whether the steps of a year's workings come to what they say, and what they say to what is shown.

use inchwise_aside::{Message, Solver, YearAnswer, pack_choices, pack_design};
use inchwise_core::climate::{Place, varnholm_flats};
use inchwise_core::design::{Design, PersonnelDoor};
use inchwise_core::detail::FieldCache;
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::units::{Length, Mass, Power, Temperature, TemperatureDifference};
use inchwise_core::year::{HeaterKind, PriceDate, YearChoices};

use super::super::super::working_tests::both_sides;
use super::{Behind, YearFigure, working};
use crate::measure::{Notation, UnitSystem};
use crate::text::Language;

const FIGURES: [YearFigure; 14] = [
    YearFigure::Heat,
    YearFigure::Bought,
    YearFigure::Cost,
    YearFigure::ColdestDay,
    YearFigure::Carbon,
    YearFigure::Heater,
    YearFigure::Supply,
    YearFigure::Unmet,
    YearFigure::PowerCut,
    YearFigure::WarmUp,
    YearFigure::Damp,
    YearFigure::Water,
    YearFigure::Summer,
    YearFigure::TooWarm,
];

/// A year with the design and the choices it is of.
struct Case {
    evaluation: Evaluation,
    choices: YearChoices,
    answer: YearAnswer,
}

impl Case {
    /// The year as the worker makes it once every field is solved.
    fn of(
        solver: &mut Solver,
        cache: &mut FieldCache,
        (design, choices): (&Design, YearChoices),
    ) -> Self {
        solver.take_year(1, &pack_design(design), &pack_choices(&choices), &[]);
        let mut last = None;
        while let Some(numbers) = solver.step() {
            match Message::unpack(&numbers) {
                Some((_, Message::Year(year))) => last = Some(year),
                _ => break,
            }
        }
        let numbers = last.expect("a year");
        let answer = YearAnswer::unpack(&numbers).expect("the numbers of a year");
        let bits = |numbers: &[f64]| numbers.iter().map(|it| it.to_bits()).collect::<Vec<_>>();
        assert_eq!(bits(&answer.pack()), bits(&numbers));
        assert!(!answer.is_waiting);
        let checked = design.check().expect("a lawful design");
        Self { evaluation: evaluate(&checked, cache), choices, answer }
    }

    fn behind(&self, notation: Notation) -> Behind<'_> {
        Behind {
            evaluation: &self.evaluation,
            answer: &self.answer,
            choices: &self.choices,
            winter: self.evaluation.checked.design().place.place().winter_design,
            notation,
        }
    }
}

fn dated(choices: YearChoices) -> YearChoices {
    YearChoices {
        electricity_price: Some(0.165),
        fuel_price: Some(1.2),
        grid_emission: Some(0.05),
        prices_of: Some(PriceDate { year: 2026, month: 11, day: 2 }),
        ..choices
    }
}

fn cases() -> Vec<Case> {
    let (mut solver, mut cache) = (Solver::default(), FieldCache::default());
    let thin = Design {
        side_wall_foam: Length::mm(30.0),
        window_count: 0.0,
        personnel_door: PersonnelDoor::None,
        air_changes: Design::default().air_changes * 2.0,
        ..Design::default()
    };
    let heated = |heater, watts: f64| YearChoices {
        heater,
        heater_limit: Power::new(watts),
        ..YearChoices::default()
    };
    let usual = Design::default();
    let wet = Design {
        plant_water: Mass::new(3.6),
        laundry_loads: 1.0,
        damper_count: 3.0,
        setback: TemperatureDifference::new(5.0),
        ..usual.clone()
    };
    let pump = YearChoices {
        backup_limit: Power::new(500.0),
        ..dated(heated(HeaterKind::AirSourceHeatPump, 3500.0))
    };
    let empty = Design { person_count: 0.0, equipment_in_use: Power::ZERO, ..usual.clone() };
    let weak = heated(HeaterKind::ElectricResistance, 900.0);
    let warm = {
        let mut place = varnholm_flats();
        place.winter_design = Temperature::celsius(place.winter_design.as_celsius() + 25.0);
        place.summer_design = Temperature::celsius(place.summer_design.as_celsius() + 12.0);
        for month in &mut place.months {
            month.temperature = month.temperature + TemperatureDifference::new(22.0);
        }
        let place: Place = place;
        Design { place: place.check().expect("a place"), ..thin.clone() }
    };
    [
        (&usual, YearChoices::default()),
        (&wet, pump),
        (&empty, weak),
        (&usual, dated(heated(HeaterKind::WoodStove, 6000.0))),
        (&thin, dated(heated(HeaterKind::VentedDiesel, 5000.0))),
        (&warm, heated(HeaterKind::DirectVentPropane, 4000.0)),
    ]
    .map(|case| Case::of(&mut solver, &mut cache, case))
    .into()
}

/// How finely a figure at the end of a step is written beyond its last digit: heat in Btu/h to ten.
fn written_to(step: &str, place: f64) -> f64 {
    if step.contains("Btu/h") && !step.contains("kWh") { place.max(10.0) } else { place }
}

#[test]
fn every_step_comes_to_what_it_says() {
    let cases = cases();
    months_lie_beside_hours(&cases[0]);
    for (number, case) in cases.iter().enumerate() {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for language in Language::ALL {
                let behind = case.behind(Notation { units, language });
                let read: usize = FIGURES.iter().map(|&figure| steps_read(figure, &behind)).sum();
                // In other languages numbers are written otherwise, and the words hold the same places.
                let least = if language == Language::English { 35 } else { 0 };
                assert!(read >= least, "only {read} steps of year {number} were read");
            }
        }
    }
}

/// How many steps of a figure's working were reckoned again.
fn steps_read(figure: YearFigure, behind: &Behind<'_>) -> usize {
    let working = working(figure, behind).expect("every figure has a working");
    assert!(!working.source.is_empty() && !working.steps.is_empty(), "{figure:?}");
    let mut read = 0;
    for step in &working.steps {
        assert!(!step.contains("NaN") && !step.contains(['{', '∞']), "{step}");
        if behind.notation.language != Language::English {
            continue;
        }
        let Some((reckoned, said, place)) = both_sides(step) else { continue };
        read += 1;
        // Every number of a sum is rounded.
        let terms = 1.0 + 0.5 * step.matches(['+', '−']).count() as f64;
        let allowed = 0.02 * said.abs() + terms * written_to(step, place);
        assert!((reckoned - said).abs() <= allowed, "{figure:?}: {step} comes to {reckoned}");
    }
    read
}

/// The monthly method beside the hours: its own standard lets the two lie about a tenth apart.
fn months_lie_beside_hours(case: &Case) {
    let notation = Notation { units: UnitSystem::Metric, language: Language::English };
    let working = working(YearFigure::Heat, &case.behind(notation)).expect("a working");
    let said = working.steps.last().expect("steps");
    let share = said.split("that is ").nth(1).and_then(|rest| rest.split('%').next());
    let share: f64 = share.expect("a share").parse().expect("a number");
    assert!((90.0..=110.0).contains(&share), "{said}");
}
