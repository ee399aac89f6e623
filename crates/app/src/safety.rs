//! Safety: stage, screening, clearances and what they rule out; said by the client about herself or by the coach about
//! a client.

use crate::coach::{checked_text, client_name};
use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Profile};
use crate::rulebook::said_numbers;
use crate::views::{
    ClearanceForm, ClearanceView, ConditionChoice, ConditionView, DueView, IntakeForm, IntakeView,
    LoosenedView, OpenThing, PlanRestView, RestrictionView, Role, RuledOutView, SafetyView, SettableView,
    SignView, StageAsideView, StageEffortView,
};
use chrono::{DateTime, Days, FixedOffset, NaiveDate, TimeDelta};
use newel_engine::history::History;
use newel_engine::ids::{DeviceId, PersonId, RecordId, SymptomId};
use newel_engine::programme::Programme;
use newel_engine::proposal::{Bench, Gate};
use newel_engine::record::{ClearedThing, Payload, Voice};
use newel_engine::rules::{
    Asks, Class, ConditionGroup, Direction, RulePack, RuleSetting, SettingTarget, SettingValue, SymptomKind,
    When,
};
use newel_engine::stage::{Conceived, Stage, StageOn};
use newel_store::Action;
use std::collections::BTreeMap;

/// A stage recorded by mistake can be taken back this long.
const TAKE_BACK: TimeDelta = TimeDelta::hours(24);
/// No pregnancy is longer than this, from the first day of the last period.
const LONGEST: Days = Days::new(43 * 7);

impl Profile {
    /// Whom a use case speaks of: a client of the coach, or the profile's own person; with the voice that speaks.
    fn about(&mut self, person: Option<PersonId>) -> Result<(PersonId, Voice), AppError> {
        match person {
            Some(person) => {
                self.coach_only()?;
                self.client(person)?;
                Ok((person, Voice::Coach))
            }
            None if self.role() == Role::Client => Ok((self.person(), Voice::Client)),
            None => Err(Refusal::NoSuchThing.into()),
        }
    }

    /// The safety page of a client, or of the profile's own person.
    ///
    /// # Errors
    /// When there is no such client.
    pub fn safety_view(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
    ) -> Result<SafetyView, AppError> {
        let (person, voice) = self.about(person)?;
        let (books, device) = (self.books(), self.store.device()?);
        let name = self.name()?;
        let own = person == self.person();
        let known = self.known(person)?;
        let mut view = view_of(known, &books, device, person, now);
        if voice == Voice::Coach {
            let pack = books.rules.in_force(&known.history().settings, None, now.date_naive());
            view.settable = settable(&books.rules, pack);
        }
        let said = client_name(known.history());
        view.name = if own && said.is_empty() { name } else { said };
        if voice == Voice::Coach {
            view.settings = self.rule_settings(now, person)?;
        }
        Ok(view)
    }

    /// Records a stage: a due date, a birth, a loss.
    ///
    /// # Errors
    /// When a date cannot be.
    pub fn stage_record(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        stage: Stage,
    ) -> Result<SafetyView, AppError> {
        let (about, _) = self.about(person)?;
        let stage = checked_stage(stage, now.date_naive())?;
        if self.known(about)?.history().stage() != Some(&stage) {
            self.write(Action::ChangeStage, now, about, vec![Payload::StageChanged { stage }])?;
        }
        self.safety_view(now, person)
    }

    /// Takes back a stage that this device recorded within the last day.
    ///
    /// # Errors
    /// When there is none, or it is older.
    pub fn stage_take_back(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        record: RecordId,
    ) -> Result<SafetyView, AppError> {
        let (about, _) = self.about(person)?;
        let device = self.store.device()?;
        if own_stage(self.known(about)?.history(), device, now) != Some(record) {
            return Err(Refusal::NoSuchThing.into());
        }
        self.write(Action::Withdraw, now, about, vec![Payload::Withdrawal { target: record }])?;
        self.safety_view(now, person)
    }

    /// Says that training is taken up again after a birth or a loss.
    ///
    /// # Errors
    /// When no plan rests.
    pub fn take_up(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        note: &str,
    ) -> Result<SafetyView, AppError> {
        let (about, by) = self.about(person)?;
        if self.known(about)?.history().rests().is_none_or(|r| r.taken_up.contains(&by)) {
            return Err(Refusal::NoSuchThing.into());
        }
        let note = short_text(note)?;
        self.write(Action::ChangeStage, now, about, vec![Payload::TakenUp { by, note }])?;
        self.safety_view(now, person)
    }

