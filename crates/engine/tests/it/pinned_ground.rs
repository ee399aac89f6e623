//! What her kit makes, what is allowed, and what was said at the very second of a beginning.

use crate::settings::{noted, number};
use crate::story::*;
use chrono::Duration;
use newel_engine::ground::ClearanceFor;
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::reason::{Fact, ReasonCode as R};
use newel_engine::record::{HoldAnswer, Payload, RestrictionKind, SymptomAmount as A, TodayThing};
use newel_engine::stage::BirthMode;

// -- kit ----------------------------------------------------------------------------------------

/// The loads of a variant, in kg.
fn loads(s: &Story, variant: &str) -> Vec<f64> {
    let place = s.catalogue.place(&variant.into()).unwrap();
    s.with_bench(|b| b.ground.loads(&place)).iter().map(|l| place.variant.external(l).0).collect()
}

#[test]
fn a_dumbbell_that_she_has_once_makes_no_pair_and_a_weight_is_counted_once() {
    let mut s = Story::new();
    let of = |weight: f64, pair| Dumbbell { weight: kg(weight), pair };
    s.owns(Kit { dumbbells: vec![of(4.0, true), of(4.0, false), of(6.0, false)], ..Kit::default() });
    assert_eq!(loads(&s, "squat-goblet"), [4.0, 6.0]);
    assert_eq!(loads(&s, "squat-two-dumbbells"), [8.0]);
}

#[test]
fn a_band_is_not_pulled_twice_at_once() {
    let mut s = Story::new();
    s.owns(full_kit());
    let bands = full_kit().bands;
    let force = |n: usize| bands[n].force(1.0).as_kg().0;
    let made = loads(&s, "row-seated-band");
    let expected = [force(0), force(1), force(0) + force(1)];
    assert_eq!(made.len(), 3, "each alone, and both side by side: {made:?}");
    assert!(made.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-9), "{made:?} for {expected:?}");
}

// -- what is allowed ----------------------------------------------------------------------------

#[test]
fn a_clearance_of_the_day_of_the_birth_is_one_for_it() {
    let mut s = Story::new();
    s.owns(full_kit()).birth_weeks_ago(0, BirthMode::Caesarean).cleared().days(8 * 7);
    assert!(!s.rests("squat"));
}

#[test]
fn an_effort_by_stage_names_the_week() {
    let week = |s: &Story| {
        let reasons = s.of_slot("squat").reasons.all().to_vec();
        reasons.into_iter().find(|r| r.code == R::StageEffort).and_then(|r| r.facts.get("week").cloned())
    };
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 1)], 2).weeks_pregnant(20);
    assert_eq!(week(&s), Some(Fact::Number(20.0)));
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 1)], 2).birth_weeks_ago(30, BirthMode::Vaginal);
    assert_eq!(week(&s), Some(Fact::Number(30.0)));
}

// -- at the very second -------------------------------------------------------------------------

/// What is said next is written in the same second as what was said last.
fn in_the_same_second(s: &mut Story) {
    s.now -= Duration::seconds(1);
}

#[test]
fn what_is_usual_for_her_may_be_said_in_the_second_in_which_a_session_begins() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0))).screened(&[], &[("heaviness", A::Clearly)]);
    in_the_same_second(&mut s);
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    assert_eq!(s.plan("squat").level, 3, "a cue, and no drop");
    assert!(s.plan("squat").cue);
}

#[test]
fn a_birth_recorded_in_the_second_in_which_a_session_begins_is_before_it() {
    let mut s = Story::new();
    s.birth_weeks_ago(30, BirthMode::Vaginal).programme(vec![slot("bridge", 8, 12, 3)], 2);
    in_the_same_second(&mut s);
    s.session_of("bridge", 12, left(5));
    assert!(!s.reasons("bridge").contains(&R::FreshStart), "she has trained since");
}

#[test]
fn what_the_coach_sets_in_the_second_in_which_a_session_begins_is_for_that_session_alone() {
    let strength = |at_once: bool| {
        let mut s = Story::new();
        s.owns(dumbbells(&[6.0, 8.0, 10.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
        s.overridden("hinge", Some(1), Some(one(10.0)));
        if at_once {
            in_the_same_second(&mut s);
        }
        s.trains().does_with("hinge", one(8.0), 10, left(3)).does_with("hinge", one(8.0), 10, left(3));
        s.ends().settled().days(2);
        assert!(!s.reasons("hinge").contains(&R::CoachSet), "it was done");
        s.with_bench(|b| b.state.trackers[&"hinge".into()].mean[0])
    };
    assert_eq!(strength(true), strength(false), "begun from the 10 kg that the coach chose");
}

#[test]
fn a_hold_answered_in_the_second_in_which_a_session_begins_is_gone_on_from_once() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0))).session_of("squat", 10, left(3));
    s.marks_at_home(symptom("fatigue", None)).days(1);
    s.hold_answered(HoldAnswer::GoOn);
    assert_eq!(s.next("squat").level, 2);
    in_the_same_second(&mut s);
    s.session_of("squat", 10, left(4));
    assert_eq!(s.next("squat").level, 2);
}

