//! A copy of the engine under target/mutants/, to change and to build.

use std::collections::{BTreeMap, BTreeSet};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};
use serde_json::Value;

use super::rewrite::{Fault, Rewritten};
use super::{Change, read};
use crate::{build, repository};

/// What is switched on and off by.
const SWITCH: &str = include_str!("switch.rs.txt");

/// What did not compile, with a hash of the file that it was in.
const KNOWN: &str = "target/mutants/no-rust.txt";

/// The copy.
pub struct Tree {
    /// Its root, which is a workspace of the engine alone.
    pub root: PathBuf,
}

/// All changes in one build.
pub struct Woven {
    /// The programs that run the tests.
    pub programs: Vec<PathBuf>,
    /// Changes to be tried alone.
    pub alone: BTreeSet<u32>,
    /// Changes that do not compile.
    pub no_rust: BTreeSet<u32>,
}

/// What Cargo made of a tree.
pub enum Built {
    /// The programs that run the tests.
    Programs(Vec<PathBuf>),
    /// Errors: the file, the bytes in it, what is wrong.
    Errors(Vec<(String, Range<usize>, String)>),
}

impl Tree {
    /// Copies the engine as it lies here.
    pub fn copy(name: &str) -> Result<Self> {
        let root = repository().join("target/mutants").join(name);
        if root.exists() {
            std::fs::remove_dir_all(&root).with_context(|| root.display().to_string())?;
        }
        let tree = Self { root };
        for (path, bytes) in build::files(&repository().join("crates/engine"))? {
            tree.write(&Path::new("crates/engine").join(path), &bytes)?;
        }
        let manifest = read(&repository().join("Cargo.toml"))?;
        let members = manifest
            .lines()
            .map(|line| if line.starts_with("members") { "members = [\"crates/*\"]" } else { line });
        tree.write(Path::new("Cargo.toml"), members.collect::<Vec<_>>().join("\n").as_bytes())?;
        let lock = read(&repository().join("Cargo.lock"))?;
        tree.write(Path::new("Cargo.lock"), lock.as_bytes())?;
        // The engine's own lints stand in the way of a switch.
        let engine = read(&tree.root.join("crates/engine/Cargo.toml"))?;
        let engine = engine.replace("[lints]\nworkspace = true", "");
        tree.write(Path::new("crates/engine/Cargo.toml"), engine.as_bytes())?;
        Ok(tree)
    }

    /// Writes a file of it.
    pub fn write(&self, path: &Path, bytes: &[u8]) -> Result<()> {
        let path = self.root.join(path);
        let folder = path.parent().unwrap_or(&self.root);
        std::fs::create_dir_all(folder).with_context(|| folder.display().to_string())?;
        std::fs::write(&path, bytes).with_context(|| path.display().to_string())
    }

    /// Puts all changes in, and takes out what does not compile until the rest does.
    pub fn weave(&self, changes: &[Change]) -> Result<Woven> {
        self.write(Path::new("crates/engine/src/mutant.rs"), SWITCH.as_bytes())?;
        let lib = Path::new("crates/engine/src/lib.rs");
        let text = read(&self.root.join(lib))?;
        self.write(lib, format!("{text}\n#[allow(missing_docs)]\npub mod mutant;\n").as_bytes())?;
        let mut files: BTreeMap<&str, Vec<&Change>> = BTreeMap::new();
        for change in changes {
            files.entry(&change.file).or_default().push(change);
        }
        // What did not compile in the same text before needs no second try.
        let known = std::fs::read_to_string(repository().join(KNOWN)).unwrap_or_default();
        let known: BTreeSet<&str> = known.lines().collect();
        let mut keys = BTreeMap::new();
        for change in changes {
            let mut hasher = DefaultHasher::new();
            read(&repository().join(&change.file))?.hash(&mut hasher);
            keys.insert(change.id, format!("{:x} {}", hasher.finish(), change.name));
        }
        let mut alone = BTreeSet::new();
        let mut no_rust: BTreeSet<u32> =
            keys.iter().filter(|(_, key)| known.contains(key.as_str())).map(|(id, _)| *id).collect();
        loop {
            let mut woven = BTreeMap::new();
            for (file, changes) in &files {
                let text = read(&repository().join(file))?;
                let left = changes.iter().filter(|c| !alone.contains(&c.id) && !no_rust.contains(&c.id));
                let done = Rewritten::of(&text, &left.copied().collect::<Vec<_>>())
                    .with_context(|| (*file).to_owned())?;
                self.write(Path::new(file), done.text.as_bytes())?;
                alone.extend(&done.alone);
                no_rust.extend(&done.no_rust);
                woven.insert(*file, done);
            }
            let errors = match self.build()? {
                Built::Programs(programs) => return Ok(Woven { programs, alone, no_rust }),
                Built::Errors(errors) => errors,
            };
            println!("    {} errors of the compiler: what they come from is taken out", errors.len());
            let before = alone.len() + no_rust.len();
            for (file, at, message) in &errors {
                match woven.get(file.as_str()).map_or(Fault::Unknown, |w| w.fault(at)) {
                    Fault::Own(id) => drop(no_rust.insert(id)),
                    Fault::Form(ids) => {
                        println!("    alone: {ids:?} in {file}: {message}");
                        alone.extend(ids);
                    }
                    Fault::Unknown => println!("    {file} at {at:?}: {message}"),
                }
            }
            let all: BTreeSet<&str> =
                no_rust.iter().map(|id| keys[id].as_str()).chain(known.iter().copied()).collect();
            let path = repository().join(KNOWN);
            std::fs::write(&path, all.into_iter().collect::<Vec<_>>().join("\n"))
                .with_context(|| path.display().to_string())?;
            if alone.len() + no_rust.len() == before {
                bail!("the engine does not compile with its changes, and none of them is the cause");
            }
        }
    }

    /// Builds the tests: the stories and the unit tests.
    pub fn build(&self) -> Result<Built> {
        let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
        let output = Command::new(cargo)
            .args(["test", "--no-run", "--lib", "--test", "it"])
            .args(["--package", "newel-engine", "--offline", "--quiet", "--message-format", "json"])
            .current_dir(&self.root)
            .env("CARGO_TARGET_DIR", repository().join("target"))
            .env("CARGO_PROFILE_DEV_DEBUG", "0")
            .output()
            .context("cargo")?;
        let (mut programs, mut errors) = (Vec::new(), Vec::new());
        for line in String::from_utf8_lossy(&output.stdout).lines() {
            let Ok(said) = serde_json::from_str::<Value>(line) else { continue };
            if let Some(program) = said["executable"].as_str() {
                programs.push(PathBuf::from(program));
            }
            if said["message"]["level"] == "error" {
                let spans = said["message"]["spans"].as_array().cloned().unwrap_or_default();
                for span in spans.iter().filter(|s| s["is_primary"] == true) {
                    let byte = |name: &str| span[name].as_u64().unwrap_or_default() as usize;
                    let file = span["file_name"].as_str().unwrap_or_default().to_owned();
                    let message = said["message"]["message"].as_str().unwrap_or_default().to_owned();
                    errors.push((file, byte("byte_start")..byte("byte_end"), message));
                }
            }
        }
        match (output.status.success(), errors.is_empty()) {
            (true, _) => Ok(Built::Programs(programs)),
            (false, false) => Ok(Built::Errors(errors)),
            (false, true) => bail!("the copy does not build:\n{}", String::from_utf8_lossy(&output.stderr)),
        }
    }
}
