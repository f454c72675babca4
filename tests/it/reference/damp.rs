//! Damp and air of whole designs against stated formulas, other planning sheets and trade custom.

use inchwise_core::damp::{Damp, FASTEST_INTAKE, FLUE_SPILLS_AT, Fan, FanRun, Holding, SpotWater};
use inchwise_core::design::{
    DamperScreen, Design, EndWallTreatment, Field, RoomUse, Surface, WeatherCover,
};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::envelope::{End, ThermalBridge};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::material::{CLOSED_CELL_FOAM, PLYWOOD};
use inchwise_core::moisture::SpotPlace;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};

fn evaluated(design: &Design, effort: Effort) -> Evaluation {
    let checked = design.check().expect("a lawful design");
    evaluate_with(&checked, &mut FieldCache::default(), effort)
}

fn damp(design: &Design) -> Damp {
    evaluated(design, Effort::Known).damp().expect("a design in range").clone()
}

fn run(damp: &Damp) -> &FanRun {
    match &damp.fan {
        Fan::Runs(run) => run,
        Fan::None => panic!("the design has a fan"),
    }
}

fn used(room_use: RoomUse) -> Design {
    let mut design = Design::default();
    design.take_use(room_use);
    design
}

/// Air of the two sides of a wall at sea level as ideal gases, kg/m³, by hand:
/// ρ = (p − 0.378·p_w) / (287.042·T). −33 °C and 80 %: p_w is 22 Pa. 20 °C and 70 %: 0.7·2338.8 Pa.
fn outdoors_and_room() -> (f64, f64) {
    let density = |kelvin: f64, vapour: f64| (101_325.0 - 0.378 * vapour) / (287.042 * kelvin);
    (density(240.15, 22.0), density(293.15, 0.7 * 2338.8))
}

/// What one opening loses on its face speed: hood 1.5 and grille 1.5 (from memory), screen of 60 %
/// free area 1.3·(1 − f) + (1/f − 1)² = 0.964 (Idelchik, Handbook of Hydraulic Resistance), blade
/// damper in a wall 2.1 (makers' charts).
const OPENING_LOSS: f64 = 1.5 + 0.964_44 + 2.1 + 1.5;

/// Two intakes and an exhaust with a fan of 1200 m³/h and 80 Pa on its label, m³/h of room air and
/// the speeds on intakes and exhaust, m/s, worked by hand: a parabola that meets a parabola has a
/// closed form, m² = p_0' / (R_in + R_out + p_0' / (ρ·q_0)²) with R = Σζ / (2·ρ·A²) and
/// p_0' = p_0·ρ / 1.2.
fn worked_by_hand(intake: f64, exhaust: f64) -> [f64; 3] {
    let (outdoors, room) = outdoors_and_room();
    let disc = |diameter: f64| core::f64::consts::PI / 4.0 * diameter * diameter;
    let lost = |area: f64, density: f64| OPENING_LOSS / (2.0 * density * area * area);
    let shut_off = 80.0 * room / 1.2;
    let free_air = room * 1200.0 / 3600.0;
    let against = lost(2.0 * disc(intake), outdoors) + lost(disc(exhaust), room);
    let mass = (shut_off / (against + shut_off / (free_air * free_air))).sqrt();
    let speed = |density: f64, area: f64| mass / density / area;
    [mass / room * 3600.0, speed(outdoors, 2.0 * disc(intake)), speed(room, disc(exhaust))]
}

