//! What a symptom does (DESIGN 5.5 and the engine rules of the symptom list).

use crate::story::*;
use newel_engine::proposal::Turn;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount as A};
use newel_engine::rules::Scope;
use newel_engine::stage::BirthMode;

/// A squat at level 3, a hinge at level 2, a row and a press, two sessions behind her.
fn client() -> Story {
    let mut s = Story::new();
    s.owns(full_kit())
        .programme(
            vec![
                slot("squat", 8, 12, 3),
                slot("hinge", 8, 12, 3),
                slot("row", 8, 12, 3),
                slot("chest-press", 8, 12, 3),
                slot("bridge", 8, 12, 3),
                timed("breathing", 60, 90),
            ],
            2,
        )
        .starts_at("squat", 3, Some(one(6.0)))
        .starts_at("hinge", 2, Some(pair(5.0)))
        .starts_at("row", 1, Some(one(5.0)))
        .starts_at("chest-press", 1, Some(one(4.0)))
        .starts_at("bridge", 2, Some(one(6.0)));
    whole(&mut s);
    s
}

const SLOTS: [&str; 5] = ["squat", "hinge", "row", "chest-press", "bridge"];

/// A whole session, settled, two days on.
fn whole(s: &mut Story) {
    s.trains();
    rest_of_it(s);
    s.ends().settled().days(2);
}

fn rest_of_it(s: &mut Story) {
    for slot in SLOTS {
        if !s.is_over(slot) {
            s.does_all(slot, 10, left(3));
        }
    }
    if !s.is_over("breathing") {
        s.does_all("breathing", 60, None);
    }
}

fn level(s: &Story, slot: &str) -> u8 {
    s.next(slot).level
}

#[test]
fn a_second_mark_on_the_ladder_ends_it_for_the_day() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert_eq!(s.plan("squat").level, 2);
    s.marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert!(s.is_over("squat"));
    assert!(!s.is_over("row"), "only that ladder");
    assert_eq!(s.over_because("squat"), [R::EndsToday]);
}

#[test]
fn a_tap_alone_is_a_drop_before_anything_is_asked() {
    let mut s = client();
    s.trains().does("squat", 8, left(3));
    let tap = s.tap("squat");
    assert_eq!(s.plan("squat").level, 2);
    s.withdraws(tap);
    assert_eq!(s.plan("squat").level, 3, "not meant");
}

#[test]
fn a_cue_stays_and_there_again_it_drops() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("doming", None));
    let plan = s.plan("squat");
    assert_eq!((plan.level, plan.cue), (3, true));
    s.marks("squat", symptom("doming", None));
    assert_eq!(s.plan("squat").level, 2);
}

#[test]
fn mild_belly_discomfort_again_on_another_movement_holds() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("belly-mild", None));
    assert!(!s.is_over("squat"));
    s.does("hinge", 8, left(3)).marks("hinge", symptom("belly-mild", None));
    assert!(s.is_over("hinge"), "again is again, whatever she was doing");
}

#[test]
fn the_same_drop_in_two_sessions_running_holds() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    assert!(!s.rests("squat"));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    assert!(s.is_over("squat"));
    s.ends().settled().days(2);
    assert!(s.rests("squat"));
    assert!(!s.rests("row"));
}

#[test]
fn another_kind_on_the_ladder_between_does_not_hide_the_repeat() {
    // Heaviness and then a leak in the first session; heaviness again in the next.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.marks("squat", symptom("something-else", None)).ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    assert!(s.is_over("squat"), "the first kind counts as well as the last");
}

#[test]
fn the_same_kind_on_another_ladder_is_no_repeat_there() {
    let mut s = client();
    s.trains().does("row", 8, left(3)).marks("row", symptom("shoulder-pain", Some(A::Pain(4))));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.trains()
        .does("chest-press", 8, left(3))
        .marks("chest-press", symptom("shoulder-pain", Some(A::Pain(4))));
    assert!(!s.is_over("chest-press"), "a level down, as a first drop there");
}

#[test]
fn a_repeat_counts_even_if_the_first_mark_came_before_any_set() {
    let mut s = client();
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.ends().settled().days(2);
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    assert!(s.is_over("squat"));
}

