//! Folding the history run by run, with what was said between runs.

use super::trace::{FreshStart, StrengthStep};
use super::{Course, Effects, Hold, State};
use crate::catalogue::Catalogue;
use crate::ground::Ground;
use crate::history::{Cleared, History, Run, Said};
use crate::ids::{ConditionId, LadderId, SymptomId};
use crate::programme::Start;
use crate::record::{ClearedThing, HoldAnswer};
use crate::rules::{PackThen, RulePack, Scope};
use crate::stage::Stage;
use crate::strength::Constants;
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::collections::BTreeSet;

/// What folding needs beside the history.
#[derive(Clone, Copy, Debug)]
pub struct Frame<'a> {
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// The rule pack that is built in; each run is judged by the one that was in force at its start.
    pub rules: &'a RulePack,
    /// The coach's starts that came with the plan; overrides are taken from the history.
    pub starts: &'a [Start],
    /// The local day on which that plan was made, if it is known: what it says of before a birth or a loss no longer
    /// counts.
    pub starts_of: Option<NaiveDate>,
    /// The local day that the state is wanted for.
    pub day: NaiveDate,
}

/// A history folded up to some run.
#[derive(Clone, Debug, Default)]
pub(crate) struct Fold {
    pub(super) state: State,
    /// How many of the stages recorded are entered.
    pub(super) stages: usize,
    /// How many of the intakes are.
    pub(super) intakes: usize,
    /// Answers to holds that are taken, by their place.
    pub(super) answered: BTreeSet<usize>,
    /// The pack in force at the latest run.
    pub(super) pack: PackThen,
    /// What moved strength, where that is asked for.
    pub(super) trace: Option<Vec<StrengthStep>>,
}

impl Fold {
    /// Takes the next run in order.
    pub(crate) fn take(&mut self, history: &History, run: &Run, frame: Frame<'_>) {
        self.enter_stages(history, Some(run.started), frame);
        let k = Constants::of(frame.rules);
        let rules = self.pack.at(frame.rules, &history.settings, Some(run.started), run.day);
        let (until, day) = (Some(run.started), run.day);
        let ground = || Ground::by(history, frame.catalogue, rules, day, until);
        self.state.take_replies(history, until, day, &mut self.answered, ground);
        self.state.take_run(history, run, Frame { rules, ..frame }, &k, self.trace.as_mut());
    }

    /// What was said after the last run, up to the day that the state is wanted for.
    pub(crate) fn finish(mut self, history: &History, frame: Frame<'_>) -> State {
        self.enter_stages(history, None, frame);
        let ground = || Ground::of(history, frame.catalogue, frame.rules, frame.day, None);
        self.state.take_replies(history, None, frame.day, &mut self.answered, ground);
        self.state
    }

    pub(super) fn enter_stages(
        &mut self,
        history: &History,
        until: Option<DateTime<FixedOffset>>,
        frame: Frame<'_>,
    ) {
        while let Some(next) = history.stages.get(self.stages).filter(|s| until.is_none_or(|u| s.at <= u)) {
            let before = self.stages.checked_sub(1).and_then(|i| history.stages.get(i)).map(|s| &s.what);
            let ended = if self.trace.is_some() { self.state.groups() } else { Vec::new() };
            let fresh = self.state.enter_stage(before, &next.what, frame.rules);
            if let (Some(day), Some(trace)) = (fresh, &mut self.trace) {
                let (record, at, stage) = (next.record, next.at, Some(next.what.clone()));
                trace.push(StrengthStep::FreshStart(FreshStart { record, at, day, stage, ended }));
            }
            self.stages += 1;
        }
        while let Some(next) = history.intakes.get(self.intakes).filter(|i| until.is_none_or(|u| i.at <= u)) {
            let before = self.intakes.checked_sub(1).and_then(|n| history.intakes.get(n));
            let anew = |id: &&ConditionId| frame.rules.condition(id).is_some_and(|c| c.begins_anew);
            let is_new = |id: &ConditionId| before.is_none_or(|b| !b.what.conditions.contains(id));
            if next.what.conditions.iter().filter(anew).any(is_new) {
                let (record, at, day, ended) =
                    (next.record, next.at, next.at.date_naive(), self.state.groups());
                self.state.begin_anew(day);
                self.state.operated = true;
                if let Some(trace) = &mut self.trace {
                    trace.push(StrengthStep::FreshStart(FreshStart { record, at, day, stage: None, ended }));
                }
            }
            self.intakes += 1;
        }
    }
}

