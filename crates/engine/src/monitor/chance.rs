//! What counts can tell: the Jeffreys interval of a share, and Fisher's exact test of two shares.
//!
//! Written over `libm`, and for the test over plain arithmetic alone, since a general library takes
//! its logarithms from the platform and the engine gives the same bits everywhere.

/// Steps of the continued fraction after which it is left as it is; it needs about the square root of
/// the count, so this is never reached for what one person can log.
const MOST_STEPS: u32 = 20_000;
/// Two tables whose probabilities differ by less than this share count as equally likely. The
/// arithmetic is good to about 1e-12 for some thousands of sessions.
const TIE: f64 = 1e-9;

/// Natural logarithm of the beta function, for `a` and `b` above zero.
fn ln_beta(a: f64, b: f64) -> f64 {
    libm::lgamma(a) + libm::lgamma(b) - libm::lgamma(a + b)
}

/// The continued fraction of the incomplete beta function, by Lentz's method; it converges fast for
/// `x` below (a + 1) / (a + b + 2).
fn fraction(a: f64, b: f64, x: f64) -> f64 {
    // Keeps a division from being one by zero; far below anything that the fraction takes in.
    const TINY: f64 = 1e-300;
    let away = |v: f64| if v.abs() < TINY { TINY } else { v };
    let mut c = 1.0;
    let mut d = 1.0 / away(1.0 - (a + b) * x / (a + 1.0));
    let mut value = d;
    for step in 1..=MOST_STEPS {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / away(1.0 + even * d);
        c = away(1.0 + even / c);
        value *= d * c;
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / away(1.0 + odd * d);
        c = away(1.0 + odd / c);
        let change = d * c;
        value *= change;
        if (change - 1.0).abs() <= f64::EPSILON {
            break;
        }
    }
    value
}

/// Distribution function of Beta(a, b) at `x`, for `a` and `b` above zero.
#[must_use]
pub fn beta_cdf(a: f64, b: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    let front = libm::exp(a * libm::log(x) + b * libm::log1p(-x) - ln_beta(a, b));
    let value = if x < (a + 1.0) / (a + b + 2.0) {
        front * fraction(a, b, x) / a
    } else {
        1.0 - front * fraction(b, a, 1.0 - x) / b
    };
    value.clamp(0.0, 1.0)
}

