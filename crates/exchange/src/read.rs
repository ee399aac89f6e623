//! Reading a file. Looks from the outside inwards, so that each trouble gets its own name.

use crate::document::{Document, Kind, LogDocument, PlanDocument};
use crate::error::{ReadError, RecordFault};
use crate::limits::{MAX_BYTES, MAX_LINES, is_too_deep};
use crate::picture::Picture;
use newel_engine::ids::PersonId;
use newel_engine::record::Record;
use newel_engine::wording::VariantWords;
use serde::Deserialize;
use serde_json::Value;
use serde_json::value::RawValue;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;

/// What every file of ours begins with, as we write it.
const BEGINNING: &[u8] = br#"{"format":"newel."#;

/// As much of an envelope as every version has; whatever else stands in it is passed over.
#[derive(Deserialize)]
struct Probe {
    format: Option<Value>,
    version: Option<Value>,
    seal: Option<Value>,
}

/// The envelope of versions 1 to 4.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Envelope<'a> {
    format: String,
    version: u32,
    #[serde(rename = "seal")]
    _seal: (),
    sha256: String,
    #[serde(borrow)]
    content: &'a RawValue,
    /// Since version 2, in plans.
    #[serde(default, deserialize_with = "crate::picture::from_texts")]
    pictures: Vec<Picture>,
}

/// Reads a file of either kind.
///
/// # Errors
/// Says what is wrong with it, in the order from outside inwards.
pub fn read(bytes: &[u8]) -> Result<Document, ReadError> {
    let trimmed = bytes.trim_ascii_start();
    if trimmed.is_empty() {
        return Err(ReadError::Empty);
    }
    if bytes.len() > MAX_BYTES {
        return Err(ReadError::TooLarge);
    }
    let ours = trimmed.starts_with(BEGINNING) || BEGINNING.starts_with(trimmed);
    // A foreign file is named so and nothing more; one that begins as ours was damaged on its way.
    let or_foreign = |error: ReadError| if ours { error } else { ReadError::NotNewel };
    let text = std::str::from_utf8(bytes).map_err(|e| {
        or_foreign(if e.error_len().is_none() { ReadError::CutShort } else { ReadError::Altered })
    })?;
    if is_too_deep(text) {
        return Err(ReadError::TooDeep);
    }
    let probe: Probe = serde_json::from_str(text).map_err(|e| {
        or_foreign(match e.classify() {
            serde_json::error::Category::Eof => ReadError::CutShort,
            // A number that was cut behind its point or sign counts as a fault of syntax with the parser.
            serde_json::error::Category::Syntax if text.ends_with(['.', '-', '+', 'e', 'E']) => {
                ReadError::CutShort
            }
            serde_json::error::Category::Syntax | serde_json::error::Category::Io => ReadError::Altered,
            serde_json::error::Category::Data => malformed(&e),
        })
    })?;
    let kind = kind_of(&probe)?;
    let envelope: Envelope<'_> = serde_json::from_str(text).map_err(|e| malformed(&e))?;
    let content = envelope.content.get();
    if envelope.sha256 != sha256(content) {
        return Err(ReadError::Altered);
    }
    let document = match kind {
        Kind::Log => Document::Log(parse::<LogDocument>(content)?),
        Kind::Plan => {
            let mut plan = parse::<PlanDocument>(content)?;
            plan.pictures = envelope.pictures;
            // A picture that no word names was altered on its way: its name is its hash.
            let named = |p: &Picture| plan.words.iter().any(|w| w.picture.as_ref() == Some(&p.name()));
            if !plan.pictures.iter().all(named) {
                return Err(ReadError::Altered);
            }
            if !plan.words.iter().all(VariantWords::is_sound) {
                return Err(ReadError::Malformed { detail: "words out of bounds".to_owned() });
            }
            if plan.own.as_ref().is_some_and(|own| own.check().is_err()) {
                return Err(ReadError::Malformed {
                    detail: "own ladders or variants out of bounds".to_owned(),
                });
            }
            Document::Plan(Box::new(plan))
        }
    };
    for (nth, line) in document.lines().iter().enumerate() {
        check_line(line, document.person()).map_err(|why| ReadError::RecordRefused { nth, why })?;
    }
    Ok(document)
}

