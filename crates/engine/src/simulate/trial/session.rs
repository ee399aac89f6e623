//! One session: what is answered before it, what is proposed and looked at, and the morning after.

use super::begin::meet;
use super::{BODY, Floor, SlotSession};
use crate::catalogue::Place;
use crate::ids::{GroupId, RunId};
use crate::programme::Slot;
use crate::proposal::{Gate, Outcome as Asked, Prescription};
use crate::reason::Reason;
use crate::record::{NextDay, Payload, Readiness, Versions};
use crate::simulate::oracle::Known;
use crate::simulate::scenario::StartWith;
use crate::simulate::watch::Shown;
use crate::strength::effective_load;
use crate::units::Kg;
use chrono::Duration;
use std::collections::BTreeMap;

/// Within so many reps of the target the load counts as found: as near as an oracle comes on a day, which it cannot
/// foresee.
const FOUND: f64 = 1.5;

impl Floor<'_> {
    /// One session; `None` if the programme stayed closed. With whether something was marked in it.
    pub(super) fn session(&mut self, day: i64) -> Option<(RunId, bool)> {
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
        let mut symptoms = Vec::new();
        if self.likely(self.scenario.between.check_in) {
            symptoms.push(self.symptom_at_large());
        }
        self.watch.begins(today);
        let check_in = self.write(0, Payload::CheckIn { run, readiness, symptoms, today: Vec::new() });
        self.takes_effect(run, check_in);
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
            return None;
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
        Some((run, marked))
    }

    /// The morning after, if she answers.
    pub(super) fn morning_after(&mut self, run: RunId, marked: bool) {
        if self.life.happens(0.85) {
            let settled = self.life.happens(if marked { 0.8 } else { 0.97 });
            let answer = if settled { NextDay::Settled } else { NextDay::NotSettled };
            let evening = self.now;
            self.now += Duration::hours(14);
            self.write(0, Payload::NextDayAnswer { run, answer, symptoms: Vec::new() });
            self.now = evening.max(self.now);
        }
    }

    /// The second pair of eyes looks at a proposal; the oracle chooses beside it.
    fn looked_at(&mut self, run: RunId, slot: &Slot, plan: &Prescription, why: &[Reason]) {
        let today = self.now.date_naive();
        let Some(place) = self.catalogue.place(&plan.variant) else { return };
        let bench = self.ledger.bench(self.programme, today, Some(run));
        let kit = bench.ground.loads(&place);
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
}
