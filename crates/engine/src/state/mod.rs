//! Where she stands: strength by group, level by ladder, holds and red flags. Folded from the history
//! run by run, so that the same records give the same state.

mod course;
mod fold;
mod ladder;
mod marks;
mod sets;
mod signs;
mod trace;

pub use course::{level_above, level_below};
pub(crate) use fold::Fold;
pub use fold::Frame;
pub use ladder::{Course, Exposure, LadderState, LastSet, Recent, VariantUse};
pub(crate) use sets::working_rounds;
pub use signs::{AtLarge, EarlierToday, Effects, Hold, LadderEffect, LadderToday, Red};
pub use trace::{
    BodyPart, FreshStart, NoEvidence, RepMax, SetStep, Silent, StrengthStart, StrengthState, StrengthStep,
    StrengthTrace,
};

use crate::catalogue::Region;
use crate::history::History;
use crate::ids::{GroupId, LadderId, RunId, SymptomId, VariantId};
use crate::kit::Load;
use crate::programme::Start;
use crate::strength::Tracker;
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeMap;

/// A day's one-rep max, as (estimate, low, high) in kg of effective load.
#[derive(Clone, Debug, PartialEq)]
pub struct TrendDay {
    /// Day.
    pub day: NaiveDate,
    /// Estimate and band.
    pub one_rep_max: (Kg, Kg, Kg),
}

/// Where she stands.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct State {
    /// Strength by group.
    pub trackers: BTreeMap<GroupId, Tracker>,
    /// One-rep max by group, day by day, since the last fresh start.
    pub trend: BTreeMap<GroupId, Vec<TrendDay>>,
    /// Ladders.
    pub ladders: BTreeMap<LadderId, LadderState>,
    /// Holds in order.
    pub holds: Vec<Hold>,
    /// Red flags in order.
    pub reds: Vec<Red>,
    /// Effects by run.
    pub effects: BTreeMap<RunId, Effects>,
    /// Day of the last fresh start.
    pub fresh: Option<NaiveDate>,
    /// True if that was an operation, and no birth or loss.
    pub operated: bool,
    /// What was held last in each group, since the last fresh start.
    pub held: BTreeMap<GroupId, (VariantId, Load)>,
    /// Exposures by variant, since the last fresh start.
    pub variants: BTreeMap<VariantId, Vec<VariantUse>>,
    /// Sessions with at least one set.
    pub trained: u32,
    /// Symptoms that belonged to no ladder.
    pub at_large: BTreeMap<SymptomId, AtLarge>,
    /// The latest drop that concerned all ladders, with its instant: one that she has not trained yet begins a step
    /// lower.
    pub owed: Option<(DateTime<FixedOffset>, SymptomId)>,
    /// Working sets by group on the latest day of the group; one round of two sides counts once.
    pub rounds: BTreeMap<GroupId, (NaiveDate, u32)>,
}

impl State {
    /// Folds a history.
    #[must_use]
    pub fn of(history: &History, frame: Frame<'_>) -> Self {
        let mut fold = Fold::default();
        for run in &history.runs {
            fold.take(history, run, frame);
        }
        fold.finish(history, frame)
    }

    /// What the sessions of a day leave for the rest of it; `but` is left out.
    #[must_use]
    pub fn earlier_today(&self, day: NaiveDate, but: Option<RunId>) -> EarlierToday {
        let mut earlier = EarlierToday::default();
        for (_, effects) in self.effects.iter().filter(|(run, e)| e.day == day && Some(**run) != but) {
            earlier.unloaded |= effects.unloaded.is_some();
            earlier.pelvic_floor = earlier.pelvic_floor.saturating_add(effects.pelvic_floor);
            for (ladder, effect) in &effects.ladders {
                let entry =
                    earlier.ladders.entry(ladder.clone()).or_insert(LadderToday { drops: 0, ended: None });
                entry.drops = entry.drops.saturating_add(effect.drops);
                if effect.ended {
                    entry.ended = Some(effect.symptom.clone());
                }
            }
        }
        earlier
    }

    /// The instant of the latest symptom that moved or held a ladder, or of the answer to it: what the coach set
    /// before it does not outlast it.
    #[must_use]
    pub fn last_moved(&self, ladder: &LadderId) -> Option<DateTime<FixedOffset>> {
        let entry = self.ladders.get(ladder);
        let owed = self.owed.as_ref().filter(|_| entry.is_none_or(|l| l.level.is_none())).map(|(at, _)| *at);
        entry.and_then(|l| l.moved).max(owed)
    }

    /// Red flags that wait for a clearance.
    pub fn open_reds(&self) -> impl Iterator<Item = &Red> {
        self.reds.iter().filter(|r| !r.cleared)
    }

    /// Holds whose scope rests.
    pub fn open_holds(&self) -> impl Iterator<Item = &Hold> {
        self.holds.iter().filter(|h| h.rests())
    }

    /// The hold that rests a ladder, if there is one.
    #[must_use]
    pub fn hold_on(&self, ladder: &LadderId, region: Region) -> Option<&Hold> {
        self.open_holds().find(|h| signs::closes(h.scope, h.ladder.as_ref(), ladder, region))
    }

    /// Working sets of a group on a day so far.
    #[must_use]
    pub fn sets_of_day(&self, group: &GroupId, day: NaiveDate) -> u32 {
        self.rounds.get(group).filter(|(on, _)| *on == day).map_or(0, |(_, n)| *n)
    }

    /// True if something said on a day is of before the last fresh start and no longer counts.
    #[must_use]
    pub fn is_before_fresh(&self, day: NaiveDate) -> bool {
        self.fresh.is_some_and(|fresh| day < fresh)
    }
}

/// The coach's start for a variant: one that names it, else one for its ladder without a variant.
#[must_use]
pub fn start_for<'s>(starts: &'s [Start], ladder: &LadderId, variant: &VariantId) -> Option<&'s Start> {
    starts
        .iter()
        .rfind(|s| s.ladder == *ladder && s.variant.as_ref() == Some(variant))
        .or_else(|| starts.iter().rfind(|s| s.ladder == *ladder && s.variant.is_none()))
}
