//! Train: a session, card by card.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{CheckInForm, CorrectionForm, ErrorView, FinishForm, MarkedView, SetForm, TrainView};
use newel_engine::ids::{RecordId, RunId, SlotId, VariantId};
use newel_engine::kit::Load;
use newel_engine::record::{NextDay, Symptom};
use tauri::State;

/// The Train screen.
#[tauri::command]
pub async fn train_view(worker: State<'_, Worker>) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.train_view(now())).await
}

/// Check-in; then the session begins.
#[tauri::command]
pub async fn session_begin(worker: State<'_, Worker>, form: CheckInForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_begin(now(), form)).await
}

/// As [`session_begin`], by the programme that waits for its day.
#[tauri::command]
pub async fn session_begin_early(
    worker: State<'_, Worker>,
    form: CheckInForm,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_begin_early(now(), form)).await
}

/// The Train screen with the programme that waits for its day.
#[tauri::command]
pub async fn train_early(worker: State<'_, Worker>) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.train_early(now())).await
}

/// Answers the next-day question.
#[tauri::command]
pub async fn next_day_answer(
    worker: State<'_, Worker>,
    run: RunId,
    answer: NextDay,
    symptoms: Vec<Symptom>,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.next_day_answer(now(), run, answer, symptoms)).await
}

/// Logs a set; it is on the disk when this answers.
#[tauri::command]
pub async fn set_log(worker: State<'_, Worker>, form: SetForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_log(now(), form)).await
}

/// Corrects a set.
#[tauri::command]
pub async fn set_correct(worker: State<'_, Worker>, form: CorrectionForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_correct(now(), form)).await
}

/// Takes back a set or a mark.
#[tauri::command]
pub async fn record_withdraw(worker: State<'_, Worker>, record: RecordId) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.record_withdraw(now(), record)).await
}

/// Leaves out what is left of a slot's round.
#[tauri::command]
pub async fn set_skip(
    worker: State<'_, Worker>,
    run: RunId,
    slot: SlotId,
    round: u8,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_skip(now(), run, slot, round)).await
}

/// Chooses another allowed option.
#[tauri::command]
pub async fn option_choose(
    worker: State<'_, Worker>,
    run: RunId,
    slot: SlotId,
    variant: VariantId,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.option_choose(now(), run, slot, variant)).await
}

/// Marks a symptom; it is on the disk before anything is asked.
#[tauri::command]
pub async fn mark(worker: State<'_, Worker>, run: RunId, at_rest: bool) -> Result<MarkedView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.mark(now(), run, at_rest)).await
}

/// Says what a mark was.
#[tauri::command]
pub async fn mark_say(
    worker: State<'_, Worker>,
    mark: RecordId,
    symptom: Symptom,
) -> Result<MarkedView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.mark_say(now(), mark, symptom)).await
}

/// Leaves out what does not fit into ten minutes.
#[tauri::command]
pub async fn session_shorten(worker: State<'_, Worker>, run: RunId) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_shorten(now(), run)).await
}

/// Ends a session.
#[tauri::command]
pub async fn session_finish(worker: State<'_, Worker>, form: FinishForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_finish(now(), form)).await
}

/// Answers "ten reps with what?".
#[tauri::command]
pub async fn ten_reps(
    worker: State<'_, Worker>,
    variant: VariantId,
    load: Load,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.ten_reps(now(), variant, load)).await
}

/// Keeps her numbers.
#[tauri::command]
pub async fn numbers_save(
    worker: State<'_, Worker>,
    emergency: Option<String>,
    clinic: Option<String>,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.numbers_save(now(), emergency, clinic)).await
}

/// The Train screen with the next session, when one has just ended.
#[tauri::command]
pub async fn train_onward(worker: State<'_, Worker>) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.train_onward(now())).await
}
