//! The demonstration as files in a folder.

use super::{Scenario, keep};
use crate::error::AppError;
use chrono::NaiveDate;
use newel_exchange::{FileError, write_whole};
use std::fmt::Write as _;
use std::io;
use std::path::{Path, PathBuf};

impl Scenario {
    /// Writes plan files, log files, the coach's database and a page that says what they are. Gives the
    /// paths in order.
    ///
    /// # Errors
    /// When the disk refuses, or the folder holds a coach's database already: it may have been used since.
    pub fn write(&mut self, folder: &Path, on: NaiveDate, seed: u64) -> Result<Vec<PathBuf>, AppError> {
        let database = folder.join("coach.db");
        if database.exists() {
            let source = io::Error::from(io::ErrorKind::AlreadyExists);
            return Err(FileError::Unwritten { path: database, source }.into());
        }
        let mut written = self.write_files(folder, on, seed)?;
        keep(&self.coach, &database)?;
        written.push(database);
        Ok(written)
    }

    /// As [`Scenario::write`], without the database.
    ///
    /// # Errors
    /// When the disk refuses.
    pub fn write_files(&mut self, folder: &Path, on: NaiveDate, seed: u64) -> Result<Vec<PathBuf>, AppError> {
        let (plans, logs) = (folder.join("plans"), folder.join("logs"));
        for path in [&plans, &logs] {
            std::fs::create_dir_all(path)
                .map_err(|source| FileError::Unwritten { path: path.clone(), source })?;
        }
        let mut written = Vec::new();
        let mut put = |path: PathBuf, bytes: &[u8]| -> Result<(), AppError> {
            write_whole(&path, bytes)?;
            written.push(path);
            Ok(())
        };
        let made_at = self.made_at;
        let mut list = String::new();
        for member in &mut self.clients {
            for (sequence, bytes) in &member.plans {
                put(plans.join(format!("{}-plan-{sequence}.newel.json", member.slug)), bytes)?;
            }
            let (bytes, records) = member.profile.log_bytes(made_at)?;
            put(logs.join(format!("{}-log-{on}.newel.json", member.slug)), &bytes)?;
            // Writing to a string cannot go wrong.
            let _ = writeln!(list, "- {}: {}; {records} records.", member.profile.name()?, member.line);
        }
        put(folder.join("README.md"), page(&list, &self.coach.name()?, on, seed).as_bytes())?;
        Ok(written)
    }
}

fn page(list: &str, coach: &str, on: NaiveDate, seed: u64) -> String {
    format!(
        "# An invented practice

Everything in this folder is invented. Nobody in it exists: not the coach ({coach}), not her clients, not
their bodies, symptoms or weeks. It is no record of anybody's training and no advice to anybody.

The logs are twelve weeks of training, ending before {on}, by synthetic clients who trained what the real
engine proposed. How strong they are, how they answer and how they gain is drawn from published spreads
where there are any (`crates/engine/src/simulate.rs` names each); their symptoms stand in a script
(`crates/app/src/demo/cast.rs`).

{list}
`plans/` holds what the coach sent, `logs/` what the clients sent back. A coach's database with all of it,
`coach.db`, is written beside them and is not kept in the repository.

Made by

    newel demo demo-data --on {on} --seed {seed}

The same day, seed and version give the same bytes; a test holds that.
"
    )
}
