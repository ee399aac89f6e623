//! What a coach sets for one client: a number of a rule, or the class of a symptom kind.
//!
//! Tightening is free; loosening asks for a note; red flags, and what was never said, cannot be
//! loosened. A setting that is not well founded has no effect, wherever it comes from.

use super::types::Class;
use super::{RulePack, UNSAID_KIND, Urgency};
use crate::history::Said;
use crate::ids::{RecordId, RuleId, SymptomId};
use crate::reason::{Fact, Reason};
use crate::rules::Scope;
use chrono::{DateTime, FixedOffset, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::collections::BTreeMap;
use std::sync::Arc;
use ts_rs::TS;

/// Which way is stricter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Stricter {
    /// A greater number.
    More,
    /// A smaller number.
    Less,
}

/// How a number may be set.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct MaySet {
    /// Which way is stricter.
    pub stricter: Stricter,
    /// Least value that makes sense, in the unit of the number.
    pub least: f64,
    /// Greatest value that makes sense, in the unit of the number.
    pub most: f64,
    /// True if it is a count and has no fraction.
    #[serde(default)]
    pub whole: bool,
}

impl MaySet {
    /// True for a value that the number may take.
    #[must_use]
    pub fn takes(&self, value: f64) -> bool {
        // NaN is in no range.
        (self.least..=self.most).contains(&value) && (!self.whole || libm::trunc(value) == value)
    }
}

/// What a setting is about.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "of", rename_all = "snake_case")]
#[ts(export)]
pub enum SettingTarget {
    /// A number of a rule.
    Number {
        /// The rule.
        rule: RuleId,
        /// The number's name.
        name: String,
    },
    /// The class of a symptom kind.
    Class {
        /// The kind.
        symptom: SymptomId,
    },
}

/// What it is set to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "to", content = "value", rename_all = "snake_case")]
#[ts(export)]
pub enum SettingValue {
    /// Back to what the pack says.
    Pack,
    /// A number.
    Number(f64),
    /// A class.
    Class(Class),
}

/// The coach sets a rule for a client.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct RuleSetting {
    /// What it is about.
    pub target: SettingTarget,
    /// What it is set to.
    pub value: SettingValue,
    /// Until and with this day; open-ended if absent.
    #[serde(default)]
    pub until: Option<NaiveDate>,
    /// Why. Loosening without it has no effect.
    #[serde(default)]
    pub note: Option<String>,
}

/// What a setting does, compared with the pack.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Direction {
    /// Stricter than the pack.
    Tighter,
    /// Less strict than the pack.
    Looser,
    /// As the pack says.
    Back,
}

/// Why a setting has no effect.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS, thiserror::Error)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum SettingError {
    /// The pack has no such rule, number or symptom kind.
    #[error("there is no such rule")]
    Unknown,
    /// A number for a class, or a class for a number.
    #[error("the value is not of the kind of what it is for")]
    OtherKind,
    /// Not one that a coach may set.
    #[error("this cannot be set")]
    Fixed,
    /// Beyond what makes sense.
    #[error("the value is out of range")]
    OutOfRange,
    /// A red flag would be loosened.
    #[error("a red flag cannot be loosened")]
    RedFlag,
    /// It loosens, and has no note.
    #[error("loosening a rule asks for a note")]
    NoteMissing,
}

/// A setting that is in force.
#[derive(Clone, Debug, PartialEq)]
pub struct SetRule {
    /// The record that set it.
    pub record: RecordId,
    /// What was set.
    pub setting: RuleSetting,
    /// What it does.
    pub direction: Direction,
}

impl SetRule {
    /// True if it stands behind a reason: by the reason's rule, or by a symptom that the reason names.
    #[must_use]
    pub fn is_behind(&self, reason: &Reason) -> bool {
        match &self.setting.target {
            SettingTarget::Number { rule, .. } => reason.rule == *rule,
            SettingTarget::Class { symptom } => {
                reason.rule.as_str().strip_prefix("symptom.") == Some(symptom.as_str())
                    || reason.facts.values().any(|f| matches!(f, Fact::Symptom(s) if s == symptom))
            }
        }
    }
}

