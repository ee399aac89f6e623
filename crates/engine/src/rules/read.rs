//! Reading a rule pack, and what has to hold of it. The build of the app reads it, too, and fails.

use super::setting::MaySet;
use super::types::{Class, Condition, EffortRule, ReadinessCheck, Rule, SymptomKind};
use super::{OTHER_KIND, RulePack, UNSAID_KIND};
use crate::ids::{RuleId, SymptomId};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RuleFile {
    version: u32,
    rules: Vec<Rule>,
    effort: Vec<EffortRule>,
    effort_may_set: BTreeMap<String, MaySet>,
    conditions: Vec<Condition>,
    checks: Vec<ReadinessCheck>,
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

/// What a source bears: read in the original, read second-hand, from memory, derived; or it says that
/// there is none, or whose own setting it is.
const MARKS: [&str; 6] = ["[o]", "[s]", "[m]", "[d]", "no source", "own setting"];

/// Rules of red flags and of clearance: nothing in them can be set for a client.
const NEVER_SET: [&str; 3] = ["symptom.red", "clearance.asked", "clearance.birth-unsaid"];

/// True if a source says how far it can be trusted.
#[must_use]
pub fn bears_a_mark(source: &str) -> bool {
    MARKS.iter().any(|mark| source.contains(mark))
}

fn wrong<T>(text: String) -> Result<T, RuleError> {
    Err(RuleError::Inconsistent(text))
}

fn check_may_set(id: &RuleId, name: &str, value: Option<f64>, may: &MaySet) -> Result<(), RuleError> {
    match value {
        Some(value) if may.takes(value) && may.least < may.most => Ok(()),
        Some(_) => wrong(format!("{id}: {name} is outside what it may be set to")),
        None => wrong(format!("{id}: {name} may be set and is not there")),
    }
}

impl RulePack {
    /// A rule pack from its two files.
    ///
    /// # Errors
    /// When one cannot be read, an id stands twice, a source is missing or bears no mark, a number is
    /// missing or asked for by nobody, or a red kind has no urgency.
    pub fn parse(rules: &str, symptoms: &str) -> Result<Self, RuleError> {
        let file: RuleFile = serde_json::from_str(rules)?;
        let kinds: SymptomFile = serde_json::from_str(symptoms)?;
        let rules = checked_rules(file.rules)?;
        let mut ids: BTreeSet<String> = rules.keys().map(ToString::to_string).collect();
        let symptom_ids = kinds.kinds.iter().map(|k| (format!("symptom.{}", k.id), &k.source));
        let condition_ids = file.conditions.iter().map(|c| (format!("condition.{}", c.id), &c.source));
        let effort_ids = file.effort.iter().map(|e| (e.id.to_string(), &e.source));
        let check_ids = file.checks.iter().map(|c| (format!("check.{}", c.id), &c.source));
        for (id, source) in symptom_ids.chain(condition_ids).chain(effort_ids).chain(check_ids) {
            if !bears_a_mark(source) {
                return wrong(format!("{id}: its source bears no mark and does not say that there is none"));
            }
            if !ids.insert(id.clone()) {
                return wrong(format!("{id} stands twice"));
            }
        }
        for rule in &file.effort {
            let numbers = rule.numbers();
            if numbers.values().any(|n| !n.is_finite() || *n < 0.0) {
                return wrong(format!("{} has a number that is none", rule.id));
            }
            for (name, may) in
                file.effort_may_set.iter().filter(|(name, _)| numbers.contains_key(name.as_str()))
            {
                check_may_set(&rule.id, name, numbers.get(name.as_str()).copied(), may)?;
            }
        }
        for kind in &kinds.kinds {
            if (kind.class == Class::Red) != kind.urgency.is_some() {
                return wrong(format!("{}: a red kind, and only one, has an urgency", kind.id));
            }
            let mut before = (None, kind.class);
            for band in &kind.by_pain {
                if band.from > 10 || before.0.is_some_and(|from| band.from <= from) || band.class <= before.1
                {
                    return wrong(format!("{}: a number only ever makes a class stricter", kind.id));
                }
                before = (Some(band.from), band.class);
            }
        }
        for id in [UNSAID_KIND, OTHER_KIND].map(SymptomId::from) {
            if !kinds.kinds.iter().any(|k| k.id == id) {
                return wrong(format!("the kind {id} is missing"));
            }
        }
        Ok(Self {
            version: file.version,
            rules: Arc::new(rules),
            effort: Arc::new(file.effort),
            effort_may_set: Arc::new(file.effort_may_set),
            symptoms: Arc::new(kinds.kinds),
            conditions: Arc::new(file.conditions),
            checks: Arc::new(file.checks),
            set: Vec::new(),
            made: super::made::Made::default(),
        })
    }
}

fn checked_rules(list: Vec<Rule>) -> Result<BTreeMap<RuleId, Rule>, RuleError> {
    let mut rules = BTreeMap::new();
    for rule in list {
        if !bears_a_mark(&rule.source) {
            return wrong(format!(
                "{}: its source bears no mark and does not say that there is none",
                rule.id
            ));
        }
        for (name, value) in &rule.numbers {
            if !value.is_finite() {
                return wrong(format!("{}: {name} is no number", rule.id));
            }
            if !NUMBERS_USED.contains(&(rule.id.as_str(), name.as_str())) {
                return wrong(format!("{}: nobody asks for {name}", rule.id));
            }
        }
        for (name, may) in &rule.may_set {
            check_may_set(&rule.id, name, rule.numbers.get(name).copied(), may)?;
        }
        if NEVER_SET.contains(&rule.id.as_str()) && !rule.may_set.is_empty() {
            return wrong(format!("{} cannot be set", rule.id));
        }
        let id = rule.id.clone();
        if rules.insert(id.clone(), rule).is_some() {
            return wrong(format!("{id} stands twice"));
        }
    }
    for (rule, name) in NUMBERS_USED {
        if !rules.get(*rule).is_some_and(|r| r.numbers.contains_key(*name)) {
            return wrong(format!("{rule} lacks its number {name}"));
        }
    }
    Ok(rules)
}

/// Numbers that the engine asks for.
pub const NUMBERS_USED: &[(&str, &str)] = &[
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
    ("strength.evidence", "most_reps"),
    ("strength.evidence", "most_reserve"),
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
    ("load.first", "room_over_target"),
    ("load.unforeseen", "exposures"),
    ("load.unforeseen", "over_target"),
    ("load.finding", "times_lower"),
    ("load.finding", "times_upper"),
    ("load.finding", "next_times_lower"),
    ("load.finding", "next_times_upper"),
    ("load.unforeseen", "most_of_body"),
    ("load.lighter-now", "chance"),
    ("load.reps-now", "grow"),
    ("load.kit-gap", "over_target"),
    ("load.kit-gap", "more_reps"),
    ("level.up", "exposures"),
    ("level.up", "over_target"),
    ("level.up", "more_reps"),
    ("level.back-up", "exposures"),
    ("level.back-up", "share"),
    ("progress.reps", "step_reps"),
    ("progress.reps", "step_seconds"),
    ("symptom.repeat", "sessions"),
    ("symptom.lowest", "share"),
    ("symptom.pelvic-floor-twice", "marks"),
    ("symptom.left-out", "pain"),
    ("symptom.amounts", "little"),
    ("symptom.amounts", "clearly"),
    ("symptom.amounts", "lot"),
    ("effort.careful", "weeks_after"),
    ("effort.careful", "pregnant_floor"),
    ("stage.undated", "effort_week"),
    ("stage.undated", "position_week"),
    ("stage.same-birth", "days"),
    ("stage.dates-differ", "to_8_weeks"),
    ("stage.dates-differ", "to_15_weeks"),
    ("stage.dates-differ", "to_21_weeks"),
    ("stage.dates-differ", "to_27_weeks"),
    ("stage.dates-differ", "from_28_weeks"),
    ("clearance.birth-unsaid", "before_week"),
    ("breath.free", "least_reserve"),
    ("screen.again", "trimester_2"),
    ("screen.again", "trimester_3"),
    ("screen.again", "after_birth_1"),
    ("screen.again", "after_birth_2"),
    ("screen.again", "stale_weeks"),
    ("position.supine", "from_week"),
    ("impact.wait", "from_week"),
    ("impact.checks", "asked"),
    ("impact.pregnant", "from_week"),
    ("today.tired", "more_reserve"),
    ("today.unwell", "more_reserve"),
    ("today.unwell", "sets"),
    ("today.after-illness", "sessions"),
    ("today.after-illness", "more_reserve"),
    ("today.after-illness", "sets"),
    ("programme.light-week", "share"),
    ("programme.light-week", "more_reserve"),
    ("learn.first", "sessions"),
    ("learn.first", "reserve"),
    ("learn.first", "sets"),
    ("session.open", "hours"),
    ("session.next-day", "days"),
    ("log.unknown-dose", "low"),
    ("log.unknown-dose", "high"),
    ("log.unknown-dose", "target"),
    ("log.unknown-dose", "floor"),
    ("session.short", "minutes"),
    ("session.set-up", "seconds_per_set"),
    ("session.set-up", "seconds_per_rep"),
    ("watch.weeks", "weeks"),
    ("watch.minutes", "cap"),
    ("watch.desk", "silent_days"),
    ("watch.desk", "silent_after_symptom_days"),
    ("watch.desk", "recent_days"),
    ("watch.desk", "week_days"),
    ("watch.desk", "unanswered_days"),
    ("watch.desk", "near_due_days"),
    ("watch.desk", "over_share"),
    ("watch.desk", "jump_share"),
    ("watch.desk", "skipped"),
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
    ("advice.push-pull", "from_sets"),
    ("advice.push-pull", "most_share"),
    ("advice.knee-hip", "from_sets"),
    ("advice.knee-hip", "most_share"),
    ("advice.week-sets", "least"),
    ("advice.week-sets", "most"),
    ("advice.minutes", "over_share"),
    ("advice.minutes", "logged"),
    ("advice.minutes", "logged_share"),
    ("fresh.start", "reserve"),
];
