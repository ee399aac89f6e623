//! Where she is in a session, and how long it takes, worked out by hand.

use crate::pinned_levels::chooses;
use crate::story::*;
use chrono::Duration;
use newel_engine::flow::{left_out_when_short, minutes, next_day_asked, open_run};
use newel_engine::history::History;
use newel_engine::programme::{Block, BlockForm, Slot, Tempo};
use newel_engine::record::Side;
use newel_engine::stage::BirthMode;

fn now(s: &Story) -> (String, u8, Option<Side>) {
    let flow = s.flow();
    let step = &flow.steps[flow.now.expect("something is in hand")];
    (step.slot.to_string(), step.round, step.side)
}

/// The slots as one block that goes round, with so many seconds between two of them.
fn superset(s: &mut Story, slots: Vec<Slot>, rounds: u8, between: u16) {
    s.programme(slots.clone(), rounds);
    let blocks = &mut s.programme.sessions[0].blocks;
    let block =
        Block { form: BlockForm::Superset, rest_between_seconds: between, slots, ..blocks[0].clone() };
    *blocks = vec![block];
}

#[test]
fn a_session_is_open_from_its_check_in_until_its_end_or_for_twelve_hours() {
    let open = |s: &Story| open_run(&History::of(&s.records), &s.rules, s.now).map(|r| r.id);
    let mut s = Story::new();
    s.checks_in();
    let run = s.run;
    assert_eq!(open(&s), run, "she has said how she is");
    s.begins();
    assert_eq!(open(&s), run);
    let begun = s.now;
    // The check-in was written two seconds before the proposal.
    s.now = begun + Duration::hours(12) - Duration::seconds(3);
    assert_eq!(open(&s), run);
    s.now = begun + Duration::hours(12) - Duration::seconds(2);
    assert_eq!(open(&s), None);
    s.now = begun;
    s.ends();
    assert_eq!(open(&s), None);
    s.marks_at_home(symptom("leak-urge", None));
    assert_eq!(open(&s), None, "a mark at home begins no session");
}

#[test]
fn the_next_day_is_asked_for_from_the_next_day_to_the_seventh() {
    let mut s = Story::new();
    s.trains().does("squat", 10, left(3)).ends();
    let on = s.today();
    let asked = |s: &Story, days| {
        next_day_asked(&History::of(&s.records), &s.rules, on + Duration::days(days)).is_some()
    };
    assert_eq!([0, 1, 2, 7, 8].map(|days| asked(&s, days)), [false, true, true, true, false]);
    s.settled();
    assert!(!asked(&s, 2), "answered");
}

#[test]
fn there_are_as_many_steps_as_sets_were_proposed() {
    let mut s = Story::new();
    s.birth_weeks_ago(3, BirthMode::Vaginal).programme(vec![slot("bridge", 8, 12, 5)], 3).trains();
    assert_eq!(s.flow().steps.len(), 2, "three were planned, and two are the most so early");
}

#[test]
fn the_set_in_hand_has_its_plan() {
    let mut s = Story::new();
    s.trains();
    let flow = s.flow();
    assert_eq!(flow.plan(flow.now.unwrap()).map(|plan| &plan.variant), Some(&s.plan("squat").variant));
}

#[test]
fn a_round_begun_on_one_side_is_done_when_both_work_from_then_on() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("row", 8, 12, 3)], 2).starts_at("row", 1, Some(one(4.0)));
    s.trains().does_side("row", Side::Left, 10, left(3));
    assert_eq!(now(&s), ("row".into(), 0, Some(Side::Right)));
    chooses(&mut s, "row", "row-seated-towel");
    assert_eq!(now(&s), ("row".into(), 1, None));
}

#[test]
fn between_the_slots_of_a_round_is_the_short_rest_and_after_the_round_the_long_one() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("row", 1, Some(one(4.0)));
    superset(&mut s, vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3)], 2, 15);
    s.trains().does("squat", 10, left(3));
    let rest = s.flow().rest.unwrap();
    assert_eq!((rest.seconds, rest.until), (15, s.now + Duration::seconds(15)));
    s.does_side("row", Side::Left, 10, left(3));
    assert!(s.flow().rest.is_none(), "the other side follows");
    s.does_side("row", Side::Right, 10, left(3));
    let rest = s.flow().rest.unwrap();
    assert_eq!((rest.seconds, rest.until), (60, s.now + Duration::seconds(60)));
}

// -- how long it takes --------------------------------------------------------------------------

fn minutes_of(s: &Story) -> u16 {
    s.with_bench(|b| minutes(b, s.session(), &[]))
}

#[test]
fn a_set_takes_its_reps_and_twenty_seconds_and_a_round_its_rest() {
    let mut s = Story::new();
    // Ten reps of three seconds, 20 to set up, 60 of rest: 110 seconds, twelve times.
    s.programme(vec![slot("squat", 8, 12, 3)], 12);
    assert_eq!(minutes_of(&s), 22);
    // Six seconds a rep: 140 seconds.
    s.programme.sessions[0].blocks[0].slots[0].dose.tempo = Some(Tempo { down: 3, pause: 1, up: 2 });
    assert_eq!(minutes_of(&s), 28);
    // Thirty seconds held: 110 seconds again.
    s.programme(vec![timed("breathing", 20, 40)], 12);
    assert_eq!(minutes_of(&s), 22);
    // A minute that is begun is a minute: 220 seconds.
    s.programme(vec![slot("squat", 8, 12, 3)], 2);
    assert_eq!(minutes_of(&s), 4);
}

#[test]
fn two_sides_take_twice_as_long_and_are_set_up_once() {
    let mut s = Story::new();
    s.owns(full_kit())
        .programme(vec![slot("row", 8, 12, 3)], 12)
        .starts_at("row", 1, Some(one(4.0)))
        .trains();
    // Twice thirty seconds, 20 to set up, 60 of rest: 140 seconds, twelve times.
    assert_eq!(minutes_of(&s), 28);
}

#[test]
fn a_round_of_three_slots_has_two_short_rests() {
    let mut s = Story::new();
    let slots = vec![slot("squat", 8, 12, 3), slot("bridge", 8, 12, 3), slot("dead-bug", 8, 12, 3)];
    superset(&mut s, slots, 12, 20);
    // Three sets of 50 seconds, twice 20 between them, 60 after: 250 seconds, twelve times.
    assert_eq!(minutes_of(&s), 50);
}

fn left_out(s: &Story) -> Vec<(String, u8)> {
    let out = s.with_bench(|b| left_out_when_short(b, s.session(), &s.flow()));
    out.into_iter().map(|(slot, round)| (slot.to_string(), round)).collect()
}

#[test]
fn the_short_version_fills_ten_minutes_to_the_second() {
    // Rounds of 100 seconds, six of which are ten minutes: three of each slot.
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3), slot("bridge", 8, 12, 3)], 4);
    for block in &mut s.programme.sessions[0].blocks {
        block.rest_seconds = 50;
    }
    s.trains();
    assert_eq!(left_out(&s), [("squat".into(), 3), ("bridge".into(), 3)]);
    // With the squats done, the four rounds of the bridge fit.
    s.does_all("squat", 10, left(3));
    assert_eq!(left_out(&s), []);
}

#[test]
fn the_short_version_leaves_out_a_slot_with_a_single_round() {
    // The first round stays, however long it takes, and fills the ten minutes.
    let mut s = Story::new();
    s.programme(vec![timed("side-plank", 500, 600), slot("bridge", 8, 12, 3)], 1).trains();
    assert_eq!(left_out(&s), [("bridge".into(), 0)]);
}
