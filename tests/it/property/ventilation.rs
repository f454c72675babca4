//! What must hold for any fan, opening and outdoor air.

use inchwise_core::psychro::{MoistAir, STANDARD_PRESSURE, enthalpy};
use inchwise_core::units::*;
use inchwise_core::ventilation::*;
use inchwise_tests::{Tolerance, close_to};
use proptest::prelude::*;

use super::anything;

const RATED: Density = FAN_RATING_DENSITY;

fn element(kind: ElementKind, coefficient: f64, area: f64) -> FlowElement {
    FlowElement::new(kind, LossCoefficient::new(coefficient), Area::new(area))
        .expect("an element in range")
}

fn screened(free_area: f64, area: f64) -> AirPath {
    let screen = FlowElement::screen(FreeAreaRatio::new(free_area), Area::new(area));
    let damper = element(ElementKind::Damper, 2.1, area);
    AirPath::new(vec![screen.expect("a screen in range"), damper]).expect("a path")
}

fn label(free_air: f64, shut_off: f64) -> FanCurve {
    FanCurve::from_free_air_and_shut_off(VolumeFlow::new(free_air), Pressure::new(shut_off))
        .expect("a fan in range")
}

fn two_and_one(free_area: f64, face: f64, free_air: f64, shut_off: f64) -> VentilationSystem {
    let exhaust = Exhaust { path: screened(free_area, face), fan: label(free_air, shut_off) };
    VentilationSystem::new(vec![screened(free_area, face); 2], vec![exhaust]).expect("a system")
}

fn air(celsius: f64, percent: f64) -> MoistAir {
    MoistAir::from_relative_humidity(
        Temperature::celsius(celsius),
        RelativeHumidity::percent(percent),
        STANDARD_PRESSURE,
    )
    .expect("air in range")
}

prop_compose! {
    fn system()(
        free_area in 0.4..0.9, face in 0.005..0.2, free_air in 0.02..1.0, shut_off in 10.0..300.0,
    ) -> VentilationSystem {
        two_and_one(free_area, face, free_air, shut_off)
    }
}

prop_compose! {
    /// Points of a falling curve, from shut-off to free air.
    fn falling_points()(
        steps in prop::collection::vec((0.01..0.2, 1.0..50.0), 1..8),
    ) -> Vec<(VolumeFlow, Pressure)> {
        // The last point is free air, at no pressure but for rounding.
        let mut pressure: f64 = steps.iter().map(|(_, fall)| fall).sum();
        let mut flow = 0.0;
        let mut points = vec![(VolumeFlow::ZERO, Pressure::new(pressure))];
        for (further, fall) in steps {
            flow += further;
            pressure = (pressure - fall).max(0.0);
            points.push((VolumeFlow::new(flow), Pressure::new(pressure)));
        }
        points
    }
}