#[test]
fn a_third_session_running_holds_again() {
    let mut s = client();
    for n in 0..3 {
        s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
        assert_eq!(s.is_over("squat"), n > 0, "session {n}");
        s.ends().settled();
        if n > 0 {
            s.hold_answered(HoldAnswer::GoOn);
        }
        s.days(2);
    }
}

#[test]
fn a_second_pelvic_floor_mark_leaves_the_rest_unloaded_lying_or_seated() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    assert!(!s.is_over("hinge"));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
    for slot in ["hinge", "squat"] {
        assert!(s.is_over(slot), "{slot} has no unloaded, seated or lying option");
    }
    let plan = s.plan("bridge");
    assert_eq!(s.external_of(&plan.variant, &plan.load), 0.0);
    assert!(plan.level <= 2, "never a harder one");
    let plan = s.plan("chest-press");
    assert_eq!((plan.variant.as_str(), s.external_of(&plan.variant, &plan.load)), ("chest-press-palms", 0.0));
}

#[test]
fn a_session_unloaded_by_a_symptom_elsewhere_moves_no_level_of_the_rest() {
    let mut s = client();
    let before = level(&s, "chest-press");
    // Twice running: it must not look as if she chose the easier option.
    for _ in 0..2 {
        s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
        s.does("row", 8, left(3)).marks("row", symptom("leak-effort", None));
        assert_eq!(s.plan("chest-press").variant.as_str(), "chest-press-palms");
        s.does_all("chest-press", 12, left(5)).ends().settled().days(2);
        assert_eq!(
            level(&s, "chest-press"),
            before,
            "{:?} {:?}",
            s.next("chest-press"),
            s.reasons("chest-press")
        );
    }
}

#[test]
fn two_marks_that_are_not_of_the_pelvic_floor_leave_the_rest_as_it_is() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2))));
    s.does("row", 8, left(3)).marks("row", symptom("wrist-pain", Some(A::Pain(4))));
    assert!(!s.is_over("hinge"));
}

#[test]
fn holds_close_what_their_scope_names() {
    for (kind, amount, closed, open) in [
        ("bulge", None, vec!["squat", "hinge", "bridge"], vec!["row", "chest-press"]),
        ("girdle-pain", Some(A::Pain(7)), vec!["squat"], vec!["hinge", "row"]),
    ] {
        let mut s = client();
        s.trains().does("squat", 8, left(3)).marks("squat", symptom(kind, amount));
        for slot in &closed {
            assert!(s.is_over(slot), "{kind} today: {slot}");
        }
        for slot in &open {
            assert!(!s.is_over(slot), "{kind} today: {slot}");
        }
        s.ends().settled().days(2);
        for slot in &closed {
            assert!(s.rests(slot), "{kind} next time: {slot}");
        }
        for slot in &open {
            assert!(!s.rests(slot), "{kind} next time: {slot}");
        }
        s.hold_answered(HoldAnswer::GoOn);
        assert!(closed.iter().all(|slot| !s.rests(slot)), "{kind}, answered");
        assert!(level(&s, "squat") < 3, "a level down as after any drop");
    }
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("fatigue", None));
    assert!(SLOTS.iter().all(|slot| s.is_over(slot)));
    s.ends().days(2);
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed());
}

#[test]
fn keep_resting_keeps_it_shut() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(8)))).ends();
    s.hold_answered(HoldAnswer::KeepResting).days(10);
    assert!(s.rests("squat"));
}

#[test]
fn a_hold_that_the_coach_answers_in_mid_session_leaves_today_as_it_is() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(8))));
    s.hold_answered(HoldAnswer::GoOn);
    assert!(s.is_over("squat"));
}

// -- red ----------------------------------------------------------------------------------------

#[test]
fn red_closes_until_a_clearance() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("chest-pain", None));
    assert!(SLOTS.iter().all(|slot| matches!(s.turn(slot), Turn::Over(_))));
    assert!(s.flow().now.is_none());
    s.ends().days(60);
    assert!(s.is_closed());
    assert!(s.proposal().slots.is_empty());
    s.cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_clearance_from_before_the_sign_clears_nothing() {
    let mut s = client();
    let old = s.today();
    s.days(3).trains().marks("squat", symptom("chest-pain", None)).ends().days(1);
    s.says(Payload::Clearance { who: "clinic".into(), on: old, said: "an old letter".into() });
    assert!(s.is_closed());
    s.cleared();
    assert!(!s.is_closed());
    s.days(1).trains().marks("squat", symptom("chest-pain", None)).ends();
    assert!(s.is_closed(), "and it does not clear a later one");
}