impl RulePack {
    /// How a number of a rule or of an effort rule may be set; `None` if it cannot be.
    #[must_use]
    pub fn may_set(&self, rule: &RuleId, name: &str) -> Option<&MaySet> {
        match self.rules.get(rule) {
            Some(rule) => rule.may_set.get(name),
            None => {
                let numbers = self.effort_rule(rule)?.numbers();
                numbers.get(name).and(self.effort_may_set.get(name))
            }
        }
    }

    fn number_of(&self, rule: &RuleId, name: &str) -> Option<f64> {
        match self.rules.get(rule) {
            Some(rule) => rule.numbers.get(name).copied(),
            None => self.effort_rule(rule)?.numbers().get(name).copied(),
        }
    }

    /// What this pack says of a target; `None` if it has no such thing.
    #[must_use]
    pub fn value_of(&self, target: &SettingTarget) -> Option<SettingValue> {
        match target {
            SettingTarget::Number { rule, name } => self.number_of(rule, name).map(SettingValue::Number),
            SettingTarget::Class { symptom } => self.symptom(symptom).map(|k| SettingValue::Class(k.class)),
        }
    }

    /// Says what a setting does, or why it does nothing. To be asked of the pack that is built in.
    ///
    /// # Errors
    /// When it names nothing of this pack, something that cannot be set or a value that makes no sense,
    /// loosens a red flag, or loosens anything without a note.
    pub fn check_setting(&self, setting: &RuleSetting) -> Result<Direction, SettingError> {
        let direction = match &setting.target {
            SettingTarget::Number { rule, name } => self.way_of_number(rule, name, setting.value)?,
            SettingTarget::Class { symptom } => self.way_of_class(symptom, setting.value)?,
        };
        let noted = setting.note.as_ref().is_some_and(|n| !n.trim().is_empty());
        if direction == Direction::Looser && !noted {
            return Err(SettingError::NoteMissing);
        }
        Ok(direction)
    }

    fn way_of_number(
        &self,
        rule: &RuleId,
        name: &str,
        value: SettingValue,
    ) -> Result<Direction, SettingError> {
        let pack = self.number_of(rule, name).ok_or(SettingError::Unknown)?;
        let may = self.may_set(rule, name).ok_or(SettingError::Fixed)?;
        let value = match value {
            SettingValue::Pack => return Ok(Direction::Back),
            SettingValue::Number(value) => value,
            SettingValue::Class(_) => return Err(SettingError::OtherKind),
        };
        if !may.takes(value) {
            return Err(SettingError::OutOfRange);
        }
        Ok(match (value.total_cmp(&pack), may.stricter) {
            (Ordering::Equal, _) => Direction::Back,
            (Ordering::Greater, Stricter::More) | (Ordering::Less, Stricter::Less) => Direction::Tighter,
            (Ordering::Greater, Stricter::Less) | (Ordering::Less, Stricter::More) => Direction::Looser,
        })
    }

    fn way_of_class(&self, symptom: &SymptomId, value: SettingValue) -> Result<Direction, SettingError> {
        let kind = self.symptom(symptom).ok_or(SettingError::Unknown)?;
        let class = match value {
            SettingValue::Pack => return Ok(Direction::Back),
            SettingValue::Class(class) => class,
            SettingValue::Number(_) => return Err(SettingError::OtherKind),
        };
        match class.cmp(&kind.class) {
            Ordering::Equal => Ok(Direction::Back),
            Ordering::Greater => Ok(Direction::Tighter),
            Ordering::Less if kind.class == Class::Red => Err(SettingError::RedFlag),
            // What was not said may be a red flag.
            Ordering::Less if symptom.as_str() == UNSAID_KIND => Err(SettingError::Fixed),
            Ordering::Less => Ok(Direction::Looser),
        }
    }

