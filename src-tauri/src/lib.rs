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
            commands::send::choose_save_path,
            commands::class::class_view,
            commands::class::room_set,
            commands::class::class_set,
            commands::class::rooms_view,
            commands::class::room_save,
            commands::class::room_remove,
            commands::paper::print_write,
            commands::send::choose_folder,
            commands::profile::app_view,
            commands::profile::profile_open,
            commands::profile::profile_close,
            commands::profile::profile_new,
            commands::profile::profile_from_plan,
            commands::profile::demo_make,
            commands::profile::role_set,
            commands::train::train_view,
            commands::train::session_begin,
            commands::train::session_begin_early,
            commands::train::train_early,
            commands::train::next_day_answer,
            commands::train::set_log,
            commands::train::set_correct,
            commands::train::record_withdraw,
            commands::train::set_skip,
            commands::train::option_choose,
            commands::train::mark,
            commands::train::mark_say,
            commands::train::session_shorten,
            commands::train::session_finish,
            commands::train::ten_reps,
            commands::train::numbers_save,
            commands::kit::path_view,
            commands::kit::kit_view,
            commands::kit::kit_save,
            commands::kit::body_mass_save,
            commands::send::send_view,
            commands::send::log_write,
            commands::send::take_in,
            commands::roster::roster_view,
            commands::roster::client_add,
            commands::roster::client_save,
            commands::roster::restriction_add,
            commands::roster::group_make,
            commands::roster::group_rename,
            commands::roster::group_remove,
            commands::roster::group_members,
            commands::roster::clients_archive,
            commands::safety::safety_view,
            commands::safety::stage_record,
            commands::safety::stage_take_back,
            commands::safety::take_up,
            commands::safety::impact_record,
            commands::safety::clearance_record,
            commands::safety::intake_record,
            commands::safety::rule_set,
            commands::roster::programme_give,
            commands::roster::programme_give_to,
            commands::send::revisions,
            commands::planbook::revisions_by,
            commands::send::plans_write,
            commands::desk::record_withdraw_for,
            commands::desk::desk_view,
            commands::desk::client_view,
            commands::desk::note_write,
            commands::desk::hold_answer,
            commands::desk::override_write,
            commands::send::plan_write,
            commands::planbook::planbook_view,
            commands::planbook::programme_new,
            commands::planbook::programme_edit,
            commands::planbook::programme_turn,
            commands::planbook::programme_advice,
            commands::planbook::programme_away,
            commands::train::train_onward,
            commands::planbook::words_view,
            commands::planbook::words_save,
            commands::planbook::picture,
            commands::planbook::own_names,
            commands::planbook::own_save,
            commands::planbook::own_ladder,
            commands::planbook::own_retire
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
        tauri::async_runtime::block_on(commands::profile::fill_with_demo(&worker)).map_err(|e| e.message)?;
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
