//! Settings: local to this profile, no part of the log, never sent.

use crate::{Store, StoreError};
use rusqlite::OptionalExtension as _;
use std::collections::BTreeMap;

impl Store {
    /// A setting, if it was ever set.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn setting(&self, key: &str) -> Result<Option<String>, StoreError> {
        self.read(|conn| {
            Ok(conn
                .prepare_cached("SELECT value FROM settings WHERE key = ?1")?
                .query_row([key], |row| row.get(0))
                .optional()?)
        })
    }

    /// Every setting whose key begins so, by the rest of its key.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn settings_of(&self, beginning: &str) -> Result<BTreeMap<String, String>, StoreError> {
        self.read(|conn| {
            let mut rows = conn.prepare_cached(
                "SELECT substr(key, length(?1) + 1), value FROM settings WHERE substr(key, 1, length(?1)) = ?1",
            )?;
            let found = rows.query_map([beginning], |row| Ok((row.get(0)?, row.get(1)?)))?;
            Ok(found.collect::<Result<_, _>>()?)
        })
    }

    /// Sets a setting.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn set_setting(&mut self, key: &str, value: &str) -> Result<(), StoreError> {
        self.change(|tx| {
            tx.prepare_cached(
                "INSERT INTO settings (key, value) VALUES (?1, ?2)
                 ON CONFLICT (key) DO UPDATE SET value = excluded.value",
            )?
            .execute([key, value])?;
            Ok(())
        })
    }

    /// Sets several settings at once, or forgets those without a value: all of them or none.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn change_settings(&mut self, settings: &[(String, Option<String>)]) -> Result<(), StoreError> {
        self.change(|tx| {
            for (key, value) in settings {
                tx.execute("DELETE FROM settings WHERE key = ?1", [key])?;
                if let Some(value) = value {
                    tx.execute("INSERT INTO settings (key, value) VALUES (?1, ?2)", [key, value])?;
                }
            }
            Ok(())
        })
    }

    /// Forgets a setting; it may never have been set.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn clear_setting(&mut self, key: &str) -> Result<(), StoreError> {
        self.change(|tx| {
            tx.execute("DELETE FROM settings WHERE key = ?1", [key])?;
            Ok(())
        })
    }
}
