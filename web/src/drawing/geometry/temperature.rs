//! The temperature picture of a detail as shapes: materials, isotherms, and where it drips.

use inchwise_core::conduction::Point as FieldPoint;
use inchwise_core::detail::{Filling, Picture};
use inchwise_core::units::Temperature;

use super::cells::{Run, blocks, runs};
use super::isotherm::{Mesh, around, isolines, label_places, overlap};
use super::shape::{Point, Rect};
use super::window::Window;

/// A line of equal temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Isotherm {
    /// Its temperature.
    pub temperature: Temperature,
    /// Whether it is one of the few that have a label.
    pub is_main: bool,
    /// Its pieces.
    pub lines: Vec<Vec<Point>>,
    /// Where its label stands, on a narrow page and on a wide one; none where there is no room.
    pub labels: [Option<Point>; 2],
}

/// What surrounds the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Climate {
    /// The room's air.
    pub indoor: Temperature,
    /// Outdoor air.
    pub outdoor: Temperature,
    /// The temperature at which the room's air drips.
    pub dew: Option<Temperature>,
}

impl Climate {
    /// The factor at which a temperature is met; none where room and outdoors are equally warm.
    pub fn factor(&self, temperature: Temperature) -> Option<f64> {
        let span = (self.indoor - self.outdoor).value();
        let factor = (temperature - self.outdoor).value() / span;
        factor.is_finite().then_some(factor)
    }
}

/// The shapes of one cut, mm: x along the view's first axis, y down the page.
#[derive(Clone, Debug, PartialEq)]
pub struct TemperaturePicture {
    /// The paper, which is what the view shows.
    pub paper: Rect,
    /// Steel.
    pub steel: Vec<Rect>,
    /// Foam.
    pub foam: Vec<Rect>,
    /// Lining and plywood.
    pub board: Vec<Rect>,
    /// Pads.
    pub plastic: Vec<Rect>,
    /// Still air, door leaf or pane.
    pub other: Vec<Rect>,
    /// The room's air.
    pub room: Vec<Rect>,
    /// Outdoor air.
    pub outdoors: Vec<Rect>,
    /// Where one material meets another.
    pub edges: Vec<Run>,
    /// Lines of equal temperature, coldest first.
    pub isotherms: Vec<Isotherm>,
    /// The line at which the room's air drips.
    pub dew: Vec<Vec<Point>>,
    /// Where its label stands, on a narrow page and on a wide one.
    pub dew_labels: [Option<Point>; 2],
    /// What handles and words cover.
    pub taken: Vec<Rect>,
    /// Surface of the room that is colder than that.
    pub wet: Vec<Run>,
    /// The coldest place of the room's surface, where this cut shows it.
    pub coldest: Option<Point>,
    /// Where its label stands, on a narrow page and on a wide one.
    pub coldest_labels: [Option<Point>; 2],
}

/// How wide a label is and how high, as shares of the paper's width, on a narrow page and on a
/// wide one.
const LABELS: [[f64; 2]; 2] = [[0.125, 0.05], [0.07, 0.032]];

/// The same of the words on the dew line.
const DEW_LABELS: [[f64; 2]; 2] = [[0.36, 0.05], [0.21, 0.032]];

/// The same of the words on the coldest place.
const COLDEST_LABELS: [[f64; 2]; 2] = [[0.38, 0.062], [0.21, 0.036]];

