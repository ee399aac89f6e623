//! Plan files for several clients in one folder, with a receipt: which file is whose, what is in it, what changed since the
//! last one, who was left out and why. Each file is written whole or not at all; one that fails does not keep the others
//! back.

use super::client_name;
use super::overview::{Overview, last_sequence};
use super::plans::free_name;
use crate::error::{AppError, Refusal};
use crate::files::put;
use crate::profile::Profile;
use crate::views::{LeftOut, PlanStanding, ReceiptLine, ReceiptView};
use crate::words::Words;
use chrono::{DateTime, Datelike as _, FixedOffset, NaiveDate};
use fluent_bundle::FluentArgs;
use newel_engine::ids::PersonId;
use std::collections::BTreeSet;
use std::path::Path;

/// For whom plan files are written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Whom {
    /// Everybody for whom there is something new; the others are named as left out.
    AllDue,
    /// These, whether there is something new or not.
    These(Vec<PersonId>),
}

impl Profile {
    /// Writes plan files into a folder, and a receipt beside them in a language (`en`, `es`).
    ///
    /// # Errors
    /// When somebody is no client, or nobody was chosen. What goes wrong with one file is told in the receipt.
    pub fn plans_write(
        &mut self,
        folder: &Path,
        now: DateTime<FixedOffset>,
        whom: &Whom,
        language: &str,
    ) -> Result<ReceiptView, AppError> {
        self.coach_only()?;
        let (mut people, due_only) = match whom {
            Whom::AllDue => (self.everybody()?, true),
            Whom::These(people) => (people.clone(), false),
        };
        if people.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        self.are_clients(&people)?;
        self.read_known(&people)?;
        let name = |p: &PersonId| self.known_before(*p).map(|k| client_name(k.history())).unwrap_or_default();
        people.sort_by_cached_key(|p| (name(p).to_lowercase(), *p));
        people.dedup();
        let overview = Overview::of(self)?;
        let (mut written, mut left_out, mut taken) = (Vec::new(), Vec::new(), BTreeSet::new());
        for person in people {
            let revision = self.revision_of(&overview, person, now.date_naive())?;
            let why = if due_only && overview.archived.contains(&person) {
                Some("archived".to_owned())
            } else {
                match revision.plan {
                    PlanStanding::None => Some("no-programme".to_owned()),
                    PlanStanding::Unfinished => Some("unfinished".to_owned()),
                    PlanStanding::UpToDate if due_only && revision.entries == 0 => {
                        Some("up-to-date".to_owned())
                    }
                    PlanStanding::UpToDate | PlanStanding::NotSent | PlanStanding::Older => None,
                }
            };
            let done = match why {
                Some(why) => Err(why),
                None => {
                    let first = last_sequence(self.known_before(person)?).is_none();
                    self.one_plan(folder, now, person, &taken).map_err(|e| e.sentence()).map(|line| {
                        let (changes, new_entries) = (revision.changes, revision.entries);
                        ReceiptLine { changes, new_entries, first, ..line }
                    })
                }
            };
            match done {
                Ok(line) => {
                    taken.insert(line.file.clone());
                    written.push(line);
                }
                Err(why) => left_out.push(LeftOut { person, name: revision.name, why }),
            }
        }
        let words = &Words::of(language).unwrap_or_else(Words::english).knowing(&self.books.own);
        let text = text(words, now, &self.name()?, &written, &left_out);
        let file = format!("receipt-{}.txt", now.format("%Y-%m-%d-%H%M%S"));
        let kept = !written.is_empty() && put(&folder.join(&file), text.as_bytes(), 0).is_ok();
        Ok(ReceiptView {
            folder: folder.display().to_string(),
            file: kept.then_some(file),
            written,
            left_out,
            text,
        })
    }

