//! Loads, reps and effort, told where nothing else would notice a slip.

use crate::loads::{hinge, kg_next};
use crate::pinned_levels::{chooses, start};
use crate::settings::{noted, number};
use crate::story::*;
use newel_engine::kit::{Band, Load};
use newel_engine::programme::{LevelSpan, Slot};
use newel_engine::proposal::{Outcome, Target};
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{
    HoldAnswer, Payload, Purpose, Readiness, Reserve, RestrictionKind, SymptomAmount as A,
};
use newel_engine::stage::BirthMode;
use newel_engine::state::LastSet;
use newel_engine::units::Newtons;

fn by_the_quarter() -> Vec<f64> {
    (16..=80).map(|n| f64::from(n) / 4.0).collect()
}

/// A session of sets with a load that is what it is, whatever is proposed; two days pass after its morning.
fn lifts(s: &mut Story, kg: f64, reps: u16, reserve: Option<Reserve>) {
    lifts_today(s, kg, reps, reserve);
    s.settled().days(2);
}

fn lifts_today(s: &mut Story, kg: f64, reps: u16, reserve: Option<Reserve>) {
    s.trains();
    for _ in 0..s.session().blocks[0].rounds {
        s.does_with("hinge", one(kg), reps, reserve);
    }
    s.ends();
}

// -- effort -------------------------------------------------------------------------------------

#[test]
fn an_effort_that_changes_nothing_is_no_reason() {
    // Three in reserve is the least of no stage, and two sets are the most of the third week after a birth.
    let mut s = Story::new();
    assert_eq!(s.next("squat").reserve, Some(3.0));
    assert!(!s.reasons("squat").contains(&R::StageEffort));
    s.programme(vec![slot("squat", 8, 12, 2)], 2);
    assert_eq!(s.next("squat").reserve, Some(3.0));
    assert!(s.reasons("squat").contains(&R::StageEffort), "two is less");
    for (rounds, fewer) in [(2, false), (3, true)] {
        let mut s = Story::new();
        s.birth_weeks_ago(3, BirthMode::Vaginal).programme(vec![slot("bridge", 8, 12, 5)], rounds);
        assert_eq!((s.next("bridge").sets, s.reasons("bridge").contains(&R::StageSets)), (2, fewer));
    }
    // A knee asks for no reserve, anaemia for one more.
    for (condition, reserve) in [("knee-pain", 3.0), ("anaemia", 4.0)] {
        let mut s = Story::new();
        s.screened(&[condition], &[]);
        assert_eq!(s.next("squat").reserve, Some(reserve), "{condition}");
        assert_eq!(s.reasons("squat").contains(&R::ConditionReserve), reserve > 3.0, "{condition}");
    }
}

#[test]
fn the_most_sets_of_an_unwell_day_are_never_more_than_were_planned() {
    let mut s = Story::new();
    s.feels(Readiness::Unwell).checks_in();
    assert_eq!(s.next("squat").sets, 1, "two were planned");
    let mut s = Story::new();
    s.says(Payload::RuleSetting(noted(number("today.unwell", "sets", 3.0))));
    s.feels(Readiness::Unwell).checks_in();
    assert_eq!(s.next("squat").sets, 2, "three would be allowed, and two were planned");
}

#[test]
fn reps_are_chosen_for_the_middle_set() {
    // 8 kg ten times with three left, as it was foreseen: 13 to failure. Half a rep is lost with each set.
    for (rounds, reps) in [(1, 10), (5, 9)] {
        let mut s = hinge(&[8.0], 8.0);
        s.programme(vec![slot("hinge", 8, 12, 3)], 1);
        for _ in 0..3 {
            s.session_of("hinge", 10, left(3));
        }
        s.programme(vec![slot("hinge", 8, 12, 3)], rounds);
        assert_eq!(s.next("hinge").target, Target::Reps(reps), "{rounds} sets");
    }
}

#[test]
fn a_proposal_made_anew_in_mid_session_counts_no_set_of_its_own_as_tiring() {
    let mut s = hinge(&[8.0], 8.0);
    s.programme(vec![slot("hinge", 8, 12, 3)], 1);
    for _ in 0..3 {
        s.session_of("hinge", 10, left(3));
    }
    s.programme(vec![slot("hinge", 8, 12, 3)], 5).trains();
    for _ in 0..3 {
        s.does("hinge", 9, None);
    }
    assert_eq!(s.next("hinge").target, Target::Reps(9), "as before the first of them");
}

