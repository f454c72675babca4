//! How humid a room stands with a source, a flow of outdoor air and cold places that take their part.

use super::cold_places::{ColdPlace, sinks};
use crate::moisture::{MoistureError, Sink, Supply};
use crate::psychro::{MOLAR_MASS_RATIO, MoistAir};
use crate::units::{HumidityRatio, MassFlow, Pressure, RelativeHumidity, Temperature};
use crate::ventilation::DryAirFlow;

/// Most rounds in which W = 0.622·p/(P − p) is made straight at the last p: each leaves p/P of the error, a hundredth in
/// winter and an eighth in a hot room high up.
const ROUNDS: usize = 16;

/// Part by which a vapour pressure may still move when the rounds end.
const SETTLED: f64 = 1e-12;

/// A room at rest in its moisture.
#[derive(Clone, Debug, PartialEq)]
pub struct StandingRoom {
    /// Its air.
    pub air: MoistAir,
    /// What each cold place takes, coldest first; those after the last stay dry.
    pub taken: Vec<MassFlow>,
    /// What air carries out; below 0 where outdoor air brings moisture.
    pub carried_out: MassFlow,
    /// What the cold places would take if the room stood as humid as without them.
    pub could_take: MassFlow,
    /// What is left over in a saturated room and condenses wherever it can.
    pub over: MassFlow,
}

impl StandingRoom {
    /// The balance G = carried out + taken + over.
    ///
    /// Left out: the heat that condensing sets free and the insulation of the frost. Nothing lies on the places at
    /// first, so none gives water back.
    pub(super) fn of(
        source: MassFlow,
        flow: DryAirFlow,
        outdoor: &MoistAir,
        indoor: Temperature,
        places: &[ColdPlace],
    ) -> Result<Self, MoistureError> {
        let pressure = outdoor.air_pressure();
        let saturated =
            MoistAir::from_relative_humidity(indoor, RelativeHumidity::new(1.0), pressure)?;
        let most = saturated.vapour_pressure().value();
        let flow = flow.dry_air().value();
        let brought = flow * outdoor.humidity_ratio().value();
        let supply = |pascals: f64| Supply {
            given: source.value() + brought,
            carried: flow * MOLAR_MASS_RATIO / (pressure.value() - pascals),
        };
        let solved = |sinks: &[Sink]| {
            let mut pascals = outdoor.vapour_pressure().value();
            for _ in 0..ROUNDS {
                let now = supply(pascals);
                let any = now.carried > 0.0 || !sinks.is_empty();
                let next = if any {
                    now.balanced(sinks, pascals)
                } else if source > MassFlow::ZERO {
                    most
                } else {
                    pascals
                };
                // Air that would hold more than saturated ends there.
                let next = if next < most { next } else { most };
                let moved = (next - pascals).abs();
                pascals = next;
                if moved <= SETTLED * pascals {
                    break;
                }
            }
            pascals
        };
        let free = solved(&[]);
        let sinks = sinks(places, [indoor, outdoor.temperature()], Pressure::new(free))?;
        let pascals = if sinks.is_empty() { free } else { solved(&sinks) };
        let ratio = MOLAR_MASS_RATIO * pascals / (pressure.value() - pascals);
        let takes = |pascals: f64| sinks.iter().map(move |sink| MassFlow::new(sink.takes(pascals)));
        let taken: Vec<MassFlow> = takes(pascals).collect();
        let carried_out = MassFlow::new(flow * ratio - brought);
        let left = source - carried_out - taken.iter().copied().sum::<MassFlow>();
        Ok(Self {
            air: MoistAir::from_humidity_ratio(indoor, HumidityRatio::new(ratio), pressure)?,
            could_take: takes(free).sum(),
            // What does not balance in air drier than saturated is rounding.
            over: if pascals < most { MassFlow::ZERO } else { left.max(MassFlow::ZERO) },
            taken,
            carried_out,
        })
    }

    /// How humid it stands.
    pub fn relative_humidity(&self) -> RelativeHumidity {
        self.air.relative_humidity()
    }

    /// Whether it holds no more.
    pub fn is_saturated(&self) -> bool {
        self.over > MassFlow::ZERO
    }
}