/// The value below which Beta(a, b) has the share `p`: halved until two neighbouring numbers are left.
#[must_use]
pub fn beta_quantile(a: f64, b: f64, p: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    // From 1 down to the least number there are fewer than 1100 halvings.
    for _ in 0..1100 {
        let middle = low + (high - low) * 0.5;
        if middle <= low || middle >= high {
            break;
        }
        if beta_cdf(a, b, middle) < p {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}

/// The Jeffreys interval of a share: `x` of `n`, from the quantiles of Beta(x + 1/2, n - x + 1/2). Its
/// lower end is 0 where `x` is 0, its upper end 1 where `x` is `n`. Of nothing it is (0, 1).
#[must_use]
pub fn jeffreys(x: u32, n: u32, confidence: f64) -> (f64, f64) {
    let x = x.min(n);
    let tail = (1.0 - confidence).clamp(0.0, 1.0) * 0.5;
    let lower_end = |x: u32| {
        if x == 0 {
            return 0.0;
        }
        let (x, n) = (f64::from(x), f64::from(n));
        beta_quantile(x + 0.5, n - x + 0.5, tail)
    };
    // The upper end is the lower one of those without: the same numbers seen from the other side.
    (lower_end(x), 1.0 - lower_end(n - x))
}

/// Fisher's exact test, two-sided: how likely a table is that is no likelier than this one, with the
/// same sums. `a` of `a + b` here, `c` of `c + d` in the rest. Above 0 and at most 1.
#[must_use]
pub fn fisher_exact(a: u32, b: u32, c: u32, d: u32) -> f64 {
    let [a, b, c, d] = [a, b, c, d].map(u64::from);
    let (here, marked, all) = (a + b, a + c, a + b + c + d);
    let least = (here + marked).saturating_sub(all);
    let most = here.min(marked);
    let mode = ((here + 1) * (marked + 1) / (all + 2)).clamp(least, most);
    // Probabilities as multiples of that of the mode; from there each is the one before times a ratio.
    let ratio = |k: u64| {
        let up = (here - k) as f64 * (marked - k) as f64;
        let down = (k + 1) as f64 * ((all + k + 1) - here - marked) as f64;
        up / down
    };
    let mut above = vec![1.0];
    for k in mode..most {
        above.push(above.last().copied().unwrap_or(0.0) * ratio(k));
    }
    let mut below = vec![1.0];
    for k in (least..mode).rev() {
        below.push(below.last().copied().unwrap_or(0.0) / ratio(k));
    }
    let at = |list: &[f64], distance: u64| {
        usize::try_from(distance).ok().and_then(|i| list.get(i)).copied().unwrap_or(0.0)
    };
    let observed = if a >= mode { at(&above, a - mode) } else { at(&below, mode - a) };
    let bound = observed * (1.0 + TIE);
    let (mut sum, mut total) = (0.0, 0.0);
    // The smallest first, so that little is lost.
    for weight in below.iter().skip(1).rev().chain(above.iter().rev()) {
        total += weight;
        if *weight <= bound {
            sum += weight;
        }
    }
    // A table so far out that its probability is no number any more is still possible.
    (sum / total).clamp(f64::MIN_POSITIVE, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_beta_distribution_at_values_in_closed_form() {
        // Beta(1, 1) is uniform; Beta(1/2, 1/2) is the arcsine law, 2/pi asin(sqrt x); Beta(2, 1) is x^2 [d].
        for x in [0.001, 0.1, 0.25, 0.5, 0.9, 0.999] {
            assert!((beta_cdf(1.0, 1.0, x) - x).abs() < 1e-14, "{x}");
            let arcsine = libm::asin(libm::sqrt(x)) * 2.0 / std::f64::consts::PI;
            assert!((beta_cdf(0.5, 0.5, x) - arcsine).abs() < 1e-13, "{x}");
            assert!((beta_cdf(2.0, 1.0, x) - x * x).abs() < 1e-14, "{x}");
        }
    }

    #[test]
    fn one_of_two_in_closed_form() {
        // Beta(3/2, 3/2) has the distribution (2 t - sin(2 t) cos(2 t)) / pi with x = sin^2 t [d]: the interval's ends
        // must bring 2.5 and 97.5 %.
        let (low, high) = jeffreys(1, 2, 0.95);
        let cdf = |x: f64| {
            let t = libm::asin(libm::sqrt(x));
            (2.0 * t - libm::sin(2.0 * t) * libm::cos(2.0 * t)) / std::f64::consts::PI
        };
        assert!((cdf(low) - 0.025).abs() < 1e-13 && (cdf(high) - 0.975).abs() < 1e-13, "{low} {high}");
    }

    #[test]
    fn ends_of_the_scale_are_ends_of_the_interval() {
        assert_eq!(jeffreys(0, 10, 0.95).0, 0.0, "none of ten may be never");
        assert_eq!(jeffreys(10, 10, 0.95).1, 1.0, "ten of ten may be always");
        assert_eq!(jeffreys(0, 0, 0.95), (0.0, 1.0), "of nothing, nothing is known");
    }

    #[test]
    fn the_lady_tasting_tea() {
        // Fisher RA, The Design of Experiments, 1935 [m]: of 8 cups 4 and 4. All 70 choices are equally likely [d]: all
        // right 2/70, three of four right 34/70, half right 1.
        assert!((fisher_exact(4, 0, 0, 4) - 2.0 / 70.0).abs() < 1e-15);
        assert!((fisher_exact(3, 1, 1, 3) - 34.0 / 70.0).abs() < 1e-15);
        assert!((fisher_exact(2, 2, 2, 2) - 1.0).abs() < 1e-15);
    }

    #[test]
    fn a_table_that_is_not_symmetric() {
        // 1 of 10 here, 11 of 14 in the rest: of C(24, 12) = 2704156 ways, C(10, k) C(14, 12 - k) have k here. No likelier
        // than k = 1 are k = 0, 1, 9, 10: 91 + 3640 + 3640 + 91 = 7462 of them [d].
        assert!((fisher_exact(1, 9, 11, 3) - 7462.0 / 2_704_156.0).abs() < 1e-17);
    }

    #[test]
    fn far_out_is_still_possible() {
        assert!(fisher_exact(0, 3000, 3000, 0) > 0.0);
        assert_eq!(fisher_exact(0, 0, 0, 0), 1.0);
        assert_eq!(fisher_exact(0, 5, 0, 7), 1.0, "where nothing was marked nothing differs");
    }

    proptest! {
        #[test]
        fn an_interval_holds_its_share(n in 1u32..400, part in 0.0f64..=1.0, confidence in 0.5f64..0.999) {
            let x = (f64::from(n) * part) as u32;
            let (low, high) = jeffreys(x, n, confidence);
            let share = f64::from(x) / f64::from(n);
            prop_assert!((0.0..=1.0).contains(&low) && (0.0..=1.0).contains(&high));
            prop_assert!(low <= share && share <= high, "{low} {share} {high}");
            let (wider_low, wider_high) = jeffreys(x, n, confidence + (1.0 - confidence) * 0.5);
            prop_assert!(wider_low <= low && high <= wider_high, "surer is wider");
            let (other_low, other_high) = jeffreys(n - x, n, confidence);
            prop_assert!((other_low - (1.0 - high)).abs() < 1e-12 && (other_high - (1.0 - low)).abs() < 1e-12);
        }

        #[test]
        fn a_test_sees_the_same_from_every_side(a in 0u32..80, b in 0u32..80, c in 0u32..80, d in 0u32..80) {
            let p = fisher_exact(a, b, c, d);
            prop_assert!(p > 0.0 && p <= 1.0);
            for other in [fisher_exact(c, d, a, b), fisher_exact(b, a, d, c), fisher_exact(a, c, b, d)] {
                prop_assert!((other - p).abs() <= 1e-11 * p, "{other} for {p}");
            }
        }

        #[test]
        fn a_test_is_the_count_of_tables(a in 0u32..15, b in 0u32..15, c in 0u32..15, d in 0u32..15) {
            // In whole numbers: of all ways to choose the marked ones, those that are no likelier than this.
            let choose = |n: u32, k: u32| (0..k).fold(1u128, |c, i| c * u128::from(n - i) / u128::from(i + 1));
            let (here, rest, marked) = (a + b, c + d, a + c);
            let ways = |k: u32| choose(here, k) * choose(rest, marked - k);
            let possible = marked.saturating_sub(rest)..=here.min(marked);
            let no_likelier: u128 = possible.map(ways).filter(|w| *w <= ways(a)).sum();
            let exact = no_likelier as f64 / choose(here + rest, marked) as f64;
            let p = fisher_exact(a, b, c, d);
            prop_assert!((p - exact).abs() <= 1e-12 * exact, "{p} for {exact}");
        }
    }
}
