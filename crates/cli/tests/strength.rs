//! `newel strength` from outside: what it prints is enough to work every update out again by hand.
//!
//! The files are those of demo-data, which another test holds to be what this version makes.

use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// Each client of demo-data with the number of her last plan.
const CLIENTS: [(&str, u32); 7] =
    [("amara", 2), ("freya", 2), ("hana", 2), ("josie", 2), ("lucia", 1), ("noemi", 3), ("selin", 2)];

type Vector = [f64; 3];
type Matrix = [[f64; 3]; 3];

fn demo(part: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data").join(part)
}

fn log(slug: &str) -> PathBuf {
    demo(&format!("logs/{slug}-log-2026-11-24.newel.json"))
}

fn call(command: &str, plan_of: (&str, u32), log_of: &str, more: &[&str]) -> Output {
    let plan = demo(&format!("plans/{}-plan-{}.newel.json", plan_of.0, plan_of.1));
    let mut newel = Command::new(env!("CARGO_BIN_EXE_newel"));
    newel.arg(command).arg("--plan").arg(plan).arg("--log").arg(log(log_of)).args(more);
    newel.output().expect("newel runs")
}

fn told(command: &str, client: (&str, u32), more: &[&str]) -> String {
    let output = call(command, client, client.0, more);
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("output is UTF-8")
}

fn json(client: (&str, u32)) -> Value {
    serde_json::from_str(&told("strength", client, &["--json"])).expect("JSON")
}

fn steps(json: &Value) -> &Vec<Value> {
    json["steps"].as_array().expect("steps")
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("a number: {value}"))
}

fn word(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("a word: {value}"))
}

fn near(what: &str, hand: f64, printed: &Value) {
    let printed = number(printed);
    assert!((hand - printed).abs() < 1e-9, "{what}: {hand} by hand, {printed} printed");
}

/// Days since 1 March of the year 0, by the usual count of leap years.
fn day(value: &Value) -> f64 {
    let parts: Vec<i64> = word(value).split('-').map(|p| p.parse().expect("a number")).collect();
    let (year, month) = if parts[1] > 2 { (parts[0], parts[1] - 3) } else { (parts[0] - 1, parts[1] + 9) };
    let days = 365 * year + year / 4 - year / 100 + year / 400 + (153 * month + 2) / 5 + parts[2];
    days as f64
}

/// A state worked out by hand.
#[derive(Clone)]
struct Hand {
    mean: Vector,
    cov: Matrix,
    first: f64,
    day: f64,
}

/// Density and upper tail of the standard normal at x, the tail by Simpson's rule out to where nothing is left.
fn density_and_tail(x: f64) -> (f64, f64) {
    let density = |t: f64| (-0.5 * t * t).exp() / (2.0 * std::f64::consts::PI).sqrt();
    let (strips, width) = (20_000, 14.0);
    let h = width / f64::from(strips);
    let weight = |i: i32| match i {
        0 => 1.0,
        i if i == strips => 1.0,
        i if i % 2 == 1 => 4.0,
        _ => 2.0,
    };
    let sum: f64 = (0..=strips).map(|i| weight(i) * density(x + h * f64::from(i))).sum();
    (density(x), sum * h / 3.0)
}

