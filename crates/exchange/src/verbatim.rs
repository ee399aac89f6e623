//! Record lines within a document: each is JSON itself and stands there as it is, byte for byte.

use serde::de::{Deserializer, Error as _};
use serde::ser::{Error as _, SerializeSeq as _, Serializer};
use serde::{Deserialize as _, Serialize};
use serde_json::value::RawValue;

pub(crate) fn serialize<S: Serializer>(lines: &[String], serializer: S) -> Result<S::Ok, S::Error> {
    #[derive(Serialize)]
    #[serde(transparent)]
    struct Line<'a>(&'a RawValue);

    let mut seq = serializer.serialize_seq(Some(lines.len()))?;
    for line in lines {
        let raw: &RawValue = serde_json::from_str(line).map_err(S::Error::custom)?;
        if raw.get().len() != line.len() {
            return Err(S::Error::custom("space around a record"));
        }
        seq.serialize_element(&Line(raw))?;
    }
    seq.end()
}

pub(crate) fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<String>, D::Error> {
    let lines = Vec::<&RawValue>::deserialize(deserializer)?;
    if lines.len() > crate::MAX_LINES {
        return Err(D::Error::custom("too many records"));
    }
    Ok(lines.into_iter().map(|raw| raw.get().to_owned()).collect())
}
