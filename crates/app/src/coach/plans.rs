//! Plan files: what goes out to a client.

use super::client_name;
use super::overview::{Overview, content_of, own_of};
use crate::error::{AppError, Refusal};
use crate::files::{put, slug};
use crate::profile::{Plan, Profile};
use crate::views::WrittenView;
use chrono::{DateTime, FixedOffset};
use newel_engine::ids::PersonId;
use newel_engine::record::Payload;
use newel_exchange::PlanDocument;
use newel_store::{Action, SentHead, hash_of};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

impl Profile {
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
        let is_given = given.is_some();
        let programme =
            given.or_else(|| known.plan.as_ref().map(|p| p.programme.clone())).ok_or(Refusal::NoPlan)?;
        let sent = known.records.iter().filter_map(|r| match &r.payload {
            Payload::PlanSent { sequence, .. } => Some(*sequence),
            _ => None,
        });
        // Starts of before a birth or a loss do not go out again as if they were of today.
        let before_fresh = |p: &Plan| {
            let bench = known.bench(now.date_naive(), None);
            bench.is_some_and(|b| b.state.is_before_fresh(p.made))
        };
        let starts = known.plan.as_ref().filter(|p| !before_fresh(p)).map(|p| p.starts.clone());
        let in_force = known.plan.as_ref().map_or(0, |p| p.sequence);
        let sequence = sent.max().unwrap_or(0).max(in_force) + 1;
        // With a programme of this coach's goes what is her own; where the one in force goes out again, also what came with
        // it, which may be another coach's.
        let came = known.plan.as_ref().filter(|_| !is_given).and_then(|p| p.own.clone());
        let own = own_of(&(*self.books.own).clone().and(&came.unwrap_or_default()), &programme);
        let (words, pictures) = self.words_out(own.as_ref())?;
        // A day that has come says nothing any more, and without it older programs read the file.
        let begins = Overview::of(self)?.begins(person).filter(|begins| *begins > now.date_naive());
        Ok(PlanDocument {
            person,
            person_name: client_name(known.history()),
            coach_name: self.name()?,
            coach_device: self.store.device()?,
            sequence,
            made_at: now,
            programme: Some(programme),
            starts: starts.unwrap_or_default(),
            lines: self.store.own_lines(person, &[])?,
            words,
            begins,
            own,
            pictures,
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
        self.write_sent(now, &document, &bytes)?;
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
        let bytes = newel_exchange::write_plan(&document)?;
        let path = path.unwrap_or_else(|| folder.join(free_name(folder, &document, &BTreeSet::new())));
        let written = put(&path, &bytes, document.lines.len())?;
        self.write_sent(now, &document, &bytes)?;
        Ok(written)
    }

    /// Writes down that a plan file went out: its hash in the log, its programme beside it for the next revision.
    pub(super) fn write_sent(
        &mut self,
        now: DateTime<FixedOffset>,
        document: &PlanDocument,
        bytes: &[u8],
    ) -> Result<(), AppError> {
        let (person, sequence) = (document.person, document.sequence);
        let plan = hash_of(&String::from_utf8_lossy(bytes));
        self.write(Action::SendPlan, now, person, vec![Payload::PlanSent { plan, sequence }])?;
        if let Some(programme) = &document.programme {
            let head = SentHead {
                sequence,
                at_ms: now.timestamp_millis(),
                content: content_of(programme, document.own.as_ref())?,
                begins: document.begins,
            };
            let text = serde_json::to_string(programme).map_err(|_| AppError::Internal)?;
            self.store.keep_sent(person, &head, &text)?;
        }
        Ok(())
    }
}

/// The name of a plan file: hers, and its number; a further number where two are called the same, so that no file of one
/// client takes the place of another's.
pub(super) fn free_name(folder: &Path, document: &PlanDocument, taken: &BTreeSet<String>) -> String {
    let (name, sequence) = (slug(&document.person_name), document.sequence);
    let mut found = format!("{name}-plan-{sequence}.newel.json");
    for again in 2..1000 {
        if !taken.contains(&found) && !folder.join(&found).exists() {
            break;
        }
        found = format!("{name}-{again}-plan-{sequence}.newel.json");
    }
    found
}
