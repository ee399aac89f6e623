//! What an answer or a clearance leaves behind.

use super::{SLOTS, client, level, rest_of_it};
use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount as A};

/// What she held last on each ladder.
fn held_last(s: &Story) -> Vec<f64> {
    let last =
        |slot: &str| s.with_bench(|b| b.state.ladders[&slot.into()].exposures.last().cloned()).unwrap();
    SLOTS.iter().map(|slot| last(slot)).map(|e| s.external_of(&e.variant, &e.load)).collect()
}

fn levels(s: &Story) -> Vec<u8> {
    SLOTS.iter().map(|slot| level(s, slot)).collect()
}

#[test]
fn going_on_after_a_hold_is_a_step_lower_wherever_it_was_said() {
    for said in 0..3 {
        let mut s = client();
        let before = levels(&s);
        match said {
            0 => {
                s.since_last_time(symptom("girdle-pain", Some(A::Pain(7)))).checks_in();
            }
            1 => {
                s.marks_at_home(symptom("fatigue", None));
            }
            _ => {
                s.trains();
                rest_of_it(&mut s);
                s.ends().not_settled(vec![symptom("girdle-pain", Some(A::Pain(7)))]);
            }
        }
        assert!(s.is_closed(), "case {said}");
        s.hold_answered(HoldAnswer::GoOn).days(1);
        assert!(!s.is_closed(), "case {said}");
        for ((slot, before), held) in SLOTS.iter().zip(&before).zip(held_last(&s)) {
            let next = s.next(slot);
            assert_eq!(next.level + 1, *before, "case {said}: {slot}");
            assert!(s.external(&next) <= held + 1e-9, "case {said}: {slot}");
        }
    }
}

#[test]
fn going_on_after_a_hold_of_the_lower_body_steps_the_lower_body_down() {
    let mut s = client();
    let before = levels(&s);
    s.trains().does("row", 10, left(3)).marks("row", symptom("bulge", None));
    assert!(s.is_over("squat"));
    s.ends().settled();
    s.hold_answered(HoldAnswer::GoOn).days(1);
    let after = levels(&s);
    for (n, slot) in SLOTS.iter().enumerate() {
        // The row was marked.
        let down = if *slot == "chest-press" { 0 } else { 1 };
        assert_eq!(after[n] + down, before[n], "{slot}");
    }
}

#[test]
fn a_hold_at_the_lowest_level_that_is_answered_goes_on_there() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2);
    s.trains().does_all("bridge", 10, left(3)).ends().settled().days(2);
    s.since_last_time(symptom("fatigue", None)).checks_in();
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::GoOn);
    assert_eq!(level(&s, "bridge"), 0);
    assert!(!s.is_closed() && !s.rests("bridge"), "one answer is enough");
}

#[test]
fn nothing_grows_the_first_time_after_a_hold_that_had_nowhere_lower_to_go() {
    // Two whole sessions at the lowest level have earned the next one; then she is worn out.
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2);
    s.session_of("squat", 12, plenty()).session_of("squat", 12, plenty());
    assert_eq!(level(&s, "squat"), 1);
    s.marks_at_home(symptom("fatigue", None));
    s.hold_answered(HoldAnswer::GoOn).days(1);
    assert_eq!(level(&s, "squat"), 0, "no level up on what was done before it");
    // Nor a heavier load of the kit, nor a set to find one.
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 8.0])).programme(vec![slot("row", 8, 12, 3)], 3);
    s.session_of("row", 12, plenty());
    let held = s.with_bench(|b| b.state.ladders[&"row".into()].exposures.last().unwrap().load.clone());
    s.marks_at_home(symptom("fatigue", None));
    s.hold_answered(HoldAnswer::GoOn).days(1);
    assert_eq!(s.next("row").load, held);
    assert!(s.reasons("row").contains(&R::AfterSymptom));
    s.trains().does("row", 12, plenty());
    assert_eq!(s.plan("row").load, held);
}

#[test]
fn after_a_red_flag_is_cleared_she_begins_a_step_lower() {
    let mut s = client();
    let before = levels(&s);
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("chest-pain", None)).ends();
    s.days(7).cleared().days(1);
    for ((slot, before), held) in SLOTS.iter().zip(&before).zip(held_last(&s)) {
        let next = s.next(slot);
        assert_eq!(next.level + 1, *before, "{slot}");
        assert!(s.external(&next) <= held + 1e-9, "{slot}");
    }
    // Once, and not with each clearance that comes later.
    s.days(1).cleared().days(1);
    assert_eq!(level(&s, "squat") + 1, before[0]);
}

#[test]
fn the_lower_body_is_not_symptom_free_in_a_session_that_held_it() {
    let mut s = client();
    s.trains();
    s.does_all("squat", 10, left(3)).does_all("hinge", 10, left(3));
    s.does("row", 10, left(3)).marks("row", symptom("stool-wind", None)).ends().settled();
    let free =
        |slot: &str| s.with_bench(|b| b.state.ladders[&slot.into()].exposures.last().unwrap().symptom_free);
    assert!(!free("squat") && !free("hinge") && !free("row"));
    let mut s = client();
    s.trains().does_all("chest-press", 10, left(3));
    s.does("squat", 10, left(3)).marks("squat", symptom("stool-wind", None)).ends().settled();
    assert!(s.with_bench(|b| b.state.ladders[&"chest-press".into()].exposures.last().unwrap().symptom_free));
}

