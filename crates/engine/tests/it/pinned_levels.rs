//! Levels and variants, told where nothing else would notice a slip.

use crate::settings::{noted, number};
use crate::story::*;
use newel_engine::kit::Load;
use newel_engine::programme::{LevelSpan, Start};
use newel_engine::proposal::Target;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount as A};

/// A start that names its variant.
pub fn start(ladder: &str, level: Option<u8>, variant: &str, load: Option<Load>) -> Start {
    Start { ladder: ladder.into(), level, variant: Some(variant.into()), load }
}

pub fn chooses(s: &mut Story, slot: &str, variant: &str) {
    let run = s.run.unwrap();
    s.says(Payload::OptionChosen { run, slot: slot.into(), variant: variant.into() });
}

/// The level that is proposed, with its variant.
fn place(s: &Story, slot: &str) -> (u8, String) {
    let next = s.next(slot);
    (next.level, next.variant.to_string())
}

/// A bridge without any kit: two legs, paused, on one leg; level 2 needs a dumbbell.
fn bridge(level: u8) -> Story {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).starts_at("bridge", level, None);
    s
}

/// The goblet squat at level 3 with 8 kg, a session behind her.
fn squat() -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 5.0, 6.0, 8.0, 10.0])).starts_at("squat", 3, Some(one(8.0)));
    s.session_of("squat", 10, left(3));
    s
}

/// A session of an option that she chose, ended and settled; two days pass.
fn session_of_choice(s: &mut Story, slot: &str, variant: &str) {
    s.trains();
    chooses(s, slot, variant);
    s.does_all(slot, 10, left(3)).ends().settled().days(2);
}

// -- what the coach chose -----------------------------------------------------------------------

#[test]
fn of_several_options_at_a_level_the_one_that_the_coach_named_is_begun_with() {
    let mut s = bridge(1);
    assert_eq!(place(&s, "bridge"), (1, "bridge-paused".into()), "the first of the catalogue");
    s.starts.push(start("bridge", Some(1), "bridge-paused-incline", None));
    s.starts_at("squat", 2, None);
    assert_eq!(place(&s, "bridge"), (1, "bridge-paused-incline".into()));
}

#[test]
fn an_option_that_the_coach_sets_anew_goes_before_the_one_done_last() {
    let mut s = bridge(1);
    s.session_of("bridge", 10, left(3));
    assert_eq!(place(&s, "bridge"), (1, "bridge-paused".into()));
    let start = start("bridge", Some(1), "bridge-paused-incline", None);
    s.says(Payload::Override { start, note: "as we said".into() });
    assert_eq!(place(&s, "bridge"), (1, "bridge-paused-incline".into()));
}

#[test]
fn what_the_coach_set_is_still_said_where_no_load_holds_there() {
    // Neither two of 12 kg nor one of them leaves enough.
    let mut s = Story::new();
    s.owns(dumbbells(&[12.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts_at("hinge", 2, Some(pair(12.0)));
    s.session_of("hinge", 3, left(0)).session_of("hinge", 3, left(0)).overridden("hinge", Some(2), None);
    let reasons = s.reasons("hinge");
    assert_eq!(s.next("hinge").level, 1);
    assert!(reasons.contains(&R::CoachSet) && reasons.contains(&R::LevelDownLoad), "{reasons:?}");
}

#[test]
fn what_was_set_before_a_symptom_goes_unnamed_where_it_holds_nothing_back() {
    // Level 2 was set, and level 2 is where the symptom brings her.
    let mut s = squat();
    s.overridden("squat", Some(2), None).marks_at_home(symptom("leak-effort", None)).days(1);
    assert_eq!(s.next("squat").level, 2);
    assert!(!s.reasons("squat").contains(&R::CoachSet));
    // 8 kg was set, and 8 kg is what she held last.
    let mut s = squat();
    s.overridden("squat", None, Some(one(8.0))).marks_at_home(symptom("leak-effort", None)).days(1);
    assert!(!s.reasons("squat").contains(&R::CoachSet));
    s.overridden("squat", None, Some(one(8.0)));
    assert!(s.reasons("squat").contains(&R::StartCoach), "set after it, it holds");
}

#[test]
fn a_light_load_that_was_set_for_a_named_option_holds_back_after_a_symptom() {
    // The coach locked all but the level of two dumbbells, so that there is nothing below.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 2, Some(pair(5.0)));
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 2, high: 2 });
    s.session_of("hinge", 10, left(3));
    let start = start("hinge", None, "hinge-two-dumbbells", Some(pair(2.0)));
    s.says(Payload::Override { start, note: "as we said".into() });
    s.marks_at_home(symptom("leak-effort", None));
    assert!(s.rests("hinge"));
    s.hold_answered(HoldAnswer::GoOn).days(1);
    assert_eq!(s.external(&s.next("hinge")), 4.0, "two of 2 kg, and not the 10 kg held last");
    assert!(s.reasons("hinge").contains(&R::CoachSet));
}

#[test]
fn a_start_without_a_load_that_was_set_holds_back_after_a_symptom() {
    // Goblet squats to a chair with 6 kg; then the coach set "with nothing", and then it leaked.
    let next_of = |ladder: &str, first: Load, set: Start| {
        let mut s = Story::new();
        s.owns(dumbbells(&[2.0, 4.0, 6.0])).programme(vec![slot(ladder, 8, 12, 3)], 2);
        s.starts_at(ladder, 2, Some(first));
        s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 2, high: 2 });
        s.session_of(ladder, 10, left(3));
        s.says(Payload::Override { start: set, note: "as we said".into() });
        s.marks_at_home(symptom("leak-effort", None)).hold_answered(HoldAnswer::GoOn).days(1);
        assert!(s.reasons(ladder).contains(&R::CoachSet));
        let next = s.next(ladder);
        (next.variant.to_string(), s.external(&next))
    };
    let squat = next_of("squat", one(6.0), start("squat", None, "squat-free", Some(Load::Nothing)));
    assert_eq!(squat, ("squat-free".into(), 0.0));
    let hinge = next_of("hinge", pair(6.0), start("hinge", None, "hinge-two-dumbbells", Some(Load::Nothing)));
    assert_eq!(hinge, ("hinge-two-dumbbells".into(), 4.0), "nothing is without a load: the least");
}

