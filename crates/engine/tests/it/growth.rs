//! What must not grow: light weeks, days without her kit, a kit of heavier things alone, warm-ups, easy days.

use crate::pinned_levels::start;
use crate::story::*;
use newel_engine::programme::{BlockForm, Phase, PlanSession};
use newel_engine::proposal::Turn;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Purpose, Readiness, TodayThing as T};

/// A squat once a week at level 3 with 10 kg, three rounds.
fn goblet() -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0, 10.0, 11.0, 12.0, 14.0, 16.0, 20.0]));
    s.programme(vec![slot("squat", 8, 12, 3)], 3).starts_at("squat", 3, Some(one(10.0)));
    s.programme.per_week = 1;
    s
}

// -- light weeks --------------------------------------------------------------------------------

#[test]
fn in_a_light_week_a_set_with_a_load_does_not_grow_either() {
    let mut s = goblet();
    s.trains().does_all("squat", 8, left(8)).ends().settled().days(6);
    s.programme.light_weeks = vec![2];
    let light = s.next("squat");
    assert!(s.external(&light) <= 10.0, "{light:?}");
    assert_eq!(light.target.count(), 8, "the count of last time stays: {light:?}");
}

#[test]
fn what_the_coach_set_waits_for_the_end_of_a_light_week() {
    let mut s = goblet();
    s.trains().does_all("squat", 10, left(3)).ends().settled().days(5);
    s.overridden("squat", Some(4), Some(pair(8.0)));
    s.days(1);
    s.programme.light_weeks = vec![2];
    let light = s.next("squat");
    assert_eq!(light.level, 3, "{light:?}");
    let said = s.of_slot("squat");
    let untrue = said.reasons.all().iter().find(|r| r.code == R::CoachSet);
    assert!(untrue.is_none(), "no reason tells of a level that is not asked for: {untrue:?}");
    s.trains().does_all("squat", 10, left(4)).ends().settled().days(6);
    let after = s.next("squat");
    assert_eq!((after.level, &after.load), (4, &pair(8.0)), "and it is not lost: {:?}", s.reasons("squat"));
    s.trains().does_all("squat", 10, left(3)).ends().settled().days(6);
    assert!(!s.reasons("squat").contains(&R::CoachSet), "it was for one time");
}

#[test]
fn in_a_light_week_what_the_coach_set_lighter_or_the_same_holds_at_once_and_heavier_waits() {
    let set = |level: Option<u8>, kg: f64| {
        let mut s = goblet();
        s.trains().does_all("squat", 10, left(3)).ends().settled().days(5);
        s.overridden("squat", level, Some(one(kg)));
        s.days(1);
        s.programme.light_weeks = vec![2];
        let next = s.next("squat");
        (s.external(&next), next.target.count(), s.reasons("squat").contains(&R::StartCoach))
    };
    assert_eq!(set(Some(3), 8.0), (8.0, 8, true), "lighter, at the level where she is");
    assert_eq!(set(None, 10.0), (10.0, 8, true), "what she held, set anew");
    let (kg, reps, by_coach) = set(None, 12.0);
    assert!(kg <= 10.0 && reps == 10 && !by_coach, "heavier: {kg} kg for {reps}");
}

#[test]
fn in_a_light_week_a_warm_up_stays_with_the_least() {
    let mut s = goblet();
    let work = s.programme.sessions[0].blocks[0].clone();
    let warm = &mut s.programme.sessions[0].blocks[0];
    (warm.form, warm.id, warm.slots[0].id) = (BlockForm::WarmUp, "warm".into(), "warm-squat".into());
    warm.slots[0].levels = Some(newel_engine::programme::LevelSpan { low: 3, high: 3 });
    s.programme.sessions[0].blocks.push(work);
    for _ in 0..2 {
        s.trains().does_all("warm-squat", 8, left(8)).does_all("squat", 10, left(3)).ends().settled().days(6);
    }
    s.programme.light_weeks = vec![3];
    let warm = s.next("warm-squat");
    assert_eq!((s.external(&warm), warm.purpose), (2.0, Purpose::Ease), "{warm:?}");
}

