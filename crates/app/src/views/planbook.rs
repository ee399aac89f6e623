//! The Planbook: programmes to read and to write.

use newel_engine::advice::{Advice, SessionMinutes};
use newel_engine::catalogue::Pattern;
use newel_engine::ids::{LadderId, PersonId, PhaseId, ProgrammeId};
use newel_engine::programme::Programme;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The Planbook.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct PlanbookView {
    /// The coach's own, in the order in which they were begun, then the built-in ones.
    pub programmes: Vec<ProgrammeView>,
    /// The coach's own that were put away.
    pub away: Vec<ProgrammeView>,
    /// Every ladder, to choose from.
    pub ladders: Vec<LadderToWrite>,
}

/// A programme with what there is to know of it while it is written.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ProgrammeView {
    /// The programme.
    pub programme: Programme,
    /// True for one of the coach's own, which can be written on.
    pub own: bool,
    /// True if the last change can be undone.
    pub can_undo: bool,
    /// True if something undone can be done again.
    pub can_redo: bool,
    /// True once it can be given to somebody: it has sessions, and none is empty.
    pub whole: bool,
    /// Estimated minutes, session by session.
    pub minutes: Vec<u16>,
    /// Working sets of a week by kind of movement, in its first phase.
    pub week: Vec<PlannedSets>,
    /// Its weeks in order, where it has an end.
    pub weeks: Vec<WeekToWrite>,
}

/// A week of a programme that is being written.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct WeekToWrite {
    /// Its phase, if there are phases.
    pub phase: Option<PhaseId>,
    /// The week of its phase, from 1.
    pub in_phase: u32,
    /// True for a light one.
    pub light: bool,
    /// True where something is asked for in it alone.
    pub own: bool,
    /// Estimated minutes of its sessions, in their order.
    pub minutes: Vec<u16>,
    /// Working sets by kind of movement.
    pub sets: Vec<PlannedSets>,
}

/// Working sets of a week.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct PlannedSets {
    /// Kind of movement.
    pub pattern: Pattern,
    /// Sets; parts of one where sessions do not come round evenly.
    pub sets: f64,
}

/// A ladder to choose while writing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct LadderToWrite {
    /// The ladder.
    pub ladder: LadderId,
    /// Its kind of movement.
    pub pattern: Pattern,
    /// How many levels it has.
    pub levels: u8,
    /// True for one of the coach's own that is not offered any more.
    pub retired: bool,
}

/// Whom a programme is looked through for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "of", rename_all = "snake_case")]
#[ts(export)]
pub enum LookFor {
    /// Those to whom it was given.
    Given,
    /// Every client.
    All,
    /// One client.
    One {
        /// Who.
        person: PersonId,
    },
}

/// A client by name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct ClientName {
    /// Who.
    pub person: PersonId,
    /// Her name.
    pub name: String,
}

/// What there is to say about a programme while it is written.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct AdviceView {
    /// The programme.
    pub programme: ProgrammeId,
    /// Whom it was looked through for: as it was asked, or by itself those to whom it was given, or all if there are none.
    pub look: LookFor,
    /// How many that were.
    pub looked: u32,
    /// To how many it was given.
    pub given: u32,
    /// Every client, by name.
    pub clients: Vec<ClientName>,
    /// What there is to say, in the order of the programme.
    pub advice: Vec<Advice>,
    /// Minutes of each session, as written and as logged.
    pub minutes: Vec<SessionMinutes>,
}
