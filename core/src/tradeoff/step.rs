//! One buildable step: a pure change of a design.

use super::StepKind;
use crate::design::{
    Design, EndWallTreatment, FanGiven, Field, FloorRecesses, FramePosition, SleeveEnd,
    WindowSpacer,
};

/// Of a list of options of a design makes the changes that there are, each with what it was and what it becomes.
macro_rules! changes {
    ($($(#[$doc:meta])* $Option:ident: $name:ident;)+) => {
        /// One choice with what it was and what it becomes. Numbers are SI.
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub enum Change {
            /// A number.
            Number {
                /// Which.
                field: Field,
                /// What it was.
                before: f64,
                /// What it becomes.
                after: f64,
            },
            $($(#[$doc])* $Option {
                /// What it was.
                before: $Option,
                /// What it becomes.
                after: $Option,
            },)+
        }

        impl Change {
            fn apply(self, design: &mut Design) {
                match self {
                    Self::Number { field, after, .. } => design.set(field, Some(after)),
                    $(Self::$Option { after, .. } => design.$name = after,)+
                }
            }

            /// The same choice, from what it is in a design; `None` where it is there already.
            fn from(self, design: &Design) -> Option<Self> {
                match self {
                    Self::Number { field, after, .. } => {
                        let before = design.get(field)?;
                        (before != after).then_some(Self::Number { field, before, after })
                    }
                    $(Self::$Option { after, .. } => {
                        let before = design.$name;
                        (before != after).then_some(Self::$Option { before, after })
                    })+
                }
            }
        }
    };
}

changes! {
    /// What is done about the castings.
    EndWallTreatment: end_wall_treatment;
    /// Where studs and joists stand.
    FramePosition: frame_position;
    /// What is done about forklift pockets and gooseneck tunnel.
    FloorRecesses: floor_recesses;
    /// What keeps the sheets of a window's glass apart.
    WindowSpacer: window_spacer;
    /// How the dampers' sleeves end.
    SleeveEnd: sleeve_end;
    /// What is known of the fan.
    FanGiven: fan_given;
}

impl Change {
    /// Whether both are about one choice.
    fn is_of_one_choice_with(self, other: Self) -> bool {
        match (self, other) {
            (Self::Number { field: one, .. }, Self::Number { field: other, .. }) => one == other,
            _ => core::mem::discriminant(&self) == core::mem::discriminant(&other),
        }
    }
}

/// One buildable step, with every choice that it changes.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What is done.
    pub kind: StepKind,
    /// What changes, at least one choice.
    pub changes: Vec<Change>,
}

impl Step {
    /// The step that makes such changes to a design; `None` where nothing would change.
    pub(super) fn new(
        kind: StepKind,
        design: &Design,
        changes: impl IntoIterator<Item = Change>,
    ) -> Option<Self> {
        let changes: Vec<Change> =
            changes.into_iter().filter_map(|change| change.from(design)).collect();
        (!changes.is_empty()).then_some(Self { kind, changes })
    }

    /// The design with it taken, lawful or not.
    #[must_use]
    pub fn taken_by(&self, design: &Design) -> Design {
        let mut design = design.clone();
        for change in &self.changes {
            change.apply(&mut design);
        }
        design
    }
}

/// Steps that were taken one after another, as one of each kind from the design they began with.
pub(super) fn joined<'a>(design: &Design, taken: impl IntoIterator<Item = &'a Step>) -> Vec<Step> {
    let mut joined: Vec<Step> = Vec::new();
    for step in taken {
        let Some(earlier) = joined.iter_mut().find(|earlier| earlier.kind == step.kind) else {
            joined.push(step.clone());
            continue;
        };
        for &change in &step.changes {
            match earlier.changes.iter_mut().find(|other| other.is_of_one_choice_with(change)) {
                Some(other) => *other = change,
                None => earlier.changes.push(change),
            }
        }
    }
    joined.into_iter().filter_map(|step| Step::new(step.kind, design, step.changes)).collect()
}

#[cfg(test)]
mod tests {
    use super::super::{StepKind, steps_of};
    use super::{Change, joined};
    use crate::design::{Design, EndWallTreatment, Field};

    fn next(design: &Design, kind: StepKind) -> super::Step {
        steps_of(design).into_iter().find(|step| step.kind == kind).expect("it stands open")
    }

    /// Cover, hold off, cover deeper, hold off again: two kinds of two rungs, and one of one.
    #[test]
    fn steps_taken_one_after_another_are_joined_by_kind() {
        let start = Design { end_wall_treatment: EndWallTreatment::LeaveBare, ..Design::default() };
        let kinds = [
            StepKind::HoldStudsOff,
            StepKind::CoverCastings,
            StepKind::HoldStudsOff,
            StepKind::DeepenCastingCover,
        ];
        let (mut design, mut taken) = (start.clone(), Vec::new());
        for kind in kinds {
            let step = next(&design, kind);
            design = step.taken_by(&design);
            taken.push(step);
        }
        let steps = joined(&start, &taken);
        let found: Vec<StepKind> = steps.iter().map(|step| step.kind).collect();
        assert_eq!(found, [kinds[0], kinds[1], kinds[3]]);
        let (field, before, after) = (Field::StudStandOff, 0.022, 0.038);
        assert_eq!(steps[0].changes, [Change::Number { field, before, after }]);
        let made = steps.iter().fold(start, |design, step| step.taken_by(&design));
        assert_eq!(made, design);
    }

    #[test]
    fn what_changes_nothing_is_no_step() {
        let design = Design::default();
        let step = next(&design, StepKind::HoldJoistsOff);
        assert!(joined(&step.taken_by(&design), [&step]).is_empty());
    }
}
