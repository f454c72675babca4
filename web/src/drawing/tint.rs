//! The tint of a temperature picture: cold and warm as two washes. It only helps; lines and labels
//! say it all without it.

use inchwise_core::detail::{Filling, Picture};
use wasm_bindgen::{Clamped, JsCast};
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, ImageData};

/// Pixels across: the washes run so softly that the page may stretch them.
const WIDTH: usize = 160;

/// Red, green, blue and the strongest coat of what is cold, and of what is warm. The washes are
/// thin, so that they do on light and on dark paper.
const COLD: [f64; 4] = [46.0, 104.0, 190.0, 150.0];
const WARM: [f64; 4] = [226.0, 138.0, 44.0, 110.0];

/// For each pixel along an axis, the cell it lies in and how far.
fn places(lines: &[f64], pixels: usize) -> Vec<(usize, f64)> {
    let (first, last) = (lines[0], lines[lines.len() - 1]);
    let mut cell = 0;
    (0..pixels)
        .map(|pixel| {
            let at = first + (last - first) * (pixel as f64 + 0.5) / pixels as f64;
            while cell + 2 < lines.len() && at > lines[cell + 1] {
                cell += 1;
            }
            (cell, (at - lines[cell]) / (lines[cell + 1] - lines[cell]))
        })
        .collect()
}

/// The washes of a picture, pixel by pixel as red, green, blue and coat; air stays bare.
pub fn washes(picture: &Picture) -> (Vec<u8>, usize, usize) {
    let mm = |lines: &[inchwise_core::units::Length]| -> Vec<f64> {
        lines.iter().map(|line| line.as_mm()).collect()
    };
    let (across, down) = (mm(&picture.across), mm(&picture.down));
    let span = |lines: &[f64]| lines[lines.len() - 1] - lines[0];
    let height = ((span(&down) / span(&across)) * WIDTH as f64).round().max(1.0) as usize;
    let (columns, mut rows) = (places(&across, WIDTH), places(&down, height));
    if picture.view.rises {
        rows.reverse();
    }
    let mut pixels = vec![0; WIDTH * height * 4];
    for (y, &(row, v)) in rows.iter().enumerate() {
        for (x, &(column, u)) in columns.iter().enumerate() {
            if !picture.filling(column, row).is_some_and(Filling::is_solid) {
                continue;
            }
            let at = |c, r| picture.factor(column + c, row + r).map_or(0.5, |f| f.value());
            let high = at(0, 0) * (1.0 - u) + at(1, 0) * u;
            let low = at(0, 1) * (1.0 - u) + at(1, 1) * u;
            let factor = high * (1.0 - v) + low * v;
            let [red, green, blue, coat] = if factor < 0.5 { COLD } else { WARM };
            let coat = coat * ((factor - 0.5).abs() * 2.0).min(1.0);
            let pixel = &mut pixels[(y * WIDTH + x) * 4..][..4];
            for (channel, value) in pixel.iter_mut().zip([red, green, blue, coat]) {
                *channel = value as u8;
            }
        }
    }
    (pixels, WIDTH, height)
}

/// Lays the washes on a canvas. Where a canvas cannot be had the picture does without.
pub fn lay(sheet: &HtmlCanvasElement, picture: &Picture) {
    let (pixels, width, height) = washes(picture);
    sheet.set_width(width as u32);
    sheet.set_height(height as u32);
    let context = sheet.get_context("2d").ok().flatten();
    let context = context.and_then(|context| context.dyn_into::<CanvasRenderingContext2d>().ok());
    let image = ImageData::new_with_u8_clamped_array(Clamped(&pixels), width as u32);
    if let (Some(context), Ok(image)) = (context, image) {
        let _ = context.put_image_data(&image, 0.0, 0.0);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::{CheckedDesign, Surface};
    use inchwise_core::detail::{Detail, FrameSlice};

    #[test]
    fn steel_is_washed_cold_lining_warm_and_air_stays_bare() {
        let slice = FrameSlice::of(&CheckedDesign::default(), Surface::SideWall);
        let picture = Detail::FrameLine(slice).pictures(80).unwrap().swap_remove(0);
        let (pixels, width, height) = washes(&picture);
        let at = |x: usize, y: usize| &pixels[(y * width + x) * 4..][..4];
        assert_eq!(at(5, 0)[3], 0, "outdoors");
        assert_eq!(at(5, height - 1)[3], 0, "the room");
        let solid = (0..height).map(|y| at(5, y)).filter(|pixel| pixel[3] > 0);
        let solid: Vec<_> = solid.collect();
        assert!(solid[0][2] > solid[0][0], "cold is blue");
        let warm = solid[solid.len() - 1];
        assert!(warm[0] > warm[2], "warm is not");
    }
}
