//! The commands that open the window: for a person, for the walk, for pictures.

use anyhow::Result;

use crate::install::{self, For};
use crate::process::program;
use crate::{build, repository};

/// Builds everything that is missing and opens the window on the demo profile. Without a display, the walk.
pub fn run(rest: &[&str]) -> Result<()> {
    if !install::display() {
        println!("There is no display here, so this is the walk: the same window, steered without one.");
        return walk(rest);
    }
    install::ready(For::Building)?;
    build::screens()?;
    let window = build::window(&[])?;
    let data = repository().join("target/demo");
    let mut arguments = vec!["--demo".to_owned(), "--data".to_owned(), data.to_string_lossy().into_owned()];
    arguments.extend(rest.iter().map(|word| (*word).to_owned()));
    program(&window.to_string_lossy(), &arguments)
        .step("window (the first time, the demo's twelve weeks are made before it opens)")
}

/// The main job in the real window, without a display.
pub fn walk(rest: &[&str]) -> Result<()> {
    steered("walk", rest)
}

/// Pictures of the screens.
pub fn screens(rest: &[&str]) -> Result<()> {
    steered("screens", rest)
}

/// Every figure on sheets, from the page for developers.
pub fn figures(rest: &[&str]) -> Result<()> {
    steered("figures", rest)
}

/// What a screen reader is told on three cards, on a session bus of its own.
pub fn reader() -> Result<()> {
    install::reader()?;
    build::screens()?;
    let window = build::window(&["newel-tests", "newel"])?;
    let program_path = build::output()?.join("reader");
    let words = ["--", &program_path.to_string_lossy()];
    program("dbus-run-session", &words).with("NEWEL_WINDOW", window).step("reader")
}

/// How soon cards stand.
pub fn speed(rest: &[&str]) -> Result<()> {
    steered("speed", rest)
}

/// Runs one of the programs of tests/ that steer the window.
fn steered(name: &str, rest: &[&str]) -> Result<()> {
    install::ready(For::Steering)?;
    build::screens()?;
    let window = build::window(&["newel-tests", "newel"])?;
    let program_path = build::output()?.join(name);
    program(&program_path.to_string_lossy(), rest).with("NEWEL_WINDOW", window).step(name)
}
