//! Designs and fields as plain numbers, for the way to the worker and back. Both ends are the same
//! build of the same wasm, so the form needs no version.

use inchwise_core::conduction::{FactorSpot, Point};
use inchwise_core::design::{
    DamperScreen, Design, DoorEndFinish, EndWallTreatment, FanGiven, Field, FloorRecesses,
    FoamMeasure, FramePosition, LiningMaterial, OutdoorAirRule, PersonnelDoor, RoomUse, SleeveEnd,
    Wall, WeatherCover, WindowSpacer,
};
use inchwise_core::detail::DetailField;
use inchwise_core::freight_box::BoxSize;
use inchwise_core::units::{HeatTransferCoefficient, TemperatureFactor};

use crate::climate::{IN_PLACE, pack_place, unpack_place};

pub(crate) fn place_of<T: PartialEq>(all: &[T], option: &T) -> f64 {
    all.iter().position(|other| other == option).map_or(-1.0, |place| place as f64)
}

pub(crate) fn at_place<T: Copy>(all: &[T], place: f64) -> Option<T> {
    let whole = place >= 0.0 && place.fract() == 0.0;
    whole.then(|| all.get(place as usize).copied()).flatten()
}

/// How many options a design has.
const OPTIONS: usize = 16;

/// A design as numbers: the options, then its place, then every field, NaN for a measurement not taken.
pub fn pack_design(design: &Design) -> Vec<f64> {
    let options: [f64; OPTIONS] = [
        place_of(&BoxSize::ALL, &design.box_size),
        place_of(EndWallTreatment::ALL, &design.end_wall_treatment),
        place_of(FoamMeasure::ALL, &design.foam_measure),
        place_of(LiningMaterial::ALL, &design.lining_material),
        place_of(PersonnelDoor::ALL, &design.personnel_door),
        place_of(Wall::ALL, &design.window_wall),
        place_of(RoomUse::ALL, &design.room_use),
        place_of(WeatherCover::ALL, &design.weather_cover),
        place_of(DamperScreen::ALL, &design.damper_screen),
        place_of(FanGiven::ALL, &design.fan_given),
        place_of(FramePosition::ALL, &design.frame_position),
        place_of(OutdoorAirRule::ALL, &design.outdoor_air_rule),
        place_of(FloorRecesses::ALL, &design.floor_recesses),
        place_of(DoorEndFinish::ALL, &design.door_end_finish),
        place_of(WindowSpacer::ALL, &design.window_spacer),
        place_of(SleeveEnd::ALL, &design.sleeve_end),
    ];
    let numbers = Field::ALL.iter().map(|&field| design.get(field).unwrap_or(f64::NAN));
    options.into_iter().chain(pack_place(design.place.place())).chain(numbers).collect()
}

/// The design that was packed; `None` if these are not the numbers of one.
pub fn unpack_design(numbers: &[f64]) -> Option<Design> {
    let (options, rest) = numbers.split_at_checked(OPTIONS)?;
    let (place, fields) = rest.split_at_checked(IN_PLACE)?;
    if fields.len() != Field::ALL.len() {
        return None;
    }
    let mut design = Design {
        box_size: at_place(&BoxSize::ALL, options[0])?,
        end_wall_treatment: at_place(EndWallTreatment::ALL, options[1])?,
        foam_measure: at_place(FoamMeasure::ALL, options[2])?,
        lining_material: at_place(LiningMaterial::ALL, options[3])?,
        personnel_door: at_place(PersonnelDoor::ALL, options[4])?,
        window_wall: at_place(Wall::ALL, options[5])?,
        room_use: at_place(RoomUse::ALL, options[6])?,
        weather_cover: at_place(WeatherCover::ALL, options[7])?,
        damper_screen: at_place(DamperScreen::ALL, options[8])?,
        fan_given: at_place(FanGiven::ALL, options[9])?,
        frame_position: at_place(FramePosition::ALL, options[10])?,
        outdoor_air_rule: at_place(OutdoorAirRule::ALL, options[11])?,
        floor_recesses: at_place(FloorRecesses::ALL, options[12])?,
        door_end_finish: at_place(DoorEndFinish::ALL, options[13])?,
        window_spacer: at_place(WindowSpacer::ALL, options[14])?,
        sleeve_end: at_place(SleeveEnd::ALL, options[15])?,
        place: unpack_place(place)?.check().ok()?,
        ..Design::default()
    };
    for (&field, &number) in Field::ALL.iter().zip(fields) {
        design.set(field, (!number.is_nan()).then_some(number));
    }
    Some(design)
}

/// A spot as numbers, not a number where there is none.
fn pack_spot(spot: Option<FactorSpot>) -> [f64; 4] {
    spot.map_or([f64::NAN; 4], |FactorSpot { factor, at }| {
        [factor.value(), at.x.value(), at.y.value(), at.z.value()]
    })
}

