//! Path: her levels as steps, the log by session, the trend of her strength.

use chrono::NaiveDate;
use newel_engine::ids::{GroupId, LadderId, RecordId, RunId, SymptomId, VariantId};
use newel_engine::kit::Load;
use newel_engine::proposal::Ahead;
use newel_engine::proposal::Target;
use newel_engine::reason::Reason;
use newel_engine::record::{NextDay, Readiness, Reserve, Side, Symptom, TodayThing};
use serde::Serialize;
use ts_rs::TS;

/// The Path screen.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct PathView {
    /// Her ladders.
    pub ladders: Vec<LadderView>,
    /// Her sessions, the newest first.
    pub sessions: Vec<SessionLogView>,
    /// Her last weeks of seven days, the newest first.
    pub weeks: Vec<WeekView>,
}

/// How she stands on a ladder.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct LadderView {
    /// Ladder.
    pub ladder: LadderId,
    /// Each level's variants, easiest level first.
    pub levels: Vec<Vec<VariantId>>,
    /// Level now, 0 for the easiest; while it rests, where she stood; `None` before the first exposure.
    pub level: Option<u8>,
    /// True where a birth or a loss closed what was trained before.
    pub afresh: bool,
    /// Variant now.
    pub variant: Option<VariantId>,
    /// Load now.
    pub load: Option<Load>,
    /// True while a hold waits.
    pub held: bool,
    /// Why she stands there.
    pub reasons: Vec<Reason>,
    /// What leads up from there; `None` before the first time.
    pub next: Option<Ahead>,
    /// Trend of the one-rep max of the group of the variant now.
    pub trend: Option<TrendView>,
}

/// Trend of a one-rep max.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct TrendView {
    /// Strength group.
    pub group: GroupId,
    /// Points in order of day.
    pub points: Vec<TrendPoint>,
}

/// One-rep max on a day, in kilograms of effective load, with its 80 % band.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct TrendPoint {
    /// Day.
    pub day: NaiveDate,
    /// Estimate, kg.
    pub kg: f64,
    /// Lower end of the band, kg.
    pub low: f64,
    /// Upper end of the band, kg.
    pub high: f64,
    /// True if a symptom was marked on the ladder that day.
    pub marked: bool,
}

/// A session in the log.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SessionLogView {
    /// Run.
    pub run: RunId,
    /// Day.
    pub day: NaiveDate,
    /// Title of the planned session, if the plan is known.
    pub title: String,
    /// Readiness said.
    pub readiness: Option<Readiness>,
    /// What else she said of that day.
    pub today: Vec<TodayThing>,
    /// Sets in order.
    pub sets: Vec<SetLogView>,
    /// Symptoms that stand, with the ladder they belong to.
    pub marks: Vec<MarkLogView>,
    /// Session effort, CR10.
    pub effort: Option<u8>,
    /// Minutes.
    pub minutes: Option<u16>,
    /// Note.
    pub note: Option<String>,
    /// The next day.
    pub next_day: Option<NextDay>,
    /// True once it has ended.
    pub ended: bool,
}

/// A set in the log, beside what was planned.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SetLogView {
    /// Its record.
    pub record: RecordId,
    /// Ladder.
    pub ladder: LadderId,
    /// The side, where one side works at a time.
    pub side: Option<Side>,
    /// Variant.
    pub variant: VariantId,
    /// Load.
    pub load: Load,
    /// Reps or seconds done.
    pub done: Target,
    /// Reserve said.
    pub reserve: Option<Reserve>,
    /// Reserve meant.
    pub reserve_meant: Option<f64>,
    /// Planned reps or seconds.
    pub planned: Option<Target>,
    /// Planned load.
    pub planned_load: Option<Load>,
    /// Planned variant.
    pub planned_variant: Option<VariantId>,
    /// True when a mark ended it.
    pub stopped: bool,
    /// True if it was corrected later.
    pub corrected: bool,
}

/// A mark in the log.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct MarkLogView {
    /// Its record.
    pub mark: RecordId,
    /// Ladder.
    pub ladder: Option<LadderId>,
    /// What is known of it.
    pub symptom: Symptom,
    /// Round, from 1.
    pub round: Option<u8>,
}

/// A week of seven days at a glance.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct WeekView {
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
    /// Sessions.
    pub sessions: u32,
    /// Minutes of them.
    pub minutes: u32,
    /// Minutes of all activity that the guideline of her stage names, if there is one.
    pub guideline: Option<u32>,
    /// Where the guideline comes from.
    pub source: Option<String>,
    /// Working sets done.
    pub done: u32,
    /// Working sets planned.
    pub planned: u32,
    /// Reps left beyond those aimed at, on the average of the sets that said it; below 0 is harder than meant.
    pub effort: Option<f64>,
    /// Symptoms that stand, each once.
    pub marked: Vec<SymptomId>,
}
