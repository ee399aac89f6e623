//! Ladders and variants of the coach's own, kept apart from the built-in ones so that an update of these leaves hers whole.
//!
//! What a variant *is* (its ladder, level, position, loading, share and sides) never changes under one id: past sets and
//! proposals were made with it. Its words, kit and cautions may. Nothing of hers is removed; it is retired.

use super::{Caution, Loading, Pattern, Position, ReadyMark, Region, UsualStart};
use crate::ids::{DeviceId, LadderId, VariantId};
use crate::kit::Thing;
use crate::record::{Payload, Record};
use crate::wording::{MAX_CUE, MAX_CUES};
use chrono::{DateTime, FixedOffset};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;
use uuid::Uuid;

/// Ladders of a coach's own at the most. This and the bounds below: common practice, no source.
pub const MAX_OWN_LADDERS: usize = 100;
/// Variants of a coach's own at the most.
pub const MAX_OWN_VARIANTS: usize = 600;
/// Levels of a ladder of her own at the most.
pub const MAX_LEVELS: usize = 12;
/// Characters of a name: one line on a phone and half of one.
pub const MAX_NAME: usize = 60;
/// Characters of how it is set up, of how she breathes, and of a slip.
pub const MAX_SETUP: usize = 240;
/// Slips at the most.
pub const MAX_SLIPS: usize = 2;
/// The furthest that a band is stretched, as a share of its resting length.
const MAX_STRETCH: f64 = 3.0;
/// The heaviest that a start or a ready mark may name, in kilograms.
const MAX_KG: f64 = 500.0;

/// A ladder of the coach's own.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct OwnLadder {
    /// Id: a UUID.
    pub id: LadderId,
    /// Its name, in her language.
    pub name: String,
    /// Pattern; never one that goes on while the provider is asked.
    pub pattern: Pattern,
    /// True when it is not offered for programmes any more.
    #[serde(default)]
    pub retired: bool,
}

/// A variant of the coach's own, at a level of a built-in ladder or of one of hers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct OwnVariant {
    /// Id: a UUID.
    pub id: VariantId,
    /// The ladder.
    pub ladder: LadderId,
    /// The level, 0 for the easiest; one above the highest begins a new one.
    pub level: u8,
    /// The built-in variant that it was copied from; the prior of its strength group is taken from there.
    #[serde(default)]
    pub like: Option<VariantId>,
    /// Position.
    pub position: Position,
    /// Things needed beside the load.
    #[serde(default)]
    pub needs: Vec<Thing>,
    /// How it is loaded.
    pub loading: Loading,
    /// Share of body mass moved, where it was copied from one that has it.
    #[serde(default)]
    pub share: Option<f64>,
    /// True when one side works at a time.
    #[serde(default)]
    pub per_side: bool,
    /// What the coach said of each caution. One that she did not answer counts.
    #[serde(default)]
    pub cautions: BTreeMap<Caution, bool>,
    /// When the level above is due.
    pub ready: ReadyMark,
    /// What she would usually begin with.
    #[serde(default)]
    pub usual_start: Option<UsualStart>,
    /// Its name, in her language.
    pub name: String,
    /// How it is set up; may be empty.
    #[serde(default)]
    pub setup: String,
    /// How she breathes; may be empty.
    #[serde(default)]
    pub breath: String,
    /// Cues.
    #[serde(default)]
    pub cues: Vec<String>,
    /// Usual slips, each with what to do.
    #[serde(default)]
    pub slips: Vec<String>,
    /// True when it is not proposed any more.
    #[serde(default)]
    pub retired: bool,
}

/// All that is the coach's own.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct OwnCatalogue {
    /// Ladders.
    pub ladders: Vec<OwnLadder>,
    /// Variants, in the order in which they were made.
    pub variants: Vec<OwnVariant>,
}

