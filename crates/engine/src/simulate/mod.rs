//! Synthetic clients, and what becomes of them when the engine proposes: for the demonstration, for tests, and to
//! try a rule before anybody trains by it.
//!
//! A *trial* takes one client through weeks of a scenario. The real engine proposes, from the records alone; she
//! does what is asked, as far as she can, and answers as people do. An oracle that knows her strength, but not how
//! today differs, chooses beside it.

pub mod bodies;
mod chance;
mod client;
mod oracle;
mod scenario;
mod tally;
mod trial;
mod watch;

pub use chance::Chance;
pub use client::{Answer, Client, Habits};
pub use scenario::{Scenario, StartWith, scenarios};
pub use tally::{Estimate, Reached, Report, Settling, Tally};
pub use trial::{Outcome, SlotSession, trial};
pub use watch::Breaches;
