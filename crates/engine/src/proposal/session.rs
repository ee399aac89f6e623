//! The next session, slot by slot: gate, then level, then load, with reasons at each step.

use super::bench::Bench;
use super::coach::SetByCoach;
use super::effort::{Effort, effort};
use super::level::{LevelPick, level_today, variant_at};
use super::load::{LoadCase, Pick};
use super::types::{Gate, Offer, Outcome, Prescription, Proposal, SessionProposal};
use crate::catalogue::{Ladder, Place};
use crate::ids::GroupId;
use crate::programme::{Amount, Block, BlockPart, PlanSession, Slot};
use crate::reason::{Fact, Reason, ReasonCode, Reasons};
use crate::record::Purpose;
use crate::state::{Exposure, working_rounds};
use crate::units::Kg;
use std::collections::BTreeMap;

impl Bench<'_> {
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
        let anew = self.state.operated || self.ground.stage.weeks_after().is_some();
        let fresh = none_yet && self.state.fresh.is_some() && anew;
        effort(&self.ground, block, &slot.dose, ladder.pattern, self.readiness(), fresh)
    }

    /// Where a level has nothing light enough, the nearest below that has. Where nothing was held and no level has an option
    /// without a load, the least there is.
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
        } else {
            pick.bottom_only = pick.cap.is_some_and(|cap| cap.0 <= 0.0);
        }
    }

    /// A warm-up and a cool-down are done with the least load that there is, at the bottom of the range. Where nothing
    /// grows, no load is above the last.
    fn ease(
        &self,
        block: &Block,
        ladder: &Ladder,
        pick: &mut LevelPick,
        state: Option<&crate::state::LadderState>,
    ) {
        if block.form.eases() && ladder.is_eased() {
            pick.bottom_only = true;
            pick.cap = Some(Kg(0.0));
            pick.reasons.push(Reason::new(self.inputs.rules, ReasonCode::EaseIn, "load.ease"));
        }
        if !self.ground.nothing_grows(ladder.pattern) {
            return;
        }
        let last = state.and_then(|s| s.exposures.last()).and_then(|e| {
            let place = self.inputs.catalogue.place(&e.variant)?;
            Some(place.variant.external(&e.load))
        });
        // Help has no share; the step bound keeps it as it was.
        if let Some(held) = last.filter(|held| held.0 >= 0.0)
            && pick.cap.is_none_or(|cap| held.0 < cap.0)
        {
            pick.cap = Some(held);
        }
    }

    /// The first time since a symptom on a ladder is no heavier than what was held last.
    fn keep_to_last(
        &self,
        base: &LoadCase<'_>,
        pick: &mut LevelPick,
        state: Option<&crate::state::LadderState>,
        open: &[Place<'_>],
    ) {
        let Some(state) = state else { return };
        let since = |e: &&Exposure| state.counts_from.is_some_and(|from| e.day < from);
        let Some(last) = state.exposures.last().filter(since) else { return };
        let Some(place) = self.inputs.catalogue.place(&last.variant) else { return };
        let held = place.variant.external(&last.load);
        // Help has no share; the step bound keeps it as it was.
        if held.0 < 0.0 {
            return;
        }
        // A restart that was owed before the symptom is no lighter than what was held with it.
        if pick.cap.is_none_or(|cap| held.0 < cap.0) {
            pick.cap = Some(held);
        }
        // Nothing was held, and this level has no such option: the lightest of it.
        pick.bottom_only |=
            variant_at(open, pick.level, None, None, Some((base, pick.cap))).is_none() && held.0 <= 0.0;
        if pick.reasons.is_empty() {
            pick.reasons.push(
                Reason::new(self.inputs.rules, ReasonCode::AfterSymptom, "symptom.drop")
                    .with("ladder", Fact::Ladder(place.ladder.id.clone())),
            );
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
        if let Some(reason) = self.ended_earlier_today(&ladder.id) {
            return self.rest(slot, Reasons::of(reason));
        }
        let open = self.ground.open(ladder, slot.levels);
        if open.is_empty() {
            return self.rest(slot, Reasons::from_list(self.why_closed(ladder, slot), nothing));
        }
        let effort = self.effort(block, slot, ladder);
        let ladder_state = self.state.ladders.get(&ladder.id);
        let set = self.set_by_coach(ladder);
        // Where nothing grows, what the coach set higher waits for the next time.
        let coach = set.filter(|s| s.stands && !self.waits(s, ladder));
        let before = earlier.clone();
        let base = self.case(slot.dose.amount, &effort, &before);
        let coach_variant = self.coach_variant(ladder, coach);
        let coach_level = self.coach_level(ladder, coach);
        let untrained = ladder_state.is_none_or(|l| l.level.is_none());
        let owed = self.state.owed.as_ref().filter(|_| untrained && coach.is_none()).map(|(_, kind)| kind);
        let mut pick = level_today(&base, ladder_state, &open, coach_level, coach_variant, owed);
        if coach.is_none() {
            self.keep_to_last(&base, &mut pick, ladder_state, &open);
        }
        if let Some(before) = set.filter(|s| !s.stands) {
            self.keep_to_set(ladder, before, &open, &mut pick);
        }
        self.ease(block, ladder, &mut pick, ladder_state);
        let mut reasons = std::mem::take(&mut pick.reasons);
        let fresh_variant = coach.and_then(|s| s.start.variant.as_ref());
        self.keep_to_cap(&base, &mut pick, ladder_state, &open);

        // No load holds at this level: one level down, once.
        let mut chosen: Option<(Place<'_>, Pick)> = None;
        for last_try in [false, true] {
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
            let leap = if too_hard { case.leap(&place) } else { None };
            chosen = Some((place, load));
            // From a kit of far heavier things alone down to what holds no more than she did.
            let lower = match leap {
                Some(held) => lower.and_then(|lower| {
                    let light = |l: &u8| {
                        variant_at(&open, *l, ladder_state, None, Some((&base, Some(held)))).is_some()
                    };
                    pick.cap = Some(pick.cap.map_or(held, |cap| Kg(cap.0.min(held.0))));
                    (0..=lower).rev().find(light)
                }),
                None => lower,
            };
            match lower {
                Some(lower) if too_hard && !last_try => {
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
        let purpose = match block.form.part() {
            BlockPart::Work => load.purpose,
            // Who learns a move learns it there, too: nothing of it is counted.
            BlockPart::Finisher if load.purpose == Purpose::Learn => Purpose::Learn,
            BlockPart::Finisher => Purpose::Finisher,
            BlockPart::WarmUp | BlockPart::CoolDown => Purpose::Ease,
        };
        reasons.extend(load.reasons);
        reasons.extend(effort.reasons.clone());
        let cue = self.cue_from_last(&slot.ladder, &mut reasons);
        // A warm-up is no working set.
        if let Some(group) = place.variant.group.as_ref().filter(|_| purpose != Purpose::Ease) {
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
        coach: Option<SetByCoach<'s>>,
    ) -> LoadCase<'s> {
        let coach_load = coach.and_then(|set| {
            let fits = set.start.variant.as_ref().is_none_or(|v| *v == place.variant.id);
            set.start.load.as_ref().filter(|_| fits)
        });
        LoadCase {
            cap: pick.cap,
            bottom_only: pick.bottom_only,
            more_reps: pick.more_reps,
            coach_load,
            ..*base
        }
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
            // The one taken is open, so that nothing is found of it.
            Some(e) => self.inputs.catalogue.place(&e.variant).into_iter().collect(),
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
