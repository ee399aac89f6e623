//! One client's weeks through the real engine.

use super::bodies;
use super::chance::Chance;
use super::client::{Answer, Client};
use super::oracle::Known;
use super::scenario::{Scenario, StartWith};
use super::watch::{Breaches, Shown, Watch, kg_of};
use crate::catalogue::{Catalogue, Place};
use crate::ids::{DeviceId, GroupId, LadderId, PersonId, RecordId, RunId, SymptomId};
use crate::kit::Load;
use crate::ledger::Ledger;
use crate::programme::{Amount, Block, Programme, Slot, Start};
use crate::proposal::{Gate, Outcome as Asked, Prescription, SetPlan, Target, Turn};
use crate::reason::Reason;
use crate::record::{
    HoldAnswer, NextDay, Payload, Purpose, Readiness, Record, Reserve, SCHEMA_VERSION, SetDone, Side,
    SkipWhy, Symptom, SymptomAmount, Versions,
};
use crate::rules::{Class, RulePack};
use crate::strength::effective_load;
use crate::units::{Kg, Weight};
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Within so many reps of the target the load counts as found: as near as an oracle comes on a day, which it cannot
/// foresee.
const FOUND: f64 = 1.5;
/// She takes a lighter load that is offered two times out of three. Chosen, no source.
const TAKES_LIGHTER: f64 = 0.67;
/// Body mass of everybody, in kg; the record says so.
const BODY: f64 = 68.0;

/// What became of one client.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outcome {
    /// Sessions begun.
    pub sessions: u64,
    /// Times she opened the programme and it stayed closed.
    pub closed: u64,
    /// Sets of reps with an aim, at a load that the model of strength speaks of.
    pub sets: u64,
    /// Sum over these of the distance of true reps in reserve from the aim.
    pub distance: f64,
    /// The same, had the oracle chosen.
    pub oracle_distance: f64,
    /// Sets that it chose for.
    pub oracle_sets: u64,
    /// Sets in which she could not do what was asked.
    pub failed: u64,
    /// Sets that left less than one rep.
    pub below_one: u64,
    /// Session, from 1, in which the load was first found on every slot counted; `None` if never.
    pub reached: Option<u32>,
    /// By session, of the first slot.
    pub settling: Vec<SlotSession>,
    /// What was broken.
    pub breaches: Breaches,
    /// The same in words, the first few.
    pub notes: Vec<String>,
}

/// How the first slot went in one session.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SlotSession {
    /// Reps in reserve on a usual day, middle set, less the aim.
    pub offset: f64,
    /// The same, had the oracle chosen.
    pub oracle: f64,
    /// Sets that count.
    pub sets: f64,
    /// Sum of their distance from the aim.
    pub distance: f64,
    /// Sets in which she could not do what was asked.
    pub failed: f64,
}

/// Takes client `number` of a seed through so many weeks of a scenario.
#[must_use]
pub fn trial(
    scenario: &Scenario,
    catalogue: &Catalogue,
    rules: &RulePack,
    (seed, number): (u64, u64),
    weeks: u32,
) -> Outcome {
    let programme = scenario.programme();
    let mut life = Chance::of(seed, number * 4 + 1);
    let strength = libm::exp(life.normal(0.0, scenario.strength_sd));
    let mut client = Client::draw(Chance::of(seed, number * 4), scenario.habits);
    let starts = starts(scenario, catalogue, &mut client, &mut life, strength);
    let floor = Floor {
        scenario,
        catalogue,
        rules,
        programme: &programme,
        ledger: Ledger::of(catalogue, rules, &starts, &[]),
        client,
        life,
        strength,
        first: NaiveDate::from_ymd_opt(2026, 3, 2).unwrap_or_default(),
        now: DateTime::default(),
        count: 0,
        seqs: [0; 2],
        comfort: BTreeMap::new(),
        watch: Watch::default(),
        out: Outcome::default(),
        found: BTreeMap::new(),
    };
    floor.lives(weeks)
}

