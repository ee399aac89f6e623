//! Landing after a birth: not before its week, not before the checks, and the coach may bring both forward with a note.
//! The checks are those of the published guide for returning to running (Goom T, Donnelly G, Brockwell E, 2019; the list
//! from memory). And what goes on while everything else waits: breathing, pelvic floor, mobility.

use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{CheckOutcome, Payload};
use newel_engine::rules::{RulePack, RuleSetting, SettingTarget, SettingValue};
use newel_engine::stage::{BirthMode, Stage};

/// Typed in from the guide, not read from the pack.
const WITHOUT_A_LANDING: [&str; 8] = [
    "walk",
    "balance",
    "single-leg-squat",
    "running-man",
    "calf-raise",
    "single-leg-bridge",
    "single-leg-stand-up",
    "side-leg-lift",
];
const WITH_A_LANDING: [&str; 3] = ["jog-on-the-spot", "bound", "hop"];

fn after_birth(weeks: i64) -> Story {
    let mut s = Story::new();
    s.programme(vec![slot("impact", 8, 12, 5)], 2).birth_weeks_ago(weeks, BirthMode::Vaginal).taken_up();
    s
}

/// The levels of the impact ladder that are open.
fn open(s: &Story) -> Vec<usize> {
    s.with_bench(|b| {
        let ladder = b.ground.catalogue.ladder(&"impact".into()).unwrap();
        b.ground.open(ladder, None).iter().map(|p| p.level).collect()
    })
}

fn sets(s: &mut Story, rule: &str, name: &str, value: f64, note: Option<&str>) {
    let target = SettingTarget::Number { rule: rule.into(), name: name.into() };
    let note = note.map(str::to_owned);
    s.says(Payload::RuleSetting(RuleSetting {
        target,
        value: SettingValue::Number(value),
        until: None,
        note,
    }));
}

#[test]
fn the_pack_has_the_checks_of_the_guide() {
    let pack = RulePack::built_in().unwrap();
    let of = |lands: bool| -> Vec<String> {
        pack.checks().iter().filter(|c| c.lands == lands).map(|c| c.id.to_string()).collect()
    };
    assert_eq!(of(false), WITHOUT_A_LANDING);
    assert_eq!(of(true), WITH_A_LANDING);
}

#[test]
fn nothing_lands_before_its_week_whatever_was_tried() {
    for (weeks, opens) in [(0, false), (11, false), (12, true), (60, true)] {
        let mut s = after_birth(weeks);
        s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear).tries(&WITH_A_LANDING, CheckOutcome::Clear);
        assert_eq!(open(&s), if opens { vec![0, 1, 2] } else { vec![] }, "{weeks} weeks");
        assert_eq!(s.rests("impact"), !opens, "{weeks} weeks");
    }
    let s = after_birth(11);
    assert!(s.reasons("impact").contains(&R::ImpactWaits));
}

#[test]
fn the_checks_without_a_landing_open_the_first_steps_and_all_of_them_the_hop() {
    let mut s = after_birth(14);
    assert!(open(&s).is_empty(), "no check was tried");
    assert!(s.reasons("impact").contains(&R::ImpactWaits));
    for n in 0..WITHOUT_A_LANDING.len() {
        assert!(open(&s).is_empty(), "{n} of them done");
        s.tries(&WITHOUT_A_LANDING[n..=n], CheckOutcome::Clear);
    }
    assert_eq!(open(&s), [0, 1]);
    for n in 0..WITH_A_LANDING.len() {
        assert_eq!(open(&s), [0, 1], "{n} of those with a landing done");
        s.tries(&WITH_A_LANDING[n..=n], CheckOutcome::Clear);
    }
    assert_eq!(open(&s), [0, 1, 2]);
}

#[test]
fn what_was_not_done_in_full_or_brought_a_sign_opens_nothing_until_it_is_tried_again_without() {
    for outcome in [CheckOutcome::NotYet, CheckOutcome::Sign] {
        let mut s = after_birth(14);
        s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear).days(1).tries(&["balance"], outcome);
        assert!(open(&s).is_empty(), "{outcome:?}");
        // On the same day the stricter of two accounts holds, whichever was written last.
        s.tries(&["balance"], CheckOutcome::Clear);
        assert!(open(&s).is_empty(), "{outcome:?}, the same day");
        s.days(1).tries(&["balance"], CheckOutcome::Clear);
        assert_eq!(open(&s), [0, 1], "{outcome:?}, a day later");
    }
}

#[test]
fn a_sign_with_a_landing_closes_every_landing_and_not_done_in_full_only_the_hop() {
    let mut s = after_birth(14);
    s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear).tries(&["hop"], CheckOutcome::NotYet);
    assert_eq!(open(&s), [0, 1]);
    s.days(1).tries(&["hop"], CheckOutcome::Sign);
    assert!(open(&s).is_empty(), "heaviness in a hop: no landing at all");
    s.days(7).tries(&["hop"], CheckOutcome::NotYet);
    assert_eq!(open(&s), [0, 1], "and open again once it was tried without");
}

