//! Opening a profile's database.

use crate::{IdSource, StoreError, instance, project, schema};
use newel_engine::ids::DeviceId;
use rusqlite::{Connection, OpenFlags, Transaction, TransactionBehavior};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// One profile's log. It may move to another thread but is used by one at a time: one writer.
#[derive(Debug)]
pub struct Store {
    pub(crate) conn: Connection,
    path: PathBuf,
    pub(crate) ids: IdSource,
    opened: Opened,
}

/// How a database was found on opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Opened {
    /// It was made just now.
    New,
    /// It goes on as it was.
    Known,
    /// It was copied or restored since it was last open: it goes on under a new device name.
    Copied,
    /// It is open for reading alone; nothing was looked at or changed.
    ReadOnly,
}

impl Store {
    /// Opens a profile's database, or makes it.
    ///
    /// A database that was copied or restored since (see [`Opened::Copied`]) gets a new device name,
    /// since two copies that wrote under one name would fork its streams.
    ///
    /// # Errors
    /// [`StoreError::TooNew`], [`StoreError::Foreign`], [`StoreError::Corrupt`] and what the system says.
    pub fn open(path: impl AsRef<Path>) -> Result<Self, StoreError> {
        Self::open_with(path, IdSource::Random)
    }

    /// As [`Store::open`], with ids from the given source.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_with(path: impl AsRef<Path>, ids: IdSource) -> Result<Self, StoreError> {
        let path = path.as_ref();
        make_private(path)?;
        Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX)
            .map_err(StoreError::from)
            .and_then(|conn| Self::set_up(conn, path, ids, true))
            .map_err(|e| e.at(path))
    }

    /// Opens a database that lives in memory alone and ends with this value.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn open_in_memory() -> Result<Self, StoreError> {
        Self::open_in_memory_with(IdSource::Random)
    }

    /// As [`Store::open_in_memory`], with ids from the given source.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn open_in_memory_with(ids: IdSource) -> Result<Self, StoreError> {
        Self::set_up(Connection::open_in_memory()?, Path::new(":memory:"), ids, false)
    }

    /// Opens an existing database without ever writing to it: for `check` and for a look.
    ///
    /// # Errors
    /// As [`Store::open`]. An older schema is read as it is: migrations only ever add.
    pub fn open_read_only(path: impl AsRef<Path>) -> Result<Self, StoreError> {
        let path = path.as_ref();
        // SQLite makes no difference between a missing file and one that it may not open.
        fs::metadata(path).map_err(|e| StoreError::io(path, e))?;
        let open = || -> Result<Self, StoreError> {
            let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
            let conn = Connection::open_with_flags(path, flags)?;
            schema::prepare_reading(&conn)?;
            if schema::is_new(&conn, path)? {
                return Err(StoreError::Foreign { path: path.to_owned() });
            }
            Ok(Self { conn, path: path.to_owned(), ids: IdSource::Random, opened: Opened::ReadOnly })
        };
        open().map_err(|e| e.at(path))
    }

    fn set_up(
        mut conn: Connection,
        path: &Path,
        mut ids: IdSource,
        on_disk: bool,
    ) -> Result<Self, StoreError> {
        // Looks before anything is written: a foreign file, or one of a newer version, stays as it is.
        schema::is_new(&conn, path)?;
        schema::prepare(&conn)?;
        if on_disk {
            let mode: String = conn.query_row("PRAGMA journal_mode = WAL", [], |row| row.get(0))?;
            if mode != "wal" {
                return Err(StoreError::ReadOnly { path: path.to_owned() });
            }
        }
        schema::migrate(&mut conn, path)?;
        let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let known: Option<(String, String)> = rusqlite::OptionalExtension::optional(tx.query_row(
            "SELECT instance, projected FROM here",
            [],
            |row| Ok((row.get(0)?, row.get(1)?)),
        ))?;
        let (instance, opened) = match known {
            Some((instance, projected)) => {
                if projected != project::version() {
                    project::rebuild(&tx)?;
                }
                if !on_disk || instance::agrees(path, &instance)? {
                    (instance, Opened::Known)
                } else {
                    (rename(&tx, &mut ids)?, Opened::Copied)
                }
            }
            None => (name(&tx, &mut ids)?, Opened::New),
        };
        tx.commit()?;
        // The database first: if the marker is not written, the next opening takes one more device name.
        if on_disk && opened != Opened::Known {
            instance::write(path, &instance)?;
        }
        Ok(Self { conn, path: path.to_owned(), ids, opened })
    }

    /// Where the database stands; `:memory:` for one in memory.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// How the database was found on opening.
    #[must_use]
    pub const fn opened(&self) -> Opened {
        self.opened
    }

    /// The name under which this profile writes.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn device(&self) -> Result<DeviceId, StoreError> {
        self.read(own_device)
    }

    /// Takes a new device name: the old streams stay as they are and are never appended to again.
    ///
    /// # Errors
    /// What SQLite or the file system says.
    pub fn renew_device(&mut self) -> Result<DeviceId, StoreError> {
        let mut ids = self.ids.clone();
        let instance = self.change(|tx| rename(tx, &mut ids))?;
        self.ids = ids;
        self.mark(&instance)?;
        self.device()
    }

    /// Writes the marker beside the database anew, where there is one.
    pub(crate) fn mark(&self, instance: &str) -> Result<(), StoreError> {
        if self.conn.path().is_some_and(|p| !p.is_empty()) {
            instance::write(&self.path, instance)?;
        }
        Ok(())
    }

    /// Reads, and puts the path into what goes wrong.
    pub(crate) fn read<T>(
        &self,
        look: impl FnOnce(&Connection) -> Result<T, StoreError>,
    ) -> Result<T, StoreError> {
        look(&self.conn).map_err(|e| e.at(&self.path))
    }

    /// The one transaction of a write: all of it or nothing.
    pub(crate) fn change<T>(
        &mut self,
        act: impl FnOnce(&Transaction<'_>) -> Result<T, StoreError>,
    ) -> Result<T, StoreError> {
        let run = |conn: &mut Connection| {
            let tx = conn.transaction_with_behavior(TransactionBehavior::Immediate)?;
            let out = act(&tx)?;
            tx.commit()?;
            Ok(out)
        };
        run(&mut self.conn).map_err(|e: StoreError| e.at(&self.path))
    }
}

