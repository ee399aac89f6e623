//! The plan of a take-in: what is new, known, missing and refused. Pure.

use super::chain::{self, Link};
use crate::line::{hash_of, is_one_line};
use newel_engine::ids::{DeviceId, PersonId, RecordId};
use newel_engine::record::Record;
use std::collections::{BTreeMap, BTreeSet};

/// The highest number that a record may have: below 2^53, so that every reader can hold it exactly.
const MAX_SEQ: u64 = (1 << 53) - 1;

/// What is known of a stored line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KnownLine {
    /// The device that wrote it.
    pub device: DeviceId,
    /// The person that it is about.
    pub person: PersonId,
    /// Its number.
    pub seq: u64,
    /// The hash that it bears of the line before.
    pub prev: Option<String>,
    /// Its own hash.
    pub hash: String,
}

/// What a database holds, as far as a take-in has to know.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Existing {
    /// The name under which the profile writes.
    pub own: DeviceId,
    /// All stored lines about the person, and those of other people whose id comes up in the file.
    pub lines: BTreeMap<RecordId, KnownLine>,
    /// A stamp of the log's state; a plan can be applied only to the state that it was made from.
    pub stamp: (u64, u64),
}

/// A line that will be added.
#[derive(Clone, Debug, PartialEq)]
pub struct NewLine {
    /// The record.
    pub record: Record,
    /// Its line, verbatim.
    pub line: String,
    /// The line's hash.
    pub hash: String,
}

/// Records that are missing from a stream, both ends included.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Gap {
    /// The device whose stream it is.
    pub device: DeviceId,
    /// First missing number.
    pub from: u64,
    /// Last missing number.
    pub to: u64,
}

/// Why a line was refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Refusal {
    /// It is no record, or not one that this version can make sense of.
    NotARecord,
    /// It is about somebody else than the file says.
    AnotherPerson,
    /// Its id is known with another content, or stands twice in the file with two contents.
    TwoContents,
    /// Its place in the stream is taken by another record, here or in the file.
    PlaceTaken,
    /// It does not follow from the line before it in its stream.
    BrokenChain,
    /// The line after it says that it read otherwise when it was written, or it cannot be told which
    /// of the two was altered.
    Altered,
}

impl Refusal {
    /// The stable code; the sentence for it is `take-in-refused-<code>` in the Fluent files.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::NotARecord => "not-a-record",
            Self::AnotherPerson => "another-person",
            Self::TwoContents => "two-contents",
            Self::PlaceTaken => "place-taken",
            Self::BrokenChain => "broken-chain",
            Self::Altered => "altered",
        }
    }

    /// All of them, for the test that each has its sentence.
    pub const ALL: [Self; 6] = [
        Self::NotARecord,
        Self::AnotherPerson,
        Self::TwoContents,
        Self::PlaceTaken,
        Self::BrokenChain,
        Self::Altered,
    ];
}

/// A line that was refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// Its place among the lines of the file, from 0.
    pub nth: usize,
    /// Its stream and number, where it could be read.
    pub place: Option<(DeviceId, u64)>,
    /// Why.
    pub why: Refusal,
}

/// What taking lines in would do.
#[derive(Clone, Debug, PartialEq)]
pub struct TakeInPlan {
    /// The person that the lines are about.
    pub person: PersonId,
    /// Lines to add, by device and number.
    pub new: Vec<NewLine>,
    /// Lines that are here already.
    pub known: usize,
    /// What is missing afterwards from the streams that the lines belong to.
    pub gaps: Vec<Gap>,
    /// What was refused and why, in the order of the file.
    pub refused: Vec<Refused>,
    /// True when the lines hold something under this profile's own name that it has not written: it
    /// was restored from an older copy, or a copy of it wrote on. It then goes on under a new name.
    pub renews_device: bool,
    /// The state that the plan was made from.
    pub stamp: (u64, u64),
}

impl TakeInPlan {
    /// True when applying it would leave the log as it is.
    #[must_use]
    pub fn changes_nothing(&self) -> bool {
        self.new.is_empty() && !self.renews_device
    }
}

struct Candidate {
    nth: usize,
    line: NewLine,
}

