//! Writes records: ids and times counted up, streams numbered, so that a seed gives the same bytes every time.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::ids::{DeviceId, PersonId, RecordId, RunId};
use newel_engine::record::{Payload, Record, SCHEMA_VERSION};
use uuid::Uuid;

/// Her phone.
pub const PHONE: u128 = 1;
/// A second device of hers.
pub const LAPTOP: u128 = 2;

/// Holds the log and the time of day.
pub struct Pen {
    /// The log so far.
    pub records: Vec<Record>,
    /// Now.
    pub now: DateTime<FixedOffset>,
    /// The device that writes.
    pub device: u128,
    count: u128,
    seqs: BTreeMap<u128, u64>,
}

impl Pen {
    /// An empty log at an instant.
    pub fn at(now: DateTime<FixedOffset>) -> Self {
        Self { records: Vec::new(), now, device: PHONE, count: 1000, seqs: BTreeMap::new() }
    }

    fn uuid(&mut self) -> Uuid {
        self.count += 1;
        Uuid::from_u128(self.count)
    }

    /// A name for a session that begins.
    pub fn run(&mut self) -> RunId {
        RunId(self.uuid())
    }

    /// The local day.
    pub fn today(&self) -> NaiveDate {
        self.now.date_naive()
    }

    /// Days go by.
    pub fn days(&mut self, days: i64) {
        self.now += Duration::days(days);
    }

    /// Writes a record; a minute goes by.
    pub fn write(&mut self, payload: Payload) -> RecordId {
        self.now += Duration::minutes(1);
        let id = RecordId(self.uuid());
        let seq = self.seqs.entry(self.device).or_insert(0);
        self.records.push(Record {
            v: SCHEMA_VERSION,
            id,
            device: DeviceId(Uuid::from_u128(self.device)),
            person: PersonId(Uuid::from_u128(9)),
            seq: *seq,
            prev: None,
            at: self.now,
            payload,
        });
        *seq += 1;
        id
    }

    /// Writes with another device, and goes back to the one in hand.
    pub fn write_on(&mut self, device: u128, payload: Payload) -> RecordId {
        let own = std::mem::replace(&mut self.device, device);
        let id = self.write(payload);
        self.device = own;
        id
    }
}