#[test]
fn on_the_way_back_from_a_symptom_a_light_week_holds_no_more_than_last_time() {
    let next_of = |light_weeks: Vec<u8>| {
        let mut s = goblet();
        s.starts.clear();
        s.starts.push(start("squat", None, "squat-goblet-chair", Some(one(8.0))));
        s.starts.push(start("squat", Some(4), "squat-two-dumbbells", Some(pair(8.0))));
        s.trains().does("squat", 10, left(3)).marks("squat", symptom("heaviness", None)).ends().settled();
        s.days(6).trains();
        assert_eq!(s.plan("squat").level, 3);
        for _ in 0..3 {
            s.does_with("squat", one(4.0), 10, left(3));
        }
        s.ends().settled().days(6);
        let goblet = "squat-goblet".into();
        s.restricted(newel_engine::record::RestrictionKind::Variant { variant: goblet });
        s.programme.light_weeks = light_weeks;
        let next = s.next("squat");
        (next.variant.to_string(), s.external(&next))
    };
    assert_eq!(next_of(vec![]), ("squat-goblet-chair".into(), 8.0), "as the coach named it");
    assert_eq!(next_of(vec![3]), ("squat-goblet-chair".into(), 4.0), "what she held last");
}

#[test]
fn another_option_in_a_light_week_grows_no_more_than_the_one_that_was_shown() {
    let mut s = goblet();
    s.owns(full_kit()).programme(vec![slot("row", 8, 12, 3)], 3).starts_at("row", 2, Some(pair(4.0)));
    s.programme.per_week = 1;
    s.trains().does_all("row", 12, left(6)).ends().settled().days(6);
    s.programme.light_weeks = vec![2];
    s.trains();
    let held = s.external(&s.next("row"));
    let shown = s.next("row").options.clone();
    let now = s.plan("row").options.clone();
    for option in &now {
        let kg = s.external_of(&option.variant, &option.load);
        let then =
            shown.iter().find(|o| o.variant == option.variant).map(|o| s.external_of(&o.variant, &o.load));
        assert!(kg <= held.max(then.unwrap_or(0.0)) + 1e-9, "{option:?}, shown {then:?}");
    }
}

#[test]
fn nobody_is_asked_for_ten_reps_where_the_answer_would_not_count() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0]))
        .programme(vec![slot("squat", 8, 12, 3)], 3)
        .starts_at("squat", 2, None);
    s.trains();
    assert!(s.plan("squat").ask_ten_reps);
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0]))
        .programme(vec![slot("squat", 8, 12, 3)], 3)
        .starts_at("squat", 2, None);
    s.programme.light_weeks = vec![1];
    s.trains();
    assert!(!s.plan("squat").ask_ten_reps);
}

// -- a day without her kit ----------------------------------------------------------------------

#[test]
fn a_day_without_her_kit_leaps_over_no_level() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0]))
        .programme(vec![slot("thrust", 8, 12, 3)], 2)
        .starts_at("thrust", 1, None);
    for _ in 0..2 {
        s.session_of("thrust", 12, left(5));
    }
    assert_eq!(s.next("thrust").level, 2, "she is ready for the loaded one");
    s.today_has(&[T::NoKit]).trains();
    let away = s.next("thrust");
    assert_eq!(away.level, 1, "and not for the one beyond it: {away:?}");
    s.does_all("thrust", 12, left(5)).ends().settled();
    assert_eq!(s.next("thrust").level, 2);
}

#[test]
fn a_child_in_the_room_holds_nobody_back_where_nothing_is_closed_by_it() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0])).programme(vec![slot("thrust", 8, 12, 3)], 2).starts_at("thrust", 0, None);
    for _ in 0..2 {
        s.session_of("thrust", 12, left(5));
    }
    s.today_has(&[T::ChildNear]).trains();
    assert_eq!(s.next("thrust").level, 1);
}

// -- nothing but heavier things -----------------------------------------------------------------

#[test]
fn a_kit_of_heavier_things_alone_makes_no_leap_where_nothing_foresees_it() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0])).programme(vec![timed("carry", 20, 40)], 2).starts_at("carry", 1, None);
    s.trains().does_all("carry", 25, None).ends().settled().days(2);
    s.owns(dumbbells(&[20.0]));
    let next = s.next("carry");
    assert!(s.external(&next) <= 8.0 + 1e-9, "two of 4 kg, then two of 20: {next:?}");
}

