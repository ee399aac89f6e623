//! The list of symptom kinds row by row, typed in from the list that the rule pack was made from and not
//! read from the pack: kind, when it is asked for, number, class, scope. Sources stand in the pack.

use crate::story::*;
use newel_engine::history::Intake;
use newel_engine::record::{Symptom, SymptomAmount as A};
use newel_engine::rules::{Class as C, RulePack, Scope as S, Urgency as U, When};
use newel_engine::stage::BirthMode;
use newel_engine::symptom::{Before, judge};
use std::collections::BTreeSet;

/// Kind, when, urgency. Red, and all training stops; the sign alone decides.
const RED: &[(&str, When, U)] = &[
    ("bleeding", When::Pregnant, U::Call),
    // Fluid, or not sure whether it is urine.
    ("fluid-leak", When::Pregnant, U::Call),
    ("tightenings-painful", When::Pregnant, U::Call),
    ("belly-pain", When::Any, U::Call),
    ("chest-pain", When::Any, U::Emergency),
    ("palpitations", When::Any, U::Call),
    // Breathless before effort, or rest does not settle it.
    ("breathless-before-effort", When::Any, U::Emergency),
    ("breathless-not-settling", When::Any, U::Emergency),
    ("fainted", When::Any, U::Call),
    ("dizzy-staying", When::Any, U::Call),
    // Headache; eyesight changes.
    ("headache", When::Any, U::Call),
    ("eyesight", When::Any, U::Call),
    // One calf or leg, or arm.
    ("calf-one-sided", When::Any, U::Call),
    ("arm-one-sided", When::Any, U::Call),
    // Vomiting that will not stop; foul discharge.
    ("vomiting", When::Any, U::Call),
    ("discharge", When::Any, U::Call),
    // 160/110 or more.
    ("bp-very-high", When::Any, U::Call),
    ("weakness", When::Any, U::Call),
    ("baby-moving-less", When::Pregnant, U::Call),
    ("swelling-face-hands", When::Any, U::Call),
    ("fever", When::Any, U::Call),
    // A pad soaked in an hour, a clot like an egg.
    ("bleeding-soaking", When::Postpartum, U::Call),
    ("bleeding-clot", When::Postpartum, U::Call),
    ("seizure", When::Any, U::Emergency),
    ("harm-thoughts", When::Any, U::Emergency),
    ("numb-between-legs", When::Any, U::Emergency),
    ("belly-blow", When::Pregnant, U::SameDay),
    ("retention", When::Any, U::SameDay),
    // Girdle or back pain, and she cannot bear weight.
    ("cannot-bear-weight", When::Any, U::SameDay),
];

/// Kind, when, class, scope of its hold. Whatever the amount.
const OTHERS: &[(&str, When, C, S)] = &[
    // 140/90 or more.
    ("bp-high", When::Any, C::Hold, S::All),
    ("wound-infection", When::Postpartum, C::Hold, S::All),
    ("fatigue", When::Any, C::Hold, S::All),
    ("bleeding-heavier", When::Postpartum, C::Hold, S::All),
    ("wound-pain", When::Postpartum, C::Hold, S::All),
    ("bulge", When::Any, C::Hold, S::LowerBody),
    ("stool-wind", When::Any, C::Hold, S::LowerBody),
    ("dizzy-brief", When::Any, C::Hold, S::All),
    ("dizzy-on-back", When::Pregnant, C::Drop, S::Ladder),
    ("leak-effort", When::Any, C::Drop, S::Ladder),
    ("leak-urge", When::Any, C::Note, S::Ladder),
    ("heaviness", When::Any, C::Drop, S::Ladder),
    ("doming", When::Any, C::Cue, S::Ladder),
    ("tightenings-painless", When::Pregnant, C::Note, S::Ladder),
    ("breast-pain", When::Postpartum, C::Note, S::Ladder),
    ("soreness-both-legs", When::Any, C::Note, S::Ladder),
    ("low-mood", When::Any, C::Note, S::Ladder),
    ("poor-sleep", When::Any, C::Note, S::Ladder),
    ("nausea", When::Pregnant, C::Note, S::Ladder),
    ("tiredness", When::Pregnant, C::Note, S::Ladder),
    ("belly-mild", When::Any, C::Note, S::Ladder),
    ("something-else", When::Any, C::Drop, S::Ladder),
    ("not-sure", When::Any, C::Drop, S::Ladder),
];

