//! The sets of one slot: what she is asked, what she can do, what she says and what she feels.

use super::begin::meet;
use super::{BODY, Floor};
use crate::catalogue::Place;
use crate::ids::{GroupId, RunId, SymptomId};
use crate::programme::{Block, Slot};
use crate::proposal::{Prescription, SetPlan, Target, Turn};
use crate::record::{Payload, Purpose, Reserve, SetDone, Side, SkipWhy, Symptom, SymptomAmount};
use crate::rules::{Class, Family};
use crate::simulate::bodies;
use crate::simulate::client::Answer;
use crate::simulate::watch::kg_of;
use crate::stage::Stage;
use crate::strength::effective_load;
use crate::units::Kg;
use std::collections::BTreeMap;

/// She takes a lighter load that is offered two times out of three. Chosen, no source.
const TAKES_LIGHTER: f64 = 0.67;

/// What the sets of a slot came to.
#[derive(Default)]
pub(super) struct SlotDay {
    pub(super) sets: Vec<SetDone>,
    pub(super) marked: bool,
    /// The level of the last drop.
    pub(super) dropped: Option<usize>,
}

impl Floor<'_> {
    pub(super) fn slot(
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
                let may_grow = !self.careful() && !done.marked;
                self.watch.asked_reps(shown, plan.target.count(), may_grow);
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

    /// In pregnancy and the first twelve weeks after a birth no set asks for more than was shown.
    fn careful(&self) -> bool {
        match (self.scenario.stage)(self.first) {
            Some(Stage::Pregnant { .. }) => true,
            Some(Stage::Postpartum { birth, .. }) => (self.now.date_naive() - birth).num_weeks() < 12,
            Some(Stage::AfterLoss { .. } | Stage::Neither) | None => false,
        }
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
            let family = self.rules.symptom(&verdict.kind).map(|k| k.family);
            let pelvic_floor = family == Some(Family::PelvicFloor);
            self.watch.marked(&slot.ladder, pelvic_floor, verdict.class == Class::Hold);
        }
        if verdict.class == Class::Drop {
            done.dropped = Some(level);
            self.watch.dropped(&slot.ladder, level, held);
        }
        verdict.ends_set
    }
}