/// Why something of the coach's own cannot be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum OwnError {
    /// An id is none, or stands twice.
    #[error("{0} is no id, or stands twice")]
    Id(String),
    /// A text is missing, too long, or holds what cannot be shown.
    #[error("a text of {0} cannot be used")]
    Text(String),
    /// A number is out of range, or there are too many of something.
    #[error("a number of {0} is out of range")]
    Range(String),
    /// A pattern that goes on while the provider is asked; the coach's own cannot claim it.
    #[error("{0} would go on while all else rests")]
    Exempt(String),
    /// Its ladder or level is not there.
    #[error("{0} has no place")]
    NoPlace(String),
    /// What a variant is was changed under its id.
    #[error("{0} would become another variant")]
    Identity(String),
}

/// True for an id of a coach's own: a UUID as it is written. Built-in ids are words.
#[must_use]
pub fn is_own(id: &str) -> bool {
    Uuid::try_parse(id).is_ok_and(|uuid| uuid.hyphenated().to_string() == id)
}

/// A text that may be shown: no longer than that, and nothing in it that is no text.
fn is_text(text: &str, most: usize) -> bool {
    text.chars().count() <= most && !text.chars().any(char::is_control)
}

fn is_said(text: &str, most: usize) -> bool {
    !text.trim().is_empty() && is_text(text, most)
}

/// A pattern's region, as the built-in ladders have it; a hold rests a region.
impl Pattern {
    /// The region that works.
    #[must_use]
    pub fn region(self) -> Region {
        match self {
            Self::Squat
            | Self::Hinge
            | Self::Bridge
            | Self::SingleLeg
            | Self::HipAbduction
            | Self::HipAdduction
            | Self::Calf
            | Self::Carry
            | Self::Balance
            | Self::Impact => Region::Lower,
            Self::HorizontalPush
            | Self::VerticalPush
            | Self::HorizontalPull
            | Self::VerticalPull
            | Self::Arms => Region::Upper,
            Self::Trunk | Self::Mobility => Region::Trunk,
            Self::Breathing | Self::PelvicFloor => Region::Breathing,
        }
    }
}

impl OwnLadder {
    /// Looks at it by itself.
    ///
    /// # Errors
    /// Names what is wrong.
    pub fn check(&self) -> Result<(), OwnError> {
        let id = || self.id.to_string();
        if !is_own(self.id.as_str()) {
            return Err(OwnError::Id(id()));
        }
        if !is_said(&self.name, MAX_NAME) {
            return Err(OwnError::Text(id()));
        }
        if self.pattern.goes_on_meanwhile() {
            return Err(OwnError::Exempt(id()));
        }
        Ok(())
    }
}

impl OwnVariant {
    /// Looks at it by itself.
    ///
    /// # Errors
    /// Names what is wrong.
    pub fn check(&self) -> Result<(), OwnError> {
        let id = || self.id.to_string();
        if !is_own(self.id.as_str()) {
            return Err(OwnError::Id(id()));
        }
        let texts = [&self.setup, &self.breath].into_iter().all(|t| is_text(t, MAX_SETUP))
            && self.cues.iter().all(|t| is_said(t, MAX_CUE))
            && self.slips.iter().all(|t| is_said(t, MAX_SETUP));
        if !is_said(&self.name, MAX_NAME) || !texts {
            return Err(OwnError::Text(id()));
        }
        let kg = |kg: f64| kg.is_finite() && kg.abs() <= MAX_KG;
        let ready = match self.ready {
            // Less than nothing is help that has become less.
            ReadyMark::Load { kg: at } => kg(at) && !matches!(self.loading, Loading::Body),
            ReadyMark::Reps { reps } => (1..=600).contains(&reps),
            ReadyMark::Seconds { seconds } => (1..=600).contains(&seconds),
        };
        let stretch = match self.loading {
            Loading::Band { stretch } | Loading::Assist { stretch } => {
                stretch > 0.0 && stretch <= MAX_STRETCH
            }
            Loading::Body | Loading::One | Loading::Pair | Loading::Barbell => true,
        };
        // Help is taken off what of her is lifted, so how much that is has to be known.
        let share = match self.share {
            Some(share) => share > 0.0 && share <= 1.0,
            None => !matches!(self.loading, Loading::Assist { .. }),
        };
        let start = self.usual_start.is_none_or(|s| s.from > 0.0 && s.to >= s.from && kg(s.to));
        let counts = usize::from(self.level) < MAX_LEVELS
            && self.needs.len() <= 8
            && self.cues.len() <= MAX_CUES
            && self.slips.len() <= MAX_SLIPS;
        if !(ready && stretch && share && start && counts) {
            return Err(OwnError::Range(id()));
        }
        Ok(())
    }

