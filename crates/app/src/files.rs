//! Send: log files out, plan files and log files in.

use crate::coach::TAKEN_IN;
use crate::error::{AppError, Refusal};
use crate::profile::{Profile, versions};
use crate::views::{ChosenFile, ErrorView, FileReport, GapView, Role, SendView, TakeInView, WrittenView};
use crate::words::Words;
use chrono::{DateTime, FixedOffset};
use newel_engine::record::Payload;
use newel_exchange::{Document, FileError, LogDocument, PlanDocument};
use newel_store::{Action, TakeInReport};
use std::path::{Path, PathBuf};

impl Profile {
    /// The Send screen.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn send_view(&mut self, folder: &Path, now: DateTime<FixedOffset>) -> Result<SendView, AppError> {
        let file_name = self.log_name(now)?;
        let known = self.own()?;
        Ok(SendView {
            folder: folder.display().to_string(),
            file_name,
            records: u32::try_from(known.records.len()).unwrap_or(u32::MAX),
            last_session: known.history().runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
            coach: known.plan.as_ref().map(|p| p.coach.clone()),
            programme: known.on(now.date_naive()).plan.as_ref().map(|p| p.programme.title.clone()),
        })
    }

    fn log_name(&self, now: DateTime<FixedOffset>) -> Result<String, AppError> {
        Ok(format!("{}-log-{}.newel.json", slug(&self.name()?), now.date_naive()))
    }

    /// Her whole log as a file's bytes.
    ///
    /// # Errors
    /// When the log cannot be read or is too large for a file.
    pub fn log_bytes(&mut self, now: DateTime<FixedOffset>) -> Result<(Vec<u8>, usize), AppError> {
        let lines = self.store.lines(self.person())?;
        let records = lines.len();
        let document = LogDocument {
            person: self.person(),
            name: self.name()?,
            device: self.store.device()?,
            made_at: now,
            versions: versions(&self.books()),
            lines,
        };
        Ok((newel_exchange::write_log(&document)?, records))
    }

    /// Writes her log into a file: whole or not at all.
    ///
    /// # Errors
    /// When the disk refuses.
    pub fn log_write(
        &mut self,
        folder: &Path,
        path: Option<PathBuf>,
        now: DateTime<FixedOffset>,
    ) -> Result<WrittenView, AppError> {
        let (bytes, records) = self.log_bytes(now)?;
        let path = match path {
            Some(path) => path,
            None => folder.join(self.log_name(now)?),
        };
        put(&path, &bytes, records)
    }

    /// Takes in files, one by one; each is one action with one report, whole or not at all.
    pub fn take_in(&mut self, files: &[ChosenFile], now: DateTime<FixedOffset>) -> TakeInView {
        let files = files.iter().map(|f| self.take_in_one(&f.name, f.text.as_bytes(), now)).collect();
        TakeInView { files }
    }

    /// Takes in one file.
    pub fn take_in_one(&mut self, name: &str, bytes: &[u8], now: DateTime<FixedOffset>) -> FileReport {
        let mut report = FileReport {
            file: name.to_owned(),
            person: None,
            kind: None,
            new: 0,
            known: 0,
            gaps: Vec::new(),
            refused: Vec::new(),
            archived: false,
        };
        if let Err(error) = self.take_in_bytes(bytes, now, &mut report) {
            report.refused.push(error.view());
        }
        report
    }

    fn take_in_bytes(
        &mut self,
        bytes: &[u8],
        now: DateTime<FixedOffset>,
        report: &mut FileReport,
    ) -> Result<(), AppError> {
        match newel_exchange::read(bytes)? {
            Document::Log(log) => {
                report.kind = Some("log".to_owned());
                report.person = Some(log.name.clone());
                self.take_in_log(&log, now, report)
            }
            Document::Plan(plan) => {
                report.kind = Some("plan".to_owned());
                report.person = Some(plan.person_name.clone());
                let text = newel_exchange::without_pictures(&String::from_utf8_lossy(bytes))?;
                self.take_in_plan(&plan, text, now, report)
            }
        }
    }

    fn take_in_log(
        &mut self,
        log: &LogDocument,
        now: DateTime<FixedOffset>,
        report: &mut FileReport,
    ) -> Result<(), AppError> {
        if self.role() != Role::Coach && log.person != self.person() {
            return Err(Refusal::NotForThisProfile.into());
        }
        let plan = self.store.plan_take_in(log.person, &log.lines)?;
        let done = self.store.apply_take_in(&plan, Action::TakeInLog, now, Vec::new())?;
        self.forget_person(log.person);
        tell(report, &done);
        report.archived = self.store.archived()?.contains(&log.person);
        if done.new > 0 {
            self.store.set_setting(&format!("{TAKEN_IN}{}", log.person), &now.to_rfc3339())?;
        }
        Ok(())
    }

    fn take_in_plan(
        &mut self,
        document: &PlanDocument,
        text: String,
        now: DateTime<FixedOffset>,
        report: &mut FileReport,
    ) -> Result<(), AppError> {
        if document.person != self.person() {
            return Err(Refusal::PlanForSomebodyElse.into());
        }
        if let Some(programme) = &document.programme {
            let catalogue = self.built_in().laid(&document.own.clone().unwrap_or_default());
            programme.check(&catalogue).map_err(|_| Refusal::UnusableProgramme)?;
        }
        let known = self.own()?;
        // The same file again changes nothing; its records may still fill a gap.
        let again = known
            .records
            .iter()
            .any(|r| matches!(&r.payload, Payload::PlanTakenIn { plan } if *plan == text));
        let in_force = known.plan.as_ref().map(|p| p.sequence);
        let older = document.programme.is_some() && in_force.is_some_and(|s| document.sequence < s);
        let plan = self.store.plan_take_in(document.person, &document.lines)?;
        if again && plan.changes_nothing() {
            report.known = u32::try_from(plan.known).unwrap_or(u32::MAX);
            return Ok(());
        }
        for picture in &document.pictures {
            self.store.keep_picture(&picture.name(), picture.bytes())?;
        }
        // An older plan still brings the coach's answers; its programme does not come back.
        let own = if again || older { Vec::new() } else { vec![Payload::PlanTakenIn { plan: text }] };
        let done = self.store.apply_take_in(&plan, Action::TakeInPlan, now, own)?;
        self.forget_person(document.person);
        self.read_own_catalogue()?;
        tell(report, &done);
        if older && !again {
            report.refused.push(AppError::from(Refusal::OlderPlan).view());
        }
        Ok(())
    }
}

