//! Profiles: who is open, and who else there is.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{AppView, ErrorView, Role};
use tauri::State;

/// The open profile and all others.
#[tauri::command]
pub async fn app_view(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.app_view()).await
}

/// Opens a profile.
#[tauri::command]
pub async fn profile_open(worker: State<'_, Worker>, key: String) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_open(&key)).await
}

/// Closes the open profile.
#[tauri::command]
pub async fn profile_close(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_close()).await
}

/// Makes an empty profile and opens it.
#[tauri::command]
pub async fn profile_new(worker: State<'_, Worker>, name: String, role: Role) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_new(&name, role, now())).await
}

/// Makes a profile from a plan file and opens it.
#[tauri::command]
pub async fn profile_from_plan(worker: State<'_, Worker>, text: String) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_from_plan(&text, now())).await
}

/// Adds the invented people of the demo.
#[tauri::command]
pub async fn demo_make(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.demo_make(now(), |_, _| ())).await
}

/// Makes the invented people if there is nobody yet: for a start with `--demo`.
pub(crate) async fn fill_with_demo(worker: &Worker) -> Result<(), ErrorView> {
    ask(worker, move |newel| {
        if newel.app_view()?.profiles.is_empty() {
            newel.demo_make(now(), |_, _| ())?;
        }
        Ok(())
    })
    .await
}

/// Shows the other side of the app.
#[tauri::command]
pub async fn role_set(worker: State<'_, Worker>, role: Role) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.role_set(role)).await
}
