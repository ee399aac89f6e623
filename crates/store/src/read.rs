//! Reading the log and its projections.

use crate::rows::{MarkRow, SessionRow, SetRow, maybe_parsed, maybe_said, maybe_uuid, parsed, said, uuid};
use crate::{Store, StoreError};
use chrono::{DateTime, NaiveDate, Utc};
use newel_engine::ids::{
    DeviceId, LadderId, PersonId, PlanSessionId, ProgrammeId, RecordId, RunId, SlotId, SymptomId, VariantId,
};
use newel_engine::record::{Record, Reserve, SymptomAmount};
use rusqlite::{Connection, OptionalExtension as _, Params, Row, params};
use std::collections::{BTreeMap, BTreeSet};

/// How far a stream is known.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StreamHead {
    /// The device that writes it.
    pub device: DeviceId,
    /// The number of the first record that is missing: all before it are here.
    pub next: u64,
    /// The hash of the record before that one; `None` when even the first is missing.
    pub last_hash: Option<String>,
    /// Records that are here beyond the first missing one.
    pub beyond: u64,
}

/// A person in the database.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PersonSummary {
    /// Who.
    pub person: PersonId,
    /// Her name as last written; absent as long as no profile record has arrived.
    pub name: Option<String>,
    /// Records about her.
    pub records: u64,
    /// Streams about her.
    pub streams: u64,
    /// When the last record about her was written, by its own clock.
    pub last_at: Option<DateTime<Utc>>,
    /// Local day of her last session.
    pub last_session: Option<NaiveDate>,
}

/// True when a record was among those that `known` (from [`Store::known`]) names.
///
/// For each device the numbers in `known` are edges: known up to the first, missing up to the
/// second, known up to the third, and so on. Without a gap that is one number, the next one.
#[must_use]
pub fn is_known(known: &[(DeviceId, u64)], device: DeviceId, seq: u64) -> bool {
    let passed = known.iter().filter(|(d, edge)| *d == device && *edge <= seq).count();
    let edges = known.iter().filter(|(d, _)| *d == device).count();
    passed < edges && passed % 2 == 0
}

