//! A session as she goes through it, and the morning after.

use super::Story;
use super::engine::today;
use newel_engine::history::History;
use newel_engine::ids::*;
use newel_engine::kit::Load;
use newel_engine::programme::*;
use newel_engine::proposal::*;
use newel_engine::reason::ReasonCode;
use newel_engine::record::*;

impl Story {
    pub fn feels(&mut self, readiness: Readiness) -> &mut Self {
        self.readiness = readiness;
        self
    }

    pub fn since_last_time(&mut self, symptom: Symptom) -> &mut Self {
        self.since_last_time.push(symptom);
        self
    }

    /// What else there is today, at the next check-in.
    pub fn today_has(&mut self, things: &[TodayThing]) -> &mut Self {
        self.today_things = things.to_vec();
        self
    }

    /// Says how she is; the session is not begun yet.
    pub fn checks_in(&mut self) -> &mut Self {
        let run = RunId(self.uuid());
        self.run = Some(run);
        self.last_run = Some(run);
        let (readiness, symptoms) = (self.readiness, std::mem::take(&mut self.since_last_time));
        self.readiness = Readiness::Usual;
        let today = std::mem::take(&mut self.today_things);
        self.says(Payload::CheckIn { run, readiness, symptoms, today })
    }

    /// Begins a session: check-in, start, proposal.
    pub fn trains(&mut self) -> &mut Self {
        self.checks_in().begins()
    }

    pub fn begins(&mut self) -> &mut Self {
        let run = self.run.expect("she has checked in");
        let (day, programme, revision) = (self.today(), self.programme.id, self.programme.revision);
        let session = self.with_bench(|b| today(b).id);
        self.says(Payload::SessionStarted { run, day, programme, revision, session });
        let result = self.with_bench(|b| b.propose(&today(b)));
        let versions = Versions { engine: newel_engine::ENGINE_VERSION.into(), catalogue: 1, rules: 1 };
        self.says(Payload::ProposalShown {
            run,
            inputs: String::new(),
            known: Vec::new(),
            versions,
            result: result.into(),
        })
    }

    pub fn session(&self) -> &PlanSession {
        &self.programme.sessions[0]
    }

    /// What the slot asks for now.
    pub fn turn(&self, slot: &str) -> Turn {
        self.with_bench(|b| {
            let session = today(b);
            let (block, slot) = session.slot(&slot.into()).expect("a slot of the session");
            b.turn(block, slot)
        })
    }

    pub fn plan(&self, slot: &str) -> SetPlan {
        match self.turn(slot) {
            Turn::Do(plan) => *plan,
            Turn::Over(reasons) => panic!("{slot} is over: {reasons:?}"),
        }
    }

    pub fn is_over(&self, slot: &str) -> bool {
        matches!(self.turn(slot), Turn::Over(_))
    }

    pub fn over_because(&self, slot: &str) -> Vec<ReasonCode> {
        match self.turn(slot) {
            Turn::Over(reasons) => reasons.iter().map(|r| r.code).collect(),
            Turn::Do(plan) => panic!("{slot} goes on with {}", plan.variant),
        }
    }

    fn round(&self, slot: &str, variant: &VariantId, side: Option<Side>) -> u8 {
        let history = History::of(&self.records);
        let run = history.run(self.run.unwrap()).unwrap();
        let mut rounds: Vec<u8> = run
            .sets
            .iter()
            .filter(|e| {
                e.set.slot.as_str() == slot
                    && (side.is_none() || e.set.side == side || e.set.variant != *variant)
            })
            .map(|e| e.set.round)
            .collect();
        rounds.dedup();
        rounds.iter().max().map_or(0, |r| r + 1)
    }

    fn set_record(&mut self, slot: &str, plan: &SetPlan, side: Option<Side>, done: Done) -> RecordId {
        let round = self.round(slot, &plan.variant, side);
        let timed = matches!(plan.range, Amount::Seconds { .. });
        self.log(Payload::SetDone(SetDone {
            run: self.run.unwrap(),
            slot: slot.into(),
            round,
            side,
            ladder: self.catalogue.place(&plan.variant).unwrap().ladder.id.clone(),
            variant: plan.variant.clone(),
            load: done.load.unwrap_or_else(|| plan.load.clone()),
            reps: if timed { 0 } else { done.count },
            seconds: timed.then_some(done.count),
            reserve: done.reserve,
            purpose: plan.purpose,
            stopped: done.stopped,
        }))
    }

    /// One set as the engine asks for it; both sides where one side works at a time.
    pub fn does(&mut self, slot: &str, count: u16, reserve: Option<Reserve>) -> &mut Self {
        let plan = self.plan(slot);
        let done = Done { count, reserve, load: None, stopped: false };
        if plan.per_side {
            self.set_record(slot, &plan, Some(Side::Left), done.clone());
            self.set_record(slot, &plan, Some(Side::Right), done);
        } else {
            self.set_record(slot, &plan, None, done);
        }
        self
    }

