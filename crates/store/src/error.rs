//! What can go wrong with the log, each with a stable code that a screen may branch on.

use newel_engine::ids::RecordId;
use rusqlite::ErrorCode;
use std::io;
use std::path::{Path, PathBuf};

/// Why the store could not do what was asked. Nothing was changed whenever one of these comes back.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    /// A file beside or of the database could not be read or written.
    #[error("{}: {source}", path.display())]
    Io {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// A newer version of Newel wrote this database. It is whole; this program is too old for it.
    #[error("{}: written by a newer version (schema {found}, this one knows {known})", path.display())]
    TooNew {
        /// The database.
        path: PathBuf,
        /// Its schema version.
        found: i64,
        /// The newest schema version that this program knows.
        known: i64,
    },
    /// The file is not a Newel database.
    #[error("{}: not a Newel database", path.display())]
    Foreign {
        /// The file.
        path: PathBuf,
    },
    /// The database is damaged.
    #[error("{}: the database is damaged: {what}", path.display())]
    Corrupt {
        /// The database.
        path: PathBuf,
        /// What was found.
        what: String,
    },
    /// Another program holds the database.
    #[error("{}: another program is using the database", path.display())]
    Busy {
        /// The database.
        path: PathBuf,
    },
    /// There is no room left on the disk.
    #[error("{}: no room left on the disk", path.display())]
    DiskFull {
        /// The database.
        path: PathBuf,
    },
    /// The database may be read but not written.
    #[error("{}: the database cannot be written to", path.display())]
    ReadOnly {
        /// The database.
        path: PathBuf,
    },
    /// Any other trouble that SQLite reports.
    #[error("{}: {source}", path.display())]
    Sql {
        /// The database.
        path: PathBuf,
        /// What SQLite said.
        source: rusqlite::Error,
    },
    /// A stored line cannot be read as a record.
    #[error("a stored record cannot be read at column {column}; its hash is {hash}")]
    LineUnreadable {
        /// The hash of its line: no value of it stands in an error, since errors are logged.
        hash: String,
        /// Where the parser stopped.
        column: usize,
    },
    /// What was to be written would not read back as it was.
    #[error("the record would not read back as it was written: {why}")]
    Unwritable {
        /// What is wrong with it.
        why: &'static str,
    },
    /// A correction, withdrawal or answer names a record that is not in this person's log.
    #[error("there is no record {0} in this person's log")]
    NoSuchRecord(RecordId),
    /// The log changed between planning a take-in and applying it.
    #[error("the log has changed since the file was looked at")]
    PlanStale,
    /// A count after a take-in is not what the plan said; nothing was kept.
    #[error("the take-in did not add up: {expected} records expected, {found} found")]
    Miscount {
        /// Records that there should have been.
        expected: u64,
        /// Records that there were.
        found: u64,
    },
}

impl StoreError {
    /// The stable code; the sentence for it is `store-error-<code>` in the Fluent files.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Io { .. } => "io",
            Self::TooNew { .. } => "too-new",
            Self::Foreign { .. } => "foreign",
            Self::Corrupt { .. } => "corrupt",
            Self::Busy { .. } => "busy",
            Self::DiskFull { .. } => "disk-full",
            Self::ReadOnly { .. } => "read-only",
            Self::Sql { .. } => "database",
            Self::LineUnreadable { .. } => "record-unreadable",
            Self::Unwritable { .. } => "unwritable",
            Self::NoSuchRecord(_) => "no-such-record",
            Self::PlanStale => "plan-stale",
            Self::Miscount { .. } => "miscount",
        }
    }

    /// Every code, for the test that each has its sentence.
    pub const CODES: [&'static str; 13] = [
        "io",
        "too-new",
        "foreign",
        "corrupt",
        "busy",
        "disk-full",
        "read-only",
        "database",
        "record-unreadable",
        "unwritable",
        "no-such-record",
        "plan-stale",
        "miscount",
    ];

    /// A stored line that is no record.
    pub(crate) fn unreadable(line: &str, error: &serde_json::Error) -> Self {
        Self::LineUnreadable { hash: crate::hash_of(line), column: error.column() }
    }

    /// An I/O error with its path.
    pub(crate) fn io(path: &Path, source: io::Error) -> Self {
        if source.kind() == io::ErrorKind::StorageFull {
            return Self::DiskFull { path: path.to_owned() };
        }
        Self::Io { path: path.to_owned(), source }
    }

    /// The same error, with the database's path where SQLite gave none.
    pub(crate) fn at(mut self, database: &Path) -> Self {
        if let Some(path) = self.path_mut().filter(|p| p.as_os_str().is_empty()) {
            database.clone_into(path);
        }
        self
    }

    /// The same error, spoken of another file: what went wrong with a copy, told of its original.
    pub(crate) fn told_of(mut self, file: &Path) -> Self {
        if let Some(path) = self.path_mut() {
            file.clone_into(path);
        }
        self
    }

    fn path_mut(&mut self) -> Option<&mut PathBuf> {
        match self {
            Self::Io { path, .. }
            | Self::TooNew { path, .. }
            | Self::Foreign { path }
            | Self::Corrupt { path, .. }
            | Self::Busy { path }
            | Self::DiskFull { path }
            | Self::ReadOnly { path }
            | Self::Sql { path, .. } => Some(path),
            Self::LineUnreadable { .. }
            | Self::Unwritable { .. }
            | Self::NoSuchRecord(_)
            | Self::PlanStale
            | Self::Miscount { .. } => None,
        }
    }
}

impl From<rusqlite::Error> for StoreError {
    fn from(source: rusqlite::Error) -> Self {
        let path = PathBuf::new();
        match source.sqlite_error_code() {
            Some(ErrorCode::DatabaseCorrupt) => Self::Corrupt { path, what: source.to_string() },
            Some(ErrorCode::NotADatabase) => Self::Foreign { path },
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy { path },
            Some(ErrorCode::DiskFull) => Self::DiskFull { path },
            Some(ErrorCode::ReadOnly) => Self::ReadOnly { path },
            _ => Self::Sql { path, source },
        }
    }
}