proptest! {
    #[test]
    fn a_fan_curve_falls_and_meets_its_points(points in falling_points(), part in 0.0..1.0) {
        let curve = FanCurve::from_points(&points).unwrap();
        for (flow, pressure) in &points {
            let found = curve.pressure_at(*flow).unwrap();
            close_to("point", found.value(), pressure.value(), Tolerance::absolute(1e-9));
        }
        for pair in points.windows(2) {
            let here = pair[0].0 + (pair[1].0 - pair[0].0) * part;
            let found = curve.pressure_at(here).unwrap().value();
            prop_assert!(found <= pair[0].1.value() + 1e-9);
            prop_assert!(found >= pair[1].1.value() - 1e-9);
        }
    }

    #[test]
    fn an_operating_point_balances(
        system in system(), outdoor in 1.1..1.5, room in 1.1..1.3,
    ) {
        let point = system.operating_point(Density::new(outdoor), Density::new(room)).unwrap();
        let same = Tolerance::relative(1e-6);
        let let_in = point.let_in() * point.outdoor_density;
        close_to("mass let in", let_in.value(), point.mass_flow().value(), same);
        for intake in &point.intakes {
            let drop = intake.pressure_drop().value();
            close_to("intake", drop, point.room_suction.value(), same);
        }
        let exhaust = &point.exhausts[0];
        let load = exhaust.path.pressure_drop() + point.room_suction;
        close_to("fan", exhaust.fan_pressure.value(), load.value(), same);
    }

    #[test]
    fn what_goes_wrong_costs_flow(system in system(), dirt in 0.05..0.5) {
        let at = |system: VentilationSystem| system.operating_point(RATED, RATED).unwrap();
        let well = at(system.clone());
        let stuck = at(system.with_intake_shut(0).unwrap());
        prop_assert!(stuck.exhausted() < well.exhausted());
        prop_assert!(stuck.room_suction > well.room_suction);
        prop_assert_eq!(stuck.intakes[0].flow, VolumeFlow::ZERO);
        let dirty = at(system.clogged(CloggedShare::new(dirt)).unwrap());
        prop_assert!(dirty.exhausted() < well.exhausted());
    }

    #[test]
    fn part_speed_scales_the_whole_operating_point(system in system(), r in 0.2..1.2) {
        let full = system.operating_point(RATED, RATED).unwrap();
        let part =
            system.at_speed(FanSpeed::new(r)).unwrap().operating_point(RATED, RATED).unwrap();
        let same = Tolerance::relative(1e-6);
        close_to("flow", part.exhausted() / full.exhausted(), r, same);
        close_to("suction", part.room_suction / full.room_suction, r * r, same);
    }

    #[test]
    fn denser_air_all_through_moves_the_same_volume(system in system(), density in 0.9..1.6) {
        let rated = system.operating_point(RATED, RATED).unwrap();
        let dense = Density::new(density);
        let other = system.operating_point(dense, dense).unwrap();
        let same = Tolerance::relative(1e-6);
        close_to("flow", other.exhausted().value(), rated.exhausted().value(), same);
        close_to("suction", other.room_suction / rated.room_suction, dense / RATED, same);
    }

    #[test]
    fn the_flow_that_holds_a_humidity_holds_it(
        grams in 0.0..5000.0, room in 20.0..90.0, outdoor in -40.0..25.0, damp in 5.0..100.0,
    ) {
        let (room, outdoor) = (air(20.0, room), air(outdoor, damp));
        let source = MassFlow::grams_per_hour(grams);
        match flow_to_hold(source, &room, &outdoor) {
            Ok(flow) if flow.dry_air().value() > 1e-9 => {
                let held = steady_humidity_ratio(source, flow, &outdoor).unwrap();
                let expected = room.humidity_ratio().value();
                close_to("held", held.value(), expected, Tolerance::relative(1e-9));
                let volume = flow.volume_as(&room);
                let back = DryAirFlow::from_volume(volume, &room);
                // Far more air than any fan moves is refused, not carried on with.
                if volume.value() <= 100.0 {
                    let back = back.unwrap().dry_air().value();
                    close_to("back", back, flow.dry_air().value(), Tolerance::relative(1e-12));
                }
            }
            Ok(_) => prop_assert!(grams < 1.0),
            Err(VentilationError::CannotHold { .. }) => {
                prop_assert!(outdoor.humidity_ratio() >= room.humidity_ratio());
            }
            Err(other) => prop_assert!(false, "{other:?}"),
        }
    }

    #[test]
    fn recovered_air_stays_between_room_and_outdoors(
        room in 0.0..30.0, outdoor in -45.0..40.0, effectiveness in 0.1..1.0, limit in -10.0..5.0,
    ) {
        let exchanger =
            HeatRecovery::new(Effectiveness::new(effectiveness), Temperature::celsius(limit))
                .unwrap();
        let flow = DryAirFlow::new(MassFlow::new(0.05)).unwrap();
        let (inside, outside) = (air(room, 30.0), air(outdoor, 60.0));
        let got = exchanger.recover(flow, &inside, &outside);
        let (colder, warmer) = (room.min(outdoor) - 1e-9, room.max(outdoor) + 1e-9);
        prop_assert!((colder..warmer).contains(&got.supply.as_celsius()));
        prop_assert!((colder..warmer).contains(&got.leaving.as_celsius()));
        prop_assert!(got.effectiveness.value() <= effectiveness);
        if outdoor < limit && limit < room {
            prop_assert!(got.leaving.as_celsius() >= limit - 1e-9);
        }
        prop_assert_eq!(got.held_by_frost, got.effectiveness.value() < effectiveness);
        let missing = (inside.temperature() - got.supply) / (inside.temperature() - outside.temperature());
        let without = heat_to_warm(flow, &inside, &outside).value();
        let expected = without * missing;
        let rounding = Tolerance::relative(1e-9).and(Tolerance::absolute(1e-6));
        close_to("heat still missing", got.heat_to_warm.value(), expected, rounding);
        prop_assert!(got.heat_to_warm.value().abs() <= without.abs() + 1e-9);
    }

    #[test]
    fn warming_air_raises_its_enthalpy_by_the_heat(
        room in 0.0..30.0, outdoor in -45.0..40.0, damp in 0.0..100.0,
    ) {
        let (inside, outside) = (air(room, 30.0), air(outdoor, damp));
        let flow = DryAirFlow::new(MassFlow::new(0.05)).unwrap();
        let at = |celsius| enthalpy(Temperature::celsius(celsius), outside.humidity_ratio()).unwrap();
        let expected = flow.dry_air() * (at(room) - at(outdoor));
        let heat = heat_to_warm(flow, &inside, &outside);
        close_to("heat", heat.value(), expected.value(), Tolerance::absolute(1e-8));
    }

    #[test]
    fn warmth_moves_air_the_right_way(room in -20.0..40.0, outdoor in -40.0..40.0) {
        let at = |celsius: f64| Density::new(101_325.0 / (287.042 * (celsius + 273.15)));
        let opening = screened(0.6, 0.03);
        let flow =
            stack_flow(&opening, &opening, Length::new(2.0), at(outdoor), at(room)).unwrap();
        let expected =
            if room > outdoor { StackDirection::Upward } else { StackDirection::Downward };
        prop_assert_eq!(flow.direction, expected);
        prop_assert!(flow.mass_flow.value() > 0.0 && flow.pressure.value() > 0.0);
        let shut = opening.clone().stuck_shut();
        let still = stack_flow(&opening, &shut, Length::new(2.0), at(outdoor), at(room)).unwrap();
        prop_assert_eq!((still.direction, still.mass_flow), (StackDirection::Still, MassFlow::ZERO));
    }

    #[test]
    fn no_input_gives_what_is_not_a_number(a in anything(), b in anything(), c in anything()) {
        let area = Area::new(c);
        let answers = [
            FlowElement::new(ElementKind::Hood, LossCoefficient::new(a), area)
                .map(|element| element.coefficient().value()),
            FlowElement::screen(FreeAreaRatio::new(a), area)
                .map(|element| element.coefficient().value()),
            FlowElement::duct(Length::new(a), Length::new(b), FrictionFactor::new(c))
                .map(|element| element.coefficient().value()),
            screen_loss(FreeAreaRatio::new(a)).map(LossCoefficient::value),
            dynamic_pressure(Speed::new(a), Density::new(b)).map(Pressure::value),
            FanCurve::from_free_air_and_shut_off(VolumeFlow::new(a), Pressure::new(b))
                .map(|fan| fan.shut_off_pressure().value()),
            label(0.2, 60.0).pressure_at(VolumeFlow::new(a)).map(Pressure::value),
            label(0.2, 60.0).at_speed(FanSpeed::new(a)).map(|fan| fan.last_flow().value()),
            fan_power_at_speed(Power::new(a), FanSpeed::new(b)).map(Power::value),
            two_and_one(0.6, 0.03, 0.25, 70.0)
                .operating_point(Density::new(a), Density::new(b))
                .map(|point| point.exhausted().value()),
            stack_pressure(Length::new(a), Density::new(b), Density::new(c)).map(Pressure::value),
            duty(VolumeFlow::new(a), VolumeFlow::new(b)).map(Duty::value),
            flow_to_hold(MassFlow::new(a), &air(20.0, 50.0), &air(-10.0, 80.0))
                .map(|flow| flow.dry_air().value()),
            flow_to_carry_heat(Power::new(a), &air(25.0, 50.0), &air(20.0, 50.0))
                .map(|flow| flow.dry_air().value()),
            OutdoorAirRate::OFFICE.flow(2, area).map(VolumeFlow::value),
            HeatRecovery::new(Effectiveness::new(a), Temperature::celsius(b)).map(|_| 0.0),
        ];
        for (index, answer) in answers.into_iter().enumerate() {
            if let Ok(value) = answer {
                prop_assert!(value.is_finite(), "answer {index} is {value}");
            }
        }
    }
}