#[test]
fn a_kit_of_heavier_things_alone_makes_no_leap_by_foresight_either() {
    let mut s = goblet();
    s.owns(dumbbells(&[4.0])).starts.clear();
    s.starts_at("squat", 2, Some(one(4.0)));
    s.trains().does_all("squat", 8, plenty()).ends().settled().days(2);
    assert!(s.next("squat").level >= 2);
    s.owns(dumbbells(&[24.0]));
    let next = s.next("squat");
    assert!(s.external(&next) <= 4.4, "{next:?}: {:?}", s.of_slot("squat").reasons);
}

#[test]
fn just_as_much_more_as_a_step_that_finds_a_load_is_no_leap() {
    let reasons = |held: f64, most: f64| {
        let mut s = Story::new();
        s.owns(dumbbells(&[held])).programme(vec![timed("carry", 20, 40)], 2);
        s.starts_at("carry", 1, Some(pair(held)));
        s.trains().does_all("carry", 25, None).ends().settled().days(2);
        s.owns(dumbbells(&[most]));
        s.reasons("carry")
    };
    let times = Story::new().rules.number("load.finding", "next_times_lower");
    assert!(!reasons(4.0, 4.0 * times).contains(&R::LevelDownLoad));
    assert!(reasons(4.0, 4.0 * times + 0.5).contains(&R::LevelDownLoad));
}

#[test]
fn a_step_of_a_carry_may_be_just_as_much_more_as_one_that_finds_a_load() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 8.0])).programme(vec![timed("carry", 20, 40)], 2);
    s.programme.sessions[0].blocks[0].slots[0].levels =
        Some(newel_engine::programme::LevelSpan { low: 1, high: 1 });
    s.starts_at("carry", 1, Some(pair(4.0)));
    for _ in 0..2 {
        s.session_of("carry", 40, None);
    }
    assert_eq!(s.external(&s.next("carry")), 16.0);
}

#[test]
fn a_step_of_a_carry_is_bounded() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 20.0])).programme(vec![timed("carry", 20, 40)], 2);
    // The ladder ends with the carry that she does, so that nothing but its load can grow.
    s.programme.sessions[0].blocks[0].slots[0].levels =
        Some(newel_engine::programme::LevelSpan { low: 1, high: 1 });
    s.starts_at("carry", 1, Some(pair(4.0)));
    for _ in 0..4 {
        s.session_of("carry", 40, None);
        let next = s.next("carry");
        assert!(s.external(&next) <= 16.0, "two of 4 kg, then two of 20: {next:?}");
    }
}

// -- warm-up ------------------------------------------------------------------------------------

fn warmed(ladder: newel_engine::programme::Slot) -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0, 10.0])).programme(vec![ladder], 2);
    s.programme.sessions[0].blocks[0].form = BlockForm::WarmUp;
    s
}

#[test]
fn a_carry_to_warm_up_with_is_the_lightest_and_stays_so() {
    let mut s = warmed(timed("carry", 20, 40));
    s.starts_at("carry", 1, Some(pair(8.0)));
    for _ in 0..3 {
        let warm = s.next("carry");
        assert_eq!((warm.purpose, warm.target.count()), (Purpose::Ease, 20), "{warm:?}");
        assert!(s.external(&warm) <= 4.0, "{warm:?}");
        assert!(s.reasons("carry").contains(&R::EaseIn));
        s.session_of("carry", 40, None);
    }
    assert!(s.with_bench(|b| b.state.ladders.get(&"carry".into()).is_none_or(|l| l.exposures.is_empty())));
}

#[test]
fn a_squat_to_warm_up_with_earns_nothing_at_a_level_without_a_load_either() {
    let mut s = warmed(slot("squat", 8, 12, 3));
    for _ in 0..4 {
        s.session_of("squat", 12, plenty());
    }
    assert_eq!(s.next("squat").level, 0, "{:?}", s.reasons("squat"));
    assert!(s.with_bench(|b| b.state.ladders.get(&"squat".into()).is_none_or(|l| l.exposures.is_empty())));
}

// -- easy days ----------------------------------------------------------------------------------

