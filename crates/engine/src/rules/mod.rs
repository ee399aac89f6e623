//! The rule pack: every number of safety and progression with its id and source, as data.

mod effort;
mod made;
mod read;
mod setting;
mod types;

pub use read::{NUMBERS_USED, RuleError, bears_a_mark};
pub use setting::{
    Direction, MaySet, PackThen, RuleSetting, SetRule, SettingError, SettingTarget, SettingValue, Stricter,
};
pub use types::{
    AmountForm, Asks, CheckOf, Class, Condition, ConditionGroup, EffortRule, Family, PainBand,
    ReadinessCheck, Rule, Scope, Shelf, StageName, SymptomKind, Urgency, When,
};

use crate::ids::{ConditionId, RuleId, SymptomId};
use made::Made;
use std::collections::BTreeMap;
use std::sync::Arc;

/// The embedded rule pack.
pub const RULES_JSON: &str = include_str!("../../data/rules.json");
/// The embedded symptom kinds.
pub const SYMPTOMS_JSON: &str = include_str!("../../data/symptoms.json");

/// The kind of a mark whose kind was never said; it counts as a drop.
pub const UNSAID_KIND: &str = "not-sure";
/// Something else, in her own words.
pub const OTHER_KIND: &str = "something-else";

/// Rules and symptom kinds: as they are built in, or as they are in force for a client on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct RulePack {
    /// Counts up with every released change.
    pub version: u32,
    rules: Arc<BTreeMap<RuleId, Rule>>,
    effort: Arc<Vec<EffortRule>>,
    effort_may_set: Arc<BTreeMap<String, MaySet>>,
    symptoms: Arc<Vec<SymptomKind>>,
    conditions: Arc<Vec<Condition>>,
    checks: Arc<Vec<ReadinessCheck>>,
    /// What the coach set that is in force; empty for the pack that is built in.
    set: Vec<SetRule>,
    made: Made,
}

impl RulePack {
    /// The rule pack that is built in.
    ///
    /// # Errors
    /// When the embedded data is not consistent; a test of this crate holds that it is.
    pub fn built_in() -> Result<Self, RuleError> {
        Self::parse(RULES_JSON, SYMPTOMS_JSON)
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
        *Arc::make_mut(&mut pack.rules).get_mut(rule)?.numbers.get_mut(name)? = value;
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
            .or_else(|| self.effort_rule(id).map(|e| e.source.as_str()))
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

    /// What is tried before impact after a birth, in the order it is shown.
    #[must_use]
    pub fn checks(&self) -> &[ReadinessCheck] {
        &self.checks
    }

    /// Effort rules.
    #[must_use]
    pub fn effort(&self) -> &[EffortRule] {
        &self.effort
    }

    /// An effort rule by id.
    #[must_use]
    pub fn effort_rule(&self, id: &RuleId) -> Option<&EffortRule> {
        self.effort.iter().find(|e| &e.id == id)
    }

    /// Every rule that has a sentence of its own, with its numbers by name: rules, effort rules and
    /// conditions. The sentence stands in `rules.ftl` under [`RuleId::sentence`].
    #[must_use]
    pub fn spoken(&self) -> Vec<(RuleId, BTreeMap<String, f64>)> {
        let rules = self.rules.values().map(|r| (r.id.clone(), r.numbers.clone()));
        let effort = self.effort.iter().map(|e| {
            let numbers = e.numbers().into_iter().map(|(name, n)| (name.to_owned(), n));
            (e.id.clone(), numbers.collect())
        });
        let conditions = self.conditions.iter().map(|c| {
            let more = (c.extra_reserve > 0.0).then(|| ("extra_reserve".to_owned(), c.extra_reserve));
            let rest = (c.more_rest > 0).then(|| ("more_rest".to_owned(), f64::from(c.more_rest)));
            let from = c.stricter_from.map(|week| ("stricter_from".to_owned(), f64::from(week)));
            (RuleId::from(format!("condition.{}", c.id)), more.into_iter().chain(rest).chain(from).collect())
        });
        rules.chain(effort).chain(conditions).collect()
    }

    /// What the coach set that is in force, in order of what it is about; empty for the built-in pack.
    #[must_use]
    pub fn set_by_coach(&self) -> &[SetRule] {
        &self.set
    }
}

impl RuleId {
    /// The Fluent id of the rule's sentence.
    #[must_use]
    pub fn sentence(&self) -> String {
        format!("rule-{}", self.0.replace('.', "-"))
    }
}
