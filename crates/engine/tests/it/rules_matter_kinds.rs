//! Every field of the effort rules, the symptom kinds and the conditions that decides something:
//! changed, it changes what is proposed in a story through the real path.

use crate::rules_matter::{changed, entry};
use crate::rules_matter_stories::{in_hand, proposed};
use crate::story::*;
use newel_engine::record::{HoldAnswer, Payload, SymptomAmount as A};
use newel_engine::rules::*;
use newel_engine::stage::{BirthMode, Stage};
use serde_json::{Value, json};

fn plain() -> RulePack {
    RulePack::built_in().unwrap()
}

// -- effort -------------------------------------------------------------------------------------

/// One session in a week of a stage, then what is proposed two days on. The dose itself asks for
/// nothing in reserve, so that the stage alone decides.
fn in_stage(rules: RulePack, rule: &EffortRule, week: u32, trained: bool) -> String {
    let mut s = Story::by(rules);
    let weeks = i64::from(week);
    match rule.stage {
        StageName::Pregnant => drop_ref(s.weeks_pregnant(weeks)),
        StageName::Postpartum => drop_ref(s.birth_weeks_ago(weeks, BirthMode::Vaginal)),
        StageName::AfterLoss => {
            let on = s.today() - chrono::Duration::days(weeks * 7);
            s.says(Payload::StageChanged { stage: Stage::AfterLoss { on } });
        }
        StageName::Neither => {}
    }
    s.owns(dumbbells(&[4.0, 5.0, 6.0]))
        .says(Payload::screened(vec![], vec![], trained))
        .programme(vec![slot("hinge", 8, 12, 0), timed("breathing", 30, 60)], 4)
        .starts_at("hinge", 1, Some(one(4.0)));
    s.trains();
    for name in ["hinge", "breathing"] {
        if !s.is_over(name) {
            s.does_all(name, 10, left(5));
        }
    }
    s.ends().settled().days(1);
    proposed(&s)
}

fn drop_ref(_: &mut Story) {}

#[test]
fn every_field_of_an_effort_rule_matters() {
    let mut changes = 0;
    for rule in plain().effort() {
        let mut fields: Vec<(&str, Value, u32, bool)> = vec![
            ("least_target", json!(rule.least_target + 1.0), rule.from_week, false),
            ("least_floor", json!(5.0), rule.from_week, false),
            ("breathing_only", json!(!rule.breathing_only), rule.from_week, false),
            ("from_week", json!(rule.from_week + 1), rule.from_week, false),
        ];
        if let Some(target) = rule.trained_target {
            fields.push(("trained_target", json!(target + 1.0), rule.from_week, true));
        }
        if let Some(before) = rule.before_week {
            fields.push(("before_week", json!(before - 1), before - 1, false));
        }
        if rule.most_sets.is_some() {
            fields.push(("most_sets", json!(1), rule.from_week, false));
        }
        // Where breathing alone is open nothing is held anyway.
        if !rule.breathing_only {
            fields.push(("load_allowed", json!(!rule.load_allowed), rule.from_week, false));
        }
        for (field, value, week, trained) in fields {
            let other = changed(|rules, _| entry(rules, "effort", rule.id.as_str())[field] = value.clone());
            let (a, b) = (in_stage(plain(), rule, week, trained), in_stage(other, rule, week, trained));
            assert!(a != b, "{}: {field} at {value} changes nothing:\n{a}", rule.id);
            changes += 1;
        }
    }
    assert!(changes >= 11 * 6, "{changes}");
}

// -- symptom kinds ------------------------------------------------------------------------------

struct Felt<'k> {
    kind: &'k SymptomKind,
    amount: Option<A>,
    marks: u8,
    next_morning: bool,
}