/// Plans the take-in of lines about a person.
#[must_use]
pub fn plan_take_in(existing: &Existing, person: PersonId, lines: &[String]) -> TakeInPlan {
    let mut refused = Vec::new();
    let mut known = 0;
    let mut renews_device = false;
    let mut streams: BTreeSet<DeviceId> = BTreeSet::new();
    let mut candidates: Vec<Candidate> = Vec::new();
    let mut seen: BTreeSet<&str> = BTreeSet::new();

    let here: BTreeMap<(DeviceId, u64), &KnownLine> =
        existing.lines.values().filter(|k| k.person == person).map(|k| ((k.device, k.seq), k)).collect();

    for (nth, line) in lines.iter().enumerate() {
        if !seen.insert(line) {
            // The same bytes twice in one file say nothing new; the first one was counted.
            continue;
        }
        let Some(record) = read(line) else {
            refused.push(Refused { nth, place: None, why: Refusal::NotARecord });
            continue;
        };
        let place = Some((record.device, record.seq));
        if record.person != person {
            refused.push(Refused { nth, place, why: Refusal::AnotherPerson });
            continue;
        }
        streams.insert(record.device);
        let hash = hash_of(line);
        match existing.lines.get(&record.id) {
            Some(stored) if stored.hash == hash => known += 1,
            other => {
                renews_device |= record.device == existing.own;
                if other.is_some() {
                    refused.push(Refused { nth, place, why: Refusal::TwoContents });
                } else if here.contains_key(&(record.device, record.seq)) {
                    refused.push(Refused { nth, place, why: Refusal::PlaceTaken });
                } else {
                    candidates.push(Candidate { nth, line: NewLine { record, line: line.clone(), hash } });
                }
            }
        }
    }

    refuse_doubles(&mut candidates, &mut refused, |c| c.record.id, Refusal::TwoContents);
    refuse_doubles(&mut candidates, &mut refused, |c| (c.record.device, c.record.seq), Refusal::PlaceTaken);
    refuse_broken(&mut candidates, &mut refused, &here);

    candidates.sort_by_key(|c| (c.line.record.device, c.line.record.seq));
    refused.sort_by_key(|r| r.nth);
    let new: Vec<NewLine> = candidates.into_iter().map(|c| c.line).collect();
    let numbers = here.keys().copied().chain(new.iter().map(|n| (n.record.device, n.record.seq)));
    let gaps = gaps(numbers.filter(|(device, _)| streams.contains(device)).collect());
    TakeInPlan { person, new, known, gaps, refused, renews_device, stamp: existing.stamp }
}

fn read(line: &str) -> Option<Record> {
    if !is_one_line(line) {
        return None;
    }
    let record = Record::parse(line).ok()?;
    // The first line of a stream has none before it, and every other has one.
    let linked = record.prev.is_some() == (record.seq > 0);
    (linked && record.seq <= MAX_SEQ).then_some(record)
}

/// Refuses all candidates that share a key with another: it cannot be told which is the true one.
fn refuse_doubles<K: Ord>(
    candidates: &mut Vec<Candidate>,
    refused: &mut Vec<Refused>,
    key: impl Fn(&NewLine) -> K,
    why: Refusal,
) {
    let mut count: BTreeMap<K, usize> = BTreeMap::new();
    for candidate in candidates.iter() {
        *count.entry(key(&candidate.line)).or_default() += 1;
    }
    let doubled = |c: &Candidate| count.get(&key(&c.line)).is_some_and(|n| *n > 1);
    refuse(candidates, refused, why, doubled);
}

fn refuse_broken(
    candidates: &mut Vec<Candidate>,
    refused: &mut Vec<Refused>,
    here: &BTreeMap<(DeviceId, u64), &KnownLine>,
) {
    let mut links: BTreeMap<(DeviceId, u64), Link<'_>> = here
        .iter()
        .map(|(place, k)| (*place, Link { prev: k.prev.as_deref(), hash: &k.hash, stored: true }))
        .collect();
    links.extend(candidates.iter().map(|c| {
        let record = &c.line.record;
        let link = Link { prev: record.prev.as_deref(), hash: &c.line.hash, stored: false };
        ((record.device, record.seq), link)
    }));
    let verdicts = chain::judge(&links);
    for why in [Refusal::Altered, Refusal::BrokenChain] {
        refuse(candidates, refused, why, |c| {
            verdicts.get(&(c.line.record.device, c.line.record.seq)) == Some(&why)
        });
    }
}

fn refuse(
    candidates: &mut Vec<Candidate>,
    refused: &mut Vec<Refused>,
    why: Refusal,
    unfit: impl Fn(&Candidate) -> bool,
) {
    candidates.retain(|c| {
        let unfit = unfit(c);
        if unfit {
            let place = Some((c.line.record.device, c.line.record.seq));
            refused.push(Refused { nth: c.nth, place, why });
        }
        !unfit
    });
}

/// What is missing below the highest number of each stream.
fn gaps(numbers: BTreeSet<(DeviceId, u64)>) -> Vec<Gap> {
    let mut gaps = Vec::new();
    let mut next: BTreeMap<DeviceId, u64> = BTreeMap::new();
    for (device, seq) in numbers {
        let from = next.insert(device, seq + 1).unwrap_or(0);
        if from < seq {
            gaps.push(Gap { device, from, to: seq - 1 });
        }
    }
    gaps
}
