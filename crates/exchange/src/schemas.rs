//! JSON Schemas of the files, made from the types that read and write them.

use crate::document::{LogDocument, PlanDocument};
use newel_engine::record::Record;
use schemars::{JsonSchema, schema_for};
use serde_json::Value;

/// A log file: what one person trained, from client to coach.
#[derive(JsonSchema)]
#[schemars(title = "Newel log file", deny_unknown_fields)]
#[expect(dead_code, reason = "only its schema is used; reading looks at the envelope step by step")]
struct LogFile {
    /// What the file is.
    #[schemars(extend("const" = "newel.log"))]
    format: String,
    /// The version of the format.
    #[schemars(extend("const" = 1))]
    version: u32,
    /// How the content is sealed; version 1 knows no seal.
    seal: (),
    /// SHA-256, in lower-case hexadecimal, of the exact bytes of `content` from its first brace to its last.
    #[schemars(regex(pattern = r"^[0-9a-f]{64}$"))]
    sha256: String,
    /// The content.
    content: LogDocument,
}

/// A plan file: what a coach wrote for one person, from coach to client.
#[derive(JsonSchema)]
#[schemars(title = "Newel plan file", deny_unknown_fields)]
#[expect(dead_code, reason = "only its schema is used; reading looks at the envelope step by step")]
struct PlanFile {
    /// What the file is.
    #[schemars(extend("const" = "newel.plan"))]
    format: String,
    /// The version of the format.
    #[schemars(range(min = 1, max = 4))]
    version: u32,
    /// How the content is sealed; version 1 knows no seal.
    seal: (),
    /// SHA-256, in lower-case hexadecimal, of the exact bytes of `content` from its first brace to its last.
    #[schemars(regex(pattern = r"^[0-9a-f]{64}$"))]
    sha256: String,
    /// The content.
    content: PlanDocument,
    /// Pictures that the words in the content name by their SHA-256: JPEG, PNG or WebP, in base64. Since version 2.
    #[serde(default)]
    pictures: Vec<String>,
}

/// The schemas as (file name, text), for docs/schema/. The same types give the same text.
///
/// # Panics
/// Never: a schema is plain JSON.
#[must_use]
pub fn schemas() -> Vec<(&'static str, String)> {
    [
        ("log.schema.json", schema_for!(LogFile)),
        ("plan.schema.json", schema_for!(PlanFile)),
        ("record.schema.json", schema_for!(Record)),
    ]
    .into_iter()
    .map(|(name, schema)| {
        let mut text = String::new();
        pretty(schema.as_value(), 0, &mut text);
        text.push('\n');
        (name, text)
    })
    .collect()
}

/// JSON with its keys in order. serde_json keeps them in order or not by a feature that any crate of
/// a build may switch on, so the order is made here.
fn pretty(value: &Value, indent: usize, out: &mut String) {
    let line = |out: &mut String, indent: usize| {
        out.push('\n');
        out.push_str(&"  ".repeat(indent));
    };
    match value {
        Value::Object(map) if !map.is_empty() => {
            let mut entries: Vec<_> = map.iter().collect();
            entries.sort_by_key(|(key, _)| key.as_str());
            out.push('{');
            for (nth, (key, value)) in entries.into_iter().enumerate() {
                if nth > 0 {
                    out.push(',');
                }
                line(out, indent + 1);
                out.push_str(&Value::String(key.clone()).to_string());
                out.push_str(": ");
                pretty(value, indent + 1, out);
            }
            line(out, indent);
            out.push('}');
        }
        Value::Array(list) if !list.is_empty() => {
            out.push('[');
            for (nth, value) in list.iter().enumerate() {
                if nth > 0 {
                    out.push(',');
                }
                line(out, indent + 1);
                pretty(value, indent + 1, out);
            }
            line(out, indent);
            out.push(']');
        }
        Value::Null
        | Value::Bool(_)
        | Value::Number(_)
        | Value::String(_)
        | Value::Array(_)
        | Value::Object(_) => {
            out.push_str(&value.to_string());
        }
    }
}