#[test]
fn where_the_level_above_is_too_much_reps_go_beyond_the_range() {
    // On her knees with four left; on her feet a quarter more of her is moved.
    let mut s = Story::new();
    s.programme(vec![slot("push-up", 8, 12, 3)], 2).starts_at("push-up", 3, None);
    s.session_of("push-up", 12, left(4)).session_of("push-up", 12, left(4));
    let next = s.next("push-up");
    assert!(next.level == 3 && next.target.count() > 12, "{next:?}");
    assert!(!s.reasons("push-up").contains(&R::KitGap));
}

#[test]
fn who_restarts_lighter_begins_each_option_at_the_bottom_of_the_range() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0])).programme(vec![slot("squat", 8, 12, 3)], 2);
    s.starts_at("squat", 2, Some(one(6.0)));
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 2, high: 2 });
    for _ in 0..2 {
        s.trains();
        chooses(&mut s, "squat", "squat-free");
        s.does_all("squat", 11, left(3)).ends().settled().days(2);
    }
    session_of_choice(&mut s, "squat", "squat-goblet-chair");
    s.marks_at_home(symptom("leak-effort", None)).hold_answered(HoldAnswer::RestartLighter).days(1);
    assert!(s.reasons("squat").contains(&R::RestartLighter));
    s.trains();
    let plan = s.plan("squat");
    let options: Vec<_> = plan.options.iter().map(|o| (o.variant.as_str(), o.target)).collect();
    assert_eq!(plan.target, Target::Reps(8));
    assert_eq!(options, [("squat-free", Target::Reps(8))], "done with eleven before");
}

#[test]
fn the_floor_that_was_shown_holds_for_the_whole_session() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 5.0, 6.0, 8.0, 10.0])).programme(vec![slot("squat", 8, 12, 3)], 2);
    s.starts_at("squat", 2, Some(one(6.0)));
    s.session_of("squat", 10, left(3)).session_of("squat", 10, left(3));
    s.overridden("squat", Some(3), Some(one(6.0))).session_of("squat", 10, left(3));
    let floor = |s: &mut Story| {
        s.says(Payload::RuleSetting(noted(number("load.target", "floor_below_target", 0.0))));
    };
    s.trains();
    let before = s.plan("squat").options;
    floor(&mut s);
    assert_eq!(s.plan("squat").options, before, "set in mid-session");
    s.ends().settled().days(2).trains();
    assert_ne!(s.plan("squat").options, before, "it holds from the next one on");
}

// -- up -----------------------------------------------------------------------------------------

#[test]
fn the_fourteenth_day_away_is_weeks_away() {
    let mut s = bridge(0);
    s.session_of("bridge", 12, left(4)).session_of("bridge", 12, left(4));
    s.days(10);
    assert_eq!(s.next("bridge").level, 1, "thirteen days after the session");
    s.days(1);
    assert_eq!(s.next("bridge").level, 0, "fourteen");
}

