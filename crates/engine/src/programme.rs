//! What the coach writes: programme, session, block, slot, dose.

use crate::ids::{BlockId, LadderId, PhaseId, PlanSessionId, ProgrammeId, SlotId, VariantId};
use crate::kit::Load;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A programme: sessions that are trained in turn.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Programme {
    /// Id; stays the same over revisions.
    pub id: ProgrammeId,
    /// Counts up with each revision.
    pub revision: u32,
    /// Its name.
    pub title: String,
    /// How many sessions a week are meant.
    pub per_week: u8,
    /// For how many weeks it was written; `None` leaves the end open. A week has gone by when its sessions are trained,
    /// not when seven days are over: who misses one goes on where she was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weeks: Option<u8>,
    /// Light weeks (deload weeks), counted from 1 and rising; empty where it has phases, which name their own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub light_weeks: Vec<u8>,
    /// Phases, one after another; where there are none the whole programme is one.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub phases: Vec<Phase>,
    /// Sessions, trained in this order and round again; those of a phase while it lasts.
    pub sessions: Vec<PlanSession>,
}

/// Some weeks of a programme with sessions of their own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Phase {
    /// Id; stays the same over revisions.
    pub id: PhaseId,
    /// Its name.
    pub title: String,
    /// How many weeks it lasts.
    pub weeks: u8,
    /// Its light weeks, counted from its own first week, rising.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub light_weeks: Vec<u8>,
}

impl Programme {
    /// A programme without sessions, for questions that no programme bears on.
    #[must_use]
    pub fn empty() -> Self {
        let id = ProgrammeId(uuid::Uuid::nil());
        Self { id, revision: 0, title: String::new(), per_week: 0, ..crate::writing::blank(id, "") }
    }
}

/// One planned session.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct PlanSession {
    /// Id.
    pub id: PlanSessionId,
    /// Its name.
    pub title: String,
    /// Minutes that the coach means it to take; `None` where she named none. Nothing is left out by it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u16>,
    /// The phase that it is trained in; `None` where the programme has none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub phase: Option<PhaseId>,
    /// Blocks in order.
    pub blocks: Vec<Block>,
}

/// How the slots of a block follow one another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum BlockForm {
    /// One slot, set after set.
    StraightSets,
    /// Two slots back to back.
    Superset,
    /// Three slots back to back.
    TriSet,
    /// Four slots or more.
    GiantSet,
    /// To end with; its sets are no evidence of strength.
    Finisher,
    /// To begin with: loads are the lightest there are, and its sets are no evidence of strength.
    WarmUp,
    /// To come down with, after everything else; otherwise as a warm-up.
    CoolDown,
}

/// What a block is there for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum BlockPart {
    /// To begin with.
    WarmUp,
    /// The work itself.
    Work,
    /// To end the work with.
    Finisher,
    /// To come down with.
    CoolDown,
}

impl BlockForm {
    /// What a block of this form is there for.
    #[must_use]
    pub fn part(self) -> BlockPart {
        match self {
            Self::WarmUp => BlockPart::WarmUp,
            Self::StraightSets | Self::Superset | Self::TriSet | Self::GiantSet => BlockPart::Work,
            Self::Finisher => BlockPart::Finisher,
            Self::CoolDown => BlockPart::CoolDown,
        }
    }

    /// True for a warm-up and a cool-down.
    #[must_use]
    pub fn eases(self) -> bool {
        matches!(self.part(), BlockPart::WarmUp | BlockPart::CoolDown)
    }
}

/// A block: slots that are repeated for a number of rounds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Block {
    /// Id.
    pub id: BlockId,
    /// Form.
    pub form: BlockForm,
    /// Rounds: the sets of each slot.
    pub rounds: u8,
    /// Rest after each round, in seconds.
    pub rest_seconds: u16,
    /// Rest between two slots of a round, in seconds (0: back to back).
    #[serde(default)]
    pub rest_between_seconds: u16,
    /// Weeks of its phase that ask for other rounds or rests, rising.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub by_week: Vec<BlockWeek>,
    /// Slots in order.
    pub slots: Vec<Slot>,
}

/// Rounds and rests of a block in one week.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct BlockWeek {
    /// The week, counted from the first of its phase as 1.
    pub week: u8,
    /// Rounds.
    pub rounds: u8,
    /// Rest after each round, in seconds.
    pub rest_seconds: u16,
    /// Rest between two slots of a round, in seconds.
    pub rest_between_seconds: u16,
}

/// The dose of a slot in one week.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct SlotWeek {
    /// The week, counted from the first of its phase as 1.
    pub week: u8,
    /// The dose.
    pub dose: Dose,
}

