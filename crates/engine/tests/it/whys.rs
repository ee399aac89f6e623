//! The reasons of a load say which way it went, by how much, and what bounded it.

use crate::story::*;
use newel_engine::kit::Load;
use newel_engine::programme::LevelSpan;
use newel_engine::proposal::Target;
use newel_engine::reason::{Fact, Reason, ReasonCode as R};
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount};
use newel_engine::stage::BirthMode;

fn hinge(loads: &[f64], start: Option<Load>) -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(loads)).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 1, start);
    s
}

fn reason(s: &Story, slot: &str, code: R) -> Option<Reason> {
    s.of_slot(slot).reasons.all().iter().find(|r| r.code == code).cloned()
}

fn number(s: &Story, slot: &str, code: R, name: &str) -> f64 {
    match reason(s, slot, code).and_then(|r| r.facts.get(name).cloned()) {
        Some(Fact::Number(n)) => n,
        other => panic!("{code:?} has no number {name}: {other:?}"),
    }
}

/// So many sessions of two sets at one load, two days apart.
fn lifts(s: &mut Story, times: usize, kg: f64, reps: u16, reserve: u8) {
    for _ in 0..times {
        s.trains();
        for _ in 0..2 {
            s.does_with("hinge", one(kg), reps, left(reserve));
        }
        s.ends().settled().days(2);
    }
}

/// Exactly one of the codes for the way a load went.
fn way(s: &Story) -> R {
    let ways = [R::LoadUp, R::LoadDown, R::LoadSame, R::BodyOnly];
    let said: Vec<R> = s.reasons("hinge").into_iter().filter(|c| ways.contains(c)).collect();
    assert_eq!(said.len(), 1, "{said:?}");
    said[0]
}

#[test]
fn up_down_and_the_same_are_told_apart() {
    let finely: Vec<f64> = (16..=80).map(|n| f64::from(n) / 4.0).collect();
    for (reps, reserve, then) in [(12, left(5), R::LoadUp), (5, left(0), R::LoadDown)] {
        let mut s = hinge(&finely, Some(one(8.0)));
        s.trains();
        for _ in 0..2 {
            s.does_with("hinge", one(8.0), reps, reserve);
        }
        s.ends().settled().days(2);
        assert_eq!(way(&s), then);
        let next = s.external(&s.next("hinge"));
        assert_eq!(next > 8.0, then == R::LoadUp, "{next}");
        assert_eq!(next < 8.0, then == R::LoadDown, "{next}");
    }
    let mut s = hinge(&[8.0], Some(one(8.0)));
    s.session_of("hinge", 10, left(3));
    assert_eq!(way(&s), R::LoadSame);
}

#[test]
fn the_bound_of_a_step_is_named_where_more_would_hold_and_only_there() {
    let finely: Vec<f64> = (16..=80).map(|n| f64::from(n) / 4.0).collect();
    let mut s = hinge(&finely, Some(one(8.0)));
    lifts(&mut s, 4, 8.0, 16, 5);
    assert_eq!(s.external(&s.next("hinge")), 8.75, "a tenth more, and no further");
    assert_eq!(number(&s, "hinge", R::StepBound, "percent"), 10.0);
    for (loads, reps, reserve) in [(vec![8.0], 12, left(5)), (finely, 8, left(2))] {
        let mut s = hinge(&loads, Some(one(8.0)));
        s.trains();
        for _ in 0..2 {
            s.does_with("hinge", one(8.0), reps, reserve);
        }
        s.ends().settled().days(2);
        assert_eq!(reason(&s, "hinge", R::StepBound), None, "{loads:?}");
    }
}

#[test]
fn a_step_that_is_within_a_tenth_is_no_bigger_step() {
    // 8 to 8.8 kg is a tenth, and counts as one.
    let mut s = hinge(&[8.0, 8.8, 20.0], Some(one(8.0)));
    lifts(&mut s, 4, 8.0, 12, 5);
    assert_eq!(s.external(&s.next("hinge")), 8.8);
    assert_eq!(reason(&s, "hinge", R::BigStep), None);
}

