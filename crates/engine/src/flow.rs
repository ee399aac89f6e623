//! The order of a session's sets, where she is in it, and how long it takes. A pure function of the
//! log, so that a restart goes on at the right card.

use crate::catalogue::Catalogue;
use crate::history::{History, Run};
use crate::ids::{RecordId, SlotId};
use crate::programme::{Amount, Block, BlockPart, PlanSession, Slot};
use crate::proposal::{Bench, Outcome, Proposal, SetPlan, Turn};
use crate::record::{SetDone, Side};
use crate::rules::RulePack;
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use std::collections::BTreeMap;

/// The run that is open at an instant: begun, not ended, and not left open for too long.
#[must_use]
pub fn open_run<'h>(history: &'h History, rules: &RulePack, now: DateTime<FixedOffset>) -> Option<&'h Run> {
    let longest = rules.number("session.open", "hours") * 3600.0;
    let age = |r: &Run| f64::from(i32::try_from((now - r.started).num_seconds()).unwrap_or(i32::MAX));
    history
        .runs
        .iter()
        .rev()
        .find(|r| r.ended.is_none() && (r.planned.is_some() || r.check_in.is_some()) && age(r) < longest)
}

/// The session that the next-day question is asked for on a day, if it is.
#[must_use]
pub fn next_day_asked<'h>(history: &'h History, rules: &RulePack, today: NaiveDate) -> Option<&'h Run> {
    let run = history.runs.iter().rev().find(|r| !r.sets.is_empty() || r.ended.is_some())?;
    let days = f64::from(i32::try_from((today - run.day).num_days()).unwrap_or(i32::MAX));
    let asked = days >= 1.0 && days <= rules.number("session.next-day", "days");
    (run.next_day.is_none() && asked).then_some(run)
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StepState {
    /// Its set was done.
    Done,
    /// It was left out, or its slot is over for today.
    Skipped,
    /// It is the set in hand.
    Now,
    /// It comes later.
    Ahead,
}

/// One set of the session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Index of its block.
    pub block: usize,
    /// Its slot.
    pub slot: SlotId,
    /// Its round, from 0.
    pub round: u8,
    /// Its side, where one side works at a time.
    pub side: Option<Side>,
    /// How it stands.
    pub state: StepState,
}

/// A rest that is due.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rest {
    /// The set after which it runs.
    pub after: RecordId,
    /// When it ends.
    pub until: DateTime<FixedOffset>,
    /// Its length in seconds.
    pub seconds: u16,
}

/// Where she is in a session.
#[derive(Clone, Debug)]
pub struct Flow {
    /// All sets in order.
    pub steps: Vec<Step>,
    /// What each slot asks for now.
    pub turns: BTreeMap<SlotId, Turn>,
    /// The set in hand, as an index into `steps`.
    pub now: Option<usize>,
    /// The rest before it.
    pub rest: Option<Rest>,
}

