//! How a client's strength came to be what it is, set by set, from a plan file and a log file.

use crate::error::AppError;
use crate::newel::Books;
use crate::outside::known_from;
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::state::StrengthTrace;
use std::path::Path;
use std::sync::Arc;

/// What moved the strength of one client, and whose it is.
#[derive(Clone, Debug, PartialEq)]
pub struct Strength {
    /// Whose.
    pub name: String,
    /// Title of the programme in force, if there is one.
    pub programme: Option<String>,
    /// Set by set.
    pub trace: StrengthTrace,
    /// What is the coach's own.
    pub own: Arc<OwnCatalogue>,
}

/// Every set that moved strength, with the state after it, from a plan file and a log file of the same person.
///
/// # Errors
/// When a file cannot be used, or the two are not about the same person.
pub fn strength(books: &Books, plan: &Path, log: &Path) -> Result<Strength, AppError> {
    let (name, known) = known_from(books, plan, log)?;
    let plan = known.plan.as_ref();
    Ok(Strength {
        name,
        programme: plan.map(|p| p.programme.title.clone()),
        trace: StrengthTrace::of(known.history(), &known.books.catalogue, &books.rules, known.starts()),
        own: Arc::clone(&known.books.own),
    })
}
