//! Use cases over files and databases that no profile of the window holds: for the command line.

use crate::error::{AppError, Refusal};
use crate::newel::{Books, set_up};
use crate::profile::{Known, Plan, Profile, newest_first, plans_in};
use crate::views::{FileReport, Role};
use crate::words::Words;
use chrono::{DateTime, FixedOffset, NaiveDate};
use fluent_bundle::FluentArgs;
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::ids::PersonId;
use newel_engine::proposal::SessionProposal;
use newel_engine::record::Record;
use newel_engine::weeks::next_session;
use newel_exchange::{Document, LogDocument, PlanDocument, ReadError};
use newel_store::{Finding, Store};
use std::io::Read as _;
use std::path::Path;
use std::sync::Arc;
use uuid::Uuid;

/// How a SQLite database begins (SQLite file format, "Magic Header String").
const SQLITE: &[u8] = b"SQLite format 3\0";

/// A session worked out from a plan file and a log file.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposed {
    /// Whose.
    pub name: String,
    /// Title of the programme.
    pub programme: String,
    /// Title of the session.
    pub session: String,
    /// The proposal.
    pub proposal: SessionProposal,
    /// What is the coach's own.
    pub own: Arc<OwnCatalogue>,
}

/// What a check found.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// `plan`, `log` or `database`.
    pub kind: &'static str,
    /// Records looked at.
    pub records: u64,
    /// Records that have not arrived yet; no damage.
    pub missing: u64,
    /// What is damaged, each kind once.
    pub damage: Vec<Damage>,
}

/// A kind of damage that a check found.
#[derive(Clone, Debug, PartialEq)]
pub struct Damage {
    /// The id of its sentence.
    pub code: String,
    /// Its sentence.
    pub message: String,
    /// How often.
    pub times: u32,
}

impl Checked {
    fn count(&mut self, code: String, what: &str) {
        match self.damage.iter_mut().find(|d| d.code == code) {
            Some(damage) => damage.times += 1,
            None => {
                let mut args = FluentArgs::new();
                args.set("what", what.to_owned());
                let message = Words::english().say_with(&code, &args).unwrap_or_else(|| code.clone());
                self.damage.push(Damage { code, message, times: 1 });
            }
        }
    }
}

/// Reads a file and whatever stands in it.
///
/// # Errors
/// When it cannot be read or is none of ours.
pub fn read_file(path: &Path) -> Result<Document, AppError> {
    Ok(newel_exchange::read(&newel_exchange::read_whole(path)?)?)
}

/// The next session of a plan file for somebody with a log file.
///
/// # Errors
/// When a file cannot be used, or the two are not about the same person.
pub fn propose(books: &Books, plan: &Path, log: &Path, on: NaiveDate) -> Result<Proposed, AppError> {
    let (name, known) = known_from(books, plan, log)?;
    let known = known.on(on);
    let in_force = known.plan.as_ref().ok_or(Refusal::NoPlan)?;
    let bench = known.bench(on, None).ok_or(Refusal::NoPlan)?;
    let session = next_session(known.history(), &in_force.programme).ok_or(Refusal::NoPlan)?;
    Ok(Proposed {
        name,
        programme: in_force.programme.title.clone(),
        session: session.title.clone(),
        proposal: bench.propose(&session),
        own: Arc::clone(&known.books.own),
    })
}

/// What a plan file and a log file of the same person come to, and her name.
pub(crate) fn known_from(books: &Books, plan: &Path, log: &Path) -> Result<(String, Known), AppError> {
    let plan = newel_exchange::read_plan(&newel_exchange::read_whole(plan)?)?;
    let log = newel_exchange::read_log(&newel_exchange::read_whole(log)?)?;
    if plan.person != log.person {
        return Err(Refusal::PlanForSomebodyElse.into());
    }
    let known = known_with(books, &plan, &log)?;
    Ok((log.name, known))
}

