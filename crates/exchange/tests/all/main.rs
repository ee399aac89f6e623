//! Files between devices from outside: what is written is read, and what is not whole is refused.
#![allow(clippy::unwrap_used, reason = "helpers of tests, where a panic is the report")]

mod altered;
mod disk;
mod golden;
mod refused;
mod round_trip;
mod schema;
mod support;