#[test]
fn back_from_an_illness_is_no_day_for_a_level_up_nor_to_find_a_load() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0, 10.0, 12.0, 14.0]));
    s.programme(vec![slot("thrust", 8, 12, 3), slot("hinge", 8, 12, 3)], 2);
    s.starts_at("thrust", 0, None).starts_at("hinge", 1, None);
    for _ in 0..2 {
        s.trains().does_all("thrust", 12, left(9)).does_all("hinge", 8, plenty()).ends().settled().days(2);
    }
    let (thrust, hinge) = (s.next("thrust"), s.next("hinge"));
    assert_eq!((thrust.level, hinge.purpose), (1, Purpose::Find), "as it would be");
    s.today_has(&[T::AfterIllness]).trains();
    for _ in 0..2 {
        let (easy, easy_hinge) = (s.next("thrust"), s.next("hinge"));
        assert_eq!(easy.level, 0, "{easy:?}");
        assert_ne!(easy_hinge.purpose, Purpose::Find, "{easy_hinge:?}");
        assert!(s.external(&easy_hinge) <= s.external(&hinge));
        s.does_all("thrust", 12, left(9)).does_all("hinge", 8, plenty()).ends().settled().days(2).trains();
    }
    assert_eq!(s.next("thrust").level, 1, "and then it goes on");
}

#[test]
fn a_band_that_helps_stays_in_a_light_week() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("vertical-pull", 6, 10, 3)], 3);
    s.programme.per_week = 2;
    s.starts_at("vertical-pull", 2, None);
    for _ in 0..2 {
        s.session_of("vertical-pull", 10, left(5));
    }
    let usual = s.next("vertical-pull");
    let last = s.with_bench(|b| b.state.ladders[&"vertical-pull".into()].exposures.last().unwrap().clone());
    let held = s.external_of(&last.variant, &last.load);
    assert!(usual.level > last.level || s.external(&usual) > held, "it would have grown: {usual:?}");
    s.programme.light_weeks = vec![2];
    let light = s.next("vertical-pull");
    assert!(light.level <= last.level && s.external(&light) <= held, "{light:?} after {held}");
}

#[test]
fn what_was_said_of_an_illness_before_a_session_that_was_not_trained_holds_for_the_next() {
    let mut s = goblet();
    s.trains().does_all("squat", 8, left(3)).ends().settled().days(2);
    s.today_has(&[T::AfterIllness]).trains().ends().days(1);
    for easy in [true, true, false] {
        s.trains();
        assert_eq!(s.reasons("squat").contains(&R::AfterIllness), easy);
        s.does_all("squat", 8, left(3)).ends().days(1);
    }
}

#[test]
fn a_finisher_of_somebody_who_learns_the_moves_earns_nothing() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0, 10.0])).never_trained().programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.programme.sessions[0].blocks[0].form = BlockForm::Finisher;
    s.starts_at("hinge", 1, None);
    s.session_of("hinge", 12, plenty());
    let second = s.next("hinge");
    assert_eq!(s.external(&second), 4.0, "{second:?}: {:?}", s.reasons("hinge"));
    assert_eq!((second.target.count(), second.purpose), (8, Purpose::Learn));
}

// -- doses that fall ----------------------------------------------------------------------------

#[test]
fn the_bottom_of_a_longer_range_is_not_the_top_of_a_shorter_one() {
    let mut s = Story::new();
    s.programme(vec![slot("thrust", 12, 20, 3)], 2).starts_at("thrust", 0, None);
    s.programme.per_week = 2;
    let a = s.programme.sessions[0].clone();
    let mut b = PlanSession { id: "b".into(), phase: Some("two".into()), ..a.clone() };
    b.blocks[0].id = "block-b".into();
    b.blocks[0].slots[0].id = "thrust-b".into();
    b.blocks[0].slots[0].dose = slot("thrust", 6, 8, 3).dose;
    s.programme.sessions = vec![PlanSession { phase: Some("one".into()), ..a }, b];
    s.programme.phases = vec![
        Phase { id: "one".into(), title: "First".into(), weeks: 1, light_weeks: vec![] },
        Phase { id: "two".into(), title: "Then".into(), weeks: 2, light_weeks: vec![] },
    ];
    for _ in 0..2 {
        s.session_of("thrust", 12, left(4));
    }
    let next = s.next("thrust-b");
    assert_eq!(next.level, 0, "the bottom of 12 to 20 earns no level: {next:?}");
}

// -- symptoms -----------------------------------------------------------------------------------

#[test]
fn a_symptom_in_a_light_week_still_answers() {
    let mut s = goblet();
    s.trains().does_all("squat", 10, left(3)).ends().settled().days(6);
    s.programme.light_weeks = vec![2];
    s.trains().does("squat", 10, left(4)).marks("squat", symptom("heaviness", None));
    match s.turn("squat") {
        Turn::Do(plan) => assert!(plan.level < 3),
        Turn::Over(why) => panic!("{why:?}"),
    }
    s.ends().settled().days(6);
    assert!(s.next("squat").level < 3);
}

