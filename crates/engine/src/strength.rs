//! Strength as a state that is tracked (DESIGN 5.2).
//!
//! Per client and group the state is (b, c, d): b = ln of the ten-rep-max effective load (kg),
//! c = reps per unit of ln load, d = how today differs from usual (in ln load). A working set of
//! effective load W with r reps, f in reserve, the j-th of that group on the day, observes reps to
//! failure: r + f = 10 + c (b + d - ln W) - phi j + e, with Sd e = s0 + s1 f.

use crate::catalogue::Variant;
use crate::kit::Load;
use crate::rules::RulePack;
use crate::units::Kg;
use chrono::NaiveDate;
use nalgebra::{Matrix3, RowVector3, Vector3};
use serde::Serialize;

/// Least effective load, in kg: it is always above zero, whatever a band carries.
const LEAST_EFFECTIVE_KG: f64 = 1.0;

/// Constants of the filter; each has its rule, and with it its source.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Constants {
    /// Report noise at failure, reps.
    pub s0: f64,
    /// More noise per rep in reserve.
    pub s1: f64,
    /// Day-to-day SD of ln load.
    pub sigma_d: f64,
    /// Days in which early learning fades.
    pub fade_days: f64,
    /// Early variance of b per day.
    pub q0: f64,
    /// Late variance of b per day.
    pub q_inf: f64,
    /// Variance of c per day.
    pub q_c: f64,
    /// SD of the prior of c.
    pub c_sd: f64,
    /// Least c.
    pub c_min: f64,
    /// Greatest c.
    pub c_max: f64,
    /// Reps lost per earlier set of the group that day.
    pub phi: f64,
    /// SD of the prior of b.
    pub b_sd: f64,
    /// Reps by which a start load is taken to lie under the dose.
    pub start_margin: f64,
}

impl Constants {
    /// Reads them from the rule pack.
    #[must_use]
    pub fn of(rules: &RulePack) -> Self {
        let n = |rule: &str, name: &str| rules.number(rule, name);
        Self {
            s0: n("strength.report", "s0"),
            s1: n("strength.report", "s1"),
            sigma_d: n("strength.day", "sigma"),
            fade_days: n("strength.drift", "fade_days"),
            q0: n("strength.drift", "early_per_day"),
            q_inf: n("strength.drift", "late_per_day"),
            q_c: n("strength.drift", "slope_per_day"),
            c_sd: n("strength.slope", "sd"),
            c_min: n("strength.slope", "min"),
            c_max: n("strength.slope", "max"),
            phi: n("strength.fatigue", "reps_per_set"),
            b_sd: n("strength.start", "sd"),
            start_margin: n("strength.start", "margin"),
        }
    }
}

/// What the muscles move, in kg: external + share x body mass - assistance, always above zero.
///
/// `None` when nothing meaningful is moved: no load and no known share.
#[must_use]
pub fn effective_load(variant: &Variant, load: &Load, body_mass: Kg) -> Option<Kg> {
    let external = variant.external(load).0;
    let share = variant.share.as_ref().map(|s| s.share * body_mass.0);
    match share {
        None if external <= 0.0 => None,
        None => Some(Kg(external)),
        Some(body) => Some(Kg((external + body).max(LEAST_EFFECTIVE_KG))),
    }
}

/// A count of reps to failure, or a lower bound of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reach {
    /// r + f with f as stated.
    Exactly {
        /// Reps done.
        reps: f64,
        /// Reps in reserve.
        reserve: f64,
    },
    /// r + f or more ("5 or more").
    AtLeast {
        /// Reps done.
        reps: f64,
        /// The bound on the reserve.
        reserve: f64,
    },
}

impl Reach {
    /// r + f, exact or as a bound.
    #[must_use]
    pub fn total(self) -> f64 {
        match self {
            Self::Exactly { reps, reserve } | Self::AtLeast { reps, reserve } => reps + reserve,
        }
    }
}

/// The state of one group.
#[derive(Clone, Debug, PartialEq)]
pub struct Tracker {
    /// (b, c, d).
    pub mean: Vector3<f64>,
    /// Covariance.
    pub cov: Matrix3<f64>,
    /// First exposure.
    pub first: NaiveDate,
    /// Day that the state stands on.
    pub day: NaiveDate,
}

