//! Pictures of a place: a short head each, and one array of numbers for all of them.

use inchwise_core::conduction::{Axis, FactorSpot, Point};
use inchwise_core::detail::{Filling, Picture, View};
use inchwise_core::units::{Length, TemperatureFactor};
use serde::{Deserialize, Serialize};

/// The coldest of the room's surface.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Coldest {
    factor: f64,
    at: [f64; 3],
}

impl From<&FactorSpot> for Coldest {
    fn from(spot: &FactorSpot) -> Self {
        let at = spot.at;
        Self { factor: spot.factor.value(), at: [at.x.value(), at.y.value(), at.z.value()] }
    }
}

impl From<Coldest> for FactorSpot {
    fn from(coldest: Coldest) -> Self {
        let [x, y, z] = coldest.at;
        Self { factor: TemperatureFactor::new(coldest.factor), at: Point::metres(x, y, z) }
    }
}

/// What the numbers of one picture are: its lines across, its lines down, then at each crossing a
/// temperature factor, NaN where there is none, then what fills each field between four of them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct PictureHead {
    axis: u8,
    at: f64,
    rises: bool,
    across: u32,
    down: u32,
}

/// Heads and numbers of pictures.
pub fn pack_pictures(pictures: &[Picture]) -> (Vec<PictureHead>, Vec<f64>) {
    let mut numbers = Vec::new();
    let heads = pictures.iter().map(|picture| {
        let lines = picture.across.iter().chain(&picture.down);
        numbers.extend(lines.map(|line| line.value()));
        numbers.extend(picture.factors.iter().map(|factor| factor.map_or(f64::NAN, f64::from)));
        numbers.extend(picture.fillings.iter().map(|&filling| filling as usize as f64));
        PictureHead {
            axis: picture.view.axis as u8,
            at: picture.view.at.value(),
            rises: picture.view.rises,
            across: picture.across.len() as u32,
            down: picture.down.len() as u32,
        }
    });
    let heads = heads.collect();
    (heads, numbers)
}

/// The pictures of heads and numbers; `None` if the numbers are not theirs.
pub fn unpack_pictures(heads: &[PictureHead], numbers: &[f64]) -> Option<Vec<Picture>> {
    let mut rest = numbers;
    let mut take = |count: usize| {
        let (taken, left) = rest.split_at_checked(count)?;
        rest = left;
        Some(taken)
    };
    let pictures = heads.iter().map(|head| {
        let (columns, rows) = (head.across as usize, head.down as usize);
        if columns < 2 || rows < 2 {
            return None;
        }
        let mut lines =
            |count| Some(take(count)?.iter().map(|&at| Length::new(at)).collect::<Vec<_>>());
        let (across, down) = (lines(columns)?, lines(rows)?);
        let factors = take(columns.checked_mul(rows)?)?.iter();
        let factors = factors.map(|&factor| (!factor.is_nan()).then_some(factor as f32)).collect();
        let fillings = take((columns - 1) * (rows - 1))?.iter();
        let fillings =
            fillings.map(|&at| Filling::ALL.get(at as usize).copied()).collect::<Option<_>>()?;
        let view = View {
            axis: *Axis::ALL.get(usize::from(head.axis))?,
            at: Length::new(head.at),
            across: [across[0], across[columns - 1]],
            down: [down[0], down[rows - 1]],
            rises: head.rises,
        };
        Some(Picture { view, across, down, factors, fillings })
    });
    pictures.collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::{Design, Surface};
    use inchwise_core::detail::{Detail, FrameSlice};

    fn pictures() -> Vec<Picture> {
        let checked = Design::default().check().expect("lawful");
        let slice = FrameSlice::of(&checked, Surface::SideWall);
        let field = Detail::FrameLine(slice).damp_field().expect("it solves");
        field.pictures(40).expect("it is drawn")
    }

    #[test]
    fn pictures_come_back_as_they_were() {
        let pictures = pictures();
        let (heads, numbers) = pack_pictures(&pictures);
        assert_eq!(unpack_pictures(&heads, &numbers), Some(pictures));
    }

    #[test]
    fn numbers_cut_short_or_out_of_bounds_are_no_pictures() {
        let (heads, numbers) = pack_pictures(&pictures());
        for length in (0..numbers.len()).step_by(97) {
            assert!(unpack_pictures(&heads, &numbers[..length]).is_none(), "{length} numbers");
        }
        let mut odd = numbers.clone();
        *odd.last_mut().expect("there are some") = 99.0;
        assert!(unpack_pictures(&heads, &odd).is_none(), "a filling there is not");
        let wide = [PictureHead { across: u32::MAX, down: u32::MAX, ..heads[0] }];
        assert!(unpack_pictures(&wide, &numbers).is_none(), "more than all that is there");
    }
}
