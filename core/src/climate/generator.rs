//! Numbers that look drawn by chance and are the same each time.

use core::f64::consts::TAU;

/// The SplitMix64 generator of integers (G. L. Steele, D. Lea and C. H. Flood, Fast splittable
/// pseudorandom number generators, OOPSLA 2014): a counter that grows by an odd number, mixed.
#[derive(Clone, Copy, Debug)]
pub struct SplitMix64 {
    state: u64,
}

impl SplitMix64 {
    /// Starts from a seed.
    pub const fn new(seed: u64) -> Self {
        Self { state: seed }
    }

    /// The next integer.
    pub const fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A number above 0 and up to 1, from the upper 53 bits.
    fn unit(&mut self) -> f64 {
        const STEP: f64 = 1.0 / (1u64 << 53) as f64;
        ((self.next() >> 11) as f64 + 1.0) * STEP
    }

    /// A number of the standard normal distribution (G. E. P. Box and M. E. Muller, A note on the
    /// generation of random normal deviates, Annals of Mathematical Statistics 29, 1958).
    pub(super) fn normal(&mut self) -> f64 {
        let radius = (-2.0 * libm::log(self.unit())).sqrt();
        radius * libm::cos(TAU * self.unit())
    }
}

/// The value that a standard normal variable stays below with probability p, 0 < p < 1.
///
/// Source: M. J. Wichura, Algorithm AS 241: the percentage points of the normal distribution,
/// Applied Statistics 37, 1988, routine PPND7, about seven digits; its far tails, beyond
/// p = 1.4·10⁻¹¹, are left out because a month has 31 days.
pub(super) fn normal_quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        let above =
            3.387_132_717_9 + r * (50.434_271_938 + r * (159.291_132_02 + r * 59.109_374_720));
        let below = 1.0 + r * (17.895_169_469 + r * (78.757_757_664 + r * 67.187_563_600));
        return q * above / below;
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-libm::log(tail)).sqrt() - 1.6;
    let above =
        1.423_437_277_7 + r * (2.756_815_390 + r * (1.306_728_481_6 + r * 0.170_238_211_03));
    let below = 1.0 + r * (0.737_001_642_50 + r * 0.120_211_329_75);
    let size = above / below;
    if q < 0.0 { -size } else { size }
}

#[cfg(test)]
mod tests {
    use super::{SplitMix64, normal_quantile};

    /// The first outputs from seed 1234567, as published with the reference implementation (from
    /// memory).
    #[test]
    fn gives_the_integers_of_the_reference_implementation() {
        let mut generator = SplitMix64::new(1_234_567);
        let first: Vec<u64> = (0..3).map(|_| generator.next()).collect();
        assert_eq!(
            first,
            [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]
        );
    }

    /// Tables of the normal distribution: 0.975 at 1.959964, 0.99 at 2.326348, 0.6 at 0.253347.
    #[test]
    fn finds_the_percentage_points_of_the_normal_distribution() {
        for (p, z) in [(0.975, 1.959_964), (0.99, 2.326_348), (0.6, 0.253_347), (0.5, 0.0)] {
            assert!((normal_quantile(p) - z).abs() < 2e-6, "{p}: {}", normal_quantile(p));
            assert!((normal_quantile(1.0 - p) + z).abs() < 2e-6, "{p} from below");
        }
    }
}
