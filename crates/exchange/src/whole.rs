//! Files on the disk: read within bounds, written whole or not at all.

use crate::error::FileError;
use crate::limits::MAX_BYTES;
use std::fs::File;
use std::io::{self, Read as _, Write as _};
use std::path::Path;

/// Reads a file, and no more of it than a file of ours may have.
///
/// # Errors
/// [`FileError::TooLarge`], or what the system says, with the path.
pub fn read_whole(path: impl AsRef<Path>) -> Result<Vec<u8>, FileError> {
    let path = path.as_ref();
    let get = || -> io::Result<Vec<u8>> {
        let mut bytes = Vec::new();
        File::open(path)?.take(MAX_BYTES as u64 + 1).read_to_end(&mut bytes)?;
        Ok(bytes)
    };
    let bytes = get().map_err(|source| FileError::Unreadable { path: path.to_owned(), source })?;
    if bytes.len() > MAX_BYTES {
        return Err(FileError::TooLarge { path: path.to_owned() });
    }
    Ok(bytes)
}

/// Writes a file whole or not at all: under a passing name in the same folder, synced, renamed, and the
/// folder synced. A file that stood there before is replaced in one step. Others on the machine
/// cannot read it: it holds health data.
///
/// # Errors
/// What the system says, with the path.
pub fn write_whole(path: impl AsRef<Path>, bytes: &[u8]) -> Result<(), FileError> {
    let path = path.as_ref();
    let folder = match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        Some(_) | None => Path::new("."),
    };
    let put = || -> io::Result<()> {
        let mut file = tempfile::NamedTempFile::new_in(folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist(path)?;
        // Windows has no way to sync a folder; its file system journals renames.
        if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
    };
    put().map_err(|source| FileError::Unwritten { path: path.to_owned(), source })
}
