//! The figures of a model by name, for a program elsewhere that runs the same loop.

use super::model::YearModel;
use crate::climate::HOURS_IN_YEAR;

impl YearModel<'_> {
    /// What [`run_year`](super::run_year) reckons with besides weather, sun and choices, in SI units
    /// (temperatures in °C): the network, the balance of vapour, sun and sky at the steel, the windows.
    pub fn coefficients(&self) -> Vec<(&'static str, f64)> {
        let network = &self.network;
        let [roof, front_end, door_end, left_side, right_side] = self.sun_at_steel;
        let (window_area, window_column) = self.window;
        let (sun_on_door, door_column) = self.sun_on_door;
        let mut all = vec![
            ("set_point", self.set_point),
            ("surface_to_air", network.surface_to_air),
            ("mass_to_surface", network.mass_to_surface),
            ("mass_to_outdoors", network.mass_to_outdoors),
            ("openings", network.openings),
            ("leaks", network.leaks),
            ("capacity", network.capacity),
            ("onto_mass", network.onto_mass),
            ("sun_at_roof", roof),
            ("sun_at_front_end", front_end),
            ("sun_at_door_end", door_end),
            ("sun_at_left_side", left_side),
            ("sun_at_right_side", right_side),
            ("sky", self.sky),
            ("sky_through_openings", self.sky_through_openings),
            ("sun_on_door", sun_on_door),
            ("door_column", door_column as f64),
            ("window_area", window_area),
            ("window_column", window_column as f64),
            ("fan", self.fan.full),
        ];
        all.extend(self.vapour.coefficients());
        all
    }

    /// Its cold places, coldest first: temperature factor, area in m², conductance onto it in kg/(s·Pa).
    pub fn cold_places(&self) -> Vec<[f64; 3]> {
        self.places.iter().map(|place| [place.factor, place.area, place.conductance]).collect()
    }

    /// What its use brings in every hour: set-point in °C, heat of occupants and of equipment in W, moisture in kg/s, heat
    /// that drying takes in W.
    pub fn hours_of_use(&self) -> Vec<[f64; 5]> {
        let of = |hour: usize| {
            let now = self.schedule.at(hour);
            let lowered = if now.used { 0.0 } else { self.design.setback.value() };
            [self.set_point - lowered, now.occupants, now.equipment, now.source, now.drying]
        };
        (0..HOURS_IN_YEAR).map(of).collect()
    }
}