/// What can be done of a variant by somebody of this strength.
fn meet(client: &mut Client, catalogue: &Catalogue, place: &Place<'_>, strength: f64) -> Option<GroupId> {
    let group = place.variant.group.as_ref()?;
    let ten = bodies::ten_rep_max(place, BODY, strength)?;
    client.meet(group, catalogue.group(group).map_or(38.0, |g| g.prior_c), ten);
    Some(group.clone())
}

/// The coach's starts that come with the plan.
fn starts(
    scenario: &Scenario,
    catalogue: &Catalogue,
    client: &mut Client,
    life: &mut Chance,
    strength: f64,
) -> Vec<Start> {
    let StartWith::Coach(error) = scenario.start else { return Vec::new() };
    scenario
        .slots
        .iter()
        .filter_map(|slot| {
            let ladder = catalogue.ladder(&slot.ladder)?;
            let level = usize::from(slot.levels.map_or(0, |s| s.low));
            let variant = ladder.levels.get(level)?.variants.first()?;
            let place = Place { ladder, level, variant };
            let load = guess(scenario, catalogue, client, life, &place, slot, strength, error)?;
            Some(Start {
                ladder: slot.ladder.clone(),
                level: u8::try_from(level).ok(),
                variant: Some(variant.id.clone()),
                load: Some(load),
            })
        })
        .collect()
}

/// One weight that leaves two reps more than the dose asks for, judged with an error.
#[allow(clippy::too_many_arguments, reason = "all of it is one guess")]
fn guess(
    scenario: &Scenario,
    catalogue: &Catalogue,
    client: &mut Client,
    life: &mut Chance,
    place: &Place<'_>,
    slot: &Slot,
    strength: f64,
    error: f64,
) -> Option<Load> {
    let group = meet(client, catalogue, place, strength)?;
    let (b, c, _) = client.known(&group)?;
    let over = f64::from(slot.dose.amount.low()) + f64::from(slot.dose.target_rir) + 2.0 - 10.0;
    let wanted = libm::exp(b - over / c + life.normal(0.0, error));
    let mut weights: Vec<Weight> = scenario.kit.dumbbells.iter().map(|d| d.weight).collect();
    weights.sort_by(|a, b| a.kg().0.total_cmp(&b.kg().0));
    let weight = weights.iter().rfind(|w| w.kg().0 <= wanted).or(weights.first())?;
    Some(Load::One { weight: *weight })
}

struct Floor<'a> {
    scenario: &'a Scenario,
    catalogue: &'a Catalogue,
    rules: &'a RulePack,
    programme: &'a Programme,
    ledger: Ledger<'a>,
    client: Client,
    life: Chance,
    strength: f64,
    first: NaiveDate,
    now: DateTime<FixedOffset>,
    count: u128,
    seqs: [u64; 2],
    /// The hardest level of a ladder that her body takes well.
    comfort: BTreeMap<LadderId, usize>,
    watch: Watch,
    out: Outcome,
    /// Slots whose load was found, with the session.
    found: BTreeMap<String, u32>,
}

/// What the sets of a slot came to.
#[derive(Default)]
struct SlotDay {
    sets: Vec<SetDone>,
    marked: bool,
    /// The level of the last drop.
    dropped: Option<usize>,
}

