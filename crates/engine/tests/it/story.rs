//! A client's story in the verbs of the trade. A session runs through the real path: check-in,
//! session started, proposal shown as the engine makes it, sets as the engine asks for them, end,
//! and the answer of the next day. Ids are counted up, so that every run gives the same bytes.

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::catalogue::Catalogue;
use newel_engine::flow::Flow;
use newel_engine::history::History;
use newel_engine::ids::*;
use newel_engine::kit::{Band, Barbell, Dumbbell, Kit, Load, PlatePair, Thing};
use newel_engine::programme::*;
use newel_engine::proposal::*;
use newel_engine::reason::ReasonCode;
use newel_engine::record::*;
use newel_engine::rules::RulePack;
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::units::{Newtons, Weight};
use std::collections::BTreeMap;
use std::sync::OnceLock;
use uuid::Uuid;

// Read once: many stories are told.
static CATALOGUE: OnceLock<Catalogue> = OnceLock::new();
static RULES: OnceLock<RulePack> = OnceLock::new();

pub struct Story {
    pub records: Vec<Record>,
    pub catalogue: Catalogue,
    pub rules: RulePack,
    pub programme: Programme,
    pub starts: Vec<Start>,
    pub now: DateTime<FixedOffset>,
    pub device: DeviceId,
    count: u128,
    seqs: BTreeMap<DeviceId, u64>,
    pub run: Option<RunId>,
    last_run: Option<RunId>,
    last_record: Option<RecordId>,
    readiness: Readiness,
    since_last_time: Vec<Symptom>,
}

/// `left(3)`: three more were in it.
pub fn left(n: u8) -> Option<Reserve> {
    Some(Reserve::Exactly(n))
}

/// "Five or more".
pub fn plenty() -> Option<Reserve> {
    Some(Reserve::AtLeast(5))
}

pub fn symptom(kind: &str, amount: Option<SymptomAmount>) -> Symptom {
    Symptom { kind: Some(kind.into()), amount, place: None, words: None }
}

pub fn kg(value: f64) -> Weight {
    Weight::in_kg(value)
}

pub fn one(value: f64) -> Load {
    Load::One { weight: kg(value) }
}

pub fn pair(value: f64) -> Load {
    Load::Pair { weight: kg(value) }
}

/// Pairs of dumbbells, in kg.
pub fn dumbbells(weights: &[f64]) -> Kit {
    Kit {
        dumbbells: weights.iter().map(|w| Dumbbell { weight: kg(*w), pair: true }).collect(),
        ..Kit::default()
    }
}

/// A kit with something of everything.
pub fn full_kit() -> Kit {
    let band = |name: &str, at_100: f64, at_200: f64| Band {
        name: name.into(),
        at_100: Newtons::from_lb(at_100),
        at_200: Newtons::from_lb(at_200),
    };
    Kit {
        barbell: Some(Barbell {
            bar: kg(10.0),
            plates: [1.25, 2.5, 5.0].iter().map(|w| PlatePair { weight: kg(*w) }).collect(),
        }),
        bands: vec![band("thin", 4.6, 6.7), band("thick", 10.2, 15.3)],
        things: vec![Thing::Bench, Thing::PullUpBar, Thing::Step, Thing::Straps, Thing::LoopBand],
        ..dumbbells(&[2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0])
    }
}

pub fn slot(ladder: &str, low: u16, high: u16, target_rir: u8) -> Slot {
    Slot {
        id: ladder.into(),
        ladder: ladder.into(),
        levels: None,
        dose: Dose { amount: Amount::Reps { low, high }, target_rir, tempo: None },
    }
}

pub fn timed(ladder: &str, low: u16, high: u16) -> Slot {
    Slot {
        dose: Dose { amount: Amount::Seconds { low, high }, target_rir: 3, tempo: None },
        ..slot(ladder, 1, 1, 3)
    }
}

/// A programme of one session: each slot a block of straight sets with as many rounds.
pub fn programme_of(slots: Vec<Slot>, rounds: u8) -> Programme {
    let blocks = slots
        .into_iter()
        .map(|s| Block {
            id: BlockId::from(format!("block-{}", s.id)),
            form: BlockForm::StraightSets,
            rounds,
            rest_seconds: 60,
            rest_between_seconds: 0,
            slots: vec![s],
        })
        .collect();
    Programme {
        id: ProgrammeId(Uuid::from_u128(7)),
        revision: 1,
        title: "Strength at home".into(),
        per_week: 2,
        sessions: vec![PlanSession { id: "a".into(), title: "A".into(), blocks }],
    }
}

