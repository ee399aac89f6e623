//! The next session, slot by slot: gate, then level, then load, with reasons at each step.

use super::effort::{Effort, effort};
use super::level::{LevelPick, level_today, variant_at};
use super::load::{LoadCase, Pick};
use super::types::{Gate, Offer, Outcome, Prescription, Proposal, SessionProposal};
use crate::catalogue::{Catalogue, Ladder, Place};
use crate::ground::Ground;
use crate::history::{History, Run};
use crate::ids::{GroupId, RunId};
use crate::programme::{Amount, Block, PlanSession, Programme, Slot, Start};
use crate::reason::{Fact, Reason, ReasonCode, Reasons};
use crate::record::{Purpose, Readiness};
use crate::rules::{RulePack, Scope};
use crate::state::{Frame, Hold, State, working_rounds};
use crate::strength::Constants;
use crate::units::Kg;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// All that a proposal is made from. The same inputs give the same proposal, bit for bit.
#[derive(Clone, Copy, Debug)]
pub struct Inputs<'a> {
    /// What happened.
    pub history: &'a History,
    /// The programme.
    pub programme: &'a Programme,
    /// The coach's starts that came with the plan.
    pub starts: &'a [Start],
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
            day: inputs.day,
        };
        Self::with(inputs, State::of(inputs.history, frame))
    }

    /// Lays the ground for a day with a state that is folded already, from the same inputs.
    #[must_use]
    pub fn with(inputs: Inputs<'a>, state: State) -> Self {
        // What the coach set before a birth or a loss is of before it.
        let overrides = inputs.history.overrides.iter();
        let later = overrides.filter(|o| !state.is_before_fresh(o.at.date_naive()));
        let starts: Vec<Start> =
            inputs.starts.iter().cloned().chain(later.map(|o| o.what.0.clone())).collect();
        let ground = Ground::of(inputs.history, inputs.catalogue, inputs.rules, inputs.day, None);
        let inputs = Inputs { rules: ground.rules, ..inputs };
        // Frozen for a session, also where none was known when it began.
        let run = inputs.run.and_then(|id| inputs.history.run(id));
        let body = match run {
            Some(run) => run.body_mass,
            None => inputs.history.masses.last().map(|m| m.what),
        }
        .unwrap_or(Kg(inputs.rules.number("strength.body", "assumed_kg")));
        Self { starts, state, ground, k: Constants::of(inputs.rules), body, inputs }
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
        if let Some(red) = self.state.open_reds().next() {
            let reason = Reason::new(rules, ReasonCode::RedWaits, "symptom.red")
                .with("symptom", Fact::Symptom(red.symptom.clone()))
                .with("day", Fact::Day(red.at.date_naive()));
            return Gate::Closed { by: Some(red.record), reasons: self.with_settings(Reasons::of(reason)) };
        }
        if let Some(hold) = self.state.open_holds().find(|h| h.scope == Scope::All) {
            let reasons = self.with_settings(Reasons::of(self.hold_reason(hold)));
            return Gate::Closed { by: Some(hold.record), reasons };
        }
        Gate::Open
    }

    fn hold_reason(&self, hold: &Hold) -> Reason {
        let rule = format!("symptom.{}", hold.symptom);
        let reason = Reason::new(self.inputs.rules, ReasonCode::HoldWaits, &rule)
            .with("symptom", Fact::Symptom(hold.symptom.clone()))
            .with("day", Fact::Day(hold.at.date_naive()));
        match &hold.ladder {
            Some(ladder) => reason.with("ladder", Fact::Ladder(ladder.clone())),
            None => reason,
        }
    }

    /// Readiness said before the run in hand.
    #[must_use]
    pub fn readiness(&self) -> Option<Readiness> {
        self.run().and_then(|r| r.check_in.as_ref()).map(|c| c.readiness)
    }

    /// What the coach set on a ladder after the last exposure of it, with her note.
    fn fresh_override(&self, ladder: &Ladder) -> Option<(&'a Start, &'a str)> {
        let last = self.state.ladders.get(&ladder.id).and_then(|l| l.exposures.last()).map(|e| e.run);
        let since = last.and_then(|run| self.inputs.history.run(run)).map(|r| r.started);
        self.inputs
            .history
            .overrides
            .iter()
            .rfind(|o| {
                o.what.0.ladder == ladder.id
                    && since.is_none_or(|s| o.at > s)
                    && !self.state.is_before_fresh(o.at.date_naive())
            })
            .map(|o| (&o.what.0, o.what.1.as_str()))
    }

    /// Proposes one session.
    #[must_use]
    pub fn propose(&self, session: &PlanSession) -> SessionProposal {
        let gate = self.gate();
        let mut slots = Vec::new();
        if gate == Gate::Open {
            let mut earlier = self.earlier_today();
            for (block, slot) in session.slots() {
                let proposal = self.propose_slot(block, slot, &mut earlier);
                slots.push(Proposal { reasons: self.with_settings(proposal.reasons), ..proposal });
            }
        }
        SessionProposal {
            on: self.inputs.day,
            programme: self.inputs.programme.id,
            revision: self.inputs.programme.revision,
            session: session.id.clone(),
            gate,
            slots,
        }
    }

    /// Sets of each group done today in other runs than the one in hand.
    fn earlier_today(&self) -> BTreeMap<GroupId, u32> {
        let mut earlier: BTreeMap<GroupId, u32> = BTreeMap::new();
        let others = self.inputs.history.runs.iter().rev().take_while(|r| r.day >= self.inputs.day);
        for run in others.filter(|r| r.day == self.inputs.day && Some(r.id) != self.inputs.run) {
            for (group, sets) in working_rounds(run, self.inputs.catalogue) {
                *earlier.entry(group).or_insert(0) += sets;
            }
        }
        earlier
    }

    fn rest(&self, slot: &Slot, reasons: Reasons) -> Proposal {
        Proposal { slot: slot.id.clone(), ladder: slot.ladder.clone(), outcome: Outcome::Rest, reasons }
    }

    /// The effort of a slot today.
    #[must_use]
    pub fn effort(&self, block: &Block, slot: &Slot, ladder: &Ladder) -> Effort {
        let none_yet = self.state.ladders.get(&slot.ladder).is_none_or(|l| l.exposures.is_empty());
        let fresh = none_yet && self.state.fresh.is_some() && self.ground.stage.weeks_after().is_some();
        effort(&self.ground, block, &slot.dose, ladder.pattern, self.readiness(), fresh)
    }

    fn coach_variant<'s>(
        &'s self,
        ladder: &Ladder,
        fresh: Option<(&'s Start, &'s str)>,
    ) -> Option<&'s crate::ids::VariantId> {
        fresh
            .and_then(|(s, _)| s.variant.as_ref())
            .or_else(|| self.starts.iter().rfind(|s| s.ladder == ladder.id)?.variant.as_ref())
    }

    /// Where a level has nothing light enough, the nearest below that has.
    fn keep_to_cap(
        &self,
        base: &LoadCase<'_>,
        pick: &mut LevelPick,
        state: Option<&crate::state::LadderState>,
        open: &[Place<'_>],
    ) {
        if pick.cap.is_none() || pick.bottom_only {
            return;
        }
        let light = |level: u8| variant_at(open, level, state, None, Some((base, pick.cap))).is_some();
        if let Some(level) = (0..=pick.level).rev().find(|l| light(*l)) {
            pick.level = level;
        }
    }

    /// The case of a load for a slot.
    #[must_use]
    pub fn case<'s>(
        &'s self,
        range: Amount,
        effort: &'s Effort,
        earlier: &'s BTreeMap<GroupId, u32>,
    ) -> LoadCase<'s> {
        LoadCase {
            ground: &self.ground,
            history: self.inputs.history,
            state: &self.state,
            starts: &self.starts,
            body: self.body,
            k: &self.k,
            range,
            effort,
            earlier,
            cap: None,
            bottom_only: false,
            more_reps: 0,
            coach_load: None,
        }
    }

    fn propose_slot(&self, block: &Block, slot: &Slot, earlier: &mut BTreeMap<GroupId, u32>) -> Proposal {
        let rules = self.inputs.rules;
        let nothing = || {
            Reason::new(rules, ReasonCode::NothingAllowed, "kit.has")
                .with("ladder", Fact::Ladder(slot.ladder.clone()))
        };
        let Some(ladder) = self.inputs.catalogue.ladder(&slot.ladder) else {
            return self.rest(slot, Reasons::of(nothing()));
        };
        if let Some(hold) = self.state.hold_on(&ladder.id, ladder.region) {
            return self.rest(slot, Reasons::of(self.hold_reason(hold)));
        }
        let open = self.ground.open(ladder, slot.levels);
        if open.is_empty() {
            return self.rest(slot, Reasons::from_list(self.why_closed(ladder, slot), nothing));
        }
        let effort = self.effort(block, slot, ladder);
        let ladder_state = self.state.ladders.get(&ladder.id);
        let coach = self.fresh_override(ladder);
        let before = earlier.clone();
        let base = self.case(slot.dose.amount, &effort, &before);
        let coach_variant = self.coach_variant(ladder, coach);
        let coach_level = self.coach_level(ladder, coach);
        let mut pick = level_today(&base, ladder_state, &open, coach_level, coach_variant);
        let mut reasons = std::mem::take(&mut pick.reasons);
        let fresh_variant = coach.and_then(|(s, _)| s.variant.as_ref());
        self.keep_to_cap(&base, &mut pick, ladder_state, &open);

        // No load holds at this level: one level down, once.
        let mut chosen: Option<(Place<'_>, Pick)> = None;
        for _ in 0..2 {
            let named = fresh_variant
                .and_then(|v| open.iter().find(|p| p.variant.id == *v && p.level == usize::from(pick.level)));
            let Some(place) = named.copied().or_else(|| {
                let capped = Some((&base, pick.cap));
                let light = variant_at(&open, pick.level, ladder_state, coach_variant, capped);
                // The coach's own restart takes the lightest that there is.
                let any = || variant_at(&open, pick.level, ladder_state, coach_variant, None);
                light.or_else(|| any().filter(|_| pick.bottom_only))
            }) else {
                break;
            };
            let case = self.case_for(&base, &pick, &place, coach);
            let Some(load) = case.pick(&place) else { break };
            let lower = open
                .iter()
                .map(|p| p.level)
                .filter(|l| *l < place.level)
                .max()
                .and_then(|l| u8::try_from(l).ok());
            let too_hard = load.too_hard;
            chosen = Some((place, load));
            match lower {
                Some(lower) if too_hard => {
                    reasons.retain(|r| r.code != ReasonCode::LevelUp);
                    reasons.push(
                        Reason::new(rules, ReasonCode::LevelDownLoad, "level.down")
                            .with("variant", Fact::Variant(place.variant.id.clone())),
                    );
                    pick = LevelPick { level: lower, more_reps: 0, ..pick };
                }
                Some(_) | None => break,
            }
        }
        let Some((place, load)) = chosen else {
            return self.rest(slot, Reasons::of(nothing()));
        };
        reasons.extend(self.why_not_elsewhere(ladder, slot, ladder_state.and_then(|l| l.level), &place));
        let purpose = if block.form == crate::programme::BlockForm::Finisher {
            Purpose::Finisher
        } else {
            load.purpose
        };
        reasons.extend(load.reasons);
        reasons.extend(effort.reasons.clone());
        let cue = self.cue_from_last(&slot.ladder, &mut reasons);
        if let Some(group) = &place.variant.group {
            *earlier.entry(group.clone()).or_insert(0) += u32::from(effort.sets);
        }
        let options = self.offers(&base, &pick, &open, &place);
        let prescription = Prescription {
            level: u8::try_from(place.level).unwrap_or(u8::MAX),
            levels: u8::try_from(ladder.levels.len()).unwrap_or(u8::MAX),
            variant: place.variant.id.clone(),
            load: load.load,
            sets: effort.sets,
            target: load.target,
            range: slot.dose.amount,
            reserve: matches!(slot.dose.amount, Amount::Reps { .. }).then_some(load.aim),
            floor: effort.floor,
            purpose,
            options,
            cue,
        };
        Proposal {
            slot: slot.id.clone(),
            ladder: slot.ladder.clone(),
            outcome: Outcome::Train(prescription),
            reasons: Reasons::from_list(reasons, nothing),
        }
    }

    fn case_for<'s>(
        &'s self,
        base: &LoadCase<'s>,
        pick: &LevelPick,
        place: &Place<'_>,
        coach: Option<(&'s Start, &'s str)>,
    ) -> LoadCase<'s> {
        let coach_load = coach.and_then(|(s, _)| {
            let fits = s.variant.as_ref().is_none_or(|v| *v == place.variant.id);
            s.load.as_ref().filter(|_| fits)
        });
        LoadCase {
            cap: pick.cap,
            bottom_only: pick.bottom_only,
            more_reps: pick.more_reps,
            coach_load,
            ..*base
        }
    }

    fn coach_level(&self, ladder: &Ladder, fresh: Option<(&Start, &str)>) -> Option<(u8, Reason)> {
        let reason = |level: u8, note: &str| {
            Reason::new(self.inputs.rules, ReasonCode::CoachSet, "coach.set")
                .with("ladder", Fact::Ladder(ladder.id.clone()))
                .with("note", Fact::Words(note.to_owned()))
                .number("level", f64::from(level) + 1.0)
        };
        if let Some((start, note)) = fresh
            && let Some(level) = self.level_of(start)
        {
            return Some((level, reason(level, note)));
        }
        let untouched = self.state.ladders.get(&ladder.id).is_none_or(|l| l.level.is_none());
        if untouched {
            let start = self.starts.iter().rfind(|s| s.ladder == ladder.id)?;
            let level = self.level_of(start)?;
            let reason = Reason::new(self.inputs.rules, ReasonCode::CoachStart, "level.start")
                .with("ladder", Fact::Ladder(ladder.id.clone()))
                .number("level", f64::from(level) + 1.0);
            return Some((level, reason));
        }
        None
    }

    fn level_of(&self, start: &Start) -> Option<u8> {
        start.level.or_else(|| {
            let place = self.inputs.catalogue.place(start.variant.as_ref()?)?;
            u8::try_from(place.level).ok()
        })
    }

    /// Why the options of a ladder are closed: of all of them the first reason of each kind.
    fn why_closed(&self, ladder: &Ladder, slot: &Slot) -> Vec<Reason> {
        let mut reasons: Vec<Reason> = Vec::new();
        for (level, l) in ladder.levels.iter().enumerate() {
            for variant in &l.variants {
                let place = Place { ladder, level, variant };
                if let Some(bar) = self.ground.bar(&place, slot.levels) {
                    let reason = self.ground.bar_reason(&bar, &place);
                    if !reasons.iter().any(|r| r.code == reason.code) {
                        reasons.push(reason);
                    }
                }
            }
        }
        reasons
    }

    /// What ruled out the variant she did last, or a harder place where she stood.
    fn why_not_elsewhere(
        &self,
        ladder: &Ladder,
        slot: &Slot,
        standing: Option<u8>,
        now: &Place<'_>,
    ) -> Vec<Reason> {
        let mut reasons = Vec::new();
        let last = self.state.ladders.get(&ladder.id).and_then(|l| l.exposures.last());
        let look_at: Vec<Place<'_>> = match last {
            Some(e) if e.variant != now.variant.id => {
                self.inputs.catalogue.place(&e.variant).into_iter().collect()
            }
            Some(_) => Vec::new(),
            // First time: the variants before the one taken, at the same level.
            None => ladder
                .levels
                .get(now.level)
                .map(|l| {
                    l.variants
                        .iter()
                        .take_while(|v| v.id != now.variant.id)
                        .map(|variant| Place { ladder, level: now.level, variant })
                        .collect()
                })
                .unwrap_or_default(),
        };
        for place in look_at {
            if standing.is_some_and(|s| place.level > usize::from(s)) {
                continue;
            }
            if let Some(bar) = self.ground.bar(&place, slot.levels) {
                reasons.push(self.ground.bar_reason(&bar, &place));
            }
        }
        reasons.truncate(1);
        reasons
    }

    fn cue_from_last(&self, ladder: &crate::ids::LadderId, reasons: &mut Vec<Reason>) -> bool {
        let last = self.state.ladders.get(ladder).and_then(|l| l.exposures.last());
        let effect = last.and_then(|e| self.state.effects.get(&e.run)?.ladders.get(ladder));
        match effect {
            Some(effect) if effect.cue && effect.drops == 0 => {
                let rule = format!("symptom.{}", effect.symptom);
                reasons.push(
                    Reason::new(self.inputs.rules, ReasonCode::CueChange, &rule)
                        .with("symptom", Fact::Symptom(effect.symptom.clone())),
                );
                true
            }
            Some(_) | None => false,
        }
    }

    /// Other options that are open today at this level or below, easiest first.
    fn offers(
        &self,
        base: &LoadCase<'_>,
        pick: &LevelPick,
        open: &[Place<'_>],
        now: &Place<'_>,
    ) -> Vec<Offer> {
        open.iter()
            .filter(|p| p.level <= now.level && p.variant.id != now.variant.id)
            .filter_map(|p| {
                let case = LoadCase { cap: pick.cap, bottom_only: pick.bottom_only, ..*base };
                let load = case.pick(p)?;
                Some(Offer {
                    level: u8::try_from(p.level).unwrap_or(u8::MAX),
                    variant: p.variant.id.clone(),
                    load: load.load,
                    target: load.target,
                })
            })
            .collect()
    }
}

/// The planned session that comes next: the one after the last that was begun, round and round.
#[must_use]
pub fn next_session<'p>(history: &History, programme: &'p Programme) -> Option<&'p PlanSession> {
    let last = history.runs.iter().rev().filter(|r| !r.sets.is_empty()).find_map(|r| {
        let (id, _, session) = r.planned.as_ref()?;
        (*id == programme.id).then_some(session)
    });
    let index = last.and_then(|id| programme.sessions.iter().position(|s| s.id == *id));
    match index {
        Some(i) => programme.sessions.get((i + 1) % programme.sessions.len()),
        None => programme.sessions.first(),
    }
}
