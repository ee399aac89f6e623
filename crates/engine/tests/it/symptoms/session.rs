//! What a mark does in a session, and to the next one.

use super::{SLOTS, client, level, rest_of_it};
use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, SymptomAmount as A};

#[test]
fn a_second_mark_on_the_ladder_ends_it_for_the_day() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert_eq!(s.plan("squat").level, 2);
    s.marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert!(s.is_over("squat"));
    assert!(!s.is_over("row"), "only that ladder");
    assert_eq!(s.over_because("squat"), [R::EndsToday]);
}

#[test]
fn a_tap_alone_is_a_drop_before_anything_is_asked() {
    let mut s = client();
    s.trains().does("squat", 8, left(3));
    let tap = s.tap("squat");
    assert_eq!(s.plan("squat").level, 2);
    s.withdraws(tap);
    assert_eq!(s.plan("squat").level, 3, "not meant");
}

#[test]
fn a_cue_stays_and_there_again_it_drops() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    let plan = s.plan("squat");
    assert_eq!((plan.level, plan.cue), (3, true));
    s.marks("squat", symptom("doming", None));
    assert_eq!(s.plan("squat").level, 2);
}

#[test]
fn mild_belly_discomfort_again_on_another_movement_holds() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("belly-mild", None));
    assert!(!s.is_over("squat"));
    s.does("hinge", 8, left(3)).marks("hinge", symptom("belly-mild", None));
    assert!(s.is_over("hinge"), "again is again, whatever she was doing");
}

#[test]
fn the_same_drop_in_two_sessions_running_holds() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    assert!(!s.rests("squat"));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    assert!(s.is_over("squat"));
    s.ends().settled().days(2);
    assert!(s.rests("squat"));
    assert!(!s.rests("row"));
}

#[test]
fn another_kind_on_the_ladder_between_does_not_hide_the_repeat() {
    // Heaviness and then a leak in the first session; heaviness again in the next.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.marks("squat", symptom("something-else", None)).ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    assert!(s.is_over("squat"), "the first kind counts as well as the last");
}

#[test]
fn the_same_kind_on_another_ladder_is_no_repeat_there() {
    let mut s = client();
    s.trains().does("row", 8, left(3)).marks("row", symptom("shoulder-pain", Some(A::Pain(4))));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.trains()
        .does("chest-press", 8, left(3))
        .marks("chest-press", symptom("shoulder-pain", Some(A::Pain(4))));
    assert!(!s.is_over("chest-press"), "a level down, as a first drop there");
}

#[test]
fn a_repeat_counts_even_if_the_first_mark_came_before_any_set() {
    let mut s = client();
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.ends().settled().days(2);
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    assert!(s.is_over("squat"));
}

#[test]
fn a_third_session_running_holds_again() {
    let mut s = client();
    for n in 0..3 {
        s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
        assert_eq!(s.is_over("squat"), n > 0, "session {n}");
        s.ends().settled();
        if n > 0 {
            s.hold_answered(HoldAnswer::GoOn);
        }
        s.days(2);
    }
}

#[test]
fn a_second_pelvic_floor_mark_leaves_the_rest_unloaded_lying_or_seated() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    assert!(!s.is_over("hinge"));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
    for slot in ["hinge", "squat"] {
        assert!(s.is_over(slot), "{slot} has no unloaded, seated or lying option");
    }
    let plan = s.plan("bridge");
    assert_eq!(s.external_of(&plan.variant, &plan.load), 0.0);
    assert!(plan.level <= 2, "never a harder one");
    let plan = s.plan("chest-press");
    assert_eq!((plan.variant.as_str(), s.external_of(&plan.variant, &plan.load)), ("chest-press-palms", 0.0));
}

#[test]
fn a_session_unloaded_by_a_symptom_elsewhere_moves_no_level_of_the_rest() {
    let mut s = client();
    let before = level(&s, "chest-press");
    // Twice running: it must not look as if she chose the easier option.
    for _ in 0..2 {
        s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
        s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
        assert_eq!(s.plan("chest-press").variant.as_str(), "chest-press-palms");
        s.does_all("chest-press", 12, left(5)).ends().settled().days(2);
        assert_eq!(level(&s, "chest-press"), before);
    }
}

#[test]
fn two_marks_that_are_not_of_the_pelvic_floor_leave_the_rest_as_it_is() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.does("row", 8, left(3)).marks("row", symptom("wrist-pain", Some(A::Pain(4))));
    assert!(!s.is_over("hinge"));
}

#[test]
fn holds_close_what_their_scope_names() {
    for (kind, amount, closed, open) in [
        ("bulge", None, vec!["squat", "hinge", "bridge"], vec!["row", "chest-press"]),
        ("girdle-pain", Some(A::Pain(7)), vec!["squat"], vec!["hinge", "row"]),
    ] {
        let mut s = client();
        s.trains().does("squat", 8, left(3)).marks("squat", symptom(kind, amount));
        for slot in &closed {
            assert!(s.is_over(slot), "{kind} today: {slot}");
        }
        for slot in &open {
            assert!(!s.is_over(slot), "{kind} today: {slot}");
        }
        s.ends().settled().days(2);
        for slot in &closed {
            assert!(s.rests(slot), "{kind} next time: {slot}");
        }
        for slot in &open {
            assert!(!s.rests(slot), "{kind} next time: {slot}");
        }
        s.hold_answered(HoldAnswer::GoOn);
        assert!(closed.iter().all(|slot| !s.rests(slot)), "{kind}, answered");
        assert!(level(&s, "squat") < 3, "a level down as after any drop");
    }
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("fatigue", None));
    assert!(SLOTS.iter().all(|slot| s.is_over(slot)));
    s.ends().days(2);
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed());
}

#[test]
fn keep_resting_keeps_it_shut() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(8)))).ends();
    s.hold_answered(HoldAnswer::KeepResting).days(10);
    assert!(s.rests("squat"));
}

#[test]
fn a_hold_that_the_coach_answers_in_mid_session_leaves_today_as_it_is() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(8))));
    s.hold_answered(HoldAnswer::GoOn);
    assert!(s.is_over("squat"));
}
