//! What Roster and Desk say of a client at a glance: worked out from her log, and kept for the next start.
//!
//! What is kept is a cache and nothing else. It bears a key over all that it was made from, and one whose key differs is
//! not shown but worked out anew. With hundreds of clients that takes a while on the first start of a day, so an answer may
//! speak of some of them and say of how many it does not yet; the page asks again.

use super::client_name;
use super::overview::Overview;
use super::roster::{in_short, ladders_of};
use crate::error::AppError;
use crate::profile::{Known, Profile};
use crate::threads::together;
use crate::views::{FindingView, ProgrammeWeek, RosterEntry, Urge, WaitsView};
use chrono::NaiveDate;
use newel_engine::catalogue::Catalogue;
use newel_engine::ids::{DeviceId, PersonId};
use newel_engine::programme::Programme;
use newel_engine::proposal::Bench;
use newel_engine::reason::Fact;
use newel_engine::record::{HoldAnswer, Voice};
use newel_engine::weeks::{Progress, progress};
use newel_engine::{review, screening};
use newel_store::{KeptGlance, hash_of};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use std::time::Instant;

/// The source of engine, store, exchange and app, hashed by the build: what an older or newer program kept is never taken
/// for this one's.
const CODE: &str = env!("NEWEL_CODE");
/// So many clients are worked out before the clock is looked at, so that a small practice is always answered whole.
const PIECE: usize = 12;

/// A client at a glance.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(crate) struct Glance {
    /// Her line on the Roster.
    pub entry: RosterEntry,
    /// What there is to see, most urgent first.
    pub findings: Vec<FindingView>,
}

/// What was worked out so far, in this run of the program or in an earlier one.
#[derive(Default)]
pub(crate) struct Glances {
    of: BTreeMap<PersonId, (String, Glance)>,
    /// True once what an earlier run kept was read.
    remembered: bool,
    /// The catalogue with its hash, which is long to make.
    catalogue: Option<(Arc<Catalogue>, String)>,
    /// How many were worked out anew.
    pub made: usize,
}

impl Glances {
    pub fn of(&self, person: PersonId) -> Result<&Glance, AppError> {
        self.of.get(&person).map(|(_, glance)| glance).ok_or(AppError::Internal)
    }

    pub fn forget(&mut self, person: PersonId) {
        self.of.remove(&person);
    }

    /// Where someone stands in line to be worked out: first of whom nothing is known, since something of hers has come in,
    /// then by what there was to see last, so that the most urgent stand soonest. Nothing else is taken from it.
    fn place(&self, person: PersonId) -> (bool, Option<Urge>) {
        let last = self.of.get(&person).map(|(_, glance)| glance.findings.first().map(|f| f.urge));
        (last == Some(None), last.flatten())
    }
}

/// Of whom there is a glance now.
pub(super) struct Looked {
    /// These, in the order of the question.
    pub people: Vec<PersonId>,
    /// How many of those asked for are still to be worked out.
    pub unread: u32,
}

/// Somebody to look at, with the key of what is to be said of her.
struct Asked {
    person: PersonId,
    key: String,
}

