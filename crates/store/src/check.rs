//! The integrity check: what it looked at and what it found, kind by kind. Repairs nothing itself.

use crate::line::{hash_of, is_one_line, kind_of};
use crate::schema::PROJECTIONS;
use crate::{Store, StoreError, project, schema};
use newel_engine::record::Record;
use rusqlite::types::Value;
use rusqlite::{Connection, Row};
use std::path::Path;

/// One thing that is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Finding {
    /// SQLite finds the file itself damaged.
    Damage {
        /// In SQLite's words.
        what: String,
    },
    /// A row refers to something that is not there.
    Dangling {
        /// The table.
        table: String,
    },
    /// A line is no record.
    Unreadable {
        /// The id that its row bears.
        record: String,
    },
    /// A line is not what its row says: its hash or a column differs.
    Altered {
        /// The id that its row bears.
        record: String,
    },
    /// A line does not follow from the one before it in its stream.
    BrokenChain {
        /// The device.
        device: String,
        /// The person.
        person: String,
        /// Its number.
        seq: u64,
    },
    /// Records are missing from a stream. No damage: they have not arrived yet.
    Gap {
        /// The device.
        device: String,
        /// The person.
        person: String,
        /// First missing number.
        from: u64,
        /// Last missing number.
        to: u64,
    },
    /// A projection is not what the log gives; [`Store::rebuild_projections`] mends it.
    Projection {
        /// The table.
        table: String,
    },
}

impl Finding {
    /// The stable code; the sentence for it is `check-<code>` in the Fluent files.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Damage { .. } => "damage",
            Self::Dangling { .. } => "dangling",
            Self::Unreadable { .. } => "unreadable",
            Self::Altered { .. } => "altered",
            Self::BrokenChain { .. } => "broken-chain",
            Self::Gap { .. } => "gap",
            Self::Projection { .. } => "projection",
        }
    }

    /// Every code, for the test that each has its sentence.
    pub const CODES: [&'static str; 7] =
        ["damage", "dangling", "unreadable", "altered", "broken-chain", "gap", "projection"];

    /// False for what is no damage.
    #[must_use]
    pub const fn is_damage(&self) -> bool {
        match self {
            Self::Gap { .. } => false,
            Self::Damage { .. }
            | Self::Dangling { .. }
            | Self::Unreadable { .. }
            | Self::Altered { .. }
            | Self::BrokenChain { .. }
            | Self::Projection { .. } => true,
        }
    }
}

/// What a check looked at and found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Findings {
    /// Records looked at.
    pub records: u64,
    /// Streams looked at.
    pub streams: u64,
    /// People looked at.
    pub people: u64,
    /// What is wrong.
    pub findings: Vec<Finding>,
}

impl Findings {
    /// True when nothing is damaged; records may still be missing.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        !self.findings.iter().any(Finding::is_damage)
    }
}

impl Store {
    /// Checks the file, the references, every line, every chain and every projection. Changes nothing.
    ///
    /// # Errors
    /// What SQLite says when it cannot read on at all.
    pub fn check(&self) -> Result<Findings, StoreError> {
        self.read(|conn| {
            let mut out = Findings::default();
            damage(conn, &mut out)?;
            if !out.is_sound() {
                // What SQLite cannot vouch for is not worth reading further.
                return Ok(out);
            }
            dangling(conn, &mut out)?;
            let readable = lines(conn, &mut out)?;
            if readable {
                projections(conn, &mut out)?;
            }
            Ok(out)
        })
    }

    /// Makes all projections anew from the log.
    ///
    /// # Errors
    /// [`StoreError::LineUnreadable`] for a damaged line, and what SQLite says.
    pub fn rebuild_projections(&mut self) -> Result<(), StoreError> {
        self.change(|tx| project::rebuild(tx))
    }
}

fn damage(conn: &Connection, out: &mut Findings) -> Result<(), StoreError> {
    let words: Vec<String> = crate::read::list(conn, "PRAGMA integrity_check", [], |row| row.get(0))?;
    out.findings.extend(words.into_iter().filter(|w| w != "ok").map(|what| Finding::Damage { what }));
    Ok(())
}

fn dangling(conn: &Connection, out: &mut Findings) -> Result<(), StoreError> {
    let dangling: Vec<String> =
        crate::read::list(conn, "SELECT \"table\" FROM pragma_foreign_key_check", [], |row| row.get(0))?;
    out.findings.extend(dangling.into_iter().map(|table| Finding::Dangling { table }));
    Ok(())
}

