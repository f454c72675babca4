//! Path data and other numbers of a picture, no finer than the eye sees.

use super::shape::{Point, Rect};
use crate::measure::push_plain;

/// Decimals of a number in a picture.
const PLACES: u32 = 2;

/// Numbers one after the other, kept apart by a space.
pub fn numbers(values: &[f64]) -> String {
    let mut text = String::new();
    for &value in values {
        if !text.is_empty() {
            text.push(' ');
        }
        // A whole number stands alone: the flags of an arc are 0 or 1 and nothing else.
        let places = if value == value.round() { 0 } else { PLACES };
        push_plain(&mut text, value, places);
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
    fn numbers_are_kept_apart_and_to_a_hundredth() {
        assert_eq!(numbers(&[0.0, -0.004, -12.5, 8.76543]), "0 0.00 -12.50 8.77");
        assert_eq!(percent(33.333), "33.33%");
    }

    #[test]
    fn flags_of_an_arc_are_whole() {
        let arc = Pen::new().command('a', &[11.5, 11.5, 0.0, 0.0, 1.0, 23.0, 0.0]).done();
        assert_eq!(arc, "a11.50 11.50 0 0 1 23 0");
    }

    #[test]
    fn paths_open_and_close() {
        let points = [Point::new(0.0, 0.0), Point::new(1.5, 2.0)];
        assert_eq!(Pen::new().line(&points).done(), "M0 0L1.50 2");
        assert_eq!(Pen::new().outline(&points).outline(&points).done(), "M0 0L1.50 2ZM0 0L1.50 2Z");
        let nothing = Rect::new(0.0, 5.0, 9.0, 5.0);
        assert_eq!(
            Pen::new().rects(&[nothing, Rect::new(0.0, 0.0, 1.0, 1.0)]).done(),
            "M0 0L1 0L1 1L0 1Z"
        );
    }
}