/// The next state by DESIGN 5.2: r + f = 10 + c (b + d - ln W) - phi j + e, Sd e = s0 + s1 f.
fn by_hand(k: &Value, before: Option<&Hand>, set: &Value) -> Hand {
    let k = |name: &str| number(&k[name]);
    let today = day(&set["day"]);
    let mut hand = match before {
        Some(before) => before.clone(),
        None => {
            let start = &set["start"];
            // c from its group's mean, b = ln W + (bottom + target + 2 - 10) / c.
            let c = number(&start["state"]["c"]);
            let under = number(&start["bottom"]) + number(&start["target"]) + k("start_margin") - 10.0;
            let mut cov = [[0.0; 3]; 3];
            for (i, sd) in [k("b_sd"), k("c_sd"), k("sigma_d")].into_iter().enumerate() {
                cov[i][i] = sd * sd;
            }
            let b = number(&start["load"]).ln() + under / c;
            near("b at the start", b, &start["state"]["b"]);
            Hand { mean: [b, c, 0.0], cov, first: today, day: today }
        }
    };
    // Between sessions b and c drift, and d starts anew.
    if today > hand.day {
        let (t1, t2, fade) = (hand.day - hand.first, today - hand.first, k("fade_days"));
        hand.cov[0][0] += k("q_inf") * (t2 - t1) + k("q0") * fade * ((-t1 / fade).exp() - (-t2 / fade).exp());
        hand.cov[1][1] += k("q_c") * (t2 - t1);
        hand.mean[2] = 0.0;
        for i in 0..3 {
            hand.cov[i][2] = 0.0;
            hand.cov[2][i] = 0.0;
        }
        hand.cov[2][2] = k("sigma_d") * k("sigma_d");
        hand.day = today;
    }
    let [b, c, d] = hand.mean;
    let above = b + d - number(&set["effective"]).ln();
    let expected = 10.0 + c * above - k("phi") * number(&set["j"]);
    let gradient = [c, above, c];
    let noise = k("s0") + k("s1") * number(&set["reserve"]);
    // P h, and the variance of the count to come.
    let ph: Vector = [0, 1, 2].map(|i| (0..3).map(|n| hand.cov[i][n] * gradient[n]).sum());
    let s = (0..3).map(|i| gradient[i] * ph[i]).sum::<f64>() + noise * noise;
    let seen = number(&set["reps"]) + number(&set["reserve"]);
    // How far the count moves, and by what share its variance shrinks: whole for a number; for a bound the mean and
    // variance of a normal cut off below.
    let (moved, shrinks) = if set["at_least"] == true {
        let alpha = (seen - expected) / s.sqrt();
        let (density, tail) = density_and_tail(alpha);
        let lambda = density / tail;
        (s.sqrt() * lambda, lambda * (lambda - alpha))
    } else {
        (seen - expected, 1.0)
    };
    for i in 0..3 {
        hand.mean[i] += ph[i] / s * moved;
        for n in 0..3 {
            hand.cov[i][n] -= ph[i] * ph[n] / s * shrinks;
        }
    }
    // c stays in its bounds; b and d go along by their covariance with it.
    let kept = hand.mean[1].clamp(k("c_min"), k("c_max"));
    let over = kept - hand.mean[1];
    hand.mean[0] += hand.cov[0][1] / hand.cov[1][1] * over;
    hand.mean[2] += hand.cov[2][1] / hand.cov[1][1] * over;
    hand.mean[1] = kept;
    hand
}

#[test]
fn every_update_can_be_worked_out_again_from_what_is_printed() {
    let (mut exact, mut bounds, mut fresh) = (0, 0, 0);
    for client in CLIENTS {
        let json = json(client);
        let mut hands: BTreeMap<String, Hand> = BTreeMap::new();
        for (n, step) in steps(&json).iter().enumerate() {
            if step["step"] == "fresh_start" {
                hands.clear();
                fresh += 1;
                continue;
            }
            let what = |name: &str| format!("{}, step {n}, {name}", client.0);
            if step["step"] == "no_evidence" {
                match hands.get(word(&step["group"])) {
                    Some(hand) => near(&what("b stays"), hand.mean[0], &step["after"]["b"]),
                    None => assert!(step["after"].is_null(), "{}", what("after")),
                }
                continue;
            }
            let body = &step["body"];
            let carried = if body.is_null() { 0.0 } else { number(&body["share"]) * number(&body["mass"]) };
            near(&what("W"), number(&step["external"]) + carried, &step["effective"]);
            let group = word(&step["group"]).to_owned();
            let before = hands.get(&group);
            assert_eq!(before.is_none(), step["start"].is_object(), "{}", what("start"));
            let hand = by_hand(&json["constants"], before, step);
            let after = &step["after"];
            for (mean, name) in hand.mean.iter().zip(["b", "c", "d"]) {
                near(&what(name), *mean, &after[name]);
            }
            for row in 0..3 {
                for column in 0..3 {
                    near(&what("covariance"), hand.cov[row][column], &after["covariance"][row][column]);
                }
            }
            let one = (hand.mean[0] + 9.0 / hand.mean[1]).exp();
            near(&what("1RM"), one, &step["one_rep_max"]["estimate"]);
            near(&what("10RM"), hand.mean[0].exp(), &step["ten_rep_max"]["estimate"]);
            // The band holds 80 %: 1.2815515655446004 is the 90 % quantile of the standard normal.
            let wide = (1.281_551_565_544_600_4 * hand.cov[0][0].sqrt()).exp();
            near(&what("10RM, low"), hand.mean[0].exp() / wide, &step["ten_rep_max"]["low"]);
            near(&what("10RM, high"), hand.mean[0].exp() * wide, &step["ten_rep_max"]["high"]);
            if step["at_least"] == true {
                bounds += 1
            } else {
                exact += 1
            }
            hands.insert(group, hand);
        }
    }
    assert!(
        exact > 100 && bounds > 100 && fresh > 0,
        "{exact} numbers, {bounds} bounds, {fresh} fresh starts"
    );
}