impl Story {
    /// Somebody of no stage who owns nothing yet, on Monday 2 March 2026, with a squat to train.
    pub fn new() -> Self {
        Self {
            records: Vec::new(),
            catalogue: CATALOGUE.get_or_init(|| Catalogue::built_in().unwrap()).clone(),
            rules: RULES.get_or_init(|| RulePack::built_in().unwrap()).clone(),
            programme: programme_of(vec![slot("squat", 8, 12, 3)], 2),
            starts: Vec::new(),
            now: "2026-03-02T09:00:00+01:00".parse().unwrap(),
            device: DeviceId(Uuid::from_u128(1)),
            count: 1000,
            seqs: BTreeMap::new(),
            run: None,
            last_run: None,
            last_record: None,
            readiness: Readiness::Usual,
            since_last_time: Vec::new(),
        }
    }

    /// As [`Story::new`], by other rules.
    pub fn by(rules: RulePack) -> Self {
        Self { rules, ..Self::new() }
    }

    // -- the log ------------------------------------------------------------------------------

    fn uuid(&mut self) -> Uuid {
        self.count += 1;
        Uuid::from_u128(self.count)
    }

    /// Writes a record now; a second passes.
    pub fn log(&mut self, payload: Payload) -> RecordId {
        self.now += Duration::seconds(1);
        let id = RecordId(self.uuid());
        let seq = self.seqs.entry(self.device).or_insert(0);
        self.records.push(Record {
            v: SCHEMA_VERSION,
            id,
            device: self.device,
            person: PersonId(Uuid::from_u128(2)),
            seq: *seq,
            prev: None,
            at: self.now,
            payload,
        });
        *seq += 1;
        self.last_record = Some(id);
        id
    }

    pub fn says(&mut self, payload: Payload) -> &mut Self {
        self.log(payload);
        self
    }

    pub fn on_device(&mut self, n: u128) -> &mut Self {
        self.device = DeviceId(Uuid::from_u128(n));
        self
    }

    pub fn last_record(&self) -> RecordId {
        self.last_record.unwrap()
    }

    pub fn corrects(&mut self, target: RecordId, instead: Payload) -> &mut Self {
        self.says(Payload::Correction { target, instead: Box::new(instead) })
    }

    pub fn withdraws(&mut self, target: RecordId) -> &mut Self {
        self.says(Payload::Withdrawal { target })
    }

    pub fn days(&mut self, n: i64) -> &mut Self {
        self.now += Duration::days(n);
        self
    }

    pub fn today(&self) -> NaiveDate {
        self.now.date_naive()
    }

    // -- who she is ---------------------------------------------------------------------------

    pub fn weeks_pregnant(&mut self, weeks: i64) -> &mut Self {
        let due = self.today() + Duration::days(280 - weeks * 7);
        self.says(Payload::StageChanged { stage: Stage::Pregnant { due: Some(due), last_period: None } })
    }

    pub fn pregnant_undated(&mut self) -> &mut Self {
        self.says(Payload::StageChanged { stage: Stage::Pregnant { due: None, last_period: None } })
    }

    /// A birth so many weeks ago.
    pub fn birth_weeks_ago(&mut self, weeks: i64, mode: BirthMode) -> &mut Self {
        let birth = self.today() - Duration::days(weeks * 7);
        self.says(Payload::StageChanged { stage: Stage::Postpartum { birth, mode, severe_tear: false } })
    }

    pub fn owns(&mut self, kit: Kit) -> &mut Self {
        self.says(Payload::KitChanged { kit })
    }

    pub fn screened(&mut self, conditions: &[&str], usual: &[(&str, SymptomAmount)]) -> &mut Self {
        self.says(Payload::Screening {
            conditions: conditions.iter().map(|c| (*c).into()).collect(),
            baselines: usual
                .iter()
                .map(|(kind, amount)| Baseline { kind: (*kind).into(), amount: *amount })
                .collect(),
            trained: false,
        })
    }

    pub fn programme(&mut self, slots: Vec<Slot>, rounds: u8) -> &mut Self {
        self.programme = programme_of(slots, rounds);
        self
    }

    pub fn starts_at(&mut self, ladder: &str, level: u8, load: Option<Load>) -> &mut Self {
        self.starts.push(Start { ladder: ladder.into(), level: Some(level), variant: None, load });
        self
    }

    pub fn overridden(&mut self, ladder: &str, level: Option<u8>, load: Option<Load>) -> &mut Self {
        let start = Start { ladder: ladder.into(), level, variant: None, load };
        self.says(Payload::Override { start, note: "as we said".into() })
    }

