//! One session of an invented client, set by set: what the card would show, and what she makes of it.

use super::part::{Felt, Morning, Part};
use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::Profile;
use crate::train::session_of;
use crate::views::CheckInForm;
use chrono::{DateTime, Duration, FixedOffset};
use newel_engine::flow::{Flow, Step, StepState};
use newel_engine::ids::{RunId, SlotId};
use newel_engine::proposal::{Gate, SetPlan, Target};
use newel_engine::record::{Payload, Purpose, Readiness, Reserve, SetDone, Side, SkipWhy, Symptom};
use newel_engine::simulate::{Answer, Client, bodies};
use newel_engine::strength::effective_load;
use newel_engine::units::Kg;
use newel_store::Action;
use std::collections::BTreeMap;

/// Chance that a set is logged with a rep too many and put right at once; chosen, no source.
const SLIP: f64 = 0.008;
/// Chance that she leaves out a last round; chosen, no source.
const SKIP: f64 = 0.015;
/// Chance that a day is no usual one; chosen, no source.
const TIRED: f64 = 0.08;

/// A client in the story.
pub(super) struct Trainee<'a> {
    pub profile: Profile,
    pub part: &'a Part,
    pub body: Client,
    /// How many of `part.felt` have come.
    pub felt: usize,
    /// How many of `part.notes` have come.
    pub noted: usize,
}

/// What a session left behind.
pub(super) struct Outcome {
    pub run: RunId,
    pub ended: DateTime<FixedOffset>,
    /// What she says next morning; `None` where nobody asks.
    pub morning: Option<Morning>,
}

/// Where she is in a session.
struct Floor {
    run: RunId,
    now: DateTime<FixedOffset>,
    flow: Flow,
    /// Sets since the flow was worked out.
    since: Vec<(SlotId, u8, Option<Side>)>,
    /// Sets of each group so far.
    by_group: BTreeMap<String, u32>,
    /// Reserve that she had in truth, for the session's effort.
    left: Vec<f64>,
    open: bool,
}

impl Floor {
    fn next(&self) -> Option<usize> {
        self.flow.steps.iter().position(|s| {
            matches!(s.state, StepState::Now | StepState::Ahead)
                && !self
                    .since
                    .iter()
                    .any(|(slot, round, side)| *slot == s.slot && *round == s.round && *side == s.side)
        })
    }
}

