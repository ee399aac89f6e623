//! Taking in what other devices wrote: first a plan, which is pure, then its application.
//!
//! A union of logs is a set union: a line that is known changes nothing, a new one is added, and
//! whatever does not fit is named and left out. Nothing that is here is ever replaced.

mod apply;
mod chain;
mod plan;

pub use apply::TakeInReport;
pub use plan::{Existing, Gap, KnownLine, NewLine, Refusal, Refused, TakeInPlan, plan_take_in};