/// A place in a block for one ladder.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Slot {
    /// Id; survives revisions.
    pub id: SlotId,
    /// The ladder.
    pub ladder: LadderId,
    /// Lowest and highest level that the coach allows here (0 for the easiest); all if absent.
    #[serde(default)]
    pub levels: Option<LevelSpan>,
    /// The dose.
    pub dose: Dose,
    /// Weeks of its phase that ask for another dose, rising.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub by_week: Vec<SlotWeek>,
}

/// Levels from `low` to `high`, both included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct LevelSpan {
    /// Lowest.
    pub low: u8,
    /// Highest.
    pub high: u8,
}

/// How much and how hard.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Dose {
    /// Reps or seconds.
    pub amount: Amount,
    /// Reps in reserve aimed at; the stage's rule may ask for more, never for less.
    pub target_rir: u8,
    /// Tempo; `None` leaves it free.
    #[serde(default)]
    pub tempo: Option<Tempo>,
}

/// A range of reps or of seconds, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "by", rename_all = "snake_case")]
#[ts(export)]
pub enum Amount {
    /// Reps.
    Reps {
        /// Bottom of the range.
        low: u16,
        /// Top of the range.
        high: u16,
    },
    /// Seconds held, or carried, or breathed.
    Seconds {
        /// Bottom of the range.
        low: u16,
        /// Top of the range.
        high: u16,
    },
}

impl Amount {
    /// Bottom of the range.
    #[must_use]
    pub fn low(self) -> u16 {
        match self {
            Self::Reps { low, .. } | Self::Seconds { low, .. } => low,
        }
    }

    /// Top of the range.
    #[must_use]
    pub fn high(self) -> u16 {
        match self {
            Self::Reps { high, .. } | Self::Seconds { high, .. } => high,
        }
    }
}

/// Seconds of each part of a rep.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Tempo {
    /// Lowering.
    pub down: u8,
    /// Held at the stretched end.
    pub pause: u8,
    /// Lifting.
    pub up: u8,
}

/// What the coach sets for one client on one ladder: where she starts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Start {
    /// The ladder.
    pub ladder: LadderId,
    /// Start level, 0 for the easiest.
    #[serde(default)]
    pub level: Option<u8>,
    /// Order of preference among the variants of a level.
    #[serde(default)]
    pub variant: Option<VariantId>,
    /// Start load.
    #[serde(default)]
    pub load: Option<Load>,
}

impl Start {
    /// True if it is at a lower level than another of its ladder, or at the same with less of the same kind held.
    #[must_use]
    pub fn is_lower_than(&self, other: &Self) -> bool {
        let (level, others) = (self.level.unwrap_or(0), other.level.unwrap_or(0));
        let lighter = || match (&self.load, &other.load) {
            (Some(a), Some(b)) => a.is_same_make(b) && a.external(1.0).0 < b.external(1.0).0,
            (Some(_) | None, None) | (None, Some(_)) => false,
        };
        self.ladder == other.ladder && (level < others || level == others && lighter())
    }
}

/// Why a programme cannot be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ProgrammeError {
    /// It has no session or a session has no set.
    #[error("the programme has nothing to train in {0}")]
    Empty(String),
    /// An id stands twice.
    #[error("{0} stands twice in the programme")]
    Twice(String),
    /// A ladder that the catalogue does not have.
    #[error("the programme names the ladder {0}, which this version does not know")]
    UnknownLadder(LadderId),
    /// A number out of range.
    #[error("{0} is out of range")]
    Range(String),
}

impl Programme {
    /// A planned session by id.
    #[must_use]
    pub fn session(&self, id: &PlanSessionId) -> Option<&PlanSession> {
        self.sessions.iter().find(|s| &s.id == id)
    }

