//! Materials as patterns, so that a drawing reads in one colour.

use crate::dom::{El, svg};
use crate::measure::plain;

/// The patterns of one drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patterns {
    /// The drawing's name: two drawings on a page keep their patterns apart.
    pub name: &'static str,
}

/// The width of a drawing over this is the unit in which its patterns, arrow heads and marks are
/// sized.
const UNITS_ACROSS: f64 = 600.0;

/// The unit of a drawing this wide.
pub fn unit_of(width: f64) -> f64 {
    width / UNITS_ACROSS
}

/// A stipple without rows: dots on a tile whose repeats do not line up.
const DOTS: &str = "M1.4 1.7h0M5.2 .8h0M8.6 3.3h0M3.6 4.9h0M7 7.1h0M1.2 8.2h0";

impl Patterns {
    fn paint(&self, material: &str) -> String {
        format!("url(#{}-{material})", self.name)
    }

    /// Foam: a stipple.
    pub fn foam(&self) -> String {
        self.paint("foam")
    }

    /// Lining and plywood: a diagonal hatch.
    pub fn wood(&self) -> String {
        self.paint("wood")
    }

    /// Room that is lost: a light hatch the other way.
    pub fn lost(&self) -> String {
        self.paint("lost")
    }

    /// The definitions, once in the drawing, sized by its unit.
    pub fn defined(&self, unit: impl Fn() -> f64 + Copy + 'static) -> El {
        let tile = |material: &str, width: f64, height: f64, turn: i32| {
            svg("pattern")
                .attr("id", &format!("{}-{material}", self.name))
                .attr("width", &plain(width, 1, ""))
                .attr("height", &plain(height, 1, ""))
                .attr("patternUnits", "userSpaceOnUse")
                .attr_with("patternTransform", move || {
                    format!("rotate({turn}) scale({})", plain(unit(), 4, ""))
                })
        };
        let drawn = |class: &str, data: &str| svg("path").class(class).attr("d", data);
        svg("defs").with(&[
            tile("foam", 10.0, 9.4, 11)
                .child(&drawn("foam-ground", "M0 0H10V9.4H0Z"))
                .child(&drawn("dots", DOTS)),
            tile("wood", 4.4, 4.4, 45)
                .child(&drawn("wood-ground", "M0 0H4.4V4.4H0Z"))
                .child(&drawn("wood-grain", "M0 0V4.4")),
            tile("lost", 5.0, 5.0, -45).child(&drawn("lost-hatch", "M0 0V5")),
        ])
    }
}