    /// One side of a set.
    pub fn does_side(&mut self, slot: &str, side: Side, count: u16, reserve: Option<Reserve>) -> &mut Self {
        let plan = self.plan(slot);
        self.set_record(slot, &plan, Some(side), Done { count, reserve, load: None, stopped: false });
        self
    }

    /// One set with a load of her own choice.
    pub fn does_with(&mut self, slot: &str, load: Load, count: u16, reserve: Option<Reserve>) -> &mut Self {
        let plan = self.plan(slot);
        self.set_record(slot, &plan, None, Done { count, reserve, load: Some(load), stopped: false });
        self
    }

    /// A set that a mark ended before its time.
    pub fn stops(&mut self, slot: &str, count: u16) -> &mut Self {
        let plan = self.plan(slot);
        let side = plan.per_side.then_some(Side::Left);
        self.set_record(slot, &plan, side, Done { count, reserve: None, load: None, stopped: true });
        self
    }

    /// All sets that are left of a slot, each with as many reps and as much in reserve.
    pub fn does_all(&mut self, slot: &str, count: u16, reserve: Option<Reserve>) -> &mut Self {
        for _ in 0..12 {
            let ahead = self.flow().steps.iter().any(|s| {
                s.slot.as_str() == slot
                    && matches!(
                        s.state,
                        newel_engine::flow::StepState::Now | newel_engine::flow::StepState::Ahead
                    )
            });
            if !ahead {
                break;
            }
            self.does(slot, count, reserve);
        }
        self
    }

    /// One tap, then the kind: the mark is in the log before anything is asked.
    pub fn marks(&mut self, slot: &str, symptom: Symptom) -> &mut Self {
        let said = self.mark_of(slot, symptom);
        let mark = self.tap(slot);
        self.corrects(mark, said)
    }

    /// One tap alone.
    pub fn tap(&mut self, slot: &str) -> RecordId {
        let unsaid = Symptom { kind: None, amount: None, place: None, words: None };
        let payload = self.mark_of(slot, unsaid);
        self.log(payload)
    }

    pub fn mark_of(&self, slot: &str, symptom: Symptom) -> Payload {
        let history = History::of(&self.records);
        let run = history.run(self.run.unwrap()).unwrap();
        let last = run.sets.iter().rfind(|e| e.set.slot.as_str() == slot);
        let variant = match (last, self.turn(slot)) {
            (_, Turn::Do(plan)) => Some(plan.variant),
            (Some(last), Turn::Over(_)) => Some(last.set.variant.clone()),
            (None, Turn::Over(_)) => run.prescription(&slot.into()).map(|p| p.variant.clone()),
        };
        let session = self.with_bench(today);
        let (_, planned) = session.slot(&slot.into()).unwrap();
        Payload::SymptomMark {
            run: self.run,
            slot: Some(slot.into()),
            ladder: Some(planned.ladder.clone()),
            variant,
            round: Some(0),
            at_rest: false,
            symptom,
        }
    }

    /// A mark outside a session.
    pub fn marks_at_home(&mut self, symptom: Symptom) -> &mut Self {
        self.says(Payload::mark_at_large(None, symptom))
    }

    /// A mark in the session in hand that belongs to no ladder.
    pub fn marks_between_slots(&mut self, symptom: Symptom) -> &mut Self {
        self.says(Payload::mark_at_large(self.run, symptom))
    }

    /// What a mark says where nothing but its symptom changes.
    pub fn mark_of_record(&self, mark: RecordId, symptom: Symptom) -> Payload {
        let first = self.records.iter().find(|r| r.id == mark).map(|r| r.payload.clone());
        match first {
            Some(Payload::SymptomMark { run, slot, ladder, variant, round, at_rest, .. }) => {
                Payload::SymptomMark { run, slot, ladder, variant, round, at_rest, symptom }
            }
            other => panic!("no mark: {other:?}"),
        }
    }

    pub fn ends(&mut self) -> &mut Self {
        let run = self.run.take().expect("a session is in hand");
        self.says(Payload::SessionEnded { run, effort: Some(5), minutes: Some(25), note: None })
    }

    /// Next morning: nothing left of it.
    pub fn settled(&mut self) -> &mut Self {
        self.next_day(NextDay::Settled, Vec::new())
    }

    pub fn not_settled(&mut self, symptoms: Vec<Symptom>) -> &mut Self {
        self.next_day(NextDay::NotSettled, symptoms)
    }

    fn next_day(&mut self, answer: NextDay, symptoms: Vec<Symptom>) -> &mut Self {
        let run = self.last_run.unwrap();
        self.days(1).says(Payload::NextDayAnswer { run, answer, symptoms })
    }

    /// A whole session of one slot, ended and settled; two days pass.
    pub fn session_of(&mut self, slot: &str, count: u16, reserve: Option<Reserve>) -> &mut Self {
        self.trains().does_all(slot, count, reserve).ends().settled().days(2)
    }
}

#[derive(Clone)]
struct Done {
    count: u16,
    reserve: Option<Reserve>,
    load: Option<Load>,
    stopped: bool,
}