    fn one_plan(
        &mut self,
        folder: &Path,
        now: DateTime<FixedOffset>,
        person: PersonId,
        taken: &BTreeSet<String>,
    ) -> Result<ReceiptLine, AppError> {
        let document = self.plan_document(now, person)?;
        let bytes = newel_exchange::write_plan(&document)?;
        let file = free_name(folder, &document, taken);
        put(&folder.join(&file), &bytes, document.lines.len())?;
        self.write_sent(now, &document, &bytes)?;
        Ok(ReceiptLine {
            person,
            file,
            title: document.programme.map(|p| p.title).unwrap_or_default(),
            name: document.person_name,
            sequence: u32::try_from(document.sequence).unwrap_or(u32::MAX),
            first: false,
            begins: document.begins,
            entries: u32::try_from(document.lines.len()).unwrap_or(u32::MAX),
            new_entries: 0,
            changes: Vec::new(),
        })
    }
}

/// A sentence of the receipt.
fn say(words: &Words, id: &str, values: &[(&str, &str)]) -> String {
    let mut args = FluentArgs::new();
    for (name, value) in values {
        args.set((*name).to_owned(), (*value).to_owned());
    }
    words.say_with(id, &args).unwrap_or_else(|| id.to_owned())
}

fn count(words: &Words, id: &str, n: usize) -> String {
    let mut args = FluentArgs::new();
    args.set("count", u32::try_from(n).unwrap_or(u32::MAX));
    words.say_with(id, &args).unwrap_or_else(|| id.to_owned())
}

/// A day in full.
pub(crate) fn day_text(words: &Words, day: NaiveDate) -> String {
    let mut args = FluentArgs::new();
    args.set("day", day.day());
    args.set("month", day.month());
    // As text, since a number would be grouped by thousands in some languages.
    args.set("year", day.year().to_string());
    words.say_with("day-in-full", &args).unwrap_or_else(|| day.to_string())
}

fn text(
    words: &Words,
    now: DateTime<FixedOffset>,
    coach: &str,
    written: &[ReceiptLine],
    left_out: &[LeftOut],
) -> String {
    let day = day_text(words, now.date_naive());
    let time = now.format("%H:%M").to_string();
    let mut lines = vec![
        say(words, "receipt-title", &[("coach", coach), ("day", &day), ("time", &time)]),
        count(words, "receipt-written", written.len()),
    ];
    for line in written {
        lines.push(String::new());
        lines.push(say(words, "receipt-file", &[("name", &line.name), ("file", &line.file)]));
        let sequence = line.sequence.to_string();
        lines.push(format!(
            "  {}",
            say(words, "receipt-programme", &[("title", &line.title), ("number", &sequence)])
        ));
        if let Some(begins) = line.begins {
            lines.push(format!("  {}", say(words, "receipt-begins", &[("day", &day_text(words, begins))])));
        }
        let mut entries = FluentArgs::new();
        entries.set("count", line.entries);
        entries.set("fresh", line.new_entries);
        lines.push(format!("  {}", words.say_with("receipt-entries", &entries).unwrap_or_default()));
        if line.first {
            lines.push(format!("  {}", say(words, "receipt-first", &[])));
        } else if line.changes.is_empty() {
            lines.push(format!("  {}", say(words, "receipt-same", &[])));
        } else {
            lines.push(format!("  {}", say(words, "receipt-changes", &[])));
            lines.extend(line.changes.iter().map(|c| format!("  - {}", words.change(c))));
        }
    }
    if !left_out.is_empty() {
        lines.push(String::new());
        lines.push(count(words, "receipt-left-out", left_out.len()));
        for out in left_out {
            let id = format!("left-out-{}", out.why);
            let why = words.say(&id).or_else(|| words.say(&out.why)).unwrap_or_else(|| out.why.clone());
            lines.push(format!("- {}: {why}", out.name));
        }
    }
    lines.push(String::new());
    lines.push(say(words, "receipt-care", &[]));
    lines.join("\n") + "\n"
}