impl TemperaturePicture {
    /// The shapes of a picture in a climate. Isotherms stand `step` kelvins apart, labels on those
    /// that are whole multiples of twice that above `zero`; labels keep clear of what is `taken`.
    pub fn of(
        picture: &Picture,
        climate: &Climate,
        coldest: FieldPoint,
        (zero, step): (Temperature, f64),
        taken: &[Rect],
    ) -> Self {
        let window = Window::of(&picture.view);
        let paper = window.paper;
        let place = |lines: Vec<Vec<Point>>| -> Vec<Vec<Point>> {
            lines
                .into_iter()
                .map(|line| line.into_iter().map(|p| window.place(p)).collect())
                .collect()
        };
        let mesh = Mesh::of(picture);
        let levels = levels(climate, zero, step);
        let mut isotherms: Vec<Isotherm> = levels
            .into_iter()
            .map(|(temperature, factor, is_main)| Isotherm {
                temperature,
                is_main,
                lines: place(isolines(&mesh, factor)),
                labels: [None; 2],
            })
            .collect();
        let dew = climate.dew.and_then(|dew| climate.factor(dew));
        let dew_lines = dew.map_or_else(Vec::new, |factor| place(isolines(&mesh, factor)));
        let room = blocks(picture, &window, Filling::Room);
        let shown = window.shows(coldest);
        let (mut dew_labels, mut coldest_labels) = ([None; 2], [None; 2]);
        let mut covered = taken.to_vec();
        for form in 0..LABELS.len() {
            let sized = |[width, height]: [f64; 2]| [width * paper.width(), height * paper.width()];
            let mut taken = taken.to_vec();
            let [width, height] = sized(COLDEST_LABELS[form]);
            if let Some(mark) = shown {
                let ring = paper.width() * 0.03;
                taken.push(around(mark, 2.0 * ring, 2.0 * ring));
                let at = beside(mark, [width, height], &paper, &room, &taken);
                coldest_labels[form] = at;
                taken.extend(at.map(|at| around(at, width, height)));
            }
            covered.extend(taken.iter().copied());
            let [width, height] = sized(DEW_LABELS[form]);
            let found = label_places(&[&dew_lines], &paper, &taken, width, height);
            dew_labels[form] = found[0];
            taken.extend(found[0].map(|at| around(at, width, height)));
            let lines = isotherms.iter().map(|isotherm| match isotherm.is_main {
                true => isotherm.lines.as_slice(),
                false => &[],
            });
            let lines: Vec<&[Vec<Point>]> = lines.collect();
            let [width, height] = sized(LABELS[form]);
            let places = label_places(&lines, &paper, &taken, width, height);
            for (isotherm, place) in isotherms.iter_mut().zip(places) {
                isotherm.labels[form] = place;
            }
        }
        let of = |filling: Filling| blocks(picture, &window, filling);
        Self {
            paper,
            steel: of(Filling::Steel),
            foam: of(Filling::Foam),
            board: of(Filling::Board),
            plastic: of(Filling::Plastic),
            other: of(Filling::Other),
            room,
            outdoors: of(Filling::Outdoors),
            edges: runs(picture, &window, |a, b, _| a != b),
            isotherms,
            dew: dew_lines,
            dew_labels,
            taken: covered,
            wet: dew.map_or_else(Vec::new, |dew| {
                runs(picture, &window, |a, b, factor| {
                    let meets_room = (a == Filling::Room) != (b == Filling::Room);
                    meets_room && a.is_solid() != b.is_solid() && factor.is_some_and(|f| f < dew)
                })
            }),
            coldest: shown,
            coldest_labels,
        }
    }

    /// Where the word for some air stands: the middle of its largest block, or the first place in
    /// it that is clear of what is `taken`.
    pub fn word_place(blocks: &[Rect], taken: &[Rect]) -> Option<Point> {
        const SHARES: [f64; 5] = [0.5, 0.25, 0.75, 0.12, 0.88];
        let area = |rect: &Rect| rect.width() * rect.height();
        let block = blocks.iter().max_by(|a, b| area(a).total_cmp(&area(b)))?;
        let across = SHARES.iter().flat_map(|x| SHARES.iter().map(move |y| (x, y)));
        let mut places = across.map(|(y, x)| {
            Point::new(block.left + block.width() * x, block.top + block.height() * y)
        });
        let is_free = |at: &Point| {
            let word = around(*at, 40.0, 12.0);
            taken.iter().all(|other| !overlap(&word, other))
        };
        places.find(is_free).or(Some(block.centre()))
    }
}

