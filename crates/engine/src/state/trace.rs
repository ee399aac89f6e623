//! How strength came to be what it is: what each set told, and the state after it, so that anyone can
//! work it out again (DESIGN 5.2). It is collected by the fold itself, and only when it is asked for.

use super::{Fold, Frame, State};
use crate::catalogue::Catalogue;
use crate::history::History;
use crate::ids::{GroupId, RecordId, RunId, VariantId};
use crate::kit::Load;
use crate::programme::Start;
use crate::rules::RulePack;
use crate::stage::Stage;
use crate::strength::{Constants, Tracker};
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use nalgebra::Matrix3;
use serde::Serialize;

/// All that moved the strength states of one person, in the order of the fold.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StrengthTrace {
    /// The constants of the filter.
    pub constants: Constants,
    /// Sets and fresh starts.
    pub steps: Vec<StrengthStep>,
}

/// One step of a trace.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "step", rename_all = "snake_case")]
pub enum StrengthStep {
    /// A birth, a loss or an operation: all states end, and the next set of each group begins a new one.
    FreshStart(FreshStart),
    /// A round that was evidence of strength.
    Set(Box<SetStep>),
    /// A round of a variant with a state that told nothing of it.
    NoEvidence(NoEvidence),
}

/// A round that left the state as it was.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NoEvidence {
    /// Records of the round; two where each side is a record.
    pub records: Vec<RecordId>,
    /// The run.
    pub run: RunId,
    /// Its local day.
    pub day: NaiveDate,
    /// The strength group.
    pub group: GroupId,
    /// The variant.
    pub variant: VariantId,
    /// Why it tells nothing.
    pub why: Silent,
    /// The state as it was before it and is after it, on the day of its last evidence; `None` where there is none yet.
    pub after: Option<StrengthState>,
}

/// Why a round tells nothing of strength. Work and finding count for `j` all the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Silent {
    /// It was done to learn the move.
    Learn,
    /// It was part of a finisher.
    Finisher,
    /// It was part of a warm-up or a cool-down.
    Ease,
    /// A mark ended it before its time.
    Stopped,
    /// Seconds were counted.
    Timed,
    /// What was left was not said.
    NoEffort,
    /// More was written down than anybody does or judges, or nothing.
    Implausible,
    /// Nothing was held, and no share of her body is known.
    NothingMoved,
}

/// A birth, a loss or an operation, as it closed the states of before.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FreshStart {
    /// The record of the stage, or of the screening that named an operation.
    pub record: RecordId,
    /// When it was written.
    pub at: DateTime<FixedOffset>,
    /// Day of the birth or loss; that on which an operation was named.
    pub day: NaiveDate,
    /// The stage; `None` for an operation.
    pub stage: Option<Stage>,
    /// Groups that had a state until then.
    pub ended: Vec<GroupId>,
}

/// What a round told, and the state after it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SetStep {
    /// Records of the round; two where each side is a record.
    pub records: Vec<RecordId>,
    /// The record that was taken as evidence: of two sides the one with fewer reps to failure.
    pub taken: RecordId,
    /// The run.
    pub run: RunId,
    /// Its local day.
    pub day: NaiveDate,
    /// The strength group.
    pub group: GroupId,
    /// The variant.
    pub variant: VariantId,
    /// What was held.
    pub load: Load,
    /// What that comes to, in kg; below 0 where bands carry part of her.
    pub external: Kg,
    /// Her body, where it is part of what is moved.
    pub body: Option<BodyPart>,
    /// The effective load W, in kg.
    pub effective: Kg,
    /// Reps done.
    pub reps: f64,
    /// Reps in reserve as said.
    pub reserve: f64,
    /// True if the reserve is a bound: so many or more.
    pub at_least: bool,
    /// Earlier working sets of the group on the day; those that were no evidence count.
    pub j: f64,
    /// How the state began, where it began with this set.
    pub start: Option<StrengthStart>,
    /// The state after the set.
    pub after: StrengthState,
    /// Ten-rep max, with its band.
    pub ten_rep_max: RepMax,
    /// One-rep max, with its band.
    pub one_rep_max: RepMax,
}

/// Body mass as part of an effective load.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BodyPart {
    /// Body mass used.
    pub mass: Kg,
    /// True if none was recorded, so that one was assumed.
    pub assumed: bool,
    /// Share of it that the muscles move.
    pub share: f64,
}

/// How a state began.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StrengthStart {
    /// Effective load that it began from, in kg.
    pub load: Kg,
    /// True if that was the coach's start load; else it is that of the set.
    pub by_coach: bool,
    /// Bottom of the rep range.
    pub bottom: f64,
    /// Reps in reserve aimed at.
    pub target: f64,
    /// The state before the set.
    pub state: StrengthState,
}

/// A state of the filter.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StrengthState {
    /// ln of the ten-rep-max effective load in kg.
    pub b: f64,
    /// Reps per unit of ln load.
    pub c: f64,
    /// How the day differs from usual, in ln load.
    pub d: f64,
    /// Covariance of (b, c, d), row by row.
    pub covariance: [[f64; 3]; 3],
    /// Day of the first set of the state.
    pub first: NaiveDate,
    /// Day that the state stands on.
    pub day: NaiveDate,
}

/// A rep max in kg of effective load; the band holds 80 %.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RepMax {
    /// Estimate.
    pub estimate: Kg,
    /// Low end.
    pub low: Kg,
    /// High end.
    pub high: Kg,
}

impl StrengthTrace {
    /// Folds a history as [`State::of`] does, and keeps what moved strength. The coach's `starts` are those
    /// that came with the plan, with the local day on which it was made.
    #[must_use]
    pub fn of(
        history: &History,
        catalogue: &Catalogue,
        rules: &RulePack,
        (starts, starts_of): (&[Start], Option<NaiveDate>),
    ) -> Self {
        // The day of a frame is looked at only when a fold is finished to a state.
        let frame = Frame { catalogue, rules, starts, starts_of, day: NaiveDate::MIN };
        let mut fold = Fold { trace: Some(Vec::new()), ..Fold::default() };
        for run in &history.runs {
            fold.take(history, run, frame);
        }
        fold.enter_stages(history, None, frame);
        Self { constants: Constants::of(rules), steps: fold.trace.unwrap_or_default() }
    }

    /// The sets, without the fresh starts.
    pub fn sets(&self) -> impl Iterator<Item = &SetStep> {
        self.steps.iter().filter_map(|step| match step {
            StrengthStep::Set(set) => Some(&**set),
            StrengthStep::FreshStart(_) | StrengthStep::NoEvidence(_) => None,
        })
    }
}

impl StrengthState {
    pub(super) fn of(tracker: &Tracker) -> Self {
        let rows = |m: &Matrix3<f64>| [0, 1, 2].map(|r| [0, 1, 2].map(|c| m[(r, c)]));
        Self {
            b: tracker.mean[0],
            c: tracker.mean[1],
            d: tracker.mean[2],
            covariance: rows(&tracker.cov),
            first: tracker.first,
            day: tracker.day,
        }
    }
}

impl RepMax {
    pub(super) fn of(tracker: &Tracker, reps: f64) -> Self {
        let (estimate, low, high) = tracker.rep_max(reps);
        Self { estimate, low, high }
    }
}

impl State {
    /// Groups with a strength state.
    pub(super) fn groups(&self) -> Vec<GroupId> {
        self.trackers.keys().cloned().collect()
    }
}
