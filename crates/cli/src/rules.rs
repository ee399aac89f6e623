//! `rules`: the rule pack to read.

use crate::{End, say};
use clap::ValueEnum;
use newel_app::rulebook::{RuleEntry, Rulebook};
use newel_app::{AppError, Books, Words};

/// A page that can be made of the pack.
#[derive(Clone, Copy, Debug, ValueEnum)]
pub(crate) enum Page {
    /// What a symptom does
    Symptoms,
    /// Rules and their numbers
    Rules,
}

pub(crate) fn rules(table: Option<Page>, json: bool) -> Result<End, AppError> {
    let (books, words) = (Books::built_in()?, Words::english());
    let book = Rulebook::of(&books.rules, words);
    match table {
        Some(Page::Symptoms) => say::text(&book.symptom_page(words)),
        Some(Page::Rules) => say::text(&book.rule_page(words)),
        None if json => say::json(&book)?,
        None => {
            say::line(&format!("rule pack, version {}", book.version));
            for entry in book.rules.iter().chain(&book.effort).chain(&book.conditions) {
                rule(entry);
            }
            for entry in &book.symptoms {
                say::line("");
                say::line(&format!("symptom.{}", entry.kind.id));
                say::line(&format!("    {} ({})", entry.label, entry.term));
                say::line(&format!("    {}", entry.kind.source));
            }
        }
    }
    Ok(End::Sound)
}

fn rule(entry: &RuleEntry) {
    let numbers: Vec<String> = entry.numbers.iter().map(|(name, value)| format!("{name} {value}")).collect();
    say::line("");
    say::line(format!("{}  {}", entry.id, numbers.join(", ")).trim_end());
    say::line(&format!("    {}", entry.sentence));
    say::line(&format!("    {}", entry.source));
}
