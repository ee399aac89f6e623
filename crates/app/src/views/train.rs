//! Train: before, during and after a session.

use super::common::PersonView;
use super::safety::PlanRestView;
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{BlockId, ConditionId, LadderId, RecordId, RunId, SlotId, SymptomId, VariantId};
use newel_engine::kit::{Load, Thing};
use newel_engine::programme::{Amount, BlockForm, Tempo};
use newel_engine::proposal::{Offer, Proposal, Target};
use newel_engine::reason::Reason;
use newel_engine::record::{Purpose, Readiness, Reserve, Side, Symptom, TodayThing};
use newel_engine::rules::{AmountForm, Class, Scope, Shelf, Urgency};
use newel_engine::screening::ScreenDue;
use newel_engine::wording::VariantWords;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The Train screen.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct TrainView {
    /// The client.
    pub person: PersonView,
    /// The local day.
    pub today: NaiveDate,
    /// What is in hand.
    pub state: TrainState,
    /// Symptom kinds to choose from today, in order.
    pub kinds: Vec<KindView>,
}

/// What is in hand.
#[allow(clippy::large_enum_variant, reason = "one is made for each call and sent at once")]
#[derive(Clone, Debug, Serialize, TS)]
#[serde(tag = "state", rename_all = "snake_case")]
#[ts(export)]
pub enum TrainState {
    /// No plan was taken in yet.
    NoPlan,
    /// Training is closed: a red flag, a hold on everything, or a clearance that screening asks for.
    Closed(ClosedView),
    /// A session may begin.
    Ready(ReadyView),
    /// A session is under way.
    Session(SessionView),
    /// A session has ended today; what comes next.
    Finished(FinishedView),
}

/// What closed training.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum ClosedKind {
    /// A sign that needs care.
    Red,
    /// A hold on everything.
    Hold,
    /// Screening asks for a clearance before anything.
    Clearance,
    /// The plan rests after a birth or a loss.
    Rest,
}

/// Why training is closed.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ClosedView {
    /// What kind of closing it is.
    pub kind: ClosedKind,
    /// The record that closed it.
    pub by: Option<RecordId>,
    /// The plan that rests, with who has said that it goes on.
    pub rest: Option<PlanRestView>,
    /// The condition that a clearance is asked for, if one is.
    pub condition: Option<ConditionId>,
    /// The symptom, if one closed it.
    pub symptom: Option<SymptomId>,
    /// Other signs that stop training, the most urgent first.
    pub also: Vec<SymptomId>,
    /// Red, or a hold.
    pub class: Class,
    /// How urgent care is, for a red flag.
    pub urgency: Option<Urgency>,
    /// True while it can still be taken back as not meant.
    pub can_withdraw: bool,
    /// The run that it stopped and that is still open, to be confirmed with `session_finish`.
    pub open_run: Option<RunId>,
    /// The set that it stopped, if one was in hand and nothing of it is logged.
    pub stopped: Option<StoppedView>,
    /// Why, in full.
    pub reasons: Vec<Reason>,
}

/// A set that a mark stopped.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct StoppedView {
    /// Variant.
    pub variant: VariantId,
    /// What was held.
    pub load: Load,
    /// True when seconds are counted.
    pub timed: bool,
}

