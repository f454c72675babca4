//! Every refusal has a code of its own and says what was given and what is allowed.

use std::error::Error;

use inchwise_core::bounds::BoundedQuantity;
use inchwise_core::climate::{ClimateError, ClimateProblem, ClimateQuantity, varnholm_flats};
use inchwise_core::conduction::{ConductionError, ProblemPart, Side};
use inchwise_core::depth_grid::DepthField;
use inchwise_core::moisture::{MoistureError, MoistureQuantity, least_depth};
use inchwise_core::psychro::{PsychroQuantity, standard_pressure};
use inchwise_core::reading::ReadingField;
use inchwise_core::units::{
    HumidityRatio, Length, Temperature, ThermalConductivity, ThermalResistance, VapourPermeability,
    VapourPermeance, VolumeFlow,
};
use inchwise_core::ventilation::{FanCurve, VentilationError, VentilationQuantity};

/// That a table names each quantity once, in words joined by underscores, and allows something.
fn holds_together<Q: BoundedQuantity>(table: &[Q]) {
    let keys: Vec<&str> = table.iter().map(|quantity| quantity.key()).collect();
    tells_apart(&keys);
    for quantity in table {
        let bounds = quantity.bounds();
        assert!(bounds.minimum() < bounds.maximum(), "{}", quantity.key());
        let middle = 0.5 * (bounds.minimum() + bounds.maximum().min(f64::MAX / 4.0));
        assert!(quantity.check(middle).is_ok(), "{}", quantity.key());
        let refused = quantity.check(f64::NAN).map_err(|refused| refused.code());
        assert_eq!(refused, Err("out_of_range"));
    }
}

fn tells_apart(codes: &[&str]) {
    for (n, code) in codes.iter().enumerate() {
        assert!(!codes[..n].contains(code), "{code} stands twice");
        let is_plain = code.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'_');
        assert!(is_plain && !code.is_empty(), "{code}");
    }
}

/// That every sentence is its own and no debugging text.
fn speak(errors: &[&dyn Error]) {
    let said: Vec<String> = errors.iter().map(ToString::to_string).collect();
    for (n, sentence) in said.iter().enumerate() {
        assert!(!said[..n].contains(sentence), "{sentence}");
        assert!(!sentence.contains(['{', '}']) && sentence.contains(' '), "{sentence}");
    }
}

#[test]
fn tables_of_bounds_hold_together() {
    holds_together(PsychroQuantity::ALL);
    holds_together(ClimateQuantity::ALL);
    holds_together(VentilationQuantity::ALL);
    holds_together(MoistureQuantity::ALL);
    holds_together(ReadingField::ALL);
    holds_together(DepthField::ALL);
}

#[test]
fn a_formula_says_what_it_was_given_and_what_is_allowed() {
    let high = standard_pressure(Length::new(20_000.0)).unwrap_err();
    let said = "altitude of 20000 m is out of range: it must be from -5000 to 11000 m";
    assert_eq!(high.to_string(), said);
    let fan = FanCurve::from_free_air_and_shut_off(VolumeFlow::ZERO, Default::default());
    let said = "fan flow of 0 m³/s is out of range: it must be above 0 and up to 10 m³/s";
    assert_eq!(fan.unwrap_err().to_string(), said);
    let steam = least_depth(VapourPermeability::new(1e-9), VapourPermeance::new(1e-9));
    let said = "vapour permeability of 1e-9 kg/(m·s·Pa) is out of range: it must be above 0 and up \
                to 2e-10 kg/(m·s·Pa)";
    assert_eq!(steam.unwrap_err().to_string(), said);
}

