//! A client's story in the verbs of the trade. A session runs through the real path: check-in,
//! session started, proposal shown as the engine makes it, sets as the engine asks for them, end,
//! and the answer of the next day. Ids are counted up, so that every run gives the same bytes.

mod engine;
mod session;
mod words;

pub use words::*;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::catalogue::Catalogue;
use newel_engine::ids::*;
use newel_engine::kit::{Kit, Load};
use newel_engine::programme::*;
use newel_engine::record::*;
use newel_engine::rules::RulePack;
use newel_engine::stage::{BirthMode, Stage};
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
    pub starts_of: Option<NaiveDate>,
    pub now: DateTime<FixedOffset>,
    pub device: DeviceId,
    count: u128,
    seqs: BTreeMap<DeviceId, u64>,
    pub run: Option<RunId>,
    last_run: Option<RunId>,
    last_record: Option<RecordId>,
    readiness: Readiness,
    since_last_time: Vec<Symptom>,
    today_things: Vec<TodayThing>,
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
            starts_of: None,
            now: "2026-03-02T09:00:00+01:00".parse().unwrap(),
            device: DeviceId(Uuid::from_u128(1)),
            count: 1000,
            seqs: BTreeMap::new(),
            run: None,
            last_run: None,
            last_record: None,
            readiness: Readiness::Usual,
            since_last_time: Vec::new(),
            today_things: Vec::new(),
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
        self.says(Payload::StageChanged { stage: Stage::pregnant(Some(due), None) })
    }

    pub fn pregnant_undated(&mut self) -> &mut Self {
        self.says(Payload::StageChanged { stage: Stage::pregnant(None, None) })
    }

    /// A birth so many weeks ago.
    pub fn birth_weeks_ago(&mut self, weeks: i64, mode: BirthMode) -> &mut Self {
        let birth = self.today() - Duration::days(weeks * 7);
        self.says(Payload::StageChanged {
            stage: Stage::Postpartum { birth, mode, severe_tear: Some(false) },
        })
    }

    /// Both say that training is taken up again after a birth or a loss.
    pub fn taken_up(&mut self) -> &mut Self {
        for by in [Voice::Client, Voice::Coach] {
            self.says(Payload::TakenUp { by, note: String::new() });
        }
        self
    }

    /// Checks before impact, tried today.
    pub fn tries(&mut self, checks: &[&str], outcome: CheckOutcome) -> &mut Self {
        let on = self.today();
        let results = checks.iter().map(|c| CheckResult { check: (*c).into(), outcome }).collect();
        self.says(Payload::ImpactChecked { on, by: Voice::Coach, results, note: String::new() })
    }

    pub fn owns(&mut self, kit: Kit) -> &mut Self {
        self.says(Payload::KitChanged { kit })
    }

    pub fn screened(&mut self, conditions: &[&str], usual: &[(&str, SymptomAmount)]) -> &mut Self {
        let baselines = usual.iter().map(|(kind, amount)| Baseline { kind: (*kind).into(), amount: *amount });
        let conditions = conditions.iter().map(|c| (*c).into()).collect();
        self.says(Payload::screened(conditions, baselines.collect(), false))
    }

    /// Screened as somebody who has never trained with weights.
    pub fn never_trained(&mut self) -> &mut Self {
        self.says(Payload::Screening {
            conditions: Vec::new(),
            baselines: Vec::new(),
            trained: false,
            never: true,
            by: Some(Voice::Coach),
            note: None,
            instead_of: Vec::new(),
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
        self.says(Payload::cleared("midwife", on, "may train"))
    }

    /// The coach answers the hold that waits.
    pub fn hold_answered(&mut self, answer: HoldAnswer) -> &mut Self {
        let hold = self.with_bench(|b| b.state.open_holds().next().map(|h| h.record)).expect("a hold waits");
        self.says(Payload::HoldAnswered { hold, answer, note: "as we said".into() })
    }
}
