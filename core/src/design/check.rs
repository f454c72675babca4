//! The door: either a lawful design or every error at once.

use super::choice::Wall;
use super::field::{Design, Field};
use super::stack::Surface;
use crate::choice_table::RangeProblem;
use crate::freight_box::{Dimensions, FreightBox};
use crate::units::Length;

/// The room must be warmer than outdoors by at least this, or no heating load is defined, K.
pub const LEAST_TEMPERATURE_DIFFERENCE: f64 = 1.0;

/// A measured inside dimension may differ this much from the nominal one; more means another box.
pub const MEASURED_TOLERANCE: Length = Length::mm(100.0);

/// Wall left whole beside each opening.
///
/// Common practice, no source: cuts stay this clear of corner posts and of one another.
pub const CLEAR_OF_CORNERS: Length = Length::mm(150.0);

/// What is wrong with a choice. Numbers are SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DesignProblem {
    /// The number by itself.
    ByItself(RangeProblem),
    /// Needs more than the wall or the room has.
    DoesNotFit {
        /// What it needs.
        needs: f64,
        /// What there is.
        has: f64,
        /// The field that could give way.
        clashes_with: Field,
    },
    /// Outdoors is not colder than the room.
    NotColderThanRoom {
        /// The warmest outdoor temperature that this room temperature allows, °C.
        maximum: f64,
    },
    /// A measurement so far from the chosen box that it must belong to another.
    FarFromNominal {
        /// The chosen box's figure.
        nominal: f64,
        /// How far it may be off.
        tolerance: f64,
    },
    /// Must be more than another choice.
    MustExceed {
        /// The other choice.
        field: Field,
        /// What it is.
        than: f64,
    },
    /// Must be less than another choice.
    MustBeBelow {
        /// The other choice.
        field: Field,
        /// What it is.
        than: f64,
    },
    /// Something gives off moisture and no air carries it out.
    SourceWithoutAir,
}

/// One choice that cannot stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DesignError {
    /// Which choice.
    pub field: Field,
    /// What was given, SI.
    pub given: f64,
    /// What is wrong with it.
    pub problem: DesignProblem,
}

/// A design in which every choice is allowed and everything fits.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckedDesign(Design);

impl Default for CheckedDesign {
    /// The default design, which a test holds to its own check.
    fn default() -> Self {
        Self(Design::default())
    }
}

impl CheckedDesign {
    /// The choices.
    pub fn design(&self) -> &Design {
        &self.0
    }

    /// The box with its measured dimensions.
    pub fn freight_box(&self) -> FreightBox {
        self.0.freight_box()
    }
}

impl Design {
    /// Checks every choice by itself, then whether what was chosen fits together.
    ///
    /// # Errors
    /// Every choice that cannot stand, in the order of the table.
    pub fn check(&self) -> Result<CheckedDesign, Vec<DesignError>> {
        let mut errors = self.beyond_range(|field, given, problem| DesignError {
            field,
            given,
            problem: DesignProblem::ByItself(problem),
        });
        // What fits is only asked of numbers that are lawful by themselves.
        if errors.is_empty() {
            self.check_fit(&mut errors);
        }
        if errors.is_empty() { Ok(CheckedDesign(self.clone())) } else { Err(errors) }
    }

    fn check_fit(&self, errors: &mut Vec<DesignError>) {
        let mut report = |field: Field, problem: DesignProblem| {
            errors.push(DesignError { field, given: self.get(field).unwrap_or(0.0), problem });
        };
        let warmest_outdoors = self.indoor_temperature.as_celsius() - LEAST_TEMPERATURE_DIFFERENCE;
        if self.outdoor_temperature.as_celsius() > warmest_outdoors {
            report(
                Field::OutdoorTemperature,
                DesignProblem::NotColderThanRoom { maximum: warmest_outdoors },
            );
        }
        let nominal = self.box_size.nominal().internal;
        for (field, measured, nominal) in [
            (Field::MeasuredLength, self.measured_length, nominal.length),
            (Field::MeasuredWidth, self.measured_width, nominal.width),
            (Field::MeasuredHeight, self.measured_height, nominal.height),
        ] {
            let off = measured.map_or(0.0, |measured| (measured - nominal).value().abs());
            if off > MEASURED_TOLERANCE.value() {
                report(
                    field,
                    DesignProblem::FarFromNominal {
                        nominal: nominal.value(),
                        tolerance: MEASURED_TOLERANCE.value(),
                    },
                );
            }
        }
        self.check_openings(&mut report);
        self.check_air(&mut report);
    }

    fn check_openings(&self, report: &mut impl FnMut(Field, DesignProblem)) {
        let clear = self.clear_dimensions();
        let misfit = |needs: Length, has: Length, clashes_with| DesignProblem::DoesNotFit {
            needs: needs.value(),
            has: has.value(),
            clashes_with,
        };
        let run = |wall| match wall {
            Wall::RightSide | Wall::LeftSide => (clear.length, Field::MeasuredLength),
            Wall::FrontEnd | Wall::DoorEnd => (clear.width, Field::SideWallFoam),
        };
        if let Some(wall) = self.personnel_door.wall() {
            let (has, clash) = run(wall);
            let needs = self.door_width + CLEAR_OF_CORNERS * 2.0;
            if needs > has {
                report(Field::DoorWidth, misfit(needs, has, clash));
            }
            if self.door_height > clear.height {
                report(
                    Field::DoorHeight,
                    misfit(self.door_height, clear.height, Field::CeilingFoam),
                );
            }
        }
        if self.window_count > 0.0 {
            let (has, clash) = run(self.window_wall);
            let shared_with_door = self.personnel_door.wall() == Some(self.window_wall);
            let door =
                if shared_with_door { self.door_width + CLEAR_OF_CORNERS } else { Length::ZERO };
            let needs = (self.window_width + CLEAR_OF_CORNERS) * self.window_count
                + CLEAR_OF_CORNERS
                + door;
            if needs > has {
                let clash = if shared_with_door { Field::DoorWidth } else { clash };
                report(Field::WindowWidth, misfit(needs, has, clash));
            }
            let needs = self.window_height + CLEAR_OF_CORNERS * 2.0;
            if needs > clear.height {
                report(Field::WindowHeight, misfit(needs, clear.height, Field::CeilingFoam));
            }
        }
    }

    /// Between the finished faces: inside of the steel less the build-up of each surface.
    ///
    /// clear length = length − front end − door end; clear width = width − 2 side walls;
    /// clear height = height − ceiling − floor.
    pub fn clear_dimensions(&self) -> Dimensions {
        let bare = self.freight_box().internal;
        let taken = |surface| self.stack(surface).total();
        Dimensions {
            length: bare.length - taken(Surface::FrontEnd) - taken(Surface::DoorEnd),
            width: bare.width - taken(Surface::SideWall) * 2.0,
            height: bare.height - taken(Surface::Ceiling) - taken(Surface::Floor),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_default_design_passes_its_own_check() {
        assert_eq!(Design::default().check(), Ok(CheckedDesign::default()));
    }
}
