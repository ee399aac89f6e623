//! Writing and reading the log.

use crate::support::*;
use newel_engine::ids::RecordId;
use newel_engine::record::{Payload, Record};
use newel_engine::units::Weight;
use newel_store::{Action, Area, StoreError, hash_of, is_known};
use std::collections::BTreeSet;
use uuid::Uuid;

#[test]
fn a_stream_runs_per_person_and_each_line_bears_the_hash_of_the_one_before() {
    let mut phone = device(1);
    write(&mut phone, 0, NOOR, profile("Noor"));
    write(&mut phone, 1, IMKE, profile("Imke"));
    write(&mut phone, 2, NOOR, note("slept well – gut geschlafen, 你好 👶"));
    let lines = phone.lines(NOOR).unwrap();
    let records = phone.records(NOOR).unwrap();
    assert_eq!(
        records.iter().map(|r| r.seq).collect::<Vec<_>>(),
        [0, 1],
        "another person's stream takes no number"
    );
    assert_eq!(records[0].prev, None);
    assert_eq!(records[1].prev.as_deref(), Some(hash_of(&lines[0]).as_str()));
    assert_eq!(lines[1], serde_json::to_string(&records[1]).unwrap(), "the line is what was serialised");
    assert!(lines.iter().all(|l| !l.contains('\n')), "a record is one line");
    assert_eq!(records[1].at, minute(2), "times are kept to the millisecond");
    assert_eq!(records[1].at.offset(), minute(2).offset(), "with the local offset");
    let heads = phone.stream_heads(NOOR).unwrap();
    assert_eq!((heads.len(), heads[0].next, heads[0].beyond), (1, 2, 0));
    assert_eq!(heads[0].last_hash, Some(hash_of(&lines[1])));
    assert_whole(&phone, "what was written holds together");
}

#[test]
fn a_write_is_all_or_nothing_and_says_what_it_touched() {
    let mut phone = device(1);
    let change = phone
        .write(Action::StartSession, minute(0), NOOR, vec![checked_in(1, &["heaviness"]), begun(1)])
        .unwrap();
    assert_eq!(change.action, Action::StartSession);
    assert_eq!(change.records.len(), 2);
    assert_eq!(change.touched, BTreeSet::from([Area::Sessions, Area::Symptoms]));
    let before = phone.lines(NOOR).unwrap();
    let nobody = RecordId(Uuid::from_u128(9));
    let error =
        phone.write(Action::Withdraw, minute(1), NOOR, vec![note("kept?"), withdrawn(nobody)]).unwrap_err();
    assert!(matches!(error, StoreError::NoSuchRecord(id) if id == nobody));
    assert_eq!(phone.lines(NOOR).unwrap(), before, "the note before the bad withdrawal is not kept either");
    assert!(phone.write(Action::WriteNote, minute(1), NOOR, vec![]).unwrap().records.is_empty());
}

#[test]
fn a_correction_speaks_of_a_record_of_the_same_person() {
    let mut phone = device(1);
    let set = write(&mut phone, 0, NOOR, set(1, 0));
    let error = phone.write(Action::Withdraw, minute(1), IMKE, vec![withdrawn(set)]).unwrap_err();
    assert_eq!(error.code(), "no-such-record", "Imke's log has no such record");
    write(&mut phone, 2, NOOR, withdrawn(set));
}

#[test]
fn what_would_not_read_back_is_not_written() {
    let mut phone = device(1);
    let mut refused = |payload: Payload| {
        phone.write(Action::RecordBodyMass, minute(0), NOOR, vec![payload]).unwrap_err().code()
    };
    assert_eq!(refused(Payload::Unknown), "unwritable", "a kind of a newer version is never made here");
    assert_eq!(refused(Payload::BodyMass { mass: Weight::in_kg(f64::NAN) }), "unwritable");
    assert_eq!(refused(Payload::BodyMass { mass: Weight::lb(f64::INFINITY) }), "unwritable");
    assert_eq!(phone.lines(NOOR).unwrap(), Vec::<String>::new());
}

#[test]
fn one_action_may_speak_of_several_people() {
    let mut laptop = device(2);
    let about = vec![(NOOR, vec![note("one")]), (IMKE, vec![note("two"), note("three")])];
    let change = laptop.write_many(Action::WriteNote, minute(0), about).unwrap();
    let places: Vec<_> = change.records.iter().map(|r| (r.person, r.seq)).collect();
    assert_eq!(places, [(NOOR, 0), (IMKE, 0), (IMKE, 1)]);
}

