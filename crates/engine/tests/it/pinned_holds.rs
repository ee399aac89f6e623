//! Holds, clearances and births, told where nothing else would notice a slip.

use crate::pinned_symptoms::{SLOTS, client, level, newcomer};
use crate::story::*;
use chrono::Duration;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount as A, TodayThing};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::state::Course;

fn holds(s: &Story) -> usize {
    s.with_bench(|b| b.state.open_holds().count())
}

// -- holds and their answers --------------------------------------------------------------------

#[test]
fn a_symptom_at_home_holds_every_ladder_that_has_nothing_easier() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3), slot("bridge", 8, 12, 3)], 2);
    s.trains().does_all("squat", 10, left(3)).does_all("bridge", 10, left(3)).ends().settled();
    s.marks_at_home(symptom("leak-effort", None));
    assert!(s.rests("squat") && s.rests("bridge"));
    // Again on the next day: each is held already, and is held once.
    s.days(1).marks_at_home(symptom("leak-effort", None));
    assert_eq!(holds(&s), 2);
}

#[test]
fn after_a_hold_on_everything_a_ladder_not_trained_yet_begins_a_step_lower_too() {
    let mut s = newcomer();
    assert_eq!(level(&s, "squat"), 3);
    s.marks_at_home(symptom("fatigue", None)).hold_answered(HoldAnswer::GoOn).days(1);
    assert_eq!(level(&s, "squat"), 2);
    assert!(s.reasons("squat").contains(&R::LevelDownSymptom));
    // A hold on one ladder leaves the others where the coach begins them.
    let mut s = newcomer();
    s.trains().does("row", 8, left(3)).marks("row", symptom("girdle-pain", Some(A::Pain(7)))).ends();
    s.hold_answered(HoldAnswer::GoOn).days(1);
    assert_eq!(level(&s, "squat"), 3);
}

#[test]
fn a_hold_on_more_than_a_ladder_that_is_answered_in_mid_session_leaves_today_as_it_is() {
    for (kind, closed) in [("bulge", &SLOTS[..2]), ("fatigue", &SLOTS[..])] {
        let mut s = client();
        s.trains().does("squat", 8, left(3)).marks("squat", symptom(kind, None));
        s.hold_answered(HoldAnswer::GoOn);
        for slot in SLOTS {
            assert_eq!(s.is_over(slot), closed.contains(&slot), "{kind}: {slot}");
        }
    }
}

#[test]
fn a_hold_on_a_ladder_has_three_answers_and_one_on_more_has_no_restart() {
    let answers = |s: &Story| s.with_bench(|b| b.state.open_holds().next().map(|h| h.answers()));
    let mut s = client();
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(7)))).ends();
    let three = vec![HoldAnswer::GoOn, HoldAnswer::RestartLighter, HoldAnswer::KeepResting];
    assert_eq!(answers(&s), Some(three));
    let mut s = client();
    s.trains().marks("squat", symptom("bulge", None)).ends();
    assert_eq!(answers(&s), Some(vec![HoldAnswer::GoOn, HoldAnswer::KeepResting]));
}

#[test]
fn what_one_check_in_names_twice_is_held_once_and_two_kinds_are_held_twice() {
    for (second, count) in [("fatigue", 1), ("dizzy-brief", 2)] {
        let mut s = client();
        s.since_last_time(symptom("fatigue", Some(A::Little)));
        s.since_last_time(symptom(second, Some(A::Lot))).checks_in();
        assert_eq!(holds(&s), count, "fatigue and {second}");
    }
}

// -- clearances ---------------------------------------------------------------------------------

/// A red flag in the morning's session.
fn flagged() -> Story {
    let mut s = client();
    s.trains().marks("squat", symptom("chest-pain", None)).ends();
    assert!(s.is_closed());
    s
}

#[test]
fn a_clearance_of_the_day_of_the_sign_clears_it() {
    let mut s = flagged();
    s.cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_clearance_for_a_later_day_opens_nothing_before_it() {
    let mut s = flagged();
    let on = s.today() + Duration::days(3);
    s.says(Payload::cleared("midwife", on, "from Thursday on"));
    assert!(s.is_closed());
    s.days(2);
    assert!(s.is_closed());
    s.days(1);
    assert!(!s.is_closed());
}

#[test]
fn a_clearance_opens_what_rests_of_the_body_and_not_what_the_coach_is_asked_of_a_ladder() {
    let mut s = client();
    s.trains().marks("squat", symptom("bulge", None)).ends();
    assert!(s.rests("hinge"));
    s.cleared();
    assert!(!s.rests("hinge"));
    let mut s = client();
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(8)))).ends().cleared();
    assert!(s.rests("squat"), "the coach has not answered");
    // What the coach answered stands.
    let mut s = client();
    s.trains().marks("squat", symptom("bulge", None)).ends();
    s.hold_answered(HoldAnswer::KeepResting).cleared();
    assert!(s.rests("hinge"));
}

#[test]
fn a_clearance_of_before_a_hold_says_nothing_of_it() {
    let mut s = client();
    s.cleared().days(1).trains().marks("squat", symptom("bulge", None)).ends();
    assert!(s.rests("hinge"));
}

// -- a birth ------------------------------------------------------------------------------------

