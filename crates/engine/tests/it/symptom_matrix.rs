//! Every kind of symptom, at every stage, at every amount, in every setting: its class by the list, what is proposed
//! next, and what the coach sees. The list is the one that `symptom_table` has typed in.

use crate::story::*;
use crate::symptom_table::{is_counted, kinds, listed};
use newel_engine::record::{Payload, SymptomAmount as A};
use newel_engine::review::{Urge, findings};
use newel_engine::rules::{Class as C, Scope as S};
use newel_engine::stage::{BirthMode, Stage};

const STAGES: [&str; 4] = ["pregnant", "after birth", "after loss", "neither"];
const SETTINGS: [&str; 4] = ["in the set", "check-in", "next morning", "home"];
/// Ladders of the session: two of the legs and hips, one above.
const SLOTS: [&str; 3] = ["squat", "hinge", "row"];

/// Two sessions in, each ladder above its lowest step.
fn client(stage: &str) -> Story {
    let mut s = Story::new();
    match stage {
        "pregnant" => drop_ref(s.weeks_pregnant(25)),
        "after birth" => drop_ref(s.birth_weeks_ago(30, BirthMode::Vaginal)),
        "after loss" => {
            let on = s.today() - chrono::Duration::days(30 * 7);
            s.says(Payload::StageChanged { stage: Stage::AfterLoss { on } });
        }
        _ => {}
    }
    s.owns(full_kit()).programme(SLOTS.iter().map(|l| slot(l, 8, 12, 4)).collect(), 1);
    s.screened(&[], &[]).starts_at("squat", 2, Some(one(6.0))).starts_at("hinge", 1, Some(one(6.0)));
    s.starts_at("row", 2, None);
    for _ in 0..2 {
        s.trains();
        for slot in SLOTS {
            s.does_all(slot, 8, left(4));
        }
        s.ends().settled().days(2);
    }
    s
}

fn drop_ref(_: &mut Story) {}

/// A third session; then, or around it, the symptom.
fn felt(stage: &str, setting: &str, what: Option<newel_engine::record::Symptom>) -> Story {
    let mut s = client(stage);
    let trains = |s: &mut Story| {
        s.trains();
        for slot in SLOTS {
            s.does_all(slot, 8, left(4));
        }
    };
    match (setting, what) {
        ("in the set", what) => {
            s.trains().does("squat", 8, left(4));
            if let Some(what) = what {
                s.marks("squat", what);
            }
            s.ends().settled().days(2);
        }
        ("check-in", what) => {
            trains(&mut s);
            s.ends().settled().days(2);
            if let Some(what) = what {
                s.since_last_time(what).checks_in();
            }
        }
        ("next morning", what) => {
            trains(&mut s);
            s.ends();
            match what {
                Some(what) => s.not_settled(vec![what]).days(2),
                None => s.settled().days(2),
            };
        }
        (_, what) => {
            trains(&mut s);
            s.ends().settled().days(1);
            if let Some(what) = what {
                s.marks_at_home(what);
            }
            s.days(1);
        }
    }
    s
}

/// Step, and what is held, of each ladder next; `None` where it rests.
fn next(s: &Story) -> Vec<Option<(u8, f64)>> {
    if s.is_closed() {
        return vec![None; SLOTS.len()];
    }
    SLOTS
        .iter()
        .map(|slot| {
            (!s.rests(slot)).then(|| {
                let p = s.next(slot);
                (p.level, s.external(&p))
            })
        })
        .collect()
}

#[test]
fn every_kind_at_every_stage_and_amount_in_every_setting() {
    let mut told = 0;
    for stage in STAGES {
        for setting in SETTINGS {
            let usual = next(&felt(stage, setting, None));
            assert!(usual.iter().all(|n| n.is_some_and(|(level, _)| level > 0)), "{stage} {setting}");
            for kind in kinds() {
                let amounts: &[(Option<A>, u8)] = if is_counted(kind) {
                    &[(None, 5), (Some(A::Pain(1)), 1), (Some(A::Pain(4)), 4), (Some(A::Pain(8)), 8)]
                } else {
                    &[(None, 5), (Some(A::Little), 2), (Some(A::Lot), 8)]
                };
                for (amount, pain) in amounts {
                    let s = felt(stage, setting, Some(symptom(kind, *amount)));
                    looks_right(&s, (stage, setting), (kind, *amount, *pain), &usual);
                    told += 1;
                }
            }
        }
    }
    assert!(told > 2_500, "{told}");
}

fn looks_right(
    s: &Story,
    (stage, setting): (&str, &str),
    (kind, amount, pain): (&str, Option<A>, u8),
    usual: &[Option<(u8, f64)>],
) {
    let what = format!("{kind} {amount:?}, {stage}, {setting}");
    let (class, scope) = listed(kind, pain, setting == "next morning");
    // What belongs to no ladder concerns all of them.
    let scope = if scope == S::Ladder && setting != "in the set" { S::All } else { scope };
    let now = next(s);
    let coach: Vec<(String, Urge)> =
        s.with_bench(|b| findings(b).iter().map(|f| (f.code.to_owned(), f.urge)).collect());
    let sees = |code: &str| coach.iter().any(|(c, _)| c == code);
    match class {
        C::Red => {
            assert!(s.is_closed(), "{what}: closed");
            assert_eq!(coach.first(), Some(&("red-flag".to_owned(), Urge::Stop)), "{what}: first of all");
        }
        C::Hold => {
            assert!(sees("hold-waits"), "{what}: the coach is asked: {coach:?}");
            match scope {
                S::All => assert!(s.is_closed(), "{what}: closed"),
                S::LowerBody => {
                    assert!(now[0].is_none() && now[1].is_none() && now[2].is_some(), "{what}: {now:?}");
                }
                S::Ladder => {
                    assert!(now[0].is_none() && now[1].is_some() && now[2].is_some(), "{what}: {now:?}");
                }
            }
        }
        C::Drop => {
            let concerned = if setting == "in the set" { 1 } else { SLOTS.len() };
            for n in 0..SLOTS.len() {
                let (Some((level, kg)), Some((before, held))) = (now[n], usual[n]) else {
                    panic!("{what}: {} rests", SLOTS[n]);
                };
                if n < concerned {
                    assert_eq!(level, before - 1, "{what}: a step down on {}", SLOTS[n]);
                } else {
                    assert_eq!((level, kg), (before, held), "{what}: {} is not concerned", SLOTS[n]);
                }
            }
            let shown = match setting {
                "next morning" => "not-settled",
                _ => "symptom-marked",
            };
            assert!(sees(shown), "{what}: the coach sees it: {coach:?}");
        }
        C::Cue | C::Note => {
            // It raises nothing; a morning that was not settled counts as no clean one.
            for n in 0..SLOTS.len() {
                let (Some((level, kg)), Some((before, held))) = (now[n], usual[n]) else {
                    panic!("{what}: {} rests", SLOTS[n]);
                };
                assert!(level <= before && (level < before || kg <= held), "{what}: {now:?} {usual:?}");
                if setting != "next morning" {
                    assert_eq!(level, before, "{what}: nobody steps down for it");
                }
            }
            if class == C::Cue && setting == "in the set" {
                assert!(s.next("squat").cue, "{what}: another way next time");
            }
        }
    }
}
