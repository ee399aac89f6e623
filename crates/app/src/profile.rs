//! A profile that is open: its log, what is read from it, and the engine over it.

use crate::error::{AppError, Refusal};
use crate::newel::{Books, NAME, PERSON, ROLE, card_of, role_name};
use crate::views::{PersonView, ProfileCard, Role};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::history::{History, Run};
use newel_engine::ids::{DeviceId, PersonId, ProgrammeId, RecordId, RunId};
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
    pub(crate) books: Arc<Books>,
    cache: BTreeMap<PersonId, Known>,
    /// How each client stands, as it was last worked out.
    pub(crate) standings: BTreeMap<PersonId, crate::coach::Standing>,
}

/// What is known about one person, read from her lines.
#[derive(Clone, Debug)]
pub struct Known {
    /// Her records, in the order of the store.
    pub records: Vec<Record>,
    /// The newest plan, if there is one. Which is in force on a day says [`Known::on`].
    pub plan: Option<Plan>,
    ledger: Ledger,
    /// How many of the records the ledger holds.
    read: usize,
    /// The same records by the plan that was in force before, while nothing was trained by the newest.
    before: Option<Box<Known>>,
}

/// From so many new records on a ledger is made anew rather than kept up one by one.
const MANY: usize = 64;

/// A plan that brought a programme.
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
}

impl Plan {
    /// The day on which the programme begins, while that lies ahead and she has not begun of her own accord.
    #[must_use]
    pub fn begins_later(&self, history: &History, day: NaiveDate) -> Option<NaiveDate> {
        self.begins.filter(|begins| *begins > day && !self.is_begun(history))
    }

    /// True once a set of it was done since it was made.
    fn is_begun(&self, history: &History) -> bool {
        history.runs.iter().any(|r| r.day >= self.made && self.is_of(r) && !r.sets.is_empty())
    }

    /// True if a run was begun under its programme, as that stood then.
    fn is_of(&self, run: &Run) -> bool {
        let (id, revision) = (self.programme.id, self.programme.revision);
        run.planned.as_ref().is_some_and(|(of, at, _)| *of == id && *at == revision)
    }

    /// As it is while a newer one waits for its day: its own programme, with all of the newer that does not belong to
    /// the new programme alone. That is who the coach is, her words, and of her starts those that are lower than these.
    fn beside(mut self, newer: &Self) -> Self {
        self.coach.clone_from(&newer.coach);
        self.words.clone_from(&newer.words);
        for start in &mut self.starts {
            if let Some(lower) = newer.starts.iter().rfind(|n| n.ladder == start.ladder && is_lower(n, start))
            {
                *start = lower.clone();
            }
        }
        self
    }
}

/// True if a start is at a lower level than another of its ladder, or at the same with less of the same kind held.
fn is_lower(start: &Start, than: &Start) -> bool {
    let (a, b) = (start.level.unwrap_or(0), than.level.unwrap_or(0));
    let lighter = || match (&start.load, &than.load) {
        (Some(a), Some(b)) => a.is_same_make(b) && a.external(1.0).0 < b.external(1.0).0,
        (Some(_) | None, None) | (None, Some(_)) => false,
    };
    a < b || a == b && lighter()
}

impl Known {
    /// Reads records.
    #[must_use]
    pub fn of(books: &Books, records: Vec<Record>) -> Self {
        let plans = plans_in(&records);
        Self::by(books, plans, records)
    }

    /// Reads records, by plans that need not stand among them; the newest of them first.
    #[must_use]
    pub fn by(books: &Books, plans: Vec<Plan>, records: Vec<Record>) -> Self {
        let mut plans = plans.into_iter();
        let mut known = Self::with(books, plans.next(), records);
        let earlier = known.plan.as_ref().and_then(|newest| known.waits_for(books, newest, plans));
        known.before = earlier.map(|plan| Box::new(Self::with(books, Some(plan), known.records.clone())));
        known
    }

    /// The plan that was in force when a newer one with a day of its own was made; `None` where nothing waits. A plan that
    /// was itself still waiting then was replaced and never comes to hold.
    fn waits_for(
        &self,
        books: &Books,
        newest: &Plan,
        mut earlier: impl Iterator<Item = Plan>,
    ) -> Option<Plan> {
        newest.begins.filter(|_| !newest.is_begun(self.history()))?;
        let held = |p: &Plan| {
            p.sequence < newest.sequence
                && p.begins.is_none_or(|day| day <= newest.made || p.is_begun(self.history()))
                && p.programme.check(&books.catalogue).is_ok()
        };
        let plan = earlier.find(held)?;
        let same = |a: &Programme, b: &Programme| a.id == b.id && a.revision == b.revision;
        (!same(&plan.programme, &newest.programme)).then(|| plan.beside(newest))
    }