fn points(list: &[(f64, f64)]) -> Result<FanCurve, VentilationError> {
    let list: Vec<_> = list.iter().map(|&(q, p)| (VolumeFlow::new(q), Pressure::new(p))).collect();
    FanCurve::from_points(&list)
}

#[test]
fn a_bad_fan_curve_is_refused_with_the_point() {
    use VentilationError::*;
    assert_eq!(points(&[(0.0, 50.0)]), Err(TooFewPoints { given: 1 }));
    assert_eq!(points(&[(0.1, 50.0), (0.2, 0.0)]), Err(NoShutOffPressure));
    let doubling_back = points(&[(0.0, 50.0), (0.2, 40.0), (0.2, 30.0)]);
    assert_eq!(doubling_back, Err(FlowsNotRising { point: 2 }));
    let stalling = points(&[(0.0, 50.0), (0.1, 45.0), (0.15, 48.0), (0.3, 0.0)]);
    assert_eq!(stalling, Err(PressuresNotFalling { point: 2 }));
    let level = points(&[(0.0, 50.0), (0.1, 50.0), (0.3, 0.0)]);
    assert_eq!(level, Err(PressuresNotFalling { point: 1 }));
    assert!(matches!(points(&[(0.0, f64::NAN), (0.2, 0.0)]), Err(OutOfRange(_))));
    assert!(matches!(points(&[(0.0, 50.0), (f64::NAN, 0.0)]), Err(OutOfRange(_))));
}

