//! The window of Newel on the desktop. Phones start at the library's own entry point.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    newel_shell_lib::run();
}
