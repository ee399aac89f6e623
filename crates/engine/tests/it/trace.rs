//! What moved strength, set by set: the same fold that proposes, told step by step.

use crate::story::*;
use newel_engine::history::History;
use newel_engine::ids::GroupId;
use newel_engine::record::{Payload, Side};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::state::{Frame, Silent, State, StrengthState, StrengthStep, StrengthTrace};
use newel_engine::units::Weight;
use std::collections::BTreeMap;

fn trace(s: &Story) -> StrengthTrace {
    StrengthTrace::of(&History::of(&s.records), &s.catalogue, &s.rules, (&s.starts, None))
}

/// The last state of each group in a trace, since the last fresh start, is the one that proposals are made of.
fn ends_where_she_stands(s: &Story) {
    let frame = Frame {
        catalogue: &s.catalogue,
        rules: &s.rules,
        starts: &s.starts,
        starts_of: None,
        day: s.today(),
    };
    let state = State::of(&History::of(&s.records), frame);
    let mut last: BTreeMap<GroupId, StrengthState> = BTreeMap::new();
    for step in trace(s).steps {
        match step {
            StrengthStep::FreshStart(_) => last.clear(),
            StrengthStep::NoEvidence(none) => assert_eq!(last.get(&none.group), none.after.as_ref()),
            StrengthStep::Set(set) => drop(last.insert(set.group.clone(), set.after.clone())),
        }
    }
    assert_eq!(last.keys().collect::<Vec<_>>(), state.trackers.keys().collect::<Vec<_>>());
    for (group, after) in &last {
        let tracker = &state.trackers[group];
        assert_eq!([after.b, after.c, after.d], [tracker.mean[0], tracker.mean[1], tracker.mean[2]]);
        for row in 0..3 {
            for column in 0..3 {
                assert_eq!(after.covariance[row][column], tracker.cov[(row, column)]);
            }
        }
    }
}

#[test]
fn each_set_is_told_with_what_it_was_and_what_came_of_it() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0, 10.0])).starts_at("squat", 2, Some(one(8.0)));
    s.trains().does("squat", 10, left(4)).does("squat", 10, plenty()).ends();
    s.says(Payload::BodyMass { mass: Weight::in_kg(61.0) }).days(3);
    s.trains().does("squat", 9, left(3)).ends();
    let trace = trace(&s);
    let sets: Vec<_> = trace.sets().collect();
    assert_eq!(sets.len(), 3);
    assert_eq!(sets.iter().map(|t| t.j).collect::<Vec<_>>(), [0.0, 1.0, 0.0]);
    assert_eq!(sets.iter().map(|t| t.at_least).collect::<Vec<_>>(), [false, true, false]);
    assert_eq!((sets[1].reps, sets[1].reserve), (10.0, 5.0));
    let start = sets[0].start.as_ref().expect("the state begins with the first set");
    assert!(start.by_coach && sets[1].start.is_none() && sets[2].start.is_none());
    let bodies: Vec<_> = sets.iter().map(|t| t.body.expect("a squat moves her too")).collect();
    assert_eq!((bodies[0].mass.0, bodies[0].assumed), (70.0, true), "none was recorded yet");
    assert_eq!((bodies[2].mass.0, bodies[2].assumed), (61.0, false));
    for (set, body) in sets.iter().zip(&bodies) {
        assert!((set.effective.0 - set.external.0 - body.share * body.mass.0).abs() < 1e-12);
    }
    ends_where_she_stands(&s);
}