/// Before a session.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ReadyView {
    /// Title of the session.
    pub title: String,
    /// Number of the session in the programme, from 1, and sessions in the programme.
    pub number: u8,
    /// How many the programme has.
    pub of: u8,
    /// Programme.
    pub programme: String,
    /// The week of the programme, from 1.
    pub week: u32,
    /// For how many weeks it was written, if that was said.
    pub weeks: Option<u8>,
    /// True when all its weeks are trained: what comes now goes round once more.
    pub over: bool,
    /// The phase that it belongs to, by name, if there are phases.
    pub phase: Option<String>,
    /// True in a light week.
    pub light: bool,
    /// The day on which it begins, while that lies ahead; she may begin earlier.
    pub begins: Option<NaiveDate>,
    /// The programme that follows on its day, while this one is in force until then.
    pub later: Option<LaterView>,
    /// The programme that is in force until then, where this one is looked at before its day.
    pub until_then: Option<String>,
    /// Estimated minutes.
    pub minutes: u16,
    /// True while there has been no screening.
    pub about_unknown: bool,
    /// Screening that is due again, if it is.
    pub screen_due: Option<ScreenDue>,
    /// Her conditions that count today; those with something to mind say it at check-in.
    pub conditions: Vec<ConditionId>,
    /// What is proposed, slot by slot.
    pub slots: Vec<Proposal>,
    /// Blocks, for an overview.
    pub blocks: Vec<BlockView>,
    /// A session whose next day has not been asked about yet.
    pub next_day: Option<NextDayView>,
    /// What else she may say of today.
    pub today: Vec<TodayThing>,
    /// Levels of readiness to choose from.
    pub readiness: Vec<Readiness>,
    /// Day of the session before, if there was one.
    pub last: Option<NaiveDate>,
    /// Sets of the session before, where it was left and never ended.
    pub left_open: Option<u16>,
    /// True if her kit has never been recorded.
    pub kit_unknown: bool,
}

/// A programme that waits for its day.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct LaterView {
    /// Its title.
    pub programme: String,
    /// The day on which it begins.
    pub begins: NaiveDate,
}

/// A session whose next day has not been asked about yet.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct NextDayView {
    /// The run.
    pub run: RunId,
    /// Its day.
    pub day: NaiveDate,
    /// Symptoms marked in it.
    pub marked: Vec<SymptomId>,
}

/// A block at a glance.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct BlockView {
    /// Block.
    pub block: BlockId,
    /// Form.
    pub form: BlockForm,
    /// Rounds.
    pub rounds: u8,
    /// Rest after a round, in seconds.
    pub rest_seconds: u16,
    /// Its slots.
    pub slots: Vec<SlotView>,
    /// Loads to lay out.
    pub loads: Vec<Load>,
    /// Things to lay out.
    pub things: Vec<Thing>,
}

/// A slot at a glance; `variant` is absent when it rests.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SlotView {
    /// Slot.
    pub slot: SlotId,
    /// Ladder.
    pub ladder: LadderId,
    /// Variant, load and target; `None` when it rests today.
    pub today: Option<SlotToday>,
}

/// What a slot asks for today.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SlotToday {
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels in all.
    pub levels: u8,
    /// Variant.
    pub variant: VariantId,
    /// Load.
    pub load: Load,
    /// Reps or seconds.
    pub target: Target,
    /// True when each side is done in turn.
    pub per_side: bool,
}

/// A session under way.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SessionView {
    /// The run.
    pub run: RunId,
    /// Title.
    pub title: String,
    /// When it began.
    pub started: DateTime<FixedOffset>,
    /// The flight of steps: one for each set in order.
    pub steps: Vec<StepView>,
    /// The set to do now; `None` when all are done: the finish card.
    pub work: Option<WorkView>,
    /// Rest before it, by deadline; `None` if none is due. May lie in the past.
    pub rest: Option<RestView>,
    /// The block that begins with `work`, to be shown before it.
    pub opens: Option<BlockView>,
    /// What comes after `work`, at most two.
    pub then: Vec<WorkPeek>,
    /// The last set logged, which can be corrected or taken back.
    pub last: Option<LoggedView>,
    /// Marks of this session that stand.
    pub marks: Vec<MarkView>,
    /// What check-in changed, as reasons.
    pub changed: Vec<Reason>,
    /// Minutes since it began, for the finish card.
    pub minutes: u16,
    /// True if the ten-minute version can still shorten what is left.
    pub can_shorten: bool,
}

/// One step of the flight.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct StepView {
    /// How it stands.
    pub state: StepState,
    /// True for the first set of a block.
    pub starts_block: bool,
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum StepState {
    /// Done.
    Done,
    /// Left out.
    Skipped,
    /// Now.
    Now,
    /// Ahead.
    Ahead,
}

