//! What is known of a client's safety, put together for its page.

use super::own_stage;
use crate::newel::Books;
use crate::profile::Known;
use crate::rulebook::said_numbers;
use crate::views::{
    CheckView, ClearanceView, ConditionChoice, ConditionView, DueView, ImpactView, IntakeView, LoosenedView,
    OpenThing, PlanRestView, RestrictionView, RuledOutView, SafetyView, SettableView, SignView,
    StageAsideView, StageEffortView,
};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ground::Ground;
use newel_engine::history::History;
use newel_engine::ids::{CheckId, DeviceId, PersonId, RecordId, SymptomId};
use newel_engine::programme::Programme;
use newel_engine::proposal::{Bench, Gate};
use newel_engine::record::{ClearedThing, Voice};
use newel_engine::rules::{
    Asks, Class, ConditionGroup, Direction, RulePack, RuleSetting, SettingTarget, SettingValue, When,
};
use newel_engine::stage::{Stage, StageOn};
use std::collections::BTreeMap;

pub(super) fn view_of(
    known: &Known,
    books: &Books,
    device: DeviceId,
    person: PersonId,
    now: DateTime<FixedOffset>,
) -> SafetyView {
    let today = now.date_naive();
    let history = known.history();
    let none = Programme::empty();
    let bench = known.bench_for(known.plan.as_ref().map_or(&none, |p| &p.programme), today, None);
    let ground = &bench.ground;
    let rules = bench.inputs.rules;
    let stage = history.stage();
    let own = |record: RecordId| known.records.iter().any(|r| r.id == record && r.device == device);
    // After a loss nothing speaks of what belongs to a pregnancy; that it waits is said all the same.
    let after_loss = matches!(ground.stage, StageOn::AfterLoss { .. });
    let spoken =
        |kind: &SymptomId| !(after_loss && rules.symptom(kind).map(|k| k.when) == Some(When::Pregnant));
    let intake = history.intake();
    let standing = history.standing_intakes();
    let after_birth = matches!(ground.stage, StageOn::Postpartum { .. });
    SafetyView {
        person,
        name: String::new(),
        today,
        stage: stage.map(|s| s.on(today)),
        recorded: stage.cloned(),
        due: stage.and_then(|s| {
            let (on, by) = s.due()?;
            let told = match s {
                Stage::Pregnant { told, .. } => told.clone(),
                Stage::Postpartum { .. } | Stage::AfterLoss { .. } | Stage::Neither => None,
            };
            Some(DueView { on, by, told })
        }),
        disagreement: stage.and_then(|s| s.disagreement(rules)),
        aside: history
            .stages_said
            .iter()
            .filter(|s| s.aside)
            .map(|s| StageAsideView {
                record: s.record,
                day: s.at.date_naive(),
                stage: s.what.clone(),
                own: own(s.record),
            })
            .collect(),
        own_stage: own_stage(history, device, now),
        rest: history.rests().map(|r| PlanRestView {
            day: r.day,
            after_loss: r.after_loss,
            client: r.taken_up.contains(&Voice::Client),
            coach: r.taken_up.contains(&Voice::Coach),
        }),
        closed: match bench.gate() {
            Gate::Open => Vec::new(),
            Gate::Closed { reasons, .. } => reasons.all().to_vec(),
        },
        open: open_things(&bench)
            .into_iter()
            .map(|open| match &open.symptom {
                Some(kind) if !spoken(kind) => OpenThing { slug: "before".to_owned(), symptom: None, ..open },
                _ => open,
            })
            .collect(),
        clearances: clearances(&bench, &own),
        signs: signs(&bench).into_iter().filter(|s| spoken(&s.symptom)).collect(),
        conditions: intake
            .conditions
            .iter()
            .map(|id| ConditionView {
                condition: id.clone(),
                by: standing.iter().filter(|i| i.what.conditions.contains(id)).map(|i| i.by).collect(),
                asks: rules.condition(id).map_or(Asks::Nothing, |c| c.asks_at(ground.stage)),
                source: rules.condition(id).map_or_else(String::new, |c| c.source.clone()),
            })
            .collect(),
        baselines: intake.baselines,
        trained: intake.trained,
        never: intake.never,
        intakes: standing
            .iter()
            .map(|i| IntakeView {
                record: i.record,
                day: i.at.date_naive(),
                by: i.by,
                conditions: i.what.conditions.clone(),
                baselines: i.what.baselines.clone(),
                trained: i.what.trained,
                never: i.what.never,
                note: i.note.clone(),
            })
            .collect(),
        ruled_out: ground
            .ruled_out()
            .into_iter()
            .map(|out| RuledOutView { source: rules.source(&out.rule).to_owned(), out })
            .collect(),
        restrictions: restrictions(history, today),
        effort: ground.effort().map(|e| StageEffortView {
            rule: e.id.clone(),
            target: if ground.intake.trained {
                e.trained_target.unwrap_or(e.least_target)
            } else {
                e.least_target
            },
            floor: e.least_floor,
            most_sets: e.most_sets,
            breathing_only: e.breathing_only,
            load_allowed: e.load_allowed,
            source: e.source.clone(),
        }),
        impact: impact(ground),
        screen_due: newel_engine::screening::due(&bench),
        loosened: loosened(&bench, books),
        settings: Vec::new(),
        settable: Vec::new(),
        // What belongs to a birth is asked after a birth, and never after a loss.
        choices: rules
            .conditions()
            .iter()
            .filter(|c| {
                c.when.at(Some(ground.stage)) && (after_birth || c.group != ConditionGroup::AfterBirth)
            })
            .map(|c| ConditionChoice {
                condition: c.id.clone(),
                group: c.group,
                asks: c.asks_at(ground.stage),
            })
            .collect(),
        baseline_kinds: rules.symptoms().iter().filter(|k| k.has_baseline()).map(|k| k.id.clone()).collect(),
    }
}

