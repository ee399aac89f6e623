//! The coach's side: Roster, Desk, one client's story, answers and plan files.

mod advice;
mod answers;
mod class;
mod desk;
mod glance;
mod groups;
mod overview;
mod own;
mod plans;
mod programmes;
mod receipt;
mod revision;
mod rooms;
mod roster;
mod words;

pub(crate) use glance::Glances;
pub(crate) use overview::TAKEN_IN;
pub use receipt::Whom;

use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Plan, Profile};
use crate::views::Role;
use chrono::NaiveDate;
use newel_engine::history::History;
use newel_engine::ids::PersonId;
use newel_engine::programme::Programme;

/// Programmes that are built in.
const PROGRAMMES_JSON: &str = include_str!("../data/programmes.json");

/// The programmes that are built in.
///
/// # Errors
/// When the embedded data is broken; a test holds that it is not.
pub fn built_in_programmes(books: &Books) -> Result<Vec<Programme>, AppError> {
    let programmes: Vec<Programme> = serde_json::from_str(PROGRAMMES_JSON).map_err(|_| AppError::Internal)?;
    for programme in &programmes {
        programme.check(&books.catalogue).map_err(|_| AppError::Internal)?;
    }
    Ok(programmes)
}

pub(crate) fn checked_text(text: &str) -> Result<String, AppError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Refusal::NameMissing.into());
    }
    if text.chars().count() > 4000 {
        return Err(Refusal::OutOfRange.into());
    }
    Ok(text.to_owned())
}

impl Profile {
    pub(crate) fn coach_only(&self) -> Result<(), AppError> {
        if self.role() == Role::Coach { Ok(()) } else { Err(Refusal::CoachOnly.into()) }
    }

    /// The programme that the coach gave a client and that her log does not hold yet.
    fn given(&self, person: PersonId) -> Result<Option<Programme>, AppError> {
        Ok(overview::Overview::of(self)?.given(person).map(|w| w.programme.clone()))
    }

    /// What is known of a client, with the programme that was given where her log holds none.
    pub(crate) fn client(&mut self, person: PersonId) -> Result<Known, AppError> {
        let given = self.given(person)?;
        let coach = self.name()?;
        let mut known = self.known(person)?.clone();
        if known.records.is_empty() {
            return Err(Refusal::NoSuchThing.into());
        }
        if known.plan.is_none() {
            known.plan = given.map(|programme| Plan {
                coach,
                sequence: 0,
                programme,
                starts: Vec::new(),
                words: Vec::new(),
                made: NaiveDate::MIN,
                begins: None,
                own: None,
            });
        }
        Ok(known)
    }
}

/// The name of a client: the latest that anybody wrote.
#[must_use]
pub fn client_name(history: &History) -> String {
    history.profiles.last().map_or_else(String::new, |p| p.what.name.clone())
}
