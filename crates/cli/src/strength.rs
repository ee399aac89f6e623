//! `strength`.

use crate::{End, say};
use newel_app::{AppError, Books, Words, strength};
use newel_engine::stage::Stage;
use newel_engine::state::{FreshStart, RepMax, SetStep, StrengthStep};
use serde_json::json;
use std::path::Path;

pub(crate) fn strength(plan: &Path, log: &Path, json: bool) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let strength = strength::strength(&books, plan, log)?;
    if json {
        say::json(&json!({
            "name": strength.name,
            "programme": strength.programme,
            "constants": strength.trace.constants,
            "steps": strength.trace.steps,
        }))?;
        return Ok(End::Sound);
    }
    let words = &Words::english().knowing(&strength.own);
    let programme = strength.programme.as_deref().map_or_else(String::new, |p| format!(", {p}"));
    say::line(&format!("{}{programme}", strength.name));
    say::line("");
    tell(words, &strength.trace.steps);
    Ok(End::Sound)
}

fn tell(words: &Words, steps: &[StrengthStep]) {
    let titles = ["day", "variant", "load", "effective", "reps", "ten", "one", "c", "d"];
    let mut rows = vec![titles.map(|t| words.watching(&format!("strength-{t}"), &[]))];
    rows.extend(steps.iter().filter_map(|step| match step {
        StrengthStep::Set(set) => Some(row(words, set)),
        StrengthStep::FreshStart(_) | StrengthStep::NoEvidence(_) => None,
    }));
    let mut lines = say::table(&rows, 2).into_iter();
    if rows.len() > 1 {
        lines.next().iter().for_each(|head| say::line(head));
    } else {
        say::line(&words.watching("strength-none", &[]));
    }
    for step in steps {
        match step {
            StrengthStep::Set(_) => lines.next().iter().for_each(|line| say::line(line)),
            StrengthStep::NoEvidence(_) => {}
            StrengthStep::FreshStart(fresh) => say::line(&format!("  {}", fresh_start(words, fresh))),
        }
    }
    if rows.len() == 1 {
        return;
    }
    say::line("");
    say::line(&words.watching("strength-legend", &[]));
    for (mark, legend) in [("*", "begins"), ("~", "assumed"), ("≥", "bound")] {
        if rows.iter().skip(1).flatten().any(|cell| cell.contains(mark)) {
            say::line(&words.watching(&format!("strength-legend-{legend}"), &[]));
        }
    }
}

fn fresh_start(words: &Words, fresh: &FreshStart) -> String {
    let id = match fresh.stage {
        None => "strength-after-operation",
        Some(Stage::AfterLoss { .. }) => "strength-after-loss",
        // No other stage begins anew.
        Some(Stage::Postpartum { .. } | Stage::Pregnant { .. } | Stage::Neither) => "strength-after-birth",
    };
    words.watching(id, &[("day", &fresh.day.to_string())])
}

fn row(words: &Words, set: &SetStep) -> [String; 9] {
    let band = |max: &RepMax| format!("{:.1} ({:.1} to {:.1})", max.estimate.0, max.low.0, max.high.0);
    let begins = if set.start.is_some() { "*" } else { "" };
    let assumed = if set.body.is_some_and(|b| b.assumed) { "~" } else { "" };
    let bound = if set.at_least { "≥" } else { "" };
    [
        format!("{}{begins}", set.day),
        words.variant(&set.variant),
        Words::english().load(&set.load),
        format!("{assumed}{:.1}", set.effective.0),
        format!("{} + {bound}{}", set.reps, set.reserve),
        band(&set.ten_rep_max),
        band(&set.one_rep_max),
        format!("{:.1}", set.after.c),
        format!("{:+.3}", set.after.d),
    ]
}
