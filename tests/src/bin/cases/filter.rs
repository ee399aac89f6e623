//! Series of sets with the filter's numbers, for the Kalman filters of general libraries and for numerical integration.

use chrono::NaiveDate;
use newel_engine::rules::RulePack;
use newel_engine::simulate::Chance;
use newel_engine::strength::{Constants, Reach, Tracker};
use newel_engine::units::Kg;
use serde_json::{Value, json};

use crate::answer::numbers;
use crate::draw::one_of;

/// One series: in turn a linear one, where c is known and stays, and one that ends with "so many or more".
pub fn series(seed: u64, number: u64, rules: &RulePack) -> Value {
    let mut chance = Chance::of(seed, number);
    if number.is_multiple_of(2) {
        linear(&mut chance, number, rules)
    } else {
        one_sided(&mut chance, number, rules)
    }
}

/// Where a series begins.
struct Start {
    slope: f64,
    load: f64,
    bottom: f64,
    target: f64,
    day: NaiveDate,
}

fn start(chance: &mut Chance) -> Start {
    Start {
        slope: 20.0 + 60.0 * chance.unit(),
        load: 5.0 + 75.0 * chance.unit(),
        bottom: chance.between(4, 12) as f64,
        target: chance.between(0, 5) as f64,
        day: NaiveDate::from_ymd_opt(2026, 3, 2).unwrap_or_default(),
    }
}

/// With c known and fixed the filter is linear. Days are missing at random, now and then for months.
fn linear(chance: &mut Chance, number: u64, rules: &RulePack) -> Value {
    let k = Constants { c_sd: 0.0, q_c: 0.0, ..Constants::of(rules) };
    let start = start(chance);
    let mut day = start.day;
    let mut tracker = Tracker::start(&k, start.slope, Kg(start.load), start.bottom, start.target, day);
    let mut sets = Vec::new();
    for _ in 0..chance.between(3, 20) {
        tracker = tracker.on(&k, day);
        for j in 0..chance.between(1, 4) {
            let load = start.load * libm::exp(chance.normal(0.0, 0.2));
            let (reps, reserve) = (chance.between(1, 15) as f64, chance.between(0, 4) as f64);
            tracker.observe(&k, Kg(load), Reach::Exactly { reps, reserve }, j as f64);
            let since = (day - start.day).num_days();
            sets.push(json!({
                "day": since, "j": j, "load": load, "reps": reps, "reserve": reserve, "after": numbers(&tracker),
            }));
        }
        let gap = if chance.happens(0.1) { chance.between(20, 400) } else { chance.between(1, 9) };
        day += chrono::Duration::days(gap);
    }
    json!({
        "number": number, "form": "linear", "slope": start.slope, "load": start.load, "bottom": start.bottom,
        "target": start.target, "sets": sets,
    })
}

/// After some exact sets one of which a bound alone is known: near what was expected, far under it, and far over it.
fn one_sided(chance: &mut Chance, number: u64, rules: &RulePack) -> Value {
    // Without the bounds of c, which are no part of the update.
    // Where c is well known, a bound can lie tens of SDs off.
    let c_sd = *one_of(chance, &[10.0, 10.0, 0.5]);
    let k = Constants { c_sd, c_min: f64::NEG_INFINITY, c_max: f64::INFINITY, ..Constants::of(rules) };
    let start = start(chance);
    let mut tracker = Tracker::start(&k, start.slope, Kg(start.load), start.bottom, start.target, start.day);
    let sets = chance.between(0, 4);
    for j in 0..sets {
        let load = start.load * libm::exp(chance.normal(0.0, 0.1));
        let reach =
            Reach::Exactly { reps: chance.between(4, 12) as f64, reserve: chance.between(0, 4) as f64 };
        tracker.observe(&k, Kg(load), reach, j as f64);
    }
    let before = numbers(&tracker);
    let spread = *one_of(chance, &[0.1, 0.5, 2.0]);
    let load = start.load * libm::exp(chance.normal(0.0, spread));
    let (reps, reserve) = (chance.between(1, 15) as f64, chance.between(0, 5) as f64);
    tracker.observe(&k, Kg(load), Reach::AtLeast { reps, reserve }, sets as f64);
    json!({
        "number": number, "form": "one_sided", "before": before, "j": sets, "load": load, "reps": reps,
        "reserve": reserve, "after": numbers(&tracker),
    })
}
