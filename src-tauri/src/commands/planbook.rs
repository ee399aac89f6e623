//! Planbook: programmes and the coach's own words.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{
    AdviceView, ErrorView, LadderWordsView, LookFor, OwnForm, OwnLadderForm, PictureView, PlanbookView,
    RevisionView, WordsForm,
};
use newel_engine::ids::{ProgrammeId, VariantId};
use newel_engine::writing::Edit;
use std::collections::BTreeMap;
use tauri::State;

/// The Planbook.
#[tauri::command]
pub async fn planbook_view(worker: State<'_, Worker>) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.planbook_view()).await
}

/// Ladders with what of them is in the coach's own words.
#[tauri::command]
pub async fn words_view(worker: State<'_, Worker>) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.words_view()).await
}

/// Puts the coach's own words and picture in the place of a variant's.
#[tauri::command]
pub async fn words_save(
    worker: State<'_, Worker>,
    form: WordsForm,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.words_save(now(), form)).await
}

/// A picture of the coach's, by its name.
#[tauri::command]
pub async fn picture(worker: State<'_, Worker>, name: String) -> Result<PictureView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.picture(&name)).await
}

/// Begins a programme of the coach's own: blank, or as a copy.
#[tauri::command]
pub async fn programme_new(
    worker: State<'_, Worker>,
    title: String,
    from: Option<ProgrammeId>,
) -> Result<ProgrammeId, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_new(now(), &title, from)).await
}

/// Makes one change to a programme.
#[tauri::command]
pub async fn programme_edit(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    edit: Edit,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_edit(now(), programme, &edit)).await
}

/// Undoes the last change to a programme, or does it again.
#[tauri::command]
pub async fn programme_turn(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    back: bool,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_turn(programme, back)).await
}

/// What there is to say about a programme while it is written.
#[tauri::command]
pub async fn programme_advice(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    look: Option<LookFor>,
) -> Result<AdviceView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.advice_view(now(), programme, look)).await
}

/// What a programme, as it is written now, changes for those to whom it was given.
#[tauri::command]
pub async fn revisions_by(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
) -> Result<Vec<RevisionView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.revisions_by(now(), programme)).await
}

/// Puts a programme away, or takes it out again.
#[tauri::command]
pub async fn programme_away(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    away: bool,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_away(programme, away)).await
}

/// The words of all that is a coach's own, by the ids of messages.
#[tauri::command]
pub async fn own_names(worker: State<'_, Worker>) -> Result<BTreeMap<String, String>, ErrorView> {
    ask(&worker, move |newel| Ok(newel.profile()?.own_names())).await
}

/// Makes or changes a variant of the coach's own.
#[tauri::command]
pub async fn own_save(worker: State<'_, Worker>, form: OwnForm) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_save(now(), form)).await
}

/// Names a ladder of the coach's own, puts it away or takes it out again.
#[tauri::command]
pub async fn own_ladder(
    worker: State<'_, Worker>,
    form: OwnLadderForm,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_ladder(now(), form)).await
}

/// Puts a variant of the coach's own away, or takes it out again.
#[tauri::command]
pub async fn own_retire(
    worker: State<'_, Worker>,
    variant: VariantId,
    retired: bool,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_retire(now(), &variant, retired)).await
}
