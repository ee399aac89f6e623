//! The store from outside: what is written, taken in, checked, backed up, and survives a kill.

#![allow(clippy::unwrap_used, reason = "helpers of tests, where a panic is the report")]

mod arrange;
mod backup;
mod check;
mod crash;
mod drafts;
mod erase;
mod glances;
mod kinds;
mod log;
mod opening;
mod projections;
mod support;
mod take_in;
