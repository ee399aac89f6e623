//! A session that several train together: who does what, and what the room needs.

use chrono::NaiveDate;
use newel_engine::class::{Laid, RoomNeed, TakesTurns};
use newel_engine::ids::{ConditionId, PersonId, PlanSessionId, ProgrammeId, SlotId};
use newel_engine::kit::{Band, Kit};
use newel_engine::programme::PlanSession;
use newel_engine::proposal::{Offer, SessionProposal};
use newel_engine::stage::StageOn;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

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
    /// The room whose kit is at hand; each has her own if there is none.
    pub room: Option<Uuid>,
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
    /// The room whose kit the proposals were made with; `None` if each has her own.
    pub with_kit_of: Option<String>,
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
    /// Who takes turns then, in the order of the table.
    pub turns: Vec<TakesTurns>,
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

/// What stands in a room.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct RoomKit {
    /// What the coach calls the room.
    pub name: String,
    /// Its kit.
    pub kit: Kit,
    /// Where there are more or fewer of a thing than the kit lists.
    #[serde(default)]
    pub counted: Vec<InRoom>,
}

/// A room of the coach's.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct RoomView {
    /// Which.
    pub id: Uuid,
    /// What stands there.
    pub room: RoomKit,
}

/// The coach's rooms.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct RoomsView {
    /// By name.
    pub rooms: Vec<RoomView>,
    /// Bands by how stiff they feel, to choose from.
    pub band_presets: Vec<Band>,
}
