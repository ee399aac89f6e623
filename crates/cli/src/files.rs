//! `take-in` and `check`.

use crate::{End, say};
use newel_app::views::FileReport;
use newel_app::{AppError, Books, Profile, outside};
use std::path::{Path, PathBuf};

pub(crate) fn take_in(db: &Path, files: &[PathBuf], json: bool) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let now = say::now();
    let mut coach = Profile::open_or_make_coach(db, &books, now)?;
    let mut end = End::Sound;
    let mut reports = Vec::new();
    for file in files {
        let report = coach.take_in_path(file, now);
        if !report.refused.is_empty() {
            end = End::Refused;
        }
        if !json {
            tell(file, &report);
        }
        reports.push(report);
    }
    if json {
        say::json(&serde_json::json!({ "files": reports }))?;
    }
    Ok(end)
}

fn tell(file: &Path, report: &FileReport) {
    let who = report.person.as_deref().unwrap_or("unknown");
    say::line(&format!("{}: {who}, {} new, {} known", file.display(), report.new, report.known));
    for gap in &report.gaps {
        say::line(&format!("  {} to {} have not arrived yet", gap.from, gap.to));
    }
    for refused in &report.refused {
        say::refusal(Some(file), refused);
    }
}

pub(crate) fn check(files: &[PathBuf]) -> End {
    let mut end = End::Sound;
    for file in files {
        let checked = Books::built_in().and_then(|books| outside::check(&books, file));
        match checked {
            Ok(checked) => {
                let sound = checked.damage.is_empty();
                let verdict = if sound { "sound" } else { "damaged" };
                let missing = match checked.missing {
                    0 => String::new(),
                    n => format!(", {n} not arrived yet"),
                };
                let (kind, records) = (checked.kind, checked.records);
                say::line(&format!("{}: {kind}, {records} records{missing}: {verdict}", file.display()));
                for damage in &checked.damage {
                    eprintln!(
                        "{}: {}: {} ({} times)",
                        file.display(),
                        damage.code,
                        damage.message,
                        damage.times
                    );
                }
                if !sound {
                    end = End::Refused;
                }
            }
            Err(error) => {
                say::error(Some(file), &error);
                end = End::Refused;
            }
        }
    }
    end
}