impl Floor<'_> {
    fn id(&mut self) -> Uuid {
        self.count += 1;
        Uuid::from_u128(self.count)
    }

    /// Writes a record on the client's device (0) or the coach's (1); a minute passes.
    fn write(&mut self, device: usize, payload: Payload) -> RecordId {
        self.now += Duration::minutes(1);
        let id = RecordId(self.id());
        let seq = self.seqs[device];
        self.seqs[device] += 1;
        self.ledger.add(Record {
            v: SCHEMA_VERSION,
            id,
            device: DeviceId(Uuid::from_u128(1 + u128::from(device == 1))),
            person: PersonId(Uuid::from_u128(9)),
            seq,
            prev: None,
            at: self.now,
            payload,
        });
        id
    }

    fn lives(mut self, weeks: u32) -> Outcome {
        let at = |day: i64| {
            let on = self.first + Duration::days(day);
            on.and_hms_opt(18, 0, 0).unwrap_or_default().and_utc().fixed_offset()
        };
        let (first, last) = (at(0), at(i64::from(weeks) * 7));
        self.now = first;
        if let Some(stage) = (self.scenario.stage)(self.first) {
            self.write(0, Payload::StageChanged { stage });
        }
        self.write(0, Payload::KitChanged { kit: self.scenario.kit.clone() });
        self.write(0, Payload::BodyMass { mass: Weight::in_kg(BODY) });
        let trained = self.scenario.trained;
        self.write(1, Payload::Screening { conditions: Vec::new(), baselines: Vec::new(), trained });
        let mut day = 0;
        let mut nth = 0;
        while first + Duration::days(day) < last {
            let begins = first + Duration::days(day);
            self.now = self.now.max(begins);
            if !self.life.happens(self.scenario.missed) {
                self.answers();
                self.session(day);
            }
            day += [2, 2, 3][nth % 3];
            nth += 1;
            if self.life.happens(self.scenario.away) {
                day += self.life.between(14, 42);
            }
        }
        self.out.breaches = self.watch.breaches;
        self.out.notes = std::mem::take(&mut self.watch.notes);
        let found = self.scenario.slots.iter().filter(|s| matches!(s.dose.amount, Amount::Reps { .. }));
        let each: Option<Vec<u32>> = found.map(|s| self.found.get(s.id.as_str()).copied()).collect();
        self.out.reached = each.and_then(|f| f.into_iter().max());
        self.out
    }

    /// The coach answers holds within days, mostly; a red flag is cleared before about every other session.
    fn answers(&mut self) {
        let day = self.now.date_naive();
        let state = self.ledger.state(day);
        let holds: Vec<(RecordId, Option<LadderId>)> =
            state.open_holds().map(|h| (h.record, h.ladder.clone())).collect();
        let red = state.open_reds().next().is_some();
        for (hold, ladder) in holds {
            if self.life.happens(0.8) {
                let answer = match self.life.between(0, 9) {
                    0..=5 => HoldAnswer::GoOn,
                    6..=8 => HoldAnswer::RestartLighter,
                    _ => HoldAnswer::KeepResting,
                };
                // The ladder was held, and the coach has looked at it: that answers the drop.
                if answer == HoldAnswer::GoOn
                    && let Some(ladder) = &ladder
                {
                    self.watch.rests(ladder);
                }
                self.write(1, Payload::HoldAnswered { hold, answer, note: "as we said".into() });
            }
        }
        if red && self.life.happens(0.5) {
            let said = "may train".into();
            self.write(0, Payload::Clearance { who: "midwife".into(), on: day, said });
        }
    }

    fn session(&mut self, day: i64) {
        // What has not been asked yet: "ten reps with what?".
        if let StartWith::Answer(error) = self.scenario.start
            && self.out.sessions == 0
        {
            self.ten_reps(error);
        }
        let run = RunId(self.id());
        let today = self.now.date_naive();
        let readiness =
            if self.life.happens(0.1 * self.scenario.missed) { Readiness::Tired } else { Readiness::Usual };
        let waits = self.ledger.state(today).open_reds().next().is_some();
        self.write(0, Payload::CheckIn { run, readiness, symptoms: Vec::new() });
        let session = &self.programme.sessions[0];
        let bench = self.ledger.bench(self.programme, today, Some(run));
        let result = bench.propose(session);
        drop(bench);
        if waits {
            self.watch.breaches.reds += 1;
            if result.gate == Gate::Open || !result.slots.is_empty() {
                self.watch.breaches.red += 1;
            }
        }
        if result.gate != Gate::Open {
            self.out.closed += 1;
            return;
        }
        self.out.sessions += 1;
        let (programme, revision) = (self.programme.id, self.programme.revision);
        let started =
            Payload::SessionStarted { run, day: today, programme, revision, session: session.id.clone() };
        self.write(0, started);
        let versions =
            Versions { engine: String::new(), catalogue: self.catalogue.version, rules: self.rules.version };
        let shown = Payload::ProposalShown {
            run,
            inputs: String::new(),
            known: Vec::new(),
            versions,
            result: result.clone().into(),
        };
        self.write(0, shown);
        self.client.day(f64::from(i32::try_from(day).unwrap_or(i32::MAX)));
        let mut by_group: BTreeMap<GroupId, u32> = BTreeMap::new();
        let mut marked = false;
        for ((block, slot), proposal) in session.slots().zip(&result.slots) {
            let Asked::Train(plan) = &proposal.outcome else {
                self.watch.rests(&slot.ladder);
                continue;
            };
            self.looked_at(run, slot, plan, proposal.reasons.all());
            let before = (self.out.sets, self.out.distance, self.out.failed);
            let done = self.slot(run, block, slot, plan, &mut by_group);
            if self.scenario.slots.first().is_some_and(|s| s.id == slot.id)
                && let Some(day) = self.out.settling.last_mut()
            {
                day.sets = (self.out.sets - before.0) as f64;
                day.distance = self.out.distance - before.1;
                day.failed = (self.out.failed - before.2) as f64;
            }
            marked |= done.marked;
            let how = (!done.marked, done.dropped);
            self.watch.done(self.catalogue, today, plan, &done.sets, how);
        }
        let minutes = Some(30);
        self.write(0, Payload::SessionEnded { run, effort: Some(5), minutes, note: None });
        if self.life.happens(0.85) {
            let settled = self.life.happens(if marked { 0.8 } else { 0.97 });
            let answer = if settled { NextDay::Settled } else { NextDay::NotSettled };
            let evening = self.now;
            self.now += Duration::hours(14);
            self.write(0, Payload::NextDayAnswer { run, answer, symptoms: Vec::new() });
            self.now = evening.max(self.now);
        }
    }

    fn ten_reps(&mut self, error: f64) {
        let scenario = self.scenario;
        for slot in &scenario.slots {
            let Some(ladder) = self.catalogue.ladder(&slot.ladder) else { continue };
            let level = usize::from(slot.levels.map_or(0, |s| s.low));
            let Some(variant) = ladder.levels.get(level).and_then(|l| l.variants.first()) else { continue };
            let place = Place { ladder, level, variant };
            let guessed = guess(
                scenario,
                self.catalogue,
                &mut self.client,
                &mut self.life,
                &place,
                slot,
                self.strength,
                error,
            );
            if let Some(load) = guessed {
                self.write(0, Payload::TenReps { variant: variant.id.clone(), load });
            }
        }
    }

    /// The second pair of eyes looks at a proposal; the oracle chooses beside it.
    fn looked_at(&mut self, run: RunId, slot: &Slot, plan: &Prescription, why: &[Reason]) {
        let today = self.now.date_naive();
        let Some(place) = self.catalogue.place(&plan.variant) else { return };
        let bench = self.ledger.bench(self.programme, today, Some(run));
        let kit = bench.ground.loads(place.variant);
        let mut open: Vec<usize> =
            bench.ground.open(place.ladder, slot.levels).iter().map(|p| p.level).collect();
        open.dedup();
        drop(bench);
        let kgs: Vec<f64> = kit.iter().map(|l| place.variant.external(l).0).collect();
        let shown = Shown { day: today, ladder: &slot.ladder, plan, kit: &kgs, open: &open, why };
        self.watch.shown(self.catalogue, &shown);
        let Some(aim) = plan.reserve else { return };
        let Some(known) = self.known(&place) else { return };
        let Some(w) = effective_load(place.variant, &plan.load, Kg(BODY)) else { return };
        let middle = (f64::from(plan.sets) - 1.0) / 2.0;
        let ours = known.reserve(w, f64::from(plan.target.count()), middle) - aim;
        let nth = u32::try_from(self.out.sessions).unwrap_or(u32::MAX);
        if libm::fabs(ours) <= FOUND {
            self.found.entry(slot.id.to_string()).or_insert(nth);
        }
        let loads: Vec<Kg> = kit.iter().filter_map(|l| effective_load(place.variant, l, Kg(BODY))).collect();
        let range = (plan.range.low(), plan.range.high());
        if let Some((load, reps)) = known.choose(&loads, range, plan.sets, 0, aim) {
            if self.scenario.slots.first().is_some_and(|s| s.id == slot.id) {
                let oracle = known.reserve(load, f64::from(reps), middle) - aim;
                self.out.settling.push(SlotSession { offset: ours, oracle, ..SlotSession::default() });
            }
            for j in 0..u32::from(plan.sets) {
                let group = place.variant.group.as_ref();
                let can = group.and_then(|g| self.client.reps_to_failure(g, load, j)).unwrap_or(0.0);
                self.out.oracle_sets += 1;
                self.out.oracle_distance += libm::fabs((can - f64::from(reps)).max(0.0) - aim);
            }
        }
    }

    fn known(&mut self, place: &Place<'_>) -> Option<Known> {
        let group = meet(&mut self.client, self.catalogue, place, self.strength)?;
        let (b, c, phi) = self.client.known(&group)?;
        Some(Known { b, c, phi, day: self.scenario.habits.day })
    }

    fn slot(
        &mut self,
        run: RunId,
        block: &Block,
        slot: &Slot,
        shown: &Prescription,
        by_group: &mut BTreeMap<GroupId, u32>,
    ) -> SlotDay {
        let today = self.now.date_naive();
        let mut done = SlotDay::default();
        let shown_kg = kg_of(self.catalogue, &shown.variant, &shown.load);
        for round in 0..shown.sets {
            if round > 0 && self.life.happens(self.scenario.short) {
                self.write(0, Payload::SetSkipped { run, slot: slot.id.clone(), round, why: SkipWhy::Short });
                continue;
            }
            let bench = self.ledger.bench(self.programme, today, Some(run));
            let turn = bench.turn(block, slot);
            drop(bench);
            let Turn::Do(mut plan) = turn else { break };
            if let Some(lighter) = plan.lighter.take()
                && self.life.happens(TAKES_LIGHTER)
            {
                plan.load = lighter;
            }
            let Some(place) = self.catalogue.place(&plan.variant) else { break };
            if let Some(marked) = done.dropped {
                self.watch.after_drop(&plan.variant, marked, place.level);
            }
            let same: Vec<f64> = done
                .sets
                .iter()
                .filter(|s| s.variant == plan.variant && s.side != Some(Side::Right))
                .map(|s| kg_of(self.catalogue, &s.variant, &s.load))
                .collect();
            let kg = place.variant.external(&plan.load).0;
            if plan.variant == shown.variant {
                self.watch.asked(&same, shown_kg, kg, plan.purpose == Purpose::Find);
            }
            if self.feels(&place, slot) && self.mark(run, slot, &plan, round, place.level, kg, &mut done) {
                let set = self.set_of(
                    run,
                    slot,
                    &plan,
                    round,
                    plan.per_side.then_some(Side::Left),
                    (1, None),
                    true,
                );
                done.sets.push(set.clone());
                self.write(0, Payload::SetDone(set));
                continue;
            }
            let earlier = place.variant.group.as_ref().and_then(|g| by_group.get(g)).copied().unwrap_or(0);
            let sides: &[Option<Side>] =
                if plan.per_side { &[Some(Side::Left), Some(Side::Right)] } else { &[None] };
            for side in sides {
                let (count, reserve) = self.attempt(&place, &plan, earlier);
                let set = self.set_of(run, slot, &plan, round, *side, (count, reserve), false);
                done.sets.push(set.clone());
                self.write(0, Payload::SetDone(set));
            }
            if let Some(group) = &place.variant.group {
                *by_group.entry(group.clone()).or_insert(0) += 1;
            }
        }
        done
    }

    /// What she can do of what is asked, and what she says was left; the truth is counted.
    fn attempt(&mut self, place: &Place<'_>, plan: &SetPlan, earlier: u32) -> (u16, Option<Reserve>) {
        let asked = match plan.target {
            Target::Seconds(n) => {
                let can = bodies::seconds(place, self.strength) * (0.95 + 0.1 * self.life.unit());
                return (n.min(can.clamp(5.0, 600.0) as u16), None);
            }
            Target::Reps(n) => n,
        };
        let group = meet(&mut self.client, self.catalogue, place, self.strength);
        let load = effective_load(place.variant, &plan.load, Kg(BODY));
        let loaded = group.zip(load).and_then(|(group, load)| self.client.set(&group, load, asked, earlier));
        let Some(answer) = loaded else {
            let fresh = bodies::reps_unloaded(place, self.strength);
            let Answer { reps, reserve, .. } = self.client.set_unloaded(fresh, asked, earlier);
            return (reps, Some(reserve));
        };
        if let Some(aim) = plan.reserve {
            self.out.sets += 1;
            self.out.distance += libm::fabs(answer.truth - aim);
            self.out.failed += u64::from(answer.reps < asked);
            self.out.below_one += u64::from(answer.reps < asked || answer.truth < 1.0);
        }
        (answer.reps, Some(answer.reserve))
    }

    #[allow(clippy::too_many_arguments, reason = "a set has that many parts")]
    fn set_of(
        &self,
        run: RunId,
        slot: &Slot,
        plan: &SetPlan,
        round: u8,
        side: Option<Side>,
        (count, reserve): (u16, Option<Reserve>),
        stopped: bool,
    ) -> SetDone {
        let timed = matches!(plan.target, Target::Seconds(_));
        SetDone {
            run,
            slot: slot.id.clone(),
            round,
            side,
            ladder: slot.ladder.clone(),
            variant: plan.variant.clone(),
            load: plan.load.clone(),
            reps: if timed { 0 } else { count },
            seconds: timed.then_some(count),
            reserve,
            purpose: plan.purpose,
            stopped,
        }
    }

    /// True if a symptom comes up in this set.
    fn feels(&mut self, place: &Place<'_>, slot: &Slot) -> bool {
        if self.scenario.hazard <= 0.0 {
            return false;
        }
        let levels = i64::try_from(place.ladder.levels.len()).unwrap_or(1);
        let drawn = self.life.between(0, levels - 1);
        let comfort =
            *self.comfort.entry(slot.ladder.clone()).or_insert_with(|| usize::try_from(drawn).unwrap_or(0));
        let above = place.level as f64 - comfort as f64;
        self.life.happens((self.scenario.hazard * libm::pow(3.0, above)).min(0.5))
    }

    /// Marks a symptom: a tap, then what it is. True if the set in hand ends.
    #[allow(clippy::too_many_arguments, reason = "a mark names all of it")]
    fn mark(
        &mut self,
        run: RunId,
        slot: &Slot,
        plan: &SetPlan,
        round: u8,
        level: usize,
        held: f64,
        done: &mut SlotDay,
    ) -> bool {
        let pain = SymptomAmount::Pain(u8::try_from(self.life.between(1, 7)).unwrap_or(5));
        // How often which kind: chosen, no source.
        let (kind, amount) = match self.life.between(0, 99) {
            0..=24 => ("heaviness", SymptomAmount::Little),
            25..=44 => ("leak-effort", SymptomAmount::Clearly),
            45..=64 => ("girdle-pain", pain),
            65..=79 => ("knee-pain", pain),
            80..=91 => ("doming", SymptomAmount::Little),
            92..=95 => ("bulge", SymptomAmount::Clearly),
            96..=97 => ("leak-urge", SymptomAmount::Little),
            _ => ("chest-pain", SymptomAmount::Clearly),
        };
        let mark = |symptom| Payload::SymptomMark {
            run: Some(run),
            slot: Some(slot.id.clone()),
            ladder: Some(slot.ladder.clone()),
            variant: Some(plan.variant.clone()),
            round: Some(round),
            at_rest: false,
            symptom,
        };
        let unsaid = Symptom { kind: None, amount: None, place: None, words: None };
        let said = Symptom { kind: Some(SymptomId::from(kind)), amount: Some(amount), ..unsaid.clone() };
        let target = self.write(0, mark(unsaid));
        self.write(0, Payload::Correction { target, instead: Box::new(mark(said)) });
        let state = self.ledger.state(self.now.date_naive());
        let verdict = state.effects.get(&run).and_then(|e| e.verdicts.get(&target));
        let Some(verdict) = verdict else { return false };
        if verdict.class >= Class::Drop {
            done.marked = true;
        }
        if verdict.class == Class::Drop {
            done.dropped = Some(level);
            self.watch.dropped(&slot.ladder, level, held);
        }
        verdict.ends_set
    }
}
