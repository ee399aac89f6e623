//! What the next plan file changes for whom: read before it is sent. Nothing is written here.

use super::client_name;
use super::overview::Overview;
use crate::error::AppError;
use crate::profile::{Known, Profile};
use crate::views::{Offered, PlanStanding, ProposalChange, RevisionView};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{PersonId, ProgrammeId, SlotId};
use newel_engine::programme::Programme;
use newel_engine::proposal::{Outcome, Proposal};
use newel_engine::revision::changes;
use newel_engine::weeks::progress;
use std::collections::BTreeMap;

impl Profile {
    /// What the next plan files change for clients, by name.
    ///
    /// # Errors
    /// When somebody is no client.
    pub fn revisions(
        &mut self,
        now: DateTime<FixedOffset>,
        people: &[PersonId],
    ) -> Result<Vec<RevisionView>, AppError> {
        self.coach_only()?;
        self.are_clients(people)?;
        let overview = Overview::of(self)?;
        let mut views = Vec::new();
        self.read_known(people)?;
        for person in people {
            views.push(self.revision_of(&overview, *person, now.date_naive())?);
        }
        views.sort_by_cached_key(|v| v.name.to_lowercase());
        Ok(views)
    }

    /// What a programme, as it is written now, changes for those to whom it was given; who is laid aside is left out.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn revisions_by(
        &mut self,
        now: DateTime<FixedOffset>,
        programme: ProgrammeId,
    ) -> Result<Vec<RevisionView>, AppError> {
        self.coach_only()?;
        let overview = Overview::of(self)?;
        let its = |p: &PersonId| overview.is_given(*p, programme) && !overview.archived.contains(p);
        let people: Vec<PersonId> = self.everybody()?.into_iter().filter(its).collect();
        self.revisions(now, &people)
    }

    /// What the next plan file changes for a client whose records were read.
    pub(super) fn revision_of(
        &self,
        overview: &Overview,
        person: PersonId,
        day: NaiveDate,
    ) -> Result<RevisionView, AppError> {
        let known = self.known_before(person)?;
        let files = overview.files_of(person, known, self.store.device()?, day)?;
        let finished = files.plan != PlanStanding::Unfinished;
        let after = overview.brings(person, known).filter(|_| finished);
        let before = self.has(overview, person, known)?;
        let compared = after.zip(before.as_ref());
        Ok(RevisionView {
            person,
            name: client_name(known.history()),
            plan: files.plan,
            title: after.map(|p| p.title.clone()),
            begins: files.begins,
            changes: compared.map(|(after, before)| changes(before, after)).unwrap_or_default(),
            proposals: compared
                .map(|(after, before)| proposals(known, before, after, day))
                .unwrap_or_default(),
            entries: files.unsent,
        })
    }

    /// The programme that a client has: what she was sent last, else what her log says.
    fn has(
        &self,
        overview: &Overview,
        person: PersonId,
        known: &Known,
    ) -> Result<Option<Programme>, AppError> {
        if overview.last_kept(person, known).is_some()
            && let Some(text) = self.store.sent_programme(person)?
        {
            return serde_json::from_str(&text).map(Some).map_err(|_| AppError::Internal);
        }
        Ok(known.plan.as_ref().map(|p| p.programme.clone()))
    }
}

fn offered(proposal: &Proposal) -> Offered {
    match &proposal.outcome {
        Outcome::Rest => Offered::Rest,
        Outcome::Train(p) => Offered::Train {
            variant: p.variant.clone(),
            load: p.load.clone(),
            sets: p.sets,
            target: p.target,
        },
    }
}

/// Where the engine proposes something else to her after a revision than before it, by the same records.
fn proposals(known: &Known, before: &Programme, after: &Programme, day: NaiveDate) -> Vec<ProposalChange> {
    let now = known.bench_for(before, day, None);
    let mut as_it_is: BTreeMap<SlotId, Offered> = BTreeMap::new();
    let week = |programme: &Programme| programme.in_week(progress(known.history(), programme).week);
    for session in &week(before).sessions {
        as_it_is.extend(now.propose(session).slots.iter().map(|p| (p.slot.clone(), offered(p))));
    }
    let then = known.bench_for(after, day, None);
    let mut found = Vec::new();
    for session in &week(after).sessions {
        for proposal in then.propose(session).slots {
            let (was, will) = (as_it_is.get(&proposal.slot), offered(&proposal));
            if was != Some(&will) {
                found.push(ProposalChange {
                    session: session.title.clone(),
                    slot: proposal.slot,
                    ladder: proposal.ladder,
                    before: was.cloned(),
                    after: will,
                });
            }
        }
    }
    found
}
