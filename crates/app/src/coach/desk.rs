//! The Desk: who waits for the coach, and why.

use super::client_name;
use crate::error::AppError;
use crate::profile::{Known, Profile};
use crate::views::{DeskEntry, DeskView, FindingView, Urge};
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::ids::{PersonId, ProgrammeId};
use newel_engine::programme::Programme;
use newel_engine::review;
use uuid::Uuid;

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
        for person in self.clients()? {
            let at = self.store.setting(&format!("taken-in.{person}"))?;
            let at = at.and_then(|t| DateTime::parse_from_rfc3339(&t).ok());
            if at.is_some_and(|t| now - t < Duration::hours(24)) {
                taken_in += 1;
            }
            let known = self.client(person)?;
            let findings = self.findings(person, &known, day)?;
            let entry = DeskEntry {
                person,
                name: client_name(known.history()),
                stage: known.history().stage().map(|s| s.on(day)),
                last_session: known.history().runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
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

    pub(super) fn findings(
        &self,
        person: PersonId,
        known: &Known,
        day: NaiveDate,
    ) -> Result<Vec<FindingView>, AppError> {
        // Before a programme was given safety still has its say.
        let none = no_programme();
        let programme = known.plan.as_ref().map_or(&none, |p| &p.programme);
        let mut found: Vec<FindingView> = review::findings(&known.bench_for(programme, day, None))
            .into_iter()
            .map(|f| FindingView {
                code: f.code.to_owned(),
                urge: match f.urge {
                    review::Urge::Stop => Urge::Stop,
                    review::Urge::Attention => Urge::Attention,
                    review::Urge::Look => Urge::Look,
                },
                facts: f.facts,
            })
            .collect();
        let missing: u64 = self.store.stream_heads(person)?.iter().filter(|h| h.beyond > 0).count() as u64;
        if missing > 0 {
            let mut facts = std::collections::BTreeMap::new();
            let count = u32::try_from(missing).unwrap_or(u32::MAX);
            facts.insert("count".to_owned(), newel_engine::reason::Fact::Number(f64::from(count)));
            found.push(FindingView { code: "gap".to_owned(), urge: Urge::Look, facts });
        }
        found.sort_by_key(|f| f.urge);
        Ok(found)
    }
}

fn no_programme() -> Programme {
    Programme {
        id: ProgrammeId(Uuid::nil()),
        revision: 0,
        title: String::new(),
        per_week: 0,
        weeks: None,
        sessions: Vec::new(),
    }
}