/// Reads every line; true when all of them could be read.
fn lines(conn: &Connection, out: &mut Findings) -> Result<bool, StoreError> {
    let count = |what: &str| -> Result<u64, StoreError> {
        Ok(conn.query_row(&format!("SELECT count(DISTINCT {what}) FROM records"), [], |row| row.get(0))?)
    };
    (out.records, out.people) = (count("id")?, count("person")?);
    out.streams = conn.query_row("SELECT count(*) FROM streams", [], |row| row.get(0))?;
    let mut statement = conn.prepare(
        "SELECT id, device, person, seq, prev, at_ms, kind, v, line, hash FROM records
         ORDER BY device, person, seq",
    )?;
    let mut rows = statement.query([])?;
    let mut readable = true;
    let mut last: Option<Stored> = None;
    while let Some(row) = rows.next()? {
        let stored = Stored::of(row)?;
        readable &= stored.check(out);
        stored.check_after(last.as_ref(), out);
        last = Some(stored);
    }
    Ok(readable)
}

struct Stored {
    id: String,
    device: String,
    person: String,
    seq: u64,
    prev: Option<String>,
    at_ms: i64,
    kind: String,
    v: u32,
    line: String,
    hash: String,
}

impl Stored {
    fn of(row: &Row<'_>) -> rusqlite::Result<Self> {
        Ok(Self {
            id: row.get(0)?,
            device: row.get(1)?,
            person: row.get(2)?,
            seq: row.get(3)?,
            prev: row.get(4)?,
            at_ms: row.get(5)?,
            kind: row.get(6)?,
            v: row.get(7)?,
            line: row.get(8)?,
            hash: row.get(9)?,
        })
    }

    /// The line against its own row; true when it is a record.
    fn check(&self, out: &mut Findings) -> bool {
        let Some(record) = Record::parse(&self.line).ok().filter(|_| is_one_line(&self.line)) else {
            out.findings.push(Finding::Unreadable { record: self.id.clone() });
            return false;
        };
        let same = self.hash == hash_of(&self.line)
            && self.id == record.id.to_string()
            && self.device == record.device.to_string()
            && self.person == record.person.to_string()
            && self.seq == record.seq
            && self.prev == record.prev
            && self.at_ms == record.at.timestamp_millis()
            && self.kind == kind_of(&self.line)
            && self.v == record.v;
        if !same {
            out.findings.push(Finding::Altered { record: self.id.clone() });
        }
        true
    }

    /// The line against the one before it in its stream.
    fn check_after(&self, last: Option<&Self>, out: &mut Findings) {
        let before = last.filter(|l| l.device == self.device && l.person == self.person);
        let (device, person) = (self.device.clone(), self.person.clone());
        let next = before.map_or(0, |l| l.seq + 1);
        if next < self.seq {
            out.findings.push(Finding::Gap { device, person, from: next, to: self.seq - 1 });
        } else if self.prev.as_ref() != before.map(|l| &l.hash) {
            out.findings.push(Finding::BrokenChain { device, person, seq: self.seq });
        }
    }
}

/// Projections against a rebuild in memory, so that a read-only database can be checked too.
fn projections(conn: &Connection, out: &mut Findings) -> Result<(), StoreError> {
    let mut fresh = Connection::open_in_memory()?;
    schema::migrate(&mut fresh, Path::new(":memory:"))?;
    // The rows refer to records, which need not be copied to make them.
    fresh.execute_batch("PRAGMA foreign_keys = OFF")?;
    let mut lines = conn.prepare("SELECT line FROM records ORDER BY arrival")?;
    let mut rows = lines.query([])?;
    while let Some(row) = rows.next()? {
        project::add(&fresh, &crate::read::read_line(&row.get::<_, String>(0)?)?)?;
    }
    for table in PROJECTIONS {
        if dump(conn, table)? != dump(&fresh, table)? {
            out.findings.push(Finding::Projection { table: table.to_owned() });
        }
    }
    Ok(())
}

/// All rows of a table in the order of its key.
pub(crate) fn dump(conn: &Connection, table: &str) -> Result<Vec<Vec<Value>>, StoreError> {
    let mut statement = conn.prepare(&format!("SELECT * FROM {table} ORDER BY 1, 2"))?;
    let columns = statement.column_count();
    let rows = statement.query_map([], |row| (0..columns).map(|i| row.get(i)).collect())?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}
