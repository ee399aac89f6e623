//! The coach's own words and pictures for variants.

use newel_engine::catalogue::{
    Caution, Loading, OwnLadder, OwnVariant, Pattern, Position, ReadyMark, UsualStart,
};
use newel_engine::ids::{LadderId, VariantId};
use newel_engine::kit::Thing;
use newel_engine::wording::VariantWords;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// A ladder and its variants, level by level, easiest first.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct LadderWordsView {
    /// What it is called and whether it is retired, where it is the coach's own.
    pub yours: Option<OwnLadder>,
    /// Pattern.
    pub pattern: Pattern,
    /// True where the coach can add variants of her own. Breathing, pelvic floor and mobility go on while all else rests, so
    /// what they hold is not for her to say.
    pub open: bool,
    /// The ladder.
    pub ladder: LadderId,
    /// True if something about it is doubtful; the words say what.
    pub uncertain: bool,
    /// Its levels.
    pub levels: Vec<Vec<VariantWordsView>>,
}

/// A variant, and what of it is in the coach's own words.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct VariantWordsView {
    /// The variant.
    pub variant: VariantId,
    /// Built-in cues in `catalogue.ftl` (`.cue1` on).
    pub cues: u8,
    /// Position.
    pub position: Position,
    /// Things needed beside the load.
    pub needs: Vec<Thing>,
    /// What to look out for.
    pub cautions: Vec<Caution>,
    /// How it is loaded.
    pub loading: Loading,
    /// When the level above is due.
    pub ready: ReadyMark,
    /// What a coach would usually begin with.
    pub usual_start: Option<UsualStart>,
    /// True when one side works at a time.
    pub per_side: bool,
    /// All of it, where it is the coach's own.
    pub yours: Option<OwnVariant>,
    /// True if something about it is doubtful; the words say what.
    pub uncertain: bool,
    /// The coach's own words and picture.
    pub own: Option<VariantWords>,
}

/// What a coach writes for a variant. Without cues and picture the built-in ones are back.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct WordsForm {
    /// The variant.
    pub variant: VariantId,
    /// Her cues; empty ones are left out.
    pub cues: Vec<String>,
    /// False to take her picture away.
    pub keep_picture: bool,
    /// A new picture: JPEG, PNG or WebP in base64.
    pub new_picture: Option<String>,
}

/// A picture, as a page can show it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct PictureView {
    /// Media type.
    pub media: String,
    /// Its bytes in base64.
    pub base64: String,
}

/// Where a new variant of the coach's own stands.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[serde(tag = "place", rename_all = "snake_case")]
#[ts(export)]
pub enum OwnPlace {
    /// On a ladder that there is, at a level or one above the highest.
    At {
        /// The ladder.
        ladder: LadderId,
        /// The level, 0 for the easiest.
        level: u8,
    },
    /// On a new ladder, as its first level.
    NewLadder {
        /// What it is called.
        name: String,
        /// Its pattern.
        pattern: Pattern,
    },
}

/// A variant of the coach's own, as she writes it.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct OwnForm {
    /// The variant that is changed; none for a new one.
    pub id: Option<VariantId>,
    /// Where a new one stands; a change leaves it where it is.
    pub place: OwnPlace,
    /// What a new one is a copy of.
    pub like: Option<VariantId>,
    /// Its name.
    pub name: String,
    /// Position.
    pub position: Position,
    /// Things needed beside the load.
    pub needs: Vec<Thing>,
    /// How it is loaded.
    pub loading: Loading,
    /// True when one side works at a time.
    pub per_side: bool,
    /// What was said of each caution; one without an answer counts.
    pub cautions: BTreeMap<Caution, bool>,
    /// When the level above is due.
    pub ready: ReadyMark,
    /// What she would usually begin with.
    pub usual_start: Option<UsualStart>,
    /// How it is set up.
    pub setup: String,
    /// How she breathes.
    pub breath: String,
    /// Cues; empty ones are left out.
    pub cues: Vec<String>,
    /// Usual slips; empty ones are left out.
    pub slips: Vec<String>,
}

/// What may change about a ladder of the coach's own.
#[derive(Clone, Debug, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
#[ts(export)]
pub struct OwnLadderForm {
    /// The ladder.
    pub ladder: LadderId,
    /// Its name.
    pub name: String,
    /// True to have it offered no more.
    pub retired: bool,
}
