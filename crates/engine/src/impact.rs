//! Checks before impact: what is tried, without a sign, before feet leave the floor again after a birth or a loss.

use crate::history::{History, Said};
use crate::ids::CheckId;
use crate::record::CheckOutcome;
use crate::rules::RulePack;
use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::Serialize;
use ts_rs::TS;

/// How one check stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct CheckStanding {
    /// Which.
    pub check: CheckId,
    /// True when it is asked for a landing on one leg alone.
    pub lands: bool,
    /// How it went on the last day that it was tried; `None` if it was not. Of two accounts of one day the stricter.
    pub outcome: Option<CheckOutcome>,
    /// That day.
    pub on: Option<NaiveDate>,
}

impl CheckStanding {
    /// True if it was done in full without a sign.
    #[must_use]
    pub fn is_clear(&self) -> bool {
        self.outcome == Some(CheckOutcome::Clear)
    }

    /// True if a sign came.
    #[must_use]
    pub fn brought_a_sign(&self) -> bool {
        self.outcome == Some(CheckOutcome::Sign)
    }
}

/// How every check of the pack stands on a day, from what was tried since a birth or a loss and recorded up to `until`
/// (all if `None`).
#[must_use]
pub fn standing(
    history: &History,
    rules: &RulePack,
    since: NaiveDate,
    day: NaiveDate,
    until: Option<DateTime<FixedOffset>>,
) -> Vec<CheckStanding> {
    let told: Vec<&Said<_>> = history
        .checked
        .iter()
        .filter(|c| until.is_none_or(|u| c.at <= u) && c.what.on >= since && c.what.on <= day)
        .collect();
    let outcomes = |check: &CheckId| {
        told.iter()
            .flat_map(|c| c.what.results.iter().map(|r| (c.what.on, r)))
            .filter(|(_, r)| r.check == *check)
            .map(|(on, r)| (on, r.outcome))
            .max()
    };
    let stands = |check: &crate::rules::ReadinessCheck| {
        let last = outcomes(&check.id);
        CheckStanding {
            check: check.id.clone(),
            lands: check.lands,
            outcome: last.map(|(_, outcome)| outcome),
            on: last.map(|(on, _)| on),
        }
    };
    rules.checks().iter().map(stands).collect()
}
