//! The database's shape: its migrations, append-only, and what marks a file as ours.

use crate::StoreError;
use rusqlite::Connection;
use rusqlite_migration::{M, Migrations};
use std::path::Path;

/// Marks a SQLite file as a Newel database: "Newl" in ASCII. Frozen.
pub(crate) const APPLICATION_ID: i64 = 0x4E65_776C;

/// The schema version that this program writes: how many migrations there are.
pub(crate) const SCHEMA: i64 = 4;

/// From this version on a coach's arrangement is kept; an older database that is only looked at has none.
pub(crate) const ARRANGED: i64 = 3;

/// From this version on glances are kept; an older database that is only looked at has none.
pub(crate) const GLANCED: i64 = 4;

/// The migrations in order. One is only ever added at the end; a released one is never edited.
/// An older program may not open a newer schema: it says that it is too old and touches nothing.
const MIGRATIONS: [M<'_>; SCHEMA as usize] = [
    M::up(include_str!("sql/v1.sql")),
    M::up(include_str!("sql/v2.sql")),
    M::up(include_str!("sql/v3.sql")),
    M::up(include_str!("sql/v4.sql")),
];

/// The tables that are made from the log, children before parents of a deletion.
pub(crate) const PROJECTIONS: [&str; 6] =
    ["amendments", "marks", "sets", "session_ends", "sessions", "people"];

/// Sets what holds for a connection and not for the file.
pub(crate) fn prepare(conn: &Connection) -> Result<(), StoreError> {
    conn.busy_timeout(std::time::Duration::from_secs(5))?;
    // FULL: in WAL mode the log file is synced at every commit, so a set that counts as logged survives
    // a power cut. Erased health data is overwritten and not only unlinked.
    conn.execute_batch("PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON;")?;
    conn.set_prepared_statement_cache_capacity(64);
    Ok(())
}

/// As [`prepare`], for a connection that only reads.
pub(crate) fn prepare_reading(conn: &Connection) -> Result<(), StoreError> {
    conn.busy_timeout(std::time::Duration::from_secs(5))?;
    conn.set_prepared_statement_cache_capacity(64);
    Ok(())
}

/// The schema version of a database.
pub(crate) fn version(conn: &Connection) -> Result<i64, StoreError> {
    Ok(conn.query_row("PRAGMA user_version", [], |row| row.get(0))?)
}

/// Refuses a file that is not ours or that a newer version wrote. Returns true for an empty one.
pub(crate) fn is_new(conn: &Connection, path: &Path) -> Result<bool, StoreError> {
    let id: i64 = conn.query_row("PRAGMA application_id", [], |row| row.get(0))?;
    let found = version(conn)?;
    let objects: i64 = conn.query_row("SELECT count(*) FROM sqlite_master", [], |row| row.get(0))?;
    if id == 0 && found == 0 && objects == 0 {
        return Ok(true);
    }
    if id != APPLICATION_ID {
        return Err(StoreError::Foreign { path: path.to_owned() });
    }
    if found > SCHEMA {
        return Err(StoreError::TooNew { path: path.to_owned(), found, known: SCHEMA });
    }
    Ok(false)
}

/// Brings a database that [`is_new`] let pass to this program's schema, in one transaction.
pub(crate) fn migrate(conn: &mut Connection, path: &Path) -> Result<(), StoreError> {
    if version(conn)? == 0 {
        conn.execute_batch(&format!("PRAGMA application_id = {APPLICATION_ID};"))?;
    }
    Migrations::from_slice(&MIGRATIONS).to_latest(conn).map_err(|error| match error {
        rusqlite_migration::Error::RusqliteError { err, .. } => StoreError::from(err),
        rusqlite_migration::Error::MigrationDefinition(_)
        | rusqlite_migration::Error::SpecifiedSchemaVersion(_) => {
            StoreError::TooNew { path: path.to_owned(), found: SCHEMA + 1, known: SCHEMA }
        }
        other => StoreError::Sql {
            path: path.to_owned(),
            source: rusqlite::Error::ToSqlConversionFailure(Box::new(other)),
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_migrations_are_sound_and_every_table_is_strict() {
        Migrations::from_slice(&MIGRATIONS).validate().unwrap();
        let mut conn = Connection::open_in_memory().unwrap();
        migrate(&mut conn, Path::new(":memory:")).unwrap();
        let lax: Vec<String> = conn
            .prepare("SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'")
            .unwrap()
            .query_map([], |row| row.get(0))
            .unwrap()
            .collect::<Result<_, _>>()
            .unwrap();
        assert_eq!(lax, Vec::<String>::new(), "every table of ours is STRICT");
    }

    #[test]
    fn a_commit_is_synced_and_references_hold() {
        let conn = Connection::open_in_memory().unwrap();
        prepare(&conn).unwrap();
        let pragma =
            |name: &str| -> i64 { conn.query_row(&format!("PRAGMA {name}"), [], |row| row.get(0)).unwrap() };
        assert_eq!(pragma("synchronous"), 2, "FULL");
        assert_eq!(pragma("foreign_keys"), 1);
        assert_eq!(pragma("secure_delete"), 1);
    }
}