/// Writes bytes into a file, making its folder if need be.
/// Writes a file that is none of the records', whole or not at all.
///
/// # Errors
/// When the disk refuses.
pub fn write_file(path: &Path, bytes: &[u8]) -> Result<(), AppError> {
    put(path, bytes, 0).map(|_| ())
}

pub(crate) fn put(path: &Path, bytes: &[u8], records: usize) -> Result<WrittenView, AppError> {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder)
            .map_err(|source| FileError::Unwritten { path: folder.to_owned(), source })?;
    }
    newel_exchange::write_whole(path, bytes)?;
    Ok(WrittenView {
        path: path.display().to_string(),
        records: u32::try_from(records).unwrap_or(u32::MAX),
        bytes: u32::try_from(bytes.len()).unwrap_or(u32::MAX),
    })
}

fn tell(report: &mut FileReport, done: &TakeInReport) {
    let small = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
    let number = |n: u64| u32::try_from(n).unwrap_or(u32::MAX);
    report.new = small(done.new);
    report.known = small(done.known);
    report.gaps = done.gaps.iter().map(|g| GapView { from: number(g.from), to: number(g.to) }).collect();
    let words = Words::english();
    for refused in &done.refused {
        let id = format!("take-in-refused-{}", refused.why.code());
        if report.refused.iter().any(|r| r.code == id) {
            continue;
        }
        report.refused.push(ErrorView {
            message: words.say(&id).unwrap_or_else(|| refused.why.code().to_owned()),
            remedy: words.attribute(&id, "remedy").unwrap_or_default(),
            code: id,
        });
    }
}

/// A file name's worth of a name: letters and digits, anything else a dash.
pub(crate) fn slug(name: &str) -> String {
    let mut slug = String::new();
    for c in name.to_lowercase().chars() {
        if c.is_alphanumeric() {
            slug.push(c);
        } else if !slug.ends_with('-') && !slug.is_empty() {
            slug.push('-');
        }
    }
    let slug = slug.trim_end_matches('-').to_owned();
    if slug.is_empty() { "newel".to_owned() } else { slug.chars().take(40).collect() }
}
