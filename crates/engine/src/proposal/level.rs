//! Choosing the level and the variant (DESIGN 5.4).

use super::load::{LoadCase, days_between};
use crate::catalogue::{Place, ReadyMark};
use crate::ids::{SymptomId, VariantId};
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::state::{Course, Exposure, LadderState};
use crate::units::Kg;

/// A level with what it brings along.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelPick {
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Never heavier than this.
    pub cap: Option<Kg>,
    /// Reps stay at the bottom.
    pub bottom_only: bool,
    /// More reps than the range allows.
    pub more_reps: u16,
    /// Why, if the level itself moved or was set.
    pub reasons: Vec<Reason>,
}

/// Exposures running of the same variant, as many as the rule asks for, at the top of the range with target + 1 in reserve, at
/// the ready mark or at the heaviest that her kit makes. An option easier than the level she stands on says nothing
/// of the one above it, and neither does what was done before a symptom, nor what was done before weeks away: the load
/// goes down then.
#[must_use]
pub fn ready_for_more(case: &LoadCase<'_>, state: &LadderState, open: &[Place<'_>], level: u8) -> bool {
    good_running(case, state, open, level) as f64 >= case.ground.rules.number("level.up", "exposures")
}

/// How many exposures running count towards the level above, as [`ready_for_more`] has it.
pub(super) fn good_running(case: &LoadCase<'_>, state: &LadderState, open: &[Place<'_>], level: u8) -> usize {
    let Some(latest) = state.exposures.last() else { return 0 };
    let Some(place) = open.iter().find(|p| p.variant.id == latest.variant && p.level >= usize::from(level))
    else {
        return 0;
    };
    if days_between(latest.day, case.ground.day) >= case.number("load.lay-off", "days_1") {
        return 0;
    }
    let over = case.number("level.up", "over_target");
    let good = |e: &Exposure| {
        let timed = matches!(e.range, Amount::Seconds { .. });
        // The aim of then or of today, whichever asks for more.
        let threshold = e.target.max(case.effort.target) + over;
        case.same_measure(e)
            && e.symptom_free
            && state.counts_from.is_none_or(|from| e.day >= from)
            && e.last.is_some_and(|l| l.count >= case.top(e) && l.reserve_at_least(threshold, timed))
            && at_ready_mark(case, place, e)
    };
    state.exposures.iter().rev().take_while(|e| e.variant == latest.variant && good(e)).count()
}

fn at_ready_mark(case: &LoadCase<'_>, place: &Place<'_>, e: &Exposure) -> bool {
    let heaviest = case.ground.kit_loads(place.variant).last().map(|l| place.variant.external(l).0);
    let held = place.variant.external(&e.load).0;
    let at_heaviest = heaviest.is_none_or(|h| held >= h - 1e-9);
    let count = e.last.map_or(0, |l| l.count);
    let marked = match place.variant.ready {
        ReadyMark::Load { kg } => held >= kg - 1e-9,
        // A mark beyond the top of this dose is met at the top.
        ReadyMark::Reps { reps } => count >= reps.min(case.range.high()),
        ReadyMark::Seconds { seconds } => count >= seconds.min(case.range.high()),
    };
    let unloaded = matches!(e.load, Load::Nothing);
    marked || (at_heaviest && !unloaded)
}