    /// Checks ids, ladders and ranges against a catalogue.
    ///
    /// # Errors
    /// Names the first thing that is wrong.
    pub fn check(&self, catalogue: &crate::catalogue::Catalogue) -> Result<(), ProgrammeError> {
        use ProgrammeError as E;
        if self.sessions.is_empty() || self.sessions.len() > 64 {
            return Err(E::Empty(self.title.clone()));
        }
        if self.weeks == Some(0) {
            return Err(E::Range("weeks".to_owned()));
        }
        let mut seen = std::collections::BTreeSet::new();
        self.check_phases(&mut seen)?;
        for session in &self.sessions {
            if !seen.insert(session.id.as_str()) {
                return Err(E::Twice(session.id.to_string()));
            }
            if session.slots().next().is_none() {
                return Err(E::Empty(session.title.clone()));
            }
            if session.minutes.is_some_and(|m| !(1..=600).contains(&m)) {
                return Err(E::Range(format!("the minutes of {}", session.title)));
            }
            for block in &session.blocks {
                if !seen.insert(block.id.as_str()) {
                    return Err(E::Twice(block.id.to_string()));
                }
                if !(1..=12).contains(&block.rounds) || block.slots.len() > 12 {
                    return Err(E::Range(format!("rounds or slots of {}", block.id)));
                }
                let weeks = || block.by_week.iter().map(|w| w.week);
                let in_range = block.by_week.iter().all(|w| (1..=12).contains(&w.rounds));
                if !in_range || !is_rising(weeks()) {
                    return Err(E::Range(format!("the weeks of {}", block.id)));
                }
                for slot in &block.slots {
                    if !is_rising(slot.by_week.iter().map(|w| w.week)) {
                        return Err(E::Range(format!("the weeks of {}", slot.id)));
                    }
                    if !seen.insert(slot.id.as_str()) {
                        return Err(E::Twice(slot.id.to_string()));
                    }
                    let ladder = catalogue
                        .ladder(&slot.ladder)
                        .ok_or_else(|| E::UnknownLadder(slot.ladder.clone()))?;
                    for dose in slot.by_week.iter().map(|w| &w.dose).chain([&slot.dose]) {
                        let amount = dose.amount;
                        let timed = matches!(amount, Amount::Seconds { .. });
                        // What counts reps in one week counts them in all: levels are earned over weeks.
                        let same = timed == matches!(slot.dose.amount, Amount::Seconds { .. });
                        if amount.low() == 0 || amount.low() > amount.high() || amount.high() > 600 || !same {
                            return Err(E::Range(format!("the dose of {}", slot.id)));
                        }
                        if dose.target_rir > 10 {
                            return Err(E::Range(format!("the target of {}", slot.id)));
                        }
                    }
                    if slot
                        .levels
                        .is_some_and(|s| s.low > s.high || usize::from(s.low) >= ladder.levels.len())
                    {
                        return Err(E::Range(format!("the levels of {}", slot.id)));
                    }
                }
            }
        }
        Ok(())
    }
}

impl Programme {
    /// Phases with names and weeks of their own, sessions that all stand in one of them, light weeks that there are.
    fn check_phases<'p>(
        &'p self,
        seen: &mut std::collections::BTreeSet<&'p str>,
    ) -> Result<(), ProgrammeError> {
        use ProgrammeError as E;
        let light = |weeks: &[u8], of: Option<u8>| {
            is_rising(weeks.iter().copied()) && weeks.last().is_none_or(|w| of.is_none_or(|of| *w <= of))
        };
        let mut sum = 0_u8;
        for phase in &self.phases {
            if !seen.insert(phase.id.as_str()) {
                return Err(E::Twice(phase.id.to_string()));
            }
            if !(1..=MOST_WEEKS).contains(&phase.weeks) || !light(&phase.light_weeks, Some(phase.weeks)) {
                return Err(E::Range(format!("the weeks of {}", phase.title)));
            }
            if !self.sessions.iter().any(|s| s.phase.as_ref() == Some(&phase.id)) {
                return Err(E::Empty(phase.title.clone()));
            }
            sum = sum.saturating_add(phase.weeks);
        }
        let phased = !self.phases.is_empty();
        if phased && (self.weeks != Some(sum) || !self.light_weeks.is_empty()) {
            return Err(E::Range("weeks".to_owned()));
        }
        if !light(&self.light_weeks, self.weeks) {
            return Err(E::Range("light weeks".to_owned()));
        }
        let stands = |s: &PlanSession| match &s.phase {
            Some(id) => self.phases.iter().any(|p| p.id == *id),
            None => !phased,
        };
        match self.sessions.iter().find(|s| !stands(s)) {
            Some(session) => Err(E::Range(format!("the phase of {}", session.title))),
            None => Ok(()),
        }
    }
}

/// Weeks of a programme, and of each of its phases, at most.
pub const MOST_WEEKS: u8 = 52;

/// True for weeks from 1 on, each after the one before.
fn is_rising(weeks: impl Iterator<Item = u8>) -> bool {
    let mut last = 0;
    for week in weeks {
        if week <= last {
            return false;
        }
        last = week;
    }
    true
}

impl PlanSession {
    /// Slots with their block, in order.
    pub fn slots(&self) -> impl Iterator<Item = (&Block, &Slot)> {
        self.blocks.iter().flat_map(|b| b.slots.iter().map(move |s| (b, s)))
    }

    /// A slot with its block, by id.
    #[must_use]
    pub fn slot(&self, id: &SlotId) -> Option<(&Block, &Slot)> {
        self.slots().find(|(_, s)| &s.id == id)
    }
}
