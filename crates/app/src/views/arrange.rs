//! How a coach keeps her clients in order: groups, what waits, and how the files between the two stand.

use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{LadderId, PersonId, SlotId, VariantId};
use newel_engine::kit::{Load, Thing};
use newel_engine::proposal::Target;
use newel_engine::revision::Change;
use newel_engine::screening::ScreenDue;
use newel_engine::units::Weight;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

/// A group of clients.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct GroupView {
    /// Its id.
    pub id: Uuid,
    /// Its name.
    pub name: String,
    /// Who is in it, in the coach's order, without those laid aside.
    pub members: Vec<PersonId>,
}

/// What a client owns, in short.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct KitShort {
    /// Weights that she has once.
    pub singles: u16,
    /// Weights that she has as a pair.
    pub pairs: u16,
    /// The heaviest of all of them.
    pub heaviest: Option<Weight>,
    /// True if she has a barbell.
    pub barbell: bool,
    /// Long bands.
    pub bands: u16,
    /// Other things.
    pub things: Vec<Thing>,
}

/// How far a programme has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct ProgrammeWeek {
    /// The week, from 1.
    pub week: u32,
    /// For how many weeks it was written, if that was said.
    pub weeks: Option<u8>,
    /// True when all its weeks are trained.
    pub over: bool,
}

/// How what a client was sent stands to what the coach has written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum PlanStanding {
    /// She has no programme.
    None,
    /// The programme that was given is being written and cannot be trained as it is: nothing of it goes out.
    Unfinished,
    /// A programme was given, and no plan file was written.
    NotSent,
    /// The programme was written on since, or another one was given.
    Older,
    /// What was sent is the programme as it is written.
    UpToDate,
}

/// How the files between coach and client stand.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct FilesView {
    /// The plan.
    pub plan: PlanStanding,
    /// When the last plan file was written.
    pub sent: Option<DateTime<FixedOffset>>,
    /// True once her log shows that she took that file in.
    pub arrived: bool,
    /// What the coach has recorded about her since.
    pub unsent: u32,
    /// When her log last brought something new.
    pub taken_in: Option<DateTime<FixedOffset>>,
    /// The title of the programme that the next file brings, if she trains another or none yet.
    pub brings: Option<String>,
    /// The day on which what was given begins, if one was set.
    pub begins: Option<NaiveDate>,
}

/// What waits for the coach.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct WaitsView {
    /// True while a red flag waits for a clearance.
    pub red: bool,
    /// Holds that wait for an answer.
    pub holds: u16,
    /// True when a clearance is asked for and missing.
    pub clearance: bool,
    /// Screening that is due.
    pub screen: Option<ScreenDue>,
}

impl WaitsView {
    /// True if anything waits.
    #[must_use]
    pub fn any(&self) -> bool {
        self.red || self.holds > 0 || self.clearance || self.screen.is_some()
    }
}

/// To whom a programme is given, and when it begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, TS)]
#[ts(export)]
pub struct GiveTo {
    /// Who.
    pub person: PersonId,
    /// The day on which it begins; at once if absent or past.
    pub begins: Option<NaiveDate>,
}

/// What the next plan file of a client brings her.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct RevisionView {
    /// Who.
    pub person: PersonId,
    /// Her name.
    pub name: String,
    /// How what she was sent stands to what is written.
    pub plan: PlanStanding,
    /// Title of the programme that goes out; `None` if nothing can.
    pub title: Option<String>,
    /// The day on which it begins, if one was set and lies ahead.
    pub begins: Option<NaiveDate>,
    /// What it changes for her; empty if she has had none, or has the same.
    pub changes: Vec<Change>,
    /// What the engine proposes to her as things are, and what it would with the revision, where the two differ.
    pub proposals: Vec<ProposalChange>,
    /// What was recorded about her since the last file.
    pub entries: u32,
}

/// What the engine proposes for a slot before and after a revision.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct ProposalChange {
    /// Title of the session.
    pub session: String,
    /// The slot.
    pub slot: SlotId,
    /// Its ladder.
    pub ladder: LadderId,
    /// As things are; `None` if the slot is new.
    pub before: Option<Offered>,
    /// With the revision.
    pub after: Offered,
}

/// What is proposed for a slot.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[serde(tag = "do", rename_all = "snake_case")]
#[ts(export)]
pub enum Offered {
    /// The ladder rests.
    Rest,
    /// Train.
    Train {
        /// Variant.
        variant: VariantId,
        /// What to hold.
        load: Load,
        /// Sets.
        sets: u8,
        /// Reps or seconds of each.
        target: Target,
    },
}

/// Plan files that were written into one folder.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct ReceiptView {
    /// The folder.
    pub folder: String,
    /// The name of the receipt in it; `None` if nothing was written, or the receipt could not be.
    pub file: Option<String>,
    /// What was written, in order of names.
    pub written: Vec<ReceiptLine>,
    /// Who was left out, and why.
    pub left_out: Vec<LeftOut>,
    /// The receipt as it is saved, in the language that was asked for.
    pub text: String,
}

/// One plan file of a receipt.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct ReceiptLine {
    /// For whom.
    pub person: PersonId,
    /// Her name.
    pub name: String,
    /// The name of the file.
    pub file: String,
    /// Title of its programme.
    pub title: String,
    /// The number of the file for this client.
    pub sequence: u32,
    /// True if it is her first.
    pub first: bool,
    /// The day on which the programme begins, if one was set and lies ahead.
    pub begins: Option<NaiveDate>,
    /// Entries that the coach recorded about her, in all.
    pub entries: u32,
    /// Those of them that no file had before.
    pub new_entries: u32,
    /// What changed in her programme since the last file.
    pub changes: Vec<Change>,
}

/// Somebody for whom no file was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct LeftOut {
    /// Who.
    pub person: PersonId,
    /// Her name.
    pub name: String,
    /// Why: `no-programme`, `unfinished`, `up-to-date`, `archived`, or the code of an error.
    pub why: String,
}
