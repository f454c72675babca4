//! Damp at surfaces and its sources against ISO 13788, DIN 4108 and stated formulas.

use std::ops::RangeInclusive;

use inchwise_core::design::{Design, RoomUse, Surface};
use inchwise_core::envelope::{
    End, HeatFlow, Layer, LayerKind, OUTSIDE_SURFACE_RESISTANCE, Openings, PlainArea,
    ThermalBridge, series_resistance,
};
use inchwise_core::moisture::*;
use inchwise_core::psychro::{MoistAir, STANDARD_PRESSURE};
use inchwise_core::units::*;
use inchwise_core::ventilation::DryAirFlow;
use inchwise_tests::{Row, Table, Tolerance, close_to};

fn celsius(row: &Row, column: &str) -> Temperature {
    Temperature::celsius(row.number(column))
}

fn air(celsius: f64, percent: f64) -> MoistAir {
    MoistAir::from_relative_humidity(
        Temperature::celsius(celsius),
        RelativeHumidity::percent(percent),
        STANDARD_PRESSURE,
    )
    .expect("air in range")
}

#[test]
fn the_needed_factor_is_that_of_single_states() {
    let table = Table::read(include_str!("../../reference/psychro/iso_13788_single_state.tsv"));
    for row in table.rows() {
        let (indoor, outdoor) = (celsius(&row, "indoor_c"), celsius(&row, "outdoor_c"));
        let humidity = RelativeHumidity::new(row.number("relative_humidity"));
        let needed = NeededFactor::of(indoor, humidity, outdoor).unwrap();
        row.close_to("dew_point_c", needed.drip_surface.as_celsius());
        row.close_to("surface_at_80_percent_c", needed.mould_surface.as_celsius());
        row.close_to("factor_at_100_percent", needed.drip.value());
        row.close_to("factor_at_80_percent", needed.mould.value());

        // A surface of just that factor stands just that humidity.
        let limit = |factor| {
            let surface = surface_temperature(factor, indoor, outdoor);
            HumidityLimit::at_surface(surface, indoor).unwrap()
        };
        let exact = Tolerance::absolute(1e-12);
        let given = humidity.value();
        close_to("limit of dripping", limit(needed.drip).drip.value(), given, exact);
        close_to("limit of mould", limit(needed.mould).mould.value(), given, exact);
    }
}

#[test]
fn the_needed_factor_is_nearly_that_of_the_other_saturation_formula() {
    let table = Table::read(include_str!("../../reference/moisture/needed_factor.tsv"));
    for row in table.rows() {
        let humidity = RelativeHumidity::percent(row.number("room_percent"));
        let needed =
            NeededFactor::of(Temperature::celsius(20.0), humidity, celsius(&row, "outdoor_c"))
                .unwrap();
        row.close_to("drip", needed.drip.value());
        row.close_to("mould", needed.mould.value());
    }
}

/// DIN 4108-2: a surface at 12.6 °C, a factor of 0.70, at 20 °C and 50 % against −5 °C.
#[test]
fn the_fixed_criterion_follows_from_its_own_state_and_no_other() {
    let criterion = FixedCriterion::DIN_4108_2;
    let needed = criterion.needed().unwrap();
    close_to("surface", needed.mould_surface.as_celsius(), 12.6, Tolerance::absolute(0.05));
    close_to("factor", needed.mould.value(), 0.70, Tolerance::absolute(0.0055));
    // Worked by hand: 5 °C at −30 °C, 0.8·871.86/2336.95.
    let colder = criterion.limit_at(Temperature::celsius(-30.0)).unwrap();
    close_to("mould at -30 C", colder.mould.as_percent(), 29.85, Tolerance::absolute(0.005));
    close_to("drip at -30 C", colder.drip.as_percent(), 37.31, Tolerance::absolute(0.005));
}

