//! Roster: clients, groups, and who follows what.

use super::{ask, now};
use chrono::NaiveDate;
use newel_app::Worker;
use newel_app::views::{ClientForm, ErrorView, GiveTo, RosterView};
use newel_engine::ids::{PersonId, ProgrammeId};
use newel_engine::record::RestrictionKind;
use tauri::State;
use uuid::Uuid;

/// The Roster.
#[tauri::command]
pub async fn roster_view(worker: State<'_, Worker>) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.roster_view(now())).await
}

/// Adds a client.
#[tauri::command]
pub async fn client_add(worker: State<'_, Worker>, form: ClientForm) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_add(now(), form)).await
}

/// Changes what is recorded about a client.
#[tauri::command]
pub async fn client_save(
    worker: State<'_, Worker>,
    person: PersonId,
    form: ClientForm,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_save(now(), person, form)).await
}

/// Rules something out for a client.
#[tauri::command]
pub async fn restriction_add(
    worker: State<'_, Worker>,
    person: PersonId,
    what: RestrictionKind,
    until: Option<NaiveDate>,
    note: String,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.restriction_add(now(), person, what, until, &note)).await
}

/// Makes a group of clients.
#[tauri::command]
pub async fn group_make(
    worker: State<'_, Worker>,
    name: String,
    members: Vec<PersonId>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_make(now(), &name, members)).await
}

/// Gives a group another name.
#[tauri::command]
pub async fn group_rename(
    worker: State<'_, Worker>,
    group: Uuid,
    name: String,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_rename(now(), group, &name)).await
}

/// Removes a group, or brings it back.
#[tauri::command]
pub async fn group_remove(
    worker: State<'_, Worker>,
    group: Uuid,
    back: bool,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_remove(now(), group, back)).await
}

/// Says who is in a group.
#[tauri::command]
pub async fn group_members(
    worker: State<'_, Worker>,
    group: Uuid,
    members: Vec<PersonId>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_members(now(), group, members)).await
}

/// Lays clients aside, or brings them back.
#[tauri::command]
pub async fn clients_archive(
    worker: State<'_, Worker>,
    people: Vec<PersonId>,
    back: bool,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.clients_archive(now(), people, back)).await
}

/// Gives a client a programme.
#[tauri::command]
pub async fn programme_give(
    worker: State<'_, Worker>,
    person: PersonId,
    programme: ProgrammeId,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_give(now(), person, programme)).await
}

/// Gives several clients a programme, each with the day on which it begins.
#[tauri::command]
pub async fn programme_give_to(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    to: Vec<GiveTo>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_give_to(now(), programme, &to)).await
}
