//! What goes onto paper: documents made from a programme, a client's log and the words of a language.

mod booklet;
mod calendar;
mod class;
mod handout;
mod letter;
mod parts;
mod rows;

pub use calendar::CalendarForm;

use crate::coach::client_name;
use crate::error::{AppError, Refusal};
use crate::files::slug;
use crate::newel::Books;
use crate::outside::known_from;
use crate::profile::{Known, Profile};
use crate::views::{ClassForm, WrittenView};
use crate::words::Words;
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{PersonId, PlanSessionId, ProgrammeId};
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::weeks::{next_session, planned_session};
use newel_paper::{Document, Page};
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};
use ts_rs::TS;

/// What is asked to be printed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "print", rename_all = "snake_case")]
#[ts(export)]
pub enum PrintWhat {
    /// A session with every option, for anybody.
    Handout {
        /// Programme.
        programme: ProgrammeId,
        /// Session.
        session: PlanSessionId,
    },
    /// A client's session: the one given, or the one that comes next for her.
    HandoutFor {
        /// Client.
        person: PersonId,
        /// Session of her programme; the next one if absent.
        session: Option<PlanSessionId>,
    },
    /// A whole programme.
    Booklet {
        /// Programme.
        programme: ProgrammeId,
    },
    /// Who does what in a session that several train together.
    Class {
        /// Which session, and whose.
        class: ClassForm,
    },
    /// A client's log for a spreadsheet.
    Rows {
        /// Client.
        person: PersonId,
    },
    /// The sessions of a programme for a calendar.
    Calendar {
        /// Programme.
        programme: ProgrammeId,
        /// When.
        calendar: CalendarForm,
    },
    /// Facts for a clinician.
    Letter {
        /// Client.
        person: PersonId,
        /// What the letter says besides.
        letter: LetterForm,
    },
}

/// What the coach fills in for a letter.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct LetterForm {
    /// Whom it goes to, line by line.
    pub to: String,
    /// The question.
    pub question: String,
    /// The day on which the client agreed that it goes out.
    pub agreed: Option<NaiveDate>,
}

/// How it is printed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct PrintForm {
    /// What.
    pub what: PrintWhat,
    /// Tag of the language.
    pub language: String,
    /// True for US Letter, false for A4.
    pub us_letter: bool,
}

/// A file that was made, not yet written.
#[derive(Clone, Debug)]
pub struct PrintedFile {
    /// A name for it.
    pub name: String,
    /// PDF, CSV or iCalendar.
    pub bytes: Vec<u8>,
    /// Pages; 0 for what has none.
    pub pages: usize,
}

/// What was written, and of what size.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct PrintedView {
    /// The file.
    pub written: WrittenView,
    /// Pages.
    pub pages: u32,
}

/// A press: the books, the words and the day that a document is made by.
pub(crate) struct Press<'a> {
    pub(crate) books: &'a Books,
    pub(crate) words: Words,
    pub(crate) day: NaiveDate,
    /// The coach's name, or the client's own.
    pub(crate) author: String,
}

impl<'a> Press<'a> {
    pub(crate) fn of(
        books: &'a Books,
        language: &str,
        day: NaiveDate,
        author: String,
    ) -> Result<Self, AppError> {
        let words = Words::of(language).ok_or(Refusal::NoSuchThing)?.knowing(&books.own);
        Ok(Self { books, words, day, author })
    }

    fn session(
        known: &Known,
        programme: &Programme,
        session: Option<&PlanSessionId>,
    ) -> Result<PlanSession, AppError> {
        let history = known.history();
        match session {
            Some(id) => {
                planned_session(history, programme, id, None).ok_or_else(|| Refusal::NoSuchThing.into())
            }
            None => next_session(history, programme).ok_or_else(|| Refusal::NoPlan.into()),
        }
    }
}

fn printed(document: &Document, us_letter: bool, name: &str) -> Result<PrintedFile, AppError> {
    let page = if us_letter { Page::Letter } else { Page::A4 };
    let done = newel_paper::pdf(document, page).map_err(|error| {
        tracing::error!(%error, "a template is at fault");
        AppError::Internal
    })?;
    Ok(PrintedFile { name: format!("{}.pdf", slug(name)), bytes: done.bytes, pages: done.pages })
}