    /// What is known, by the plan that is in force on a day: the newest, or the one before it until the newest begins.
    #[must_use]
    pub fn on(&self, day: NaiveDate) -> &Self {
        let waits = self.plan.as_ref().is_some_and(|p| p.begins_later(self.history(), day).is_some());
        self.before.as_deref().filter(|_| waits).unwrap_or(self)
    }

    /// What is known, by the plan that a run was begun under.
    #[must_use]
    pub fn of_run(&self, run: &Run) -> &Self {
        let is_its = |known: &&Self| known.plan.as_ref().is_some_and(|p| p.is_of(run));
        let found = [Some(self), self.before.as_deref()].into_iter().flatten().find(is_its);
        found.unwrap_or_else(|| self.on(run.day))
    }

    /// What is known, by the plan that brought a programme, else by the one in force on a day.
    #[must_use]
    pub fn of_programme(&self, programme: ProgrammeId, day: NaiveDate) -> &Self {
        let brought = self.plan.as_ref().is_some_and(|p| p.programme.id == programme);
        let waits = self.before.as_ref().and_then(|b| b.plan.as_ref());
        // Two revisions of one programme: the one that is in force.
        if brought && waits.is_none_or(|p| p.programme.id != programme) { self } else { self.on(day) }
    }

    /// The plan that waits for its day, and the day, while an earlier one is in force.
    #[must_use]
    pub fn later(&self, day: NaiveDate) -> Option<(&Plan, NaiveDate)> {
        self.before.as_ref()?;
        let plan = self.plan.as_ref()?;
        Some((plan, plan.begins_later(self.history(), day)?))
    }

    /// Reads records by one plan, or by none.
    fn with(books: &Books, plan: Option<Plan>, records: Vec<Record>) -> Self {
        let (catalogue, rules) = (Arc::clone(&books.catalogue), Arc::clone(&books.rules));
        let starts = plan.as_ref().map_or((&[][..], None), |p| (&p.starts[..], Some(p.made)));
        let ledger = Ledger::of(catalogue, rules, starts, &records);
        let read = records.len();
        Self { records, plan, ledger, read, before: None }
    }

    /// Takes records in that came after the others; they are read by [`Known::read`].
    fn extend(&mut self, records: &[Record]) {
        self.records.extend(records.iter().cloned());
        if let Some(before) = &mut self.before {
            before.extend(records);
        }
    }

    /// Reads what has come in. A plan file is long to read, so the one in force is kept where none came.
    fn read(&mut self, books: &Books) {
        let new = &self.records[self.read..];
        let came_in = new.iter().any(|r| matches!(r.payload, Payload::PlanTakenIn { .. }));
        let records = |known: &mut Self| std::mem::take(&mut known.records);
        if let Some(before) = self.before.as_mut().filter(|_| !came_in) {
            before.read(books);
        }
        if came_in {
            *self = Self::of(books, records(self));
        } else if new.len() >= MANY {
            let before = self.before.take();
            *self = Self::with(books, self.plan.take(), records(self));
            self.before = before;
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
        Some(self.bench_for(&self.plan.as_ref()?.programme, day, run))
    }

    /// The engine over it, on a day, for a programme of the caller's.
    #[must_use]
    pub fn bench_for<'a>(
        &'a self,
        programme: &'a Programme,
        day: NaiveDate,
        run: Option<RunId>,
    ) -> Bench<'a> {
        self.ledger.bench(programme, day, run)
    }
}

/// The plans among records that brought a programme, the newest by sequence number first. Plans that bring answers alone
/// leave the programme as it is.
#[must_use]
pub fn plans_in(records: &[Record]) -> Vec<Plan> {
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
            })
        })
        .collect();
    newest_first(&mut plans);
    plans
}

/// The newest first; of two with one number the one that came last.
pub(crate) fn newest_first(plans: &mut [Plan]) {
    plans.reverse();
    plans.sort_by_key(|plan| std::cmp::Reverse(plan.sequence));
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
        Ok(Self { store, key, person, role, books, cache: BTreeMap::new(), standings: BTreeMap::new() })
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
