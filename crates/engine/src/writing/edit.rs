//! The edits there are, in the order in which a programme is read.

use crate::ids::{BlockId, LadderId, PhaseId, PlanSessionId, SlotId};
use crate::programme::BlockPart;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// One change to a programme. What is added or copied gets ids of its own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "edit", rename_all = "snake_case", deny_unknown_fields)]
#[ts(export)]
pub enum Edit {
    /// Its name.
    Title {
        /// At most 80 characters.
        title: String,
    },
    /// How many sessions a week are meant.
    PerWeek {
        /// 1 to 7.
        per_week: u8,
    },
    /// For how many weeks it is written; open if absent. Where it has phases, these say how long it is. What was asked for
    /// in weeks that are no more goes.
    Weeks {
        /// 1 to 52.
        weeks: Option<u8>,
    },
    /// A week becomes a light one, or is none any more.
    LightWeek {
        /// The phase; absent where there is none.
        #[serde(default)]
        phase: Option<PhaseId>,
        /// The week of the phase, from 1.
        week: u8,
        /// True for a light one.
        light: bool,
    },
    /// A new phase at the end. The first one takes in all that stands; each later one begins empty, with four weeks.
    AddPhase {
        /// Its name.
        title: String,
    },
    /// A copy of a phase with its sessions, right after it.
    CopyPhase {
        /// Which.
        phase: PhaseId,
    },
    /// A phase comes to stand at another place.
    MovePhase {
        /// Which.
        phase: PhaseId,
        /// Its new place, from 0.
        to: u8,
    },
    /// A phase's name.
    TitlePhase {
        /// Which.
        phase: PhaseId,
        /// At most 80 characters.
        title: String,
    },
    /// How many weeks a phase lasts. What was asked for in weeks that are no more goes.
    WeeksOfPhase {
        /// Which.
        phase: PhaseId,
        /// 1 to 52, and no more in all.
        weeks: u8,
    },
    /// A phase goes with its sessions; of the last one the sessions stay, and the programme has no phases any more.
    DropPhase {
        /// Which.
        phase: PhaseId,
    },
    /// A new, empty session at the end.
    AddSession {
        /// Its name.
        title: String,
        /// The phase; the last one if absent.
        #[serde(default)]
        phase: Option<PhaseId>,
    },
    /// A session goes over to another phase, to its end.
    PhaseOfSession {
        /// Which.
        session: PlanSessionId,
        /// The phase.
        phase: PhaseId,
    },
    /// The working doses of a session rise over weeks of its phase, from what the first of them asks for. What these weeks
    /// asked for before goes; a light week repeats the one before, and its rule eases it.
    StepUp {
        /// Which.
        session: PlanSessionId,
        /// The first week, which stays as it is.
        from: u8,
        /// The last week.
        to: u8,
        /// A step after so many weeks, 1 to 12.
        every: u8,
        /// What each step adds.
        step: WeekStep,
    },
    /// A week asks of a block and its slots what every week asks for.
    AsEveryWeek {
        /// Which.
        block: BlockId,
        /// The week of its phase.
        week: u8,
    },
    /// Every week of a session asks for the same again.
    EvenWeeks {
        /// Which.
        session: PlanSessionId,
    },
    /// A copy of a session, right after it.
    CopySession {
        /// Which.
        session: PlanSessionId,
    },
    /// A session comes to stand at another place.
    MoveSession {
        /// Which.
        session: PlanSessionId,
        /// Its new place among those of its phase, from 0.
        to: u8,
    },
    /// A session's name.
    TitleSession {
        /// Which.
        session: PlanSessionId,
        /// At most 80 characters.
        title: String,
    },
    /// How many minutes a session is meant to take; left open if absent.
    MinutesOfSession {
        /// Which.
        session: PlanSessionId,
        /// 5 to 180.
        minutes: Option<u16>,
    },
    /// A session goes.
    DropSession {
        /// Which.
        session: PlanSessionId,
    },
    /// A new block in a session, with a slot for each ladder: a warm-up before the work, a cool-down after it.
    AddBlock {
        /// Where.
        session: PlanSessionId,
        /// Its ladders in order; at least one.
        ladders: Vec<LadderId>,
        /// What it is there for.
        part: BlockPart,
    },
    /// A copy of a block, right after it.
    CopyBlock {
        /// Which.
        block: BlockId,
    },
    /// A block comes to stand at another place, perhaps in another session.
    MoveBlock {
        /// Which.
        block: BlockId,
        /// The session.
        session: PlanSessionId,
        /// Its new place there, from 0.
        to: u8,
    },
    /// Rounds, rests, and what it is there for; what is absent stays.
    ShapeBlock {
        /// Which.
        block: BlockId,
        /// 1 to 12.
        rounds: Option<u8>,
        /// After each round, 0 to 600 s.
        rest_seconds: Option<u16>,
        /// Between two slots, 0 to 600 s.
        rest_between_seconds: Option<u16>,
        /// What it is there for, in every week.
        part: Option<BlockPart>,
        /// The week of its phase that alone is changed; every week if absent.
        #[serde(default)]
        week: Option<u8>,
    },
    /// A block goes.
    DropBlock {
        /// Which.
        block: BlockId,
    },
    /// A new slot at the end of a block.
    AddSlot {
        /// Where.
        block: BlockId,
        /// Its ladder.
        ladder: LadderId,
    },
    /// A slot comes to stand at another place, perhaps in another block. A block that is left empty goes.
    MoveSlot {
        /// Which.
        slot: SlotId,
        /// The block.
        block: BlockId,
        /// Its new place there, from 0.
        to: u8,
    },
    /// Another ladder in a slot, which keeps its dose where the new ladder is counted the same way.
    LadderOfSlot {
        /// Which.
        slot: SlotId,
        /// The ladder.
        ladder: LadderId,
    },
    /// The lower or the upper end of a slot's reps or seconds, 1 to 600. An end that passes the other takes it along. Where
    /// every week is changed, a week that asks for something of its own keeps that, and follows in the rest.
    AmountOfSlot {
        /// Which.
        slot: SlotId,
        /// Lower end.
        low: Option<u16>,
        /// Upper end.
        high: Option<u16>,
        /// The week of its phase that alone is changed; every week if absent.
        #[serde(default)]
        week: Option<u8>,
    },
    /// Reps in reserve that a slot aims at.
    ReserveOfSlot {
        /// Which.
        slot: SlotId,
        /// 0 to 10.
        target_rir: u8,
        /// The week of its phase that alone is changed; every week if absent.
        #[serde(default)]
        week: Option<u8>,
    },
    /// Parts of a slot's tempo, 0 to 20 s each; what is absent stays, or begins as 2-0-1.
    TempoOfSlot {
        /// Which.
        slot: SlotId,
        /// Lowering.
        down: Option<u8>,
        /// Held.
        pause: Option<u8>,
        /// Lifting.
        up: Option<u8>,
        /// The week of its phase that alone is changed; every week if absent.
        #[serde(default)]
        week: Option<u8>,
    },
    /// A slot's tempo is left free.
    FreeTempo {
        /// Which.
        slot: SlotId,
        /// The week of its phase that alone is changed; every week if absent.
        #[serde(default)]
        week: Option<u8>,
    },
    /// The lowest or the highest allowed level of a slot. An end that passes the other takes it along; all levels are the
    /// same as none being named.
    LevelsOfSlot {
        /// Which.
        slot: SlotId,
        /// Lowest, 0 for the easiest.
        low: Option<u8>,
        /// Highest.
        high: Option<u8>,
    },
    /// A slot goes; a block that is left empty goes with it.
    DropSlot {
        /// Which.
        slot: SlotId,
    },
}

