//! Where things lie.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result, ensure};

/// The repository's root.
pub fn repository() -> PathBuf {
    let own = Path::new(env!("CARGO_MANIFEST_DIR"));
    own.parent().unwrap_or(own).to_owned()
}

/// The folder for what is left behind to look at: `target/NAME`, made empty.
pub fn target(name: &str) -> Result<PathBuf> {
    let folder = repository().join("target").join(name);
    if folder.exists() {
        std::fs::remove_dir_all(&folder).with_context(|| folder.display().to_string())?;
    }
    std::fs::create_dir_all(&folder).with_context(|| folder.display().to_string())?;
    Ok(folder)
}

/// A program of this workspace, such as `newel-window`: where its variable says (`NEWEL_WINDOW`, the name in capitals),
/// else in Cargo's folder, which is this program's own or the one above (tests lie in `deps`).
pub fn program(name: &str) -> Result<PathBuf> {
    let variable = name.to_uppercase().replace('-', "_");
    let found = match std::env::var_os(&variable) {
        Some(path) => PathBuf::from(path),
        None => {
            let own = std::env::current_exe()?;
            let folder = own.parent().context("a program lies in a folder")?;
            let folder = if folder.ends_with("deps") { folder.parent().unwrap_or(folder) } else { folder };
            folder.join(format!("{name}{}", std::env::consts::EXE_SUFFIX))
        }
    };
    ensure!(
        found.is_file(),
        "{} is not there: build it (`cargo xtask test` does), or say in {variable} where it is",
        found.display()
    );
    Ok(found)
}
