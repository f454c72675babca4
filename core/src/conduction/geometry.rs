//! Points, blocks and the shapes that are painted with a material.

use crate::units::Length;

/// A point of the problem's own coordinates. In two dimensions `z` is not looked at.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Point {
    /// Along the first axis.
    pub x: Length,
    /// Along the second axis.
    pub y: Length,
    /// Along the third axis.
    pub z: Length,
}

impl Point {
    /// From three lengths.
    pub const fn new(x: Length, y: Length, z: Length) -> Self {
        Self { x, y, z }
    }

    /// From three figures in metres.
    pub const fn metres(x: f64, y: f64, z: f64) -> Self {
        Self { x: Length::new(x), y: Length::new(y), z: Length::new(z) }
    }

    /// The coordinate along one axis.
    pub const fn along(self, axis: Axis) -> Length {
        match axis {
            Axis::X => self.x,
            Axis::Y => self.y,
            Axis::Z => self.z,
        }
    }

    /// In metres, in the order x, y, z.
    pub(crate) const fn array(self) -> [f64; 3] {
        [self.x.value(), self.y.value(), self.z.value()]
    }

    /// From metres, in the order x, y, z.
    pub(crate) const fn from_array(at: [f64; 3]) -> Self {
        Self::metres(at[0], at[1], at[2])
    }
}

/// A direction of the coordinates.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Axis {
    /// The first axis.
    X,
    /// The second axis.
    Y,
    /// The third axis.
    Z,
}

impl Axis {
    /// All three, in order.
    pub const ALL: [Self; 3] = [Self::X, Self::Y, Self::Z];

    /// The two other axes, in order.
    pub const fn others(self) -> [Self; 2] {
        match self {
            Self::X => [Self::Y, Self::Z],
            Self::Y => [Self::X, Self::Z],
            Self::Z => [Self::X, Self::Y],
        }
    }

    pub(crate) const fn index(self) -> usize {
        self as usize
    }
}

/// One of the six directions a face can look in, named by the side of the body it is.
///
/// The upper surface of a floor is the floor's `ZMaximum` side when z points up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Side {
    /// Looking down the first axis.
    XMinimum,
    /// Looking up the first axis.
    XMaximum,
    /// Looking down the second axis.
    YMinimum,
    /// Looking up the second axis.
    YMaximum,
    /// Looking down the third axis.
    ZMinimum,
    /// Looking up the third axis.
    ZMaximum,
}

impl Side {
    /// All six, in order.
    pub const ALL: [Self; 6] = [
        Self::XMinimum,
        Self::XMaximum,
        Self::YMinimum,
        Self::YMaximum,
        Self::ZMinimum,
        Self::ZMaximum,
    ];

    /// The axis this side is square to.
    pub const fn axis(self) -> Axis {
        match self {
            Self::XMinimum | Self::XMaximum => Axis::X,
            Self::YMinimum | Self::YMaximum => Axis::Y,
            Self::ZMinimum | Self::ZMaximum => Axis::Z,
        }
    }

    /// Whether it looks up its axis.
    pub const fn is_maximum(self) -> bool {
        matches!(self, Self::XMaximum | Self::YMaximum | Self::ZMaximum)
    }

    pub(crate) const fn index(self) -> usize {
        self as usize
    }
}

/// A box with its faces square to the axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Block {
    /// The corner with the smallest coordinates.
    pub minimum: Point,
    /// The corner with the largest coordinates.
    pub maximum: Point,
}

impl Block {
    /// From two opposite corners; `minimum` must be the smaller along every axis.
    pub const fn new(minimum: Point, maximum: Point) -> Self {
        Self { minimum, maximum }
    }

    /// From six figures in metres: the smallest x, y, z, then the largest.
    pub const fn metres(minimum: [f64; 3], maximum: [f64; 3]) -> Self {
        Self { minimum: Point::from_array(minimum), maximum: Point::from_array(maximum) }
    }

    /// A rectangle of a problem in two dimensions, standing one metre deep in z.
    pub const fn flat(x0: Length, y0: Length, x1: Length, y1: Length) -> Self {
        Self {
            minimum: Point::new(x0, y0, Length::ZERO),
            maximum: Point::new(x1, y1, Length::new(1.0)),
        }
    }

    /// The extent along an axis.
    pub fn extent(&self, axis: Axis) -> Length {
        self.maximum.along(axis) - self.minimum.along(axis)
    }

    /// Whether a point lies in the block or on its faces.
    pub fn contains(&self, point: Point) -> bool {
        Axis::ALL.iter().all(|&axis| {
            let at = point.along(axis);
            at >= self.minimum.along(axis) && at <= self.maximum.along(axis)
        })
    }

