//! The integrity check finds each kind of damage, and says which.

use crate::support::*;
use newel_store::{Finding, Store};
use rusqlite::Connection;

/// What a check finds after somebody meddled with the database.
fn meddled(batch: &str) -> Vec<&'static str> {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 0, NOOR, profile("Noor"));
    write(&mut phone, 1, NOOR, set(1, 0));
    write(&mut phone, 2, NOOR, note("a note"));
    drop(phone);
    let conn = Connection::open(&path).unwrap();
    conn.execute_batch("DROP TRIGGER records_never_change; PRAGMA foreign_keys = OFF").unwrap();
    conn.execute_batch(batch).unwrap();
    drop(conn);
    let phone = Store::open(&path).unwrap();
    let found = phone.check().unwrap();
    assert_eq!((found.streams, found.people), (1, 1));
    assert_eq!(found, Store::open_read_only(&path).unwrap().check().unwrap(), "a look finds the same");
    found.findings.iter().map(Finding::code).collect()
}

#[test]
fn each_kind_of_damage_is_named() {
    assert_eq!(meddled(""), Vec::<&str>::new());
    assert_eq!(
        meddled("UPDATE records SET line = replace(line, 'a note', 'another') WHERE seq = 2"),
        ["altered"],
        "the hash is not that of the line"
    );
    assert_eq!(meddled("UPDATE records SET kind = 'moon' WHERE seq = 2"), ["altered"]);
    assert_eq!(meddled("UPDATE records SET at_ms = 0 WHERE seq = 1"), ["altered"]);
    assert_eq!(meddled("UPDATE records SET line = '{}' WHERE seq = 2"), ["unreadable"]);
    assert_eq!(
        meddled("UPDATE records SET hash = 'x' WHERE seq = 1"),
        ["altered", "broken-chain"],
        "the next line bears the true hash"
    );
    assert_eq!(
        meddled("DELETE FROM records WHERE seq = 2"),
        Vec::<&str>::new(),
        "an end that is gone leaves no trace"
    );
    assert_eq!(meddled("DELETE FROM sets; DELETE FROM records WHERE seq = 1"), ["gap"]);
    assert_eq!(meddled("DELETE FROM records WHERE seq = 1"), ["dangling", "gap", "projection"]);
    assert_eq!(meddled("UPDATE sets SET reps = 99"), ["projection"]);
    assert_eq!(meddled("DELETE FROM people"), ["projection"]);
}

#[test]
fn a_projection_is_mended_by_a_rebuild() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 1, NOOR, set(1, 0));
    Connection::open(&path).unwrap().execute_batch("DELETE FROM sets").unwrap();
    assert!(!phone.check().unwrap().is_sound());
    phone.rebuild_projections().unwrap();
    assert_whole(&phone, "mended");
}
