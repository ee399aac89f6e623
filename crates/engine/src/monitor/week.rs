//! One week: load, minutes, sets, what was meant and what was done.

use super::Watched;
use super::load::{Minutes, monotony, session_load, strain};
use crate::catalogue::Pattern;
use crate::history::{Run, rounds_of};
use crate::ids::{RuleId, SlotId};
use crate::proposal::Outcome;
use crate::record::{Reserve, SkipWhy};
use crate::rules::RulePack;
use crate::stage::Stage;
use chrono::{Days, NaiveDate};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;

/// Seven local days. The last week ends on the day that is asked for, so that no week is cut short by
/// the calendar; those before it follow on without a gap.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Week {
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
    /// False if her first session lies within it: what came before is not known, so nothing that needs
    /// all seven days is said.
    pub whole: bool,
    /// Sessions with at least one set.
    pub sessions: u32,
    /// Session load.
    pub load: WeekLoad,
    /// Minutes.
    pub minutes: WeekMinutes,
    /// Working sets by pattern, for the patterns that were trained.
    pub patterns: Vec<PatternSets>,
    /// Meant and done.
    pub adherence: Adherence,
    /// Effort against target; `None` where no answer has a target to stand against.
    pub effort: Option<EffortGap>,
}

/// Session load of a week: session effort (CR10) times minutes.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct WeekLoad {
    /// Day by day, the first day first; several sessions in a day add, a rest day is 0.
    pub daily: Vec<f64>,
    /// Their sum.
    pub sum: f64,
    /// Mean daily load over its SD; `None` where it is undefined, the week is not whole, or a session's
    /// load is not known.
    pub monotony: Option<f64>,
    /// Sum times monotony.
    pub strain: Option<f64>,
    /// Sessions whose load is not known, and not in the sum.
    pub unknown: u32,
    /// Sessions in the sum whose minutes are estimated from the times of their records.
    pub estimated: u32,
    /// The rule.
    pub rule: RuleId,
}

/// Minutes of a week.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct WeekMinutes {
    /// Minutes of her sessions. What she does outside them is not logged and not counted.
    pub minutes: u32,
    /// Days with a session.
    pub days: u32,
    /// Sessions whose minutes are estimated from the times of their records.
    pub estimated: u32,
    /// Sessions whose minutes are not known, and not in the sum.
    pub unknown: u32,
    /// The guideline of her stage at the end of the week, if there is one.
    pub guideline: Option<Guideline>,
}

/// What a guideline names for a week.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Guideline {
    /// At least so many minutes, of all activity and not of strength alone.
    pub minutes: u32,
    /// Over at least so many days.
    pub days: u32,
    /// The rule.
    pub rule: RuleId,
    /// Its source, with its mark.
    pub source: String,
}

/// Working sets of one pattern; both sides are one set.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct PatternSets {
    /// Pattern.
    pub pattern: Pattern,
    /// Working sets.
    pub sets: u32,
    /// Those that were hard: not ended by a mark, and with at most one rep more in reserve than was
    /// aimed at (rule `watch.hard-set`). "5 or more" is not known to be hard.
    pub hard: u32,
    /// Those of which it cannot be told: no answer, or no target.
    pub unrated: u32,
}

/// What was meant and what was done.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Adherence {
    /// Sessions a week that the plan in force asks for; `None` without a plan.
    pub meant: Option<u32>,
    /// Sessions done over sessions meant, above 1 for more than meant; `None` if the week is not whole
    /// or nothing is meant.
    pub share: Option<f64>,
    /// Sets of the sessions that were begun, as they were shown.
    pub planned_sets: u32,
    /// Those that were done.
    pub done_sets: u32,
    /// Those that she chose to leave out.
    pub skipped_chosen: u32,
    /// Those that the ten-minute version left out.
    pub skipped_short: u32,
    /// Those that were left out after a symptom.
    pub skipped_symptom: u32,
}

/// Reps in reserve as said, less those aimed at.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct EffortGap {
    /// Their mean, in reps: above 0 is easier than meant. "5 or more" counts as 5.
    pub mean: f64,
    /// Working sets in it.
    pub sets: u32,
    /// Those that said "or more": if there are any, the mean is a lower bound.
    pub at_least: u32,
}

