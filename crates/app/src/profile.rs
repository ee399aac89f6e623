//! A profile that is open: its log, what is read from it, and the engine over it.

use crate::error::{AppError, Refusal};
use crate::newel::{Books, NAME, PERSON, ROLE, card_of, role_name};
use crate::views::{PersonView, ProfileCard, Role};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::history::{History, Run};
use newel_engine::ids::{DeviceId, PersonId, RecordId, RunId};
use newel_engine::ledger::Ledger;
use newel_engine::programme::{Programme, Start};
use newel_engine::proposal::Bench;
use newel_engine::record::{Payload, Record, Versions};
use newel_engine::state::State;
use newel_engine::wording::VariantWords;
use newel_exchange::PlanDocument;
use newel_store::{Action, Change, Store, hash_of};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::sync::Arc;

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
    /// How each client stands, as it was last worked out.
    pub(crate) standings: BTreeMap<PersonId, crate::coach::Standing>,
}

/// What is known about one person, read from her lines.
#[derive(Clone, Debug)]
pub struct Known {
    /// Her records, in the order of the store.
    pub records: Vec<Record>,
    /// The plan in force, if there is one.
    pub plan: Option<Plan>,
    /// The books with what is the coach's own: hers as it stands now, then what her plans brought.
    pub books: Books,
    /// What all plans brought of a coach's own.
    brought: OwnCatalogue,
    /// True when the ledger knows the plan: by its catalogue her device proposes.
    planned: bool,
    ledger: Ledger,
    /// How many of the records the ledger holds.
    read: usize,
}

/// From so many new records on a ledger is made anew rather than kept up one by one.
const MANY: usize = 64;

/// The plan in force.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The coach's name.
    pub coach: String,
    /// Sequence number of the file.
    pub sequence: u64,
    /// The programme.
    pub programme: Programme,
    /// The coach's starts.
    pub starts: Vec<Start>,
    /// The coach's own words for variants.
    pub words: Vec<VariantWords>,
    /// The local day on which it was made.
    pub made: NaiveDate,
    /// The day on which the programme begins, if one was set.
    pub begins: Option<NaiveDate>,
    /// Ladders and variants of the coach's own that came with it.
    pub own: Option<OwnCatalogue>,
}

impl Plan {
    /// The day on which the programme begins, while that lies ahead and she has not begun of her own accord.
    #[must_use]
    pub fn begins_later(&self, history: &History, day: NaiveDate) -> Option<NaiveDate> {
        let of_it = |r: &Run| r.planned.as_ref().is_some_and(|(id, _, _)| *id == self.programme.id);
        let begun = history.runs.iter().any(|r| r.day >= self.made && of_it(r) && !r.sets.is_empty());
        self.begins.filter(|begins| *begins > day && !begun)
    }
}

impl Known {
    /// Reads records.
    #[must_use]
    pub fn of(books: &Books, records: Vec<Record>) -> Self {
        let (plan, brought) = plans_in(&records);
        Self::with(books, plan, brought, records)
    }

    /// Reads records, by a plan that need not stand among them, with what plans brought of a coach's own.
    #[must_use]
    pub fn with(books: &Books, plan: Option<Plan>, brought: OwnCatalogue, records: Vec<Record>) -> Self {
        // What the plan in force does not bring any more can be read and is not proposed: another coach may have written it.
        let in_force = plan.as_ref().and_then(|p| p.own.clone()).unwrap_or_default();
        let in_force = in_force.and(&brought.clone().retired());
        let (catalogue, rules) = (books.laid(&in_force), Arc::clone(&books.rules));
        let books = books.with((*books.own).clone().and(&in_force));
        let starts = plan.as_ref().map_or((&[][..], None), |p| (&p.starts[..], Some(p.made)));
        let ledger = Ledger::of(catalogue, rules, starts, &records);
        let read = records.len();
        Self { records, planned: plan.is_some(), plan, books, brought, ledger, read }
    }

    /// Takes records in that came after the others; they are read by [`Known::read`].
    fn extend(&mut self, records: &[Record]) {
        self.records.extend(records.iter().cloned());
    }

