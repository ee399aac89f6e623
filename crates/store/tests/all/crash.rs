//! A set that was said to be logged is there after the program was killed at any moment.

use crate::support::*;
use newel_store::{Action, Store};
use std::io::{BufRead as _, BufReader, Write as _};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

/// Where the child finds its database. Only the child has it.
const DATABASE: &str = "NEWEL_CRASH_DATABASE";
/// How often the program is killed.
const KILLS: u64 = 12;

#[test]
fn every_set_that_was_said_to_be_logged_survives_a_kill() {
    if let Some(path) = std::env::var_os(DATABASE) {
        log_sets_for_ever(Path::new(&path));
    }
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let mut logged = 0;
    for kill in 0..KILLS {
        // Spread over a commit and its neighbours; the seed of the spread is the round itself.
        let patience = Duration::from_micros(20_000 + kill * 7_919 % 30_000);
        let said = kill_after(&path, patience);
        let mut phone = Store::open(&path).unwrap();
        let records = phone.records(NOOR).unwrap();
        let there = records.len() as u64;
        if let Some(last) = said {
            assert!(there > last, "set {last} was said to be logged, but only {there} are there");
        }
        assert!(there >= logged, "nothing that was there before is gone");
        logged = there;
        assert_eq!(records.last().map(|r| r.seq + 1).unwrap_or(0), there, "no number is missing");
        assert_whole(&phone, "the chain holds and the projections agree");
        assert_eq!(phone.sets(NOOR).unwrap().len() as u64, there);
        let written = write(&mut phone, 0, NOOR, set(1, 0));
        assert_eq!(phone.record(written).unwrap().unwrap().seq, there, "and it goes on");
        logged += 1;
    }
    assert!(logged > 2 * KILLS, "the child came to log sets at all: {logged}");
}

/// Starts a program that logs sets, and kills it a while after its first one. The last number that it said.
fn kill_after(path: &Path, patience: Duration) -> Option<u64> {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "crash::every_set_that_was_said_to_be_logged_survives_a_kill", "--nocapture"])
        .env(DATABASE, path)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut said = BufReader::new(child.stdout.take().unwrap()).lines();
    let number = |line: std::io::Result<String>| line.ok()?.strip_prefix("logged ")?.parse::<u64>().ok();
    let first = said.by_ref().find_map(number);
    std::thread::sleep(patience);
    // On Unix this is SIGKILL: no destructor, no flush.
    child.kill().unwrap();
    child.wait().unwrap();
    said.filter_map(number).last().or(first)
}

/// The child: logs sets and says the number of each as soon as its write has returned.
fn log_sets_for_ever(path: &Path) -> ! {
    let mut phone = Store::open(path).unwrap();
    let mut out = std::io::stdout();
    loop {
        let change = phone.write(Action::LogSet, minute(0), NOOR, vec![set(1, 0)]).unwrap();
        // On a line of its own, whatever the test harness has written before it.
        writeln!(out, "\nlogged {}", change.records[0].seq).unwrap();
        out.flush().unwrap();
    }
}
