//! Outdoor air of a design: what leaks in, and what the fan brings beside it.

use crate::moisture::MoistureError;
use crate::units::{Duty, MassFlow};
use crate::ventilation::DryAirFlow;

/// The fan of a design beside what leaks in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FanAir {
    /// What passes the fan while it runs.
    pub moves: DryAirFlow,
    /// Outdoor air that comes in beyond what leaks in anyway, while it runs.
    pub adds: DryAirFlow,
}

impl FanAir {
    /// A fan beside leaks.
    ///
    /// A fan that only draws air out keeps the room below outdoors, so that less leaks in elsewhere: together they
    /// bring √(m_leak² + m_fan²). An exchanger moves as much in as out and leaves the leaks as they are: then they
    /// add. Source: ASHRAE Handbook of Fundamentals 2017, chapter 16, combining infiltration and
    /// unbalanced ventilation (from memory).
    ///
    /// # Errors
    /// Refuses a flow out of range; none for a checked design.
    pub fn beside(
        leakage: DryAirFlow,
        moves: DryAirFlow,
        is_balanced: bool,
    ) -> Result<Self, MoistureError> {
        let [leaks, fan] = [leakage, moves].map(|flow| flow.dry_air().value());
        let adds = if is_balanced { fan } else { (leaks * leaks + fan * fan).sqrt() - leaks };
        Ok(Self { moves, adds: DryAirFlow::new(MassFlow::new(adds.max(0.0)))? })
    }

    /// Part of the time for which it must run so that outdoor air comes in at a rate beyond the leaks; above 1
    /// where it is too small.
    pub fn duty_to_add(&self, flow: DryAirFlow) -> f64 {
        part(flow, self.adds)
    }

    /// Part of the time for which it must run so that so much passes it; above 1 where it is too small.
    pub fn duty_to_move(&self, flow: DryAirFlow) -> f64 {
        part(flow, self.moves)
    }

    /// What passes it in the mean at a duty.
    ///
    /// # Errors
    /// Refuses a flow out of range.
    pub fn moved_at(&self, duty: Duty) -> Result<DryAirFlow, MoistureError> {
        Ok(DryAirFlow::new(self.moves.dry_air() * duty.value())?)
    }

    /// What it adds in the mean at a duty.
    ///
    /// # Errors
    /// Refuses a flow out of range.
    pub fn added_at(&self, duty: Duty) -> Result<DryAirFlow, MoistureError> {
        Ok(DryAirFlow::new(self.adds.dry_air() * duty.value())?)
    }
}

/// A flow over another; nothing needs no time, and a fan that adds nothing brings nothing however long it runs.
fn part(flow: DryAirFlow, whole: DryAirFlow) -> f64 {
    if flow.dry_air() <= MassFlow::ZERO { 0.0 } else { flow.dry_air() / whole.dry_air() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flow(value: f64) -> DryAirFlow {
        DryAirFlow::new(MassFlow::new(value)).expect("in range")
    }

    /// 3, 4, 5: the sides of a right-angled triangle.
    #[test]
    fn leaks_and_an_exhaust_fan_do_not_add() {
        let drawn = FanAir::beside(flow(0.03), flow(0.04), false).expect("in range");
        assert!((drawn.adds.dry_air().value() - 0.02).abs() < 1e-15, "{drawn:?}");
        let balanced = FanAir::beside(flow(0.03), flow(0.04), true).expect("in range");
        assert_eq!(balanced.adds, balanced.moves);
        assert!((drawn.duty_to_add(flow(0.01)) - 0.5).abs() < 1e-12);
        assert!((drawn.duty_to_move(flow(0.01)) - 0.25).abs() < 1e-12);
        assert_eq!(drawn.duty_to_add(flow(0.0)), 0.0);
    }
}