#[test]
fn a_timed_ladder_goes_up_after_two_exposures_at_the_top() {
    let mut s = Story::new();
    s.programme(vec![timed("side-plank", 15, 30)], 2);
    s.session_of("side-plank", 30, None);
    assert_eq!(s.next("side-plank").level, 0);
    s.session_of("side-plank", 30, None);
    assert_eq!(s.next("side-plank").level, 1, "nobody asks a timed set what was left");
    assert!(s.reasons("side-plank").contains(&R::LevelUp));
}

#[test]
fn reps_and_seconds_do_not_add_up_to_two_exposures() {
    let mut s = Story::new();
    s.programme(vec![slot("side-plank", 40, 60, 3)], 2).session_of("side-plank", 60, left(4));
    s.programme(vec![timed("side-plank", 20, 40)], 2).session_of("side-plank", 40, None);
    assert_eq!(s.next("side-plank").level, 0, "one in reps and one in seconds");
    s.session_of("side-plank", 40, None);
    assert_eq!(s.next("side-plank").level, 1);
}

/// A bridge that was held at its lowest level, answered with "go on" the same day; it is the next morning.
fn gone_on() -> Story {
    let mut s = bridge(0);
    s.session_of("bridge", 10, left(3));
    s.trains().does("bridge", 10, left(3)).marks("bridge", symptom("heaviness", None)).ends();
    assert!(s.rests("bridge"), "nothing is easier");
    s.hold_answered(HoldAnswer::GoOn).settled();
    s
}

#[test]
fn a_level_with_nothing_below_is_gone_on_with_and_was_not_left() {
    let s = gone_on();
    assert_eq!(s.next("bridge").level, 0);
    let reasons = s.reasons("bridge");
    assert!(reasons.contains(&R::AfterSymptom), "{reasons:?}");
    assert!(!reasons.contains(&R::LevelDownSymptom) && !reasons.contains(&R::StayDown), "{reasons:?}");
}

#[test]
fn the_very_day_after_a_symptom_counts_again() {
    // Ten with three left on that day: one rep more, and nothing holds back any longer.
    let mut s = gone_on();
    s.session_of("bridge", 10, left(3));
    assert_eq!(s.next("bridge").target, Target::Reps(11));
    assert!(!s.reasons("bridge").contains(&R::AfterSymptom));
    // Ready for more on that day and once again: a level up.
    let mut s = gone_on();
    s.session_of("bridge", 12, left(4));
    assert_eq!(s.next("bridge").level, 0);
    s.session_of("bridge", 12, left(4));
    assert_eq!(s.next("bridge").level, 1);
}

// -- down, and back up --------------------------------------------------------------------------

#[test]
fn an_easier_option_taken_once_is_not_where_she_stands_when_a_symptom_comes() {
    let mut s = squat();
    session_of_choice(&mut s, "squat", "squat-chair");
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    // One below level 3, with nothing in her hands: she held nothing last.
    assert_eq!(place(&s, "squat"), (2, "squat-free".into()));
}

#[test]
fn what_she_did_with_a_symptom_is_where_she_goes_down_from() {
    // She stands on level 3 and had chosen level 1 when it came.
    let mut s = squat();
    s.trains();
    chooses(&mut s, "squat", "squat-chair");
    s.does("squat", 10, left(3)).marks("squat", symptom("bulge", None)).ends().settled();
    s.hold_answered(HoldAnswer::GoOn).days(2);
    assert_eq!(s.next("squat").level, 0);
    s.session_of("squat", 10, left(4)).session_of("squat", 10, left(4));
    assert_eq!(s.next("squat").level, 1, "and back up one level at a time");
    assert!(s.reasons("squat").contains(&R::BackUp));
}

#[test]
fn two_levels_left_in_one_session_are_gone_back_up_one_by_one() {
    let mut s = squat();
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    s.does("squat", 10, left(4)).marks("squat", symptom("something-else", None)).ends().settled().days(2);
    assert_eq!(s.next("squat").level, 1);
    s.session_of("squat", 10, left(4)).session_of("squat", 10, left(4));
    assert_eq!(s.next("squat").level, 2);
}

#[test]
fn two_easier_options_in_a_row_are_no_habit_unless_they_are_of_one_level() {
    let mut s = bridge(3);
    s.session_of("bridge", 10, left(3));
    session_of_choice(&mut s, "bridge", "bridge-two-legs");
    session_of_choice(&mut s, "bridge", "bridge-paused");
    assert_eq!(s.next("bridge").level, 3, "level 0, then level 1");
    session_of_choice(&mut s, "bridge", "bridge-paused");
    assert_eq!(s.next("bridge").level, 1, "level 1 twice");
}

/// A symptom at home after 8 kg at level 3.
fn dropped_at_home() -> Story {
    let mut s = squat();
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    assert_eq!(s.next("squat").level, 2);
    s
}

