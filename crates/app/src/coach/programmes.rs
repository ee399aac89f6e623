//! Writing programmes: each change is on the disk at once, and can be undone and done again without end.

use super::built_in_programmes;
use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{LadderToWrite, PlanbookView, PlannedSets, ProgrammeView, WeekToWrite};
use chrono::{DateTime, FixedOffset};
use newel_engine::flow;
use newel_engine::ids::ProgrammeId;
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::writing::{self, Edit, EditError};
use newel_store::DraftRow;
use uuid::Uuid;

impl From<EditError> for AppError {
    fn from(why: EditError) -> Self {
        match why {
            EditError::NotThere => Refusal::NoSuchThing.into(),
            EditError::Range => Refusal::OutOfRange.into(),
        }
    }
}

/// A draft's programme. Its revision counts what was written, back and forth, so that each state that goes out has its own.
pub(super) fn programme_of(row: &DraftRow) -> Result<Programme, AppError> {
    let mut programme: Programme = serde_json::from_str(&row.text).map_err(|_| AppError::Internal)?;
    programme.revision = u32::try_from(row.edits + 1).unwrap_or(u32::MAX);
    Ok(programme)
}

fn text_of(programme: &Programme) -> Result<String, AppError> {
    serde_json::to_string(programme).map_err(|_| AppError::Internal)
}

impl Profile {
    /// The coach's own programmes that are not put away and can be given, then the built-in ones.
    pub(super) fn programmes(&self) -> Result<Vec<Programme>, AppError> {
        let mut all = Vec::new();
        for row in self.store.drafts()?.iter().filter(|d| !d.away) {
            let programme = programme_of(row)?;
            if programme.check(&self.books.catalogue).is_ok() {
                all.push(programme);
            }
        }
        all.extend(built_in_programmes(&self.books)?);
        Ok(all)
    }

    /// A programme by its id, put away or not, whole or not.
    pub(crate) fn programme(&self, id: ProgrammeId) -> Result<Programme, AppError> {
        if let Some(row) = self.store.drafts()?.iter().find(|d| d.draft == id.to_string()) {
            return programme_of(row);
        }
        let built_in = built_in_programmes(&self.books)?;
        built_in.into_iter().find(|p| p.id == id).ok_or_else(|| Refusal::NoSuchThing.into())
    }

    fn seen(&self, programme: Programme, draft: Option<&DraftRow>) -> ProgrammeView {
        let (catalogue, rules) = (&self.books.catalogue, &self.books.rules);
        ProgrammeView {
            own: draft.is_some(),
            can_undo: draft.is_some_and(|d| d.step > 0),
            can_redo: draft.is_some_and(|d| d.step < d.last),
            whole: programme.check(catalogue).is_ok(),
            minutes: programme.sessions.iter().map(|s| flow::planned_minutes(catalogue, rules, s)).collect(),
            week: self.week_sets(&programme.in_week(1)),
            weeks: (1..=programme.weeks.map_or(0, u32::from))
                .map(|w| self.week_seen(&programme, w))
                .collect(),
            programme,
        }
    }

    fn week_sets(&self, programme: &Programme) -> Vec<PlannedSets> {
        let sets = writing::week_sets(programme, &self.books.catalogue);
        sets.into_iter().map(|(pattern, sets)| PlannedSets { pattern, sets }).collect()
    }

    fn week_seen(&self, programme: &Programme, week: u32) -> WeekToWrite {
        let at = programme.week(week);
        let trained = programme.in_week(week);
        let of_it = programme.sessions.iter().filter(|s| s.is_of(at.phase));
        let (catalogue, rules) = (&self.books.catalogue, &self.books.rules);
        WeekToWrite {
            phase: at.phase.map(|p| p.id.clone()),
            in_phase: at.in_phase,
            light: at.light,
            own: of_it.flat_map(PlanSession::told_weeks).any(|w| u32::from(w) == at.in_phase),
            minutes: trained.sessions.iter().map(|s| flow::planned_minutes(catalogue, rules, s)).collect(),
            sets: self.week_sets(&trained),
        }
    }

