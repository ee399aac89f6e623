//! How a coach arranges her clients: groups, who is laid aside, and what each was last sent. Her own order, local to this
//! profile and no part of anybody's record.

use crate::rows::{maybe_parsed, uuid};
use crate::schema::{self, ARRANGED};
use crate::{Action, Change, Store, StoreError};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::PersonId;
use rusqlite::{Connection, OptionalExtension as _, Transaction, params};
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// A group of clients.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// Its id.
    pub id: Uuid,
    /// Its name.
    pub name: String,
    /// Who is in it, in the coach's order; those laid aside too.
    pub members: Vec<PersonId>,
}

/// A change of the arrangement, as the coach makes it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Arrangement {
    /// Makes a group; it comes to stand last.
    MakeGroup {
        /// Its id.
        id: Uuid,
        /// Its name.
        name: String,
        /// Who is in it, in order.
        members: Vec<PersonId>,
    },
    /// Gives a group another name.
    RenameGroup {
        /// Which.
        id: Uuid,
        /// Its new name.
        name: String,
    },
    /// Removes a group; its row stays, and nobody in it is touched.
    RemoveGroup {
        /// Which.
        id: Uuid,
    },
    /// Brings a removed group back as it was.
    BringBackGroup {
        /// Which.
        id: Uuid,
    },
    /// Says who is in a group, and in which order.
    SetMembers {
        /// Which.
        id: Uuid,
        /// Who; a name that stands twice counts once.
        members: Vec<PersonId>,
    },
    /// Lays clients aside.
    Archive {
        /// Who.
        people: Vec<PersonId>,
    },
    /// Brings clients back.
    BringBack {
        /// Who.
        people: Vec<PersonId>,
    },
}

impl Arrangement {
    /// The name of the action.
    #[must_use]
    pub const fn action(&self) -> Action {
        match self {
            Self::MakeGroup { .. } => Action::MakeGroup,
            Self::RenameGroup { .. } => Action::RenameGroup,
            Self::RemoveGroup { .. } => Action::RemoveGroup,
            Self::BringBackGroup { .. } => Action::BringBackGroup,
            Self::SetMembers { .. } => Action::SetMembers,
            Self::Archive { .. } => Action::Archive,
            Self::BringBack { .. } => Action::BringBack,
        }
    }
}

/// A plan file that went out, without its programme.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SentHead {
    /// Sequence number of the file.
    pub sequence: u64,
    /// When it was written, in milliseconds since 1970 UTC.
    pub at_ms: i64,
    /// The SHA-256 of what its programme says, whatever its revision.
    pub content: String,
    /// The day on which it begins, if one was set.
    pub begins: Option<NaiveDate>,
}

impl Store {
    /// All groups that were not removed, in the coach's order.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn groups(&self) -> Result<Vec<Group>, StoreError> {
        self.read(|conn| {
            if schema::version(conn)? < ARRANGED {
                return Ok(Vec::new());
            }
            let mut groups = conn
                .prepare_cached("SELECT id, name FROM client_groups WHERE removed = 0 ORDER BY place, id")?
                .query_map([], |row| Ok(Group { id: uuid(row, 0)?, name: row.get(1)?, members: Vec::new() }))?
                .collect::<Result<Vec<_>, _>>()?;
            let mut members = conn.prepare_cached(
                "SELECT person FROM group_members WHERE client_group = ?1 ORDER BY place, person",
            )?;
            for group in &mut groups {
                let found = members.query_map([group.id.to_string()], |row| uuid(row, 0).map(PersonId))?;
                group.members = found.collect::<Result<Vec<_>, _>>()?;
            }
            Ok(groups)
        })
    }

    /// Who is laid aside.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn archived(&self) -> Result<BTreeSet<PersonId>, StoreError> {
        self.read(|conn| {
            if schema::version(conn)? < ARRANGED {
                return Ok(BTreeSet::new());
            }
            let mut rows = conn.prepare_cached("SELECT person FROM archived")?;
            let found = rows.query_map([], |row| uuid(row, 0).map(PersonId))?;
            Ok(found.collect::<Result<_, _>>()?)
        })
    }

    /// Changes the arrangement. `None` if there is no such group; nothing is changed then.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn arrange(
        &mut self,
        at: DateTime<FixedOffset>,
        what: &Arrangement,
    ) -> Result<Option<Change>, StoreError> {
        let there = self.change(|tx| apply(tx, at, what))?;
        Ok(there.then(|| Change::arranged(what.action())))
    }

    /// What each client was last sent, as far as this profile kept it.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn sent_heads(&self) -> Result<BTreeMap<PersonId, SentHead>, StoreError> {
        self.read(|conn| {
            if schema::version(conn)? < ARRANGED {
                return Ok(BTreeMap::new());
            }
            let mut rows =
                conn.prepare_cached("SELECT person, sequence, at_ms, content, begins FROM last_sent")?;
            let found = rows.query_map([], |row| {
                let head = SentHead {
                    sequence: row.get(1)?,
                    at_ms: row.get(2)?,
                    content: row.get(3)?,
                    begins: maybe_parsed(row, 4)?,
                };
                Ok((uuid(row, 0).map(PersonId)?, head))
            })?;
            Ok(found.collect::<Result<_, _>>()?)
        })
    }

    /// The programme that a client was last sent, as JSON, if this profile kept it.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn sent_programme(&self, person: PersonId) -> Result<Option<String>, StoreError> {
        self.read(|conn| {
            if schema::version(conn)? < ARRANGED {
                return Ok(None);
            }
            Ok(conn
                .prepare_cached("SELECT programme FROM last_sent WHERE person = ?1")?
                .query_row([person.to_string()], |row| row.get(0))
                .optional()?)
        })
    }

    /// Keeps what a client was sent, in the place of what she was sent before.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep_sent(
        &mut self,
        person: PersonId,
        head: &SentHead,
        programme: &str,
    ) -> Result<(), StoreError> {
        self.change(|tx| {
            tx.prepare_cached(
                "INSERT INTO last_sent (person, sequence, at_ms, content, programme, begins)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)
                 ON CONFLICT (person) DO UPDATE SET sequence = excluded.sequence, at_ms = excluded.at_ms,
                   content = excluded.content, programme = excluded.programme, begins = excluded.begins",
            )?
            .execute(params![
                person.to_string(),
                head.sequence,
                head.at_ms,
                head.content,
                programme,
                head.begins.map(|day| day.to_string()),
            ])?;
            Ok(())
        })
    }
}