impl Profile {
    /// Makes a document as PDF. A handout for a client is only made while she trains; a letter only once she has agreed.
    ///
    /// # Errors
    /// When there is no such programme, session or client, training is closed for her, or she has not agreed.
    pub fn print(&mut self, now: DateTime<FixedOffset>, form: &PrintForm) -> Result<PrintedFile, AppError> {
        self.coach_only()?;
        let books = self.books();
        let day = now.date_naive();
        let press = Press::of(&books, &form.language, day, self.name()?)?;
        let plain = |name: &str, kind: &str, bytes: Vec<u8>| {
            Ok(PrintedFile { name: format!("{}.{kind}", slug(name)), bytes, pages: 0 })
        };
        let (document, name) = match &form.what {
            PrintWhat::Rows { person } => {
                let known = self.client(*person)?;
                return plain(&client_name(known.history()), "csv", press.rows(&known));
            }
            PrintWhat::Calendar { programme, calendar } => {
                let programme = self.programme(*programme)?;
                return plain(&programme.title, "ics", press.calendar(&programme, calendar, now)?);
            }
            PrintWhat::Handout { programme, session } => {
                let programme = self.programme(*programme)?;
                let session = programme.session(session).ok_or(Refusal::NoSuchThing)?;
                (press.handout(&programme, session), format!("{}-{}", programme.title, session.title))
            }
            PrintWhat::HandoutFor { person, session } => {
                let known = self.client(*person)?;
                press.handout_of(&known, session.as_ref())?
            }
            PrintWhat::Booklet { programme } => {
                let programme = self.programme(*programme)?;
                if programme.check(&books.catalogue).is_err() {
                    return Err(Refusal::UnusableProgramme.into());
                }
                (press.booklet(&programme), programme.title)
            }
            PrintWhat::Class { class } => press.class(&self.class_view(now, class)?),
            PrintWhat::Letter { person, letter } => {
                let known = self.client(*person)?;
                press.letter_of(&known, letter)?
            }
        };
        printed(&document, form.us_letter, &name)
    }

    /// Makes a document and writes it, whole or not at all.
    ///
    /// # Errors
    /// As [`Profile::print`], and when the disk refuses.
    pub fn print_write(
        &mut self,
        folder: &Path,
        path: Option<PathBuf>,
        now: DateTime<FixedOffset>,
        form: &PrintForm,
    ) -> Result<PrintedView, AppError> {
        let file = self.print(now, form)?;
        let path = path.unwrap_or_else(|| folder.join(&file.name));
        let written = crate::files::put(&path, &file.bytes, 0)?;
        Ok(PrintedView { written, pages: u32::try_from(file.pages).unwrap_or(u32::MAX) })
    }
}

/// What is made from a plan file and a log file, without any database.
#[derive(Clone, Debug, PartialEq)]
pub enum OfFiles {
    /// Her next session.
    Handout,
    /// A letter.
    Letter(LetterForm),
    /// Her log as CSV.
    Rows,
    /// Her sessions as iCalendar.
    Calendar(CalendarForm),
}

/// A client's papers from a plan file and a log file.
///
/// # Errors
/// As [`Profile::print`], and when a file cannot be used.
pub fn print_files(
    books: &Books,
    (plan, log): (&Path, &Path),
    now: DateTime<FixedOffset>,
    language: &str,
    us_letter: bool,
    what: &OfFiles,
) -> Result<PrintedFile, AppError> {
    let (name, known) = known_from(books, plan, log)?;
    let coach = known.plan.as_ref().map_or_else(String::new, |p| p.coach.clone());
    let press = Press::of(&known.books, language, now.date_naive(), coach)?;
    let plain = |kind: &str, bytes| PrintedFile { name: format!("{}.{kind}", slug(&name)), bytes, pages: 0 };
    let (document, name) = match what {
        OfFiles::Handout => press.handout_of(&known, None)?,
        OfFiles::Letter(letter) => press.letter_of(&known, letter)?,
        OfFiles::Rows => return Ok(plain("csv", press.rows(&known))),
        OfFiles::Calendar(form) => {
            // Of what is in force on its first day.
            let programme = &known.on(form.from).plan.as_ref().ok_or(Refusal::NoPlan)?.programme;
            return Ok(plain("ics", press.calendar(programme, form, now)?));
        }
    };
    printed(&document, us_letter, &name)
}

/// A handout or a booklet of a programme, for anybody.
///
/// # Errors
/// When there is no such session.
pub fn print_programme(
    books: &Books,
    programme: &Programme,
    session: Option<&str>,
    now: DateTime<FixedOffset>,
    language: &str,
    us_letter: bool,
) -> Result<PrintedFile, AppError> {
    let press = Press::of(books, language, now.date_naive(), String::new())?;
    let (document, name) = match session {
        Some(title) => {
            let by_name = |s: &&PlanSession| s.title == title || s.id.to_string() == title;
            let session = programme.sessions.iter().find(by_name).ok_or(Refusal::NoSuchThing)?;
            (press.handout(programme, session), format!("{}-{}", programme.title, session.title))
        }
        None => (press.booklet(programme), programme.title.clone()),
    };
    printed(&document, us_letter, &name)
}