    /// Reads what has come in. A plan file is long to read, so the one in force is kept where none came.
    fn read(&mut self, books: &Books) {
        let new = &self.records[self.read..];
        let came_in = new.iter().any(|r| matches!(r.payload, Payload::PlanTakenIn { .. }));
        let records = |known: &mut Self| std::mem::take(&mut known.records);
        if came_in {
            *self = Self::of(books, records(self));
        } else if new.len() >= MANY {
            let brought = std::mem::take(&mut self.brought);
            *self = Self::with(books, self.plan.take(), brought, records(self));
        } else {
            for record in new {
                self.ledger.add(record.clone());
            }
            self.read = self.records.len();
        }
    }

    /// What happened.
    #[must_use]
    pub fn history(&self) -> &History {
        self.ledger.history()
    }

    /// Where she stands on a day.
    #[must_use]
    pub fn state(&self, day: NaiveDate) -> State {
        self.ledger.state(day)
    }

    /// The coach's starts that came with the plan, with the local day on which it was made.
    #[must_use]
    pub fn starts(&self) -> (&[Start], Option<NaiveDate>) {
        self.plan.as_ref().map_or((&[], None), |p| (&p.starts, Some(p.made)))
    }

    /// The engine over it, on a day; `None` without a plan.
    #[must_use]
    pub fn bench(&self, day: NaiveDate, run: Option<RunId>) -> Option<Bench<'_>> {
        let programme = &self.plan.as_ref()?.programme;
        // By what her device has, to the bit; where her log has no plan yet, by what the coach has.
        Some(if self.planned {
            self.ledger.bench(programme, day, run)
        } else {
            self.bench_for(programme, day, run)
        })
    }

    /// The engine over it, on a day, for a programme of the caller's, with the coach's own as it stands now.
    #[must_use]
    pub fn bench_for<'a>(
        &'a self,
        programme: &'a Programme,
        day: NaiveDate,
        run: Option<RunId>,
    ) -> Bench<'a> {
        self.ledger.bench_by(&self.books.catalogue, programme, day, run)
    }
}

/// The plan in force among records: the newest by sequence number that brought a programme. Plans that
/// bring answers alone leave the programme as it is.
#[must_use]
pub fn plan_in(records: &[Record]) -> Option<Plan> {
    plans_in(records).0
}

/// The plan in force among records, and what all plans brought of a coach's own; of one thing the newest word.
pub(crate) fn plans_in(records: &[Record]) -> (Option<Plan>, OwnCatalogue) {
    let mut plans: Vec<Plan> = records
        .iter()
        .filter_map(|r| match &r.payload {
            Payload::PlanTakenIn { plan } => newel_exchange::read_plan(plan.as_bytes()).ok(),
            _ => None,
        })
        .filter_map(|document: PlanDocument| {
            Some(Plan {
                coach: document.coach_name,
                sequence: document.sequence,
                programme: document.programme?,
                starts: document.starts,
                words: document.words,
                made: document.made_at.date_naive(),
                begins: document.begins,
                own: document.own,
            })
        })
        .collect();
    // Stable, so that of two with one number the one that came later is the last.
    plans.sort_by_key(|plan| plan.sequence);
    let of_all = plans.iter().rev().filter_map(|p| p.own.as_ref());
    let brought = of_all.fold(OwnCatalogue::default(), OwnCatalogue::and);
    (plans.pop(), brought)
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
        let (built_in, cache, standings) = (Arc::clone(&books), BTreeMap::new(), BTreeMap::new());
        let mut profile = Self { store, key, person, role, books, built_in, cache, standings };
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
        self.standings.clear();
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

    /// As [`Profile::known`], of somebody that was read already.
    pub(crate) fn known_before(&self, person: PersonId) -> Result<&Known, AppError> {
        self.cache.get(&person).ok_or(AppError::Internal)
    }

    /// What is known about several people at once, in their order.
    pub(crate) fn known_of(&mut self, people: &[PersonId]) -> Result<Vec<(PersonId, &Known)>, AppError> {
        for person in people {
            self.known(*person)?;
        }
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
        self.standings.remove(&person);
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
        self.standings.remove(&person);
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