impl Store {
    /// All lines about a person, verbatim, stream by stream (device, then number).
    ///
    /// # Errors
    /// What SQLite says.
    pub fn lines(&self, person: PersonId) -> Result<Vec<String>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT line FROM records WHERE person = ?1 ORDER BY device, seq",
                [person.to_string()],
                |row| row.get(0),
            )
        })
    }

    /// The lines that this profile itself wrote about a person, under all the names that it ever had, in
    /// order, without those that a reader who knows `known` has: what a plan file carries. What her
    /// device knew last stands in its latest *proposal shown*; an empty list gives all lines.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn own_lines(&self, person: PersonId, known: &[(DeviceId, u64)]) -> Result<Vec<String>, StoreError> {
        let own: BTreeSet<DeviceId> = self.read(|conn| {
            let all = list(conn, "SELECT device FROM own_devices", [], |row| uuid(row, 0).map(DeviceId))?;
            Ok(all.into_iter().collect())
        })?;
        let lines = self.lines_since(person, known)?;
        Ok(lines.into_iter().filter(|(device, _, _)| own.contains(device)).map(|(_, _, line)| line).collect())
    }

    /// The lines about a person that a reader who knows `known` does not have, with device and number.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn lines_since(
        &self,
        person: PersonId,
        known: &[(DeviceId, u64)],
    ) -> Result<Vec<(DeviceId, u64, String)>, StoreError> {
        let all = self.read(|conn| {
            list(
                conn,
                "SELECT device, seq, line FROM records WHERE person = ?1 ORDER BY device, seq",
                [person.to_string()],
                |row| Ok((uuid(row, 0).map(DeviceId)?, row.get(1)?, row.get(2)?)),
            )
        })?;
        Ok(all.into_iter().filter(|(device, seq, _)| !is_known(known, *device, *seq)).collect())
    }

    /// All records about a person, stream by stream (device, then number); also those beyond a gap.
    ///
    /// # Errors
    /// [`StoreError::LineUnreadable`] for a damaged line, and what SQLite says.
    pub fn records(&self, person: PersonId) -> Result<Vec<Record>, StoreError> {
        self.lines(person)?.iter().map(|line| read_line(line)).collect()
    }

    /// The records about a person that were known at an earlier time: for an exact replay.
    ///
    /// # Errors
    /// As [`Store::records`].
    pub fn records_known(
        &self,
        person: PersonId,
        known: &[(DeviceId, u64)],
    ) -> Result<Vec<Record>, StoreError> {
        let mut records = self.records(person)?;
        records.retain(|r| is_known(known, r.device, r.seq));
        Ok(records)
    }

    /// One record.
    ///
    /// # Errors
    /// As [`Store::records`].
    pub fn record(&self, id: RecordId) -> Result<Option<Record>, StoreError> {
        let line: Option<String> = self.read(|conn| {
            Ok(conn
                .query_row("SELECT line FROM records WHERE id = ?1", [id.to_string()], |row| row.get(0))
                .optional()?)
        })?;
        line.map(|line| read_line(&line)).transpose()
    }

    /// The record of a kind about a person that was written last, by time, then device, then number.
    /// The kind is named as in the line, e.g. `plan_taken_in`. Corrections and withdrawals are not
    /// looked at.
    ///
    /// # Errors
    /// As [`Store::records`].
    pub fn latest(&self, person: PersonId, kind: &str) -> Result<Option<Record>, StoreError> {
        let line: Option<String> = self.read(|conn| {
            Ok(conn
                .prepare_cached(
                    "SELECT line FROM records WHERE person = ?1 AND kind = ?2
                     ORDER BY at_ms DESC, device DESC, seq DESC LIMIT 1",
                )?
                .query_row([&person.to_string(), kind], |row| row.get(0))
                .optional()?)
        })?;
        line.map(|line| read_line(&line)).transpose()
    }

    /// How far each stream about a person is known, by device.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn stream_heads(&self, person: PersonId) -> Result<Vec<StreamHead>, StoreError> {
        let mut heads: Vec<StreamHead> = Vec::new();
        for (device, seq, hash) in self.numbers(person)? {
            if heads.last().is_none_or(|h| h.device != device) {
                heads.push(StreamHead { device, next: 0, last_hash: None, beyond: 0 });
            }
            if let Some(head) = heads.last_mut() {
                if head.beyond == 0 && seq == head.next {
                    (head.next, head.last_hash) = (seq + 1, Some(hash));
                } else {
                    head.beyond += 1;
                }
            }
        }
        Ok(heads)
    }

    /// What is known about a person, in the form that *proposal shown* keeps; see [`is_known`].
    ///
    /// # Errors
    /// What SQLite says.
    pub fn known(&self, person: PersonId) -> Result<Vec<(DeviceId, u64)>, StoreError> {
        let mut spans: BTreeMap<DeviceId, Vec<u64>> = BTreeMap::new();
        for (device, seq, _) in self.numbers(person)? {
            let edges = spans.entry(device).or_default();
            match edges.last_mut() {
                Some(edge) if *edge == seq => *edge = seq + 1,
                None if seq == 0 => edges.push(1),
                // The first span of a stream whose beginning is missing is empty: known up to 0.
                None => edges.extend([0, seq, seq + 1]),
                Some(_) => edges.extend([seq, seq + 1]),
            }
        }
        Ok(spans
            .into_iter()
            .flat_map(|(device, edges)| edges.into_iter().map(move |e| (device, e)))
            .collect())
    }

    fn numbers(&self, person: PersonId) -> Result<Vec<(DeviceId, u64, String)>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT device, seq, hash FROM records WHERE person = ?1 ORDER BY device, seq",
                [person.to_string()],
                |row| Ok((uuid(row, 0).map(DeviceId)?, row.get(1)?, row.get(2)?)),
            )
        })
    }

    /// Everybody that the log speaks of, by id.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn people(&self) -> Result<Vec<PersonId>, StoreError> {
        self.read(|conn| {
            list(conn, "SELECT DISTINCT person FROM streams ORDER BY person", [], |row| {
                uuid(row, 0).map(PersonId)
            })
        })
    }

    /// How many streams about a person lack records in between.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn streams_with_gaps(&self, person: PersonId) -> Result<u32, StoreError> {
        self.read(|conn| {
            Ok(conn
                .prepare_cached(
                    "SELECT count(*) FROM streams t WHERE t.person = ?1 AND
                       (SELECT max(r.seq) + 1 FROM records r WHERE r.device = t.device AND r.person = t.person) >
                       (SELECT count(*) FROM records r WHERE r.device = t.device AND r.person = t.person)",
                )?
                .query_row([person.to_string()], |row| row.get(0))?)
        })
    }

    /// Everybody that the log speaks of, by name.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn all_people(&self) -> Result<Vec<PersonSummary>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT r.person, p.name, count(*),
                   (SELECT count(*) FROM streams t WHERE t.person = r.person), max(r.at_ms),
                   (SELECT max(s.day) FROM sessions s WHERE s.person = r.person)
                 FROM records r LEFT JOIN people p ON p.person = r.person
                 GROUP BY r.person ORDER BY p.name IS NULL, p.name, r.person",
                [],
                |row| {
                    Ok(PersonSummary {
                        person: PersonId(uuid(row, 0)?),
                        name: row.get(1)?,
                        records: row.get(2)?,
                        streams: row.get(3)?,
                        last_at: DateTime::from_timestamp_millis(row.get(4)?),
                        last_session: maybe_parsed(row, 5)?,
                    })
                },
            )
        })
    }

    /// A person's sessions, oldest first.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn sessions(&self, person: PersonId) -> Result<Vec<SessionRow>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT s.record, s.run, s.day, s.programme, s.revision, s.session,
                   (SELECT count(DISTINCT d.slot || ' ' || d.round) FROM sets d WHERE d.run = s.run AND d.person = s.person AND d.amends IS NULL AND NOT EXISTS
                     (SELECT 1 FROM amendments a WHERE a.target = d.record AND a.person = d.person AND a.what = 'withdrawal')),
                   EXISTS (SELECT 1 FROM session_ends e WHERE e.run = s.run AND e.person = s.person AND e.amends IS NULL AND NOT EXISTS
                     (SELECT 1 FROM amendments a WHERE a.target = e.record AND a.person = e.person AND a.what = 'withdrawal'))
                 FROM sessions s JOIN records r ON r.id = s.record
                 WHERE s.person = ?1 ORDER BY s.day, r.at_ms, r.device, r.seq",
                params![person.to_string()],
                |row| {
                    Ok(SessionRow {
                        record: RecordId(uuid(row, 0)?),
                        run: RunId(uuid(row, 1)?),
                        day: parsed(row, 2)?,
                        programme: ProgrammeId(uuid(row, 3)?),
                        revision: row.get(4)?,
                        session: PlanSessionId::from(row.get::<_, String>(5)?),
                        sets: row.get(6)?,
                        ended: row.get(7)?,
                    })
                },
            )
        })
    }

    /// A person's sets, stream by stream, each record as it was written; corrections beside.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn sets(&self, person: PersonId) -> Result<Vec<SetRow>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT d.record, d.amends, d.run,
                   (SELECT min(s.day) FROM sessions s WHERE s.run = d.run AND s.person = d.person), d.slot, d.round, d.side,
                   d.ladder, d.variant, d.external_kg, d.reps, d.seconds, d.reserve, d.reserve_open, d.purpose, d.stopped,
                   EXISTS (SELECT 1 FROM amendments a WHERE a.target = d.record AND a.person = d.person AND a.what = 'withdrawal'),
                   (SELECT count(*) FROM amendments a WHERE a.target = d.record AND a.person = d.person AND a.what = 'correction')
                 FROM sets d JOIN records r ON r.id = d.record
                 WHERE d.person = ?1 ORDER BY r.device, r.seq",
                params![person.to_string()],
                set_row,
            )
        })
    }

    /// A person's symptoms, stream by stream, each record as it was written; corrections beside.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn marks(&self, person: PersonId) -> Result<Vec<MarkRow>, StoreError> {
        self.read(|conn| {
            list(
                conn,
                "SELECT m.record, m.nth, m.person, m.amends, m.source, m.run, m.slot, m.ladder, m.variant,
                   m.at_rest, m.symptom, m.amount, m.pain, m.place,
                   EXISTS (SELECT 1 FROM amendments a WHERE a.target = m.record AND a.person = m.person AND a.what = 'withdrawal'),
                   (SELECT count(*) FROM amendments a WHERE a.target = m.record AND a.person = m.person AND a.what = 'correction')
                 FROM marks m JOIN records r ON r.id = m.record
                 WHERE m.person = ?1 ORDER BY r.device, r.seq, m.nth",
                params![person.to_string()],
                mark_row,
            )
        })
    }
}