impl Profile {
    /// Works out a glance of each where there is none, as long as the patience of whoever asks lasts.
    pub(super) fn look(
        &mut self,
        overview: &Overview,
        people: &[PersonId],
        day: NaiveDate,
    ) -> Result<Looked, AppError> {
        self.remember()?;
        let asked = self.asked(overview, people, day)?;
        let fits = |g: &Glances, a: &Asked| g.of.get(&a.person).is_some_and(|(key, _)| *key == a.key);
        let (mut looked, mut missing): (Vec<&Asked>, Vec<&Asked>) =
            asked.iter().partition(|a| fits(&self.glances, a));
        missing.sort_by_key(|a| self.glances.place(a.person));
        let begun = Instant::now();
        let mut made = Vec::new();
        let mut rest = &missing[..];
        while !rest.is_empty() {
            if !made.is_empty() && self.patience.is_some_and(|p| begun.elapsed() >= p) {
                break;
            }
            // The longer the answer, the more is new in it: each costs the page as much as it says in all.
            let piece = PIECE.max(looked.len() / 4).min(rest.len());
            let (now, later) = rest.split_at(piece);
            made.extend(self.work_out(overview, now, day)?);
            looked.extend(now);
            rest = later;
        }
        let unread = rest.len();
        // What cannot be kept is worked out again at the next start; what was asked for is answered all the same.
        if !made.is_empty()
            && let Err(error) = self.store.keep_glances(&made)
        {
            tracing::warn!(code = error.code(), "what was worked out could not be kept");
        }
        let looked: BTreeSet<PersonId> = looked.iter().map(|a| a.person).collect();
        Ok(Looked {
            people: people.iter().copied().filter(|p| looked.contains(p)).collect(),
            unread: u32::try_from(unread).unwrap_or(u32::MAX),
        })
    }

    /// A client at a glance.
    pub(super) fn glance(
        &mut self,
        overview: &Overview,
        person: PersonId,
        day: NaiveDate,
    ) -> Result<&Glance, AppError> {
        self.look(overview, &[person], day)?;
        self.glances.of(person)
    }

    /// Reads what an earlier run kept; what cannot be read is as if it had not been kept.
    fn remember(&mut self) -> Result<(), AppError> {
        if !self.glances.remembered {
            self.glances.remembered = true;
            for KeptGlance { person, key, value } in self.store.glances()? {
                if let Ok(glance) = serde_json::from_str(&value) {
                    self.glances.of.entry(person).or_insert((key, glance));
                }
            }
        }
        Ok(())
    }

    fn asked(
        &mut self,
        overview: &Overview,
        people: &[PersonId],
        day: NaiveDate,
    ) -> Result<Vec<Asked>, AppError> {
        let ends = self.store.stream_ends()?;
        let json = |value: Result<String, serde_json::Error>| value.map_err(|_| AppError::Internal);
        let catalogue = match &self.glances.catalogue {
            Some((of, hash)) if Arc::ptr_eq(of, &self.books.catalogue) => hash.clone(),
            Some(_) | None => {
                let hash = hash_of(&json(serde_json::to_string(&*self.books.catalogue))?);
                self.glances.catalogue = Some((Arc::clone(&self.books.catalogue), hash.clone()));
                hash
            }
        };
        // What holds for everybody, once. A rule that was set for a client is a record of hers.
        let versions = crate::profile::versions(&self.books);
        let all = (CODE, catalogue, versions, self.store.device()?, day);
        let all = hash_of(&json(serde_json::to_string(&all))?);
        people
            .iter()
            .map(|person| {
                let ends = ends.get(person).map(Vec::as_slice).unwrap_or_default();
                let log: Vec<_> = ends.iter().map(|e| (e.device, e.seq, &e.hash)).collect();
                let key = json(serde_json::to_string(&(&all, person, log, overview.part_of(*person))))?;
                Ok(Asked { person: *person, key: hash_of(&key) })
            })
            .collect()
    }

    /// Works out those that there are, on several threads, and gives them back to be kept.
    fn work_out(
        &mut self,
        overview: &Overview,
        asked: &[&Asked],
        day: NaiveDate,
    ) -> Result<Vec<(KeptGlance, usize)>, AppError> {
        for asked in asked {
            // Another program may have taken something in beside this one.
            let here = self.store.count(asked.person)?;
            if self.known_if_read(asked.person).is_some_and(|k| k.records.len() != here) {
                self.forget_person(asked.person);
            }
        }
        let people: Vec<PersonId> = asked.iter().map(|a| a.person).collect();
        self.read_known(&people)?;
        let device = self.store.device()?;
        let mut work = Vec::new();
        for person in people {
            work.push((person, self.known_before(person)?, self.store.streams_with_gaps(person)?));
        }
        let found = together(&work, |(person, known, gaps)| {
            glance_of(overview, *person, known, (device, *gaps), day)
        })?;
        let mut kept = Vec::new();
        for (asked, glance) in asked.iter().zip(found) {
            let (person, key, glance) = (asked.person, asked.key.clone(), glance?);
            let value = serde_json::to_string(&glance).map_err(|_| AppError::Internal)?;
            kept.push((
                KeptGlance { person, key: key.clone(), value },
                self.known_before(person)?.records.len(),
            ));
            self.glances.of.insert(person, (key, glance));
            self.glances.made += 1;
        }
        Ok(kept)
    }