#[test]
fn weeks_away_are_counted_and_the_share_is_named() {
    let finely: Vec<f64> = (16..=80).map(|n| f64::from(n) / 4.0).collect();
    for (days, percent, most) in [(14, 90.0, 9.0), (28, 80.0, 8.0)] {
        let mut s = hinge(&finely, Some(one(10.0)));
        lifts(&mut s, 3, 10.0, 12, 5);
        s.trains();
        for _ in 0..2 {
            s.does_with("hinge", one(10.0), 12, left(5));
        }
        s.ends().days(days);
        assert_eq!(number(&s, "hinge", R::LayOff, "days"), f64::from(i32::try_from(days).unwrap()));
        assert_eq!(number(&s, "hinge", R::LayOff, "percent"), percent);
        assert_eq!(reason(&s, "hinge", R::StepBound), None, "one bound is enough");
        assert_eq!(s.external(&s.next("hinge")), most, "the bound itself is a load she owns, and is taken");
    }
}

#[test]
fn away_with_the_lightest_in_hand_she_begins_at_the_bottom_with_more_left() {
    let mut s = hinge(&[8.0], Some(one(8.0)));
    s.session_of("hinge", 12, left(5));
    s.days(14);
    let next = s.next("hinge");
    assert_eq!((s.external(&next), next.target, next.reserve), (8.0, Target::Reps(8), Some(4.0)));
}

#[test]
fn the_gap_of_a_kit_says_whether_anything_is_heavier() {
    for (loads, heavier) in [(vec![8.0, 30.0], 1.0), (vec![8.0], 0.0)] {
        let mut s = hinge(&loads, Some(one(8.0)));
        // With the level locked: at the heaviest of her kit she would go up a level instead.
        s.programme.sessions[0].blocks[0].slots[0].levels =
            Some(newel_engine::programme::LevelSpan { low: 1, high: 1 });
        lifts(&mut s, 5, 8.0, 12, 6);
        assert_eq!(s.external(&s.next("hinge")), 8.0);
        assert_eq!(number(&s, "hinge", R::KitGap, "heavier"), heavier);
        assert_eq!(number(&s, "hinge", R::KitGap, "more"), 4.0);
    }
}

#[test]
fn nothing_light_enough_is_said() {
    let mut s = hinge(&[12.0, 14.0], Some(one(12.0)));
    s.programme.sessions[0].blocks[0].slots[0].levels =
        Some(newel_engine::programme::LevelSpan { low: 1, high: 3 });
    lifts(&mut s, 1, 12.0, 4, 0);
    assert_eq!(s.external(&s.next("hinge")), 12.0, "{:?}", s.reasons("hinge"));
    assert!(s.reasons("hinge").contains(&R::NothingLighter), "{:?}", s.next("hinge"));
    let mut s = hinge(&[12.0, 14.0], Some(one(12.0)));
    lifts(&mut s, 3, 12.0, 11, 4);
    assert!(!s.reasons("hinge").contains(&R::NothingLighter));
}

#[test]
fn a_start_of_another_make_or_for_another_variant_tells_nothing() {
    assert_eq!(hinge_start(Some(pair(8.0)), &[]), (4.0, R::StartLightest));
    assert_eq!(hinge_start(Some(one(f64::NAN)), &[]), (4.0, R::StartLightest));
    let answer = |variant: &str, load: Load| Payload::TenReps { variant: variant.into(), load };
    assert_eq!(hinge_start(None, &[answer("squat-goblet", one(8.0))]), (4.0, R::StartLightest));
    assert_eq!(hinge_start(None, &[answer("hinge-one-dumbbell", pair(8.0))]), (4.0, R::StartLightest));
    assert_eq!(hinge_start(None, &[answer("hinge-one-dumbbell", one(-8.0))]), (4.0, R::StartLightest));
    assert_eq!(hinge_start(None, &[answer("hinge-one-dumbbell", one(8.0))]), (8.0, R::StartAnswer));
}

