//! Says of a reason when the rule behind it is as the coach set it.

use super::bench::Bench;
use super::today::Turn;
use crate::ids::RuleId;
use crate::reason::{Fact, Reason, ReasonCode, Reasons};
use crate::rules::{SetRule, SettingTarget};

impl Bench<'_> {
    /// One reason more for each rule that the coach set and that stands behind one of `reasons`, with
    /// her note; none that is among them already.
    #[must_use]
    pub fn settings_behind(&self, reasons: &[Reason]) -> Vec<Reason> {
        let set = self.inputs.rules.set_by_coach().iter();
        let behind = set.filter(|set| reasons.iter().any(|r| set.is_behind(r)));
        let mut more: Vec<Reason> = Vec::new();
        for reason in behind.map(|set| self.set_reason(set)) {
            if !reasons.contains(&reason) && !more.contains(&reason) {
                more.push(reason);
            }
        }
        more
    }

    /// A turn whose reasons name the coach's settings behind them.
    #[must_use]
    pub fn naming_settings(&self, turn: Turn) -> Turn {
        match turn {
            Turn::Do(mut plan) => {
                let more = self.settings_behind(&plan.reasons);
                plan.reasons.extend(more);
                Turn::Do(plan)
            }
            Turn::Over(mut reasons) => {
                reasons.extend(self.settings_behind(&reasons));
                Turn::Over(reasons)
            }
        }
    }

    fn set_reason(&self, set: &SetRule) -> Reason {
        let rule = match &set.setting.target {
            SettingTarget::Number { rule, .. } => rule.clone(),
            SettingTarget::Class { symptom } => RuleId::from(format!("symptom.{symptom}")),
        };
        let note = set.setting.note.clone().unwrap_or_default();
        Reason::new(self.inputs.rules, ReasonCode::RuleSetByCoach, rule.as_str())
            .number("noted", if note.is_empty() { 0.0 } else { 1.0 })
            .with("note", Fact::Words(note))
    }

    pub(super) fn with_settings(&self, mut reasons: Reasons) -> Reasons {
        for reason in self.settings_behind(reasons.all()) {
            reasons.push(reason);
        }
        reasons
    }
}
