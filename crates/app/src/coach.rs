//! The coach's side: Roster, Desk, one client's story, answers and plan files.

use crate::error::{AppError, Refusal};
use crate::files::{put, slug};
use crate::newel::{Books, checked_name};
use crate::path::{ladders, sessions};
use crate::profile::{Known, Plan, Profile};
use crate::views::{
    AnswerView, ClearanceView, ClientForm, ClientView, DeskEntry, DeskView, FindingView, HoldView,
    LadderChoice, OverrideForm, RestrictionView, Role, RosterEntry, RosterView, Urge, WrittenView,
};
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::history::History;
use newel_engine::ids::{PersonId, ProgrammeId, RecordId};
use newel_engine::programme::Programme;
use newel_engine::proposal::{Bench, Inputs, next_session};
use newel_engine::record::{HoldAnswer, Payload, Profile as Who, RestrictionKind};
use newel_engine::review;
use newel_engine::rules::{AmountForm, Class};
use newel_exchange::PlanDocument;
use newel_store::{Action, hash_of};
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// Programmes that are built in.
const PROGRAMMES_JSON: &str = include_str!("../data/programmes.json");

/// The programmes that are built in.
///
/// # Errors
/// When the embedded data is broken; a test holds that it is not.
pub fn built_in_programmes(books: &Books) -> Result<Vec<Programme>, AppError> {
    let programmes: Vec<Programme> = serde_json::from_str(PROGRAMMES_JSON).map_err(|_| AppError::Internal)?;
    for programme in &programmes {
        programme.check(&books.catalogue).map_err(|_| AppError::Internal)?;
    }
    Ok(programmes)
}

pub(crate) fn checked_text(text: &str) -> Result<String, AppError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Refusal::NameMissing.into());
    }
    if text.chars().count() > 4000 {
        return Err(Refusal::OutOfRange.into());
    }
    Ok(text.to_owned())
}

impl Profile {
    pub(crate) fn coach_only(&self) -> Result<(), AppError> {
        if self.role() == Role::Coach { Ok(()) } else { Err(Refusal::CoachOnly.into()) }
    }

    /// The coach's clients: everybody in the log but herself.
    fn clients(&self) -> Result<Vec<PersonId>, AppError> {
        let own = self.person();
        Ok(self.store.all_people()?.into_iter().map(|p| p.person).filter(|p| *p != own).collect())
    }

    /// The programme that the coach gave a client and that her log does not hold yet.
    fn given(&self, person: PersonId) -> Result<Option<Programme>, AppError> {
        let Some(id) = self.store.setting(&format!("programme.{person}"))? else { return Ok(None) };
        let programmes = built_in_programmes(&self.books)?;
        Ok(programmes.into_iter().find(|p| p.id.to_string() == id))
    }