#[test]
fn a_curve_that_ends_too_early_is_not_carried_on() {
    let short = points(&[(0.0, 60.0), (0.05, 55.0)]).unwrap();
    let exhaust = Exhaust { path: screened(0.6, 0.05), fan: short };
    let system = VentilationSystem::new(vec![screened(0.6, 0.05)], vec![exhaust]).unwrap();
    let answer = system.operating_point(RATED, RATED);
    assert_eq!(answer, Err(VentilationError::BeyondCurve { exhaust: 0 }));
}

#[test]
fn without_a_way_through_there_is_no_operating_point() {
    let system = two_and_one(0.6, 0.03, 0.25, 70.0);
    let closed = system.with_intake_shut(0).unwrap().with_intake_shut(1).unwrap();
    assert_eq!(closed.operating_point(RATED, RATED), Err(VentilationError::NoWayIn));
    let closed = system.with_exhaust_shut(0).unwrap();
    assert_eq!(closed.operating_point(RATED, RATED), Err(VentilationError::NoWayOut));
    let missing = VentilationError::NoSuchOpening { index: 2 };
    assert_eq!(system.with_intake_shut(2), Err(missing));
    assert_eq!(VentilationSystem::new(vec![], vec![]), Err(VentilationError::NoWayIn));
    assert_eq!(AirPath::new(vec![]), Err(VentilationError::EmptyPath));
}

#[test]
fn a_fan_too_weak_for_the_suction_moves_nothing() {
    let strong = Exhaust { path: screened(0.6, 0.05), fan: label(0.3, 200.0) };
    let weak = Exhaust { path: screened(0.6, 0.05), fan: label(0.3, 20.0) };
    let alone = VentilationSystem::new(vec![screened(0.6, 0.01)], vec![strong.clone()]).unwrap();
    let both = VentilationSystem::new(vec![screened(0.6, 0.01)], vec![strong, weak]).unwrap();
    let (alone, both) =
        (alone.operating_point(RATED, RATED).unwrap(), both.operating_point(RATED, RATED).unwrap());
    assert!(both.room_suction.value() > 20.0);
    assert_eq!(both.exhausts[1].path.flow, VolumeFlow::ZERO);
    let same = Tolerance::relative(1e-6);
    close_to("flow", both.exhausted().value(), alone.exhausted().value(), same);
}

#[test]
fn what_cannot_be_is_said_with_its_figures() {
    let (needed, moved) = (VolumeFlow::new(0.2), VolumeFlow::new(0.1));
    assert_eq!(duty(needed, moved), Err(VentilationError::FanTooSmall { needed, moved }));
    assert_eq!(duty(needed, needed), Ok(Duty::new(1.0)));
    let room = air(20.0, 50.0);
    let held = room.humidity_ratio();
    assert_eq!(
        flow_to_hold(MassFlow::grams_per_hour(50.0), &room, &room),
        Err(VentilationError::CannotHold { room: held, outdoor: held })
    );
    let (room, outdoor) = (air(20.0, 50.0), air(25.0, 50.0));
    assert_eq!(
        flow_to_carry_heat(Power::new(500.0), &room, &outdoor),
        Err(VentilationError::CannotCool {
            room: Temperature::celsius(20.0),
            outdoor: Temperature::celsius(25.0)
        })
    );
    // A screen of 0.4 with four fifths closed leaves 0.08, less than the formula is for.
    let closed = screened(0.4, 0.03).clogged(CloggedShare::new(0.8));
    assert!(matches!(closed, Err(VentilationError::OutOfRange(_))));
}

#[test]
fn a_room_below_the_frost_limit_recovers_nothing() {
    let exchanger = HeatRecovery::new(Effectiveness::new(0.8), Temperature::celsius(2.0)).unwrap();
    let flow = DryAirFlow::new(MassFlow::new(0.05)).unwrap();
    let got = exchanger.recover(flow, &air(0.0, 50.0), &air(-20.0, 80.0));
    assert!(got.held_by_frost);
    assert_eq!(got.effectiveness, Effectiveness::new(0.0));
    assert_eq!(got.supply, Temperature::celsius(-20.0));
}
