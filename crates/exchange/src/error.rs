//! Why a file was refused, each with a stable code. The sentence for a code is `file-error-<code>` in
//! `locales/`: what happened, what is safe, what to do. A refused file has changed nothing.

use crate::document::Kind;
use std::io;
use std::path::PathBuf;

/// Why bytes are no document.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// There is nothing in it.
    #[error("the file is empty")]
    Empty,
    /// It ends before its end.
    #[error("the file is cut short")]
    CutShort,
    /// Its content is not what was written.
    #[error("the file was altered after it was written")]
    Altered,
    /// It is no file of Newel's.
    #[error("not a Newel file")]
    NotNewel,
    /// A newer version wrote it.
    #[error("a newer version wrote the file ({found})")]
    TooNew {
        /// What it says that it is.
        found: String,
    },
    /// It is sealed, and this version cannot open seals.
    #[error("the file is sealed in a way that this version cannot open")]
    Sealed,
    /// It is larger than a file may be.
    #[error("the file is too large")]
    TooLarge,
    /// Its parts stand too deep within one another.
    #[error("the file is nested too deeply")]
    TooDeep,
    /// It is a file of the other kind.
    #[error("a {} file, where a {} file is expected", found.format(), expected.format())]
    WrongKind {
        /// What it is.
        found: Kind,
        /// What was expected.
        expected: Kind,
    },
    /// It is whole, but not formed as its format asks.
    #[error("the file is not well formed: {detail}")]
    Malformed {
        /// What the parser said; no value of the file stands in it.
        detail: String,
    },
    /// A record in it is none, or is about somebody else.
    #[error("record {nth} of the file is refused: {why}")]
    RecordRefused {
        /// Its place in the file, from 0.
        nth: usize,
        /// Why.
        why: RecordFault,
    },
}

/// What is wrong with a record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum RecordFault {
    /// It is not one line.
    #[error("it is not on one line")]
    NotOneLine,
    /// It is no record.
    #[error("it is no record")]
    NotARecord,
    /// It is about another person than the file.
    #[error("it is about another person")]
    AnotherPerson,
}

impl ReadError {
    /// The stable code.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::CutShort => "cut-short",
            Self::Altered => "altered",
            Self::NotNewel => "not-newel",
            Self::TooNew { .. } => "too-new",
            Self::Sealed => "sealed",
            Self::TooLarge => "too-large",
            Self::TooDeep => "too-deep",
            Self::WrongKind { .. } => "wrong-kind",
            Self::Malformed { .. } => "malformed",
            Self::RecordRefused { .. } => "record-refused",
        }
    }

    /// Every code of reading, for the test that each has its sentence.
    pub const CODES: [&'static str; 11] = [
        "empty",
        "cut-short",
        "altered",
        "not-newel",
        "too-new",
        "sealed",
        "too-large",
        "too-deep",
        "wrong-kind",
        "malformed",
        "record-refused",
    ];
}

/// Why a document cannot be written.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
pub enum WriteError {
    /// It would be larger than a file may be.
    #[error("the file would be too large")]
    TooLarge,
    /// A record in it would be refused by its reader.
    #[error("record {nth} cannot be written: {why}")]
    RecordRefused {
        /// Its place among the lines, from 0.
        nth: usize,
        /// Why.
        why: RecordFault,
    },
    /// A value in it has no form in JSON, or its parts stand too deep within one another.
    #[error("the document cannot be written as JSON: {detail}")]
    Unwritable {
        /// What the writer said.
        detail: String,
    },
}

impl WriteError {
    /// The stable code.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::TooLarge => "too-large-to-write",
            Self::RecordRefused { .. } => "record-unwritable",
            Self::Unwritable { .. } => "unwritable",
        }
    }

    /// Every code of writing.
    pub const CODES: [&'static str; 3] = ["too-large-to-write", "record-unwritable", "unwritable"];
}

/// Why a file cannot be read from or written to the disk.
#[derive(Debug, thiserror::Error)]
pub enum FileError {
    /// It could not be read.
    #[error("{}: {source}", path.display())]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// It could not be written.
    #[error("{}: {source}", path.display())]
    Unwritten {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// It is larger than a file may be.
    #[error("{}: the file is too large", path.display())]
    TooLarge {
        /// The file.
        path: PathBuf,
    },
}

impl FileError {
    /// The stable code.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Unreadable { .. } => "unreadable",
            Self::Unwritten { .. } => "unwritten",
            Self::TooLarge { .. } => "too-large",
        }
    }

    /// Every code of the disk.
    pub const CODES: [&'static str; 3] = ["unreadable", "unwritten", "too-large"];
}
