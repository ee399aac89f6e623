//! Numbers of an effort rule by name, so that they can be set like those of any other rule.

use super::types::EffortRule;
use std::collections::BTreeMap;

impl EffortRule {
    /// Its numbers by name; those that it leaves open are not among them.
    #[must_use]
    pub fn numbers(&self) -> BTreeMap<&'static str, f64> {
        let optional = [
            ("before_week", self.before_week.map(f64::from)),
            ("trained_target", self.trained_target),
            ("most_sets", self.most_sets.map(f64::from)),
        ];
        let always = [
            ("from_week", f64::from(self.from_week)),
            ("least_target", self.least_target),
            ("least_floor", self.least_floor),
        ];
        always.into_iter().chain(optional.into_iter().filter_map(|(n, v)| Some((n, v?)))).collect()
    }

    /// Puts another value for a number that a coach may set; any other name changes nothing.
    pub(super) fn put(&mut self, name: &str, value: f64) {
        match name {
            "least_target" => self.least_target = value,
            "trained_target" => self.trained_target = Some(value),
            "least_floor" => self.least_floor = value,
            // A cast saturates; the bounds of the setting are far inside.
            "most_sets" => self.most_sets = Some(value as u8),
            _ => {}
        }
    }
}
