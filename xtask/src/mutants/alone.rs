//! Changes that cannot be switched, each built and tried alone.

use std::collections::BTreeMap;
use std::path::Path;
use std::time::{Duration, Instant};

use anyhow::{Result, bail};

use super::tree::{Built, Tree};
use super::trial::{Ended, ended};
use super::{Change, Outcome, Place, read};
use crate::process::time;
use crate::repository;

/// How long the tests of one may take.
const LIMIT: Duration = Duration::from_secs(200);

/// Tries them one by one.
pub fn all(changes: &[&Change]) -> Result<BTreeMap<u32, Outcome>> {
    let mut outcomes = BTreeMap::new();
    if changes.is_empty() {
        return Ok(outcomes);
    }
    let start = Instant::now();
    let tree = Tree::copy("alone")?;
    for change in changes {
        let path = Path::new(&change.file);
        let text = read(&repository().join(path))?;
        tree.write(path, changed(&text, change)?.as_bytes())?;
        outcomes.insert(change.id, one(&tree)?);
        tree.write(path, text.as_bytes())?;
        if outcomes.len().is_multiple_of(10) {
            println!(
                "    ... {} of {} built alone, {} so far",
                outcomes.len(),
                changes.len(),
                time(start.elapsed())
            );
        }
    }
    println!("    {} built alone in {}", changes.len(), time(start.elapsed()));
    Ok(outcomes)
}

fn one(tree: &Tree) -> Result<Outcome> {
    let programs = match tree.build()? {
        Built::Programs(programs) => programs,
        Built::Errors(_) => return Ok(Outcome::DoesNotCompile),
    };
    for program in &programs {
        match ended(tree, program, 0, &[], LIMIT)? {
            Ended::Well => {}
            Ended::Badly => return Ok(Outcome::Caught),
            Ended::Never => return Ok(Outcome::Hung),
        }
    }
    Ok(Outcome::Survived)
}

/// The text with the change in it.
fn changed(text: &str, change: &Change) -> Result<String> {
    let (from, to) = (byte(text, change.span.start)?, byte(text, change.span.end)?);
    let (Some(before), Some(after)) = (text.get(..from), text.get(to..)) else {
        bail!("{} lies outside its file", change.name)
    };
    Ok(format!("{before}{}{after}", change.replacement))
}

fn byte(text: &str, at: Place) -> Result<usize> {
    let mut before = 0;
    for (number, line) in (1..).zip(text.split_inclusive('\n')) {
        if number == at.line {
            let column = line.char_indices().nth(at.column - 1).map_or(line.len(), |(byte, _)| byte);
            return Ok(before + column);
        }
        before += line.len();
    }
    bail!("no line {}", at.line)
}
