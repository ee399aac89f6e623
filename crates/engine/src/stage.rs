//! Dating: gestational age on a day, and weeks since birth. The tool computes; it never redates.

use chrono::{Days, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Days from the first day of the last period to the due date
/// (ACOG Committee Opinion 700, Obstet Gynecol 2017;129:e150, doi 10.1097/AOG.0000000000002046 [s]).
pub const TERM_DAYS: i64 = 280;

/// How a baby was born, as far as she wants to say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum BirthMode {
    /// Vaginal birth.
    Vaginal,
    /// Vaginal birth with forceps or ventouse.
    Assisted,
    /// Caesarean birth.
    Caesarean,
    /// Not said.
    Unsaid,
}

/// A stage as it was recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "stage", rename_all = "snake_case")]
#[ts(export)]
pub enum Stage {
    /// Pregnant. A due date that a clinician gave wins over arithmetic from the last period.
    Pregnant {
        /// The due date that a clinician gave.
        #[serde(default)]
        due: Option<NaiveDate>,
        /// First day of the last period.
        #[serde(default)]
        last_period: Option<NaiveDate>,
    },
    /// After a birth.
    Postpartum {
        /// Day of the birth.
        birth: NaiveDate,
        /// How.
        mode: BirthMode,
        /// True for a third- or fourth-degree tear.
        #[serde(default)]
        severe_tear: bool,
    },
    /// After a loss: a stage of its own.
    AfterLoss {
        /// The day, as she gave it.
        on: NaiveDate,
    },
    /// Neither pregnant nor after a birth.
    Neither,
}

/// A stage on one day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "stage", rename_all = "snake_case")]
#[ts(export)]
pub enum StageOn {
    /// Pregnant, with completed weeks and days; `None` when no date is known.
    Pregnant {
        /// Gestational age, if it can be worked out.
        age: Option<Age>,
        /// First, second or third, if known.
        trimester: Option<u8>,
    },
    /// Time since birth.
    Postpartum {
        /// Completed weeks and days.
        age: Age,
        /// How.
        mode: BirthMode,
        /// True for a third- or fourth-degree tear.
        severe_tear: bool,
    },
    /// Time since a loss.
    AfterLoss {
        /// Completed weeks and days.
        age: Age,
    },
    /// Neither.
    Neither,
}

/// Completed weeks and days.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Age {
    /// Completed weeks.
    pub weeks: u32,
    /// Days beyond them, 0 to 6.
    pub days: u32,
}

impl Age {
    /// From a count of days; a negative count is taken as zero.
    #[must_use]
    pub fn from_days(days: i64) -> Self {
        let days = u32::try_from(days.max(0)).unwrap_or(u32::MAX);
        Self { weeks: days / 7, days: days % 7 }
    }

    /// As a count of days.
    #[must_use]
    pub fn in_days(self) -> i64 {
        i64::from(self.weeks) * 7 + i64::from(self.days)
    }
}

/// The due date: the clinician's if there is one, else last period + 280 days.
#[must_use]
pub fn due_date(due: Option<NaiveDate>, last_period: Option<NaiveDate>) -> Option<NaiveDate> {
    due.or_else(|| last_period.and_then(|d| d.checked_add_days(Days::new(TERM_DAYS.unsigned_abs()))))
}

/// Gestational age on a day for a due date. Never negative.
#[must_use]
pub fn gestational_age(due: NaiveDate, on: NaiveDate) -> Age {
    Age::from_days(TERM_DAYS - (due - on).num_days())
}

/// Trimester of a gestational age: the first to 13w6d, the second to 27w6d, the third from 28w0d
/// (SOURCES 6: [o] for the first bound, [m] for the second).
#[must_use]
pub fn trimester(age: Age) -> u8 {
    match age.weeks {
        0..=13 => 1,
        14..=27 => 2,
        _ => 3,
    }
}

impl Stage {
    /// This stage on a day.
    #[must_use]
    pub fn on(&self, day: NaiveDate) -> StageOn {
        match self {
            Self::Pregnant { due, last_period } => {
                let age = due_date(*due, *last_period).map(|d| gestational_age(d, day));
                StageOn::Pregnant { age, trimester: age.map(trimester) }
            }
            Self::Postpartum { birth, mode, severe_tear } => StageOn::Postpartum {
                age: Age::from_days((day - *birth).num_days()),
                mode: *mode,
                severe_tear: *severe_tear,
            },
            Self::AfterLoss { on } => StageOn::AfterLoss { age: Age::from_days((day - *on).num_days()) },
            Self::Neither => StageOn::Neither,
        }
    }
}

impl StageOn {
    /// True while pregnant.
    #[must_use]
    pub fn is_pregnant(&self) -> bool {
        matches!(self, Self::Pregnant { .. })
    }

    /// Completed weeks since a birth or a loss, if there was one.
    #[must_use]
    pub fn weeks_after(&self) -> Option<u32> {
        match self {
            Self::Postpartum { age, .. } | Self::AfterLoss { age } => Some(age.weeks),
            Self::Pregnant { .. } | Self::Neither => None,
        }
    }

    /// Completed weeks of pregnancy, if pregnant and dated.
    #[must_use]
    pub fn weeks_pregnant(&self) -> Option<u32> {
        match self {
            Self::Pregnant { age, .. } => age.map(|a| a.weeks),
            Self::Postpartum { .. } | Self::AfterLoss { .. } | Self::Neither => None,
        }
    }
}
