//! A second pair of eyes on a trial: the bounds that must never break, kept apart from the code that keeps them. It
//! knows what was shown, done and marked, and nothing of the engine's state.

use crate::catalogue::Catalogue;
use crate::ids::{LadderId, VariantId};
use crate::kit::Load;
use crate::proposal::Prescription;
use crate::reason::Reason;
use crate::record::{Reserve, SetDone};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// How often something was broken, and how often it could have been.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Breaches {
    /// Loads proposed.
    pub loads: u64,
    /// Loads above every bound, or heavier in mid-session.
    pub step: u64,
    /// Levels proposed after another.
    pub levels: u64,
    /// Levels more than one step from the one before.
    pub level: u64,
    /// Questions for a session while a red flag waited.
    pub reds: u64,
    /// Proposals in spite of it.
    pub red: u64,
    /// Symptoms that asked for a level down.
    pub drops: u64,
    /// Of these not answered at the next exposure, or in the rest of the session.
    pub late: u64,
}

impl Breaches {
    /// Adds another trial's.
    pub fn add(&mut self, o: &Self) {
        self.loads += o.loads;
        self.step += o.step;
        self.levels += o.levels;
        self.level += o.level;
        self.reds += o.reds;
        self.red += o.red;
        self.drops += o.drops;
        self.late += o.late;
    }
}

#[derive(Clone, Debug)]
struct Use {
    day: NaiveDate,
    kg: f64,
    as_planned: bool,
    /// Count and reserve of the last planned set, the weaker side.
    last: Option<(u16, Option<Reserve>)>,
}

#[derive(Clone, Debug, Default)]
struct OnLadder {
    /// Level last marked or else shown, and level last done.
    level: Option<[usize; 2]>,
    /// A drop that the next exposure has to answer: the level it was marked at, with the load held there.
    owed: Option<(usize, f64)>,
}

#[derive(Clone, Debug, Default)]
pub(super) struct Watch {
    pub breaches: Breaches,
    /// What was broken, in words, the first few.
    pub notes: Vec<String>,
    uses: BTreeMap<VariantId, Vec<Use>>,
    ladders: BTreeMap<LadderId, OnLadder>,
}

/// What was proposed for a ladder, with what she could have been given.
pub(super) struct Shown<'a> {
    pub day: NaiveDate,
    pub ladder: &'a LadderId,
    pub plan: &'a Prescription,
    /// Loads of her kit for the variant, in kg, lightest first.
    pub kit: &'a [f64],
    /// Levels that are open today, easiest first.
    pub open: &'a [usize],
    /// Why it was proposed.
    pub why: &'a [Reason],
}

const EPS: f64 = 1e-9;

impl Watch {
    fn note(&mut self, what: String) {
        if self.notes.len() < 4 {
            self.notes.push(what);
        }
    }

    /// A ladder rests: that answers a drop.
    pub fn rests(&mut self, ladder: &LadderId) {
        self.ladders.entry(ladder.clone()).or_default().owed = None;
    }

    pub fn shown(&mut self, catalogue: &Catalogue, shown: &Shown<'_>) {
        let kg = kg_of(catalogue, &shown.plan.variant, &shown.plan.load);
        self.breaches.loads += 1;
        if !self.load_is_bounded(shown, kg) {
            self.breaches.step += 1;
            let uses = self.uses.get(&shown.plan.variant).cloned().unwrap_or_default();
            self.note(format!("{}: {} at {kg} kg after {uses:?}", shown.day, shown.plan.variant));
        }
        let level = usize::from(shown.plan.level);
        let on = self.ladders.entry(shown.ladder.clone()).or_default().clone();
        let place = |l: usize| shown.open.iter().position(|o| *o == l);
        let from = on.level.map(|from| from.map(place));
        if let (Some(from), Some(to)) = (from, place(level))
            && from.iter().any(Option::is_some)
        {
            self.breaches.levels += 1;
            if !from.iter().flatten().any(|f| f.abs_diff(to) <= 1) {
                self.breaches.level += 1;
                let codes: Vec<&str> = shown.why.iter().map(|r| r.code.slug()).collect();
                let note = format!(
                    "{}: {} from {from:?} to {to} of {:?}, {codes:?}",
                    shown.day, shown.ladder, shown.open
                );
                self.note(note);
            }
        }
        if let Some((marked, held)) = self.ladders.entry(shown.ladder.clone()).or_default().owed.take() {
            // A level down; or the coach's restart: at most 80 % of what was held, or the lightest there is.
            let lighter = kg <= 0.8 * held + EPS || shown.kit.first().is_none_or(|least| kg <= least + EPS);
            if !(level < marked || level == marked && lighter) {
                self.breaches.late += 1;
                let codes: Vec<&str> = shown.why.iter().map(|r| r.code.slug()).collect();
                let note = format!(
                    "{}: {} marked at {marked} with {held} kg, then {level} with {kg} kg of {:?} and {:?}, {codes:?}",
                    shown.day, shown.ladder, shown.open, shown.kit
                );
                self.note(note);
            }
        }
    }