#[test]
fn red_can_be_taken_back_until_the_session_is_ended_and_not_after() {
    let mut s = client();
    s.trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said);
    assert!(s.is_closed());
    s.withdraws(mark);
    assert!(!s.is_closed(), "not meant, and still in the session");

    let mut s = client();
    s.trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said).ends().withdraws(mark);
    assert!(s.is_closed());
    let harmless = Payload::Note { text: "nothing".into() };
    s.corrects(mark, harmless);
    assert!(s.is_closed(), "nor talked down into another kind of record");
}

#[test]
fn ending_a_session_twice_does_not_open_the_seal() {
    let mut s = client();
    s.trains();
    let run = s.run.unwrap();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said).ends().withdraws(mark);
    s.says(Payload::SessionEnded { run, effort: None, minutes: None, note: None });
    assert!(s.is_closed());
}

#[test]
fn red_at_check_in_and_next_morning_and_between_sessions_closes() {
    let mut s = client();
    s.since_last_time(symptom("headache", None)).checks_in();
    assert!(s.is_closed());
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("calf-one-sided", None)]);
    assert!(s.is_closed());
    let mut s = client();
    s.marks_at_home(symptom("bleeding", None));
    assert!(s.is_closed(), "a mark belongs to no session and counts all the same");
    s.days(1).cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_check_in_that_named_a_red_flag_stands_after_the_session() {
    let mut s = client();
    s.since_last_time(symptom("headache", None)).checks_in();
    let record = s.last_record();
    s.ends().withdraws(record);
    assert!(s.is_closed());
    // What was no red flag can be put right.
    let mut s = client();
    s.since_last_time(symptom("heaviness", None)).checks_in();
    let record = s.last_record();
    s.begins().ends();
    let down = level(&s, "squat");
    s.withdraws(record);
    assert!(level(&s, "squat") > down);
}

// -- two devices --------------------------------------------------------------------------------

#[test]
fn of_two_corrections_the_stricter_holds() {
    for swap in [false, true] {
        let mut s = client();
        s.trains().does("squat", 8, left(3));
        let mild = s.mark_of("squat", symptom("girdle-pain", Some(A::Pain(2))));
        let hard = s.mark_of("squat", symptom("girdle-pain", Some(A::Pain(8))));
        let mark = s.tap("squat");
        let (first, second) = if swap { (hard, mild) } else { (mild, hard) };
        s.corrects(mark, first).on_device(9).corrects(mark, second);
        assert!(s.is_over("squat"), "8 of 10 holds, whichever came first");
    }
    // Of a set: fewer reps to failure.
    let mut s = client();
    s.trains().does("squat", 10, left(3));
    let set = s.last_record();
    let done = |reps| {
        let Payload::SetDone(mut d) = s.records.iter().find(|r| r.id == set).unwrap().payload.clone() else {
            panic!("a set")
        };
        d.reps = reps;
        Payload::SetDone(d)
    };
    let (low, high) = (done(6), done(12));
    s.corrects(set, high).on_device(9).corrects(set, low);
    let history = newel_engine::history::History::of(&s.records);
    assert_eq!(history.run(s.run.unwrap()).unwrap().sets[0].set.reps, 6);
}

#[test]
fn of_two_check_ins_corrected_side_by_side_the_stricter_readiness_holds() {
    for (first, second) in [("tired", "usual"), ("usual", "tired")] {
        let of = |name: &str| match name {
            "tired" => newel_engine::record::Readiness::Tired,
            _ => newel_engine::record::Readiness::Usual,
        };
        let mut s = client();
        s.checks_in();
        let (record, run) = (s.last_record(), s.run.unwrap());
        let says = |name| Payload::CheckIn { run, readiness: of(name), symptoms: vec![] };
        let (a, b) = (says(first), says(second));
        s.corrects(record, a).on_device(9).corrects(record, b);
        assert_eq!(s.with_bench(|b| b.readiness()), Some(of("tired")));
    }
}

