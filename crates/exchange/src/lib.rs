//! Files between devices: the log file and the plan file. Knows bytes and JSON, no SQL.
//!
//! A file is one JSON object, the *envelope*: what it is (`format`), in which version (`version`),
//! how it is sealed (`seal`, always `null` in version 1), the SHA-256 of the exact bytes of its
//! content (`sha256`), and the content; since version 2 a coach's own pictures beside it. Records stand in the content as they are in the log, byte
//! for byte, one on each line. docs/files.md describes the formats; docs/schema/ has their schemas.
//!
//! Invariants: reading changes nothing and never panics, whatever the bytes; what it returns has
//! passed every check; every refusal has a stable code with a sentence in `locales/`; a file is
//! written whole or not at all.
//!
//! ```
//! use newel_exchange::{Document, LogDocument, read, write_log};
//! # use newel_engine::{ids::{DeviceId, PersonId}, record::Versions};
//! # let id = uuid::Uuid::from_u128(1);
//! let log = LogDocument {
//!     person: PersonId(id),
//!     name: "Noor".into(),
//!     device: DeviceId(id),
//!     made_at: chrono::DateTime::parse_from_rfc3339("2026-03-02T09:30:00+01:00").expect("a time"),
//!     versions: Versions { engine: "0.1.0".into(), catalogue: 1, rules: 1 },
//!     lines: vec![],
//! };
//! let bytes = write_log(&log)?;
//! assert_eq!(read(&bytes)?, Document::Log(log));
//! assert_eq!(read(&bytes[..40]).unwrap_err().code(), "cut-short");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod document;
mod error;
mod limits;
mod picture;
mod read;
mod schemas;
mod verbatim;
mod whole;
mod write;

pub use document::{Document, Kind, LogDocument, PlanDocument};
pub use error::{FileError, ReadError, RecordFault, WriteError};
pub use limits::{MAX_BYTES, MAX_DEPTH, MAX_LINES, MAX_OWN_LADDERS, MAX_OWN_VARIANTS};
pub use picture::{MAX_PICTURE, MAX_PICTURES, Picture, PictureError};
pub use read::{read, read_log, read_plan, without_pictures};
pub use schemas::schemas;
pub use whole::{read_whole, write_whole};
pub use write::{write_log, write_plan};
