//! Writing a document as bytes.

use crate::document::{Kind, LogDocument, PlanDocument};
use crate::error::WriteError;
use crate::limits::{MAX_BYTES, MAX_LINES, is_too_deep};
use crate::picture::{MAX_PICTURES, Picture};
use crate::read::{check_line, sha256};
use newel_engine::ids::PersonId;
use serde::Serialize;
use serde_json::ser::{Formatter, Serializer};
use std::io;

/// The bytes of a log file.
///
/// # Errors
/// When it would be refused by its reader.
pub fn write_log(log: &LogDocument) -> Result<Vec<u8>, WriteError> {
    write(Kind::Log, 1, log, log.person, &log.lines, &[])
}

/// The bytes of a plan file.
///
/// # Errors
/// When it would be refused by its reader.
pub fn write_plan(plan: &PlanDocument) -> Result<Vec<u8>, WriteError> {
    if let Some(own) = &plan.own {
        own.check().map_err(|why| WriteError::Unwritable { detail: why.to_string() })?;
    }
    write(Kind::Plan, plan.version(), plan, plan.person, &plan.lines, &plan.pictures)
}

fn write(
    kind: Kind,
    version: u32,
    document: &impl Serialize,
    person: PersonId,
    lines: &[String],
    pictures: &[Picture],
) -> Result<Vec<u8>, WriteError> {
    if lines.len() > MAX_LINES || pictures.len() > MAX_PICTURES {
        return Err(WriteError::TooLarge);
    }
    for (nth, line) in lines.iter().enumerate() {
        check_line(line, person).map_err(|why| WriteError::RecordRefused { nth, why })?;
    }
    let unwritable = |detail: String| WriteError::Unwritable { detail };
    let mut content = Vec::new();
    document
        .serialize(&mut Serializer::with_formatter(&mut content, OneLineEach))
        .map_err(|e| unwritable(e.to_string()))?;
    let content = String::from_utf8(content).map_err(|e| unwritable(e.to_string()))?;
    let text = enveloped(kind.format(), version, &sha256(&content), &content, pictures);
    if text.len() > MAX_BYTES {
        return Err(WriteError::TooLarge);
    }
    if is_too_deep(&text) {
        return Err(unwritable("nested too deeply".to_owned()));
    }
    Ok(text.into_bytes())
}

/// The envelope around a content. No end of line after the last brace, so that a file that lost its last byte is known
/// as cut short.
pub(crate) fn enveloped(
    format: &str,
    version: u32,
    sha256: &str,
    content: &str,
    pictures: &[Picture],
) -> String {
    let beside = match pictures {
        [] => String::new(),
        // Base64 needs no escapes in JSON.
        some => format!(
            ",\"pictures\":[\n{}]",
            some.iter().map(|p| format!("\"{}\"", p.base64())).collect::<Vec<_>>().join(",\n")
        ),
    };
    format!(
        r#"{{"format":"{format}","version":{version},"seal":null,"sha256":"{sha256}","content":{content}{beside}}}"#
    )
}

/// Compact JSON, but for a new line before each record, so that a file can be read by eye and by grep.
struct OneLineEach;

impl Formatter for OneLineEach {
    fn write_raw_fragment<W: ?Sized + io::Write>(
        &mut self,
        writer: &mut W,
        fragment: &str,
    ) -> io::Result<()> {
        writer.write_all(b"\n")?;
        writer.write_all(fragment.as_bytes())
    }
}
