//! Safety: stage, screening, clearances and what they rule out; said by the client about herself or by the coach about
//! a client.

mod view;

use crate::coach::{checked_text, client_name};
use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{ClearanceForm, ImpactForm, IntakeForm, Role, SafetyView};
use chrono::{DateTime, Days, FixedOffset, NaiveDate, TimeDelta};
use newel_engine::history::History;
use newel_engine::ids::{CheckId, DeviceId, PersonId, RecordId};
use newel_engine::record::{Payload, Voice};
use newel_engine::rules::{RuleSetting, SymptomKind};
use newel_engine::stage::{Conceived, Stage};
use newel_store::Action;
pub(crate) use view::restrictions;
use view::{settable, view_of};

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

    /// Records how the checks before impact went.
    ///
    /// # Errors
    /// When nothing was tried, a check is not known, or the day lies ahead or before the birth or the loss.
    pub fn impact_record(
        &mut self,
        now: DateTime<FixedOffset>,
        person: Option<PersonId>,
        form: ImpactForm,
    ) -> Result<SafetyView, AppError> {
        let (about, by) = self.about(person)?;
        let since = self.known(about)?.history().stage().and_then(Stage::ended_on);
        if since.is_none_or(|since| form.on < since) || form.on > now.date_naive() {
            return Err(Refusal::DateCannotBe.into());
        }
        if form.results.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        let known = |id: &CheckId| self.books.rules.checks().iter().any(|c| c.id == *id);
        if !form.results.iter().all(|r| known(&r.check)) {
            return Err(Refusal::NoSuchThing.into());
        }
        let (on, results, note) = (form.on, form.results, short_text(&form.note)?);
        let payload = Payload::ImpactChecked { on, by, results, note };
        self.write(Action::CheckImpact, now, about, vec![payload])?;
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
        if form.trained && form.never {
            return Err(Refusal::OutOfRange.into());
        }
        let (conditions, baselines) = (form.conditions, form.baselines);
        let (trained, never) = (form.trained, form.never);
        let (by, instead_of) = (Some(by), form.instead_of);
        Ok(Payload::Screening { conditions, baselines, trained, never, by, note, instead_of })
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