    /// Empties what was worked out, here and where it is kept for the next start.
    ///
    /// # Errors
    /// When the log cannot be written.
    pub fn forget_glances(&mut self) -> Result<(), AppError> {
        self.glances = Glances { remembered: true, ..Glances::default() };
        Ok(self.store.forget_glances()?)
    }

    /// Of how many clients, in this run of the program, a glance was worked out and not remembered.
    #[must_use]
    pub fn glances_made(&self) -> usize {
        self.glances.made
    }
}

/// A client at a glance, by her records and the programme that she trains.
fn glance_of(
    overview: &Overview,
    person: PersonId,
    known: &Known,
    (device, gaps): (DeviceId, u32),
    day: NaiveDate,
) -> Result<Glance, AppError> {
    let history = known.history();
    let intake = history.intake();
    let trains = overview.trains(person, known, day);
    // Before a programme was given safety still has its say.
    let none = Programme::empty();
    let bench = known.on(day).bench_for(trains.unwrap_or(&none), day, None);
    let waits = waits(&bench);
    let last_session = history.runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day);
    let entry = RosterEntry {
        person,
        name: client_name(history),
        stage: history.stage().map(|s| s.on(day)),
        stage_recorded: history.stage().cloned(),
        conditions: intake.conditions,
        baselines: intake.baselines,
        trained: intake.trained,
        never: intake.never,
        restrictions: crate::safety::restrictions(history, day),
        clearance_waits: waits.clearance,
        cleared: history
            .clearances
            .iter()
            .rfind(|c| c.what.holds_on(day))
            .map(|c| (c.what.who.clone(), c.what.on)),
        own_intake: history.standing_intakes().iter().find(|i| i.by == Voice::Client).map(|i| i.record),
        programme: trains.map(|p| p.title.clone()),
        week: trains.map(|p| {
            let Progress { week, over } = progress(history, p);
            ProgrammeWeek { week, weeks: p.weeks, over }
        }),
        last_session,
        last_days: last_session.and_then(|last| u32::try_from((day - last).num_days()).ok()),
        records: u32::try_from(known.records.len()).unwrap_or(u32::MAX),
        ladders: trains.map(ladders_of).unwrap_or_default(),
        kit: history.kits.last().map(|k| in_short(&k.what)),
        files: overview.files_of(person, known, device, day)?,
        waits,
    };
    Ok(Glance { entry, findings: findings(&bench, gaps) })
}

fn findings(bench: &Bench<'_>, gaps: u32) -> Vec<FindingView> {
    let mut findings: Vec<FindingView> = review::findings(bench)
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
    if gaps > 0 {
        let facts = BTreeMap::from([("count".to_owned(), Fact::Number(f64::from(gaps)))]);
        findings.push(FindingView { code: "gap".to_owned(), urge: Urge::Look, facts });
    }
    findings.sort_by_key(|f| f.urge);
    findings
}

fn waits(bench: &Bench<'_>) -> WaitsView {
    let holds = bench.state.open_holds().filter(|h| h.answer != Some(HoldAnswer::KeepResting)).count();
    WaitsView {
        red: bench.state.open_reds().next().is_some(),
        holds: u16::try_from(holds).unwrap_or(u16::MAX),
        clearance: !bench.ground.waits.is_empty(),
        screen: screening::due(bench).first().copied(),
    }
}
