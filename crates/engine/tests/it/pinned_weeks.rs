//! What a programme says of its weeks, told where nothing else would notice a slip.

use crate::story::*;
use newel_engine::history::History;
use newel_engine::ids::{PhaseId, ProgrammeId};
use newel_engine::programme::{Amount, BlockForm, BlockWeek, Dose, Phase, Programme, SlotWeek};
use newel_engine::weeks::{progress, turns};
use uuid::Uuid;

/// A squat, three rounds, and nothing that changes by week.
fn plain() -> Programme {
    programme_of(vec![slot("squat", 8, 12, 3)], 3)
}

fn named(week: u8) -> SlotWeek {
    SlotWeek { week, dose: Dose { amount: Amount::Reps { low: 5, high: 6 }, target_rir: 2, tempo: None } }
}

fn two_rounds() -> BlockWeek {
    BlockWeek { week: 2, rounds: 2, rest_seconds: 60, rest_between_seconds: 0 }
}

fn phase(id: &str, weeks: u8) -> Phase {
    Phase { id: id.into(), title: id.to_owned(), weeks, light_weeks: Vec::new() }
}

#[test]
fn each_thing_that_changes_by_week_is_enough_to_tell_weeks() {
    assert!(!plain().tells_weeks());
    let with = |change: fn(&mut Programme)| {
        let mut programme = plain();
        change(&mut programme);
        programme.tells_weeks()
    };
    assert!(with(|p| p.light_weeks = vec![4]));
    assert!(with(|p| p.phases = vec![phase("one", 2)]));
    assert!(with(|p| p.sessions[0].blocks[0].slots[0].by_week = vec![named(2)]));
    assert!(with(|p| p.sessions[0].blocks[0].by_week = vec![two_rounds()]));
    assert!(with(|p| p.sessions[0].blocks[0].form = BlockForm::WarmUp));
}

#[test]
fn as_trained_in_a_week_nothing_changes_by_week() {
    let mut programme = plain();
    programme.light_weeks = vec![4];
    programme.sessions[0].blocks[0].slots[0].by_week = vec![named(2)];
    programme.sessions[0].blocks[0].by_week = vec![two_rounds()];
    assert!(!programme.in_week(2).tells_weeks());
    assert_eq!(programme.in_week(2).sessions[0].blocks[0].rounds, 2);
    assert_eq!(programme.in_week(2).sessions[0].blocks[0].slots[0].dose, named(2).dose);
    let mut programme = plain();
    programme.phases = vec![phase("one", 2), phase("two", 3)];
    programme.sessions[0].phase = Some(PhaseId::from("one"));
    assert!(!programme.in_week(1).tells_weeks());
    assert_eq!(programme.in_week(1).sessions[0].phase, None, "there is no phase that it could name");
}

#[test]
fn a_session_asked_for_after_its_phase_has_the_doses_of_its_last_week() {
    let mut programme = plain();
    programme.phases = vec![phase("one", 2), phase("two", 3)];
    programme.sessions[0].phase = Some(PhaseId::from("one"));
    programme.sessions[0].blocks[0].slots[0].by_week = vec![named(2)];
    let id = programme.sessions[0].id.clone();
    let dose = |week| programme.session_in(&id, week).unwrap().blocks[0].slots[0].dose;
    assert_eq!(dose(1), plain().sessions[0].blocks[0].slots[0].dose);
    assert_eq!(dose(2), named(2).dose);
    assert_eq!(dose(3), named(2).dose);
}

#[test]
fn weeks_that_stand_for_all_are_those_named_and_one_that_is_not() {
    let mut programme = plain();
    programme.weeks = Some(6);
    programme.sessions[0].blocks[0].slots[0].by_week = vec![named(1), named(4)];
    assert_eq!(programme.told_weeks(), [1, 2, 4]);
}

#[test]
fn sessions_of_another_programme_and_sessions_without_a_set_bring_this_one_no_further() {
    let mut s = Story::new();
    s.programme.per_week = 1;
    let before = s.programme.id;
    s.session_of("squat", 10, left(3)).session_of("squat", 10, left(3));
    s.programme.id = ProgrammeId(Uuid::from_u128(8));
    s.trains().ends().days(2);
    let week = |s: &Story| progress(&History::of(&s.records), &s.programme).week;
    assert_eq!(week(&s), 1, "nothing of it is trained");
    s.programme.id = before;
    assert_eq!(week(&s), 3);
}

#[test]
fn who_begins_now_trains_so_many_sessions_in_each_week() {
    let mut programme = plain();
    programme.per_week = 2;
    programme.sessions[0].blocks[0].slots[0].by_week = vec![named(2)];
    let told: Vec<(u32, Dose)> =
        turns(&programme).take(5).map(|(week, s)| (week, s.blocks[0].slots[0].dose)).collect();
    let usual = plain().sessions[0].blocks[0].slots[0].dose;
    assert_eq!(told, [(1, usual), (1, usual), (2, named(2).dose), (2, named(2).dose), (3, usual)]);
}

#[test]
fn a_light_week_halves_an_even_number_of_sets_to_the_set() {
    for (rounds, light) in [(2, 1), (3, 2), (4, 2)] {
        let mut s = Story::new();
        s.programme(vec![slot("squat", 8, 12, 3)], rounds);
        s.programme.light_weeks = vec![1];
        assert_eq!(s.next("squat").sets, light, "of {rounds}");
    }
}