/// Marks on the squat; what follows in hand, what is proposed next, and after the coach's "go on".
fn marked(rules: RulePack, felt: &Felt<'_>) -> String {
    let mut s = Story::by(rules);
    if felt.kind.gives_up.is_some() {
        s.weeks_pregnant(14);
    }
    s.owns(full_kit())
        .programme(
            vec![
                slot("squat", 8, 12, 3),
                slot("row", 8, 12, 3),
                slot("hinge", 8, 12, 3),
                slot("bridge", 8, 12, 3),
            ],
            2,
        )
        .starts_at("squat", 3, Some(one(6.0)))
        .starts_at("bridge", 1, None);
    s.trains();
    for name in ["squat", "row", "hinge", "bridge"] {
        s.does_all(name, 10, left(3));
    }
    s.ends().settled().days(2).trains().does("squat", 8, left(3));
    let said = symptom(felt.kind.id.as_str(), felt.amount);
    for _ in 0..felt.marks {
        s.marks("squat", said.clone());
    }
    let mut told = Vec::new();
    for name in ["squat", "row", "hinge", "bridge"] {
        told.push(in_hand(&s, name));
    }
    s.ends();
    if felt.next_morning {
        s.not_settled(vec![said]);
    } else {
        s.settled();
    }
    s.days(2);
    told.push(proposed(&s));
    told.push(s.with_bench(|b| format!("{:?}", b.state.reds.iter().map(|r| r.urgency).collect::<Vec<_>>())));
    while s.with_bench(|b| b.state.open_holds().next().is_some()) {
        s.hold_answered(HoldAnswer::GoOn);
        told.push(proposed(&s));
    }
    told.join("\n")
}

fn small(kind: &SymptomKind) -> Option<A> {
    match kind.amount {
        AmountForm::None => None,
        AmountForm::Words => Some(A::Little),
        AmountForm::Pain => Some(A::Pain(1)),
    }
}

/// The story by the pack and by one in which the kind is changed.
fn tells_apart(felt: &Felt<'_>, what: &str, change: impl Fn(&mut Value)) {
    let id = felt.kind.id.as_str();
    let other = changed(|_, symptoms| change(entry(symptoms, "kinds", id)));
    let (a, b) = (marked(plain(), felt), marked(other, felt));
    assert!(a != b, "{id}: {what} changes nothing:\n{a}");
}

#[test]
fn the_class_and_the_urgency_of_every_kind_matter() {
    for kind in plain().symptoms() {
        let felt = Felt { kind, amount: small(kind), marks: 1, next_morning: false };
        let other = match kind.class {
            Class::Note | Class::Cue => "drop",
            Class::Drop | Class::Red => "hold",
            Class::Hold => "drop",
        };
        tells_apart(&felt, "class", |k| {
            k["class"] = json!(other);
            k["urgency"] = Value::Null;
            // Bands that would no longer be stricter than the kind go with it.
            if let Some(bands) = k.get_mut("by_pain").and_then(Value::as_array_mut) {
                bands.retain(|b| other == "drop" && b["class"] == "hold");
            }
        });
        if let Some(urgency) = kind.urgency {
            let other = if urgency == Urgency::Call { "same_day" } else { "call" };
            tells_apart(&felt, "urgency", |k| k["urgency"] = json!(other));
        }
    }
}

#[test]
fn every_band_of_a_pain_number_matters() {
    let mut bands = 0;
    for kind in plain().symptoms() {
        for (i, band) in kind.by_pain.iter().enumerate() {
            let felt = Felt { kind, amount: Some(A::Pain(band.from)), marks: 1, next_morning: false };
            tells_apart(&felt, "a band left out", |k| {
                k["by_pain"].as_array_mut().unwrap().remove(i);
            });
            tells_apart(&felt, "a band that begins later", |k| {
                k["by_pain"][i]["from"] = json!(band.from + 1)
            });
            bands += 1;
        }
    }
    assert_eq!(bands, 2 + 4 * 2, "girdle and back at 6; four joints at 3 and 6");
}

