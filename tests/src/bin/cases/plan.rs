//! Draws a programme: sessions, weeks and phases, blocks with a warm-up and a cool-down, doses that change by week.

use newel_engine::catalogue::{Catalogue, Ladder, Loading, ReadyMark, Variant};
use newel_engine::ids::{LadderId, PhaseId, ProgrammeId};
use newel_engine::programme::{
    Amount, Block, BlockForm, BlockWeek, Dose, LevelSpan, Phase, PlanSession, Programme, Slot, SlotWeek,
};
use newel_engine::simulate::Chance;
use uuid::Uuid;

use crate::draw::one_of;

/// Weeks that may ask for another dose: logs are no longer than fifteen sessions.
const WEEKS: u8 = 6;

/// What a programme is drawn with.
struct Draft<'a> {
    chance: &'a mut Chance,
    catalogue: &'a Catalogue,
    /// Ladders that hold something of the coach's own.
    own: &'a [LadderId],
    /// Ladders drawn so far.
    ladders: Vec<Ladder>,
    blocks: usize,
    slots: usize,
}

/// A programme: half of them one session, week after week the same; the others with weeks, light weeks or phases.
pub fn programme(chance: &mut Chance, catalogue: &Catalogue, own: &[LadderId]) -> Programme {
    let plain = chance.happens(0.45);
    let phases = if plain { 0 } else { *one_of(chance, &[0, 0, 0, 2, 2, 3]) };
    let per_week = *one_of(chance, &[1, 1, 2, 2, 3]);
    let mut draft = Draft { chance, catalogue, own, ladders: Vec::new(), blocks: 0, slots: 0 };
    let phases: Vec<Phase> = (0..phases).map(|n| draft.phase(n)).collect();
    let mut sessions = Vec::new();
    let stands: Vec<Option<PhaseId>> =
        if phases.is_empty() { vec![None] } else { phases.iter().map(|p| Some(p.id.clone())).collect() };
    for phase in stands {
        for _ in 0..if draft.chance.happens(0.3) { 2 } else { 1 } {
            let session = draft.session(sessions.len(), phase.clone(), plain);
            sessions.push(session);
        }
    }
    let weeks = if phases.is_empty() {
        draft.chance.happens(0.4).then(|| draft.number(2, 8))
    } else {
        Some(phases.iter().map(|p| p.weeks).sum())
    };
    let light = !plain && phases.is_empty() && draft.chance.happens(0.7);
    let light_weeks = if light { draft.some_weeks(weeks.unwrap_or(WEEKS), 0.4) } else { Vec::new() };
    Programme {
        id: ProgrammeId(Uuid::from_u128(7)),
        revision: 1,
        title: "drawn".into(),
        per_week,
        weeks,
        light_weeks,
        phases,
        sessions,
    }
}

