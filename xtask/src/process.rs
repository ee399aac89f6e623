//! Running other programs: what is being done, how long it has been taking, and a plain error when it does not work.

use std::ffi::OsStr;
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};

use crate::repository;

/// How often a long step says that it is still at work.
const HEARTBEAT: Duration = Duration::from_secs(30);
/// How often a running program is asked whether it has ended.
const POLL: Duration = Duration::from_millis(50);

/// A program to run in the repository.
pub struct Program {
    command: Command,
    shown: String,
}

/// A program with its arguments, in the repository's root and without standard input.
pub fn program<A: AsRef<OsStr>>(name: &str, arguments: &[A]) -> Program {
    let mut command = Command::new(name);
    command.args(arguments).current_dir(repository()).stdin(Stdio::null());
    let words: Vec<String> =
        arguments.iter().map(|word| word.as_ref().to_string_lossy().into_owned()).collect();
    Program { command, shown: format!("{name} {}", words.join(" ")) }
}

/// The Cargo that runs this program.
pub fn cargo<A: AsRef<OsStr>>(arguments: &[A]) -> Program {
    let mut run = program("cargo", arguments);
    if let Some(own) = std::env::var_os("CARGO") {
        let words: Vec<_> = run.command.get_args().map(OsStr::to_owned).collect();
        run.command = Command::new(own);
        run.command.args(words).current_dir(repository()).stdin(Stdio::null());
    }
    run
}

/// npm in ui/. On Windows it is a script and needs its ending said.
pub fn npm<A: AsRef<OsStr>>(arguments: &[A]) -> Program {
    let mut run = program(if cfg!(windows) { "npm.cmd" } else { "npm" }, arguments);
    run.command.current_dir(repository().join("ui"));
    run.shown = format!("(in ui) {}", run.shown);
    run
}

impl Program {
    /// Sets a variable of the environment.
    pub fn with(mut self, name: &str, value: impl AsRef<OsStr>) -> Self {
        self.command.env(name, value);
        self
    }

    /// Lets the program read from the terminal, for a password.
    pub fn asking(mut self) -> Self {
        self.command.stdin(Stdio::inherit());
        self
    }

    /// Runs it under a heading, says every half minute that it is still at work, and says how long it took.
    pub fn step(self, heading: &str) -> Result<()> {
        let shown = self.shown.clone();
        println!("\n==> {heading}\n    {shown}");
        let start = Instant::now();
        let status = self.wait(heading, start)?;
        if !status.success() {
            bail!("{heading}: `{shown}` ended with {status} after {}", time(start.elapsed()));
        }
        println!("    {heading}: {}", time(start.elapsed()));
        Ok(())
    }

    fn wait(mut self, heading: &str, start: Instant) -> Result<ExitStatus> {
        let mut child: Child =
            self.command.spawn().with_context(|| format!("`{}` could not be started", self.shown))?;
        let mut said = start;
        loop {
            if let Some(status) = child.try_wait()? {
                return Ok(status);
            }
            if said.elapsed() >= HEARTBEAT {
                said = Instant::now();
                println!("    ... {heading}: {} so far", time(start.elapsed()));
            }
            std::thread::sleep(POLL);
        }
    }

    /// Its standard output, or nothing if it is not there or does not succeed.
    pub fn answer(mut self) -> Option<String> {
        let output = self.command.stderr(Stdio::null()).output().ok()?;
        output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
    }
}

/// A duration as a person says it.
pub fn time(taken: Duration) -> String {
    let seconds = taken.as_secs();
    if seconds >= 60 {
        format!("{} min {} s", seconds / 60, seconds % 60)
    } else {
        format!("{:.1} s", taken.as_secs_f64())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_program_that_ends_badly_is_named_with_its_arguments() {
        let reason = cargo(&["no-such-subcommand"]).step("try").unwrap_err().to_string();
        assert!(reason.contains("cargo no-such-subcommand"), "the reason names what was run: {reason}");
    }

    #[test]
    fn times_are_said_in_minutes_from_one_minute_up() {
        assert_eq!(time(Duration::from_millis(12_340)), "12.3 s", "seconds with one decimal");
        assert_eq!(time(Duration::from_secs(125)), "2 min 5 s", "minutes and whole seconds");
    }
}
