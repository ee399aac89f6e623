//! A history that is kept up with what is written: the same state as from folding everything anew, without
//! folding it.
//!
//! Runs are *settled* as others follow them; their fold is kept. A record that speaks of the latest runs, or of
//! what came after, is taken in by folding those few again. One that reaches further back (a correction, a file
//! taken in late) makes everything be folded anew.

use crate::catalogue::Catalogue;
use crate::history::resolve::run_of;
use crate::history::{Extent, History, Run};
use crate::ids::{RecordId, RunId};
use crate::programme::{Programme, Start};
use crate::proposal::{Bench, Inputs};
use crate::record::{Payload, Record};
use crate::rules::RulePack;
use crate::state::{Fold, Frame, State};
use chrono::{DateTime, NaiveDate, Utc};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// So many runs stay open for what comes late: the one in hand, and the one that its next-day answer speaks of.
const OPEN: usize = 2;
/// Beyond so many open runs the oldest are settled.
const MOST_OPEN: usize = 4;

/// The records of one person with what follows from them. The fold is that of the coach's starts, catalogue and
/// rule pack given; for others make another ledger.
#[derive(Clone, Debug)]
pub struct Ledger {
    catalogue: Arc<Catalogue>,
    rules: Arc<RulePack>,
    starts: Vec<Start>,
    starts_of: Option<NaiveDate>,
    history: History,
    settled: Settled,
    /// Records of the open runs and of what came after the settled ones.
    tail: Vec<Record>,
    /// Every record, once.
    known: BTreeSet<RecordId>,
}

#[derive(Clone, Debug, Default)]
struct Settled {
    records: Vec<Record>,
    extent: Extent,
    fold: Fold,
    /// All that is open was written at this instant or later; nothing is settled if there is none.
    until: Option<DateTime<Utc>>,
}

impl Ledger {
    /// A ledger of records in any order; the coach's `starts` are those that came with the plan, with the local day on
    /// which it was made.
    #[must_use]
    pub fn of(
        catalogue: Arc<Catalogue>,
        rules: Arc<RulePack>,
        (starts, starts_of): (&[Start], Option<NaiveDate>),
        records: &[Record],
    ) -> Self {
        let mut ledger = Self {
            catalogue,
            rules,
            starts: starts.to_vec(),
            starts_of,
            history: History::default(),
            settled: Settled::default(),
            tail: Vec::new(),
            known: BTreeSet::new(),
        };
        ledger.tail = records.iter().filter(|r| ledger.known.insert(r.id)).cloned().collect();
        ledger.history.append(&ledger.tail);
        ledger.settle();
        ledger
    }

    /// Takes in a record; one that is known already changes nothing.
    pub fn add(&mut self, record: Record) {
        if !self.known.insert(record.id) {
            return;
        }
        let reaches_back = self.reaches_back(&record);
        self.tail.push(record);
        if reaches_back {
            let mut all = std::mem::take(&mut self.settled).records;
            all.append(&mut self.tail);
            self.tail = all;
            self.history = History::default();
        } else {
            self.history.cut_back(self.settled.extent);
        }
        self.history.append(&self.tail);
        if reaches_back || self.open_runs() > MOST_OPEN {
            self.settle();
        }
    }

    /// What happened.
    #[must_use]
    pub fn history(&self) -> &History {
        &self.history
    }

    /// How many runs are folded again at each question.
    #[must_use]
    pub fn open_runs(&self) -> usize {
        self.history.runs.len() - self.settled_runs()
    }

    /// Where she stands on a day, as [`State::of`] gives it.
    #[must_use]
    pub fn state(&self, day: NaiveDate) -> State {
        let frame = self.frame(day);
        let mut fold = self.settled.fold.clone();
        for run in &self.history.runs[self.settled_runs()..] {
            fold.take(&self.history, run, frame);
        }
        fold.finish(&self.history, frame)
    }

    /// The bench for a day, as [`Bench::of`] gives it.
    #[must_use]
    pub fn bench<'b>(&'b self, programme: &'b Programme, day: NaiveDate, run: Option<RunId>) -> Bench<'b> {
        self.bench_by(&self.catalogue, programme, day, run)
    }