#[test]
fn a_line_from_a_newer_version_survives_untouched() {
    let mut phone = device(1);
    let line = format!(
        r#"{{"v":7,"id":"{}","device":"{}","person":"{NOOR}","seq":0,"prev":null,"at":"2026-03-02T09:30:00+01:00","payload":{{"kind":"moon_phase","phase":3.10}},"extra":[1]}}"#,
        Uuid::from_u128(0x11),
        Uuid::from_u128(0x22)
    );
    let report = take_in(&mut phone, NOOR, std::slice::from_ref(&line));
    assert_eq!((report.new, report.refused.len()), (1, 0));
    assert_eq!(phone.lines(NOOR).unwrap(), [line], "byte for byte");
    assert_eq!(phone.records(NOOR).unwrap()[0].payload, Payload::Unknown);
    assert!(phone.latest(NOOR, "moon_phase").unwrap().is_some(), "its kind is kept by its own name");
    assert_whole(&phone, "a kind that nobody here knows is no damage");
}

#[test]
fn the_latest_record_of_a_kind_is_the_latest_by_time() {
    let mut phone = device(1);
    write(&mut phone, 5, NOOR, note("later"));
    write(&mut phone, 3, NOOR, note("earlier, written afterwards"));
    let latest: Record = phone.latest(NOOR, "note").unwrap().unwrap();
    assert_eq!(latest.payload, note("later"));
    assert_eq!(phone.record(latest.id).unwrap(), Some(latest));
    assert_eq!(phone.latest(NOOR, "question").unwrap(), None);
}

#[test]
fn what_was_known_can_be_said_and_found_again_gaps_included() {
    let mut coach = device(2);
    for n in 0..6 {
        write(&mut coach, n, NOOR, note(&format!("{n}")));
    }
    let lines = coach.lines(NOOR).unwrap();
    let mut phone = device(1);
    write(&mut phone, 0, NOOR, note("mine"));
    for (pick, expect) in [
        (vec![0, 1], vec![2]),
        (vec![0, 1, 3], vec![2, 3, 4]),
        (vec![0, 1, 3, 5], vec![2, 3, 4, 5, 6]),
        (vec![0, 1, 3, 4, 5], vec![2, 3, 6]),
    ] {
        let mut phone = device(3);
        take_in(&mut phone, NOOR, &pick.iter().map(|&n| lines[n].clone()).collect::<Vec<_>>());
        let known = phone.known(NOOR).unwrap();
        assert_eq!(known.iter().map(|(_, edge)| *edge).collect::<Vec<_>>(), expect, "{pick:?}");
        let device = coach.device().unwrap();
        let named: Vec<usize> = (0..8).filter(|&n| is_known(&known, device, n as u64)).collect();
        assert_eq!(named, pick, "the edges name exactly what is here");
        let before = phone.records(NOOR).unwrap();
        take_in(&mut phone, NOOR, &lines);
        write(&mut phone, 9, NOOR, note("since then"));
        assert_eq!(phone.records_known(NOOR, &known).unwrap(), before, "what arrived later is left out");
    }
    let mut late = device(4);
    take_in(&mut late, NOOR, &lines[3..5]);
    let known = late.known(NOOR).unwrap();
    assert_eq!(known.iter().map(|(_, edge)| *edge).collect::<Vec<_>>(), [0, 3, 5]);
    assert!(!is_known(&known, coach.device().unwrap(), 0) && is_known(&known, coach.device().unwrap(), 4));
    assert_eq!(late.lines_since(NOOR, &known).unwrap(), vec![], "a reader who knows all gets nothing");
    assert_eq!(coach.lines_since(NOOR, &known).unwrap().len(), 4, "and otherwise what is missing");
}

#[test]
fn a_plan_carries_what_the_coach_wrote_and_her_client_lacks() {
    let (mut coach, mut phone) = (device(2), device(1));
    write(&mut phone, 0, NOOR, note("hers"));
    take_in(&mut coach, NOOR, &phone.lines(NOOR).unwrap());
    write(&mut coach, 1, NOOR, note("first"));
    coach.renew_device().unwrap();
    write(&mut coach, 2, NOOR, note("second, under another name"));
    write(&mut coach, 3, IMKE, note("of somebody else"));
    let first = coach.own_lines(NOOR, &[]).unwrap();
    assert_eq!(first.len(), 2, "all her own, under both names, and nothing else");
    take_in(&mut phone, NOOR, &first);
    write(&mut coach, 4, NOOR, note("third"));
    let next = coach.own_lines(NOOR, &phone.known(NOOR).unwrap()).unwrap();
    assert_eq!(next.len(), 1, "only what is new to the phone");
    assert_eq!(take_in(&mut phone, NOOR, &next).gaps, vec![]);
    assert_whole(&phone, "the coach's streams are whole on the phone");
}

/// One thread owns the database, and it need not be the one that opened it.
const _: () = {
    const fn moves<T: Send>() {}
    moves::<newel_store::Store>();
};

#[test]
fn settings_are_local_and_no_part_of_the_log() {
    let mut phone = device(1);
    assert_eq!(phone.setting("role").unwrap(), None);
    phone.set_setting("role", "client").unwrap();
    phone.set_setting("role", "coach").unwrap();
    assert_eq!(phone.setting("role").unwrap().as_deref(), Some("coach"));
    phone.clear_setting("role").unwrap();
    assert_eq!(phone.setting("role").unwrap(), None);
    assert_eq!(phone.all_people().unwrap(), vec![]);
}
