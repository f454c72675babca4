//! Pictures of a place: what is asked, and what is said, as plain numbers.

use inchwise_core::conduction::{Axis, FactorSpot, Point};
use inchwise_core::design::{Design, Surface};
use inchwise_core::detail::{Filling, Picture, View};
use inchwise_core::envelope::{End, Opening, ThermalBridge};
use inchwise_core::units::{Length, TemperatureFactor};

use crate::pack::{pack_design, unpack_design};

/// Every place there may be.
const PLACES: [ThermalBridge; 36] = [
    ThermalBridge::FrameLine(Surface::SideWall),
    ThermalBridge::FrameLine(Surface::FrontEnd),
    ThermalBridge::FrameLine(Surface::DoorEnd),
    ThermalBridge::FrameLine(Surface::Ceiling),
    ThermalBridge::StudHead,
    ThermalBridge::RoofEdge(Surface::SideWall),
    ThermalBridge::RoofEdge(Surface::FrontEnd),
    ThermalBridge::CornerPost(End::Front),
    ThermalBridge::CornerPost(End::Door),
    ThermalBridge::FloorEdge(Surface::SideWall),
    ThermalBridge::FloorEdge(Surface::FrontEnd),
    ThermalBridge::FloorMember,
    ThermalBridge::OpeningFrame(Opening::PersonnelDoor),
    ThermalBridge::OpeningFrame(Opening::Window),
    ThermalBridge::TopCasting(End::Front),
    ThermalBridge::TopCasting(End::Door),
    ThermalBridge::BottomCasting(End::Front),
    ThermalBridge::BottomCasting(End::Door),
    ThermalBridge::DamperSleeve,
    ThermalBridge::ExhaustSleeve,
    ThermalBridge::Waves(Surface::SideWall),
    ThermalBridge::Waves(Surface::FrontEnd),
    ThermalBridge::Waves(Surface::Ceiling),
    ThermalBridge::DoorThreshold,
    ThermalBridge::WindowSill,
    ThermalBridge::CargoDoorHeader,
    ThermalBridge::CargoDoorSill,
    ThermalBridge::CargoDoorHinges,
    ThermalBridge::CargoDoorMeeting,
    ThermalBridge::CargoDoorBatten,
    ThermalBridge::ScrewThrough,
    ThermalBridge::ThinFoam,
    ThermalBridge::JoistEnd,
    ThermalBridge::ForkliftPocket,
    ThermalBridge::GooseneckTunnel,
    ThermalBridge::FloorDrain,
];

/// A place as a number; none for a place without one, which no picture is made of.
pub fn place_number(place: ThermalBridge) -> Option<usize> {
    PLACES.iter().position(|&other| other == place)
}

/// The place of a number.
pub fn place_of_number(number: usize) -> Option<ThermalBridge> {
    PLACES.get(number).copied()
}

/// What is to be seen at a place of a design.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacePictures {
    /// The design.
    pub design: Design,
    /// The place.
    pub place: ThermalBridge,
    /// The coldest of the room's surface, not yet refined there.
    pub coldest: FactorSpot,
    /// The pictures.
    pub pictures: Vec<Picture>,
}

/// Stands first where another message has the number of its request.
const MARK: f64 = -1.0;

/// Whether an answer that begins with this number is one of pictures.
pub fn begins_pictures(first: f64) -> bool {
    first == MARK
}

/// What is to be seen, as numbers.
pub fn pack_pictures(seen: &PlacePictures) -> Vec<f64> {
    let design = pack_design(&seen.design);
    let place = place_number(seen.place).map_or(f64::NAN, |number| number as f64);
    let mut numbers = vec![MARK, place, design.len() as f64];
    numbers.extend(design);
    let spot = &seen.coldest;
    numbers.extend([
        spot.factor.value(),
        spot.at.x.value(),
        spot.at.y.value(),
        spot.at.z.value(),
        seen.pictures.len() as f64,
    ]);
    for picture in &seen.pictures {
        let view = &picture.view;
        numbers.extend([
            view.axis as usize as f64,
            view.at.value(),
            f64::from(u8::from(view.rises)),
            picture.across.len() as f64,
            picture.down.len() as f64,
        ]);
        numbers.extend(picture.across.iter().chain(&picture.down).map(|line| line.value()));
        numbers.extend(picture.factors.iter().map(|factor| factor.map_or(f64::NAN, f64::from)));
        numbers.extend(picture.fillings.iter().map(|&filling| filling as usize as f64));
    }
    numbers
}

/// Takes numbers off the front, one after the other.
struct Reader<'a>(&'a [f64]);

impl<'a> Reader<'a> {
    fn next(&mut self) -> Option<f64> {
        let (&first, rest) = self.0.split_first()?;
        self.0 = rest;
        Some(first)
    }

