//! The demonstration: an invented practice, its coach and her clients, with twelve weeks of logs.
//!
//! Nobody in it exists. The logs are made by synthetic clients (engine, `simulate`) who train what the
//! real engine proposes, through the same use cases and the same door for records as the window. From
//! one seed and one day it is the same to the byte.

mod cast;
mod folder;
mod part;
mod run;
mod story;

use crate::error::AppError;
use crate::newel::{Books, Newel};
use crate::profile::Profile;
use crate::views::AppView;
use chrono::{DateTime, FixedOffset};
use newel_exchange::FileError;
use std::path::Path;
use std::sync::Arc;

pub use story::{Member, Scenario};

/// The seed of the demonstration that the window offers.
pub const SEED: u64 = 20;

/// The folder name of the coach's profile; it is written last, so that it tells a whole demonstration.
const COACH_KEY: &str = "demo-coach";

/// Makes the whole scenario in memory, ending the evening before `now`.
///
/// `progress` is told how many of how many days of training have been made.
///
/// # Errors
/// When a use case refuses, which a test of this crate holds that it does not.
pub fn make(
    books: &Arc<Books>,
    now: DateTime<FixedOffset>,
    seed: u64,
    progress: impl FnMut(u32, u32),
) -> Result<Scenario, AppError> {
    story::tell(books, now, seed, progress)
}

/// Copies a profile's log into a file of its own. Whoever opens it writes on under a new device name, so
/// that two devices with the same demonstration never share a stream.
fn keep(profile: &Profile, path: &Path) -> Result<(), AppError> {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder)
            .map_err(|source| FileError::Unwritten { path: folder.to_owned(), source })?;
    }
    profile.store.backup_to(path)?;
    Ok(())
}

impl Newel {
    /// Makes the profiles of the demonstration in the data folder, and opens none of them. Where they
    /// have been made already nothing changes.
    ///
    /// # Errors
    /// When the disk refuses; what is incomplete then is made anew by the next call.
    pub fn demo_make(
        &mut self,
        now: DateTime<FixedOffset>,
        progress: impl FnMut(u32, u32),
    ) -> Result<AppView, AppError> {
        if !self.database_path(COACH_KEY).is_file() {
            let books = Arc::clone(self.books());
            let scenario = make(&books, now, SEED, progress)?;
            for member in &scenario.clients {
                keep(&member.profile, &self.database_path(&format!("demo-{}", member.slug)))?;
            }
            keep(&scenario.coach, &self.database_path(COACH_KEY))?;
        }
        self.app_view()
    }
}

#[cfg(test)]
mod tests;