impl Tracker {
    /// The state before the first working set: `start` is the coach's start load or the first set's.
    ///
    /// `bottom` and `target` are the bottom of the rep range and the reserve aimed at.
    #[must_use]
    pub fn start(k: &Constants, prior_c: f64, start: Kg, bottom: f64, target: f64, day: NaiveDate) -> Self {
        let b = libm::log(start.0) + (bottom + target + k.start_margin - 10.0) / prior_c;
        Self {
            mean: Vector3::new(b, prior_c, 0.0),
            cov: Matrix3::from_diagonal(&Vector3::new(
                k.b_sd * k.b_sd,
                k.c_sd * k.c_sd,
                k.sigma_d * k.sigma_d,
            )),
            first: day,
            day,
        }
    }

    /// The state on a later day: b and c drift, d starts anew. The same or an earlier day changes nothing.
    #[must_use]
    pub fn on(&self, k: &Constants, day: NaiveDate) -> Self {
        let mut next = self.clone();
        if day <= self.day {
            return next;
        }
        let t1 = days(self.first, self.day);
        let t2 = days(self.first, day);
        next.cov[(0, 0)] += k.q_inf * (t2 - t1)
            + k.q0 * k.fade_days * (libm::exp(-t1 / k.fade_days) - libm::exp(-t2 / k.fade_days));
        next.cov[(1, 1)] += k.q_c * (t2 - t1);
        next.mean[2] = 0.0;
        for i in 0..3 {
            next.cov[(i, 2)] = 0.0;
            next.cov[(2, i)] = 0.0;
        }
        next.cov[(2, 2)] = k.sigma_d * k.sigma_d;
        next.day = day;
        next
    }

    /// Reps to failure at an effective load after `j` earlier sets of the group on the day.
    #[must_use]
    pub fn reps_to_failure(&self, k: &Constants, load: Kg, j: f64) -> f64 {
        10.0 + self.mean[1] * (self.mean[0] + self.mean[2] - libm::log(load.0)) - k.phi * j
    }

    fn gradient(&self, load: Kg) -> RowVector3<f64> {
        let c = self.mean[1];
        RowVector3::new(c, self.mean[0] + self.mean[2] - libm::log(load.0), c)
    }

    /// Mean and variance of the reps in reserve after `reps` at a load, `j` sets in.
    #[must_use]
    pub fn reserve(&self, k: &Constants, load: Kg, reps: f64, j: f64) -> (f64, f64) {
        let g = self.gradient(load);
        let variance = (g * self.cov * g.transpose())[(0, 0)].max(0.0);
        (self.reps_to_failure(k, load, j) - reps, variance)
    }

    /// Chance that fewer than `floor` reps are left.
    #[must_use]
    pub fn chance_below(&self, k: &Constants, load: Kg, reps: f64, j: f64, floor: f64) -> f64 {
        let (mean, variance) = self.reserve(k, load, reps, j);
        let sd = libm::sqrt(variance);
        if sd > 0.0 { normal_cdf((floor - mean) / sd) } else { f64::from(u8::from(mean < floor)) }
    }

    /// Takes in one working set on the state's day; `j` earlier sets of the group were done that day.
    pub fn observe(&mut self, k: &Constants, load: Kg, reach: Reach, j: f64) {
        let (bound, reserve) = match reach {
            Reach::Exactly { reserve, .. } => (false, reserve),
            Reach::AtLeast { reserve, .. } => (true, reserve),
        };
        let noise = k.s0 + k.s1 * reserve;
        let r = noise * noise;
        let h = self.gradient(load);
        let expected = self.reps_to_failure(k, load, j);
        let s = (h * self.cov * h.transpose())[(0, 0)] + r;
        let gain = self.cov * h.transpose() / s;
        let (innovation, left_over) = if bound {
            let sd = libm::sqrt(s);
            let alpha = (reach.total() - expected) / sd;
            let lambda = upper_hazard(alpha);
            let delta = (lambda * (lambda - alpha)).clamp(0.0, 1.0);
            (sd * lambda, s * (1.0 - delta))
        } else {
            (reach.total() - expected, 0.0)
        };
        self.mean += gain * innovation;
        // Joseph form; a bound leaves some of the innovation's variance behind.
        let keep = Matrix3::identity() - gain * h;
        self.cov = keep * self.cov * keep.transpose() + gain * gain.transpose() * (r + left_over);
        self.cov = (self.cov + self.cov.transpose()) * 0.5;
        self.keep_slope(k);
    }

