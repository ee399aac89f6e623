//! A coach sets rules for a client; they travel in the plan file and hold on the client's device.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Duration, FixedOffset};
use newel_app::views::{ClientForm, IntakeForm, Role};
use newel_app::{AppError, Newel, Refusal};
use newel_engine::ids::PersonId;
use newel_engine::record::{Payload, Symptom};
use newel_engine::rules::{
    Class, Direction, RuleSetting, SettingError, SettingTarget, SettingValue, Urgency,
};
use newel_store::Action;

fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(text).unwrap()
}

fn class(symptom: &str, class: Class, note: Option<&str>) -> RuleSetting {
    RuleSetting {
        target: SettingTarget::Class { symptom: symptom.into() },
        value: SettingValue::Class(class),
        until: None,
        note: note.map(str::to_owned),
    }
}

fn share(value: f64, note: Option<&str>) -> RuleSetting {
    RuleSetting {
        target: SettingTarget::Number { rule: "load.step".into(), name: "share".into() },
        value: SettingValue::Number(value),
        until: None,
        note: note.map(str::to_owned),
    }
}

/// A coach with one client, who has a programme.
fn coach(folder: &std::path::Path, now: DateTime<FixedOffset>) -> (Newel, PersonId) {
    let mut coach = Newel::open(folder.to_owned()).unwrap();
    coach.profile_new("Ines", Role::Coach, now).unwrap();
    let form = ClientForm { name: "Mara".into(), stage: None, intake: Some(IntakeForm::default()) };
    let roster = coach.profile().unwrap().client_add(now, form).unwrap();
    let (person, programme) = (roster.clients[0].person, roster.programmes[0].id);
    coach.profile().unwrap().programme_give(now, person, programme).unwrap();
    (coach, person)
}

#[test]
fn set_rules_travel_in_the_plan_and_hold_on_the_clients_device() {
    let folders = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let now = at("2026-03-02T08:00:00+01:00");
    let (mut coach, person) = coach(folders.0.path(), now);
    let profile = coach.profile().unwrap();
    let set = profile.set_rule(now, person, class("bulge", Class::Red, Some("her surgeon asked"))).unwrap();
    assert_eq!(set.len(), 1);
    assert_eq!((set[0].direction, set[0].in_force, set[0].own), (Some(Direction::Tighter), true, true));
    assert_eq!(set[0].pack, Some(SettingValue::Class(Class::Hold)));

    let out = folders.0.path().join("files");
    let plan = profile.plan_write(&out, None, now, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let mut client = Newel::open(folders.1.path().to_owned()).unwrap();
    client.profile_from_plan(&text, now).unwrap();
    let hers = client.profile().unwrap();
    let kinds = hers.train_view(now).unwrap().kinds;
    let bulge = kinds.iter().find(|k| k.id.as_str() == "bulge").unwrap();
    assert_eq!(bulge.urgency, Some(Urgency::Call), "her mark card shows it as red");
    let symptom = Symptom { kind: Some("bulge".into()), amount: None, place: None, words: None };
    let mark = Payload::mark_at_large(None, symptom);
    hers.write(Action::MarkSymptom, now + Duration::hours(1), person, vec![mark]).unwrap();
    let bench = hers.own().unwrap().bench(now.date_naive(), None).unwrap();
    assert_eq!(bench.state.open_reds().count(), 1, "a hold by the pack, red by her coach");
}

#[test]
fn loosening_asks_for_a_note_and_red_flags_stay() {
    let folder = tempfile::tempdir().unwrap();
    let now = at("2026-03-02T08:00:00+01:00");
    let (mut coach, person) = coach(folder.path(), now);
    let profile = coach.profile().unwrap();
    let mut refused = |setting: RuleSetting| match profile.set_rule(now, person, setting) {
        Err(AppError::Refused(refusal)) => refusal,
        other => panic!("refused, not {other:?}"),
    };
    assert_eq!(refused(share(0.15, None)), Refusal::NoteMissing);
    assert_eq!(refused(share(0.15, Some("   "))), Refusal::NoteMissing);
    assert_eq!(refused(share(7.0, Some("why not"))), Refusal::OutOfRange);
    assert_eq!(refused(class("chest-pain", Class::Hold, Some("she says it is fine"))), Refusal::RedFlagStays);
    assert_eq!(refused(class("not-sure", Class::Note, Some("she taps by mistake"))), Refusal::RuleFixed);
    assert_eq!(refused(class("no-such-kind", Class::Red, None)), Refusal::NoSuchThing);
    let yesterday = now.date_naive().pred_opt();
    assert_eq!(refused(RuleSetting { until: yesterday, ..share(0.05, None) }), Refusal::OutOfRange);
    assert!(profile.rule_settings(now, person).unwrap().is_empty(), "nothing was written");

    profile.set_rule(now, person, share(0.15, Some("she has lifted for years"))).unwrap();
    let views = profile.set_rule(now + Duration::minutes(1), person, share(0.05, None)).unwrap();
    let ways: Vec<_> = views.iter().map(|v| (v.direction, v.in_force)).collect();
    assert_eq!(ways, [(Some(Direction::Tighter), true), (Some(Direction::Looser), false)]);
    let answers = profile.client_view(now, person).unwrap().answers;
    assert!(answers.iter().any(|a| a.kind == "rule_setting" && a.text == "she has lifted for years"));
    let record = views[0].record;
    profile.record_withdraw_for(now + Duration::minutes(2), person, record).unwrap();
    let views = profile.rule_settings(now, person).unwrap();
    assert_eq!((views.len(), views[0].in_force), (1, true), "what was set before holds again");
}

#[test]
fn an_unfounded_setting_in_a_log_is_shown_with_its_reason_and_has_no_effect() {
    let folder = tempfile::tempdir().unwrap();
    let now = at("2026-03-02T08:00:00+01:00");
    let (mut coach, person) = coach(folder.path(), now);
    let profile = coach.profile().unwrap();
    let smuggled = vec![
        Payload::RuleSetting(class("chest-pain", Class::Note, Some("x"))),
        Payload::RuleSetting(share(0.2, None)),
        Payload::RuleSetting(share(99.0, Some("x"))),
        Payload::RuleSetting(class("of-a-newer-version", Class::Red, None)),
    ];
    profile.write(Action::SetRule, now, person, smuggled).unwrap();
    let views = profile.rule_settings(now, person).unwrap();
    let why: Vec<_> = views.iter().rev().map(|v| v.refused.unwrap()).collect();
    use SettingError as E;
    assert_eq!(why, [E::RedFlag, E::NoteMissing, E::OutOfRange, E::Unknown]);
    assert!(views.iter().all(|v| !v.in_force && v.direction.is_none()));
}

#[test]
fn only_a_coach_sets_rules() {
    let folder = tempfile::tempdir().unwrap();
    let now = at("2026-03-02T08:00:00+01:00");
    let mut newel = Newel::open(folder.path().to_owned()).unwrap();
    newel.profile_new("Mara", Role::Client, now).unwrap();
    let profile = newel.profile().unwrap();
    let person = profile.person();
    let refused = profile.set_rule(now, person, share(0.05, None));
    assert!(matches!(refused, Err(AppError::Refused(Refusal::CoachOnly))));
}