fn hinge_start(coach: Option<Load>, answers: &[Payload]) -> (f64, R) {
    let mut s = hinge(&[4.0, 6.0, 8.0], coach);
    for answer in answers {
        s.says(answer.clone());
    }
    let starts = [R::StartLightest, R::StartCoach, R::StartAnswer, R::StartGroup];
    let said: Vec<R> = s.reasons("hinge").into_iter().filter(|c| starts.contains(c)).collect();
    assert_eq!(said.len(), 1, "{said:?}");
    (s.external(&s.next("hinge")), said[0])
}

#[test]
fn an_answer_from_before_a_birth_is_no_start_after_it() {
    let mut s = hinge(&[4.0, 6.0, 8.0], None);
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(8.0) });
    s.days(200).birth_weeks_ago(20, BirthMode::Vaginal);
    assert_eq!(s.external(&s.next("hinge")), 4.0);
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(6.0) });
    assert_eq!(s.external(&s.next("hinge")), 6.0, "one from after it is");
}

#[test]
fn a_cap_that_is_a_load_of_the_kit_is_taken_itself() {
    // Restarted a fifth lighter: 8 of 10 kg, and 8 kg is in the house.
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0, 10.0])).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at(
        "hinge",
        1,
        Some(one(10.0)),
    );
    s.programme.sessions[0].blocks[0].slots[0].levels =
        Some(newel_engine::programme::LevelSpan { low: 1, high: 3 });
    lifts(&mut s, 3, 10.0, 11, 5);
    s.trains();
    s.does_with("hinge", one(10.0), 11, left(5)).marks("hinge", symptom("heaviness", None));
    s.ends().settled().days(2).hold_answered(HoldAnswer::RestartLighter);
    let next = s.next("hinge");
    assert_eq!((s.external(&next), next.target), (8.0, Target::Reps(8)));
}

/// A squat at level 2, one session behind her.
fn at_level_two() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 2, Some(one(4.0)));
    s.session_of("squat", 10, left(3));
    s
}

#[test]
fn the_reason_of_a_level_names_the_level_that_is_proposed() {
    let named = |s: &Story, code: R| {
        let level = number(s, "squat", code, "level");
        assert_eq!(level, f64::from(s.next("squat").level) + 1.0, "{code:?}");
        level
    };
    // Set by the coach, at the start and later.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 2, Some(one(4.0)));
    assert_eq!(named(&s, R::CoachStart), 3.0);
    s.session_of("squat", 10, left(3)).overridden("squat", Some(3), None);
    assert_eq!(named(&s, R::CoachSet), 4.0);
    // Up, once the step below went well twice.
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2);
    s.session_of("squat", 12, plenty()).session_of("squat", 12, plenty());
    assert_eq!(named(&s, R::LevelUp), 2.0);
    assert_eq!(number(&s, "squat", R::LevelUp, "exposures"), 2.0);
    // Down by a symptom, on the way, and up again.
    let mut s = at_level_two();
    s.marks_at_home(symptom("heaviness", None)).days(1);
    assert_eq!(named(&s, R::LevelDownSymptom), 2.0);
    assert_eq!(number(&s, "squat", R::LevelDownSymptom, "clean"), 0.0);
    assert_eq!(number(&s, "squat", R::LevelDownSymptom, "exposures"), 2.0);
    s.session_of("squat", 10, left(4));
    assert_eq!(named(&s, R::StayDown), 2.0);
    assert_eq!(number(&s, "squat", R::StayDown, "clean"), 1.0);
    assert!(reason(&s, "squat", R::LevelDownSymptom).is_none(), "only the first time");
    s.session_of("squat", 10, left(4));
    assert_eq!(named(&s, R::BackUp), 3.0);
    assert_eq!(number(&s, "squat", R::BackUp, "percent"), 80.0);
    assert_eq!(number(&s, "squat", R::BackUp, "exposures"), 2.0);
    // A symptom before the ladder was trained.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 2, None);
    s.marks_at_home(symptom("heaviness", None)).days(1);
    assert_eq!(named(&s, R::LevelDownSymptom), 2.0);
}