/// Restrictions that hold on a day.
pub(crate) fn restrictions(history: &History, today: NaiveDate) -> Vec<RestrictionView> {
    history
        .restrictions
        .iter()
        .filter(|r| r.what.until.is_none_or(|u| today <= u))
        .map(|r| RestrictionView {
            record: r.record,
            what: r.what.what.clone(),
            until: r.what.until,
            note: r.what.note.clone(),
        })
        .collect()
}

/// The checks before impact and what they open; nothing at a stage that does not ask for them.
fn impact(ground: &Ground<'_>) -> Option<ImpactView> {
    if ground.checks.is_empty() {
        return None;
    }
    let number = |rule, name| ground.rules.number(rule, name);
    let week = number("impact.wait", "from_week");
    let waits = ground.stage.weeks_after().is_some_and(|now| f64::from(now) < week);
    let check_of = |id: &CheckId| ground.rules.checks().iter().find(|c| c.id == *id).cloned();
    Some(ImpactView {
        from_week: waits.then_some(week as u32),
        asked: number("impact.checks", "asked") >= 1.0,
        opens_first: !waits && ground.open_checks(false) == 0,
        opens_all: !waits && ground.open_checks(true) == 0,
        checks: ground
            .checks
            .iter()
            .filter_map(|c| Some(CheckView { what: check_of(&c.check)?, standing: c.clone() }))
            .collect(),
    })
}

/// What a clearance can speak of: what waits for one, and signs that wait for an answer.
fn open_things(bench: &Bench<'_>) -> Vec<OpenThing> {
    let waits = bench.ground.waits.iter().map(|w| OpenThing {
        thing: w.of.thing(),
        slug: w.of.slug().to_owned(),
        condition: match w.of.thing() {
            ClearedThing::Condition { condition } => Some(condition),
            ClearedThing::Birth | ClearedThing::Sign { .. } => None,
        },
        symptom: None,
        day: None,
        asks: w.asks,
        ran_out: w.ran_out,
    });
    let reds = bench.state.open_reds().map(|r| (r.record, &r.symptom, r.at, "red"));
    let holds = bench.state.open_holds().map(|h| (h.record, &h.symptom, h.at, "hold"));
    // A hold on one ladder is answered by the coach.
    let wide = holds.filter(|(record, ..)| {
        bench
            .state
            .holds
            .iter()
            .any(|h| h.record == *record && h.ladder.is_none() && h.answer.is_none() && !h.cleared)
    });
    let mut all: Vec<OpenThing> = reds
        .chain(wide)
        .map(|(record, symptom, at, slug)| OpenThing {
            thing: ClearedThing::Sign { record },
            slug: slug.to_owned(),
            condition: None,
            symptom: Some(symptom.clone()),
            day: Some(at.date_naive()),
            asks: Asks::Clearance,
            ran_out: None,
        })
        .collect();
    all.extend(waits);
    let mut seen: Vec<ClearedThing> = Vec::new();
    all.retain(|o| {
        let new = !seen.contains(&o.thing);
        seen.push(o.thing.clone());
        new
    });
    all
}

