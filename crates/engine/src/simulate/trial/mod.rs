//! One client's weeks through the real engine.

mod around;
mod begin;
mod session;
mod sets;

use crate::catalogue::Catalogue;
use crate::ids::{DeviceId, LadderId, PersonId, RecordId};
use crate::ledger::Ledger;
use crate::programme::{Amount, Programme};
use crate::record::{Payload, Record, SCHEMA_VERSION};
use crate::rules::RulePack;
use crate::simulate::chance::Chance;
use crate::simulate::client::Client;
use crate::simulate::scenario::Scenario;
use crate::simulate::watch::{Breaches, Watch};
use crate::units::Weight;
use begin::starts;
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use std::collections::BTreeMap;
use std::sync::Arc;
use uuid::Uuid;

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
    catalogue: &Arc<Catalogue>,
    rules: &Arc<RulePack>,
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
        ledger: Ledger::of(Arc::clone(catalogue), Arc::clone(rules), (&starts, None), &[]),
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

struct Floor<'a> {
    scenario: &'a Scenario,
    catalogue: &'a Catalogue,
    rules: &'a RulePack,
    programme: &'a Programme,
    ledger: Ledger,
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

    /// A chance that is drawn only where there is one, so that a scenario without it goes as it went.
    fn likely(&mut self, chance: f64) -> bool {
        chance > 0.0 && self.life.happens(chance)
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
        self.write(1, Payload::screened(Vec::new(), Vec::new(), trained));
        let mut day = 0;
        let mut nth = 0;
        while first + Duration::days(day) < last {
            let begins = first + Duration::days(day);
            self.now = self.now.max(begins);
            if !self.life.happens(self.scenario.missed) {
                self.answers();
                self.between();
                let first = self.session(day);
                let mut second = None;
                if self.likely(self.scenario.between.again) {
                    self.now += Duration::minutes(30);
                    second = self.session(day);
                }
                for (run, marked) in [first, second].into_iter().flatten() {
                    self.morning_after(run, marked);
                }
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
}
