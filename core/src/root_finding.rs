//! Where a continuous function of one number crosses zero between two known sides.

/// An argument within `accuracy` of a zero of `function` between `lower` and `upper`; nothing if
/// the two ends do not differ in sign, or either is not a number.
///
/// Interpolate, truncate, project: never more calls than bisection plus two, usually far fewer.
/// Range: lower < upper, accuracy more than the spacing of floating-point numbers there.
/// Source: I. F. D. Oliveira and R. H. C. Takahashi, An enhancement of the bisection method average
/// performance preserving minmax optimality, ACM Transactions on Mathematical Software 47(1), 2020.
pub(crate) fn root_between(
    function: impl Fn(f64) -> f64,
    lower: f64,
    upper: f64,
    accuracy: f64,
) -> Option<f64> {
    let (mut a, mut b) = (lower, upper);
    let (at_lower, at_upper) = (function(a), function(b));
    if at_lower == 0.0 {
        return Some(a);
    }
    if at_upper == 0.0 {
        return Some(b);
    }
    // NaN fails here, being neither above nor below zero.
    let rising = if at_lower < 0.0 && at_upper > 0.0 {
        1.0
    } else if at_lower > 0.0 && at_upper < 0.0 {
        -1.0
    } else {
        return None;
    };
    let (mut f_a, mut f_b) = (rising * at_lower, rising * at_upper);

    let shrink = 0.2 / (b - a);
    // Half-width that bisection would still allow before this step, with one step in hand.
    let mut allowance = accuracy;
    while allowance < b - a {
        allowance *= 2.0;
    }
    while b - a > 2.0 * accuracy {
        let middle = 0.5 * (a + b);
        let secant = (f_b * a - f_a * b) / (f_b - f_a);
        let towards_middle = if middle < secant { -1.0 } else { 1.0 };

        let nudge = shrink * (b - a) * (b - a);
        let nudged =
            if nudge <= (middle - secant).abs() { secant + towards_middle * nudge } else { middle };
        let reach = allowance - 0.5 * (b - a);
        let x =
            if (nudged - middle).abs() <= reach { nudged } else { middle - towards_middle * reach };

        let f_x = rising * function(x);
        if f_x > 0.0 {
            (b, f_b) = (x, f_x);
        } else if f_x < 0.0 {
            (a, f_a) = (x, f_x);
        } else {
            return Some(x);
        }
        allowance *= 0.5;
    }
    Some(0.5 * (a + b))
}

#[cfg(test)]
mod tests {
    use super::root_between;
    use core::cell::Cell;

    #[test]
    fn finds_a_square_root_either_way_up() {
        let accuracy = 1e-12;
        for sign in [1.0, -1.0] {
            let root = root_between(|x| sign * (x * x - 2.0), 0.0, 2.0, accuracy).unwrap();
            assert!((root - core::f64::consts::SQRT_2).abs() <= accuracy);
        }
    }

    #[test]
    fn calls_no_oftener_than_bisection_and_two_more() {
        let calls = Cell::new(0);
        // Flat for most of its length, which ruins the secant method.
        let steep_at_the_end = |x: f64| {
            calls.set(calls.get() + 1);
            libm::pow(x, 41.0) - 0.5
        };
        root_between(steep_at_the_end, 0.0, 1.0, 1e-9).unwrap();
        let bisection = 29; // 2⁻²⁹ < 2e-9
        assert!(calls.get() <= 2 + bisection + 2, "{} calls", calls.get());
    }

    #[test]
    fn refuses_ends_of_one_sign() {
        assert_eq!(root_between(|x| x + 1.0, 0.0, 2.0, 1e-9), None);
        assert_eq!(root_between(|_| f64::NAN, 0.0, 2.0, 1e-9), None);
    }

    #[test]
    fn an_end_that_is_a_root_is_given_back() {
        assert_eq!(root_between(|x| x, 0.0, 1.0, 1e-9), Some(0.0));
        assert_eq!(root_between(|x| x - 1.0, 0.0, 1.0, 1e-9), Some(1.0));
    }
}
