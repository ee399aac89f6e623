//! What symptoms leave behind: holds, red flags, and what marks do to a session.

use super::Recent;
use crate::catalogue::Region;
use crate::ids::{LadderId, RecordId, RunId, SymptomId};
use crate::record::HoldAnswer;
use crate::rules::{Scope, Urgency};
use crate::symptom::Verdict;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeMap;

/// A hold.
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// The record that made it.
    pub record: RecordId,
    /// Since when it was said; that a sign was named later than its record was written counts.
    pub at: DateTime<FixedOffset>,
    /// The symptom.
    pub symptom: SymptomId,
    /// The ladder, if it closes one alone.
    pub ladder: Option<LadderId>,
    /// Scope.
    pub scope: Scope,
    /// The coach's answer, if one was given.
    pub answer: Option<HoldAnswer>,
    /// True while a clearance of after it holds.
    pub cleared: bool,
    /// True once a clearance has opened it: what rested goes on a level lower, once.
    pub opened: bool,
}

impl Hold {
    /// Answers that fit it: a restart is of a ladder.
    #[must_use]
    pub fn answers(&self) -> Vec<HoldAnswer> {
        let restart = self.ladder.is_some().then_some(HoldAnswer::RestartLighter);
        [Some(HoldAnswer::GoOn), restart, Some(HoldAnswer::KeepResting)].into_iter().flatten().collect()
    }

    /// True while its scope rests.
    #[must_use]
    pub fn rests(&self) -> bool {
        match self.answer {
            None => !self.cleared,
            Some(HoldAnswer::KeepResting) => true,
            Some(HoldAnswer::GoOn | HoldAnswer::RestartLighter) => false,
        }
    }
}

/// True if what closes `scope` closes a ladder; `own` is the ladder that it names, if it closes one alone.
pub(super) fn closes(scope: Scope, own: Option<&LadderId>, ladder: &LadderId, region: Region) -> bool {
    match scope {
        Scope::All => true,
        Scope::LowerBody => region == Region::Lower,
        Scope::Ladder => own == Some(ladder),
    }
}

/// A red flag.
#[derive(Clone, Debug, PartialEq)]
pub struct Red {
    /// The record that made it.
    pub record: RecordId,
    /// Since when it was said; that a sign was named later than its record was written counts.
    pub at: DateTime<FixedOffset>,
    /// The run.
    pub run: RunId,
    /// The symptom.
    pub symptom: SymptomId,
    /// How urgent.
    pub urgency: Urgency,
    /// True while a clearance of after it holds.
    pub cleared: bool,
    /// True once a clearance has opened it: what rested goes on a level lower, once.
    pub opened: bool,
}

/// What marks do to one ladder in a session.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderEffect {
    /// The mark that did it.
    pub by: RecordId,
    /// Since when that was said, the latest of them.
    pub at: DateTime<FixedOffset>,
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
    /// Local day of the session.
    pub day: NaiveDate,
    /// By ladder.
    pub ladders: BTreeMap<LadderId, LadderEffect>,
    /// It was begun when the rest of the day went without load already.
    pub began_unloaded: bool,
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

/// What other sessions of a day leave for the rest of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EarlierToday {
    /// The rest of the day goes without load, lying or seated.
    pub unloaded: bool,
    /// Pelvic-floor marks of drop or stricter.
    pub pelvic_floor: u8,
    /// Ladders that were marked.
    pub ladders: BTreeMap<LadderId, LadderToday>,
}

/// What other sessions of a day did to a ladder.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderToday {
    /// Marks of drop or stricter.
    pub drops: u8,
    /// The symptom that ended the ladder for the day, if one did.
    pub ended: Option<SymptomId>,
}

/// A symptom that belonged to no ladder, when it was said last.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AtLarge {
    /// Sessions that she had trained until then.
    pub trained: u32,
    /// Its greatest amount, on the scale of its kind.
    pub amount: u8,
    /// Sessions running, up to that one, after which it dropped or held.
    pub running: u8,
    /// The same before it.
    pub before: u8,
}
