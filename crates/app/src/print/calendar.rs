//! Planned sessions as iCalendar (RFC 5545), for any calendar.
//!
//! Times are floating (section 3.3.5, form 1): half past six stays half past six where she is, also when the clocks change
//! or she travels, and no time zone has to be known. What a calendar shows is often shared or kept by others, so an event
//! says the session's title and nothing of her health.

use super::Press;
use crate::error::{AppError, Refusal};
use chrono::{DateTime, Datelike, Days, Duration, FixedOffset, NaiveDate, NaiveTime, Utc, Weekday};
use icalendar::{Calendar, CalendarDateTime, Component, Event, EventLike};
use newel_engine::flow::planned_minutes;
use newel_engine::programme::Programme;
use newel_engine::weeks::turns;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

/// When sessions are planned.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct CalendarForm {
    /// The first day that may have one.
    pub from: NaiveDate,
    /// Days of the week: 1 for Monday to 7 for Sunday (ISO 8601).
    pub days: Vec<u8>,
    /// The local time at which they begin.
    pub at: NaiveTime,
    /// For how many weeks, where the programme leaves it open.
    pub weeks: u8,
}

/// So many weeks go into one file at most.
const MOST_WEEKS: u8 = 52;

impl Press<'_> {
    /// The sessions of a programme in turn, one on each of the days.
    pub(super) fn calendar(
        &self,
        programme: &Programme,
        form: &CalendarForm,
        now: DateTime<FixedOffset>,
    ) -> Result<Vec<u8>, AppError> {
        let mut days: Vec<Weekday> = Vec::new();
        for day in &form.days {
            let day = Weekday::try_from(day.wrapping_sub(1)).map_err(|_| Refusal::OutOfRange)?;
            if !days.contains(&day) {
                days.push(day);
            }
        }
        if days.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        let weeks = programme.weeks.unwrap_or(form.weeks);
        if weeks == 0 || weeks > MOST_WEEKS || programme.sessions.is_empty() {
            return Err(Refusal::OutOfRange.into());
        }
        let mut calendar = Calendar::new();
        calendar.name(&programme.title);
        let mut turns = turns(programme).map(|(_, session)| session);
        let on = (0..u64::from(weeks) * 7).filter_map(|n| form.from.checked_add_days(Days::new(n)));
        for (n, day) in on.filter(|d| days.contains(&d.weekday())).enumerate() {
            let Some(session) = turns.next() else { break };
            let minutes = session
                .minutes
                .unwrap_or_else(|| planned_minutes(&self.books.catalogue, &self.books.rules, &session));
            let begins = day.and_time(form.at);
            let ends = begins + Duration::minutes(i64::from(minutes));
            // The same session of the same plan keeps its id, so that a file that is read again moves it and adds none.
            let uid = Uuid::new_v5(&programme.id.0, format!("{}/{n}", form.from).as_bytes());
            calendar.push(
                Event::new()
                    .uid(&format!("{uid}@newel"))
                    .timestamp(now.with_timezone(&Utc))
                    .sequence(programme.revision)
                    .summary(&session.title)
                    .description(&programme.title)
                    .starts(CalendarDateTime::Floating(begins))
                    .ends(CalendarDateTime::Floating(ends))
                    .done(),
            );
        }
        Ok(calendar.done().to_string().into_bytes())
    }
}