impl Flow {
    /// Works out where a run stands.
    #[must_use]
    pub fn of(bench: &Bench<'_>, session: &PlanSession, run: &Run) -> Self {
        let mut steps = Vec::new();
        let mut turns = BTreeMap::new();
        for block in &session.blocks {
            for slot in &block.slots {
                turns.insert(slot.id.clone(), bench.naming_settings(bench.turn(block, slot)));
            }
        }
        for (index, block) in session.blocks.iter().enumerate() {
            for round in 0..block.rounds {
                for slot in &block.slots {
                    let Some(shown) = run.prescription(&slot.id) else { continue };
                    if round >= shown.sets {
                        continue;
                    }
                    let turn = turns.get(&slot.id);
                    let per_side = match turn {
                        Some(Turn::Do(plan)) => plan.per_side,
                        Some(Turn::Over(_)) | None => false,
                    };
                    let over = matches!(turn, Some(Turn::Over(_)) | None);
                    let done: Vec<&SetDone> = run
                        .sets
                        .iter()
                        .map(|e| &e.set)
                        .filter(|s| s.slot == slot.id && s.round == round)
                        .collect();
                    let skipped = run.skips.iter().any(|s| s.slot == slot.id && s.round == round);
                    // A round that was begun on one side before the option changed counts as done.
                    let whole = done.iter().any(|s| s.side.is_none()) || (!per_side && !done.is_empty());
                    let sides: &[Option<Side>] =
                        if (per_side && !whole) || done.iter().any(|s| s.side.is_some()) {
                            &[Some(Side::Left), Some(Side::Right)]
                        } else {
                            &[None]
                        };
                    for side in sides {
                        let state = if whole && side.is_none() || done.iter().any(|s| s.side == *side) {
                            StepState::Done
                        } else if skipped || over || whole {
                            StepState::Skipped
                        } else {
                            StepState::Ahead
                        };
                        steps.push(Step { block: index, slot: slot.id.clone(), round, side: *side, state });
                    }
                }
            }
        }
        let now =
            if run.ended.is_some() { None } else { steps.iter().position(|s| s.state == StepState::Ahead) };
        if let Some(step) = now.and_then(|i| steps.get_mut(i)) {
            step.state = StepState::Now;
        }
        let rest = now.and_then(|i| rest_before(&session.blocks, &steps, i, run, bench.ground.more_rest()));
        Self { steps, turns, now, rest }
    }

    /// The set in hand.
    #[must_use]
    pub fn plan(&self, index: usize) -> Option<&SetPlan> {
        match self.turns.get(&self.steps.get(index)?.slot)? {
            Turn::Do(plan) => Some(plan),
            Turn::Over(_) => None,
        }
    }
}

/// Rest is due when the last thing logged was a set, and the set in hand is not its other side.
fn rest_before(blocks: &[Block], steps: &[Step], now: usize, run: &Run, more: u16) -> Option<Rest> {
    let last = run.sets.last()?;
    let next = steps.get(now)?;
    let last_step = steps.iter().find(|s| {
        s.slot == last.set.slot && s.round == last.set.round && (s.side == last.set.side || s.side.is_none())
    })?;
    if last_step.slot == next.slot && last_step.round == next.round {
        return None;
    }
    let block = blocks.get(last_step.block)?;
    let same_round = last_step.block == next.block && last_step.round == next.round;
    let seconds = if same_round { block.rest_between_seconds } else { block.rest_seconds };
    // Where no rest is planned, as from one move of a round to the next, none is made.
    let seconds = if seconds > 0 { seconds.saturating_add(more) } else { 0 };
    (seconds > 0).then(|| Rest {
        after: last.record,
        until: last.at + Duration::seconds(i64::from(seconds)),
        seconds,
    })
}

/// Seconds that a set takes, by its tempo if it has one.
fn set_seconds(rules: &RulePack, amount: Amount, tempo: Option<crate::programme::Tempo>, sides: f64) -> f64 {
    let work = match amount {
        Amount::Reps { low, high } => {
            let rep = tempo.map_or(rules.number("session.set-up", "seconds_per_rep"), |t| {
                f64::from(t.down) + f64::from(t.pause) + f64::from(t.up)
            });
            (f64::from(low) + f64::from(high)) / 2.0 * rep
        }
        Amount::Seconds { low, high } => (f64::from(low) + f64::from(high)) / 2.0,
    };
    work * sides + rules.number("session.set-up", "seconds_per_set")
}

/// Seconds that one round of a block takes, with its rest.
fn round_seconds(bench: &Bench<'_>, block: &Block) -> f64 {
    let rules = bench.inputs.rules;
    let work: f64 = block
        .slots
        .iter()
        .map(|slot| {
            let per_side = bench
                .run()
                .and_then(|r| r.prescription(&slot.id))
                .and_then(|p| bench.inputs.catalogue.place(&p.variant))
                .is_some_and(|p| p.variant.per_side);
            set_seconds(rules, slot.dose.amount, slot.dose.tempo, if per_side { 2.0 } else { 1.0 })
        })
        .sum();
    let more = |seconds: u16| {
        if seconds > 0 { f64::from(seconds.saturating_add(bench.ground.more_rest())) } else { 0.0 }
    };
    let between = more(block.rest_between_seconds)
        * f64::from(u32::try_from(block.slots.len().saturating_sub(1)).unwrap_or(0));
    work + between + more(block.rest_seconds)
}

