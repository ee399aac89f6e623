//! The words in which these tests speak.

use chrono::{DateTime, FixedOffset, TimeDelta};
use newel_engine::ids::{PersonId, RecordId, RunId};
use newel_engine::kit::Load;
use newel_engine::record::{Payload, Profile, Purpose, Readiness, Reserve, SetDone, Symptom, SymptomAmount};
use newel_engine::units::Weight;
use newel_store::{Action, IdSource, Store, TakeInReport};
use rusqlite::Connection;
use rusqlite::types::Value;
use std::path::Path;
use uuid::Uuid;

/// A client.
pub const NOOR: PersonId = PersonId(Uuid::from_u128(0xA1));
/// Another client.
pub const IMKE: PersonId = PersonId(Uuid::from_u128(0xA2));

/// A time so many minutes after a Monday morning in March.
pub fn minute(minutes: i64) -> DateTime<FixedOffset> {
    let start = DateTime::parse_from_rfc3339("2026-03-02T09:30:00.250+01:00").unwrap();
    start + TimeDelta::minutes(minutes)
}

/// A run of a session.
pub fn run(n: u128) -> RunId {
    RunId(Uuid::from_u128(0xB0_0000 + n))
}

/// Ten goblet squats with twelve kilograms.
pub fn squats(n: u128, round: u8) -> SetDone {
    SetDone {
        run: run(n),
        slot: "a1".into(),
        round,
        side: None,
        ladder: "squat".into(),
        variant: "squat-goblet".into(),
        load: Load::One { weight: Weight::in_kg(12.0) },
        reps: 10,
        seconds: None,
        reserve: Some(Reserve::Exactly(3)),
        purpose: Purpose::Work,
        stopped: false,
    }
}

pub fn set(n: u128, round: u8) -> Payload {
    Payload::SetDone(squats(n, round))
}

pub fn note(text: &str) -> Payload {
    Payload::Note { text: text.to_owned() }
}

pub fn profile(name: &str) -> Payload {
    Payload::Profile(Profile { name: name.to_owned(), emergency: None, clinic: None })
}

pub fn begun(n: u128) -> Payload {
    Payload::SessionStarted {
        run: run(n),
        day: minute(0).date_naive(),
        programme: newel_engine::ids::ProgrammeId(Uuid::from_u128(0xC1)),
        revision: 1,
        session: "monday".into(),
    }
}

pub fn ended(n: u128) -> Payload {
    Payload::SessionEnded { run: run(n), effort: Some(5), minutes: Some(28), note: None }
}

pub fn checked_in(n: u128, kinds: &[&str]) -> Payload {
    let symptoms = kinds
        .iter()
        .map(|k| Symptom {
            kind: Some((*k).into()),
            amount: Some(SymptomAmount::Little),
            place: None,
            words: None,
        })
        .collect();
    Payload::CheckIn { run: run(n), readiness: Readiness::Usual, symptoms, today: Vec::new() }
}

pub fn marked(n: u128, kind: &str, amount: SymptomAmount) -> Payload {
    Payload::SymptomMark {
        run: Some(run(n)),
        slot: Some("a1".into()),
        ladder: Some("squat".into()),
        variant: Some("squat-goblet".into()),
        round: Some(1),
        at_rest: false,
        symptom: Symptom { kind: Some(kind.into()), amount: Some(amount), place: None, words: None },
    }
}

pub fn withdrawn(target: RecordId) -> Payload {
    Payload::Withdrawal { target }
}

pub fn corrected(target: RecordId, instead: Payload) -> Payload {
    Payload::Correction { target, instead: Box::new(instead) }
}

/// A device with an empty log, its ids drawn from a seed.
pub fn device(seed: u64) -> Store {
    Store::open_in_memory_with(IdSource::seeded(seed)).unwrap()
}

/// Writes one payload and gives back its record's id.
pub fn write(store: &mut Store, minutes: i64, person: PersonId, payload: Payload) -> RecordId {
    store.write(Action::WriteNote, minute(minutes), person, vec![payload]).unwrap().records[0].id
}

/// Takes lines in, without anything of one's own to say.
pub fn take_in(store: &mut Store, person: PersonId, lines: &[String]) -> TakeInReport {
    let plan = store.plan_take_in(person, lines).unwrap();
    store.apply_take_in(&plan, Action::TakeInLog, minute(1000), vec![]).unwrap()
}

/// Everything that a database file holds, table by table and row by row.
pub fn content(path: &Path) -> Vec<(String, Vec<Vec<Value>>)> {
    let conn = Connection::open(path).unwrap();
    let tables: Vec<String> = conn
        .prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
        .unwrap()
        .query_map([], |row| row.get(0))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap();
    tables
        .into_iter()
        .map(|table| {
            let columns = conn.prepare(&format!("SELECT * FROM {table}")).unwrap().column_count();
            let order = (1..=columns).map(|n| n.to_string()).collect::<Vec<_>>().join(", ");
            let mut statement = conn.prepare(&format!("SELECT * FROM {table} ORDER BY {order}")).unwrap();
            let rows = statement
                .query_map([], |row| (0..columns).map(|i| row.get(i)).collect())
                .unwrap()
                .collect::<Result<_, _>>()
                .unwrap();
            (table, rows)
        })
        .collect()
}

/// True when the check finds nothing at all, a gap included.
pub fn assert_whole(store: &Store, why: &str) {
    assert_eq!(store.check().unwrap().findings, vec![], "{why}");
}