    /// True if both are the same thing to do, whatever their words: ladder, level, position, loading, share and sides.
    #[must_use]
    pub fn is_same_thing(&self, other: &Self) -> bool {
        self.id == other.id
            && self.ladder == other.ladder
            && self.level == other.level
            && self.like == other.like
            && self.position == other.position
            && self.loading == other.loading
            && self.share == other.share
            && self.per_side == other.per_side
            && self.is_timed() == other.is_timed()
    }

    /// True when it is held or carried for a time; such sets are no evidence of strength.
    #[must_use]
    pub fn is_timed(&self) -> bool {
        matches!(self.ready, ReadyMark::Seconds { .. })
    }

    /// The cautions that count: those that she said yes to, those that she did not answer, and those that lie in the
    /// thing itself, whatever was said.
    #[must_use]
    pub fn cautions_on(&self, pattern: Pattern) -> Vec<Caution> {
        let implied = |caution: Caution| match caution {
            Caution::Overhead => {
                self.position == Position::Hanging
                    || matches!(pattern, Pattern::VerticalPush | Pattern::VerticalPull)
            }
            Caution::Impact => pattern == Pattern::Impact,
            Caution::PelvicHold => pattern == Pattern::PelvicFloor,
            Caution::OneSided | Caution::Wrist | Caution::Midline => false,
        };
        let counts = |c: &Caution| implied(*c) || self.cautions.get(c).copied().unwrap_or(true);
        Caution::ALL.into_iter().filter(counts).collect()
    }
}

