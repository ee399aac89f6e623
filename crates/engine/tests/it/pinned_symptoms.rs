//! Symptoms, told where nothing else would notice a slip.

use crate::pinned_levels::chooses;
use crate::settings::{noted, number};
use crate::story::*;
use chrono::Duration;
use newel_engine::history::Intake;
use newel_engine::kit::Load;
use newel_engine::programme::Slot;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, RestrictionKind, SymptomAmount as A};
use newel_engine::rules::Class;
use newel_engine::symptom::{Because, Before, judge};

pub const SLOTS: [&str; 4] = ["squat", "hinge", "row", "chest-press"];

/// Four ladders well above their lowest level, with two sets of each; not trained yet.
pub fn newcomer() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(SLOTS.map(|id| slot(id, 8, 12, 3)).to_vec(), 2);
    s.starts_at("squat", 3, Some(one(6.0))).starts_at("hinge", 2, Some(pair(5.0)));
    s.starts_at("row", 1, Some(one(5.0))).starts_at("chest-press", 1, Some(one(4.0)));
    s
}

/// As [`newcomer`], a session behind her.
pub fn client() -> Story {
    let mut s = newcomer();
    whole(&mut s);
    s
}

fn whole(s: &mut Story) {
    s.trains();
    for slot in SLOTS {
        if !s.is_over(slot) {
            s.does_all(slot, 10, left(3));
        }
    }
    s.ends().settled().days(2);
}

pub fn level(s: &Story, slot: &str) -> u8 {
    s.next(slot).level
}

// -- marks in a session -------------------------------------------------------------------------

#[test]
fn a_cue_there_again_on_another_ladder_is_a_first_one_there() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    s.does("hinge", 8, left(3)).marks("hinge", symptom("doming", None));
    let plan = s.plan("hinge");
    assert_eq!((plan.level, plan.cue), (2, true));
}

#[test]
fn a_mark_speaks_of_the_option_in_hand_and_not_of_the_one_shown() {
    let mut s = client();
    s.trains();
    chooses(&mut s, "squat", "squat-chair");
    s.marks("squat", symptom("heaviness", None));
    assert_eq!(s.plan("squat").level, 0, "below the chair squat that she had chosen");
}

#[test]
fn a_mark_that_names_no_option_speaks_of_the_last_set_of_its_ladder() {
    // The hinge is logged a second after the squat; the mark after both, or in the very second of the squat.
    for earlier in [0, 2] {
        let mut s = client();
        s.trains();
        chooses(&mut s, "squat", "squat-chair");
        s.does("squat", 8, left(3)).does("hinge", 8, left(3));
        s.now -= Duration::seconds(earlier);
        s.says(Payload::SymptomMark {
            run: s.run,
            slot: Some("squat".into()),
            ladder: Some("squat".into()),
            variant: None,
            round: None,
            at_rest: true,
            symptom: symptom("heaviness", None),
        });
        assert_eq!(s.plan("squat").level, 0, "{earlier} seconds earlier");
    }
}

#[test]
fn of_two_devices_that_name_two_drops_the_one_that_wrote_first_is_named() {
    let mut s = client();
    s.trains().does("squat", 8, left(3));
    let first = s.mark_of("squat", symptom("girdle-pain", Some(A::Pain(3))));
    let second = s.mark_of("squat", symptom("heaviness", None));
    let mark = s.tap("squat");
    let run = s.run.unwrap();
    s.corrects(mark, first).on_device(9).corrects(mark, second);
    let verdict = s.with_bench(|b| b.state.effects[&run].verdicts[&mark].clone());
    assert_eq!((verdict.kind.as_str(), verdict.class), ("girdle-pain", Class::Drop));
}

#[test]
fn a_mark_of_no_ladder_is_one_level_for_a_ladder_with_two_slots() {
    let again = Slot { id: "hinge-again".into(), ..slot("hinge", 8, 12, 3) };
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3), again], 2);
    s.starts_at("hinge", 2, Some(pair(5.0))).trains().does("hinge", 8, left(3));
    s.marks_between_slots(symptom("leak-effort", None));
    for slot in ["hinge", "hinge-again"] {
        assert!(!s.is_over(slot), "{slot}");
        assert_eq!(s.plan(slot).level, 1, "{slot}");
    }
}