    /// Records a clearance, as the client or the coach heard of it.
    ///
    /// # Errors
    /// When who gave it, what was said or what it speaks of is missing, or its days cannot be.
    pub fn clearance_record(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        form: ClearanceForm,
    ) -> Result<SafetyView, AppError> {
        let (about, _) = self.about(person)?;
        let today = now.date_naive();
        if form.on > today || form.until.is_some_and(|until| until < form.on) {
            return Err(Refusal::OutOfRange.into());
        }
        if form.speaks_of.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        let payload = Payload::Clearance {
            who: checked_text(&form.who)?,
            on: form.on,
            said: checked_text(&form.said)?,
            speaks_of: Some(form.speaks_of),
            until: form.until,
        };
        self.write(Action::RecordClearance, now, about, vec![payload])?;
        self.safety_view(now, person)
    }

    /// Records an intake.
    ///
    /// # Errors
    /// When something in it is not known, or the client's is put aside without a note.
    pub fn intake_record(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        form: IntakeForm,
    ) -> Result<SafetyView, AppError> {
        let (about, by) = self.about(person)?;
        let payload = self.intake_payload(by, form)?;
        self.write(Action::Screen, now, about, vec![payload])?;
        self.safety_view(now, person)
    }

    /// Sets a rule for a client, and answers with her page.
    ///
    /// # Errors
    /// As [`Profile::set_rule`].
    pub fn rule_set(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        setting: RuleSetting,
    ) -> Result<SafetyView, AppError> {
        self.set_rule(now, person, setting)?;
        self.safety_view(now, Some(person))
    }

    pub(crate) fn intake_payload(&self, by: Voice, form: IntakeForm) -> Result<Payload, AppError> {
        let rules = &self.books.rules;
        let unknown = form.conditions.iter().any(|c| rules.condition(c).is_none())
            || form.baselines.iter().any(|b| !rules.symptom(&b.kind).is_some_and(SymptomKind::has_baseline));
        if unknown {
            return Err(Refusal::NoSuchThing.into());
        }
        let note = form.note.as_deref().map(short_text).transpose()?.filter(|n| !n.is_empty());
        if !form.instead_of.is_empty() && (by == Voice::Client || note.is_none()) {
            return Err(Refusal::NoteMissing.into());
        }
        let (conditions, baselines, trained) = (form.conditions, form.baselines, form.trained);
        let (by, instead_of) = (Some(by), form.instead_of);
        Ok(Payload::Screening { conditions, baselines, trained, by, note, instead_of })
    }
}

fn short_text(text: &str) -> Result<String, AppError> {
    if text.trim().is_empty() { Ok(String::new()) } else { checked_text(text) }
}

/// A stage whose dates can be: nothing that has happened lies ahead, and no pregnancy lasts for ever.
pub(crate) fn checked_stage(stage: Stage, today: NaiveDate) -> Result<Stage, AppError> {
    let ahead = |day: &NaiveDate| *day > today;
    let too_old = |day: &NaiveDate| *day + LONGEST < today;
    let fits = match &stage {
        Stage::Pregnant { due, told, last_period, conceived } => {
            let begun = conceived.map(|c| match c {
                Conceived::Transfer { on, .. }
                | Conceived::Ovulation { on }
                | Conceived::Insemination { on } => on,
            });
            let told_fits = told
                .as_ref()
                .is_none_or(|t| t.who.chars().count() <= 120 && !t.on.as_ref().is_some_and(ahead));
            let begun_fits = |d: &NaiveDate| !ahead(d) && !too_old(d);
            told_fits
                && last_period.as_ref().is_none_or(begun_fits)
                && begun.as_ref().is_none_or(begun_fits)
                && due.is_none_or(|d| d <= today + LONGEST && d + Days::new(28) >= today)
        }
        Stage::Postpartum { birth, .. } => !ahead(birth) && *birth + Days::new(366 * 30) > today,
        Stage::AfterLoss { on } => !ahead(on) && *on + Days::new(366 * 30) > today,
        Stage::Neither => true,
    };
    if fits { Ok(stage) } else { Err(Refusal::DateCannotBe.into()) }
}

/// The stage recorded last, if this device did so within the last day.
fn own_stage(history: &History, device: DeviceId, now: DateTime<FixedOffset>) -> Option<RecordId> {
    let last = history.stages_said.last()?;
    (last.device == device && now - last.at < TAKE_BACK).then_some(last.record)
}

fn view_of(
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
        intakes: standing
            .iter()
            .map(|i| IntakeView {
                record: i.record,
                day: i.at.date_naive(),
                by: i.by,
                conditions: i.what.conditions.clone(),
                baselines: i.what.baselines.clone(),
                trained: i.what.trained,
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
        bench.state.holds.iter().any(|h| h.record == *record && h.ladder.is_none() && h.answer.is_none())
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
fn settable(built_in: &RulePack, now: &RulePack) -> Vec<SettableView> {
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
