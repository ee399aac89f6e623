//! A session that several train together: who does what, and what the room needs.

use chrono::NaiveDate;
use newel_engine::class::{Laid, RoomNeed};
use newel_engine::ids::{ConditionId, PersonId, PlanSessionId, ProgrammeId, SlotId};
use newel_engine::programme::PlanSession;
use newel_engine::proposal::{Offer, SessionProposal};
use newel_engine::stage::StageOn;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{LadderChoice, RestrictionView};

/// Which session, and whose.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct ClassForm {
    /// Programme.
    pub programme: ProgrammeId,
    /// Session.
    pub session: PlanSessionId,
    /// Who comes, in the order of the table.
    pub people: Vec<PersonId>,
}

/// Who does what.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ClassView {
    /// The day.
    pub day: NaiveDate,
    /// Title of the programme.
    pub title: String,
    /// The session.
    pub session: PlanSession,
    /// Minutes as written.
    pub minutes: u16,
    /// The ladders of its slots, to set a cell by.
    pub ladders: Vec<LadderChoice>,
    /// One row for each client.
    pub rows: Vec<ClassRowView>,
    /// What has to lie ready.
    pub room: Vec<RoomThing>,
}

/// A client of a class.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ClassRowView {
    /// Client.
    pub person: PersonId,
    /// Name.
    pub name: String,
    /// Stage today.
    pub stage: Option<StageOn>,
    /// Conditions with something to mind at each session.
    pub cares: Vec<ConditionId>,
    /// Restrictions in force.
    pub restrictions: Vec<RestrictionView>,
    /// What she does; without slots where training is closed.
    pub proposal: SessionProposal,
    /// Her first round if she comes late, for each slot that she trains.
    pub late: Vec<LateSlot>,
    /// Slots in which a word of the coach's decides, given today.
    pub changed: Vec<SlotId>,
    /// Day of her last session.
    pub last_session: Option<NaiveDate>,
}

/// The first round of a latecomer in a slot.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct LateSlot {
    /// The slot.
    pub slot: SlotId,
    /// What she does first.
    pub first: Offer,
}

/// A thing that the room needs, and how many of it are there.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct RoomThing {
    /// What, and where.
    pub need: RoomNeed,
    /// How many the coach says are in the room; `None` if she has not said.
    pub have: Option<u16>,
    /// True if more are needed than are there.
    pub short: bool,
}

/// How many of a thing are in the room.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct InRoom {
    /// The thing.
    pub what: Laid,
    /// How many.
    pub count: u16,
}