// -- bounds -------------------------------------------------------------------------------------

#[test]
fn what_was_lifted_28_days_ago_still_counts_and_29_days_ago_no_longer() {
    // 10 kg on the first day; 8 kg each week since, with room for all that is allowed.
    for (away, kg) in [(7, 11.0), (8, 8.75)] {
        let mut s = hinge(&by_the_quarter(), 10.0);
        lifts_today(&mut s, 10.0, 12, left(4));
        for _ in 0..3 {
            s.days(7);
            lifts_today(&mut s, 8.0, 12, plenty());
        }
        s.days(away);
        assert_eq!(kg_next(&s), kg, "a tenth more than the heaviest of {} to 28 days ago", away);
    }
}

#[test]
fn after_a_session_that_fell_short_there_is_no_more_than_then() {
    let mut s = hinge(&by_the_quarter(), 8.0);
    lifts(&mut s, 8.0, 12, plenty());
    assert_eq!(kg_next(&s), 8.75, "a tenth more than 8 kg");
    // Seven reps where eight are the least, though she says that more were in it.
    lifts(&mut s, 8.0, 7, plenty());
    assert_eq!(kg_next(&s), 8.0);
}

#[test]
fn the_very_day_after_a_symptom_is_a_measure_for_the_load_again() {
    // The level of one dumbbell is the lowest that the coach left open, so she goes on at that level.
    let mut s = hinge(&by_the_quarter(), 8.0);
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 1, high: 1 });
    for _ in 0..3 {
        lifts(&mut s, 8.0, 11, left(5));
    }
    s.trains().does_with("hinge", one(8.0), 11, left(5)).marks("hinge", symptom("heaviness", None)).ends();
    s.hold_answered(HoldAnswer::GoOn).settled();
    assert_eq!(kg_next(&s), 8.0, "no more than what was held last");
    lifts(&mut s, 8.0, 11, left(5));
    assert_eq!(kg_next(&s), 8.75, "a tenth more");
}

#[test]
fn a_load_of_just_a_tenth_more_is_no_big_step_and_comes_before_one() {
    let mut s = hinge(&[10.0, 11.0, 11.5], 10.0);
    s.programme(vec![slot("hinge", 3, 12, 3)], 2);
    lifts(&mut s, 10.0, 12, left(4));
    lifts(&mut s, 10.0, 12, left(4));
    assert_eq!(kg_next(&s), 11.0);
    assert!(!s.reasons("hinge").contains(&R::BigStep));
    // Where the kit has no such load, the same two sessions earn the next.
    let mut s = hinge(&[10.0, 11.5], 10.0);
    s.programme(vec![slot("hinge", 3, 12, 3)], 2);
    lifts(&mut s, 10.0, 12, left(4));
    lifts(&mut s, 10.0, 12, left(4));
    assert_eq!(kg_next(&s), 11.5);
    assert!(s.reasons("hinge").contains(&R::BigStep));
}

#[test]
fn two_at_the_top_with_less_left_than_the_target_earn_no_big_step() {
    for (reserve, kg) in [(2, 8.0), (3, 8.85)] {
        let mut s = hinge(&[8.0, 8.85], 8.0);
        s.programme(vec![slot("hinge", 6, 12, 3)], 2);
        // Short of the top first, so that the filter is sure of her.
        for _ in 0..6 {
            lifts(&mut s, 8.0, 11, left(5));
        }
        lifts(&mut s, 8.0, 12, left(reserve));
        lifts(&mut s, 8.0, 12, left(reserve));
        assert_eq!(kg_next(&s), kg, "{reserve} left where 3 are meant");
    }
}

#[test]
fn a_load_set_for_an_option_that_is_named_is_taken_for_it() {
    let mut s = hinge(&[6.0, 8.0, 10.0], 6.0);
    s.session_of("hinge", 10, left(3));
    let start = start("hinge", None, "hinge-one-dumbbell", Some(one(10.0)));
    s.says(Payload::Override { start, note: "as we said".into() });
    assert_eq!(kg_next(&s), 10.0);
    assert!(s.reasons("hinge").contains(&R::StartCoach));
}

