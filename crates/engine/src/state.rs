//! Where she stands: strength by group, level by ladder, holds and red flags. Folded from the history
//! run by run, so that the same records give the same state.

use crate::catalogue::{Catalogue, Region};
use crate::ground::Ground;
use crate::history::{History, Mark, Run};
use crate::ids::{GroupId, LadderId, RecordId, RunId, SymptomId, VariantId};
use crate::kit::Load;
use crate::programme::{Amount, Start};
use crate::record::{HoldAnswer, NextDay, Purpose, Reserve, SetDone, Symptom};
use crate::rules::{Class, Family, RulePack, Scope, Urgency};
use crate::stage::Stage;
use crate::strength::{Constants, Reach, Tracker, effective_load};
use crate::symptom::{Before, Verdict, judge};
use crate::units::Kg;
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
    /// Load of the last set.
    pub load: Load,
    /// The last planned set, if it was done.
    pub last: Option<LastSet>,
    /// Range of the dose.
    pub range: Amount,
    /// Reserve aimed at.
    pub target: f64,
    /// No drop, hold or red mark on the ladder.
    pub symptom_free: bool,
    /// She chose another option than the one proposed.
    pub chosen: bool,
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
    },
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
}

impl Default for LadderState {
    fn default() -> Self {
        Self { exposures: Vec::new(), level: None, course: Course::Usual }
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
#[derive(Clone, Debug, Default)]
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
    /// Day of the last exposure by variant, since the last fresh start.
    pub variants: BTreeMap<VariantId, Vec<VariantUse>>,
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
}

/// What folding needs beside the history.
#[derive(Clone, Copy, Debug)]
pub struct Frame<'a> {
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// Rule pack.
    pub rules: &'a RulePack,
    /// The coach's starts, of plan and overrides.
    pub starts: &'a [Start],
}

