//! The cold places as sinks of the room's vapour: what lies on them as frost or water, and what comes and
//! goes in an hour.

use crate::design::Surface;
use crate::envelope::Envelope;
use crate::evaluate::Evaluation;
use crate::humidity::{ColdSpot, SpotPlace, cold_area};
use crate::units::TemperatureFactor;

/// Water that a square metre of a wall holds before it runs off, 0.1 kg/m². Common practice, no source.
const HELD_BY_A_SURFACE: f64 = 0.1;

/// Heat of evaporation near 0 °C, 2.501 MJ/kg, and of melting, 0.3336 MJ/kg (ASHRAE Fundamentals 2017, chapter 1,
/// equations 32 and 34; IAPWS from memory: 2.5009 and 0.33343).
const EVAPORATION: f64 = 2.501e6;
const MELTING: f64 = 0.3336e6;

/// A place that takes water from the air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ColdPlace {
    pub(super) place: SpotPlace,
    /// Temperature factor with ordinary surface resistances, which sets how cold it is while it takes water.
    pub(super) factor: f64,
    /// Square metres taken to be as cold as its coldest point.
    pub(super) area: f64,
}

/// The known places of an evaluation, coldest first; the plain areas of walls and ceiling are the lining, which
/// the balance of vapour has for itself.
pub(super) fn cold_places(evaluation: &Evaluation) -> Vec<ColdPlace> {
    let design = evaluation.checked.design();
    let envelope: &Envelope = &evaluation.envelope;
    let of = |spot: &ColdSpot| {
        let area = cold_area(spot.place, design, &evaluation.room, envelope).value();
        let factor: TemperatureFactor = spot.ordinary_factor;
        ColdPlace { place: spot.place, factor: factor.value(), area }
    };
    let mut places: Vec<ColdPlace> = evaluation
        .cold_spots
        .spots
        .iter()
        .filter(
            |spot| !matches!(spot.place, SpotPlace::Plain(surface) if surface != Surface::Floor),
        )
        .map(of)
        .filter(|place| place.area > 0.0)
        .collect();
    places.sort_by(|one, other| one.factor.total_cmp(&other.factor));
    places
}

/// What lies on a place, kg.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Lying {
    pub(super) frost: f64,
    pub(super) water: f64,
}

impl Lying {
    pub(super) fn total(&self) -> f64 {
        self.frost + self.water
    }
}

/// What one hour did to one place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct PlaceHour {
    /// Kilograms that came from the air; below 0 what went back to it.
    pub(super) came: f64,
    /// Kilograms that ran off.
    pub(super) ran_off: f64,
    /// Whether frost melted.
    pub(super) thawed: bool,
    /// Joules set free at the place by condensing and freezing; below 0 what drying and melting took.
    pub(super) released: f64,
}

impl Lying {
    /// What lies there after so much came from the air at a surface temperature: below 0 °C all of it is frost, above
    /// all is water, of which only so much stays.
    pub(super) fn after(&mut self, came: f64, celsius: f64, area: f64) -> PlaceHour {
        let mut hour = PlaceHour { came, released: came * EVAPORATION, ..PlaceHour::default() };
        if celsius < 0.0 {
            // What was wet freezes, what comes freezes, and what goes back goes as ice.
            hour.released += (self.water + came) * MELTING;
            self.frost = (self.total() + came).max(0.0);
            self.water = 0.0;
        } else {
            hour.thawed = self.frost > 0.0;
            hour.released -= self.frost * MELTING;
            self.water = (self.total() + came).max(0.0);
            self.frost = 0.0;
            hour.ran_off = (self.water - HELD_BY_A_SURFACE * area).max(0.0);
            self.water -= hour.ran_off;
        }
        hour
    }
}

/// A sink in an hour: conductance kg/(s·Pa), the vapour pressure that it is in balance with, Pa, and the most that
/// can go back, kg/s.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sink {
    pub(super) conductance: f64,
    pub(super) balance: f64,
    pub(super) gives_at_most: f64,
}

impl Sink {
    /// What it takes at a vapour pressure, kg/s.
    pub(super) fn takes(&self, pascals: f64) -> f64 {
        (self.conductance * (pascals - self.balance)).max(-self.gives_at_most)
    }
}

/// The vapour pressure at which a room with sinks is in balance: N − D·p = Σ takes(p), whose left falls and
/// whose right rises with p, both in straight pieces. Sinks come coldest first.
pub(super) fn balanced(numerator: f64, denominator: f64, sinks: &[Sink]) -> f64 {
    let mut pascals = numerator / denominator;
    // Each round takes the pieces that hold at the last pressure; as often as there are pieces at most.
    for _ in 0..=2 * sinks.len() {
        let (mut up, mut down) = (numerator, denominator);
        for sink in sinks {
            if sink.conductance * (pascals - sink.balance) <= -sink.gives_at_most {
                up += sink.gives_at_most;
            } else {
                up += sink.conductance * sink.balance;
                down += sink.conductance;
            }
        }
        let next = up / down;
        if (next - pascals).abs() <= 1e-9 * pascals.abs() {
            return next;
        }
        pascals = next;
    }
    pascals
}

/// The cold places through a run: what lies on them, and the sinks they are in an hour.
#[derive(Clone, Debug)]
pub(super) struct ColdPlaces<'a> {
    places: &'a [ColdPlace],
    pub(super) lying: Vec<Lying>,
    /// Sinks of the hour, of the places that matter in it, in the same order from the coldest.
    sinks: Vec<Sink>,
    /// Surface temperature of each of them.
    celsius: Vec<f64>,
    /// How many places from the coldest must be looked at because something lies on them.
    wet: usize,
}

