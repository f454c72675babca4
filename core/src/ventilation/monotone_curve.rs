//! A smooth curve through falling points that never overshoots between them.

/// A piecewise cubic through points of rising x and falling y, which falls all the way.
///
/// Slopes by the weighted harmonic mean of Fritsch and Butland, ends by the three-point formula.
/// Source: F. N. Fritsch and R. E. Carlson, Monotone piecewise
/// cubic interpolation, SIAM Journal on Numerical Analysis 17(2), 1980; F. N. Fritsch and
/// J. Butland, SIAM Journal on Scientific and Statistical Computing 5(2), 1984.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct MonotoneCurve {
    x: Vec<f64>,
    y: Vec<f64>,
    slope: Vec<f64>,
}

impl MonotoneCurve {
    /// Through two points or more, x rising and y falling; the caller has checked both.
    pub(super) fn through(x: Vec<f64>, y: Vec<f64>) -> Self {
        let slope = slopes(&x, &y);
        Self { x, y, slope }
    }

    /// The value at an x between the first and the last point.
    pub(super) fn at(&self, x: f64) -> f64 {
        let last_piece = self.x.len() - 2;
        let piece = self.x.partition_point(|&start| start <= x).saturating_sub(1).min(last_piece);
        let width = self.x[piece + 1] - self.x[piece];
        let t = (x - self.x[piece]) / width;
        let s = 1.0 - t;
        let from_values =
            self.y[piece] * (1.0 + 2.0 * t) * s * s + self.y[piece + 1] * t * t * (3.0 - 2.0 * t);
        let from_slopes = t * s * (self.slope[piece] * s - self.slope[piece + 1] * t);
        from_values + width * from_slopes
    }

    /// The first and the last x.
    pub(super) fn ends(&self) -> (f64, f64) {
        (self.x[0], self.x[self.x.len() - 1])
    }

    /// The same curve with x and y each multiplied.
    pub(super) fn scaled(&self, x_factor: f64, y_factor: f64) -> Self {
        Self {
            x: self.x.iter().map(|x| x * x_factor).collect(),
            y: self.y.iter().map(|y| y * y_factor).collect(),
            slope: self.slope.iter().map(|slope| slope * y_factor / x_factor).collect(),
        }
    }
}

/// The slope of the curve at each point.
fn slopes(x: &[f64], y: &[f64]) -> Vec<f64> {
    let width: Vec<f64> = x.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let chord: Vec<f64> =
        y.windows(2).zip(&width).map(|(pair, width)| (pair[1] - pair[0]) / width).collect();
    let pieces = width.len();
    if pieces == 1 {
        return vec![chord[0]; 2];
    }
    let mut slope = Vec::with_capacity(x.len());
    slope.push(end_slope(width[0], width[1], chord[0], chord[1]));
    for right in 1..pieces {
        let left = right - 1;
        let (near_left, near_right) =
            (2.0 * width[right] + width[left], width[right] + 2.0 * width[left]);
        slope
            .push((near_left + near_right) / (near_left / chord[left] + near_right / chord[right]));
    }
    let (last, before) = (pieces - 1, pieces - 2);
    slope.push(end_slope(width[last], width[before], chord[last], chord[before]));
    slope
}

/// The slope at an end: of the parabola through three points, level where that would rise.
fn end_slope(near_width: f64, far_width: f64, near_chord: f64, far_chord: f64) -> f64 {
    let parabola = ((2.0 * near_width + far_width) * near_chord - near_width * far_chord)
        / (near_width + far_width);
    parabola.min(0.0)
}