#[test]
fn of_two_next_day_answers_both_sets_of_symptoms_count() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("poor-sleep", None)]);
    s.on_device(9).not_settled(vec![symptom("chest-pain", None)]);
    assert!(s.is_closed());
}

// -- check-in and next morning ------------------------------------------------------------------

#[test]
fn a_drop_at_check_in_concerns_all_ladders_by_one_level() {
    let mut s = client();
    let before: Vec<u8> = SLOTS.iter().map(|slot| level(&s, slot)).collect();
    s.since_last_time(symptom("heaviness", None)).since_last_time(symptom("leak-effort", None)).checks_in();
    for (slot, before) in SLOTS.iter().zip(before) {
        assert_eq!(level(&s, slot) + 1, before, "{slot}: two symptoms are one level");
    }
}

#[test]
fn a_mark_without_a_ladder_concerns_all() {
    let mut s = client();
    let before: Vec<u8> = SLOTS.iter().map(|slot| level(&s, slot)).collect();
    s.marks_at_home(symptom("heaviness", None));
    for (slot, before) in SLOTS.iter().zip(&before) {
        assert_eq!(level(&s, slot) + 1, *before, "{slot}");
    }
    let mut s = client();
    s.trains();
    let run = s.run;
    s.says(Payload::SymptomMark {
        run,
        slot: None,
        ladder: None,
        variant: None,
        round: None,
        at_rest: true,
        symptom: symptom("girdle-pain", Some(A::Pain(3))),
    });
    for (slot, before) in SLOTS.iter().zip(&before) {
        assert_eq!(s.plan(slot).level + 1, *before, "{slot}, for the rest of today");
    }
}

#[test]
fn at_the_lowest_level_a_drop_at_check_in_holds_all_but_breathing() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3), timed("breathing", 60, 90)], 2);
    s.trains().does_all("bridge", 10, left(3)).does_all("breathing", 60, None).ends().settled().days(2);
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert!(s.rests("bridge"));
    assert!(!s.rests("breathing"));
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.rests("bridge"));
}

#[test]
fn one_answer_answers_all_that_one_record_held() {
    let mut s = client();
    s.since_last_time(symptom("fatigue", None)).since_last_time(symptom("bulge", None)).checks_in();
    assert!(s.is_closed());
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.is_closed() && !s.rests("squat"));
}

#[test]
fn still_there_next_morning() {
    // Heaviness: a drop in the session, a hold when it is still there.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None)).ends();
    s.not_settled(vec![symptom("heaviness", None)]).days(1);
    assert!(s.rests("squat"));
    assert!(!s.rests("row"));
    // New next morning and of no ladder: all.
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("leak-effort", None)]).days(1);
    assert_eq!((level(&s, "squat"), level(&s, "hinge"), level(&s, "row")), (2, 1, 0));
    // Marked on two ladders: both.
    let mut s = client();
    s.trains().does("row", 8, left(3)).marks("row", symptom("girdle-pain", Some(A::Pain(2))));
    s.does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(2)))).ends();
    s.not_settled(vec![symptom("girdle-pain", Some(A::Pain(2)))]).days(1);
    assert!(s.rests("row") && s.rests("squat"));
    assert!(!s.rests("hinge"));
}

#[test]
fn a_marked_ladder_goes_down_one_level_and_no_more_for_the_same_morning() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("leak-effort", None)).ends();
    s.not_settled(vec![symptom("leak-effort", None)]).days(1);
    assert_eq!(level(&s, "squat"), 2);
    s.since_last_time(symptom("leak-effort", None)).checks_in();
    assert_eq!(level(&s, "squat"), 2, "nothing was trained in between");
}

#[test]
fn not_settled_without_a_word_speaks_of_what_was_marked() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None)).ends();
    s.not_settled(vec![]).days(1);
    assert!(s.rests("squat"));
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![]).days(1);
    assert_eq!(level(&s, "squat"), 2, "unsaid is the stricter");
}

#[test]
fn a_next_morning_answer_that_comes_before_its_session_counts() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends();
    s.not_settled(vec![symptom("chest-pain", None)]);
    // The clock of the phone was set back between the two.
    let last = s.records.len() - 1;
    s.records[last].at -= chrono::Duration::days(30);
    assert!(s.is_closed());
}

// -- usual symptoms -----------------------------------------------------------------------------

