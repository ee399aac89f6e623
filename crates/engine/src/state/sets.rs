//! What sets tell: of strength, and as exposures.

use super::trace::Round;
use super::{
    BodyPart, Effects, Exposure, LastSet, RepMax, SetStep, State, StrengthStart, StrengthState, StrengthStep,
    TrendDay, VariantUse, start_for,
};
use crate::catalogue::{Catalogue, Region};
use crate::ground::Ground;
use crate::history::Run;
use crate::ids::{GroupId, LadderId, VariantId};
use crate::programme::{Amount, Start};
use crate::record::{Purpose, Reserve, SetDone};
use crate::strength::{Constants, Reach, Tracker, effective_load};
use crate::units::Kg;
use std::collections::BTreeMap;

/// Beyond so many reps a set is no evidence of strength; chosen, no source.
const MOST_REPS: u16 = 60;
/// The scale of effort ends at ten in reserve (RPE 0).
const MOST_RESERVE: u8 = 10;

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
        for round in rounds_of(run) {
            let set = &round.entry.set;
            let Some(place) = ground.catalogue.place(&set.variant) else { continue };
            let Some(group) = place.variant.group.clone() else { continue };
            let j = f64::from(self.sets_of_day(&group, run.day));
            if matches!(set.purpose, Purpose::Work | Purpose::Find) {
                // A set that tells nothing of strength tires all the same.
                let rounds = self.sets_of_day(&group, run.day).saturating_add(1);
                self.rounds.insert(group.clone(), (run.day, rounds));
            }
            let Some(reach) = evidence(set) else { continue };
            let Some(load) = effective_load(place.variant, &set.load, body) else { continue };
            if !load.0.is_finite() {
                continue;
            }
            let (bottom, target) = run
                .prescription(&set.slot)
                .map_or((8.0, 3.0), |p| (f64::from(p.range.low()), p.reserve.unwrap_or(3.0)));
            let prior = ground.catalogue.group(&group).map_or(38.0, |g| g.prior_c);
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
                    records: round.records(run),
                    taken: round.entry.record,
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
        let mut last_by_ladder: BTreeMap<LadderId, &SetDone> = BTreeMap::new();
        // A finisher speaks for its ladder only where nothing else was done.
        let finishers = run.sets.iter().filter(|e| e.set.purpose == Purpose::Finisher);
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
            let range = prescription.map_or(Amount::Reps { low: 8, high: 12 }, |p| p.range);
            let target = prescription.and_then(|p| p.reserve).unwrap_or(3.0);
            let floor = prescription.map_or(1.0, |p| p.floor);
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
            for used in variants_of(run, &ladder, place.variant.id.clone()) {
                let last_of =
                    |s: &&SetDone| s.ladder == ladder && s.variant == used && s.purpose != Purpose::Learn;
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

/// The variants of a ladder that were done in a run, in the order of their first set, `last` at the end.
fn variants_of(run: &Run, ladder: &LadderId, last: VariantId) -> Vec<VariantId> {
    let mut found: Vec<VariantId> = Vec::new();
    for set in run.sets.iter().map(|e| &e.set).filter(|s| s.ladder == *ladder && s.purpose != Purpose::Learn)
    {
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
    let rounds_done = rounds_of(run);
    let sets = rounds_done.iter().map(|r| &r.entry.set);
    for set in sets.filter(|s| matches!(s.purpose, Purpose::Work | Purpose::Find)) {
        if let Some(group) = catalogue.place(&set.variant).and_then(|p| p.variant.group.clone()) {
            *rounds.entry(group).or_insert(0) += 1;
        }
    }
    rounds
}

/// A set as evidence of strength; `None` if it is none (5.2).
fn evidence(set: &SetDone) -> Option<Reach> {
    let counts = matches!(set.purpose, Purpose::Work | Purpose::Find);
    if !counts || set.stopped || set.seconds.is_some() || set.reps == 0 {
        return None;
    }
    // The line of the model says nothing so far out, and nobody judges so much in reserve.
    if set.reps > MOST_REPS || !set.load.is_plausible() {
        return None;
    }
    let reps = f64::from(set.reps);
    match set.reserve? {
        Reserve::Exactly(n) if n <= MOST_RESERVE => Some(Reach::Exactly { reps, reserve: f64::from(n) }),
        Reserve::AtLeast(n) if n <= MOST_RESERVE => Some(Reach::AtLeast { reps, reserve: f64::from(n) }),
        Reserve::Exactly(_) | Reserve::AtLeast(_) => None,
    }
}

/// Sets round by round: of two sides the one with fewer reps to failure.
fn rounds_of(run: &Run) -> Vec<Round<'_>> {
    let mut rounds: Vec<Round<'_>> = Vec::new();
    for entry in &run.sets {
        let set = &entry.set;
        let other = rounds.iter_mut().find(|r| {
            let r = &r.entry.set;
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
                let weaker = match (evidence(&other.entry.set), evidence(set)) {
                    (Some(a), Some(b)) => {
                        b.total() < a.total()
                            || (b.total() <= a.total() && matches!(b, Reach::Exactly { .. }))
                    }
                    (None, Some(_)) => true,
                    (Some(_) | None, None) => false,
                };
                other.others.push(if weaker { other.entry.record } else { entry.record });
                if weaker {
                    other.entry = entry;
                }
            }
            None => rounds.push(Round { entry, others: Vec::new() }),
        }
    }
    rounds
}
