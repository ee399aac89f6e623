//! The shell: a window, its data folder, and commands of a few lines over the use cases. The only crate that names
//! tauri. The page has no capability but the commands listed in [`run`].

mod commands;
mod launch;

use std::path::PathBuf;

use newel_app::Worker;

use tauri::{App, Manager, Runtime, WebviewWindowBuilder};

pub use launch::Launch;

/// Opens the window and stays until it is closed.
///
/// # Panics
/// If the platform has no web view, or the data folder cannot be made: without either there is no window in which to
/// say so, and the reason goes to standard error.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let launch = Launch::from_process();
    let mut builder = tauri::Builder::default();
    #[cfg(desktop)]
    if !launch.second_instance {
        // First of all plugins: a second start must end before it opens anything.
        builder = builder.plugin(tauri_plugin_single_instance::init(|app, _arguments, _folder| {
            if let Some(window) = app.get_webview_window("main") {
                let _ = window.unminimize();
                let _ = window.set_focus();
            }
        }));
    }
    builder
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_opener::init())
        .setup(move |app| set_up(app, &launch))
        .invoke_handler(tauri::generate_handler![
            commands::choose_save_path,
            commands::class_view,
            commands::room_set,
            commands::class_set,
            commands::print_write,
            commands::choose_folder,
            commands::app_view,
            commands::profile_open,
            commands::profile_close,
            commands::profile_new,
            commands::profile_from_plan,
            commands::demo_make,
            commands::role_set,
            commands::train_view,
            commands::session_begin,
            commands::next_day_answer,
            commands::set_log,
            commands::set_correct,
            commands::record_withdraw,
            commands::set_skip,
            commands::option_choose,
            commands::mark,
            commands::mark_say,
            commands::session_shorten,
            commands::session_finish,
            commands::ten_reps,
            commands::numbers_save,
            commands::path_view,
            commands::kit_view,
            commands::kit_save,
            commands::body_mass_save,
            commands::send_view,
            commands::log_write,
            commands::take_in,
            commands::roster_view,
            commands::client_add,
            commands::client_save,
            commands::restriction_add,
            commands::group_make,
            commands::group_rename,
            commands::group_remove,
            commands::group_members,
            commands::clients_archive,
            commands::safety_view,
            commands::stage_record,
            commands::stage_take_back,
            commands::take_up,
            commands::impact_record,
            commands::clearance_record,
            commands::intake_record,
            commands::rule_set,
            commands::programme_give,
            commands::programme_give_to,
            commands::revisions,
            commands::plans_write,
            commands::record_withdraw_for,
            commands::desk_view,
            commands::client_view,
            commands::note_write,
            commands::hold_answer,
            commands::override_write,
            commands::plan_write,
            commands::planbook_view,
            commands::programme_new,
            commands::programme_edit,
            commands::programme_turn,
            commands::programme_advice,
            commands::programme_away,
            commands::train_onward,
            commands::words_view,
            commands::words_save,
            commands::own_names,
            commands::own_save,
            commands::own_ladder,
            commands::own_retire,
            commands::picture
        ])
        .run(tauri::generate_context!())
        .expect("the window could not be opened");
}

/// Makes the data folder, then the window in it. The window is made here and not by the configuration, because its
/// remembered place and its web view's own files belong in the data folder too.
fn set_up<R: Runtime>(app: &mut App<R>, launch: &Launch) -> Result<(), Box<dyn std::error::Error>> {
    let data = data_folder(app, launch)?;
    std::fs::create_dir_all(&data)
        .map_err(|reason| format!("{}: the data folder could not be made: {reason}", data.display()))?;
    let worker = Worker::start(data.clone()).map_err(|e| format!("{}: {e}", data.display()))?;
    if launch.demo {
        tauri::async_runtime::block_on(commands::fill_with_demo(&worker)).map_err(|e| e.message)?;
    }
    app.manage(worker);

    #[cfg(desktop)]
    if !launch.automated {
        // A WebDriver sets the size itself, and a remembered one would come back over it.
        let remembered = data.join("window.json").to_string_lossy().into_owned();
        app.handle()
            .plugin(tauri_plugin_window_state::Builder::default().with_filename(remembered).build())?;
    }

    let window = app.config().app.windows.first().cloned().ok_or("tauri.conf.json describes no window")?;
    WebviewWindowBuilder::from_config(app.handle(), &window)?.data_directory(data.join("webview")).build()?;
    Ok(())
}

/// The folder asked for, else the platform's own for this identifier.
fn data_folder<R: Runtime>(app: &App<R>, launch: &Launch) -> Result<PathBuf, Box<dyn std::error::Error>> {
    match &launch.data {
        Some(folder) => Ok(std::path::absolute(folder)?),
        None => Ok(app.path().app_data_dir()?),
    }
}
