//! All that a proposal is made from, worked out once for a session; and whether she trains at all.

use super::types::Gate;
use crate::catalogue::Catalogue;
use crate::ground::Ground;
use crate::history::{History, Run};
use crate::ids::{LadderId, RunId};
use crate::kit::Kit;
use crate::programme::{Programme, Start};
use crate::reason::{Fact, Reason, ReasonCode, Reasons};
use crate::record::{Readiness, TodayThing};
use crate::rules::{Asks, RulePack, Scope};
use crate::state::{EarlierToday, Frame, Hold, State};
use crate::strength::Constants;
use crate::units::Kg;
use chrono::NaiveDate;

/// All that a proposal is made from. The same inputs give the same proposal, bit for bit.
#[derive(Clone, Copy, Debug)]
pub struct Inputs<'a> {
    /// What happened.
    pub history: &'a History,
    /// The whole programme, with all its weeks.
    pub programme: &'a Programme,
    /// The coach's starts that came with the plan.
    pub starts: &'a [Start],
    /// The local day on which that plan was made, if it is known: what it says of before a birth or a loss no longer
    /// counts.
    pub starts_of: Option<NaiveDate>,
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// The rule pack that is built in. On a bench it is the one that is in force on the day.
    pub rules: &'a RulePack,
    /// The local day.
    pub day: NaiveDate,
    /// The run that is to begin, once its check-in is written.
    pub run: Option<RunId>,
}

/// Everything worked out once for a session.
#[derive(Debug)]
pub struct Bench<'a> {
    /// The inputs.
    pub inputs: Inputs<'a>,
    /// The coach's starts, of plan and overrides, later ones last.
    pub starts: Vec<Start>,
    /// Where she stands.
    pub state: State,
    /// What is allowed today.
    pub ground: Ground<'a>,
    /// What other sessions of today left for the rest of it.
    pub earlier: EarlierToday,
    /// Constants of the filter.
    pub k: Constants,
    /// Body mass, or the assumed one.
    pub body: Kg,
}

impl<'a> Bench<'a> {
    /// Folds the history and lays the ground for a day.
    #[must_use]
    pub fn of(inputs: Inputs<'a>) -> Self {
        let frame = Frame {
            catalogue: inputs.catalogue,
            rules: inputs.rules,
            starts: inputs.starts,
            starts_of: inputs.starts_of,
            day: inputs.day,
        };
        Self::with(inputs, State::of(inputs.history, frame))
    }

    /// Lays the ground for a day with a state that is folded already, from the same inputs.
    #[must_use]
    pub fn with(inputs: Inputs<'a>, state: State) -> Self {
        let starts = state.starts_known(inputs.history, (inputs.starts, inputs.starts_of), None);
        let mut ground = Ground::of(inputs.history, inputs.catalogue, inputs.rules, inputs.day, None);
        let earlier = state.earlier_today(inputs.day, inputs.run);
        ground.unloaded_today = earlier.unloaded;
        let easy = ground.rules.number("today.after-illness", "sessions");
        let said = |r: &Run| r.check_in.as_ref().map(|c| c.today.clone()).unwrap_or_default();
        let this = inputs.run.and_then(|id| inputs.history.run(id));
        let mut today = this.map(said).unwrap_or_default();
        if !today.contains(&TodayThing::AfterIllness) && back_from_illness(inputs.history, this, easy) {
            today.push(TodayThing::AfterIllness);
        }
        ground = ground.with_today(&today);
        let feels = this.and_then(|r| r.check_in.as_ref()).map(|c| c.readiness);
        ground.unwell = feels == Some(Readiness::Unwell);
        ground.learning = ground.intake.never
            && sessions_before(inputs.history, inputs.day) < ground.rules.number("learn.first", "sessions");
        let at = crate::weeks::progress_at(inputs.history, inputs.programme, inputs.run);
        ground.light_week = inputs.programme.week(at.week).light;
        let inputs = Inputs { rules: ground.rules, ..inputs };
        // Frozen for a session, also where none was known when it began.
        let run = inputs.run.and_then(|id| inputs.history.run(id));
        let body = match run {
            Some(run) => run.body_mass,
            None => inputs.history.masses.last().map(|m| m.what),
        }
        .unwrap_or(Kg(inputs.rules.number("strength.body", "assumed_kg")));
        Self { starts, state, ground, earlier, k: Constants::of(inputs.rules), body, inputs }
    }