/// A work card.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct WorkView {
    /// Block.
    pub block: BlockId,
    /// Form of the block.
    pub form: BlockForm,
    /// Slot.
    pub slot: SlotId,
    /// Round, from 1.
    pub round: u8,
    /// Rounds in all.
    pub rounds: u8,
    /// Move within the round, from 1.
    pub position: u8,
    /// Moves in a round.
    pub positions: u8,
    /// Ladder.
    pub ladder: LadderId,
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels in all.
    pub levels: u8,
    /// Variant.
    pub variant: VariantId,
    /// The side to do now, where one side works at a time.
    pub side: Option<Side>,
    /// Cues in `catalogue.ftl` (`.cue1` on).
    pub cues: u8,
    /// The coach's own cues and picture, in the place of the built-in ones.
    pub own: Option<VariantWords>,
    /// Load, prefilled.
    pub load: Load,
    /// Loads that her kit can make for this variant, lightest first; empty when nothing is held.
    pub loads: Vec<Load>,
    /// Reps or seconds, prefilled.
    pub target: Target,
    /// The range of the dose.
    pub range: Amount,
    /// The tap that is the aim, 0 to 5 (5 means 5 or more); `None` for timed sets.
    pub aim: Option<u8>,
    /// True if effort is asked.
    pub asks_effort: bool,
    /// What the set is for.
    pub purpose: Purpose,
    /// Tempo.
    pub tempo: Option<Tempo>,
    /// Why this and not something else.
    pub reasons: Vec<Reason>,
    /// Other options that are allowed now, easiest first.
    pub options: Vec<Offer>,
    /// The next easier option, if there is one.
    pub easier: Option<Offer>,
    /// A lighter load offered in mid-session: the last set left too little.
    pub lighter_offer: Option<Load>,
    /// True when breath, range or position is to change after a symptom.
    pub cue_change: bool,
    /// True on a first exposure without a start load: "ten reps with what?" may be asked.
    pub ask_ten_reps: bool,
}

/// A set that comes later.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct WorkPeek {
    /// Variant.
    pub variant: VariantId,
    /// Load.
    pub load: Load,
    /// Reps or seconds.
    pub target: Target,
    /// The side, where one side works at a time.
    pub side: Option<Side>,
    /// Round, from 1.
    pub round: u8,
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels in all.
    pub levels: u8,
}

/// A rest.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct RestView {
    /// Names this rest: the record after which it runs. A screen that has left it does not come back to it.
    pub after: RecordId,
    /// When it ends.
    pub until: DateTime<FixedOffset>,
    /// Its length in seconds.
    pub seconds: u16,
}

/// The set logged last.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct LoggedView {
    /// The record.
    pub record: RecordId,
    /// Slot.
    pub slot: SlotId,
    /// Round, from 1.
    pub round: u8,
    /// The side, where one side works at a time.
    pub side: Option<Side>,
    /// Variant.
    pub variant: VariantId,
    /// Load.
    pub load: Load,
    /// Reps or seconds.
    pub done: Target,
    /// Reserve said.
    pub reserve: Option<Reserve>,
    /// True when it went as proposed (reps and load).
    pub as_planned: bool,
}

/// A symptom kind to choose from.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct KindView {
    /// Kind; its words stand in `symptoms.ftl`.
    pub id: SymptomId,
    /// Where it stands on the card.
    pub shelf: Shelf,
    /// How its amount is asked for.
    pub amount: AmountForm,
    /// Urgency, for the kinds that stop training.
    pub urgency: Option<Urgency>,
}