    /// As [`Ledger::bench`], by another catalogue: one with what a coach has made since.
    #[must_use]
    pub fn bench_by<'b>(
        &'b self,
        catalogue: &'b Catalogue,
        programme: &'b Programme,
        day: NaiveDate,
        run: Option<RunId>,
    ) -> Bench<'b> {
        let inputs = Inputs {
            history: &self.history,
            programme,
            starts: &self.starts,
            starts_of: self.starts_of,
            catalogue,
            rules: &self.rules,
            day,
            run,
        };
        Bench::with(inputs, self.state(day))
    }

    fn frame(&self, day: NaiveDate) -> Frame<'_> {
        Frame {
            catalogue: &self.catalogue,
            rules: &self.rules,
            starts: &self.starts,
            starts_of: self.starts_of,
            day,
        }
    }

    fn settled_runs(&self) -> usize {
        self.settled.extent.runs()
    }

    /// True if a record may change what is settled.
    fn reaches_back(&self, record: &Record) -> bool {
        let Some(until) = self.settled.until else { return false };
        if record.at.with_timezone(&Utc) < until {
            return true;
        }
        let settled_run =
            |run: RunId| self.history.runs[..self.settled_runs()].iter().rev().any(|r| r.id == run);
        let in_tail = |id: RecordId| self.tail.iter().rev().any(|r| r.id == id);
        match &record.payload {
            Payload::NextDayAnswer { run, .. } => settled_run(*run),
            Payload::Withdrawal { target } => !in_tail(*target),
            Payload::Correction { target, instead } => {
                !in_tail(*target) || run_of(instead).is_some_and(settled_run)
            }
            other => run_of(other).is_some_and(settled_run),
        }
    }

    /// Settles all runs but the latest few, with what was said before these began.
    fn settle(&mut self) {
        let runs = &self.history.runs;
        let first = self.settled_runs();
        let mut upto = runs.len().saturating_sub(OPEN);
        // What is said at the very instant of a run's begin counts for it, so no open run begins at that of a
        // settled one.
        while upto > first && runs[upto - 1].started >= runs[upto].started {
            upto -= 1;
        }
        if upto <= first {
            return;
        }
        let until = runs[upto].started.with_timezone(&Utc);
        let Some(closes) = closing(&self.tail, &runs[first..upto], &runs[upto..], until) else { return };
        let (closed, open): (Vec<_>, Vec<_>) =
            std::mem::take(&mut self.tail).into_iter().zip(closes).partition(|(_, closes)| *closes);
        self.settled.records.extend(closed.into_iter().map(|(record, _)| record));
        self.tail = open.into_iter().map(|(record, _)| record).collect();
        // The day of a frame is looked at only when a fold is finished.
        let frame = Frame {
            catalogue: &self.catalogue,
            rules: &self.rules,
            starts: &self.starts,
            starts_of: self.starts_of,
            day: NaiveDate::MIN,
        };
        for run in &self.history.runs[first..upto] {
            self.settled.fold.take(&self.history, run, frame);
        }
        self.settled.until = Some(until);
        self.history = History::default();
        self.history.append(&self.settled.records);
        self.settled.extent = self.history.extent();
        self.history.append(&self.tail);
    }
}

/// Which records close with some runs; `None` if one of them speaks of runs on both sides.
fn closing(records: &[Record], close: &[Run], stay: &[Run], until: DateTime<Utc>) -> Option<Vec<bool>> {
    let by_id: BTreeMap<RecordId, &Record> = records.iter().map(|r| (r.id, r)).collect();
    // Whatever corrects or takes back a record goes with it; `None` if that record is not here.
    let root_of = |record: &Record| {
        let mut at = record.id;
        for _ in 0..records.len() {
            match by_id.get(&at).map(|r| &r.payload) {
                Some(Payload::Withdrawal { target } | Payload::Correction { target, .. }) => at = *target,
                Some(_) => return Some(at),
                None => return None,
            }
        }
        None
    };
    // By record that stands by itself: closes, and stays.
    let mut sides: BTreeMap<RecordId, (bool, bool)> = BTreeMap::new();
    for record in records {
        let Some(root) = root_of(record) else { continue };
        let runs: Vec<RunId> = match &record.payload {
            Payload::NextDayAnswer { run, .. } => vec![*run],
            Payload::Correction { instead, .. } => match &**instead {
                Payload::NextDayAnswer { run, .. } => vec![*run],
                other => run_of(other).into_iter().collect(),
            },
            // A mark outside a session is a run of its own.
            Payload::SymptomMark { run: None, .. } => vec![RunId(record.id.0)],
            other => run_of(other).into_iter().collect(),
        };
        let side = sides.entry(root).or_default();
        if runs.is_empty() && record.id == root {
            let early = record.at.with_timezone(&Utc) < until;
            side.0 |= early;
            side.1 |= !early;
        }
        side.0 |= close.iter().any(|r| runs.contains(&r.id));
        side.1 |= stay.iter().any(|r| runs.contains(&r.id));
    }
    if sides.values().any(|(closes, stays)| *closes && *stays) {
        return None;
    }
    let closes = |record: &Record| root_of(record).is_some_and(|root| sides.get(&root).is_some_and(|s| s.0));
    Some(records.iter().map(closes).collect())
}
