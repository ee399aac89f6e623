//! From records to what holds: order, corrections, withdrawals.

use crate::ids::{DeviceId, RecordId, RunId};
use crate::record::{Payload, Record};
use chrono::{DateTime, FixedOffset, TimeDelta, Utc};
use std::collections::{BTreeMap, BTreeSet};

/// What a record says, at the end of a line of corrections.
#[derive(Clone, Debug)]
pub struct Leaf<'a> {
    /// When this was written.
    pub at: DateTime<FixedOffset>,
    /// What it says.
    pub says: &'a Payload,
    /// What it said before, the oldest first, each with when that was written; empty if it was not corrected.
    pub before: Vec<(DateTime<FixedOffset>, &'a Payload)>,
}

impl Leaf<'_> {
    /// Since when it has said something without a break, as `says_so` tells it of a payload.
    #[must_use]
    pub fn since(&self, says_so: impl Fn(&Payload) -> bool) -> DateTime<FixedOffset> {
        self.before.iter().rev().take_while(|(_, said)| says_so(said)).last().map_or(self.at, |(at, _)| *at)
    }
}

/// A record that stands, with what it says now.
#[derive(Debug)]
pub struct Standing<'a> {
    /// The record as first written.
    pub record: &'a Record,
    /// What holds, in order of writing: its own payload or that of its corrections. More than one if
    /// two devices corrected it; the engine takes the stricter. Empty if it was taken back.
    pub holds: Vec<Leaf<'a>>,
    /// For a mark, a check-in or an answer of the next day: what it said when its session was ended, or
    /// a day after it was written if that came first. A red flag among these has been confirmed and
    /// cannot be talked down later.
    pub confirmed: Vec<Leaf<'a>>,
    /// True if it was corrected.
    pub corrected: bool,
}

impl<'a> Standing<'a> {
    /// What holds; the latest if two corrections stand side by side.
    #[must_use]
    pub fn latest(&self) -> Option<&'a Payload> {
        self.holds.last().map(|leaf| leaf.says)
    }
}

/// All records, put in the order of the engine, with corrections and withdrawals worked in.
#[derive(Debug, Default)]
pub struct Resolved<'a> {
    /// What stands, in order.
    pub entries: Vec<Standing<'a>>,
}

/// The run that a record belongs to.
#[must_use]
pub fn run_of(payload: &Payload) -> Option<RunId> {
    match payload {
        Payload::CheckIn { run, .. }
        | Payload::SessionStarted { run, .. }
        | Payload::ProposalShown { run, .. }
        | Payload::SetSkipped { run, .. }
        | Payload::OptionChosen { run, .. }
        | Payload::SessionEnded { run, .. } => Some(*run),
        Payload::SetDone(set) => Some(set.run),
        Payload::SymptomMark { run, .. } => *run,
        Payload::Correction { instead, .. } => run_of(instead),
        Payload::NextDayAnswer { .. }
        | Payload::Profile(_)
        | Payload::Withdrawal { .. }
        | Payload::BodyMass { .. }
        | Payload::KitChanged { .. }
        | Payload::TenReps { .. }
        | Payload::StageChanged { .. }
        | Payload::Screening { .. }
        | Payload::TakenUp { .. }
        | Payload::ImpactChecked { .. }
        | Payload::Restriction { .. }
        | Payload::HoldAnswered { .. }
        | Payload::Clearance { .. }
        | Payload::Question { .. }
        | Payload::Answer { .. }
        | Payload::Note { .. }
        | Payload::Consent { .. }
        | Payload::PlanTakenIn { .. }
        | Payload::PlanSent { .. }
        | Payload::Override { .. }
        | Payload::RuleSetting(_)
        | Payload::VariantWords(_)
        | Payload::OwnLadder(_)
        | Payload::OwnVariant(_)
        | Payload::Unknown => None,
    }
}

type Key = (DateTime<Utc>, DeviceId, u64);

/// A sign that was left standing so long is confirmed, whether or not its session was ended; common
/// practice, no source.
pub const LEFT_STANDING: TimeDelta = TimeDelta::hours(24);

fn plain_key(record: &Record) -> Key {
    (record.at.with_timezone(&Utc), record.device, record.seq)
}