/// Two 10 in intakes and a 10 in exhaust suit one humid 20 ft box (common practice, no source; the
/// fan is invented): 654 m³/h of room air, more air changes than animals
/// need, at 1.5 m/s on the intakes, where the air is cold and dense, and 3.6 m/s on the exhaust.
/// The intakes stay under the 2.5 m/s at which rain comes in, one of them stuck as well as not.
#[test]
fn two_ten_inch_intakes_and_one_exhaust_suit_a_humid_box() {
    let design = Design {
        damper_count: 3.0,
        damper_diameter: Length::inches(10.0),
        exhaust_diameter: Length::inches(10.0),
        fan_free_air_flow: VolumeFlow::cubic_metres_per_hour(1200.0),
        fan_shut_off_pressure: Pressure::new(80.0),
        ..used(RoomUse::WashingDown)
    };
    let evaluation = evaluated(&design, Effort::Known);
    let damp = evaluation.damp().expect("a design in range");
    let fan = run(damp);
    let near = Tolerance::relative(0.002);
    let [flow, on_intakes, on_exhaust] = worked_by_hand(0.254, 0.254);
    close_to("flow by hand", flow, 654.0, Tolerance::absolute(0.5));
    close_to("flow", fan.clean.exhausted().as_cubic_metres_per_hour(), flow, near);
    close_to("on the intakes", fan.clean.intake_speed.value(), on_intakes, near);
    close_to("on the exhaust", fan.clean.exhaust_speed.value(), on_exhaust, near);
    close_to("on the intakes by hand", on_intakes, 1.46, Tolerance::absolute(0.005));
    close_to("on the exhaust by hand", on_exhaust, 3.58, Tolerance::absolute(0.005));
    let changes = fan.clean.exhausted() / evaluation.room.volume;
    assert!(changes.as_per_hour() > 15.0, "the most that animals' rooms are planned with");
    let stuck = fan.intake_stuck.as_ref().expect("one of two");
    assert!(fan.clean.intake_speed < FASTEST_INTAKE && stuck.intake_speed < FASTEST_INTAKE);
    assert!(fan.exhaust_stuck.is_none(), "with its only exhaust shut nothing moves");
    // Hosing down once, half a day at −33 °C: the fan needs little of its time.
    match damp.busy.holding {
        Holding::Fan(duty) => assert!(duty.as_percent() < 20.0, "{duty:?}"),
        other => panic!("{other:?}"),
    }

    let wider = self::damp(&Design { exhaust_diameter: Length::inches(12.0), ..design });
    let [flow, on_intakes, on_exhaust] = worked_by_hand(0.254, 0.3048);
    let clean = &run(&wider).clean;
    close_to("a wider exhaust", clean.exhausted().as_cubic_metres_per_hour(), flow, near);
    close_to("its intakes", clean.intake_speed.value(), on_intakes, near);
    close_to("its exhaust", clean.exhaust_speed.value(), on_exhaust, near);
}

/// Two fans share the load evenly; with the damper of one stuck shut the other moves less than both
/// did, and more than half, its intakes being easier on it.
#[test]
fn one_of_two_exhausts_may_stick() {
    let damp = damp(&Design { damper_count: 4.0, exhaust_count: 2.0, ..Design::default() });
    let run = run(&damp);
    let stuck = run.exhaust_stuck.as_ref().expect("one of two");
    let left = stuck.exhausted() / run.clean.exhausted();
    assert!((0.5..1.0).contains(&left), "{left} of the flow");
    assert!(stuck.suction() < run.clean.suction());
}

/// A label fan against its openings settles at q = q_0 / √(1 + a·q_0² / p_0), a·q² being what all
/// openings take, with room and outdoor air of one density (closed form): here as good as so,
/// outdoors being one kelvin colder.
#[test]
fn a_design_settles_where_the_closed_form_says() {
    let design = Design {
        damper_count: 3.0,
        weather_cover: WeatherCover::None,
        damper_screen: DamperScreen::None,
        outdoor_temperature: Temperature::celsius(15.0),
        indoor_temperature: Temperature::celsius(16.0),
        ..Design::default()
    };
    let damp = damp(&design);
    let room = damp.target.density().value();
    // Damper 2.1 and grille 1.5 on 0.2 m; the intakes carry half each.
    let area = core::f64::consts::PI / 4.0 * 0.2 * 0.2;
    let lost = (2.1 + 1.5) * room / 2.0 / (area * area);
    let a = lost * (1.0 + 1.0 / 4.0);
    let (free_air, shut_off) = (900.0 / 3600.0, 70.0 * room / 1.2);
    let expected = free_air / (1.0 + a * free_air * free_air / shut_off).sqrt();
    let flow = run(&damp).clean.exhausted().value();
    close_to("flow", flow, expected, Tolerance::relative(0.001));
}

/// One of two intakes stuck doubles the pull on the door and costs the fan a fifth to a third of
/// its flow: 545 against 389 m³/h and 43 against 87 N (cross-check, a planning sheet worked apart
/// from this project, for other losses). A closed room is drawn past what a flue stands.
#[test]
fn a_stuck_intake_pulls_at_the_door() {
    let damp = damp(&Design { damper_count: 3.0, ..Design::default() });
    let run = run(&damp);
    let stuck = run.intake_stuck.as_ref().expect("one of two");
    let flow = stuck.exhausted() / run.clean.exhausted();
    assert!((0.66..0.9).contains(&flow), "{flow} of the flow");
    let pull = stuck.pull_on_door / run.clean.pull_on_door;
    assert!((1.8..3.2).contains(&pull), "{pull} times the pull");
    assert!(stuck.suction() > FLUE_SPILLS_AT && stuck.spills_flues());
    // F = s·A: the door is 0.91 m by 2.03 m.
    let expected = run.clean.suction().value() * 0.91 * 2.03;
    close_to("pull", run.clean.pull_on_door.value(), expected, Tolerance::relative(1e-12));
    assert!(run.dirty.exhausted() < run.clean.exhausted(), "dirty screens cost flow");
}