    /// Whether the corners are finite and stand in the right order along the given axes.
    pub(crate) fn is_valid(&self, axes: &[Axis]) -> bool {
        axes.iter().all(|&axis| {
            let (low, high) = (self.minimum.along(axis), self.maximum.along(axis));
            low.is_finite() && high.is_finite() && low < high
        })
    }
}

/// What a material or the air fills.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A box. Grid lines are laid on its faces, so it is painted exactly.
    Block(Block),
    /// A polygon drawn out along an axis, for shapes with sloping sides such as a corrugated sheet.
    ///
    /// Grid lines are laid on its level edges and on its two ends. A cell cut by a sloping edge
    /// takes the mean conductivity of 8 × 8 points spread over its section, and joins its
    /// neighbours by the materials that meet at 8 points of each face, so a sloping sheet keeps its
    /// cross-section and its connection even where it is thinner than a cell; how far its faces
    /// stand from what lies beside it is kept to about half a cell. As air, a cell belongs to it
    /// when its centre does, and the surface resistance of the stepped faces is
    /// divided by the cosine between the step and the true edge, so the stepped surface passes as
    /// much heat as the true one.
    Prism {
        /// The axis the polygon is drawn out along.
        axis: Axis,
        /// The corners in order, along the two other axes (in the order x, y, z). Not closed: the
        /// last corner joins the first.
        outline: Vec<[Length; 2]>,
        /// Where it begins along the axis.
        from: Length,
        /// Where it ends along the axis.
        to: Length,
    },
}

impl From<Block> for Shape {
    fn from(block: Block) -> Self {
        Self::Block(block)
    }
}

impl Shape {
    /// Whether a point lies in the shape (in metres; `axes` are those looked at).
    pub(crate) fn contains(&self, at: [f64; 3], axes: &[Axis]) -> bool {
        match self {
            Self::Block(block) => axes.iter().all(|&axis| {
                at[axis.index()] > block.minimum.along(axis).value()
                    && at[axis.index()] < block.maximum.along(axis).value()
            }),
            Self::Prism { axis, outline, from, to } => {
                let along = at[axis.index()];
                if axes.contains(axis) && (along <= from.value() || along >= to.value()) {
                    return false;
                }
                let [first, second] = axis.others();
                is_inside(outline, at[first.index()], at[second.index()])
            }
        }
    }

    /// The smallest block around the shape.
    pub(crate) fn bounds(&self) -> Block {
        match self {
            Self::Block(block) => *block,
            Self::Prism { axis, outline, from, to } => {
                let mut low = [f64::INFINITY; 3];
                let mut high = [f64::NEG_INFINITY; 3];
                low[axis.index()] = from.value();
                high[axis.index()] = to.value();
                for corner in outline {
                    for (across, value) in axis.others().into_iter().zip(corner) {
                        let d = across.index();
                        low[d] = low[d].min(value.value());
                        high[d] = high[d].max(value.value());
                    }
                }
                Block::metres(low, high)
            }
        }
    }

    /// Whether the shape is finite and not empty.
    pub(crate) fn is_valid(&self, axes: &[Axis]) -> bool {
        match self {
            Self::Block(block) => block.is_valid(axes),
            Self::Prism { axis, outline, .. } => {
                outline.len() >= 3
                    && outline.iter().flatten().all(|value| value.is_finite())
                    && (axes.len() == 3 || *axis == Axis::Z)
                    && self.bounds().is_valid(axes)
            }
        }
    }

    /// The sloping edges, each as its two ends in metres; none for a block.
    pub(crate) fn sloping_edges(&self) -> impl Iterator<Item = [[f64; 2]; 2]> + '_ {
        self.edges().filter(|[a, b]| a[0] != b[0] && a[1] != b[1])
    }

    /// Every edge of a prism's outline, each as its two ends in metres; none for a block.
    pub(crate) fn edges(&self) -> impl Iterator<Item = [[f64; 2]; 2]> + '_ {
        let outline: &[[Length; 2]] = match self {
            Self::Block(_) => &[],
            Self::Prism { outline, .. } => outline,
        };
        let metres = |corner: &[Length; 2]| [corner[0].value(), corner[1].value()];
        (0..outline.len())
            .map(move |n| [metres(&outline[n]), metres(&outline[(n + 1) % outline.len()])])
    }
}

/// Whether a point lies inside a polygon, by the parity of the edges crossed on the way out.
fn is_inside(outline: &[[Length; 2]], x: f64, y: f64) -> bool {
    let mut inside = false;
    let mut previous = outline[outline.len() - 1];
    for &corner in outline {
        let (x0, y0) = (previous[0].value(), previous[1].value());
        let (x1, y1) = (corner[0].value(), corner[1].value());
        if (y0 > y) != (y1 > y) && x < x0 + (x1 - x0) * (y - y0) / (y1 - y0) {
            inside = !inside;
        }
        previous = corner;
    }
    inside
}