#[test]
fn again_and_next_morning_matter_where_a_kind_has_them() {
    let (mut again, mut morning) = (0, 0);
    for kind in plain().symptoms() {
        if kind.again.is_some() {
            let felt = Felt { kind, amount: small(kind), marks: 2, next_morning: false };
            tells_apart(&felt, "again", |k| k["again"] = Value::Null);
            again += 1;
        }
        if kind.next_morning.is_some() {
            let felt = Felt { kind, amount: small(kind), marks: 1, next_morning: true };
            tells_apart(&felt, "next_morning", |k| k["next_morning"] = Value::Null);
            morning += 1;
        }
    }
    assert!(again >= 3 && morning >= 7, "{again} {morning}");
}

#[test]
fn the_scope_of_a_hold_and_a_position_given_up_matter() {
    for kind in plain().symptoms() {
        let felt = Felt { kind, amount: small(kind), marks: 1, next_morning: false };
        if kind.class == Class::Hold {
            let other = if kind.scope == Scope::All { "lower_body" } else { "all" };
            tells_apart(&felt, "scope", |k| k["scope"] = json!(other));
        }
        if kind.gives_up.is_some() {
            tells_apart(&felt, "gives_up", |k| k["gives_up"] = Value::Null);
        }
    }
}

// -- conditions ---------------------------------------------------------------------------------

/// Which variants are open, and what is proposed, with a condition named at a stage.
fn screened_at(rules: RulePack, condition: &Condition, when: When, cleared: bool) -> String {
    let mut s = Story::by(rules);
    match when {
        When::Any => {}
        When::Pregnant => drop(s.weeks_pregnant(25)),
        When::Postpartum => drop(s.birth_weeks_ago(20, BirthMode::Vaginal)),
    }
    s.owns(full_kit()).screened(&[condition.id.as_str()], &[]);
    if cleared {
        s.cleared();
    }
    let open: Vec<String> = s.with_bench(|b| {
        let places = s.catalogue.places();
        places.filter(|p| b.ground.bar(p, None).is_none()).map(|p| p.variant.id.to_string()).collect()
    });
    let rest = s.with_bench(|b| b.ground.more_rest());
    format!("{} {open:?} {rest} {}", s.is_closed(), proposed(&s))
}

#[test]
fn what_a_condition_asks_for_matters() {
    let mut fields = 0;
    for condition in plain().conditions() {
        let mut tells_at = |when: When, field: &str, value: Value| {
            let id = condition.id.as_str();
            let other = changed(|rules, _| entry(rules, "conditions", id)[field] = value);
            // What it rules out holds beside a clearance.
            let cleared = !["asks", "stricter_from", "when"].contains(&field);
            let told = |rules| screened_at(rules, condition, when, cleared);
            let (a, b) = (told(plain()), told(other));
            assert!(a != b, "{id}: {field} changes nothing:\n{a}");
            fields += 1;
        };
        let mut tells = |field: &str, value: Value| tells_at(condition.when, field, value);
        if !condition.rules_out.is_empty() {
            tells("rules_out", json!([]));
        }
        if !condition.rules_out_positions.is_empty() {
            tells("rules_out_positions", json!([]));
        }
        if condition.more_rest > 0 {
            tells("more_rest", json!(0));
        }
        if condition.extra_reserve > 0.0 {
            tells("extra_reserve", json!(0.0));
        }
        // What it asks for can be told of every condition, both ways.
        for other in [Asks::Nothing, Asks::Provider, Asks::Clearance] {
            if other != condition.asks {
                tells("asks", json!(other));
            }
        }
        if let Some(week) = condition.stricter_from {
            assert!(week > 25);
            tells("stricter_from", json!(25));
        }
        // One that asks for something asks for it at its stage alone.
        if condition.when != When::Any && condition.asks != Asks::Nothing {
            tells_at(When::Any, "when", json!(When::Any));
        }
    }
    assert!(fields >= 2 * plain().conditions().len() + 5, "{fields}");
}