#[test]
fn what_answers_a_sign_in_the_second_in_which_it_was_said_is_an_answer_to_it() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0))).session_of("squat", 10, left(3));
    s.marks_at_home(symptom("fatigue", None));
    in_the_same_second(&mut s);
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed());
    s.marks_at_home(symptom("chest-pain", None));
    assert!(s.is_closed());
    in_the_same_second(&mut s);
    s.cleared();
    assert!(!s.is_closed());
    // A condition that asks for a clearance, and the clearance.
    s.screened(&["high-blood-pressure"], &[]);
    assert!(s.rests("squat"));
    in_the_same_second(&mut s);
    s.cleared();
    assert!(!s.rests("squat"));
}

#[test]
fn what_the_coach_sets_in_the_second_of_a_symptom_brings_her_no_further() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0))).session_of("squat", 10, left(3));
    s.overridden("squat", Some(4), Some(pair(8.0)));
    in_the_same_second(&mut s);
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    assert_eq!(s.next("squat").level, 2);
}

#[test]
fn a_position_is_given_up_by_what_is_said_in_the_second_in_which_a_pregnancy_is() {
    let mut s = Story::new();
    s.weeks_pregnant(14).programme(vec![slot("bridge", 8, 12, 3)], 2);
    in_the_same_second(&mut s);
    s.marks_at_home(symptom("dizzy-on-back", None));
    assert_eq!(s.next("bridge").variant.as_str(), "bridge-two-legs-incline");
}

// -- what there is today ------------------------------------------------------------------------

#[test]
fn another_kit_at_hand_ends_a_day_without_kit_and_nothing_else_that_was_said() {
    let mut s = Story::new();
    s.today_has(&[TodayThing::NoKit, TodayThing::ChildNear]).checks_in();
    s.with_own_bench(|b| {
        assert_eq!(b.ground.today, [TodayThing::NoKit, TodayThing::ChildNear]);
        assert_eq!(b.with_kit(dumbbells(&[4.0])).ground.today, [TodayThing::ChildNear]);
    });
}

#[test]
fn the_second_session_after_an_illness_is_easy_while_it_is_trained_and_the_one_before_never_was() {
    let mut s = Story::new();
    s.trains();
    let before = s.run;
    s.does_all("squat", 10, left(3)).ends().settled().days(2);
    s.today_has(&[TodayThing::AfterIllness]).session_of("squat", 10, left(3));
    s.run = before;
    assert!(!s.reasons("squat").contains(&R::AfterIllness), "what came later is not known to an earlier one");
    s.run = None;
    s.trains();
    assert!(s.reasons("squat").contains(&R::AfterIllness), "the second");
    s.does_all("squat", 10, left(3)).ends().settled().days(2).trains();
    assert!(!s.reasons("squat").contains(&R::AfterIllness), "the third");
}

#[test]
fn a_clearance_that_is_waited_for_is_named_for_what_it_is() {
    let of = [
        (ClearanceFor::Birth, "birth"),
        (ClearanceFor::BirthUnsaid, "birth-unsaid"),
        (ClearanceFor::Condition("anaemia".into()), "condition"),
    ];
    for (of, slug) in of {
        assert_eq!(of.slug(), slug);
    }
}

#[test]
fn the_moves_are_learned_in_sessions_with_sets_on_days_before_this_one() {
    let mut s = Story::new();
    s.never_trained();
    for _ in 0..2 {
        s.trains().ends().days(2);
    }
    assert!(s.reasons("squat").contains(&R::LearnFirst), "nothing was done in either");
    s.session_of("squat", 10, left(5));
    s.trains().does_all("squat", 10, left(5)).ends();
    assert!(s.reasons("squat").contains(&R::LearnFirst), "the second is of today");
    s.days(2);
    assert!(!s.reasons("squat").contains(&R::LearnFirst));
}

#[test]
fn a_reserve_that_is_asked_for_names_the_rule_it_comes_from() {
    let rule = |what: RestrictionKind| {
        let mut s = Story::new();
        s.says(Payload::RuleSetting(noted(number("breath.free", "least_reserve", 5.0)))).restricted(what);
        let reasons = s.of_slot("squat").reasons;
        let found = reasons.all().iter().find(|r| r.code == R::RestrictedReserve).map(|r| r.rule.to_string());
        found.expect("more is left in reserve")
    };
    assert_eq!(rule(RestrictionKind::BreathHolding), "breath.free");
    assert_eq!(rule(RestrictionKind::ReserveBelow { reps: 5 }), "coach.set");
}

#[test]
fn each_number_of_an_effort_rule_that_the_coach_sets_is_in_force() {
    let mut s = Story::new();
    s.birth_weeks_ago(3, BirthMode::Vaginal);
    for (name, value) in [("least_floor", 4.0), ("most_sets", 1.0)] {
        s.says(Payload::RuleSetting(noted(number("effort.after-2", name, value))));
    }
    s.says(Payload::RuleSetting(noted(number("effort.after-6", "trained_target", 5.0))));
    let put = s.with_bench(|b| b.ground.effort().map(|r| (r.least_floor, r.most_sets)));
    assert_eq!(put, Some((4.0, Some(1))));
    s.days(28);
    assert_eq!(s.with_bench(|b| b.ground.effort().and_then(|r| r.trained_target)), Some(5.0));
}
