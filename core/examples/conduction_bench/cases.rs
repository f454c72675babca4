//! Problems to time: a framed wall in two dimensions and the corner of a steel box in three.

use inchwise_core::conduction::*;
use inchwise_core::units::{Length, ThermalConductivity, ThermalResistance};

const STEEL: ThermalConductivity = ThermalConductivity::new(50.0);
const FOAM: ThermalConductivity = ThermalConductivity::new(0.026);
const GYPSUM: ThermalConductivity = ThermalConductivity::new(0.16);
const STILL_AIR: ThermalConductivity = ThermalConductivity::new(0.5);
const INSIDE: ThermalResistance = ThermalResistance::new(0.13);
const OUTSIDE: ThermalResistance = ThermalResistance::new(0.04);

/// The names of all cases, which say how many cells they come close to.
#[allow(dead_code, reason = "who asks in wasm knows the names")]
pub const NAMES: [&str; 7] =
    ["wall_5k", "wall_20k", "wall_80k", "corner_30k", "corner_120k", "corner_500k", "corner_1m"];

/// The case of a name.
pub fn named(name: &str) -> Option<Problem> {
    let (kind, cells) = name.split_once('_')?;
    Some(match (kind, cells) {
        ("wall", "5k") => wall(0.701),
        ("wall", "20k") => wall(0.26),
        ("wall", "80k") => wall(0.111),
        ("corner", "30k") => corner(12.296),
        ("corner", "120k") => corner(6.972),
        ("corner", "500k") => corner(3.865),
        ("corner", "1m") => corner(2.934),
        _ => return None,
    })
}

fn wall(finest: f64) -> Problem {
    framed_wall(finest, 8.0 * finest, 25.0)
}

fn corner(finest: f64) -> Problem {
    steel_corner(finest, 2.0 * finest, 1.3)
}

/// One pitch of a wall: steel skin, foam around a C-shaped steel stud, gypsum board.
fn framed_wall(finest: f64, coarsest: f64, gap: f64) -> Problem {
    let flat = |x0, y0, x1, y1| {
        Block::flat(Length::mm(x0), Length::mm(y0), Length::mm(x1), Length::mm(y1))
    };
    let (pitch, skin, stud, gauge, flange, board) = (406.0, 2.0, 63.5, 0.84, 31.8, 12.7);
    let (near, far) = (skin + gap, skin + gap + stud);
    let web = pitch / 2.0;
    let cells = CellSizes::new(Length::mm(finest), Length::mm(coarsest));
    let mut wall =
        Problem::new(flat(0.0, 0.0, pitch, far + board), Dimensionality::Two, FOAM, cells);
    wall.paint(flat(0.0, 0.0, pitch, skin), STEEL);
    wall.paint(flat(web, near, web + gauge, far), STEEL);
    wall.paint(flat(web, near, web + flange, near + gauge), STEEL);
    wall.paint(flat(web, far - gauge, web + flange, far), STEEL);
    wall.paint(flat(0.0, far, pitch, far + board), GYPSUM);
    wall.expose(Side::YMinimum, Environment(1), OUTSIDE);
    wall.expose(Side::YMaximum, Environment(0), INSIDE);
    wall
}

/// The corner of a steel box: three skins, three hollow rails, a hollow casting, foam on all three
/// walls, the casting standing bare in the room.
fn steel_corner(finest: f64, coarsest: f64, growth: f64) -> Problem {
    let block = |x0, y0, z0, x1, y1, z1| {
        Block::new(
            Point::new(Length::mm(x0), Length::mm(y0), Length::mm(z0)),
            Point::new(Length::mm(x1), Length::mm(y1), Length::mm(z1)),
        )
    };
    let (size, skin, foam, rail, wall) = (500.0, 2.0, 75.0, 60.0, 4.0);
    let mut cells = CellSizes::new(Length::mm(finest), Length::mm(coarsest));
    cells.growth = growth;
    let domain = block(0.0, 0.0, 0.0, size, size, size);
    let mut corner = Problem::new(domain, Dimensionality::Three, FOAM, cells);
    corner.paint(block(0.0, 0.0, 0.0, skin, size, size), STEEL);
    corner.paint(block(0.0, 0.0, 0.0, size, skin, size), STEEL);
    corner.paint(block(0.0, 0.0, 0.0, size, size, skin), STEEL);
    for (inset, conductivity) in [(0.0, STEEL), (wall, STILL_AIR)] {
        let (low, high) = (inset, rail - inset);
        corner.paint(block(0.0, low, low, size, high, high), conductivity);
        corner.paint(block(low, 0.0, low, high, size, high), conductivity);
        corner.paint(block(low, low, 0.0, high, high, size), conductivity);
    }
    corner.paint(block(0.0, 0.0, 0.0, 178.0, 162.0, 118.0), STEEL);
    corner.paint(block(15.0, 15.0, 15.0, 163.0, 147.0, 103.0), STILL_AIR);
    let room = SurfaceResistances::uniform(INSIDE);
    let face = skin + foam;
    // The room around the casting, as three regions that leave it standing.
    corner.open_to(block(178.0, face, face, size, size, size), Environment(0), room);
    corner.open_to(block(face, 162.0, face, size, size, size), Environment(0), room);
    corner.open_to(block(face, face, 118.0, size, size, size), Environment(0), room);
    for side in [Side::XMinimum, Side::YMinimum, Side::ZMinimum] {
        corner.expose(side, Environment(1), OUTSIDE);
    }
    corner
}
