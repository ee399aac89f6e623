//! Watching (DESIGN 5.7): weekly load, minutes, sets and adherence, symptom rates, and the trend of the
//! one-rep max. It shows what was logged and decides nothing: no proposal is made from it.

pub mod chance;
pub mod load;
pub mod rates;
pub mod week;

pub use rates::{AgainstRest, LoadBand, Notice, Rate, RateOf, Rates, Tells};
pub use week::{Adherence, EffortGap, Guideline, PatternSets, Week, WeekLoad, WeekMinutes};

use crate::catalogue::Catalogue;
use crate::history::{History, Run};
use crate::ids::GroupId;
use crate::rules::RulePack;
use crate::stage::Stage;
use crate::state::State;
use crate::units::Kg;
use chrono::NaiveDate;
use serde::Serialize;
use ts_rs::TS;

/// What watching is made from.
#[derive(Clone, Copy, Debug)]
pub struct Watched<'a> {
    /// What happened.
    pub history: &'a History,
    /// Where she stands, folded from the same history.
    pub state: &'a State,
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// Rule pack.
    pub rules: &'a RulePack,
    /// Sessions a week that the plan in force asks for.
    pub per_week: Option<u8>,
    /// The local day to look from.
    pub day: NaiveDate,
}

impl<'a> Watched<'a> {
    /// Runs up to the day.
    fn runs(&self) -> impl Iterator<Item = &'a Run> {
        let day = self.day;
        self.history.runs.iter().filter(move |r| r.day <= day)
    }

    /// Her stage on a day, by what is known now: a birth counts from its day on, though it was recorded
    /// later.
    fn stage_on(&self, day: NaiveDate) -> Option<&'a Stage> {
        let begins = |said: &crate::history::Said<Stage>| match &said.what {
            Stage::Postpartum { birth, .. } => *birth,
            Stage::AfterLoss { on } => *on,
            Stage::Pregnant { .. } | Stage::Neither => said.at.date_naive(),
        };
        self.history.stages.iter().rev().find(|s| begins(s) <= day).map(|s| &s.what)
    }
}

/// One-rep max of a strength group, day by day, since the last fresh start.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct StrengthTrend {
    /// Strength group.
    pub group: GroupId,
    /// Days, the earliest first.
    pub points: Vec<OneRepMax>,
}

/// A day's one-rep max, in kg of effective load.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct OneRepMax {
    /// Day.
    pub day: NaiveDate,
    /// Estimate.
    pub estimate: Kg,
    /// Lower end of its 80 % band.
    pub low: Kg,
    /// Upper end.
    pub high: Kg,
}

/// What there is to watch of one client on a day.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Watch {
    /// The day.
    pub on: NaiveDate,
    /// Weeks of seven days, the earliest first; the last one ends on the day.
    pub weeks: Vec<Week>,
    /// Symptom rates.
    pub rates: Rates,
    /// Trends by strength group.
    pub trends: Vec<StrengthTrend>,
}

impl Watch {
    /// Works out all of it.
    #[must_use]
    pub fn of(watched: &Watched<'_>) -> Self {
        let trends = watched.state.trend.iter().map(|(group, days)| StrengthTrend {
            group: group.clone(),
            points: days
                .iter()
                .filter(|d| d.day <= watched.day)
                .map(|d| {
                    let (estimate, low, high) = d.one_rep_max;
                    OneRepMax { day: d.day, estimate, low, high }
                })
                .collect(),
        });
        Self {
            on: watched.day,
            weeks: week::weeks(watched),
            rates: rates::rates(watched),
            trends: trends.filter(|t| !t.points.is_empty()).collect(),
        }
    }
}
