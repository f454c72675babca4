//! The one table of numeric choices: meaning, allowed range, step and default.
//!
//! From this table come the check, the slider, the documentation and the generator of the
//! property tests.

use super::choice::{
    DamperScreen, EndWallTreatment, FanGiven, FoamMeasure, FramePosition, LiningMaterial,
    PersonnelDoor, RoomUse, Wall, WeatherCover,
};
use crate::choice_table::{Number, choice_table, numbers};
use crate::freight_box::BoxSize;
use crate::units::{
    AirChangeRate, Area, CloggedShare, Effectiveness, FreeAreaRatio, Length, Mass, Power, Pressure,
    RelativeHumidity, Temperature, TemperatureDifference, ThermalConductivity,
    ThermalTransmittance, Time, VolumeFlow,
};

/// What kind of quantity a field holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Quantity {
    /// A length, m inside.
    Length,
    /// A temperature, °C.
    Temperature,
    /// A thermal conductivity, W/(m·K).
    ThermalConductivity,
    /// A thermal transmittance, W/(m²·K).
    ThermalTransmittance,
    /// Air changes, 1/s inside.
    AirChangeRate,
    /// A whole number of pieces.
    Count,
    /// A part of a whole, 1 inside for all of it.
    Share,
    /// A flow of air, m³/s inside.
    VolumeFlow,
    /// A pressure, Pa.
    Pressure,
    /// A mass, kg.
    Mass,
    /// An area, m².
    Area,
    /// Part of a day, s inside.
    Duration,
    /// A heat flow, W.
    Power,
    /// A difference of two temperatures, K.
    TemperatureDifference,
}

/// What is allowed for one field, in SI units; the default of a measurement is the box's nominal figure.
pub type DesignRange = crate::choice_table::ChoiceRange<Quantity>;

numbers!(Quantity {
    Length => Length,
    ThermalConductivity => ThermalConductivity,
    ThermalTransmittance => ThermalTransmittance,
    AirChangeRate => AirChangeRate,
    RelativeHumidity => Share,
    FreeAreaRatio => Share,
    CloggedShare => Share,
    Effectiveness => Share,
    VolumeFlow => VolumeFlow,
    Pressure => Pressure,
    Mass => Mass,
    Area => Area,
    Time => Duration,
    Power => Power,
    TemperatureDifference => TemperatureDifference,
});

/// Millimetres to the table's SI.
const fn mm(value: f64) -> f64 {
    Length::mm(value).value()
}

/// Air changes an hour to the table's SI.
const fn per_hour(value: f64) -> f64 {
    AirChangeRate::per_hour(value).value()
}

/// Hours to the table's SI.
const fn hours(value: f64) -> f64 {
    Time::hours(value).value()
}

/// Cubic metres an hour to the table's SI.
const fn flow(value: f64) -> f64 {
    VolumeFlow::cubic_metres_per_hour(value).value()
}

