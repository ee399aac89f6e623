//! What the coach's screens say of a client at a glance, kept for the next start. A cache: it may be emptied at any time,
//! it is no part of the log, and the caller shows nothing of it whose key differs.

use crate::rows::uuid;
use crate::schema::{self, GLANCED};
use crate::{Opened, Store, StoreError};
use newel_engine::ids::{DeviceId, PersonId};
use rusqlite::params;
use std::collections::BTreeMap;

/// The last line of a stream that is here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StreamEnd {
    /// The device that writes it.
    pub device: DeviceId,
    /// Its number.
    pub seq: u64,
    /// Its hash, which by its chain stands for all lines before it.
    pub hash: String,
}

/// What was kept of a client.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptGlance {
    /// Who.
    pub person: PersonId,
    /// A hash over all that the value was made from.
    pub key: String,
    /// The value, as the caller wrote it.
    pub value: String,
}

impl Store {
    /// Where the streams of everybody end, each person's in the order of devices.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn stream_ends(&self) -> Result<BTreeMap<PersonId, Vec<StreamEnd>>, StoreError> {
        let ends = self.read(|conn| {
            crate::read::list(
                conn,
                "SELECT t.person, t.device, r.seq, r.hash FROM streams t
                 JOIN records r ON r.device = t.device AND r.person = t.person AND r.seq =
                   (SELECT max(l.seq) FROM records l WHERE l.device = t.device AND l.person = t.person)
                 ORDER BY t.person, t.device",
                [],
                |row| {
                    let end =
                        StreamEnd { device: DeviceId(uuid(row, 1)?), seq: row.get(2)?, hash: row.get(3)? };
                    Ok((PersonId(uuid(row, 0)?), end))
                },
            )
        })?;
        let mut of: BTreeMap<PersonId, Vec<StreamEnd>> = BTreeMap::new();
        for (person, end) in ends {
            of.entry(person).or_default().push(end);
        }
        Ok(of)
    }

    /// How many records about a person are here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn count(&self, person: PersonId) -> Result<usize, StoreError> {
        self.read(|conn| {
            Ok(conn
                .prepare_cached("SELECT count(*) FROM records WHERE person = ?1")?
                .query_row([person.to_string()], |row| row.get(0))?)
        })
    }

    /// All that was kept.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn glances(&self) -> Result<Vec<KeptGlance>, StoreError> {
        self.read(|conn| {
            if schema::version(conn)? < GLANCED {
                return Ok(Vec::new());
            }
            crate::read::list(conn, "SELECT person, key, value FROM glances ORDER BY person", [], |row| {
                Ok(KeptGlance { person: PersonId(uuid(row, 0)?), key: row.get(1)?, value: row.get(2)? })
            })
        })
    }

    /// Keeps these in place of what was kept of the same people, each with the number of records that it was made from:
    /// where more or fewer are here by now, or she was erased, it is not kept. Nothing is in a database that is only looked at.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep_glances(&mut self, kept: &[(KeptGlance, usize)]) -> Result<(), StoreError> {
        if self.opened() == Opened::ReadOnly {
            return Ok(());
        }
        self.change(|tx| {
            let mut put = tx.prepare_cached(
                "INSERT INTO glances (person, key, value)
                 SELECT ?1, ?2, ?3 WHERE ?4 > 0 AND ?4 = (SELECT count(*) FROM records WHERE person = ?1)
                 ON CONFLICT (person) DO UPDATE SET key = excluded.key, value = excluded.value",
            )?;
            for (KeptGlance { person, key, value }, records) in kept {
                put.execute(params![person.to_string(), key, value, records])?;
            }
            Ok(())
        })
    }

    /// Empties the cache, but for a database that is only looked at.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn forget_glances(&mut self) -> Result<(), StoreError> {
        if self.opened() == Opened::ReadOnly {
            return Ok(());
        }
        self.change(|tx| {
            tx.execute("DELETE FROM glances", [])?;
            Ok(())
        })
    }
}
