//! The log of Newel in SQLite: the only place with SQL.
//!
//! The log is the truth: every record is one JSON line whose bytes are kept as they were written.
//! A *stream* is what one device wrote about one person; its lines are numbered from 0 and each
//! bears the SHA-256 of the one before. Everything else in the database is either a *projection*,
//! which can be rebuilt from the lines at any time, or a *setting*, which is local to this profile.
//!
//! Invariants:
//! - No record is ever changed or deleted alone; erasure takes all streams of a person.
//! - All writes to the log go through [`Store::write`], [`Store::write_many`] or
//!   [`Store::apply_take_in`]; each is one transaction, and a set counts as logged when it returns.
//! - Only this profile's own device appends to its streams.
//! - No rule of training stands in SQL; the clock is an argument.
//!
//! ```
//! use newel_engine::{ids::PersonId, record::Payload};
//! use newel_store::{Action, Store};
//! let mut store = Store::open_in_memory()?;
//! let person = PersonId(uuid::Uuid::from_u128(7));
//! let at = chrono::DateTime::parse_from_rfc3339("2026-03-02T09:30:00+01:00").expect("a time");
//! let change = store.write(Action::WriteNote, at, person, vec![Payload::Note { text: "slept well".into() }])?;
//! assert_eq!(change.records[0].seq, 0);
//! assert_eq!(store.lines(person)?.len(), 1);
//! # Ok::<(), newel_store::StoreError>(())
//! ```

mod action;
mod arrange;
mod backup;
mod check;
mod drafts;
mod erase;
mod error;
mod glances;
mod id_source;
mod instance;
mod line;
mod open;
mod pictures;
mod project;
mod read;
mod rows;
mod schema;
mod settings;
mod take_in;
mod write;

pub use action::{Action, Area, Change, areas_of};
pub use arrange::{Arrangement, Group, SentHead};
pub use check::{Finding, Findings};
pub use drafts::DraftRow;
pub use error::StoreError;
pub use glances::{KeptGlance, StreamEnd};
pub use id_source::IdSource;
pub use line::{HASH_LENGTH, hash_of};
pub use open::{Opened, Store};
pub use read::{PersonSummary, StreamHead, is_known, read_line};
pub use rows::{MarkRow, MarkSource, SessionRow, SetRow};
pub use take_in::{
    Existing, Gap, KnownLine, NewLine, Refusal, Refused, TakeInPlan, TakeInReport, plan_take_in,
};