/// Kind; its classes at 1 to 2, at 3 to 5, at 6 to 10. All of them hold the ladder alone.
const BY_NUMBER: &[(&str, [C; 3])] = &[
    ("girdle-pain", [C::Drop, C::Drop, C::Hold]),
    ("back-pain", [C::Drop, C::Drop, C::Hold]),
    ("joint-pain", [C::Note, C::Drop, C::Hold]),
    ("wrist-pain", [C::Note, C::Drop, C::Hold]),
    ("shoulder-pain", [C::Note, C::Drop, C::Hold]),
    ("knee-pain", [C::Note, C::Drop, C::Hold]),
];

/// Kind, and its class when it comes again in the session.
const AGAIN: &[(&str, C)] = &[("doming", C::Drop), ("belly-mild", C::Hold)];

/// Kind, and its class when it is still there next morning.
const NEXT_MORNING: &[(&str, C)] =
    &[("heaviness", C::Hold), ("girdle-pain", C::Hold), ("back-pain", C::Hold)];

/// Kinds that end the set in hand although their class would not.
const END_THE_SET: &[&str] = &["tightenings-painless", "belly-mild"];

/// Kinds that say whom to turn to.
const REFER: &[&str] = &["bulge", "stool-wind", "leak-urge", "low-mood", "poor-sleep"];

const EVERY_AMOUNT: [Option<A>; 8] = [
    None,
    Some(A::Little),
    Some(A::Clearly),
    Some(A::Lot),
    Some(A::Pain(0)),
    Some(A::Pain(3)),
    Some(A::Pain(7)),
    Some(A::Pain(10)),
];

/// The kinds of the list.
pub fn kinds() -> Vec<&'static str> {
    let red = RED.iter().map(|r| r.0);
    red.chain(OTHERS.iter().map(|r| r.0)).chain(BY_NUMBER.iter().map(|r| r.0)).collect()
}

/// What the list says of a kind at a pain number (5 where it is left out): class and scope of a hold.
pub fn listed(kind: &str, pain: u8, next_morning: bool) -> (C, S) {
    if next_morning && let Some((_, class)) = NEXT_MORNING.iter().find(|(k, _)| *k == kind) {
        return (*class, S::Ladder);
    }
    if RED.iter().any(|r| r.0 == kind) {
        return (C::Red, S::All);
    }
    if let Some((_, _, class, scope)) = OTHERS.iter().find(|r| r.0 == kind) {
        return (*class, *scope);
    }
    let (_, by) = BY_NUMBER.iter().find(|r| r.0 == kind).unwrap();
    (
        by[if pain <= 2 {
            0
        } else if pain <= 5 {
            1
        } else {
            2
        }],
        S::Ladder,
    )
}

/// True for a kind whose class goes by a pain number.
pub fn is_counted(kind: &str) -> bool {
    BY_NUMBER.iter().any(|r| r.0 == kind)
}

fn pack() -> RulePack {
    RulePack::built_in().unwrap()
}

fn judged(felt: &Symptom, before: Before) -> newel_engine::symptom::Verdict {
    judge(&pack(), &Intake::default(), felt, before)
}

#[test]
fn every_kind_of_the_pack_stands_in_the_list_and_none_is_missing() {
    let listed =
        RED.iter().map(|r| r.0).chain(OTHERS.iter().map(|r| r.0)).chain(BY_NUMBER.iter().map(|r| r.0));
    let listed: BTreeSet<String> = listed.map(str::to_owned).collect();
    let pack: BTreeSet<String> = pack().symptoms().iter().map(|k| k.id.to_string()).collect();
    assert_eq!(listed, pack);
    assert_eq!(listed.len(), RED.len() + OTHERS.len() + BY_NUMBER.len(), "each stands once");
}

#[test]
fn red_flags_depend_on_the_sign_alone() {
    let pack = pack();
    for (kind, when, urgency) in RED {
        let found = pack.symptom(&(*kind).into()).unwrap();
        assert_eq!((found.when, found.scope), (*when, S::All), "{kind}");
        for amount in EVERY_AMOUNT {
            let verdict = judged(&symptom(kind, amount), Before::default());
            assert_eq!((verdict.class, verdict.urgency), (C::Red, Some(*urgency)), "{kind} {amount:?}");
            assert!(verdict.ends_set, "{kind}");
        }
        // Never on a week or a stage: the kind marked by anybody closes training.
        for stage in 0..3 {
            let mut s = Story::new();
            match stage {
                0 => {}
                1 => drop(s.weeks_pregnant(8).today()),
                _ => drop(s.birth_weeks_ago(40, BirthMode::Vaginal).today()),
            }
            s.marks_at_home(symptom(kind, None));
            assert!(s.is_closed(), "{kind} in stage {stage}");
        }
    }
    let baby = pack.symptom(&"baby-moving-less".into()).unwrap();
    assert_eq!(baby.from_week, Some(24), "asked from 24 weeks on");
}