#[test]
fn a_correction_is_told_in_its_place_and_moves_all_that_came_after() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).starts_at("squat", 2, Some(one(8.0)));
    s.trains().does("squat", 10, left(4));
    let first = s.records.last().unwrap().clone();
    s.does("squat", 10, left(3)).ends().days(3);
    s.trains().does("squat", 10, left(3)).ends();
    let before = trace(&s);
    let Payload::SetDone(mut set) = first.payload else { panic!("a set") };
    set.reps = 4;
    s.corrects(first.id, Payload::SetDone(set));
    let after = trace(&s);
    let taken = |t: &StrengthTrace| t.sets().map(|set| set.taken).collect::<Vec<_>>();
    assert_eq!(taken(&before), taken(&after), "the same sets in the same order");
    assert_eq!(after.sets().next().unwrap().reps, 4.0);
    for (was, is) in before.sets().zip(after.sets()) {
        assert!(is.after.b < was.after.b, "fewer reps tell of less strength");
    }
    ends_where_she_stands(&s);
}

#[test]
fn of_two_sides_the_weaker_is_taken_and_both_are_named() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).programme(vec![slot("row", 8, 12, 3)], 2);
    s.starts_at("row", 1, Some(one(6.0)));
    s.trains();
    s.does_side("row", Side::Left, 10, left(3));
    s.does_side("row", Side::Right, 8, left(3));
    let right = s.last_record();
    s.ends();
    let trace = trace(&s);
    let sets: Vec<_> = trace.sets().collect();
    assert_eq!(sets.len(), 1);
    assert_eq!((sets[0].taken, sets[0].records.len(), sets[0].reps), (right, 2, 8.0));
    ends_where_she_stands(&s);
}

#[test]
fn a_birth_ends_the_states_and_is_told_as_such() {
    let mut s = Story::new();
    s.weeks_pregnant(30).owns(dumbbells(&[4.0, 6.0, 8.0])).starts_at("squat", 2, Some(one(6.0)));
    s.trains().does_all("squat", 10, left(3)).ends();
    let old = trace(&s).steps.len();
    s.days(120).birth_weeks_ago(8, BirthMode::Vaginal).taken_up();
    let told = trace(&s);
    assert_eq!(told.steps.len(), old + 1, "a birth is told though nothing was trained since");
    let Some(StrengthStep::FreshStart(fresh)) = told.steps.last() else { panic!("a fresh start") };
    assert!(matches!(fresh.stage, Some(Stage::Postpartum { .. })));
    assert_eq!(fresh.ended.len(), 1);
    ends_where_she_stands(&s);
    s.trains().does_all("squat", 10, left(5)).ends();
    let again = trace(&s);
    let StrengthStep::Set(set) = &again.steps[old + 1] else { panic!("a set") };
    assert!(set.start.is_some(), "the state begins anew");
    assert_eq!(set.after.first, set.day);
    ends_where_she_stands(&s);
}

#[test]
fn a_set_that_tells_nothing_is_told_with_the_state_that_it_left_and_why() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).programme(vec![slot("squat", 8, 12, 3)], 4);
    s.starts_at("squat", 2, Some(one(6.0)));
    let mut warm = s.programme.sessions[0].blocks[0].clone();
    warm.id = "warm".into();
    warm.form = newel_engine::programme::BlockForm::WarmUp;
    warm.rounds = 1;
    warm.slots[0].id = "warm-squat".into();
    s.programme.sessions[0].blocks.insert(0, warm);
    s.trains().does("warm-squat", 8, plenty());
    s.does("squat", 10, left(4)).does("squat", 10, None).stops("squat", 5).does("squat", 9, left(3)).ends();
    let told = trace(&s);
    let why: Vec<Option<Silent>> = told
        .steps
        .iter()
        .map(|step| match step {
            StrengthStep::NoEvidence(none) => Some(none.why),
            StrengthStep::Set(_) | StrengthStep::FreshStart(_) => None,
        })
        .collect();
    assert_eq!(why, [Some(Silent::Ease), None, Some(Silent::NoEffort), Some(Silent::Stopped), None]);
    let sets: Vec<_> = told.sets().collect();
    assert_eq!((sets[0].j, sets[1].j), (0.0, 3.0), "work that tells nothing tires, a warm-up does not");
    let StrengthStep::NoEvidence(warm) = &told.steps[0] else { panic!("a warm-up") };
    assert_eq!(warm.after, None, "no state yet");
    ends_where_she_stands(&s);
}
