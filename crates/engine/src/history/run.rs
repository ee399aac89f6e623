//! One run of a session: what was proposed, done and left out, what was marked, how it ended.

use super::Said;
use crate::ids::{LadderId, PlanSessionId, ProgrammeId, RecordId, RunId, SlotId, VariantId};
use crate::proposal::{Prescription, SessionProposal};
use crate::record::{NextDay, Readiness, SetDone, SkipWhy, Symptom, TodayThing};
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::sync::Arc;

/// A set that stands.
#[derive(Clone, Debug, PartialEq)]
pub struct SetEntry {
    /// Its record.
    pub record: RecordId,
    /// When it was logged.
    pub at: DateTime<FixedOffset>,
    /// What was done.
    pub set: SetDone,
    /// True if it was corrected.
    pub corrected: bool,
}

/// A symptom mark that stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// Its record.
    pub record: RecordId,
    /// When it was tapped.
    pub at: DateTime<FixedOffset>,
    /// The slot.
    pub slot: Option<SlotId>,
    /// The ladder.
    pub ladder: Option<LadderId>,
    /// The variant.
    pub variant: Option<VariantId>,
    /// The round, from 0.
    pub round: Option<u8>,
    /// True if marked at rest.
    pub at_rest: bool,
    /// What is known of it, each since when it was said; the rivals if two devices described it.
    pub symptoms: Vec<Said<Symptom>>,
    /// What it said when its session was ended; a red flag among these stands.
    pub confirmed: Vec<Said<Symptom>>,
    /// True if it was taken back after its session had ended; only a red flag stands then.
    pub taken_back: bool,
}

/// What she said before a session.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckIn {
    /// Its record.
    pub record: RecordId,
    /// Readiness.
    pub readiness: Readiness,
    /// Symptoms since last time, each since when it was said.
    pub symptoms: Vec<Said<Symptom>>,
    /// What it said when its session was ended; a red flag among these stands.
    pub confirmed: Vec<Said<Symptom>>,
    /// What else there is today.
    pub today: Vec<TodayThing>,
}

/// The end of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct Ended {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Session effort, CR10.
    pub effort: Option<u8>,
    /// Minutes.
    pub minutes: Option<u16>,
    /// Note.
    pub note: Option<String>,
}

/// An answer to the next-day question.
#[derive(Clone, Debug, PartialEq)]
pub struct NextDayEntry {
    /// Its record.
    pub record: RecordId,
    /// When it was given.
    pub at: DateTime<FixedOffset>,
    /// How it went.
    pub answer: NextDay,
    /// What was still there or new, each since when it was said.
    pub symptoms: Vec<Said<Symptom>>,
}

/// A set that was left out.
#[derive(Clone, Debug, PartialEq)]
pub struct Skip {
    /// Its record.
    pub record: RecordId,
    /// The slot.
    pub slot: SlotId,
    /// The round, from 0.
    pub round: u8,
    /// Why.
    pub why: SkipWhy,
}

/// One run of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Id.
    pub id: RunId,
    /// When its first record was written.
    pub started: DateTime<FixedOffset>,
    /// Its local day.
    pub day: NaiveDate,
    /// Programme, revision and planned session; `None` if it never got beyond the check-in.
    pub planned: Option<(ProgrammeId, u32, PlanSessionId)>,
    /// Check-in.
    pub check_in: Option<CheckIn>,
    /// What was proposed.
    pub shown: Option<Arc<SessionProposal>>,
    /// Sets in order of logging.
    pub sets: Vec<SetEntry>,
    /// Sets left out.
    pub skips: Vec<Skip>,
    /// Options she chose, in order.
    pub chosen: Vec<(SlotId, VariantId)>,
    /// Marks in order.
    pub marks: Vec<Mark>,
    /// Its end.
    pub ended: Option<Ended>,
    /// The next day.
    pub next_day: Option<NextDayEntry>,
    /// What answers of the next day said when they had stood for a day; a red flag among these stands.
    pub next_day_confirmed: Vec<Said<Symptom>>,
    /// Body mass as last recorded before it.
    pub body_mass: Option<Kg>,
}

impl Run {
    /// What was proposed for a slot.
    #[must_use]
    pub fn prescription(&self, slot: &SlotId) -> Option<&Prescription> {
        use crate::proposal::Outcome;
        self.shown.as_ref()?.slots.iter().find(|p| &p.slot == slot).and_then(|p| match &p.outcome {
            Outcome::Train(prescription) => Some(prescription),
            Outcome::Rest => None,
        })
    }
}
