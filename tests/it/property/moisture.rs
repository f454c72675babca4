//! What must hold of damp, whatever the room.

use inchwise_core::design::Surface;
use inchwise_core::envelope::{End, ThermalBridge};
use inchwise_core::moisture::*;
use inchwise_core::psychro::{MoistAir, STANDARD_PRESSURE};
use inchwise_core::units::*;
use inchwise_core::ventilation::DryAirFlow;
use inchwise_tests::{Tolerance, close_to};
use proptest::prelude::*;

use super::anything;

fn limit(factor: f64, indoor: f64, outdoor: f64) -> HumidityLimit {
    let (indoor, outdoor) = (Temperature::celsius(indoor), Temperature::celsius(outdoor));
    let surface = surface_temperature(TemperatureFactor::new(factor), indoor, outdoor);
    HumidityLimit::at_surface(surface, indoor).expect("temperatures in range")
}

proptest! {
    #[test]
    fn the_colder_outdoors_the_drier_the_room_must_be(
        factor in 0.0..0.999, indoor in 5.0..35.0, outdoor in -55.0..4.0, colder in 0.01..5.0,
    ) {
        let (mild, cold) = (limit(factor, indoor, outdoor), limit(factor, indoor, outdoor - colder));
        prop_assert!(cold.drip < mild.drip && cold.mould < mild.mould);
        prop_assert!(mild.mould < mild.drip && mild.drip.value() < 1.0);
    }

    #[test]
    fn a_warmer_surface_stands_a_damper_room(
        factor in 0.0..0.99, warmer in 1e-6..0.01, indoor in 5.0..35.0, outdoor in -55.0..4.0,
    ) {
        let now = limit(factor, indoor, outdoor);
        prop_assert!(limit(factor + warmer, indoor, outdoor).drip > now.drip);
    }

    /// A surface as warm as the room stands all that the room can hold, and mould from 80 %.
    #[test]
    fn a_surface_as_warm_as_the_room_stands_it_all(indoor in -5.0..35.0, outdoor in -60.0..-6.0) {
        let limit = limit(1.0, indoor, outdoor);
        close_to("drip", limit.drip.value(), 1.0, Tolerance::absolute(1e-12));
        close_to("mould", limit.mould.value(), 0.8, Tolerance::absolute(1e-12));
    }

    #[test]
    fn a_factor_that_is_needed_is_enough(
        indoor in 5.0..35.0, percent in 5.0..95.0, outdoor in -55.0..4.0,
    ) {
        let (inside, outside) = (Temperature::celsius(indoor), Temperature::celsius(outdoor));
        let humidity = RelativeHumidity::percent(percent);
        let needed = NeededFactor::of(inside, humidity, outside).unwrap();
        let limit = limit(needed.mould.value() + 1e-9, indoor, outdoor);
        prop_assert_eq!(limit.risk(humidity), SurfaceRisk::None);
        prop_assert!(needed.mould > needed.drip);
    }

    #[test]
    fn never_more_water_condenses_than_comes(
        potential in -1e-3..1e-3, source in 0.0..1e-3, carried in -1e-3..1e-3,
    ) {
        let [potential, source, carried] = [potential, source, carried].map(MassFlow::new);
        let condensing = limited_by_source(potential, source, carried).unwrap();
        prop_assert!(condensing.rate >= MassFlow::ZERO);
        prop_assert!(condensing.rate <= potential.max(MassFlow::ZERO));
        prop_assert!(condensing.rate <= (source - carried).max(MassFlow::ZERO));
        if carried >= MassFlow::ZERO {
            prop_assert!(condensing.rate <= source);
        }
    }

    /// A colder surface takes no less, and none takes from air whose dew point it does not reach.
    #[test]
    fn a_colder_surface_takes_no_less(
        percent in 1.0..99.0, surface in -40.0..25.0, colder in 0.0..10.0, coefficient in 2.0..5.0,
    ) {
        let humidity = RelativeHumidity::percent(percent);
        let twenty = Temperature::celsius(20.0);
        let room = MoistAir::from_relative_humidity(twenty, humidity, STANDARD_PRESSURE).unwrap();
        let flux = |celsius| {
            let surface = Temperature::celsius(celsius);
            surface_flux(&room, surface, SurfaceCoefficient::new(coefficient)).unwrap().flux
        };
        prop_assert!(flux(surface - colder) >= flux(surface));
        if flux(surface) > MoistureFlux::ZERO {
            let dew_point = room.dew_point().unwrap().as_celsius();
            // Concentrations compare at unlike temperatures, which shifts the dew point a little.
            prop_assert!(surface < dew_point + 2.0);
        }
    }

    #[test]
    fn more_air_never_wets_a_room_that_outdoors_is_drier_than(
        source in 0.0..1000.0, flow in 1.0..500.0, more in 0.0..500.0, outdoor in -40.0..19.0,
        percent in 1.0..100.0,
    ) {
        let humidity = RelativeHumidity::percent(percent);
        let outdoors = Temperature::celsius(outdoor);
        let outdoor =
            MoistAir::from_relative_humidity(outdoors, humidity, STANDARD_PRESSURE).unwrap();
        let indoor = Temperature::celsius(20.0);
        let room = |kilograms_per_hour: f64| {
            let flow = DryAirFlow::new(MassFlow::new(kilograms_per_hour / 3600.0)).unwrap();
            SteadyRoom::of(MassFlow::grams_per_hour(source), flow, &outdoor, indoor).unwrap()
        };
        match (room(flow), room(flow + more)) {
            (SteadyRoom::Holds(few), SteadyRoom::Holds(many)) => {
                let rounding = 1e-12;
                let (few, many) = (few.humidity_ratio(), many.humidity_ratio());
                prop_assert!(many.value() <= few.value() + rounding);
            }
            (SteadyRoom::Saturated { condensing: few }, SteadyRoom::Saturated { condensing }) => {
                prop_assert!(condensing <= few);
                prop_assert!(few <= MassFlow::grams_per_hour(source));
            }
            (SteadyRoom::Saturated { .. }, SteadyRoom::Holds(_)) => {}
            (few, many) => return Err(TestCaseError::fail(format!("{few:?}, then {many:?}"))),
        }
    }

    #[test]
    fn spots_come_coldest_first_and_the_next_has_another_remedy(
        factors in proptest::collection::vec(-0.1..1.0, 1..9), outdoor in -55.0..10.0,
    ) {
        let places = [
            SpotPlace::Detail(ThermalBridge::TopCasting(End::Front)),
            SpotPlace::Detail(ThermalBridge::TopCasting(End::Door)),
            SpotPlace::Detail(ThermalBridge::FrameLine(Surface::SideWall)),
            SpotPlace::Detail(ThermalBridge::FrameLine(Surface::Ceiling)),
            SpotPlace::Detail(ThermalBridge::FloorMember),
            SpotPlace::Plain(Surface::Floor),
            SpotPlace::Plain(Surface::SideWall),
            SpotPlace::Windows,
        ];
        let known = places.into_iter().zip(factors.iter().copied().map(TemperatureFactor::new));
        let indoor = Temperature::celsius(20.0);
        let spots =
            ColdSpots::from_factors(indoor, Temperature::celsius(outdoor), known, Vec::new());
        prop_assert_eq!(spots.spots.len() + spots.unknown.len(), factors.len());
        for pair in spots.spots.windows(2) {
            prop_assert!(pair[0].surface_temperature <= pair[1].surface_temperature);
            prop_assert!(pair[0].limit.drip <= pair[1].limit.drip);
        }
        if let (Some(weakest), Some(next)) = (spots.weakest(), spots.next_weakest()) {
            prop_assert!(weakest.remedy() != next.remedy());
            prop_assert!(weakest.temperature_factor <= next.temperature_factor);
            for skipped in &spots.spots {
                let colder = skipped.temperature_factor < next.temperature_factor;
                prop_assert!(!colder || skipped.remedy() == weakest.remedy());
            }
        }
        let humidity = RelativeHumidity::percent(40.0);
        let quiet = spots.spots.len() - spots.at_risk(humidity).count();
        let stand = spots.spots.iter().filter(|spot| humidity <= spot.limit.mould).count();
        prop_assert_eq!(quiet, stand);
    }

    #[test]
    fn no_input_gives_what_is_not_a_number(a in anything(), b in anything(), c in anything()) {
        let (ta, tb) = (Temperature::celsius(a), Temperature::celsius(b));
        let [x, y, z] = [a, b, c].map(MassFlow::new);
        let layer = VapourLayer {
            resistance: ThermalResistance::new(a),
            equivalent_air_thickness: Length::new(b),
        };
        let surface = ThermalResistance::new(0.1);
        let state = MonthState {
            indoor: ta,
            indoor_vapour: Pressure::new(b),
            outdoor: tb,
            outdoor_vapour: Pressure::new(c),
        };
        let balance = |assembly: Assembly| monthly_balance(&assembly, &[state; 12]);
        let answers = [
            NeededFactor::of(ta, RelativeHumidity::new(c), tb).map(|needed| needed.mould.value()),
            limited_by_source(x, y, z).map(|condensing| condensing.rate.value()),
            ColdSpellWater::over(x, true, Time::new(b)).map(|water| water.frost.value()),
            mass_transfer_coefficient(SurfaceCoefficient::new(a)).map(Speed::value),
            MoistureLoad::new(MoistureSource::LaundryLoad, a, Time::new(b))
                .map(|load| load.while_active().most.value()),
            critical_month(&[state; 12]).map(|found| found.critical.factor.value()),
            least_depth(VapourPermeability::new(a), VapourPermeance::new(b)).map(Length::value),
            Assembly::new(surface, vec![layer, layer], surface)
                .and_then(balance)
                .map(|year| year.remaining().value()),
        ];
        for (index, answer) in answers.into_iter().enumerate() {
            if let Ok(value) = answer {
                prop_assert!(value.is_finite(), "answer {} is {}", index, value);
            }
        }
    }
}

