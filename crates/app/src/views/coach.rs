//! The coach's screens: Roster, Desk, Planbook.

use super::arrange::{FilesView, GroupView, KitShort, ProgrammeWeek, WaitsView};
use super::path::{LadderView, SessionLogView};
use super::safety::{ConditionChoice, IntakeForm};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ids::{ConditionId, LadderId, PersonId, RecordId, SymptomId, VariantId};
use newel_engine::programme::{Programme, Start};
use newel_engine::proposal::SessionProposal;
use newel_engine::reason::Fact;
use newel_engine::record::{Baseline, HoldAnswer, RestrictionKind};
use newel_engine::rules::{Direction, RuleSetting, SettingError, SettingValue};
use newel_engine::stage::{Stage, StageOn};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// How soon the coach should look. Earlier is sooner.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Urge {
    /// Training is stopped.
    Stop,
    /// Something waits for her.
    Attention,
    /// Worth a look.
    Look,
}

/// One thing that the Desk says of a client; `desk-<code>` in `desk.ftl` is its sentence.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct FindingView {
    /// Code.
    pub code: String,
    /// How soon.
    pub urge: Urge,
    /// Values by name.
    pub facts: BTreeMap<String, Fact>,
}

/// The Desk: whom to look at first.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct DeskView {
    /// Who needs a look, most urgent first.
    pub queue: Vec<DeskEntry>,
    /// Who needs none, by name.
    pub well: Vec<DeskEntry>,
    /// Of how many more it is still being worked out; asking again brings them.
    pub unread: u32,
    /// Records taken in within the last 24 hours, and files.
    pub taken_in: u32,
}

/// A client on the Desk.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct DeskEntry {
    /// Client.
    pub person: PersonId,
    /// Name.
    pub name: String,
    /// Stage today.
    pub stage: Option<StageOn>,
    /// What there is to see, most urgent first.
    pub findings: Vec<FindingView>,
    /// Day of the last session.
    pub last_session: Option<NaiveDate>,
}

/// One client's story.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ClientView {
    /// Roster line.
    pub client: RosterEntry,
    /// What can be set for her, by ladder of her programme.
    pub choices: Vec<LadderChoice>,
    /// What there is to see.
    pub findings: Vec<FindingView>,
    /// Ladders of her programme.
    pub ladders: Vec<LadderView>,
    /// Sessions, the newest first.
    pub sessions: Vec<SessionLogView>,
    /// Holds that wait for an answer.
    pub holds: Vec<HoldView>,
    /// True while a red flag waits for a clearance.
    pub red: bool,
    /// What the coach wrote and set, the newest first.
    pub answers: Vec<AnswerView>,
    /// What she would train next.
    pub next: Option<SessionProposal>,
    /// Title of that session.
    pub next_title: String,
}

/// A hold that waits for an answer.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct HoldView {
    /// The record that made it; what `hold_answer` takes.
    pub hold: RecordId,
    /// Day.
    pub day: NaiveDate,
    /// Symptom.
    pub symptom: Option<SymptomId>,
    /// Ladder, if it closes one alone.
    pub ladder: Option<LadderId>,
    /// Scope.
    pub scope: newel_engine::rules::Scope,
    /// Answers that fit.
    pub answers: Vec<HoldAnswer>,
}

/// Something that the coach wrote or set.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct AnswerView {
    /// Its record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Kind of the record (`note`, `override`, `hold_answered`, `restriction`, `clearance`, `rule_setting`, ...).
    pub kind: String,
    /// Its words.
    pub text: String,
    /// True once a plan file with it was written.
    pub sent: bool,
}

/// The Roster.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct RosterView {
    /// The local day.
    pub today: NaiveDate,
    /// Clients by name.
    pub clients: Vec<RosterEntry>,
    /// Those laid aside, by name.
    pub archived: Vec<RosterEntry>,
    /// Of how many more it is still being worked out; asking again brings them.
    pub unread: u32,
    /// The coach's groups, in her order.
    pub groups: Vec<GroupView>,
    /// Conditions that can be recorded, at any stage.
    pub conditions: Vec<ConditionChoice>,
    /// Symptom kinds that can be a baseline.
    pub baseline_kinds: Vec<SymptomId>,
    /// Programmes to give.
    pub programmes: Vec<Programme>,
    /// Every ladder with its levels.
    pub ladders: Vec<LadderChoice>,
}

/// A client on the Roster.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct RosterEntry {
    /// Client.
    pub person: PersonId,
    /// Name.
    pub name: String,
    /// Stage today.
    pub stage: Option<StageOn>,
    /// Stage as recorded.
    pub stage_recorded: Option<Stage>,
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// True for somebody who has trained with weights before.
    pub trained: bool,
    /// True for somebody who has never trained with weights.
    pub never: bool,
    /// Restrictions in force.
    pub restrictions: Vec<RestrictionView>,
    /// True when a clearance is asked for and missing.
    pub clearance_waits: bool,
    /// The last clearance that holds: who gave it, and when.
    pub cleared: Option<(String, NaiveDate)>,
    /// The client's own intake, if one stands.
    pub own_intake: Option<RecordId>,
    /// Programme's title.
    pub programme: Option<String>,
    /// How far it has come.
    pub week: Option<ProgrammeWeek>,
    /// Last session.
    pub last_session: Option<NaiveDate>,
    /// Whole days since.
    pub last_days: Option<u32>,
    /// Records of her log that are here.
    pub records: u32,
    /// Ladders of her programme.
    pub ladders: Vec<LadderId>,
    /// What she owns, in short; `None` while she has not said.
    pub kit: Option<KitShort>,
    /// How the files between the two stand.
    pub files: FilesView,
    /// What waits for the coach.
    pub waits: WaitsView,
}

/// A ladder with its levels, for a choice.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct LadderChoice {
    /// Ladder.
    pub ladder: LadderId,
    /// Variants of each level.
    pub levels: Vec<Vec<VariantId>>,
}

/// A restriction in force.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[ts(export)]
pub struct RestrictionView {
    /// Its record.
    pub record: RecordId,
    /// What.
    pub what: RestrictionKind,
    /// Until.
    pub until: Option<NaiveDate>,
    /// Why.
    pub note: String,
}

/// What the coach fills in for a client.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct ClientForm {
    /// Name.
    pub name: String,
    /// Stage.
    pub stage: Option<Stage>,
    /// What screening found; left as it was if absent.
    #[serde(default)]
    pub intake: Option<IntakeForm>,
}

/// An override as the coach fills it in.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct OverrideForm {
    /// Where she is to start.
    pub start: Start,
    /// Why.
    pub note: String,
}

/// A rule that was set for a client, in force or not.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct RuleSettingView {
    /// Its record.
    pub record: RecordId,
    /// When it was written.
    pub at: DateTime<FixedOffset>,
    /// What was set, with its note.
    pub setting: RuleSetting,
    /// What the pack says of the same thing; `None` if it has no such thing.
    pub pack: Option<SettingValue>,
    /// What it does, if it is well founded.
    pub direction: Option<Direction>,
    /// Why it has no effect, if it is not.
    pub refused: Option<SettingError>,
    /// True if it is the one that holds today.
    pub in_force: bool,
    /// True if this device wrote it, so that it can be taken back here.
    pub own: bool,
}
