//! What symptoms leave behind: holds, red flags, and what marks do to a session.

use super::Recent;
use crate::ids::{LadderId, RecordId, RunId, SymptomId};
use crate::record::HoldAnswer;
use crate::rules::{Scope, Urgency};
use crate::symptom::Verdict;
use chrono::{DateTime, FixedOffset};
use std::collections::BTreeMap;

/// A hold.
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// The record that made it.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The symptom.
    pub symptom: SymptomId,
    /// The ladder, if it closes one alone.
    pub ladder: Option<LadderId>,
    /// Scope.
    pub scope: Scope,
    /// True when it came from a drop at the lowest level: a restart lighter fits.
    pub lowest: bool,
    /// The answer, if one was given.
    pub answer: Option<HoldAnswer>,
}

impl Hold {
    /// True while its scope rests.
    #[must_use]
    pub fn rests(&self) -> bool {
        matches!(self.answer, None | Some(HoldAnswer::KeepResting))
    }
}

/// A red flag.
#[derive(Clone, Debug, PartialEq)]
pub struct Red {
    /// The record that made it.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The run.
    pub run: RunId,
    /// The symptom.
    pub symptom: SymptomId,
    /// How urgent.
    pub urgency: Urgency,
    /// True once a clearance was recorded after it.
    pub cleared: bool,
}

/// What marks do to one ladder in a session.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderEffect {
    /// The mark that did it.
    pub by: RecordId,
    /// The symptom.
    pub symptom: SymptomId,
    /// Level of the first drop.
    pub from: Option<u8>,
    /// Level to use for the rest of today.
    pub down_to: Option<u8>,
    /// The ladder ends for today.
    pub ended: bool,
    /// It rests until the coach has answered.
    pub held: bool,
    /// Breath, range or position changes.
    pub cue: bool,
    /// Marks of drop or stricter so far.
    pub drops: u8,
    /// Kinds marked so far, with what they did.
    pub seen: BTreeMap<SymptomId, Recent>,
}

/// What marks and check-in do to a session.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Effects {
    /// By ladder.
    pub ladders: BTreeMap<LadderId, LadderEffect>,
    /// The rest of the session without load, lying or seated.
    pub unloaded: Option<RecordId>,
    /// A hold on the lower body made today.
    pub lower: Option<RecordId>,
    /// A hold on everything made today.
    pub all: Option<RecordId>,
    /// A red flag of today.
    pub red: Option<RecordId>,
    /// Verdicts by mark.
    pub verdicts: BTreeMap<RecordId, Verdict>,
    /// Pelvic-floor marks of drop or stricter.
    pub pelvic_floor: u8,
}
