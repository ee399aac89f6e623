//! Dating: gestational age on a day, and weeks since birth. The tool computes; it never redates.

use crate::rules::RulePack;
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

/// How old an embryo was when it was transferred.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum EmbryoAge {
    /// Three days.
    Day3,
    /// Five days.
    Day5,
}

/// A day from which a pregnancy is dated more closely than from a period.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "by", rename_all = "snake_case")]
#[ts(export)]
pub enum Conceived {
    /// The transfer of an embryo.
    Transfer {
        /// The day.
        on: NaiveDate,
        /// How old the embryo was.
        embryo: EmbryoAge,
    },
    /// Ovulation.
    Ovulation {
        /// The day.
        on: NaiveDate,
    },
    /// Insemination.
    Insemination {
        /// The day.
        on: NaiveDate,
    },
}

impl Conceived {
    /// The due date that follows from it (ACOG Committee Opinion 700, doi 10.1097/AOG.0000000000002046 [s]).
    #[must_use]
    pub fn due(self) -> Option<NaiveDate> {
        let (on, days) = match self {
            Self::Transfer { on, embryo: EmbryoAge::Day5 } => (on, 261),
            Self::Transfer { on, embryo: EmbryoAge::Day3 } => (on, 263),
            Self::Ovulation { on } | Self::Insemination { on } => (on, 266),
        };
        on.checked_add_days(Days::new(days))
    }
}

/// Who gave a due date, and when.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Told {
    /// A name or a role.
    pub who: String,
    /// The day, if it is known.
    #[serde(default)]
    pub on: Option<NaiveDate>,
}

/// What a due date rests on, the strongest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum DatedBy {
    /// A clinician gave it.
    Clinician,
    /// The transfer of an embryo.
    Transfer,
    /// Ovulation.
    Ovulation,
    /// Insemination.
    Insemination,
    /// The first day of the last period.
    LastPeriod,
}

/// A stage as it was recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "stage", rename_all = "snake_case")]
#[ts(export)]
pub enum Stage {
    /// Pregnant. A due date that a clinician gave wins over all arithmetic; then the day of a transfer, an ovulation or
    /// an insemination; then the last period.
    Pregnant {
        /// The due date that a clinician gave.
        #[serde(default)]
        due: Option<NaiveDate>,
        /// Who gave it, and when.
        #[serde(default)]
        told: Option<Told>,
        /// First day of the last period.
        #[serde(default)]
        last_period: Option<NaiveDate>,
        /// A day that dates it more closely than a period.
        #[serde(default)]
        conceived: Option<Conceived>,
    },
    /// After a birth.
    Postpartum {
        /// Day of the birth.
        birth: NaiveDate,
        /// How.
        mode: BirthMode,
        /// A third- or fourth-degree tear, as far as she wants to say.
        #[serde(default)]
        severe_tear: Option<bool>,
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
        /// A third- or fourth-degree tear, if it was said.
        severe_tear: Option<bool>,
    },
    /// Time since a loss.
    AfterLoss {
        /// Completed weeks and days.
        age: Age,
    },
    /// Neither.
    Neither,
}

/// A due date that was told and one that was reckoned, further apart than is usual.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct Disagreement {
    /// As it was told; it holds.
    pub given: NaiveDate,
    /// As arithmetic gives it.
    pub reckoned: NaiveDate,
    /// From what it was reckoned.
    pub by: DatedBy,
    /// Days between the two.
    pub days: i64,
    /// Days that a scan may differ by at that age before a clinician redates.
    pub most: i64,
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
    /// Pregnant, with nothing known but the clinician's due date or the first day of the last period.
    #[must_use]
    pub fn pregnant(due: Option<NaiveDate>, last_period: Option<NaiveDate>) -> Self {
        Self::Pregnant { due, told: None, last_period, conceived: None }
    }

    /// The due date, with what it rests on; `None` if she is not pregnant or not dated.
    #[must_use]
    pub fn due(&self) -> Option<(NaiveDate, DatedBy)> {
        let Self::Pregnant { due, .. } = self else { return None };
        due.map(|due| (due, DatedBy::Clinician)).or_else(|| self.reckoned())
    }

    /// The due date that arithmetic gives, whatever a clinician said.
    #[must_use]
    pub fn reckoned(&self) -> Option<(NaiveDate, DatedBy)> {
        let Self::Pregnant { last_period, conceived, .. } = self else { return None };
        let closer = conceived.and_then(|c| {
            let by = match c {
                Conceived::Transfer { .. } => DatedBy::Transfer,
                Conceived::Ovulation { .. } => DatedBy::Ovulation,
                Conceived::Insemination { .. } => DatedBy::Insemination,
            };
            Some((c.due()?, by))
        });
        let term = Days::new(TERM_DAYS.unsigned_abs());
        closer.or_else(|| Some(((*last_period)?.checked_add_days(term)?, DatedBy::LastPeriod)))
    }

    /// Where what was told and what arithmetic gives are further apart than a scan is expected to be: for a question to
    /// the clinician. Nothing is redated by it.
    #[must_use]
    pub fn disagreement(&self, rules: &RulePack) -> Option<Disagreement> {
        let Self::Pregnant { due: Some(given), told, .. } = self else { return None };
        let (reckoned, by) = self.reckoned()?;
        let days = (*given - reckoned).num_days().abs();
        // By the age at which it was given, as the arithmetic has it; where that is not known the narrowest counts.
        let age = told.as_ref().and_then(|t| t.on).map(|on| gestational_age(reckoned, on));
        let name = match age.map(|a| a.weeks) {
            None | Some(0..=8) => "to_8_weeks",
            Some(9..=15) => "to_15_weeks",
            Some(16..=21) => "to_21_weeks",
            Some(22..=27) => "to_27_weeks",
            Some(_) => "from_28_weeks",
        };
        let most = rules.number("stage.dates-differ", name);
        (days as f64 > most).then_some(Disagreement { given: *given, reckoned, by, days, most: most as i64 })
    }

    /// The day of the birth or of the loss.
    #[must_use]
    pub fn ended_on(&self) -> Option<NaiveDate> {
        match self {
            Self::Postpartum { birth, .. } => Some(*birth),
            Self::AfterLoss { on } => Some(*on),
            Self::Pregnant { .. } | Self::Neither => None,
        }
    }

    /// This stage on a day.
    #[must_use]
    pub fn on(&self, day: NaiveDate) -> StageOn {
        match self {
            Self::Pregnant { .. } => {
                let age = self.due().map(|(due, _)| gestational_age(due, day));
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