#[test]
fn a_place_says_which_month_and_why() {
    let mut place = varnholm_flats();
    place.months[2].daily_range = inchwise_core::units::TemperatureDifference::new(50.0);
    let errors = place.check().unwrap_err();
    let said = "at index 2: daily range of 50 K is out of range: it must be from 0.5 to 35 K";
    assert_eq!((errors.len(), errors[0].code()), (1, "out_of_range"));
    assert_eq!(errors[0].to_string(), said);

    let with = |problem| ClimateError {
        quantity: ClimateQuantity::VapourPressure,
        index: None,
        given: 900.0,
        problem,
    };
    let errors = [
        ClimateProblem::OutOfRange,
        ClimateProblem::AboveSaturation { saturation: 500.0 },
        ClimateProblem::WinterNotBelowSummer,
        ClimateProblem::NotAYear,
        ClimateProblem::AboveExtraterrestrial { extraterrestrial: 1.0 },
    ]
    .map(with);
    tells_apart(&errors.each_ref().map(ClimateError::code));
    speak(&errors.each_ref().map(|error| error as &dyn Error));
    let said = "vapour pressure of 900 Pa must be at most 1.65 times that of saturation, 500 Pa";
    assert_eq!(errors[1].to_string(), said);
}

#[test]
fn every_refusal_of_the_field_solver_speaks() {
    let part = ProblemPart::Paint(3);
    let errors = [
        ConductionError::NoBoundary,
        ConductionError::Empty,
        ConductionError::NonFiniteConductivity { part },
        ConductionError::NonPositiveConductivity {
            part,
            conductivity: ThermalConductivity::new(-0.5),
        },
        ConductionError::BadBlock { part },
        ConductionError::BadSurfaceResistance { part, resistance: ThermalResistance::new(-1.0) },
        ConductionError::BadSide { part, side: Side::ZMinimum },
        ConductionError::BadEnvironment { part },
        ConductionError::BadCellSizes,
        ConductionError::BadRefinement { part },
        ConductionError::TooManyCells { cells: 9, limit: 8 },
        ConductionError::NotConverged { residual: 1e-5, iterations: 500 },
        ConductionError::WrongTemperatureCount { wanted: 2, given: 1 },
        ConductionError::NonFiniteTemperature { environment: 1 },
        ConductionError::UnknownEnvironment { environment: 1 },
    ];
    tells_apart(&errors.each_ref().map(ConductionError::code));
    speak(&errors.each_ref().map(|error| error as &dyn Error));
    let said = "the conductivity of paint 3, -0.5 W/(m·K), must be above 0";
    assert_eq!(errors[3].to_string(), said);
}

#[test]
fn every_refusal_of_air_and_damp_speaks() {
    let ratio = HumidityRatio::new(0.01);
    let (cold, warm) = (Temperature::celsius(20.0), Temperature::celsius(25.0));
    let flow = VolumeFlow::new(0.1);
    let errors = [
        VentilationError::OutOfRange(VentilationQuantity::Speed.check(-1.0).unwrap_err()),
        VentilationError::TooFewPoints { given: 1 },
        VentilationError::NoShutOffPressure,
        VentilationError::FlowsNotRising { point: 1 },
        VentilationError::PressuresNotFalling { point: 1 },
        VentilationError::EmptyPath,
        VentilationError::NoWayIn,
        VentilationError::NoWayOut,
        VentilationError::BeyondCurve { exhaust: 0 },
        VentilationError::CannotHold { room: ratio, outdoor: ratio },
        VentilationError::CannotCool { room: cold, outdoor: warm },
        VentilationError::FanTooSmall { needed: flow * 2.0, moved: flow },
        VentilationError::NoSuchOpening { index: 7 },
    ];
    tells_apart(&errors.each_ref().map(VentilationError::code));
    speak(&errors.each_ref().map(|error| error as &dyn Error));
    let said = "outdoor temperature of 25 °C must be below that of the room, 20 °C";
    assert_eq!(errors[10].to_string(), said);

    let errors = [
        MoistureError::OutOfRange(MoistureQuantity::Count.check(-1.0).unwrap_err()),
        MoistureError::NoLayers,
        MoistureError::TightLayerInside { layer: 0 },
        MoistureError::NoSuchInterface { index: 1 },
        MoistureError::OpenEndedClass,
        MoistureError::NoHeatingMonth,
    ];
    tells_apart(&errors.each_ref().map(MoistureError::code));
    speak(&errors.each_ref().map(|error| error as &dyn Error));
    let passed_on = MoistureError::from(VentilationError::NoWayIn);
    assert_eq!(
        (passed_on.code(), passed_on.to_string().as_str()),
        ("no_way_in", "no intake stands open")
    );
    assert!(passed_on.source().is_some());
}
