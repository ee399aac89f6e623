//! Projections: what queries see, and that a rebuild gives the very same.

use crate::support::*;
use newel_engine::ids::{PersonId, RecordId};
use newel_engine::kit::{Band, Load};
use newel_engine::record::{Payload, Profile, Reserve, Side, SymptomAmount};
use newel_engine::units::{Newtons, Weight};
use newel_store::{IdSource, MarkSource, Store};
use proptest::prelude::*;

#[test]
fn a_session_is_told_with_its_sets_its_marks_and_its_end() {
    let mut phone = device(1);
    write(&mut phone, 0, NOOR, profile("Noor"));
    write(&mut phone, 1, NOOR, checked_in(1, &["heaviness", "leak-effort"]));
    write(&mut phone, 2, NOOR, begun(1));
    let first = write(&mut phone, 3, NOOR, set(1, 0));
    let mut sided = squats(1, 1);
    (sided.side, sided.reserve) = (Some(Side::Left), Some(Reserve::AtLeast(5)));
    sided.load = Load::Pair { weight: Weight::lb(10.0) };
    write(&mut phone, 4, NOOR, Payload::SetDone(sided.clone()));
    sided.side = Some(Side::Right);
    let band = Band { name: "grey".into(), at_100: Newtons(20.0), at_200: Newtons(30.0) };
    sided.load = Load::Bands { bands: vec![band] };
    let right = write(&mut phone, 5, NOOR, Payload::SetDone(sided));
    let slip = write(&mut phone, 6, NOOR, set(1, 2));
    write(&mut phone, 7, NOOR, withdrawn(slip));
    let mut instead = squats(1, 0);
    instead.reps = 8;
    let correction = write(&mut phone, 8, NOOR, corrected(first, Payload::SetDone(instead)));
    let mark = write(&mut phone, 9, NOOR, marked(1, "joint-pain", SymptomAmount::Pain(4)));

    let sessions = phone.sessions(NOOR).unwrap();
    assert_eq!(sessions.len(), 1);
    assert_eq!((sessions[0].sets, sessions[0].ended), (2, false), "two sides are one set; the slip is none");
    write(&mut phone, 10, NOOR, ended(1));
    assert!(phone.sessions(NOOR).unwrap()[0].ended);

    let sets = phone.sets(NOOR).unwrap();
    assert_eq!(sets.len(), 5, "each record is a row, corrections and slips beside");
    assert_eq!((sets[0].record, sets[0].corrections, sets[0].external_kg), (first, 1, Some(12.0)));
    assert_eq!(sets[0].day, Some(minute(0).date_naive()));
    assert_eq!((sets[1].side, sets[1].reserve), (Some(Side::Left), Some(Reserve::AtLeast(5))));
    assert!((sets[1].external_kg.unwrap() - 2.0 * 4.535_923_7).abs() < 1e-12, "both weights count, in kg");
    assert_eq!(
        (sets[2].record, sets[2].external_kg),
        (right, None),
        "a band's pull is the catalogue's to say"
    );
    assert!(sets[3].withdrawn);
    assert_eq!((sets[4].record, sets[4].amends, sets[4].reps), (correction, Some(first), 8));

    let marks = phone.marks(NOOR).unwrap();
    let told: Vec<_> = marks.iter().map(|m| (m.source, m.nth, m.symptom.clone().unwrap())).collect();
    assert_eq!(
        told,
        [
            (MarkSource::CheckIn, 0, "heaviness".into()),
            (MarkSource::CheckIn, 1, "leak-effort".into()),
            (MarkSource::Mark, 0, "joint-pain".into())
        ]
    );
    assert_eq!((marks[2].record, marks[2].amount), (mark, Some(SymptomAmount::Pain(4))));
    assert_eq!(marks[0].amount, Some(SymptomAmount::Little));
    assert_whole(&phone, "the projections are what a rebuild gives");
}

#[test]
fn people_are_listed_by_the_name_last_written() {
    let mut coach = device(2);
    write(&mut coach, 9, IMKE, note("no name yet"));
    write(&mut coach, 5, NOOR, profile("Noor B"));
    write(&mut coach, 3, NOOR, profile("Noor, an older clock"));
    write(&mut coach, 6, NOOR, begun(1));
    let people = coach.all_people().unwrap();
    assert_eq!(people.len(), 2);
    assert_eq!(people[0].name.as_deref(), Some("Noor B"), "the latest by time, not by arrival");
    assert_eq!((people[0].records, people[0].streams), (3, 1));
    assert_eq!(people[0].last_session, Some(minute(0).date_naive()));
    assert_eq!(people[0].last_at.unwrap(), minute(6));
    assert_eq!((people[1].person, people[1].name.clone()), (IMKE, None), "nameless people come last");
}

