//! Printed matter.

use super::{ask, now};
use newel_app::Worker;
use newel_app::print::{PrintForm, PrintedView};
use newel_app::views::ErrorView;
use std::path::PathBuf;
use tauri::State;

/// Writes a document as PDF.
#[tauri::command]
pub async fn print_write(
    worker: State<'_, Worker>,
    form: PrintForm,
    path: Option<PathBuf>,
) -> Result<PrintedView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.print_write(&folder, path, now(), &form)
    })
    .await
}
