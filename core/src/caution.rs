//! Which warnings a design calls for, as keys: the words stand at the edge, in each language.

use crate::design::{
    CheckedDesign, Design, EndWallTreatment, LiningMaterial, PersonnelDoor, RoomUse,
};
use crate::envelope::foam_material;
use crate::humidity::controls_vapour;
use crate::room::Room;
use crate::units::Length;

/// A least room size that a published code asks for. Shown as a matter to ask about, never as a
/// finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RoomMinimum {
    /// Ceiling height of habitable rooms, 7 ft: International Residential Code 2021, R305.1.
    IrcHabitableHeight,
    /// Ceiling height of bathrooms and laundries, 6 ft 8 in: International Residential Code 2021,
    /// R305.1.
    IrcBathroomHeight,
    /// Any horizontal dimension of a habitable room, 7 ft: International Residential Code 2021,
    /// R304.2 (clause number from memory).
    IrcHabitableWidth,
    /// Ceiling height of occupiable spaces, 7 ft 6 in: International Building Code 2021, 1208.2.
    IbcOccupiableHeight,
    /// Ceiling height of living rooms over three quarters of the area, 2.3 m: Ontario Building
    /// Code 2012, table 9.5.3.1.
    OntarioLivingHeight,
}

impl RoomMinimum {
    /// Every minimum that is looked at.
    pub const ALL: [Self; 5] = [
        Self::IrcHabitableWidth,
        Self::IrcHabitableHeight,
        Self::IrcBathroomHeight,
        Self::IbcOccupiableHeight,
        Self::OntarioLivingHeight,
    ];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::IrcHabitableHeight => "irc_2021_habitable_height",
            Self::IrcBathroomHeight => "irc_2021_bathroom_height",
            Self::IrcHabitableWidth => "irc_2021_habitable_width",
            Self::IbcOccupiableHeight => "ibc_2021_occupiable_height",
            Self::OntarioLivingHeight => "ontario_2012_living_height",
        }
    }

    /// What the text asks for.
    pub const fn least(self) -> Length {
        match self {
            Self::IrcHabitableHeight | Self::IrcHabitableWidth => Length::inches(84.0),
            Self::IrcBathroomHeight => Length::inches(80.0),
            Self::IbcOccupiableHeight => Length::inches(90.0),
            Self::OntarioLivingHeight => Length::mm(2300.0),
        }
    }

    /// What the room has of it.
    pub fn has(self, room: &Room) -> Length {
        match self {
            Self::IrcHabitableWidth => room.clear.width.min(room.clear.length),
            _ => room.clear.height,
        }
    }
}

/// A warning.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Caution {
    /// These are planning figures; the local authority and the survey decide.
    PlanningAid,
    /// Nominal box sizes: measure before cutting.
    NominalSizes,
    /// Spraying foam: isocyanate, re-entry, thickness of a lift.
    SprayFoam,
    /// Foam deeper than one lift: exotherm.
    FoamInLifts,
    /// Foam needs a thermal barrier; this lining may not be one.
    ThermalBarrier,
    /// No hot work on a foamed box.
    HotWork,
    /// Openings and snow: structure.
    Structure,
    /// The old floor and paint may be treated.
    OldFloorAndPaint,
    /// Only sealed heaters; alarms.
    SealedHeaters,
    /// Bonding, residual-current protection, licensed work.
    Electrical,
    /// Foam thinner than holds vapour back by itself.
    ThinFoamForVapour,
    /// Bare castings will drip and frost.
    BareCastings,
    /// Castings without a cover behind the lining drip and frost where nobody sees it.
    BareCastingsBehindLining,
    /// A fan draws on the room: flues that draw by warmth alone spill.
    SuctionAndFlues,
    /// A flame without a flue gives its water and its fumes to the room.
    UnventedFlame,
    /// A room to sleep in needs a second way out.
    SleepersWayOut,
    /// A wet use needs an engineered design, drains and metal that does not rust.
    WetUse,
    /// The studs or joists touch the steel.
    FrameTouchesSteel,
    /// The steel frames round door and windows face the room with no foam over them.
    BareOpeningFrames,
    /// The room is smaller than a published minimum.
    BelowRoomMinimum(RoomMinimum),
}

impl Caution {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::PlanningAid => "planning_aid",
            Self::NominalSizes => "nominal_sizes",
            Self::SprayFoam => "spray_foam",
            Self::FoamInLifts => "foam_in_lifts",
            Self::ThermalBarrier => "thermal_barrier",
            Self::HotWork => "hot_work",
            Self::Structure => "structure",
            Self::OldFloorAndPaint => "old_floor_and_paint",
            Self::SealedHeaters => "sealed_heaters",
            Self::Electrical => "electrical",
            Self::ThinFoamForVapour => "thin_foam_for_vapour",
            Self::BareCastings => "bare_castings",
            Self::BareCastingsBehindLining => "bare_castings_behind_lining",
            Self::SuctionAndFlues => "suction_and_flues",
            Self::UnventedFlame => "unvented_flame",
            Self::SleepersWayOut => "sleepers_way_out",
            Self::WetUse => "wet_use",
            Self::FrameTouchesSteel => "frame_touches_steel",
            Self::BareOpeningFrames => "bare_opening_frames",
            Self::BelowRoomMinimum(_) => "below_room_minimum",
        }
    }
}

