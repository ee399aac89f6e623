//! Red flags, and what clears them.

use super::{SLOTS, client, level};
use crate::story::*;
use newel_engine::proposal::Turn;
use newel_engine::record::Payload;

#[test]
fn red_closes_until_a_clearance() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("chest-pain", None));
    assert!(SLOTS.iter().all(|slot| matches!(s.turn(slot), Turn::Over(_))));
    assert!(s.flow().now.is_none());
    s.ends().days(60);
    assert!(s.is_closed());
    assert!(s.proposal().slots.is_empty());
    s.cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_clearance_from_before_the_sign_clears_nothing() {
    let mut s = client();
    let old = s.today();
    s.days(3).trains().marks("squat", symptom("chest-pain", None)).ends().days(1);
    s.says(Payload::cleared("clinic", old, "an old letter"));
    assert!(s.is_closed());
    s.cleared();
    assert!(!s.is_closed());
    s.days(1).trains().marks("squat", symptom("chest-pain", None)).ends();
    assert!(s.is_closed(), "and it does not clear a later one");
}

#[test]
fn red_can_be_taken_back_until_the_session_is_ended_and_not_after() {
    let mut s = client();
    s.trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said);
    assert!(s.is_closed());
    s.withdraws(mark);
    assert!(!s.is_closed(), "not meant, and still in the session");

    let mut s = client();
    s.trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said).ends().withdraws(mark);
    assert!(s.is_closed());
    let harmless = Payload::Note { text: "nothing".into() };
    s.corrects(mark, harmless);
    assert!(s.is_closed(), "nor talked down into another kind of record");
}

#[test]
fn ending_a_session_twice_does_not_open_the_seal() {
    let mut s = client();
    s.trains();
    let run = s.run.unwrap();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said).ends().withdraws(mark);
    s.says(Payload::SessionEnded { run, effort: None, minutes: None, note: None });
    assert!(s.is_closed());
}

#[test]
fn red_at_check_in_and_next_morning_and_between_sessions_closes() {
    let mut s = client();
    s.since_last_time(symptom("headache", None)).checks_in();
    assert!(s.is_closed());
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("calf-one-sided", None)]);
    assert!(s.is_closed());
    let mut s = client();
    s.marks_at_home(symptom("bleeding", None));
    assert!(s.is_closed(), "a mark belongs to no session and counts all the same");
    s.days(1).cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_check_in_that_named_a_red_flag_stands_after_the_session() {
    let mut s = client();
    s.since_last_time(symptom("headache", None)).checks_in();
    let record = s.last_record();
    s.ends().withdraws(record);
    assert!(s.is_closed());
    // What was no red flag can be put right.
    let mut s = client();
    s.since_last_time(symptom("heaviness", None)).checks_in();
    let record = s.last_record();
    s.begins().ends();
    let down = level(&s, "squat");
    s.withdraws(record);
    assert!(level(&s, "squat") > down);
}