#[test]
fn humidity_classes_have_their_limits() {
    let table = Table::read(include_str!("../../reference/moisture/humidity_classes.tsv"));
    for row in table.rows() {
        let number = row.number("class");
        let class = HumidityClass::ALL
            .into_iter()
            .find(|class| f64::from(class.number()) == number)
            .expect("a class");
        let excess = class.vapour_excess(celsius(&row, "outdoor_c")).expect("a limit");
        row.close_to("excess_pa", excess.value());
    }
    let open = HumidityClass::LaundryOrPool;
    assert_eq!(open.vapour_excess(Temperature::celsius(0.0)), None);
    let state = MonthState::from_class(
        Temperature::celsius(20.0),
        open,
        Temperature::celsius(0.0),
        RelativeHumidity::percent(80.0),
    );
    assert_eq!(state, Err(MoistureError::OpenEndedClass));
}

#[test]
fn the_critical_month_is_february() {
    let table = Table::read(include_str!("../../reference/moisture/critical_month.tsv"));
    let states: Vec<MonthState> = table
        .rows()
        .map(|row| {
            MonthState::from_class(
                Temperature::celsius(20.0),
                HumidityClass::UnknownOccupancy,
                celsius(&row, "outdoor_c"),
                RelativeHumidity::percent(row.number("outdoor_percent")),
            )
            .unwrap()
        })
        .collect();
    let found = critical_month(&states.try_into().expect("twelve months")).unwrap();
    assert_eq!(found.months.len(), 12);
    for (row, month) in table.rows().zip(&found.months) {
        assert_eq!(month.month + 1, row.number("month") as usize);
        row.close_to("factor", month.factor.value());
    }
    assert_eq!(found.critical.month, 1, "February by 0.0002 before December");
    let surface = found.critical.surface.as_celsius();
    close_to("surface in February", surface, 15.453, Tolerance::absolute(0.0006));
}

/// A held humidity gets 0.05 on top: 0.65·2336.95 Pa is 1519 Pa (an Italian quotation of the
/// standard prints 0.65·2337).
#[test]
fn a_held_humidity_has_its_margin() {
    let state = MonthState::from_held_humidity(
        Temperature::celsius(20.0),
        RelativeHumidity::percent(60.0),
        Temperature::celsius(0.0),
        RelativeHumidity::percent(80.0),
    );
    let vapour = state.unwrap().indoor_vapour.value();
    close_to("indoor vapour pressure", vapour, 1519.05, Tolerance::absolute(0.05));
}

#[test]
fn a_cold_surface_takes_water_as_the_lewis_relation_says() {
    let table = Table::read(include_str!("../../reference/moisture/surface_flux.tsv"));
    for row in table.rows() {
        let room = air(20.0, row.number("room_percent"));
        let surface = celsius(&row, "surface_c");
        let taken = surface_flux(&room, surface, STILL_CORNER_COEFFICIENT).unwrap();
        row.close_to("flux_g_per_m2_h", taken.flux.as_grams_per_square_metre_hour());
        assert_eq!(taken.is_frost, surface.as_celsius() < 0.0);
    }
}

/// Three faces of a bare casting, 0.035 m² at −25 °C to −27 °C, grow 61 g to 79 g of ice a day and
/// some two litres in a month. Worked by hand from the stated formula.
#[test]
fn a_bare_casting_grows_two_litres_of_ice_in_a_month() {
    let casting = Area::new(0.035);
    let a_day = |percent, celsius| {
        let surface = Temperature::celsius(celsius);
        let taken = surface_flux(&air(20.0, percent), surface, STILL_CORNER_COEFFICIENT).unwrap();
        let rate = taken.flux * casting;
        (rate * Time::days(1.0)).value() * 1000.0
    };
    close_to("at 40 % and -25 C, g", a_day(40.0, -25.0), 61.0, Tolerance::absolute(1.0));
    close_to("at 50 % and -27 C, g", a_day(50.0, -27.0), 79.0, Tolerance::absolute(1.0));

    let rate = MassFlow::grams_per_hour(70.0 / 24.0);
    let month = ColdSpellWater::over(rate, true, Time::days(30.0)).unwrap();
    let litres = month.released_at_thaw().as_litres();
    close_to("in 30 days, L", litres, 2.1, Tolerance::absolute(1e-9));
    assert_eq!(month.dripped, Mass::ZERO);
    let warm = ColdSpellWater::over(rate, false, Time::days(30.0)).unwrap();
    assert_eq!((warm.frost, warm.dripped), (Mass::ZERO, month.frost));
}

