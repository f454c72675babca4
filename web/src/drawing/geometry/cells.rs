//! From the cells of a picture to blocks of one material and the lines between materials.

use inchwise_core::detail::{Filling, Picture};
use inchwise_core::units::Length;

use super::shape::{Point, Rect};
use super::window::Window;

/// A straight run, end to end.
pub type Run = [Point; 2];

/// The blocks a filling makes: runs of cells of a row, and what continues below as one.
pub(super) fn blocks(picture: &Picture, window: &Window, filling: Filling) -> Vec<Rect> {
    let mm = |lines: &[Length], n: usize| lines[n].as_mm();
    let (columns, rows) = (picture.across.len() - 1, picture.down.len() - 1);
    let mut done = Vec::new();
    // From column to column, since which row.
    let mut open: Vec<(usize, usize, usize)> = Vec::new();
    for row in 0..=rows {
        let mut found = Vec::new();
        let mut column = 0;
        while row < rows && column < columns {
            let from = column;
            while column < columns && picture.filling(column, row) == Some(filling) {
                column += 1;
            }
            if column > from {
                found.push((from, column));
            } else {
                column += 1;
            }
        }
        let mut next = Vec::new();
        for (from, to, since) in open {
            if found.contains(&(from, to)) {
                found.retain(|run| *run != (from, to));
                next.push((from, to, since));
            } else {
                let [left, right] = [from, to].map(|n| mm(&picture.across, n));
                let [low, high] = [since, row].map(|n| mm(&picture.down, n));
                done.push(window.rect(left, low, right, high));
            }
        }
        next.extend(found.into_iter().map(|(from, to)| (from, to, row)));
        open = next;
    }
    done
}

/// Runs of cell edges that hold to a rule: of the fillings on either hand and the lesser factor at their
/// ends.
pub(super) fn runs(
    picture: &Picture,
    window: &Window,
    holds: impl Fn(Filling, Filling, Option<f64>) -> bool,
) -> Vec<Run> {
    let (columns, rows) = (picture.across.len() - 1, picture.down.len() - 1);
    let point = |column: usize, row: usize| {
        window.place(Point::new(picture.across[column].as_mm(), picture.down[row].as_mm()))
    };
    let least = |a: (usize, usize), b: (usize, usize)| {
        let [a, b] = [a, b].map(|(column, row)| picture.factor(column, row));
        Some(a?.value().min(b?.value()))
    };
    let mut runs: Vec<Run> = Vec::new();
    let mut extend = |run: Run, begins: bool| match runs.last_mut() {
        Some(last) if !begins && last[1] == run[0] => last[1] = run[1],
        _ => runs.push(run),
    };
    for column in 1..columns {
        for row in 0..rows {
            let sides = [column - 1, column].map(|column| picture.filling(column, row));
            let [Some(a), Some(b)] = sides else { continue };
            if holds(a, b, least((column, row), (column, row + 1))) {
                extend([point(column, row), point(column, row + 1)], row == 0);
            }
        }
    }
    for row in 1..rows {
        for column in 0..columns {
            let sides = [row - 1, row].map(|row| picture.filling(column, row));
            let [Some(a), Some(b)] = sides else { continue };
            if holds(a, b, least((column, row), (column + 1, row))) {
                extend([point(column, row), point(column + 1, row)], column == 0);
            }
        }
    }
    runs
}