#[test]
fn a_drop_keeps_just_what_was_held_and_neither_more_nor_less() {
    // 10 kg, she once said, for the option below; 8 kg is what she held when it came.
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 5.0, 6.0, 8.0, 10.0]));
    s.starts.push(start("squat", Some(3), "squat-goblet", Some(one(8.0))));
    s.says(Payload::TenReps { variant: "squat-goblet-chair".into(), load: one(10.0) });
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("heaviness", None));
    let plan = s.plan("squat");
    assert_eq!((plan.variant.as_str(), plan.load), ("squat-goblet-chair", one(8.0)));
}

#[test]
fn five_or_more_meets_five_and_more_than_five_as_far_as_the_filter_says() {
    let said = |mean| LastSet { count: 12, reserve: plenty(), mean, as_planned: true };
    assert!(said(None).reserve_at_least(5.0, false));
    assert!(!said(None).reserve_at_least(5.5, false));
    assert!(said(Some(5.5)).reserve_at_least(5.5, false));
    assert!(!said(Some(5.4)).reserve_at_least(5.5, false));
}

// -- by count -----------------------------------------------------------------------------------

#[test]
fn a_carry_goes_on_by_seconds_and_then_by_the_next_load() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).programme(vec![timed("carry", 20, 40)], 2);
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 0, high: 0 });
    s.starts_at("carry", 0, Some(one(6.0)));
    let at = |s: &Story| (s.external(&s.next("carry")), s.next("carry").target);
    assert_eq!(at(&s), (6.0, Target::Seconds(20)));
    s.session_of("carry", 25, None);
    assert_eq!(at(&s), (6.0, Target::Seconds(30)), "the same load, five seconds more");
    assert!(s.reasons("carry").contains(&R::LoadSame));
    s.session_of("carry", 40, None);
    // Nobody asks a timed set what was left, so that nothing speaks against the reserve of one at the top.
    assert_eq!(at(&s), (8.0, Target::Seconds(20)), "the next load, from the bottom");
    assert!(s.reasons("carry").contains(&R::LoadUp));
}

#[test]
fn nothing_left_is_a_rep_fewer_next_time() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).session_of("bridge", 11, left(0));
    assert_eq!(s.next("bridge").target, Target::Reps(10));
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).session_of("bridge", 11, left(1));
    assert_eq!(s.next("bridge").target, Target::Reps(11), "the floor was kept, and there is no room");
}

#[test]
fn reps_begin_at_the_bottom_again_after_weeks_away() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).session_of("bridge", 11, left(3));
    assert_eq!(s.next("bridge").target, Target::Reps(12));
    s.days(20);
    assert_eq!(s.next("bridge").target, Target::Reps(8));
    assert!(s.reasons("bridge").contains(&R::LayOff));
}

// -- finding ------------------------------------------------------------------------------------

/// The hinge begun at the lightest, every set twelve with five or more left.
fn found_so_far(loads: &[f64]) -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(loads)).programme(vec![slot("hinge", 8, 12, 3)], 3).starts_at("hinge", 1, None);
    s.session_of("hinge", 12, plenty());
    s
}

#[test]
fn a_load_is_no_longer_looked_for_after_weeks_away() {
    let mut s = found_so_far(&by_the_quarter());
    assert_eq!(s.next("hinge").purpose, Purpose::Find);
    s.days(20);
    assert_eq!(s.next("hinge").purpose, Purpose::Work);
    let reasons = s.reasons("hinge");
    assert!(reasons.contains(&R::LayOff) && !reasons.contains(&R::StillFinding), "{reasons:?}");
}

#[test]
fn at_the_heaviest_of_her_kit_nothing_is_left_to_find() {
    let s = found_so_far(&[4.0, 6.0]);
    let next = s.next("hinge");
    assert_eq!((s.external(&next), next.purpose), (6.0, Purpose::Work));
    assert!(!s.reasons("hinge").contains(&R::StillFinding));
}

#[test]
fn while_a_load_is_found_the_step_is_said_to_bind_only_where_it_does() {
    // From 8 kg a tenth more is 8.8 kg; 9 kg would hold, 30 kg would not.
    for (loads, binds) in [(&[8.0, 8.5, 9.0, 30.0][..], true), (&[8.0, 8.5, 30.0][..], false)] {
        let mut s = hinge(loads, 8.0);
        lifts(&mut s, 8.0, 12, plenty());
        assert_eq!(kg_next(&s), 8.5);
        let reasons = s.reasons("hinge");
        assert!(reasons.contains(&R::StillFinding), "{reasons:?}");
        assert_eq!(reasons.contains(&R::StepBound), binds, "{loads:?}");
    }
}