#[test]
fn the_other_kinds_have_their_class_and_scope() {
    let pack = pack();
    for (kind, when, class, scope) in OTHERS {
        let found = pack.symptom(&(*kind).into()).unwrap();
        assert_eq!(found.when, *when, "{kind}");
        for amount in EVERY_AMOUNT {
            let verdict = judged(&symptom(kind, amount), Before::default());
            assert_eq!((verdict.class, verdict.scope), (*class, *scope), "{kind} {amount:?}");
            let ends = *class >= C::Drop || END_THE_SET.contains(kind);
            assert_eq!(verdict.ends_set, ends, "{kind}");
        }
    }
    for kind in pack.symptoms() {
        assert_eq!(kind.refer, REFER.contains(&kind.id.as_str()), "{}: whom to turn to", kind.id);
    }
}

#[test]
fn a_pain_number_has_its_class() {
    for (kind, [little, middling, much]) in BY_NUMBER {
        for n in 1..=10 {
            let class = match n {
                1..=2 => little,
                3..=5 => middling,
                _ => much,
            };
            let verdict = judged(&symptom(kind, Some(A::Pain(n))), Before::default());
            assert_eq!((verdict.class, verdict.scope), (*class, S::Ladder), "{kind} {n}");
        }
        let left_out = judged(&symptom(kind, None), Before::default());
        assert_eq!((left_out.class, left_out.amount), (*middling, 5), "{kind}: left out counts as 5");
    }
}

#[test]
fn again_in_the_session_and_there_next_morning() {
    let again = Before { again: true, ..Before::default() };
    let morning = Before { next_morning: true, ..Before::default() };
    for (kind, class) in AGAIN {
        assert_eq!(judged(&symptom(kind, Some(A::Little)), again).class, *class, "{kind} again");
    }
    for (kind, class) in NEXT_MORNING {
        assert_eq!(judged(&symptom(kind, Some(A::Pain(1))), morning).class, *class, "{kind} next morning");
    }
}

// -- the rules under the list, where no other test tells of them ---------------------------------

fn usual(amount: A) -> Story {
    let mut s = Story::new();
    s.owns(full_kit())
        .programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3), slot("hinge", 8, 12, 3)], 2)
        .starts_at("squat", 3, Some(one(6.0)))
        .starts_at("row", 1, Some(one(5.0)))
        .starts_at("hinge", 2, Some(pair(5.0)))
        .screened(&[], &[("heaviness", amount), ("leak-effort", amount)]);
    s.trains().does_all("squat", 10, left(3)).does_all("row", 10, left(3)).does_all("hinge", 10, left(3));
    s.ends().settled().days(2);
    s
}

#[test]
fn two_sessions_running_hold_above_the_baseline_and_not_at_it() {
    for (amount, holds) in [(A::Little, false), (A::Lot, true)] {
        let mut s = usual(A::Little);
        for _ in 0..2 {
            s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(amount)));
            s.ends().settled().days(2);
        }
        assert_eq!(s.rests("squat"), holds, "{amount:?} where a little is usual");
    }
}

#[test]
fn usual_pelvic_floor_marks_do_not_unload_the_session() {
    let mut s = usual(A::Clearly);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", Some(A::Little)));
    assert!(!s.is_over("hinge"), "both are as usual for her");
    let mut s = usual(A::Little);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Lot)));
    s.does("row", 8, left(3)).marks("row", symptom("leak-effort", Some(A::Lot)));
    assert!(s.is_over("hinge"), "the hinge has no unloaded option that is lying or seated");
}

#[test]
fn a_wound_infection_holds_and_with_fever_it_is_red() {
    let mut s = usual(A::Little);
    s.since_last_time(symptom("wound-infection", None)).checks_in();
    assert!(s.is_closed());
    s.with_bench(|b| assert!(b.state.reds.is_empty()));
    let mut s = usual(A::Little);
    s.since_last_time(symptom("wound-infection", None)).since_last_time(symptom("fever", None)).checks_in();
    s.with_bench(|b| assert_eq!(b.state.reds.len(), 1));
}
