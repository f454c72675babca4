//! The ground state: every choice a visitor can make, and what is allowed.
//!
//! [`Design`] holds the choices as given, lawful or not. [`Design::check`] returns either a
//! [`CheckedDesign`], the only thing the rest of the house accepts, or all errors at once.

mod check;
mod check_air;
mod choice;
mod error;
mod field;
mod room_use;
mod stack;
mod use_hours;

pub use check::{
    CLEAR_OF_CORNERS, CheckedDesign, DesignError, DesignProblem, LEAST_TEMPERATURE_DIFFERENCE,
    MEASURED_TOLERANCE,
};
pub use choice::{
    DamperScreen, DoorEndFinish, EndWallTreatment, FanGiven, FloorRecesses, FoamMeasure,
    FramePosition, LiningMaterial, OutdoorAirRule, PersonnelDoor, RoomUse, SleeveEnd, Wall,
    WeatherCover, WindowSpacer,
};
pub use field::{Design, DesignRange, Field, Quantity};
pub use room_use::UsualUse;
pub use stack::{STOCK_MEMBER_DEPTHS, Stack, Surface};