#[test]
fn a_birth_put_right_by_four_weeks_is_the_same_and_by_more_is_another() {
    for (days, fresh) in [(28, false), (29, true)] {
        let mut s = Story::new();
        let birth = s.today() - Duration::weeks(30);
        let stage = |birth| Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) };
        s.says(Payload::StageChanged { stage: stage(birth) }).programme(vec![slot("bridge", 8, 12, 3)], 2);
        s.session_of("bridge", 10, left(4));
        assert!(!s.reasons("bridge").contains(&R::FreshStart));
        s.says(Payload::StageChanged { stage: stage(birth + Duration::days(days)) });
        assert_eq!(s.reasons("bridge").contains(&R::FreshStart), fresh, "{days} days later");
    }
}

#[test]
fn what_the_coach_sets_on_the_day_of_a_birth_is_of_after_it() {
    let mut s = Story::new();
    s.birth_weeks_ago(0, BirthMode::Vaginal).programme(vec![slot("bridge", 8, 12, 3)], 2);
    s.overridden("bridge", Some(1), None).days(8 * 7);
    assert_eq!(level(&s, "bridge"), 1);
}

#[test]
fn a_clearance_opens_no_ladder_that_rests_alone() {
    let mut s = client();
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(7)))).ends().days(1).cleared();
    assert_eq!(holds(&s), 1, "only the coach's answer does");
}

#[test]
fn a_hold_on_everything_that_was_left_to_rest_is_opened_by_no_letter() {
    let mut s = client();
    s.marks_at_home(symptom("fatigue", None)).hold_answered(HoldAnswer::KeepResting).days(1).cleared();
    assert_eq!(holds(&s), 1);
}

#[test]
fn what_a_letter_opens_goes_on_a_step_lower_once() {
    let mut s = client();
    let before = level(&s, "squat");
    s.marks_at_home(symptom("fatigue", None)).days(1);
    let (until, on) = (Some(s.today() + Duration::days(1)), s.today());
    let (who, said) = ("midwife".to_owned(), "may train".to_owned());
    s.says(Payload::Clearance { who, on, said, speaks_of: None, until });
    assert_eq!(level(&s, "squat"), before - 1);
    s.trains().ends().days(3);
    assert!(s.is_closed(), "the letter has run out");
    s.cleared();
    assert_eq!(level(&s, "squat"), before - 1, "no step more with the next one");
}

#[test]
fn a_letter_of_after_the_answer_takes_no_further_step() {
    let mut s = client();
    let before = level(&s, "squat");
    s.marks_at_home(symptom("fatigue", None)).hold_answered(HoldAnswer::GoOn).days(1);
    // Trained a step lower since, so that a further step would be one.
    s.trains().does_all("squat", 8, left(3)).ends().settled().days(1);
    assert_eq!(level(&s, "squat"), before - 1);
    s.cleared();
    assert_eq!(level(&s, "squat"), before - 1);
}

#[test]
fn a_letter_dated_tomorrow_opens_nothing_today() {
    let mut s = client();
    s.marks_at_home(symptom("bleeding", None)).days(1);
    let tomorrow = s.today() + Duration::days(1);
    s.says(Payload::cleared("midwife", tomorrow, "may train"));
    assert!(s.is_closed());
    s.days(1);
    assert!(!s.is_closed());
}

// -- the way down -------------------------------------------------------------------------------

/// How many clean sessions the way back up of the squat has.
fn clean(s: &Story) -> Option<u8> {
    s.with_bench(|b| match b.state.ladders[&"squat".into()].course {
        Course::Down { clean, .. } => Some(clean),
        Course::Usual | Course::Lighter { .. } => None,
    })
}

#[test]
fn a_day_with_a_child_in_the_room_counts_on_the_way_back_where_it_was_trained_at_her_level() {
    let mut s = Story::new();
    s.starts_at("squat", 1, None).session_of("squat", 10, left(3));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    s.ends().settled().days(2);
    assert_eq!(clean(&s), Some(0));
    s.today_has(&[TodayThing::ChildNear]).session_of("squat", 8, left(3));
    assert_eq!(clean(&s), Some(1));
}

#[test]
fn a_session_of_another_ladder_does_not_come_between_two_with_the_same_symptom() {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3), slot("bridge", 8, 12, 3)], 2).starts_at("squat", 2, None);
    s.starts_at("bridge", 1, None);
    let heavy = || symptom("heaviness", Some(A::Clearly));
    s.trains().does("squat", 8, left(3)).marks("squat", heavy()).ends().settled().days(2);
    s.trains().does_all("bridge", 10, left(3)).ends().settled().days(2);
    assert_eq!(holds(&s), 0);
    s.trains().does("squat", 8, left(3)).marks("squat", heavy()).ends();
    assert_eq!(holds(&s), 1, "twice running on the squat");
}

#[test]
fn what_comes_again_between_slots_of_a_session_is_judged_as_again() {
    let mut s = client();
    s.trains().marks_between_slots(symptom("doming", None));
    assert!(!s.with_bench(|b| b.state.effects.values().any(|e| e.ladders.values().any(|l| l.drops > 0))));
    s.marks_between_slots(symptom("doming", None));
    let dropped = s.with_bench(|b| b.state.effects.values().any(|e| e.ladders.values().any(|l| l.drops > 0)));
    assert!(dropped, "a cue that did not help");
}
