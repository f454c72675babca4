//! Path data and other numbers of a picture, written by hand: no more decimals than the eye sees,
//! and none of the weight of the standard float formatting.

use super::shape::{Point, Rect};

/// A number to a hundredth; nothing where it is not a number a picture can hold.
pub fn push_number(text: &mut String, value: f64) {
    const MOST: f64 = 1e12;
    if value.is_nan() || value.abs() > MOST {
        return;
    }
    let hundredths = (value * 100.0).round() as i64;
    if hundredths < 0 {
        text.push('-');
    }
    let (whole, part) = (hundredths.unsigned_abs() / 100, hundredths.unsigned_abs() % 100);
    text.push_str(&whole.to_string());
    if part > 0 {
        text.push('.');
        text.push(char::from(b'0' + (part / 10) as u8));
        if part % 10 > 0 {
            text.push(char::from(b'0' + (part % 10) as u8));
        }
    }
}

/// Numbers one after the other, kept apart by a space.
pub fn numbers(values: &[f64]) -> String {
    let mut text = String::new();
    for &value in values {
        if !text.is_empty() {
            text.push(' ');
        }
        push_number(&mut text, value);
    }
    text
}

/// A length in per cent.
pub fn percent(value: f64) -> String {
    let mut text = numbers(&[value]);
    text.push('%');
    text
}

/// Writes path data.
#[derive(Debug, Default)]
pub struct Pen(String);

impl Pen {
    /// Nothing drawn yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// What was drawn.
    pub fn done(self) -> String {
        self.0
    }

    /// A letter of path data and its numbers.
    pub fn command(mut self, letter: char, values: &[f64]) -> Self {
        self.0.push(letter);
        self.0.push_str(&numbers(values));
        self
    }

    /// A line through points.
    pub fn line(mut self, points: &[Point]) -> Self {
        let mut letter = 'M';
        for point in points {
            self = self.command(letter, &[point.x, point.y]);
            letter = 'L';
        }
        self
    }

    /// An outline through points.
    pub fn outline(mut self, points: &[Point]) -> Self {
        self = self.line(points);
        self.0.push('Z');
        self
    }

    /// A rectangle; nothing where it covers nothing.
    pub fn rect(self, rect: &Rect) -> Self {
        if rect.is_empty() { self } else { self.outline(&rect.corners()) }
    }

    /// Several rectangles.
    pub fn rects(self, rects: &[Rect]) -> Self {
        rects.iter().fold(self, Self::rect)
    }

    /// A level or upright line.
    pub fn between(self, x0: f64, y0: f64, x1: f64, y1: f64) -> Self {
        self.line(&[Point::new(x0, y0), Point::new(x1, y1)])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_to_a_hundredth_and_no_longer_than_they_are() {
        assert_eq!(numbers(&[0.0, -0.004, 1.0, -12.5, 8.76543]), "0 0 1 -12.5 8.77");
        assert_eq!(numbers(&[0.05, -0.05, 99.996]), "0.05 -0.05 100");
        assert_eq!(numbers(&[f64::NAN]), "");
        assert_eq!(percent(33.333), "33.33%");
    }

    #[test]
    fn paths_open_and_close() {
        let points = [Point::new(0.0, 0.0), Point::new(1.5, 2.0)];
        assert_eq!(Pen::new().line(&points).done(), "M0 0L1.5 2");
        assert_eq!(Pen::new().outline(&points).outline(&points).done(), "M0 0L1.5 2ZM0 0L1.5 2Z");
        let nothing = Rect::new(0.0, 5.0, 9.0, 5.0);
        assert_eq!(
            Pen::new().rects(&[nothing, Rect::new(0.0, 0.0, 1.0, 1.0)]).done(),
            "M0 0L1 0L1 1L0 1Z"
        );
    }
}
