//! One client's story, and what the coach answers to it: notes, holds, starts.

use super::checked_text;
use super::glance::Glance;
use super::overview::{Overview, last_sent};
use super::roster::choices;
use crate::error::{AppError, Refusal};
use crate::path::{ladders, sessions};
use crate::profile::{Known, Profile};
use crate::views::{AnswerView, ClientView, HoldView, OverrideForm};
use chrono::{DateTime, FixedOffset};
use newel_engine::ids::{PersonId, RecordId};
use newel_engine::proposal::Bench;
use newel_engine::record::{HoldAnswer, Payload};
use newel_engine::weeks::next_session;
use newel_store::Action;

impl Profile {
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
        let known = self.client(person)?;
        let overview = Overview::of(self)?;
        let Glance { entry, findings } = self.glance(&overview, person, day)?.clone();
        let sent_until = last_sent(&known);
        let trains = known.on(day);
        let bench = trains.bench(day, None);
        let next_plan = trains.plan.as_ref().and_then(|p| next_session(known.history(), &p.programme));
        let holds = bench.as_ref().map(|b| holds(b)).unwrap_or_default();
        Ok(ClientView {
            client: entry,
            choices: choices(&known.books.catalogue, trains.plan.as_ref().map(|p| &p.programme)),
            findings,
            ladders: ladders(&known, day),
            sessions: sessions(&known),
            holds,
            red: bench.as_ref().is_some_and(|b| b.state.open_reds().next().is_some()),
            answers: self.answers(&known, sent_until)?,
            next: bench.as_ref().zip(next_plan.as_ref()).map(|(b, s)| b.propose(s)),
            next_title: next_plan.map_or_else(String::new, |s| s.title),
        })
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
                    Payload::TakenUp { note, .. } => ("taken_up", note.clone()),
                    Payload::ImpactChecked { note, .. } => ("impact_checked", note.clone()),
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
        let known = self.client(person)?;
        let bench = known.on(now.date_naive()).bench(now.date_naive(), None).ok_or(Refusal::NoPlan)?;
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
}

fn holds(bench: &Bench<'_>) -> Vec<HoldView> {
    bench
        .state
        .open_holds()
        .map(|h| HoldView {
            hold: h.record,
            day: h.at.date_naive(),
            symptom: Some(h.symptom.clone()),
            ladder: h.ladder.clone(),
            scope: h.scope,
            answers: h.answers(),
        })
        .collect()
}