/// Two metres between low and high dampers standing open at −30 °C make 5 Pa (cross-check, a
/// planning sheet worked apart from this project); g·h·(ρ_out − ρ_in).
#[test]
fn open_dampers_a_floor_apart_draw_by_warmth() {
    let design = Design {
        damper_count: 2.0,
        damper_rise: Length::mm(2000.0),
        outdoor_temperature: Temperature::celsius(-30.0),
        ..Design::default()
    };
    let level = damp(&Design { damper_rise: Length::ZERO, ..design.clone() });
    assert_eq!(run(&level).open_dampers_heat, Power::ZERO, "at one height nothing is drawn");
    let damp = damp(&design);
    let stack = run(&damp).open_dampers;
    close_to("pressure", stack.pressure.value(), 5.0, Tolerance::absolute(0.3));
    let watts = run(&damp).open_dampers_heat.value();
    // 16.8 W to warm a cubic metre an hour by 50 K (the same sheet, in air of 1.2 kg/m³).
    let rule =
        stack.let_in.as_cubic_metres_per_hour() * 16.8 * damp.outdoor.density().value() / 1.2;
    close_to("heat", watts, rule, Tolerance::relative(0.02));
}

/// Ten changes of a 20 ft box with animals at 18 °C, −33 °C outdoors: 17.1 W for each m³/h, as 4.8
/// kW for 279 m³/h (cross-check, a planning sheet worked apart from this project). The exchanger
/// takes three quarters of it off until frost holds it back.
#[test]
fn animals_are_warmed_by_the_kilowatt() {
    let design = Design {
        damper_count: 3.0,
        indoor_temperature: Temperature::celsius(18.0),
        outdoor_temperature: Temperature::celsius(-33.0),
        ..used(RoomUse::Animals)
    };
    let evaluation = evaluated(&design, Effort::Known);
    let damp = evaluation.damp().expect("in range");
    let room = &damp.target;
    let flow = damp.need.busy.volume_as(room);
    let per_hour = flow / evaluation.room.volume;
    close_to("air changes", per_hour.as_per_hour(), 10.0, Tolerance::absolute(1e-9));
    let each = damp.need.busy_heat.value() / flow.as_cubic_metres_per_hour();
    close_to("W for each m³/h", each, 4800.0 / 279.0, Tolerance::relative(0.02));

    let mut with_exchanger = design;
    with_exchanger.set(Field::HeatRecovery, Some(0.75));
    let need = self::damp(&with_exchanger).need;
    let recovered = need.recovery.expect("an exchanger");
    assert!(recovered.held_by_frost, "18 °C down to the limit of 0 °C is 18 K of 51 K");
    let left = need.busy_heat / damp.need.busy_heat;
    close_to("heat left", left, 1.0 - 18.0 / 51.0, Tolerance::absolute(1e-9));
}

/// What gathers at cold steel goes as one over the still air that resists as much as lining, gap and
/// foam, g = δ₀·Δp / Σ s_d (ISO 13788:2012, clause 6). 65 against 35 % all winter: 785 to 278 g/m²
/// (cross-check, a planning sheet worked apart from this project).
#[test]
fn water_at_the_steel_goes_as_what_resists_it() {
    let peak = |foam: f64, humidity: f64| {
        let design = Design {
            side_wall_foam: Length::mm(foam),
            target_humidity: RelativeHumidity::percent(humidity),
            ..Design::default()
        };
        let damp = damp(&design);
        let wall = damp.build_ups.into_iter().find(|it| it.surface == Surface::SideWall);
        wall.expect("a side wall")
    };
    // The frame ends at 63 mm: 13 mm of air (0.01 m) in front of 50 mm of foam, none of 100 mm.
    let resists = |foam: f64, gap: f64| {
        0.012 * PLYWOOD.vapour_resistance_factor.value()
            + foam * CLOSED_CELL_FOAM.vapour_resistance_factor.value()
            + gap
    };
    let expected = resists(0.100, 0.0) / resists(0.050, 0.01);
    let ratio = peak(50.0, 50.0).peak() / peak(100.0, 50.0).peak();
    close_to("50 against 100 mm", ratio, expected, Tolerance::relative(0.05));
    let [dry, humid] = [35.0, 65.0].map(|humidity| peak(50.0, humidity).peak());
    close_to("65 against 35 %", humid / dry, 785.0 / 278.0, Tolerance::relative(0.25));
    assert!(!peak(50.0, 50.0).controls_vapour() && peak(60.0, 50.0).controls_vapour());
}

