//! `print`.

use crate::{End, say};
use chrono::NaiveDate;
use clap::{Args, ValueEnum};
use newel_app::coach::built_in_programmes;
use newel_app::print::{LetterForm, PrintForm, PrintWhat, PrintedFile, print_files, print_programme};
use newel_app::{AppError, Books, Profile, Refusal};
use std::path::PathBuf;

/// What is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Kind {
    /// A session: with every option, or one client's
    Handout,
    /// A whole programme
    Booklet,
    /// Facts for a clinician
    Letter,
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
    let pages = if file.pages == 1 { "1 page".to_owned() } else { format!("{} pages", file.pages) };
    say::line(&format!("{}: {pages}, {} bytes", call.out.display(), file.bytes.len()));
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
    if let (Some(plan), Some(log)) = (&call.plan, &call.log) {
        let letter = (call.kind == Kind::Letter).then(letter);
        return match call.kind {
            Kind::Booklet => Err(Refusal::NoSuchThing.into()),
            Kind::Handout | Kind::Letter => {
                print_files(books, plan, log, now, &call.language, us_letter, letter.as_ref())
            }
        };
    }
    let Some(db) = &call.db else {
        let title = call.programme.as_deref().ok_or(Refusal::NothingChosen)?;
        let all = built_in_programmes(books)?;
        let programme = all.iter().find(|p| p.title == title).ok_or(Refusal::NoSuchThing)?;
        let session = (call.kind == Kind::Handout)
            .then(|| call.session.as_deref().or_else(|| programme.sessions.first().map(|s| s.title.as_str())))
            .flatten();
        if call.kind == Kind::Letter {
            return Err(Refusal::NothingChosen.into());
        }
        return print_programme(books, programme, session, now, &call.language, us_letter);
    };
    let mut coach = Profile::open_to_read(db, books)?;
    let person = match &call.client {
        Some(name) => {
            let all = coach.roster_view(now)?.clients;
            Some(all.iter().find(|c| c.name == *name).ok_or(Refusal::NoSuchThing)?.person)
        }
        None => None,
    };
    let programme = || -> Result<_, AppError> {
        let title = call.programme.as_deref().ok_or(Refusal::NothingChosen)?;
        let view = coach.planbook_view()?;
        let found = view.programmes.into_iter().map(|p| p.programme).find(|p| p.title == title);
        found.ok_or_else(|| Refusal::NoSuchThing.into())
    };
    let what = match (call.kind, person) {
        (Kind::Letter, Some(person)) => PrintWhat::Letter { person, letter: letter() },
        (Kind::Letter, None) => return Err(Refusal::NothingChosen.into()),
        (Kind::Booklet, _) => PrintWhat::Booklet { programme: programme()?.id },
        (Kind::Handout, Some(person)) => PrintWhat::HandoutFor { person, session: None },
        (Kind::Handout, None) => {
            let programme = programme()?;
            let by_title = |title: &String| programme.sessions.iter().find(|s| s.title == *title);
            let session = call.session.as_ref().map_or_else(|| programme.sessions.first(), by_title);
            PrintWhat::Handout {
                programme: programme.id,
                session: session.ok_or(Refusal::NoSuchThing)?.id.clone(),
            }
        }
    };
    coach.print(now, &PrintForm { what, language: call.language.clone(), us_letter })
}