/// What one step of a rising dose adds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct WeekStep {
    /// Reps, to both ends of the range; 0 to 10.
    pub reps: u8,
    /// Seconds, to both ends; 0 to 60.
    pub seconds: u8,
    /// Rounds; 0 to 3.
    pub rounds: u8,
    /// Reps in reserve, taken off the target, which stays at 1 at least; 0 to 3.
    pub reserve: u8,
}

impl Edit {
    /// The same edit for one week alone, where a dose or a shape can be changed by week.
    #[must_use]
    pub fn in_week(mut self, of_week: Option<u8>) -> Self {
        match &mut self {
            Self::ShapeBlock { week, .. }
            | Self::AmountOfSlot { week, .. }
            | Self::ReserveOfSlot { week, .. }
            | Self::TempoOfSlot { week, .. }
            | Self::FreeTempo { week, .. } => *week = of_week,
            Self::Title { .. }
            | Self::PerWeek { .. }
            | Self::Weeks { .. }
            | Self::LightWeek { .. }
            | Self::AddPhase { .. }
            | Self::CopyPhase { .. }
            | Self::MovePhase { .. }
            | Self::TitlePhase { .. }
            | Self::WeeksOfPhase { .. }
            | Self::DropPhase { .. }
            | Self::AddSession { .. }
            | Self::PhaseOfSession { .. }
            | Self::StepUp { .. }
            | Self::EvenWeeks { .. }
            | Self::AsEveryWeek { .. }
            | Self::CopySession { .. }
            | Self::MoveSession { .. }
            | Self::TitleSession { .. }
            | Self::MinutesOfSession { .. }
            | Self::DropSession { .. }
            | Self::AddBlock { .. }
            | Self::CopyBlock { .. }
            | Self::MoveBlock { .. }
            | Self::DropBlock { .. }
            | Self::AddSlot { .. }
            | Self::MoveSlot { .. }
            | Self::LadderOfSlot { .. }
            | Self::LevelsOfSlot { .. }
            | Self::DropSlot { .. } => {}
        }
        self
    }
}
