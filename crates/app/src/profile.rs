//! A profile that is open: its log, what is read from it, and the engine over it.

use crate::error::{AppError, Refusal};
pub(crate) use crate::known::newest_first;
pub use crate::known::{Known, Plan, plans_in};
use crate::newel::{Books, NAME, PERSON, ROLE, card_of, role_name};
use crate::threads::together;
use crate::views::{PersonView, ProfileCard, Role};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::ids::{DeviceId, PersonId, RecordId, RunId};
use newel_engine::record::{Payload, Versions};
use newel_store::{Action, Change, Store, hash_of, read_line};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::sync::Arc;
use std::time::Duration;

/// A profile that is open.
pub struct Profile {
    pub(crate) store: Store,
    key: String,
    person: PersonId,
    role: Role,
    /// What the engine works with here, with what is the coach's own.
    pub(crate) books: Arc<Books>,
    /// As it is without that.
    built_in: Arc<Books>,
    cache: BTreeMap<PersonId, Known>,
    /// What was last worked out of each client, at a glance.
    pub(crate) glances: crate::coach::Glances,
    /// How long whoever asks for many clients waits for an answer that is not whole; for the whole if it is not said.
    pub(crate) patience: Option<Duration>,
}

/// Versions of engine, catalogue and rule pack.
#[must_use]
pub fn versions(books: &Books) -> Versions {
    Versions {
        engine: newel_engine::ENGINE_VERSION.to_owned(),
        catalogue: books.catalogue.version,
        rules: books.rules.version,
    }
}

/// SHA-256 over everything that a proposal is made from: the lines that were known, the plan, the
/// versions, the day and the run.
#[must_use]
pub fn inputs_hash(lines: &[String], plan: &Plan, versions: &Versions, day: NaiveDate, run: RunId) -> String {
    let mut hasher = Sha256::new();
    let mut hashes: Vec<String> = lines.iter().map(|l| hash_of(l)).collect();
    hashes.sort();
    for hash in hashes {
        hasher.update(hash.as_bytes());
    }
    for part in [
        serde_json::to_string(&plan.programme),
        serde_json::to_string(&plan.starts),
        serde_json::to_string(versions),
    ]
    .into_iter()
    .chain(plan.own.as_ref().map(serde_json::to_string))
    .flatten()
    {
        hasher.update(part.len().to_be_bytes());
        hasher.update(part.as_bytes());
    }
    hasher.update(day.to_string().as_bytes());
    hasher.update(run.to_string().as_bytes());
    hasher.finalize().iter().map(|b| format!("{b:02x}")).collect()
}

impl Profile {
    /// A profile over an open log.
    ///
    /// # Errors
    /// When the log lacks what says whose it is.
    pub fn of(store: Store, key: String, books: Arc<Books>) -> Result<Self, AppError> {
        let person = store
            .setting(PERSON)?
            .and_then(|p| p.parse().ok())
            .map(PersonId)
            .ok_or(Refusal::NoSuchProfile)?;
        let role = card_of(&store, &key)?.role;
        let (built_in, cache) = (Arc::clone(&books), BTreeMap::new());
        let glances = crate::coach::Glances::default();
        let mut profile = Self { store, key, person, role, books, built_in, cache, glances, patience: None };
        // A log that cannot be read is told by whatever asks for it first.
        if let Err(error) = profile.read_own_catalogue() {
            tracing::warn!(%error, "the coach's own catalogue was not read");
        }
        Ok(profile)
    }

    /// Works out what is the coach's own: what stands in her stream, and what her own plans brought. What is known of
    /// anybody is read anew if that has changed.
    pub(crate) fn read_own_catalogue(&mut self) -> Result<(), AppError> {
        let built_in = Arc::clone(&self.built_in);
        let known = self.own()?;
        let own = OwnCatalogue::standing(&known.records);
        let in_force = known.plan.as_ref().and_then(|p| p.own.clone()).unwrap_or_default();
        let own = own.and(&in_force).and(&known.brought.clone().retired());
        if own != *self.books.own {
            self.books = Arc::new(built_in.with(own));
            self.forget();
        }
        Ok(())
    }

    /// Its folder's name.
    #[must_use]
    pub fn key(&self) -> &str {
        &self.key
    }

    /// Its own person.
    #[must_use]
    pub fn person(&self) -> PersonId {
        self.person
    }