/// The name under which this profile writes.
pub(crate) fn own_device(conn: &Connection) -> Result<DeviceId, StoreError> {
    Ok(conn.query_row("SELECT device FROM here", [], |row| crate::rows::uuid(row, 0).map(DeviceId))?)
}

/// Gives a new profile its names; returns the instance.
fn name(conn: &Connection, ids: &mut IdSource) -> Result<String, StoreError> {
    let (device, instance) = (ids.name(), ids.name());
    conn.execute(
        "INSERT INTO here (one, device, instance, projected) VALUES (1, ?1, ?2, ?3)",
        (device.to_string(), instance.to_string(), project::version()),
    )?;
    remember(conn, device)?;
    Ok(instance.to_string())
}

/// Keeps the names that this profile ever wrote under: its plan files carry what it wrote under all of them.
fn remember(conn: &Connection, device: Uuid) -> Result<(), StoreError> {
    conn.execute(
        "INSERT INTO own_devices (device) VALUES (?1) ON CONFLICT DO NOTHING",
        [device.to_string()],
    )?;
    Ok(())
}

/// Gives an existing profile new names; returns the instance.
pub(crate) fn rename(conn: &Connection, ids: &mut IdSource) -> Result<String, StoreError> {
    // A seeded source that starts anew would draw the old names again, and two copies would share one.
    let fresh = |old: Uuid, ids: &mut IdSource| loop {
        let new = ids.name();
        if new != old {
            return new;
        }
    };
    let device = fresh(own_device(conn)?.0, ids);
    let instance = ids.name();
    conn.execute("UPDATE here SET device = ?1, instance = ?2", (device.to_string(), instance.to_string()))?;
    remember(conn, device)?;
    Ok(instance.to_string())
}

/// Makes the file before SQLite does, so that other users of the machine cannot read it.
fn make_private(path: &Path) -> Result<(), StoreError> {
    let mut options = fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt as _;
        options.mode(0o600);
    }
    match options.open(path) {
        Ok(_) => Ok(()),
        Err(error) if error.kind() == io::ErrorKind::AlreadyExists => Ok(()),
        Err(error) => Err(StoreError::io(path, error)),
    }
}
