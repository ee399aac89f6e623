//! The tracking of strength on one-rep-max series that anybody can have: tests/data (CC0; Hammarström D et al.,
//! J Physiol 2020;598:543-565). The constants of the drift were fitted to these same series [d], so this shows that the
//! engine's drift is the one that was fitted, and on which side it errs; it is no test on people it has not seen.
//!
//! Model: ln load is a random walk seen through the day, y = b + d with d from N(0, sigma_d^2) anew at each test. The noise
//! of b between two tests is that of `Tracker::on`. b starts at the first test with the variance of a day.

use chrono::{Days, NaiveDate};
use newel_engine::rules::RulePack;
use newel_engine::strength::{Constants, Reach, Tracker};
use newel_engine::units::Kg;
use std::collections::BTreeMap;

/// The 90 % quantile of the standard normal: an 80 % band ends there.
const Z90: f64 = 1.281_551_565_544_600_4;

/// One series: (weeks since the first test, load in kg), in order.
type Series = Vec<(f64, f64)>;

fn series() -> Vec<Series> {
    let mut all: BTreeMap<(String, String, String), Series> = BTreeMap::new();
    let mut lines = include_str!("../data/strength-volume.csv").lines();
    assert_eq!(lines.next(), Some("participant,sex,leg,sets,exercise,week,load"));
    for line in lines {
        let cells: Vec<&str> = line.split(',').collect();
        let [who, _, leg, _, exercise, week, load] = cells[..] else { panic!("seven columns: {line}") };
        let key = (who.to_owned(), leg.to_owned(), exercise.to_owned());
        all.entry(key).or_default().push((week.parse().unwrap(), load.parse().unwrap()));
    }
    let mut all: Vec<Series> = all.into_values().collect();
    for one in &mut all {
        one.sort_by(|a, b| a.0.total_cmp(&b.0));
    }
    all
}

fn constants() -> Constants {
    Constants::of(&RulePack::built_in().unwrap())
}

/// The engine counts in whole days.
fn day(week: f64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 5).unwrap() + Days::new((week * 7.0).round() as u64)
}

/// One step ahead: how far ln load was from what was expected, and the SD that it was expected with.
struct Step {
    error: f64,
    sd: f64,
}

/// All steps, with a mean gain of ln load between two days since the first test.
fn steps(gain: impl Fn(f64, f64) -> f64) -> Vec<Step> {
    let k = constants();
    let mut all = Vec::new();
    for one in series() {
        let mut tracker = Tracker::start(&k, 38.0, Kg(one[0].1), 8.0, 3.0, day(0.0));
        // The first test is seen through its day, and nothing else is known of her.
        tracker.mean[0] = one[0].1.ln();
        tracker.cov[(0, 0)] = k.sigma_d * k.sigma_d;
        for pair in one.windows(2) {
            let (before, now) = (day(pair[0].0), day(pair[1].0));
            let since = |d: NaiveDate| (d - day(0.0)).num_days() as f64;
            tracker = tracker.on(&k, now);
            tracker.mean[0] += gain(since(before), since(now));
            // b and d are not correlated before the test of the day, and c is not in it.
            let s = tracker.cov[(0, 0)] + tracker.cov[(2, 2)];
            let error = pair[1].1.ln() - tracker.mean[0];
            all.push(Step { error, sd: s.sqrt() });
            let share = tracker.cov[(0, 0)] / s;
            tracker.mean[0] += share * error;
            tracker.cov[(0, 0)] *= 1.0 - share;
        }
    }
    all
}

fn share(steps: &[Step], what: impl Fn(&Step) -> bool) -> f64 {
    steps.iter().filter(|s| what(s)).count() as f64 / steps.len() as f64
}

fn rmse(errors: impl Iterator<Item = f64>) -> f64 {
    let squares: Vec<f64> = errors.map(|e| e * e).collect();
    (squares.iter().sum::<f64>() / squares.len() as f64).sqrt()
}