impl State {
    /// Folds a history.
    #[must_use]
    pub fn of(history: &History, frame: Frame<'_>) -> Self {
        let k = Constants::of(frame.rules);
        let mut state = Self::default();
        let mut stages = history.stages.iter().peekable();
        let mut stage: Option<&Stage> = None;
        for (index, run) in history.runs.iter().enumerate() {
            while let Some(next) = stages.next_if(|s| s.at <= run.started) {
                state.enter_stage(stage, &next.what);
                stage = Some(&next.what);
            }
            state.take_replies(history, Some(run.started));
            state.take_run(history, index, frame, &k);
        }
        for next in stages {
            state.enter_stage(stage, &next.what);
            stage = Some(&next.what);
        }
        state.take_replies(history, None);
        state
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

    /// A birth or a loss closes the load history: every ladder starts anew.
    fn enter_stage(&mut self, before: Option<&Stage>, now: &Stage) {
        let event = |s: Option<&Stage>| match s {
            Some(Stage::Postpartum { birth, .. }) => Some(*birth),
            Some(Stage::AfterLoss { on }) => Some(*on),
            Some(Stage::Pregnant { .. } | Stage::Neither) | None => None,
        };
        if let Some(day) = event(Some(now)) {
            // The same birth recorded again, or its date put right by days, is no second one.
            let same = event(before).is_some_and(|b| (day - b).num_days().abs() <= 28);
            if !same {
                self.trackers.clear();
                self.ladders.clear();
                self.variants.clear();
                self.trend.clear();
                self.fresh = Some(day);
            }
        }
    }

    fn take_replies(&mut self, history: &History, until: Option<DateTime<FixedOffset>>) {
        let known = |at: DateTime<FixedOffset>| until.is_none_or(|u| at <= u);
        for clearance in history.clearances.iter().filter(|c| known(c.at)) {
            for red in self.reds.iter_mut().filter(|r| r.at <= clearance.at) {
                red.cleared = true;
            }
            for hold in self.holds.iter_mut().filter(|h| {
                h.at <= clearance.at && h.answer.is_none() && h.scope != Scope::Ladder
            }) {
                hold.answer = Some(HoldAnswer::GoOn);
            }
        }
        for reply in history.hold_replies.iter().filter(|r| known(r.at)) {
            let Some(hold) = self.holds.iter_mut().find(|h| h.record == reply.what.hold) else {
                continue;
            };
            if hold.answer == Some(reply.what.answer) {
                continue;
            }
            hold.answer = Some(reply.what.answer);
            if reply.what.answer == HoldAnswer::RestartLighter
                && let Some(ladder) = hold.ladder.clone()
            {
                let entry = self.ladders.entry(ladder).or_default();
                let last = entry.exposures.last().map(|e| (e.variant.clone(), e.load.clone()));
                entry.course = Course::Lighter { last };
            }
        }
    }

    fn take_run(&mut self, history: &History, index: usize, frame: Frame<'_>, k: &Constants) {
        let Some(run) = history.runs.get(index) else { return };
        let ground = Ground::of(history, frame.catalogue, frame.rules, run.day, Some(run.started));
        let mut effects = Effects::default();
        self.take_check_in(run, &ground, &mut effects);
        for mark in &run.marks {
            self.take_mark(run, mark, &ground, &mut effects);
        }
        self.take_sets(run, frame, k, &ground, &effects);
        self.close_run(run, &ground, &effects);
        self.take_next_day(run, &ground);
        self.effects.insert(run.id, effects);
    }

    /// Symptoms since last time: they concern all ladders.
    fn take_check_in(&mut self, run: &Run, ground: &Ground<'_>, effects: &mut Effects) {
        let Some(check_in) = &run.check_in else { return };
        for symptom in &check_in.symptoms {
            let verdict = judge(ground.rules, &ground.intake, symptom, Before::default());
            match verdict.class {
                Class::Red => self.flag(run, check_in.record, run.started, &verdict, effects),
                Class::Hold => {
                    // Without a ladder of its own it concerns all of them.
                    let scope = if verdict.scope == Scope::Ladder { Scope::All } else { verdict.scope };
                    self.hold(check_in.record, run.started, &verdict, None, scope, false);
                    match scope {
                        Scope::All | Scope::Ladder => effects.all = Some(check_in.record),
                        Scope::LowerBody => effects.lower = Some(check_in.record),
                    }
                }
                Class::Drop => self.drop_all(&verdict, ground),
                Class::Cue | Class::Note => {}
            }
            effects.verdicts.insert(check_in.record, verdict);
        }
    }

    fn flag(
        &mut self,
        run: &Run,
        record: RecordId,
        at: DateTime<FixedOffset>,
        verdict: &Verdict,
        effects: &mut Effects,
    ) {
        effects.red = Some(record);
        self.reds.push(Red {
            record,
            at,
            run: run.id,
            symptom: verdict.kind.clone(),
            urgency: verdict.urgency.unwrap_or(Urgency::Call),
            cleared: false,
        });
    }

    fn hold(
        &mut self,
        record: RecordId,
        at: DateTime<FixedOffset>,
        verdict: &Verdict,
        ladder: Option<LadderId>,
        scope: Scope,
        lowest: bool,
    ) {
        self.holds.push(Hold {
            record,
            at,
            symptom: verdict.kind.clone(),
            ladder: if scope == Scope::Ladder { ladder } else { None },
            scope,
            lowest,
            answer: None,
        });
    }

    /// Every ladder with a level below goes down one; the lowest stay where they are.
    fn drop_all(&mut self, verdict: &Verdict, ground: &Ground<'_>) {
        let ids: Vec<LadderId> = self.ladders.keys().cloned().collect();
        for id in ids {
            let Some(entry) = self.ladders.get_mut(&id) else { continue };
            let Some(level) = entry.level else { continue };
            if let Some(below) = level_below(ground, &id, level) {
                let last = last_at(&entry.exposures, level);
                entry.level = Some(below);
                entry.course =
                    Course::Down { from: level, clean: 0, last, symptom: verdict.kind.clone() };
            }
        }
    }

    /// Judges a mark by what came before it in this session and in the exposure before.
    fn verdict_of(&self, run: &Run, mark: &Mark, ground: &Ground<'_>, effects: &Effects) -> Verdict {
        let judge_one = |symptom: &Symptom| {
            let kind = symptom.kind.clone().unwrap_or_else(|| SymptomId::from(crate::rules::UNSAID_KIND));
            let again = run.marks.iter().take_while(|m| m.record != mark.record).any(|m| {
                m.ladder == mark.ladder && effects.verdicts.get(&m.record).is_some_and(|v| v.kind == kind)
            });
            let last_drop = mark.ladder.as_ref().and_then(|ladder| {
                let exposure = self.ladders.get(ladder)?.exposures.last()?;
                let before = self.effects.get(&exposure.run)?;
                // The run's marks on this ladder are known by their records.
                before.verdicts.values().find(|v| v.kind == kind && v.class == Class::Drop).and_then(
                    |v| {
                        before
                            .ladders
                            .get(ladder)
                            .filter(|e| e.drops > 0 && e.symptom == kind)
                            .map(|_| v.amount)
                    },
                )
            });
            judge(ground.rules, &ground.intake, symptom, Before { again, last_drop, next_morning: false })
        };
        let mut strictest: Option<Verdict> = None;
        let now = mark.symptoms.iter().map(judge_one);
        // Of what was confirmed at the end of the session only a red flag outlives a later change.
        let confirmed = mark.confirmed.iter().map(judge_one).filter(|v| v.class == Class::Red);
        for verdict in now.chain(confirmed) {
            if strictest.as_ref().is_none_or(|s| verdict.class > s.class) {
                strictest = Some(verdict);
            }
        }
        strictest.unwrap_or_else(|| {
            let mut nothing = judge(
                ground.rules,
                &ground.intake,
                &Symptom { kind: None, amount: None, place: None, words: None },
                Before::default(),
            );
            nothing.class = Class::Note;
            nothing.ends_set = false;
            nothing
        })
    }

    fn take_mark(&mut self, run: &Run, mark: &Mark, ground: &Ground<'_>, effects: &mut Effects) {
        let verdict = self.verdict_of(run, mark, ground, effects);
        let level = mark
            .variant
            .as_ref()
            .and_then(|v| ground.catalogue.place(v))
            .map(|p| u8::try_from(p.level).unwrap_or(u8::MAX));
        match verdict.class {
            Class::Red => self.flag(run, mark.record, mark.at, &verdict, effects),
            Class::Hold => {
                let scope = if verdict.scope == Scope::Ladder && mark.ladder.is_none() {
                    Scope::All
                } else {
                    verdict.scope
                };
                self.hold(mark.record, mark.at, &verdict, mark.ladder.clone(), scope, false);
                match scope {
                    Scope::All => effects.all = Some(mark.record),
                    Scope::LowerBody => effects.lower = Some(mark.record),
                    Scope::Ladder => {}
                }
                if let Some(ladder) = &mark.ladder {
                    let effect = effect_on(effects, ladder, mark, &verdict);
                    effect.ended = true;
                    effect.held = true;
                    effect.drops = effect.drops.saturating_add(1);
                    effect.from = effect.from.or(level);
                }
            }
            Class::Drop => {
                if let Some(ladder) = &mark.ladder {
                    let below = level.and_then(|l| level_below(ground, ladder, l));
                    let effect = effect_on(effects, ladder, mark, &verdict);
                    effect.drops = effect.drops.saturating_add(1);
                    effect.from = effect.from.or(level);
                    let lowest = below.is_none();
                    if effect.drops > 1 || lowest {
                        effect.ended = true;
                    }
                    if let Some(below) = below {
                        effect.down_to = Some(below);
                    } else {
                        effect.held = true;
                        self.hold(
                            mark.record,
                            mark.at,
                            &verdict,
                            Some(ladder.clone()),
                            Scope::Ladder,
                            true,
                        );
                    }
                }
            }
            Class::Cue => {
                if let Some(ladder) = &mark.ladder {
                    effect_on(effects, ladder, mark, &verdict).cue = true;
                }
            }
            Class::Note => {}
        }
        let family = ground.rules.symptom(&verdict.kind).map(|k| k.family);
        if verdict.class >= Class::Drop && family == Some(Family::PelvicFloor) {
            effects.pelvic_floor = effects.pelvic_floor.saturating_add(1);
            if f64::from(effects.pelvic_floor) >= ground.rules.number("symptom.pelvic-floor-twice", "marks")
            {
                effects.unloaded = Some(mark.record);
            }
        }
        effects.verdicts.insert(mark.record, verdict);
    }

    /// Sets move the strength states and make exposures.
    fn take_sets(
        &mut self,
        run: &Run,
        frame: Frame<'_>,
        k: &Constants,
        ground: &Ground<'_>,
        effects: &Effects,
    ) {
        let assumed = ground.rules.number("strength.body", "assumed_kg");
        let body = run.body_mass.unwrap_or(Kg(assumed));
        for set in rounds_of(run) {
            let Some(place) = frame.catalogue.place(&set.variant) else { continue };
            let Some(group) = place.variant.group.clone() else { continue };
            let Some(reach) = evidence(&set) else { continue };
            let Some(load) = effective_load(place.variant, &set.load, body) else { continue };
            if !load.0.is_finite() {
                continue;
            }
            let (bottom, target) = run
                .prescription(&set.slot)
                .map_or((8.0, 3.0), |p| (f64::from(p.range.low()), p.reserve.unwrap_or(3.0)));
            let prior = frame.catalogue.group(&group).map_or(38.0, |g| g.prior_c);
            let start = start_for(frame.starts, &place.ladder.id, &set.variant)
                .and_then(|s| s.load.as_ref())
                .and_then(|l| effective_load(place.variant, l, body))
                .unwrap_or(load);
            let tracker = self
                .trackers
                .entry(group.clone())
                .or_insert_with(|| Tracker::start(k, prior, start, bottom, target, run.day));
            *tracker = tracker.on(k, run.day);
            let j = f64::from(tracker.sets_today);
            tracker.observe(k, load, reach, j);
            let point = TrendDay { day: run.day, one_rep_max: tracker.one_rep_max() };
            let trend = self.trend.entry(group).or_default();
            match trend.last_mut() {
                Some(last) if last.day == run.day => *last = point,
                Some(_) | None => trend.push(point),
            }
        }
        self.take_exposures(run, k, ground, effects, body);
    }

    fn take_exposures(
        &mut self,
        run: &Run,
        k: &Constants,
        ground: &Ground<'_>,
        effects: &Effects,
        body: Kg,
    ) {
        let mut last_by_ladder: BTreeMap<LadderId, &SetDone> = BTreeMap::new();
        for entry in &run.sets {
            if entry.set.purpose != Purpose::Learn {
                last_by_ladder.insert(entry.set.ladder.clone(), &entry.set);
            }
        }
        for (ladder, last_set) in last_by_ladder {
            let Some(place) = ground.catalogue.place(&last_set.variant) else { continue };
            let level = u8::try_from(place.level).unwrap_or(u8::MAX);
            let prescription = run.prescription(&last_set.slot);
            let range = prescription.map_or(Amount::Reps { low: 8, high: 12 }, |p| p.range);
            let target = prescription.and_then(|p| p.reserve).unwrap_or(3.0);
            let floor = prescription.map_or(1.0, |p| p.floor);
            let timed = matches!(range, Amount::Seconds { .. });
            let symptom_free = effects.red.is_none()
                && effects.all.is_none()
                && effects.ladders.get(&ladder).is_none_or(|e| e.drops == 0 && !e.held);
            let last_round = prescription.map_or(last_set.round, |p| p.sets.saturating_sub(1));
            let sides: Vec<&SetDone> = run
                .sets
                .iter()
                .map(|e| &e.set)
                .filter(|s| {
                    s.slot == last_set.slot && s.round == last_round && s.variant == last_set.variant
                })
                .collect();
            let whole = !sides.is_empty()
                && (!place.variant.per_side || sides.len() >= 2)
                && sides.iter().all(|s| !s.stopped);
            let last = whole.then(|| {
                let count = sides.iter().map(|s| s.seconds.unwrap_or(s.reps)).min().unwrap_or(0);
                let reserve = if sides.iter().any(|s| s.reserve.is_none()) {
                    None
                } else {
                    sides.iter().filter_map(|s| s.reserve).min_by_key(|r| match r {
                        Reserve::Exactly(n) => (*n, 0),
                        Reserve::AtLeast(n) => (*n, 1),
                    })
                };
                let mean = place.variant.group.as_ref().and_then(|g| {
                    let tracker = self.trackers.get(g)?;
                    let w = effective_load(place.variant, &last_set.load, body)?;
                    let j = f64::from(tracker.sets_today.saturating_sub(1));
                    Some(tracker.reserve(k, w, f64::from(count), j).0)
                });
                let mut set = LastSet { count, reserve, mean, as_planned: false };
                set.as_planned =
                    count >= range.low() && set.reserve_at_least(floor, timed) && symptom_free;
                set
            });
            let proposed = prescription.map(|p| &p.variant);
            let chosen = proposed.is_some_and(|v| *v != last_set.variant)
                && effects.ladders.get(&ladder).is_none_or(|e| e.drops == 0);
            self.variants.entry(last_set.variant.clone()).or_default().push(VariantUse {
                day: run.day,
                load: last_set.load.clone(),
                as_planned: last.is_some_and(|l| l.as_planned),
                symptom_free,
            });
            self.ladders.entry(ladder).or_default().exposures.push(Exposure {
                run: run.id,
                day: run.day,
                level,
                variant: last_set.variant.clone(),
                load: last_set.load.clone(),
                last,
                range,
                target,
                symptom_free,
                chosen,
            });
        }
    }

    /// Moves levels after a session.
    fn close_run(&mut self, run: &Run, ground: &Ground<'_>, effects: &Effects) {
        let mut touched: Vec<LadderId> = effects.ladders.keys().cloned().collect();
        for (id, entry) in &self.ladders {
            if entry.exposures.last().is_some_and(|e| e.run == run.id) && !touched.contains(id) {
                touched.push(id.clone());
            }
        }
        for id in touched {
            let entry = self.ladders.entry(id.clone()).or_default();
            let exposed = entry.exposures.last().filter(|e| e.run == run.id).cloned();
            let effect = effects.ladders.get(&id);
            let dropped = effect.filter(|e| e.drops > 0);
            if let Some(effect) = dropped {
                let from = effect.from.or(entry.level).unwrap_or(0);
                // The level below the last one that was marked; the lowest stays and is held.
                let to = effect.down_to.or_else(|| level_below(ground, &id, from)).unwrap_or(from);
                entry.level = Some(to);
                if to < from {
                    // Back up one level at a time, even if two were left in one session.
                    let back = level_above(ground, &id, to).unwrap_or(from).min(from);
                    entry.course = Course::Down {
                        from: back,
                        clean: 0,
                        last: last_at_in_run(run, ground, back).or_else(|| last_at(&entry.exposures, back)),
                        symptom: effect.symptom.clone(),
                    };
                }
                continue;
            }
            let Some(exposed) = exposed else { continue };
            if !exposed.symptom_free {
                continue;
            }
            let settled = run.next_day.as_ref().map(|n| n.answer == NextDay::Settled);
            match &mut entry.course {
                Course::Usual => {
                    let before = entry.exposures.iter().rev().nth(1);
                    let twice = before.is_some_and(|b| b.chosen && b.level == exposed.level);
                    if !exposed.chosen || twice || entry.level.is_none() {
                        entry.level = Some(exposed.level);
                    }
                }
                Course::Down { from, clean, .. } => {
                    if exposed.level >= *from {
                        entry.level = Some(exposed.level);
                        entry.course = Course::Usual;
                    } else {
                        if !exposed.chosen {
                            entry.level = Some(exposed.level);
                        }
                        match settled {
                            Some(true) => *clean = clean.saturating_add(1),
                            Some(false) => *clean = 0,
                            // Silence is not settled.
                            None => {}
                        }
                    }
                }
                Course::Lighter { .. } => {
                    entry.level = Some(exposed.level);
                    entry.course = Course::Usual;
                }
            }
        }
    }

    /// The morning after.
    fn take_next_day(&mut self, run: &Run, ground: &Ground<'_>) {
        let Some(next) = &run.next_day else { return };
        for symptom in &next.symptoms {
            let before = Before { next_morning: true, ..Before::default() };
            let verdict = judge(ground.rules, &ground.intake, symptom, before);
            // It belongs to the ladder it was marked on; without one it concerns all.
            let ladder = run
                .marks
                .iter()
                .find(|m| m.symptoms.iter().any(|s| s.kind == symptom.kind))
                .and_then(|m| m.ladder.clone());
            match verdict.class {
                Class::Red => {
                    self.reds.push(Red {
                        record: next.record,
                        at: next.at,
                        run: run.id,
                        symptom: verdict.kind.clone(),
                        urgency: verdict.urgency.unwrap_or(Urgency::Call),
                        cleared: false,
                    });
                }
                Class::Hold => {
                    let scope = match (verdict.scope, &ladder) {
                        (Scope::Ladder, None) => Scope::All,
                        (scope, _) => scope,
                    };
                    self.hold(next.record, next.at, &verdict, ladder, scope, false);
                }
                Class::Drop => match ladder {
                    // A ladder that was marked in the session has gone down already.
                    Some(id) if self.ladders.get(&id).is_some_and(|l| is_down(&l.course)) => {}
                    Some(id) => self.drop_one(&id, &verdict, ground),
                    None => self.drop_all(&verdict, ground),
                },
                Class::Cue | Class::Note => {}
            }
        }
    }

    fn drop_one(&mut self, id: &LadderId, verdict: &Verdict, ground: &Ground<'_>) {
        let Some(entry) = self.ladders.get_mut(id) else { return };
        let Some(level) = entry.level else { return };
        if let Some(below) = level_below(ground, id, level) {
            let last = last_at(&entry.exposures, level);
            entry.level = Some(below);
            entry.course = Course::Down { from: level, clean: 0, last, symptom: verdict.kind.clone() };
        }
    }
}

fn is_down(course: &Course) -> bool {
    matches!(course, Course::Down { .. })
}

fn effect_on<'e>(
    effects: &'e mut Effects,
    ladder: &LadderId,
    mark: &Mark,
    verdict: &Verdict,
) -> &'e mut LadderEffect {
    let effect = effects.ladders.entry(ladder.clone()).or_insert_with(|| LadderEffect {
        by: mark.record,
        symptom: verdict.kind.clone(),
        from: None,
        down_to: None,
        ended: false,
        held: false,
        cue: false,
        drops: 0,
    });
    // The reason names the latest mark.
    effect.by = mark.record;
    effect.symptom = verdict.kind.clone();
    effect
}

