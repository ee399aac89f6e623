//! The rule pack: every number of safety and progression with its id and source, as data.

use crate::ids::{ConditionId, RuleId, SymptomId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// The embedded rule pack.
pub const RULES_JSON: &str = include_str!("../data/rules.json");
/// The embedded symptom kinds.
pub const SYMPTOMS_JSON: &str = include_str!("../data/symptoms.json");

/// Rules and symptom kinds.
#[derive(Clone, Debug, PartialEq)]
pub struct RulePack {
    /// Counts up with every released change.
    pub version: u32,
    rules: BTreeMap<RuleId, Rule>,
    effort: Vec<EffortRule>,
    symptoms: Vec<SymptomKind>,
    conditions: Vec<Condition>,
}

/// A rule: its numbers and where they come from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// Id.
    pub id: RuleId,
    /// Its numbers by name.
    #[serde(default)]
    pub numbers: BTreeMap<String, f64>,
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

/// How urgent care is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
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
    /// Classes by pain number; the stricter of this and `class` holds.
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

/// A condition that screening can record, and what it rules out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Condition {
    /// Id; its words stand under it in `symptoms.ftl`.
    pub id: ConditionId,
    /// Cautions whose variants are ruled out.
    #[serde(default)]
    pub rules_out: Vec<crate::catalogue::Caution>,
    /// Positions that are ruled out.
    #[serde(default)]
    pub rules_out_positions: Vec<crate::catalogue::Position>,
    /// More reps in reserve than otherwise.
    #[serde(default)]
    pub extra_reserve: f64,
    /// True when training waits for a clearance.
    #[serde(default)]
    pub needs_clearance: bool,
    /// A citation with its mark, or "common practice, no source".
    pub source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RuleFile {
    version: u32,
    rules: Vec<Rule>,
    effort: Vec<EffortRule>,
    conditions: Vec<Condition>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SymptomFile {
    kinds: Vec<SymptomKind>,
}

/// Why a rule pack cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum RuleError {
    /// Not the JSON that is expected.
    #[error("the rule pack cannot be read: {0}")]
    Unreadable(#[from] serde_json::Error),
    /// A rule of the pack is broken.
    #[error("the rule pack is not consistent: {0}")]
    Inconsistent(String),
}

impl RulePack {
    /// The rule pack that is built in.
    ///
    /// # Errors
    /// When the embedded data is not consistent; a test of this crate holds that it is.
    pub fn built_in() -> Result<Self, RuleError> {
        Self::parse(RULES_JSON, SYMPTOMS_JSON)
    }

    /// A rule pack from its two files.
    ///
    /// # Errors
    /// When one cannot be read, an id stands twice, a source is missing, or a red kind has no urgency.
    pub fn parse(rules: &str, symptoms: &str) -> Result<Self, RuleError> {
        let file: RuleFile = serde_json::from_str(rules)?;
        let kinds: SymptomFile = serde_json::from_str(symptoms)?;
        let wrong = |text: String| Err(RuleError::Inconsistent(text));
        let mut map = BTreeMap::new();
        for rule in file.rules {
            if rule.source.is_empty() {
                return wrong(format!("{} has no source", rule.id));
            }
            if rule.numbers.values().any(|n| !n.is_finite()) {
                return wrong(format!("{} has a number that is none", rule.id));
            }
            let id = rule.id.clone();
            if map.insert(id.clone(), rule).is_some() {
                return wrong(format!("{id} stands twice"));
            }
        }
        let mut seen = std::collections::BTreeSet::new();
        for kind in &kinds.kinds {
            if !seen.insert(&kind.id) || kind.source.is_empty() {
                return wrong(format!("{} stands twice or has no source", kind.id));
            }
            if (kind.class == Class::Red) != kind.urgency.is_some() {
                return wrong(format!("{}: a red kind, and only one, has an urgency", kind.id));
            }
        }
        for (rule, name) in NUMBERS_USED {
            if !map.get(&RuleId::from(*rule)).is_some_and(|r| r.numbers.contains_key(*name)) {
                return wrong(format!("{rule} lacks its number {name}"));
            }
        }
        for id in [UNSAID_KIND, OTHER_KIND] {
            if !seen.contains(&SymptomId::from(id)) {
                return wrong(format!("the kind {id} is missing"));
            }
        }
        Ok(Self {
            version: file.version,
            rules: map,
            effort: file.effort,
            symptoms: kinds.kinds,
            conditions: file.conditions,
        })
    }

    /// A rule by id.
    #[must_use]
    pub fn rule(&self, id: &str) -> Option<&Rule> {
        self.rules.get(id)
    }

    /// A number of a rule. Every name that the engine asks for is checked when the pack is read, so a
    /// missing one cannot occur later; it would read as NaN, and nothing that is NaN is ever proposed.
    #[must_use]
    pub fn number(&self, rule: &str, name: &str) -> f64 {
        self.rule(rule).and_then(|r| r.numbers.get(name)).copied().unwrap_or(f64::NAN)
    }

    /// The pack with one number changed, to try what it would do; `None` if there is no such number.
    #[must_use]
    pub fn with_number(&self, rule: &str, name: &str, value: f64) -> Option<Self> {
        let mut pack = self.clone();
        *pack.rules.get_mut(rule)?.numbers.get_mut(name)? = value;
        Some(pack)
    }

    /// All rules.
    pub fn rules(&self) -> impl Iterator<Item = &Rule> {
        self.rules.values()
    }

    /// The source of a rule of any kind; empty if there is no such rule.
    #[must_use]
    pub fn source(&self, id: &RuleId) -> &str {
        self.rules
            .get(id)
            .map(|r| r.source.as_str())
            .or_else(|| self.effort.iter().find(|e| &e.id == id).map(|e| e.source.as_str()))
            .or_else(|| {
                let kind = id.as_str().strip_prefix("symptom.")?;
                self.symptom(&SymptomId::from(kind)).map(|k| k.source.as_str())
            })
            .or_else(|| {
                let condition = id.as_str().strip_prefix("condition.")?;
                self.condition(&ConditionId::from(condition)).map(|c| c.source.as_str())
            })
            .unwrap_or("")
    }

    /// Symptom kinds in the order they are shown.
    #[must_use]
    pub fn symptoms(&self) -> &[SymptomKind] {
        &self.symptoms
    }

    /// A symptom kind by id.
    #[must_use]
    pub fn symptom(&self, id: &SymptomId) -> Option<&SymptomKind> {
        self.symptoms.iter().find(|k| &k.id == id)
    }

    /// Conditions that screening can record.
    #[must_use]
    pub fn conditions(&self) -> &[Condition] {
        &self.conditions
    }

    /// A condition by id.
    #[must_use]
    pub fn condition(&self, id: &ConditionId) -> Option<&Condition> {
        self.conditions.iter().find(|c| &c.id == id)
    }

    /// Effort rules.
    #[must_use]
    pub fn effort(&self) -> &[EffortRule] {
        &self.effort
    }
}

/// The kind of a mark whose kind was never said; it counts as a drop.
pub const UNSAID_KIND: &str = "not-sure";
/// Something else, in her own words.
pub const OTHER_KIND: &str = "something-else";

/// Numbers that the engine asks for.
const NUMBERS_USED: &[(&str, &str)] = &[
    ("strength.report", "s0"),
    ("strength.report", "s1"),
    ("strength.day", "sigma"),
    ("strength.drift", "fade_days"),
    ("strength.drift", "early_per_day"),
    ("strength.drift", "late_per_day"),
    ("strength.drift", "slope_per_day"),
    ("strength.slope", "sd"),
    ("strength.slope", "min"),
    ("strength.slope", "max"),
    ("strength.fatigue", "reps_per_set"),
    ("strength.start", "sd"),
    ("strength.start", "margin"),
    ("strength.body", "assumed_kg"),
    ("load.target", "slack"),
    ("load.target", "alpha"),
    ("load.target", "binds_all"),
    ("load.target", "floor_below_target"),
    ("load.step", "share"),
    ("load.step", "days"),
    ("load.big-step", "exposures"),
    ("load.big-step", "alone_over_target"),
    ("load.lay-off", "days_1"),
    ("load.lay-off", "share_1"),
    ("load.lay-off", "days_2"),
    ("load.lay-off", "share_2"),
    ("load.lay-off", "more_reserve"),
    ("load.first", "finding_sets"),
    ("load.first", "finding_from_week"),
    ("load.first", "share_of_group"),
    ("load.unforeseen", "exposures"),
    ("load.unforeseen", "over_target"),
    ("load.finding", "times_lower"),
    ("load.finding", "times_upper"),
    ("load.finding", "next_times_lower"),
    ("load.finding", "next_times_upper"),
    ("load.unforeseen", "most_of_body"),
    ("load.lighter-now", "chance"),
    ("load.kit-gap", "over_target"),
    ("load.kit-gap", "more_reps"),
    ("level.up", "exposures"),
    ("level.up", "over_target"),
    ("level.up", "more_reps"),
    ("level.back-up", "exposures"),
    ("level.back-up", "share"),
    ("progress.reps", "step_reps"),
    ("progress.reps", "step_seconds"),
    ("symptom.lowest", "share"),
    ("symptom.pelvic-floor-twice", "marks"),
    ("symptom.left-out", "pain"),
    ("position.supine", "from_week"),
    ("impact.wait", "from_week"),
    ("today.tired", "more_reserve"),
    ("today.unwell", "more_reserve"),
    ("today.unwell", "sets"),
    ("session.short", "minutes"),
    ("session.set-up", "seconds_per_set"),
    ("session.set-up", "seconds_per_rep"),
    ("watch.weeks", "weeks"),
    ("watch.minutes", "cap"),
    ("watch.hard-set", "over_target"),
    ("watch.guideline-pregnant", "minutes"),
    ("watch.guideline-pregnant", "days"),
    ("watch.guideline-postpartum", "minutes"),
    ("watch.guideline-postpartum", "days"),
    ("watch.rate", "days"),
    ("watch.rate", "sessions"),
    ("watch.rate", "rest_sessions"),
    ("watch.rate", "marked"),
    ("watch.rate", "confidence"),
    ("fresh.start", "reserve"),
];