    /// The step rule, read off the log: at most a tenth above the heaviest done as planned in 28 days; a next load of
    /// the kit beyond that only when earned; after 14 and 28 days away 90 and 80 % of the last.
    fn load_is_bounded(&self, shown: &Shown<'_>, kg: f64) -> bool {
        let Some(uses) = self.uses.get(&shown.plan.variant) else { return true };
        let Some(last) = uses.last() else { return true };
        if kg <= 0.0 || shown.kit.first().is_some_and(|least| kg <= least + EPS) {
            return true;
        }
        let days = |u: &Use| (shown.day - u.day).num_days();
        let away = days(last);
        let share = if away >= 28 {
            0.8
        } else if away >= 14 {
            0.9
        } else {
            f64::INFINITY
        };
        if kg > share * last.kg + EPS {
            return false;
        }
        let best = uses.iter().filter(|u| u.as_planned && days(u) <= 28).map(|u| u.kg).max_by(f64::total_cmp);
        let Some(best) = best else { return kg <= last.kg + EPS };
        if kg <= 1.1 * best + EPS {
            return true;
        }
        let next = shown.kit.iter().copied().find(|k| *k > 1.1 * best + EPS);
        let none_between = !shown.kit.iter().any(|k| *k > best + EPS && *k <= 1.1 * best + EPS);
        next.is_some_and(|n| kg <= n + EPS) && none_between && self.earned(shown, best, uses)
    }

    fn earned(&self, shown: &Shown<'_>, best: f64, uses: &[Use]) -> bool {
        let target = shown.plan.reserve.unwrap_or(3.0);
        let at_top = |u: &Use, more: f64| {
            u.kg >= best - EPS
                && u.last.is_some_and(|(count, reserve)| {
                    count >= shown.plan.range.high()
                        && match reserve {
                            Some(Reserve::Exactly(n)) => f64::from(n) >= target + more,
                            // Above five the filter's mean decides, which is not known here.
                            Some(Reserve::AtLeast(_)) => true,
                            None => false,
                        }
                })
        };
        let mut recent = uses.iter().rev();
        match (recent.next(), recent.next()) {
            (Some(a), _) if at_top(a, 1.5) => true,
            (Some(a), Some(b)) => at_top(a, 0.0) && at_top(b, 0.0),
            _ => false,
        }
    }

    /// A set is asked for: `held` are the loads held so far in the slot today, in kg.
    pub fn asked(&mut self, held: &[f64], shown_kg: f64, kg: f64, finding: bool) {
        self.breaches.loads += 1;
        let most = held.iter().copied().fold(shown_kg, f64::max);
        let mut steps: Vec<f64> = held.to_vec();
        steps.push(kg);
        steps.dedup();
        if kg > most + EPS && !(finding && steps.len() <= 3) {
            self.breaches.step += 1;
            self.note(format!("{kg} kg in mid-session after {held:?}, shown {shown_kg}, finding {finding}"));
        }
    }

    /// A symptom asked for a level down at `level` with so much held.
    pub fn dropped(&mut self, ladder: &LadderId, level: usize, held: f64) {
        self.breaches.drops += 1;
        self.ladders.entry(ladder.clone()).or_default().owed = Some((level, held));
    }

    /// The rest of the session after a drop at `marked`: a level below.
    pub fn after_drop(&mut self, variant: &VariantId, marked: usize, level: usize) {
        if level >= marked {
            self.breaches.late += 1;
            self.note(format!("marked at {marked}, in the rest of the session {variant} at {level}"));
        }
    }

    /// What was done on a ladder in a session; `sets` are those of the slot, `clean` says no drop, hold or red
    /// mark, `dropped` the level of the last drop.
    pub fn done(
        &mut self,
        catalogue: &Catalogue,
        day: NaiveDate,
        plan: &Prescription,
        sets: &[SetDone],
        (clean, dropped): (bool, Option<usize>),
    ) {
        let Some(last) = sets.last() else { return };
        let Some(place) = catalogue.place(&last.variant) else { return };
        let last_round = plan.sets.saturating_sub(1);
        let sides: Vec<&SetDone> = sets
            .iter()
            .filter(|s| s.round == last_round && s.variant == last.variant && !s.stopped)
            .collect();
        let whole = !sides.is_empty() && (!place.variant.per_side || sides.len() >= 2);
        let last_set = whole.then(|| {
            let count = sides.iter().map(|s| s.seconds.unwrap_or(s.reps)).min().unwrap_or(0);
            let reserve = sides.iter().map(|s| s.reserve).min_by_key(|r| match r {
                None => 0,
                Some(Reserve::Exactly(n)) => 1 + u16::from(*n) * 2,
                Some(Reserve::AtLeast(n)) => 2 + u16::from(*n) * 2,
            });
            (count, reserve.flatten())
        });
        let as_planned = clean
            && last_set.is_some_and(|(count, reserve)| {
                count >= plan.range.low()
                    && match reserve {
                        Some(Reserve::Exactly(n) | Reserve::AtLeast(n)) => f64::from(n) >= plan.floor,
                        None => plan.reserve.is_none(),
                    }
            });
        // A variant that was left in mid-session was done, and not as planned.
        let mut left: Vec<&SetDone> = Vec::new();
        for set in sets.iter().filter(|s| s.variant != last.variant) {
            left.retain(|l| l.variant != set.variant);
            left.push(set);
        }
        for set in left {
            let kg = kg_of(catalogue, &set.variant, &set.load);
            let used = Use { day, kg, as_planned: false, last: None };
            self.uses.entry(set.variant.clone()).or_default().push(used);
        }
        let kg = kg_of(catalogue, &last.variant, &last.load);
        self.uses.entry(last.variant.clone()).or_default().push(Use { day, kg, as_planned, last: last_set });
        // A level moves from what was done last (a mark and the morning after are two steps), or from where it was
        // marked or else shown: a session that went on unloaded because of another ladder moves no level of this one.
        let level = dropped.unwrap_or(usize::from(plan.level));
        self.ladders.entry(place.ladder.id.clone()).or_default().level = Some([level, place.level]);
    }
}

pub(super) fn kg_of(catalogue: &Catalogue, variant: &VariantId, load: &Load) -> f64 {
    catalogue.place(variant).map_or(0.0, |p| p.variant.external(load).0)
}