/// The next lower level with an option that is open, if there is one.
#[must_use]
pub fn level_below(ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<u8> {
    let ladder = ground.catalogue.ladder(ladder)?;
    open_levels(ground, ladder).into_iter().rfind(|l| *l < level)
}

/// The next higher level with an option that is open, if there is one.
#[must_use]
pub fn level_above(ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<u8> {
    let ladder = ground.catalogue.ladder(ladder)?;
    open_levels(ground, ladder).into_iter().find(|l| *l > level)
}

fn open_levels(ground: &Ground<'_>, ladder: &crate::catalogue::Ladder) -> Vec<u8> {
    let mut levels: Vec<u8> = ladder
        .levels
        .iter()
        .enumerate()
        .filter(|(level, l)| {
            l.variants.iter().any(|variant| {
                let place = crate::catalogue::Place { ladder, level: *level, variant };
                ground.bar(&place, None).is_none()
            })
        })
        .filter_map(|(level, _)| u8::try_from(level).ok())
        .collect();
    levels.dedup();
    levels
}

fn last_at(exposures: &[Exposure], level: u8) -> Option<(VariantId, Load)> {
    exposures.iter().rfind(|e| e.level == level).map(|e| (e.variant.clone(), e.load.clone()))
}

fn last_at_in_run(run: &Run, ground: &Ground<'_>, level: u8) -> Option<(VariantId, Load)> {
    run.sets
        .iter()
        .rfind(|e| ground.catalogue.place(&e.set.variant).is_some_and(|p| p.level == usize::from(level)))
        .map(|e| (e.set.variant.clone(), e.set.load.clone()))
}

/// The coach's start for a variant: one that names it, else one for its ladder without a variant.
#[must_use]
pub fn start_for<'s>(starts: &'s [Start], ladder: &LadderId, variant: &VariantId) -> Option<&'s Start> {
    starts
        .iter()
        .rfind(|s| s.ladder == *ladder && s.variant.as_ref() == Some(variant))
        .or_else(|| starts.iter().rfind(|s| s.ladder == *ladder && s.variant.is_none()))
}