fn set_row(row: &Row<'_>) -> rusqlite::Result<SetRow> {
    let reserve: Option<u8> = row.get(12)?;
    let open: bool = row.get(13)?;
    Ok(SetRow {
        record: RecordId(uuid(row, 0)?),
        amends: maybe_uuid(row, 1)?.map(RecordId),
        run: RunId(uuid(row, 2)?),
        day: maybe_parsed(row, 3)?,
        slot: SlotId::from(row.get::<_, String>(4)?),
        round: row.get(5)?,
        side: maybe_said(row, 6)?,
        ladder: LadderId::from(row.get::<_, String>(7)?),
        variant: VariantId::from(row.get::<_, String>(8)?),
        external_kg: row.get(9)?,
        reps: row.get(10)?,
        seconds: row.get(11)?,
        reserve: reserve.map(|reps| if open { Reserve::AtLeast(reps) } else { Reserve::Exactly(reps) }),
        purpose: said(row, 14)?,
        stopped: row.get(15)?,
        withdrawn: row.get(16)?,
        corrections: row.get(17)?,
    })
}

fn mark_row(row: &Row<'_>) -> rusqlite::Result<MarkRow> {
    let amount: Option<String> = row.get(11)?;
    let pain: Option<u8> = row.get(12)?;
    Ok(MarkRow {
        record: RecordId(uuid(row, 0)?),
        nth: row.get(1)?,
        person: PersonId(uuid(row, 2)?),
        amends: maybe_uuid(row, 3)?.map(RecordId),
        source: said(row, 4)?,
        run: maybe_uuid(row, 5)?.map(RunId),
        slot: row.get::<_, Option<String>>(6)?.map(SlotId::from),
        ladder: row.get::<_, Option<String>>(7)?.map(LadderId::from),
        variant: row.get::<_, Option<String>>(8)?.map(VariantId::from),
        at_rest: row.get(9)?,
        symptom: row.get::<_, Option<String>>(10)?.map(SymptomId::from),
        amount: match (amount.as_deref(), pain) {
            (Some("little"), _) => Some(SymptomAmount::Little),
            (Some("clearly"), _) => Some(SymptomAmount::Clearly),
            (Some("lot"), _) => Some(SymptomAmount::Lot),
            (Some(_), Some(pain)) => Some(SymptomAmount::Pain(pain)),
            (Some(_) | None, _) => None,
        },
        place: row.get(13)?,
        withdrawn: row.get(14)?,
        corrections: row.get(15)?,
    })
}

/// Reads a line as [`Store::lines`] gives it: also for whoever reads those of many people on several threads.
///
/// # Errors
/// [`StoreError::LineUnreadable`] for a damaged line.
pub fn read_line(line: &str) -> Result<Record, StoreError> {
    Record::parse(line).map_err(|error| StoreError::unreadable(line, &error))
}

/// All rows of a query.
pub(crate) fn list<T>(
    conn: &Connection,
    sql: &str,
    params: impl Params,
    of: impl FnMut(&Row<'_>) -> rusqlite::Result<T>,
) -> Result<Vec<T>, StoreError> {
    let mut statement = conn.prepare_cached(sql)?;
    let rows = statement.query_map(params, of)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}