#[test]
fn each_step_is_a_set_of_the_log_as_it_stands() {
    let (mut sets, mut corrections) = (0, 0);
    for client in CLIENTS {
        let document: Value = serde_json::from_slice(&fs::read(log(client.0)).expect("a log")).expect("JSON");
        let lines = document["content"]["lines"].as_array().expect("lines");
        // What each record says, or what was said instead of it; the root is the record that was written first.
        let mut roots: BTreeMap<String, String> = BTreeMap::new();
        let mut said: BTreeMap<String, Value> = BTreeMap::new();
        for record in lines {
            let (id, payload) = (word(&record["id"]).to_owned(), &record["payload"]);
            let (root, says) = if payload["kind"] == "correction" {
                corrections += 1;
                (roots[word(&payload["target"])].clone(), &payload["instead"])
            } else {
                (id.clone(), payload)
            };
            roots.insert(id, root.clone());
            said.insert(root, says.clone());
        }
        let json = json(client);
        let mut j: BTreeMap<(String, String), f64> = BTreeMap::new();
        for step in steps(&json).iter().filter(|s| s["step"] == "set") {
            let set = said.get(word(&step["taken"])).expect("a record of the log");
            assert_eq!(set["kind"], "set_done");
            assert!(step["records"].as_array().expect("ids").contains(&step["taken"]));
            for part in ["variant", "run", "load"] {
                assert_eq!(set[part], step[part], "{}: {part} of {step}", client.0);
            }
            assert_eq!(number(&set["reps"]), number(&step["reps"]), "{}: {step}", client.0);
            assert_eq!(number(&set["reserve"]["reps"]), number(&step["reserve"]), "{}: {step}", client.0);
            assert_eq!(
                set["reserve"]["said"] == "at_least",
                step["at_least"] == true,
                "{}: {step}",
                client.0
            );
            sets += 1;
            let of_day = (word(&step["group"]).to_owned(), word(&step["day"]).to_owned());
            let done = j.insert(of_day, number(&step["j"]));
            assert!(done.is_none_or(|done| done < number(&step["j"])), "{}: j counts up", client.0);
        }
    }
    assert!(sets > 500 && corrections > 0, "{sets} sets, {corrections} corrections");
}

#[test]
fn the_last_states_are_those_that_are_watched() {
    for client in CLIENTS {
        let json = json(client);
        let mut last: BTreeMap<&str, &Value> = BTreeMap::new();
        for step in steps(&json) {
            match word(&step["step"]) {
                "fresh_start" => last.clear(),
                "no_evidence" => {}
                _ => drop(last.insert(word(&step["group"]), &step["one_rep_max"])),
            }
        }
        let watched = told("watch", client, &["--on", "2026-11-24", "--json"]);
        let watched: Value = serde_json::from_str(&watched).expect("JSON");
        let trends = watched["trends"].as_array().expect("trends");
        assert_eq!(trends.len(), last.len(), "{}", client.0);
        for trend in trends {
            let point = trend["points"].as_array().and_then(|p| p.last()).expect("a point");
            for end in ["estimate", "low", "high"] {
                assert_eq!(point[end], last[word(&trend["group"])][end], "{}: {trend}", client.0);
            }
        }
    }
}

#[test]
fn the_table_has_a_line_for_each_step_and_says_when_all_begins_anew() {
    for client in CLIENTS {
        let table = told("strength", client, &[]);
        let lines = table.lines().filter(|l| l.starts_with("  2026-") || l.contains("begins anew")).count();
        let json = json(client);
        let told = steps(&json).iter().filter(|s| s["step"] != "no_evidence").count();
        assert_eq!(lines, told, "{}: {table}", client.0);
        for id in ["watch-", "variant-", "{", "NaN", "inf "] {
            assert!(!table.contains(id), "{}: {id} where a word or number should be", client.0);
        }
    }
    let noemi = told("strength", ("noemi", 3), &[]);
    assert!(noemi.starts_with("Noemi Castellan, Steady floor\n"), "{noemi}");
    let birth = noemi.find("A birth on 2026-09-06: every estimate begins anew").expect("the birth is told");
    let (before, after) = noemi.split_at(birth);
    assert!(before.contains("2026-09-01*") && after.contains("2026-10-22*"), "{noemi}");
}

#[test]
fn it_refuses_what_does_not_belong_together() {
    let swapped = call("strength", ("hana", 2), "freya", &["--json"]);
    assert_eq!(swapped.status.code(), Some(1));
    let said = String::from_utf8_lossy(&swapped.stderr).into_owned();
    assert!(said.contains("app-error-plan-for-somebody-else"), "{said}");
    assert!(swapped.stdout.is_empty(), "nothing is printed");
}
