//! Where she stands: strength by group, level by ladder, holds and red flags. Folded from the history
//! run by run, so that the same records give the same state.

mod course;
mod marks;
mod sets;
mod trace;

pub use course::{level_above, level_below};
pub(crate) use sets::working_rounds;
pub use trace::{
    BodyPart, FreshStart, RepMax, SetStep, StrengthStart, StrengthState, StrengthStep, StrengthTrace,
};

use crate::catalogue::{Catalogue, Region};
use crate::ground::Ground;
use crate::history::{History, Run};
use crate::ids::{GroupId, LadderId, RecordId, RunId, SymptomId, VariantId};
use crate::kit::Load;
use crate::programme::{Amount, Start};
use crate::record::{HoldAnswer, Reserve};
use crate::rules::{PackThen, RulePack, Scope, Urgency};
use crate::stage::Stage;
use crate::strength::{Constants, Tracker};
use crate::symptom::Verdict;
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};

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
}

impl Default for LadderState {
    fn default() -> Self {
        Self {
            exposures: Vec::new(),
            level: None,
            course: Course::Usual,
            recent: BTreeMap::new(),
            counts_from: None,
        }
    }
}

/// A hold.
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// The record that made it.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The symptom.
    pub symptom: SymptomId,
    /// The ladder, if it closes one alone.
    pub ladder: Option<LadderId>,
    /// Scope.
    pub scope: Scope,
    /// True when it came from a drop at the lowest level: a restart lighter fits.
    pub lowest: bool,
    /// The answer, if one was given.
    pub answer: Option<HoldAnswer>,
}

impl Hold {
    /// True while its scope rests.
    #[must_use]
    pub fn rests(&self) -> bool {
        matches!(self.answer, None | Some(HoldAnswer::KeepResting))
    }
}

/// A red flag.
#[derive(Clone, Debug, PartialEq)]
pub struct Red {
    /// The record that made it.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The run.
    pub run: RunId,
    /// The symptom.
    pub symptom: SymptomId,
    /// How urgent.
    pub urgency: Urgency,
    /// True once a clearance was recorded after it.
    pub cleared: bool,
}

/// What marks do to one ladder in a session.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderEffect {
    /// The mark that did it.
    pub by: RecordId,
    /// The symptom.
    pub symptom: SymptomId,
    /// Level of the first drop.
    pub from: Option<u8>,
    /// Level to use for the rest of today.
    pub down_to: Option<u8>,
    /// The ladder ends for today.
    pub ended: bool,
    /// It rests until the coach has answered.
    pub held: bool,
    /// Breath, range or position changes.
    pub cue: bool,
    /// Marks of drop or stricter so far.
    pub drops: u8,
    /// Kinds marked so far, with what they did.
    pub seen: BTreeMap<SymptomId, Recent>,
}

/// What marks and check-in do to a session.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Effects {
    /// By ladder.
    pub ladders: BTreeMap<LadderId, LadderEffect>,
    /// The rest of the session without load, lying or seated.
    pub unloaded: Option<RecordId>,
    /// A hold on the lower body made today.
    pub lower: Option<RecordId>,
    /// A hold on everything made today.
    pub all: Option<RecordId>,
    /// A red flag of today.
    pub red: Option<RecordId>,
    /// Verdicts by mark.
    pub verdicts: BTreeMap<RecordId, Verdict>,
    /// Pelvic-floor marks of drop or stricter.
    pub pelvic_floor: u8,
}

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