/// Layers of a build-up, the outermost perhaps tight.
fn assembly() -> impl Strategy<Value = Assembly> {
    let layer = (0.0..3.0_f64, 0.01..20.0_f64).prop_map(|(resistance, thickness)| VapourLayer {
        resistance: ThermalResistance::new(resistance),
        equivalent_air_thickness: Length::new(thickness),
    });
    (proptest::collection::vec(layer, 1..7), any::<bool>()).prop_map(|(mut layers, tight)| {
        if tight {
            layers.push(VapourLayer {
                resistance: ThermalResistance::new(4e-5),
                equivalent_air_thickness: Length::new(f64::INFINITY),
            });
        }
        let surfaces = [0.13, 0.04].map(ThermalResistance::new);
        Assembly::new(surfaces[0], layers, surfaces[1]).expect("a lawful build-up")
    })
}

fn state() -> impl Strategy<Value = MonthState> {
    (15.0..25.0, 10.0..90.0, -40.0..30.0, 10.0..100.0).prop_map(
        |(indoor, indoor_percent, outdoor, outdoor_percent)| {
            MonthState::from_humidities(
                Temperature::celsius(indoor),
                RelativeHumidity::percent(indoor_percent),
                Temperature::celsius(outdoor),
                RelativeHumidity::percent(outdoor_percent),
            )
            .expect("a state in range")
        },
    )
}

