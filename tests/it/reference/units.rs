//! Conversions against the definitions of the units.

use inchwise_core::units::*;
use inchwise_tests::Table;

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn converted(conversion: &str, given: f64) -> f64 {
    match conversion {
        "inches to metres" => Length::inches(given).value(),
        "metres to feet" => Length::new(given).as_feet(),
        "feet to metres" => Length::feet(given).value(),
        "inches of mercury to pascals" => Pressure::inches_of_mercury(given).value(),
        "pascals to inches of mercury" => Pressure::new(given).as_inches_of_mercury(),
        "btu per square foot to joules per square metre" => {
            Irradiation::btu_per_square_foot(given).value()
        }
        "kilowatt hours per square metre to btu per square foot" => {
            Irradiation::kilowatt_hours(given).as_btu_per_square_foot()
        }
        "square metres to square feet" => Area::new(given).as_square_feet(),
        "cubic metres to cubic feet" => Volume::new(given).as_cubic_feet(),
        "cubic metres to board feet" => Volume::new(given).as_board_feet(),
        "litres to board feet" => Volume::new(given / 1000.0).as_board_feet(),
        "kilograms to pounds" => Mass::new(given).as_pounds(),
        "kilowatt hours to joules" => Energy::kilowatt_hours(given).value(),
        "watts to btu per hour" => Power::new(given).as_btu_per_hour(),
        "fahrenheit to celsius" => Temperature::fahrenheit(given).as_celsius(),
        "celsius to fahrenheit" => Temperature::celsius(given).as_fahrenheit(),
        "transmittance to btu per hour square foot fahrenheit" => {
            ThermalTransmittance::new(given).as_btu_per_hour_square_foot_fahrenheit()
        }
        "resistance to r value" => ThermalResistance::new(given).as_r_value(),
        "conductivity to r value per inch" => ThermalConductivity::new(given).as_r_value_per_inch(),
        "watts per kelvin to btu per hour fahrenheit" => {
            HeatTransferCoefficient::new(given).as_btu_per_hour_fahrenheit()
        }
        "cubic metres per hour to cubic metres per second" => {
            VolumeFlow::cubic_metres_per_hour(given).value()
        }
        "cubic metres per second to cubic feet per minute" => {
            VolumeFlow::new(given).as_cubic_feet_per_minute()
        }
        "grams per hour to kilograms per second" => MassFlow::grams_per_hour(given).value(),
        "nanograms per pascal second square metre to perms" => {
            VapourPermeance::nanograms_per_pascal_second_square_metre(given).as_perms()
        }
        "air changes per hour to per second" => AirChangeRate::per_hour(given).value(),
        _ => panic!("no conversion is called {conversion:?}"),
    }
}

#[test]
fn conversions_follow_the_exact_definitions() {
    let table = Table::read(include_str!("../../reference/units/exact_definitions.tsv"));
    for row in table.rows() {
        row.close_to("value", converted(row.text("conversion"), row.number("given")));
    }
}

#[test]
fn there_and_back_is_where_it_began() {
    let length = Length::mm(89.0);
    assert!((Length::inches(length.as_inches()) - length).value().abs() < 1e-15);
    let flow = VolumeFlow::cubic_metres_per_hour(545.0);
    assert!((flow.as_cubic_metres_per_hour() - 545.0).abs() < 1e-9);
    assert!((Temperature::fahrenheit(-22.0).as_fahrenheit() + 22.0).abs() < 1e-12);
    let energy = Energy::kilowatt_hours(4067.0);
    assert!((energy.as_kilowatt_hours() - 4067.0).abs() < 1e-9);
}