#[test]
fn a_kind_marked_twice_in_a_session_has_dropped_in_it_all_the_same() {
    let mark = || symptom("girdle-pain", Some(A::Pain(3)));
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", mark()).marks("squat", mark());
    s.ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", mark());
    assert!(s.is_over("squat"), "two sessions running");
}

#[test]
fn the_rest_of_today_stays_unloaded_however_often_the_pelvic_floor_is_marked() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None)).ends();
    s.trains().marks("row", symptom("leak-effort", None));
    assert_eq!(s.plan("chest-press").variant.as_str(), "chest-press-palms");
    let loaded = |s: &Story| match s.turn("chest-press") {
        newel_engine::proposal::Turn::Do(plan) => plan.options.iter().any(|o| o.load != Load::Nothing),
        newel_engine::proposal::Turn::Over(_) => false,
    };
    assert!(!loaded(&s), "a third mark in a second session");
    s.ends();
    assert!(s.rests("hinge"), "before a third session");
}

#[test]
fn unwell_on_the_back_twice_at_the_lowest_level_waits_for_the_coach() {
    let mut s = Story::new();
    s.weeks_pregnant(14).programme(vec![slot("bridge", 8, 12, 3)], 3);
    s.trains().does("bridge", 10, left(4)).marks("bridge", symptom("dizzy-on-back", None));
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-two-legs-incline");
    s.marks("bridge", symptom("dizzy-on-back", None));
    assert!(s.is_over("bridge"));
    s.ends().settled().days(2);
    assert_eq!(s.reasons("bridge"), [R::HoldWaits]);
}

#[test]
fn unwell_on_the_back_with_no_other_position_at_the_lowest_level_waits_for_the_coach() {
    let mut s = Story::new();
    s.weeks_pregnant(14).programme(vec![slot("bridge", 8, 12, 3)], 3);
    s.restricted(RestrictionKind::Variant { variant: "bridge-two-legs-incline".into() });
    s.trains().does("bridge", 10, left(4)).marks("bridge", symptom("dizzy-on-back", None));
    assert!(s.is_over("bridge"), "the incline of a harder level is no way out");
    s.ends().settled().days(2);
    assert_eq!(s.reasons("bridge"), [R::HoldWaits]);
}

#[test]
fn a_set_is_free_of_symptoms_unless_its_ladder_dropped_or_all_of_her_rests() {
    let free = |kind: &str, amount, of: &str| {
        let mut s = client();
        s.trains().does("squat", 8, left(3)).does("row", 8, left(3));
        s.marks("squat", symptom(kind, amount)).ends();
        s.with_bench(|b| b.state.ladders[&of.into()].exposures.last().unwrap().symptom_free)
    };
    for (kind, amount, squat, row) in [
        ("doming", None, true, true),
        ("girdle-pain", Some(A::Pain(3)), false, true),
        ("bulge", None, false, true),
        ("fatigue", None, false, false),
        ("chest-pain", None, false, false),
    ] {
        assert_eq!(free(kind, amount, "squat"), squat, "{kind}: the squat");
        assert_eq!(free(kind, amount, "row"), row, "{kind}: the row");
    }
}

#[test]
fn an_option_that_a_drop_led_to_was_not_her_choice_and_one_taken_after_a_cue_was() {
    let chosen =
        |s: &Story| s.with_bench(|b| b.state.ladders[&"squat".into()].exposures.last().unwrap().chosen);
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    s.does("squat", 8, left(3)).ends();
    assert!(!chosen(&s));
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    chooses(&mut s, "squat", "squat-chair");
    s.does("squat", 8, left(3)).ends();
    assert!(chosen(&s));
}

// -- what belongs to no ladder, and the next morning --------------------------------------------

#[test]
fn the_strictest_of_a_check_in_is_what_it_says_and_of_two_alike_the_first() {
    let verdict = |kinds: [&str; 2]| {
        let mut s = client();
        for kind in kinds {
            s.since_last_time(symptom(kind, None));
        }
        s.checks_in();
        let (run, record) = (s.run.unwrap(), s.last_record());
        s.with_bench(|b| b.state.effects[&run].verdicts[&record].clone())
    };
    for kinds in [["nausea", "heaviness"], ["heaviness", "nausea"]] {
        let of = verdict(kinds);
        assert_eq!((of.kind.as_str(), of.class), ("heaviness", Class::Drop), "{kinds:?}");
    }
    assert_eq!(verdict(["heaviness", "leak-effort"]).kind.as_str(), "heaviness");
}

