//! What is allowed on a day: stage, conditions, restrictions, clearance.

use crate::story::*;
use newel_engine::catalogue::{Caution, Position};
use newel_engine::kit::{Barbell, Kit, PlatePair};
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, RestrictionKind};
use newel_engine::stage::{BirthMode, Stage};

fn bridge(s: &mut Story) -> &mut Story {
    s.programme(vec![slot("bridge", 8, 12, 3)], 2)
}

#[test]
fn every_pair_of_plates_counts() {
    // Nine pairs; the last alone makes 10 + 2 x 25 kg.
    let mut s = Story::new();
    let plates = [0.5, 1.0, 1.25, 1.5, 2.0, 2.5, 5.0, 10.0, 25.0];
    let pairs = plates.iter().map(|w| PlatePair { weight: kg(*w) }).collect();
    s.owns(Kit { barbell: Some(Barbell { bar: kg(10.0), plates: pairs }), ..Kit::default() });
    let catalogue = s.catalogue.clone();
    let place = catalogue.place(&"hinge-barbell".into()).unwrap();
    let loads = s.with_bench(|b| b.ground.loads(&place));
    let made: Vec<f64> = loads.iter().map(|l| place.variant.external(l).0).collect();
    assert_eq!((made[0], *made.last().unwrap()), (10.0, 10.0 + 2.0 * plates.iter().sum::<f64>()));
    // Every half kilogram from the bar up is made once: a pair of 0.25 kg would be needed for the odd quarters.
    assert!(made.windows(2).all(|w| w[1] - w[0] > 0.25), "each weight once");
    for total in [60.0, 11.0, 12.0, 12.5, 107.5] {
        assert!(made.iter().any(|m| (m - total).abs() < 1e-9), "{total} kg");
    }
    // A file that names ever so many, each twice the one before, ends all the same.
    let pairs = (0..40).map(|n| PlatePair { weight: kg(0.01 * f64::from(n * n + 1)) }).collect();
    s.owns(Kit { barbell: Some(Barbell { bar: kg(10.0), plates: pairs }), ..Kit::default() });
    assert!(s.with_bench(|b| b.ground.loads(&place)).len() <= 4096);
}

#[test]
fn what_goes_above_the_head_is_closed_where_nothing_may() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("overhead-press", 8, 12, 3), slot("vertical-pull", 6, 10, 3)], 2);
    assert!(!s.rests("overhead-press") && !s.rests("vertical-pull"));
    s.screened(&["shoulder-pain"], &[]);
    assert!(s.rests("overhead-press") && s.rests("vertical-pull"));
    assert_eq!(s.reasons("overhead-press"), [R::ConditionRuledOut]);
}

#[test]
fn from_twenty_weeks_the_incline_takes_the_place_of_the_back() {
    for (weeks, variant) in [(19, "bridge-two-legs"), (20, "bridge-two-legs-incline")] {
        let mut s = Story::new();
        bridge(s.weeks_pregnant(weeks));
        assert_eq!(s.next("bridge").variant.as_str(), variant, "{weeks} weeks");
        assert_eq!(s.reasons("bridge").contains(&R::PositionStage), weeks >= 20, "{weeks} weeks");
    }
    let mut s = Story::new();
    bridge(s.pregnant_undated());
    assert_eq!(s.next("bridge").variant.as_str(), "bridge-two-legs-incline", "undated is taken as late");
}

#[test]
fn the_incline_comes_at_the_level_where_she_stands() {
    let mut s = Story::new();
    bridge(s.weeks_pregnant(19)).starts_at("bridge", 1, None);
    s.session_of("bridge", 10, left(4)).days(7);
    let next = s.next("bridge");
    assert_eq!((next.level, next.variant.as_str()), (1, "bridge-paused-incline"));
}

#[test]
fn a_supine_variant_in_hand_closes_to_its_sibling() {
    let mut s = Story::new();
    bridge(s.weeks_pregnant(10)).trains();
    assert_eq!(s.plan("bridge").variant.as_str(), "bridge-two-legs");
    s.restricted(RestrictionKind::Position { position: Position::Supine });
    let plan = s.plan("bridge");
    assert_eq!(plan.variant.as_str(), "bridge-two-legs-incline", "closed since it was shown");
    assert!(plan.reasons.iter().any(|r| r.code == R::Restricted));
}