/// Where words of a size stand beside a mark: in the room for choice, on the paper and clear of what
/// is taken; none where there is no room.
fn beside(
    mark: Point,
    [width, height]: [f64; 2],
    paper: &Rect,
    room: &[Rect],
    taken: &[Rect],
) -> Option<Point> {
    const WAYS: [(f64, f64); 8] = [
        (0.0, 1.0),
        (0.0, -1.0),
        (0.6, 1.0),
        (-0.6, 1.0),
        (0.6, -1.0),
        (-0.6, -1.0),
        (1.0, 0.0),
        (-1.0, 0.0),
    ];
    let clear = paper.width() * 0.035;
    let free: Vec<Point> = [1.0, 1.9, 2.8]
        .iter()
        .flat_map(|far| WAYS.iter().map(move |way| (far, way)))
        .map(|(far, (x, y))| {
            let aside = x * (width / 2.0 + clear * far);
            Point::new(mark.x + aside, mark.y + y * (height / 2.0 + clear * far))
        })
        .filter(|at| {
            let words = around(*at, width, height);
            words.corners().into_iter().all(|corner| paper.holds(corner))
                && taken.iter().all(|other| !overlap(&words, other))
        })
        .collect();
    let in_room = |at: &&Point| {
        let corners = around(**at, width, height).corners();
        corners.iter().all(|corner| room.iter().any(|block| block.holds(*corner)))
    };
    free.iter().find(in_room).or_else(|| free.first()).copied()
}

