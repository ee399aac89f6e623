//! A second pair of eyes on a trial: the bounds that must never break, kept apart from the code that keeps them. It
//! knows what was shown, done and marked, and nothing of the engine's state.

use crate::catalogue::Catalogue;
use crate::ids::{LadderId, VariantId};
use crate::kit::Load;
use crate::proposal::Prescription;
use crate::reason::{Reason, ReasonCode};
use crate::record::{Reserve, SetDone};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// How often something was broken, and how often it could have been.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Breaches {
    /// Loads proposed.
    pub loads: u64,
    /// Loads above every bound, or heavier in mid-session; reps beyond the range, or more than shown where none may grow.
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
    /// Levels from which the next is one step: that last marked or else shown, that last done, and one below for a
    /// symptom since.
    levels: Vec<usize>,
    /// The same before the last session. What was done with a symptom is no new standing, so she may go back down to
    /// where she stood.
    levels_before: Vec<usize>,
    /// Level last done, with what was held.
    done: Option<(usize, f64)>,
    /// A symptom that the next exposure has to answer.
    owed: Option<Owed>,
    /// The coach set it anew, and no symptom came since.
    set_by_coach: bool,
    /// Marks of drop or stricter, and whether it was held: in this session, and before it on the day.
    here: (u32, bool),
    before: (u32, bool),
}

/// A drop, or a hold that was answered: the next exposure is a level lower, or where there is none no heavier.
#[derive(Clone, Copy, Debug)]
struct Owed {
    /// The level it was marked at.
    level: usize,
    /// The load held there, in kg.
    held: f64,
    /// The coach answered with a restart: at most 80 % of it, or the lightest there is, will do.
    restart: bool,
}

#[derive(Clone, Debug, Default)]
pub(super) struct Watch {
    pub breaches: Breaches,
    /// What was broken, in words, the first few.
    pub notes: Vec<String>,
    uses: BTreeMap<VariantId, Vec<Use>>,
    ladders: BTreeMap<LadderId, OnLadder>,
    /// The day that is being counted.
    today: NaiveDate,
    /// Pelvic-floor marks of drop or stricter: in this session, and before it on the day.
    pelvic_floor: [u32; 2],
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

    /// A session begins.
    pub fn begins(&mut self, day: NaiveDate) {
        let same = day == self.today;
        self.today = day;
        self.pelvic_floor = if same { [0, self.pelvic_floor.iter().sum()] } else { [0, 0] };
        for on in self.ladders.values_mut() {
            let (here, before) = (std::mem::take(&mut on.here), on.before);
            on.before = if same { (here.0 + before.0, here.1 || before.1) } else { (0, false) };
        }
    }

    /// A ladder rests: that answers a drop.
    pub fn rests(&mut self, ladder: &LadderId) {
        self.ladders.entry(ladder.clone()).or_default().owed = None;
    }

    /// The coach sets a ladder anew; a lower level holds even if a symptom comes after it.
    pub fn coach_sets(&mut self, ladder: &LadderId, level: usize) {
        let on = self.ladders.entry(ladder.clone()).or_default();
        if on.levels.iter().all(|l| level < *l) {
            on.levels.push(level);
        }
        on.set_by_coach = true;
        on.owed = None;
    }

    /// A symptom that moves a ladder outside its sets, or a hold or red flag after which she goes on.
    pub fn goes_lower(&mut self, ladder: &LadderId) {
        self.breaches.drops += 1;
        let on = self.ladders.entry(ladder.clone()).or_default();
        on.set_by_coach = false;
        if let Some((level, held)) = on.done {
            on.owed = Some(Owed { level, held, restart: false });
            on.levels.push(level.saturating_sub(1));
        }
    }

    /// The coach answered with a restart that is lighter.
    pub fn restarts(&mut self, ladder: &LadderId) {
        let on = self.ladders.entry(ladder.clone()).or_default();
        on.set_by_coach = false;
        if let Some((level, held)) = on.done {
            on.owed = Some(Owed { level, held, restart: true });
        }
    }

