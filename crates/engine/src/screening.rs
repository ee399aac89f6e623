//! When screening is due again: at set points of the stage, after a sign, and when it has grown old.

use crate::proposal::Bench;
use crate::stage::{Stage, TERM_DAYS};
use chrono::{NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Why screening is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(tag = "why", content = "number", rename_all = "snake_case")]
#[ts(export)]
pub enum ScreenWhy {
    /// There has been none.
    Never,
    /// A trimester has begun.
    Trimester(u8),
    /// There was a birth.
    Birth,
    /// So many weeks have passed since the birth.
    WeeksAfter(u32),
    /// There was a loss.
    Loss,
    /// A sign stopped training, or a hold was made.
    Sign,
    /// The last one is long ago.
    Stale,
}

/// A screening that is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct ScreenDue {
    /// Why.
    pub why: ScreenWhy,
    /// Since when; `None` if there has been none.
    pub since: Option<NaiveDate>,
}

/// The screenings that are due on the day of a bench, the latest set point first; empty if none is. Nothing is closed by
/// it: the coach and the client are told.
#[must_use]
pub fn due(bench: &Bench<'_>) -> Vec<ScreenDue> {
    let (history, day) = (bench.inputs.history, bench.inputs.day);
    let Some(last) = history.intakes_said.iter().map(|i| i.at).max() else {
        return vec![ScreenDue { why: ScreenWhy::Never, since: None }];
    };
    let weeks = |name: &str| TimeDelta::weeks(bench.inputs.rules.number("screen.again", name) as i64);
    let mut points: Vec<(NaiveDate, ScreenWhy)> = Vec::new();
    match history.stage() {
        Some(stage @ Stage::Pregnant { .. }) => {
            if let Some((due, _)) = stage.due() {
                let begun = due.checked_sub_signed(TimeDelta::days(TERM_DAYS));
                let on = |name: &str| begun.and_then(|b| b.checked_add_signed(weeks(name)));
                points.extend(on("trimester_2").map(|on| (on, ScreenWhy::Trimester(2))));
                points.extend(on("trimester_3").map(|on| (on, ScreenWhy::Trimester(3))));
            }
        }
        Some(Stage::Postpartum { birth, .. }) => {
            points.push((*birth, ScreenWhy::Birth));
            for name in ["after_birth_1", "after_birth_2"] {
                let number = bench.inputs.rules.number("screen.again", name) as u32;
                points.extend(
                    birth.checked_add_signed(weeks(name)).map(|on| (on, ScreenWhy::WeeksAfter(number))),
                );
            }
        }
        Some(Stage::AfterLoss { on }) => points.push((*on, ScreenWhy::Loss)),
        Some(Stage::Neither) | None => {}
    }
    points.push((last.date_naive() + weeks("stale_weeks"), ScreenWhy::Stale));
    points.retain(|(on, _)| last.date_naive() < *on && *on <= day);
    let signs = bench.state.reds.iter().map(|r| r.at).chain(bench.state.holds.iter().map(|h| h.at));
    if let Some(sign) = signs.filter(|at| *at > last).max() {
        points.push((sign.date_naive(), ScreenWhy::Sign));
    }
    points.sort_by_key(|(on, _)| std::cmp::Reverse(*on));
    points.into_iter().map(|(on, why)| ScreenDue { why, since: Some(on) }).collect()
}