/// Estimated minutes of a session as it is written, for nobody in particular: a ladder counts for both sides where most of
/// its variants are done side by side.
#[must_use]
pub fn planned_minutes(catalogue: &Catalogue, rules: &RulePack, session: &PlanSession) -> u16 {
    let one_sided = |slot: &Slot| {
        let variants =
            catalogue.ladder(&slot.ladder).into_iter().flat_map(|l| &l.levels).flat_map(|l| &l.variants);
        let (sided, all) = variants.fold((0, 0), |(s, n), v| (s + u32::from(v.per_side), n + 1));
        sided * 2 > all
    };
    let seconds: f64 = session
        .blocks
        .iter()
        .map(|block| {
            let work: f64 = block
                .slots
                .iter()
                .map(|s| {
                    set_seconds(rules, s.dose.amount, s.dose.tempo, if one_sided(s) { 2.0 } else { 1.0 })
                })
                .sum();
            let pauses = u32::try_from(block.slots.len().saturating_sub(1)).unwrap_or(0);
            let round = work
                + f64::from(block.rest_between_seconds) * f64::from(pauses)
                + f64::from(block.rest_seconds);
            round * f64::from(block.rounds)
        })
        .sum();
    libm::ceil(seconds / 60.0).clamp(0.0, 600.0) as u16
}

/// Estimated minutes of a whole session; what rests by its proposal takes none.
#[must_use]
pub fn minutes(bench: &Bench<'_>, session: &PlanSession, proposed: &[Proposal]) -> u16 {
    let rests = |slot: &SlotId| proposed.iter().any(|p| p.slot == *slot && p.outcome == Outcome::Rest);
    let seconds: f64 = session
        .blocks
        .iter()
        .map(|block| {
            let mut left = block.clone();
            left.slots.retain(|s| !rests(&s.id));
            if left.slots.is_empty() { 0.0 } else { round_seconds(bench, &left) * f64::from(block.rounds) }
        })
        .sum();
    libm::ceil(seconds / 60.0).clamp(1.0, 600.0) as u16
}

/// The sets that the ten-minute version leaves out, as (slot, round) of steps still ahead: finishers and cool-downs
/// first, then rounds from the last one back, then blocks from the last one back. The first round of
/// the first block still to do always stays.
#[must_use]
pub fn left_out_when_short(bench: &Bench<'_>, session: &PlanSession, flow: &Flow) -> Vec<(SlotId, u8)> {
    let budget = bench.inputs.rules.number("session.short", "minutes") * 60.0;
    let ahead = |block: usize, round: u8| {
        flow.steps.iter().any(|s| {
            s.block == block && s.round == round && matches!(s.state, StepState::Now | StepState::Ahead)
        })
    };
    // Rounds still to do, in the order in which they are kept: first rounds of every block, then
    // second rounds, and so on; a finisher and a cool-down come last of all.
    let mut rounds: Vec<(bool, u8, usize)> = Vec::new();
    for (index, block) in session.blocks.iter().enumerate() {
        let last = matches!(block.form.part(), BlockPart::Finisher | BlockPart::CoolDown);
        for round in 0..block.rounds {
            if ahead(index, round) {
                rounds.push((last, round, index));
            }
        }
    }
    rounds.sort_unstable();
    let mut spent = 0.0;
    let mut left_out = Vec::new();
    for (position, (_, round, index)) in rounds.into_iter().enumerate() {
        let Some(block) = session.blocks.get(index) else { continue };
        let cost = round_seconds(bench, block);
        if position == 0 || spent + cost <= budget {
            spent += cost;
        } else {
            for step in flow.steps.iter().filter(|s| {
                s.block == index && s.round == round && matches!(s.state, StepState::Now | StepState::Ahead)
            }) {
                if !left_out.contains(&(step.slot.clone(), round)) {
                    left_out.push((step.slot.clone(), round));
                }
            }
        }
    }
    left_out
}