impl Trainee<'_> {
    /// Trains the next session of her plan; `None` when training is closed.
    pub(super) fn train(
        &mut self,
        books: &Books,
        begin: DateTime<FixedOffset>,
        days_before: i64,
        first: DateTime<FixedOffset>,
    ) -> Result<Option<Outcome>, AppError> {
        let day = (begin.date_naive() - first.date_naive()).num_days();
        self.body.day(day as f64);
        let run = RunId(super::story::id_at(begin, self.body.chance()));
        let tired = self.body.chance().happens(TIRED);
        let readiness = if tired { Readiness::Tired } else { Readiness::Usual };
        self.profile.begin(begin, run, CheckInForm::of(readiness, Vec::new()), false)?;
        let Some(mut floor) = self.floor(run, begin + Duration::seconds(40))? else {
            return Ok(None);
        };
        let mut morning = None;
        while let Some(index) = floor.next() {
            let (Some(step), Some(plan)) =
                (floor.flow.steps.get(index).cloned(), floor.flow.plan(index).cloned())
            else {
                break;
            };
            floor.now += Duration::seconds(rest_before(&floor, &step));
            let felt = self.part.felt.get(self.felt).filter(|f| {
                let place = books.catalogue.place(&plan.variant);
                days_before <= f.from
                    && step.round >= f.round
                    && place.is_some_and(|p| f.ladder.is_empty() || p.ladder.id.as_str() == f.ladder)
            });
            if let Some(felt) = felt {
                self.felt += 1;
                morning = Some(felt.morning);
                let ends_set = self.feel(books, &mut floor, felt, &step, &plan)?;
                if !floor.open {
                    break;
                }
                if ends_set {
                    continue;
                }
            }
            self.one_set(books, &mut floor, &step, &plan)?;
        }
        let stopped = !floor.open;
        self.end(&mut floor, begin, days_before)?;
        let asked = if stopped { None } else { Some(morning.unwrap_or(Morning::Settled)) };
        Ok(Some(Outcome { run, ended: floor.now, morning: asked }))
    }

    /// Works out anew where she is; `None` before a session that never began.
    fn floor(&mut self, run: RunId, now: DateTime<FixedOffset>) -> Result<Option<Floor>, AppError> {
        let known = self.profile.own()?;
        let Some(entry) = known.history().run(run).filter(|r| r.planned.is_some()) else { return Ok(None) };
        let Some(session) = session_of(known, entry) else { return Ok(None) };
        let bench = known.bench(entry.day, Some(run)).ok_or(Refusal::NoPlan)?;
        let open = bench.gate() == Gate::Open;
        let flow = Flow::of(&bench, &session, entry);
        Ok(Some(Floor {
            run,
            now,
            flow,
            since: Vec::new(),
            by_group: BTreeMap::new(),
            left: Vec::new(),
            open,
        }))
    }

    fn refresh(&mut self, floor: &mut Floor) -> Result<(), AppError> {
        self.profile.reread();
        if let Some(fresh) = self.floor(floor.run, floor.now)? {
            (floor.flow, floor.open) = (fresh.flow, fresh.open);
            floor.since.clear();
        }
        Ok(())
    }

    fn one_set(
        &mut self,
        books: &Books,
        floor: &mut Floor,
        step: &Step,
        plan: &SetPlan,
    ) -> Result<(), AppError> {
        let last_round = floor.flow.steps.iter().filter(|s| s.slot == step.slot).map(|s| s.round).max();
        let skips = Some(step.round) == last_round && step.round > 0 && step.side != Some(Side::Right);
        if skips && self.body.chance().happens(SKIP) {
            let why = SkipWhy::Chosen;
            let (slot, round) = (step.slot.clone(), step.round);
            let skipped = Payload::SetSkipped { run: floor.run, slot, round, why };
            self.profile.write_unread(Action::SkipSet, floor.now, vec![skipped])?;
            for side in [None, Some(Side::Left), Some(Side::Right)] {
                floor.since.push((step.slot.clone(), step.round, side));
            }
            return Ok(());
        }
        let place = books.catalogue.place(&plan.variant).ok_or(Refusal::NoSuchThing)?;
        let earlier = place
            .variant
            .group
            .as_ref()
            .map_or(u32::from(step.round), |g| floor.by_group.get(g.as_str()).copied().unwrap_or(0));
        let (done, reserve) = self.attempt(books, plan, earlier, floor)?;
        floor.now += Duration::seconds(self.set_seconds(done));
        let (reps, seconds) = match done {
            Target::Reps(n) => (n, None),
            Target::Seconds(n) => (0, Some(n)),
        };
        let set = SetDone {
            run: floor.run,
            slot: step.slot.clone(),
            round: step.round,
            side: step.side,
            ladder: place.ladder.id.clone(),
            variant: plan.variant.clone(),
            load: plan.load.clone(),
            reps,
            seconds,
            reserve,
            purpose: plan.purpose,
            stopped: false,
        };
        self.log(floor, set)?;
        floor.since.push((step.slot.clone(), step.round, step.side));
        if step.side != Some(Side::Left)
            && let Some(group) = &place.variant.group
        {
            *floor.by_group.entry(group.to_string()).or_insert(0) += 1;
        }
        // While a load is being found, or when little was left, the card changes with each set.
        let little = matches!(reserve, Some(Reserve::Exactly(n)) if plan.reserve.is_some_and(|aim| f64::from(n) + 1.5 < aim));
        if plan.purpose == Purpose::Find || little {
            self.refresh(floor)?;
            self.lighter(floor, step);
        }
        Ok(())
    }

    /// What she can do of what the card asks, and what she says was left.
    fn attempt(
        &mut self,
        books: &Books,
        plan: &SetPlan,
        earlier: u32,
        floor: &mut Floor,
    ) -> Result<(Target, Option<Reserve>), AppError> {
        let place = books.catalogue.place(&plan.variant).ok_or(Refusal::NoSuchThing)?;
        let (kg, strength) = (self.part.body_kg.0, self.part.strength);
        let asked = match plan.target {
            Target::Seconds(n) => {
                let can = bodies::seconds(&place, strength) * (0.95 + 0.1 * self.body.chance().unit());
                return Ok((Target::Seconds(n.min(can.clamp(5.0, 600.0) as u16)), None));
            }
            Target::Reps(n) => n,
        };
        let loaded = place.variant.group.as_ref().zip(effective_load(place.variant, &plan.load, Kg(kg)));
        let answer: Answer = match loaded.zip(bodies::ten_rep_max(&place, kg, strength)) {
            Some(((group, load), ten)) => {
                let slope = books.catalogue.group(group).map_or(38.0, |g| g.prior_c);
                self.body.meet(group, slope, ten);
                self.body.set(group, load, asked, earlier).ok_or(AppError::Internal)?
            }
            None => self.body.set_unloaded(bodies::reps_unloaded(&place, strength), asked, earlier),
        };
        floor.left.push(answer.truth);
        Ok((Target::Reps(answer.reps), Some(answer.reserve)))
    }

    /// Seconds of a set, at about three seconds a rep.
    fn set_seconds(&mut self, done: Target) -> i64 {
        let work = match done {
            Target::Reps(n) => i64::from(n) * 3,
            Target::Seconds(n) => i64::from(n),
        };
        work + self.body.chance().between(8, 20)
    }

    fn log(&mut self, floor: &Floor, set: SetDone) -> Result<(), AppError> {
        let slips = set.seconds.is_none() && self.body.chance().happens(SLIP);
        let first = if slips { SetDone { reps: set.reps + 1, ..set.clone() } } else { set.clone() };
        let change = self.profile.write_unread(Action::LogSet, floor.now, vec![Payload::SetDone(first)])?;
        if slips && let Some(record) = change.records.first() {
            let instead = Box::new(Payload::SetDone(set));
            let put_right = Payload::Correction { target: record.id, instead };
            let at = floor.now + Duration::seconds(6);
            self.profile.write_unread(Action::Correct, at, vec![put_right])?;
        }
        Ok(())
    }

    /// She takes a lighter load that is offered, two times out of three.
    fn lighter(&mut self, floor: &mut Floor, step: &Step) {
        if let Some(newel_engine::proposal::Turn::Do(plan)) = floor.flow.turns.get_mut(&step.slot)
            && let Some(lighter) = plan.lighter.take()
            && self.body.chance().happens(0.67)
        {
            plan.load = lighter;
        }
    }

    /// A symptom: one tap, written before anything is asked; then its kind, how much, where. Says whether
    /// the set in hand ends.
    fn feel(
        &mut self,
        books: &Books,
        floor: &mut Floor,
        felt: &Felt,
        step: &Step,
        plan: &SetPlan,
    ) -> Result<bool, AppError> {
        if felt.at_rest {
            self.one_set(books, floor, step, plan)?;
        }
        let ladder = books.catalogue.place(&plan.variant).map(|p| p.ladder.id.clone());
        let mark = |symptom| Payload::SymptomMark {
            run: Some(floor.run),
            slot: Some(step.slot.clone()),
            ladder: ladder.clone(),
            variant: Some(plan.variant.clone()),
            round: Some(step.round),
            at_rest: felt.at_rest,
            symptom,
        };
        let tapped = mark(Symptom { kind: None, amount: None, place: None, words: None });
        let said = mark(Symptom {
            kind: Some(felt.kind.into()),
            amount: felt.amount,
            place: felt.place.map(str::to_owned),
            words: felt.words.map(str::to_owned),
        });
        floor.now += Duration::seconds(15);
        let change = self.profile.write_unread(Action::MarkSymptom, floor.now, vec![tapped])?;
        let target = change.records.first().map(|r| r.id).ok_or(AppError::Internal)?;
        floor.now += Duration::seconds(25);
        let described = Payload::Correction { target, instead: Box::new(said) };
        self.profile.write_unread(Action::DescribeSymptom, floor.now, vec![described])?;
        self.refresh(floor)?;
        let known = self.profile.own()?;
        let day = known.history().run(floor.run).map(|r| r.day).unwrap_or_default();
        let bench = known.bench(day, Some(floor.run)).ok_or(Refusal::NoPlan)?;
        let ends = bench
            .state
            .effects
            .get(&floor.run)
            .and_then(|e| e.verdicts.get(&target))
            .is_none_or(|v| v.ends_set);
        Ok(ends || felt.at_rest)
    }

    fn end(
        &mut self,
        floor: &mut Floor,
        begin: DateTime<FixedOffset>,
        days_before: i64,
    ) -> Result<(), AppError> {
        floor.now += Duration::seconds(self.body.chance().between(30, 90));
        let note = self.part.notes.get(self.noted).filter(|(from, _)| days_before <= *from);
        if note.is_some() {
            self.noted += 1;
        }
        let minutes = u16::try_from((floor.now - begin).num_minutes()).unwrap_or(600);
        // The fewer reps were left on the whole, the harder she calls the session; chosen, no source.
        let count = floor.left.len().max(1) as f64;
        let left = floor.left.iter().map(|l| l.min(8.0)).sum::<f64>() / count;
        let effort = if floor.left.is_empty() { 1.0 } else { 7.5 - 0.7 * left };
        let said = (effort + self.body.chance().normal(0.0, 0.6)).round().clamp(1.0, 9.0) as u8;
        let ended = Payload::SessionEnded {
            run: floor.run,
            effort: floor.open.then_some(said),
            minutes: Some(minutes.max(1)),
            note: note.map(|(_, words)| (*words).to_owned()),
        };
        self.profile.write_unread(Action::EndSession, floor.now, vec![ended])?;
        self.profile.reread();
        Ok(())
    }
}

/// Seconds of rest before a set: none before the other side of the same round.
fn rest_before(floor: &Floor, step: &Step) -> i64 {
    match floor.since.last() {
        Some((slot, round, _)) if *slot == step.slot && *round == step.round => 5,
        Some((_, round, _)) if *round == step.round => 20,
        Some(_) => 75,
        None => 20,
    }
}
