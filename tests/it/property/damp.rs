//! What must hold of damp and air, whatever the design.

use inchwise_core::damp::{Damp, relative_humidity};
use inchwise_core::design::{CheckedDesign, Field};
use inchwise_core::envelope::{End, Envelope, ThermalBridge};
use inchwise_core::moisture::{ColdSpots, SpotPlace};
use inchwise_core::room::Room;
use inchwise_core::units::*;
use proptest::prelude::*;

use super::design::lawful_design;

/// The stage with a few spots of any factor.
fn damp_with(checked: &CheckedDesign, factors: [f64; 3]) -> Damp {
    let room = Room::of(checked);
    let envelope = Envelope::of(checked, &room.clear);
    let places = [
        SpotPlace::Detail(ThermalBridge::TopCasting(End::Front)),
        SpotPlace::Detail(ThermalBridge::StudHead),
        SpotPlace::Detail(ThermalBridge::FloorMember),
    ];
    let known = places.into_iter().zip(factors.map(TemperatureFactor::new));
    let design = checked.design();
    let (indoor, outdoor) = (design.indoor_temperature, design.outdoor_temperature);
    let spots = ColdSpots::from_factors(indoor, outdoor, known, Vec::new());
    Damp::of(checked, &room, &envelope, &spots).expect("a lawful design is in range")
}

fn factors() -> impl Strategy<Value = [f64; 3]> {
    [0.0..1.0_f64, 0.0..1.0_f64, 0.0..1.0_f64]
}

proptest! {
    #[test]
    fn what_comes_goes_out_or_lands(checked in lawful_design(), factors in factors()) {
        let water = damp_with(&checked, factors).cold_spots;
        let landing: MassFlow = water.places.iter().map(|place| place.rate).sum();
        prop_assert!(landing >= MassFlow::ZERO && water.anywhere >= MassFlow::ZERO);
        let out = water.carried_out + landing + water.anywhere;
        let off = (water.source - out).value().abs();
        let whole = water.source.value().max(water.carried_out.value().abs()).max(landing.value());
        prop_assert!(off <= 1e-6 * whole + 1e-15, "{} of {} astray", off, whole);
        if water.carried_out >= MassFlow::ZERO {
            prop_assert!(landing.value() <= water.source.value() * (1.0 + 1e-9));
        }
        prop_assert!(water.room.relative_humidity().value() <= 1.0 + 1e-9);
    }

    #[test]
    fn everything_is_a_number(checked in lawful_design(), factors in factors()) {
        let damp = damp_with(&checked, factors);
        let mut figures = vec![
            damp.busy.alone().value(),
            damp.busy.ventilated().value(),
            damp.need.busy_heat.value(),
            damp.need.mean_heat.value(),
            damp.cold_spots.frost().value(),
            damp.cold_spots.could_take.value(),
            damp.outlook.holds_up_to.map_or(0.0, Temperature::as_celsius),
        ];
        for build_up in &damp.build_ups {
            figures.push(build_up.peak().value());
            figures.push(build_up.equivalent_air_thickness.value());
            // Something gathers exactly where there is a month that most does.
            prop_assert_eq!(build_up.wettest.is_some(), build_up.year.peak().is_some());
            if let Some(wettest) = &build_up.wettest {
                prop_assert!(wettest.gained <= build_up.peak() * (1.0 + 1e-12));
                prop_assert!(wettest.indoor_vapour > wettest.steel_saturation);
            }
        }
        if let Some(run) = damp.fan.run() {
            let stuck = [run.intake_stuck.as_ref(), run.exhaust_stuck.as_ref()];
            for point in [&run.clean, &run.dirty].into_iter().chain(stuck.into_iter().flatten()) {
                figures.push(point.exhausted().value());
                figures.push(point.pull_on_door.value());
                prop_assert!(point.exhausted() > VolumeFlow::ZERO);
            }
        }
        prop_assert!(figures.iter().all(|figure| figure.is_finite()), "{:?}", figures);
        let humidity = relative_humidity(&damp.mean.with_fan).value();
        prop_assert!((0.0..=1.0 + 1e-9).contains(&humidity));
    }

    /// Winter air is drier than the room: more of it, by leaks or by a stronger fan, never wets.
    #[test]
    fn more_air_never_wets_the_room(checked in lawful_design(), factors in factors(), more in 1.0..3.0) {
        let now = damp_with(&checked, factors);
        for field in [Field::AirChanges, Field::FanFreeAirFlow] {
            let mut design = checked.design().clone();
            let range = field.range();
            let number: f64 = design.get(field).unwrap_or(0.0) * more;
            design.set(field, Some(number.min(range.maximum)));
            let Ok(checked) = design.check() else { continue };
            let then = damp_with(&checked, factors);
            let slack = 1e-9;
            prop_assert!(then.busy.alone().value() <= now.busy.alone().value() + slack);
            prop_assert!(then.busy.ventilated().value() <= now.busy.ventilated().value() + slack);
        }
    }

    /// Dirt, and a stuck damper, cost flow.
    #[test]
    fn nothing_in_the_way_ever_helps(checked in lawful_design(), factors in factors()) {
        let damp = damp_with(&checked, factors);
        if let Some(run) = damp.fan.run() {
            let slack = VolumeFlow::new(1e-9);
            prop_assert!(run.dirty.exhausted() <= run.clean.exhausted() + slack);
            if let Some(stuck) = &run.intake_stuck {
                prop_assert!(stuck.exhausted() <= run.clean.exhausted() + slack);
                prop_assert!(stuck.suction() >= run.clean.suction());
            }
            if let Some(stuck) = &run.exhaust_stuck {
                prop_assert!(stuck.exhausted() <= run.clean.exhausted() + slack);
                prop_assert!(stuck.suction() <= run.clean.suction() + Pressure::new(1e-6));
            }
            for field in [Field::DamperDiameter, Field::ExhaustDiameter] {
                let mut design = checked.design().clone();
                design.set(field, Some(field.range().maximum));
                let Ok(wider) = design.check() else { continue };
                let wider = damp_with(&wider, factors);
                let flow = wider.fan.run().map(|run| run.clean.exhausted());
                prop_assert!(flow.is_some_and(|flow| flow + slack >= run.clean.exhausted()));
            }
        }
    }
}