#[test]
fn a_program_that_projects_otherwise_makes_the_tables_anew() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 0, NOOR, set(1, 0));
    drop(phone);
    let conn = rusqlite::Connection::open(&path).unwrap();
    conn.execute_batch("DELETE FROM sets; UPDATE here SET projected = '0.0.older'").unwrap();
    drop(conn);
    let phone = Store::open(&path).unwrap();
    assert_eq!(phone.sets(NOOR).unwrap().len(), 1);
    assert_whole(&phone, "rebuilt on opening");
}

/// What may happen on one of two devices.
#[derive(Clone, Debug)]
enum Step {
    Write { device: usize, person: usize, what: u8, target: usize, minutes: i64 },
    Send { from: usize, person: usize, keep: Vec<bool> },
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        4 => (0..2_usize, 0..2_usize, 0..11_u8, any::<usize>(), 0..500_i64).prop_map(
            |(device, person, what, target, minutes)| Step::Write { device, person, what, target, minutes }
        ),
        1 => (0..2_usize, 0..2_usize, prop::collection::vec(any::<bool>(), 0..20))
            .prop_map(|(from, person, keep)| Step::Send { from, person, keep }),
    ]
}

fn payload(what: u8, target: Option<RecordId>, n: u128) -> Payload {
    match (what, target) {
        (0, _) => set(n, 0),
        (1, _) => begun(n),
        (2, _) => ended(n),
        (3, _) => checked_in(n, &["heaviness", "doming"]),
        (4, _) => marked(n, "leak-effort", SymptomAmount::Lot),
        (5, _) => Payload::Profile(Profile { name: format!("name {n}"), emergency: None, clinic: None }),
        (6, Some(target)) => withdrawn(target),
        (7, Some(target)) => corrected(target, set(n, 1)),
        (8, Some(target)) => corrected(target, profile("corrected")),
        (9, Some(target)) => corrected(target, corrected(target, set(n, 2))),
        _ => note("a note"),
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, failure_persistence: None, ..ProptestConfig::default() })]

    /// However records come about and arrive, the tables are those that a rebuild gives, and two
    /// devices with the same records have the same tables.
    #[test]
    fn a_rebuild_gives_what_was_kept_up(steps in prop::collection::vec(step(), 1..60)) {
        let mut devices = [
            Store::open_in_memory_with(IdSource::seeded(1)).unwrap(),
            Store::open_in_memory_with(IdSource::seeded(2)).unwrap(),
        ];
        let people: [PersonId; 2] = [NOOR, IMKE];
        for (n, step) in steps.into_iter().enumerate() {
            match step {
                Step::Write { device, person, what, target, minutes } => {
                    let store = &mut devices[device];
                    let person = people[person];
                    let records = store.records(person).unwrap();
                    let target = (!records.is_empty()).then(|| records[target % records.len()].id);
                    write(store, minutes, person, payload(what, target, n as u128 % 5));
                }
                Step::Send { from, person, keep } => {
                    let person = people[person];
                    let mut lines = devices[from].lines(person).unwrap();
                    let mut keep = keep.into_iter();
                    lines.retain(|_| keep.next().unwrap_or(true));
                    take_in(&mut devices[1 - from], person, &lines);
                }
            }
        }
        for store in &mut devices {
            prop_assert!(store.check().unwrap().is_sound(), "{:?}", store.check());
            let before: Vec<_> = people.iter().map(|p| (store.sets(*p).unwrap(), store.marks(*p).unwrap())).collect();
            store.rebuild_projections().unwrap();
            let after: Vec<_> = people.iter().map(|p| (store.sets(*p).unwrap(), store.marks(*p).unwrap())).collect();
            prop_assert_eq!(before, after);
            prop_assert!(store.check().unwrap().is_sound());
        }
        for person in people {
            let (one, two) = (devices[0].lines(person).unwrap(), devices[1].lines(person).unwrap());
            take_in(&mut devices[0], person, &two);
            take_in(&mut devices[1], person, &one);
            prop_assert_eq!(devices[0].lines(person).unwrap(), devices[1].lines(person).unwrap());
            prop_assert_eq!(devices[0].sets(person).unwrap(), devices[1].sets(person).unwrap());
            prop_assert_eq!(devices[0].marks(person).unwrap(), devices[1].marks(person).unwrap());
            prop_assert_eq!(devices[0].sessions(person).unwrap(), devices[1].sessions(person).unwrap());
        }
        prop_assert_eq!(devices[0].all_people().unwrap(), devices[1].all_people().unwrap());
    }
}
