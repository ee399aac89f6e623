//! Where she stands on one ladder: its exposures, its level, and how it goes on.

use crate::ids::{RunId, SymptomId, VariantId};
use crate::kit::Load;
use crate::programme::Amount;
use crate::record::Reserve;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeMap;

/// A session and a ladder with at least one working set.
#[derive(Clone, Debug, PartialEq)]
pub struct Exposure {
    /// The run.
    pub run: RunId,
    /// Its day.
    pub day: NaiveDate,
    /// Level of the last set.
    pub level: u8,
    /// Variant of the last set.
    pub variant: VariantId,
    /// Load of the last planned set if it was done, else of the last set.
    pub load: Load,
    /// The last planned set, if it was done.
    pub last: Option<LastSet>,
    /// Reps or seconds of the last round that was done whole; of two sides the fewer.
    pub count: Option<u16>,
    /// Range of the dose.
    pub range: Amount,
    /// Reserve aimed at.
    pub target: f64,
    /// No drop, hold or red mark on the ladder.
    pub symptom_free: bool,
    /// She chose another option than the one proposed.
    pub chosen: bool,
    /// The lowest level that was open to her in the slot, as it was shown.
    pub lowest: u8,
}

/// The last planned set of an exposure; of two sides the weaker.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LastSet {
    /// Reps or seconds.
    pub count: u16,
    /// Reserve said.
    pub reserve: Option<Reserve>,
    /// The filter's mean of the reserve after it, where there is a state.
    pub mean: Option<f64>,
    /// Reps at the bottom of the range or more, reserve at the floor or more, symptom-free.
    pub as_planned: bool,
}

impl LastSet {
    /// True if the reserve reached a threshold. "5 or more" meets one up to 5; above, the filter's
    /// mean decides. Timed sets are not asked for effort, so nothing speaks against it.
    #[must_use]
    pub fn reserve_at_least(&self, threshold: f64, timed: bool) -> bool {
        match self.reserve {
            Some(Reserve::Exactly(n)) => f64::from(n) >= threshold,
            Some(Reserve::AtLeast(n)) => {
                f64::from(n) >= threshold || self.mean.is_some_and(|m| m >= threshold)
            }
            None => timed,
        }
    }
}

/// How a ladder goes on.
#[derive(Clone, Debug, PartialEq)]
pub enum Course {
    /// As usual.
    Usual,
    /// A level down after a symptom.
    Down {
        /// The level to go back to.
        from: u8,
        /// Exposures since without symptoms and with a settled next morning.
        clean: u8,
        /// The last load at that level, with its variant.
        last: Option<(VariantId, Load)>,
        /// The symptom.
        symptom: SymptomId,
    },
    /// Restart lighter, as the coach answered.
    Lighter {
        /// The load to be lighter than, with its variant.
        last: Option<(VariantId, Load)>,
        /// The way down that goes on after it, if she was on one.
        then: Option<Box<Course>>,
    },
}

/// What a symptom kind did to a ladder in the last session that touched it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Recent {
    /// Its greatest amount, on the scale of its kind.
    pub amount: u8,
    /// True if it dropped or held the ladder.
    pub dropped: bool,
    /// Sessions running, up to that one, in which it did.
    pub running: u8,
}

/// Where she stands on a ladder.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderState {
    /// Exposures since the last fresh start, in order.
    pub exposures: Vec<Exposure>,
    /// Her level; `None` before the first exposure.
    pub level: Option<u8>,
    /// How it goes on.
    pub course: Course,
    /// Symptoms of the last session that touched it.
    pub recent: BTreeMap<SymptomId, Recent>,
    /// Loads done before this day are no measure for an increase: a symptom came after them.
    pub counts_from: Option<NaiveDate>,
    /// When a symptom, or the answer to one, moved it last.
    pub moved: Option<DateTime<FixedOffset>>,
}

impl LadderState {
    /// Loads count anew from a day on. What was done earlier on that day was done before it.
    pub(super) fn counts_anew(&mut self, from: NaiveDate) {
        let before = self.exposures.last().is_some_and(|e| e.day >= from);
        self.counts_from = self.counts_from.max(if before { from.succ_opt() } else { Some(from) });
    }
}

impl Default for LadderState {
    fn default() -> Self {
        Self {
            exposures: Vec::new(),
            level: None,
            course: Course::Usual,
            recent: BTreeMap::new(),
            counts_from: None,
            moved: None,
        }
    }
}

/// One exposure of a variant.
#[derive(Clone, Debug, PartialEq)]
pub struct VariantUse {
    /// Day.
    pub day: NaiveDate,
    /// Load of its last set.
    pub load: Load,
    /// True if its last planned set was done as planned.
    pub as_planned: bool,
    /// True if the ladder was symptom-free.
    pub symptom_free: bool,
    /// True if every set of it left "five or more": her load is not found yet.
    pub open_ended: bool,
}