fn unpack_spot(&[factor, x, y, z]: &[f64; 4]) -> Option<FactorSpot> {
    let factor = (!factor.is_nan()).then(|| TemperatureFactor::new(factor))?;
    Some(FactorSpot { factor, at: Point::metres(x, y, z) })
}

/// A field as numbers, marks last.
pub fn pack_field(field: &DetailField) -> Vec<f64> {
    let marks = field.marks.iter().map(|mark| mark.map_or(f64::NAN, TemperatureFactor::value));
    [
        field.coupling.value(),
        field.flanking.value(),
        field.temperature_factor.value(),
        field.coldest_at.x.value(),
        field.coldest_at.y.value(),
        field.coldest_at.z.value(),
        f64::from(u8::from(field.is_settled)),
        field.ordinary_temperature_factor.value(),
        field.ordinary_opaque_factor.value(),
        field.cells as f64,
        field.iterations as f64,
        field.residual,
    ]
    .into_iter()
    .chain(pack_spot(field.opaque))
    .chain(pack_spot(field.frame_or_glazing))
    .chain(marks)
    .collect()
}

/// The field that was packed; `None` if these are not the numbers of one.
pub fn unpack_field(numbers: &[f64]) -> Option<DetailField> {
    let (
        &[
            coupling,
            flanking,
            factor,
            x,
            y,
            z,
            settled,
            ordinary,
            opaque_ordinary,
            cells,
            iterations,
            residual,
        ],
        rest,
    ) = numbers.split_first_chunk::<12>()?;
    let (opaque, rest) = rest.split_first_chunk::<4>()?;
    let (frame_or_glazing, marks) = rest.split_first_chunk::<4>()?;
    Some(DetailField {
        coupling: HeatTransferCoefficient::new(coupling),
        flanking: HeatTransferCoefficient::new(flanking),
        temperature_factor: TemperatureFactor::new(factor),
        coldest_at: Point::metres(x, y, z),
        opaque: unpack_spot(opaque),
        frame_or_glazing: unpack_spot(frame_or_glazing),
        is_settled: settled == 1.0,
        ordinary_temperature_factor: TemperatureFactor::new(ordinary),
        ordinary_opaque_factor: TemperatureFactor::new(opaque_ordinary),
        cells: cells as usize,
        iterations: iterations as usize,
        residual,
        marks: marks
            .iter()
            .map(|&mark| (!mark.is_nan()).then(|| TemperatureFactor::new(mark)))
            .collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::climate::{Place, varnholm_flats};
    use inchwise_core::units::Length;

    #[test]
    fn a_design_comes_back_bit_for_bit() {
        let mut design = Design {
            box_size: BoxSize::FortyHighCube,
            end_wall_treatment: EndWallTreatment::DropCeiling,
            personnel_door: PersonnelDoor::None,
            frame_position: FramePosition::OverTroughs,
            measured_width: Some(Length::mm(2347.0)),
            outdoor_air_rule: OutdoorAirRule::Dwelling,
            floor_recesses: FloorRecesses::Filled,
            door_end_finish: DoorEndFinish::FoamedLeaves,
            window_spacer: WindowSpacer::WarmEdge,
            sleeve_end: SleeveEnd::Recessed,
            ..Design::default()
        };
        let elsewhere = Place { elevation: Length::new(0.1 + 0.2), ..varnholm_flats() };
        design.place = elsewhere.check().expect("it can be");
        design.set(Field::FoamConductivity, Some(0.1 + 0.2));
        assert_eq!(unpack_design(&pack_design(&design)), Some(design));
    }

    #[test]
    fn other_numbers_are_no_design() {
        let packed = pack_design(&Design::default());
        assert_eq!(unpack_design(&packed[1..]), None, "one number short");
        let mut odd = packed.clone();
        odd[0] = 0.5;
        assert_eq!(unpack_design(&odd), None, "half an option");
        odd[0] = 99.0;
        assert_eq!(unpack_design(&odd), None, "an option there is not");
        let mut odd = packed;
        odd[OPTIONS] = 1e9;
        assert_eq!(unpack_design(&odd), None, "a place that cannot be");
    }

    #[test]
    fn a_field_comes_back_bit_for_bit() {
        let field = DetailField {
            coupling: HeatTransferCoefficient::new(0.1 + 0.2),
            flanking: HeatTransferCoefficient::new(0.25),
            temperature_factor: TemperatureFactor::new(0.7),
            coldest_at: Point::metres(0.1, 0.2, 0.3),
            opaque: Some(FactorSpot {
                factor: TemperatureFactor::new(0.7),
                at: Point::metres(0.1, 0.2, 0.3),
            }),
            frame_or_glazing: None,
            is_settled: true,
            ordinary_temperature_factor: TemperatureFactor::new(0.8),
            ordinary_opaque_factor: TemperatureFactor::new(0.85),
            marks: vec![Some(TemperatureFactor::new(0.5)), None],
            cells: 123_456,
            iterations: 17,
            residual: 1e-9,
        };
        assert_eq!(unpack_field(&pack_field(&field)), Some(field));
    }
}
