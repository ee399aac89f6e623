//! What is known of a client's safety: stage, screening, clearances, what is ruled out and why. The same for both roles.

use super::coach::{RestrictionView, RuleSettingView};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::ground::RuledOut;
use newel_engine::ids::{ConditionId, PersonId, RecordId, RuleId, SymptomId};
use newel_engine::impact::CheckStanding;
use newel_engine::reason::Reason;
use newel_engine::record::{Baseline, CheckResult, ClearedThing, Voice};
use newel_engine::rules::{
    Asks, Class, ConditionGroup, MaySet, ReadinessCheck, Scope, SettingTarget, SettingValue, Urgency,
};
use newel_engine::screening::ScreenDue;
use newel_engine::stage::{DatedBy, Disagreement, Stage, StageOn, Told};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// A client's safety page.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SafetyView {
    /// Whose.
    pub person: PersonId,
    /// Her name.
    pub name: String,
    /// Today.
    pub today: NaiveDate,
    /// Stage today.
    pub stage: Option<StageOn>,
    /// Stage as it holds.
    pub recorded: Option<Stage>,
    /// The due date, if she is pregnant and dated.
    pub due: Option<DueView>,
    /// Where what was told and what was reckoned are far apart.
    pub disagreement: Option<Disagreement>,
    /// Stages that stand beside the one that holds.
    pub aside: Vec<StageAsideView>,
    /// The stage recorded last on this device, if it still can be taken back: within a day.
    pub own_stage: Option<RecordId>,
    /// The plan rests after a birth or a loss.
    pub rest: Option<PlanRestView>,
    /// Why nothing is trained; empty if training is open.
    pub closed: Vec<Reason>,
    /// What a clearance can speak of now.
    pub open: Vec<OpenThing>,
    /// Clearances, the newest first.
    pub clearances: Vec<ClearanceView>,
    /// Red flags and holds, the newest first.
    pub signs: Vec<SignView>,
    /// Conditions that count, of all intakes that stand.
    pub conditions: Vec<ConditionView>,
    /// Usual symptoms that count.
    pub baselines: Vec<Baseline>,
    /// True for somebody who has trained with weights before.
    pub trained: bool,
    /// True for somebody who has never trained with weights.
    pub never: bool,
    /// The intakes that stand, the client's and the coach's.
    pub intakes: Vec<IntakeView>,
    /// What is ruled out today, with what rules it out.
    pub ruled_out: Vec<RuledOutView>,
    /// Restrictions that the coach set and that hold.
    pub restrictions: Vec<RestrictionView>,
    /// Effort that her stage asks for.
    pub effort: Option<StageEffortView>,
    /// Checks before impact, where the stage asks for them.
    pub impact: Option<ImpactView>,
    /// Screenings that are due, the latest set point first.
    pub screen_due: Vec<ScreenDue>,
    /// What was loosened, with its note, the newest first.
    pub loosened: Vec<LoosenedView>,
    /// Rules that the coach set for her, in force or not, the newest first; for the coach alone.
    pub settings: Vec<RuleSettingView>,
    /// What can be set for her; for the coach alone.
    pub settable: Vec<SettableView>,
    /// Conditions that are asked for at her stage.
    pub choices: Vec<ConditionChoice>,
    /// Symptom kinds that can be usual.
    pub baseline_kinds: Vec<SymptomId>,
}

/// The checks before impact, and what they open.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ImpactView {
    /// The week from which on there may be any; absent once it is reached.
    pub from_week: Option<u32>,
    /// False where the coach does not ask for the checks.
    pub asked: bool,
    /// Landing on both feet is open.
    pub opens_first: bool,
    /// Landing on one leg is open, too.
    pub opens_all: bool,
    /// The checks in their order.
    pub checks: Vec<CheckView>,
}

/// A check before impact.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct CheckView {
    /// What is tried.
    pub what: ReadinessCheck,
    /// How it stands.
    pub standing: CheckStanding,
}

/// How checks before impact went.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct ImpactForm {
    /// The day.
    pub on: NaiveDate,
    /// What was tried.
    pub results: Vec<CheckResult>,
    /// In words; may be empty.
    pub note: String,
}

/// A due date with what it rests on.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct DueView {
    /// The date.
    pub on: NaiveDate,
    /// What it rests on.
    pub by: DatedBy,
    /// Who gave it, if a clinician did.
    pub told: Option<Told>,
}

/// A stage that stands beside the one that holds.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct StageAsideView {
    /// Its record.
    pub record: RecordId,
    /// When it was written.
    pub day: NaiveDate,
    /// What it says.
    pub stage: Stage,
    /// True if this device wrote it.
    pub own: bool,
}

/// The plan rests.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct PlanRestView {
    /// Day of the birth or the loss.
    pub day: NaiveDate,
    /// True after a loss.
    pub after_loss: bool,
    /// The client has said that it goes on.
    pub client: bool,
    /// The coach has said that it goes on.
    pub coach: bool,
}

