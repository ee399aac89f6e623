//! Writes random logs with what the engine says to them, one JSON object a line, for the second implementation in
//! `tests/python` to be compared with. `--filter` writes series of sets for the Kalman filters of general libraries.
//!
//! The logs come from a seed: the same seed gives the same lines on every machine, in whatever order they are written.

mod answer;
mod care;
mod draw;
mod filter;
mod own;
mod pen;
mod plan;
mod put_right;
mod sets;
mod things;

use std::io::Write as _;
use std::sync::atomic::{AtomicU64, Ordering};

use anyhow::{Context as _, Result, bail};
use newel_engine::catalogue::Catalogue;
use newel_engine::rules::RulePack;

/// What was asked for on the command line.
struct Asked {
    first: u64,
    logs: u64,
    seed: u64,
    filter: bool,
}

fn asked() -> Result<Asked> {
    let mut asked = Asked { first: 0, logs: 100, seed: 1, filter: false };
    let mut words = std::env::args().skip(1);
    while let Some(word) = words.next() {
        let mut number = || -> Result<u64> {
            let text = words.next().with_context(|| format!("{word} needs a number"))?;
            text.parse().with_context(|| format!("{word} needs a number, and {text} is none"))
        };
        match word.as_str() {
            "--first" => asked.first = number()?,
            "--logs" => asked.logs = number()?,
            "--seed" => asked.seed = number()?,
            "--filter" => asked.filter = true,
            other => bail!("{other} is not known; there are --first, --logs, --seed and --filter"),
        }
    }
    Ok(asked)
}

fn main() -> Result<()> {
    let asked = asked()?;
    let catalogue = Catalogue::built_in()?;
    let rules = RulePack::built_in()?;
    let line = |number: u64| -> Result<String> {
        let value = if asked.filter {
            filter::series(asked.seed, number, &rules)
        } else {
            draw::case(asked.seed, number, &catalogue, &rules)?
        };
        Ok(serde_json::to_string(&value)?)
    };
    let next = AtomicU64::new(asked.first);
    let end = asked.first + asked.logs;
    let workers = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        let work = || -> Result<()> {
            loop {
                let number = next.fetch_add(1, Ordering::Relaxed);
                if number >= end {
                    return Ok(());
                }
                let text = line(number).with_context(|| format!("log {number} of seed {}", asked.seed))?;
                writeln!(std::io::stdout().lock(), "{text}")?;
            }
        };
        let handles: Vec<_> = (0..workers).map(|_| scope.spawn(work)).collect();
        handles.into_iter().try_for_each(|handle| match handle.join() {
            Ok(done) => done,
            Err(_) => bail!("a worker stopped in a panic"),
        })
    })
}
