//! Pictures as plain numbers.

use inchwise_core::conduction::{Axis, FactorSpot, Point};
use inchwise_core::detail::{Filling, Picture, View};
use inchwise_core::units::{Length, TemperatureFactor};

use crate::message::PlacePictures;

/// Appends what is to be seen at a place.
pub(crate) fn pack_pictures(seen: &PlacePictures, numbers: &mut Vec<f64>) {
    let spot = &seen.coldest;
    numbers.extend([
        seen.place as f64,
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
pub(crate) fn unpack_pictures(numbers: &[f64]) -> Option<PlacePictures> {
    let mut reader = Reader(numbers);
    let place = reader.count()?;
    let &[factor, x, y, z] = reader.take(4)?.first_chunk()?;
    let count = reader.count()?;
    let pictures = (0..count).map(|_| reader.picture()).collect::<Option<_>>()?;
    let factor = TemperatureFactor::new(factor);
    Some(PlacePictures {
        place,
        coldest: FactorSpot { factor, at: Point::metres(x, y, z) },
        pictures,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::{CheckedDesign, Surface};
    use inchwise_core::detail::{Detail, FrameSlice};

    fn packed() -> (PlacePictures, Vec<f64>) {
        let slice = FrameSlice::of(&CheckedDesign::default(), Surface::SideWall);
        let field = Detail::FrameLine(slice).damp_field().unwrap();
        let coldest = field.coldest().unwrap();
        let seen = PlacePictures { place: 3, coldest, pictures: field.pictures(40).unwrap() };
        let mut numbers = Vec::new();
        pack_pictures(&seen, &mut numbers);
        (seen, numbers)
    }

    #[test]
    fn pictures_come_back_as_they_were() {
        let (seen, numbers) = packed();
        let back = unpack_pictures(&numbers).unwrap();
        assert_eq!(back.coldest, seen.coldest);
        assert_eq!((back.place, &back.pictures), (seen.place, &seen.pictures));
    }

    #[test]
    fn numbers_cut_short_or_out_of_bounds_are_no_pictures() {
        let (_, numbers) = packed();
        for length in (0..numbers.len()).step_by(97) {
            assert!(unpack_pictures(&numbers[..length]).is_none(), "{length} numbers");
        }
        let mut odd = numbers.clone();
        odd[9] = 1e300;
        assert!(unpack_pictures(&odd).is_none(), "a count past all that is there");
        odd.clone_from(&numbers);
        *odd.last_mut().unwrap() = 99.0;
        assert!(unpack_pictures(&odd).is_none(), "a filling there is not");
    }
}