#[test]
fn restrictions_and_conditions_rule_out() {
    let open = |set: &dyn Fn(&mut Story), variant: &str| {
        let mut s = Story::new();
        s.owns(full_kit());
        set(&mut s);
        s.with_bench(|b| {
            let place = s.catalogue.place(&variant.into()).unwrap();
            b.ground.bar(&place, None).is_none()
        })
    };
    assert!(open(&|_| {}, "split-squat-full"));
    for (i, set) in [
        &(|s: &mut Story| {
            s.screened(&["girdle-pain"], &[]);
        }) as &dyn Fn(&mut Story),
        &|s| {
            s.restricted(RestrictionKind::Caution { caution: Caution::OneSided });
        },
        &|s| {
            s.restricted(RestrictionKind::Position { position: Position::Standing });
        },
        &|s| {
            s.restricted(RestrictionKind::Variant { variant: "split-squat-full".into() });
        },
        &|s| {
            s.restricted(RestrictionKind::LevelAbove { ladder: "split-squat".into(), level: 0 });
        },
    ]
    .iter()
    .enumerate()
    {
        assert!(!open(set, "split-squat-full"), "case {i}");
    }
    assert!(!open(
        &|s| {
            s.restricted(RestrictionKind::AllLoad);
        },
        "squat-goblet"
    ));
    assert!(open(
        &|s| {
            s.restricted(RestrictionKind::AllLoad);
        },
        "squat-free"
    ));
    assert!(!open(
        &|s| {
            s.screened(&["wrist-pain"], &[]);
        },
        "push-up-wall"
    ));
    assert!(
        !open(
            &|s| {
                s.owns(dumbbells(&[2.0]));
            },
            "bridge-band"
        ),
        "her kit lacks it"
    );
}

#[test]
fn a_restriction_ends_on_its_day() {
    let mut s = Story::new();
    let until = Some(s.today() + chrono::Duration::days(3));
    s.says(Payload::Restriction { what: RestrictionKind::AllLoad, until, note: "wait".into() });
    s.owns(dumbbells(&[4.0])).starts_at("squat", 3, Some(one(4.0)));
    s.days(3);
    assert_eq!(s.external(&s.next("squat")), 0.0);
    s.days(1);
    assert_eq!(s.external(&s.next("squat")), 4.0);
}

#[test]
fn after_a_caesarean_without_clearance_there_is_breathing_alone() {
    let mut s = Story::new();
    s.birth_weeks_ago(10, BirthMode::Caesarean)
        .programme(vec![slot("squat", 8, 12, 3), timed("breathing", 30, 60)], 2);
    assert!(s.rests("squat") && !s.rests("breathing"));
    assert!(s.reasons("squat").contains(&R::ClearanceWaits));
    s.cleared();
    assert!(!s.rests("squat"));
    let mut s = Story::new();
    let birth = s.today() - chrono::Duration::days(70);
    s.says(Payload::StageChanged {
        stage: Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(true) },
    });
    assert!(s.rests("squat"), "a severe tear asks, too");
}

#[test]
fn the_first_two_weeks_are_breathing_alone() {
    let mut s = Story::new();
    s.birth_weeks_ago(1, BirthMode::Vaginal)
        .programme(vec![slot("squat", 8, 12, 3), timed("breathing", 30, 60)], 2);
    assert!(s.rests("squat") && !s.rests("breathing"));
    assert!(s.reasons("squat").contains(&R::StageBreathing));
}

#[test]
fn a_clearance_counts_for_what_was_there_when_it_was_given() {
    let mut s = Story::new();
    s.cleared().days(30);
    s.screened(&["high-blood-pressure"], &[]);
    assert!(s.rests("squat"), "cleared a month before the condition was named");
    s.cleared();
    assert!(!s.rests("squat"));
    s.days(10).screened(&["high-blood-pressure", "anaemia"], &[]);
    assert!(!s.rests("squat"), "the same condition, recorded again, has been cleared");
    // A letter dated ahead opens nothing before its day.
    let mut s = Story::new();
    s.birth_weeks_ago(10, BirthMode::Caesarean);
    let on = s.today() + chrono::Duration::days(7);
    s.says(Payload::cleared("clinic", on, "from next week"));
    assert!(s.rests("squat"));
    s.days(7);
    assert!(!s.rests("squat"));
}

#[test]
fn a_condition_can_ask_for_more_in_reserve() {
    let mut s = Story::new();
    let plain = s.next("squat").reserve.unwrap();
    s.screened(&["anaemia"], &[]);
    assert_eq!(s.next("squat").reserve.unwrap(), plain + 1.0);
    assert!(s.reasons("squat").contains(&R::ConditionReserve));
}

#[test]
fn a_due_date_of_a_clinician_wins_and_the_tool_never_redates() {
    let due = chrono::NaiveDate::from_ymd_opt(2026, 10, 8).unwrap();
    let period = chrono::NaiveDate::from_ymd_opt(2026, 2, 1).unwrap();
    let stage = Stage::pregnant(Some(due), Some(period));
    let on = chrono::NaiveDate::from_ymd_opt(2026, 4, 9).unwrap();
    let newel_engine::stage::StageOn::Pregnant { age: Some(age), .. } = stage.on(on) else { panic!("dated") };
    assert_eq!((age.weeks, age.days), (14, 0));
}

#[test]
fn one_level_at_a_time_even_when_the_kit_changes() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("bridge", 8, 12, 3)], 2).starts_at("bridge", 2, Some(one(6.0)));
    s.session_of("bridge", 10, left(3));
    s.owns(dumbbells(&[]));
    let next = s.next("bridge");
    assert_eq!((next.level, next.variant.as_str()), (1, "bridge-paused"));
}
