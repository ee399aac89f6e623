//! Use cases over engine, store and exchange: the same for the window and for the command line.
//!
//! Invariants: the clock is an argument of every use case; a use case either does all that it says or
//! changes nothing; no SQL and no window here.

mod checked;
pub mod coach;
pub mod demo;
pub mod error;
pub mod files;
mod known;
mod marks;
pub mod newel;
pub mod outside;
pub mod path;
pub mod print;
pub mod profile;
pub mod replay;
pub mod rule_settings;
pub mod rulebook;
pub mod safety;
mod said;
pub mod simulate;
mod stopped;
pub mod strength;
mod threads;
pub mod train;
pub mod train_view;
pub mod views;
pub mod watch;
pub mod words;
pub mod worker;

pub use error::{AppError, Refusal};
pub use newel::{Books, Newel};
pub use profile::{Known, Plan, Profile};
pub use replay::{Replay, ReplayEntry, Replayed};
pub use words::Words;
pub use worker::Worker;