/// What a device that has both files would know: the union of their records, and the newer plan.
pub(crate) fn known_with(books: &Books, plan: &PlanDocument, log: &LogDocument) -> Result<Known, AppError> {
    let mut lines: Vec<&String> = plan.lines.iter().chain(&log.lines).collect();
    lines.sort_unstable();
    lines.dedup();
    let mut records: Vec<Record> = Vec::new();
    for line in lines {
        let record = Record::parse(line).map_err(|e| ReadError::Malformed {
            detail: format!("line {}, column {}", e.line(), e.column()),
        })?;
        records.push(record);
    }
    let mut plans = plans_in(&records);
    plans.reverse();
    let given = plan.programme.as_ref().map(|programme| Plan {
        coach: plan.coach_name.clone(),
        sequence: plan.sequence,
        programme: programme.clone(),
        starts: plan.starts.clone(),
        words: plan.words.clone(),
        made: plan.made_at.date_naive(),
        begins: plan.begins,
        own: plan.own.clone(),
    });
    plans.extend(given);
    newest_first(&mut plans);
    if let Some(newest) = plans.first() {
        let catalogue = books.laid(&newest.own.clone().unwrap_or_default());
        newest.programme.check(&catalogue).map_err(|_| Refusal::UnusableProgramme)?;
    }
    Ok(Known::by(books, plans, records))
}

/// Checks a plan file, a log file or a database; changes nothing.
///
/// # Errors
/// When it cannot be read, or is none of ours.
pub fn check(books: &Books, path: &Path) -> Result<Checked, AppError> {
    if is_database(path) {
        let findings = Store::open_read_only(path)?.check()?;
        let mut checked =
            Checked { kind: "database", records: findings.records, missing: 0, damage: Vec::new() };
        for finding in &findings.findings {
            let what = match finding {
                Finding::Gap { from, to, .. } => {
                    checked.missing += to - from + 1;
                    continue;
                }
                Finding::Damage { what } => what.as_str(),
                Finding::Dangling { .. }
                | Finding::Unreadable { .. }
                | Finding::Altered { .. }
                | Finding::BrokenChain { .. }
                | Finding::Projection { .. } => "",
            };
            checked.count(format!("check-{}", finding.code()), what);
        }
        return Ok(checked);
    }
    let document = read_file(path)?;
    let kind = match &document {
        Document::Log(_) => "log",
        Document::Plan(plan) => {
            if let Some(programme) = &plan.programme {
                let catalogue = books.laid(&plan.own.clone().unwrap_or_default());
                programme.check(&catalogue).map_err(|_| Refusal::UnusableProgramme)?;
            }
            "plan"
        }
    };
    // Chain, numbers and ids, as an empty log would judge them.
    let plan = Store::open_in_memory()?.plan_take_in(document.person(), document.lines())?;
    let mut checked = Checked {
        kind,
        records: document.lines().len() as u64,
        missing: plan.gaps.iter().map(|g| g.to - g.from + 1).sum(),
        damage: Vec::new(),
    };
    for refused in &plan.refused {
        checked.count(format!("take-in-refused-{}", refused.why.code()), "");
    }
    Ok(checked)
}

fn is_database(path: &Path) -> bool {
    let mut start = [0; 16];
    std::fs::File::open(path).and_then(|mut f| f.read_exact(&mut start)).is_ok() && start == SQLITE
}

impl Profile {
    /// Opens the database of a profile at a path, to read it and no more.
    ///
    /// # Errors
    /// When there is none, or it cannot be opened.
    pub fn open_to_read(path: &Path, books: &Arc<Books>) -> Result<Self, AppError> {
        Self::of(Store::open_read_only(path)?, String::new(), Arc::clone(books))
    }

    /// Opens a coach's database at a path; where there is none it is made.
    ///
    /// # Errors
    /// When it cannot be opened or made, or is a client's.
    pub fn open_or_make_coach(
        path: &Path,
        books: &Arc<Books>,
        now: DateTime<FixedOffset>,
    ) -> Result<Self, AppError> {
        if !path.exists() {
            let mut store = Store::open(path)?;
            set_up(&mut store, "Coach", Role::Coach, PersonId(Uuid::now_v7()), now)?;
        }
        let profile = Self::of(Store::open(path)?, String::new(), Arc::clone(books))?;
        if profile.role() == Role::Coach { Ok(profile) } else { Err(Refusal::CoachOnly.into()) }
    }

    /// As [`Profile::take_in_one`], of a file on the disk.
    pub fn take_in_path(&mut self, path: &Path, now: DateTime<FixedOffset>) -> FileReport {
        let name = path.display().to_string();
        match newel_exchange::read_whole(path) {
            Ok(bytes) => self.take_in_one(&name, &bytes, now),
            Err(error) => FileReport {
                file: name,
                person: None,
                kind: None,
                new: 0,
                known: 0,
                gaps: Vec::new(),
                refused: vec![AppError::from(error).view()],
                archived: false,
            },
        }
    }
}
