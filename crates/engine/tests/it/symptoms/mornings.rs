//! Check-in and next morning.

use super::{SLOTS, client, level};
use crate::story::*;
use newel_engine::record::{HoldAnswer, SymptomAmount as A};

#[test]
fn a_drop_at_check_in_concerns_all_ladders_by_one_level() {
    let mut s = client();
    let before: Vec<u8> = SLOTS.iter().map(|slot| level(&s, slot)).collect();
    s.since_last_time(symptom("heaviness", None)).since_last_time(symptom("leak-effort", None)).checks_in();
    for (slot, before) in SLOTS.iter().zip(before) {
        assert_eq!(level(&s, slot) + 1, before, "{slot}: two symptoms are one level");
    }
}

#[test]
fn a_mark_without_a_ladder_concerns_all() {
    let mut s = client();
    let before: Vec<u8> = SLOTS.iter().map(|slot| level(&s, slot)).collect();
    s.marks_at_home(symptom("heaviness", None));
    for (slot, before) in SLOTS.iter().zip(&before) {
        assert_eq!(level(&s, slot) + 1, *before, "{slot}");
    }
    let mut s = client();
    s.trains().marks_between_slots(symptom("girdle-pain", Some(A::Pain(3))));
    for (slot, before) in SLOTS.iter().zip(&before) {
        assert_eq!(s.plan(slot).level + 1, *before, "{slot}, for the rest of today");
    }
}

#[test]
fn at_the_lowest_level_a_drop_at_check_in_holds_all_but_breathing() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3), timed("breathing", 60, 90)], 2);
    s.trains().does_all("bridge", 10, left(3)).does_all("breathing", 60, None).ends().settled().days(2);
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert!(s.rests("bridge"));
    assert!(!s.rests("breathing"));
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.rests("bridge"));
}

#[test]
fn one_answer_answers_all_that_one_record_held() {
    let mut s = client();
    s.since_last_time(symptom("fatigue", None)).since_last_time(symptom("bulge", None)).checks_in();
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed() && !s.rests("squat"));
}

#[test]
fn still_there_next_morning() {
    // Heaviness: a drop in the session, a hold when it is still there.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None)).ends();
    s.not_settled(vec![symptom("heaviness", None)]).days(1);
    assert!(s.rests("squat"));
    assert!(!s.rests("row"));
    // New next morning and of no ladder: all.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("leak-effort", None)]).days(1);
    assert_eq!((level(&s, "squat"), level(&s, "hinge"), level(&s, "row")), (2, 1, 0));
    // Marked on two ladders: both.
    let mut s = client();
    s.trains().does("row", 8, left(3)).marks("row", symptom("girdle-pain", Some(A::Pain(2))));
    s.does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2)))).ends();
    s.not_settled(vec![symptom("girdle-pain", Some(A::Pain(2)))]).days(1);
    assert!(s.rests("row") && s.rests("squat"));
    assert!(!s.rests("hinge"));
}

#[test]
fn a_marked_ladder_goes_down_one_level_and_no_more_for_the_same_morning() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("leak-effort", None)).ends();
    s.not_settled(vec![symptom("leak-effort", None)]).days(1);
    assert_eq!(level(&s, "squat"), 2);
    s.since_last_time(symptom("leak-effort", None)).checks_in();
    assert_eq!(level(&s, "squat"), 2, "nothing was trained in between");
}

#[test]
fn not_settled_without_a_word_speaks_of_what_was_marked() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None)).ends();
    s.not_settled(vec![]).days(1);
    assert!(s.rests("squat"));
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![]).days(1);
    assert_eq!(level(&s, "squat"), 2, "unsaid is the stricter");
}

#[test]
fn a_next_morning_answer_that_comes_before_its_session_counts() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends();
    s.not_settled(vec![symptom("chest-pain", None)]);
    // The clock of the phone was set back between the two.
    let last = s.records.len() - 1;
    s.records[last].at -= chrono::Duration::days(30);
    assert!(s.is_closed());
}
