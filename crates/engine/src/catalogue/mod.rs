//! Ladders, their levels and variants: built-in data, embedded at build.
//!
//! Words (names, cues, breath) stand in `locales/*/catalogue.ftl` under the ids given here.

mod own;
mod with_own;

pub use own::{
    MAX_LEVELS, MAX_NAME, MAX_OWN_LADDERS, MAX_OWN_VARIANTS, MAX_SETUP, MAX_SLIPS, OwnCatalogue, OwnError,
    OwnLadder, OwnVariant, is_own,
};

use crate::ids::{GroupId, LadderId, VariantId};
use crate::kit::{Load, Thing};
use crate::units::Kg;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::OnceLock;
use ts_rs::TS;

/// The embedded catalogue.
pub const CATALOGUE_JSON: &str = include_str!("../../data/catalogue.json");

/// All ladders and strength groups.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Catalogue {
    /// Counts up with every released change.
    pub version: u32,
    /// Strength groups.
    pub groups: Vec<StrengthGroup>,
    /// Ladders.
    pub ladders: Vec<Ladder>,
    /// Where each variant stands, worked out when it is first asked for.
    #[serde(skip)]
    index: Index,
}

/// Ladder, level and place in the level by variant. It tells nothing of its own, so all are equal.
#[derive(Clone, Debug, Default)]
struct Index(OnceLock<BTreeMap<VariantId, [usize; 3]>>);

impl PartialEq for Index {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

/// Variants that share one strength state.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StrengthGroup {
    /// Id.
    pub id: GroupId,
    /// Prior mean of c: reps per unit of ln load.
    pub prior_c: f64,
    /// Where the prior comes from.
    pub source: String,
}

/// The kind of movement, for balance and for finding the nearest variant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Pattern {
    /// Knees and hips bend together.
    Squat,
    /// The hips fold.
    Hinge,
    /// Hips lifted from the floor or a bench.
    Bridge,
    /// Split stance, lunge, step.
    SingleLeg,
    /// Pressing away in front.
    HorizontalPush,
    /// Pressing overhead.
    VerticalPush,
    /// Pulling to the chest.
    HorizontalPull,
    /// Pulling down or hanging.
    VerticalPull,
    /// Hip to the side.
    HipAbduction,
    /// Leg drawn in to the other.
    HipAdduction,
    /// Rising on the toes.
    Calf,
    /// Elbows bent or straightened.
    Arms,
    /// Walking with a load.
    Carry,
    /// Standing or sitting still on little.
    Balance,
    /// Trunk held or turned against a force.
    Trunk,
    /// Breathing.
    Breathing,
    /// The pelvic floor, drawn up and let go.
    PelvicFloor,
    /// Joints moved through their range.
    Mobility,
    /// Landing.
    Impact,
}

impl Pattern {
    /// True for what goes on while the provider is asked: breathing, pelvic floor and mobility.
    #[must_use]
    pub fn goes_on_meanwhile(self) -> bool {
        matches!(self, Self::Breathing | Self::PelvicFloor | Self::Mobility)
    }

    /// True for what is trained in the first days after a birth, beside walking: breathing and pelvic floor.
    #[must_use]
    pub fn is_of_the_first_days(self) -> bool {
        matches!(self, Self::Breathing | Self::PelvicFloor)
    }
}

/// Part of the body that works, for the scope of a hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Region {
    /// Hips and legs.
    Lower,
    /// Shoulders and arms.
    Upper,
    /// Trunk.
    Trunk,
    /// Breathing and pelvic floor.
    Breathing,
}

/// The body's position.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Position {
    /// On the feet.
    Standing,
    /// On a chair or bench.
    Seated,
    /// On one or both knees.
    Kneeling,
    /// Hands and knees.
    AllFours,
    /// On the side.
    SideLying,
    /// On the back with the trunk raised.
    Incline,
    /// Flat on the back.
    Supine,
    /// Face down, hands and feet or knees.
    Prone,
    /// Hanging from the hands.
    Hanging,
}

/// A thing to look out for; a restriction may rule variants out by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Caution {
    /// Load or support on one side of the pelvis.
    OneSided,
    /// The wrist bears weight bent back.
    Wrist,
    /// Watch the midline for doming.
    Midline,
    /// Hands above the head: pressing, reaching or hanging.
    Overhead,
    /// Feet leave the floor and land.
    Impact,
    /// The pelvic floor is drawn up and held.
    PelvicHold,
}

impl Caution {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 6] =
        [Self::OneSided, Self::Wrist, Self::Midline, Self::Overhead, Self::Impact, Self::PelvicHold];
}

/// How a variant is loaded.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "with", rename_all = "snake_case")]
#[ts(export)]
pub enum Loading {
    /// Nothing is held.
    Body,
    /// One weight, in one hand or both.
    One,
    /// A weight in each hand.
    Pair,
    /// A barbell.
    Barbell,
    /// A long band pulled against.
    Band {
        /// Its stretch at the hardest point, as a share of its resting length.
        stretch: f64,
    },
    /// A long band that carries part of her.
    Assist {
        /// Its stretch at the hardest point, as a share of its resting length.
        stretch: f64,
    },
}