    /// As it is with another kit than her own at hand, as in a room where several train: what is asked is what she would be
    /// proposed there. Nothing that she did or said is looked at anew.
    #[must_use]
    pub fn with_kit(mut self, kit: Kit) -> Self {
        self.ground.kit = kit;
        self.ground.today.retain(|t| *t != TodayThing::NoKit);
        self
    }

    /// The run in hand.
    #[must_use]
    pub fn run(&self) -> Option<&'a Run> {
        self.inputs.run.and_then(|id| self.inputs.history.run(id))
    }

    /// Whether she trains at all.
    #[must_use]
    pub fn gate(&self) -> Gate {
        let rules = self.inputs.rules;
        if let Some(red) = self.state.open_reds().min_by_key(|r| r.urgency) {
            let reason = Reason::new(rules, ReasonCode::RedWaits, "symptom.red")
                .with("symptom", Fact::Symptom(red.symptom.clone()))
                .with("day", Fact::Day(red.at.date_naive()));
            return Gate::Closed { by: Some(red.record), reasons: self.with_settings(Reasons::of(reason)) };
        }
        if let Some(hold) = self.state.open_holds().find(|h| h.scope == Scope::All) {
            let reasons = self.with_settings(Reasons::of(self.hold_reason(hold)));
            return Gate::Closed { by: Some(hold.record), reasons };
        }
        if let Some(wait) = self.ground.waits.first().filter(|w| w.asks == Asks::Clearance) {
            let reasons = self.with_settings(Reasons::of(self.ground.wait_reason(wait)));
            return Gate::Closed { by: None, reasons };
        }
        if let Some(rest) = self.inputs.history.rests() {
            let code = if rest.after_loss { ReasonCode::PlanRestsLoss } else { ReasonCode::PlanRests };
            let reason = Reason::new(rules, code, "stage.taken-up").with("day", Fact::Day(rest.day));
            return Gate::Closed { by: Some(rest.record), reasons: Reasons::of(reason) };
        }
        Gate::Open
    }

    pub(super) fn hold_reason(&self, hold: &Hold) -> Reason {
        let rule = format!("symptom.{}", hold.symptom);
        let reason = Reason::new(self.inputs.rules, ReasonCode::HoldWaits, &rule)
            .with("symptom", Fact::Symptom(hold.symptom.clone()))
            .with("day", Fact::Day(hold.at.date_naive()));
        match &hold.ladder {
            Some(ladder) => reason.with("ladder", Fact::Ladder(ladder.clone())),
            None => reason,
        }
    }

    /// Why a ladder that ended in another session of today stays ended.
    pub(super) fn ended_earlier_today(&self, ladder: &LadderId) -> Option<Reason> {
        let symptom = self.earlier.ladders.get(ladder)?.ended.as_ref()?;
        Some(
            Reason::new(self.inputs.rules, ReasonCode::EndsToday, "symptom.drop")
                .with("symptom", Fact::Symptom(symptom.clone()))
                .with("ladder", Fact::Ladder(ladder.clone())),
        )
    }

    /// Readiness said before the run in hand.
    #[must_use]
    pub fn readiness(&self) -> Option<Readiness> {
        self.run().and_then(|r| r.check_in.as_ref()).map(|c| c.readiness)
    }
}

/// True if one of the last sessions before a run, so many less one, was the first after an illness. What was said before
/// one that was not trained holds for the next.
fn back_from_illness(history: &History, this: Option<&Run>, sessions: f64) -> bool {
    let before =
        history.runs.iter().rev().filter(|r| this.is_none_or(|t| r.id != t.id && r.started <= t.started));
    let mut trained = 0.0;
    for run in before {
        trained += f64::from(u8::from(!run.sets.is_empty()));
        if trained >= sessions {
            return false;
        }
        if run.check_in.as_ref().is_some_and(|c| c.today.contains(&TodayThing::AfterIllness)) {
            return true;
        }
    }
    false
}

/// Sessions with sets on days before this one.
fn sessions_before(history: &History, day: NaiveDate) -> f64 {
    let trained = history.runs.iter().filter(|r| r.day < day && !r.sets.is_empty()).count();
    trained as f64
}
