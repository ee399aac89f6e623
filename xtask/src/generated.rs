//! What is written from the Rust types and committed: the page's types and the file formats' schemas.

use anyhow::{Result, bail, ensure};

use crate::build::files;
use crate::process::{cargo, program};
use crate::{install, repository};

/// A committed folder that a command writes.
#[derive(Clone, Copy)]
pub enum Kind {
    /// The page's types, by ts-rs. Its writers are tests named `export_bindings_..`.
    Bindings,
    /// JSON Schemas of the plan and the log file.
    Schemas,
}

impl Kind {
    fn folder(self) -> &'static str {
        match self {
            Self::Bindings => "ui/src/bindings",
            Self::Schemas => "docs/schema",
        }
    }

    fn command(self) -> &'static str {
        match self {
            Self::Bindings => "cargo xtask bindings",
            Self::Schemas => "cargo xtask schemas",
        }
    }
}

/// Writes the folder anew, so that the file of a type that is gone goes too.
pub fn write(kind: Kind) -> Result<()> {
    write_with(kind, &["--package", "newel-engine", "--package", "newel-app"])
}

/// `scope` says which packages are compiled with which features, and so what is there already; the outcome is the same.
fn write_with(kind: Kind, scope: &[&str]) -> Result<()> {
    // Compiled first: only then is the folder emptied, and for a moment.
    match kind {
        Kind::Bindings => {
            let mut arguments = vec!["test", "--quiet", "--lib", "--no-run"];
            arguments.extend(scope);
            cargo(&arguments).step("building the writers of the page's types")?;
        }
        Kind::Schemas => {
            cargo(&["build", "--quiet", "--package", "newel-exchange", "--example", "schemas"])
                .step("building the writer of the files' schemas")?;
        }
    }
    let folder = repository().join(kind.folder());
    for file in files(&folder)?.into_keys() {
        std::fs::remove_file(folder.join(file))?;
    }
    match kind {
        Kind::Bindings => {
            let mut arguments = vec!["test", "--quiet", "--lib"];
            arguments.extend(scope);
            arguments.extend(["--", "export_bindings"]);
            cargo(&arguments).step("types of the page")?;
        }
        Kind::Schemas => {
            cargo(&["run", "--quiet", "--package", "newel-exchange", "--example", "schemas"])
                .step("schemas of the files")?;
        }
    }
    ensure!(!files(&folder)?.is_empty(), "{} is empty after `{}`", kind.folder(), kind.command());
    Ok(())
}

/// Writes the folder anew and requires that nothing changes by it. In CI nothing may be uncommitted either: a file that
/// was never added would be in the folder here and missing for everyone else.
pub fn check(kind: Kind, scope: &[&str]) -> Result<()> {
    let folder = repository().join(kind.folder());
    let before = files(&folder)?;
    write_with(kind, scope)?;
    let after = files(&folder)?;
    let stale: Vec<String> = before
        .keys()
        .chain(after.keys())
        .filter(|name| before.get(*name) != after.get(*name))
        .map(|name| name.display().to_string())
        .collect();
    if !stale.is_empty() {
        bail!(
            "{} was stale: {}. It is written anew now; look at it and commit it ({})",
            kind.folder(),
            stale.join(", "),
            kind.command()
        );
    }
    if install::ci() {
        let uncommitted = program("git", &["status", "--porcelain", "--", kind.folder()]).answer();
        ensure!(uncommitted.as_deref() == Some(""), "{} differs from what is committed", kind.folder());
    }
    Ok(())
}