    pub fn restricted(&mut self, what: RestrictionKind) -> &mut Self {
        self.says(Payload::Restriction { what, until: None, note: "clinic letter".into() })
    }

    pub fn cleared(&mut self) -> &mut Self {
        let on = self.today();
        self.says(Payload::Clearance { who: "midwife".into(), on, said: "may train".into() })
    }

    /// The coach answers the hold that waits.
    pub fn hold_answered(&mut self, answer: HoldAnswer) -> &mut Self {
        let hold = self.with_bench(|b| b.state.open_holds().next().map(|h| h.record)).expect("a hold waits");
        self.says(Payload::HoldAnswered { hold, answer, note: "as we said".into() })
    }

    // -- a session ----------------------------------------------------------------------------

    pub fn feels(&mut self, readiness: Readiness) -> &mut Self {
        self.readiness = readiness;
        self
    }

    pub fn since_last_time(&mut self, symptom: Symptom) -> &mut Self {
        self.since_last_time.push(symptom);
        self
    }

    /// Says how she is; the session is not begun yet.
    pub fn checks_in(&mut self) -> &mut Self {
        let run = RunId(self.uuid());
        self.run = Some(run);
        self.last_run = Some(run);
        let (readiness, symptoms) = (self.readiness, std::mem::take(&mut self.since_last_time));
        self.readiness = Readiness::Usual;
        self.says(Payload::CheckIn { run, readiness, symptoms })
    }

    /// Begins a session: check-in, start, proposal.
    pub fn trains(&mut self) -> &mut Self {
        self.checks_in().begins()
    }

    pub fn begins(&mut self) -> &mut Self {
        let run = self.run.expect("she has checked in");
        let (day, programme, revision) = (self.today(), self.programme.id, self.programme.revision);
        let session = self.session().id.clone();
        self.says(Payload::SessionStarted { run, day, programme, revision, session });
        let result = self.with_bench(|b| b.propose(&b.inputs.programme.sessions[0]));
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
        let (block, slot) = self.session().slot(&slot.into()).expect("a slot of the session");
        self.with_bench(|b| b.turn(block, slot))
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
        let (_, planned) = self.session().slot(&slot.into()).unwrap();
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
        self.says(Payload::SymptomMark {
            run: None,
            slot: None,
            ladder: None,
            variant: None,
            round: None,
            at_rest: true,
            symptom,
        })
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

    // -- what the engine says -----------------------------------------------------------------

    pub fn with_bench<T>(&self, ask: impl FnOnce(&Bench<'_>) -> T) -> T {
        let history = History::of(&self.records);
        let bench = Bench::of(Inputs {
            history: &history,
            programme: &self.programme,
            starts: &self.starts,
            catalogue: &self.catalogue,
            rules: &self.rules,
            day: self.today(),
            run: self.run,
        });
        ask(&bench)
    }

    /// What would be proposed today.
    pub fn proposal(&self) -> SessionProposal {
        self.with_bench(|b| b.propose(&b.inputs.programme.sessions[0]))
    }

    pub fn of_slot(&self, slot: &str) -> Proposal {
        self.proposal().slots.into_iter().find(|p| p.slot.as_str() == slot).expect("the gate is open")
    }

    pub fn next(&self, slot: &str) -> Prescription {
        let proposal = self.of_slot(slot);
        match proposal.outcome {
            Outcome::Train(prescription) => prescription,
            Outcome::Rest => panic!("{slot} rests: {:?}", proposal.reasons),
        }
    }

    pub fn rests(&self, slot: &str) -> bool {
        self.of_slot(slot).outcome == Outcome::Rest
    }

    pub fn reasons(&self, slot: &str) -> Vec<ReasonCode> {
        self.of_slot(slot).reasons.all().iter().map(|r| r.code).collect()
    }

    pub fn is_closed(&self) -> bool {
        self.with_bench(|b| b.gate() != Gate::Open)
    }

    pub fn external(&self, p: &Prescription) -> f64 {
        self.external_of(&p.variant, &p.load)
    }

    pub fn external_of(&self, variant: &VariantId, load: &Load) -> f64 {
        self.catalogue.place(variant).unwrap().variant.external(load).0
    }

    pub fn flow(&self) -> Flow {
        let history = History::of(&self.records);
        let run = history.run(self.run.unwrap()).unwrap();
        self.with_bench(|b| Flow::of(b, self.session(), run))
    }
}

#[derive(Clone)]
struct Done {
    count: u16,
    reserve: Option<Reserve>,
    load: Option<Load>,
    stopped: bool,
}
