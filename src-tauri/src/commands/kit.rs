//! Path and Kit: her own levels, and what she owns.

use super::{ask, now};
use newel_app::Worker;
use newel_app::views::{ErrorView, KitView, PathView};
use newel_engine::kit::Kit;
use newel_engine::units::Weight;
use tauri::State;

/// The Path screen.
#[tauri::command]
pub async fn path_view(worker: State<'_, Worker>) -> Result<PathView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.path_view(now())).await
}

/// The Kit screen.
#[tauri::command]
pub async fn kit_view(worker: State<'_, Worker>) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.kit_view(now())).await
}

/// Keeps what she owns.
#[tauri::command]
pub async fn kit_save(worker: State<'_, Worker>, kit: Kit) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.kit_save(now(), kit)).await
}

/// Keeps her body mass.
#[tauri::command]
pub async fn body_mass_save(worker: State<'_, Worker>, mass: Weight) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.body_mass_save(now(), mass)).await
}
