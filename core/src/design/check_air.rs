//! Whether fan, dampers and what gives off moisture fit together.

use super::check::DesignProblem;
use super::choice::FanGiven;
use super::field::{Design, Field};
use crate::choice_table::RangeProblem;
use crate::units::{AirChangeRate, Area, Mass};

impl Design {
    /// Whether anything in the room gives moisture to its air.
    pub fn has_moisture_source(&self) -> bool {
        let counted = [self.person_count, self.laundry_loads, self.showers, self.hose_downs];
        let weighed =
            [self.plant_water, self.animal_mass, self.unvented_propane, self.unvented_kerosene];
        counted.iter().any(|&count| count > 0.0)
            || weighed.iter().any(|&mass| mass > Mass::ZERO)
            || self.mopped_floor > Area::ZERO
    }

    /// Whether a flame burns in the room and no flue takes its fumes out.
    pub fn burns_without_a_flue(&self) -> bool {
        self.unvented_propane > Mass::ZERO || self.unvented_kerosene > Mass::ZERO
    }

    /// Reports what of the air does not go together.
    pub(super) fn check_air(&self, report: &mut impl FnMut(Field, DesignProblem)) {
        if self.damper_count == 0.0 {
            if self.air_changes == AirChangeRate::ZERO && self.has_moisture_source() {
                report(Field::AirChanges, DesignProblem::SourceWithoutAir);
            }
            return;
        }
        let needs = self.exhaust_count + 1.0;
        if self.damper_count < needs {
            let has = self.damper_count;
            let clashes_with = Field::ExhaustCount;
            report(Field::DamperCount, DesignProblem::DoesNotFit { needs, has, clashes_with });
        }
        if self.fan_given == FanGiven::Curve {
            self.check_curve(report);
        }
    }

    /// Flows must rise from none to the free-air flow, pressures fall from shut-off to none.
    fn check_curve(&self, report: &mut impl FnMut(Field, DesignProblem)) {
        let flows = [
            (Field::FanFirstFlow, self.fan_first_flow),
            (Field::FanSecondFlow, self.fan_second_flow),
            (Field::FanThirdFlow, self.fan_third_flow),
            (Field::FanFreeAirFlow, self.fan_free_air_flow),
        ];
        for pair in flows.windows(2) {
            if pair[1].1 <= pair[0].1 {
                let (field, than) = (pair[0].0, pair[0].1.value());
                report(pair[1].0, DesignProblem::MustExceed { field, than });
            }
        }
        let pressures = [
            (Field::FanShutOffPressure, self.fan_shut_off_pressure.value()),
            (Field::FanFirstPressure, self.fan_first_pressure.value()),
            (Field::FanSecondPressure, self.fan_second_pressure.value()),
            (Field::FanThirdPressure, self.fan_third_pressure.value()),
        ];
        for pair in pressures.windows(2) {
            if pair[1].1 >= pair[0].1 {
                let (field, than) = pair[0];
                report(pair[1].0, DesignProblem::MustBeBelow { field, than });
            }
        }
        // In free air a fan makes no pressure: the last point has to lie above that.
        if self.fan_third_pressure.value() == 0.0 {
            let least = Field::FanThirdPressure.range().step;
            let maximum = Field::FanThirdPressure.range().maximum;
            let problem = RangeProblem::OutOfRange { minimum: least, maximum };
            report(Field::FanThirdPressure, DesignProblem::ByItself(problem));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Pressure, VolumeFlow};

    fn found(change: impl FnOnce(&mut Design)) -> Vec<(Field, DesignProblem)> {
        let mut design = Design { damper_count: 3.0, ..Design::default() };
        change(&mut design);
        let errors = design.check().err().unwrap_or_default();
        errors.into_iter().map(|error| (error.field, error.problem)).collect()
    }

    #[test]
    fn curve_points_out_of_order_or_not_falling_are_named() {
        assert!(found(|design| design.fan_given = FanGiven::Curve).is_empty());
        let out_of_order = found(|design| {
            design.fan_given = FanGiven::Curve;
            design.fan_second_flow = VolumeFlow::cubic_metres_per_hour(200.0);
        });
        let than = VolumeFlow::cubic_metres_per_hour(300.0).value();
        let expected = DesignProblem::MustExceed { field: Field::FanFirstFlow, than };
        assert_eq!(out_of_order, [(Field::FanSecondFlow, expected)]);
        let rising = found(|design| {
            design.fan_given = FanGiven::Curve;
            design.fan_third_pressure = Pressure::new(48.0);
        });
        let expected = DesignProblem::MustBeBelow { field: Field::FanSecondPressure, than: 48.0 };
        assert_eq!(rising, [(Field::FanThirdPressure, expected)]);
        let label_only = found(|design| design.fan_third_pressure = Pressure::new(48.0));
        assert!(label_only.is_empty(), "points that are not used are not judged");
    }

    #[test]
    fn an_exhaust_needs_an_intake_and_a_source_needs_air() {
        let none_left = found(|design| design.exhaust_count = 3.0);
        assert!(matches!(
            none_left[..],
            [(Field::DamperCount, DesignProblem::DoesNotFit { needs: 4.0, has: 3.0, .. })]
        ));
        let still = found(|design| {
            design.damper_count = 0.0;
            design.air_changes = AirChangeRate::ZERO;
        });
        assert_eq!(still, [(Field::AirChanges, DesignProblem::SourceWithoutAir)]);
        let dry = found(|design| {
            design.damper_count = 0.0;
            design.air_changes = AirChangeRate::ZERO;
            design.person_count = 0.0;
        });
        assert!(dry.is_empty());
    }
}
