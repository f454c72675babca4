//! The cold places through the hours: what lies on them as frost or water, and what comes and goes in an hour.

use crate::extremes::greater;
use crate::humidity::ColdPlace;
use crate::moisture::Sink;
use crate::psychro::latent_heat_of_vaporisation;

/// Water that a square metre of a wall holds before it runs off, 0.1 kg/m². Common practice, no source.
const HELD_BY_A_SURFACE: f64 = 0.1;

/// Heat of melting at 0 °C, J/kg (ASHRAE Fundamentals 2017, chapter 1, equation 34: 0.3334; IAPWS: 0.33343, from memory).
const MELTING: f64 = 0.3334e6;

/// A cold place as the hours reckon with it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct OfYear {
    pub(super) at: ColdPlace,
    /// Temperature factor.
    pub(super) factor: f64,
    /// Square metres.
    pub(super) area: f64,
    /// Conductance onto it, kg/(s·Pa).
    pub(super) conductance: f64,
}

impl OfYear {
    /// A cold place onto whose square metre so much passes, kg/(m²·s·Pa).
    pub(super) fn new(at: ColdPlace, onto: f64) -> Self {
        let (factor, area) = (at.factor.value(), at.area.value());
        Self { at, factor, area, conductance: onto * area }
    }
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
    /// all is water, of which only so much stays. Heat of vaporising is that of the surface, of ice that of 0 °C and
    /// the heat of melting.
    pub(super) fn after(&mut self, came: f64, celsius: f64, area: f64) -> PlaceHour {
        let vaporising = latent_heat_of_vaporisation(greater(celsius, 0.0));
        let mut hour = PlaceHour { came, released: came * vaporising, ..PlaceHour::default() };
        if celsius < 0.0 {
            // What was wet freezes, what comes freezes, and what goes back goes as ice.
            hour.released += (self.water + came) * MELTING;
            self.frost = greater(self.total() + came, 0.0);
            self.water = 0.0;
        } else {
            hour.thawed = self.frost > 0.0;
            hour.released -= self.frost * MELTING;
            self.water = greater(self.total() + came, 0.0);
            self.frost = 0.0;
            hour.ran_off = greater(self.water - HELD_BY_A_SURFACE * area, 0.0);
            self.water -= hour.ran_off;
        }
        hour
    }
}

/// The cold places through a run: what lies on them, and the sinks they are in an hour.
#[derive(Clone, Debug)]
pub(super) struct ColdPlaces<'a> {
    places: &'a [OfYear],
    pub(super) lying: Vec<Lying>,
    /// Sinks of the hour, of the places that matter in it, in the same order from the coldest.
    sinks: Vec<Sink>,
    /// Surface temperature of each of them.
    celsius: Vec<f64>,
    /// How many places from the coldest must be looked at because something lies on them.
    wet: usize,
}

impl<'a> ColdPlaces<'a> {
    pub(super) fn new(places: &'a [OfYear]) -> Self {
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
    /// vapour pressure at most, and places on which some lies.
    pub(super) fn find_sinks(
        &mut self,
        [air, outdoors]: [f64; 2],
        most_pascals: f64,
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
            self.sinks.push(Sink { conductance: place.conductance, balance, gives_at_most });
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
        mut each: impl FnMut(usize, &OfYear, f64, &PlaceHour, &Lying),
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

    /// A kilogram on two square metres, by hand: grows as ice with 2.501 + 0.3334 MJ/kg; at the thaw takes 0.3334 MJ back
    /// and runs off but for 0.2 kg; that dries with 2.501 - 0.002326 MJ/kg at 1 °C.
    #[test]
    fn frost_grows_thaws_runs_off_and_dries() {
        let mut lying = Lying::default();
        let grown = lying.after(1.0, -5.0, 2.0);
        assert!((grown.released - 2.8344e6).abs() < 1.0 && lying.frost == 1.0, "{grown:?}");
        let thawed = lying.after(0.0, 1.0, 2.0);
        assert!(thawed.thawed && (thawed.ran_off - 0.8).abs() < 1e-12, "{thawed:?}");
        assert!((thawed.released + 0.3334e6).abs() < 1.0, "{thawed:?}");
        let dried = lying.after(-0.2, 1.0, 2.0);
        assert!(
            lying.total() < 1e-15 && (dried.released + 0.2 * 2.498_674e6).abs() < 1.0,
            "{dried:?}"
        );
        // What is wet freezes with the heat of melting and can go as ice.
        lying.water = 0.1;
        let frozen = lying.after(-0.05, -1.0, 2.0);
        let expected = -0.05 * 2.501e6 + 0.05 * 0.3334e6;
        assert!((frozen.released - expected).abs() < 1.0, "{frozen:?}");
        assert!((lying.frost - 0.05).abs() < 1e-15 && lying.water == 0.0, "{lying:?}");
    }
}
