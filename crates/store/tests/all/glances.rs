//! What is kept of clients at a glance: a cache beside the log, which ends with whatever it was made from.

use crate::support::*;
use newel_engine::ids::PersonId;
use newel_store::{KeptGlance, Store};
use rusqlite::Connection;
use std::fs;

fn kept(person: PersonId, key: &str, value: &str) -> KeptGlance {
    KeptGlance { person, key: key.to_owned(), value: value.to_owned() }
}

/// Keeps them as made from all that is here.
fn keep(store: &mut Store, kept: &[KeptGlance]) {
    let made: Vec<_> = kept.iter().map(|k| (k.clone(), store.count(k.person).unwrap())).collect();
    store.keep_glances(&made).unwrap();
}

fn of(store: &Store) -> Vec<KeptGlance> {
    store.glances().unwrap()
}

#[test]
fn it_is_kept_replaced_and_emptied_and_the_log_never_notices() {
    let mut coach = device(1);
    write(&mut coach, 0, NOOR, profile("Noor"));
    write(&mut coach, 1, IMKE, profile("Imke"));
    let lines = coach.lines(NOOR).unwrap();
    keep(&mut coach, &[kept(NOOR, "k", "one"), kept(IMKE, "k", "two")]);
    keep(&mut coach, &[kept(NOOR, "l", "three")]);
    assert_eq!(of(&coach), [kept(NOOR, "l", "three"), kept(IMKE, "k", "two")]);
    assert_eq!(coach.lines(NOOR).unwrap(), lines, "no part of the log");
    assert_whole(&coach, "it is not looked at");
    coach.rebuild_projections().unwrap();
    assert!(of(&coach).is_empty(), "what is made from the log is made anew");
    keep(&mut coach, &[kept(NOOR, "k", "one")]);
    coach.forget_glances().unwrap();
    assert!(of(&coach).is_empty());
    assert_eq!(coach.lines(NOOR).unwrap(), lines);
}

#[test]
fn a_line_that_comes_ends_it_whoever_writes_it_and_of_nobody_else() {
    let mut phone = device(2);
    write(&mut phone, 0, NOOR, profile("Noor"));
    write(&mut phone, 1, NOOR, set(1, 0));
    write(&mut phone, 2, NOOR, set(1, 1));
    let lines = phone.lines(NOOR).unwrap();
    let mut coach = device(1);
    // The last line is here and one before it is missing: filling the gap moves no end of a stream.
    take_in(&mut coach, NOOR, &[lines[0].clone(), lines[2].clone()]);
    write(&mut coach, 3, IMKE, profile("Imke"));
    let ends = coach.stream_ends().unwrap();
    assert_eq!(ends[&NOOR].iter().map(|e| e.seq).collect::<Vec<_>>(), [2]);
    assert_eq!(ends[&NOOR][0].hash, newel_store::hash_of(&lines[2]));
    keep(&mut coach, &[kept(NOOR, "k", "one"), kept(IMKE, "k", "two")]);
    take_in(&mut coach, NOOR, &lines);
    assert_eq!(coach.stream_ends().unwrap(), ends);
    assert_eq!(of(&coach), [kept(IMKE, "k", "two")]);
    write(&mut coach, 4, IMKE, note("hers"));
    assert!(of(&coach).is_empty());
    coach.keep_glances(&[(kept(IMKE, "k", "made before the note"), 1)]).unwrap();
    assert!(of(&coach).is_empty(), "it was not made from what is here");
}

#[test]
fn it_is_erased_with_her_and_nothing_is_kept_of_whom_no_line_is_here() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("coach.db");
    let mut coach = Store::open(&path).unwrap();
    write(&mut coach, 0, NOOR, profile("Noor"));
    write(&mut coach, 1, IMKE, profile("Imke"));
    keep(&mut coach, &[kept(NOOR, "k", "Unverwechselbar at a glance"), kept(IMKE, "k", "two")]);
    coach.erase_person(NOOR).unwrap();
    assert_eq!(of(&coach), [kept(IMKE, "k", "two")]);
    for file in fs::read_dir(folder.path()).unwrap() {
        let bytes = fs::read(file.unwrap().path()).unwrap();
        assert!(
            !bytes.windows(15).any(|w| w == b"Unverwechselbar"),
            "it is overwritten and not only unlinked"
        );
    }
    coach.keep_glances(&[(kept(NOOR, "k", "written by whoever did not know"), 1)]).unwrap();
    keep(&mut coach, &[kept(NOOR, "k", "made from nothing")]);
    assert_eq!(of(&coach), [kept(IMKE, "k", "two")], "she is gone");
}

#[test]
fn a_backup_may_hold_it_and_a_database_of_the_third_schema_begins_without() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("coach.db"), folder.path().join("backup.db"));
    let mut coach = Store::open(&path).unwrap();
    write(&mut coach, 0, NOOR, profile("Noor"));
    keep(&mut coach, &[kept(NOOR, "k", "one")]);
    coach.backup_to(&copy).unwrap();
    assert_eq!(of(&Store::open_read_only(&copy).unwrap()), [kept(NOOR, "k", "one")]);
    drop(coach);
    Connection::open(&path)
        .unwrap()
        .execute_batch(
            "DROP TRIGGER glances_end_with_a_record; DROP TRIGGER glances_end_with_a_stream;
             DROP TABLE glances; PRAGMA user_version = 3",
        )
        .unwrap();
    let before = content(&path);
    let mut look = Store::open_read_only(&path).unwrap();
    keep(&mut look, &[kept(NOOR, "k", "one")]);
    assert!(of(&look).is_empty(), "it is looked at and stays as it is");
    drop(look);
    let mut coach = Store::open(&path).unwrap();
    assert!(of(&coach).is_empty());
    let after: Vec<_> =
        content(&path).into_iter().filter(|(table, _)| before.iter().any(|(b, _)| b == table)).collect();
    assert_eq!(after, before, "every row of every table is as it was");
    keep(&mut coach, &[kept(NOOR, "k", "one")]);
    write(&mut coach, 1, NOOR, note("more"));
    assert!(of(&coach).is_empty(), "it ends with a line here too");
    assert_whole(&coach, "the log is sound");
}