choice_table! {
    /// Every choice as given. `Design::default()` is an ordinary cold-country build.
    choices Design, field Field, quantity Quantity;
    options {
        /// Which freight box.
        box_size: BoxSize = BoxSize::default();
        /// What is done about the corner castings.
        end_wall_treatment: EndWallTreatment = EndWallTreatment::default();
        /// From where the foam depth is measured.
        foam_measure: FoamMeasure = FoamMeasure::default();
        /// Where studs and joists stand over the waves of the sheet.
        frame_position: FramePosition = FramePosition::default();
        /// The board that covers the foam.
        lining_material: LiningMaterial = LiningMaterial::default();
        /// Whether there is a personnel door, and where.
        personnel_door: PersonnelDoor = PersonnelDoor::default();
        /// The wall that holds the windows.
        window_wall: Wall = Wall::LeftSide;
        /// What the room is used for.
        room_use: RoomUse = RoomUse::default();
        /// What keeps rain out of the dampers.
        weather_cover: WeatherCover = WeatherCover::default();
        /// Whether the dampers have screens.
        damper_screen: DamperScreen = DamperScreen::default();
        /// What is known of the fan.
        fan_given: FanGiven = FanGiven::default();
    }
    chosen {
        /// Depth of the wall studs' web.
        stud_depth: Length, StudDepth, mm(25.0), mm(205.0), mm(1.0), mm(41.0);
        /// Gap between the corrugation's inner crests and the outer flange of the studs.
        stud_stand_off: Length, StudStandOff, mm(0.0), mm(150.0), mm(1.0), mm(22.0);
        /// From one stud to the next.
        stud_spacing: Length, StudSpacing, mm(300.0), mm(610.0), mm(1.0), mm(406.0);
        /// Sheet thickness of the wall studs.
        stud_steel_thickness: Length, StudSteelThickness, mm(0.4), mm(2.5), mm(0.01), mm(0.84);
        /// Width of the flanges of studs and joists.
        flange_width: Length, FlangeWidth, mm(25.0), mm(65.0), mm(1.0), mm(32.0);
        /// Depth of the ceiling joists' web.
        joist_depth: Length, JoistDepth, mm(25.0), mm(205.0), mm(1.0), mm(64.0);
        /// Gap between the roof's inner plane and the upper flange of the joists.
        joist_stand_off: Length, JoistStandOff, mm(0.0), mm(150.0), mm(1.0), mm(25.0);
        /// From one ceiling joist to the next.
        joist_spacing: Length, JoistSpacing, mm(300.0), mm(610.0), mm(1.0), mm(406.0);
        /// Sheet thickness of the ceiling joists.
        joist_steel_thickness: Length, JoistSteelThickness, mm(0.4), mm(2.5), mm(0.01), mm(0.84);
        /// Foam on the two side walls.
        side_wall_foam: Length, SideWallFoam, mm(10.0), mm(200.0), mm(1.0), mm(50.0);
        /// Foam on the front end wall.
        front_end_foam: Length, FrontEndFoam, mm(10.0), mm(200.0), mm(1.0), mm(50.0);
        /// Foam on the framed wall behind the cargo doors.
        door_end_foam: Length, DoorEndFoam, mm(10.0), mm(200.0), mm(1.0), mm(50.0);
        /// Foam under the roof.
        ceiling_foam: Length, CeilingFoam, mm(10.0), mm(250.0), mm(1.0), mm(75.0);
        /// Foam under the plywood floor, between the members.
        floor_foam_between: Length, FloorFoamBetween, mm(0.0), mm(122.0), mm(1.0), mm(75.0);
        /// Foam wrapped round and under the members.
        floor_foam_under: Length, FloorFoamUnder, mm(0.0), mm(100.0), mm(1.0), mm(0.0);
        /// Foam board laid over the plywood floor.
        floor_foam_over: Length, FloorFoamOver, mm(0.0), mm(150.0), mm(1.0), mm(0.0);
        /// Deck laid over the floor's foam board; not there without such a board.
        floor_deck: Length, FloorDeck, mm(9.0), mm(40.0), mm(1.0), mm(18.0);
        /// Seal or levelling coat on the floor.
        floor_levelling: Length, FloorLevelling, mm(0.0), mm(30.0), mm(1.0), mm(3.0);
        /// Aged thermal conductivity of the sprayed foam.
        foam_conductivity: ThermalConductivity, FoamConductivity, 0.018, 0.040, 0.001, 0.026;
        /// Thickness of the lining board on walls and ceiling.
        lining_thickness: Length, LiningThickness, mm(3.0), mm(40.0), mm(1.0), mm(12.0);
        /// Foam between a casting's steel and the lining that covers it.
        casting_cover: Length, CastingCover, mm(5.0), mm(150.0), mm(1.0), mm(50.0);
        /// Plastic pad between a stud's bracket and the top rail.
        bracket_pad: Length, BracketPad, mm(0.0), mm(25.0), mm(1.0), mm(6.0);
        /// Foam packed over the steel frames round doors and windows: inner face and reveal.
        opening_frame_foam: Length, OpeningFrameFoam, mm(0.0), mm(60.0), mm(1.0), mm(25.0);
        /// Damper openings through the walls, intakes and exhausts together.
        damper_count: f64, DamperCount, 0.0, 8.0, 1.0, 0.0;
        /// Inside diameter of an intake damper's steel sleeve.
        damper_diameter: Length, DamperDiameter, mm(100.0), mm(400.0), mm(5.0), mm(200.0);
        /// Inside diameter of an exhaust damper's steel sleeve.
        exhaust_diameter: Length, ExhaustDiameter, mm(100.0), mm(400.0), mm(5.0), mm(200.0);
        /// Width of the personnel door.
        door_width: Length, DoorWidth, mm(600.0), mm(1200.0), mm(5.0), mm(910.0);
        /// Height of the personnel door.
        door_height: Length, DoorHeight, mm(1600.0), mm(2300.0), mm(5.0), mm(2030.0);
        /// Thermal transmittance of the personnel door, frame included.
        door_transmittance: ThermalTransmittance, DoorTransmittance, 0.4, 5.5, 0.1, 1.4;
        /// How many windows.
        window_count: f64, WindowCount, 0.0, 8.0, 1.0, 1.0;
        /// Width of a window.
        window_width: Length, WindowWidth, mm(300.0), mm(2400.0), mm(10.0), mm(1000.0);
        /// Height of a window.
        window_height: Length, WindowHeight, mm(300.0), mm(1800.0), mm(10.0), mm(1000.0);
        /// Thermal transmittance of the windows, frame included.
        window_transmittance: ThermalTransmittance, WindowTransmittance, 0.4, 5.5, 0.1, 1.8;
        /// Room temperature to be held.
        indoor_temperature: Temperature, IndoorTemperature, -5.0, 35.0, 0.5, 20.0;
        /// Winter outdoor temperature the heater is sized for.
        outdoor_temperature: Temperature, OutdoorTemperature, -60.0, 15.0, 0.5, -33.0;
        /// Air changes of the clear room.
        air_changes: AirChangeRate, AirChanges, per_hour(0.0), per_hour(20.0), per_hour(0.05), per_hour(0.3);

        /// People in the room.
        person_count: f64, PersonCount, 0.0, 20.0, 1.0, 2.0;
        /// How long a day they are there, and any flame without a flue burns.
        person_time: Time, PersonTime, hours(0.5), hours(24.0), hours(0.5), hours(8.0);
        /// Washer loads dried in the room each day.
        laundry_loads: f64, LaundryLoads, 0.0, 40.0, 1.0, 0.0;
        /// How long a day's loads take to dry.
        laundry_time: Time, LaundryTime, hours(1.0), hours(24.0), hours(1.0), hours(12.0);
        /// Showers of five minutes taken in the room each day.
        showers: f64, Showers, 0.0, 40.0, 1.0, 0.0;
        /// Water given to plants each day; all of it comes to the air.
        plant_water: Mass, PlantWater, 0.0, 200.0, 0.5, 0.0;
        /// Animals kept, all together.
        animal_mass: Mass, AnimalMass, 0.0, 2000.0, 5.0, 0.0;
        /// Floor mopped each day.
        mopped_floor: Area, MoppedFloor, 0.0, 100.0, 1.0, 0.0;
        /// How often a day the room is hosed down.
        hose_downs: f64, HoseDowns, 0.0, 10.0, 1.0, 0.0;
        /// Propane burnt each day without a flue.
        unvented_propane: Mass, UnventedPropane, 0.0, 50.0, 0.5, 0.0;
        /// Kerosene burnt each day without a flue.
        unvented_kerosene: Mass, UnventedKerosene, 0.0, 50.0, 0.5, 0.0;
        /// Humidity the room is to be held at, or under.
        target_humidity: RelativeHumidity, TargetHumidity, 0.1, 0.95, 0.01, 0.4;
        /// Humidity outdoors in winter.
        outdoor_humidity: RelativeHumidity, OutdoorHumidity, 0.1, 1.0, 0.01, 0.8;
        /// Height of the place above the sea.
        site_altitude: Length, SiteAltitude, mm(-400_000.0), mm(4_000_000.0), mm(10_000.0), mm(0.0);
        /// How many days a cold spell lasts.
        cold_spell_days: f64, ColdSpellDays, 1.0, 120.0, 1.0, 30.0;
        /// Mean outdoor temperature of the coldest month.
        coldest_month: Temperature, ColdestMonth, -55.0, 15.0, 0.5, -15.0;
        /// Mean outdoor temperature of the warmest month.
        warmest_month: Temperature, WarmestMonth, 15.0, 40.0, 0.5, 19.0;
        /// Humidity outdoors in that month.
        warmest_month_humidity: RelativeHumidity, WarmestMonthHumidity, 0.1, 1.0, 0.01, 0.65;
        /// How much warmer than the air the sun keeps the steel, in the mean of the sunniest month.
        steel_sun_rise: TemperatureDifference, SteelSunRise, 0.0, 20.0, 0.5, 3.0;

        /// How many of the dampers are exhausts with a fan; the others are intakes.
        exhaust_count: f64, ExhaustCount, 1.0, 4.0, 1.0, 1.0;
        /// Open part of a screen's face.
        screen_free_area: FreeAreaRatio, ScreenFreeArea, 0.3, 0.95, 0.01, 0.6;
        /// Part of it that dirt, lint or frost closes before anyone cleans it.
        screen_clogged: CloggedShare, ScreenClogged, 0.0, 0.6, 0.01, 0.25;
        /// Duct behind each damper.
        duct_length: Length, DuctLength, mm(0.0), mm(10_000.0), mm(50.0), mm(0.0);
        /// Height from the middle of the lower dampers to that of the higher ones.
        damper_rise: Length, DamperRise, mm(0.0), mm(2500.0), mm(10.0), mm(0.0);
        /// Flow of one fan in free air, with nothing in its way.
        fan_free_air_flow: VolumeFlow, FanFreeAirFlow, flow(50.0), flow(5000.0), flow(10.0), flow(900.0);
        /// Pressure of one fan at no flow, in air of 1.2 kg/m³.
        fan_shut_off_pressure: Pressure, FanShutOffPressure, 5.0, 600.0, 1.0, 70.0;
        /// Flow at the first point between.
        fan_first_flow: VolumeFlow, FanFirstFlow, flow(5.0), flow(5000.0), flow(10.0), flow(300.0);
        /// Pressure at the first point between.
        fan_first_pressure: Pressure, FanFirstPressure, 0.0, 600.0, 1.0, 62.0;
        /// Flow at the second point between.
        fan_second_flow: VolumeFlow, FanSecondFlow, flow(5.0), flow(5000.0), flow(10.0), flow(500.0);
        /// Pressure at the second point between.
        fan_second_pressure: Pressure, FanSecondPressure, 0.0, 600.0, 1.0, 48.0;
        /// Flow at the third point between.
        fan_third_flow: VolumeFlow, FanThirdFlow, flow(5.0), flow(5000.0), flow(10.0), flow(700.0);
        /// Pressure at the third point between.
        fan_third_pressure: Pressure, FanThirdPressure, 0.0, 600.0, 1.0, 28.0;
        /// Heat that a heat exchanger takes back from leaving air; none without one.
        heat_recovery: Effectiveness, HeatRecovery, 0.0, 0.95, 0.01, 0.0;
        /// Coldest that the exchanger may cool leaving air.
        recovery_frost_limit: Temperature, RecoveryFrostLimit, -20.0, 10.0, 0.5, 0.0;
        /// Heat given off in the room in summer.
        heat_gain: Power, HeatGain, 0.0, 20_000.0, 50.0, 500.0;
        /// Outdoor temperature on a hot day.
        summer_outdoor_temperature: Temperature, SummerOutdoorTemperature, 10.0, 45.0, 0.5, 27.0;
        /// How warm the room may get on a hot day.
        summer_room_temperature: Temperature, SummerRoomTemperature, 15.0, 55.0, 0.5, 32.0;
    }
    asked Length as Length {
        /// Measured inside length, in place of the nominal one.
        measured_length: MeasuredLength, mm(2000.0), mm(13_700.0), mm(1.0);
        /// Measured inside width, in place of the nominal one.
        measured_width: MeasuredWidth, mm(2200.0), mm(2430.0), mm(1.0);
        /// Measured inside height, in place of the nominal one.
        measured_height: MeasuredHeight, mm(2000.0), mm(2880.0), mm(1.0);
        /// Measured reach of a top casting past the front end wall.
        measured_casting_front: MeasuredCastingFront, mm(0.0), mm(178.0), mm(1.0);
        /// Measured reach of a top casting past the plane of the cargo doors.
        measured_casting_door: MeasuredCastingDoor, mm(0.0), mm(178.0), mm(1.0);
        /// Measured reach of a top casting past the side wall.
        measured_casting_width: MeasuredCastingWidth, mm(0.0), mm(162.0), mm(1.0);
        /// Measured reach of a top casting below the roof's inner plane.
        measured_casting_height: MeasuredCastingHeight, mm(0.0), mm(118.0), mm(1.0);
    }
}
