//! Reasons: a code, the numbers used, the rule's id and its source. Sentences are made from Fluent.

use crate::ids::{ConditionId, LadderId, RuleId, SymptomId, VariantId};
use crate::kit::Load;
use crate::rules::RulePack;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident = $slug:literal),+ $(,)?) => {
        /// Why something is proposed. The sentence stands in `reasons.ftl` under `reason-<slug>`.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
        #[ts(export)]
        pub enum ReasonCode {
            $($(#[$doc])* #[serde(rename = $slug)] $name,)+
        }

        impl ReasonCode {
            /// Every code, so that the build can check that each has its sentence.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];

            /// Its slug.
            #[must_use]
            pub fn slug(self) -> &'static str {
                match self {
                    $(Self::$name => $slug,)+
                }
            }
        }
    };
}

codes! {
    /// First time on this ladder: the coach's start.
    StartCoach = "start-coach",
    /// First time on this ladder: her answer to "ten reps with what?".
    StartAnswer = "start-answer",
    /// First time on this ladder: the easiest option and the lightest load.
    StartLightest = "start-lightest",
    /// First time with this variant: somewhat less than was held with another one of its group.
    StartGroup = "start-group",
    /// Every set so far left five or more, so the load is still being found.
    StillFinding = "still-finding",
    /// The next load of her kit, earned where the model cannot foresee it.
    Unforeseen = "unforeseen",
    /// The coach's start level.
    CoachStart = "coach-start",
    /// The coach set level, variant or load, with a note.
    CoachSet = "coach-set",
    /// The load that meets the target, same as last time.
    LoadSame = "load-same",
    /// The load that meets the target, more than last time.
    LoadUp = "load-up",
    /// The load that meets the target, less than last time.
    LoadDown = "load-down",
    /// Nothing is held on this variant: reps or seconds are what changes.
    BodyOnly = "body-only",
    /// The step bound of the load binds.
    StepBound = "step-bound",
    /// The next load of her kit is a bigger step, earned.
    BigStep = "big-step",
    /// The next load of her kit is too big a step: more reps first.
    KitGap = "kit-gap",
    /// No load of her kit is light enough.
    NothingLighter = "nothing-lighter",
    /// Away for a while: less than last time.
    LayOff = "lay-off",
    /// A level up.
    LevelUp = "level-up",
    /// A level down: no load holds here.
    LevelDownLoad = "level-down-load",
    /// A level down after a symptom.
    LevelDownSymptom = "level-down-symptom",
    /// Stays a level down until the exposures without symptoms are done.
    StayDown = "stay-down",
    /// The first time since a symptom: no more than last time.
    AfterSymptom = "after-symptom",
    /// Up again after a symptom, lighter than then.
    BackUp = "back-up",
    /// A breath, range or position cue after a symptom.
    CueChange = "cue-change",
    /// Effort by stage.
    StageEffort = "stage-effort",
    /// Nothing held by stage.
    StageUnloaded = "stage-unloaded",
    /// Fewer sets by stage.
    StageSets = "stage-sets",
    /// Breathing only by stage.
    StageBreathing = "stage-breathing",
    /// The first sessions of somebody who has never trained: the moves are learned.
    LearnFirst = "learn-first",
    /// A light week of the programme: fewer sets, more in reserve, and nothing grows.
    LightWeek = "light-week",
    /// A warm-up or a cool-down: the least load that there is.
    EaseIn = "ease-in",
    /// More reserve and fewer sets: back after an illness.
    AfterIllness = "after-illness",
    /// Nothing held above the head: a child is in the room.
    ChildNear = "child-near",
    /// Her kit is not at hand today.
    KitAway = "kit-away",
    /// More reserve today: tired.
    TiredToday = "tired-today",
    /// More reserve for a condition.
    ConditionReserve = "condition-reserve",
    /// A position is ruled out by stage.
    PositionStage = "position-stage",
    /// No landing yet: by stage, or until the checks before it are done.
    ImpactWaits = "impact-waits",
    /// Something is ruled out by a condition.
    ConditionRuledOut = "condition-ruled-out",
    /// Something is ruled out by a restriction with a note.
    Restricted = "restricted",
    /// A restriction with a note leaves nothing heavier.
    RestrictedLoad = "restricted-load",
    /// A restriction with a note asks for more in reserve.
    RestrictedReserve = "restricted-reserve",
    /// Her kit rules options out.
    KitLacks = "kit-lacks",
    /// Rests: a hold waits for its answer.
    HoldWaits = "hold-waits",
    /// Rests: a red flag waits for a clearance.
    RedWaits = "red-waits",
    /// Rests: the provider is asked first.
    ClearanceWaits = "clearance-waits",
    /// Nothing is trained before a clearance.
    ClearanceFirst = "clearance-first",
    /// A clearance has run out.
    ClearanceOver = "clearance-over",
    /// The plan rests after a birth, until both have said that it goes on.
    PlanRests = "plan-rests",
    /// The plan rests after a loss.
    PlanRestsLoss = "plan-rests-loss",
    /// Rests: no allowed option is left.
    NothingAllowed = "nothing-allowed",
    /// Restart lighter, as the coach answered.
    RestartLighter = "restart-lighter",
    /// Today a level down after a mark in this session.
    EasierToday = "easier-today",
    /// The ladder ends for today.
    EndsToday = "ends-today",
    /// Rest of the session without load, lying or seated.
    UnloadedToday = "unloaded-today",
    /// By the sets of today other reps come nearer to the reserve aimed at.
    RepsNow = "reps-now",
    /// A lighter load is offered in mid-session.
    LighterNow = "lighter-now",
    /// The first set showed room: a finding step up.
    FindingUp = "finding-up",
    /// The option she chose.
    SheChose = "she-chose",
    /// A birth, a loss or an operation closed the load history.
    FreshStart = "fresh-start",
    /// A rule behind another reason is as the coach set it.
    RuleSetByCoach = "rule-set-by-coach",
}

