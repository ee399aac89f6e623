//! What sets tell: of strength, and as exposures.

use super::{
    BodyPart, Effects, Exposure, LastSet, RepMax, SetStep, State, StrengthStart, StrengthState, StrengthStep,
    TrendDay, VariantUse, start_for,
};
use crate::catalogue::{Catalogue, Region};
use crate::ground::Ground;
use crate::history::{Round, Run, SetEntry, rounds_of};
use crate::ids::{GroupId, LadderId, VariantId};
use crate::programme::{Amount, Start};
use crate::record::{Purpose, Reserve, SetDone};
use crate::rules::RulePack;
use crate::strength::{Constants, Reach, Tracker, effective_load};
use crate::units::Kg;
use std::collections::BTreeMap;

impl State {
    /// Sets move the strength states and make exposures; what moved the states goes into `trace`.
    pub(super) fn take_sets(
        &mut self,
        run: &Run,
        starts: &[Start],
        k: &Constants,
        ground: &Ground<'_>,
        effects: &Effects,
        mut trace: Option<&mut Vec<StrengthStep>>,
    ) {
        let assumed = ground.rules.number("strength.body", "assumed_kg");
        let body = run.body_mass.unwrap_or(Kg(assumed));
        let unknown = |name| ground.rules.number("log.unknown-dose", name);
        for round in rounds_of(run) {
            let Some(taken) = weaker_side(&round, ground.rules) else { continue };
            let set = &taken.set;
            let Some(place) = ground.catalogue.place(&set.variant) else { continue };
            let Some(group) = place.variant.group.clone() else { continue };
            let j = f64::from(self.sets_of_day(&group, run.day));
            if matches!(set.purpose, Purpose::Work | Purpose::Find) {
                // A set that tells nothing of strength tires all the same.
                let rounds = self.sets_of_day(&group, run.day).saturating_add(1);
                self.rounds.insert(group.clone(), (run.day, rounds));
            }
            let Some(reach) = evidence(set, ground.rules) else { continue };
            let Some(load) = effective_load(place.variant, &set.load, body) else { continue };
            if !load.0.is_finite() {
                continue;
            }
            let (bottom, target) =
                run.prescription(&set.slot).map_or((unknown("low"), unknown("target")), |p| {
                    (f64::from(p.range.low()), p.reserve.unwrap_or(unknown("target")))
                });
            // A catalogue that was read holds the group of each of its variants.
            let Some(prior) = ground.catalogue.group(&group).map(|g| g.prior_c) else { continue };
            // A start of another make, say one weight where a pair is held, tells nothing of this one.
            let by_coach = start_for(starts, &place.ladder.id, &set.variant)
                .and_then(|s| s.load.as_ref())
                .filter(|l| l.is_same_make(&set.load) && l.is_plausible())
                .and_then(|l| effective_load(place.variant, l, body));
            let from = by_coach.unwrap_or(load);
            let mut start = None;
            let tracker = self.trackers.entry(group.clone()).or_insert_with(|| {
                let tracker = Tracker::start(k, prior, from, bottom, target, run.day);
                let (by_coach, state) = (by_coach.is_some(), StrengthState::of(&tracker));
                start = Some(StrengthStart { load: from, by_coach, bottom, target, state });
                tracker
            });
            *tracker = tracker.on(k, run.day);
            tracker.observe(k, load, reach, j);
            if let Some(trace) = trace.as_deref_mut() {
                let (reps, reserve, at_least) = match reach {
                    Reach::Exactly { reps, reserve } => (reps, reserve, false),
                    Reach::AtLeast { reps, reserve } => (reps, reserve, true),
                };
                let assumed = run.body_mass.is_none();
                let share = place.variant.share.as_ref();
                trace.push(StrengthStep::Set(Box::new(SetStep {
                    records: round.records(),
                    taken: taken.record,
                    run: run.id,
                    day: run.day,
                    group: group.clone(),
                    variant: set.variant.clone(),
                    load: set.load.clone(),
                    external: place.variant.external(&set.load),
                    body: share.map(|s| BodyPart { mass: body, assumed, share: s.share }),
                    effective: load,
                    reps,
                    reserve,
                    at_least,
                    j,
                    start,
                    after: StrengthState::of(tracker),
                    ten_rep_max: RepMax::of(tracker, 10.0),
                    one_rep_max: RepMax::of(tracker, 1.0),
                })));
            }
            let point = TrendDay { day: run.day, one_rep_max: tracker.one_rep_max() };
            let trend = self.trend.entry(group).or_default();
            match trend.last_mut() {
                Some(last) if last.day == run.day => *last = point,
                Some(_) | None => trend.push(point),
            }
        }
        self.take_exposures(run, k, ground, effects, body);
    }

