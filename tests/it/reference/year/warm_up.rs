//! Warm-up and cool-down against closed forms.

use inchwise_core::units::{
    HeatCapacity, HeatTransferCoefficient, Power, Temperature, TemperatureDifference,
};
use inchwise_core::year::{CheckedYearChoices, RoomNetwork, RoomPart};
use inchwise_tests::{Tolerance, close_to};

use super::{default_evaluation, modelled, varnholm};

/// One heat capacity: t = −τ·ln(1 − H·Δθ/Φ) upwards, t = τ·ln(Δθ₀/Δθ) downwards (closed form), to 0.1 %, and
/// the trade's table for a lined 20 ft box of 1,430 kJ/K and 31.5 W/K (common practice, no source), to its rounding.
#[test]
fn one_capacity_warms_and_cools_by_the_closed_form() {
    let (loss, capacity) = (31.5, 1.43e6);
    let network =
        RoomNetwork::one_node(HeatTransferCoefficient::new(loss), HeatCapacity::new(capacity))
            .expect("a loss and a capacity");
    let celsius = Temperature::celsius;
    let constant = capacity / loss / 3600.0;
    for (watts, table) in [(2000.0, 11.5), (3000.0, 6.4), (5000.0, 3.5), (8000.0, 2.1)] {
        let time = network
            .warm_up(
                Power::new(watts),
                celsius(-20.0),
                celsius(-20.0),
                celsius(18.0),
                RoomPart::Air,
            )
            .expect("it gets there");
        let exact = -constant * libm::log1p(-loss * 38.0 / watts);
        close_to("warm-up, h", time.as_hours(), exact, Tolerance::relative(1e-3));
        close_to("warm-up of the table, h", time.as_hours(), table, Tolerance::absolute(0.06));
    }
    for (outdoors, to, table) in
        [(-20.0, 5.0, 5.9), (-33.0, 5.0, 4.2), (-20.0, 0.0, 8.7), (-33.0, 0.0, 6.0)]
    {
        let time = network
            .cool_down(celsius(20.0), celsius(outdoors), celsius(to), RoomPart::Air)
            .expect("it gets so cold");
        let exact = constant * libm::log((20.0 - outdoors) / (to - outdoors));
        close_to("cool-down, h", time.as_hours(), exact, Tolerance::relative(1e-3));
        close_to("cool-down of the table, h", time.as_hours(), table, Tolerance::absolute(0.06));
    }
    let too_weak = network.warm_up(
        Power::new(1000.0),
        celsius(-20.0),
        celsius(-20.0),
        celsius(18.0),
        RoomPart::Air,
    );
    assert_eq!(too_weak, None, "1 kW holds 31.7 K at 31.5 W/K, never 38 K");
}

/// In a real room the air leads and the surfaces follow; both end where the one node ends.
#[test]
fn air_warms_before_the_surfaces() {
    let evaluation = default_evaluation();
    let surroundings = varnholm();
    let model = modelled(&evaluation, &surroundings, &CheckedYearChoices::default());
    let network = model.network();
    let celsius = Temperature::celsius;
    let warm = |part| {
        network
            .warm_up(Power::new(3000.0), celsius(-20.0), celsius(-20.0), celsius(15.0), part)
            .expect("3 kW are enough")
            .as_hours()
    };
    let (air, surfaces) = (warm(RoomPart::Air), warm(RoomPart::Surfaces));
    assert!(0.5 < air && air < surfaces && surfaces < 12.0, "air {air} h, surfaces {surfaces} h");
    let held = network.steady_loss() * TemperatureDifference::new(40.0);
    let steady = network.steady(held, celsius(-20.0)).air.as_celsius();
    close_to("held by its steady loss", steady, 20.0, Tolerance::absolute(1e-9));
}

/// The network of the default room as its balances say, in Runge and Kutta steps of five seconds: the surfaces between
/// air and mass from two linear equations (Cramer's rule), the mass by its flows. Warm-up and cool-down to 0.1 %.
#[test]
fn a_real_room_warms_and_cools_as_its_balances_say() {
    let evaluation = default_evaluation();
    let surroundings = varnholm();
    let model = modelled(&evaluation, &surroundings, &CheckedYearChoices::default());
    let coefficients = model.coefficients();
    let of = |name: &str| {
        coefficients.iter().find(|(other, _)| *other == name).expect("a coefficient").1
    };
    let (onto_air, inside, outwards) =
        (of("surface_to_air"), of("mass_to_surface"), of("mass_to_outdoors"));
    let (direct, capacity) = (of("openings") + of("leaks"), of("capacity"));
    let outdoors = -20.0;
    // Air and surface while the mass stands still:
    // (direct + onto_air)·air − onto_air·surface = heat + direct·outdoors
    // −onto_air·air + (onto_air + inside)·surface = inside·mass
    let air_and_surface = |heat: f64, mass: f64| {
        let (a, d) = (direct + onto_air, onto_air + inside);
        let (e, f) = (heat + direct * outdoors, inside * mass);
        let determinant = a * d - onto_air * onto_air;
        [(e * d + onto_air * f) / determinant, (a * f + onto_air * e) / determinant]
    };
    let slope = |heat: f64, mass: f64| {
        let [_, surface] = air_and_surface(heat, mass);
        (inside * (surface - mass) + outwards * (outdoors - mass)) / capacity
    };
    let hours_until = |heat: f64, mut mass: f64, part: usize, to: f64| {
        const STEP: f64 = 5.0;
        let rising = air_and_surface(heat, mass)[part] < to;
        let mut seconds = 0.0;
        while (air_and_surface(heat, mass)[part] < to) == rising {
            let k1 = slope(heat, mass);
            let k2 = slope(heat, mass + 0.5 * STEP * k1);
            let k3 = slope(heat, mass + 0.5 * STEP * k2);
            let k4 = slope(heat, mass + STEP * k3);
            mass += STEP / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
            seconds += STEP;
        }
        (seconds - 0.5 * STEP) / 3600.0
    };
    let celsius = Temperature::celsius;
    let network = model.network();
    for (number, part) in [RoomPart::Air, RoomPart::Surfaces].into_iter().enumerate() {
        let [cold, warm] = [celsius(outdoors), celsius(17.0)];
        let closed = network.warm_up(Power::new(3000.0), cold, cold, warm, part);
        let stepped = hours_until(3000.0, outdoors, number, 17.0);
        let hours = closed.expect("3 kW are enough").as_hours();
        close_to("warm-up, h", hours, stepped, Tolerance::relative(1e-3));

        let held = network.steady_loss() * TemperatureDifference::new(40.0);
        let mass = network.steady(held, cold).mass.as_celsius();
        let closed = network.cool_down(celsius(20.0), cold, celsius(5.0), part);
        let stepped = hours_until(0.0, mass, number, 5.0);
        let hours = closed.expect("it gets so cold").as_hours();
        close_to("cool-down, h", hours, stepped, Tolerance::relative(1e-3));
    }
}