impl Loading {
    /// True where a weight is held.
    #[must_use]
    pub fn is_weight(self) -> bool {
        match self {
            Self::One | Self::Pair | Self::Barbell => true,
            Self::Body | Self::Band { .. } | Self::Assist { .. } => false,
        }
    }
}

/// Share of body mass that the muscles move.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BodyShare {
    /// Share, 0 to 1.
    pub share: f64,
    /// Citation and mark.
    pub source: String,
}

/// What shows that the next level is due.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "by", rename_all = "snake_case")]
#[ts(export)]
pub enum ReadyMark {
    /// External load in kilograms.
    Load {
        /// At least this much.
        kg: f64,
    },
    /// Reps in a set.
    Reps {
        /// At least this many.
        reps: u16,
    },
    /// Seconds in a set.
    Seconds {
        /// At least this many.
        seconds: u16,
    },
}

/// Loads that a coach would usually begin with: common practice, no source. The coach alone sees them; no proposal reads them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct UsualStart {
    /// From so many kilograms, all that is held together.
    pub from: f64,
    /// To so many.
    pub to: f64,
}

/// One way to do a level.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Variant {
    /// Id; its words stand under it in `catalogue.ftl`.
    pub id: VariantId,
    /// Position.
    pub position: Position,
    /// Things needed beside the load.
    #[serde(default)]
    pub needs: Vec<Thing>,
    /// How it is loaded.
    pub loading: Loading,
    /// Share of body mass moved, where published or derived.
    #[serde(default)]
    pub share: Option<BodyShare>,
    /// Strength group; `None` progresses by reps or seconds alone.
    #[serde(default)]
    pub group: Option<GroupId>,
    /// When the level above is due.
    pub ready: ReadyMark,
    /// What a coach would usually begin with; for weights alone, as a band's force is not known before it is chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usual_start: Option<UsualStart>,
    /// True when one side works at a time (a set is one side after the other).
    #[serde(default)]
    pub per_side: bool,
    /// Cautions.
    #[serde(default)]
    pub cautions: Vec<Caution>,
    /// How many cues `catalogue.ftl` holds for it (`.cue1`, `.cue2` ...).
    pub cues: u8,
    /// True if something about it is doubtful; `catalogue.ftl` says what (`.uncertain`).
    #[serde(default, skip_serializing_if = "is_false")]
    pub uncertain: bool,
    /// True for a coach's own that is not proposed any more. It stays, so that what was trained with it can be read.
    #[serde(default, skip_serializing_if = "is_false")]
    pub retired: bool,
}

/// For serde, which hands over a reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
fn is_false(value: &bool) -> bool {
    !value
}

impl Variant {
    /// Stretch of its band, if it has one.
    #[must_use]
    pub fn stretch(&self) -> f64 {
        match self.loading {
            Loading::Band { stretch } | Loading::Assist { stretch } => stretch,
            Loading::Body | Loading::One | Loading::Pair | Loading::Barbell => 0.0,
        }
    }

    /// What is held, in kilograms (assistance negative).
    #[must_use]
    pub fn external(&self, load: &Load) -> Kg {
        load.external(self.stretch())
    }
}

/// Variants of equal difficulty.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Level {
    /// Variants, the built-in order of preference first.
    pub variants: Vec<Variant>,
}

/// One movement from easiest to hardest.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Ladder {
    /// Id; its name stands under it in `catalogue.ftl`.
    pub id: LadderId,
    /// Pattern.
    pub pattern: Pattern,
    /// Region.
    pub region: Region,
    /// True if something about it is doubtful; `catalogue.ftl` says what (`.uncertain`).
    #[serde(default, skip_serializing_if = "is_false")]
    pub uncertain: bool,
    /// Levels, easiest first.
    pub levels: Vec<Level>,
}

/// Why a catalogue cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum CatalogueError {
    /// Not the JSON that is expected.
    #[error("the catalogue cannot be read: {0}")]
    Unreadable(#[from] serde_json::Error),
    /// A rule of the catalogue is broken.
    #[error("the catalogue is not consistent: {0}")]
    Inconsistent(String),
}

/// A variant with its place.
#[derive(Clone, Copy, Debug)]
pub struct Place<'a> {
    /// Its ladder.
    pub ladder: &'a Ladder,
    /// Its level, 0 for the easiest.
    pub level: usize,
    /// The variant.
    pub variant: &'a Variant,
}

impl Place<'_> {
    /// True where there is a least load to ease in with: it has a strength state, or something is held. Breathing, pelvic
    /// floor and mobility go on as they are.
    #[must_use]
    pub fn is_loaded(&self) -> bool {
        let held = !matches!(self.variant.loading, Loading::Body);
        self.variant.group.is_some() || held && !self.ladder.pattern.goes_on_meanwhile()
    }
}

