//! Moist air against handbook tables, standards and two general-purpose libraries.

use inchwise_core::psychro::{
    MoistAir, STANDARD_PRESSURE, dry_air_density, enthalpy, humidity_ratio,
    humidity_ratio_from_wet_bulb, hyland_wexler, iso_13788, saturation_humidity_ratio,
    specific_volume, standard_pressure, standard_temperature, vapour_concentration,
    vapour_pressure_from_concentration, wet_bulb,
};
use inchwise_core::units::*;
use inchwise_tests::{Row, Table, Tolerance, close_to};

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn celsius(row: &Row, column: &str) -> Temperature {
    Temperature::celsius(row.number(column))
}

#[test]
fn saturation_pressure_is_the_handbook_table() {
    let table = Table::read(include_str!("../../reference/psychro/ashrae_saturation_pressure.tsv"));
    for row in table.rows() {
        let pressure = hyland_wexler::saturation_pressure(celsius(&row, "temperature_c")).unwrap();
        row.close_to("saturation_pressure_pa", pressure.value());
    }
}

#[test]
fn saturation_over_supercooled_water_is_the_weather_services() {
    let table = Table::read(include_str!("../../reference/psychro/supercooled_water.tsv"));
    for row in table.rows() {
        let temperature = celsius(&row, "temperature_c");
        let all = RelativeHumidity::new(1.0);
        let saturated = hyland_wexler::vapour_pressure_over_water(temperature, all).unwrap();
        row.close_to("saturation_pressure_pa", saturated.value());
        let half = RelativeHumidity::percent(50.0);
        let damp = hyland_wexler::vapour_pressure_over_water(temperature, half).unwrap();
        close_to("half", damp.value(), 0.5 * saturated.value(), Tolerance::relative(1e-12));
    }
}

#[test]
fn saturated_air_is_the_handbook_table() {
    let table = Table::read(include_str!("../../reference/psychro/ashrae_saturated_air.tsv"));
    for row in table.rows() {
        let temperature = celsius(&row, "temperature_c");
        let ratio = saturation_humidity_ratio(temperature, STANDARD_PRESSURE).unwrap();
        row.close_to("humidity_ratio", ratio.value());
        row.close_to("enthalpy_j_per_kg", enthalpy(temperature, ratio).unwrap().value());
    }
}

#[test]
fn saturated_vapour_is_saturated_steam() {
    let table = Table::read(include_str!("../../reference/psychro/saturated_vapour.tsv"));
    for row in table.rows() {
        let temperature = celsius(&row, "temperature_c");
        let pressure = hyland_wexler::saturation_pressure(temperature).unwrap();
        row.close_to("saturation_pressure_pa", pressure.value());
        let concentration = vapour_concentration(temperature, pressure).unwrap();
        row.close_to("concentration_kg_per_m3", concentration.value());
    }
}

#[test]
fn two_grams_a_cubic_metre_are_270_pascals() {
    // Step between the internal humidity classes of ISO 13788:2012, annex A: 2 g/m³ or 270 Pa.
    let two_grams = VapourConcentration::grams_per_cubic_metre(2.0);
    let step = vapour_pressure_from_concentration(Temperature::celsius(20.0), two_grams).unwrap();
    close_to("step in Pa", step.value(), 270.0, Tolerance::absolute(1.0));
}

#[test]
fn moist_air_agrees_with_two_libraries() {
    let table = Table::read(include_str!("../../reference/psychro/moist_air_grid.tsv"));
    for row in table.rows() {
        let temperature = celsius(&row, "temperature_c");
        let humidity = RelativeHumidity::new(row.number("relative_humidity"));
        let air =
            MoistAir::from_relative_humidity(temperature, humidity, STANDARD_PRESSURE).unwrap();
        for library in ["ideal", "real"] {
            let compare =
                |name: &str, value: f64| row.close_to(&format!("{library}_{name}"), value);
            compare("dew_point_c", air.dew_point().unwrap().as_celsius());
            compare("wet_bulb_c", air.wet_bulb().unwrap().as_celsius());
            compare("humidity_ratio", air.humidity_ratio().value());
            compare("enthalpy_j_per_kg", air.enthalpy().value());
            compare("density_kg_per_m3", air.density().value());
        }
    }
}

/// What real air at saturation holds beyond ideal gases, by A. L. Buck, New equations for computing
/// vapor pressure and enhancement factor, Journal of Applied Meteorology 20, 1981 (coefficients
/// from memory), p in hPa: 1.0007 + 3.46e-6·p over water, 1.0003 + 4.18e-6·p over ice.
fn enhancement(temperature: Temperature, hectopascals: f64) -> f64 {
    if temperature < Temperature::celsius(0.0) {
        1.0003 + 4.18e-6 * hectopascals
    } else {
        1.0007 + 3.46e-6 * hectopascals
    }
}