/// Something that a clearance can speak of.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct OpenThing {
    /// What goes into the clearance.
    pub thing: ClearedThing,
    /// `birth`, `birth-unsaid`, `condition`, `red` or `hold`.
    pub slug: String,
    /// The condition, if it is one.
    pub condition: Option<ConditionId>,
    /// The symptom, if it is a sign.
    pub symptom: Option<SymptomId>,
    /// The day of a sign.
    pub day: Option<NaiveDate>,
    /// What training waits for.
    pub asks: Asks,
    /// The last day of a clearance that has run out.
    pub ran_out: Option<NaiveDate>,
}

/// A clearance.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ClearanceView {
    /// Its record.
    pub record: RecordId,
    /// Who.
    pub who: String,
    /// When.
    pub on: NaiveDate,
    /// What was said.
    pub said: String,
    /// What it speaks of, in the words of [`OpenThing`]; empty if of all that waited.
    pub speaks_of: Vec<ClearedThing>,
    /// Symptoms of the signs that it speaks of.
    pub symptoms: Vec<SymptomId>,
    /// Its last day.
    pub until: Option<NaiveDate>,
    /// True if it holds today.
    pub holds: bool,
    /// True if this device wrote it.
    pub own: bool,
}

/// A clearance as it is filled in.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct ClearanceForm {
    /// Who gave it.
    pub who: String,
    /// When.
    pub on: NaiveDate,
    /// What was said.
    pub said: String,
    /// What it speaks of; at least one thing.
    pub speaks_of: Vec<ClearedThing>,
    /// Its last day.
    pub until: Option<NaiveDate>,
}

/// A red flag or a hold.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SignView {
    /// Its record.
    pub record: RecordId,
    /// When it was said.
    pub at: DateTime<FixedOffset>,
    /// The symptom.
    pub symptom: SymptomId,
    /// How urgent, for a red flag.
    pub urgency: Option<Urgency>,
    /// What it rests.
    pub scope: Scope,
    /// True while it waits.
    pub waits: bool,
}

/// A condition that counts.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ConditionView {
    /// Which.
    pub condition: ConditionId,
    /// Who named it.
    pub by: Vec<Voice>,
    /// What it asks for at her stage.
    pub asks: Asks,
    /// True if there is something to mind at each session (`condition-<id>.care`).
    pub source: String,
}

/// An intake that stands.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct IntakeView {
    /// Its record.
    pub record: RecordId,
    /// Its day.
    pub day: NaiveDate,
    /// Who filled it in.
    pub by: Voice,
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// Trained before.
    pub trained: bool,
    /// Never trained with weights.
    #[serde(default)]
    pub never: bool,
    /// In words.
    pub note: Option<String>,
}

/// An intake as it is filled in.
#[derive(Clone, Debug, Default, Deserialize, TS)]
#[ts(export)]
pub struct IntakeForm {
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// Trained before.
    pub trained: bool,
    /// Never trained with weights.
    #[serde(default)]
    pub never: bool,
    /// What else there is to know.
    pub note: Option<String>,
    /// Intakes of the client's that were talked over; from the coach alone.
    #[serde(default)]
    pub instead_of: Vec<RecordId>,
}

/// Something that is ruled out, with its source.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct RuledOutView {
    /// What, and by what.
    #[serde(flatten)]
    pub out: RuledOut,
    /// Where the rule comes from.
    pub source: String,
}

/// Effort that a stage asks for.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct StageEffortView {
    /// The rule.
    pub rule: RuleId,
    /// Least to aim at.
    pub target: f64,
    /// Never below.
    pub floor: f64,
    /// Most sets.
    pub most_sets: Option<u8>,
    /// Breathing alone.
    pub breathing_only: bool,
    /// False when nothing is held.
    pub load_allowed: bool,
    /// Where it comes from.
    pub source: String,
}

/// Something that was loosened.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct LoosenedView {
    /// Its record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// `rule` or `intake`.
    pub what: String,
    /// The rule, if it was one.
    pub rule: Option<String>,
    /// Why.
    pub note: String,
    /// True if it holds today.
    pub in_force: bool,
}

/// Something of the rule pack that a coach can set for a client.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SettableView {
    /// What a setting names.
    pub target: SettingTarget,
    /// The Fluent id of the rule's sentence; that of the kind for a symptom.
    pub sentence: String,
    /// The rule's numbers, as the sentence says them, with the one in question as it is in force.
    pub numbers: BTreeMap<String, f64>,
    /// As it is in force.
    pub now: SettingValue,
    /// As the pack says.
    pub pack: SettingValue,
    /// Bounds and the stricter way, of a number.
    pub may: Option<MaySet>,
    /// Classes that it can be set to, of a symptom; the pack's own and what is stricter, or milder with a note.
    pub classes: Vec<Class>,
}

/// A condition on the screening form.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ConditionChoice {
    /// Which.
    pub condition: ConditionId,
    /// Where it stands.
    pub group: ConditionGroup,
    /// What it asks for at her stage.
    pub asks: Asks,
}
