//! Sums of products in a fixed order that vectorises.

/// How many sums run side by side.
pub(super) const LANES: usize = 8;

pub(super) fn dot(a: &[f64], b: &[f64]) -> f64 {
    lanes(a, b, |a, b| a * b)
}

/// Sums a product over two arrays in interleaved sums.
#[inline(always)]
pub(super) fn lanes<A: Copy, B: Copy>(a: &[A], b: &[B], product: impl Fn(A, B) -> f64) -> f64 {
    let mut sums = [0.0; LANES];
    let (a_pieces, b_pieces) = (a.chunks_exact(LANES), b.chunks_exact(LANES));
    let rest = a_pieces.remainder().iter().zip(b_pieces.remainder());
    let rest: f64 = rest.map(|(&a, &b)| product(a, b)).sum();
    for (a, b) in a_pieces.zip(b_pieces) {
        for n in 0..LANES {
            sums[n] += product(a[n], b[n]);
        }
    }
    sums.iter().sum::<f64>() + rest
}
