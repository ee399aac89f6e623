//! A class: several train one session together.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{ClassForm, ClassView, ErrorView, OverrideForm};
use newel_engine::class::Laid;
use newel_engine::ids::PersonId;
use tauri::State;

/// Who does what in a session that several train together.
#[tauri::command]
pub async fn class_view(worker: State<'_, Worker>, form: ClassForm) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.class_view(now(), &form)).await
}

/// Writes down how many of a thing are in the room.
#[tauri::command]
pub async fn room_set(
    worker: State<'_, Worker>,
    form: ClassForm,
    what: Laid,
    count: Option<u16>,
) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.room_set(now(), &form, what, count)).await
}

/// Sets what a client does in one cell of a class, with a note.
#[tauri::command]
pub async fn class_set(
    worker: State<'_, Worker>,
    form: ClassForm,
    person: PersonId,
    change: OverrideForm,
) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.class_set(now(), &form, person, change)).await
}
