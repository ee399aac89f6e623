//! What a coach is writing: each step is kept whole, durably, at once. Undoing and redoing move between steps; writing after
//! an undo leaves out what was undone.

use crate::{Store, StoreError};
use chrono::{DateTime, FixedOffset};
use rusqlite::{OptionalExtension as _, params};

/// A draft as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DraftRow {
    /// Its id.
    pub draft: String,
    /// Its text at the step that stands.
    pub text: String,
    /// That step, from 0.
    pub step: u64,
    /// The last step there is.
    pub last: u64,
    /// How often it was written on; never goes back.
    pub edits: u64,
    /// True once it was put away.
    pub away: bool,
}

impl Store {
    /// All drafts, in the order in which they were begun.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn drafts(&self) -> Result<Vec<DraftRow>, StoreError> {
        self.read(|conn| {
            let mut rows = conn.prepare_cached(
                "SELECT d.draft, s.text, d.step, (SELECT max(step) FROM draft_steps l WHERE l.draft = d.draft), d.edits,
                        d.away
                 FROM drafts d JOIN draft_steps s ON s.draft = d.draft AND s.step = d.step
                 ORDER BY (SELECT at_ms FROM draft_steps f WHERE f.draft = d.draft AND f.step = 0), d.draft",
            )?;
            let found = rows.query_map([], |row| {
                Ok(DraftRow {
                    draft: row.get(0)?,
                    text: row.get(1)?,
                    step: row.get(2)?,
                    last: row.get(3)?,
                    edits: row.get(4)?,
                    away: row.get(5)?,
                })
            })?;
            Ok(found.collect::<Result<Vec<_>, _>>()?)
        })
    }

    /// Begins a draft with its first text.
    ///
    /// # Errors
    /// What SQLite says; a draft of that id that is there already.
    pub fn draft_begin(
        &mut self,
        draft: &str,
        text: &str,
        at: DateTime<FixedOffset>,
    ) -> Result<(), StoreError> {
        self.change(|tx| {
            tx.execute("INSERT INTO drafts (draft, step, edits, away) VALUES (?1, 0, 0, 0)", [draft])?;
            tx.execute(
                "INSERT INTO draft_steps (draft, step, at_ms, text) VALUES (?1, 0, ?2, ?3)",
                params![draft, at.timestamp_millis(), text],
            )?;
            Ok(())
        })
    }

    /// Writes the next step after the one that stands; what was undone before it goes. False if there is no such draft.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn draft_write(
        &mut self,
        draft: &str,
        text: &str,
        at: DateTime<FixedOffset>,
    ) -> Result<bool, StoreError> {
        self.change(|tx| {
            let step: Option<u64> = tx
                .query_row("SELECT step FROM drafts WHERE draft = ?1", [draft], |row| row.get(0))
                .optional()?;
            let Some(step) = step else { return Ok(false) };
            tx.execute("DELETE FROM draft_steps WHERE draft = ?1 AND step > ?2", params![draft, step])?;
            tx.execute(
                "INSERT INTO draft_steps (draft, step, at_ms, text) VALUES (?1, ?2, ?3, ?4)",
                params![draft, step + 1, at.timestamp_millis(), text],
            )?;
            tx.execute(
                "UPDATE drafts SET step = ?2, edits = edits + 1 WHERE draft = ?1",
                params![draft, step + 1],
            )?;
            Ok(true)
        })
    }

    /// Goes a step back, or forward again. False where there is none, or no such draft.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn draft_turn(&mut self, draft: &str, back: bool) -> Result<bool, StoreError> {
        self.change(|tx| {
            let changed = tx.execute(
                "UPDATE drafts SET step = step + ?2, edits = edits + 1
                 WHERE draft = ?1 AND EXISTS (
                     SELECT 1 FROM draft_steps s WHERE s.draft = drafts.draft AND s.step = drafts.step + ?2)",
                params![draft, if back { -1 } else { 1 }],
            )?;
            Ok(changed == 1)
        })
    }

    /// Puts a draft away, or takes it out again. False if there is no such draft.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn draft_away(&mut self, draft: &str, away: bool) -> Result<bool, StoreError> {
        self.change(|tx| {
            Ok(tx.execute("UPDATE drafts SET away = ?2 WHERE draft = ?1", params![draft, away])? == 1)
        })
    }
}