fn with_usual(kind: &str, amount: A) -> Story {
    let mut s = client();
    s.screened(&[], &[(kind, amount)]);
    s
}

#[test]
fn at_the_baseline_the_level_stays_and_something_else_changes() {
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    let plan = s.plan("squat");
    assert_eq!((plan.level, plan.cue), (3, true));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    assert_eq!(level(&s, "squat"), 3);
    // Left out counts as clearly.
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", None));
    assert_eq!(s.plan("squat").level, 3);
}

#[test]
fn above_the_baseline_or_there_again_or_there_next_morning_drops() {
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    assert_eq!(s.plan("squat").level, 2, "above");
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    assert_eq!(s.plan("squat").level, 2, "a cue that did not help");
    let mut s = with_usual("heaviness", A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little))).ends();
    s.not_settled(vec![symptom("heaviness", Some(A::Little))]).days(1);
    assert_eq!(level(&s, "squat"), 2, "there next morning");
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Lot))).ends();
    s.not_settled(vec![symptom("heaviness", Some(A::Lot))]).days(1);
    assert!(s.rests("squat"), "more than usual, and there next morning");
}

#[test]
fn growing_from_session_to_session_holds() {
    let mut s = with_usual("heaviness", A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly)));
    assert!(s.is_over("squat"), "at the usual amount last time, above it now");
}

// -- position -----------------------------------------------------------------------------------

#[test]
fn unwell_on_the_back_takes_another_position_from_then_on() {
    let mut s = Story::new();
    s.weeks_pregnant(14)
        .owns(full_kit())
        .programme(vec![slot("bridge", 8, 12, 3)], 3)
        .starts_at("bridge", 1, None);
    assert_eq!(s.next("bridge").variant.as_str(), "bridge-band", "flat, before 20 weeks");
    s.trains().does("bridge", 10, left(4)).marks("bridge", symptom("dizzy-on-back", None));
    let plan = s.plan("bridge");
    assert!(plan.variant.as_str().ends_with("-incline"), "{}", plan.variant);
    s.does("bridge", 10, left(4)).ends().settled().days(2);
    assert!(s.next("bridge").variant.as_str().ends_with("-incline"));
    // At the lowest level too there is another position.
    let mut s = Story::new();
    s.weeks_pregnant(14).programme(vec![slot("bridge", 8, 12, 3)], 3);
    s.trains().does("bridge", 10, left(4)).marks("bridge", symptom("dizzy-on-back", None));
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-two-legs-incline");
    s.ends().settled().days(2);
    assert_eq!(s.next("bridge").variant.as_str(), "bridge-two-legs-incline");
}

#[test]
fn the_scope_of_each_hold_is_in_the_pack() {
    let s = Story::new();
    for (kind, scope) in [
        ("fatigue", Scope::All),
        ("dizzy-brief", Scope::All),
        ("bp-high", Scope::All),
        ("wound-infection", Scope::All),
        ("bleeding-heavier", Scope::All),
        ("bulge", Scope::LowerBody),
        ("stool-wind", Scope::LowerBody),
        ("girdle-pain", Scope::Ladder),
        ("heaviness", Scope::Ladder),
    ] {
        assert_eq!(s.rules.symptom(&kind.into()).unwrap().scope, scope, "{kind}");
    }
}

#[test]
fn a_birth_makes_a_fresh_start() {
    let mut s = client();
    whole(&mut s);
    assert_eq!(level(&s, "squat"), 3);
    s.starts.clear();
    s.overridden("squat", Some(4), Some(pair(8.0)));
    s.says(Payload::TenReps { variant: "squat-goblet".into(), load: one(8.0) });
    s.days(30 * 7);
    s.birth_weeks_ago(8, BirthMode::Vaginal);
    let next = s.next("squat");
    assert_eq!(next.level, 0, "every ladder starts anew, and what the coach set before is of before");
    assert!(next.reserve.unwrap() >= 5.0);
    assert!(s.reasons("squat").contains(&R::FreshStart));
    assert!(s.with_bench(|b| b.state.trackers.is_empty()));
    s.overridden("squat", Some(3), None);
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (3, 2.0), "the lightest: her answer is of before the birth");
    s.overridden("squat", Some(3), Some(one(4.0)));
    assert_eq!(s.external(&s.next("squat")), 4.0, "the coach's start load");
}