proptest! {
    /// The conditions that single out the answer: no pressure above saturation, water only where
    /// it is at saturation, none given up where there is none, and what goes in comes out.
    #[test]
    fn a_vapour_profile_obeys_saturation_and_the_balance(
        assembly in assembly(), state in state(), wet in any::<[bool; 7]>(),
    ) {
        let wet: Vec<usize> = (0..assembly.interfaces()).filter(|&n| wet[n]).collect();
        let profile = VapourProfile::of(&assembly, &state, &wet).unwrap();
        let saturation = assembly.interface_saturations(state.indoor, state.outdoor).unwrap();
        let rounding = 1e-9 * 4000.0;
        let flow = |from: Pressure, to: Pressure, layer: usize| {
            assembly.layers()[layer].permeance() * (from - to)
        };
        for (n, &flux) in profile.condensing.iter().enumerate() {
            let pressure = profile.pressures[n];
            if wet.contains(&n) {
                prop_assert_eq!(pressure, saturation[n]);
            } else {
                prop_assert!(pressure.value() <= saturation[n].value() + rounding);
                prop_assert!(flux >= MoistureFlux::ZERO);
            }
            if flux > MoistureFlux::ZERO {
                prop_assert_eq!(pressure, saturation[n]);
            }
            let before = if n == 0 { state.indoor_vapour } else { profile.pressures[n - 1] };
            let last = n + 1 == profile.pressures.len();
            let after = if last { state.outdoor_vapour } else { profile.pressures[n + 1] };
            let balance = flow(before, pressure, n) - flow(pressure, after, n + 1);
            // Through a centimetre of air a rounding of the pressure carries this much.
            let carried = 2e-10 / 0.01 * rounding;
            close_to("condensing", flux.value(), balance.value(), Tolerance::absolute(carried));
        }
        let stays: MoistureFlux = profile.condensing.iter().copied().sum();
        close_to(
            "in less out",
            (profile.inflow - profile.outflow).value(),
            stays.value(),
            Tolerance::absolute(1e-15).and(Tolerance::relative(1e-9)),
        );
    }

    /// The same month all year: what condenses in the first goes on, and a damper room takes more.
    #[test]
    fn a_damper_room_never_wets_its_walls_less(
        assembly in assembly(), state in state(), damper in 0.0..300.0,
    ) {
        let more = MonthState {
            indoor_vapour: state.indoor_vapour + Pressure::new(damper),
            ..state
        };
        let peak = |state| {
            let year = monthly_balance(&assembly, &[state; 12]).unwrap();
            year.peak().map_or(0.0, |month| month.total().value())
        };
        let (less, more) = (peak(state), peak(more));
        prop_assert!(more >= less - 1e-9 * less, "{} then {}", less, more);
    }

    #[test]
    fn a_year_adds_up_and_never_owes_water(
        assembly in assembly(),
        months in proptest::collection::vec(state(), 12),
    ) {
        let months: [MonthState; 12] = months.try_into().unwrap();
        let year = monthly_balance(&assembly, &months).unwrap();
        prop_assert!(year.months.is_empty() || year.months.len() == 12);
        let mut lying = vec![0.0; assembly.interfaces()];
        for (n, balance) in year.months.iter().enumerate() {
            prop_assert_eq!(balance.month, (year.months[0].month + n) % 12);
            for (water, (change, after)) in
                lying.iter_mut().zip(balance.change.iter().zip(&balance.accumulated))
            {
                *water += change.value();
                prop_assert!(after.value() >= 0.0);
                close_to("sum", *water, after.value(), Tolerance::absolute(1e-9));
            }
        }
        if let Some(first) = year.months.first() {
            prop_assert!(first.total() > SurfaceMoisture::ZERO, "the first month condenses");
        }
    }
}
