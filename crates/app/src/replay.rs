//! Proposals made again from the log alone.

use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Profile, inputs_hash, versions};
use chrono::NaiveDate;
use newel_engine::ids::{PersonId, RecordId};
use newel_engine::proposal::SessionProposal;
use newel_engine::record::{Payload, Record};
use newel_engine::weeks::planned_session;

/// A shown proposal, made again.
#[derive(Clone, Debug, PartialEq)]
pub struct Replay {
    /// True when inputs and result are the same.
    pub same: bool,
    /// True when the inputs are the same.
    pub same_inputs: bool,
    /// What the engine gives now for what was known then.
    pub again: SessionProposal,
    /// What was shown then.
    pub shown: SessionProposal,
}

/// How a shown proposal compares with what is made of its inputs now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Replayed {
    /// To the bit.
    Same,
    /// Made of the same inputs, and different.
    Different,
    /// Its inputs are not here as they were: records are missing or more than it knew.
    OtherInputs,
    /// Other versions of engine, catalogue or rule pack made it; these cannot say.
    OtherVersions,
}

/// One shown proposal of a log.
#[derive(Clone, Debug, PartialEq)]
pub struct ReplayEntry {
    /// For whom.
    pub person: PersonId,
    /// Its record.
    pub shown: RecordId,
    /// Its day.
    pub day: NaiveDate,
    /// How it compares.
    pub replayed: Replayed,
}

impl Profile {
    /// Makes a shown proposal again from the log alone: what was known then, by the same engine.
    ///
    /// # Errors
    /// When there is no such proposal, or it was made by other versions than these.
    pub fn replay(&mut self, person: PersonId, shown: RecordId) -> Result<Replay, AppError> {
        let all = self.parsed(person)?;
        replay(self.built_in(), &all, shown)
    }

    /// Makes every shown proposal of the log again.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn replay_all(&mut self) -> Result<Vec<ReplayEntry>, AppError> {
        let mut entries = Vec::new();
        for person in self.store.all_people()?.into_iter().map(|p| p.person) {
            let all = self.parsed(person)?;
            for (_, record) in &all {
                let Payload::ProposalShown { versions: made_by, result, .. } = &record.payload else {
                    continue;
                };
                let replayed = if *made_by == versions(&self.books) {
                    match replay(self.built_in(), &all, record.id) {
                        Ok(r) if r.same => Replayed::Same,
                        Ok(r) if r.same_inputs => Replayed::Different,
                        Ok(_) | Err(_) => Replayed::OtherInputs,
                    }
                } else {
                    Replayed::OtherVersions
                };
                entries.push(ReplayEntry { person, shown: record.id, day: result.on, replayed });
            }
        }
        Ok(entries)
    }

    /// The lines about a person with what they say.
    fn parsed(&self, person: PersonId) -> Result<Vec<(String, Record)>, AppError> {
        let lines = self.store.lines(person)?;
        let records = self.store.records(person)?;
        Ok(lines.into_iter().zip(records).collect())
    }
}

fn replay(books: &Books, all: &[(String, Record)], shown: RecordId) -> Result<Replay, AppError> {
    let record = all.iter().map(|(_, r)| r).find(|r| r.id == shown).ok_or(Refusal::NoSuchThing)?;
    let Payload::ProposalShown { run, inputs, known, versions: made_by, result } = &record.payload else {
        return Err(Refusal::NoSuchThing.into());
    };
    if *made_by != versions(books) {
        return Err(Refusal::NoSuchThing.into());
    }
    let (lines, records): (Vec<String>, Vec<Record>) =
        all.iter().filter(|(_, r)| newel_store::is_known(known, r.device, r.seq)).cloned().unzip();
    let then = Known::of(books, records);
    // By the plan that was in force, or by the newest where she began that before its day; an earlier version of the
    // program always took the newest. The hash of the inputs tells which.
    let made_of = |known: &&Known| {
        let hash = |plan| inputs_hash(&lines, plan, &versions(books), result.on, *run);
        known.plan.as_ref().is_some_and(|plan| hash(plan) == *inputs)
    };
    let in_force = then.on(result.on);
    let then = [in_force, &then].into_iter().find(made_of).unwrap_or(in_force);
    let plan = then.plan.as_ref().ok_or(Refusal::NoPlan)?;
    let bench = then.bench(result.on, Some(*run)).ok_or(Refusal::NoPlan)?;
    let session = planned_session(then.history(), &plan.programme, &result.session, Some(*run))
        .ok_or(Refusal::NoSuchThing)?;
    let again = bench.propose(&session);
    let same_inputs = inputs_hash(&lines, plan, &versions(books), result.on, *run) == *inputs;
    let shown = (**result).clone();
    Ok(Replay { same: again == shown && same_inputs, same_inputs, again, shown })
}
