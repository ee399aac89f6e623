//! What a proposal holds beside its level and its load: the options, the cue, what came earlier today, what is closed.

use crate::story::*;
use newel_engine::catalogue::Position;
use newel_engine::kit::Load;
use newel_engine::programme::{Amount, BlockForm, LevelSpan};
use newel_engine::proposal::{Offer, Target, Turn};
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, Purpose, RestrictionKind, SymptomAmount as A};

/// A hinge of one dumbbell, loads a quarter of a kilogram apart.
fn hinge() -> Story {
    let loads: Vec<f64> = (16..=80).map(|n| f64::from(n) / 4.0).collect();
    let mut s = Story::new();
    s.owns(dumbbells(&loads)).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts_at("hinge", 1, Some(one(10.0)));
    s.session_of("hinge", 10, left(3)).session_of("hinge", 10, left(3));
    s
}

#[test]
fn sets_that_were_done_earlier_today_tire() {
    // Their effort was not said, so that they tell nothing of strength and only tire: half a rep each.
    let proposed = |sets: usize| {
        let mut s = hinge();
        s.trains();
        for _ in 0..sets {
            s.does_with("hinge", one(9.0), 10, None);
        }
        s.ends();
        let next = s.next("hinge");
        (s.external(&next), next.target.count())
    };
    let (few, many) = (proposed(1), proposed(7));
    assert!(many.0 < few.0 || many.0 <= few.0 && many.1 < few.1, "{few:?} {many:?}");
    // What was done on another day does not.
    let mut s = hinge();
    s.trains();
    for _ in 0..7 {
        s.does_with("hinge", one(9.0), 10, None);
    }
    s.ends();
    let today = s.next("hinge");
    s.settled();
    let tomorrow = s.next("hinge");
    assert!(s.external(&tomorrow) > s.external(&today) || tomorrow.target.count() > today.target.count());
}

#[test]
fn the_session_in_hand_is_no_earlier_one() {
    // Looked at again once it is begun, a session is proposed as it was.
    let mut s = hinge();
    let before = s.next("hinge");
    s.trains();
    assert_eq!(s.next("hinge"), before);
}

#[test]
fn a_cue_of_last_time_is_told_until_the_ladder_was_done_without() {
    let mut s = hinge();
    assert!(!s.next("hinge").cue);
    s.trains().does("hinge", 10, left(3)).marks("hinge", symptom("doming", None));
    s.does("hinge", 10, left(3)).ends().settled().days(2);
    assert!(s.next("hinge").cue);
    assert!(s.reasons("hinge").contains(&R::CueChange));
    s.session_of("hinge", 10, left(3));
    assert!(!s.next("hinge").cue && !s.reasons("hinge").contains(&R::CueChange));
    // Twice in one session it dropped: then the level says it, and no cue.
    s.trains().does("hinge", 10, left(3)).marks("hinge", symptom("doming", None));
    s.marks("hinge", symptom("doming", None)).ends().settled().days(2);
    assert!(!s.next("hinge").cue && !s.reasons("hinge").contains(&R::CueChange));
}

#[test]
fn a_level_with_nothing_light_enough_is_passed_over_on_the_way_down() {
    // From a bar of 10 kg; two dumbbells of 8 kg are more, one of them is not.
    let mut s = Story::new();
    let kit = newel_engine::kit::Kit {
        barbell: Some(newel_engine::kit::Barbell { bar: kg(10.0), plates: Vec::new() }),
        ..dumbbells(&[8.0])
    };
    s.owns(kit).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 3, None);
    s.session_of("hinge", 10, left(3));
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    let next = s.next("hinge");
    assert_eq!((next.level, s.external(&next)), (1, 8.0));
}

#[test]
fn options_are_at_her_level_or_below_and_never_what_is_proposed() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3), slot("bridge", 8, 12, 3)], 2);
    s.starts_at("squat", 2, Some(one(4.0))).starts_at("bridge", 1, None);
    let ladder = s.catalogue.ladder(&"squat".into()).unwrap().clone();
    let known = |level: u8, options: &[Offer]| {
        let here = |l: usize| ladder.levels[l].variants.iter().map(|v| v.id.clone());
        for option in options {
            assert!(option.level <= level);
            assert!(here(usize::from(option.level)).any(|v| v == option.variant));
        }
        options.iter().map(|o| o.level).collect::<Vec<_>>()
    };
    let next = s.next("squat");
    let levels = known(2, &next.options);
    assert!(levels.contains(&0) && levels.contains(&1), "{levels:?}");
    assert!(next.options.iter().all(|o| o.variant != next.variant));
    s.trains();
    let plan = s.plan("squat");
    assert_eq!(known(2, &plan.options), levels, "the same in the session");
    assert!(plan.options.iter().all(|o| o.variant != plan.variant));
    let easier = plan.easier.as_ref().unwrap();
    assert!(easier.level < plan.level, "a step down, and not another option of the same");
    assert_eq!(easier.level, 1, "one step");
    // With body mass alone there is nothing to choose a load from.
    let bridge = s.plan("bridge");
    assert!(bridge.loads.is_empty() || bridge.load != Load::Nothing);
    let squat = s.plan("squat");
    assert!(squat.loads.len() > 1);
}

