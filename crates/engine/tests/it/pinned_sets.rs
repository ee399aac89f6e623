//! The set in hand and what is said of it, told where nothing else would notice a slip.

use crate::loads::hinge;
use crate::pinned_levels::chooses;
use crate::settings::{noted, number};
use crate::story::*;
use newel_engine::reason::{Fact, Reason, ReasonCode as R};
use newel_engine::record::Payload;

// -- what is said -------------------------------------------------------------------------------

fn reason(s: &Story, slot: &str, code: R) -> Option<Reason> {
    s.of_slot(slot).reasons.all().iter().find(|r| r.code == code).cloned()
}

#[test]
fn body_mass_and_a_load_each_name_their_rule() {
    let rule = |s: &Story, slot: &str, code| reason(s, slot, code).map(|r| r.rule.to_string());
    let mut s = Story::new();
    s.starts_at("squat", 1, None).session_of("squat", 10, left(3));
    assert_eq!(rule(&s, "squat", R::BodyOnly).as_deref(), Some("body.only"));
    let mut s = hinge(&[8.0], 8.0);
    s.session_of("hinge", 10, left(3));
    assert_eq!(rule(&s, "hinge", R::LoadSame).as_deref(), Some("load.target"));
}

#[test]
fn what_is_said_of_a_bodys_own_weight_tells_seconds_from_reps() {
    let timed_of = |planned, first: bool| {
        let mut s = Story::new();
        s.programme(vec![planned], 2).starts_at("squat", 1, None);
        if !first {
            s.session_of("squat", 10, left(3));
        }
        reason(&s, "squat", R::BodyOnly).and_then(|r| r.facts.get("timed").cloned())
    };
    for first in [true, false] {
        assert_eq!(timed_of(slot("squat", 8, 12, 3), first), Some(Fact::Number(0.0)));
        assert_eq!(timed_of(timed("squat", 20, 40), first), Some(Fact::Number(1.0)));
    }
}

#[test]
fn a_gap_in_the_kit_is_said_only_where_it_gives_more_reps() {
    let mut s = hinge(&[8.0], 8.0);
    s.session_of("hinge", 10, left(3));
    assert!(!s.reasons("hinge").contains(&R::KitGap));
}

#[test]
fn two_settings_of_one_rule_with_one_note_are_named_once() {
    let mut s = hinge(&[8.0], 8.0);
    for (name, value) in [("days_1", 7.0), ("share_1", 0.8)] {
        s.says(Payload::RuleSetting(noted(number("load.lay-off", name, value))));
    }
    s.session_of("hinge", 10, left(3)).days(10);
    let reasons = s.reasons("hinge");
    assert!(reasons.contains(&R::LayOff), "{reasons:?}");
    assert_eq!(reasons.iter().filter(|r| **r == R::RuleSetByCoach).count(), 1, "{reasons:?}");
}

// -- the set in hand ----------------------------------------------------------------------------

/// A bridge at level 1 without a kit, where two options are open; a session behind her.
fn paused() -> Story {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 3).starts_at("bridge", 1, None);
    s.session_of("bridge", 10, left(3)).trains();
    s
}

#[test]
fn another_option_of_the_same_level_may_be_chosen() {
    let mut s = paused();
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-paused");
    chooses(&mut s, "bridge", "bridge-paused-incline");
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-paused-incline");
}

#[test]
fn after_a_drop_another_option_of_the_level_below_may_be_chosen() {
    let mut s = paused();
    s.does("bridge", 10, left(3)).marks("bridge", symptom("heaviness", None));
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-two-legs");
    chooses(&mut s, "bridge", "bridge-two-legs-incline");
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-two-legs-incline");
}

#[test]
fn after_a_cue_the_sets_go_on_as_they_were_shown() {
    let mut s = hinge(&[8.0], 8.0);
    s.session_of("hinge", 10, left(3)).trains();
    let before = s.plan("hinge");
    // Far more than was foreseen would ask for more reps, were the set worked out anew.
    s.does("hinge", 12, plenty()).marks("hinge", symptom("doming", None));
    let after = s.plan("hinge");
    assert!(after.cue);
    assert_eq!((&after.load, after.target), (&before.load, before.target));
    let count = |reasons: &[Reason]| reasons.iter().filter(|r| r.code == R::LoadSame).count();
    assert_eq!((count(&before.reasons), count(&after.reasons)), (1, 1));
}

#[test]
fn an_answer_given_long_ago_works_nothing_out_anew() {
    let mut s = Story::new();
    s.owns(dumbbells(&[8.0])).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 1, None);
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(8.0) });
    s.session_of("hinge", 10, left(3));
    let shown = s.of_slot("hinge").reasons.all().to_vec();
    s.trains();
    assert_eq!(s.plan("hinge").reasons, shown, "as it was shown, and nothing said twice");
}

#[test]
fn the_only_load_of_her_kit_is_one_to_choose_from_and_no_lighter_one_is_offered() {
    let mut s = hinge(&[8.0], 8.0);
    s.trains();
    assert_eq!(s.plan("hinge").loads, [one(8.0)]);
    s.does("hinge", 4, left(0));
    assert_eq!(s.plan("hinge").lighter, None, "8 kg is no lighter than 8 kg");
    // With a lighter one in the house it is offered.
    let mut s = hinge(&[4.0, 8.0], 8.0);
    s.trains().does("hinge", 4, left(0));
    assert_eq!(s.plan("hinge").lighter, Some(one(4.0)));
}

#[test]
fn an_option_chosen_late_in_a_session_is_worked_out_for_one_who_is_tired() {
    // One dumbbell was known at 13 to failure. Six sets from now the middle one comes after two and a half;
    // after four sets of the group the two that are left have four and a half before them: a rep fewer.
    let mut s = hinge(&[8.0], 8.0);
    s.programme(vec![slot("hinge", 4, 12, 3)], 1);
    for _ in 0..3 {
        s.session_of("hinge", 8, left(5));
    }
    s.programme(vec![slot("hinge", 4, 12, 3)], 6).overridden("hinge", Some(2), Some(pair(8.0))).trains();
    let reps_of = |s: &Story| {
        let plan = s.plan("hinge");
        let offer = plan.options.iter().find(|o| o.variant.as_str() == "hinge-one-dumbbell").cloned();
        offer.expect("the level below is open").target.count()
    };
    let fresh = reps_of(&s);
    for _ in 0..4 {
        s.does("hinge", 4, None);
    }
    assert_eq!((fresh, reps_of(&s)), (9, 8));
}
