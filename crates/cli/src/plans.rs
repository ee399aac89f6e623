//! `plans`: plan files for clients into one folder, with a receipt; or what they would change, and nothing written.

use crate::{End, say};
use newel_app::coach::Whom;
use newel_app::views::{Offered, PlanStanding, ReceiptView, RevisionView, RosterView};
use newel_app::{AppError, Books, Profile, Refusal, Words};
use newel_engine::ids::PersonId;
use newel_engine::proposal::Target;
use std::path::Path;

/// What was asked for.
pub(crate) struct Asked {
    pub client: Vec<String>,
    pub group: Vec<String>,
    pub preview: bool,
    pub language: String,
    pub json: bool,
}

pub(crate) fn plans(db: &Path, out: &Path, asked: &Asked) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let now = say::now();
    // A preview opens the database without ever writing to it.
    let mut coach = if asked.preview || !db.exists() {
        Profile::open_to_read(db, &books)?
    } else {
        Profile::open_or_make_coach(db, &books, now)?
    };
    let roster = coach.roster_view(now)?;
    let whom = whom(&roster, asked)?;
    if asked.preview {
        let people = match whom {
            Whom::These(people) => people,
            Whom::AllDue => roster.clients.iter().map(|c| c.person).collect(),
        };
        let views = coach.revisions(now, &people)?;
        if asked.json {
            say::json(&serde_json::json!({ "revisions": views }))?;
        } else {
            views
                .iter()
                .for_each(|view| tell(Words::of(&asked.language).unwrap_or_else(Words::english), view));
        }
        return Ok(End::Sound);
    }
    let receipt = coach.plans_write(out, now, &whom, &asked.language)?;
    if asked.json {
        say::json(&receipt)?;
    } else {
        say::line(receipt.text.trim_end());
    }
    Ok(if is_whole(&receipt) { End::Sound } else { End::Refused })
}

/// Who is meant: clients and groups by name; everybody for whom something is new if none is named.
fn whom(roster: &RosterView, asked: &Asked) -> Result<Whom, AppError> {
    if asked.client.is_empty() && asked.group.is_empty() {
        return Ok(Whom::AllDue);
    }
    let mut people: Vec<PersonId> = Vec::new();
    for name in &asked.client {
        let found: Vec<PersonId> =
            roster.clients.iter().filter(|c| c.name == *name).map(|c| c.person).collect();
        if found.is_empty() {
            return Err(Refusal::NoSuchThing.into());
        }
        people.extend(found);
    }
    for name in &asked.group {
        let group = roster.groups.iter().find(|g| g.name == *name).ok_or(Refusal::NoSuchThing)?;
        people.extend(&group.members);
    }
    people.sort_unstable();
    people.dedup();
    Ok(Whom::These(people))
}

/// True if nothing went wrong: who has no programme, or nothing new, is left out without anything being wrong.
fn is_whole(receipt: &ReceiptView) -> bool {
    let calm = ["no-programme", "unfinished", "up-to-date", "archived"];
    let nothing_wrong = receipt.left_out.iter().all(|out| calm.contains(&out.why.as_str()));
    nothing_wrong && (receipt.file.is_some() || receipt.written.is_empty())
}

fn tell(words: &Words, view: &RevisionView) {
    let standing = match view.plan {
        PlanStanding::None => "no programme",
        PlanStanding::Unfinished => "programme not whole yet",
        PlanStanding::NotSent => "first plan",
        PlanStanding::Older => "revision",
        PlanStanding::UpToDate => "as in her last file",
    };
    let title = view.title.as_ref().map_or_else(String::new, |t| format!(", {t}"));
    say::line(&format!("{}: {standing}{title}, {} new entries", view.name, view.entries));
    for change in &view.changes {
        say::line(&format!("  - {}", words.change(change)));
    }
    for change in &view.proposals {
        let before = change.before.as_ref().map_or_else(|| "new".to_owned(), |o| offered(words, o));
        let ladder = words.ladder(&change.ladder);
        let after = offered(words, &change.after);
        say::line(&format!("  {}, {ladder}: {before} -> {after}", change.session));
    }
}

fn offered(words: &Words, offered: &Offered) -> String {
    match offered {
        Offered::Rest => "rests".to_owned(),
        Offered::Train { variant, load, sets, target } => {
            let count = match target {
                Target::Reps(n) => format!("{n}"),
                Target::Seconds(n) => format!("{n} s"),
            };
            format!("{}, {}, {sets} x {count}", words.variant(variant), words.load(load))
        }
    }
}
