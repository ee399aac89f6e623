//! How a coach keeps her clients in order: groups, what waits, and how the files between the two stand.

use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::PersonId;
use newel_engine::kit::Thing;
use newel_engine::screening::ScreenDue;
use newel_engine::units::Weight;
use serde::Serialize;
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
#[derive(Clone, Debug, Default, PartialEq, Serialize, TS)]
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, TS)]
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
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
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
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, TS)]
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
