//! `demo`.

use crate::{End, say};
use chrono::NaiveDate;
use newel_app::{AppError, Books, demo};
use std::path::Path;

pub(crate) fn demo(folder: &Path, on: Option<NaiveDate>, seed: u64) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let on = on.unwrap_or_else(|| say::now().date_naive());
    let mut scenario = demo::make(&books, say::morning(on), seed, |_, _| ())?;
    for written in scenario.write(folder, on, seed)? {
        say::line(&written.display().to_string());
    }
    Ok(End::Sound)
}