/// The level for today, before the load has its say.
#[must_use]
pub fn level_today(
    case: &LoadCase<'_>,
    state: Option<&LadderState>,
    open: &[Place<'_>],
    coach_level: Option<(u8, Reason)>,
    coach_variant: Option<&VariantId>,
    owed: Option<&SymptomId>,
) -> LevelPick {
    let rules = case.ground.rules;
    let levels: Vec<u8> = {
        let mut l: Vec<u8> = open.iter().filter_map(|p| u8::try_from(p.level).ok()).collect();
        l.dedup();
        l
    };
    // Among the allowed ones: the level itself, else the next below, else the lowest.
    let nearest =
        |wanted: u8| levels.iter().copied().rfind(|l| *l <= wanted).or(levels.first().copied()).unwrap_or(0);
    let above = |level: u8| levels.iter().copied().find(|l| *l > level);
    let may_rise =
        |from: u8, to: u8| open.first().is_none_or(|p| !case.ground.no_level_up(p.ladder, from, to));
    let plain = |level: u8, reasons: Vec<Reason>| LevelPick {
        level: nearest(level),
        cap: None,
        bottom_only: false,
        more_reps: 0,
        reasons,
    };
    if let Some(symptom) = owed {
        // A symptom came before she has trained it: it begins a step lower, at the bottom of the range and with no
        // set to find a load; at the lowest level with the lightest there is.
        let begin = nearest(coach_level.map_or(0, |(level, _)| level));
        let below = levels.iter().copied().rfind(|l| *l < begin);
        let reason = Reason::new(rules, ReasonCode::LevelDownSymptom, "level.back-up")
            .with("symptom", Fact::Symptom(symptom.clone()))
            .number("level", f64::from(below.unwrap_or(begin)) + 1.0)
            .number("clean", 0.0)
            .number("exposures", rules.number("level.back-up", "exposures"));
        let mut pick = plain(below.unwrap_or(begin), vec![reason]);
        pick.bottom_only = true;
        pick.cap = below.is_none().then_some(Kg(0.0));
        return pick;
    }
    if let Some((level, reason)) = coach_level {
        return plain(level, vec![reason]);
    }
    let Some(state) = state else { return plain(levels.first().copied().unwrap_or(0), Vec::new()) };
    let Some(standing) = state.level else {
        return plain(levels.first().copied().unwrap_or(0), Vec::new());
    };
    match &state.course {
        Course::Usual => {
            let level = nearest(standing);
            if level == standing
                && ready_for_more(case, state, open, level)
                && let Some(next) = above(level).filter(|next| may_rise(level, *next))
            {
                let start_fits = variant_at(open, next, Some(state), coach_variant, None)
                    .is_some_and(|p| case.start(&p).is_some_and(|(load, _)| case.start_passes(&p, &load)));
                if start_fits {
                    let mut pick = plain(next, Vec::new());
                    pick.reasons.push(
                        Reason::new(rules, ReasonCode::LevelUp, "level.up")
                            .number("level", f64::from(next) + 1.0)
                            .number("exposures", rules.number("level.up", "exposures")),
                    );
                    return pick;
                }
                let mut pick = plain(level, Vec::new());
                pick.more_reps = rules.number("level.up", "more_reps") as u16;
                return pick;
            }
            plain(level, Vec::new())
        }
        Course::Down { from, clean, last, symptom } => {
            let level = nearest(standing);
            let needed = rules.number("level.back-up", "exposures");
            let share = rules.number("level.back-up", "share");
            let cap = cap_of(case, last.as_ref(), share);
            // Back up only with something light enough to hold.
            let makes = || variant_at(open, *from, Some(state), coach_variant, Some((case, cap))).is_some();
            let back = f64::from(*clean) >= needed && above(level) == Some(*from) && may_rise(level, *from);
            if back && makes() {
                let reason = Reason::new(rules, ReasonCode::BackUp, "level.back-up")
                    .with("symptom", Fact::Symptom(symptom.clone()))
                    .number("exposures", f64::from(*clean))
                    .number("level", f64::from(*from) + 1.0)
                    .number("percent", libm::round(share * 100.0));
                let mut pick = plain(*from, vec![reason]);
                pick.bottom_only = cap.is_none();
                pick.cap = cap;
                return pick;
            }
            let first_after = state.exposures.last().is_none_or(|e| e.level > level || !e.symptom_free);
            let code = if first_after { ReasonCode::LevelDownSymptom } else { ReasonCode::StayDown };
            let reason = Reason::new(rules, code, "level.back-up")
                .with("symptom", Fact::Symptom(symptom.clone()))
                .number("level", f64::from(level) + 1.0)
                .number("clean", f64::from(*clean))
                .number("exposures", needed);
            let mut pick = plain(level, vec![reason]);
            if back && let Some((variant, load)) = last {
                // Her time has come, and her kit makes nothing light enough.
                pick.reasons.push(
                    Reason::new(rules, ReasonCode::NothingLighter, "load.nothing-lighter")
                        .with("variant", Fact::Variant(variant.clone()))
                        .with("load", Fact::Load(load.clone())),
                );
            }
            // A symptom never raises the level, whatever closed below it, nor the load.
            pick.level = pick.level.min(standing);
            pick.cap = cap_of(case, last.as_ref(), 1.0);
            pick
        }
        Course::Lighter { last, .. } => {
            let share = rules.number("symptom.lowest", "share");
            let reason = Reason::new(rules, ReasonCode::RestartLighter, "symptom.lowest")
                .number("percent", libm::round(100.0 - share * 100.0));
            let mut pick = plain(standing, vec![reason]);
            pick.level = pick.level.min(standing);
            // Lighter than nothing is nothing: no option with a load in its place.
            let nothing = last.as_ref().is_some_and(|(_, load)| matches!(load, Load::Nothing));
            pick.cap = cap_of(case, last.as_ref(), share).or(nothing.then_some(Kg(0.0)));
            pick.bottom_only = true;
            pick
        }
    }
}

fn cap_of(case: &LoadCase<'_>, last: Option<&(VariantId, Load)>, share: f64) -> Option<Kg> {
    let (variant, load) = last?;
    let place = case.ground.catalogue.place(variant)?;
    let kg = place.variant.external(load).0;
    (kg > 0.0).then_some(Kg(kg * share))
}

/// The variant at a level: last done symptom-free, then her choice, then the coach's order. With a cap,
/// only those that her kit makes under it.
#[must_use]
pub fn variant_at<'a>(
    open: &[Place<'a>],
    level: u8,
    state: Option<&LadderState>,
    coach: Option<&VariantId>,
    cap: Option<(&LoadCase<'_>, Option<Kg>)>,
) -> Option<Place<'a>> {
    let light = |p: &&Place<'a>| cap.is_none_or(|(case, cap)| LoadCase { cap, ..*case }.can_keep_to_cap(p));
    let here: Vec<&Place<'a>> = open.iter().filter(|p| p.level == usize::from(level)).filter(light).collect();
    let find = |id: &VariantId| here.iter().find(|p| p.variant.id == *id).map(|p| **p);
    let done = state
        .and_then(|s| s.exposures.iter().rev().filter(|e| e.symptom_free).find_map(|e| find(&e.variant)));
    let chosen =
        || state.and_then(|s| s.exposures.iter().rev().filter(|e| e.chosen).find_map(|e| find(&e.variant)));
    done.or_else(chosen).or_else(|| coach.and_then(find)).or_else(|| here.first().map(|p| **p))
}