/// True for a run that is a session: at least one set stands.
pub(super) fn is_session(run: &Run) -> bool {
    !run.sets.is_empty()
}

/// The weeks up to the day, the earliest first; none before her first session.
pub(super) fn weeks(watched: &Watched<'_>) -> Vec<Week> {
    let sessions = || watched.runs().filter(|r| is_session(r));
    let Some(first) = sessions().map(|r| r.day).min() else { return Vec::new() };
    let most = watched.rules.number("watch.weeks", "weeks");
    let mut weeks = Vec::new();
    let mut to = watched.day;
    while to >= first && f64::from(u32::try_from(weeks.len()).unwrap_or(u32::MAX)) < most {
        let Some(from) = to.checked_sub_days(Days::new(6)) else { break };
        weeks.push(week(watched, from, to, from >= first));
        let Some(before) = from.pred_opt() else { break };
        to = before;
    }
    weeks.reverse();
    weeks
}

fn week(watched: &Watched<'_>, from: NaiveDate, to: NaiveDate, whole: bool) -> Week {
    let runs: Vec<&Run> = watched.runs().filter(|r| (from..=to).contains(&r.day)).collect();
    let sessions: Vec<&Run> = runs.iter().copied().filter(|r| is_session(r)).collect();
    let count = u32::try_from(sessions.len()).unwrap_or(u32::MAX);
    let (load, minutes) = load_and_minutes(watched, &sessions, from, to, whole);
    Week {
        from,
        to,
        whole,
        sessions: count,
        load,
        minutes,
        patterns: patterns(watched, &sessions),
        adherence: adherence(watched, &runs, count, whole),
        effort: effort(&sessions),
    }
}

fn load_and_minutes(
    watched: &Watched<'_>,
    sessions: &[&Run],
    from: NaiveDate,
    to: NaiveDate,
    whole: bool,
) -> (WeekLoad, WeekMinutes) {
    let cap = watched.rules.number("watch.minutes", "cap");
    let mut daily = vec![0.0; 7];
    let mut load = WeekLoad {
        daily: Vec::new(),
        sum: 0.0,
        monotony: None,
        strain: None,
        unknown: 0,
        estimated: 0,
        rule: RuleId::from("watch.load"),
    };
    let mut minutes = WeekMinutes {
        minutes: 0,
        days: 0,
        estimated: 0,
        unknown: 0,
        guideline: guideline(watched.rules, watched.stage_on(to)),
    };
    let mut days = BTreeSet::new();
    for run in sessions {
        days.insert(run.day);
        let took = Minutes::of(run, cap);
        let estimated = u32::from(matches!(took, Minutes::Estimated(_)));
        match took.count() {
            Some(n) => minutes.minutes = minutes.minutes.saturating_add(n),
            None => minutes.unknown += 1,
        }
        minutes.estimated += estimated;
        let day = usize::try_from((run.day - from).num_days()).ok().and_then(|i| daily.get_mut(i));
        match (session_load(run, took), day) {
            (Some(l), Some(day)) => {
                *day += l;
                load.estimated += estimated;
            }
            (Some(_) | None, _) => load.unknown += 1,
        }
    }
    minutes.days = u32::try_from(days.len()).unwrap_or(u32::MAX);
    load.sum = daily.iter().sum();
    if whole && load.unknown == 0 {
        load.monotony = monotony(&daily);
        load.strain = strain(&daily);
    }
    load.daily = daily;
    (load, minutes)
}

/// The guideline of a stage. After a loss, and where neither pregnant nor after a birth, the sources
/// name none.
#[must_use]
pub fn guideline(rules: &RulePack, stage: Option<&Stage>) -> Option<Guideline> {
    let id = match stage? {
        Stage::Pregnant { .. } => "watch.guideline-pregnant",
        Stage::Postpartum { .. } => "watch.guideline-postpartum",
        Stage::AfterLoss { .. } | Stage::Neither => return None,
    };
    let rule = RuleId::from(id);
    let source = rules.source(&rule).to_owned();
    // A rule's number of minutes or days is small and whole.
    let number = |name: &str| rules.number(id, name) as u32;
    Some(Guideline { minutes: number("minutes"), days: number("days"), rule, source })
}