    /// Its name.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn name(&self) -> Result<String, AppError> {
        Ok(self.store.setting(NAME)?.unwrap_or_default())
    }

    /// Which side of the app it shows.
    #[must_use]
    pub fn role(&self) -> Role {
        self.role
    }

    /// What others' plans brought to whom of a coach's own, as far as it was read.
    pub(crate) fn others_own(&self) -> OwnCatalogue {
        self.cache.values().fold(OwnCatalogue::default(), |all, known| all.and(&known.brought))
    }

    /// The books without anything of a coach's own, as a replay begins with them.
    pub(crate) fn built_in(&self) -> &Books {
        &self.built_in
    }

    /// The books.
    #[must_use]
    pub fn books(&self) -> Arc<Books> {
        Arc::clone(&self.books)
    }

    pub(crate) fn set_role(&mut self, role: Role) -> Result<(), AppError> {
        self.store.set_setting(ROLE, role_name(role))?;
        self.role = role;
        Ok(())
    }

    pub(crate) fn card(&self) -> Result<ProfileCard, AppError> {
        card_of(&self.store, &self.key)
    }

    pub(crate) fn forget(&mut self) {
        self.cache.clear();
        self.glances = crate::coach::Glances::default();
    }

    /// What is known about a person.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn known(&mut self, person: PersonId) -> Result<&Known, AppError> {
        if !self.cache.contains_key(&person) {
            let known = Known::of(&self.books, self.store.records(person)?);
            self.cache.insert(person, known);
        }
        self.known_before(person)
    }

    /// Reads several people at once, on as many threads as the machine has.
    pub(crate) fn read_known(&mut self, people: &[PersonId]) -> Result<(), AppError> {
        let unread: Vec<PersonId> = people.iter().copied().filter(|p| !self.cache.contains_key(p)).collect();
        // In parts, so that the lines of hundreds do not stand in memory at once.
        for part in unread.chunks(32) {
            let mut lines = Vec::new();
            for person in part {
                lines.push((*person, self.store.lines(*person)?));
            }
            let books = &self.books;
            let read = together(&lines, |(person, lines)| {
                let records = lines.iter().map(|l| read_line(l)).collect::<Result<_, _>>()?;
                Ok::<_, AppError>((*person, Known::of(books, records)))
            })?;
            for known in read {
                let (person, known) = known?;
                self.cache.insert(person, known);
            }
        }
        Ok(())
    }

    /// What is known of somebody, if she was read already.
    pub(crate) fn known_if_read(&self, person: PersonId) -> Option<&Known> {
        self.cache.get(&person)
    }

    /// As [`Profile::known`], of somebody that was read already.
    pub(crate) fn known_before(&self, person: PersonId) -> Result<&Known, AppError> {
        self.cache.get(&person).ok_or(AppError::Internal)
    }

    /// What is known about several people at once, in their order.
    pub(crate) fn known_of(&mut self, people: &[PersonId]) -> Result<Vec<(PersonId, &Known)>, AppError> {
        self.read_known(people)?;
        let known = |person: &PersonId| self.cache.get(person).map(|k| (*person, k));
        Ok(people.iter().filter_map(known).collect())
    }

    /// What is known about the profile's own person.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn own(&mut self) -> Result<&Known, AppError> {
        self.known(self.person)
    }

    /// Writes what one action says about a person. Durable when it returns.
    ///
    /// # Errors
    /// What the store says.
    pub fn write(
        &mut self,
        action: Action,
        now: DateTime<FixedOffset>,
        person: PersonId,
        payloads: Vec<Payload>,
    ) -> Result<Change, AppError> {
        let change = self.store.write(action, now, person, payloads)?;
        if let Some(known) = self.cache.get_mut(&person) {
            known.extend(&change.records);
            known.read(&self.books);
        }
        if change.records.iter().any(|r| matches!(r.payload, Payload::OwnLadder(_) | Payload::OwnVariant(_)))
        {
            self.read_own_catalogue()?;
        }
        Ok(change)
    }

    /// As [`Profile::write`], about the profile's own person.
    ///
    /// # Errors
    /// What the store says.
    pub fn write_own(
        &mut self,
        action: Action,
        now: DateTime<FixedOffset>,
        payloads: Vec<Payload>,
    ) -> Result<Change, AppError> {
        self.write(action, now, self.person, payloads)
    }

    /// As [`Profile::write`], but what is known is not worked out anew until [`Profile::reread`]: for the
    /// demonstration, which writes thousands of records in one go.
    pub(crate) fn write_unread(
        &mut self,
        action: Action,
        now: DateTime<FixedOffset>,
        payloads: Vec<Payload>,
    ) -> Result<Change, AppError> {
        let person = self.person;
        let change = self.store.write(action, now, person, payloads)?;
        if let Some(known) = self.cache.get_mut(&person) {
            known.extend(&change.records);
        }
        Ok(change)
    }

    /// Works out anew what is known about the profile's own person, after [`Profile::write_unread`].
    pub(crate) fn reread(&mut self) {
        if let Some(known) = self.cache.get_mut(&self.person) {
            known.read(&self.books);
        }
    }

    pub(crate) fn forget_person(&mut self, person: PersonId) {
        self.cache.remove(&person);
        self.glances.forget(person);
    }

    /// The latest correction of a record by whoever wrote it, or the record itself: what a further
    /// correction has to name, so that corrections form a line and not a fork.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn latest_of(&mut self, person: PersonId, record: RecordId) -> Result<RecordId, AppError> {
        let known = self.known(person)?;
        let mut at = record;
        for _ in 0..known.records.len() {
            let next = known
                .records
                .iter()
                .rev()
                .find(|r| matches!(&r.payload, Payload::Correction { target, .. } if *target == at));
            match next {
                Some(next) => at = next.id,
                None => break,
            }
        }
        Ok(at)
    }

    /// What is known of a person, and how she stands on a day.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn person_view(&mut self, person: PersonId, day: NaiveDate) -> Result<PersonView, AppError> {
        let name = self.name()?;
        let own = person == self.person;
        let known = self.known(person)?;
        // Numbers are the client's own; a name that the coach wrote fills in where she has said none.
        let latest = known.history().profiles.last().map(|p| &p.what);
        let number = |pick: fn(&newel_engine::record::Profile) -> Option<&String>| {
            known.history().profiles.iter().rev().find_map(|p| pick(&p.what)).cloned()
        };
        Ok(PersonView {
            person,
            name: latest.map_or_else(|| if own { name } else { String::new() }, |p| p.name.clone()),
            stage: known.history().stage().map(|s| s.on(day)),
            emergency: number(|p| p.emergency.as_ref()),
            clinic: number(|p| p.clinic.as_ref()),
        })
    }

    /// Streams of a person and how far each is known, as *proposal shown* keeps them.
    pub(crate) fn known_streams(&self, person: PersonId) -> Result<Vec<(DeviceId, u64)>, AppError> {
        Ok(self.store.known(person)?)
    }
}