/// What folding needs beside the history.
#[derive(Clone, Copy, Debug)]
pub struct Frame<'a> {
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// The rule pack that is built in; each run is judged by the one that was in force at its start.
    pub rules: &'a RulePack,
    /// The coach's starts that came with the plan; overrides are taken from the history.
    pub starts: &'a [Start],
    /// The local day that the state is wanted for.
    pub day: NaiveDate,
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

    /// A birth or a loss closes the load history: every ladder starts anew. Its day, if it did.
    fn enter_stage(&mut self, before: Option<&Stage>, now: &Stage) -> Option<NaiveDate> {
        let event = |s: Option<&Stage>| match s {
            Some(Stage::Postpartum { birth, .. }) => Some(*birth),
            Some(Stage::AfterLoss { on }) => Some(*on),
            Some(Stage::Pregnant { .. } | Stage::Neither) | None => None,
        };
        let day = event(Some(now))?;
        // The same birth recorded again, or its date put right by days, is no second one.
        if event(before).is_some_and(|b| (day - b).num_days().abs() <= 28) {
            return None;
        }
        self.trackers.clear();
        self.rounds.clear();
        self.ladders.clear();
        self.variants.clear();
        self.held.clear();
        self.trend.clear();
        self.fresh = Some(day);
        self.fresh
    }

    /// Clearances and answers to holds that were known by `until`. An answer is taken once, in the
    /// order of writing; one whose hold is not known yet waits for it.
    fn take_replies(
        &mut self,
        history: &History,
        until: Option<DateTime<FixedOffset>>,
        day: NaiveDate,
        answered: &mut BTreeSet<usize>,
    ) {
        let known = |at: DateTime<FixedOffset>| until.is_none_or(|u| at <= u);
        for clearance in history.clearances.iter().filter(|c| known(c.at) && c.what.on <= day) {
            // A letter of before the sign, or written down before it, says nothing of it.
            let speaks_of =
                |at: DateTime<FixedOffset>| at <= clearance.at && at.date_naive() <= clearance.what.on;
            for red in self.reds.iter_mut().filter(|r| speaks_of(r.at)) {
                red.cleared = true;
            }
            for hold in self
                .holds
                .iter_mut()
                .filter(|h| speaks_of(h.at) && h.answer.is_none() && h.scope != Scope::Ladder)
            {
                hold.answer = Some(HoldAnswer::GoOn);
            }
        }
        for (index, reply) in history.hold_replies.iter().enumerate().filter(|(_, r)| known(r.at)) {
            let mut ladders = Vec::new();
            if answered.contains(&index) {
                continue;
            }
            // One record may have held more than one thing; the answer is to all of them.
            for hold in self.holds.iter_mut().filter(|h| h.record == reply.what.hold) {
                answered.insert(index);
                hold.answer = Some(reply.what.answer);
                ladders.extend(hold.ladder.clone());
            }
            if reply.what.answer == HoldAnswer::RestartLighter {
                for ladder in ladders {
                    self.restart_lighter(ladder);
                }
            }
        }
    }

    fn restart_lighter(&mut self, ladder: LadderId) {
        let entry = self.ladders.entry(ladder).or_default();
        let last = entry.exposures.last().map(|e| (e.variant.clone(), e.load.clone()));
        let then = match &entry.course {
            Course::Down { .. } => Some(Box::new(entry.course.clone())),
            Course::Lighter { then, .. } => then.clone(),
            Course::Usual => None,
        };
        entry.course = Course::Lighter { last, then };
    }

    fn take_run(
        &mut self,
        history: &History,
        run: &Run,
        frame: Frame<'_>,
        k: &Constants,
        trace: Option<&mut Vec<StrengthStep>>,
    ) {
        let ground = Ground::by(history, frame.catalogue, frame.rules, run.day, Some(run.started));
        let mut effects = Effects::default();
        self.take_check_in(run, &ground, &mut effects);
        for mark in &run.marks {
            self.take_mark(run, mark, &ground, &mut effects);
        }
        let starts = self.starts_known(history, frame, run.started);
        self.take_sets(run, &starts, k, &ground, &effects, trace);
        self.close_run(run, &ground, &effects);
        self.take_next_day(run, &ground);
        self.effects.insert(run.id, effects);
    }

    /// The coach's starts as they were known at an instant, later ones last.
    fn starts_known(&self, history: &History, frame: Frame<'_>, at: DateTime<FixedOffset>) -> Vec<Start> {
        let later = history
            .overrides
            .iter()
            .filter(|o| o.at <= at && !self.is_before_fresh(o.at.date_naive()))
            .map(|o| o.what.0.clone());
        frame.starts.iter().cloned().chain(later).collect()
    }
}

/// A history folded up to some run.
#[derive(Clone, Debug, Default)]
pub(crate) struct Fold {
    state: State,
    /// How many of the stages recorded are entered.
    stages: usize,
    /// Answers to holds that are taken, by their place.
    answered: BTreeSet<usize>,
    /// The pack in force at the latest run.
    pack: PackThen,
    /// What moved strength, where that is asked for.
    trace: Option<Vec<StrengthStep>>,
}

impl Fold {
    /// Takes the next run in order.
    pub(crate) fn take(&mut self, history: &History, run: &Run, frame: Frame<'_>) {
        self.enter_stages(history, Some(run.started));
        self.state.take_replies(history, Some(run.started), run.day, &mut self.answered);
        let k = Constants::of(frame.rules);
        let rules = self.pack.at(frame.rules, &history.settings, Some(run.started), run.day);
        self.state.take_run(history, run, Frame { rules, ..frame }, &k, self.trace.as_mut());
    }

    /// What was said after the last run, up to the day that the state is wanted for.
    pub(crate) fn finish(mut self, history: &History, frame: Frame<'_>) -> State {
        self.enter_stages(history, None);
        self.state.take_replies(history, None, frame.day, &mut self.answered);
        self.state
    }

    fn enter_stages(&mut self, history: &History, until: Option<DateTime<FixedOffset>>) {
        while let Some(next) = history.stages.get(self.stages).filter(|s| until.is_none_or(|u| s.at <= u)) {
            let before = self.stages.checked_sub(1).and_then(|i| history.stages.get(i)).map(|s| &s.what);
            let ended = if self.trace.is_some() { self.state.groups() } else { Vec::new() };
            let fresh = self.state.enter_stage(before, &next.what);
            if let (Some(day), Some(trace)) = (fresh, &mut self.trace) {
                let (record, at, stage) = (next.record, next.at, next.what.clone());
                trace.push(StrengthStep::FreshStart(FreshStart { record, at, day, stage, ended }));
            }
            self.stages += 1;
        }
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
