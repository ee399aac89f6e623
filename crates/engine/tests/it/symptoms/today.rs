//! The rest of today, and the next session of the same day; and what comes before anything was trained.

use super::{SLOTS, client, level, rest_of_it};
use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Purpose, SymptomAmount as A};

#[test]
fn the_rest_of_today_is_unloaded_in_a_second_session_too() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None)).ends();
    assert!(s.rests("hinge"), "before it is begun");
    s.trains();
    for slot in SLOTS {
        if !s.is_over(slot) {
            let plan = s.plan(slot);
            assert_eq!(s.external_of(&plan.variant, &plan.load), 0.0, "{slot}");
        }
    }
    assert!(s.is_over("hinge"));
    s.ends().settled().days(1);
    assert!(!s.rests("hinge"), "the next day is another");
}

#[test]
fn marks_of_one_day_are_counted_together() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None)).ends();
    s.trains().does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
    assert!(s.is_over("hinge"), "the second mark of the pelvic floor today");
}

#[test]
fn a_ladder_that_ended_today_stays_ended_today() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    s.marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert!(s.is_over("squat"));
    s.ends();
    assert!(s.rests("squat"));
    assert_eq!(s.reasons("squat"), [R::EndsToday]);
    s.trains();
    assert!(s.is_over("squat"));
    s.ends().settled().days(1);
    assert!(!s.rests("squat"));
    // A first mark in each of two sessions of a day are two marks of the day.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3)))).ends();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("something-else", None));
    assert!(s.is_over("squat"));
}

#[test]
fn a_drop_before_the_first_session_of_a_ladder_begins_it_a_step_lower() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3)], 2).starts_at(
        "squat",
        3,
        Some(one(6.0)),
    );
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert_eq!(level(&s, "squat"), 2, "below the coach's start");
    // At the lowest there is nothing below: the lightest there is, at the bottom of the range.
    let next = s.next("row");
    assert_eq!((next.level, next.target.count()), (0, 8));
    assert!(s.reasons("squat").contains(&R::LevelDownSymptom));
    // It is owed until she has trained the ladder.
    s.ends().days(3).trains();
    assert_eq!(level(&s, "squat"), 2);
    s.does_all("squat", 10, left(3)).ends().settled().days(2);
    assert_eq!(level(&s, "squat"), 2);
    // What the coach sets after it holds.
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0)));
    s.since_last_time(symptom("heaviness", None)).checks_in();
    s.overridden("squat", Some(3), Some(one(2.0)));
    assert_eq!(level(&s, "squat"), 3);
}

#[test]
fn the_lightest_begins_after_a_drop_at_the_lowest_level() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0]));
    s.programme(vec![slot("row", 8, 12, 3)], 2).starts_at("row", 1, Some(one(6.0)));
    assert_eq!(s.external(&s.next("row")), 6.0);
    s.marks_at_home(symptom("heaviness", None)).days(1);
    let lightest = s.external(&s.next("row"));
    assert!(lightest < 6.0);
    s.trains();
    let plan = s.plan("row");
    assert!(plan.purpose != Purpose::Find);
    s.does("row", 8, plenty());
    let then = s.plan("row");
    assert!(s.external_of(&then.variant, &then.load) <= lightest);
}

#[test]
fn the_same_drop_at_check_in_of_two_sessions_running_holds() {
    let mut s = client();
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert!(!s.is_closed());
    s.begins();
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert!(s.is_closed(), "she trained a level lower, and it is there again");
    // Said again without a session between: nothing was trained that could have brought it.
    let mut s = client();
    s.since_last_time(symptom("heaviness", None)).checks_in().ends().days(1);
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert!(!s.is_closed());
    // A session without it between.
    let mut s = client();
    for n in 0..3 {
        if n != 1 {
            s.since_last_time(symptom("heaviness", None));
        }
        s.checks_in();
        assert!(!s.is_closed(), "{n}");
        s.begins();
        rest_of_it(&mut s);
        s.ends().settled().days(2);
    }
}

#[test]
fn the_same_drop_without_a_ladder_in_two_sessions_running_holds() {
    let mut s = client();
    for n in 0..2 {
        s.trains();
        rest_of_it(&mut s);
        s.marks_between_slots(symptom("heaviness", None));
        assert_eq!(s.is_closed(), n == 1, "{n}");
        s.ends().settled().days(2);
    }
}

#[test]
fn what_was_done_earlier_on_the_day_was_done_before_the_symptom() {
    // Her usual day: what she did last left more than enough, so more is proposed.
    let morning = || {
        let mut s = Story::new();
        s.owns(full_kit()).programme(vec![slot("overhead-press", 8, 12, 3)], 2);
        s.starts_at("overhead-press", 0, Some(one(4.0)));
        s.session_of("overhead-press", 12, left(5)).trains().does_all("overhead-press", 12, left(5)).ends();
        s
    };
    let usual = morning();
    let more = usual.next("overhead-press");
    // With a symptom at check-in that is answered the same day, the morning opens nothing.
    let mut s = morning();
    s.since_last_time(symptom("heaviness", None)).checks_in();
    s.hold_answered(HoldAnswer::GoOn);
    let next = s.next("overhead-press");
    assert!(next.level <= more.level && s.external(&next) < usual.external(&more));
    assert!(s.reasons("overhead-press").contains(&R::AfterSymptom));
}

#[test]
fn a_restart_lighter_with_the_help_of_bands_gives_no_less_help() {
    // The morning after was worse than is usual for her: that holds the ladder, and leaves no level.
    let mut s = Story::new();
    s.owns(full_kit()).screened(&[], &[("back-pain", A::Pain(2))]);
    s.programme(vec![slot("vertical-pull", 3, 6, 3)], 2).starts_at("vertical-pull", 2, None);
    s.trains().does("vertical-pull", 6, plenty());
    s.marks("vertical-pull", symptom("back-pain", Some(A::Pain(2)))).does("vertical-pull", 6, plenty());
    s.ends().not_settled(vec![symptom("back-pain", Some(A::Pain(4)))]).days(1);
    let last = s.with_bench(|b| b.state.ladders[&"vertical-pull".into()].exposures.last().unwrap().clone());
    let held = s.external_of(&last.variant, &last.load);
    s.hold_answered(HoldAnswer::RestartLighter);
    let (next, reasons) = (s.external(&s.next("vertical-pull")), s.reasons("vertical-pull"));
    assert!(reasons.contains(&R::RestartLighter));
    assert!(next <= held + 1e-9 && !reasons.contains(&R::LoadUp), "{held} kg, then {next} kg: {reasons:?}");
}

#[test]
fn after_a_mark_with_nothing_held_nothing_heavier_than_must_be_is_offered_and_nothing_is_found() {
    // On one leg with nothing held; the level below has but a dumbbell, and the coach once chose 8 kg for it.
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0])).programme(vec![slot("bridge", 8, 12, 3)], 3);
    s.starts_at("bridge", 3, Some(one(8.0))).session_of("bridge", 10, left(3));
    s.trains().does("bridge", 10, left(3)).marks("bridge", symptom("heaviness", None));
    let plan = s.plan("bridge");
    // Next time, as it should be, the lightest there is: (one(2.0), Work).
    assert_eq!((plan.load, plan.purpose), (one(2.0), Purpose::Work), "today");
}
