//! What a coach sets for one client: tightening, loosening with a note, red flags, and back.

use crate::story::*;
use newel_engine::history::Said;
use newel_engine::ids::RecordId;
use newel_engine::proposal::{Gate, Turn};
use newel_engine::reason::{Fact, Reason, ReasonCode as R};
use newel_engine::record::{Payload, SymptomAmount as A};
use newel_engine::rules::*;
use uuid::Uuid;

pub fn number(rule: &str, name: &str, value: f64) -> RuleSetting {
    RuleSetting {
        target: SettingTarget::Number { rule: rule.into(), name: name.into() },
        value: SettingValue::Number(value),
        until: None,
        note: None,
    }
}

pub fn class(symptom: &str, class: Class) -> RuleSetting {
    RuleSetting {
        target: SettingTarget::Class { symptom: symptom.into() },
        value: SettingValue::Class(class),
        until: None,
        note: None,
    }
}

pub fn noted(setting: RuleSetting) -> RuleSetting {
    RuleSetting { note: Some("as we said on the phone".into()), ..setting }
}

fn back(setting: &RuleSetting) -> RuleSetting {
    RuleSetting { value: SettingValue::Pack, until: None, note: None, ..setting.clone() }
}

fn set(s: &mut Story, setting: RuleSetting) -> RecordId {
    s.log(Payload::RuleSetting(setting))
}

/// Loads by the quarter kilogram; one session at 8 kg that leaves room for a whole tenth, and no bigger step.
fn hinge() -> Story {
    let loads: Vec<f64> = (20..=60).map(|n| f64::from(n) / 4.0).collect();
    let mut s = Story::new();
    s.owns(dumbbells(&loads)).programme(vec![slot("hinge", 8, 12, 3)], 2).starts_at(
        "hinge",
        1,
        Some(one(8.0)),
    );
    s.trains().does_with("hinge", one(8.0), 11, plenty()).does_with("hinge", one(8.0), 11, plenty());
    s.ends().settled().days(2);
    s
}

fn kg_of(s: &Story) -> f64 {
    s.external(&s.next("hinge"))
}

/// A squat at level 3 with a session behind her.
fn squat() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 3, Some(one(6.0)));
    s.session_of("squat", 10, left(3));
    s
}

fn named(s: &Story, slot: &str) -> Vec<Reason> {
    s.of_slot(slot).reasons.all().iter().filter(|r| r.code == R::RuleSetByCoach).cloned().collect()
}

#[test]
fn a_tightened_step_binds_and_names_itself() {
    let mut s = hinge();
    assert_eq!(kg_of(&s), 8.75, "a tenth more is 8.8");
    assert!(named(&s, "hinge").is_empty());
    set(&mut s, noted(number("load.step", "share", 0.05)));
    assert_eq!(kg_of(&s), 8.25, "a twentieth more is 8.4");
    let named = named(&s, "hinge");
    assert_eq!(named.len(), 1);
    assert_eq!(named[0].facts["note"], Fact::Words("as we said on the phone".into()));
    assert_eq!(named[0].rule.as_str(), "load.step");
}

#[test]
fn tightening_asks_for_no_note_and_loosening_does() {
    let mut s = hinge();
    set(&mut s, number("load.step", "share", 0.05));
    assert_eq!(kg_of(&s), 8.25);
    let mut s = hinge();
    set(&mut s, number("load.step", "share", 0.2));
    assert_eq!(kg_of(&s), 8.75, "without a note it has no effect");
    let mut blank = number("load.step", "share", 0.2);
    blank.note = Some("  ".into());
    set(&mut s, blank);
    assert_eq!(kg_of(&s), 8.75, "nor with a blank one");
    set(&mut s, noted(number("load.step", "share", 0.2)));
    assert!(kg_of(&s) > 8.75, "with a note it has: {}", kg_of(&s));
}

#[test]
fn the_last_written_holds_until_its_day_and_then_the_one_before_it() {
    let mut s = hinge();
    set(&mut s, number("load.step", "share", 0.05));
    let until = s.today() + chrono::Duration::days(1);
    set(&mut s, RuleSetting { until: Some(until), ..number("load.step", "share", 0.0) });
    assert_eq!(kg_of(&s), 8.0);
    s.days(1);
    assert_eq!(kg_of(&s), 8.0, "with that day");
    s.days(1);
    assert_eq!(kg_of(&s), 8.25);
    set(&mut s, back(&number("load.step", "share", 0.0)));
    assert_eq!(kg_of(&s), 8.75, "back to the pack");
    set(&mut s, number("load.step", "share", 0.05));
    set(&mut s, number("load.step", "share", 0.1));
    assert_eq!(kg_of(&s), 8.75, "the pack's own value is back, too");
}

#[test]
fn one_that_is_taken_back_has_no_effect() {
    let mut s = hinge();
    let record = set(&mut s, number("load.step", "share", 0.05));
    s.withdraws(record);
    assert_eq!(kg_of(&s), 8.75);
}

