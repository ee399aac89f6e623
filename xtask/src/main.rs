//! The repository's own commands. `cargo xtask` lists them.

mod build;
mod generated;
#[cfg(feature = "icons")]
mod icons;
mod install;
#[cfg(feature = "mutants")]
mod mutants;
mod open;
mod process;
mod python;
mod test;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use anyhow::Result;

const USAGE: &str = "\
cargo xtask run        install what is missing, build, and open the window on the demo profile
                       (without a display: the walk instead)
cargo xtask walk       the main job in the real window without a display; pictures and files in target/walk/
cargo xtask test       every check and test, in the order of the cheapest first
cargo xtask python     the checks in Python alone: figures against general libraries, and the second implementation
cargo xtask screens    pictures of every card and screen, in docs/screens/
cargo xtask figures    every figure on sheets, in target/figures/
cargo xtask reader     what a screen reader is told on three cards, in target/reader/
cargo xtask speed      how soon the next card stands after a tap, and the first one after a start
cargo xtask bindings   write ui/src/bindings/ from the Rust types
cargo xtask schemas    write docs/schema/ from the Rust types
cargo xtask icons      draw every icon size from icons/newel.svg (--check: only compare)
cargo xtask mutants [--quick] [--again] [FILES]
                       the engine changed one operator or value at a time: which changes none of its tests notices,
                       and whether docs/mutants.md says why (takes about half an hour; needs cargo-mutants)";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["run", rest @ ..] => open::run(rest),
        ["walk", rest @ ..] => open::walk(rest),
        ["screens", rest @ ..] => open::screens(rest),
        ["figures", rest @ ..] => open::figures(rest),
        ["reader"] => open::reader(),
        ["speed", rest @ ..] => open::speed(rest),
        ["test"] => test::test(),
        ["python"] => python::all(),
        ["bindings"] => generated::write(generated::Kind::Bindings),
        ["schemas"] => generated::write(generated::Kind::Schemas),
        ["icons"] => draw_icons(false),
        ["icons", "--check"] => draw_icons(true),
        ["mutants", files @ ..] => try_changes(files),
        [] | ["help" | "--help" | "-h"] => {
            println!("{USAGE}");
            return ExitCode::SUCCESS;
        }
        _ => {
            eprintln!("{USAGE}");
            return ExitCode::from(2);
        }
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(reason) => {
            // One line per cause, without the program's own call stack: what went wrong is in the command's output.
            eprintln!("\nxtask: {reason}");
            for cause in reason.chain().skip(1) {
                eprintln!("  because: {cause}");
            }
            ExitCode::FAILURE
        }
    }
}

/// The drawing crates are left out of the plain build, so that `cargo xtask run` starts soon.
#[cfg(not(feature = "icons"))]
fn draw_icons(check: bool) -> Result<()> {
    let mut arguments = vec!["run", "--package", "xtask", "--features", "icons", "--", "icons"];
    arguments.extend(check.then_some("--check"));
    process::cargo(&arguments).step(if check { "icons match their drawing" } else { "icons" })
}

#[cfg(feature = "icons")]
fn draw_icons(check: bool) -> Result<()> {
    icons::icons(check)
}

/// Nor is what reads and writes Rust in it.
#[cfg(not(feature = "mutants"))]
fn try_changes(files: &[&str]) -> Result<()> {
    let mut arguments = vec!["run", "--package", "xtask", "--features", "mutants", "--", "mutants"];
    arguments.extend(files);
    process::cargo(&arguments).step("changes of the engine")
}

#[cfg(feature = "mutants")]
fn try_changes(files: &[&str]) -> Result<()> {
    mutants::mutants(files)
}

/// The repository's root: the folder above xtask's own.
fn repository() -> PathBuf {
    let own = Path::new(env!("CARGO_MANIFEST_DIR"));
    own.parent().unwrap_or(own).to_owned()
}
