//! What must hold for any moist air.

use inchwise_core::bounds::Bounds;
use inchwise_core::psychro::{
    MoistAir, PsychroError, PsychroQuantity, STANDARD_PRESSURE, dry_air_density, enthalpy,
    humidity_ratio, humidity_ratio_from_wet_bulb, hyland_wexler, iso_13788,
    saturation_humidity_ratio, specific_volume, standard_pressure, vapour_concentration,
    vapour_pressure_from_concentration, vapour_pressure_from_humidity_ratio, wet_bulb,
};
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};
use proptest::prelude::*;

use super::anything;

fn air(celsius: f64, humidity: f64, pressure: f64) -> MoistAir {
    MoistAir::from_relative_humidity(
        Temperature::celsius(celsius),
        RelativeHumidity::new(humidity),
        Pressure::new(pressure),
    )
    .expect("a state in range")
}

proptest! {
    #[test]
    fn dew_point_undoes_saturation(celsius in -100.0..200.0) {
        let temperature = Temperature::celsius(celsius);
        let pressure = hyland_wexler::saturation_pressure(temperature).unwrap();
        let back = hyland_wexler::dew_point(pressure).unwrap();
        close_to("dew point", back.as_celsius(), celsius, Tolerance::absolute(1e-10));
    }

    #[test]
    fn the_closed_dew_point_undoes_saturation(celsius in -90.0..100.0) {
        let temperature = Temperature::celsius(celsius);
        let pressure = iso_13788::saturation_pressure(temperature).unwrap();
        let back = iso_13788::dew_point(pressure).unwrap();
        close_to("dew point", back.as_celsius(), celsius, Tolerance::absolute(1e-10));
    }

    #[test]
    fn warmer_air_saturates_at_more(celsius in -100.0..199.9, warmer in 1e-6..0.1) {
        let at = |t| hyland_wexler::saturation_pressure(Temperature::celsius(t)).unwrap();
        prop_assert!(at(celsius + warmer) > at(celsius));
    }

    #[test]
    fn everything_damp_rises_with_humidity(
        celsius in -40.0..60.0, humidity in 0.01..0.99, more in 1e-4..0.01, pressure in 6e4..1.1e5,
    ) {
        let (drier, damper) =
            (air(celsius, humidity, pressure), air(celsius, humidity + more, pressure));
        prop_assert!(damper.dew_point().unwrap() > drier.dew_point().unwrap());
        prop_assert!(damper.wet_bulb().unwrap() >= drier.wet_bulb().unwrap());
        prop_assert!(damper.humidity_ratio() > drier.humidity_ratio());
        prop_assert!(damper.enthalpy() > drier.enthalpy());
        prop_assert!(damper.vapour_concentration() > drier.vapour_concentration());
        prop_assert!(damper.density() < drier.density());
    }

    #[test]
    fn everything_rises_with_temperature_but_density(
        celsius in -40.0..60.0, warmer in 0.01..1.0, humidity in 0.02..1.0,
    ) {
        let pressure = STANDARD_PRESSURE.value();
        let (colder, warmer) =
            (air(celsius, humidity, pressure), air(celsius + warmer, humidity, pressure));
        prop_assert!(warmer.dew_point().unwrap() > colder.dew_point().unwrap());
        prop_assert!(warmer.wet_bulb().unwrap() > colder.wet_bulb().unwrap());
        prop_assert!(warmer.humidity_ratio() > colder.humidity_ratio());
        prop_assert!(warmer.enthalpy() > colder.enthalpy());
        prop_assert!(warmer.density() < colder.density());
    }

    #[test]
    fn dew_point_wet_bulb_and_dry_bulb_stand_in_order(
        celsius in -40.0..60.0, humidity in 0.01..1.0, pressure in 6e4..1.1e5,
    ) {
        let air = air(celsius, humidity, pressure);
        let (dew, wet) = (air.dew_point().unwrap(), air.wet_bulb().unwrap());
        prop_assert!(dew.as_celsius() <= wet.as_celsius() + 1e-9);
        prop_assert!(wet.as_celsius() <= celsius + 1e-9);
    }

    #[test]
    fn a_state_is_the_same_by_whatever_it_is_made_from(
        celsius in -40.0..60.0, humidity in 0.01..1.0, pressure in 6e4..1.1e5,
    ) {
        let first = air(celsius, humidity, pressure);
        let (t, p) = (first.temperature(), first.air_pressure());
        // A rounding above saturation is not a dew point of this air.
        let dew_point = first.dew_point().unwrap().min(t);
        let others = [
            MoistAir::from_humidity_ratio(t, first.humidity_ratio(), p).unwrap(),
            MoistAir::from_dew_point(t, dew_point, p).unwrap(),
            MoistAir::from_wet_bulb(t, first.wet_bulb().unwrap(), p).unwrap(),
        ];
        for other in others {
            close_to(
                "vapour pressure",
                other.vapour_pressure().value(),
                first.vapour_pressure().value(),
                Tolerance::relative(1e-9).and(Tolerance::absolute(1e-6)),
            );
        }
    }

    #[test]
    fn humidity_ratio_and_concentration_come_back(
        vapour in 0.0..20_000.0, pressure in 2e4..2e5, celsius in -100.0..200.0,
    ) {
        prop_assume!(vapour < 0.94 * pressure);
        let (p_w, p) = (Pressure::new(vapour), Pressure::new(pressure));
        let ratio = humidity_ratio(p_w, p).unwrap();
        let back = vapour_pressure_from_humidity_ratio(ratio, p).unwrap();
        let exact = Tolerance::relative(1e-13).and(Tolerance::absolute(1e-12));
        close_to("from humidity ratio", back.value(), vapour, exact);
        let t = Temperature::celsius(celsius);
        let concentration = vapour_concentration(t, p_w).unwrap();
        let back = vapour_pressure_from_concentration(t, concentration).unwrap();
        close_to("from concentration", back.value(), vapour, exact);
    }

    #[test]
    fn no_input_gives_what_is_not_a_number(a in anything(), b in anything(), c in anything()) {
        let (t, p_w, p) = (Temperature::celsius(a), Pressure::new(b), Pressure::new(c));
        let ratio = HumidityRatio::new(b);
        let humidity = RelativeHumidity::new(b);
        let answers = [
            hyland_wexler::saturation_pressure(t).map(Pressure::value),
            hyland_wexler::saturation_pressure_over_ice(t).map(Pressure::value),
            hyland_wexler::saturation_pressure_over_water(t).map(Pressure::value),
            hyland_wexler::dew_point(p_w).map(Temperature::as_celsius),
            hyland_wexler::vapour_pressure(t, humidity).map(Pressure::value),
            hyland_wexler::relative_humidity(t, p_w).map(RelativeHumidity::value),
            iso_13788::saturation_pressure(t).map(Pressure::value),
            iso_13788::dew_point(p_w).map(Temperature::as_celsius),
            iso_13788::vapour_pressure(t, humidity).map(Pressure::value),
            iso_13788::relative_humidity(t, p_w).map(RelativeHumidity::value),
            iso_13788::lowest_surface_temperature(p, humidity).map(Temperature::as_celsius),
            humidity_ratio(p_w, p).map(HumidityRatio::value),
            vapour_pressure_from_humidity_ratio(ratio, p).map(Pressure::value),
            saturation_humidity_ratio(t, p).map(HumidityRatio::value),
            vapour_concentration(t, p_w).map(VapourConcentration::value),
            enthalpy(t, ratio).map(SpecificEnthalpy::value),
            specific_volume(t, ratio, p).map(SpecificVolume::value),
            dry_air_density(t, p).map(Density::value),
            humidity_ratio_from_wet_bulb(t, Temperature::celsius(b), p).map(HumidityRatio::value),
            wet_bulb(t, ratio, p).map(Temperature::as_celsius),
            standard_pressure(Length::new(a)).map(Pressure::value),
            MoistAir::from_relative_humidity(t, humidity, p).map(|air| air.density().value()),
            MoistAir::from_humidity_ratio(t, ratio, p).map(|air| air.enthalpy().value()),
            MoistAir::from_vapour_pressure(t, p_w, p).map(|air| air.humidity_ratio().value()),
        ];
        for (index, answer) in answers.into_iter().enumerate() {
            match answer {
                Ok(value) => prop_assert!(value.is_finite(), "answer {index} is {value}"),
                Err(refusal) => prop_assert!(
                    !refusal.allowed.contains(refusal.given),
                    "answer {index} refuses what it allows: {refusal:?}"
                ),
            }
        }
    }
}

