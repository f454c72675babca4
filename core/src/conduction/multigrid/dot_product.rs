//! Sums of products in a fixed order that vectorises.

/// How many sums run side by side.
pub(super) const LANES: usize = 8;

/// The dot product of two arrays.
pub(super) fn dot(a: &[f64], b: &[f64]) -> f64 {
    sum_products(a, b, |a, b| a * b)
}

/// Sums a product over two arrays in interleaved sums.
#[inline(always)]
pub(super) fn sum_products<A: Copy, B: Copy>(
    a: &[A],
    b: &[B],
    product: impl Fn(A, B) -> f64,
) -> f64 {
    let mut sums = [0.0; LANES];
    let (a_chunks, b_chunks) = (a.chunks_exact(LANES), b.chunks_exact(LANES));
    let rest = a_chunks.remainder().iter().zip(b_chunks.remainder());
    let rest: f64 = rest.map(|(&a, &b)| product(a, b)).sum();
    for (a, b) in a_chunks.zip(b_chunks) {
        for n in 0..LANES {
            sums[n] += product(a[n], b[n]);
        }
    }
    sums.iter().sum::<f64>() + rest
}
