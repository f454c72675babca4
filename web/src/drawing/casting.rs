//! Castings and what is done about them, drawn.

use super::geometry::{Corner, Pen, Rect, Showing};
use super::paper::Picture;
use super::pattern::{Patterns, unit_of};

/// A shape that shows castings on its paper.
pub trait WithCastings {
    /// The castings.
    fn castings(&self) -> &[Corner];
    /// The paper.
    fn paper(&self) -> &Rect;
}

fn foam(corners: &[Corner]) -> String {
    let covers = corners.iter().filter_map(|corner| corner.cover.as_ref());
    covers.fold(Pen::new(), |pen, cover| pen.rect(&cover.foam)).done()
}

fn boards(corners: &[Corner]) -> String {
    let covers = corners.iter().filter_map(|corner| corner.cover.as_ref());
    covers.fold(Pen::new(), |pen, cover| pen.outline(&cover.board)).done()
}

fn steel(corners: &[Corner], showing: Showing) -> String {
    let shown = corners.iter().filter(|corner| corner.showing == showing);
    shown.fold(Pen::new(), |pen, corner| pen.rect(&corner.steel)).done()
}

/// A drop on each bare casting: a tip and a round below it.
fn drops(corners: &[Corner], paper: &Rect) -> String {
    let bare = corners.iter().filter(|corner| corner.showing == Showing::Bare);
    bare.fold(Pen::new(), |pen, corner| {
        let centre = corner.steel.centre();
        let size = (unit_of(paper) * 13.0).min(corner.steel.height() * 0.28);
        let (half, rise) = (size * 0.75, size * 1.45);
        pen.command('M', &[centre.x, centre.y - size])
            .command('q', &[half, rise * 0.65, half, rise])
            .command('a', &[half, half, 0.0, 0.0, 1.0, -2.0 * half, 0.0])
            .command('q', &[0.0, rise * -0.35, half, -rise])
            .command('z', &[])
    })
    .done()
}

/// Adds the castings of a shape to its picture.
pub fn draw<S: WithCastings>(picture: &mut Picture<S>, patterns: &Patterns) {
    picture
        .painted("foam", &patterns.foam(), |shape| foam(shape.castings()))
        .painted("board", &patterns.wood(), |shape| boards(shape.castings()))
        .path("steel", |shape| steel(shape.castings(), Showing::Cut))
        .path("steel bare", |shape| steel(shape.castings(), Showing::Bare))
        .path("steel-outline hidden", |shape| steel(shape.castings(), Showing::Behind))
        .path("drop", |shape| drops(shape.castings(), shape.paper()));
}
