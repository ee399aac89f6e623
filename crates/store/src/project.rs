//! Projections: tables made from the log, for queries alone.
//!
//! Each row is made from one record and from nothing else, so that it does not matter in which order
//! records arrive, and a rebuild gives the very same tables. No rule of training stands here: which
//! of two corrections holds, or what a withdrawn mark means, is the engine's to say.

use crate::StoreError;
use crate::read::read_line;
use crate::rows::word;
use crate::schema::PROJECTIONS;
use newel_engine::ids::{RecordId, RunId};
use newel_engine::kit::Load;
use newel_engine::record::{Payload, Record, Reserve, SCHEMA_VERSION, SetDone, Symptom, SymptomAmount};
use rusqlite::{Connection, params};

/// Goes up whenever the projections are made in another way.
const PROJECTION: u32 = 1;

/// What the tables were made with. A newer program that reads more kinds makes them anew.
pub(crate) fn version() -> String {
    format!("{PROJECTION}.{SCHEMA_VERSION}.{}", newel_engine::ENGINE_VERSION)
}

/// Makes all projections anew from the log.
pub(crate) fn rebuild(conn: &Connection) -> Result<(), StoreError> {
    for table in PROJECTIONS {
        conn.execute(&format!("DELETE FROM {table}"), [])?;
    }
    // What was worked out from the log and kept goes too: it is made anew when it is next asked for.
    conn.execute("DELETE FROM glances", [])?;
    let mut lines = conn.prepare("SELECT line FROM records ORDER BY arrival")?;
    let mut rows = lines.query([])?;
    while let Some(row) = rows.next()? {
        add(conn, &read_line(&row.get::<_, String>(0)?)?)?;
    }
    conn.execute("UPDATE here SET projected = ?1", [version()])?;
    Ok(())
}

/// Adds what one record says.
pub(crate) fn add(conn: &Connection, record: &Record) -> Result<(), StoreError> {
    payload(conn, record, &record.payload, None)
}

fn payload(
    conn: &Connection,
    record: &Record,
    said: &Payload,
    amends: Option<RecordId>,
) -> Result<(), StoreError> {
    match said {
        Payload::Profile(profile) => person(conn, record, &profile.name),
        Payload::SessionStarted { run, day, programme, revision, session } => {
            conn.prepare_cached(
                "INSERT INTO sessions (record, person, run, day, programme, revision, session)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
            )?
            .execute(params![
                record.id.to_string(),
                record.person.to_string(),
                run.to_string(),
                day.to_string(),
                programme.to_string(),
                revision,
                session.as_str(),
            ])?;
            Ok(())
        }
        Payload::SessionEnded { run, effort, minutes, note: _ } => {
            conn.prepare_cached(
                "INSERT INTO session_ends (record, person, run, amends, effort, minutes)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                record.id.to_string(),
                record.person.to_string(),
                run.to_string(),
                amends.map(|r| r.to_string()),
                effort,
                minutes,
            ])?;
            Ok(())
        }
        Payload::SetDone(done) => set(conn, record, done, amends),
        Payload::SymptomMark { run, slot, ladder, variant, round: _, at_rest, symptom } => mark(
            conn,
            record,
            &Mark {
                nth: 0,
                run: *run,
                amends,
                source: "mark",
                slot: slot.as_ref().map(|s| s.as_str()),
                ladder: ladder.as_ref().map(|s| s.as_str()),
                variant: variant.as_ref().map(|s| s.as_str()),
                at_rest: *at_rest,
                symptom,
            },
        ),
        Payload::CheckIn { run, readiness: _, symptoms, today: _ } => {
            told(conn, record, symptoms, *run, amends, "check_in")
        }
        Payload::NextDayAnswer { run, answer: _, symptoms } => {
            told(conn, record, symptoms, *run, amends, "next_day")
        }
        Payload::Withdrawal { target } => amendment(conn, record, *target, "withdrawal"),
        Payload::Correction { target, instead } => {
            // Only the outermost correction counts: one within another says nothing that a reader could use.
            if amends.is_some() {
                return Ok(());
            }
            amendment(conn, record, *target, "correction")?;
            payload(conn, record, instead, Some(*target))
        }
        Payload::ProposalShown { .. }
        | Payload::SetSkipped { .. }
        | Payload::OptionChosen { .. }
        | Payload::BodyMass { .. }
        | Payload::KitChanged { .. }
        | Payload::TenReps { .. }
        | Payload::StageChanged { .. }
        | Payload::Screening { .. }
        | Payload::TakenUp { .. }
        | Payload::ImpactChecked { .. }
        | Payload::Restriction { .. }
        | Payload::HoldAnswered { .. }
        | Payload::Clearance { .. }
        | Payload::Question { .. }
        | Payload::Answer { .. }
        | Payload::Note { .. }
        | Payload::Consent { .. }
        | Payload::PlanTakenIn { .. }
        | Payload::PlanSent { .. }
        | Payload::Override { .. }
        | Payload::RuleSetting(_)
        | Payload::VariantWords(_)
        | Payload::OwnLadder(_)
        | Payload::OwnVariant(_)
        | Payload::Unknown => Ok(()),
    }
}

