//! What to train next: gate, then level, then load, each with its reasons (DESIGN 5.3 to 5.6).

mod ahead;
mod bench;
mod coach;
mod effort;
mod level;
mod load;
mod regulate;
mod session;
mod settings;
mod today;
mod types;

pub use ahead::Ahead;
pub use bench::{Bench, Inputs};
pub use effort::{Effort, effort};
pub use level::ready_for_more;
pub use load::{LoadCase, Pick};
pub use today::{SetPlan, Turn};
pub use types::{Gate, Offer, Outcome, Prescription, Proposal, SessionProposal, Target};
