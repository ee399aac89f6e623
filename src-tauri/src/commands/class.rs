//! A class: several train one session together.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{ClassForm, ClassView, ErrorView, OverrideForm, RoomsView};
use newel_engine::class::Laid;
use newel_engine::ids::PersonId;
use newel_engine::kit::Kit;
use tauri::State;
use uuid::Uuid;

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

/// The coach's rooms.
#[tauri::command]
pub async fn rooms_view(worker: State<'_, Worker>) -> Result<RoomsView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.rooms_view()).await
}

/// Writes down the kit of a room, of a new one if it is not said which.
#[tauri::command]
pub async fn room_save(
    worker: State<'_, Worker>,
    room: Option<Uuid>,
    name: String,
    kit: Kit,
) -> Result<RoomsView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.room_save(room, &name, kit)).await
}

/// Forgets a room.
#[tauri::command]
pub async fn room_remove(worker: State<'_, Worker>, room: Uuid) -> Result<RoomsView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.room_remove(room)).await
}