    /// Keeps c in its bounds. What c gives up is handed on to b and d by their covariance with it: were
    /// they left where they are, a set far below what was expected could raise the estimate.
    fn keep_slope(&mut self, k: &Constants) {
        let kept = self.mean[1].clamp(k.c_min, k.c_max);
        let moved = kept - self.mean[1];
        let variance = self.cov[(1, 1)];
        if moved != 0.0 && variance > 0.0 {
            self.mean[0] += self.cov[(0, 1)] / variance * moved;
            self.mean[2] += self.cov[(2, 1)] / variance * moved;
        }
        self.mean[1] = kept;
    }

    /// One-rep max as (estimate, low, high) in kg of effective load; the band holds 80 %.
    #[must_use]
    pub fn one_rep_max(&self) -> (Kg, Kg, Kg) {
        self.rep_max(1.0)
    }

    /// The load of so many reps to failure on a usual day, as (estimate, low, high) in kg of effective load;
    /// the band holds 80 %.
    #[must_use]
    pub fn rep_max(&self, reps: f64) -> (Kg, Kg, Kg) {
        // The 90 % quantile of the standard normal.
        const Z90: f64 = 1.281_551_565_544_600_4;
        let c = self.mean[1];
        let fewer = 10.0 - reps;
        let g = RowVector3::new(1.0, -fewer / (c * c), 0.0);
        let sd = libm::sqrt((g * self.cov * g.transpose())[(0, 0)].max(0.0));
        let ln = self.mean[0] + fewer / c;
        (Kg(libm::exp(ln)), Kg(libm::exp(ln - Z90 * sd)), Kg(libm::exp(ln + Z90 * sd)))
    }
}

fn days(from: NaiveDate, to: NaiveDate) -> f64 {
    let days = (to - from).num_days();
    // A life has fewer than 2^31 days, so this is exact.
    f64::from(i32::try_from(days).unwrap_or(i32::MAX))
}

/// Distribution function of the standard normal.
#[must_use]
pub fn normal_cdf(x: f64) -> f64 {
    0.5 * libm::erfc(-x / std::f64::consts::SQRT_2)
}