impl State {
    /// A birth or a loss closes the load history: every ladder starts anew. Its day, if it did.
    fn enter_stage(&mut self, before: Option<&Stage>, now: &Stage, rules: &RulePack) -> Option<NaiveDate> {
        let event = |s: Option<&Stage>| match s {
            Some(Stage::Postpartum { birth, .. }) => Some(*birth),
            Some(Stage::AfterLoss { on }) => Some(*on),
            Some(Stage::Pregnant { .. } | Stage::Neither) | None => None,
        };
        let day = event(Some(now))?;
        // The same birth recorded again, or its date put right by days, is no second one.
        if event(before).is_some_and(|b| {
            f64::from(i32::try_from((day - b).num_days().abs()).unwrap_or(i32::MAX))
                <= rules.number("stage.same-birth", "days")
        }) {
            return None;
        }
        self.operated = false;
        self.begin_anew(day);
        Some(day)
    }

    /// Closes the load history: every ladder starts anew.
    fn begin_anew(&mut self, day: NaiveDate) {
        self.trackers.clear();
        self.rounds.clear();
        self.ladders.clear();
        self.variants.clear();
        self.held.clear();
        self.trend.clear();
        self.at_large.clear();
        self.owed = None;
        // What was said before the later of two counts no more.
        self.fresh = self.fresh.max(Some(day));
    }

