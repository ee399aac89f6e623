//! What leads up is what then lets her go up: told before, and true after.

use crate::story::*;
use newel_engine::proposal::Ahead;
use newel_engine::record::HoldAnswer;

fn ahead(s: &Story, ladder: &str) -> Option<Ahead> {
    s.with_bench(|b| {
        let (block, slot) = b.inputs.programme.sessions[0].slot(&ladder.into())?;
        b.ahead(block, slot)
    })
}

#[test]
fn what_is_told_to_be_earned_is_earned_by_just_that() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 1, None);
    assert_eq!(ahead(&s, "squat"), None, "before the first time");
    for n in 0..10 {
        s.session_of("squat", 12, left(5)).days(1);
        match ahead(&s, "squat") {
            Some(Ahead::Earn { to, done, of, count, timed, reserve, .. }) => {
                assert_eq!((to.as_str(), count, timed, reserve), ("squat-free", 12, false, 4.0));
                if done >= of {
                    assert_eq!(s.next("squat").level, 2, "session {n}: all done, and up it goes");
                    return;
                }
                assert_eq!(s.next("squat").level, 1, "session {n}: {done} of {of}");
            }
            other => panic!("{other:?}"),
        }
    }
    panic!("never earned");
}

#[test]
fn a_session_short_of_it_begins_the_count_anew() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 1, None);
    s.session_of("squat", 12, left(5));
    let done = |s: &Story| match ahead(s, "squat") {
        Some(Ahead::Earn { done, .. }) => done,
        other => panic!("{other:?}"),
    };
    assert_eq!(done(&s), 1);
    s.session_of("squat", 12, left(2));
    assert_eq!(done(&s), 0);
}

#[test]
fn after_a_symptom_the_way_back_is_told_and_at_the_top_nothing_is() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 1, None);
    s.session_of("squat", 10, left(3)).trains().marks("squat", symptom("heaviness", None)).ends().settled();
    match ahead(&s, "squat") {
        Some(Ahead::Back { to, done, symptom, .. }) => {
            assert_eq!((to, done, symptom.as_str()), (1, 0, "heaviness"));
        }
        other => panic!("{other:?}"),
    }
    let mut s = Story::new();
    s.programme(vec![slot("breathing", 8, 12, 3)], 2).starts_at("breathing", 3, None);
    s.session_of("breathing", 10, None);
    assert_eq!(ahead(&s, "breathing"), Some(Ahead::Top));
}

#[test]
fn a_ladder_on_hold_rests() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2);
    s.session_of("squat", 10, left(3)).trains().marks("squat", symptom("bulge", None)).ends().settled();
    assert_eq!(ahead(&s, "squat"), Some(Ahead::Rests));
    s.hold_answered(HoldAnswer::GoOn);
    assert_ne!(ahead(&s, "squat"), Some(Ahead::Rests));
}