    pub fn shown(&mut self, catalogue: &Catalogue, shown: &Shown<'_>) {
        let kg = kg_of(catalogue, &shown.plan.variant, &shown.plan.load);
        self.breaches.loads += 1;
        let on = self.ladders.entry(shown.ladder.clone()).or_default();
        let (over, by_coach) = (on.before.0 > 1 || on.before.1, on.set_by_coach);
        if over || self.pelvic_floor[1] > 1 && kg > EPS {
            self.breaches.late += 1;
            let day = shown.day;
            self.note(format!("{day}: {} at {kg} kg in the second session of a day", shown.plan.variant));
        }
        if by_coach {
            return;
        }
        if !self.load_is_bounded(shown, kg) {
            self.breaches.step += 1;
            let uses = self.uses.get(&shown.plan.variant).cloned().unwrap_or_default();
            self.note(format!("{}: {} at {kg} kg after {uses:?}", shown.day, shown.plan.variant));
        }
        let level = usize::from(shown.plan.level);
        let on = self.ladders.entry(shown.ladder.clone()).or_default().clone();
        let place = |l: usize| shown.open.iter().position(|o| *o == l);
        let from: Vec<usize> = on.levels.iter().filter_map(|l| place(*l)).collect();
        if let Some(to) = place(level)
            && !from.is_empty()
        {
            self.breaches.levels += 1;
            let back = from.iter().all(|f| to < *f) && on.levels_before.contains(&level);
            // A level down by a symptom and one by a load that does not hold are two moves, each with its reason.
            let by = |code| shown.why.iter().any(|r| r.code == code);
            let two = by(ReasonCode::LevelDownLoad)
                && [ReasonCode::LevelDownSymptom, ReasonCode::RestartLighter].into_iter().any(by)
                && from.iter().any(|f| to + 2 == *f);
            if !back && !two && !from.iter().any(|f| f.abs_diff(to) <= 1) {
                self.breaches.level += 1;
                let codes: Vec<&str> = shown.why.iter().map(|r| r.code.slug()).collect();
                let note = format!(
                    "{}: {} from {from:?} to {to} of {:?}, {codes:?}",
                    shown.day, shown.ladder, shown.open
                );
                self.note(note);
            }
        }
        if let Some(owed) = self.ladders.entry(shown.ladder.clone()).or_default().owed.take() {
            let Owed { level: marked, held, restart } = owed;
            let lightest = || shown.kit.first().is_none_or(|least| kg <= least + EPS);
            let lighter = restart && (kg <= 0.8 * held + EPS || lightest());
            // At the lowest that is open to her there is nothing below.
            let nowhere = !shown.open.iter().any(|l| *l < marked) && (kg <= held + EPS || lightest());
            if !(level < marked || level == marked && (lighter || nowhere)) {
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

    /// Reps are asked for: never beyond the range or what was shown, nor more than shown where they may not grow.
    pub fn asked_reps(&mut self, shown: &Prescription, reps: u16, may_grow: bool) {
        let most = if may_grow { shown.range.high().max(shown.target.count()) } else { shown.target.count() };
        if reps > most || reps < shown.range.low().min(shown.target.count()) {
            self.breaches.step += 1;
            self.note(format!(
                "{reps} reps of {:?}, shown {:?}, may grow {may_grow}",
                shown.range, shown.target
            ));
        }
    }

    /// A symptom asked for a level down at `level` with so much held.
    pub fn dropped(&mut self, ladder: &LadderId, level: usize, held: f64) {
        self.breaches.drops += 1;
        let on = self.ladders.entry(ladder.clone()).or_default();
        on.set_by_coach = false;
        on.owed = Some(Owed { level, held, restart: false });
    }

    /// A pelvic-floor mark of drop or stricter outside a session.
    pub fn marked_at_home(&mut self) {
        self.pelvic_floor[0] += 1;
    }

    /// A mark of drop or stricter on a ladder.
    pub fn marked(&mut self, ladder: &LadderId, pelvic_floor: bool, holds: bool) {
        let on = self.ladders.entry(ladder.clone()).or_default();
        on.here = (on.here.0 + 1, on.here.1 || holds);
        self.pelvic_floor[0] += u32::from(pelvic_floor);
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
        let unloaded = self.pelvic_floor.iter().sum::<u32>() > 1;
        let on = self.ladders.entry(place.ladder.id.clone()).or_default();
        on.levels_before = std::mem::replace(&mut on.levels, vec![level, place.level]);
        // A level down by a symptom and one by a load are two steps.
        on.levels.extend(dropped.map(|marked| marked.saturating_sub(1)));
        // A drop is answered from where it was marked.
        // A session without load because of another ladder says nothing of what she does on this one.
        let before = on.done.filter(|(level, _)| unloaded && *level >= place.level);
        let here = before.unwrap_or((place.level, kg));
        on.done = Some(on.owed.map_or(here, |owed| (owed.level, owed.held)));
        on.set_by_coach = false;
    }
}

pub(super) fn kg_of(catalogue: &Catalogue, variant: &VariantId, load: &Load) -> f64 {
    catalogue.place(variant).map_or(0.0, |p| p.variant.external(load).0)
}