impl Draft<'_> {
    fn number(&mut self, low: i64, high: i64) -> u8 {
        u8::try_from(self.chance.between(low, high)).unwrap_or(1)
    }

    /// Some of the weeks from 1 on, rising.
    fn some_weeks(&mut self, end: u8, probability: f64) -> Vec<u8> {
        (1..=end).filter(|_| self.chance.happens(probability)).collect()
    }

    fn phase(&mut self, number: usize) -> Phase {
        let weeks = self.number(1, 3);
        let light_weeks = if self.chance.happens(0.5) { self.some_weeks(weeks, 0.5) } else { Vec::new() };
        Phase { id: format!("phase-{number}").as_str().into(), title: "drawn".into(), weeks, light_weeks }
    }

    fn session(&mut self, number: usize, phase: Option<PhaseId>, plain: bool) -> PlanSession {
        let mut blocks: Vec<Block> = Vec::new();
        if self.chance.happens(0.18) {
            let block = self.block(BlockForm::WarmUp, plain);
            blocks.push(block);
        }
        for n in 0..self.chance.between(1, 3) {
            if self.chance.happens(0.2)
                && let Some(block) = blocks.last_mut()
                && block.form == BlockForm::StraightSets
            {
                block.form = BlockForm::Superset;
                let slot = self.slot(plain);
                if let Some(block) = blocks.last_mut() {
                    block.slots.push(slot);
                }
                continue;
            }
            let last = n > 0 && self.chance.happens(0.06);
            let form = if last { BlockForm::Finisher } else { BlockForm::StraightSets };
            let block = self.block(form, plain);
            blocks.push(block);
        }
        if self.chance.happens(0.12) {
            let block = self.block(BlockForm::CoolDown, plain);
            blocks.push(block);
        }
        let id = format!("session-{number}");
        PlanSession { id: id.as_str().into(), title: "drawn".into(), minutes: None, phase, blocks }
    }

    fn block(&mut self, form: BlockForm, plain: bool) -> Block {
        let slot = self.slot(plain);
        self.blocks += 1;
        let rounds = self.number(1, 4);
        let told = !plain && self.chance.happens(0.35);
        let weeks = if told { self.some_weeks(WEEKS, 0.35) } else { Vec::new() };
        let told = weeks.into_iter().map(|week| BlockWeek {
            week,
            rounds: self.number(1, 5),
            rest_seconds: 90,
            rest_between_seconds: 0,
        });
        let by_week: Vec<BlockWeek> = told.collect();
        Block {
            id: format!("block-{}", self.blocks - 1).as_str().into(),
            form,
            rounds,
            rest_seconds: 60,
            rest_between_seconds: 0,
            by_week,
            slots: vec![slot],
        }
    }

    fn slot(&mut self, plain: bool) -> Slot {
        let ladder = self.ladder();
        let of = |what: fn(&Variant) -> bool| ladder.levels.iter().flat_map(|l| &l.variants).any(what);
        let timed = of(|v| matches!(v.ready, ReadyMark::Seconds { .. }));
        // A coach may also ask for seconds of what is usually counted, and the other way round.
        let timed = timed != self.chance.happens(0.03);
        let levels = self.chance.happens(0.15).then(|| {
            let top = i64::try_from(ladder.levels.len()).unwrap_or(1) - 1;
            let low = self.chance.between(0, top);
            let high = self.number(low, top);
            LevelSpan { low: u8::try_from(low).unwrap_or(0), high }
        });
        let dose = self.dose(timed);
        let told = !plain && self.chance.happens(0.35);
        let weeks = if told { self.some_weeks(WEEKS, 0.35) } else { Vec::new() };
        let by_week = weeks.into_iter().map(|week| SlotWeek { week, dose: self.dose(timed) }).collect();
        self.slots += 1;
        let id = format!("slot-{}", self.slots - 1);
        let slot = Slot { id: id.as_str().into(), ladder: ladder.id.clone(), by_week, levels, dose };
        self.ladders.push(ladder);
        slot
    }

    fn dose(&mut self, timed: bool) -> Dose {
        let short = |n: i64| u16::try_from(n).unwrap_or(8);
        let amount = if timed {
            let low = short(self.chance.between(1, 8) * 5);
            Amount::Seconds { low, high: low + short(self.chance.between(0, 6) * 5) }
        } else {
            let low = short(self.chance.between(4, 12));
            Amount::Reps { low, high: low + short(self.chance.between(0, 6)) }
        };
        Dose { amount, target_rir: self.number(0, 5), tempo: None }
    }

    /// Any ladder, more often one with loads, now and then one of the few with a barbell or with help; often one that is in the
    /// programme already, so that warm-up, work and other sessions meet on it.
    fn ladder(&mut self) -> Ladder {
        if !self.ladders.is_empty() && self.chance.happens(0.3) {
            return one_of(self.chance, &self.ladders).clone();
        }
        let any =
            |l: &Ladder, what: fn(&Variant) -> bool| l.levels.iter().flat_map(|l| &l.variants).any(what);
        let loaded = |l: &&Ladder| any(l, |v| v.group.is_some());
        let barbell = |l: &&Ladder| any(l, |v| matches!(v.loading, Loading::Barbell));
        let helped = |l: &&Ladder| any(l, |v| matches!(v.loading, Loading::Assist { .. }));
        let own = |l: &&Ladder| self.own.contains(&l.id);
        let all = self.catalogue.ladders.iter();
        let list: Vec<&Ladder> = if !self.own.is_empty() && self.chance.happens(0.6) {
            all.filter(own).collect()
        } else if self.chance.happens(0.1) {
            all.filter(barbell).collect()
        } else if self.chance.happens(0.15) {
            all.filter(helped).collect()
        } else if self.chance.happens(0.8) {
            all.filter(loaded).collect()
        } else {
            all.collect()
        };
        (*one_of(self.chance, &list)).clone()
    }
}