/// A plan file's text without its pictures; all else stands as it was written, byte for byte. It reads as the same plan.
///
/// # Errors
/// As [`read`].
pub fn without_pictures(text: &str) -> Result<String, ReadError> {
    let envelope: Envelope<'_> = serde_json::from_str(text).map_err(|e| malformed(&e))?;
    if envelope.pictures.is_empty() {
        return Ok(text.to_owned());
    }
    Ok(crate::write::enveloped(
        &envelope.format,
        envelope.version,
        &envelope.sha256,
        envelope.content.get(),
        &[],
    ))
}

/// Reads a log file.
///
/// # Errors
/// As [`read`], and [`ReadError::WrongKind`] for a plan file.
pub fn read_log(bytes: &[u8]) -> Result<LogDocument, ReadError> {
    match read(bytes)? {
        Document::Log(log) => Ok(log),
        Document::Plan(_) => Err(ReadError::WrongKind { found: Kind::Plan, expected: Kind::Log }),
    }
}

/// Reads a plan file.
///
/// # Errors
/// As [`read`], and [`ReadError::WrongKind`] for a log file.
pub fn read_plan(bytes: &[u8]) -> Result<PlanDocument, ReadError> {
    match read(bytes)? {
        Document::Plan(plan) => Ok(*plan),
        Document::Log(_) => Err(ReadError::WrongKind { found: Kind::Log, expected: Kind::Plan }),
    }
}

/// Format, version and seal, in this order: a newer version may seal in any way it likes.
fn kind_of(probe: &Probe) -> Result<Kind, ReadError> {
    let format = match &probe.format {
        Some(Value::String(format)) if format.starts_with("newel.") => format,
        Some(_) | None => return Err(ReadError::NotNewel),
    };
    let version = probe
        .version
        .as_ref()
        .and_then(Value::as_u64)
        .filter(|v| *v > 0)
        .ok_or_else(|| ReadError::Malformed { detail: "no version".to_owned() })?;
    let kind = [Kind::Log, Kind::Plan].into_iter().find(|k| k.format() == format);
    match kind {
        Some(kind) if version <= u64::from(kind.newest()) => {
            if probe.seal.as_ref().is_some_and(|seal| !seal.is_null()) {
                return Err(ReadError::Sealed);
            }
            Ok(kind)
        }
        // Another kind of file can only come from a version that knows more kinds.
        Some(_) | None => Err(ReadError::TooNew { found: format!("version {version}") }),
    }
}

fn parse<'a, T: Deserialize<'a>>(content: &'a str) -> Result<T, ReadError> {
    /// Counts the records before anything is made of them.
    #[derive(Deserialize)]
    struct Count<'a> {
        #[serde(borrow)]
        lines: Option<Vec<&'a RawValue>>,
    }
    let count = serde_json::from_str::<Count<'_>>(content).ok().and_then(|c| c.lines);
    if count.is_some_and(|lines| lines.len() > MAX_LINES) {
        return Err(ReadError::TooLarge);
    }
    serde_json::from_str(content).map_err(|e| malformed(&e))
}

/// A line that may stand in a file about a person.
pub(crate) fn check_line(line: &str, person: PersonId) -> Result<(), RecordFault> {
    if line.contains('\n') || line.contains('\r') {
        return Err(RecordFault::NotOneLine);
    }
    let record = Record::parse(line).map_err(|_| RecordFault::NotARecord)?;
    if record.person == person { Ok(()) } else { Err(RecordFault::AnotherPerson) }
}

/// The parser's words, cut short: a long one would quote the file.
fn malformed(error: &serde_json::Error) -> ReadError {
    ReadError::Malformed { detail: format!("line {}, column {}", error.line(), error.column()) }
}

/// SHA-256 as lower-case hexadecimal.
pub(crate) fn sha256(text: &str) -> String {
    Sha256::digest(text.as_bytes()).iter().fold(String::with_capacity(64), |mut hex, byte| {
        // Writing to a string cannot go wrong.
        let _ = write!(hex, "{byte:02x}");
        hex
    })
}