#[test]
fn on_an_unwell_day_nothing_grows_and_what_was_earned_waits() {
    let begin = || {
        let mut s = Story::new();
        s.programme(vec![slot("bridge", 8, 12, 3)], 2);
        s.session_of("bridge", 12, left(5)).session_of("bridge", 12, left(5));
        s
    };
    let mut s = begin();
    assert!(s.reasons("bridge").contains(&R::LevelUp), "earned: {:?}", s.reasons("bridge"));
    let standing = s.next("bridge").level - 1;
    s.feels(Readiness::Unwell).trains();
    assert_eq!(s.plan("bridge").level, standing, "not on a day like this");
    // Aimed at two more in reserve, and one more than that was left.
    s.does_all("bridge", 12, left(6)).ends().settled().days(2).feels(Readiness::Usual);
    assert!(s.reasons("bridge").contains(&R::LevelUp), "and it is not lost: {:?}", s.reasons("bridge"));
    // What the coach set higher waits, too.
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).session_of("bridge", 9, left(3));
    let standing = s.next("bridge").level;
    s.overridden("bridge", Some(standing + 1), None).feels(Readiness::Unwell).trains();
    assert_eq!(s.plan("bridge").level, standing);
    s.does_all("bridge", 9, left(5)).ends().settled().days(2).feels(Readiness::Usual);
    assert_eq!(s.next("bridge").level, standing + 1);
}

// -- after a symptom ----------------------------------------------------------------------------

#[test]
fn what_was_done_before_a_symptom_earns_no_bigger_step_after_it() {
    let mut s = Story::new();
    s.owns(dumbbells(&[8.0, 12.0, 13.5, 16.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts_at("hinge", 1, Some(one(12.0)));
    let twelve = |s: &mut Story| {
        s.trains().does_with("hinge", one(12.0), 12, left(4)).does_with("hinge", one(12.0), 12, left(4));
        s.ends().settled().days(2);
    };
    twelve(&mut s);
    twelve(&mut s);
    // Marked, and on with the easier option: the variant has no exposure of that day.
    s.trains().does_with("hinge", one(16.0), 8, left(3)).marks("hinge", symptom("heaviness", None));
    s.does("hinge", 8, plenty());
    s.ends().settled().days(2);
    for _ in 0..2 {
        s.session_of("hinge", 8, plenty());
    }
    assert!(s.reasons("hinge").contains(&R::BackUp), "{:?}", s.reasons("hinge"));
    assert_eq!(s.external(&s.next("hinge")), 12.0);
    twelve(&mut s);
    assert_eq!(s.external(&s.next("hinge")), 12.0, "one since the symptom: {:?}", s.reasons("hinge"));
    twelve(&mut s);
    assert_eq!(s.external(&s.next("hinge")), 13.5, "two since: {:?}", s.reasons("hinge"));
}

#[test]
fn a_restart_of_before_a_symptom_is_no_heavier_than_what_was_held_with_it() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("overhead-press", 8, 12, 3), slot("row", 8, 12, 3)], 2);
    s.starts_at("overhead-press", 0, Some(one(8.0)));
    s.session_of("overhead-press", 10, left(3));
    s.trains().does("overhead-press", 8, left(3)).marks("overhead-press", symptom("heaviness", None)).ends();
    s.settled().days(2).hold_answered(HoldAnswer::RestartLighter);
    let restart = s.next("overhead-press");
    assert!(s.external(&restart) > 0.0 && s.external(&restart) < 8.0, "a restart: {restart:?}");
    // The session goes unloaded because of another ladder, and the press hurts with nothing held.
    s.trains().marks("row", symptom("leak-effort", None)).marks("row", symptom("heaviness", None));
    let reach = s.plan("overhead-press");
    assert_eq!(s.external_of(&reach.variant, &reach.load), 0.0, "{reach:?}");
    s.does("overhead-press", 8, plenty()).marks("overhead-press", symptom("girdle-pain", None)).ends();
    s.settled().days(2);
    while s.with_bench(|b| b.state.open_holds().next().is_some()) {
        s.hold_answered(HoldAnswer::GoOn);
    }
    let after = s.next("overhead-press");
    assert_eq!(s.external(&after), 0.0, "no more than was held: {:?} {after:?}", s.reasons("overhead-press"));
}
