//! Many synthetic clients through the real engine, side by side on the machine's cores. The outcome does not depend
//! on how many of these there are.

use crate::error::{AppError, Refusal};
use newel_engine::catalogue::Catalogue;
use newel_engine::rules::RulePack;
use newel_engine::simulate::{Outcome, Report, Scenario, Tally, scenarios, trial};
use std::path::Path;
use std::sync::Arc;

/// What is asked of the simulator.
#[derive(Clone, Debug)]
pub struct Simulation {
    /// Clients of each scenario.
    pub clients: u64,
    /// Weeks.
    pub weeks: u32,
    /// Seed.
    pub seed: u64,
    /// One scenario by name, or all of them.
    pub scenario: Option<String>,
    /// Numbers of rules to try in place of the pack's: rule, number, value.
    pub try_numbers: Vec<(String, String, f64)>,
}

/// Runs it; one report for each scenario.
///
/// # Errors
/// When there is no such scenario or no such number.
pub fn simulate(asked: &Simulation) -> Result<Vec<Report>, AppError> {
    let catalogue = Catalogue::built_in().map_err(|_| AppError::Internal)?;
    let mut rules = RulePack::built_in().map_err(|_| AppError::Internal)?;
    for (rule, name, value) in &asked.try_numbers {
        rules = rules.with_number(rule, name, *value).ok_or(Refusal::NoSuchThing)?;
    }
    let (catalogue, rules) = (Arc::new(catalogue), Arc::new(rules));
    let wanted: Vec<Scenario> = scenarios()
        .into_iter()
        .filter(|s| asked.scenario.as_deref().is_none_or(|name| name == s.name))
        .collect();
    if wanted.is_empty() {
        return Err(Refusal::NoSuchThing.into());
    }
    wanted.iter().map(|scenario| one(scenario, &catalogue, &rules, asked)).collect()
}

fn one(
    scenario: &Scenario,
    catalogue: &Arc<Catalogue>,
    rules: &Arc<RulePack>,
    asked: &Simulation,
) -> Result<Report, AppError> {
    let threads = std::thread::available_parallelism().map_or(1, |n| n.get() as u64);
    let share = |thread: u64| -> Vec<(u64, Outcome)> {
        (thread..asked.clients)
            .step_by(usize::try_from(threads).unwrap_or(1))
            .map(|number| (number, trial(scenario, catalogue, rules, (asked.seed, number), asked.weeks)))
            .collect()
    };
    let mut all: Vec<(u64, Outcome)> = std::thread::scope(|scope| {
        let running: Vec<_> = (0..threads).map(|thread| scope.spawn(move || share(thread))).collect();
        running.into_iter().map(|t| t.join().map_err(|_| AppError::Internal)).collect::<Result<Vec<_>, _>>()
    })?
    .into_iter()
    .flatten()
    .collect();
    all.sort_by_key(|(number, _)| *number);
    let outcomes = all.into_iter().map(|(_, outcome)| outcome).collect();
    Ok(Tally::of(outcomes).report(scenario.name, asked.weeks, asked.seed))
}

/// Writes [`figure`] to a file.
///
/// # Errors
/// When it cannot be written.
pub fn draw_to(path: &Path, report: &Report) -> Result<(), AppError> {
    Ok(newel_exchange::write_whole(path, figure(report).as_bytes())?)
}

/// How a scenario's load settles, as SVG: reps in reserve on a usual day less the aim, session by session.
#[must_use]
pub fn figure(report: &Report) -> String {
    const WIDTH: f64 = 720.0;
    const HEIGHT: f64 = 360.0;
    const LEFT: f64 = 64.0;
    const RIGHT: f64 = 16.0;
    const TOP: f64 = 48.0;
    const FOOT: f64 = 48.0;
    let rows = &report.settling;
    let ends = rows.iter().flat_map(|r| [r.p10, r.p90]).filter(|v| v.is_finite());
    let most = ends.fold(2.0_f64, |m, v| m.max(v.abs())).ceil();
    let last = rows.len().max(2) as f64;
    let x = |session: u32| LEFT + (f64::from(session) - 1.0) / (last - 1.0) * (WIDTH - LEFT - RIGHT);
    let y = |reps: f64| TOP + (most - reps) / (2.0 * most) * (HEIGHT - TOP - FOOT);
    let line = |value: &dyn Fn(&newel_engine::simulate::Settling) -> f64| {
        let points: Vec<String> =
            rows.iter().map(|r| format!("{:.1},{:.1}", x(r.session), y(value(r)))).collect();
        points.join(" ")
    };
    let back: Vec<String> =
        rows.iter().rev().map(|r| format!("{:.1},{:.1}", x(r.session), y(r.p10))).collect();
    let band = format!("{} {}", line(&|r| r.p90), back.join(" "));
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {HEIGHT}\" role=\"img\" font-family=\"system-ui, sans-serif\" font-size=\"14\" fill=\"#1E2A2E\">\n<title>How the load settles: scenario {}, {} clients, seed {}</title>\n<rect width=\"{WIDTH}\" height=\"{HEIGHT}\" fill=\"#F6F0E4\"/>\n<text x=\"{LEFT}\" y=\"24\" font-size=\"16\">Reps in reserve on a usual day, less the aim</text>\n",
        report.scenario, report.clients, report.seed
    );
    let step = if most > 8.0 { 4 } else { 2 };
    let mut tick = -(most as i32) / step * step;
    while f64::from(tick) <= most {
        let at = y(f64::from(tick));
        svg += &format!(
            "<line x1=\"{LEFT}\" x2=\"{:.1}\" y1=\"{at:.1}\" y2=\"{at:.1}\" stroke=\"#1E2A2E\" stroke-opacity=\"{}\"/><text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{}</text>\n",
            WIDTH - RIGHT,
            if tick == 0 { "0.7" } else { "0.15" },
            LEFT - 8.0,
            at + 5.0,
            if tick > 0 { format!("+{tick}") } else { tick.to_string().replace('-', "\u{2212}") }
        );
        tick += step;
    }
    for row in rows.iter().filter(|r| r.session == 1 || r.session % 6 == 0) {
        svg += &format!(
            "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{}</text>\n",
            x(row.session),
            HEIGHT - FOOT + 20.0,
            row.session
        );
    }
    svg += &format!(
        "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"middle\">session</text>\n<polygon points=\"{band}\" fill=\"#1F4F46\" fill-opacity=\"0.18\"/>\n<polyline points=\"{}\" fill=\"none\" stroke=\"#1F4F46\" stroke-width=\"3\"/>\n<polyline points=\"{}\" fill=\"none\" stroke=\"#8A5A10\" stroke-width=\"2\" stroke-dasharray=\"6 4\"/>\n",
        LEFT + (WIDTH - LEFT - RIGHT) / 2.0,
        HEIGHT - 8.0,
        line(&|r| r.p50),
        line(&|r| r.oracle)
    );
    svg += &format!(
        "<text x=\"{LEFT}\" y=\"{:.1}\" fill=\"#1F4F46\">line: median; band: eight clients in ten</text><text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\" fill=\"#8A5A10\">dashed: an oracle</text>\n</svg>\n",
        TOP - 8.0,
        WIDTH - RIGHT,
        TOP - 8.0
    );
    svg
}
