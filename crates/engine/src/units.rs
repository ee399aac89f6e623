//! Masses and forces with their units; never a bare number across a boundary.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// One pound in kilograms, exactly (NIST SP 811 [s]).
pub const KG_PER_LB: f64 = 0.453_592_37;
/// Standard gravity in m/s² (from memory, [m]; SOURCES 9).
pub const STANDARD_GRAVITY: f64 = 9.806_65;

/// A mass in kilograms.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Kg(pub f64);

/// A force in newtons.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Newtons(pub f64);

impl Newtons {
    /// The force as the mass that weighs as much, in kilograms.
    #[must_use]
    pub fn as_kg(self) -> Kg {
        Kg(self.0 / STANDARD_GRAVITY)
    }

    /// The weight of a mass given in pounds (makers print band forces so).
    #[must_use]
    pub fn from_lb(pounds: f64) -> Self {
        Self(pounds * KG_PER_LB * STANDARD_GRAVITY)
    }
}

/// The unit a weight was entered in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum MassUnit {
    /// Kilograms.
    Kg,
    /// Pounds (avoirdupois).
    Lb,
}

/// A weight as it was entered: the number and its unit are kept, kilograms are worked out.
///
/// ```
/// use newel_engine::units::{MassUnit, Weight};
/// let w = Weight::lb(25.0);
/// assert_eq!(w.value, 25.0);
/// assert!((w.kg().0 - 11.339_809_25).abs() < 1e-12);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Weight {
    /// The number as entered, in `unit`.
    pub value: f64,
    /// The unit it was entered in.
    pub unit: MassUnit,
}

impl Weight {
    /// A weight entered in kilograms.
    #[must_use]
    pub const fn in_kg(value: f64) -> Self {
        Self { value, unit: MassUnit::Kg }
    }

    /// A weight entered in pounds.
    #[must_use]
    pub const fn lb(value: f64) -> Self {
        Self { value, unit: MassUnit::Lb }
    }

    /// The exact mass in kilograms.
    #[must_use]
    pub fn kg(self) -> Kg {
        match self.unit {
            MassUnit::Kg => Kg(self.value),
            MassUnit::Lb => Kg(self.value * KG_PER_LB),
        }
    }

    /// True for a finite weight above zero and below half a tonne: what a home can hold.
    #[must_use]
    pub fn is_plausible(self) -> bool {
        self.value.is_finite() && self.value > 0.0 && self.kg().0 <= 500.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pounds_follow_nist() {
        // NIST SP 811, appendix B.8: 1 lb = 4.535 923 7 E-01 kg exactly [s].
        assert_eq!(Weight::lb(1.0).kg(), Kg(0.453_592_37));
        assert_eq!(Weight::lb(100.0).kg(), Kg(45.359_237));
    }

    #[test]
    fn an_entered_number_comes_back() {
        for tenth in 1..=2000 {
            let entered = f64::from(tenth) / 10.0;
            let json = serde_json::to_string(&Weight::lb(entered)).unwrap();
            let back: Weight = serde_json::from_str(&json).unwrap();
            assert_eq!(back.value, entered, "the number entered is the number shown");
            let there_and_back = back.kg().0 / KG_PER_LB;
            assert!((there_and_back - entered).abs() < 1e-12 * entered.max(1.0));
        }
    }

    #[test]
    fn a_band_force_in_pounds_is_a_weight() {
        // 10 lbf = 44.482216152605 N (NIST SP 811 B.8: 1 lbf = 4.448 222 N [m]).
        assert!((Newtons::from_lb(10.0).0 - 44.482_216_152_605).abs() < 1e-9);
        assert!((Newtons::from_lb(10.0).as_kg().0 - 4.535_923_7).abs() < 1e-12);
    }
}