#[test]
fn a_lighter_load_that_she_took_stays_and_a_heavier_one_was_for_that_set() {
    let mut s = hinge();
    s.programme.sessions[0].blocks[0].rounds = 4;
    s.trains();
    let shown = s.plan("hinge");
    let shown_kg = s.external_of(&shown.variant, &shown.load);
    s.does_with("hinge", one(shown_kg + 0.25), 8, left(3));
    assert_eq!(s.plan("hinge").load, shown.load);
    s.does_with("hinge", one(shown_kg - 1.0), 8, left(3));
    assert_eq!(s.external_of(&shown.variant, &s.plan("hinge").load), shown_kg - 1.0);
}

#[test]
fn ten_reps_with_what_is_asked_before_the_first_set_and_where_there_is_a_choice() {
    let asks = |weights: &[f64]| {
        let mut s = Story::new();
        s.owns(dumbbells(weights)).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 1, None);
        s.trains();
        s
    };
    let mut s = asks(&[4.0, 6.0, 8.0]);
    assert!(s.plan("hinge").ask_ten_reps);
    s.does("hinge", 10, left(4));
    assert!(!s.plan("hinge").ask_ten_reps);
    assert!(!asks(&[4.0]).plan("hinge").ask_ten_reps, "one load is no choice");
    // Answered after the proposal was shown: the answer holds, and the reason is it.
    let mut s = asks(&[4.0, 6.0, 8.0]);
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(6.0) });
    let plan = s.plan("hinge");
    assert_eq!(plan.load, one(6.0));
    let codes: Vec<R> = plan.reasons.iter().map(|r| r.code).collect();
    assert!(codes.contains(&R::StartAnswer) && !codes.contains(&R::StartLightest), "{codes:?}");
    // Not in mid-slot: the load that was begun with is what the sets go on from.
    let mut s = asks(&[4.0, 6.0, 8.0]);
    s.does("hinge", 12, left(2));
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(8.0) });
    assert_eq!(s.plan("hinge").load, one(4.0));
}

#[test]
fn a_finisher_stays_one_whatever_was_known_of_the_load() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at("hinge", 1, None);
    s.programme.sessions[0].blocks[0].form = BlockForm::Finisher;
    assert_eq!(s.next("hinge").purpose, Purpose::Finisher);
    s.trains();
    assert_eq!(s.plan("hinge").purpose, Purpose::Finisher);
    s.does("hinge", 12, plenty());
    let plan = s.plan("hinge");
    assert_eq!((plan.purpose, plan.load), (Purpose::Finisher, one(2.0)), "nothing is found in it");
}

#[test]
fn the_aim_of_timed_sets_is_not_asked() {
    let mut s = Story::new();
    s.programme(vec![timed("side-plank", 15, 30)], 2).trains();
    let plan = s.plan("side-plank");
    assert_eq!((plan.reserve, plan.target), (None, Target::Seconds(15)));
    assert!(matches!(plan.range, Amount::Seconds { .. }));
    assert!(plan.lighter.is_none());
}

#[test]
fn what_rules_an_option_out_is_said_where_it_was_hers() {
    // She did the bridge flat on the back; then that is ruled out, and the reason names it.
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2).owns(full_kit());
    s.session_of("bridge", 10, left(4));
    assert!(!s.reasons("bridge").contains(&R::Restricted));
    s.restricted(RestrictionKind::Position { position: Position::Supine });
    assert!(s.reasons("bridge").contains(&R::Restricted));
    // Harder than where she stands, it is no news.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 2).starts_at("squat", 2, Some(one(4.0)));
    s.session_of("squat", 10, left(3));
    s.restricted(RestrictionKind::LevelAbove { ladder: "squat".into(), level: 2 });
    assert!(!s.reasons("squat").contains(&R::Restricted));
    // All of them closed: each kind of reason once.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.programme.sessions[0].blocks[0].slots[0].levels = Some(LevelSpan { low: 2, high: 3 });
    s.restricted(RestrictionKind::AllLoad);
    assert!(s.rests("hinge"));
    let codes = s.reasons("hinge");
    assert_eq!(codes.iter().filter(|c| **c == R::Restricted).count(), 1, "{codes:?}");
}

