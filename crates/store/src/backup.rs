//! Backups: whole or not at all.

use crate::instance::{folder_of, sync_folder};
use crate::open::Store;
use crate::{StoreError, schema};
use rusqlite::backup::{Backup, StepResult};
use std::io;
use std::path::Path;

impl Store {
    /// Writes a copy of the database as one file, whole or not at all. The copy has no marker beside
    /// it, so it goes on under a device name of its own if it is ever opened.
    ///
    /// # Errors
    /// What SQLite or the file system says, with the path of the copy.
    pub fn backup_to(&self, path: impl AsRef<Path>) -> Result<(), StoreError> {
        let path = path.as_ref();
        let folder = folder_of(path);
        let io = |e: io::Error| StoreError::io(path, e);
        let file = tempfile::NamedTempFile::new_in(&folder).map_err(io)?;
        let name = file.path().to_str().ok_or_else(|| {
            io(io::Error::new(io::ErrorKind::InvalidInput, "the path is not valid Unicode"))
        })?;
        self.conn.execute("VACUUM INTO ?1", [name]).map_err(|e| StoreError::from(e).at(path))?;
        file.as_file().sync_all().map_err(io)?;
        file.persist(path).map_err(|e| io(e.error))?;
        sync_folder(&folder).map_err(io)
    }

    /// Replaces all of this database by a backup, in one transaction. The profile then goes on under a
    /// new device name: what it wrote since the backup may already be with others.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] when the backup does not pass its check; nothing is changed then.
    /// Otherwise as [`Store::open`].
    pub fn restore_from(&mut self, path: impl AsRef<Path>) -> Result<(), StoreError> {
        let path = path.as_ref();
        // On a copy of the backup: bringing an old schema up to date must not touch the backup itself.
        let room = tempfile::TempDir::new_in(folder_of(self.path())).map_err(|e| StoreError::io(path, e))?;
        let copy = room.path().join("restore.db");
        std::fs::copy(path, &copy).map_err(|e| StoreError::io(path, e))?;
        let backup = Self::open(&copy).map_err(|e| e.told_of(path))?;
        let found = backup.check().map_err(|e| e.told_of(path))?;
        if let Some(first) = found.findings.iter().find(|f| f.is_damage()) {
            return Err(StoreError::Corrupt { path: path.to_owned(), what: format!("{first:?}") });
        }
        let database = self.path().to_owned();
        let mut copy = || -> Result<(), StoreError> {
            let run = Backup::new(&backup.conn, &mut self.conn)?;
            // All pages in one step: SQLite commits them as one transaction.
            match run.step(-1)? {
                StepResult::Done => Ok(()),
                // The enum is open-ended; anything but done leaves the database as it was.
                _ => Err(StoreError::Busy { path: database.clone() }),
            }
        };
        copy().map_err(|e| e.at(&database))?;
        schema::prepare(&self.conn)?;
        self.renew_device()?;
        Ok(())
    }
}
