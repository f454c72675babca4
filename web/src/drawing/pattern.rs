//! Materials as patterns, so that a drawing reads in one colour.

use leptos::prelude::*;

/// The patterns of one drawing, sized in its own units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patterns {
    /// The drawing's name: two drawings on a page keep their patterns apart.
    pub name: &'static str,
    /// A hundredth of a small drawing's width or so, in its units.
    pub unit: f64,
}

impl Patterns {
    /// Patterns for a drawing this wide.
    pub fn of(name: &'static str, width: f64) -> Self {
        Self { name, unit: width / 600.0 }
    }

    /// The paint of a material.
    pub fn paint(&self, material: &str) -> String {
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

    /// The definitions, once in the drawing.
    pub fn defined(self) -> AnyView {
        let unit = self.unit;
        // A stipple without rows: five dots on a tile whose repeats do not line up.
        const DOTS: [(f64, f64); 6] =
            [(1.4, 1.7), (5.2, 0.8), (8.6, 3.3), (3.6, 4.9), (7.0, 7.1), (1.2, 8.2)];
        let dots = DOTS
            .map(|(x, y)| view! { <circle class="dot" cx=x cy=y r="0.72" /> }.into_any())
            .into_iter()
            .collect_view();
        let named = |material: &str| format!("{}-{material}", self.name);
        let scaled = |turn: i32| format!("rotate({turn}) scale({unit:.4})");
        view! {
            <defs>
                <pattern
                    id=named("foam")
                    width="10"
                    height="9.4"
                    patternUnits="userSpaceOnUse"
                    patternTransform=scaled(11)
                >
                    <rect class="foam-ground" width="10" height="9.4" />
                    {dots}
                </pattern>
                <pattern
                    id=named("wood")
                    width="4.4"
                    height="4.4"
                    patternUnits="userSpaceOnUse"
                    patternTransform=scaled(45)
                >
                    <rect class="wood-ground" width="4.4" height="4.4" />
                    <path class="wood-grain" d="M0 0V4.4" />
                </pattern>
                <pattern
                    id=named("lost")
                    width="5"
                    height="5"
                    patternUnits="userSpaceOnUse"
                    patternTransform=scaled(-45)
                >
                    <path class="lost-hatch" d="M0 0V5" />
                </pattern>
            </defs>
        }
        .into_any()
    }
}