#[test]
fn a_sign_that_was_named_late_is_not_cleared_by_what_was_said_before() {
    let mut s = client();
    s.trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.ends().days(3).cleared().days(1);
    assert!(!s.is_closed());
    s.corrects(mark, said);
    assert!(s.is_closed(), "the clearance was of something else");
    s.days(1).cleared();
    assert!(!s.is_closed());
    // A check-in that is put right later, too.
    let mut s = client();
    s.checks_in();
    let (run, check_in) = (s.run.unwrap(), s.last_record());
    s.begins().ends().days(2).cleared().days(1);
    s.corrects(
        check_in,
        Payload::CheckIn {
            run,
            readiness: newel_engine::record::Readiness::Usual,
            symptoms: vec![symptom("chest-pain", None)],
            today: Vec::new(),
        },
    );
    assert!(s.is_closed());
    // What was named before the clearance stays cleared when its words are put right... by another sign it is not.
    s.days(1).cleared();
    assert!(!s.is_closed());
}

#[test]
fn what_was_confirmed_and_cleared_stays_cleared_when_it_is_talked_down_later() {
    let mut s = client();
    s.trains();
    let mark = s.tap("squat");
    let said = s.mark_of("squat", symptom("chest-pain", None));
    s.corrects(mark, said).ends().days(2).cleared().days(1);
    assert!(!s.is_closed());
    let latest = s.mark_of_record(mark, symptom("doming", None));
    s.corrects(mark, latest);
    assert!(!s.is_closed(), "nothing new was said that closes");
}

#[test]
fn an_answer_speaks_of_what_was_known_when_it_was_given() {
    let mut s = client();
    s.since_last_time(symptom("bulge", None)).checks_in();
    let (run, check_in) = (s.run.unwrap(), s.last_record());
    s.begins().ends();
    assert!(s.rests("squat"));
    s.hold_answered(HoldAnswer::GoOn).days(1);
    assert!(!s.rests("squat"));
    let usual = newel_engine::record::Readiness::Usual;
    let symptoms = vec![symptom("bulge", None), symptom("fatigue", None)];
    s.corrects(check_in, Payload::CheckIn { run, readiness: usual, symptoms, today: Vec::new() });
    assert!(s.is_closed(), "nobody has answered this one");
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed());
}

#[test]
fn a_restart_lighter_opens_the_ladder_and_nothing_else_that_the_record_held() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3), slot("row", 8, 12, 3)], 2).owns(full_kit());
    s.trains().does_all("bridge", 10, left(3)).does_all("row", 10, left(3)).ends().settled().days(2);
    s.since_last_time(symptom("heaviness", None)).since_last_time(symptom("fatigue", None)).checks_in();
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::RestartLighter);
    assert!(s.is_closed(), "the tiredness waits for an answer of its own");
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed() && !s.rests("bridge"));
}

#[test]
fn a_restart_with_nothing_light_enough_takes_the_lightest_of_its_level() {
    // Pain of 7 with a bar of 10 kg at level 3; a fifth less is 8 kg, and two dumbbells are 10 kg at the least.
    let mut s = Story::new();
    let bar = newel_engine::kit::Barbell { bar: kg(10.0), plates: Vec::new() };
    s.owns(newel_engine::kit::Kit { barbell: Some(bar), ..dumbbells(&[5.0]) });
    s.programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 3, None);
    s.session_of("hinge", 10, left(3));
    s.trains().does("hinge", 8, left(3)).marks("hinge", symptom("girdle-pain", Some(A::Pain(7))));
    s.ends().settled();
    s.hold_answered(HoldAnswer::RestartLighter).days(1);
    let next = s.next("hinge");
    assert_eq!((next.level, s.external(&next), next.target.count()), (2, 10.0, 8));
}

#[test]
fn after_a_mark_with_nothing_held_she_goes_on_with_nothing_held() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0]))
        .programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3), slot("overhead-press", 8, 12, 3)], 2)
        .starts_at("row", 1, Some(one(4.0)))
        .starts_at("overhead-press", 0, Some(one(6.0)));
    s.trains();
    for slot in ["squat", "row", "overhead-press"] {
        s.does_all(slot, 10, left(3));
    }
    s.ends().settled().days(2);
    assert!(s.external(&s.next("overhead-press")) > 0.0);
    // Two marks of the pelvic floor leave the rest unloaded, and then the shoulder hurts without a load, too.
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
    s.does("overhead-press", 8, left(3));
    s.marks("overhead-press", symptom("shoulder-pain", Some(A::Pain(7)))).ends().settled();
    while s.with_bench(|b| b.state.open_holds().next().is_some()) {
        s.hold_answered(HoldAnswer::GoOn);
    }
    s.days(1);
    let next = s.next("overhead-press");
    assert_eq!((next.level, s.external(&next)), (0, 0.0), "{}", next.variant);
}

#[test]
fn reps_and_help_stay_as_they_were_the_first_time_after_a_symptom() {
    // Body mass alone, at the lowest level.
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3)], 2).session_of("squat", 9, plenty());
    assert_eq!(s.next("squat").target.count(), 10);
    s.marks_at_home(symptom("fatigue", None)).hold_answered(HoldAnswer::GoOn).days(1);
    assert!(s.next("squat").target.count() <= 9);
}

#[test]
fn a_hold_that_a_clearance_opened_waits_again_when_it_has_run_out() {
    let mut s = Story::new();
    s.trains().does("squat", 8, left(3));
    s.marks("squat", symptom("fatigue", None)).ends();
    assert!(s.is_closed());
    s.days(2);
    let on = s.today();
    s.says(Payload::Clearance {
        who: "midwife".into(),
        on,
        said: "for two weeks".into(),
        speaks_of: None,
        until: Some(on + chrono::Duration::days(14)),
    });
    assert!(!s.is_closed());
    s.days(1).trains().does("squat", 8, left(5)).ends();
    s.days(15);
    assert!(s.is_closed(), "what was cleared until a day waits again after it");
    s.cleared();
    assert!(!s.is_closed());
}
