//! The commands: adapters of about five lines over the use cases, one file to a screen. Each is async (a plain one
//! would run on the window's thread), hands its work to the one thread that owns the log, and passes on the answer or
//! the error. No rule lives here.

use chrono::{DateTime, FixedOffset, Local};
use newel_app::views::ErrorView;
use newel_app::{AppError, Newel, Worker};

pub mod class;
pub mod desk;
pub mod kit;
pub mod paper;
pub mod planbook;
pub mod profile;
pub mod roster;
pub mod safety;
pub mod send;
pub mod train;

/// The clock is read here, at the rim, and nowhere below.
fn now() -> DateTime<FixedOffset> {
    Local::now().fixed_offset()
}

async fn ask<T: Send + 'static>(
    worker: &Worker,
    work: impl FnOnce(&mut Newel) -> Result<T, AppError> + Send + 'static,
) -> Result<T, ErrorView> {
    worker.call(work).await.map_err(|e| e.view())
}
