//! Erasure: all streams of a person, never single records.

use crate::open::{own_device, rename};
use crate::{Store, StoreError};
use newel_engine::ids::PersonId;

impl Store {
    /// Erases everything that the log holds about a person, overwritten and not only unlinked.
    /// Returns how many records went.
    ///
    /// If this profile had written about her, it takes a new device name: under the old one it would
    /// begin a second stream about her, which her own device could not tell from the first.
    ///
    /// # Errors
    /// What SQLite or the file system says.
    pub fn erase_person(&mut self, person: PersonId) -> Result<u64, StoreError> {
        let mut ids = self.ids.clone();
        let (gone, renamed) = self.change(|tx| {
            let who = person.to_string();
            let own = own_device(tx)?.to_string();
            let wrote = tx
                .prepare("SELECT 1 FROM streams WHERE device = ?1 AND person = ?2")?
                .exists([&own, &who])?;
            let gone =
                tx.query_row("SELECT count(*) FROM records WHERE person = ?1", [&who], |row| row.get(0))?;
            // Records and projections hang on their stream and go with it.
            tx.execute("DELETE FROM streams WHERE person = ?1", [&who])?;
            for table in ["group_members", "archived", "last_sent"] {
                tx.execute(&format!("DELETE FROM {table} WHERE person = ?1"), [&who])?;
            }
            let renamed = if wrote { Some(rename(tx, &mut ids)?) } else { None };
            Ok((gone, renamed))
        })?;
        self.ids = ids;
        if let Some(instance) = renamed {
            self.mark(&instance)?;
        }
        // The write-ahead log still bears the old pages: it is emptied into the database and cut to nothing.
        self.read(|conn| Ok(conn.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?))?;
        Ok(gone)
    }
}
