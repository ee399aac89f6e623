//! What a coach puts in the place of the built-in words and picture of a variant. It bears on what is read, never on what
//! is proposed.

use crate::ids::VariantId;
use crate::record::{Payload, Record};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// The most cues that a variant may have of a coach's own; more are not read in mid-set (common practice, no source).
pub const MAX_CUES: usize = 4;

/// Characters of one cue: two lines on a phone.
pub const MAX_CUE: usize = 120;

/// A coach's own words and picture for a variant. With neither, the built-in ones are back.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct VariantWords {
    /// The variant.
    pub variant: VariantId,
    /// Her cues in place of the built-in ones; none leaves those. At most [`MAX_CUES`] of at most [`MAX_CUE`] characters.
    pub cues: Vec<String>,
    /// SHA-256 (hex) of a picture that stands in the figure's place.
    #[serde(default)]
    pub picture: Option<String>,
}

impl VariantWords {
    /// True when nothing of hers is left.
    #[must_use]
    pub fn is_nothing(&self) -> bool {
        self.cues.is_empty() && self.picture.is_none()
    }

    /// True when cues and picture are within their bounds.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        let told = |cue: &String| !cue.trim().is_empty() && cue.chars().count() <= MAX_CUE;
        let hash = |h: &String| h.len() == 64 && h.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'));
        self.cues.len() <= MAX_CUES && self.cues.iter().all(told) && self.picture.iter().all(hash)
    }
}

/// What stands for each variant: the last that was written of it, by time, device and number.
#[must_use]
pub fn standing(records: &[Record]) -> Vec<VariantWords> {
    let mut written: Vec<_> = records
        .iter()
        .filter_map(|r| match &r.payload {
            Payload::VariantWords(words) if words.is_sound() => Some(((r.at, r.device, r.seq), words)),
            _ => None,
        })
        .collect();
    written.sort_by_key(|(key, _)| *key);
    let last: BTreeMap<&VariantId, &VariantWords> =
        written.into_iter().map(|(_, w)| (&w.variant, w)).collect();
    last.into_values().filter(|w| !w.is_nothing()).cloned().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ids::{DeviceId, PersonId, RecordId};
    use chrono::DateTime;

    fn words(cues: &[&str], picture: Option<String>) -> VariantWords {
        let cues = cues.iter().map(|c| (*c).to_owned()).collect();
        VariantWords { variant: VariantId::from("squat-goblet"), cues, picture }
    }

    fn record(nth: u64, words: VariantWords) -> Record {
        let id = |n: u64| uuid::Uuid::from_u128(u128::from(n));
        Record {
            v: crate::record::SCHEMA_VERSION,
            id: RecordId(id(nth)),
            device: DeviceId(id(1)),
            person: PersonId(id(2)),
            seq: nth,
            prev: None,
            at: DateTime::parse_from_rfc3339(&format!("2026-03-02T09:{nth:02}:00+01:00")).unwrap(),
            payload: Payload::VariantWords(words),
        }
    }

    #[test]
    fn the_last_word_stands_in_whatever_order_it_arrives_and_nothing_takes_it_back() {
        let first = record(1, words(&["Sit between your heels"], None));
        let second = record(2, words(&["Knees over toes"], None));
        let back = record(3, words(&[], None));
        let said = |records: &[Record]| standing(records).first().map(|w| w.cues.clone());
        assert_eq!(said(&[second.clone(), first.clone()]), Some(vec!["Knees over toes".to_owned()]));
        assert_eq!(said(&[back, second, first]), None, "empty puts the built-in words back");
    }

    #[test]
    fn what_is_too_long_too_much_or_no_hash_is_not_sound() {
        assert!(words(&["a"; MAX_CUES], Some("0a".repeat(32))).is_sound());
        assert!(!words(&["a"; MAX_CUES + 1], None).is_sound());
        assert!(words(&["é".repeat(MAX_CUE).as_str()], None).is_sound(), "characters, not bytes");
        assert!(!words(&["é".repeat(MAX_CUE + 1).as_str()], None).is_sound());
        assert!(!words(&[" "], None).is_sound());
        assert!(!words(&[], Some("../../etc".to_owned())).is_sound());
    }
}