    /// Clearances and answers to holds that were known by `until`, on the ground of the day that it is asked for. An
    /// answer is taken once, in the order of writing; one whose hold is not known yet waits for it.
    fn take_replies<'g>(
        &mut self,
        history: &History,
        until: Option<DateTime<FixedOffset>>,
        day: NaiveDate,
        answered: &mut BTreeSet<usize>,
        ground: impl Fn() -> Ground<'g>,
    ) {
        let known = |at: DateTime<FixedOffset>| until.is_none_or(|u| at <= u);
        let given = || history.clearances.iter().filter(|c| known(c.at));
        // A letter of before the sign, or written down before it, says nothing of it; nor does one of something else.
        let speaks_of = |clearance: &Said<Cleared>, at: DateTime<FixedOffset>, record| {
            at <= clearance.at
                && at.date_naive() <= clearance.what.on
                && clearance.what.speaks_of(&ClearedThing::Sign { record })
        };
        // What an ended clearance opened waits again, unless another one speaks of it.
        for red in self.reds.iter_mut().filter(|r| r.cleared) {
            red.cleared = given().any(|c| c.what.holds_on(day) && speaks_of(c, red.at, red.record));
        }
        for hold in self.holds.iter_mut().filter(|h| h.cleared) {
            hold.cleared = given().any(|c| c.what.holds_on(day) && speaks_of(c, hold.at, hold.record));
        }
        for clearance in given().filter(|c| c.what.holds_on(day)) {
            let mut opened: Vec<(SymptomId, Scope)> = Vec::new();
            for red in self.reds.iter_mut().filter(|r| !r.cleared && speaks_of(clearance, r.at, r.record)) {
                red.cleared = true;
                if !std::mem::replace(&mut red.opened, true) {
                    opened.push((red.symptom.clone(), Scope::All));
                }
            }
            for hold in self.holds.iter_mut().filter(|h| {
                let waits = h.answer.is_none() && !h.cleared;
                waits && h.scope != Scope::Ladder && speaks_of(clearance, h.at, h.record)
            }) {
                hold.cleared = true;
                if !std::mem::replace(&mut hold.opened, true) {
                    opened.push((hold.symptom.clone(), hold.scope));
                }
            }
            for (kind, scope) in opened {
                self.go_on_lower(&kind, &ground(), (scope, None), clearance.at);
            }
        }
        for (index, reply) in history.hold_replies.iter().enumerate().filter(|(_, r)| known(r.at)) {
            if answered.contains(&index) {
                continue;
            }
            let answer = reply.what.answer;
            // One record may have held more than one thing, and the answer is to all of them that were known; a restart
            // is of a ladder, and opens nothing else.
            let meant = |h: &&mut Hold| {
                h.record == reply.what.hold
                    && h.at <= reply.at
                    && (answer != HoldAnswer::RestartLighter || h.scope == Scope::Ladder)
            };
            let mut opened: Vec<(SymptomId, Scope, Option<LadderId>)> = Vec::new();
            for hold in self.holds.iter_mut().filter(meant) {
                answered.insert(index);
                hold.answer = Some(answer);
                opened.push((hold.symptom.clone(), hold.scope, hold.ladder.clone()));
            }
            for (kind, scope, ladder) in opened {
                match (answer, ladder) {
                    (HoldAnswer::GoOn, ladder) => {
                        self.go_on_lower(&kind, &ground(), (scope, ladder.as_ref()), reply.at);
                    }
                    (HoldAnswer::RestartLighter, Some(ladder)) => self.restart_lighter(ladder, reply.at),
                    (HoldAnswer::RestartLighter, None) | (HoldAnswer::KeepResting, _) => {}
                }
            }
        }
    }

    fn restart_lighter(&mut self, ladder: LadderId, at: DateTime<FixedOffset>) {
        let entry = self.ladders.entry(ladder).or_default();
        let last = entry.exposures.last().map(|e| (e.variant.clone(), e.load.clone()));
        let then = match &entry.course {
            Course::Down { .. } => Some(Box::new(entry.course.clone())),
            Course::Lighter { then, .. } => then.clone(),
            Course::Usual => None,
        };
        entry.course = Course::Lighter { last, then };
        entry.moved = entry.moved.max(Some(at));
        // Help has no share to take off; no less of it, at any rate.
        entry.counts_anew(at.date_naive());
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
        let mut effects = Effects { day: run.day, ..Effects::default() };
        self.take_check_in(run, &ground, &mut effects);
        let earlier = self.earlier_today(run.day, Some(run.id));
        effects.began_unloaded = earlier.unloaded;
        for mark in &run.marks {
            self.take_mark(run, mark, &ground, &mut effects, &earlier);
        }
        let plan = (frame.starts, frame.starts_of);
        let starts = self.starts_known(history, plan, Some(run.started));
        self.take_sets(run, &starts, k, &ground, &effects, trace);
        self.close_run(run, &ground, &effects);
        self.take_next_day(run, &ground);
        self.effects.insert(run.id, effects);
    }

    /// The coach's starts as they were known at an instant (all if `None`), later ones last: those of the plan, with the
    /// local day on which it was made, and what she set since. What is of before a birth or a loss no longer counts.
    pub(crate) fn starts_known(
        &self,
        history: &History,
        (plan, made): (&[Start], Option<NaiveDate>),
        at: Option<DateTime<FixedOffset>>,
    ) -> Vec<Start> {
        let later = history
            .overrides
            .iter()
            .filter(|o| at.is_none_or(|at| o.at <= at) && !self.is_before_fresh(o.at.date_naive()))
            .map(|o| &o.what.0);
        let counts = !made.is_some_and(|day| self.is_before_fresh(day));
        plan.iter().filter(|_| counts).chain(later).cloned().collect()
    }
}
