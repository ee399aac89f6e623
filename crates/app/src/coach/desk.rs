//! The Desk: who waits for the coach, and why.

use super::overview::Overview;
use crate::error::AppError;
use crate::profile::Profile;
use crate::views::{DeskEntry, DeskView};
use chrono::{DateTime, Duration, FixedOffset};
use newel_engine::ids::PersonId;

impl Profile {
    /// The Desk.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn desk_view(&mut self, now: DateTime<FixedOffset>) -> Result<DeskView, AppError> {
        self.coach_only()?;
        let day = now.date_naive();
        let (mut queue, mut well) = (Vec::new(), Vec::new());
        let overview = Overview::of(self)?;
        let mut people = self.everybody()?;
        people.retain(|p| !overview.archived.contains(p));
        let lately = |p: &PersonId| overview.taken_in(*p).is_some_and(|t| now - t < Duration::hours(24));
        let taken_in = u32::try_from(people.iter().filter(|p| lately(p)).count()).unwrap_or(u32::MAX);
        let looked = self.look(&overview, &people, day)?;
        for person in looked.people {
            let glance = self.glances.of(person)?;
            let entry = DeskEntry {
                person,
                name: glance.entry.name.clone(),
                stage: glance.entry.stage,
                last_session: glance.entry.last_session,
                findings: glance.findings.clone(),
            };
            if entry.findings.is_empty() { well.push(entry) } else { queue.push(entry) }
        }
        // Most urgent first; among equals the one with more to see, then by name.
        queue.sort_by(|a, b| {
            let urge = |e: &DeskEntry| e.findings.iter().map(|f| f.urge).min();
            urge(a).cmp(&urge(b)).then(b.findings.len().cmp(&a.findings.len())).then(a.name.cmp(&b.name))
        });
        well.sort_by_key(|e| e.name.to_lowercase());
        Ok(DeskView { queue, well, unread: looked.unread, taken_in })
    }
}