#[test]
fn on_the_way_down_the_first_time_is_told_apart_from_the_others() {
    // Marked on the lower level: it is the first time again, though she was there before.
    let mut s = at_level_two();
    s.marks_at_home(symptom("heaviness", None)).days(1).session_of("squat", 10, left(4));
    assert!(reason(&s, "squat", R::StayDown).is_some());
    s.trains()
        .does("squat", 10, left(4))
        .marks("squat", symptom("girdle-pain", None))
        .ends()
        .settled()
        .days(2);
    assert!(reason(&s, "squat", R::LevelDownSymptom).is_some());
    assert!(reason(&s, "squat", R::StayDown).is_none());
}

#[test]
fn a_restart_says_how_much_lighter() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 3.0, 4.0, 5.0])).programme(vec![slot("row", 8, 12, 3)], 2);
    s.starts_at("row", 1, Some(one(5.0)));
    s.session_of("row", 10, left(3));
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 1, high: 1 });
    s.trains().does("row", 10, left(3)).marks("row", symptom("shoulder-pain", Some(SymptomAmount::Pain(4))));
    s.ends().settled().days(1).hold_answered(HoldAnswer::RestartLighter);
    assert_eq!(number(&s, "row", R::RestartLighter, "percent"), 20.0);
}

#[test]
fn what_was_done_last_is_told_as_it_was_said() {
    let mut s = hinge(&[8.0], Some(one(8.0)));
    s.session_of("hinge", 10, left(3));
    let code = way(&s);
    assert_eq!(number(&s, "hinge", code, "last_reps"), 10.0);
    assert_eq!(number(&s, "hinge", code, "last_reserve"), 3.0);
    // What is expected is told to a tenth, and lies where it was aimed at.
    let expected = number(&s, "hinge", code, "expected");
    assert!((expected * 10.0 - libm::round(expected * 10.0)).abs() < 1e-9, "{expected}");
    assert!((expected - number(&s, "hinge", code, "target")).abs() < 1.0, "{expected}");
    s.session_of("hinge", 9, None);
    assert_eq!(number(&s, "hinge", way(&s), "last_reserve"), -1.0, "not said");
}

#[test]
fn a_timed_load_tells_which_way_it_went() {
    // Seconds have no state of strength: they grow first, then the load.
    let held = |loads: &[f64], kg: f64| {
        let mut s = Story::new();
        s.owns(dumbbells(loads)).programme(vec![timed("hinge", 20, 40)], 2).starts_at(
            "hinge",
            1,
            Some(one(kg)),
        );
        s
    };
    let mut s = held(&[8.0, 8.5], 8.0);
    s.session_of("hinge", 20, None);
    assert_eq!((way(&s), s.next("hinge").target), (R::LoadSame, Target::Seconds(25)));
    s.session_of("hinge", 40, None);
    let next = s.next("hinge");
    assert_eq!((way(&s), s.external(&next), next.target), (R::LoadUp, 8.5, Target::Seconds(20)));
    assert_eq!(number(&s, "hinge", R::LoadUp, "reps"), 20.0);
    let mut s = held(&[6.0, 8.0], 8.0);
    s.session_of("hinge", 30, None).days(20);
    let next = s.next("hinge");
    assert_eq!((way(&s), s.external(&next)), (R::LoadDown, 6.0));
    assert_eq!(number(&s, "hinge", R::LayOff, "percent"), 90.0);
    assert_eq!(number(&s, "hinge", R::LayOff, "days"), 23.0);
}

#[test]
fn still_finding_names_the_bound_only_where_it_bound() {
    let coarse = hinge_found(&[4.0, 4.25, 6.0]);
    assert!(coarse.contains(&R::StillFinding), "{coarse:?}");
    assert!(!coarse.contains(&R::StepBound), "the load is the one held last: {coarse:?}");
}

fn hinge_found(loads: &[f64]) -> Vec<R> {
    let mut s = hinge(loads, None);
    s.trains();
    s.does("hinge", 8, plenty()).ends().settled().days(2);
    s.reasons("hinge")
}
