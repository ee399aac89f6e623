//! Rows of the projections as types, and the columns that need care.

use chrono::NaiveDate;
use newel_engine::ids::{
    LadderId, PersonId, PlanSessionId, ProgrammeId, RecordId, RunId, SlotId, SymptomId, VariantId,
};
use newel_engine::record::{Purpose, Reserve, Side, SymptomAmount};
use rusqlite::Row;
use rusqlite::types::Type;
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::str::FromStr;
use uuid::Uuid;

/// A session as it was begun, with how it ended if it did.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionRow {
    /// The record that began it.
    pub record: RecordId,
    /// The run.
    pub run: RunId,
    /// Local day.
    pub day: NaiveDate,
    /// Programme.
    pub programme: ProgrammeId,
    /// Its revision.
    pub revision: u32,
    /// Planned session.
    pub session: PlanSessionId,
    /// Sets logged and not taken back: places (slot and round) with one, so that two sides count once.
    pub sets: u32,
    /// True when its end was recorded and not taken back.
    pub ended: bool,
}

/// A set as one record told it. A correction is a row of its own.
#[derive(Clone, Debug, PartialEq)]
pub struct SetRow {
    /// The record.
    pub record: RecordId,
    /// The record that this one corrects, if it is a correction.
    pub amends: Option<RecordId>,
    /// The run.
    pub run: RunId,
    /// The session's local day; absent as long as its beginning is not in the log.
    pub day: Option<NaiveDate>,
    /// Slot.
    pub slot: SlotId,
    /// Round, from 0.
    pub round: u8,
    /// The side, where one side works at a time.
    pub side: Option<Side>,
    /// Ladder.
    pub ladder: LadderId,
    /// Variant.
    pub variant: VariantId,
    /// What was held, in kg; absent where it depends on the stretch of a band.
    pub external_kg: Option<f64>,
    /// Reps.
    pub reps: u16,
    /// Seconds, for a timed set.
    pub seconds: Option<u16>,
    /// Reps in reserve as stated.
    pub reserve: Option<Reserve>,
    /// What it was for.
    pub purpose: Purpose,
    /// True when a mark ended it before its time.
    pub stopped: bool,
    /// True when the record was taken back.
    pub withdrawn: bool,
    /// How many corrections of it stand; more than one means that they have to be shown side by side.
    pub corrections: u32,
}

/// Where a symptom was told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MarkSource {
    /// Marked with one tap.
    Mark,
    /// Told at check-in.
    CheckIn,
    /// Told of the next day.
    NextDay,
}

/// A symptom as one record told it. A correction is a row of its own.
#[derive(Clone, Debug, PartialEq)]
pub struct MarkRow {
    /// The record.
    pub record: RecordId,
    /// Which symptom of the record, from 0.
    pub nth: u32,
    /// The person.
    pub person: PersonId,
    /// The record that this one corrects, if it is a correction.
    pub amends: Option<RecordId>,
    /// Where it was told.
    pub source: MarkSource,
    /// The run it belongs to.
    pub run: Option<RunId>,
    /// Slot.
    pub slot: Option<SlotId>,
    /// Ladder.
    pub ladder: Option<LadderId>,
    /// Variant.
    pub variant: Option<VariantId>,
    /// True when it was marked at rest.
    pub at_rest: bool,
    /// Kind, once said.
    pub symptom: Option<SymptomId>,
    /// Amount, once said.
    pub amount: Option<SymptomAmount>,
    /// Place, once said.
    pub place: Option<String>,
    /// True when the record was taken back.
    pub withdrawn: bool,
    /// How many corrections of it stand.
    pub corrections: u32,
}

/// What serde calls a variant without data.
pub(crate) fn word(value: &impl Serialize) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(word)) => word,
        // Only ever called on enums whose variants bear no data, which serialise as strings.
        Ok(other) => other.to_string(),
        Err(_) => String::new(),
    }
}

/// A column that holds such a word.
pub(crate) fn said<T: DeserializeOwned>(row: &Row<'_>, column: usize) -> rusqlite::Result<T> {
    let word: String = row.get(column)?;
    serde_json::from_value(serde_json::Value::String(word))
        .map_err(|e| rusqlite::Error::FromSqlConversionFailure(column, Type::Text, Box::new(e)))
}

/// A column that may hold such a word.
pub(crate) fn maybe_said<T: DeserializeOwned>(row: &Row<'_>, column: usize) -> rusqlite::Result<Option<T>> {
    let word: Option<String> = row.get(column)?;
    word.map(|_| said(row, column)).transpose()
}

/// A column that holds an id.
pub(crate) fn uuid(row: &Row<'_>, column: usize) -> rusqlite::Result<Uuid> {
    parsed(row, column)
}

/// A column that may hold an id.
pub(crate) fn maybe_uuid(row: &Row<'_>, column: usize) -> rusqlite::Result<Option<Uuid>> {
    let text: Option<String> = row.get(column)?;
    text.map(|t| parse(&t, column)).transpose()
}

/// A column that holds a text with a form of its own.
pub(crate) fn parsed<T: FromStr>(row: &Row<'_>, column: usize) -> rusqlite::Result<T>
where
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let text: String = row.get(column)?;
    parse(&text, column)
}

/// A column that may hold such a text.
pub(crate) fn maybe_parsed<T: FromStr>(row: &Row<'_>, column: usize) -> rusqlite::Result<Option<T>>
where
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let text: Option<String> = row.get(column)?;
    text.map(|t| parse(&t, column)).transpose()
}

fn parse<T: FromStr>(text: &str, column: usize) -> rusqlite::Result<T>
where
    T::Err: std::error::Error + Send + Sync + 'static,
{
    text.parse().map_err(|e| rusqlite::Error::FromSqlConversionFailure(column, Type::Text, Box::new(e)))
}
