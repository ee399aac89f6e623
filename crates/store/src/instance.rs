//! The marker beside the database by which a copy or a restored backup is noticed.
//!
//! Two copies of one profile that wrote under one device name would fork its streams. So a random
//! *instance* stands both in the database and in a file beside it, `<database>.instance`. When the
//! file is missing or says something else, the database was copied, moved alone or restored, and it
//! goes on under a new device name. On Unix the file also bears the database's inode number, so that
//! a copy of the whole folder is noticed too; elsewhere such a copy is noticed when the first log
//! file of the other copy is taken in. A false alarm costs nothing but one more stream.

use crate::StoreError;
use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// The path of the marker of a database.
pub(crate) fn path_of(database: &Path) -> PathBuf {
    let mut name = database.as_os_str().to_owned();
    name.push(".instance");
    PathBuf::from(name)
}

/// What the marker has to say for this database file to be the one that it was.
fn text(database: &Path, instance: &str) -> Result<String, StoreError> {
    Ok(format!("{instance} {}\n", inode(database)?))
}

#[cfg(unix)]
fn inode(database: &Path) -> Result<u64, StoreError> {
    use std::os::unix::fs::MetadataExt as _;
    Ok(fs::metadata(database).map_err(|e| StoreError::io(database, e))?.ino())
}

#[cfg(not(unix))]
fn inode(_database: &Path) -> Result<u64, StoreError> {
    Ok(0)
}

/// True when the marker beside the database agrees with the instance in it.
pub(crate) fn agrees(database: &Path, instance: &str) -> Result<bool, StoreError> {
    let marker = path_of(database);
    match fs::read(&marker) {
        Ok(bytes) => Ok(bytes == text(database, instance)?.as_bytes()),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
        Err(error) => Err(StoreError::io(&marker, error)),
    }
}

/// Writes the marker, whole or not at all.
pub(crate) fn write(database: &Path, instance: &str) -> Result<(), StoreError> {
    let marker = path_of(database);
    let text = text(database, instance)?;
    let folder = folder_of(&marker);
    let put = || -> io::Result<()> {
        let mut file = tempfile::NamedTempFile::new_in(&folder)?;
        file.write_all(text.as_bytes())?;
        file.as_file().sync_all()?;
        file.persist(&marker)?;
        sync_folder(&folder)
    };
    put().map_err(|e| StoreError::io(&marker, e))
}

/// The folder that a file stands in.
pub(crate) fn folder_of(file: &Path) -> PathBuf {
    match file.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent.to_owned(),
        Some(_) | None => PathBuf::from("."),
    }
}

/// Makes a rename in a folder last over a power cut.
#[cfg(unix)]
pub(crate) fn sync_folder(folder: &Path) -> io::Result<()> {
    fs::File::open(folder)?.sync_all()
}

/// Windows has no way to sync a folder; its file system journals renames.
#[cfg(not(unix))]
pub(crate) fn sync_folder(_folder: &Path) -> io::Result<()> {
    Ok(())
}
