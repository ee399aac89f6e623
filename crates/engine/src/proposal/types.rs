//! The shapes of a proposal.

use crate::ids::{LadderId, PlanSessionId, ProgrammeId, RecordId, SlotId, VariantId};
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::Reasons;
use crate::record::Purpose;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The next session, slot by slot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct SessionProposal {
    /// The local day.
    pub on: NaiveDate,
    /// Programme.
    pub programme: ProgrammeId,
    /// Its revision.
    pub revision: u32,
    /// The planned session.
    pub session: PlanSessionId,
    /// Whether she trains at all.
    pub gate: Gate,
    /// One proposal for each slot in order; empty when the gate is closed.
    pub slots: Vec<Proposal>,
}

/// Whether she trains at all.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "gate", rename_all = "snake_case")]
#[ts(export)]
pub enum Gate {
    /// She does.
    Open,
    /// Not before it is answered or cleared.
    Closed {
        /// The record that closed it, if there is one.
        by: Option<RecordId>,
        /// Why.
        reasons: Reasons,
    },
}

/// The proposal for a slot. It cannot be built without a reason.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Proposal {
    /// The slot.
    pub slot: SlotId,
    /// Its ladder.
    pub ladder: LadderId,
    /// What to do.
    pub outcome: Outcome,
    /// Why.
    pub reasons: Reasons,
}

/// What to do in a slot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "do", rename_all = "snake_case")]
#[ts(export)]
pub enum Outcome {
    /// Train.
    Train(Prescription),
    /// The ladder rests.
    Rest,
}

/// Reps or seconds to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "by", content = "count", rename_all = "snake_case")]
#[ts(export)]
pub enum Target {
    /// Reps.
    Reps(u16),
    /// Seconds.
    Seconds(u16),
}

impl Target {
    /// The number, whatever it counts.
    #[must_use]
    pub fn count(self) -> u16 {
        match self {
            Self::Reps(n) | Self::Seconds(n) => n,
        }
    }
}

/// Variant, load, reps and sets.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Prescription {
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels of the ladder in all.
    pub levels: u8,
    /// Variant.
    pub variant: VariantId,
    /// What to hold.
    pub load: Load,
    /// Sets.
    pub sets: u8,
    /// Reps or seconds of each set.
    pub target: Target,
    /// The range of the dose.
    pub range: Amount,
    /// Reps in reserve aimed at; `None` where effort is not asked (timed sets).
    pub reserve: Option<f64>,
    /// Reps in reserve never to go below.
    pub floor: f64,
    /// What the sets are for.
    pub purpose: Purpose,
    /// Other options that are allowed today, easiest first.
    pub options: Vec<Offer>,
    /// True when breath, range or position is to change after a symptom.
    pub cue: bool,
}

/// Another option that is allowed today.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Offer {
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Variant.
    pub variant: VariantId,
    /// What to hold.
    pub load: Load,
    /// Reps or seconds.
    pub target: Target,
}
