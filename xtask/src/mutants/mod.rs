//! Changes of the engine that no test of it notices.
//!
//! `cargo mutants` says what to change: an operator, a value that a function gives back, an arm. To build the engine
//! anew for each takes hours; so all changes go into one copy of it under target/mutants/, each behind a switch
//! ([`rewrite`]), which is built once. Tests are then run on one change after the other, and only those that reach it.
//! What cannot be switched is built and tried alone.

mod alone;
mod rewrite;
mod tree;
mod trial;

use std::collections::BTreeMap;
use std::path::PathBuf;

use anyhow::{Context, Result, bail};
use proc_macro2::TokenStream;
use serde::Deserialize;

use crate::process::cargo;
use crate::repository;

/// What is tried when no file is named: strength, proposal and symptoms, and what they lean on.
const FILES: [&str; 8] = [
    "crates/engine/src/ground/waits.rs",
    "crates/engine/src/ledger.rs",
    "crates/engine/src/proposal/**",
    "crates/engine/src/rules/effort.rs",
    "crates/engine/src/state/**",
    "crates/engine/src/strength.rs",
    "crates/engine/src/symptom.rs",
    "crates/engine/src/weeks.rs",
];
/// The list of survivors, each with why no test can tell.
const LIST: &str = "docs/mutants.md";

/// What survived the last time.
const SURVIVED: &str = "target/mutants/survived.txt";

/// What a change replaces.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq, PartialOrd, Ord)]
enum Genre {
    FnValue,
    BinaryOperator,
    UnaryOperator,
    MatchArm,
    MatchArmGuard,
    StructField,
}

/// A place in a file as `cargo mutants` counts it: lines and columns from 1.
#[derive(Clone, Copy, Debug, Deserialize)]
struct Place {
    line: usize,
    column: usize,
}

/// From where to where.
#[derive(Clone, Copy, Debug, Deserialize)]
struct Span {
    start: Place,
    end: Place,
}

impl Span {
    fn start(self) -> (usize, usize) {
        (self.start.line, self.start.column - 1)
    }
}

/// One change.
#[derive(Clone, Debug, Deserialize)]
struct Change {
    /// The number that switches it on, from 1.
    #[serde(skip)]
    id: u32,
    file: String,
    genre: Genre,
    name: String,
    replacement: String,
    span: Span,
    /// The line of the source in which it begins.
    #[serde(skip)]
    line: String,
}

impl Change {
    fn tokens(&self) -> TokenStream {
        // What `cargo mutants` names is Rust.
        self.replacement.parse().unwrap_or_default()
    }

    /// How the list names it: without the line's number, which moves.
    fn said(&self) -> String {
        let place = format!("{}:{}:{}: ", self.file, self.span.start.line, self.span.start.column);
        let what = self.name.strip_prefix(&place).unwrap_or(&self.name);
        let file = self.file.strip_prefix("crates/engine/src/").unwrap_or(&self.file);
        format!("- `{file}` {what}, at `{}`", self.line)
    }
}

/// What came of a change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Outcome {
    Caught,
    /// The tests ran on without end: they notice, too.
    Hung,
    DoesNotCompile,
    Survived,
}

/// Tries every change of the files, counts, and names the survivors that the list does not explain.
///
/// `--quick` leaves out the slowest tests, so that some survive that the whole run catches. `--again` tries only what
/// survived the last time.
pub fn mutants(words: &[&str]) -> Result<()> {
    let (options, files): (Vec<&str>, Vec<&str>) = words.iter().partition(|word| word.starts_with("--"));
    if let Some(unknown) = options.iter().find(|o| !["--quick", "--again"].contains(o)) {
        bail!("there is no {unknown}");
    }
    let mut changes = list(&files)?;
    if options.contains(&"--again") {
        let before = read(&repository().join(SURVIVED))?;
        changes.retain(|c| before.lines().any(|line| line == c.said()));
    }
    println!("\n==> {} changes", changes.len());
    let tree = tree::Tree::copy("woven")?;
    let mut outcomes = BTreeMap::new();
    let woven = tree.weave(&changes)?;
    for id in &woven.no_rust {
        outcomes.insert(*id, Outcome::DoesNotCompile);
    }
    println!(
        "    {} do not compile, {} can only be tried alone, the rest stands in one build",
        woven.no_rust.len(),
        woven.alone.len()
    );
    let switched = |c: &&Change| !woven.no_rust.contains(&c.id) && !woven.alone.contains(&c.id);
    let switched: Vec<&Change> = changes.iter().filter(switched).collect();
    outcomes.extend(trial::all(&tree, &woven.programs, &switched, options.contains(&"--quick"))?);
    let alone: Vec<&Change> = changes.iter().filter(|c| woven.alone.contains(&c.id)).collect();
    outcomes.extend(alone::all(&alone)?);
    report(&changes, &outcomes)
}

