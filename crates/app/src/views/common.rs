//! Views that several screens share.

use chrono::NaiveDate;
use newel_engine::ids::{LadderId, PersonId, VariantId};
use newel_engine::kit::{Kit, Load};
use newel_engine::stage::StageOn;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which side of the app a profile shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Role {
    /// She trains.
    Client,
    /// She coaches.
    Coach,
}

/// A profile on this device.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ProfileCard {
    /// Its folder's name; what `profile_open` takes.
    pub key: String,
    /// The person's name.
    pub name: String,
    /// Role.
    pub role: Role,
    /// True for an invented person of the demo.
    pub demo: bool,
    /// One line about an invented person (a key of `screens.ftl`), for the choice at first start.
    pub about: Option<String>,
}

/// What the app shows around every screen.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct AppView {
    /// The open profile.
    pub open: Option<ProfileCard>,
    /// All profiles on this device.
    pub profiles: Vec<ProfileCard>,
    /// Version of the app.
    pub version: String,
}

/// An error as a screen sees it: what happened, what is safe, what to do.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct ErrorView {
    /// Stable code; `error-<code>` in `screens.ftl` or `files.ftl` is its sentence in the language of the screen.
    pub code: String,
    /// The sentence in English.
    pub message: String,
    /// What to do, in English.
    pub remedy: String,
}

/// Who the client is and how she stands today.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct PersonView {
    /// Id.
    pub person: PersonId,
    /// Name.
    pub name: String,
    /// Stage today, if recorded.
    pub stage: Option<StageOn>,
    /// Her emergency number.
    pub emergency: Option<String>,
    /// Her midwife, doctor or clinic.
    pub clinic: Option<String>,
}

/// The kit screen.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct KitView {
    /// What she owns.
    pub kit: Kit,
    /// False until she has saved it once.
    pub known: bool,
    /// Stiffness presets for bands.
    pub band_presets: Vec<newel_engine::kit::Band>,
    /// What each piece that she lacks would open in her plan, the most first.
    pub gains: Vec<newel_engine::gains::Gain>,
}

/// A variant with its place on its ladder, for lists.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct Standing {
    /// Ladder.
    pub ladder: LadderId,
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels in all.
    pub levels: u8,
    /// Variant.
    pub variant: VariantId,
    /// Load.
    pub load: Load,
}

/// A file that was written.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct WrittenView {
    /// Where it lies.
    pub path: String,
    /// Records in it.
    pub records: u32,
    /// Its size in bytes.
    pub bytes: u32,
}

/// What the Send screen shows.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct SendView {
    /// Folder that files are written to unless another is chosen.
    pub folder: String,
    /// Name that the log file would get.
    pub file_name: String,
    /// Records in the log.
    pub records: u32,
    /// Day of the last session in it.
    pub last_session: Option<NaiveDate>,
    /// Coach's name from the plan, if there is a plan.
    pub coach: Option<String>,
    /// Programme's title, if there is a plan.
    pub programme: Option<String>,
}

/// What became of one file.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct FileReport {
    /// Its name.
    pub file: String,
    /// Whose it is, if it could be read.
    pub person: Option<String>,
    /// `log` or `plan`, if it could be read.
    pub kind: Option<String>,
    /// Records that were new.
    pub new: u32,
    /// Records that were known already.
    pub known: u32,
    /// Records missing in between, as spans "from to" of a device's numbers.
    pub gaps: Vec<GapView>,
    /// Why the file or some of its records were refused.
    pub refused: Vec<ErrorView>,
    /// True if it is about a client that the coach has laid aside.
    pub archived: bool,
}

/// Records missing in a stream.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct GapView {
    /// First number missing.
    pub from: u32,
    /// Last number missing.
    pub to: u32,
}

/// What became of all files that were taken in together.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct TakeInView {
    /// File by file.
    pub files: Vec<FileReport>,
}

/// A chosen file, read by the page.
#[derive(Clone, Debug, Deserialize, TS)]
#[ts(export)]
pub struct ChosenFile {
    /// Its name.
    pub name: String,
    /// Its text.
    pub text: String,
}
