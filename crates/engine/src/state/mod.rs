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
pub use signs::{Effects, Hold, LadderEffect, Red};
pub use trace::{
    BodyPart, FreshStart, RepMax, SetStep, StrengthStart, StrengthState, StrengthStep, StrengthTrace,
};

use crate::catalogue::Region;
use crate::history::History;
use crate::ids::{GroupId, LadderId, RunId, VariantId};
use crate::kit::Load;
use crate::programme::Start;
use crate::rules::Scope;
use crate::strength::Tracker;
use crate::units::Kg;
use chrono::NaiveDate;
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
    /// What was held last in each group, since the last fresh start.
    pub held: BTreeMap<GroupId, (VariantId, Load)>,
    /// Exposures by variant, since the last fresh start.
    pub variants: BTreeMap<VariantId, Vec<VariantUse>>,
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
        self.open_holds().find(|h| match h.scope {
            Scope::All => true,
            Scope::LowerBody => region == Region::Lower,
            Scope::Ladder => h.ladder.as_ref() == Some(ladder),
        })
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