    fn take_exposures(&mut self, run: &Run, k: &Constants, ground: &Ground<'_>, effects: &Effects, body: Kg) {
        let unknown = |name| ground.rules.number("log.unknown-dose", name);
        let mut last_by_ladder: BTreeMap<LadderId, &SetDone> = BTreeMap::new();
        // A finisher speaks for its ladder only where nothing else was done, and so do a warm-up and a cool-down, where
        // nothing is held by choice; with the least load there is they say nothing of a level.
        let speaks = |set: &SetDone| match set.purpose {
            Purpose::Finisher => true,
            Purpose::Ease => is_unloaded(set, ground.catalogue),
            Purpose::Work | Purpose::Find | Purpose::Learn => false,
        };
        let finishers = run.sets.iter().filter(|e| speaks(&e.set));
        let work = run.sets.iter().filter(|e| matches!(e.set.purpose, Purpose::Work | Purpose::Find));
        for entry in finishers.chain(work) {
            last_by_ladder.insert(entry.set.ladder.clone(), &entry.set);
        }
        for (ladder, last_set) in last_by_ladder {
            let Some(place) = ground.catalogue.place(&last_set.variant) else { continue };
            // A load that no home can hold, or a variant of another ladder, is a slip of writing.
            if place.ladder.id != ladder || !last_set.load.is_plausible() {
                continue;
            }
            let level = u8::try_from(place.level).unwrap_or(u8::MAX);
            let prescription = run.prescription(&last_set.slot);
            let range = prescription
                .map_or(Amount::Reps { low: unknown("low") as u16, high: unknown("high") as u16 }, |p| {
                    p.range
                });
            let target = prescription.and_then(|p| p.reserve).unwrap_or(unknown("target"));
            let floor = prescription.map_or(unknown("floor"), |p| p.floor);
            let timed = matches!(range, Amount::Seconds { .. });
            let lower_held = effects.lower.is_some() && place.ladder.region == Region::Lower;
            let symptom_free = effects.red.is_none()
                && effects.all.is_none()
                && !lower_held
                && effects.ladders.get(&ladder).is_none_or(|e| e.drops == 0 && !e.held);
            let last_round = prescription.map_or(last_set.round, |p| p.sets.saturating_sub(1));
            let of_variant = || {
                let sets = run.sets.iter().map(|e| &e.set);
                sets.filter(|s| s.slot == last_set.slot && s.variant == last_set.variant)
            };
            let round = |n: u8| -> Vec<&SetDone> { of_variant().filter(|s| s.round == n).collect() };
            let is_whole = |sides: &[&SetDone]| {
                !sides.is_empty()
                    && (!place.variant.per_side || sides.len() >= 2)
                    && sides.iter().all(|s| !s.stopped)
            };
            let weakest = |sides: &[&SetDone]| sides.iter().map(|s| s.seconds.unwrap_or(s.reps)).min();
            let sides = round(last_round);
            let whole = is_whole(&sides);
            // The last round that was done on both sides; where it is not the last planned one, it says how far
            // she is, and not that it went as planned.
            let reached = (0..=last_round).rev().map(round).find(|sides| is_whole(sides));
            let count = reached.as_deref().and_then(weakest);
            // Of two sides held differently the lighter one was done by both.
            let kg = |s: &SetDone| place.variant.external(&s.load).0;
            let held = sides
                .iter()
                .copied()
                .min_by(|a, b| kg(a).total_cmp(&kg(b)))
                .filter(|_| whole)
                .unwrap_or(last_set);
            let last = whole.then(|| {
                let count = weakest(&sides).unwrap_or(0);
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
                    let w = effective_load(place.variant, &held.load, body)?;
                    let j = f64::from(self.sets_of_day(g, run.day).saturating_sub(1));
                    Some(tracker.reserve(k, w, f64::from(count), j).0)
                });
                let mut set = LastSet { count, reserve, mean, as_planned: false };
                set.as_planned = count >= range.low() && set.reserve_at_least(floor, timed) && symptom_free;
                set
            });
            let proposed = prescription.map(|p| &p.variant);
            let chosen = proposed.is_some_and(|v| *v != last_set.variant)
                && effects.unloaded.is_none()
                && effects.ladders.get(&ladder).is_none_or(|e| e.drops == 0);
            for used in variants_of(run, ground.catalogue, &ladder, place.variant.id.clone()) {
                let last_of =
                    |s: &&SetDone| s.ladder == ladder && s.variant == used && is_use(s, ground.catalogue);
                let Some(set) = run.sets.iter().map(|e| &e.set).rfind(last_of) else { continue };
                if !set.load.is_plausible() {
                    continue;
                }
                let is_last = used == last_set.variant;
                let load = if is_last { held.load.clone() } else { set.load.clone() };
                if let Some(group) = ground.catalogue.place(&used).and_then(|p| p.variant.group.clone()) {
                    self.held.insert(group, (used.clone(), load.clone()));
                }
                self.variants.entry(used).or_default().push(VariantUse {
                    day: run.day,
                    load,
                    as_planned: is_last && last.is_some_and(|l| l.as_planned),
                    symptom_free,
                    open_ended: run
                        .sets
                        .iter()
                        .map(|e| &e.set)
                        .filter(|s| s.ladder == ladder && s.variant == set.variant)
                        .all(|s| matches!(s.reserve, Some(Reserve::AtLeast(_))) && !s.stopped),
                });
            }
            let exposures = &mut self.ladders.entry(ladder).or_default().exposures;
            // What was closed for the day alone is not closed to her.
            let lowest = if effects.began_unloaded {
                exposures.last().map_or(0, |e| e.lowest)
            } else {
                prescription
                    .and_then(|p| p.options.iter().map(|o| o.level).chain([p.level]).min())
                    .unwrap_or(0)
            };
            exposures.push(Exposure {
                run: run.id,
                day: run.day,
                level,
                variant: last_set.variant.clone(),
                load: held.load.clone(),
                last,
                count,
                range,
                target,
                symptom_free,
                chosen,
                lowest,
            });
        }
    }
}