/// A strip that could take 1.5 L a day gets 0.24 L where two sleepers (800 g a night) have all but
/// 10 g/h of it carried off. Worked by hand from the stated formula.
#[test]
fn water_is_limited_by_what_there_is() {
    let per_hour = MassFlow::grams_per_hour;
    let strip = per_hour(1500.0 / 24.0);
    let limited = |source, carried| limited_by_source(strip, source, carried).unwrap();
    let scarce = limited(per_hour(100.0), per_hour(90.0));
    assert_eq!(scarce.limit, CondensingLimit::Source);
    close_to("rate, g/h", scarce.rate.as_grams_per_hour(), 10.0, Tolerance::absolute(1e-9));
    let ample = limited(per_hour(100.0), per_hour(0.0));
    assert_eq!((ample.rate, ample.limit), (strip, CondensingLimit::Surfaces));
    let dry = limited(per_hour(100.0), per_hour(120.0));
    assert_eq!((dry.rate, dry.limit), (MassFlow::ZERO, CondensingLimit::CarriedOff));
    let warm = limited_by_source(-strip, per_hour(100.0), MassFlow::ZERO).unwrap();
    assert_eq!((warm.rate, warm.limit), (MassFlow::ZERO, CondensingLimit::NoColdSurface));
}

/// What one unit of a source gives off, in the unit a published list is in.
fn in_unit(emission: Emission, unit: &str) -> [f64; 3] {
    const PINT: f64 = 0.473_176_473;
    match (emission, unit) {
        (Emission::WhileThere(flows), "g_per_h") => flows.map(MassFlow::as_grams_per_hour),
        (Emission::WhileThere(flows), "pint_per_50_lb_day") => {
            let fifty_pounds = 50.0 * KILOGRAMS_PER_POUND;
            flows.map(|flow| flow.as_grams_per_hour() * 24.0 / 1000.0 * fifty_pounds / PINT)
        }
        (Emission::EachTime(masses), "kg") => masses.map(Mass::value),
        (Emission::EachTime(masses), "pint") => masses.map(|mass| mass.value() / PINT),
        (Emission::EachTime(masses), "pint_per_gallon") => {
            masses.map(|mass| mass.value() / PINT * 3.785_411_784)
        }
        _ => panic!("no {unit:?} of {emission:?}"),
    }
}

#[test]
fn sources_give_off_what_published_lists_say() {
    let table = Table::read(include_str!("../../reference/moisture/emission.tsv"));
    for row in table.rows() {
        let source = MoistureSource::ALL
            .into_iter()
            .find(|source| source.key() == row.text("emitter"))
            .unwrap_or_else(|| panic!("no source for {row}"));
        let [least, typical, most] = in_unit(source.emission(), row.text("unit"));
        row.close_to("least", least);
        row.close_to("typical", typical);
        row.close_to("most", most);
    }
}

/// Six dogs of 25 kg give off 3.1 L a day, and two people at desks 100 g/h while they are there
/// (worked by hand from the published rates).
#[test]
fn uses_add_up_their_sources() {
    let animals = MoistureLoad::new(MoistureSource::AnimalKilogram, 150.0, Time::days(1.0));
    let a_day = animals.unwrap().daily_mean().typical * Time::days(1.0);
    close_to("six dogs, kg a day", a_day.value(), 3.13, Tolerance::absolute(0.02));
    let usual = |room_use| {
        let mut design = Design::default();
        design.take_use(room_use);
        loads(&design).unwrap()
    };
    let office = usual(RoomUse::Office);
    let at_work = all_at_once(&office).typical.as_grams_per_hour();
    close_to("two at desks, g/h", at_work, 100.0, Tolerance::absolute(1e-9));
    let mean = in_the_mean_of_a_day(&office).typical.as_grams_per_hour();
    close_to("their mean over the day", mean, 100.0 * 8.0 / 24.0, Tolerance::absolute(1e-9));
    assert!(usual(RoomUse::Store).is_empty());

    // Two showers at half a US pint each and a litre of kerosene (0.81 kg) at 0.95 kg a litre.
    let wet = Design {
        person_count: 0.0,
        showers: 2.0,
        unvented_kerosene: Mass::new(0.81),
        ..Design::default()
    };
    let a_day = in_the_mean_of_a_day(&loads(&wet).unwrap()).typical * Time::days(1.0);
    let by_hand = 2.0 * 0.5 * 0.473_176 + 0.95;
    close_to("showers and kerosene, kg a day", a_day.value(), by_hand, Tolerance::relative(1e-6));

    // A load that dries in twelve hours gives as much in the day as one that dries in two.
    let load = |hours| {
        let load = MoistureLoad::new(MoistureSource::LaundryLoad, 1.0, Time::hours(hours));
        load.unwrap().daily_mean().typical.as_grams_per_hour()
    };
    close_to("slow against quick", load(12.0), load(2.0), Tolerance::relative(1e-12));
}

