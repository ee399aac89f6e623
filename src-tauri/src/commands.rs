//! The commands: adapters of about five lines over the use cases. Each is async (a plain one would run on the window's
//! thread), takes the shared state, calls one use case and hands on its answer or its error. No rule lives here.

use std::sync::Arc;

use serde::Serialize;
use tauri::State;

use crate::error::CommandError;
use crate::shell::{Shell, off_main};

/// Which Newel this is.
#[derive(Debug, Clone, Serialize)]
pub struct AppVersion {
    /// The version of the window, as in Cargo.toml.
    pub version: String,
}

/// Says which Newel this is.
///
/// # Errors
/// Only if the program itself breaks.
#[tauri::command]
pub async fn app_version(shell: State<'_, Arc<Shell>>) -> Result<AppVersion, CommandError> {
    off_main(&shell, |_| Ok(AppVersion { version: env!("CARGO_PKG_VERSION").to_owned() })).await
}
