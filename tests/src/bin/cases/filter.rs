//! Series of sets for the Kalman filters of general libraries.

use newel_engine::rules::RulePack;
use serde_json::Value;

/// One series.
pub fn series(_seed: u64, _number: u64, _rules: &RulePack) -> Value {
    Value::Null
}
