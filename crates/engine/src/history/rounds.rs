//! Sets round by round: where one side works at a time, both sides are one set.

use super::{Run, SetEntry};
use crate::ids::RecordId;
use crate::kit::Load;
use crate::record::{Purpose, Reserve, SetDone};

/// A set with its sides.
#[derive(Debug)]
pub struct Round<'a> {
    /// The set, or the side that came first.
    pub set: &'a SetDone,
    /// All entries of it: one, or one for each side.
    pub sides: Vec<&'a SetEntry>,
}

impl Round<'_> {
    /// A working set: not to learn the movement, and no part of a finisher, a warm-up or a cool-down.
    #[must_use]
    pub fn is_work(&self) -> bool {
        match self.set.purpose {
            Purpose::Work | Purpose::Find => true,
            Purpose::Learn | Purpose::Finisher | Purpose::Ease => false,
        }
    }

    /// True if a mark ended it before its time.
    #[must_use]
    pub fn stopped(&self) -> bool {
        self.sides.iter().any(|e| e.set.stopped)
    }

    /// What she said was left, of the side with less.
    #[must_use]
    pub fn reserve(&self) -> Option<Reserve> {
        self.sides.iter().filter_map(|e| e.set.reserve).min_by_key(|r| match r {
            Reserve::Exactly(n) => (*n, 0),
            Reserve::AtLeast(n) => (*n, 1),
        })
    }

    /// The records of its sides, in order of logging.
    #[must_use]
    pub fn records(&self) -> Vec<RecordId> {
        self.sides.iter().map(|e| e.record).collect()
    }

    /// What was held.
    #[must_use]
    pub fn load(&self) -> &Load {
        &self.set.load
    }
}

/// The sets of a run, in order of logging.
#[must_use]
pub fn rounds_of(run: &Run) -> Vec<Round<'_>> {
    let mut rounds: Vec<Round<'_>> = Vec::new();
    for entry in &run.sets {
        let set = &entry.set;
        let other = rounds.iter_mut().find(|r| {
            set.side.is_some()
                && r.set.slot == set.slot
                && r.set.round == set.round
                && r.set.variant == set.variant
                && r.sides.iter().all(|e| e.set.side.is_some() && e.set.side != set.side)
        });
        match other {
            Some(round) => round.sides.push(entry),
            None => rounds.push(Round { set, sides: vec![entry] }),
        }
    }
    rounds
}
