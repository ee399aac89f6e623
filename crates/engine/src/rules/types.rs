//! The shapes of the rule pack: rules, effort by stage, symptom kinds, conditions.

use super::setting::MaySet;
use crate::ids::{CheckId, ConditionId, RuleId, SymptomId};
use crate::stage::StageOn;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// A rule: its numbers and where they come from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// Id.
    pub id: RuleId,
    /// Its numbers by name.
    #[serde(default)]
    pub numbers: BTreeMap<String, f64>,
    /// Those of its numbers that a coach may set for a client. The others cannot be set.
    #[serde(default)]
    pub may_set: BTreeMap<String, MaySet>,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}

/// Target effort for a stretch of a stage.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EffortRule {
    /// Rule id.
    pub id: RuleId,
    /// Stage it speaks of.
    pub stage: StageName,
    /// From this completed week on (of pregnancy, or since birth).
    pub from_week: u32,
    /// Up to, not including, this week.
    #[serde(default)]
    pub before_week: Option<u32>,
    /// Least reps in reserve to aim at, new to lifting.
    pub least_target: f64,
    /// Least reps in reserve to aim at for somebody trained; as for the new if absent.
    #[serde(default)]
    pub trained_target: Option<f64>,
    /// Least reps in reserve ever meant (the floor).
    pub least_floor: f64,
    /// Most sets of a slot; all that are written if absent.
    #[serde(default)]
    pub most_sets: Option<u8>,
    /// False when nothing is to be held.
    #[serde(default = "yes")]
    pub load_allowed: bool,
    /// True when only breathing and pelvic floor are trained.
    #[serde(default)]
    pub breathing_only: bool,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}

fn yes() -> bool {
    true
}

fn any() -> When {
    When::Any
}

/// A stage without its dates.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum StageName {
    /// Pregnant.
    Pregnant,
    /// After a birth.
    Postpartum,
    /// After a loss.
    AfterLoss,
    /// Neither.
    Neither,
}

/// What a symptom does. Later is stricter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Class {
    /// Recorded and shown.
    Note,
    /// Breath, range or position changes for the next set.
    Cue,
    /// A level down.
    Drop,
    /// Its scope rests until the coach or provider has answered.
    Hold,
    /// Training stops and care is sought now.
    Red,
}

/// What a hold or a red flag closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Scope {
    /// The ladder it was felt on.
    Ladder,
    /// Hips and legs, and impact.
    LowerBody,
    /// All training.
    All,
}

/// How urgent care is. Earlier is more urgent.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Urgency {
    /// Emergency number now.
    Emergency,
    /// Call the midwife, doctor or clinic now.
    Call,
    /// Be seen today.
    SameDay,
}

/// What kind of trouble it is, for the rules that speak of a whole family.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Family {
    /// Leak, heaviness, bulge.
    PelvicFloor,
    /// Doming.
    Midline,
    /// Pelvic girdle and low back.
    Girdle,
    /// Another joint.
    Joint,
    /// Everything else.
    General,
}

/// How its amount is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum AmountForm {
    /// Not asked.
    None,
    /// A little, clearly, a lot.
    Words,
    /// 0 to 10, for pain.
    Pain,
}

/// Where it stands on the mark card.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Shelf {
    /// Among the first few.
    First,
    /// Behind the button for signs that stop training.
    Urgent,
    /// Behind "more".
    More,
}

/// When a kind is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum When {
    /// In every stage.
    Any,
    /// While pregnant.
    Pregnant,
    /// After a birth.
    Postpartum,
}

impl When {
    /// True at a stage.
    #[must_use]
    pub fn at(self, stage: Option<StageOn>) -> bool {
        match self {
            Self::Any => true,
            Self::Pregnant => stage.is_some_and(|s| s.is_pregnant()),
            Self::Postpartum => stage.and_then(|s| s.weeks_after()).is_some(),
        }
    }
}

/// A class that follows from a pain number.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PainBand {
    /// From this number (0 to 10), up to the next band.
    pub from: u8,
    /// The class.
    pub class: Class,
}