/// A mark and what it does.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct MarkView {
    /// The record of the mark itself.
    pub mark: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// The slot and round (from 1) it belongs to.
    pub slot: Option<SlotId>,
    /// Its ladder.
    pub ladder: Option<LadderId>,
    /// Round, from 1.
    pub round: Option<u8>,
    /// True when marked at rest.
    pub at_rest: bool,
    /// What is known of it.
    pub symptom: Symptom,
    /// Its class as things stand.
    pub class: Class,
    /// True if the set in hand ends.
    pub ends_set: bool,
    /// What follows.
    pub follows: Follows,
    /// Why.
    pub reasons: Vec<Reason>,
    /// True while it can be taken back.
    pub can_withdraw: bool,
}

/// What follows from a mark, now and next time.
#[derive(Clone, Debug, Serialize, TS)]
#[serde(tag = "now", rename_all = "snake_case")]
#[ts(export)]
pub enum Follows {
    /// Written down; nothing changes.
    Noted,
    /// Breath, range or position changes for the next set.
    Cue,
    /// An easier option for the rest of today; next time starts there.
    Easier {
        /// The option.
        offer: Offer,
        /// Levels of the ladder.
        levels: u8,
    },
    /// This ladder ends for today; the coach is asked if `held`.
    LadderEnds {
        /// True when it rests until the coach has answered.
        held: bool,
    },
    /// The rest of the session without load, lying or seated.
    Unloaded,
    /// Its scope rests until the coach or provider has answered.
    Hold {
        /// Scope.
        scope: Scope,
        /// True when the session ends.
        ends_session: bool,
    },
    /// Training stops; care is sought.
    Stop {
        /// How urgent.
        urgency: Urgency,
    },
}

/// After a session.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct FinishedView {
    /// The run.
    pub run: RunId,
    /// Title.
    pub title: String,
    /// Sets done, and sets planned.
    pub sets_done: u16,
    /// Sets planned.
    pub sets_planned: u16,
    /// Minutes.
    pub minutes: Option<u16>,
    /// Session effort.
    pub effort: Option<u8>,
    /// Symptoms marked.
    pub marks: Vec<MarkView>,
    /// The next session's title.
    pub next_title: String,
    /// What comes next, slot by slot, with reasons.
    pub next: Vec<Proposal>,
}

/// A mark just made or described, and the session as it stands after it.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct MarkedView {
    /// The mark.
    pub mark: MarkView,
    /// The Train screen after it.
    pub train: TrainView,
}

/// A set as the client logs it.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct SetForm {
    /// Run.
    pub run: RunId,
    /// Slot.
    pub slot: SlotId,
    /// Round, from 1.
    pub round: u8,
    /// The side, where one side works at a time.
    pub side: Option<Side>,
    /// Variant.
    pub variant: VariantId,
    /// What was held.
    pub load: Load,
    /// Reps or seconds done.
    pub done: Target,
    /// How many more she could have done.
    pub reserve: Option<Reserve>,
}

/// A logged set as it should have been.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct CorrectionForm {
    /// The record of the set.
    pub record: RecordId,
    /// What was held.
    pub load: Load,
    /// Reps or seconds done.
    pub done: Target,
    /// How many more she could have done.
    pub reserve: Option<Reserve>,
}

/// The end of a session as she fills it in.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct FinishForm {
    /// Run.
    pub run: RunId,
    /// Session effort, CR10, 0 to 10.
    pub effort: Option<u8>,
    /// Minutes.
    pub minutes: Option<u16>,
    /// Note.
    pub note: Option<String>,
    /// Reps or seconds done in the set that a mark stopped, if she says so.
    #[serde(default)]
    pub stopped_at: Option<u16>,
}

/// How she is before a session.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct CheckInForm {
    /// Readiness.
    pub readiness: Readiness,
    /// Symptoms since last time.
    pub symptoms: Vec<Symptom>,
    /// What else there is today.
    #[serde(default)]
    pub today: Vec<TodayThing>,
}

impl CheckInForm {
    /// With nothing else today.
    #[must_use]
    pub fn of(readiness: Readiness, symptoms: Vec<Symptom>) -> Self {
        Self { readiness, symptoms, today: Vec::new() }
    }
}
