//! What kinds of steps there are.

/// One thing that a workshop changes about a design, whatever the figure it changes it to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StepKind {
    /// A foam cover over each bare casting.
    CoverCastings,
    /// More foam between a casting's steel and the lining over it.
    DeepenCastingCover,
    /// Both end walls brought in past the castings.
    BuildOutEndWalls,
    /// The ceiling brought down past the castings.
    DropCeiling,
    /// Studs held further off the steel.
    HoldStudsOff,
    /// Ceiling joists held further off the roof.
    HoldJoistsOff,
    /// Studs and joists moved over the troughs of the sheet.
    MoveFrameOverTroughs,
    /// A thicker pad between the studs' brackets and the rail.
    PadBrackets,
    /// More foam between the floor members.
    FoamBetweenFloorMembers,
    /// Foam round and under the floor members.
    WrapFloorMembers,
    /// A foam board over the plywood floor.
    BoardOverFloor,
    /// Foam in forklift pockets and gooseneck tunnel.
    FillFloorRecesses,
    /// More foam over the steel frames of openings.
    PackOpeningFrames,
    /// Thin and missed spots of the side walls sprayed again.
    MakeFoamWhole,
    /// The lining held without long screws into the sheet.
    LeaveOutScrews,
    /// More foam on the side walls.
    DeepenSideWallFoam,
    /// More foam on the front end.
    DeepenFrontEndFoam,
    /// More foam on the framed wall behind the cargo doors.
    DeepenDoorEndFoam,
    /// More foam under the roof.
    DeepenCeilingFoam,
    /// A personnel door that loses less.
    BetterDoor,
    /// Windows that lose less.
    BetterWindows,
    /// A warm spacer in the glass of the windows.
    WarmGlassEdge,
    /// The sleeves of dampers recessed behind the studs.
    RecessSleeves,
    /// Foam on the dampers' blades.
    FoamDamperBlades,
    /// Dampers and a fan where there are none.
    FitFan,
    /// A fan of more flow and pressure.
    BiggerFan,
    /// A heat exchanger beside the fan, or a better one.
    FitHeatExchanger,
    /// Fewer leaks.
    SealLeaks,
    /// The fan's controller set to a drier room.
    LowerTargetHumidity,
}

impl StepKind {
    /// Every kind, in the order a workshop would think of them: the bridge itself, then the foam beside it,
    /// doors and windows, then the air. Common practice, no source.
    pub const ALL: [Self; 29] = [
        Self::CoverCastings,
        Self::DeepenCastingCover,
        Self::BuildOutEndWalls,
        Self::DropCeiling,
        Self::HoldStudsOff,
        Self::HoldJoistsOff,
        Self::MoveFrameOverTroughs,
        Self::PadBrackets,
        Self::FoamBetweenFloorMembers,
        Self::WrapFloorMembers,
        Self::BoardOverFloor,
        Self::FillFloorRecesses,
        Self::PackOpeningFrames,
        Self::MakeFoamWhole,
        Self::LeaveOutScrews,
        Self::DeepenSideWallFoam,
        Self::DeepenFrontEndFoam,
        Self::DeepenDoorEndFoam,
        Self::DeepenCeilingFoam,
        Self::BetterDoor,
        Self::BetterWindows,
        Self::WarmGlassEdge,
        Self::RecessSleeves,
        Self::FoamDamperBlades,
        Self::FitFan,
        Self::BiggerFan,
        Self::FitHeatExchanger,
        Self::SealLeaks,
        Self::LowerTargetHumidity,
    ];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::CoverCastings => "cover_castings",
            Self::DeepenCastingCover => "deepen_casting_cover",
            Self::BuildOutEndWalls => "build_out_end_walls",
            Self::DropCeiling => "drop_ceiling",
            Self::HoldStudsOff => "hold_studs_off",
            Self::HoldJoistsOff => "hold_joists_off",
            Self::MoveFrameOverTroughs => "move_frame_over_troughs",
            Self::PadBrackets => "pad_brackets",
            Self::FoamBetweenFloorMembers => "foam_between_floor_members",
            Self::WrapFloorMembers => "wrap_floor_members",
            Self::BoardOverFloor => "board_over_floor",
            Self::FillFloorRecesses => "fill_floor_recesses",
            Self::PackOpeningFrames => "pack_opening_frames",
            Self::MakeFoamWhole => "make_foam_whole",
            Self::LeaveOutScrews => "leave_out_screws",
            Self::DeepenSideWallFoam => "deepen_side_wall_foam",
            Self::DeepenFrontEndFoam => "deepen_front_end_foam",
            Self::DeepenDoorEndFoam => "deepen_door_end_foam",
            Self::DeepenCeilingFoam => "deepen_ceiling_foam",
            Self::BetterDoor => "better_door",
            Self::BetterWindows => "better_windows",
            Self::WarmGlassEdge => "warm_glass_edge",
            Self::RecessSleeves => "recess_sleeves",
            Self::FoamDamperBlades => "foam_damper_blades",
            Self::FitFan => "fit_fan",
            Self::BiggerFan => "bigger_fan",
            Self::FitHeatExchanger => "fit_heat_exchanger",
            Self::SealLeaks => "seal_leaks",
            Self::LowerTargetHumidity => "lower_target_humidity",
        }
    }

    /// Whether it acts on the room's air, and so on its humidity; every other acts on the surface.
    pub const fn acts_on_air(self) -> bool {
        matches!(
            self,
            Self::FitFan
                | Self::BiggerFan
                | Self::FitHeatExchanger
                | Self::SealLeaks
                | Self::LowerTargetHumidity
        )
    }
}