/// The mean gain as fitted: 0.037 e^(-t/T) + 0.0029 per day, summed up from one day to another.
fn fitted_gain(t1: f64, t2: f64) -> f64 {
    let fade = constants().fade_days;
    0.037 * fade * ((-t1 / fade).exp() - (-t2 / fade).exp()) + 0.0029 * (t2 - t1)
}

#[test]
fn the_data_are_those_of_the_note() {
    let all = series();
    assert_eq!(all.len(), 136);
    assert_eq!(all.iter().map(Vec::len).sum::<usize>(), 714);
    assert_eq!(all.iter().map(|s| s.len() - 1).sum::<usize>(), 578);
}

#[test]
fn with_the_gain_as_fitted_the_band_holds() {
    // The note [d]: 0.858 of 578 steps in the 80 % band, RMSE 0.0952. Here 0.8599 and 0.0954: the engine counts 0.3 weeks
    // as two whole days, the fit as 2.1.
    let all = steps(fitted_gain);
    let held = share(&all, |s| s.error.abs() <= Z90 * s.sd);
    let off = rmse(all.iter().map(|s| s.error));
    println!("with the gain: {held:.4} of {} steps in the band, RMSE {off:.5}", all.len());
    assert!((held - 0.858).abs() <= 0.01, "{held}");
    assert!((off - 0.0952).abs() <= 0.0005, "{off}");
}

#[test]
fn last_value_is_the_measure_to_beat() {
    // The note [d]: 0.1406.
    let errors = series()
        .into_iter()
        .flat_map(|s| s.windows(2).map(|p| p[1].1.ln() - p[0].1.ln()).collect::<Vec<_>>());
    let off = rmse(errors);
    println!("last value: RMSE {off:.5}");
    assert!((off - 0.1406).abs() <= 0.00005, "{off}");
}

#[test]
fn as_the_engine_runs_it_errs_to_the_safe_side() {
    // No mean gain is assumed. The note [d]: 0.0035 of the steps under the 10 % quantile; RMSE 0.154.
    let all = steps(|_, _| 0.0);
    let under = share(&all, |s| s.error < -Z90 * s.sd);
    let off = rmse(all.iter().map(|s| s.error));
    println!("without a gain: {under:.4} of steps under the 10 % quantile, RMSE {off:.5}");
    assert!(under <= 0.01, "too strong a body was expected in {under} of the steps");
    assert!((off - 0.154).abs() <= 0.0005, "{off}");
}

#[test]
fn singles_told_as_sets_err_to_the_safe_side_too() {
    // The whole filter: each maximum is a set of one with none in reserve. Its report has a noise of its own that a
    // measured maximum has not, and c is not known, so there is no figure to compare; only the side is checked.
    let k = constants();
    let (mut under, mut all) = (0u32, 0u32);
    for one in series() {
        // A start is taken to be two reps too light; the first single puts that right.
        let mut tracker = Tracker::start(&k, 38.0, Kg(one[0].1), 1.0, 0.0, day(0.0));
        let single = Reach::Exactly { reps: 1.0, reserve: 0.0 };
        tracker.observe(&k, Kg(one[0].1), single, 0.0);
        for (week, load) in one.into_iter().skip(1) {
            tracker = tracker.on(&k, day(week));
            all += 1;
            // A single was a maximum: fewer reps than one at it is what a load too heavy would give.
            let (mean, variance) = tracker.reserve(&k, Kg(load), 1.0, 0.0);
            under += u32::from(mean > Z90 * (variance + k.s0 * k.s0).sqrt());
            tracker.observe(&k, Kg(load), single, 0.0);
        }
    }
    println!("singles as sets: {under} of {all} steps weaker than the 10 % quantile");
    assert_eq!(all, 578);
    assert!(f64::from(under) <= 0.01 * f64::from(all), "{under} of {all}");
}
