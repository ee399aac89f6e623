//! What is known of one person from her records: her plans, which of them is in force on a day, and the engine over it.

use crate::newel::Books;
use chrono::NaiveDate;
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::history::{History, Run};
use newel_engine::ids::{ProgrammeId, RunId};
use newel_engine::ledger::Ledger;
use newel_engine::programme::{Programme, Start};
use newel_engine::proposal::Bench;
use newel_engine::record::{Payload, Record};
use newel_engine::state::State;
use newel_engine::wording::VariantWords;
use newel_exchange::PlanDocument;
use std::sync::Arc;

/// What is known about one person, read from her lines.
#[derive(Clone, Debug)]
pub struct Known {
    /// Her records, in the order of the store.
    pub records: Vec<Record>,
    /// The newest plan, if there is one. Which is in force on a day says [`Known::on`].
    pub plan: Option<Plan>,
    /// The books with what is the coach's own: hers as it stands now, then what her plans brought.
    pub books: Books,
    /// What all plans brought of a coach's own.
    pub(crate) brought: OwnCatalogue,
    /// True when the ledger knows the plan: by its catalogue her device proposes.
    planned: bool,
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
    /// Ladders and variants of the coach's own that came with it.
    pub own: Option<OwnCatalogue>,
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
        // Of her own moves the newest word holds, so that what she has put away is not proposed any more.
        self.own = match (&newer.own, self.own) {
            (Some(newer), Some(own)) => Some(newer.clone().and(&own)),
            (newer, own) => own.or_else(|| newer.clone()),
        };
        for start in &mut self.starts {
            if let Some(lower) = newer.starts.iter().rfind(|n| n.is_lower_than(start)) {
                *start = lower.clone();
            }
        }
        self
    }
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
        let of_all = plans.iter().filter_map(|p| p.own.as_ref());
        let brought = of_all.fold(OwnCatalogue::default(), OwnCatalogue::and);
        let mut plans = plans.into_iter();
        let mut known = Self::with(books, plans.next(), brought, records);
        let earlier = known.plan.as_ref().and_then(|newest| known.waits_for(books, newest, plans));
        known.before = earlier.map(|plan| {
            Box::new(Self::with(books, Some(plan), known.brought.clone(), known.records.clone()))
        });
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
                && p.programme.check(&books.laid(&p.own.clone().unwrap_or_default())).is_ok()
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

    /// Reads records by one plan, or by none, with what plans brought of a coach's own.
    fn with(books: &Books, plan: Option<Plan>, brought: OwnCatalogue, records: Vec<Record>) -> Self {
        // What the plan in force does not bring any more can be read and is not proposed: another coach may have written it.
        let in_force = plan.as_ref().and_then(|p| p.own.clone()).unwrap_or_default();
        let in_force = in_force.and(&brought.clone().retired());
        let (catalogue, rules) = (books.laid(&in_force), Arc::clone(&books.rules));
        let books = books.with((*books.own).clone().and(&in_force));
        let starts = plan.as_ref().map_or((&[][..], None), |p| (&p.starts[..], Some(p.made)));
        let ledger = Ledger::of(catalogue, rules, starts, &records);
        let read = records.len();
        Self { records, planned: plan.is_some(), plan, books, brought, ledger, read, before: None }
    }

    /// Takes records in that came after the others; they are read by [`Known::read`].
    pub(crate) fn extend(&mut self, records: &[Record]) {
        self.records.extend(records.iter().cloned());
        if let Some(before) = &mut self.before {
            before.extend(records);
        }
    }

    /// Reads what has come in. A plan file is long to read, so the one in force is kept where none came.
    pub(crate) fn read(&mut self, books: &Books) {
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
            let brought = std::mem::take(&mut self.brought);
            *self = Self::with(books, self.plan.take(), brought, records(self));
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
                own: document.own,
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
