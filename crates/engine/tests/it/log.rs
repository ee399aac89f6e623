//! What the log does to the engine: order of arrival, doubles, kinds of a newer version.

use crate::story::*;
use newel_engine::history::History;
use newel_engine::ids::{DeviceId, PersonId, RecordId};
use newel_engine::record::{Payload, Record, SymptomAmount};
use uuid::Uuid;

fn story() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).weeks_pregnant(16).programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3)], 2);
    s.starts_at("squat", 3, Some(one(6.0)));
    s.session_of("squat", 11, left(4));
    s.trains().does("squat", 9, left(3)).marks("squat", symptom("heaviness", Some(SymptomAmount::Little)));
    s.does_all("row", 10, left(3)).ends().settled().days(2);
    s.session_of("squat", 12, left(4));
    s.trains().does("squat", 9, left(3)).does("row", 10, left(2)).ends();
    s.on_device(5).overridden("row", Some(1), Some(one(4.0)));
    s
}

#[test]
fn the_order_of_arrival_does_not_matter() {
    let s = story();
    let told = s.proposal();
    let mut t = story();
    t.records.reverse();
    assert_eq!(t.proposal(), told);
    // A deterministic shuffle: by a hash of the position.
    let mut keyed: Vec<(u64, Record)> = (0u64..).zip(s.records.clone()).collect();
    keyed.sort_by_key(|(i, _)| i.wrapping_mul(0x9E37_79B9_7F4A_7C15) >> 7);
    t.records = keyed.into_iter().map(|(_, r)| r).collect();
    assert_eq!(t.proposal(), told);
    assert_eq!(History::of(&t.records), History::of(&s.records));
}

#[test]
fn a_record_twice_counts_once() {
    let s = story();
    let mut t = story();
    t.records.extend(s.records.clone());
    assert_eq!(t.proposal(), s.proposal());
}

#[test]
fn kinds_of_a_newer_version_are_ignored() {
    let s = story();
    let mut t = story();
    let at = t.now;
    for i in 0..20u128 {
        t.records.push(Record {
            v: 2,
            id: RecordId(Uuid::from_u128(900_000 + i)),
            device: DeviceId(Uuid::from_u128(1)),
            person: PersonId(Uuid::from_u128(2)),
            seq: 5000 + u64::try_from(i).unwrap(),
            prev: None,
            at: at - chrono::Duration::days(i64::try_from(i).unwrap()),
            payload: Payload::Unknown,
        });
    }
    assert_eq!(t.proposal(), s.proposal());
}

#[test]
fn a_replay_of_each_shown_proposal_is_exact() {
    let s = story();
    let mut seen = 0;
    for (i, record) in s.records.iter().enumerate() {
        let Payload::ProposalShown { run, result, .. } = &record.payload else { continue };
        let mut then = story();
        then.records.truncate(i);
        then.run = Some(*run);
        then.now = record.at;
        assert_eq!(then.proposal(), **result, "from what was known when it was shown");
        seen += 1;
    }
    assert_eq!(seen, 4);
}

#[test]
fn a_set_taken_back_never_was() {
    let mut s = story();
    let before = s.proposal();
    s.trains().does("squat", 1, left(0));
    let set = s.last_record();
    s.withdraws(set);
    s.run = None;
    let mut t = story();
    t.trains();
    t.run = None;
    assert_eq!(s.proposal().slots, t.proposal().slots);
    assert_eq!(before.slots.len(), 2);
}

#[test]
fn corrections_that_name_each_other_do_not_go_round_for_ever() {
    let mut s = story();
    s.trains().does("squat", 10, left(3));
    let set = s.last_record();
    let says = s.records.last().unwrap().payload.clone();
    s.corrects(set, says.clone());
    let first = s.last_record();
    s.corrects(first, says);
    let second = s.last_record();
    if let Payload::Correction { target, .. } =
        &mut s.records.iter_mut().find(|r| r.id == first).unwrap().payload
    {
        *target = second;
    }
    let history = History::of(&s.records);
    assert_eq!(history.run(s.run.unwrap()).unwrap().sets.len(), 1);
}
