//! How clear the days of a month are, from its mean.

/// The daily clearness index K_T a month reaches at least.
const CLOUDIEST: f64 = 0.05;

/// Least and most monthly mean for which the distribution is stated.
const STATED: [f64; 2] = [0.15, 0.75];

/// How the daily clearness indices of a month are spread about its mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Clearness {
    /// F(K) = (e^(γ·K_min) − e^(γ·K)) / (e^(γ·K_min) − e^(γ·K_max)).
    Spread {
        /// γ.
        gamma: f64,
        /// K_max.
        clearest: f64,
    },
    /// Every day as the mean: polar twilight, or a mean outside what the distribution is for.
    Alike,
}

impl Clearness {
    /// From the mean K̄ of the month, with ξ = (K_max − K_min) / (K_max − K̄):
    /// K_max = 0.6313 + 0.267·K̄ − 11.9·(K̄ − 0.75)⁸,
    /// γ = −1.498 + (1.184·ξ − 27.182·e^(−1.5·ξ)) / (K_max − K_min).
    ///
    /// Range of the spread: K̄ from 0.15 to 0.75. Source: P. Bendt, M. Collares-Pereira and A. Rabl,
    /// The frequency distribution of daily insolation values, Solar Energy 27, 1981; γ by
    /// M. E. Herzog, 1985; K_max by K. G. T. Hollands and R. G. Huget, 1983, all as in Duffie and Beckman,
    /// section 2.9.
    pub fn of_mean(mean: f64) -> Self {
        if !(STATED[0]..=STATED[1]).contains(&mean) {
            return Self::Alike;
        }
        let off = mean - 0.75;
        let off_squared = off * off;
        let eighth = off_squared * off_squared * off_squared * off_squared;
        let clearest = 0.6313 + 0.267 * mean - 11.9 * eighth;
        let width = clearest - CLOUDIEST;
        let xi = width / (clearest - mean);
        let gamma = -1.498 + (1.184 * xi - 27.182 * libm::exp(-1.5 * xi)) / width;
        Self::Spread { gamma, clearest }
    }

    /// The clearness index that a share of the days stays below; `mean` is the month's.
    pub fn at(self, share: f64, mean: f64) -> f64 {
        match self {
            Self::Alike => mean,
            Self::Spread { gamma, clearest } => daily_clearness_at(share, gamma, clearest),
        }
    }
}

/// K at which F(K) is a share: ln(e^(γ·K_min) − F·(e^(γ·K_min) − e^(γ·K_max))) / γ, and evenly spread
/// where γ is nothing.
pub fn daily_clearness_at(share: f64, gamma: f64, clearest: f64) -> f64 {
    let width = clearest - CLOUDIEST;
    if gamma.abs() < 1e-6 {
        CLOUDIEST + share * width
    } else {
        CLOUDIEST + libm::log1p(share * libm::expm1(gamma * width)) / gamma
    }
}

#[cfg(test)]
mod tests {
    use super::Clearness;

    #[test]
    fn the_days_of_a_month_come_to_its_mean() {
        for mean in [0.2, 0.3, 0.4, 0.5, 0.6, 0.7] {
            let spread = Clearness::of_mean(mean);
            let days = (0..1000).map(|n| spread.at((f64::from(n) + 0.5) / 1000.0, mean));
            let off = days.sum::<f64>() / 1000.0 - mean;
            // What the fitted γ leaves.
            assert!(off.abs() < 0.015, "{mean}: off by {off}");
        }
    }
}