/// What codes and welfare rules ask is deferred for wet uses, and only for them. Common practice,
/// no source.
#[test]
fn wet_uses_are_deferred_to_others() {
    for &room_use in RoomUse::ALL {
        let dry = [RoomUse::Store, RoomUse::Workshop, RoomUse::Office, RoomUse::Sleeping];
        assert_eq!(room_use.is_wet(), !dry.contains(&room_use), "{room_use:?}");
        let engineered = room_use.deferrals().contains(&Deferral::EngineeredDesign);
        assert_eq!(engineered, room_use.is_wet(), "{room_use:?}");
    }
    assert!(RoomUse::Animals.deferrals().contains(&Deferral::AnimalWelfare));
}

/// 0.2 kg/h at 20 °C against −5 °C and 80 % comes to 50 % with 31.55 m³/h, 1.2 kg/m³ (humidity
/// ratios of PsychroLib 2.5.0).
#[test]
fn a_source_and_outdoor_air_come_to_a_humidity() {
    let trade_flow = |m3_per_h: f64| DryAirFlow::new(MassFlow::new(1.2 * m3_per_h / 3600.0));
    let room = |source, flow, outdoor: MoistAir| {
        let indoor = Temperature::celsius(20.0);
        SteadyRoom::of(
            MassFlow::grams_per_hour(source),
            trade_flow(flow).unwrap(),
            &outdoor,
            indoor,
        )
        .unwrap()
    };
    match room(200.0, 31.55, air(-5.0, 80.0)) {
        SteadyRoom::Holds(air) => {
            let percent = air.relative_humidity().as_percent();
            close_to("room", percent, 50.0, Tolerance::absolute(0.02));
        }
        other => panic!("{other:?}"),
    }
    // Two people (100 g/h) on leakage alone, 8 m³/h at 10 °C: 14.7 g/kg at saturation against
    // 6.1 outdoors leaves 17 g/h. Worked by hand from the stated formula.
    match room(100.0, 8.0, air(10.0, 80.0)) {
        SteadyRoom::Saturated { condensing } => {
            let left = condensing.as_grams_per_hour();
            close_to("condensing, g/h", left, 17.4, Tolerance::absolute(0.5));
        }
        other => panic!("{other:?}"),
    }
}

/// A wall of flat sheet with foam and 12 mm of plywood of 0.12 W/(m·K).
fn foamed_wall(foam: Length) -> PlainArea {
    let layers = vec![
        (LayerKind::Foam, foam, ThermalConductivity::new(0.026)),
        (LayerKind::Lining, Length::mm(12.0), ThermalConductivity::new(0.12)),
    ];
    let layers: Vec<Layer> = layers
        .into_iter()
        .map(|(kind, thickness, conductivity)| Layer {
            kind,
            thickness,
            resistance: thickness / conductivity,
        })
        .collect();
    let surface = Surface::SideWall;
    let inside = HeatFlow::through(surface).inside_surface_resistance();
    let resistances = layers.iter().map(|layer| layer.resistance);
    let total = series_resistance(inside, resistances, OUTSIDE_SURFACE_RESISTANCE);
    PlainArea { surface, area: Area::new(1.0), transmittance: total.transmittance(), layers }
}