#[test]
fn of_two_corrections_side_by_side_the_stricter_holds() {
    for swap in [false, true] {
        let mut s = hinge();
        let record = set(&mut s, number("load.step", "share", 0.08));
        let (a, b) = if swap { (0.03, 0.06) } else { (0.06, 0.03) };
        s.corrects(record, Payload::RuleSetting(number("load.step", "share", a)));
        s.on_device(9).corrects(record, Payload::RuleSetting(number("load.step", "share", b)));
        assert_eq!(kg_of(&s), 8.0, "0.03 of 8 kg is less than a step of the kit");
    }
}

#[test]
fn a_class_can_be_tightened_and_says_so() {
    let mut s = squat();
    set(&mut s, noted(class("heaviness", Class::Hold)));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    assert!(s.is_over("squat"), "a drop by the pack, a hold by the coach");
    let Turn::Over(reasons) = s.flow().turns[&"squat".into()].clone() else { panic!("it is over") };
    assert!(reasons.iter().any(|r| r.code == R::RuleSetByCoach), "the card says so, too");
    s.ends().settled().days(2);
    assert!(s.rests("squat"));
    assert_eq!(named(&s, "squat").len(), 1);
    assert_eq!(named(&s, "squat")[0].rule.as_str(), "symptom.heaviness");
}

#[test]
fn a_kind_tightened_to_red_closes_all_until_a_clearance() {
    let mut s = squat();
    set(&mut s, class("bulge", Class::Red));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("bulge", None)).ends().days(2);
    assert!(s.is_closed());
    s.with_bench(|b| assert_eq!(b.state.reds[0].urgency, Urgency::Call));
    s.cleared();
    assert!(!s.is_closed());
}

#[test]
fn a_loosened_kind_keeps_what_its_number_makes_stricter() {
    let mut s = squat();
    set(&mut s, noted(class("girdle-pain", Class::Note)));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    assert_eq!(s.plan("squat").level, 3, "a note now");
    s.marks("squat", symptom("girdle-pain", Some(A::Pain(7))));
    assert!(s.is_over("squat"), "7 of 10 holds as before");
}

#[test]
fn a_red_flag_in_a_file_is_never_loosened() {
    for class_to in [Class::Note, Class::Cue, Class::Drop, Class::Hold] {
        let mut s = squat();
        set(&mut s, noted(class("chest-pain", class_to)));
        s.trains().marks("squat", symptom("chest-pain", None)).ends();
        assert!(s.is_closed(), "{class_to:?}");
    }
}

#[test]
fn what_was_is_judged_by_what_was_in_force_then() {
    // Tightened afterwards: the drop of then stays a drop.
    let mut s = squat();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.ends().settled().days(2);
    let before = s.proposal();
    set(&mut s, class("heaviness", Class::Hold));
    assert!(!s.rests("squat"));
    assert_eq!(s.next("squat").level, 2);
    assert_eq!(before.slots[0].outcome, s.of_slot("squat").outcome);
    // Loosened afterwards: it stays one, too.
    let mut s = squat();
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.ends().settled().days(2);
    set(&mut s, noted(class("heaviness", Class::Note)));
    assert_eq!(s.next("squat").level, 2);
    // And what was set for a time counts for that time.
    let mut s = squat();
    let until = s.today();
    set(&mut s, RuleSetting { until: Some(until), ..class("heaviness", Class::Hold) });
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(A::Little)));
    s.ends().settled().days(2);
    assert!(s.rests("squat"), "held then, and held still");
}

#[test]
fn a_closed_gate_names_the_coachs_rule() {
    let mut s = squat();
    set(&mut s, noted(class("poor-sleep", Class::Hold)));
    s.since_last_time(symptom("poor-sleep", None)).checks_in();
    let Gate::Closed { reasons, .. } = s.proposal().gate else { panic!("she rests today") };
    assert!(reasons.has(R::HoldWaits) && reasons.has(R::RuleSetByCoach));
}

#[test]
fn effort_of_a_stage_can_be_tightened() {
    let mut s = Story::new();
    s.weeks_pregnant(30).owns(full_kit());
    assert_eq!(s.next("squat").reserve, Some(4.0));
    set(&mut s, noted(number("effort.pregnant-late", "least_target", 5.0)));
    assert_eq!(s.next("squat").reserve, Some(5.0));
    assert_eq!(named(&s, "squat").len(), 1);
}