/// All that parts our humidity ratio from that of real air is the enhancement factor: with it in
/// hand the two agree to 0.1 %.
///
/// The product goes without: its states are ideal gases as in ISO 13788 and the ASHRAE equations
/// (PsychroLib meets them to 1e-6), and in every answer it stands on both sides of a difference,
/// where half a per cent of a flow is far below what is known of any moisture source.
#[test]
fn real_air_differs_by_the_enhancement_factor_and_nothing_else() {
    let table = Table::read(include_str!("../../reference/psychro/moist_air_grid.tsv"));
    for row in table.rows() {
        let temperature = celsius(&row, "temperature_c");
        let humidity = RelativeHumidity::new(row.number("relative_humidity"));
        let air =
            MoistAir::from_relative_humidity(temperature, humidity, STANDARD_PRESSURE).unwrap();
        let more = air.vapour_pressure() * enhancement(temperature, 1013.25);
        let ratio = humidity_ratio(more, STANDARD_PRESSURE).unwrap().value();
        let real = row.number("real_humidity_ratio");
        let name = format!("humidity ratio at {row}");
        close_to(&name, ratio, real, Tolerance::relative(0.001));
    }
}

#[test]
fn wet_bulb_and_humidity_ratio_are_the_worked_states() {
    let table = Table::read(include_str!("../../reference/psychro/wet_bulb_states.tsv"));
    for row in table.rows() {
        let dry_bulb = celsius(&row, "dry_bulb_c");
        let pressure = Pressure::new(row.number("air_pressure_pa"));
        let ratio =
            humidity_ratio_from_wet_bulb(dry_bulb, celsius(&row, "wet_bulb_c"), pressure).unwrap();
        row.close_to("humidity_ratio", ratio.value());
        let found = wet_bulb(dry_bulb, ratio, pressure).unwrap();
        row.close_to("wet_bulb_c", found.as_celsius());
    }
}

#[test]
fn the_handbook_example_is_met() {
    let table = Table::read(include_str!("../../reference/psychro/ashrae_example.tsv"));
    for row in table.rows() {
        let (dry_bulb, wet_bulb) = (celsius(&row, "dry_bulb_c"), celsius(&row, "wet_bulb_c"));
        let air = MoistAir::from_wet_bulb(dry_bulb, wet_bulb, STANDARD_PRESSURE).unwrap();
        row.close_to("humidity_ratio", air.humidity_ratio().value());
        row.close_to("dew_point_c", air.dew_point().unwrap().as_celsius());
        row.close_to("relative_humidity", air.relative_humidity().value());
        row.close_to("enthalpy_j_per_kg", air.enthalpy().value());
        row.close_to("specific_volume_m3_per_kg", air.specific_volume().value());
    }
}

#[test]
fn the_worked_moist_air_values_are_met() {
    // Worked in a spreadsheet from the ASHRAE equations; published tests of PsychroLib (2018).
    let thirty = Temperature::celsius(30.0);
    let two_percent = HumidityRatio::new(0.02);
    let at_500_metres = Pressure::new(95_461.0);
    let part = Tolerance::relative(3e-7);
    close_to("enthalpy", enthalpy(thirty, two_percent).unwrap().value(), 81_316.0, part);
    let volume = specific_volume(thirty, two_percent, at_500_metres).unwrap();
    close_to("specific volume", volume.value(), 0.940_855_374_352_943, part);
    let ratio = humidity_ratio(Pressure::new(3169.7), at_500_metres).unwrap();
    close_to("humidity ratio", ratio.value(), 0.021_360_399_804_748_7, part);
}

#[test]
fn dry_air_has_the_tabled_density() {
    let table = Table::read(include_str!("../../reference/psychro/dry_air_density.tsv"));
    for row in table.rows() {
        let density = dry_air_density(celsius(&row, "temperature_c"), STANDARD_PRESSURE).unwrap();
        row.close_to("density_kg_per_m3", density.value());
    }
}

#[test]
fn the_standard_atmosphere_is_the_handbook_table() {
    let table = Table::read(include_str!("../../reference/psychro/standard_atmosphere.tsv"));
    for row in table.rows() {
        let altitude = Length::new(row.number("altitude_m"));
        row.close_to("pressure_pa", standard_pressure(altitude).unwrap().value());
        row.close_to("temperature_c", standard_temperature(altitude).unwrap().as_celsius());
    }
}

#[test]
fn the_moisture_standard_formula_and_its_inverse_are_met() {
    let table = Table::read(include_str!("../../reference/psychro/iso_13788_saturation.tsv"));
    for row in table.rows() {
        let pressure = iso_13788::saturation_pressure(celsius(&row, "temperature_c")).unwrap();
        row.close_to("saturation_pressure_pa", pressure.value());
        let printed = Pressure::new(row.number("saturation_pressure_pa"));
        row.close_to("temperature_c", iso_13788::dew_point(printed).unwrap().as_celsius());
    }
}

#[test]
fn surface_temperatures_against_drip_and_mould_are_met() {
    let table = Table::read(include_str!("../../reference/psychro/iso_13788_single_state.tsv"));
    for row in table.rows() {
        let (indoor, outdoor) = (celsius(&row, "indoor_c"), celsius(&row, "outdoor_c"));
        let humidity = RelativeHumidity::new(row.number("relative_humidity"));
        let vapour = iso_13788::vapour_pressure(indoor, humidity).unwrap();
        let factor = |surface: Temperature| (surface - outdoor) / (indoor - outdoor);

        let dew_point = iso_13788::dew_point(vapour).unwrap();
        row.close_to("dew_point_c", dew_point.as_celsius());
        row.close_to("factor_at_100_percent", factor(dew_point));
        let mould = RelativeHumidity::percent(80.0);
        let surface = iso_13788::lowest_surface_temperature(vapour, mould).unwrap();
        row.close_to("surface_at_80_percent_c", surface.as_celsius());
        row.close_to("factor_at_80_percent", factor(surface));
    }
}