/// A set as evidence of strength; `None` if it is none (5.2).
fn evidence(set: &SetDone) -> Option<Reach> {
    let counts = matches!(set.purpose, Purpose::Work | Purpose::Find);
    if !counts || set.stopped || set.seconds.is_some() || set.reps == 0 {
        return None;
    }
    let reps = f64::from(set.reps);
    match set.reserve? {
        Reserve::Exactly(n) => Some(Reach::Exactly { reps, reserve: f64::from(n) }),
        Reserve::AtLeast(n) => Some(Reach::AtLeast { reps, reserve: f64::from(n) }),
    }
}

/// Sets round by round: of two sides the one with fewer reps to failure.
fn rounds_of(run: &Run) -> Vec<SetDone> {
    let mut rounds: Vec<SetDone> = Vec::new();
    for entry in &run.sets {
        let set = &entry.set;
        let other = rounds.iter_mut().find(|r| {
            set.side.is_some()
                && r.side.is_some()
                && r.side != set.side
                && r.slot == set.slot
                && r.round == set.round
                && r.variant == set.variant
        });
        match other {
            Some(other) => {
                // A side without evidence leaves the round to the other one.
                let weaker = match (evidence(other), evidence(set)) {
                    (Some(a), Some(b)) => {
                        b.total() < a.total()
                            || (b.total() <= a.total() && matches!(b, Reach::Exactly { .. }))
                    }
                    (None, Some(_)) => true,
                    (Some(_) | None, None) => false,
                };
                if weaker {
                    *other = set.clone();
                }
            }
            None => rounds.push(set.clone()),
        }
    }
    rounds
}
