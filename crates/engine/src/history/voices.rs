//! Where two voices speak of one thing: both are kept, and the stricter holds.

use super::{History, Intake, IntakeSaid, Said, StageSaid};
use crate::ids::{DeviceId, RecordId};
use crate::record::{Record, Voice};
use crate::stage::{BirthMode, Stage, TERM_DAYS};
use chrono::{Days, NaiveDate, TimeDelta};

/// A birth recorded by another device within so many days is the same one; common practice, no source. As the rule
/// `stage.same-birth` has it, which a test compares.
pub const SAME_BIRTH: i64 = 28;
/// From conception to term ([`TERM_DAYS`] count from the period, two weeks before).
const FROM_CONCEPTION: i64 = TERM_DAYS - 14;
/// So soon after a birth or a loss another device's "pregnant" without a date, or "neither", is one that does not know
/// yet; common practice, no source.
const NOT_KNOWN_YET: i64 = 84;

impl History {
    /// Takes a stage in: as it is, joined with what another device says of the same birth, or set aside.
    pub(super) fn take_stage(&mut self, record: &Record, stage: &Stage) {
        let (holds, aside) = self.heard(record.device, record.at.date_naive(), stage);
        self.stages_said.push(StageSaid {
            record: record.id,
            at: record.at,
            device: record.device,
            what: stage.clone(),
            aside,
        });
        if let Some(what) = holds {
            self.stages.push(Said { record: record.id, at: record.at, what });
        }
    }

    /// What holds once a device has said a stage, if that moves anything; and whether it is set aside.
    fn heard(&self, device: DeviceId, day: NaiveDate, stage: &Stage) -> (Option<Stage>, bool) {
        const ASIDE: (Option<Stage>, bool) = (None, true);
        let as_it_is = (Some(stage.clone()), false);
        let Some(now) = self.stages.last() else { return as_it_is };
        // A device corrects itself freely, and nobody else: is there another one that says what holds now?
        let told = self.stages_said.iter().rev().filter(|s| !s.aside);
        let other = told.take_while(|s| same_event(&s.what, &now.what)).any(|s| s.device != device);
        match (&now.what, stage) {
            (Stage::Pregnant { .. }, Stage::Postpartum { birth, .. }) => {
                let begun = now
                    .what
                    .due()
                    .and_then(|(due, _)| due.checked_sub_days(Days::new(FROM_CONCEPTION.unsigned_abs())));
                if other && begun.is_some_and(|begun| *birth < begun) { ASIDE } else { as_it_is }
            }
            (Stage::Postpartum { .. } | Stage::AfterLoss { .. }, Stage::Pregnant { .. }) if other => {
                let ended = now.what.ended_on().unwrap_or(day);
                let begun =
                    stage.due().and_then(|(due, _)| due.checked_sub_signed(TimeDelta::days(FROM_CONCEPTION)));
                let new = match begun {
                    Some(begun) => begun > ended,
                    None => day - ended > TimeDelta::days(NOT_KNOWN_YET),
                };
                if new { as_it_is } else { ASIDE }
            }
            (Stage::Postpartum { birth, .. }, Stage::Postpartum { birth: theirs, .. }) => {
                if (*theirs - *birth).num_days().abs() <= SAME_BIRTH {
                    (Some(self.joined(device, stage)), false)
                } else if other && theirs < birth {
                    ASIDE
                } else {
                    as_it_is
                }
            }
            // Whoever says that it was a loss is heard, and nobody talks of a birth after it.
            (Stage::AfterLoss { on }, Stage::Postpartum { birth, .. })
                if other && *birth - *on <= TimeDelta::days(SAME_BIRTH) =>
            {
                ASIDE
            }
            (Stage::Pregnant { .. }, Stage::Neither) if other => ASIDE,
            (Stage::Postpartum { .. } | Stage::AfterLoss { .. }, Stage::Neither) if other => {
                let ended = now.what.ended_on().unwrap_or(day);
                if day - ended > TimeDelta::days(NOT_KNOWN_YET) { as_it_is } else { ASIDE }
            }
            _ => as_it_is,
        }
    }

    /// What holds of a birth by the latest account of each device.
    fn joined(&self, device: DeviceId, stage: &Stage) -> Stage {
        let same = |s: &&StageSaid| !s.aside && same_event(&s.what, stage);
        let mut heard = vec![device];
        let mut all = stage.clone();
        for account in self.stages_said.iter().rev().filter(same) {
            if !heard.contains(&account.device) {
                heard.push(account.device);
                all = stricter_birth(&all, &account.what);
            }
        }
        all
    }