#[test]
fn each_setting_that_is_not_well_founded_says_why() {
    let pack = RulePack::built_in().unwrap();
    let check = |setting: &RuleSetting| pack.check_setting(setting);
    use SettingError as E;
    assert_eq!(check(&number("load.step", "share", 0.05)), Ok(Direction::Tighter));
    assert_eq!(check(&number("load.step", "share", 0.10)), Ok(Direction::Back));
    assert_eq!(check(&number("load.step", "share", 0.15)), Err(E::NoteMissing));
    assert_eq!(check(&noted(number("load.step", "share", 0.15))), Ok(Direction::Looser));
    assert_eq!(check(&number("level.back-up", "exposures", 3.0)), Ok(Direction::Tighter));
    assert_eq!(check(&noted(number("level.back-up", "exposures", 1.0))), Ok(Direction::Looser));
    for value in [-0.1, 0.21, f64::NAN, f64::INFINITY] {
        assert_eq!(check(&noted(number("load.step", "share", value))), Err(E::OutOfRange), "{value}");
    }
    assert_eq!(check(&number("level.back-up", "exposures", 2.5)), Err(E::OutOfRange), "no half exposure");
    assert_eq!(check(&noted(number("no.rule", "share", 0.1))), Err(E::Unknown));
    assert_eq!(check(&noted(number("load.step", "no-number", 0.1))), Err(E::Unknown));
    assert_eq!(check(&noted(number("strength.day", "sigma", 0.1))), Err(E::Fixed));
    assert_eq!(check(&back(&number("strength.day", "sigma", 0.1))), Err(E::Fixed));
    assert_eq!(check(&noted(number("effort.pregnant-late", "from_week", 30.0))), Err(E::Fixed));
    assert_eq!(
        check(&noted(number("effort.pregnant-late", "most_sets", 1.0))),
        Err(E::Unknown),
        "it has none"
    );
    assert_eq!(check(&number("effort.after-2", "most_sets", 1.0)), Ok(Direction::Tighter));
    let mut mixed = number("load.step", "share", 0.05);
    mixed.value = SettingValue::Class(Class::Hold);
    assert_eq!(check(&noted(mixed)), Err(E::OtherKind));
    let mut mixed = class("heaviness", Class::Hold);
    mixed.value = SettingValue::Number(0.0);
    assert_eq!(check(&noted(mixed)), Err(E::OtherKind));
    assert_eq!(check(&class("heaviness", Class::Hold)), Ok(Direction::Tighter));
    assert_eq!(check(&class("heaviness", Class::Note)), Err(E::NoteMissing));
    assert_eq!(check(&noted(class("heaviness", Class::Note))), Ok(Direction::Looser));
    assert_eq!(check(&noted(class("no-such-kind", Class::Red))), Err(E::Unknown));
    assert_eq!(check(&class("not-sure", Class::Hold)), Ok(Direction::Tighter));
    assert_eq!(check(&noted(class("not-sure", Class::Note))), Err(E::Fixed), "it may be a red flag");
    for kind in pack.symptoms().iter().filter(|k| k.class == Class::Red) {
        for to in [Class::Note, Class::Cue, Class::Drop, Class::Hold] {
            assert_eq!(check(&noted(class(kind.id.as_str(), to))), Err(E::RedFlag), "{}", kind.id);
        }
    }
}

#[test]
fn nothing_of_red_flags_or_clearance_can_be_set() {
    let pack = RulePack::built_in().unwrap();
    for rule in ["symptom.red", "clearance.asked", "symptom.hold"] {
        assert!(pack.rule(rule).unwrap().may_set.is_empty(), "{rule}");
    }
    for rule in pack.rules().filter(|r| r.id.as_str().starts_with("strength.")) {
        assert!(rule.may_set.is_empty(), "{}: the filter is not for the coach to set", rule.id);
    }
    // A pack whose file says otherwise is not read.
    let json = RULES_JSON.replace(
        r#""id": "clearance.asked", "numbers": {}"#,
        r#""id": "clearance.asked", "numbers": {}, "may_set": { "x": { "stricter": "more", "least": 0, "most": 1 } }"#,
    );
    assert!(json != RULES_JSON && RulePack::parse(&json, SYMPTOMS_JSON).is_err());
}

#[test]
fn without_settings_the_pack_in_force_is_the_pack_itself_and_with_them_it_is_made_once() {
    let pack = RulePack::built_in().unwrap();
    let day = "2026-03-02".parse().unwrap();
    assert!(std::ptr::eq(pack.in_force(&[], None, day), &raw const pack));
    let at = "2026-03-01T09:00:00+01:00".parse().unwrap();
    let said = |n: u128, what| Said { record: RecordId(Uuid::from_u128(n)), at, what };
    let tight = [said(1, number("load.step", "share", 0.05))];
    let first = pack.in_force(&tight, None, day);
    assert_eq!(first.number("load.step", "share"), 0.05);
    assert!(std::ptr::eq(first, pack.in_force(&tight, None, day)));
    let other = [said(2, class("heaviness", Class::Hold))];
    let second = pack.in_force(&other, None, day);
    assert_eq!(second.number("load.step", "share"), 0.1);
    assert!(std::ptr::eq(first, pack.in_force(&tight, None, day)), "the first is still there");
    let nothing = [said(3, class("chest-pain", Class::Note))];
    assert!(std::ptr::eq(pack.in_force(&nothing, None, day), &raw const pack));
}
