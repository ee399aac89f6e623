//! What a symptom does (DESIGN 5.5 and the engine rules of the symptom list).

mod answers;
mod coach;
mod devices;
mod mornings;
mod red;
mod session;
mod today;
mod usual;

use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::Payload;
use newel_engine::rules::Scope;
use newel_engine::stage::{BirthMode, Stage};

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
fn a_position_is_given_up_whenever_it_was_said_and_whatever_slip_came_between() {
    let flat = |s: &Story| !s.next("bridge").variant.as_str().ends_with("-incline");
    let begin = || {
        let mut s = Story::new();
        s.weeks_pregnant(14).owns(full_kit()).programme(vec![slot("bridge", 8, 12, 3)], 3);
        s.starts_at("bridge", 1, None);
        s
    };
    let mut s = begin();
    s.trains().does_all("bridge", 10, left(4)).ends();
    assert!(flat(&s));
    s.not_settled(vec![symptom("dizzy-on-back", None)]).days(1);
    assert!(!flat(&s), "said of the morning after");
    // The coach records by mistake that she is of no stage, and puts it right.
    s.says(Payload::StageChanged { stage: Stage::Neither }).weeks_pregnant(15);
    assert!(!flat(&s));
    // Another pregnancy is another one.
    s.days(300).birth_weeks_ago(8, BirthMode::Vaginal).days(400).weeks_pregnant(10);
    assert!(flat(&s));
}

#[test]
fn a_clearance_that_a_birth_asks_for_is_asked_for_whatever_slip_came_between() {
    let mut s = Story::new();
    s.owns(full_kit()).birth_weeks_ago(10, BirthMode::Caesarean);
    assert!(s.rests("squat"));
    s.says(Payload::StageChanged { stage: Stage::Neither });
    assert!(s.rests("squat"), "no clearance was given");
    s.cleared();
    assert!(!s.rests("squat"));
    // A new pregnancy asks for what belongs to it.
    let mut s = Story::new();
    s.owns(full_kit()).birth_weeks_ago(100, BirthMode::Caesarean).weeks_pregnant(12);
    assert!(!s.rests("squat"));
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
    // Nor does a plan that was made before it bring its starts back; one that was made after it does.
    let made_before = s.today() - chrono::Duration::weeks(20);
    s.starts_at("squat", 4, Some(pair(8.0))).starts_of = Some(made_before);
    assert_eq!(s.next("squat").level, 0);
    s.starts_of = Some(s.today());
    assert_eq!(s.next("squat").level, 4);
    s.starts.clear();
    s.overridden("squat", Some(3), None);
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (3, 2.0), "the lightest: her answer is of before the birth");
    s.overridden("squat", Some(3), Some(one(4.0)));
    assert_eq!(s.external(&s.next("squat")), 4.0, "the coach's start load");
}