    /// A whole number that is no more than what is left to read, so that no list is made for
    /// numbers that are not there.
    fn count(&mut self) -> Option<usize> {
        let number = self.next()?;
        let whole = number >= 0.0 && number.fract() == 0.0 && number <= self.0.len() as f64;
        whole.then_some(number as usize)
    }

    fn take(&mut self, count: usize) -> Option<&'a [f64]> {
        let (taken, rest) = self.0.split_at_checked(count)?;
        self.0 = rest;
        Some(taken)
    }

    fn lines(&mut self, count: usize) -> Option<Vec<Length>> {
        let lines: Vec<Length> = self.take(count)?.iter().map(|&at| Length::new(at)).collect();
        (lines.len() >= 2).then_some(lines)
    }

    fn picture(&mut self) -> Option<Picture> {
        let axis = *Axis::ALL.get(self.count()?)?;
        let at = Length::new(self.next()?);
        let rises = self.next()? == 1.0;
        let (columns, rows) = (self.count()?, self.count()?);
        let (across, down) = (self.lines(columns)?, self.lines(rows)?);
        let factors = self
            .take(columns.checked_mul(rows)?)?
            .iter()
            .map(|&factor| (!factor.is_nan()).then_some(factor as f32))
            .collect();
        let fillings = self
            .take((columns - 1) * (rows - 1))?
            .iter()
            .map(|&filling| Filling::ALL.get(filling as usize).copied())
            .collect::<Option<_>>()?;
        let view = View {
            axis,
            at,
            across: [across[0], across[columns - 1]],
            down: [down[0], down[rows - 1]],
            rises,
        };
        Some(Picture { view, across, down, factors, fillings })
    }
}

/// What was packed; `None` if these are not the numbers of it.
pub fn unpack_pictures(numbers: &[f64]) -> Option<PlacePictures> {
    let mut reader = Reader(numbers);
    if !begins_pictures(reader.next()?) {
        return None;
    }
    let place = place_of_number(reader.count()?)?;
    let length = reader.count()?;
    let design = unpack_design(reader.take(length)?)?;
    let &[factor, x, y, z] = reader.take(4)?.first_chunk()?;
    let count = reader.count()?;
    let pictures = (0..count).map(|_| reader.picture()).collect::<Option<_>>()?;
    let coldest = FactorSpot { factor: TemperatureFactor::new(factor), at: Point::metres(x, y, z) };
    Some(PlacePictures { design, place, coldest, pictures })
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::DoorEndFinish;
    use inchwise_core::detail::{Detail, FrameSlice};
    use inchwise_core::envelope::Envelope;
    use inchwise_core::freight_box::BoxSize;
    use inchwise_core::room::Room;

    fn packed() -> (PlacePictures, Vec<f64>) {
        let design = Design::default();
        let place = ThermalBridge::FrameLine(Surface::SideWall);
        let slice = FrameSlice::of(&design.check().unwrap(), Surface::SideWall);
        let field = Detail::FrameLine(slice).damp_field().unwrap();
        let coldest = field.coldest().unwrap();
        let pictures = field.pictures(40).unwrap();
        let seen = PlacePictures { design, place, coldest, pictures };
        let numbers = pack_pictures(&seen);
        (seen, numbers)
    }

    #[test]
    fn pictures_come_back_as_they_were() {
        let (seen, numbers) = packed();
        assert_eq!(unpack_pictures(&numbers), Some(seen));
    }

    #[test]
    fn every_place_of_a_design_has_a_number_of_its_own() {
        let everything = Design {
            damper_count: 2.0,
            screws_through: 1.0,
            thin_foam_length: Length::mm(500.0),
            floor_drains: 1.0,
            ..Design::default()
        };
        let leaves = Design { door_end_finish: DoorEndFinish::FoamedLeaves, ..everything.clone() };
        let tunnel = Design { box_size: BoxSize::FortyHighCube, ..everything.clone() };
        let mut met = Vec::new();
        for design in [everything, leaves, tunnel] {
            let checked = design.check().unwrap();
            for (place, _) in Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges {
                let number = place_number(place).unwrap();
                assert_eq!(place_of_number(number), Some(place));
                met.push(place);
            }
        }
        let never: Vec<_> = PLACES.iter().filter(|place| !met.contains(place)).collect();
        assert!(never.is_empty(), "no design has {never:?}");
    }

    #[test]
    fn numbers_cut_short_or_out_of_bounds_are_no_pictures() {
        let (_, numbers) = packed();
        for length in (0..numbers.len()).step_by(97) {
            assert!(unpack_pictures(&numbers[..length]).is_none(), "{length} numbers");
        }
        let mut odd = numbers.clone();
        odd[2] = 1e300;
        assert!(unpack_pictures(&odd).is_none(), "a count past all that is there");
        odd.clone_from(&numbers);
        *odd.last_mut().unwrap() = 99.0;
        assert!(unpack_pictures(&odd).is_none(), "a filling there is not");
    }
}
