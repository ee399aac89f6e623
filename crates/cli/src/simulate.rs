//! `simulate`.

use crate::{End, say};
use newel_app::AppError;
use newel_app::simulate::{Simulation, draw_to, simulate as run};
use newel_engine::simulate::{Estimate, Report, scenarios};
use std::path::Path;

/// Names of all scenarios.
pub(crate) fn names() -> Vec<&'static str> {
    scenarios().into_iter().map(|s| s.name).collect()
}

/// Reads `load.target:alpha=0.1`.
pub(crate) fn number(text: &str) -> Result<(String, String, f64), String> {
    let read = || {
        let (name, value) = text.split_once('=')?;
        let (rule, name) = name.rsplit_once(':')?;
        Some((rule.to_owned(), name.to_owned(), value.parse::<f64>().ok().filter(|v| v.is_finite())?))
    };
    read().ok_or_else(|| "write it as RULE:NUMBER=VALUE, for example load.target:alpha=0.1".to_owned())
}

pub(crate) fn simulate(asked: &Simulation, draw: Option<&Path>, json: bool) -> Result<End, AppError> {
    let reports = run(asked)?;
    if let Some((path, report)) = draw.zip(reports.first()) {
        draw_to(path, report)?;
    }
    if json {
        say::json(&serde_json::json!({ "try": asked.try_numbers, "reports": reports }))?;
        return Ok(End::Sound);
    }
    for report in &reports {
        tell(report);
    }
    Ok(End::Sound)
}

fn tell(r: &Report) {
    let about = scenarios().into_iter().find(|s| s.name == r.scenario).map_or("", |s| s.about);
    say::line(&format!("{}: {about}", r.scenario));
    say::line(&format!(
        "  {} clients, {} weeks, seed {}: {} sessions, {} sets",
        r.clients, r.weeks, r.seed, r.sessions, r.sets
    ));
    let line = |name: &str, e: Option<Estimate>, times: f64, unit: &str| {
        let said = e.map_or_else(
            || "nothing to measure".to_owned(),
            |e| format!("{:.2} ({:.2} to {:.2}){unit}", e.value * times, e.low * times, e.high * times),
        );
        say::line(&format!("  {name:<48} {said}"));
    };
    line("distance of true reps in reserve from the aim", r.distance, 1.0, "");
    line("the oracle's", r.oracle_distance, 1.0, "");
    line("sets she could not finish", r.failed, 100.0, " %");
    line("sets that left less than one rep", r.below_one, 100.0, " %");
    let reached = r.reached.map_or_else(
        || "most never got there".to_owned(),
        |x| {
            let p90 = x.p90.map_or_else(|| "not in nine of ten".to_owned(), |n| n.to_string());
            format!(
                "{} ({} to {}), nine in ten: {p90}, never: {}",
                x.median, x.median_low, x.median_high, x.never
            )
        },
    );
    say::line(&format!("  {:<48} {reached}", "sessions until the load is found, median"));
    say::line(&format!(
        "  broken: step {} of {}, level {} of {}, red {} of {}, symptoms late {} of {}",
        r.step_breaches,
        r.loads,
        r.level_breaches,
        r.levels,
        r.red_breaches,
        r.red_flags,
        r.drops_late,
        r.drops
    ));
    for note in &r.notes {
        say::line(&format!("    {note}"));
    }
}
