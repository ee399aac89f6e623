//! `propose`, `review` and `replay`.

use crate::{End, say};
use chrono::NaiveDate;
use newel_app::views::{DeskEntry, Urge};
use newel_app::{AppError, Books, Profile, Replayed, Words, outside};
use newel_engine::proposal::{Gate, Outcome, Proposal};
use newel_engine::reason::Reason;
use serde_json::{Value, json};
use std::path::Path;

pub(crate) fn propose(plan: &Path, log: &Path, on: NaiveDate, json: bool) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let proposed = outside::propose(&books, plan, log, on)?;
    let words = &Words::english().knowing(&proposed.own);
    if json {
        let slots: Vec<Value> = proposed
            .proposal
            .slots
            .iter()
            .map(|p| json!({ "proposal": p, "sentences": sentences(words, p.reasons.all()) }))
            .collect();
        let gate = match &proposed.proposal.gate {
            Gate::Open => Vec::new(),
            Gate::Closed { reasons, .. } => sentences(words, reasons.all()),
        };
        say::json(&json!({
            "name": proposed.name,
            "programme": proposed.programme,
            "session": proposed.session,
            "on": on,
            "gate": proposed.proposal.gate,
            "gate_sentences": gate,
            "slots": slots,
        }))?;
        return Ok(End::Sound);
    }
    say::line(&format!("{}: {}, {}, on {on}", proposed.name, proposed.programme, proposed.session));
    if let Gate::Closed { reasons, .. } = &proposed.proposal.gate {
        for sentence in sentences(words, reasons.all()) {
            say::line(&format!("  {sentence}"));
        }
    }
    for proposal in &proposed.proposal.slots {
        say::line("");
        say::line(&heading(words, proposal));
        for sentence in sentences(words, proposal.reasons.all()) {
            say::line(&format!("    {sentence}"));
        }
    }
    say::caution();
    Ok(End::Sound)
}

fn sentences(words: &Words, reasons: &[Reason]) -> Vec<String> {
    reasons.iter().map(|r| words.reason(r)).collect()
}

/// "Squat: Goblet squat, 12 kg, 3 x 10 reps, 3 in reserve (step 4 of 5)".
fn heading(words: &Words, proposal: &Proposal) -> String {
    let ladder = words.ladder(&proposal.ladder);
    match &proposal.outcome {
        Outcome::Rest => format!("{ladder}: rests today"),
        Outcome::Train(p) => {
            let reserve = p.reserve.map_or_else(String::new, |r| format!(", {r} in reserve"));
            format!(
                "{ladder}: {}, {}, {} × {}{reserve} (step {} of {})",
                words.variant(&p.variant),
                words.load(&p.load),
                p.sets,
                say::target(p.target),
                p.level + 1,
                p.levels,
            )
        }
    }
}

pub(crate) fn review(db: &Path, on: Option<NaiveDate>, json: bool) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let mut coach = Profile::open_to_read(db, &books)?;
    let now = on.map_or_else(say::now, say::morning);
    let desk = coach.desk_view(now)?;
    let words = Words::english().knowing(&coach.books().own);
    if json {
        let entries = |list: &[DeskEntry]| list.iter().map(|e| entry_json(&words, e)).collect::<Vec<_>>();
        let (queue, well) = (entries(&desk.queue), entries(&desk.well));
        say::json(&json!({ "on": now.date_naive(), "queue": queue, "well": well }))?;
        return Ok(End::Sound);
    }
    for entry in &desk.queue {
        let last = entry.last_session.map_or_else(|| "none".to_owned(), |d| d.to_string());
        say::line(&format!("{} (last session: {last})", entry.name));
        for finding in &entry.findings {
            let mark = match finding.urge {
                Urge::Stop => "stop",
                Urge::Attention => "now ",
                Urge::Look => "look",
            };
            say::line(&format!("  {mark}  {}", words.finding(&finding.code, &finding.facts)));
        }
    }
    if !desk.well.is_empty() {
        let names: Vec<&str> = desk.well.iter().map(|e| e.name.as_str()).collect();
        say::line(&format!("Nothing to see: {}", names.join(", ")));
    }
    say::caution();
    Ok(End::Sound)
}

fn entry_json(words: &Words, entry: &DeskEntry) -> Value {
    let findings: Vec<Value> = entry
        .findings
        .iter()
        .map(|f| {
            json!({
                "code": f.code,
                "urge": f.urge,
                "facts": f.facts,
                "sentence": words.finding(&f.code, &f.facts),
            })
        })
        .collect();
    json!({
        "person": entry.person,
        "name": entry.name,
        "stage": entry.stage,
        "last_session": entry.last_session,
        "findings": findings,
    })
}

pub(crate) fn replay(db: &Path) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let mut profile = Profile::open_to_read(db, &books)?;
    let entries = profile.replay_all()?;
    let count = |what: Replayed| entries.iter().filter(|e| e.replayed == what).count();
    let (different, other) = (count(Replayed::Different), count(Replayed::OtherInputs));
    say::line(&format!("{} proposals shown", entries.len()));
    say::line(&format!("{} the same to the bit", count(Replayed::Same)));
    say::line(&format!("{different} different"));
    say::line(&format!("{other} whose inputs are not here as they were"));
    say::line(&format!("{} made by other versions, not compared", count(Replayed::OtherVersions)));
    for entry in &entries {
        match entry.replayed {
            Replayed::Different | Replayed::OtherInputs => {
                eprintln!("{}: person {}, record {}", entry.day, entry.person, entry.shown);
            }
            Replayed::Same | Replayed::OtherVersions => {}
        }
    }
    Ok(if different + other == 0 { End::Sound } else { End::Refused })
}
