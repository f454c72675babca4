//! Any lawful design, drawn from the one table of ranges.

use inchwise_core::choice_table::RangeProblem;
use inchwise_core::design::{
    CheckedDesign, DamperScreen, Design, DesignProblem, EndWallTreatment, FanGiven, Field,
    FoamMeasure, FramePosition, LiningMaterial, PersonnelDoor, Quantity, RoomUse, Wall,
    WeatherCover,
};
use inchwise_core::freight_box::BoxSize;
use proptest::prelude::*;
use proptest::sample::select;

/// Every choice, each within its range; measurements not taken.
fn any_design() -> impl Strategy<Value = Design> {
    let numbers: Vec<_> = Field::ALL
        .iter()
        .filter(|field| field.range().default.is_some())
        .map(|&field| {
            let range = field.range();
            (range.minimum..=range.maximum).prop_map(move |number| {
                let whole = range.quantity == Quantity::Count;
                (field, if whole { number.floor() } else { number })
            })
        })
        .collect();
    let options = (
        select(BoxSize::ALL.to_vec()),
        select(EndWallTreatment::ALL.to_vec()),
        select(FoamMeasure::ALL.to_vec()),
        select(LiningMaterial::ALL.to_vec()),
        select(PersonnelDoor::ALL.to_vec()),
        select(Wall::ALL.to_vec()),
        select(RoomUse::ALL.to_vec()),
        select(WeatherCover::ALL.to_vec()),
        select(DamperScreen::ALL.to_vec()),
        select(FanGiven::ALL.to_vec()),
        select(FramePosition::ALL.to_vec()),
    );
    (numbers, options).prop_map(|(numbers, options)| {
        let mut design = Design {
            box_size: options.0,
            end_wall_treatment: options.1,
            foam_measure: options.2,
            lining_material: options.3,
            personnel_door: options.4,
            window_wall: options.5,
            room_use: options.6,
            weather_cover: options.7,
            damper_screen: options.8,
            fan_given: options.9,
            frame_position: options.10,
            ..Design::default()
        };
        for (field, number) in numbers {
            design.set(field, Some(number));
        }
        design
    })
}

/// A design that passes its check: openings that do not fit are left out.
pub(crate) fn lawful_design() -> impl Strategy<Value = CheckedDesign> {
    any_design().prop_filter_map("outdoors not colder than the room", |mut design| {
        // Points of a fan's curve drawn one by one hardly ever fall in order.
        if design.check().is_err() {
            design.fan_given = FanGiven::Label;
        }
        if design.check().is_err() {
            design.damper_count = 0.0;
            design.personnel_door = PersonnelDoor::None;
            design.window_count = 0.0;
        }
        design.check().ok()
    })
}

proptest! {
    #[test]
    fn every_number_out_of_range_is_named_and_nothing_else(
        checked in lawful_design(),
        wrong in proptest::collection::hash_set(0..Field::ALL.len(), 1..5),
        above in any::<bool>(),
    ) {
        let mut design = checked.design().clone();
        for &n in &wrong {
            let range = Field::ALL[n].range();
            let off = range.maximum - range.minimum;
            let number = if above { range.maximum + off } else { range.minimum - off };
            design.set(Field::ALL[n], Some(number));
        }
        let errors = design.check().expect_err("a number out of range cannot pass");
        let named: std::collections::HashSet<usize> = errors
            .iter()
            .filter_map(|error| Field::ALL.iter().position(|&field| field == error.field))
            .collect();
        prop_assert_eq!(named, wrong);
        for error in errors {
            let out_of_range = matches!(error.problem, DesignProblem::ByItself(RangeProblem::OutOfRange { .. }));
            prop_assert!(out_of_range, "{:?}", error);
        }
    }

    #[test]
    fn no_number_whatever_passes_or_panics_unless_it_is_finite(
        n in 0..Field::ALL.len(),
        number in prop_oneof![
            Just(f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY),
            Just(f64::MAX), Just(-0.0), any::<f64>(),
        ],
    ) {
        let mut design = Design::default();
        let field = Field::ALL[n];
        design.set(field, Some(number));
        let range = field.range();
        let lawful = range.minimum <= number && number <= range.maximum;
        match design.check() {
            Ok(_) => prop_assert!(lawful, "{:?} passed with {}", field, number),
            Err(errors) => prop_assert!(!errors.is_empty()),
        }
    }
}