/// The name last written wins, by time, then device, then number: the same on every device.
fn person(conn: &Connection, record: &Record, name: &str) -> Result<(), StoreError> {
    conn.prepare_cached(
        "INSERT INTO people (person, record, at_ms, device, seq, name) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
         ON CONFLICT (person) DO UPDATE SET
           record = excluded.record, at_ms = excluded.at_ms, device = excluded.device,
           seq = excluded.seq, name = excluded.name
         WHERE (excluded.at_ms, excluded.device, excluded.seq) > (people.at_ms, people.device, people.seq)",
    )?
    .execute(params![
        record.person.to_string(),
        record.id.to_string(),
        record.at.timestamp_millis(),
        record.device.to_string(),
        record.seq,
        name,
    ])?;
    Ok(())
}

fn set(
    conn: &Connection,
    record: &Record,
    done: &SetDone,
    amends: Option<RecordId>,
) -> Result<(), StoreError> {
    // A band's pull depends on its stretch, which only the catalogue knows.
    let external = match &done.load {
        Load::Nothing | Load::One { .. } | Load::Pair { .. } | Load::Barbell { .. } => {
            Some(done.load.external(1.0).0)
        }
        Load::Bands { .. } | Load::Assist { .. } => None,
    };
    let (reserve, open) = match done.reserve {
        Some(Reserve::Exactly(reps)) => (Some(reps), false),
        Some(Reserve::AtLeast(reps)) => (Some(reps), true),
        None => (None, false),
    };
    conn.prepare_cached(
        "INSERT INTO sets (record, person, run, amends, slot, round, side, ladder, variant,
           external_kg, reps, seconds, reserve, reserve_open, purpose, stopped)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16)",
    )?
    .execute(params![
        record.id.to_string(),
        record.person.to_string(),
        done.run.to_string(),
        amends.map(|r| r.to_string()),
        done.slot.as_str(),
        done.round,
        done.side.as_ref().map(word),
        done.ladder.as_str(),
        done.variant.as_str(),
        external,
        done.reps,
        done.seconds,
        reserve,
        open,
        word(&done.purpose),
        done.stopped,
    ])?;
    Ok(())
}

struct Mark<'a> {
    nth: usize,
    run: Option<RunId>,
    amends: Option<RecordId>,
    source: &'static str,
    slot: Option<&'a str>,
    ladder: Option<&'a str>,
    variant: Option<&'a str>,
    at_rest: bool,
    symptom: &'a Symptom,
}

fn told(
    conn: &Connection,
    record: &Record,
    symptoms: &[Symptom],
    run: RunId,
    amends: Option<RecordId>,
    source: &'static str,
) -> Result<(), StoreError> {
    for (nth, symptom) in symptoms.iter().enumerate() {
        let run = Some(run);
        let none = None;
        mark(
            conn,
            record,
            &Mark {
                nth,
                run,
                amends,
                source,
                slot: none,
                ladder: none,
                variant: none,
                at_rest: true,
                symptom,
            },
        )?;
    }
    Ok(())
}

fn mark(conn: &Connection, record: &Record, mark: &Mark<'_>) -> Result<(), StoreError> {
    let (amount, pain) = match mark.symptom.amount {
        Some(SymptomAmount::Little) => (Some("little"), None),
        Some(SymptomAmount::Clearly) => (Some("clearly"), None),
        Some(SymptomAmount::Lot) => (Some("lot"), None),
        Some(SymptomAmount::Pain(pain)) => (Some("pain"), Some(pain)),
        None => (None, None),
    };
    conn.prepare_cached(
        "INSERT INTO marks (record, nth, person, run, amends, source, slot, ladder, variant, at_rest,
           symptom, amount, pain, place)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)",
    )?
    .execute(params![
        record.id.to_string(),
        mark.nth,
        record.person.to_string(),
        mark.run.map(|r| r.to_string()),
        mark.amends.map(|r| r.to_string()),
        mark.source,
        mark.slot,
        mark.ladder,
        mark.variant,
        mark.at_rest,
        mark.symptom.kind.as_ref().map(|k| k.as_str()),
        amount,
        pain,
        mark.symptom.place,
    ])?;
    Ok(())
}

fn amendment(
    conn: &Connection,
    record: &Record,
    target: RecordId,
    what: &'static str,
) -> Result<(), StoreError> {
    conn.prepare_cached("INSERT INTO amendments (record, person, target, what) VALUES (?1, ?2, ?3, ?4)")?
        .execute([&record.id.to_string(), &record.person.to_string(), &target.to_string(), what])?;
    Ok(())
}