/// Density over upper tail of the standard normal (the inverse Mills ratio).
fn upper_hazard(x: f64) -> f64 {
    // Beyond 30 the tail underflows; there Laplace's continued fraction, x + 1/(x + 2/(x + 3/(x + ...))), is exact to
    // the last digits after a few terms (Abramowitz & Stegun 26.2.14 [m]).
    if x > 30.0 {
        return (1..=20).rev().fold(x, |rest, n| x + f64::from(n) / rest);
    }
    let density = libm::exp(-0.5 * x * x) / libm::sqrt(2.0 * std::f64::consts::PI);
    density / (0.5 * libm::erfc(x / std::f64::consts::SQRT_2))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn k() -> Constants {
        Constants::of(&RulePack::built_in().unwrap())
    }

    fn day(n: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 1, 5).unwrap() + chrono::Days::new(u64::from(n))
    }

    #[test]
    fn a_start_load_is_taken_to_lie_two_reps_under_the_dose() {
        let t = Tracker::start(&k(), 38.0, Kg(20.0), 8.0, 3.0, day(0));
        let (mean, _) = t.reserve(&k(), Kg(20.0), 8.0, 0.0);
        assert!((mean - 5.0).abs() < 1e-12, "bottom of the range leaves target + 2");
    }

    #[test]
    fn the_curve_passes_the_meta_regression() {
        // Nuzzo JL et al., Sports Med 2024;54:303-321 [s]: mean reps at 90, 80, 70, 60 % of the maximum
        // are 4.94, 9.75, 14.80, 19.53; SOURCES 1 fits k = 1/38 to within about 5 %, that is half a rep in ten.
        let mut t = Tracker::start(&k(), 38.0, Kg(100.0), 8.0, 0.0, day(0));
        t.mean[0] = libm::log(100.0) - 9.0 / 38.0;
        for (share, reps) in [(0.9, 4.94), (0.8, 9.75), (0.7, 14.80), (0.6, 19.53)] {
            let ours = t.reps_to_failure(&k(), Kg(100.0 * share), 0.0);
            assert!((ours - reps).abs() < 0.06 * reps, "{share}: {ours} for {reps}");
        }
        assert!((t.one_rep_max().0.0 - 100.0).abs() < 1e-9);
    }

    #[test]
    fn a_linear_update_is_the_textbook_one() {
        // One observation, checked against the closed form of the Kalman gain worked by hand.
        let k = k();
        let mut t = Tracker::start(&k, 38.0, Kg(20.0), 8.0, 3.0, day(0));
        let before = t.clone();
        t.observe(&k, Kg(20.0), Reach::Exactly { reps: 8.0, reserve: 3.0 }, 0.0);
        let offset = (8.0 + 3.0 + 2.0 - 10.0) / 38.0;
        let s = 38.0 * 38.0 * (0.09 + 0.042 * 0.042) + offset * offset * 100.0 + 1.9 * 1.9;
        let gain_b = 0.09 * 38.0 / s;
        assert!((t.mean[0] - (before.mean[0] + gain_b * (11.0 - 13.0))).abs() < 1e-12);
        assert!((t.cov[(0, 0)] - (0.09 - gain_b * gain_b * s)).abs() < 1e-12);
    }

    #[test]
    fn five_or_more_lifts_only_what_was_thought_lower() {
        let k = k();
        let mut low = Tracker::start(&k, 38.0, Kg(20.0), 8.0, 3.0, day(0));
        let b = low.mean[0];
        low.observe(&k, Kg(20.0), Reach::AtLeast { reps: 15.0, reserve: 5.0 }, 0.0);
        assert!(low.mean[0] > b, "twenty or more where thirteen were expected");
        let mut high = Tracker::start(&k, 38.0, Kg(20.0), 8.0, 3.0, day(0));
        high.mean[0] += 1.2;
        let b = high.mean[0];
        high.observe(&k, Kg(20.0), Reach::AtLeast { reps: 8.0, reserve: 5.0 }, 0.0);
        assert!((high.mean[0] - b).abs() < 0.02, "a bound far below says almost nothing");
    }

    #[test]
    fn the_tail_joins_where_the_formula_changes() {
        // By the series of the same ratio, x + 1/x - 2/x^3 + 10/x^5 - 74/x^7 + 706/x^9 (derived [d]).
        for x in [30.0f64, 30.000_001, 45.0, 400.0] {
            let x2 = x * x;
            let series = x + (1.0 - (2.0 - (10.0 - (74.0 - 706.0 / x2) / x2) / x2) / x2) / x;
            assert!((upper_hazard(x) - series).abs() < 1e-11, "at {x}: {} for {series}", upper_hazard(x));
        }
    }

    #[test]
    fn early_days_drift_faster() {
        let k = k();
        let t = Tracker::start(&k, 38.0, Kg(20.0), 8.0, 3.0, day(0));
        let early = t.on(&k, day(7)).cov[(0, 0)] - t.cov[(0, 0)];
        let later = t.on(&k, day(77)).cov[(0, 0)] - t.on(&k, day(70)).cov[(0, 0)];
        // 7 q_inf + q0 T (1 - e^(-7/T)), by hand.
        let by_hand = 7.0 * 9.3e-5 + 3.3e-3 * 5.3 * (1.0 - libm::exp(-7.0 / 5.3));
        assert!((early - by_hand).abs() < 1e-15);
        assert!(early > 10.0 * later);
    }

    proptest! {
        #[test]
        fn the_covariance_stays_one(
            sets in proptest::collection::vec((1.0f64..200.0, 1u8..30, 0u8..6, 0u32..40), 1..40)
        ) {
            let k = k();
            let mut t = Tracker::start(&k, 38.0, Kg(20.0), 8.0, 3.0, day(0));
            let (mut on, mut today) = (0, 0);
            for (load, reps, reserve, gap) in sets {
                on += gap;
                today = if gap > 0 { 0 } else { today + 1 };
                t = t.on(&k, day(on));
                let (reps, reserve_f) = (f64::from(reps), f64::from(reserve));
                let reach = if reserve == 5 {
                    Reach::AtLeast { reps, reserve: 5.0 }
                } else {
                    Reach::Exactly { reps, reserve: reserve_f }
                };
                let j = f64::from(today);
                t.observe(&k, Kg(load), reach, j);
                prop_assert!(t.mean.iter().all(|x| x.is_finite()));
                prop_assert!(t.cov.symmetric_eigenvalues().iter().all(|&e| e > -1e-9), "{}", t.cov);
                prop_assert!((k.c_min..=k.c_max).contains(&t.mean[1]));
            }
        }
    }
}
