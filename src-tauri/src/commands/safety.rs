//! The safety page: stage, clearance, screening and the rules that hold for her.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{ClearanceForm, ErrorView, ImpactForm, IntakeForm, SafetyView};
use newel_engine::ids::{PersonId, RecordId};
use newel_engine::rules::RuleSetting;
use newel_engine::stage::Stage;
use tauri::State;

/// The safety page of a client, or of whoever is open.
#[tauri::command]
pub async fn safety_view(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.safety_view(now(), person)).await
}

/// Records a stage.
#[tauri::command]
pub async fn stage_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    stage: Stage,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.stage_record(now(), person, stage)).await
}

/// Takes back a stage that was recorded by mistake.
#[tauri::command]
pub async fn stage_take_back(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    record: RecordId,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.stage_take_back(now(), person, record)).await
}

/// Says that training is taken up again after a birth or a loss.
#[tauri::command]
pub async fn take_up(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    note: String,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.take_up(now(), person, &note)).await
}

/// Records a clearance.
#[tauri::command]
pub async fn clearance_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: ClearanceForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.clearance_record(now(), person, form)).await
}

/// Records how the checks before impact went.
#[tauri::command]
pub async fn impact_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: ImpactForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.impact_record(now(), person, form)).await
}

/// Sets a rule for a client.
#[tauri::command]
pub async fn rule_set(
    worker: State<'_, Worker>,
    person: PersonId,
    setting: RuleSetting,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.rule_set(now(), person, setting)).await
}

/// Records an intake.
#[tauri::command]
pub async fn intake_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: IntakeForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.intake_record(now(), person, form)).await
}
