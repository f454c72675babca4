//! Designs that the drawings are tried on.

use inchwise_core::design::{CheckedDesign, Design, EndWallTreatment, FoamMeasure, PersonnelDoor};
use inchwise_core::detail::FieldCache;
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::freight_box::BoxSize;
use inchwise_core::units::Length;

/// What the planner starts with.
pub fn default_evaluation() -> Evaluation {
    evaluate(&CheckedDesign::default(), &mut FieldCache::default())
}

/// Every box under every treatment, thin and thick, with and without the odd parts.
pub fn evaluations() -> Vec<Evaluation> {
    let mut cache = FieldCache::default();
    let mut found = Vec::new();
    for box_size in BoxSize::ALL {
        for &treatment in EndWallTreatment::ALL {
            for thick in [false, true] {
                let mut design = Design {
                    box_size,
                    end_wall_treatment: treatment,
                    personnel_door: PersonnelDoor::None,
                    window_count: 0.0,
                    ..Design::default()
                };
                if thick {
                    design.foam_measure = FoamMeasure::FollowingTheSteel;
                    design.side_wall_foam = Length::mm(140.0);
                    design.front_end_foam = Length::mm(90.0);
                    design.ceiling_foam = Length::mm(160.0);
                    design.floor_foam_over = Length::mm(50.0);
                    design.floor_foam_under = Length::mm(100.0);
                }
                let checked = design.check().unwrap();
                found.push(evaluate(&checked, &mut cache));
            }
        }
    }
    found
}
