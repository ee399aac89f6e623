//! What the two kinds of file hold. The field names are frozen with format version 1.

use crate::picture::Picture;
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::ids::{DeviceId, PersonId};
use newel_engine::programme::{Programme, Start};
use newel_engine::record::{Record, Versions};
use newel_engine::wording::VariantWords;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// What a client trained: client to coach.
    Log,
    /// What a coach wrote: coach to client.
    Plan,
}

impl Kind {
    /// Its name in the envelope.
    #[must_use]
    pub const fn format(self) -> &'static str {
        match self {
            Self::Log => "newel.log",
            Self::Plan => "newel.plan",
        }
    }

    /// The newest format version that this program reads. Version 2 of a plan is version 1 with a coach's own words and
    /// pictures, or with a programme that has an end or a session that is meant to take so many minutes; version 3 is one with a
    /// day on which the programme begins; version 4 is one whose programme has phases, light weeks, doses by week, a warm-up
    /// or a cool-down, or one with ladders or variants of the coach's own. One without any is still written as version 1, so
    /// that older programs read it.
    pub(crate) const fn newest(self) -> u32 {
        match self {
            Self::Log => 1,
            Self::Plan => 4,
        }
    }
}

/// A file as it was read.
#[derive(Clone, Debug, PartialEq)]
pub enum Document {
    /// A log file.
    Log(LogDocument),
    /// A plan file.
    Plan(Box<PlanDocument>),
}

impl Document {
    /// Its kind.
    #[must_use]
    pub const fn kind(&self) -> Kind {
        match self {
            Self::Log(_) => Kind::Log,
            Self::Plan(_) => Kind::Plan,
        }
    }

    /// The person it is about.
    #[must_use]
    pub const fn person(&self) -> PersonId {
        match self {
            Self::Log(log) => log.person,
            Self::Plan(plan) => plan.person,
        }
    }

    /// Its record lines, verbatim.
    #[must_use]
    pub fn lines(&self) -> &[String] {
        match self {
            Self::Log(log) => &log.lines,
            Self::Plan(plan) => &plan.lines,
        }
    }
}

/// What a log file holds: records about one person.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LogDocument {
    /// The person that every record is about.
    pub person: PersonId,
    /// Her name, as she wants to be called.
    pub name: String,
    /// The device that wrote the file.
    pub device: DeviceId,
    /// When the file was written.
    pub made_at: DateTime<FixedOffset>,
    /// The versions of engine, catalogue and rule pack that wrote it.
    pub versions: Versions,
    /// Records, byte for byte as they stand in the log. Chain and numbers are the reader's to check.
    #[serde(with = "crate::verbatim")]
    #[schemars(with = "Vec<Record>")]
    pub lines: Vec<String>,
}

/// What a plan file holds: a programme for one person, and what the coach recorded about her.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlanDocument {
    /// The person that it is for.
    pub person: PersonId,
    /// Her name, as the coach has it.
    pub person_name: String,
    /// The coach's name.
    pub coach_name: String,
    /// The device that wrote the file.
    pub coach_device: DeviceId,
    /// Counts up with each plan file for this person; the highest one holds.
    pub sequence: u64,
    /// When the file was written.
    pub made_at: DateTime<FixedOffset>,
    /// The programme; absent when the file brings answers alone and the programme stays.
    pub programme: Option<Programme>,
    /// Where she starts on ladders.
    pub starts: Vec<Start>,
    /// The coach's records about this person, byte for byte as they stand in the coach's log.
    #[serde(with = "crate::verbatim")]
    #[schemars(with = "Vec<Record>")]
    pub lines: Vec<String>,
    /// The coach's own words for variants, one entry each. Since version 2.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words: Vec<VariantWords>,
    /// The day on which the programme begins, if one was set and lies ahead. Since version 3.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub begins: Option<NaiveDate>,
    /// Ladders and variants of the coach's own, where the programme, the starts or what she has trained use any. Since
    /// version 4.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own: Option<OwnCatalogue>,
    /// The pictures that the words name. They stand in the envelope, beside the content.
    #[serde(skip)]
    pub pictures: Vec<Picture>,
}

impl PlanDocument {
    /// The version that it is written in.
    pub(crate) fn version(&self) -> u32 {
        let is_timed = |p: &Programme| p.weeks.is_some() || p.sessions.iter().any(|s| s.minutes.is_some());
        let timed = self.programme.as_ref().is_some_and(is_timed);
        if self.own.is_some() || self.programme.as_ref().is_some_and(Programme::tells_weeks) {
            4
        } else if self.begins.is_some() {
            3
        } else if self.words.is_empty() && self.pictures.is_empty() && !timed {
            1
        } else {
            2
        }
    }
}