    /// Takes an intake in: the voice's own earlier one goes, and what the coach has talked over.
    pub(super) fn take_intake(
        &mut self,
        record: &Record,
        by: Voice,
        what: Intake,
        note: Option<String>,
        instead_of: &[RecordId],
    ) {
        let (id, at) = (record.id, record.at);
        self.intakes_said.push(IntakeSaid {
            record: id,
            at,
            by,
            what,
            note,
            instead_of: instead_of.to_vec(),
        });
        self.intakes.push(Said { record: id, at, what: self.intake_of(&self.standing_intakes()) });
    }

    /// The intakes that stand, of each voice one, in order of writing.
    #[must_use]
    pub fn standing_intakes(&self) -> Vec<&IntakeSaid> {
        let latest = |by: Voice| self.intakes_said.iter().rposition(|i| i.by == by);
        let coach = latest(Voice::Coach).map(|n| &self.intakes_said[n]);
        // Only the coach can say that something of the client's was talked over.
        let over = |id: RecordId| coach.is_some_and(|c| c.instead_of.contains(&id));
        let mut stand: Vec<usize> =
            [latest(Voice::Client), latest(Voice::Coach)].into_iter().flatten().collect();
        stand.sort_unstable();
        stand.into_iter().map(|n| &self.intakes_said[n]).filter(|i| !over(i.record)).collect()
    }

    fn intake_of(&self, standing: &[&IntakeSaid]) -> Intake {
        let mut all = standing.iter().map(|i| &i.what);
        let first = all.next().cloned().unwrap_or_default();
        all.fold(first, |all, one| all.stricter(one))
    }
}

/// True if two stages tell of one pregnancy, one birth, one loss.
fn same_event(one: &Stage, other: &Stage) -> bool {
    match (one.ended_on(), other.ended_on()) {
        (Some(a), Some(b)) => {
            std::mem::discriminant(one) == std::mem::discriminant(other)
                && (a - b).num_days().abs() <= SAME_BIRTH
        }
        (None, None) => std::mem::discriminant(one) == std::mem::discriminant(other),
        (Some(_), None) | (None, Some(_)) => false,
    }
}

/// Of two accounts of one birth the later day, the more careful mode and a tear if either names it.
fn stricter_birth(one: &Stage, other: &Stage) -> Stage {
    let (
        Stage::Postpartum { birth: a, mode: m, severe_tear: t },
        Stage::Postpartum { birth: b, mode: n, severe_tear: u },
    ) = (one, other)
    else {
        return other.clone();
    };
    let careful = |mode: BirthMode| match mode {
        BirthMode::Unsaid => 0,
        BirthMode::Vaginal => 1,
        BirthMode::Assisted => 2,
        BirthMode::Caesarean => 3,
    };
    // What one leaves unsaid and the other says is said.
    let severe_tear = match (t, u) {
        (Some(one), Some(other)) => Some(*one || *other),
        (said, None) | (None, said) => *said,
    };
    let mode = if careful(*m) >= careful(*n) { *m } else { *n };
    Stage::Postpartum { birth: *a.max(b), mode, severe_tear }
}

/// The plan rests after a birth or a loss in a pregnancy that was recorded.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rest {
    /// The record that said so.
    pub record: RecordId,
    /// The day of the birth or the loss.
    pub day: NaiveDate,
    /// True after a loss.
    pub after_loss: bool,
    /// Who has said that it goes on.
    pub taken_up: Vec<Voice>,
}

impl History {
    /// The rest of the plan, until both voices have said that training is taken up again.
    #[must_use]
    pub fn rests(&self) -> Option<Rest> {
        let last = self.stages.len().checked_sub(1)?;
        let day = self.stages[last].what.ended_on()?;
        // A birth whose date or mode was put right is the same one.
        let same =
            |s: &Said<Stage>| s.what.ended_on().is_some_and(|d| (d - day).num_days().abs() <= SAME_BIRTH);
        let first = (0..=last).rev().take_while(|n| same(&self.stages[*n])).last()?;
        // Somebody who comes to the coach after it brings no plan that could rest.
        first.checked_sub(1).filter(|n| matches!(self.stages[*n].what, Stage::Pregnant { .. }))?;
        let begun = &self.stages[first];
        let after = || self.taken_up.iter().filter(|t| t.at >= begun.at).map(|t| t.what.0);
        let taken_up: Vec<Voice> =
            [Voice::Client, Voice::Coach].into_iter().filter(|v| after().any(|t| t == *v)).collect();
        (taken_up.len() < 2).then(|| Rest {
            record: self.stages[last].record,
            day,
            after_loss: matches!(self.stages[last].what, Stage::AfterLoss { .. }),
            taken_up,
        })
    }
}