/// Temperatures of the isotherms between outdoors and room with their factors, coldest first.
fn levels(climate: &Climate, zero: Temperature, step: f64) -> Vec<(Temperature, f64, bool)> {
    let (low, high) = {
        let (a, b) = ((climate.indoor - zero).value(), (climate.outdoor - zero).value());
        (a.min(b), a.max(b))
    };
    let mut found = Vec::new();
    let mut number = (low / step).floor() + 1.0;
    while number * step < high {
        let temperature = Temperature::celsius(zero.as_celsius() + number * step);
        if let Some(factor) = climate.factor(temperature) {
            found.push((temperature, factor, number % 2.0 == 0.0));
        }
        number += 1.0;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::{CheckedDesign, Surface};
    use inchwise_core::detail::{Detail, FloorMemberSlice, FrameSlice};

    const COLD: Climate = Climate {
        indoor: Temperature::celsius(20.0),
        outdoor: Temperature::celsius(-33.0),
        dew: Some(Temperature::celsius(4.0)),
    };

    fn shapes(detail: &Detail, climate: &Climate) -> TemperaturePicture {
        let field = detail.damp_field().unwrap();
        let picture = field.pictures(80).unwrap().swap_remove(0);
        let coldest = field.coldest().unwrap().at;
        TemperaturePicture::of(&picture, climate, coldest, (Temperature::celsius(0.0), 5.0), &[])
    }

    fn stud() -> (FrameSlice, TemperaturePicture) {
        let slice = FrameSlice::of(&CheckedDesign::default(), Surface::SideWall);
        (slice, shapes(&Detail::FrameLine(slice), &COLD))
    }

    fn area(rects: &[Rect]) -> f64 {
        rects.iter().map(|rect| rect.width() * rect.height()).sum()
    }

    #[test]
    fn the_stud_s_steel_is_as_much_as_it_is() {
        let (slice, shape) = stud();
        let [thin, member, flange] =
            [slice.steel_thickness, slice.member, slice.flange].map(|length| length.as_mm());
        let stud = thin * (member + 2.0 * (flange - thin));
        let sheet = slice.build_up.sheet.as_mm() * shape.paper.width();
        assert!((area(&shape.steel) - stud - sheet).abs() < 1e-6);
        let fillings = [&shape.steel, &shape.foam, &shape.board, &shape.other, &shape.room];
        let all: f64 = fillings.iter().map(|rects| area(rects)).sum();
        let paper = shape.paper.width() * shape.paper.height();
        assert!((all + area(&shape.outdoors) - paper).abs() < 1e-6, "the paper is filled");
    }

    #[test]
    fn isotherms_are_round_numbers_between_outdoors_and_room() {
        let (_, shape) = stud();
        let all: Vec<f64> = shape.isotherms.iter().map(|i| i.temperature.as_celsius()).collect();
        let round = [-30.0, -25.0, -20.0, -15.0, -10.0, -5.0, 0.0, 5.0, 10.0, 15.0];
        assert_eq!(all, round);
        let main = shape.isotherms.iter().filter(|i| i.is_main);
        assert_eq!(
            main.map(|i| i.temperature.as_celsius()).collect::<Vec<_>>(),
            [-30.0, -20.0, -10.0, 0.0, 10.0]
        );
        for isotherm in &shape.isotherms {
            let points = isotherm.lines.iter().flatten();
            let out = points.filter(|point| !shape.paper.holds(**point)).count();
            assert_eq!(out, 0, "on the paper");
        }
    }

    #[test]
    fn only_what_is_colder_than_the_dew_point_is_wet() {
        let (slice, shape) = stud();
        assert!(shape.wet.is_empty(), "the stud wall stands 4 °C");
        let humid = Climate { dew: Some(Temperature::celsius(11.0)), ..COLD };
        let wet = shapes(&Detail::FrameLine(slice), &humid);
        let face = slice.build_up.face().as_mm();
        assert!(!wet.wet.is_empty() && !wet.dew.is_empty());
        assert!(wet.wet.iter().flatten().all(|point| (point.y - face).abs() < 1e-9));
        let wet_length: f64 = wet.wet.iter().map(|[a, b]| (b.x - a.x).abs()).sum();
        assert!(wet_length < wet.paper.width(), "the wall between the studs stays dry");
        let coldest = wet.coldest.unwrap();
        let holds = |[a, b]: &Run| a.x <= coldest.x && coldest.x <= b.x;
        assert!(wet.wet.iter().any(holds), "the coldest spot drips first");
    }

    #[test]
    fn a_floor_stands_the_right_way_up() {
        let slice = FloorMemberSlice::of(&CheckedDesign::default());
        let shape = shapes(&Detail::FloorMember(slice), &COLD);
        let middle = |rects: &[Rect]| TemperaturePicture::word_place(rects, &[]).unwrap().y;
        assert!(middle(&shape.room) < middle(&shape.foam));
        assert!(middle(&shape.foam) < middle(&shape.outdoors));
        assert!(shape.coldest.is_some());
    }

    #[test]
    fn words_keep_clear_of_one_another_and_of_handles() {
        let (slice, _) = stud();
        let field = Detail::FrameLine(slice).damp_field().unwrap();
        let picture = field.pictures(80).unwrap().swap_remove(0);
        let at = field.coldest().unwrap().at;
        let paper = Window::of(&picture.view).paper;
        let handle = around(Point::new(paper.centre().x, paper.bottom - 20.0), 60.0, 40.0);
        let step = (Temperature::celsius(0.0), 5.0);
        let shape = TemperaturePicture::of(&picture, &COLD, at, step, &[handle]);
        for form in 0..2 {
            let sized = |at: &Option<Point>, size: [f64; 2]| {
                at.map(|at| around(at, size[0] * paper.width(), size[1] * paper.width()))
            };
            let mut words: Vec<Rect> = vec![handle];
            words.extend(sized(&shape.coldest_labels[form], COLDEST_LABELS[form]));
            words.extend(sized(&shape.dew_labels[form], DEW_LABELS[form]));
            let labels = shape.isotherms.iter().map(|isotherm| &isotherm.labels[form]);
            words.extend(labels.filter_map(|at| sized(at, LABELS[form])));
            assert!(words.len() >= 4, "the coldest place, the dew point and isotherms are named");
            for (n, one) in words.iter().enumerate() {
                assert!(words[..n].iter().all(|other| !overlap(one, other)), "{one:?}");
            }
        }
    }

    #[test]
    fn equal_temperatures_have_no_isotherms() {
        let slice = FrameSlice::of(&CheckedDesign::default(), Surface::SideWall);
        let even = Climate { outdoor: COLD.indoor, ..COLD };
        let shape = shapes(&Detail::FrameLine(slice), &even);
        assert!(shape.isotherms.is_empty() && shape.dew.is_empty() && shape.wet.is_empty());
    }
}
