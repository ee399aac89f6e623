//! A coach's own pictures, kept once each under the SHA-256 of their bytes.

use crate::{Store, StoreError};
use rusqlite::OptionalExtension as _;

impl Store {
    /// Keeps a picture; one that is there already stays.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn keep_picture(&mut self, name: &str, bytes: &[u8]) -> Result<(), StoreError> {
        self.change(|tx| {
            tx.prepare_cached(
                "INSERT INTO pictures (name, bytes) VALUES (?1, ?2) ON CONFLICT (name) DO NOTHING",
            )?
            .execute(rusqlite::params![name, bytes])?;
            Ok(())
        })
    }

    /// A picture's bytes, if it is here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn picture(&self, name: &str) -> Result<Option<Vec<u8>>, StoreError> {
        self.read(|conn| {
            Ok(conn
                .prepare_cached("SELECT bytes FROM pictures WHERE name = ?1")?
                .query_row([name], |row| row.get(0))
                .optional()?)
        })
    }
}