/// What lands on the castings of one end, and the vapour the room's air still holds.
struct Casting {
    spot: SpotWater,
    held: VapourConcentration,
}

/// A covered casting stops frosting where a bare one frosts all winter (common practice, no
/// source), in a workshop that its fan holds at 25 %.
#[test]
fn a_covered_casting_stops_frosting() {
    let with = |end_wall_treatment| {
        let design = Design {
            end_wall_treatment,
            damper_count: 3.0,
            // So thin that the castings stand out of walls and ceiling.
            ceiling_foam: Length::mm(50.0),
            joist_depth: Length::mm(40.0),
            joist_stand_off: Length::mm(15.0),
            outdoor_temperature: Temperature::celsius(-30.0),
            target_humidity: RelativeHumidity::percent(25.0),
            ..Design::default()
        };
        let evaluation = evaluated(&design, Effort::All);
        let damp = evaluation.damp().expect("in range");
        let casting = SpotPlace::Detail(ThermalBridge::TopCasting(End::Front));
        let held = damp.cold_spots.room.vapour_concentration();
        let spot = damp.cold_spots.places.iter().copied().find(|spot| spot.place == casting);
        spot.map(|spot| Casting { spot, held })
    };
    assert!(with(EndWallTreatment::CoverCastings).is_none(), "dry behind its cover");
    let bare = with(EndWallTreatment::LeaveBare).expect("frost on bare steel");
    assert!(bare.spot.is_frost);
    // At 20 °C and 40 % a surface of −27 °C takes 74 g/(m²·h) (cross-check, a planning sheet worked
    // apart from this project), and in proportion to v − v_sat, 6.91 − 0.45 g/m³ there.
    let beyond = bare.held.as_grams_per_cubic_metre() - 0.45;
    let expected = 74.0 / (6.91 - 0.45) * beyond;
    let flux = (bare.spot.rate / bare.spot.area).as_grams_per_square_metre_hour();
    close_to("flux", flux, expected, Tolerance::relative(0.05));
    let bare = bare.spot;
    assert!(bare.spell.frost > Mass::ZERO && bare.spell.dripped == Mass::ZERO);
}

/// When outdoor air cannot: 10 °C and 80 % outdoors hold 50 % at 20 °C, 15 °C and 80 % do not,
/// 8.49 against 7.26 g/kg (PsychroLib 2.5.0).
#[test]
fn warm_damp_weather_is_said_to_be_no_help() {
    let design = Design {
        damper_count: 3.0,
        target_humidity: RelativeHumidity::percent(50.0),
        warmest_month: Temperature::celsius(15.0),
        warmest_month_humidity: RelativeHumidity::percent(80.0),
        ..Design::default()
    };
    let outlook = damp(&design).outlook;
    assert_eq!(outlook.room.holding, Holding::OutdoorTooDamp);
    let last = outlook.holds_up_to.expect("it helps in winter").as_celsius();
    assert!((9.0..12.8).contains(&last), "outdoor air holds up to {last} °C");
    let ways = outlook.other_ways.expect("something else is needed");
    // Two at work give 180 g/h, the leaks bring 1.2 g in with each kilogram of air.
    let dehumidify = ways.dehumidify.as_grams_per_hour();
    assert!((180.0..200.0).contains(&dehumidify), "{dehumidify} g/h");
    // By its own rule: φ·p_ws at that room temperature is the vapour that comes in and is given
    // off; with 400 m³/h and 0.4 g/kg more than outdoors a room 3 to 5 K warmer.
    let heat_to = ways.heat_to.expect("air passes").as_celsius();
    assert!((22.0..25.0).contains(&heat_to), "{heat_to} °C");
}

/// Colder outdoors always asks for a drier room, and the curve says what the evaluation says.
#[test]
fn the_curve_passes_through_the_evaluation() {
    let design = Design { damper_count: 3.0, ..Design::default() };
    let checked = design.check().expect("a lawful design");
    let evaluation = evaluated(&design, Effort::Known);
    let damp = evaluation.damp().expect("in range");
    let outdoors = [design.outdoor_temperature, Temperature::celsius(-10.0)];
    let points = damp
        .over_outdoors(&checked, &evaluation.room, &evaluation.cold_spots, outdoors)
        .expect("in range");
    assert_eq!(points[0].left_alone, damp.busy.alone());
    assert_eq!(points[0].with_fan, damp.busy.ventilated());
    let weakest = evaluation.cold_spots.weakest().expect("plain areas are known");
    assert_eq!(points[0].weakest, Some(weakest.limit));
    let [cold, mild] = [&points[0], &points[1]].map(|point| point.weakest.expect("known").drip);
    assert!(cold < mild);
}
