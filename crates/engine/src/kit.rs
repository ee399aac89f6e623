//! What a client owns, and the loads that it can really make.

use crate::units::{Kg, Newtons, Weight};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Things beside weights and bands. A wall, a floor, a kitchen counter and a steady chair are taken
/// to be in every home.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Thing {
    /// A bench that lies flat or inclines.
    Bench,
    /// A bar to hang from.
    PullUpBar,
    /// A step or sturdy box.
    Step,
    /// Straps to lean back from.
    Straps,
    /// A short loop band for the knees or shins.
    LoopBand,
}

/// A long band, described by its force and not by its colour (colour is one maker's code).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Band {
    /// What she calls it.
    pub name: String,
    /// Force at 100 % stretch (twice its resting length).
    pub at_100: Newtons,
    /// Force at 200 % stretch.
    pub at_200: Newtons,
}

impl Band {
    /// Force at a stretch, as a share of the resting length (1.0 is 100 %).
    ///
    /// The line through the forces at 100 % and 200 % holds down to 50 %, then a line to zero:
    /// bands are steeper below 50 % and straight above (Patterson RM et al., Phys Ther 2001;81:1437 [o]).
    #[must_use]
    pub fn force(&self, stretch: f64) -> Newtons {
        let line = |s: f64| self.at_100.0 + (self.at_200.0 - self.at_100.0) * (s - 1.0);
        if stretch >= 0.5 {
            Newtons(line(stretch).max(0.0))
        } else {
            Newtons((line(0.5).max(0.0) * stretch / 0.5).max(0.0))
        }
    }
}

impl Band {
    /// True for a band of finite forces above zero that grow with its stretch, of half a tonne at most.
    #[must_use]
    pub fn is_plausible(&self) -> bool {
        // 5000 N is the weight of about half a tonne.
        self.at_100.0 > 0.0 && self.at_200.0 >= self.at_100.0 && self.at_200.0 <= 5000.0
    }
}

/// One dumbbell weight that she owns, once or as a pair.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Dumbbell {
    /// Weight of one.
    pub weight: Weight,
    /// True when she has two of them.
    pub pair: bool,
}

/// A pair of equal plates for the barbell.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct PlatePair {
    /// Weight of one plate.
    pub weight: Weight,
}

/// A barbell with its plates.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Barbell {
    /// The empty bar.
    pub bar: Weight,
    /// Pairs of plates, one on each side.
    pub plates: Vec<PlatePair>,
}

/// All that a client owns to train with.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct Kit {
    /// Dumbbells, or anything with a handle and a known weight.
    #[serde(default)]
    pub dumbbells: Vec<Dumbbell>,
    /// A barbell, if there is one.
    #[serde(default)]
    pub barbell: Option<Barbell>,
    /// Long bands.
    #[serde(default)]
    pub bands: Vec<Band>,
    /// Other things.
    #[serde(default)]
    pub things: Vec<Thing>,
}

/// What is held for a set: enough to lay it out, and to work out its load later without the kit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "make", rename_all = "snake_case")]
#[ts(export)]
pub enum Load {
    /// Nothing held.
    Nothing,
    /// One weight.
    One {
        /// Its weight.
        weight: Weight,
    },
    /// Two equal weights; both count.
    Pair {
        /// Weight of one of them.
        weight: Weight,
    },
    /// A barbell with plates on each side.
    Barbell {
        /// The empty bar.
        bar: Weight,
        /// The plates on one side; the other side bears the same.
        plates: Vec<Weight>,
    },
    /// Bands pulled against, side by side.
    Bands {
        /// The bands used.
        bands: Vec<Band>,
    },
    /// Bands that carry part of her.
    Assist {
        /// The bands used.
        bands: Vec<Band>,
    },
}

impl Load {
    /// True if all that it is made of can be held in a home.
    #[must_use]
    pub fn is_plausible(&self) -> bool {
        match self {
            Self::Nothing => true,
            Self::One { weight } | Self::Pair { weight } => weight.is_plausible(),
            Self::Barbell { bar, plates } => bar.is_plausible() && plates.iter().all(|p| p.is_plausible()),
            Self::Bands { bands } | Self::Assist { bands } => bands.iter().all(Band::is_plausible),
        }
    }

    /// True if both are made of the same kind of thing: one weight, a pair, a barbell, bands.
    #[must_use]
    pub fn is_same_make(&self, other: &Self) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
    }

    /// What is held, in kilograms; bands at the given stretch. Assistance counts as negative.
    #[must_use]
    pub fn external(&self, stretch: f64) -> Kg {
        let pull = |bands: &[Band]| bands.iter().map(|b| b.force(stretch).as_kg().0).sum::<f64>();
        match self {
            Self::Nothing => Kg(0.0),
            Self::One { weight } => weight.kg(),
            Self::Pair { weight } => Kg(2.0 * weight.kg().0),
            Self::Barbell { bar, plates } => {
                Kg(bar.kg().0 + 2.0 * plates.iter().map(|p| p.kg().0).sum::<f64>())
            }
            Self::Bands { bands } => Kg(pull(bands)),
            Self::Assist { bands } => Kg(-pull(bands)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn band() -> Band {
        // One maker's table, third row: 4.6 lb at 100 %, 6.7 lb at 200 % (SOURCES 8 [s]).
        Band { name: "grey".into(), at_100: Newtons::from_lb(4.6), at_200: Newtons::from_lb(6.7) }
    }

    #[test]
    fn a_band_gives_back_its_table() {
        assert!((band().force(1.0).0 - Newtons::from_lb(4.6).0).abs() < 1e-12);
        assert!((band().force(2.0).0 - Newtons::from_lb(6.7).0).abs() < 1e-12);
        assert!((band().force(1.5).0 - Newtons::from_lb(5.65).0).abs() < 1e-12, "straight between");
        assert!((band().force(0.5).0 - Newtons::from_lb(3.55).0).abs() < 1e-12);
        assert!((band().force(0.25).0 - Newtons::from_lb(1.775).0).abs() < 1e-12, "to zero below 50 %");
        assert_eq!(band().force(0.0), Newtons(0.0));
    }

    #[test]
    fn two_bands_side_by_side_add() {
        let two = Load::Bands { bands: vec![band(), band()] };
        assert!((two.external(1.0).0 - 2.0 * 4.6 * crate::units::KG_PER_LB).abs() < 1e-12);
    }

    #[test]
    fn two_weights_count_both() {
        assert_eq!(Load::Pair { weight: Weight::in_kg(8.0) }.external(1.0), Kg(16.0));
        let bar = Load::Barbell { bar: Weight::in_kg(15.0), plates: vec![Weight::in_kg(2.5)] };
        assert_eq!(bar.external(1.0), Kg(20.0));
    }
}