#[test]
fn more_than_last_time_where_it_is_usual_for_her_is_held_though_last_time_was_no_drop() {
    let mut s = client();
    s.screened(&[], &[("heaviness", A::Little)]);
    s.since_last_time(symptom("heaviness", Some(A::Little)));
    whole(&mut s);
    s.since_last_time(symptom("heaviness", Some(A::Clearly))).checks_in();
    assert!(s.is_closed(), "it grows");
    let mut s = client();
    s.screened(&[], &[("heaviness", A::Little)]);
    whole(&mut s);
    s.since_last_time(symptom("heaviness", Some(A::Clearly))).checks_in();
    assert!(!s.is_closed(), "the first time it is a level down");
}

#[test]
fn what_is_said_milder_of_the_same_days_does_not_take_back_a_drop() {
    let mut s = client();
    s.marks_at_home(symptom("knee-pain", Some(A::Pain(4))));
    s.marks_at_home(symptom("knee-pain", Some(A::Pain(2)))).days(1);
    whole(&mut s);
    s.marks_at_home(symptom("knee-pain", Some(A::Pain(4))));
    assert!(s.is_closed(), "a session later it drops again");
}

#[test]
fn what_is_said_at_the_end_of_a_session_and_at_the_next_check_in_is_of_one_session() {
    // A second after her only set, or in the very second of it.
    for earlier in [0, 1] {
        let mut s = client();
        s.trains().does("squat", 8, left(3));
        s.now -= Duration::seconds(earlier);
        s.marks_between_slots(symptom("leak-effort", None)).ends();
        s.days(2).since_last_time(symptom("leak-effort", None)).checks_in();
        assert!(!s.is_closed(), "{earlier} seconds earlier");
    }
}

#[test]
fn what_is_still_there_next_morning_lowers_the_ladder_that_it_came_on_and_no_other() {
    let mut s = client();
    let pain = || symptom("wrist-pain", Some(A::Pain(2)));
    s.trains().does("row", 8, left(3)).does("squat", 8, left(3)).marks("row", pain());
    assert_eq!(s.plan("row").level, 1, "so little is a note");
    s.ends().not_settled(vec![pain()]).days(2);
    assert_eq!((level(&s, "row"), level(&s, "squat")), (0, 3));
}

// -- how strictly -------------------------------------------------------------------------------

#[test]
fn a_set_ends_with_what_drops_and_goes_on_with_what_is_noted() {
    let s = Story::new();
    let ends = |kind: &str, amount, again| {
        let before = Before { again, ..Before::default() };
        judge(&s.rules, &Intake::default(), &symptom(kind, amount), before).ends_set
    };
    assert!(!ends("joint-pain", Some(A::Pain(2)), false), "a note");
    assert!(ends("joint-pain", Some(A::Pain(3)), false), "a drop");
    assert!(!ends("doming", None, false), "a cue");
    assert!(ends("doming", None, true), "the cue did not help");
}

#[test]
fn a_class_is_said_to_be_the_kinds_own_where_the_morning_makes_it_no_stricter() {
    let s = Story::new();
    let because = |pain| {
        let before = Before { next_morning: true, ..Before::default() };
        judge(&s.rules, &Intake::default(), &symptom("wrist-pain", Some(A::Pain(pain))), before).because
    };
    assert_eq!(because(2), Because::NextMorning, "a note that drops the morning after");
    assert_eq!(because(3), Because::Kind, "a drop as it is");
}

#[test]
fn as_much_as_last_time_is_not_more() {
    // The coach lets a drop come in four sessions running before it holds.
    let mut s = client();
    s.screened(&[], &[("heaviness", A::Little)]);
    s.says(Payload::RuleSetting(noted(number("symptom.repeat", "sessions", 4.0))));
    s.since_last_time(symptom("heaviness", Some(A::Clearly)));
    whole(&mut s);
    s.since_last_time(symptom("heaviness", Some(A::Clearly)));
    whole(&mut s);
    assert!(!s.is_closed(), "as much as last time");
    s.since_last_time(symptom("heaviness", Some(A::Lot))).checks_in();
    assert!(s.is_closed(), "more than last time");
}
