//! The one door for writes to this profile's own streams.

use crate::line::{hash_of, kind_of, line_of, target_of};
use crate::open::own_device;
use crate::{Action, Change, IdSource, Store, StoreError, project};
use chrono::{DateTime, FixedOffset, SubsecRound as _};
use newel_engine::ids::{DeviceId, PersonId, RecordId};
use newel_engine::record::{Payload, Record, SCHEMA_VERSION};
use rusqlite::{Connection, OptionalExtension as _, params};

impl Store {
    /// Writes what one action of the user says about one person: all of it, durably, or nothing.
    ///
    /// When this returns, the lines are on the disk. Times are kept to the millisecond.
    ///
    /// # Errors
    /// [`StoreError::Unwritable`] and [`StoreError::NoSuchRecord`] for what may not be written, and
    /// what SQLite says.
    pub fn write(
        &mut self,
        action: Action,
        at: DateTime<FixedOffset>,
        person: PersonId,
        payloads: Vec<Payload>,
    ) -> Result<Change, StoreError> {
        self.write_many(action, at, vec![(person, payloads)])
    }

    /// As [`Store::write`], for an action that speaks of several people.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn write_many(
        &mut self,
        action: Action,
        at: DateTime<FixedOffset>,
        about: Vec<(PersonId, Vec<Payload>)>,
    ) -> Result<Change, StoreError> {
        let mut ids = self.ids.clone();
        let records = self.change(|tx| append(tx, &mut ids, at, about))?;
        self.ids = ids;
        Ok(Change::new(action, records))
    }
}

/// Appends to this profile's own streams, within a transaction.
pub(crate) fn append(
    conn: &Connection,
    ids: &mut IdSource,
    at: DateTime<FixedOffset>,
    about: Vec<(PersonId, Vec<Payload>)>,
) -> Result<Vec<Record>, StoreError> {
    let device = own_device(conn)?;
    let at = at.trunc_subsecs(3);
    let mut written = Vec::new();
    for (person, payloads) in about {
        let (mut seq, mut prev) = end_of(conn, device, person)?;
        for payload in payloads {
            if let Some(target) = target_of(&payload) {
                require(conn, person, target)?;
            }
            let id = RecordId(ids.record(at));
            let record = Record { v: SCHEMA_VERSION, id, device, person, seq, prev, at, payload };
            let line = line_of(&record)?;
            let hash = hash_of(&line);
            insert(conn, &record, &line, &hash)?;
            (seq, prev) = (seq + 1, Some(hash));
            written.push(record);
        }
    }
    Ok(written)
}

/// Stores a line with what it says. The caller has checked its place in the chain.
pub(crate) fn insert(conn: &Connection, record: &Record, line: &str, hash: &str) -> Result<(), StoreError> {
    conn.prepare_cached("INSERT INTO streams (device, person) VALUES (?1, ?2) ON CONFLICT DO NOTHING")?
        .execute([record.device.to_string(), record.person.to_string()])?;
    conn.prepare_cached(
        "INSERT INTO records (id, device, person, seq, prev, at_ms, kind, v, line, hash)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)",
    )?
    .execute(params![
        record.id.to_string(),
        record.device.to_string(),
        record.person.to_string(),
        record.seq,
        record.prev,
        record.at.timestamp_millis(),
        kind_of(line),
        record.v,
        line,
        hash,
    ])?;
    project::add(conn, record)
}

/// The next number of a stream and the hash of its last line. Only for streams without a gap: our own.
fn end_of(
    conn: &Connection,
    device: DeviceId,
    person: PersonId,
) -> Result<(u64, Option<String>), StoreError> {
    let last: Option<(u64, String)> = conn
        .prepare_cached(
            "SELECT seq, hash FROM records WHERE device = ?1 AND person = ?2 ORDER BY seq DESC LIMIT 1",
        )?
        .query_row([device.to_string(), person.to_string()], |row| Ok((row.get(0)?, row.get(1)?)))
        .optional()?;
    Ok(match last {
        Some((seq, hash)) => (seq + 1, Some(hash)),
        None => (0, None),
    })
}

fn require(conn: &Connection, person: PersonId, target: RecordId) -> Result<(), StoreError> {
    let found = conn
        .prepare_cached("SELECT 1 FROM records WHERE id = ?1 AND person = ?2")?
        .exists([target.to_string(), person.to_string()])?;
    if found { Ok(()) } else { Err(StoreError::NoSuchRecord(target)) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uuid::Uuid;

    #[test]
    fn a_full_disk_is_named_and_what_was_written_before_is_whole() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("log.db");
        let mut store = Store::open(&path).unwrap();
        let (person, at) = (PersonId(Uuid::from_u128(7)), "2026-03-02T09:30:00+01:00".parse().unwrap());
        let note = |text: &str| vec![Payload::Note { text: text.to_owned() }];
        store.write(Action::WriteNote, at, person, note("before")).unwrap();
        // SQLite answers as on a disk without room once a page more is needed than it may have.
        let pages: i64 = store.conn.query_row("PRAGMA page_count", [], |row| row.get(0)).unwrap();
        store
            .conn
            .query_row(&format!("PRAGMA max_page_count = {pages}"), [], |row| row.get::<_, i64>(0))
            .unwrap();
        let long = "x".repeat(100_000);
        let error = store.write(Action::WriteNote, at, person, note(&long)).unwrap_err();
        assert_eq!(error.code(), "disk-full");
        assert_eq!(store.lines(person).unwrap().len(), 1, "all of an action or nothing");
        store.conn.query_row("PRAGMA max_page_count = 1000000", [], |row| row.get::<_, i64>(0)).unwrap();
        store.write(Action::WriteNote, at, person, note(&long)).unwrap();
        drop(store);
        let again = Store::open(&path).unwrap();
        assert_eq!(
            again.lines(person).unwrap().len(),
            2,
            "once there is room it goes on, and the chain holds"
        );
        assert_eq!(again.check().unwrap().findings.len(), 0);
    }
}