#[test]
fn what_was_tried_before_this_birth_or_is_dated_ahead_does_not_count() {
    let mut s = after_birth(30);
    s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear);
    assert_eq!(open(&s), [0, 1]);
    s.days(400).birth_weeks_ago(13, BirthMode::Vaginal);
    assert!(open(&s).is_empty(), "a birth later");
    let on = s.today().succ_opt().unwrap();
    let results = WITHOUT_A_LANDING
        .map(|c| newel_engine::record::CheckResult { check: c.into(), outcome: CheckOutcome::Clear })
        .to_vec();
    s.says(Payload::ImpactChecked {
        on,
        by: newel_engine::record::Voice::Client,
        results,
        note: String::new(),
    });
    assert!(open(&s).is_empty(), "tomorrow's");
    s.days(1);
    assert_eq!(open(&s), [0, 1]);
}

#[test]
fn the_coach_brings_weeks_and_checks_forward_with_a_note_and_not_without() {
    for (note, opens) in [(None, false), (Some("seen by the physiotherapist"), true)] {
        let mut s = after_birth(14);
        sets(&mut s, "impact.checks", "asked", 0.0, note);
        assert_eq!(!open(&s).is_empty(), opens, "checks, {note:?}");
        let mut s = after_birth(9);
        s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear);
        sets(&mut s, "impact.wait", "from_week", 8.0, note);
        assert_eq!(!open(&s).is_empty(), opens, "weeks, {note:?}");
    }
    // Never before six weeks.
    let mut s = after_birth(5);
    s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear);
    sets(&mut s, "impact.wait", "from_week", 4.0, Some("she feels fine"));
    assert!(open(&s).is_empty());
}

#[test]
fn nothing_lands_in_pregnancy_unless_the_coach_says_until_when() {
    let mut s = Story::new();
    s.programme(vec![slot("impact", 8, 12, 5)], 2).weeks_pregnant(10);
    assert!(open(&s).is_empty());
    sets(&mut s, "impact.pregnant", "from_week", 14.0, Some("a runner, asked her midwife"));
    assert_eq!(open(&s), [0, 1, 2]);
    s.days(28);
    assert!(open(&s).is_empty(), "from week 14 on");
    let mut s = Story::new();
    s.programme(vec![slot("impact", 8, 12, 5)], 2).pregnant_undated();
    sets(&mut s, "impact.pregnant", "from_week", 14.0, Some("a runner"));
    assert!(open(&s).is_empty(), "a week that is not known is a late one");
}

#[test]
fn after_a_loss_the_same_holds_and_at_no_stage_nothing_is_asked() {
    let mut s = Story::new();
    let on = s.today() - chrono::Duration::weeks(13);
    s.programme(vec![slot("impact", 8, 12, 5)], 2);
    assert_eq!(open(&s), [0, 1, 2], "neither");
    s.says(Payload::StageChanged { stage: Stage::AfterLoss { on } }).taken_up();
    assert!(open(&s).is_empty());
    s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear);
    assert_eq!(open(&s), [0, 1]);
}

#[test]
fn prolapse_rules_landing_out_whatever_was_tried() {
    let mut s = after_birth(20);
    s.tries(&WITHOUT_A_LANDING, CheckOutcome::Clear).tries(&WITH_A_LANDING, CheckOutcome::Clear);
    s.screened(&["prolapse"], &[]);
    assert!(open(&s).is_empty());
    assert!(s.reasons("impact").contains(&R::ConditionRuledOut));
}

#[test]
fn breathing_pelvic_floor_and_mobility_go_on_while_the_provider_is_asked() {
    let all = ["squat", "breathing", "pelvic-floor", "mobility"];
    let resting = |s: &Story| all.map(|l| s.rests(l));
    let slots = || all.map(|l| slot(l, 8, 12, 5)).to_vec();
    let mut s = Story::new();
    s.programme(slots(), 2).birth_weeks_ago(8, BirthMode::Caesarean).taken_up();
    assert_eq!(resting(&s), [true, false, false, false], "a caesarean that nobody has looked at");
    let mut s = Story::new();
    s.programme(slots(), 2).weeks_pregnant(20).screened(&["twins"], &[]);
    assert_eq!(resting(&s), [true, false, false, false], "a relative contraindication");
    // The first two weeks: breathing, pelvic floor and walking.
    let mut s = Story::new();
    s.programme(slots(), 2).birth_weeks_ago(1, BirthMode::Vaginal).taken_up();
    assert_eq!(resting(&s), [true, false, false, true], "a week after a birth");
    // Absolute: nothing at all.
    let mut s = Story::new();
    s.programme(slots(), 2).weeks_pregnant(20).screened(&["waters-broken"], &[]);
    assert!(s.is_closed());
}

#[test]
fn a_pelvic_floor_that_is_hard_to_let_go_is_only_let_go() {
    let mut s = Story::new();
    s.programme(vec![slot("pelvic-floor", 8, 12, 5)], 2).screened(&["pelvic-floor-tense"], &[]);
    let open: Vec<usize> = s.with_bench(|b| {
        let ladder = b.ground.catalogue.ladder(&"pelvic-floor".into()).unwrap();
        b.ground.open(ladder, None).iter().map(|p| p.level).collect()
    });
    assert_eq!(open, [0]);
}

#[test]
fn letting_go_is_not_held_when_a_symptom_comes_at_the_lowest_step() {
    let mut s = Story::new();
    s.programme(vec![slot("pelvic-floor", 8, 12, 5), slot("squat", 8, 12, 5)], 2);
    s.session_of("pelvic-floor", 10, None).session_of("squat", 10, left(5));
    s.since_last_time(symptom("heaviness", None)).trains();
    s.ends().settled();
    assert!(!s.rests("pelvic-floor"), "the pelvic floor is let go whatever else rests");
    assert!(s.rests("squat"), "at its lowest step a drop holds the squat");
}
