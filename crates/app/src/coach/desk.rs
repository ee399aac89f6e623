//! The Desk: who waits for the coach, and why.

use super::client_name;
use super::overview::Overview;
use crate::error::AppError;
use crate::profile::Profile;
use crate::views::{DeskEntry, DeskView};
use chrono::{DateTime, Duration, FixedOffset};

impl Profile {
    /// The Desk.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn desk_view(&mut self, now: DateTime<FixedOffset>) -> Result<DeskView, AppError> {
        self.coach_only()?;
        let day = now.date_naive();
        let (mut queue, mut well) = (Vec::new(), Vec::new());
        let mut taken_in = 0;
        let overview = Overview::of(self)?;
        for person in self.everybody()?.into_iter().filter(|p| !overview.archived.contains(p)) {
            if overview.taken_in(person).is_some_and(|t| now - t < Duration::hours(24)) {
                taken_in += 1;
            }
            let findings = self.standing(&overview, person, day)?.findings.clone();
            let history = self.known_before(person)?.history();
            let entry = DeskEntry {
                person,
                name: client_name(history),
                stage: history.stage().map(|s| s.on(day)),
                last_session: history.runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
                findings,
            };
            if entry.findings.is_empty() { well.push(entry) } else { queue.push(entry) }
        }
        // Most urgent first; among equals the one with more to see, then by name.
        queue.sort_by(|a, b| {
            let urge = |e: &DeskEntry| e.findings.iter().map(|f| f.urge).min();
            urge(a).cmp(&urge(b)).then(b.findings.len().cmp(&a.findings.len())).then(a.name.cmp(&b.name))
        });
        well.sort_by_key(|e| e.name.to_lowercase());
        Ok(DeskView { queue, well, taken_in })
    }
}