fn refused<T>(answer: Result<T, PsychroError>) -> PsychroQuantity {
    match answer {
        Ok(_) => panic!("it was allowed"),
        Err(refusal) => refusal.quantity,
    }
}

#[test]
fn each_refusal_names_what_was_wrong() {
    let (t, p) = (Temperature::celsius(20.0), STANDARD_PRESSURE);
    let half = RelativeHumidity::percent(50.0);
    let too_cold = Temperature::celsius(-101.0);
    let too_high = Length::new(11_001.0);

    assert_eq!(refused(hyland_wexler::saturation_pressure(too_cold)), PsychroQuantity::Temperature);
    assert_eq!(
        refused(iso_13788::saturation_pressure(Temperature::celsius(-91.0))),
        PsychroQuantity::Temperature
    );
    assert_eq!(
        refused(hyland_wexler::vapour_pressure(t, RelativeHumidity::percent(100.1))),
        PsychroQuantity::RelativeHumidity
    );
    assert_eq!(refused(hyland_wexler::dew_point(Pressure::ZERO)), PsychroQuantity::VapourPressure);
    assert_eq!(refused(humidity_ratio(p, p)), PsychroQuantity::VapourPressure);
    assert_eq!(
        refused(MoistAir::from_relative_humidity(t, half, Pressure::new(1013.25))),
        PsychroQuantity::AirPressure
    );
    assert_eq!(refused(wet_bulb(t, HumidityRatio::new(0.015), p)), PsychroQuantity::HumidityRatio);
    assert_eq!(
        refused(MoistAir::from_dew_point(t, Temperature::celsius(20.1), p)),
        PsychroQuantity::DewPoint
    );
    assert_eq!(
        refused(humidity_ratio_from_wet_bulb(t, Temperature::celsius(20.1), p)),
        PsychroQuantity::WetBulb
    );
    assert_eq!(refused(standard_pressure(too_high)), PsychroQuantity::Altitude);
    // Nothing dries a bulb to 1 °C in air of 20 °C: the humidity ratio would be negative.
    let below_dry_air = humidity_ratio_from_wet_bulb(t, Temperature::celsius(1.0), p);
    assert_eq!(refused(below_dry_air), PsychroQuantity::HumidityRatio);
}

#[test]
fn a_refusal_says_what_is_allowed() {
    let refusal = enthalpy(Temperature::celsius(f64::NAN), HumidityRatio::new(0.0)).unwrap_err();
    assert!(refusal.given.is_nan());
    assert_eq!(refusal.allowed, Bounds::between(-100.0, 200.0));
}

#[test]
fn a_bulb_near_freezing_takes_the_liquid_reading() {
    // Between 0 °C wet and 0 °C iced both are solutions; the wet one is given.
    let at_9 = air(9.0, 0.05, STANDARD_PRESSURE.value()).wet_bulb().unwrap().as_celsius();
    assert!((0.0..0.7).contains(&at_9), "{at_9}");
    let at_8 = air(8.0, 0.05, STANDARD_PRESSURE.value()).wet_bulb().unwrap().as_celsius();
    assert!(at_8 < 0.0, "{at_8}");
}