/// The deepest lift of foam that is sprayed at once.
///
/// Common practice, no source: 1½ in; the foam maker's own figure governs.
pub const DEEPEST_LIFT: Length = Length::inches(1.5);

/// Least gypsum board taken by the model codes as a thermal barrier over foam plastic, ½ in
/// (International Building Code 2603.4).
pub const BARRIER_GYPSUM: Length = Length::inches(0.5);

/// Least wood structural panel taken as a thermal barrier, 23/32 in (International Building Code
/// 2603.4, 2018 and later; from memory).
pub const BARRIER_WOOD_PANEL: Length = Length::inches(23.0 / 32.0);

/// The warnings of a design, in the order they are read.
pub fn cautions(checked: &CheckedDesign, room: &Room) -> Vec<Caution> {
    let design = checked.design();
    let measured = design.measured_length.is_some()
        && design.measured_width.is_some()
        && design.measured_height.is_some();
    let foams =
        [design.side_wall_foam, design.front_end_foam, design.door_end_foam, design.ceiling_foam];
    let least_foam = foam_material(design).least_depth_for_vapour_control();
    let corners = [&room.front_corner, &room.door_corner];
    let left_bare = design.end_wall_treatment == EndWallTreatment::LeaveBare;
    let conditional = [
        (design.room_use == RoomUse::Sleeping, Caution::SleepersWayOut),
        (design.burns_without_a_flue(), Caution::UnventedFlame),
        (design.room_use.is_wet(), Caution::WetUse),
        (design.damper_count > 0.0, Caution::SuctionAndFlues),
        (corners.iter().any(|corner| corner.bare_steel), Caution::BareCastings),
        (
            left_bare && corners.iter().any(|corner| !corner.bare_steel),
            Caution::BareCastingsBehindLining,
        ),
        (
            design.stud_stand_off == Length::ZERO || design.joist_stand_off == Length::ZERO,
            Caution::FrameTouchesSteel,
        ),
        (
            design.opening_frame_foam == Length::ZERO
                && (design.personnel_door != PersonnelDoor::None || design.window_count > 0.0),
            Caution::BareOpeningFrames,
        ),
        (foams.iter().any(|&foam| !controls_vapour(foam, least_foam)), Caution::ThinFoamForVapour),
        (lining_may_not_be_a_barrier(design), Caution::ThermalBarrier),
        (foams.iter().any(|&foam| foam > DEEPEST_LIFT), Caution::FoamInLifts),
        (!measured, Caution::NominalSizes),
    ];
    let below = RoomMinimum::ALL
        .into_iter()
        .filter(|minimum| minimum.has(room) < minimum.least())
        .map(Caution::BelowRoomMinimum);
    let always = [
        Caution::SprayFoam,
        Caution::HotWork,
        Caution::Structure,
        Caution::OldFloorAndPaint,
        Caution::SealedHeaters,
        Caution::Electrical,
    ];
    [Caution::PlanningAid]
        .into_iter()
        .chain(conditional.into_iter().filter(|&(holds, _)| holds).map(|(_, caution)| caution))
        .chain(below)
        .chain(always)
        .collect()
}

fn lining_may_not_be_a_barrier(design: &Design) -> bool {
    design.lining_thickness
        < match design.lining_material {
            LiningMaterial::Plywood => BARRIER_WOOD_PANEL,
            LiningMaterial::GypsumBoard => BARRIER_GYPSUM,
        }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 13 mm of plywood are no 23/32 in (18.26 mm), nor with 6 mm of plastic over them, though together they are thicker;
    /// 18.3 mm are, panel or not.
    #[test]
    fn a_panel_of_plastic_is_no_thermal_barrier() {
        let warned = |lining: f64, panel: f64| {
            let design = Design {
                lining_thickness: Length::mm(lining),
                panel_thickness: Length::mm(panel),
                ..Design::default()
            };
            let checked = design.check().unwrap();
            cautions(&checked, &Room::of(&checked)).contains(&Caution::ThermalBarrier)
        };
        assert_eq!([(13.0, 0.0), (13.0, 6.0)].map(|(it, panel)| warned(it, panel)), [true, true]);
        assert_eq!([(18.3, 0.0), (18.3, 6.0)].map(|(it, panel)| warned(it, panel)), [false, false]);
    }
}
