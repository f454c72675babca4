//! The figures of a model by name, for a program elsewhere that runs the same loop.

use super::model::YearModel;

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
}