/// One kind of symptom.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SymptomKind {
    /// Id; its words stand under it in `symptoms.ftl`.
    pub id: SymptomId,
    /// When it is asked for. A mark of it counts in every stage.
    pub when: When,
    /// Asked only from this completed week of pregnancy on.
    #[serde(default)]
    pub from_week: Option<u32>,
    /// Least class.
    pub class: Class,
    /// Urgency of a red kind.
    #[serde(default)]
    pub urgency: Option<Urgency>,
    /// What a hold closes.
    pub scope: Scope,
    /// Family.
    pub family: Family,
    /// How its amount is asked for.
    pub amount: AmountForm,
    /// Classes by pain number, each stricter than the one before it and than `class`.
    #[serde(default)]
    pub by_pain: Vec<PainBand>,
    /// True when the set in hand ends, whatever the class.
    pub ends_set: bool,
    /// Class if it comes again on the same ladder in the same session.
    #[serde(default)]
    pub again: Option<Class>,
    /// Class if it is still there next morning.
    #[serde(default)]
    pub next_morning: Option<Class>,
    /// A position that is given up for the rest of the pregnancy once it was marked.
    #[serde(default)]
    pub gives_up: Option<crate::catalogue::Position>,
    /// Where it stands on the mark card.
    pub shelf: Shelf,
    /// Whom to turn to, as a Fluent id, if the kind has a pointer of its own.
    #[serde(default)]
    pub refer: bool,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}

impl SymptomKind {
    /// True if it is asked for at a stage. A mark of it counts at every stage.
    #[must_use]
    pub fn asked_at(&self, stage: Option<StageOn>) -> bool {
        // While she is not dated all of them are asked.
        let week = stage.and_then(|s| s.weeks_pregnant());
        self.when.at(stage) && self.from_week.is_none_or(|from| week.is_none_or(|w| w >= from))
    }

    /// True if a usual amount of it, recorded at intake, changes what a mark of it does.
    #[must_use]
    pub fn has_baseline(&self) -> bool {
        self.class == Class::Drop && self.amount != AmountForm::None
    }
}

/// Where a condition stands on the screening form.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum ConditionGroup {
    /// This pregnancy.
    Pregnancy,
    /// The birth and after it.
    AfterBirth,
    /// Pelvic floor, belly, back, joints.
    Body,
    /// Health in general.
    Health,
    /// Medicines that matter to effort.
    Medicine,
}

/// What training waits for with a condition. Later is stricter.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Asks {
    /// Nothing.
    #[default]
    Nothing,
    /// The provider is asked; breathing, pelvic floor and mobility meanwhile.
    Provider,
    /// Nothing is trained before a clearance.
    Clearance,
}

impl Condition {
    /// What training waits for at a stage.
    #[must_use]
    pub fn asks_at(&self, stage: StageOn) -> Asks {
        if !self.when.at(Some(stage)) {
            return Asks::Nothing;
        }
        // While she is not dated the later and stricter week counts.
        let late = |from: u32| stage.is_pregnant() && stage.weeks_pregnant().is_none_or(|w| w >= from);
        if self.stricter_from.is_some_and(late) { Asks::Clearance } else { self.asks }
    }
}

/// A condition that screening can record, and what it rules out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Condition {
    /// Id; its words stand under it in `conditions.ftl`.
    pub id: ConditionId,
    /// Where it stands on the screening form.
    pub group: ConditionGroup,
    /// The stages in which it is asked for and counts.
    #[serde(default = "any")]
    pub when: When,
    /// Cautions whose variants are ruled out.
    #[serde(default)]
    pub rules_out: Vec<crate::catalogue::Caution>,
    /// Positions that are ruled out.
    #[serde(default)]
    pub rules_out_positions: Vec<crate::catalogue::Position>,
    /// More reps in reserve than otherwise.
    #[serde(default)]
    pub extra_reserve: f64,
    /// More seconds of rest between sets than otherwise.
    #[serde(default)]
    pub more_rest: u16,
    /// What training waits for.
    #[serde(default)]
    pub asks: Asks,
    /// Nothing is trained before a clearance from this completed week of pregnancy on.
    #[serde(default)]
    pub stricter_from: Option<u32>,
    /// True where its being named closes the load history, as a birth does: every ladder starts anew.
    #[serde(default)]
    pub begins_anew: bool,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}

/// What a readiness check counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum CheckOf {
    /// Repetitions.
    Reps,
    /// Seconds.
    Seconds,
    /// Minutes.
    Minutes,
}

/// Something that is tried, without a sign, before impact after a birth.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct ReadinessCheck {
    /// Id; its words stand under it in `conditions.ftl`.
    pub id: CheckId,
    /// How many.
    pub count: u16,
    /// Of what.
    pub of: CheckOf,
    /// True when each side does so many.
    #[serde(default)]
    pub per_side: bool,
    /// True when feet leave the floor and land in it: it is asked for a landing on one leg alone.
    #[serde(default)]
    pub lands: bool,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}
