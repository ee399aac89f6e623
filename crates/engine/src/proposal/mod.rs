//! What to train next: gate, then level, then load, each with its reasons (DESIGN 5.3 to 5.6).

mod types;

pub use types::{Gate, Offer, Outcome, Prescription, Proposal, SessionProposal, Target};