impl OwnCatalogue {
    /// True when there is nothing in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.ladders.is_empty() && self.variants.is_empty()
    }

    /// A ladder by id.
    #[must_use]
    pub fn ladder(&self, id: &LadderId) -> Option<&OwnLadder> {
        self.ladders.iter().find(|l| &l.id == id)
    }

    /// A variant by id.
    #[must_use]
    pub fn variant(&self, id: &VariantId) -> Option<&OwnVariant> {
        self.variants.iter().find(|v| &v.id == id)
    }

    /// Looks at all of it, without any catalogue beside it.
    ///
    /// # Errors
    /// Names the first thing that is wrong.
    pub fn check(&self) -> Result<(), OwnError> {
        if self.ladders.len() > MAX_OWN_LADDERS {
            return Err(OwnError::Range("ladders".to_owned()));
        }
        if self.variants.len() > MAX_OWN_VARIANTS {
            return Err(OwnError::Range("variants".to_owned()));
        }
        let mut seen = BTreeSet::new();
        for ladder in &self.ladders {
            ladder.check()?;
            if !seen.insert(ladder.id.as_str()) {
                return Err(OwnError::Id(ladder.id.to_string()));
            }
        }
        for variant in &self.variants {
            variant.check()?;
            if !seen.insert(variant.id.as_str()) {
                return Err(OwnError::Id(variant.id.to_string()));
            }
        }
        Ok(())
    }

    /// What stands in a coach's own stream: of each id the last that was written, by time, device and number. One that
    /// would make another thing of a variant or ladder under its old id is passed over.
    #[must_use]
    pub fn standing(records: &[Record]) -> Self {
        type Key = (DateTime<FixedOffset>, DeviceId, u64);
        let mut written: Vec<(Key, &Payload)> =
            records.iter().map(|r| ((r.at, r.device, r.seq), &r.payload)).collect();
        written.sort_by_key(|(key, _)| *key);
        let mut own = Self::default();
        for (_, payload) in written {
            match payload {
                Payload::OwnLadder(ladder) => own.put_ladder(ladder.clone()),
                Payload::OwnVariant(variant) => own.put_variant((**variant).clone()),
                _ => Ok(()),
            }
            // What is not sound, from whatever file, has no effect.
            .unwrap_or_default();
        }
        own
    }

    /// Puts a ladder in, or what it is called and whether it is offered.
    ///
    /// # Errors
    /// When it is not sound, or its pattern would change.
    pub fn put_ladder(&mut self, ladder: OwnLadder) -> Result<(), OwnError> {
        ladder.check()?;
        let full = self.ladders.len() >= MAX_OWN_LADDERS;
        match self.ladders.iter_mut().find(|l| l.id == ladder.id) {
            Some(old) if old.pattern == ladder.pattern => *old = ladder,
            Some(old) => return Err(OwnError::Identity(old.id.to_string())),
            None if full => return Err(OwnError::Range("ladders".to_owned())),
            None => self.ladders.push(ladder),
        }
        Ok(())
    }

    /// Puts a variant in, or what of it may change.
    ///
    /// # Errors
    /// When it is not sound, or would become another thing.
    pub fn put_variant(&mut self, variant: OwnVariant) -> Result<(), OwnError> {
        variant.check()?;
        let full = self.variants.len() >= MAX_OWN_VARIANTS;
        match self.variants.iter_mut().find(|v| v.id == variant.id) {
            Some(old) if old.is_same_thing(&variant) => *old = variant,
            Some(old) => return Err(OwnError::Identity(old.id.to_string())),
            None if full => return Err(OwnError::Range("variants".to_owned())),
            None => self.variants.push(variant),
        }
        Ok(())
    }

    /// As it is with what of another is not in it; what both have stays as it is here.
    #[must_use]
    pub fn and(mut self, other: &Self) -> Self {
        for ladder in &other.ladders {
            if self.ladder(&ladder.id).is_none() && self.ladders.len() < MAX_OWN_LADDERS {
                self.ladders.push(ladder.clone());
            }
        }
        for variant in &other.variants {
            if self.variant(&variant.id).is_none() && self.variants.len() < MAX_OWN_VARIANTS {
                self.variants.push(variant.clone());
            }
        }
        self
    }

    /// As it is with everything retired: to be read, and proposed no more.
    #[must_use]
    pub fn retired(mut self) -> Self {
        self.ladders.iter_mut().for_each(|l| l.retired = true);
        self.variants.iter_mut().for_each(|v| v.retired = true);
        self
    }

    /// What of it stands on some ladders.
    #[must_use]
    pub fn on_ladders(&self, ladders: &BTreeSet<LadderId>) -> Self {
        Self {
            ladders: self.ladders.iter().filter(|l| ladders.contains(&l.id)).cloned().collect(),
            variants: self.variants.iter().filter(|v| ladders.contains(&v.ladder)).cloned().collect(),
        }
    }

    /// Its words, by the ids under which `catalogue.ftl` has those of the built-in ones (`variant-<id>.cue1`).
    #[must_use]
    pub fn sayings(&self) -> BTreeMap<String, String> {
        let mut said = BTreeMap::new();
        for ladder in &self.ladders {
            said.insert(format!("ladder-{}", ladder.id), ladder.name.clone());
        }
        for variant in &self.variants {
            let id = format!("variant-{}", variant.id);
            let mut put = |name: String, text: &String| {
                if !text.trim().is_empty() {
                    said.insert(format!("{id}.{name}"), text.clone());
                }
            };
            put("setup".to_owned(), &variant.setup);
            put("breath".to_owned(), &variant.breath);
            for (i, cue) in variant.cues.iter().enumerate() {
                put(format!("cue{}", i + 1), cue);
            }
            for (i, slip) in variant.slips.iter().enumerate() {
                put(format!("slip{}", i + 1), slip);
            }
            said.insert(id, variant.name.clone());
        }
        said
    }
}