impl<'a> ColdPlaces<'a> {
    pub(super) fn new(places: &'a [ColdPlace]) -> Self {
        Self {
            places,
            lying: vec![Lying::default(); places.len()],
            sinks: Vec::with_capacity(places.len()),
            celsius: Vec::with_capacity(places.len()),
            wet: 0,
        }
    }

    /// Everything that lies on them, kg.
    pub(super) fn held(&self) -> f64 {
        self.lying.iter().map(Lying::total).sum()
    }

    /// Finds the sinks of an hour of seconds between room air and outdoors, °C: places that take water from air of a
    /// vapour pressure at most, and places on which some lies. `onto` is kg/(s·Pa) for a square metre.
    ///
    /// Flux follows the difference of vapour concentrations, p/(R_v·T) each at its own temperature: so a
    /// place is in balance with p_sat(θ_s)·T_air/T_s.
    pub(super) fn find_sinks(
        &mut self,
        [air, outdoors]: [f64; 2],
        most_pascals: f64,
        onto: f64,
        seconds: f64,
        saturation: impl Fn(f64) -> f64,
    ) {
        self.sinks.clear();
        self.celsius.clear();
        for (n, place) in self.places.iter().enumerate() {
            let celsius = outdoors + place.factor * (air - outdoors);
            let balance = saturation(celsius) * (air + 273.15) / (celsius + 273.15);
            // Coldest first: where one stays dry so do those after it, unless water lies there.
            if balance >= most_pascals && n >= self.wet && air >= outdoors {
                break;
            }
            self.celsius.push(celsius);
            let gives_at_most = self.lying[n].total() / seconds;
            self.sinks.push(Sink { conductance: onto * place.area, balance, gives_at_most });
        }
    }

    /// The most that they give back in the hour, kg/s.
    pub(super) fn gives_at_most(&self) -> f64 {
        self.lying[..self.wet].iter().map(Lying::total).sum()
    }

    /// The sinks found last.
    pub(super) fn sinks(&self) -> &[Sink] {
        &self.sinks
    }

    /// Lets an hour of seconds pass at a vapour pressure; `each` hears the number of a place and what happened there.
    pub(super) fn pass(
        &mut self,
        pascals: f64,
        seconds: f64,
        mut each: impl FnMut(usize, &ColdPlace, f64, &PlaceHour, &Lying),
    ) {
        let mut wet = 0;
        for (n, (sink, &celsius)) in self.sinks.iter().zip(&self.celsius).enumerate() {
            let came = sink.takes(pascals) * seconds;
            let lying = &mut self.lying[n];
            if came == 0.0 && lying.total() == 0.0 {
                continue;
            }
            let place = &self.places[n];
            let hour = lying.after(came, celsius, place.area);
            if lying.total() > 0.0 {
                wet = n + 1;
            }
            each(n, place, celsius, &hour, lying);
        }
        self.wet = wet;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked by hand. N = 10, D = 1: 10 Pa without sinks. Sink of conductance 1 and balance 4: (10 + 4)/2 = 7. A second of
    /// conductance 2 and balance 8 stays dry; wet with no end of water it gives: (10 + 4 + 16)/4 = 7.5; wet with
    /// only 0.5 it gives that: (10 + 0.5 + 4)/2 = 7.25.
    #[test]
    fn pressures_balance_as_by_hand() {
        let cold = Sink { conductance: 1.0, balance: 4.0, gives_at_most: 0.0 };
        let warm = |gives_at_most| Sink { conductance: 2.0, balance: 8.0, gives_at_most };
        for (sinks, expected) in [
            (vec![], 10.0),
            (vec![cold], 7.0),
            (vec![cold, warm(0.0)], 7.0),
            (vec![cold, warm(100.0)], 7.5),
            (vec![cold, warm(0.5)], 7.25),
        ] {
            let found = balanced(10.0, 1.0, &sinks);
            assert!((found - expected).abs() < 1e-9, "{found} for {sinks:?}");
        }
    }

    /// A kilogram on two square metres, by hand: grows as ice with 2.501 + 0.3336 MJ/kg; at the thaw takes 0.3336 MJ back
    /// and runs off but for 0.2 kg; that dries with 2.501 MJ/kg.
    #[test]
    fn frost_grows_thaws_runs_off_and_dries() {
        let mut lying = Lying::default();
        let grown = lying.after(1.0, -5.0, 2.0);
        assert!((grown.released - 2.8346e6).abs() < 1.0 && lying.frost == 1.0, "{grown:?}");
        let thawed = lying.after(0.0, 1.0, 2.0);
        assert!(thawed.thawed && (thawed.ran_off - 0.8).abs() < 1e-12, "{thawed:?}");
        assert!((thawed.released + 0.3336e6).abs() < 1.0, "{thawed:?}");
        let dried = lying.after(-0.2, 1.0, 2.0);
        assert!(lying.total() < 1e-15 && (dried.released + 0.2 * 2.501e6).abs() < 1.0, "{dried:?}");
        // What is wet freezes with the heat of melting and can go as ice.
        lying.water = 0.1;
        let frozen = lying.after(-0.05, -1.0, 2.0);
        let expected = -0.05 * 2.501e6 + 0.05 * 0.3336e6;
        assert!((frozen.released - expected).abs() < 1.0, "{frozen:?}");
        assert!((lying.frost - 0.05).abs() < 1e-15 && lying.water == 0.0, "{lying:?}");
    }
}
