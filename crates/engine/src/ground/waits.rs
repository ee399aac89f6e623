//! What training waits for, and what a mark of this pregnancy gave up.

use crate::catalogue::Position;
use crate::history::{Cleared, History, Intake, Said};
use crate::ids::{ConditionId, SymptomId};
use crate::record::ClearedThing;
use crate::rules::{Asks, RulePack};
use crate::stage::{BirthMode, Stage, StageOn};
use chrono::{DateTime, FixedOffset, NaiveDate};

/// What asks for a clearance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ClearanceFor {
    /// A caesarean or a severe tear.
    Birth,
    /// A birth of which it is not said how it went.
    BirthUnsaid,
    /// A condition.
    Condition(ConditionId),
}

impl ClearanceFor {
    /// What a clearance has to speak of.
    #[must_use]
    pub fn thing(&self) -> ClearedThing {
        match self {
            Self::Birth | Self::BirthUnsaid => ClearedThing::Birth,
            Self::Condition(condition) => ClearedThing::Condition { condition: condition.clone() },
        }
    }

    /// Its name in a reason.
    #[must_use]
    pub fn slug(&self) -> &'static str {
        match self {
            Self::Birth => "birth",
            Self::BirthUnsaid => "birth-unsaid",
            Self::Condition(_) => "condition",
        }
    }

    pub(super) fn rule(&self) -> String {
        match self {
            Self::Birth => "clearance.asked".to_owned(),
            Self::BirthUnsaid => "clearance.birth-unsaid".to_owned(),
            Self::Condition(condition) => format!("condition.{condition}"),
        }
    }
}

/// A clearance that is asked for and does not hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ClearanceWait {
    /// What for.
    pub of: ClearanceFor,
    /// What training waits for.
    pub asks: Asks,
    /// The last day of one that was given and has run out.
    pub ran_out: Option<NaiveDate>,
}

/// The clearances that are asked for and do not hold on a day.
pub(super) fn waits(
    history: &History,
    rules: &RulePack,
    day: NaiveDate,
    stage: &StageOn,
    intake: &Intake,
    known: &dyn Fn(DateTime<FixedOffset>) -> bool,
) -> Vec<ClearanceWait> {
    // A clearance counts from its day on, for what was there when it was given, and for what it speaks of.
    let given = |of: &ClearanceFor, since: &dyn Fn(&Said<Cleared>) -> bool| {
        let speaks = |c: &&Said<Cleared>| known(c.at) && c.what.speaks_of(&of.thing()) && since(c);
        let mut speaking = history.clearances.iter().filter(speaks).filter(|c| c.what.on <= day);
        if speaking.clone().any(|c| c.what.holds_on(day)) {
            return Ok(());
        }
        Err(speaking.rfind(|c| c.what.until.is_some()).and_then(|c| c.what.until))
    };
    let mut found = Vec::new();
    // A birth that asks for a clearance asks for it until there is one; only a new pregnancy ends that.
    let birth = history
        .stages
        .iter()
        .rev()
        .filter(|s| known(s.at))
        .take_while(|s| !matches!(s.what, Stage::Pregnant { .. }))
        .find_map(|s| match s.what {
            Stage::Postpartum { birth, mode, severe_tear } => Some((birth, mode, severe_tear)),
            Stage::Pregnant { .. } | Stage::AfterLoss { .. } | Stage::Neither => None,
        });
    if let Some((birth, mode, tear)) = birth {
        let weeks = f64::from(i32::try_from((day - birth).num_days()).unwrap_or(i32::MAX)) / 7.0;
        let unsaid = mode == BirthMode::Unsaid || tear.is_none();
        let of = if mode == BirthMode::Caesarean || tear == Some(true) {
            Some(ClearanceFor::Birth)
        } else if unsaid && weeks < rules.number("clearance.birth-unsaid", "before_week") {
            Some(ClearanceFor::BirthUnsaid)
        } else {
            None
        };
        if let Some(of) = of
            && let Err(ran_out) = given(&of, &|c| c.what.on >= birth)
        {
            found.push(ClearanceWait { of, asks: Asks::Provider, ran_out });
        }
    }
    for id in &intake.conditions {
        let asks = rules.condition(id).map_or(Asks::Nothing, |c| c.asks_at(*stage));
        if asks == Asks::Nothing {
            continue;
        }
        // The recording from which on it has been named without a break.
        let since = history
            .intakes
            .iter()
            .rev()
            .filter(|i| known(i.at))
            .take_while(|i| i.what.conditions.contains(id))
            .last()
            .map(|i| i.at);
        let of = ClearanceFor::Condition(id.clone());
        if let Err(ran_out) = given(&of, &|c| since.is_none_or(|s| c.at >= s)) {
            found.push(ClearanceWait { of, asks, ran_out });
        }
    }
    found.sort_by_key(|w| std::cmp::Reverse(w.asks));
    found
}

/// Positions that a mark of this pregnancy made her give up, with the kind of the mark.
pub(super) fn given_up(
    history: &History,
    rules: &RulePack,
    stage: &StageOn,
    known: &dyn Fn(DateTime<FixedOffset>) -> bool,
) -> Vec<(Position, SymptomId)> {
    if !stage.is_pregnant() {
        return Vec::new();
    }
    // A due date that was put right is the same pregnancy, and so is one that a slip ended in between; a birth or a loss
    // ends it.
    let since = history
        .stages
        .iter()
        .rev()
        .filter(|s| known(s.at))
        .take_while(|s| !matches!(s.what, Stage::Postpartum { .. } | Stage::AfterLoss { .. }))
        .filter(|s| matches!(s.what, Stage::Pregnant { .. }))
        .last()
        .map(|s| s.at);
    let mut found: Vec<(Position, SymptomId)> = Vec::new();
    for run in &history.runs {
        let marks = run.marks.iter().map(|m| (m.at, &m.symptoms));
        let check_in = run.check_in.iter().map(|c| (run.started, &c.symptoms));
        let next_day = run.next_day.iter().map(|n| (n.at, &n.symptoms));
        let told = marks.chain(check_in).chain(next_day);
        for (_, symptoms) in told.filter(|(at, _)| known(*at) && since.is_none_or(|s| *at >= s)) {
            for kind in symptoms.iter().filter_map(|s| s.what.kind.as_ref()) {
                if let Some(position) = rules.symptom(kind).and_then(|k| k.gives_up)
                    && !found.iter().any(|(p, _)| *p == position)
                {
                    found.push((position, kind.clone()));
                }
            }
        }
    }
    found
}
