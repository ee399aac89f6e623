//! Groups and who is laid aside: the coach's own order, beside the log and never in it.

use crate::support::*;
use newel_store::{Action, Area, Arrangement, Group, SentHead, Store};
use rusqlite::Connection;
use uuid::Uuid;

const MONDAY: Uuid = Uuid::from_u128(0x61);
const TUESDAY: Uuid = Uuid::from_u128(0x62);

fn arranged(store: &mut Store, what: Arrangement) -> bool {
    store.arrange(minute(0), &what).unwrap().is_some()
}

fn make(store: &mut Store, id: Uuid, name: &str, members: &[newel_engine::ids::PersonId]) {
    let what = Arrangement::MakeGroup { id, name: name.to_owned(), members: members.to_vec() };
    assert!(arranged(store, what));
}

#[test]
fn groups_are_made_named_filled_in_her_order_and_removed_with_a_way_back() {
    let mut coach = device(1);
    make(&mut coach, MONDAY, "Monday", &[NOOR, IMKE, NOOR]);
    make(&mut coach, TUESDAY, "Tuesday", &[IMKE]);
    let names = |s: &Store| s.groups().unwrap().into_iter().map(|g| g.name).collect::<Vec<_>>();
    assert_eq!(names(&coach), ["Monday", "Tuesday"], "in the order in which they were made");
    assert_eq!(coach.groups().unwrap()[0].members, [NOOR, IMKE], "once each, in her order");
    assert!(arranged(&mut coach, Arrangement::SetMembers { id: MONDAY, members: vec![IMKE, NOOR] }));
    assert!(arranged(&mut coach, Arrangement::RenameGroup { id: MONDAY, name: "Monday evening".into() }));
    let monday = Group { id: MONDAY, name: "Monday evening".into(), members: vec![IMKE, NOOR] };
    assert_eq!(coach.groups().unwrap()[0], monday);
    assert!(arranged(&mut coach, Arrangement::RemoveGroup { id: MONDAY }));
    assert_eq!(names(&coach), ["Tuesday"]);
    for gone in [
        Arrangement::RemoveGroup { id: MONDAY },
        Arrangement::RenameGroup { id: MONDAY, name: "x".into() },
        Arrangement::SetMembers { id: MONDAY, members: vec![] },
        Arrangement::BringBackGroup { id: TUESDAY },
    ] {
        assert!(!arranged(&mut coach, gone.clone()), "nothing is there for {gone:?}");
    }
    assert!(arranged(&mut coach, Arrangement::BringBackGroup { id: MONDAY }));
    assert_eq!(coach.groups().unwrap()[0], monday, "as it was");
}

#[test]
fn laying_aside_touches_no_record_and_ends_with_bringing_back() {
    let mut coach = device(1);
    write(&mut coach, 0, NOOR, note("one"));
    let (lines, people) = (coach.lines(NOOR).unwrap(), coach.all_people().unwrap());
    let change = coach.arrange(minute(1), &Arrangement::Archive { people: vec![NOOR] }).unwrap().unwrap();
    assert_eq!((change.action, change.records), (Action::Archive, vec![]));
    assert_eq!(change.touched.into_iter().collect::<Vec<_>>(), [Area::Arrangement]);
    assert!(coach.archived().unwrap().contains(&NOOR));
    assert_eq!((coach.lines(NOOR).unwrap(), coach.all_people().unwrap()), (lines, people));
    assert!(arranged(&mut coach, Arrangement::BringBack { people: vec![NOOR] }));
    assert!(coach.archived().unwrap().is_empty());
    assert_whole(&coach, "no record was touched");
}

fn sent(sequence: u64, content: &str, begins: Option<&str>) -> SentHead {
    let begins = begins.map(|day| day.parse().unwrap());
    SentHead { sequence, at_ms: 5, content: content.to_owned(), begins }
}

#[test]
fn what_was_last_sent_replaces_what_was_sent_before() {
    let mut coach = device(1);
    assert_eq!(coach.sent_programme(NOOR).unwrap(), None);
    for (head, text) in [(sent(1, "a", None), "{}"), (sent(2, "b", Some("2026-03-09")), "{\"x\":1}")] {
        coach.keep_sent(NOOR, &head, text).unwrap();
        assert_eq!(coach.sent_heads().unwrap(), [(NOOR, head)].into());
        assert_eq!(coach.sent_programme(NOOR).unwrap().as_deref(), Some(text));
    }
    assert_eq!(coach.sent_programme(IMKE).unwrap(), None);
}

#[test]
fn settings_are_found_by_how_they_begin() {
    let mut coach = device(1);
    for (key, value) in [("taken-in.a", "1"), ("taken-in.b", "2"), ("taken", "3"), ("name", "4")] {
        coach.set_setting(key, value).unwrap();
    }
    let found: Vec<_> = coach.settings_of("taken-in.").unwrap().into_iter().collect();
    assert_eq!(found, [("a".to_owned(), "1".to_owned()), ("b".to_owned(), "2".to_owned())]);
}

#[test]
fn the_arrangement_is_in_a_backup_and_goes_with_an_erasure() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("backup.db"));
    let mut coach = Store::open(&path).unwrap();
    for person in [NOOR, IMKE] {
        write(&mut coach, 0, person, note("one"));
    }
    make(&mut coach, MONDAY, "Monday", &[NOOR, IMKE]);
    assert!(arranged(&mut coach, Arrangement::Archive { people: vec![IMKE] }));
    coach.keep_sent(NOOR, &sent(1, "a", None), "{}").unwrap();
    coach.backup_to(&copy).unwrap();
    coach.erase_person(NOOR).unwrap();
    assert_eq!(coach.groups().unwrap()[0].members, [IMKE], "whoever is erased is in no group");
    assert_eq!(coach.sent_programme(NOOR).unwrap(), None);
    coach.restore_from(&copy).unwrap();
    assert_eq!(coach.groups().unwrap()[0].members, [NOOR, IMKE]);
    assert!(coach.archived().unwrap().contains(&IMKE));
    assert!(coach.sent_programme(NOOR).unwrap().is_some());
}

#[test]
fn a_database_of_the_second_schema_keeps_all_and_can_be_arranged() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("old.db");
    let mut old = Store::open(&path).unwrap();
    write(&mut old, 0, NOOR, profile("Noor"));
    old.set_setting("name", "Ines").unwrap();
    old.draft_begin("a", "text", minute(0)).unwrap();
    old.keep_picture("p", b"bytes").unwrap();
    drop(old);
    Connection::open(&path)
        .unwrap()
        .execute_batch(
            "DROP TABLE group_members; DROP TABLE client_groups; DROP TABLE archived; DROP TABLE last_sent;
             DROP TRIGGER glances_end_with_a_record; DROP TRIGGER glances_end_with_a_stream; DROP TABLE glances;
             PRAGMA user_version = 2",
        )
        .unwrap();
    let before = content(&path);
    let look = Store::open_read_only(&path).unwrap();
    assert!(look.groups().unwrap().is_empty() && look.archived().unwrap().is_empty(), "it is read as it is");
    assert!(look.sent_heads().unwrap().is_empty());
    assert_eq!(look.sent_programme(NOOR).unwrap(), None);
    drop(look);
    let mut coach = Store::open(&path).unwrap();
    let after: Vec<_> =
        content(&path).into_iter().filter(|(table, _)| before.iter().any(|(b, _)| b == table)).collect();
    assert_eq!(after, before, "every row of every table is as it was");
    make(&mut coach, MONDAY, "Monday", &[NOOR]);
    assert_eq!(coach.groups().unwrap().len(), 1);
    assert_whole(&coach, "the log is sound");
}
