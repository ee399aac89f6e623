//! What is written: to the one who called, and to a program that reads.

use chrono::{DateTime, FixedOffset, Local, NaiveDate, NaiveTime};
use newel_app::views::ErrorView;
use newel_app::{AppError, Words};
use newel_engine::proposal::Target;
use serde::Serialize;
use std::io::Write as _;
use std::path::Path;

/// Writes a line. A reader who has gone away (`newel ... | head`) is no reason to complain.
pub(crate) fn line(text: &str) {
    let _ = writeln!(std::io::stdout().lock(), "{text}");
}

/// What it is not, under what a person reads.
pub(crate) fn caution() {
    line("");
    line(&Words::english().say("start-not-medical").unwrap_or_default());
}

/// Writes a text that has its own ends of line.
pub(crate) fn text(text: &str) {
    let _ = write!(std::io::stdout().lock(), "{text}");
}

/// Writes JSON, with an end of line.
pub(crate) fn json(value: &impl Serialize) -> Result<(), AppError> {
    let text = serde_json::to_string_pretty(value).map_err(|_| AppError::Internal)?;
    line(&text);
    Ok(())
}

/// Says on standard error what went wrong: the code, what happened, what to do.
pub(crate) fn error(file: Option<&Path>, error: &AppError) {
    let view = error.view();
    refusal(file, &view);
    // The system's own words and the file's name, where there are any.
    let detail = error.to_string();
    if detail != view.message {
        eprintln!("  ({detail})");
    }
}

/// As [`error`], for something that a report names.
pub(crate) fn refusal(file: Option<&Path>, view: &ErrorView) {
    match file {
        Some(file) => eprintln!("{}: {}: {}", file.display(), view.code, view.message),
        None => eprintln!("newel: {}: {}", view.code, view.message),
    }
    if !view.remedy.is_empty() {
        eprintln!("  {}", view.remedy);
    }
}

/// Now, by this machine's clock: the only place where the command line reads it.
pub(crate) fn now() -> DateTime<FixedOffset> {
    Local::now().fixed_offset()
}

/// A day at seven in the morning, UTC: a time that is the same on every machine.
pub(crate) fn morning(day: NaiveDate) -> DateTime<FixedOffset> {
    let seven = NaiveTime::from_hms_opt(7, 0, 0).unwrap_or_default();
    day.and_time(seven).and_utc().fixed_offset()
}

/// Reps or seconds in words.
pub(crate) fn target(target: Target) -> String {
    match target {
        Target::Reps(n) => format!("{n} reps"),
        Target::Seconds(n) => format!("{n} s"),
    }
}

/// Lines of columns as wide as what stands in them: the first few to the left, the others to the right.
pub(crate) fn table<const N: usize>(rows: &[[String; N]], to_the_left: usize) -> Vec<String> {
    let mut widths = [0; N];
    for row in rows {
        for (width, cell) in widths.iter_mut().zip(row) {
            *width = (*width).max(cell.chars().count());
        }
    }
    let line = |row: &[String; N]| {
        let cells = row.iter().zip(widths).enumerate().map(|(i, (cell, width))| {
            if i < to_the_left { format!("{cell:<width$}") } else { format!("{cell:>width$}") }
        });
        format!("  {}", cells.collect::<Vec<_>>().join("  "))
    };
    rows.iter().map(line).collect()
}