/// A value in a reason.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "is", content = "value", rename_all = "snake_case")]
#[ts(export)]
pub enum Fact {
    /// A number; what it counts stands in its key.
    Number(f64),
    /// A load.
    Load(Load),
    /// A day.
    Day(NaiveDate),
    /// A ladder.
    Ladder(LadderId),
    /// A variant.
    Variant(VariantId),
    /// A symptom kind.
    Symptom(SymptomId),
    /// A condition.
    Condition(ConditionId),
    /// Somebody's words.
    Words(String),
}

/// Why something is proposed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Reason {
    /// Code.
    pub code: ReasonCode,
    /// Values used, by name.
    pub facts: BTreeMap<String, Fact>,
    /// The rule.
    pub rule: RuleId,
    /// Its source, with its mark.
    pub source: String,
}

impl Reason {
    /// A reason by a rule of the pack, whose source is looked up.
    #[must_use]
    pub fn new(rules: &RulePack, code: ReasonCode, rule: &str) -> Self {
        let rule = RuleId::from(rule);
        let source = rules.source(&rule).to_owned();
        Self { code, facts: BTreeMap::new(), rule, source }
    }

    /// With one more value.
    #[must_use]
    pub fn with(mut self, name: &str, fact: Fact) -> Self {
        self.facts.insert(name.to_owned(), fact);
        self
    }

    /// With one more number.
    #[must_use]
    pub fn number(self, name: &str, value: f64) -> Self {
        self.with(name, Fact::Number(value))
    }
}

/// One reason or more; an empty list cannot be built, nor read from a file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(try_from = "Vec<Reason>", into = "Vec<Reason>")]
#[ts(export, as = "Vec<Reason>")]
#[schemars(with = "Vec<Reason>")]
pub struct Reasons(Vec<Reason>);

impl Reasons {
    /// A list that begins with `first`.
    #[must_use]
    pub fn of(first: Reason) -> Self {
        Self(vec![first])
    }

    /// The first of `list` and the rest; `otherwise` if the list is empty.
    #[must_use]
    pub fn from_list(list: Vec<Reason>, otherwise: impl FnOnce() -> Reason) -> Self {
        if list.is_empty() { Self::of(otherwise()) } else { Self(list) }
    }

    /// Adds one.
    pub fn push(&mut self, reason: Reason) {
        self.0.push(reason);
    }

    /// All of them; never empty.
    #[must_use]
    pub fn all(&self) -> &[Reason] {
        &self.0
    }

    /// True if one has this code.
    #[must_use]
    pub fn has(&self, code: ReasonCode) -> bool {
        self.0.iter().any(|r| r.code == code)
    }
}

impl TryFrom<Vec<Reason>> for Reasons {
    type Error = &'static str;

    fn try_from(list: Vec<Reason>) -> Result<Self, Self::Error> {
        if list.is_empty() { Err("a proposal needs a reason") } else { Ok(Self(list)) }
    }
}

impl From<Reasons> for Vec<Reason> {
    fn from(reasons: Reasons) -> Self {
        reasons.0
    }
}