#[test]
fn a_step_that_cannot_be_foreseen_is_earned_twice_at_the_load_it_starts_from() {
    let mut s = hinge(&[4.0, 5.0, 10.0], 4.0);
    s.session_of("hinge", 10, left(3));
    lifts(&mut s, 4.0, 12, left(5));
    lifts(&mut s, 5.0, 12, left(5));
    assert_eq!(kg_next(&s), 5.0, "once at 5 kg, and once at 4 kg");
    lifts(&mut s, 5.0, 12, left(5));
    assert_eq!(kg_next(&s), 10.0);
    assert!(s.reasons("hinge").contains(&R::Unforeseen));
}

#[test]
fn no_load_is_looked_for_in_seconds_nor_where_nothing_is_held() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0])).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 1, None);
    assert_eq!(s.next("hinge").purpose, Purpose::Find);
    s.programme(vec![timed("hinge", 20, 40)], 2);
    assert_eq!(s.next("hinge").purpose, Purpose::Work);
    let mut s = Story::new();
    s.starts_at("squat", 1, None);
    let next = s.next("squat");
    assert_eq!((next.load, next.purpose), (Load::Nothing, Purpose::Work));
}

#[test]
fn a_restart_with_the_help_of_bands_is_no_time_to_look_for_less_help() {
    // Help has no share that could be taken off. The morning after was worse than is usual for her.
    let mut s = Story::new();
    let mut kit = full_kit();
    for (name, at_100, at_200) in [("middle", 7.0, 10.0), ("thickest", 15.0, 22.0)] {
        let (at_100, at_200) = (Newtons::from_lb(at_100), Newtons::from_lb(at_200));
        kit.bands.push(Band { name: name.into(), at_100, at_200 });
    }
    s.owns(kit).screened(&[], &[("back-pain", A::Pain(2))]);
    s.programme(vec![slot("vertical-pull", 3, 6, 3)], 2).starts_at("vertical-pull", 2, None);
    s.trains().does("vertical-pull", 6, plenty());
    s.marks("vertical-pull", symptom("back-pain", Some(A::Pain(2)))).does("vertical-pull", 6, plenty());
    s.ends().not_settled(vec![symptom("back-pain", Some(A::Pain(4)))]).days(1);
    s.hold_answered(HoldAnswer::RestartLighter);
    let next = s.next("vertical-pull");
    let reasons = s.reasons("vertical-pull");
    assert!(reasons.contains(&R::RestartLighter), "{reasons:?}");
    assert_eq!((next.target, next.purpose), (Target::Reps(3), Purpose::Work));
}

#[test]
fn a_step_of_finding_goes_by_feel_for_hips_and_by_the_curve_for_arms_and_chest() {
    // Four left is room for a step, and the curve foresees none so far.
    for (ladder, loads, held) in [("hinge", [4.0, 8.0], 8.0), ("chest-press", [4.0, 6.0], 4.0)] {
        let mut s = Story::new();
        s.owns(dumbbells(&loads)).programme(vec![slot(ladder, 8, 12, 3)], 3);
        s.starts_at(ladder, 1, Some(one(4.0))).trains().does(ladder, 12, left(4));
        assert_eq!(s.plan(ladder).load, one(held), "{ladder}");
    }
}

#[test]
fn a_set_taken_lighter_after_a_symptom_may_go_back_to_what_was_shown_and_no_further() {
    let mut s = hinge(&[6.0, 8.0, 10.0], 8.0);
    s.programme(vec![slot("hinge", 8, 12, 3)], 4);
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 1, high: 1 });
    s.session_of("hinge", 12, left(4));
    s.trains().does("hinge", 12, left(4)).marks("hinge", symptom("heaviness", None)).ends();
    s.hold_answered(HoldAnswer::GoOn).settled().trains();
    assert_eq!(s.plan("hinge").load, one(8.0));
    // An older version showed it as a set to find the load.
    for record in &mut s.records {
        if let Payload::ProposalShown { result, .. } = &mut record.payload {
            for slot in &mut std::sync::Arc::make_mut(result).slots {
                if let Outcome::Train(plan) = &mut slot.outcome {
                    plan.purpose = Purpose::Find;
                }
            }
        }
    }
    s.does_with("hinge", one(6.0), 12, plenty());
    assert_eq!(s.plan("hinge").load, one(8.0));
    s.does("hinge", 12, plenty());
    assert_eq!(s.plan("hinge").load, one(8.0));
}

