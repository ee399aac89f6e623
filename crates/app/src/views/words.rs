//! The coach's own words and pictures for variants.

use newel_engine::catalogue::{Caution, Loading, Position, ReadyMark, UsualStart};
use newel_engine::ids::{LadderId, VariantId};
use newel_engine::kit::Thing;
use newel_engine::wording::VariantWords;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A ladder and its variants, level by level, easiest first.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct LadderWordsView {
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
    /// True if something about it is doubtful; the words say what.
    pub uncertain: bool,
    /// The coach's own.
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