#[test]
fn plain_walls_and_windows_stand_what_was_planned() {
    let table = Table::read(include_str!("../../reference/moisture/spots.tsv"));
    for row in table.rows() {
        let (place, factor) = match row.text("place") {
            "wall" => {
                let plain = foamed_wall(Length::mm(row.number("foam_mm")));
                (SpotPlace::Plain(plain.surface), plain_temperature_factor(&plain))
            }
            "window" => {
                let transmittance =
                    ThermalTransmittance::new(row.number("transmittance_w_per_m2_k"));
                let openings = Openings { area: Area::new(1.0), transmittance };
                (SpotPlace::Windows, opening_temperature_factor(&openings))
            }
            other => panic!("no place is called {other:?}"),
        };
        let (indoor, outdoor) = (Temperature::celsius(20.0), Temperature::celsius(-30.0));
        let spots = ColdSpots::from_factors(indoor, outdoor, [(place, factor)], Vec::new());
        let spot = spots.weakest().expect("one spot");
        row.close_to("temperature_factor", spot.temperature_factor.value());
        row.close_to("surface_c", spot.surface_temperature.as_celsius());
        row.close_to("drip_percent", spot.limit.drip.as_percent());
        row.close_to("mould_percent", spot.limit.mould.as_percent());
    }
}

/// Cover the two pairs of castings and the stud, not the other pair, is the next weakest.
#[test]
fn mending_one_casting_mends_its_fellows() {
    let at = |place, factor| (SpotPlace::Detail(place), TemperatureFactor::new(factor));
    let stud = ThermalBridge::FrameLine(Surface::SideWall);
    let known = [
        at(stud, 0.77),
        at(ThermalBridge::TopCasting(End::Door), 0.07),
        at(ThermalBridge::TopCasting(End::Front), 0.06),
        (SpotPlace::Plain(Surface::SideWall), TemperatureFactor::new(0.89)),
    ];
    let waiting = UnknownSpot {
        place: SpotPlace::Detail(ThermalBridge::StudHead),
        reason: UnknownReason::Waiting,
    };
    let (indoor, outdoor) = (Temperature::celsius(20.0), Temperature::celsius(-30.0));
    let spots = ColdSpots::from_factors(indoor, outdoor, known, vec![waiting]);
    let weakest = spots.weakest().expect("a spot");
    assert_eq!(weakest.place.key(), "front_top_casting");
    assert_eq!(weakest.remedy(), Remedy::CoverCastings);
    assert!(weakest.frosts());
    assert_eq!(spots.next_weakest().expect("another").place, SpotPlace::Detail(stud));
    assert!(spots.is_waiting());
    // At 0 °C outdoors nothing freezes any more, and nothing was solved again.
    let mild = spots.at(indoor, Temperature::celsius(0.0));
    assert!(mild.spots.iter().all(|spot| !spot.frosts()));
    assert_eq!(mild.unknown, spots.unknown);
}

/// The humidity that glazing stands, against winter advice for double glazing in a cold country:
/// 15 % below −30 °C, 20 % to −24, 25 % to −18, 35 % to −12 (common practice, from a builder's
/// chart). A pane's edge of factor 0.55 (from memory) comes within the chart's step of five points.
#[test]
fn the_limit_of_a_pane_is_of_the_order_of_winter_advice() {
    let advice = [(-30.0, 15.0..=20.0), (-24.0, 20.0..=25.0), (-18.0, 25.0..=35.0)];
    let outdoors = advice.clone().map(|(outdoor, _)| Temperature::celsius(outdoor));
    let edge = TemperatureFactor::new(0.55);
    let curve = limit_curve(edge, Temperature::celsius(20.0), outdoors).unwrap();
    for (point, (outdoor, advised)) in curve.iter().zip(advice) {
        let near: RangeInclusive<f64> = advised.start() - 5.0..=advised.end() + 5.0;
        let limit = point.limit.drip.as_percent();
        assert!(near.contains(&limit), "{limit} % at {outdoor} C");
    }
}
