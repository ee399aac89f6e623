//! Where she is in a session, and the short version.

use crate::story::*;
use newel_engine::flow::{Flow, StepState, left_out_when_short, minutes};
use newel_engine::history::History;
use newel_engine::programme::{Block, BlockForm};
use newel_engine::record::{Payload, Side, SkipWhy};
use newel_engine::weeks::next_session;

fn client() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(
        vec![
            slot("squat", 8, 12, 3),
            slot("row", 8, 12, 3),
            timed("side-plank", 20, 30),
            slot("bridge", 8, 12, 3),
        ],
        3,
    );
    s.starts_at("row", 1, Some(one(4.0)));
    s
}

fn now(s: &Story) -> (String, u8, Option<Side>) {
    let flow = s.flow();
    let step = &flow.steps[flow.now.expect("something is in hand")];
    (step.slot.to_string(), step.round, step.side)
}

#[test]
fn sets_follow_one_another_and_a_restart_goes_on_at_the_same_step() {
    let mut s = client();
    s.trains();
    assert_eq!(now(&s), ("squat".into(), 0, None));
    s.does("squat", 10, left(3));
    // A restart reads the log again: the same step.
    let again = History::of(&s.records.clone());
    let run = again.run(s.run.unwrap()).unwrap();
    let flow = s.with_bench(|b| Flow::of(b, s.session(), run));
    assert_eq!(flow.now, s.flow().now);
    assert_eq!(now(&s), ("squat".into(), 1, None));
    s.does("squat", 10, left(3)).does("squat", 10, left(3));
    assert_eq!(now(&s), ("row".into(), 0, Some(Side::Left)));
    s.does_side("row", Side::Left, 10, left(3));
    assert_eq!(now(&s), ("row".into(), 0, Some(Side::Right)));
    assert!(s.flow().rest.is_none(), "no rest between two sides");
    s.does_side("row", Side::Right, 10, left(3));
    assert_eq!(s.flow().rest.unwrap().seconds, 60);
}

#[test]
fn a_superset_alternates_and_a_skip_goes_on() {
    let mut s = client();
    let mut session = s.programme.sessions[0].clone();
    let slots = session.blocks.iter().take(2).flat_map(|b| b.slots.clone()).collect();
    session.blocks = vec![Block { form: BlockForm::Superset, slots, ..session.blocks[0].clone() }];
    session.blocks[0].slots[1] = slot("bridge", 8, 12, 3);
    s.programme.sessions[0] = session;
    s.trains().does("squat", 10, left(3));
    assert_eq!(now(&s).0, "bridge");
    assert!(s.flow().rest.is_none(), "back to back");
    let run = s.run.unwrap();
    s.says(Payload::SetSkipped { run, slot: "bridge".into(), round: 0, why: SkipWhy::Chosen });
    assert_eq!(now(&s), ("squat".into(), 1, None));
}

#[test]
fn a_mark_moves_the_flow_past_what_ended() {
    let mut s = client();
    s.trains().does("squat", 10, left(3));
    s.marks("squat", symptom("girdle-pain", Some(newel_engine::record::SymptomAmount::Pain(9))));
    assert_eq!(now(&s).0, "row");
    let flow = s.flow();
    assert!(flow.steps.iter().filter(|x| x.slot.as_str() == "squat").any(|x| x.state == StepState::Skipped));
}

#[test]
fn the_short_version_keeps_the_first_round_and_fits() {
    let mut s = client();
    s.trains();
    let (whole, out) = s.with_bench(|b| {
        let history = History::of(&s.records);
        let run = history.run(s.run.unwrap()).unwrap().clone();
        let flow = Flow::of(b, s.session(), &run);
        (minutes(b, s.session(), &[]), left_out_when_short(b, s.session(), &flow))
    });
    assert!(whole > 10, "{whole} minutes");
    assert!(!out.contains(&("squat".into(), 0)), "the first round stays");
    assert!(!out.is_empty());
    let run = s.run.unwrap();
    for (slot, round) in &out {
        s.says(Payload::SetSkipped { run, slot: slot.clone(), round: *round, why: SkipWhy::Short });
    }
    let again = s.with_bench(|b| left_out_when_short(b, s.session(), &s.flow()));
    assert!(again.is_empty(), "what is left fits the budget: {again:?}");
    // What is left still reaches every movement it can before it repeats one.
    let rounds: Vec<(String, u8)> = s
        .flow()
        .steps
        .iter()
        .filter(|x| matches!(x.state, StepState::Now | StepState::Ahead))
        .map(|x| (x.slot.to_string(), x.round))
        .collect();
    assert!(rounds.iter().filter(|(_, r)| *r == 0).count() >= 3, "{rounds:?}");
}

#[test]
fn the_short_version_leaves_finishers_first() {
    let mut s = client();
    s.programme.sessions[0].blocks[3].form = BlockForm::Finisher;
    s.trains();
    let out = s.with_bench(|b| left_out_when_short(b, s.session(), &s.flow()));
    assert!(out.iter().any(|(slot, round)| slot.as_str() == "bridge" && *round == 2));
    assert!(!out.contains(&("squat".into(), 0)));
}

#[test]
fn a_session_too_long_for_ten_minutes_keeps_one_round_all_the_same() {
    let mut s = Story::new();
    s.programme(vec![timed("side-plank", 500, 600)], 3).trains();
    let out = s.with_bench(|b| left_out_when_short(b, s.session(), &s.flow()));
    assert!(!out.contains(&("side-plank".into(), 0)));
    assert_eq!(out.len(), 2);
}

#[test]
fn sessions_come_round_and_round() {
    let mut s = client();
    let mut second = s.programme.sessions[0].clone();
    second.id = "b".into();
    second.blocks.clear();
    s.programme.sessions.push(second);
    let next = |s: &Story| next_session(&History::of(&s.records), &s.programme).unwrap().id.to_string();
    assert_eq!(next(&s), "a");
    s.trains();
    assert_eq!(next(&s), "a", "begun and nothing done");
    s.does("squat", 10, left(3)).ends();
    assert_eq!(next(&s), "b");
}
