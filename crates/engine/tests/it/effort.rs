//! How hard: reserve and sets by stage, readiness and condition.

use crate::loads::{hinge, kg_next};
use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, Readiness};
use newel_engine::stage::BirthMode;

#[test]
fn effort_follows_the_stage() {
    // PRACTICE, reps in reserve by stage, for somebody new to lifting and one who is trained.
    let reserve = |story: &mut Story| story.next("squat").reserve.unwrap();
    let at = |set: &dyn Fn(&mut Story), trained: bool| {
        let mut s = Story::new();
        s.programme(vec![slot("squat", 8, 12, 0)], 2);
        set(&mut s);
        s.says(Payload::screened(vec![], vec![], trained));
        // The second time, so that a fresh start has no say.
        s.session_of("squat", 8, plenty());
        reserve(&mut s)
    };
    type Case<'a> = (&'a dyn Fn(&mut Story), f64, f64);
    let cases: &[Case<'_>] = &[
        (
            &|s| {
                s.weeks_pregnant(10);
            },
            3.0,
            2.0,
        ),
        (
            &|s| {
                s.weeks_pregnant(20);
            },
            3.0,
            2.0,
        ),
        (
            &|s| {
                s.weeks_pregnant(30);
            },
            4.0,
            3.0,
        ),
        (
            &|s| {
                s.pregnant_undated();
            },
            4.0,
            3.0,
        ),
        (
            &|s| {
                s.birth_weeks_ago(3, BirthMode::Vaginal);
            },
            5.0,
            5.0,
        ),
        (
            &|s| {
                s.birth_weeks_ago(8, BirthMode::Vaginal);
            },
            5.0,
            4.0,
        ),
        (
            &|s| {
                s.birth_weeks_ago(14, BirthMode::Vaginal);
            },
            3.0,
            3.0,
        ),
        (
            &|s| {
                s.birth_weeks_ago(30, BirthMode::Vaginal);
            },
            3.0,
            2.0,
        ),
        (
            &|s| {
                s.birth_weeks_ago(60, BirthMode::Vaginal);
            },
            3.0,
            1.0,
        ),
        (&|_| {}, 3.0, 1.0),
    ];
    for (i, (set, new, trained)) in cases.iter().enumerate() {
        assert_eq!(at(set, false), *new, "case {i}, new to lifting");
        assert_eq!(at(set, true), *trained, "case {i}, trained");
    }
}

#[test]
fn two_to_six_weeks_after_birth_nothing_is_held_and_sets_are_few() {
    let mut s = Story::new();
    s.birth_weeks_ago(3, BirthMode::Vaginal)
        .owns(full_kit())
        .programme(vec![slot("hinge", 8, 12, 3)], 4)
        .starts_at("hinge", 2, Some(one(8.0)));
    let next = s.next("hinge");
    assert_eq!(s.external(&next), 0.0);
    assert_eq!(next.sets, 2);
}

#[test]
fn tired_keeps_more_in_reserve_and_unwell_more_and_one_set() {
    let mut s = hinge(&[6.0, 8.0, 10.0], 8.0);
    s.session_of("hinge", 10, left(3)).session_of("hinge", 10, left(3));
    let usual = s.next("hinge");
    let after = |readiness| {
        let mut t = hinge(&[6.0, 8.0, 10.0], 8.0);
        t.session_of("hinge", 10, left(3)).session_of("hinge", 10, left(3)).feels(readiness).checks_in();
        (t.next("hinge"), t.reasons("hinge"), kg_next(&t))
    };
    let (tired, why, kg) = after(Readiness::Tired);
    assert_eq!(tired.reserve.unwrap(), usual.reserve.unwrap() + 1.0);
    assert!(why.contains(&R::TiredToday) && kg <= s.external(&usual));
    let (unwell, _, kg) = after(Readiness::Unwell);
    assert_eq!((unwell.reserve.unwrap(), unwell.sets), (usual.reserve.unwrap() + 2.0, 1));
    assert!(kg <= s.external(&usual));
}

#[test]
fn while_pregnant_the_floor_is_never_under_one() {
    let mut s = Story::new();
    s.weeks_pregnant(12).programme(vec![slot("squat", 8, 12, 0)], 2);
    s.says(Payload::screened(vec![], vec![], true));
    assert_eq!(s.next("squat").floor, 1.0);
}
