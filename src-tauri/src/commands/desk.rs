//! Desk: whom to look at, one client's story, and answers to it.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{ClientView, DeskView, ErrorView, OverrideForm};
use newel_engine::ids::{PersonId, RecordId};
use newel_engine::record::HoldAnswer;
use tauri::State;

/// Takes back something the coach wrote.
#[tauri::command]
pub async fn record_withdraw_for(
    worker: State<'_, Worker>,
    person: PersonId,
    record: RecordId,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.record_withdraw_for(now(), person, record)).await
}

/// The Desk.
#[tauri::command]
pub async fn desk_view(worker: State<'_, Worker>) -> Result<DeskView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.desk_view(now())).await
}

/// One client's story.
#[tauri::command]
pub async fn client_view(worker: State<'_, Worker>, person: PersonId) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_view(now(), person)).await
}

/// Writes a note to a client.
#[tauri::command]
pub async fn note_write(
    worker: State<'_, Worker>,
    person: PersonId,
    text: String,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.note_write(now(), person, &text)).await
}

/// Answers a hold.
#[tauri::command]
pub async fn hold_answer(
    worker: State<'_, Worker>,
    person: PersonId,
    hold: RecordId,
    answer: HoldAnswer,
    note: String,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.hold_answer(now(), person, hold, answer, &note)).await
}

/// Sets level, variant or load for a client.
#[tauri::command]
pub async fn override_write(
    worker: State<'_, Worker>,
    person: PersonId,
    form: OverrideForm,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.override_write(now(), person, form)).await
}
