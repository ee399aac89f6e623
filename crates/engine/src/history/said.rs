//! What is known about the person: facts that were said, each with its record and its instant.

use crate::ids::{ConditionId, RecordId, SymptomId};
use crate::record::{Baseline, HoldAnswer, RestrictionKind, SymptomAmount};
use chrono::{DateTime, FixedOffset, NaiveDate};

/// Something said at an instant.
#[derive(Clone, Debug, PartialEq)]
pub struct Said<T> {
    /// The record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// What.
    pub what: T,
}

/// The outcome of an intake.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Intake {
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// True for somebody who has trained with weights before.
    pub trained: bool,
}

impl Intake {
    /// Usual amount of a symptom.
    #[must_use]
    pub fn baseline(&self, kind: &SymptomId) -> Option<SymptomAmount> {
        self.baselines.iter().find(|b| &b.kind == kind).map(|b| b.amount)
    }
}

/// A restriction that was set.
#[derive(Clone, Debug, PartialEq)]
pub struct Restriction {
    /// What it rules out.
    pub what: RestrictionKind,
    /// Until and with this day.
    pub until: Option<NaiveDate>,
    /// Why.
    pub note: String,
}

/// An answer to a hold.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldReply {
    /// The record that made the hold.
    pub hold: RecordId,
    /// The answer.
    pub answer: HoldAnswer,
    /// In words.
    pub note: String,
}

/// A clearance.
#[derive(Clone, Debug, PartialEq)]
pub struct Cleared {
    /// Who.
    pub who: String,
    /// When.
    pub on: NaiveDate,
    /// What was said.
    pub said: String,
}