#[test]
fn an_easier_option_taken_once_on_the_way_back_up_lowers_nothing() {
    let mut s = dropped_at_home();
    session_of_choice(&mut s, "squat", "squat-chair");
    assert_eq!(s.next("squat").level, 2);
}

#[test]
fn back_up_after_a_symptom_at_home_is_lighter_than_what_was_done_there_last() {
    let mut s = dropped_at_home();
    s.session_of("squat", 12, plenty()).session_of("squat", 12, plenty());
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (3, 6.0), "80 % of 8 kg is 6.4 kg");
    // Once there, the way down is over.
    s.session_of("squat", 10, left(3));
    assert_eq!(s.next("squat").level, 3);
    let reasons = s.reasons("squat");
    assert!(
        !reasons.iter().any(|r| matches!(r, R::StayDown | R::LevelDownSymptom | R::BackUp)),
        "{reasons:?}"
    );
}

#[test]
fn back_up_is_lighter_than_what_she_held_there_when_the_symptom_came() {
    // 5 kg on the day of the mark, not the 8 kg of the session before, nor the 4 kg of a level below.
    let mut s = squat();
    s.trains().does_with("squat", one(5.0), 10, left(3)).marks("squat", symptom("heaviness", None));
    s.does_with("squat", one(4.0), 10, left(3)).ends().settled().days(2);
    s.session_of("squat", 12, plenty()).session_of("squat", 12, plenty());
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (3, 4.0), "80 % of 5 kg");
}

#[test]
fn back_up_with_nothing_to_take_off_is_the_bottom_of_the_range() {
    let mut s = bridge(1);
    s.session_of("bridge", 11, left(3));
    s.trains().does_all("bridge", 11, left(3)).marks("bridge", symptom("heaviness", None));
    s.ends().settled().days(2);
    s.session_of("bridge", 10, left(4)).session_of("bridge", 10, left(4));
    let next = s.next("bridge");
    assert_eq!((next.level, next.target), (1, Target::Reps(8)));
}

#[test]
fn below_a_level_of_body_mass_the_lightest_that_a_loaded_level_has_is_begun_with() {
    // On one leg with nothing held; below it there is but a dumbbell on the hips.
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0])).programme(vec![slot("bridge", 8, 12, 3)], 2).starts_at("bridge", 3, None);
    s.session_of("bridge", 10, left(3));
    s.trains().does("bridge", 10, left(3)).marks("bridge", symptom("heaviness", None));
    s.ends().settled().days(2);
    let next = s.next("bridge");
    assert_eq!((next.level, s.external(&next), next.target), (2, 2.0, Target::Reps(8)));
}

#[test]
fn no_heavier_after_a_symptom_than_what_was_held_last_whatever_the_level_bore() {
    // 8 kg was the last of level 3; then she took the chair squat with nothing. The mark came before a set.
    let mut s = squat();
    session_of_choice(&mut s, "squat", "squat-chair");
    s.trains().marks("squat", symptom("heaviness", None)).ends().settled().days(2);
    assert_eq!(place(&s, "squat"), (2, "squat-free".into()));
}

#[test]
fn a_session_unloaded_by_another_ladder_counts_where_it_changed_nothing() {
    let mut s = Story::new();
    let slots = vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3), slot("dead-bug", 8, 12, 3)];
    s.owns(full_kit()).programme(slots, 2).starts_at("squat", 3, Some(one(6.0)));
    s.starts_at("row", 1, Some(one(5.0))).starts_at("dead-bug", 1, None);
    s.session_of("dead-bug", 10, left(3));
    s.trains().does("dead-bug", 10, left(3)).marks("dead-bug", symptom("something-else", None));
    s.ends().settled().days(2);
    s.session_of("dead-bug", 10, left(4));
    // Lying, with nothing held: the rest of an unloaded session leaves it as it was shown.
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
    assert_eq!(s.plan("dead-bug").level, 0);
    s.does_all("dead-bug", 10, left(4)).ends().settled().days(2);
    assert_eq!(s.next("dead-bug").level, 1, "two clean exposures");
}

#[test]
fn why_the_option_done_last_is_closed_is_said_of_where_she_stands_and_not_above() {
    let lacks = |s: &Story| s.reasons("squat").contains(&R::KitLacks);
    let mut s = squat();
    s.owns(newel_engine::kit::Kit::default());
    assert!(lacks(&s), "level 3 is hers, and its dumbbell is gone");
    let mut s = dropped_at_home();
    s.owns(newel_engine::kit::Kit::default());
    assert_eq!(place(&s, "squat"), (2, "squat-free".into()));
    assert!(!lacks(&s), "level 3 is not where she stands");
}