/// True where nothing of a set is a matter of load.
fn is_unloaded(set: &SetDone, catalogue: &Catalogue) -> bool {
    catalogue.place(&set.variant).is_some_and(|p| !p.is_loaded())
}

/// True for a set that says with what a variant is done.
fn is_use(set: &SetDone, catalogue: &Catalogue) -> bool {
    match set.purpose {
        Purpose::Work | Purpose::Find | Purpose::Finisher => true,
        Purpose::Ease => is_unloaded(set, catalogue),
        Purpose::Learn => false,
    }
}

/// The variants of a ladder that were done in a run, in the order of their first set, `last` at the end.
fn variants_of(run: &Run, catalogue: &Catalogue, ladder: &LadderId, last: VariantId) -> Vec<VariantId> {
    let mut found: Vec<VariantId> = Vec::new();
    for set in run.sets.iter().map(|e| &e.set).filter(|s| s.ladder == *ladder && is_use(s, catalogue)) {
        if set.variant != last && !found.contains(&set.variant) {
            found.push(set.variant.clone());
        }
    }
    found.push(last);
    found
}

/// Working sets of each group in a run; one round of two sides counts once.
pub(crate) fn working_rounds(run: &Run, catalogue: &Catalogue) -> BTreeMap<GroupId, u32> {
    let mut rounds = BTreeMap::new();
    for round in rounds_of(run).iter().filter(|r| r.is_work()) {
        if let Some(group) = catalogue.place(&round.set.variant).and_then(|p| p.variant.group.clone()) {
            *rounds.entry(group).or_insert(0) += 1;
        }
    }
    rounds
}

/// The side of a round that is taken: the one with fewer reps to failure. A side without evidence leaves the round to
/// the other one.
fn weaker_side<'r>(round: &Round<'r>, rules: &RulePack) -> Option<&'r SetEntry> {
    let mut taken: Option<(&SetEntry, Option<Reach>)> = None;
    for side in &round.sides {
        let reach = evidence(&side.set, rules);
        let weaker = match (taken.and_then(|(_, a)| a), reach) {
            (Some(a), Some(b)) => {
                b.total() < a.total() || (b.total() <= a.total() && matches!(b, Reach::Exactly { .. }))
            }
            (None, Some(_)) => true,
            (Some(_) | None, None) => taken.is_none(),
        };
        if weaker {
            taken = Some((side, reach));
        }
    }
    taken.map(|(side, _)| side)
}

/// A set as evidence of strength; `None` if it is none (5.2).
fn evidence(set: &SetDone, rules: &RulePack) -> Option<Reach> {
    let counts = matches!(set.purpose, Purpose::Work | Purpose::Find);
    if !counts || set.stopped || set.seconds.is_some() || set.reps == 0 {
        return None;
    }
    // The line of the model says nothing so far out, and nobody judges so much in reserve.
    if f64::from(set.reps) > rules.number("strength.evidence", "most_reps") || !set.load.is_plausible() {
        return None;
    }
    let reps = f64::from(set.reps);
    let most = rules.number("strength.evidence", "most_reserve");
    match set.reserve? {
        Reserve::Exactly(n) | Reserve::AtLeast(n) if f64::from(n) > most => None,
        Reserve::Exactly(n) => Some(Reach::Exactly { reps, reserve: f64::from(n) }),
        Reserve::AtLeast(n) => Some(Reach::AtLeast { reps, reserve: f64::from(n) }),
    }
}