fn patterns(watched: &Watched<'_>, sessions: &[&Run]) -> Vec<PatternSets> {
    let over = watched.rules.number("watch.hard-set", "over_target");
    let mut by: BTreeMap<Pattern, PatternSets> = BTreeMap::new();
    for run in sessions {
        for round in rounds_of(run).iter().filter(|r| r.is_work()) {
            let place = watched.catalogue.place(&round.set.variant);
            // A variant of a newer catalogue is counted by its ladder, if that is known.
            let ladder = place.map(|p| p.ladder).or_else(|| watched.catalogue.ladder(&round.set.ladder));
            let Some(pattern) = ladder.map(|l| l.pattern) else { continue };
            let entry = by.entry(pattern).or_insert(PatternSets { pattern, sets: 0, hard: 0, unrated: 0 });
            entry.sets += 1;
            let target = run.prescription(&round.set.slot).and_then(|p| p.reserve);
            match (round.reserve(), target) {
                _ if round.stopped() => {}
                (Some(Reserve::Exactly(n)), Some(target)) => {
                    entry.hard += u32::from(f64::from(n) <= target + over);
                }
                (Some(Reserve::AtLeast(_)), Some(_)) => {}
                (None, _) | (_, None) => entry.unrated += 1,
            }
        }
    }
    by.into_values().collect()
}

fn adherence(watched: &Watched<'_>, runs: &[&Run], sessions: u32, whole: bool) -> Adherence {
    let meant = watched.per_week.map(u32::from);
    let share = meant.filter(|m| whole && *m > 0).map(|m| f64::from(sessions) / f64::from(m));
    let mut all = Adherence {
        meant,
        share,
        planned_sets: 0,
        done_sets: 0,
        skipped_chosen: 0,
        skipped_short: 0,
        skipped_symptom: 0,
    };
    for run in runs {
        let planned: BTreeMap<&SlotId, u8> = run
            .shown
            .iter()
            .flat_map(|s| &s.slots)
            .filter_map(|p| match &p.outcome {
                Outcome::Train(prescription) => Some((&p.slot, prescription.sets)),
                Outcome::Rest => None,
            })
            .collect();
        all.planned_sets += planned.values().map(|sets| u32::from(*sets)).sum::<u32>();
        let is_planned = |slot: &SlotId, round: u8| planned.get(slot).is_some_and(|sets| round < *sets);
        let mut gone: BTreeSet<(&SlotId, u8)> = BTreeSet::new();
        for set in run.sets.iter().map(|e| &e.set).filter(|s| is_planned(&s.slot, s.round)) {
            all.done_sets += u32::from(gone.insert((&set.slot, set.round)));
        }
        // A set that was skipped and then done all the same was done.
        for skip in run.skips.iter().filter(|s| is_planned(&s.slot, s.round)) {
            if gone.insert((&skip.slot, skip.round)) {
                match skip.why {
                    SkipWhy::Chosen => all.skipped_chosen += 1,
                    SkipWhy::Short => all.skipped_short += 1,
                    SkipWhy::Symptom => all.skipped_symptom += 1,
                }
            }
        }
    }
    all
}

fn effort(sessions: &[&Run]) -> Option<EffortGap> {
    let (mut sum, mut sets, mut at_least) = (0.0, 0u32, 0);
    for run in sessions {
        for round in rounds_of(run).iter().filter(|r| r.is_work() && !r.stopped()) {
            let Some(target) = run.prescription(&round.set.slot).and_then(|p| p.reserve) else { continue };
            let said = match round.reserve() {
                Some(Reserve::Exactly(n)) => n,
                Some(Reserve::AtLeast(n)) => {
                    at_least += 1;
                    n
                }
                None => continue,
            };
            sum += f64::from(said) - target;
            sets += 1;
        }
    }
    (sets > 0).then(|| EffortGap { mean: sum / f64::from(sets), sets, at_least })
}