    /// Settings that are in force on a day, by what was known at an instant (all if `None`). Of several
    /// about one thing the last written holds whose end has not passed; of two corrections side by side
    /// the stricter.
    fn settings_on(
        &self,
        settings: &[Said<RuleSetting>],
        until: Option<DateTime<FixedOffset>>,
        day: NaiveDate,
    ) -> Vec<SetRule> {
        let mut found: BTreeMap<&SettingTarget, SetRule> = BTreeMap::new();
        for said in settings {
            let known = until.is_none_or(|u| said.at <= u);
            if !known || said.what.until.is_some_and(|end| end < day) {
                continue;
            }
            let Ok(direction) = self.check_setting(&said.what) else { continue };
            let rule = SetRule { record: said.record, setting: said.what.clone(), direction };
            let rival = found.get(&said.what.target).filter(|r| r.record == said.record);
            if rival.is_none_or(|r| self.is_stricter(&rule.setting, &r.setting)) {
                found.insert(&said.what.target, rule);
            }
        }
        found.into_values().filter(|r| r.direction != Direction::Back).collect()
    }

    /// True if the first of two settings of one thing asks for more.
    fn is_stricter(&self, a: &RuleSetting, b: &RuleSetting) -> bool {
        match &a.target {
            SettingTarget::Number { rule, name } => {
                let pack = self.number_of(rule, name).unwrap_or(f64::NAN);
                let value = |v: SettingValue| match v {
                    SettingValue::Number(n) => n,
                    SettingValue::Pack | SettingValue::Class(_) => pack,
                };
                let (a, b) = (value(a.value), value(b.value));
                self.may_set(rule, name).is_some_and(|may| match may.stricter {
                    Stricter::More => a > b,
                    Stricter::Less => a < b,
                })
            }
            SettingTarget::Class { symptom } => {
                let pack = self.symptom(symptom).map_or(Class::Red, |k| k.class);
                let class = |v: SettingValue| match v {
                    SettingValue::Class(c) => c,
                    SettingValue::Pack | SettingValue::Number(_) => pack,
                };
                class(a.value) > class(b.value)
            }
        }
    }

    /// The pack in force for a client on a day: this one with the settings that were known at an
    /// instant (all if `None`). It is this very pack if there are none.
    #[must_use]
    pub fn in_force(
        &self,
        settings: &[Said<RuleSetting>],
        until: Option<DateTime<FixedOffset>>,
        day: NaiveDate,
    ) -> &Self {
        let set = self.settings_on(settings, until, day);
        if set.is_empty() { self } else { self.made.find_or(&set, || self.with(set.clone())) }
    }

    fn with(&self, set: Vec<SetRule>) -> Self {
        let mut pack = self.clone();
        for rule in &set {
            match (&rule.setting.target, rule.setting.value) {
                (SettingTarget::Number { rule, name }, SettingValue::Number(value)) => {
                    if pack.rules.contains_key(rule) {
                        let rules = Arc::make_mut(&mut pack.rules);
                        rules.entry(rule.clone()).and_modify(|r| {
                            r.numbers.insert(name.clone(), value);
                        });
                    } else if let Some(e) = Arc::make_mut(&mut pack.effort).iter_mut().find(|e| e.id == *rule)
                    {
                        e.put(name, value);
                    }
                }
                (SettingTarget::Class { symptom }, SettingValue::Class(class)) => {
                    if let Some(kind) =
                        Arc::make_mut(&mut pack.symptoms).iter_mut().find(|k| k.id == *symptom)
                    {
                        // What its number makes stricter than the kind stays.
                        kind.class = class;
                        if class == Class::Red {
                            kind.urgency.get_or_insert(Urgency::Call);
                            kind.scope = Scope::All;
                        }
                    }
                }
                // Checked before; a value of the other kind changes nothing.
                (SettingTarget::Number { .. } | SettingTarget::Class { .. }, _) => {}
            }
        }
        pack.set = set;
        pack
    }
}

/// Looks the pack in force up run by run, and makes one anew only where the settings have changed.
#[derive(Clone, Debug, Default)]
pub struct PackThen(Option<RulePack>);

impl PackThen {
    /// As [`RulePack::in_force`] of `pack`, the same at each call.
    pub fn at<'p>(
        &'p mut self,
        pack: &'p RulePack,
        settings: &[Said<RuleSetting>],
        until: Option<DateTime<FixedOffset>>,
        day: NaiveDate,
    ) -> &'p RulePack {
        let set = pack.settings_on(settings, until, day);
        if set.is_empty() {
            return pack;
        }
        if self.0.as_ref().is_some_and(|then| then.set != set) {
            self.0 = None;
        }
        self.0.get_or_insert_with(|| pack.with(set))
    }
}
