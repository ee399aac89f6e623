//! The checks in Python: their environment under target/, and the scripts that run in it.

use std::path::PathBuf;

use anyhow::{Context, Result};

use crate::process::{Program, cargo, program};
use crate::{build, install, repository};

/// Random logs that both implementations work through.
const LOGS: &str = "10000";
/// Random series of sets for the filter.
const SERIES: &str = "1000";

/// Makes the environment, and fills it if the list of its packages has changed since it was last filled to the end.
pub fn environment() -> Result<()> {
    let wanted = repository().join("tests/python/requirements.txt");
    let list = std::fs::read(&wanted).with_context(|| wanted.display().to_string())?;
    let stamp = folder().join(".newel-requirements");
    if std::fs::read(&stamp).is_ok_and(|stamped| stamped == list) && own(&["--version"]).answer().is_some() {
        return Ok(());
    }
    let python = install::python()?;
    // `--clear`: one that was left half made, or whose interpreter has gone, is no ground to build on.
    program(&python, &["-m", "venv", "--clear", &folder().to_string_lossy()])
        .step("environment for Python")?;
    let file = wanted.to_string_lossy();
    own(&["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement", &file])
        .step("packages for Python")?;
    std::fs::write(&stamp, list).with_context(|| stamp.display().to_string())
}

/// All of them.
pub fn all() -> Result<()> {
    environment()?;
    monitor()?;
    filter()?;
    paper()?;
    second()
}

/// The filter and the choice as Python has them, against the engine's, on random logs.
pub fn second() -> Result<()> {
    let cases = exporter()?;
    script("second.py", &[&cases, "--logs", LOGS]).step("second implementation")
}

/// What is printed, read back by general libraries.
pub fn paper() -> Result<()> {
    cargo(&["build", "--quiet", "--workspace", "--bin", "newel"]).step("the command line")?;
    let name = format!("newel{}", std::env::consts::EXE_SUFFIX);
    let newel = build::output()?.join(name);
    script("check_paper.py", &[&newel.to_string_lossy()]).step("papers read back")
}

/// The engine's filter against general libraries.
pub fn filter() -> Result<()> {
    let cases = exporter()?;
    script("check_filter.py", &[&cases, "--series", SERIES]).step("filter against libraries")
}

/// The weeks, rates and trends of the engine against scipy and pandas.
pub fn monitor() -> Result<()> {
    let example = ["run", "--quiet", "--package", "newel-engine", "--example", "monitor_cases"];
    let cases = cargo(&example).answer().context("the cases of `monitor` could not be written")?;
    let file = repository().join("target/monitor-cases.jsonl");
    std::fs::write(&file, cases).with_context(|| file.display().to_string())?;
    script("check_monitor.py", &[&file.to_string_lossy()]).step("figures of monitor")
}

/// Builds the program that writes the cases. With the features of the whole workspace, as the tests were built.
fn exporter() -> Result<String> {
    cargo(&["build", "--quiet", "--workspace", "--bin", "cases"]).step("what writes the cases")?;
    let name = format!("cases{}", std::env::consts::EXE_SUFFIX);
    Ok(build::output()?.join(name).to_string_lossy().into_owned())
}

/// A script of tests/python with its arguments.
fn script(name: &str, arguments: &[&str]) -> Program {
    let path = repository().join("tests/python").join(name);
    let mut words = vec![path.to_string_lossy().into_owned()];
    words.extend(arguments.iter().map(|word| (*word).to_owned()));
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    // No `__pycache__` in the repository, and one thread for each process: the scripts start their own.
    own(&words)
        .with("PYTHONDONTWRITEBYTECODE", "1")
        .with("OMP_NUM_THREADS", "1")
        .with("OPENBLAS_NUM_THREADS", "1")
}

/// The environment's own Python.
fn own(arguments: &[&str]) -> Program {
    let inside = if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" };
    program(&folder().join(inside).to_string_lossy(), arguments)
}

fn folder() -> PathBuf {
    repository().join("target/python")
}
