//! The pure engine of Newel.
//!
//! Invariants: it reads no file and no clock, draws no random number but from a seed that is passed
//! in, and uses no floating-point function but those of `libm`. The same records give the same
//! proposal on every device, bit for bit.

pub mod advice;
pub mod catalogue;
pub mod class;
pub mod flow;
pub mod gains;
pub mod ground;
pub mod history;
pub mod ids;
pub mod impact;
pub mod kit;
pub mod ledger;
pub mod monitor;
pub mod programme;
pub mod proposal;
pub mod reason;
pub mod record;
pub mod review;
pub mod revision;
pub mod rules;
pub mod screening;
pub mod simulate;
pub mod stage;
pub mod state;
pub mod strength;
pub mod symptom;
pub mod units;
pub mod weeks;
pub mod wording;
pub mod writing;

/// Version of the engine; it stands in every shown proposal.
pub const ENGINE_VERSION: &str = env!("CARGO_PKG_VERSION");