/// The changes as `cargo mutants` lists them, numbered.
fn list(files: &[&str]) -> Result<Vec<Change>> {
    let files = if files.is_empty() { &FILES[..] } else { files };
    let mut arguments = vec!["mutants", "--list", "--json"];
    for file in files {
        arguments.extend(["--file", *file]);
    }
    let answer = cargo(&arguments)
        .answer()
        .context("`cargo mutants` gives no list: `cargo install cargo-mutants --locked` installs it")?;
    let mut changes: Vec<Change> = serde_json::from_str(&answer).context("the list of changes")?;
    for (id, change) in (1..).zip(&mut changes) {
        change.id = id;
        let text = read(&repository().join(&change.file))?;
        change.line = text.lines().nth(change.span.start.line - 1).unwrap_or_default().trim().to_owned();
    }
    if changes.is_empty() {
        bail!("no change to try in {files:?}");
    }
    Ok(changes)
}

fn read(path: &PathBuf) -> Result<String> {
    std::fs::read_to_string(path).with_context(|| path.display().to_string())
}

fn report(changes: &[Change], outcomes: &BTreeMap<u32, Outcome>) -> Result<()> {
    let list = std::fs::read_to_string(repository().join(LIST)).unwrap_or_default();
    let of = |change: &Change| outcomes.get(&change.id).copied().unwrap_or(Outcome::Survived);
    let mut counts: BTreeMap<&str, [usize; 4]> = BTreeMap::new();
    for change in changes {
        let file = change.file.strip_prefix("crates/engine/src/").unwrap_or(&change.file);
        counts.entry(file).or_default()[of(change) as usize] += 1;
    }
    println!("\n| file | changes | caught | hung | does not compile | survived |\n|---|---|---|---|---|---|");
    let row = |name: &str, [caught, hung, no_rust, survived]: [usize; 4]| {
        let all = caught + hung + no_rust + survived;
        println!("| {name} | {all} | {caught} | {hung} | {no_rust} | {survived} |");
    };
    let mut total = [0; 4];
    for (file, count) in &counts {
        row(&format!("`{file}`"), *count);
        total = std::array::from_fn(|i| total[i] + count[i]);
    }
    row("all", total);
    let survivors: Vec<String> =
        changes.iter().filter(|c| of(c) == Outcome::Survived).map(Change::said).collect();
    std::fs::write(repository().join(SURVIVED), survivors.join("\n")).context(SURVIVED)?;
    let explained = |said: &String| list.lines().any(|line| line.starts_with(&format!("{said}: ")));
    let (known, new): (Vec<_>, Vec<_>) = survivors.iter().partition(|said| explained(said));
    println!("\n{} survivors are explained in {LIST}", known.len());
    for line in list.lines().filter(|line| line.starts_with("- `")) {
        let file = line.trim_start_matches("- `").split('`').next().unwrap_or_default();
        if counts.contains_key(file) && !survivors.iter().any(|said| line.starts_with(&format!("{said}: "))) {
            println!("no longer survives: {line}");
        }
    }
    for change in changes.iter().filter(|c| of(c) == Outcome::Survived && new.contains(&&c.said())) {
        println!("{}:{}\n{}", change.file, change.span.start.line, change.said());
    }
    if new.is_empty() { Ok(()) } else { bail!("{} survivors are explained nowhere", new.len()) }
}