    /// What is known of a client, with the programme that was given where her log holds none.
    pub(crate) fn client(&mut self, person: PersonId) -> Result<Known, AppError> {
        let given = self.given(person)?;
        let coach = self.name()?;
        let mut known = self.known(person)?.clone();
        if known.records.is_empty() {
            return Err(Refusal::NoSuchThing.into());
        }
        if known.plan.is_none() {
            known.plan = given.map(|programme| Plan { coach, sequence: 0, programme, starts: Vec::new() });
        }
        Ok(known)
    }

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
            conditions: rules.conditions().iter().map(|c| c.id.clone()).collect(),
            // Only what a baseline can soften is worth asking as usual.
            baseline_kinds: rules
                .symptoms()
                .iter()
                .filter(|k| k.class == Class::Drop && k.amount != AmountForm::None)
                .map(|k| k.id.clone())
                .collect(),
            programmes: built_in_programmes(&self.books)?,
        })
    }

    fn roster_entry(&mut self, person: PersonId, day: NaiveDate) -> Result<RosterEntry, AppError> {
        let books = self.books();
        let known = self.client(person)?;
        let history = &known.history;
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
            restrictions: history
                .restrictions
                .iter()
                .filter(|r| r.what.until.is_none_or(|u| day <= u))
                .map(|r| RestrictionView {
                    record: r.record,
                    what: r.what.what.clone(),
                    until: r.what.until,
                    note: r.what.note.clone(),
                })
                .collect(),
            clearance: history.clearances.last().map(|c| ClearanceView {
                who: c.what.who.clone(),
                on: c.what.on,
                said: c.what.said.clone(),
            }),
            clearance_waits: ground.clearance_waits.is_some(),
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
        let history = self.known(person)?.history.clone();
        let mut payloads = Vec::new();
        if client_name(&history) != name {
            payloads.push(Payload::Profile(Who { name, emergency: None, clinic: None }));
        }
        if let Some(stage) = form.stage
            && history.stage() != Some(&stage)
        {
            payloads.push(Payload::StageChanged { stage });
        }
        let before = history.intakes.last().map(|i| i.what.clone());
        let same = before.as_ref().is_some_and(|b| {
            b.conditions == form.conditions && b.baselines == form.baselines && b.trained == form.trained
        });
        if !same {
            payloads.push(Payload::Screening {
                conditions: form.conditions,
                baselines: form.baselines,
                trained: form.trained,
            });
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

    /// Records a clearance.
    ///
    /// # Errors
    /// When there is no such client, who said it is missing, or the day lies ahead.
    pub fn clearance_add(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        who: &str,
        on: NaiveDate,
        said: &str,
    ) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        if on > now.date_naive() {
            return Err(Refusal::OutOfRange.into());
        }
        let payload = Payload::Clearance { who: checked_text(who)?, on, said: checked_text(said)? };
        self.write(Action::RecordClearance, now, person, vec![payload])?;
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
        if !built_in_programmes(&self.books)?.iter().any(|p| p.id == programme) {
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

    /// The Desk.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn desk_view(&mut self, now: DateTime<FixedOffset>) -> Result<DeskView, AppError> {
        self.coach_only()?;
        let day = now.date_naive();
        let (mut queue, mut well) = (Vec::new(), Vec::new());
        let mut taken_in = 0;
        for person in self.clients()? {
            let at = self.store.setting(&format!("taken-in.{person}"))?;
            let at = at.and_then(|t| DateTime::parse_from_rfc3339(&t).ok());
            if at.is_some_and(|t| now - t < Duration::hours(24)) {
                taken_in += 1;
            }
            let known = self.client(person)?;
            let findings = self.findings(person, &known, day)?;
            let entry = DeskEntry {
                person,
                name: client_name(&known.history),
                stage: known.history.stage().map(|s| s.on(day)),
                last_session: known.history.runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
                findings,
            };
            if entry.findings.is_empty() { well.push(entry) } else { queue.push(entry) }
        }
        // Most urgent first; among equals the one with more to see, then by name.
        queue.sort_by(|a, b| {
            let urge = |e: &DeskEntry| e.findings.iter().map(|f| f.urge).min();
            urge(a).cmp(&urge(b)).then(b.findings.len().cmp(&a.findings.len())).then(a.name.cmp(&b.name))
        });
        well.sort_by_key(|e| e.name.to_lowercase());
        Ok(DeskView { queue, well, taken_in })
    }

    fn findings(
        &self,
        person: PersonId,
        known: &Known,
        day: NaiveDate,
    ) -> Result<Vec<FindingView>, AppError> {
        let books = self.books();
        let mut found: Vec<FindingView> = match known.bench(&books, day, None) {
            Some(bench) => review::findings(&bench),
            // Before a programme was given safety still has its say.
            None => review::findings(&Bench::of(Inputs {
                history: &known.history,
                programme: &no_programme(),
                starts: &[],
                catalogue: &books.catalogue,
                rules: &books.rules,
                day,
                run: None,
            })),
        }
        .into_iter()
        .map(|f| FindingView {
            code: f.code.to_owned(),
            urge: match f.urge {
                review::Urge::Stop => Urge::Stop,
                review::Urge::Attention => Urge::Attention,
                review::Urge::Look => Urge::Look,
            },
            facts: f.facts,
        })
        .collect();
        let missing: u64 = self.store.stream_heads(person)?.iter().filter(|h| h.beyond > 0).count() as u64;
        if missing > 0 {
            let mut facts = std::collections::BTreeMap::new();
            let count = u32::try_from(missing).unwrap_or(u32::MAX);
            facts.insert("count".to_owned(), newel_engine::reason::Fact::Number(f64::from(count)));
            found.push(FindingView { code: "gap".to_owned(), urge: Urge::Look, facts });
        }
        found.sort_by_key(|f| f.urge);
        Ok(found)
    }

    /// One client's story.
    ///
    /// # Errors
    /// When there is no such client.
    pub fn client_view(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
    ) -> Result<ClientView, AppError> {
        self.coach_only()?;
        let day = now.date_naive();
        let books = self.books();
        let known = self.client(person)?;
        let findings = self.findings(person, &known, day)?;
        let sent_until = self.last_sent(&known);
        let bench = known.bench(&books, day, None);
        let next_plan = known.plan.as_ref().and_then(|p| next_session(&known.history, &p.programme));
        let holds = bench.as_ref().map(|b| holds(b)).unwrap_or_default();
        Ok(ClientView {
            client: self.roster_entry(person, day)?,
            findings,
            ladders: ladders(&known, &books, day),
            sessions: sessions(&known),
            holds,
            red: bench.as_ref().is_some_and(|b| b.state.open_reds().next().is_some()),
            answers: self.answers(&known, sent_until)?,
            next: bench.as_ref().zip(next_plan).map(|(b, s)| b.propose(s)),
            next_title: next_plan.map_or_else(String::new, |s| s.title.clone()),
        })
    }

    fn last_sent(&self, known: &Known) -> Option<DateTime<FixedOffset>> {
        known.records.iter().filter(|r| matches!(r.payload, Payload::PlanSent { .. })).map(|r| r.at).max()
    }

    fn answers(
        &self,
        known: &Known,
        sent_until: Option<DateTime<FixedOffset>>,
    ) -> Result<Vec<AnswerView>, AppError> {
        let device = self.store.device()?;
        let withdrawn: Vec<RecordId> = known
            .records
            .iter()
            .filter_map(|r| match &r.payload {
                Payload::Withdrawal { target } => Some(*target),
                _ => None,
            })
            .collect();
        let mut answers: Vec<AnswerView> = known
            .records
            .iter()
            .filter(|r| r.device == device && !withdrawn.contains(&r.id))
            .filter_map(|r| {
                let (kind, text) = match &r.payload {
                    Payload::Note { text } => ("note", text.clone()),
                    Payload::Answer { text, .. } => ("answer", text.clone()),
                    Payload::Override { note, .. } => ("override", note.clone()),
                    Payload::RuleSetting(setting) => {
                        ("rule_setting", setting.note.clone().unwrap_or_default())
                    }
                    Payload::HoldAnswered { note, .. } => ("hold_answered", note.clone()),
                    Payload::Restriction { note, .. } => ("restriction", note.clone()),
                    Payload::Clearance { who, said, .. } => ("clearance", format!("{who}: {said}")),
                    _ => return None,
                };
                Some(AnswerView {
                    record: r.id,
                    at: r.at,
                    kind: kind.to_owned(),
                    text,
                    sent: sent_until.is_some_and(|s| r.at <= s),
                })
            })
            .collect();
        answers.sort_by_key(|a| std::cmp::Reverse(a.at));
        Ok(answers)
    }

    /// Writes a note to a client.
    ///
    /// # Errors
    /// When there is no such client or the note is empty.
    pub fn note_write(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        text: &str,
    ) -> Result<ClientView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        let text = checked_text(text)?;
        self.write(Action::WriteNote, now, person, vec![Payload::Note { text }])?;
        self.client_view(now, person)
    }

    /// Answers a hold.
    ///
    /// # Errors
    /// When there is no such hold, or the answer does not fit it.
    pub fn hold_answer(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        hold: RecordId,
        answer: HoldAnswer,
        note: &str,
    ) -> Result<ClientView, AppError> {
        self.coach_only()?;
        let books = self.books();
        let known = self.client(person)?;
        let bench = known.bench(&books, now.date_naive(), None).ok_or(Refusal::NoPlan)?;
        let fits = holds(&bench).iter().any(|h| h.hold == hold && h.answers.contains(&answer));
        if !fits {
            return Err(Refusal::NoSuchThing.into());
        }
        let note = note.trim().to_owned();
        self.write(Action::AnswerHold, now, person, vec![Payload::HoldAnswered { hold, answer, note }])?;
        self.client_view(now, person)
    }

    /// Sets level, variant or load for a client, with a note.
    ///
    /// # Errors
    /// When the ladder or variant is not known, or the note is missing.
    pub fn override_write(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        form: OverrideForm,
    ) -> Result<ClientView, AppError> {
        self.coach_only()?;
        self.client(person)?;
        let books = self.books();
        let ladder = books.catalogue.ladder(&form.start.ladder).ok_or(Refusal::NoSuchThing)?;
        let level_fits = form.start.level.is_none_or(|l| usize::from(l) < ladder.levels.len());
        let variant_fits = form
            .start
            .variant
            .as_ref()
            .is_none_or(|v| books.catalogue.place(v).is_some_and(|p| p.ladder.id == form.start.ladder));
        if !level_fits || !variant_fits {
            return Err(Refusal::OutOfRange.into());
        }
        let note = checked_text(&form.note)?;
        self.write(Action::SetStart, now, person, vec![Payload::Override { start: form.start, note }])?;
        self.client_view(now, person)
    }

    /// The next plan file for a client, not yet written: her programme, and all that the coach recorded
    /// about her.
    pub(crate) fn plan_document(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
    ) -> Result<PlanDocument, AppError> {
        self.coach_only()?;
        let known = self.client(person)?;
        let given = self.given(person)?;
        let programme =
            given.or_else(|| known.plan.as_ref().map(|p| p.programme.clone())).ok_or(Refusal::NoPlan)?;
        let sent = known.records.iter().filter_map(|r| match &r.payload {
            Payload::PlanSent { sequence, .. } => Some(*sequence),
            _ => None,
        });
        let in_force = known.plan.as_ref().map_or(0, |p| p.sequence);
        let sequence = sent.max().unwrap_or(0).max(in_force) + 1;
        Ok(PlanDocument {
            person,
            person_name: client_name(&known.history),
            coach_name: self.name()?,
            coach_device: self.store.device()?,
            sequence,
            made_at: now,
            programme: Some(programme),
            starts: known.plan.map(|p| p.starts).unwrap_or_default(),
            lines: self.store.own_lines(person, &[])?,
        })
    }

    /// Writes down that the next plan for a client goes out, and gives its bytes.
    pub(crate) fn plan_send(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
    ) -> Result<(PlanDocument, Vec<u8>), AppError> {
        let document = self.plan_document(now, person)?;
        let bytes = newel_exchange::write_plan(&document)?;
        let (plan, sequence) = (hash_of(&String::from_utf8_lossy(&bytes)), document.sequence);
        self.write(Action::SendPlan, now, person, vec![Payload::PlanSent { plan, sequence }])?;
        Ok((document, bytes))
    }

    /// Writes a plan file for a client: her programme, and all that the coach recorded about her.
    ///
    /// # Errors
    /// When there is no such client or programme, or the disk refuses.
    pub fn plan_write(
        &mut self,
        folder: &Path,
        path: Option<PathBuf>,
        now: DateTime<FixedOffset>,
        person: PersonId,
    ) -> Result<WrittenView, AppError> {
        let document = self.plan_document(now, person)?;
        let (name, sequence) = (document.person_name.clone(), document.sequence);
        let bytes = newel_exchange::write_plan(&document)?;
        let path = path.unwrap_or_else(|| folder.join(format!("{}-plan-{sequence}.newel.json", slug(&name))));
        let written = put(&path, &bytes, document.lines.len())?;
        let hash = hash_of(&String::from_utf8_lossy(&bytes));
        self.write(Action::SendPlan, now, person, vec![Payload::PlanSent { plan: hash, sequence }])?;
        Ok(written)
    }

    /// The Planbook: the programmes that are built in.
    ///
    /// # Errors
    /// When the embedded data is broken.
    pub fn planbook_view(&self) -> Result<Vec<Programme>, AppError> {
        built_in_programmes(&self.books)
    }
}

fn no_programme() -> Programme {
    Programme {
        id: ProgrammeId(Uuid::nil()),
        revision: 0,
        title: String::new(),
        per_week: 0,
        sessions: Vec::new(),
    }
}

/// The name of a client: the latest that anybody wrote.
#[must_use]
pub fn client_name(history: &History) -> String {
    history.profiles.last().map_or_else(String::new, |p| p.what.name.clone())
}

fn holds(bench: &Bench<'_>) -> Vec<HoldView> {
    bench
        .state
        .open_holds()
        .map(|h| {
            let mut answers = vec![HoldAnswer::GoOn, HoldAnswer::KeepResting];
            if h.ladder.is_some() {
                answers.insert(1, HoldAnswer::RestartLighter);
            }
            HoldView {
                hold: h.record,
                day: h.at.date_naive(),
                symptom: Some(h.symptom.clone()),
                ladder: h.ladder.clone(),
                scope: h.scope,
                answers,
            }
        })
        .collect()
}