impl Catalogue {
    /// The catalogue that is built in.
    ///
    /// # Errors
    /// When the embedded data is not consistent; a test of this crate holds that it is.
    pub fn built_in() -> Result<Self, CatalogueError> {
        let catalogue: Self = serde_json::from_str(CATALOGUE_JSON)?;
        catalogue.check()?;
        catalogue.check_built_in()?;
        Ok(catalogue)
    }

    /// A ladder by id.
    #[must_use]
    pub fn ladder(&self, id: &LadderId) -> Option<&Ladder> {
        self.ladders.iter().find(|l| &l.id == id)
    }

    /// A strength group by id.
    #[must_use]
    pub fn group(&self, id: &GroupId) -> Option<&StrengthGroup> {
        self.groups.iter().find(|g| &g.id == id)
    }

    /// A variant by id, with its place.
    #[must_use]
    pub fn place(&self, id: &VariantId) -> Option<Place<'_>> {
        let index = self.index.0.get_or_init(|| {
            let mut index = BTreeMap::new();
            for (l, ladder) in self.ladders.iter().enumerate() {
                for (level, at) in ladder.levels.iter().enumerate() {
                    for (v, variant) in at.variants.iter().enumerate() {
                        index.entry(variant.id.clone()).or_insert([l, level, v]);
                    }
                }
            }
            index
        });
        let [ladder, level, variant] = *index.get(id)?;
        let ladder = self.ladders.get(ladder)?;
        let variant = ladder.levels.get(level)?.variants.get(variant).filter(|v| v.id == *id)?;
        Some(Place { ladder, level, variant })
    }

    /// Every variant with its place, in order.
    pub fn places(&self) -> impl Iterator<Item = Place<'_>> {
        self.ladders.iter().flat_map(|ladder| {
            ladder.levels.iter().enumerate().flat_map(move |(level, l)| {
                l.variants.iter().map(move |variant| Place { ladder, level, variant })
            })
        })
    }

    /// Checks that ids are unique, groups exist, shares and usual starts are in range, and that the variants of a group
    /// are all one-sided or all two-sided.
    ///
    /// # Errors
    /// Names the first thing that is wrong.
    pub fn check(&self) -> Result<(), CatalogueError> {
        use std::collections::BTreeSet;
        let wrong = |text: String| Err(CatalogueError::Inconsistent(text));
        let mut seen = BTreeSet::new();
        let mut sides: BTreeMap<&GroupId, bool> = BTreeMap::new();
        for ladder in &self.ladders {
            if !seen.insert(ladder.id.as_str()) {
                return wrong(format!("ladder {} stands twice", ladder.id));
            }
            if ladder.levels.is_empty() {
                return wrong(format!("ladder {} has no level", ladder.id));
            }
        }
        for place in self.places() {
            let v = place.variant;
            if !seen.insert(v.id.as_str()) {
                return wrong(format!("{} stands twice", v.id));
            }
            if let Some(group) = &v.group {
                if self.group(group).is_none() {
                    return wrong(format!("{} names the unknown group {group}", v.id));
                }
                if *sides.entry(group).or_insert(v.per_side) != v.per_side {
                    return wrong(format!("group {group} mixes one-limbed and two-limbed variants"));
                }
            }
            if v.share.as_ref().is_some_and(|s| !(s.share > 0.0 && s.share <= 1.0)) {
                return wrong(format!("{} has a share out of range", v.id));
            }
            if v.usual_start.is_some_and(|s| !(s.from > 0.0 && s.to >= s.from && s.to.is_finite())) {
                return wrong(format!("{} has a usual start out of range", v.id));
            }
        }
        for ladder in &self.ladders {
            if ladder.levels.iter().any(|l| l.variants.is_empty()) {
                return wrong(format!("ladder {} has an empty level", ladder.id));
            }
        }
        Ok(())
    }

    /// Checks what is asked of the built-in variants alone: two to four cues each, and a usual start where a weight is held.
    fn check_built_in(&self) -> Result<(), CatalogueError> {
        let wrong = |text: String| Err(CatalogueError::Inconsistent(text));
        for v in self.places().map(|place| place.variant) {
            if !(2..=4).contains(&v.cues) {
                return wrong(format!("{} needs two to four cues", v.id));
            }
            if v.loading.is_weight() != v.usual_start.is_some() {
                return wrong(format!(
                    "{}: a usual start stands where a weight is held, and there alone",
                    v.id
                ));
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_built_in_catalogue_holds() {
        let catalogue = Catalogue::built_in().unwrap();
        assert!(catalogue.ladders.len() >= 10, "at least ten ladders");
        assert!(catalogue.groups.iter().all(|g| g.prior_c > 17.0 && !g.source.is_empty()));
    }
}
