//! Building the screens and the window.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};

use crate::process::{cargo, npm};
use crate::repository;

/// Builds the screens into ui/dist, and touches ui/dist only if something in it changes: otherwise the window, which
/// embeds it, would be built anew each time.
pub fn screens() -> Result<()> {
    let fresh = repository().join("target/ui-dist");
    let dist = repository().join("ui/dist");
    npm(&["run", "build", "--", "--emptyOutDir", "--outDir", &fresh.to_string_lossy()]).step("screens")?;
    let built = files(&fresh)?;
    if dist.exists() && files(&dist)? == built {
        return Ok(());
    }
    if dist.exists() {
        std::fs::remove_dir_all(&dist).with_context(|| dist.display().to_string())?;
    }
    for (path, bytes) in built {
        let target = dist.join(path);
        let folder = target.parent().unwrap_or(&dist);
        std::fs::create_dir_all(folder).with_context(|| folder.display().to_string())?;
        std::fs::write(&target, bytes).with_context(|| target.display().to_string())?;
    }
    Ok(())
}

/// Builds the window, with whatever else steers it in the same go: then both share their compiled crates.
pub fn window(and: &[&str]) -> Result<PathBuf> {
    let mut arguments =
        vec!["build", "--package", "newel-shell", "--features", "newel-shell/custom-protocol"];
    for package in and {
        arguments.extend(["--package", package]);
    }
    arguments.push("--bins");
    cargo(&arguments).step("window (some minutes when it is the first time)")?;
    let name = format!("newel-window{}", std::env::consts::EXE_SUFFIX);
    Ok(output()?.join(name))
}

/// Where Cargo puts the programs of this build: beside this very one.
pub fn output() -> Result<PathBuf> {
    let own = std::env::current_exe().context("where this program lies")?;
    Ok(own.parent().context("a program lies in a folder")?.to_owned())
}

/// Every file under a folder, by its path in it, with its bytes; nothing if the folder is not there.
pub fn files(folder: &Path) -> Result<BTreeMap<PathBuf, Vec<u8>>> {
    let mut found = BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(next) = open.pop() {
        if !next.exists() {
            continue;
        }
        for entry in std::fs::read_dir(&next).with_context(|| next.display().to_string())? {
            let path = entry?.path();
            if path.is_dir() {
                open.push(path);
            } else {
                let bytes = std::fs::read(&path).with_context(|| path.display().to_string())?;
                found.insert(path.strip_prefix(folder)?.to_owned(), bytes);
            }
        }
    }
    Ok(found)
}
