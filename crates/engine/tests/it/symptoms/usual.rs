//! Usual symptoms.

use super::{client, level, rest_of_it};
use crate::story::*;
use newel_engine::record::SymptomAmount as A;

fn with_usual(kind: &str, amount: A) -> Story {
    let mut s = client();
    s.screened(&[], &[(kind, amount)]);
    s
}

#[test]
fn at_the_baseline_the_level_stays_and_something_else_changes() {
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    let plan = s.plan("squat");
    assert_eq!((plan.level, plan.cue), (3, true));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    assert_eq!(level(&s, "squat"), 3);
    // Left out counts as clearly.
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    assert_eq!(s.plan("squat").level, 3);
}

#[test]
fn a_cue_is_a_cue_again_in_the_next_session_though_it_dropped_in_the_last() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    s.marks("squat", symptom("doming", None));
    assert_eq!(s.plan("squat").level, 2, "there again: a drop");
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    let plan = s.plan("squat");
    assert_eq!((plan.level, plan.cue), (2, true), "a cue, and no hold");
}

#[test]
fn above_the_baseline_or_there_again_or_there_next_morning_drops() {
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    assert_eq!(s.plan("squat").level, 2, "above");
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    assert_eq!(s.plan("squat").level, 2, "a cue that did not help");
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little))).ends();
    s.not_settled(vec![symptom("heaviness", Some(A::Little))]).days(1);
    assert_eq!(level(&s, "squat"), 2, "there next morning");
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Lot))).ends();
    s.not_settled(vec![symptom("heaviness", Some(A::Lot))]).days(1);
    assert!(s.rests("squat"), "more than usual, and there next morning");
}

#[test]
fn growing_from_session_to_session_holds() {
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    assert!(s.is_over("squat"), "at the usual amount last time, above it now");
}
