//! A record as the one line that is stored, hashed and sent.

use newel_engine::ids::RecordId;
use newel_engine::record::{Payload, Record};
use serde::Deserialize;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;

use crate::StoreError;

/// Characters of a hash: SHA-256 as lower-case hexadecimal.
pub const HASH_LENGTH: usize = 64;

/// The SHA-256 of a line's exact bytes, as lower-case hexadecimal.
///
/// ```
/// // FIPS 180-2, appendix B.1: the digest of "abc".
/// assert_eq!(
///     newel_store::hash_of("abc"),
///     "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
/// );
/// ```
#[must_use]
pub fn hash_of(line: &str) -> String {
    let digest = Sha256::digest(line.as_bytes());
    let mut hex = String::with_capacity(HASH_LENGTH);
    for byte in &digest {
        // Writing to a string cannot go wrong.
        let _ = write!(hex, "{byte:02x}");
    }
    hex
}

/// True for a text that stands on one line and bears nothing before or after its braces.
pub(crate) fn is_one_line(line: &str) -> bool {
    line.starts_with('{') && line.ends_with('}') && !line.contains('\n') && !line.contains('\r')
}

/// The kind as it is written, also for kinds that this version does not know.
pub(crate) fn kind_of(line: &str) -> String {
    #[derive(Deserialize)]
    struct Head {
        payload: Kind,
    }
    #[derive(Deserialize)]
    struct Kind {
        kind: String,
    }
    serde_json::from_str::<Head>(line).map_or_else(|_| "unknown".to_owned(), |h| h.payload.kind)
}

/// The line of a record, proved to read back as the same record.
pub(crate) fn line_of(record: &Record) -> Result<String, StoreError> {
    if is_unknown(&record.payload) {
        return Err(StoreError::Unwritable { why: "its kind is unknown to this version" });
    }
    let line = serde_json::to_string(record)
        .map_err(|_| StoreError::Unwritable { why: "it cannot be written as JSON" })?;
    // A number that is not finite would turn into null, and a line that nobody can read is worse than none.
    match Record::parse(&line) {
        Ok(back) if back == *record && back.at.offset() == record.at.offset() => Ok(line),
        Ok(_) | Err(_) => {
            Err(StoreError::Unwritable { why: "a number in it is not finite, or a date is out of range" })
        }
    }
}

fn is_unknown(payload: &Payload) -> bool {
    if let Payload::Correction { instead, .. } = payload {
        return is_unknown(instead);
    }
    matches!(payload, Payload::Unknown)
}

/// The record that a payload speaks of, if it speaks of one.
pub(crate) fn target_of(payload: &Payload) -> Option<RecordId> {
    match payload {
        Payload::Withdrawal { target } | Payload::Correction { target, .. } => Some(*target),
        Payload::HoldAnswered { hold, .. } => Some(*hold),
        Payload::Answer { question, .. } => Some(*question),
        Payload::Profile(_)
        | Payload::CheckIn { .. }
        | Payload::SessionStarted { .. }
        | Payload::ProposalShown { .. }
        | Payload::SetDone(_)
        | Payload::SetSkipped { .. }
        | Payload::OptionChosen { .. }
        | Payload::SymptomMark { .. }
        | Payload::NextDayAnswer { .. }
        | Payload::SessionEnded { .. }
        | Payload::BodyMass { .. }
        | Payload::KitChanged { .. }
        | Payload::TenReps { .. }
        | Payload::StageChanged { .. }
        | Payload::Screening { .. }
        | Payload::TakenUp { .. }
        | Payload::ImpactChecked { .. }
        | Payload::Restriction { .. }
        | Payload::Clearance { .. }
        | Payload::Question { .. }
        | Payload::Note { .. }
        | Payload::Consent { .. }
        | Payload::PlanTakenIn { .. }
        | Payload::PlanSent { .. }
        | Payload::Override { .. }
        | Payload::RuleSetting(_)
        | Payload::VariantWords(_)
        | Payload::OwnLadder(_)
        | Payload::OwnVariant(_)
        | Payload::Unknown => None,
    }
}