/// Makes one change, within a transaction; false if there is no such group.
fn apply(tx: &Transaction<'_>, at: DateTime<FixedOffset>, what: &Arrangement) -> Result<bool, StoreError> {
    match what {
        Arrangement::MakeGroup { id, name, members } => {
            tx.execute(
                "INSERT INTO client_groups (id, name, place, removed)
                 VALUES (?1, ?2, (SELECT coalesce(max(place) + 1, 0) FROM client_groups), 0)",
                params![id.to_string(), name],
            )?;
            set_members(tx, *id, members)?;
            Ok(true)
        }
        Arrangement::RenameGroup { id, name } => Ok(tx.execute(
            "UPDATE client_groups SET name = ?2 WHERE id = ?1 AND removed = 0",
            params![id.to_string(), name],
        )? == 1),
        Arrangement::RemoveGroup { id } => removed(tx, *id, true),
        Arrangement::BringBackGroup { id } => removed(tx, *id, false),
        Arrangement::SetMembers { id, members } => {
            let there = tx
                .prepare_cached("SELECT 1 FROM client_groups WHERE id = ?1 AND removed = 0")?
                .exists([id.to_string()])?;
            if there {
                set_members(tx, *id, members)?;
            }
            Ok(there)
        }
        Arrangement::Archive { people } => {
            let mut put = tx.prepare_cached(
                "INSERT INTO archived (person, at_ms) VALUES (?1, ?2) ON CONFLICT DO NOTHING",
            )?;
            for person in people {
                put.execute(params![person.to_string(), at.timestamp_millis()])?;
            }
            Ok(true)
        }
        Arrangement::BringBack { people } => {
            let mut take = tx.prepare_cached("DELETE FROM archived WHERE person = ?1")?;
            for person in people {
                take.execute([person.to_string()])?;
            }
            Ok(true)
        }
    }
}

fn removed(conn: &Connection, id: Uuid, removed: bool) -> Result<bool, StoreError> {
    let changed = conn.execute(
        "UPDATE client_groups SET removed = ?2 WHERE id = ?1 AND removed <> ?2",
        params![id.to_string(), removed],
    )?;
    Ok(changed == 1)
}

fn set_members(conn: &Connection, id: Uuid, members: &[PersonId]) -> Result<(), StoreError> {
    let id = id.to_string();
    conn.execute("DELETE FROM group_members WHERE client_group = ?1", [&id])?;
    let mut put = conn.prepare_cached(
        "INSERT INTO group_members (client_group, person, place) VALUES (?1, ?2, ?3) ON CONFLICT DO NOTHING",
    )?;
    for (place, person) in members.iter().enumerate() {
        put.execute(params![id, person.to_string(), place])?;
    }
    Ok(())
}
