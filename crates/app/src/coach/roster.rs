//! The Roster: the clients, and what the coach records about each of them.

use super::overview::{BEGINS, GIVEN, Overview};
use super::{checked_text, client_name};
use crate::error::{AppError, Refusal};
use crate::newel::checked_name;
use crate::profile::Profile;
use crate::views::{ClientForm, ClientView, ConditionChoice, GiveTo, KitShort, LadderChoice, RosterView};
use chrono::{DateTime, Days, FixedOffset, NaiveDate};
use newel_engine::catalogue::{Catalogue, Ladder};
use newel_engine::ids::{LadderId, PersonId, ProgrammeId, RecordId};
use newel_engine::kit::Kit;
use newel_engine::programme::{PlanSession, Programme};
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
        let overview = Overview::of(self)?;
        let (mut clients, mut archived) = (Vec::new(), Vec::new());
        let looked = self.look(&overview, &self.everybody()?, day)?;
        for person in looked.people {
            let entry = self.glances.of(person)?.entry.clone();
            if overview.archived.contains(&person) { archived.push(entry) } else { clients.push(entry) }
        }
        for list in [&mut clients, &mut archived] {
            list.sort_by_cached_key(|a| a.name.to_lowercase());
        }
        let rules = &self.books.rules;
        Ok(RosterView {
            today: day,
            clients,
            archived,
            unread: looked.unread,
            groups: self.groups()?,
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
            ladders: self.books.catalogue.ladders.iter().map(choice).collect(),
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
        self.programme_give_to(now, programme, &[GiveTo { person, begins: None }])
    }

    /// Gives several clients a programme, each with the day on which it begins. All of them or none; it travels in the next
    /// plan files.
    ///
    /// # Errors
    /// When there is no such client or programme, nobody was chosen, or a day lies too far ahead.
    pub fn programme_give_to(
        &mut self,
        now: DateTime<FixedOffset>,
        programme: ProgrammeId,
        to: &[GiveTo],
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        let people: Vec<PersonId> = to.iter().map(|t| t.person).collect();
        self.are_clients(&people)?;
        if people.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        let day = now.date_naive();
        // Beyond a year it is a slip of the year.
        if to.iter().filter_map(|t| t.begins).any(|b| b > day + Days::new(366)) {
            return Err(Refusal::DateCannotBe.into());
        }
        if !self.programmes()?.iter().any(|p| p.id == programme) {
            return Err(Refusal::NoSuchThing.into());
        }
        let mut settings = Vec::new();
        for GiveTo { person, begins } in to {
            settings.push((format!("{GIVEN}{person}"), Some(programme.to_string())));
            let begins = begins.filter(|b| *b > day).map(|b| b.to_string());
            settings.push((format!("{BEGINS}{person}"), begins));
        }
        self.store.change_settings(&settings)?;
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

/// The ladders of a programme, each once, in its order.
pub(super) fn ladders_of(programme: &Programme) -> Vec<LadderId> {
    let mut ladders: Vec<LadderId> = Vec::new();
    for (_, slot) in programme.sessions.iter().flat_map(PlanSession::slots) {
        if !ladders.contains(&slot.ladder) {
            ladders.push(slot.ladder.clone());
        }
    }
    ladders
}

/// What can be set on the ladders of a programme.
pub(super) fn choices(catalogue: &Catalogue, programme: Option<&Programme>) -> Vec<LadderChoice> {
    let ladders = programme.map(ladders_of).unwrap_or_default();
    ladders.iter().filter_map(|id| catalogue.ladder(id)).map(choice).collect()
}

fn choice(ladder: &Ladder) -> LadderChoice {
    // What is retired is no choice, unless there is nothing else at the level.
    let levels = ladder.levels.iter().map(|l| {
        let left = l.variants.iter().any(|v| !v.retired);
        l.variants.iter().filter(|v| !left || !v.retired).map(|v| v.id.clone()).collect()
    });
    LadderChoice { ladder: ladder.id.clone(), levels: levels.collect() }
}

pub(super) fn in_short(kit: &Kit) -> KitShort {
    let count = |n: usize| u16::try_from(n).unwrap_or(u16::MAX);
    let pairs = kit.dumbbells.iter().filter(|d| d.pair).count();
    let heaviest = kit.dumbbells.iter().map(|d| d.weight).max_by(|a, b| a.kg().0.total_cmp(&b.kg().0));
    KitShort {
        singles: count(kit.dumbbells.len() - pairs),
        pairs: count(pairs),
        heaviest,
        barbell: kit.barbell.is_some(),
        bands: count(kit.bands.len()),
        things: kit.things.clone(),
    }
}
