//! `print`.

use crate::{End, say};
use chrono::{NaiveDate, NaiveTime};
use clap::{Args, ValueEnum};
use newel_app::coach::built_in_programmes;
use newel_app::print::{
    CalendarForm, LetterForm, OfFiles, PrintForm, PrintWhat, PrintedFile, print_files, print_programme,
};
use newel_app::views::ClassForm;
use newel_app::{AppError, Books, Profile, Refusal};
use newel_engine::programme::Programme;
use std::path::PathBuf;

/// What is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Kind {
    /// A session: with every option, or one client's
    Handout,
    /// A whole programme
    Booklet,
    /// Who does what in a session that several train together
    Class,
    /// Facts for a clinician
    Letter,
    /// A client's log for a spreadsheet, as CSV
    Rows,
    /// The sessions of a programme for a calendar, as iCalendar
    Calendar,
}

/// The sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Sheet {
    /// 210 x 297 mm
    A4,
    /// 8.5 x 11 in
    Letter,
}

#[derive(Args)]
pub(crate) struct Call {
    /// What to print
    kind: Kind,
    /// The file to write
    #[arg(long)]
    out: PathBuf,
    /// A programme by its title; it is looked up among the coach's own and the built-in ones
    #[arg(long)]
    programme: Option<String>,
    /// A session by its title
    #[arg(long)]
    session: Option<String>,
    /// The coach's database
    #[arg(long)]
    db: Option<PathBuf>,
    /// A client of the database by her name
    #[arg(long, requires = "db")]
    client: Option<String>,
    /// A plan file, instead of a database
    #[arg(long, requires = "log", conflicts_with = "db")]
    plan: Option<PathBuf>,
    /// A log file of the same client
    #[arg(long, requires = "plan")]
    log: Option<PathBuf>,
    /// Whom a letter goes to; a comma begins a new line
    #[arg(long)]
    to: Option<String>,
    /// The question of a letter
    #[arg(long)]
    question: Option<String>,
    /// The day on which the client agreed that a letter goes out
    #[arg(long, value_name = "YYYY-MM-DD")]
    agreed: Option<NaiveDate>,
    /// Who comes to a class, by name; all clients if left out
    #[arg(long)]
    with: Vec<String>,
    /// The room of a class whose kit is at hand, by name; each client's own kit if left out
    #[arg(long)]
    room: Option<String>,
    /// The first day in a calendar
    #[arg(long, value_name = "YYYY-MM-DD")]
    from: Option<NaiveDate>,
    /// Days of the week in a calendar: 1 for Monday to 7 for Sunday
    #[arg(long, value_delimiter = ',', value_name = "N,N")]
    days: Vec<u8>,
    /// The local time of sessions in a calendar
    #[arg(long, value_name = "HH:MM", value_parser = clock)]
    at: Option<NaiveTime>,
    /// For how many weeks, where the programme leaves it open
    #[arg(long, default_value_t = 4)]
    weeks: u8,
    /// The day it is made for; today if left out
    #[arg(long, value_name = "YYYY-MM-DD")]
    on: Option<NaiveDate>,
    /// The language: en or es
    #[arg(long, default_value = "en")]
    language: String,
    /// The sheet
    #[arg(long, value_enum, default_value = "a4")]
    paper: Sheet,
}

pub(crate) fn print(call: &Call) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let file = made(&books, call)?;
    newel_app::files::write_file(&call.out, &file.bytes)?;
    let pages = match file.pages {
        0 => String::new(),
        1 => "1 page, ".to_owned(),
        n => format!("{n} pages, "),
    };
    say::line(&format!("{}: {pages}{} bytes", call.out.display(), file.bytes.len()));
    Ok(End::Sound)
}