    /// The Planbook.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn planbook_view(&self) -> Result<PlanbookView, AppError> {
        self.coach_only()?;
        let (mut programmes, mut away) = (Vec::new(), Vec::new());
        for row in &self.store.drafts()? {
            let view = self.seen(programme_of(row)?, Some(row));
            if row.away { away.push(view) } else { programmes.push(view) }
        }
        programmes.extend(built_in_programmes(&self.books)?.into_iter().map(|p| self.seen(p, None)));
        let ladders = self.books.catalogue.ladders.iter().map(|l| LadderToWrite {
            ladder: l.id.clone(),
            pattern: l.pattern,
            levels: u8::try_from(l.levels.len()).unwrap_or(u8::MAX),
            retired: l.levels.iter().flat_map(|level| &level.variants).all(|v| v.retired),
        });
        Ok(PlanbookView { programmes, away, ladders: ladders.collect() })
    }

    /// Begins a programme of the coach's own: blank, or as a copy of another. Gives its id.
    ///
    /// # Errors
    /// When the title is missing or there is no such programme.
    pub fn programme_new(
        &mut self,
        now: DateTime<FixedOffset>,
        title: &str,
        from: Option<ProgrammeId>,
    ) -> Result<ProgrammeId, AppError> {
        self.coach_only()?;
        let id = ProgrammeId(Uuid::now_v7());
        let begun = match from {
            Some(from) => writing::copied(&self.programme(from)?, id, &mut fresh),
            None => writing::blank(id, ""),
        };
        let titled = Edit::Title { title: title.to_owned() };
        let begun = writing::edited(&begun, &self.books.catalogue, &titled, &mut fresh)?;
        self.store.draft_begin(&id.to_string(), &text_of(&begun)?, now)?;
        Ok(id)
    }

    /// Makes one change to a programme of the coach's own. It is on the disk when this returns.
    ///
    /// # Errors
    /// When there is no such programme, or the change cannot be made; nothing is changed then.
    pub fn programme_edit(
        &mut self,
        now: DateTime<FixedOffset>,
        id: ProgrammeId,
        edit: &Edit,
    ) -> Result<PlanbookView, AppError> {
        self.coach_only()?;
        let row = self.own_draft(id)?;
        let before = serde_json::from_str(&row.text).map_err(|_| AppError::Internal)?;
        let after = writing::edited(&before, &self.books.catalogue, edit, &mut fresh)?;
        // A change that changes nothing is no step to undo.
        if after != before {
            self.store.draft_write(&row.draft, &text_of(&after)?, now)?;
        }
        self.planbook_view()
    }

    /// Undoes the last change to a programme, or does again what was undone; at either end nothing happens.
    ///
    /// # Errors
    /// When there is no such programme.
    pub fn programme_turn(&mut self, id: ProgrammeId, back: bool) -> Result<PlanbookView, AppError> {
        self.coach_only()?;
        let row = self.own_draft(id)?;
        self.store.draft_turn(&row.draft, back)?;
        self.planbook_view()
    }

    /// Puts a programme of the coach's own away, or takes it out again. Nothing of it is deleted.
    ///
    /// # Errors
    /// When there is no such programme.
    pub fn programme_away(&mut self, id: ProgrammeId, away: bool) -> Result<PlanbookView, AppError> {
        self.coach_only()?;
        let row = self.own_draft(id)?;
        self.store.draft_away(&row.draft, away)?;
        self.planbook_view()
    }

    fn own_draft(&self, id: ProgrammeId) -> Result<DraftRow, AppError> {
        let id = id.to_string();
        self.store.drafts()?.into_iter().find(|d| d.draft == id).ok_or_else(|| Refusal::NoSuchThing.into())
    }
}

fn fresh() -> String {
    Uuid::now_v7().simple().to_string()
}
