//! Situations of the day and of the person: never trained, back after an illness, without her kit, a child in the room,
//! anaemia. All of it common practice, no source.

use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Purpose, TodayThing as T};
use newel_engine::stage::BirthMode;

fn home() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 2), slot("overhead-press", 8, 12, 2)], 3);
    s
}

// -- never trained ------------------------------------------------------------------------------

#[test]
fn who_has_never_trained_learns_the_moves_first_and_finds_her_load_then() {
    let mut s = home();
    s.never_trained().starts_at("squat", 2, Some(one(12.0)));
    for session in 1..=2 {
        let next = s.next("squat");
        assert_eq!(next.purpose, Purpose::Learn, "session {session}");
        assert!(s.reasons("squat").contains(&R::LearnFirst));
        assert_eq!((next.sets, next.level), (2, 2), "where the coach lets her start, in fewer sets");
        assert!(next.reserve.unwrap() >= 5.0);
        assert_eq!(s.external(&next), 2.0, "the lightest of her kit, not the coach's 12 kg");
        s.trains();
        assert!(!s.plan("squat").ask_ten_reps, "nobody asks her for ten reps");
        s.does_all("squat", 8, left(3)).ends().settled();
    }
    // What was learned is no evidence: now she begins as anybody does.
    assert!(s.with_bench(|b| b.state.trackers.is_empty() && !b.ground.learning));
    let next = s.next("squat");
    assert_eq!((next.purpose, s.external(&next), next.sets), (Purpose::Find, 12.0, 3));
    assert!(!s.reasons("squat").contains(&R::LearnFirst));
}

#[test]
fn breathing_is_not_learned_by_sets() {
    let mut s = Story::new();
    s.never_trained().programme(vec![timed("breathing", 45, 60), slot("squat", 8, 12, 3)], 3);
    assert_eq!(s.next("breathing").sets, 3);
    assert_eq!(s.next("squat").sets, 2);
}

#[test]
fn who_has_trained_before_learns_nothing_first_and_never_is_the_stricter_word() {
    let mut s = home();
    s.screened(&[], &[]);
    assert_ne!(s.next("squat").purpose, Purpose::Learn, "new to weights, but not never");
    s.never_trained();
    assert_eq!(s.next("squat").purpose, Purpose::Learn);
    let trained = newel_engine::history::Intake { trained: true, ..Default::default() };
    let never = newel_engine::history::Intake { never: true, ..Default::default() };
    for both in [trained.stricter(&never), never.stricter(&trained)] {
        assert!(both.never && !both.trained);
    }
}

// -- back after an illness ----------------------------------------------------------------------

#[test]
fn two_sessions_after_an_illness_are_easy_and_the_third_is_as_before() {
    let mut s = home();
    for _ in 0..3 {
        s.session_of("squat", 10, left(3)).days(1);
    }
    let before = s.next("squat");
    s.today_has(&[T::AfterIllness]).trains();
    let first = s.next("squat");
    assert_eq!(first.reserve.unwrap(), before.reserve.unwrap() + 2.0);
    assert_eq!(first.sets, 2);
    assert!(s.external(&first) <= s.external(&before));
    assert!(s.reasons("squat").contains(&R::AfterIllness));
    s.does_all("squat", 8, left(5)).ends().settled();
    let second = s.next("squat");
    assert!(s.reasons("squat").contains(&R::AfterIllness), "the second one, without a word of hers");
    assert_eq!(second.sets, 2);
    s.session_of("squat", 8, left(5));
    assert!(!s.reasons("squat").contains(&R::AfterIllness), "and then no more");
    assert_eq!(s.next("squat").sets, 3);
}

// -- her kit is not at hand ---------------------------------------------------------------------

#[test]
fn without_her_kit_the_nearest_that_needs_none_is_taken_and_her_place_is_kept() {
    let mut s = home();
    s.starts_at("squat", 3, Some(one(12.0)));
    for _ in 0..2 {
        s.session_of("squat", 10, left(2)).days(1);
    }
    let before = s.next("squat");
    assert_eq!(before.level, 3);
    s.today_has(&[T::NoKit]).trains();
    let away = s.next("squat");
    assert_eq!((away.variant.as_str(), s.external(&away)), ("squat-free", 0.0), "a step down, with nothing");
    assert!(s.reasons("squat").contains(&R::KitAway), "{:?}", s.reasons("squat"));
    s.does_all("squat", 12, left(5)).ends().settled();
    let back = s.next("squat");
    assert_eq!((back.level, back.variant), (before.level, before.variant), "her place is kept");
}

// -- a child in the room ------------------------------------------------------------------------

#[test]
fn with_a_child_in_the_room_nothing_is_held_above_the_head() {
    let mut s = home();
    s.starts_at("overhead-press", 1, None);
    assert!(s.external(&s.next("overhead-press")) > 0.0);
    s.today_has(&[T::ChildNear]).trains();
    let press = s.next("overhead-press");
    assert!(
        ["overhead-press-seated-band", "overhead-press-seated-reach"].contains(&press.variant.as_str()),
        "{press:?}"
    );
    assert!(s.reasons("overhead-press").contains(&R::ChildNear), "{:?}", s.reasons("overhead-press"));
    assert!(s.external(&s.next("squat")) >= 0.0, "the rest is as ever");
}

// -- anaemia ------------------------------------------------------------------------------------

#[test]
fn anaemia_rests_longer() {
    let rest = |conditions: &[&str]| {
        let mut s = home();
        s.screened(conditions, &[]).trains().does("squat", 8, left(5));
        s.flow().rest.map(|r| r.seconds)
    };
    let (plain, longer) = (rest(&[]), rest(&["anaemia"]));
    assert_eq!(longer, plain.map(|p| p + 30));
    assert!(plain.is_some());
}

#[test]
fn what_is_recorded_only_changes_nothing() {
    let mut s = home();
    s.birth_weeks_ago(30, BirthMode::Vaginal).screened(&["pessary"], &[]);
    let before = s.proposal();
    s.today_has(&[T::PessaryIn, T::Period]).trains();
    assert_eq!(s.proposal(), before);
    assert_eq!(s.with_bench(|b| b.ground.today.clone()), [T::PessaryIn, T::Period]);
}