fn made(books: &std::sync::Arc<Books>, call: &Call) -> Result<PrintedFile, AppError> {
    let now = call.on.map_or_else(say::now, say::morning);
    let us_letter = call.paper == Sheet::Letter;
    let letter = || LetterForm {
        to: call.to.as_deref().unwrap_or_default().split(',').map(str::trim).collect::<Vec<_>>().join("\n"),
        question: call.question.clone().unwrap_or_default(),
        agreed: call.agreed,
    };
    let calendar = || -> Result<CalendarForm, AppError> {
        let (from, at) = (call.from.ok_or(Refusal::NothingChosen)?, call.at.ok_or(Refusal::NothingChosen)?);
        Ok(CalendarForm { from, days: call.days.clone(), at, weeks: call.weeks })
    };
    if let (Some(plan), Some(log)) = (&call.plan, &call.log) {
        let what = match call.kind {
            Kind::Handout => OfFiles::Handout,
            Kind::Letter => OfFiles::Letter(letter()),
            Kind::Rows => OfFiles::Rows,
            Kind::Calendar => OfFiles::Calendar(calendar()?),
            Kind::Booklet | Kind::Class => return Err(Refusal::NoSuchThing.into()),
        };
        return print_files(books, (plan, log), now, &call.language, us_letter, &what);
    }
    let Some(db) = &call.db else {
        let title = call.programme.as_deref().ok_or(Refusal::NothingChosen)?;
        let all = built_in_programmes(books)?;
        let programme = all.iter().find(|p| p.title == title).ok_or(Refusal::NoSuchThing)?;
        let first = || programme.sessions.first().map(|s| s.title.as_str());
        let session = match call.kind {
            Kind::Handout => call.session.as_deref().or_else(first),
            Kind::Booklet => None,
            Kind::Class | Kind::Letter | Kind::Rows | Kind::Calendar => {
                return Err(Refusal::NothingChosen.into());
            }
        };
        return print_programme(books, programme, session, now, &call.language, us_letter);
    };
    let mut coach = Profile::open_to_read(db, books)?;
    let clients = coach.roster_view(now)?.clients;
    let named = |name: &String| {
        let found = clients.iter().find(|c| c.name == *name).map(|c| c.person);
        found.ok_or(AppError::from(Refusal::NoSuchThing))
    };
    let person =
        || call.client.as_ref().map(named).transpose()?.ok_or(AppError::from(Refusal::NothingChosen));
    let programme = || -> Result<Programme, AppError> {
        let title = call.programme.as_deref().ok_or(Refusal::NothingChosen)?;
        let view = coach.planbook_view()?;
        let found = view.programmes.into_iter().map(|p| p.programme).find(|p| p.title == title);
        found.ok_or_else(|| Refusal::NoSuchThing.into())
    };
    let session = |programme: &Programme| {
        let by_title = |title: &String| programme.sessions.iter().find(|s| s.title == *title);
        let found = call.session.as_ref().map_or_else(|| programme.sessions.first(), by_title);
        found.map(|s| s.id.clone()).ok_or(AppError::from(Refusal::NoSuchThing))
    };
    let what = match call.kind {
        Kind::Letter => PrintWhat::Letter { person: person()?, letter: letter() },
        Kind::Rows => PrintWhat::Rows { person: person()? },
        Kind::Booklet => PrintWhat::Booklet { programme: programme()?.id },
        Kind::Calendar => PrintWhat::Calendar { programme: programme()?.id, calendar: calendar()? },
        Kind::Handout if call.client.is_some() => PrintWhat::HandoutFor { person: person()?, session: None },
        Kind::Handout => {
            let programme = programme()?;
            PrintWhat::Handout { session: session(&programme)?, programme: programme.id }
        }
        Kind::Class => {
            let programme = programme()?;
            let people = if call.with.is_empty() {
                clients.iter().map(|c| c.person).collect()
            } else {
                call.with.iter().map(named).collect::<Result<Vec<_>, _>>()?
            };
            let room = match &call.room {
                Some(name) => {
                    let rooms = coach.rooms_view()?.rooms;
                    let found = rooms.iter().find(|r| r.room.name == *name).map(|r| r.id);
                    Some(found.ok_or(AppError::from(Refusal::NoSuchThing))?)
                }
                None => None,
            };
            let class = ClassForm { session: session(&programme)?, programme: programme.id, people, room };
            PrintWhat::Class { class }
        }
    };
    coach.print(now, &PrintForm { what, language: call.language.clone(), us_letter })
}

fn clock(text: &str) -> Result<NaiveTime, String> {
    NaiveTime::parse_from_str(text, "%H:%M").map_err(|_| "a time such as 18:30".to_owned())
}