#[test]
fn after_a_mark_the_card_says_what_follows() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 3).starts_at("squat", 2, Some(one(4.0)));
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    let (block, planned) = s.session().slot(&"squat".into()).unwrap();
    let offer = s.with_bench(|b| b.offer_after_mark(block, planned)).unwrap();
    let plan = s.plan("squat");
    assert_eq!((offer.level, &offer.variant, &offer.load), (1, &plan.variant, &plan.load));
    s.marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    let (block, planned) = s.session().slot(&"squat".into()).unwrap();
    assert!(s.with_bench(|b| b.offer_after_mark(block, planned)).is_none());
    assert!(matches!(s.turn("squat"), Turn::Over(_)));
}

#[test]
fn a_load_is_begun_blind_where_nothing_told_where_to_begin() {
    let blind = |s: &Story| {
        let catalogue = s.catalogue.clone();
        let place = catalogue.place(&"hinge-one-dumbbell".into()).unwrap();
        let (block, planned) = s.session().slot(&"hinge".into()).unwrap();
        s.with_bench(|b| {
            let ladder = b.inputs.catalogue.ladder(&"hinge".into()).unwrap();
            let effort = b.effort(block, planned, ladder);
            b.case(planned.dose.amount, &effort, &std::collections::BTreeMap::new()).begun_blind(&place)
        })
    };
    let with = |start: Option<Load>| {
        let mut s = Story::new();
        s.owns(dumbbells(&[4.0, 6.0]))
            .programme(vec![slot("hinge", 8, 12, 3)], 2)
            .starts_at("hinge", 1, start);
        s
    };
    assert!(blind(&with(None)));
    assert!(!blind(&with(Some(one(6.0)))), "the coach told");
    assert!(blind(&with(Some(pair(6.0)))), "a start of another make tells nothing of this");
    let mut s = with(None);
    s.says(Payload::TenReps { variant: "hinge-two-dumbbells".into(), load: pair(6.0) });
    assert!(blind(&s), "of another variant");
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: pair(6.0) });
    assert!(blind(&s), "of another make");
    s.says(Payload::TenReps { variant: "hinge-one-dumbbell".into(), load: one(6.0) });
    assert!(!blind(&s), "she told");
    s.days(100).birth_weeks_ago(13, newel_engine::stage::BirthMode::Vaginal);
    assert!(blind(&s), "what she told before a birth is of before it");
    // Another variant of its group was done: the group is known.
    let mut s = with(None);
    s.starts.clear();
    s.starts_at("hinge", 2, Some(pair(4.0)));
    let same_group = {
        let group = |v: &str| s.catalogue.place(&v.into()).unwrap().variant.group.clone();
        group("hinge-two-dumbbells") == group("hinge-one-dumbbell")
    };
    s.session_of("hinge", 10, left(3));
    assert_eq!(blind(&s), !same_group);
}

#[test]
fn care_is_taken_while_pregnant_and_in_the_first_twelve_weeks() {
    let careful = |s: &Story| {
        let (block, planned) = s.session().slot(&"squat".into()).unwrap();
        s.with_bench(|b| {
            b.effort(block, planned, b.inputs.catalogue.ladder(&"squat".into()).unwrap()).careful
        })
    };
    assert!(!careful(&Story::new()));
    let mut s = Story::new();
    s.weeks_pregnant(20);
    assert!(careful(&s));
    for (weeks, expected) in [(3, true), (11, true), (12, false), (40, false)] {
        let mut s = Story::new();
        s.birth_weeks_ago(weeks, newel_engine::stage::BirthMode::Vaginal);
        assert_eq!(careful(&s), expected, "{weeks} weeks");
    }
}

#[test]
fn the_first_time_after_a_drop_is_no_heavier_than_the_rest_of_that_session() {
    // Marked at level 3 with 8 kg; the rest of the session at level 2 with 4 kg of her own choice.
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0])).programme(vec![slot("squat", 8, 12, 3)], 3);
    s.starts_at("squat", 3, Some(one(8.0)));
    s.session_of("squat", 10, left(3));
    s.trains().does_with("squat", one(8.0), 10, left(3)).marks("squat", symptom("leak-effort", None));
    s.does_with("squat", one(4.0), 10, plenty()).ends().settled().days(2);
    let next = s.next("squat");
    assert_eq!(next.level, 2);
    assert!(s.external(&next) <= 4.0, "{}", s.external(&next));
    assert!(!s.reasons("squat").contains(&R::AfterSymptom), "the level down says it");
    // A load of the kit that is exactly what was held is not too heavy.
    let mut s = Story::new();
    s.owns(dumbbells(&[8.0, 12.0])).programme(vec![slot("squat", 8, 12, 3)], 2);
    s.starts_at("squat", 3, Some(one(8.0)));
    s.session_of("squat", 10, left(3));
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (2, 8.0));
}
