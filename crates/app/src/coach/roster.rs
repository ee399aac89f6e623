//! The Roster: the clients, and what the coach records about each of them.

use super::{checked_text, client_name};
use crate::error::{AppError, Refusal};
use crate::newel::checked_name;
use crate::profile::Profile;
use crate::views::{ClientForm, ClientView, ConditionChoice, LadderChoice, RosterEntry, RosterView};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{PersonId, ProgrammeId, RecordId};
use newel_engine::record::{Payload, Profile as Who, RestrictionKind, Voice};
use newel_store::Action;
use uuid::Uuid;

impl Profile {
    /// The Roster.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn roster_view(&mut self, now: DateTime<FixedOffset>) -> Result<RosterView, AppError> {
        self.coach_only()?;
        let day = now.date_naive();
        let mut clients = Vec::new();
        for person in self.clients()? {
            clients.push(self.roster_entry(person, day)?);
        }
        clients.sort_by_key(|a| a.name.to_lowercase());
        let rules = &self.books.rules;
        Ok(RosterView {
            clients,
            conditions: rules
                .conditions()
                .iter()
                .map(|c| ConditionChoice { condition: c.id.clone(), group: c.group, asks: c.asks })
                .collect(),
            // Only what a baseline can soften is worth asking as usual.
            baseline_kinds: rules
                .symptoms()
                .iter()
                .filter(|k| k.has_baseline())
                .map(|k| k.id.clone())
                .collect(),
            programmes: self.programmes()?,
        })
    }

    pub(super) fn roster_entry(&mut self, person: PersonId, day: NaiveDate) -> Result<RosterEntry, AppError> {
        let books = self.books();
        let known = self.client(person)?;
        let history = &known.history();
        let ground = newel_engine::ground::Ground::of(history, &books.catalogue, &books.rules, day, None);
        let intake = history.intake();
        let ladders = known
            .plan
            .iter()
            .flat_map(|p| p.programme.sessions.iter().flat_map(|s| s.slots().map(|(_, slot)| slot)))
            .fold(Vec::new(), |mut list: Vec<LadderChoice>, slot| {
                if !list.iter().any(|l| l.ladder == slot.ladder)
                    && let Some(ladder) = books.catalogue.ladder(&slot.ladder)
                {
                    list.push(LadderChoice {
                        ladder: slot.ladder.clone(),
                        levels: ladder
                            .levels
                            .iter()
                            .map(|l| l.variants.iter().map(|v| v.id.clone()).collect())
                            .collect(),
                    });
                }
                list
            });
        Ok(RosterEntry {
            person,
            name: client_name(history),
            stage: history.stage().map(|s| s.on(day)),
            stage_recorded: history.stage().cloned(),
            conditions: intake.conditions,
            baselines: intake.baselines,
            trained: intake.trained,
            never: intake.never,
            restrictions: crate::safety::restrictions(history, day),
            clearance_waits: !ground.waits.is_empty(),
            cleared: history
                .clearances
                .iter()
                .rfind(|c| c.what.holds_on(day))
                .map(|c| (c.what.who.clone(), c.what.on)),
            own_intake: history.standing_intakes().iter().find(|i| i.by == Voice::Client).map(|i| i.record),
            programme: known.plan.as_ref().map(|p| p.programme.title.clone()),
            last_session: history.runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
            records: u32::try_from(known.records.len()).unwrap_or(u32::MAX),
            ladders,
        })
    }

    /// Adds a client.
    ///
    /// # Errors
    /// When the name is missing.
    pub fn client_add(
        &mut self,
        now: DateTime<FixedOffset>,
        form: ClientForm,
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.client_write(now, PersonId(Uuid::now_v7()), form)?;
        self.roster_view(now)
    }

    /// Changes what the coach recorded about a client.
    ///
    /// # Errors
    /// When there is no such client or the name is missing.
    pub fn client_save(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        form: ClientForm,
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        self.client_write(now, person, form)?;
        self.roster_view(now)
    }

    pub(crate) fn client_write(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        form: ClientForm,
    ) -> Result<(), AppError> {
        let name = checked_name(&form.name)?;
        let history = self.known(person)?.history().clone();
        let mut payloads = Vec::new();
        if client_name(&history) != name {
            payloads.push(Payload::Profile(Who { name, emergency: None, clinic: None }));
        }
        if let Some(stage) = form.stage
            && history.stage() != Some(&stage)
        {
            let stage = crate::safety::checked_stage(stage, now.date_naive())?;
            payloads.push(Payload::StageChanged { stage });
        }
        if let Some(form) = form.intake {
            // Nothing is written anew that the coach has said already.
            let standing = history.standing_intakes();
            let before = standing.iter().find(|i| i.by == Voice::Coach).map(|i| &i.what);
            let same = before.is_some_and(|b| {
                b.conditions == form.conditions
                    && b.baselines == form.baselines
                    && b.trained == form.trained
                    && b.never == form.never
            });
            if !same || !form.instead_of.is_empty() {
                payloads.push(self.intake_payload(Voice::Coach, form)?);
            }
        }
        if !payloads.is_empty() {
            self.write(Action::Screen, now, person, payloads)?;
        }
        Ok(())
    }

    /// Rules something out for a client.
    ///
    /// # Errors
    /// When there is no such client or the note is missing.
    pub fn restriction_add(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        what: RestrictionKind,
        until: Option<NaiveDate>,
        note: &str,
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        let note = checked_text(note)?;
        self.write(Action::Restrict, now, person, vec![Payload::Restriction { what, until, note }])?;
        self.roster_view(now)
    }

    /// Gives a client a programme; it travels in the next plan file.
    ///
    /// # Errors
    /// When there is no such client or programme.
    pub fn programme_give(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        programme: ProgrammeId,
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        if !self.programmes()?.iter().any(|p| p.id == programme) {
            return Err(Refusal::NoSuchThing.into());
        }
        self.store.set_setting(&format!("programme.{person}"), &programme.to_string())?;
        self.roster_view(now)
    }

    /// Takes back something that the coach wrote about a client.
    ///
    /// # Errors
    /// When there is no such record of the coach's own.
    pub fn record_withdraw_for(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        record: RecordId,
    ) -> Result<ClientView, AppError> {
        self.coach_only()?;
        let device = self.store.device()?;
        let own = self.known(person)?.records.iter().any(|r| r.id == record && r.device == device);
        if !own {
            return Err(Refusal::NoSuchThing.into());
        }
        self.write(Action::Withdraw, now, person, vec![Payload::Withdrawal { target: record }])?;
        self.client_view(now, person)
    }
}
