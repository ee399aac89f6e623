//! Send: files out and in, and where they go.

use super::{ask, now};
use newel_app::Worker;
use newel_app::coach::Whom;
use newel_app::views::{ChosenFile, ErrorView, ReceiptView, RevisionView, SendView, TakeInView, WrittenView};
use newel_engine::ids::PersonId;
use std::path::PathBuf;
use tauri::State;
use tauri_plugin_dialog::DialogExt as _;

/// Lets her choose where a file goes; nothing if she changes her mind.
#[tauri::command]
pub async fn choose_save_path(app: tauri::AppHandle, suggested: String) -> Result<Option<String>, ErrorView> {
    let (reply, answer) = tokio::sync::oneshot::channel();
    app.dialog().file().set_file_name(suggested).save_file(move |path| drop(reply.send(path)));
    let path = answer.await.ok().flatten();
    Ok(path.map(|p| p.to_string()))
}

/// Lets her choose a folder; nothing if she changes her mind.
#[tauri::command]
pub async fn choose_folder(app: tauri::AppHandle) -> Result<Option<String>, ErrorView> {
    let (reply, answer) = tokio::sync::oneshot::channel();
    app.dialog().file().pick_folder(move |path| drop(reply.send(path)));
    let path = answer.await.ok().flatten();
    Ok(path.map(|p| p.to_string()))
}

/// The Send screen.
#[tauri::command]
pub async fn send_view(worker: State<'_, Worker>) -> Result<SendView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.send_view(&folder, now())
    })
    .await
}

/// Writes the log file.
#[tauri::command]
pub async fn log_write(worker: State<'_, Worker>, path: Option<PathBuf>) -> Result<WrittenView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.log_write(&folder, path, now())
    })
    .await
}

/// Takes files in, one by one.
#[tauri::command]
pub async fn take_in(worker: State<'_, Worker>, files: Vec<ChosenFile>) -> Result<TakeInView, ErrorView> {
    ask(&worker, move |newel| Ok(newel.profile()?.take_in(&files, now()))).await
}

/// What the next plan files change for whom.
#[tauri::command]
pub async fn revisions(
    worker: State<'_, Worker>,
    people: Vec<PersonId>,
) -> Result<Vec<RevisionView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.revisions(now(), &people)).await
}

/// Writes plan files into one folder, with a receipt: for these people, or for all for whom something is new.
#[tauri::command]
pub async fn plans_write(
    worker: State<'_, Worker>,
    people: Option<Vec<PersonId>>,
    folder: Option<PathBuf>,
    language: String,
) -> Result<ReceiptView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = folder.unwrap_or_else(|| newel.plans_folder(now().date_naive()));
        let whom = people.map_or(Whom::AllDue, Whom::These);
        newel.profile()?.plans_write(&folder, now(), &whom, &language)
    })
    .await
}

/// Writes a plan file.
#[tauri::command]
pub async fn plan_write(
    worker: State<'_, Worker>,
    person: PersonId,
    path: Option<PathBuf>,
) -> Result<WrittenView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.plan_write(&folder, path, now(), person)
    })
    .await
}