impl<'a> Resolved<'a> {
    /// Puts records in order (session start, device, sequence) and works in what was corrected or
    /// taken back. The order in which the records arrive does not matter; a record twice counts once.
    #[must_use]
    pub fn of(records: &'a [Record]) -> Self {
        let mut unique: Vec<&'a Record> = records.iter().collect();
        // Stable: of one id with two contents (named elsewhere) the one that came first counts.
        unique.sort_by_key(|r| r.id);
        unique.dedup_by_key(|r| r.id);
        // Each run begins with its earliest record; that instant orders all of them.
        let mut starts: BTreeMap<RunId, DateTime<Utc>> = BTreeMap::new();
        for record in &unique {
            if let Some(run) = run_of(&record.payload) {
                let at = record.at.with_timezone(&Utc);
                starts.entry(run).and_modify(|s| *s = (*s).min(at)).or_insert(at);
            }
        }
        let key = |record: &Record| -> Key {
            let at = run_of(&record.payload).and_then(|run| starts.get(&run).copied());
            (at.unwrap_or_else(|| record.at.with_timezone(&Utc)), record.device, record.seq)
        };
        let mut ordered = unique;
        ordered.sort_by_cached_key(|r| key(r));

        // The first end seals; ending a session again does not open it.
        let mut ended: BTreeMap<RunId, Key> = BTreeMap::new();
        for record in &ordered {
            if let Payload::SessionEnded { run, .. } = &record.payload {
                let key = plain_key(record);
                ended.entry(*run).and_modify(|k| *k = (*k).min(key)).or_insert(key);
            }
        }
        let mut withdrawals: Vec<&'a Record> = Vec::new();
        let mut corrections: BTreeMap<RecordId, Vec<&'a Record>> = BTreeMap::new();
        for record in &ordered {
            match &record.payload {
                Payload::Withdrawal { .. } => withdrawals.push(record),
                Payload::Correction { target, .. } => corrections.entry(*target).or_default().push(record),
                _ => {}
            }
        }
        let mut withdrawn: BTreeMap<RecordId, Key> = BTreeMap::new();
        for record in withdrawals {
            if let Payload::Withdrawal { target } = &record.payload {
                let key = plain_key(record);
                withdrawn.entry(*target).and_modify(|k| *k = (*k).min(key)).or_insert(key);
            }
        }
        let mut entries = Vec::new();
        for record in ordered {
            if matches!(record.payload, Payload::Withdrawal { .. } | Payload::Correction { .. }) {
                continue;
            }
            let holds = if withdrawn.contains_key(&record.id) {
                Vec::new()
            } else {
                leaves_of(record, &corrections, &withdrawn, None)
            };
            let a_day_on = record.at.with_timezone(&Utc).checked_add_signed(LEFT_STANDING);
            let a_day_on = a_day_on.map(|at| (at, record.device, 0));
            let end = run_of(&record.payload).and_then(|run| ended.get(&run)).copied();
            let sealed = [end, a_day_on].into_iter().flatten().min();
            let confirmed = match (&record.payload, sealed) {
                (
                    Payload::SymptomMark { .. } | Payload::CheckIn { .. } | Payload::NextDayAnswer { .. },
                    Some(sealed),
                ) => {
                    if withdrawn.get(&record.id).is_some_and(|key| *key <= sealed) {
                        Vec::new()
                    } else {
                        leaves_of(record, &corrections, &withdrawn, Some(sealed))
                    }
                }
                _ => Vec::new(),
            };
            let corrected = holds.iter().any(|h| !std::ptr::eq(h.says, &raw const record.payload));
            if !(holds.is_empty() && confirmed.is_empty()) {
                entries.push(Standing { record, holds, confirmed, corrected });
            }
        }
        Self { entries }
    }
}

/// Payloads at the ends of the tree of corrections of a record that are not taken back, in the order
/// of writing. The record's own payload if there is no correction. With `until`, what was written
/// later is not looked at.
fn leaves_of<'a>(
    record: &'a Record,
    corrections: &BTreeMap<RecordId, Vec<&'a Record>>,
    withdrawn: &BTreeMap<RecordId, Key>,
    until: Option<Key>,
) -> Vec<Leaf<'a>> {
    if !corrections.contains_key(&record.id) {
        return vec![Leaf { at: record.at, says: &record.payload, before: Vec::new() }];
    }
    let mut found: Vec<(Key, Leaf<'a>)> = Vec::new();
    let tree = Tree { corrections, withdrawn, until };
    tree.collect(record, &record.payload, &mut Vec::new(), &mut BTreeSet::new(), &mut found);
    found.sort_by_key(|(key, _)| *key);
    found.into_iter().map(|(_, leaf)| leaf).collect()
}

struct Tree<'t, 'a> {
    corrections: &'t BTreeMap<RecordId, Vec<&'a Record>>,
    withdrawn: &'t BTreeMap<RecordId, Key>,
    until: Option<Key>,
}

impl<'a> Tree<'_, 'a> {
    fn in_time(&self, key: Key) -> bool {
        self.until.is_none_or(|until| key <= until)
    }

    fn collect(
        &self,
        record: &'a Record,
        says: &'a Payload,
        before: &mut Vec<(DateTime<FixedOffset>, &'a Payload)>,
        seen: &mut BTreeSet<RecordId>,
        found: &mut Vec<(Key, Leaf<'a>)>,
    ) {
        // Two corrections that name each other would go round for ever.
        if !seen.insert(record.id) {
            return;
        }
        let mut children = 0;
        before.push((record.at, says));
        for child in self.corrections.get(&record.id).into_iter().flatten() {
            let taken_back = self.withdrawn.get(&child.id).is_some_and(|key| self.in_time(*key));
            if taken_back || !self.in_time(plain_key(child)) {
                continue;
            }
            if let Payload::Correction { instead, .. } = &child.payload {
                children += 1;
                self.collect(child, instead, before, seen, found);
            }
        }
        before.pop();
        if children == 0 {
            found.push((plain_key(record), Leaf { at: record.at, says, before: before.clone() }));
        }
    }
}
