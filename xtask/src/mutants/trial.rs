//! Runs the tests that reach a change with the change switched on.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};

use super::tree::Tree;
use super::{Change, Outcome};
use crate::process::time;

/// Switches none on and notes which are reached.
const NOTE: u32 = u32::MAX;
/// How many run at a time.
const AT_A_TIME: usize = 2;
/// A test that takes longer is asked only about what no quicker one has noticed.
const QUICK: Duration = Duration::from_millis(60);
/// How many quick tests are asked first.
const FIRST: usize = 40;
/// A test that takes longer is left out of a quick look.
const SLOW: Duration = Duration::from_secs(4);
/// Memory that a run may take, in KiB: a loop that has lost its end is stopped before the machine is.
const MEMORY: u32 = 4_000_000;

/// A test: which program it is in, its name, how long it takes.
#[derive(Clone, Debug)]
struct Test {
    program: usize,
    name: String,
    takes: Duration,
}

/// Tries the changes of one build.
pub fn all(
    tree: &Tree,
    programs: &[PathBuf],
    ids: &[&Change],
    quick: bool,
) -> Result<BTreeMap<u32, Outcome>> {
    let start = Instant::now();
    for program in programs {
        if ended(tree, program, 0, &[], Duration::from_secs(600))? != Ended::Well {
            bail!("the tests fail with no change switched on: {}", program.display());
        }
    }
    let plain = start.elapsed();
    println!("    the tests with no change: {}", time(plain));
    let mut reached = reached(tree, programs)?;
    if quick {
        reached.values_mut().for_each(|tests| tests.retain(|t| t.takes < SLOW));
    }
    let (next, found) = (AtomicUsize::new(0), Mutex::new(BTreeMap::new()));
    let work = || -> Result<()> {
        while let Some(change) = ids.get(next.fetch_add(1, Ordering::Relaxed)) {
            let outcome = one(
                tree,
                programs,
                change.id,
                reached.get(&change.id).map_or(&[], Vec::as_slice),
                plain * 10,
            )?;
            let mut found = found.lock().map_err(|_| anyhow::anyhow!("another run failed"))?;
            found.insert(change.id, outcome);
            if outcome == Outcome::Survived {
                println!("{}", change.said());
            }
            if found.len() % 100 == 0 {
                println!("    ... {} of {} tried, {} so far", found.len(), ids.len(), time(start.elapsed()));
            }
        }
        Ok(())
    };
    std::thread::scope(|scope| {
        let runs: Vec<_> = (0..AT_A_TIME).map(|_| scope.spawn(work)).collect();
        runs.into_iter().try_for_each(|run| run.join().unwrap_or_else(|_| bail!("a run failed")))
    })?;
    println!("    {} tried one at a time in {}", ids.len(), time(start.elapsed()));
    Ok(found.into_inner().unwrap_or_default())
}

/// A few quick tests first: most changes are noticed by any of them. Then the rest.
fn one(tree: &Tree, programs: &[PathBuf], id: u32, tests: &[Test], limit: Duration) -> Result<Outcome> {
    let quick = tests.iter().take(FIRST).take_while(|t| t.takes <= QUICK).count();
    let (first, rest) = tests.split_at(quick);
    for part in [first, rest] {
        for (place, program) in programs.iter().enumerate() {
            let names: Vec<&str> =
                part.iter().filter(|t| t.program == place).map(|t| t.name.as_str()).collect();
            if names.is_empty() {
                continue;
            }
            match ended(tree, program, id, &names, limit)? {
                Ended::Well => {}
                Ended::Badly => return Ok(Outcome::Caught),
                Ended::Never => return Ok(Outcome::Hung),
            }
        }
    }
    Ok(Outcome::Survived)
}

/// Which tests reach which change, the quickest first.
fn reached(tree: &Tree, programs: &[PathBuf]) -> Result<BTreeMap<u32, Vec<Test>>> {
    let mut reached: BTreeMap<u32, Vec<Test>> = BTreeMap::new();
    for (place, program) in programs.iter().enumerate() {
        let list = tree.root.join(format!("reached-{place}"));
        std::fs::write(&list, "").with_context(|| list.display().to_string())?;
        // With two threads each test has a thread of its own, named after it.
        let mut run = command(tree, program, NOTE);
        let status = run.env("NEWEL_REACHED", &list).arg("--test-threads=2").status().context("tests")?;
        if !status.success() {
            bail!("the tests fail while what they reach is noted");
        }
        let text = std::fs::read_to_string(&list).with_context(|| list.display().to_string())?;
        for line in text.lines() {
            let [name, takes, ids] = line.split('\t').collect::<Vec<_>>()[..] else { continue };
            let takes = Duration::from_millis(takes.parse()?);
            for id in ids.split(',').filter_map(|id| id.parse().ok()) {
                reached.entry(id).or_default().push(Test { program: place, name: name.to_owned(), takes });
            }
        }
    }
    for tests in reached.values_mut() {
        tests.sort_by_key(|t| t.takes);
    }
    Ok(reached)
}

/// How a run of tests ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ended {
    /// All passed.
    Well,
    /// One failed.
    Badly,
    /// It was stopped.
    Never,
}

/// Runs some tests of a program (all, if none is named) with a change on.
pub fn ended(tree: &Tree, program: &Path, id: u32, names: &[&str], limit: Duration) -> Result<Ended> {
    let mut run = command(tree, program, id);
    if !names.is_empty() {
        run.arg("--exact").args(names);
    }
    let mut child = run.arg("--test-threads=1").spawn().with_context(|| program.display().to_string())?;
    let start = Instant::now();
    loop {
        if let Some(status) = child.try_wait()? {
            return Ok(if status.success() { Ended::Well } else { Ended::Badly });
        }
        if start.elapsed() > limit {
            child.kill()?;
            child.wait()?;
            return Ok(Ended::Never);
        }
        std::thread::sleep(Duration::from_millis(5));
    }
}

fn command(tree: &Tree, program: &Path, id: u32) -> Command {
    let mut command = if cfg!(unix) {
        let mut command = Command::new("sh");
        command.args(["-c", &format!("ulimit -v {MEMORY}; exec \"$0\" \"$@\"")]).arg(program);
        command
    } else {
        Command::new(program)
    };
    command
        .current_dir(tree.root.join("crates/engine"))
        .env("NEWEL_MUTANT", id.to_string())
        // Fewer cases of each property: the plain test command tries all of them.
        .env("PROPTEST_CASES", "12")
        .env("RUST_BACKTRACE", "0")
        // The types for the page are written by tests, and not from here.
        .args(["--skip", "export_bindings"])
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    command
}