#[test]
fn on_the_way_back_from_a_symptom_a_set_does_not_grow_beyond_its_range() {
    let mut s = Story::new();
    s.owns(dumbbells(&[8.0])).programme(vec![slot("squat", 8, 12, 3)], 2);
    s.starts_at("squat", 4, Some(pair(8.0)));
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("heaviness", None)).ends().settled().days(2);
    s.session_of("squat", 12, left(8));
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next), next.target), (3, 8.0, Target::Reps(12)));
    assert!(!s.reasons("squat").contains(&R::KitGap));
}

#[test]
fn an_option_begun_after_a_symptom_is_no_time_to_look_for_its_load() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0])).programme(vec![slot("calf", 8, 12, 3)], 3);
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 2, high: 2 });
    s.starts_at("calf", 2, Some(pair(4.0))).session_of("calf", 10, left(3));
    s.marks_at_home(symptom("leak-effort", None)).hold_answered(HoldAnswer::GoOn).days(1);
    assert!(s.reasons("calf").contains(&R::AfterSymptom));
    s.trains();
    chooses(&mut s, "calf", "calf-loaded-seated");
    s.does("calf", 12, plenty());
    let plan = s.plan("calf");
    assert_eq!((plan.variant.as_str(), plan.purpose), ("calf-loaded-seated", Purpose::Work));
}

#[test]
fn a_step_to_the_next_band_is_earned_like_one_to_the_next_weight() {
    let mut s = Story::new();
    let pull = Slot { levels: Some(LevelSpan { low: 2, high: 2 }), ..slot("vertical-pull", 3, 6, 3) };
    s.owns(full_kit()).programme(vec![pull], 2).starts_at("vertical-pull", 2, None);
    s.session_of("vertical-pull", 6, left(4));
    let before = s.external(&s.next("vertical-pull"));
    s.session_of("vertical-pull", 6, left(5));
    let (next, reasons) = (s.next("vertical-pull"), s.reasons("vertical-pull"));
    assert!(before < s.external(&next) && reasons.contains(&R::BigStep), "{before}: {next:?} {reasons:?}");
}

#[test]
fn reps_beyond_the_range_need_far_more_in_reserve_and_no_light_week() {
    let mut s = hinge(&[8.0], 8.0);
    s.session_of("hinge", 12, left(4));
    assert!(!s.reasons("hinge").contains(&R::KitGap), "four are not six");
    let mut s = Story::new();
    let squat = Slot { levels: Some(LevelSpan { low: 1, high: 1 }), ..slot("squat", 8, 12, 3) };
    s.programme(vec![squat], 2).starts_at("squat", 1, None).programme.per_week = 1;
    for _ in 0..3 {
        s.session_of("squat", 12, plenty());
    }
    // Three more than a light week aims at.
    s.session_of("squat", 12, left(7));
    assert!(s.reasons("squat").contains(&R::KitGap), "{:?}", s.reasons("squat"));
    s.programme.light_weeks = vec![5];
    assert!(!s.reasons("squat").contains(&R::KitGap));
}

#[test]
fn a_light_week_is_no_time_for_a_step_that_cannot_be_foreseen() {
    let mut s = hinge(&[4.0, 5.0, 10.0], 4.0);
    s.programme.per_week = 1;
    s.session_of("hinge", 10, left(3));
    for _ in 0..2 {
        // Enough for the one more that a light week aims at.
        lifts(&mut s, 5.0, 12, left(6));
    }
    assert_eq!(kg_next(&s), 10.0);
    s.programme.light_weeks = vec![4];
    assert_eq!(kg_next(&s), 5.0);
}

#[test]
fn on_the_way_down_from_the_help_of_bands_no_load_is_looked_for() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("vertical-pull", 3, 6, 3)], 2);
    for variant in ["vertical-pull-feet-assisted", "vertical-pull-towel"] {
        s.restricted(RestrictionKind::Variant { variant: variant.into() });
    }
    s.starts_at("vertical-pull", 2, None).trains().does("vertical-pull", 6, left(3));
    s.marks("vertical-pull", symptom("heaviness", Some(A::Clearly))).ends().settled().days(2);
    for _ in 0..2 {
        let next = s.next("vertical-pull");
        assert_eq!((next.variant.as_str(), next.purpose), ("vertical-pull-band", Purpose::Work));
        s.session_of("vertical-pull", 6, plenty());
    }
}
