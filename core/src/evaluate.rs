//! The one door: a checked design in, everything known about it out, every stage kept.

use std::sync::OnceLock;

use crate::caution::{Caution, cautions};
use crate::design::{CheckedDesign, EndWallTreatment};
use crate::detail::{Effort, FieldCache, PlacedDetail, details};
use crate::envelope::Envelope;
use crate::heat_load::HeatLoad;
use crate::heat_loss::HeatLoss;
use crate::humidity::{BuildUpWater, ColdSpots, Humidity, build_up_water};
use crate::moisture::MoistureError;
use crate::room::{Room, rooms_by_treatment};
use crate::room_network::{RoomNetwork, RoomNetworkError};

/// Why air and heat of a design were not reckoned. A checked design has no reason.
#[derive(Clone, Debug, PartialEq)]
pub enum NotReckoned {
    /// A state of air that a formula does not reach.
    Air(MoistureError),
    /// A network of heat that cannot be.
    Network(RoomNetworkError),
}

impl NotReckoned {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Air(error) => error.code(),
            Self::Network(error) => error.code(),
        }
    }
}

impl core::fmt::Display for NotReckoned {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Air(error) => error.fmt(f),
            Self::Network(error) => error.fmt(f),
        }
    }
}

impl core::error::Error for NotReckoned {}

impl From<MoistureError> for NotReckoned {
    fn from(error: MoistureError) -> Self {
        Self::Air(error)
    }
}

impl From<RoomNetworkError> for NotReckoned {
    fn from(error: RoomNetworkError) -> Self {
        Self::Network(error)
    }
}

/// Air, water and heat of a room: what follows once its coefficients and cold places are known.
#[derive(Clone, Debug, PartialEq)]
pub struct Balance {
    /// How humid the use makes it, with which air, and what that brings to its places.
    pub humidity: Humidity,
    /// Five resistances and one heat capacity.
    pub network: RoomNetwork,
    /// The heat that it needs at the design temperatures.
    pub load: HeatLoad,
}

/// All that follows from a design.
#[derive(Clone, Debug)]
pub struct Evaluation {
    /// The design it follows from.
    pub checked: CheckedDesign,
    /// The room that is left.
    pub room: Room,
    /// The room under each lawful treatment of the castings, the chosen one included.
    pub rooms_by_treatment: Vec<(EndWallTreatment, Room)>,
    /// What stands where.
    pub envelope: Envelope,
    /// The cold details, each with its field.
    pub details: Vec<PlacedDetail>,
    /// Heat-transfer coefficients by element.
    pub heat_loss: HeatLoss,
    /// Every place with the humidity it stands, coldest first.
    pub cold_spots: ColdSpots,
    /// Air, water and heat of the room; an error names what a formula does not reach, and a checked
    /// design has none.
    pub balance: Result<Balance, NotReckoned>,
    /// Warnings.
    pub cautions: Vec<Caution>,
    /// Water inside the build-ups, once asked for.
    build_ups: OnceLock<Result<Vec<BuildUpWater>, MoistureError>>,
}

impl Evaluation {
    /// Water inside the build-ups through the year, reckoned when it is first asked for: it takes longer
    /// than all else.
    ///
    /// # Errors
    /// As [`Evaluation::balance`].
    pub fn build_ups(&self) -> Result<&[BuildUpWater], NotReckoned> {
        let balance = self.balance.as_ref().map_err(Clone::clone)?;
        let reckon = || build_up_water(&self.checked, &self.envelope, &balance.humidity.months);
        match self.build_ups.get_or_init(reckon) {
            Ok(build_ups) => Ok(build_ups),
            Err(error) => Err(NotReckoned::Air(*error)),
        }
    }

    /// The same with places and losses that wait taken over from an earlier evaluation, and air, water
    /// and heat reckoned from them: a room without gaps, of which [`HeatLoss::is_waiting`] still tells
    /// that it will move.
    #[must_use]
    pub fn with_waiting_from(&self, earlier: &Self) -> Self {
        let heat_loss = self.heat_loss.with_waiting_from(&earlier.heat_loss);
        let cold_spots = self.cold_spots.with_waiting_from(&earlier.cold_spots);
        let balance = balance(&self.checked, &self.room, &self.envelope, &heat_loss, &cold_spots);
        Self { heat_loss, cold_spots, balance, build_ups: OnceLock::new(), ..self.clone() }
    }
}

/// Coefficients, then humidity and the flow that the use needs, then the load.
fn balance(
    checked: &CheckedDesign,
    room: &Room,
    envelope: &Envelope,
    heat_loss: &HeatLoss,
    cold_spots: &ColdSpots,
) -> Result<Balance, NotReckoned> {
    let design = checked.design();
    let humidity = Humidity::of(checked, room, envelope, cold_spots)?;
    let network = RoomNetwork::of(design, room, envelope, heat_loss)?;
    let load = HeatLoad::of(design, heat_loss, &humidity, &network);
    Ok(Balance { humidity, network, load })
}

/// Evaluates a design, every detail solved. Fields that `cache` holds are not solved again.
pub fn evaluate(checked: &CheckedDesign, cache: &mut FieldCache) -> Evaluation {
    evaluate_with(checked, cache, Effort::All)
}

/// Evaluates a design with the details that the effort allows; others wait, and are listed as not
/// counted until they are known.
pub fn evaluate_with(
    checked: &CheckedDesign,
    cache: &mut FieldCache,
    effort: Effort,
) -> Evaluation {
    let room = Room::of(checked);
    let envelope = Envelope::of(checked, &room.clear);
    let details = details(checked, &envelope, cache, effort);
    let heat_loss = HeatLoss::of(checked.design(), &room, &envelope, &details);
    let cold_spots = ColdSpots::of(checked.design(), &envelope, &details);
    let balance = balance(checked, &room, &envelope, &heat_loss, &cold_spots);
    let cautions = cautions(checked, &room);
    Evaluation {
        checked: checked.clone(),
        rooms_by_treatment: rooms_by_treatment(checked),
        room,
        envelope,
        details,
        heat_loss,
        cold_spots,
        balance,
        cautions,
        build_ups: OnceLock::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::evaluate_with;
    use crate::design::CheckedDesign;
    use crate::detail::{Effort, FieldCache};

    #[test]
    fn what_waits_is_taken_over_and_nothing_else_moves() {
        let checked = CheckedDesign::default();
        let with =
            |cache: &mut FieldCache, effort| evaluate_with(&checked, cache, effort).heat_loss;
        let solved = with(&mut FieldCache::default(), Effort::Sections);
        let bare = with(&mut FieldCache::without_solver(), Effort::Sections);
        assert!(bare.transmission < solved.transmission, "sections lose heat");
        let filled = bare.with_waiting_from(&solved);
        let off = (filled.transmission - solved.transmission).value().abs();
        assert!(off < 1e-9, "same design, same loss: off by {off} W/K");
        assert_eq!(filled.losses.len(), solved.losses.len());
        let shares: f64 = filled.losses.iter().map(|loss| loss.share).sum();
        assert!((shares - 1.0).abs() < 1e-12, "shares of the whole: {shares}");
        assert_eq!(filled.not_counted, bare.not_counted, "it still says what waits");
        assert_eq!(bare.with_waiting_from(&bare), bare, "nothing earlier, nothing taken over");
    }
}
