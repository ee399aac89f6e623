//! What is known about the person: facts that were said, each with its record and its instant.

use crate::ids::{ConditionId, DeviceId, RecordId, SymptomId};
use crate::record::{Baseline, CheckResult, ClearedThing, HoldAnswer, RestrictionKind, SymptomAmount, Voice};
use crate::stage::Stage;
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

/// A stage as some device recorded it.
#[derive(Clone, Debug, PartialEq)]
pub struct StageSaid {
    /// The record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The device that wrote it.
    pub device: DeviceId,
    /// What it says.
    pub what: Stage,
    /// True where another voice knows of what came after it, or is stricter: it stands beside, and moves nothing.
    pub aside: bool,
}

/// An intake as one voice gave it.
#[derive(Clone, Debug, PartialEq)]
pub struct IntakeSaid {
    /// The record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Who filled it in.
    pub by: Voice,
    /// What was said.
    pub what: Intake,
    /// In words: what else there is to know.
    pub note: Option<String>,
    /// Intakes of the client's that were talked over and stand no longer; only the coach's say is heard.
    pub instead_of: Vec<RecordId>,
}

/// The outcome of an intake: of all that stands, what either voice named.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Intake {
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// True for somebody who has trained with weights before.
    pub trained: bool,
    /// True for somebody who has never trained with weights.
    pub never: bool,
}

impl Intake {
    /// What holds of two: every condition that either names, a usual symptom that both name at the lesser amount, and
    /// trained only where both say so, and never trained where either does. The stricter of each.
    #[must_use]
    pub fn stricter(&self, other: &Self) -> Self {
        let mut conditions = self.conditions.clone();
        conditions.extend(other.conditions.iter().filter(|c| !self.conditions.contains(c)).cloned());
        let baselines = self
            .baselines
            .iter()
            .filter_map(|b| {
                let theirs = other.baseline(&b.kind)?;
                let less = if rank(theirs) < rank(b.amount) { theirs } else { b.amount };
                Some(Baseline { kind: b.kind.clone(), amount: less })
            })
            .collect();
        let never = self.never || other.never;
        Self { conditions, baselines, trained: self.trained && other.trained && !never, never }
    }

    /// Usual amount of a symptom.
    #[must_use]
    pub fn baseline(&self, kind: &SymptomId) -> Option<SymptomAmount> {
        self.baselines.iter().find(|b| &b.kind == kind).map(|b| b.amount)
    }
}

/// Orders amounts; pain and words never meet on one kind.
fn rank(amount: SymptomAmount) -> u8 {
    match amount {
        SymptomAmount::Little => 1,
        SymptomAmount::Clearly => 2,
        SymptomAmount::Lot => 3,
        SymptomAmount::Pain(n) => n,
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

/// Checks before impact, as they were tried.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// The day.
    pub on: NaiveDate,
    /// Who says so.
    pub by: Voice,
    /// What was tried and how it went.
    pub results: Vec<CheckResult>,
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
    /// What it speaks of; all that waited when it was given if `None`.
    pub speaks_of: Option<Vec<ClearedThing>>,
    /// Until and with this day.
    pub until: Option<NaiveDate>,
}

impl Cleared {
    /// True on the days that it holds.
    #[must_use]
    pub fn holds_on(&self, day: NaiveDate) -> bool {
        self.on <= day && self.until.is_none_or(|until| day <= until)
    }

    /// True if it speaks of a thing.
    #[must_use]
    pub fn speaks_of(&self, thing: &ClearedThing) -> bool {
        self.speaks_of.as_ref().is_none_or(|things| things.contains(thing))
    }
}
