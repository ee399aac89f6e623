//! A programme that is being written, looked through for the clients it is for. It reads and writes nothing.

use super::client_name;
use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{AdviceView, ClientName, LookFor};
use chrono::{DateTime, FixedOffset};
use newel_engine::advice::{self, Client, Draft};
use newel_engine::ids::{PersonId, ProgrammeId};
use std::collections::BTreeSet;

impl Profile {
    /// What there is to say about a programme, whole or not, for those to whom it was given, for all, or for one; if it
    /// is not said for whom, for those to whom it was given, or for all if there are none.
    ///
    /// # Errors
    /// When there is no such programme or client, or the log cannot be read.
    pub fn advice_view(
        &mut self,
        now: DateTime<FixedOffset>,
        id: ProgrammeId,
        look: Option<LookFor>,
    ) -> Result<AdviceView, AppError> {
        self.coach_only()?;
        let programme = self.programme(id)?;
        let archived = self.store.archived()?;
        let people: Vec<PersonId> = self.everybody()?.into_iter().filter(|p| !archived.contains(p)).collect();
        let mut given: BTreeSet<PersonId> = BTreeSet::new();
        for person in &people {
            if self.store.setting(&format!("programme.{person}"))?.is_some_and(|p| p == id.to_string()) {
                given.insert(*person);
            }
        }
        let books = self.books();
        let known = self.known_of(&people)?;
        let in_force = known.iter().filter(|(_, k)| k.plan.as_ref().is_some_and(|p| p.programme.id == id));
        given.extend(in_force.map(|(person, _)| *person));
        let look = look.unwrap_or(if given.is_empty() { LookFor::All } else { LookFor::Given });
        let looked = match look {
            LookFor::Given => given.clone(),
            LookFor::All => people.iter().copied().collect(),
            LookFor::One { person } if people.contains(&person) => BTreeSet::from([person]),
            LookFor::One { .. } => return Err(Refusal::NoSuchThing.into()),
        };
        let mut clients: Vec<ClientName> = known
            .iter()
            .map(|(person, known)| ClientName { person: *person, name: client_name(known.history()) })
            .collect();
        clients.sort_by_cached_key(|c| c.name.to_lowercase());
        let day = now.date_naive();
        let draft = Draft { programme: &programme, catalogue: &books.catalogue, rules: &books.rules, day };
        let benches: Vec<_> = known
            .iter()
            .filter(|(person, _)| looked.contains(person))
            .map(|(person, known)| (*person, known.bench_for(&programme, day, None)))
            .collect();
        // Named in the order in which the page lists them.
        let mut seen: Vec<Client<'_>> =
            benches.iter().map(|(person, bench)| Client { person: *person, bench }).collect();
        seen.sort_by_cached_key(|c| clients.iter().position(|named| named.person == c.person));
        let minutes = advice::session_minutes(&draft, known.iter().map(|(_, known)| known.history()));
        let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
        Ok(AdviceView {
            programme: id,
            look,
            looked: count(seen.len()),
            given: count(given.len()),
            advice: advice::advice(&draft, &seen, &minutes),
            minutes,
            clients,
        })
    }
}