fn clearances(bench: &Bench<'_>, own: &dyn Fn(RecordId) -> bool) -> Vec<ClearanceView> {
    let state = &bench.state;
    let symptom_of = |record: RecordId| {
        let red = state.reds.iter().find(|r| r.record == record).map(|r| r.symptom.clone());
        red.or_else(|| state.holds.iter().find(|h| h.record == record).map(|h| h.symptom.clone()))
    };
    bench
        .inputs
        .history
        .clearances
        .iter()
        .rev()
        .map(|c| {
            let speaks_of = c.what.speaks_of.clone().unwrap_or_default();
            let symptoms = speaks_of
                .iter()
                .filter_map(|t| match t {
                    ClearedThing::Sign { record } => symptom_of(*record),
                    ClearedThing::Birth | ClearedThing::Condition { .. } => None,
                })
                .collect();
            ClearanceView {
                record: c.record,
                who: c.what.who.clone(),
                on: c.what.on,
                said: c.what.said.clone(),
                speaks_of,
                symptoms,
                until: c.what.until,
                holds: c.what.holds_on(bench.inputs.day),
                own: own(c.record),
            }
        })
        .collect()
}

fn signs(bench: &Bench<'_>) -> Vec<SignView> {
    let reds = bench.state.reds.iter().map(|r| SignView {
        record: r.record,
        at: r.at,
        symptom: r.symptom.clone(),
        urgency: Some(r.urgency),
        scope: newel_engine::rules::Scope::All,
        waits: !r.cleared,
    });
    let holds = bench.state.holds.iter().map(|h| SignView {
        record: h.record,
        at: h.at,
        symptom: h.symptom.clone(),
        urgency: None,
        scope: h.scope,
        waits: h.rests(),
    });
    let mut all: Vec<SignView> = reds.chain(holds).collect();
    all.sort_by_key(|s| std::cmp::Reverse(s.at));
    all
}

/// What a coach can set for a client: each number with the sentence of its rule, each kind of symptom with its classes.
pub(super) fn settable(built_in: &RulePack, now: &RulePack) -> Vec<SettableView> {
    let numbers = now.spoken().into_iter().flat_map(|(id, numbers)| {
        let names: Vec<String> =
            numbers.keys().filter(|name| built_in.may_set(&id, name).is_some()).cloned().collect();
        names.into_iter().filter_map(move |name| {
            let target = SettingTarget::Number { rule: id.clone(), name: name.clone() };
            Some(SettableView {
                sentence: id.sentence(),
                numbers: said_numbers(&numbers),
                now: now.value_of(&target)?,
                pack: built_in.value_of(&target)?,
                may: built_in.may_set(&id, &name).copied(),
                classes: Vec::new(),
                target,
            })
        })
    });
    let kinds = now.symptoms().iter().filter_map(|kind| {
        let target = SettingTarget::Class { symptom: kind.id.clone() };
        let classes: Vec<Class> = [Class::Note, Class::Cue, Class::Drop, Class::Hold, Class::Red]
            .into_iter()
            .filter(|class| {
                let note = Some("asked".to_owned());
                let value = SettingValue::Class(*class);
                let setting = RuleSetting { target: target.clone(), value, until: None, note };
                built_in.check_setting(&setting).is_ok()
            })
            .collect();
        (classes.len() > 1).then_some(SettableView {
            sentence: format!("symptom-{}", kind.id),
            numbers: BTreeMap::new(),
            now: now.value_of(&target)?,
            pack: built_in.value_of(&target)?,
            may: None,
            classes,
            target,
        })
    });
    numbers.chain(kinds).collect()
}

/// Rules that the coach loosened and intakes of the client's that she put aside, each with its note.
fn loosened(bench: &Bench<'_>, books: &Books) -> Vec<LoosenedView> {
    let history = bench.inputs.history;
    let rules = history.settings.iter().filter_map(|said| {
        let direction = books.rules.check_setting(&said.what).ok()?;
        let rule = match &said.what.target {
            SettingTarget::Number { rule, .. } => rule.to_string(),
            SettingTarget::Class { symptom } => format!("symptom.{symptom}"),
        };
        (direction == Direction::Looser).then(|| LoosenedView {
            record: said.record,
            at: said.at,
            what: "rule".to_owned(),
            rule: Some(rule),
            note: said.what.note.clone().unwrap_or_default(),
            in_force: bench
                .inputs
                .rules
                .set_by_coach()
                .iter()
                .any(|s| s.record == said.record && s.setting == said.what),
        })
    });
    let standing = history.standing_intakes();
    let intakes = history.intakes_said.iter().filter(|i| !i.instead_of.is_empty()).map(|i| LoosenedView {
        record: i.record,
        at: i.at,
        what: "intake".to_owned(),
        rule: None,
        note: i.note.clone().unwrap_or_default(),
        in_force: standing.iter().any(|s| s.record == i.record),
    });
    let mut all: Vec<LoosenedView> = rules.chain(intakes).collect();
    all.sort_by_key(|l| std::cmp::Reverse(l.at));
    all
}
