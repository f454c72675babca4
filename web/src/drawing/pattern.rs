//! Materials as patterns, so that a drawing reads in one colour.

use leptos::prelude::*;

use super::geometry::{Rect, numbers};

/// The patterns of one drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patterns {
    /// The drawing's name: two drawings on a page keep their patterns apart.
    pub name: &'static str,
    /// What one unit of a pattern comes to in the drawing: a tile is about ten wide.
    pub unit: f64,
}

/// The unit in which a drawing's arrow heads and marks are sized.
pub fn unit_of(paper: &Rect) -> f64 {
    const UNITS_ACROSS: f64 = 600.0;
    paper.width() / UNITS_ACROSS
}

/// A stipple without rows: dots on a tile whose repeats do not line up.
const DOTS: &str = "M1.4 1.7h0M5.2 .8h0M8.6 3.3h0M3.6 4.9h0M7 7.1h0M1.2 8.2h0";

const FOAM: (&str, &str, &str) = ("foam", "10", "9.4");
const WOOD: (&str, &str, &str) = ("wood", "4.4", "4.4");
const LOST: (&str, &str, &str) = ("lost", "5", "5");

impl Patterns {
    fn paint(&self, material: &str) -> String {
        ["url(#", self.name, "-", material, ")"].concat()
    }

    /// Foam: a stipple.
    pub fn foam(&self) -> String {
        self.paint(FOAM.0)
    }

    /// Lining and plywood: a diagonal hatch.
    pub fn wood(&self) -> String {
        self.paint(WOOD.0)
    }

    /// Room that is lost: a light hatch the other way.
    pub fn lost(&self) -> String {
        self.paint(LOST.0)
    }

    /// The definitions, once in the drawing.
    pub fn defined(&self) -> AnyView {
        let scale = numbers(&[self.unit]);
        let tile = |(material, width, height): (&str, &'static str, &'static str),
                    turn: &str,
                    parts: &'static [(&'static str, &'static str)]| {
            let parts = parts
                .iter()
                .map(|&(class, data)| view! { <path class=class d=data></path> })
                .collect_view();
            let transform = ["rotate(", turn, ") scale(", &scale, ")"].concat();
            let id = [self.name, "-", material].concat();
            view! {
                <pattern
                    id=id
                    width=width
                    height=height
                    patternUnits="userSpaceOnUse"
                    patternTransform=transform
                >
                    {parts}
                </pattern>
            }
        };
        let tiles = vec![
            tile(FOAM, "11", &[("foam-ground", "M0 0H10V9.4H0Z"), ("dots", DOTS)]),
            tile(WOOD, "45", &[("wood-ground", "M0 0H4.4V4.4H0Z"), ("wood-grain", "M0 0V4.4")]),
            tile(LOST, "-45", &[("lost-hatch", "M0 0V5")]),
        ];
        view! { <defs>{tiles}</defs> }.into_any()
    }
}
