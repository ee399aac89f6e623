//! What to do for the set in hand: the proposal as shown, changed by what has happened since.

use super::bench::Bench;
use super::effort::Effort;
use super::level::variant_at;
use super::load::{LoadCase, Pick};
use super::types::{Offer, Prescription, Target};
use crate::catalogue::{Place, Region};
use crate::history::SetEntry;
use crate::ids::GroupId;
use crate::kit::Load;
use crate::programme::{Amount, Block, Slot};
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Effects, LadderEffect, LadderState};
use crate::units::Kg;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// The set in hand.
#[derive(Clone, Debug, PartialEq)]
pub struct SetPlan {
    /// Level, 0 for the easiest.
    pub level: u8,
    /// Levels of the ladder.
    pub levels: u8,
    /// Variant.
    pub variant: crate::ids::VariantId,
    /// True if one side works at a time.
    pub per_side: bool,
    /// What to hold.
    pub load: Load,
    /// Loads that her kit makes for it.
    pub loads: Vec<Load>,
    /// Reps or seconds.
    pub target: Target,
    /// Range of the dose.
    pub range: Amount,
    /// Reserve aimed at.
    pub reserve: Option<f64>,
    /// What it is for.
    pub purpose: Purpose,
    /// Why.
    pub reasons: Vec<Reason>,
    /// Other options that are allowed now, easiest first.
    pub options: Vec<Offer>,
    /// The next easier option.
    pub easier: Option<Offer>,
    /// A lighter load, where the next set would likely go under the floor.
    pub lighter: Option<Load>,
    /// Breath, range or position changes after a symptom.
    pub cue: bool,
    /// First time with this variant and no start load known.
    pub ask_ten_reps: bool,
}

/// What a slot asks for now.
#[derive(Clone, Debug, PartialEq)]
pub enum Turn {
    /// A set.
    Do(Box<SetPlan>),
    /// Nothing more today, and why.
    Over(Vec<Reason>),
}

impl Bench<'_> {
    fn effects(&self) -> Option<&Effects> {
        self.inputs.run.and_then(|run| self.state.effects.get(&run))
    }

    /// What a slot asks for now, in the run in hand.
    #[must_use]
    pub fn turn(&self, block: &Block, slot: &Slot) -> Turn {
        let Some(run) = self.run() else { return Turn::Over(Vec::new()) };
        let Some(shown) = run.prescription(&slot.id) else { return Turn::Over(Vec::new()) };
        let shown_reasons = run
            .shown
            .as_ref()
            .and_then(|s| s.slots.iter().find(|p| p.slot == slot.id))
            .map(|p| p.reasons.all().to_vec())
            .unwrap_or_default();
        let Some(ladder) = self.inputs.catalogue.ladder(&slot.ladder) else {
            return Turn::Over(Vec::new());
        };
        let none = Effects::default();
        let effects = self.effects().unwrap_or(&none);
        if let Some(over) = self.over(effects, ladder.region, slot) {
            return Turn::Over(over);
        }
        let effect = effects.ladders.get(&slot.ladder);
        let ladder_state = self.state.ladders.get(&slot.ladder);
        let done: Vec<&SetEntry> = run.sets.iter().filter(|e| e.set.slot == slot.id).collect();
        let mut ground = self.ground.clone();
        ground.unloaded_today |= effects.unloaded.is_some();
        let open = ground.open(ladder, slot.levels);

        let was = |codes: &[ReasonCode]| shown_reasons.iter().any(|r| codes.contains(&r.code));
        let shown_lightest = was(&[ReasonCode::StartLightest]);
        let eases = was(&[ReasonCode::EaseIn]);
        let bottom_only = eases || was(&[ReasonCode::RestartLighter]);
        let after = [
            ReasonCode::LevelDownSymptom,
            ReasonCode::StayDown,
            ReasonCode::AfterSymptom,
            ReasonCode::BackUp,
        ];
        let shown_after_symptom = was(&[ReasonCode::RestartLighter]) || was(&after);
        let shown_laid_off = was(&[ReasonCode::LayOff]);

        // The option in hand: what she chose, a level down after a mark, else what was shown.
        let mut wanted = self.inputs.catalogue.place(&shown.variant);
        let mut reasons = shown_reasons;
        let chosen = run.chosen.iter().rfind(|(s, _)| *s == slot.id).map(|(_, v)| v);
        // What is offered is at the level shown or below; nothing else can be chosen.
        let allowed = |p: &Place<'_>| p.ladder.id == slot.ladder && p.level <= usize::from(shown.level);
        if let Some(place) = chosen.and_then(|v| self.inputs.catalogue.place(v)).filter(allowed) {
            reasons = vec![
                Reason::new(self.inputs.rules, ReasonCode::SheChose, "client.choice")
                    .with("variant", Fact::Variant(place.variant.id.clone())),
            ];
            wanted = Some(place);
        }
        if let Some(effect) = effect.filter(|e| e.down_to.is_some()) {
            // Nothing easier is open any more, say since the rest of today is unloaded: then the ladder ends.
            let Some((down, reason)) = self.down_to(effect, &open, ladder_state) else {
                return Turn::Over(vec![
                    Reason::new(self.inputs.rules, ReasonCode::EndsToday, "symptom.drop")
                        .with("symptom", Fact::Symptom(effect.symptom.clone()))
                        .with("ladder", Fact::Ladder(slot.ladder.clone())),
                ]);
            };
            // Once she is at or below it by her own choice, that choice stands.
            if wanted.is_none_or(|w| w.level > down.level) {
                wanted = Some(down);
                reasons = vec![reason];
            }
        }
        let Some(mut place) = wanted else { return Turn::Over(Vec::new()) };
        if !open.iter().any(|p| p.variant.id == place.variant.id) {
            // Closed since it was shown: the nearest open level at or below, never above.
            let level = open.iter().map(|p| p.level).filter(|l| *l <= place.level).max();
            let level = level.and_then(|l| u8::try_from(l).ok());
            let Some(nearest) = level.and_then(|l| variant_at(&open, l, ladder_state, None, None)) else {
                let bar = ground.bar(&place, slot.levels);
                return Turn::Over(bar.map(|b| ground.bar_reason(&b, &place)).into_iter().collect());
            };
            if let Some(bar) = ground.bar(&place, slot.levels) {
                reasons = vec![ground.bar_reason(&bar, &place)];
            }
            place = nearest;
        }
        // The aim as it was shown holds for the whole session.
        let effort = Effort {
            target: shown.reserve.unwrap_or(f64::from(slot.dose.target_rir)),
            floor: shown.floor,
            sets: shown.sets.saturating_sub(u8::try_from(done.len()).unwrap_or(u8::MAX)).max(1),
            ..self.effort(block, slot, ladder)
        };
        let dropped = effect.is_some_and(|e| e.drops > 0);
        // After a symptom, today or before, no option is heavier than what was shown or held.
        let guarded = dropped || shown_after_symptom;
        let cap = Self::heaviest_held(shown, &done, self).filter(|_| guarded);
        let cap = if eases { Some(Kg(0.0)) } else { cap };
        let mut bottom_only = bottom_only;
        let today = |(group, (on, sets)): (&GroupId, &(NaiveDate, u32))| {
            (*on == self.inputs.day).then(|| (group.clone(), *sets))
        };
        let earlier: BTreeMap<GroupId, u32> = self.state.rounds.iter().filter_map(today).collect();
        let base = LoadCase { ground: &ground, cap, ..self.case(slot.dose.amount, &effort, &earlier) };
        if !base.can_keep_to_cap(&place) && cap.is_some_and(|cap| cap.0 <= 0.0) {
            // Nothing was held. An option of this level without a load, else the lightest of it.
            let level = u8::try_from(place.level).unwrap_or(u8::MAX);
            match variant_at(&open, level, ladder_state, None, Some((&base, cap))) {
                Some(without) => place = without,
                None => bottom_only = true,
            }
        } else if !base.can_keep_to_cap(&place) {
            // Nothing light enough here: the nearest below that has something.
            let light = |l: usize| {
                let level = u8::try_from(l).ok()?;
                variant_at(&open, level, ladder_state, None, Some((&base, cap)))
            };
            let Some(lighter) = (0..=place.level).rev().find_map(light) else {
                let reason = Reason::new(self.inputs.rules, ReasonCode::NothingAllowed, "kit.has")
                    .with("ladder", Fact::Ladder(slot.ladder.clone()));
                return Turn::Over(vec![reason]);
            };
            place = lighter;
        }
        let base = LoadCase { bottom_only, ..base };
        // "Ten reps with what?" may be answered after the proposal was shown and before the first set.
        let answered = done.is_empty()
            && shown_lightest
            && base.start(&place).is_some_and(|(_, reason)| reason.code == ReasonCode::StartAnswer);
        let as_shown = place.variant.id == shown.variant && !dropped && !answered;
        let pick = if as_shown {
            Pick {
                load: shown.load.clone(),
                target: shown.target,
                aim: effort.target,
                purpose: shown.purpose,
                reasons: Vec::new(),
                too_hard: false,
                gap: false,
            }
        } else {
            match base.pick(&place) {
                Some(pick) => pick,
                None => return Turn::Over(Vec::new()),
            }
        };
        if answered {
            reasons.retain(|r| r.code != ReasonCode::StartLightest);
        }
        if !as_shown {
            reasons.extend(pick.reasons.clone());
        }
        let loads: Vec<Load> = ground.loads(&place);
        let mut plan = SetPlan {
            level: u8::try_from(place.level).unwrap_or(u8::MAX),
            levels: u8::try_from(ladder.levels.len()).unwrap_or(u8::MAX),
            variant: place.variant.id.clone(),
            per_side: place.variant.per_side,
            load: pick.load,
            loads: if loads.len() == 1 && loads[0] == Load::Nothing { Vec::new() } else { loads },
            target: pick.target,
            range: slot.dose.amount,
            reserve: shown.reserve,
            purpose: match shown.purpose {
                Purpose::Finisher | Purpose::Ease => shown.purpose,
                Purpose::Work | Purpose::Find | Purpose::Learn => pick.purpose,
            },
            reasons,
            options: self.offers_now(&base, &open, &place),
            easier: None,
            lighter: None,
            cue: shown.cue || effect.is_some_and(|e| e.cue),
            ask_ten_reps: false,
        };
        plan.easier = plan.options.iter().rfind(|o| usize::from(o.level) < place.level).cloned();
        if effect.is_some_and(|e| e.cue)
            && let Some(effect) = effect
        {
            let rule = format!("symptom.{}", effect.symptom);
            plan.reasons.insert(
                0,
                Reason::new(self.inputs.rules, ReasonCode::CueChange, &rule)
                    .with("symptom", Fact::Symptom(effect.symptom.clone())),
            );
        }
        plan.ask_ten_reps = done.is_empty()
            && !matches!(plan.purpose, Purpose::Learn | Purpose::Ease)
            && plan.reasons.iter().any(|r| r.code == ReasonCode::StartLightest)
            && base.finding_allowed(&place)
            && plan.loads.len() > 1;
        let grows = !guarded && !plan.cue && self.reps_may_grow(&base, &place, shown_laid_off);
        self.regulate(&mut plan, &place, &done, (shown.floor, grows), &base);
        Turn::Do(Box::new(plan))
    }

    fn over(&self, effects: &Effects, region: Region, slot: &Slot) -> Option<Vec<Reason>> {
        let why = |code, rule: &str| vec![Reason::new(self.inputs.rules, code, rule)];
        if effects.red.is_some() {
            return Some(why(ReasonCode::RedWaits, "symptom.red"));
        }
        if effects.all.is_some() || (effects.lower.is_some() && region == Region::Lower) {
            return Some(why(ReasonCode::HoldWaits, "symptom.hold"));
        }
        // What was marked outside the session counts in it, too.
        if self.state.open_reds().next().is_some() {
            return Some(why(ReasonCode::RedWaits, "symptom.red"));
        }
        if let Some(reason) = self.ended_earlier_today(&slot.ladder) {
            return Some(vec![reason]);
        }
        let Some(effect) = effects.ladders.get(&slot.ladder).filter(|e| e.ended) else {
            let hold = self.state.hold_on(&slot.ladder, region)?;
            let reason = Reason::new(self.inputs.rules, ReasonCode::HoldWaits, "symptom.hold")
                .with("symptom", Fact::Symptom(hold.symptom.clone()));
            return Some(vec![reason]);
        };
        Some({
            let code = if effect.held { ReasonCode::HoldWaits } else { ReasonCode::EndsToday };
            vec![
                Reason::new(self.inputs.rules, code, "symptom.drop")
                    .with("symptom", Fact::Symptom(effect.symptom.clone()))
                    .with("ladder", Fact::Ladder(slot.ladder.clone())),
            ]
        })
    }

    fn down_to<'p>(
        &self,
        effect: &LadderEffect,
        open: &[Place<'p>],
        state: Option<&LadderState>,
    ) -> Option<(Place<'p>, Reason)> {
        let wanted = effect.down_to?;
        let level = open.iter().filter_map(|p| u8::try_from(p.level).ok()).filter(|l| *l <= wanted).max()?;
        let place = variant_at(open, level, state, None, None)?;
        let reason = Reason::new(self.inputs.rules, ReasonCode::EasierToday, "symptom.drop")
            .with("symptom", Fact::Symptom(effect.symptom.clone()))
            .with("variant", Fact::Variant(place.variant.id.clone()));
        Some((place, reason))
    }

    /// The heaviest external load of the slot so far today, shown or held, in kg.
    fn heaviest_held(shown: &Prescription, done: &[&SetEntry], bench: &Bench<'_>) -> Option<Kg> {
        let external =
            |variant, load: &Load| bench.inputs.catalogue.place(variant).map(|p| p.variant.external(load).0);
        done.iter()
            .filter_map(|e| external(&e.set.variant, &e.set.load))
            .chain(external(&shown.variant, &shown.load))
            .max_by(f64::total_cmp)
            // Help is none of it: the step bound keeps it as it was.
            .filter(|kg| *kg >= 0.0)
            .map(Kg)
    }

    fn offers_now(&self, case: &LoadCase<'_>, open: &[Place<'_>], now: &Place<'_>) -> Vec<Offer> {
        open.iter()
            .filter(|p| p.level <= now.level && p.variant.id != now.variant.id)
            .filter_map(|p| {
                let pick = case.pick(p)?;
                Some(Offer {
                    level: u8::try_from(p.level).unwrap_or(u8::MAX),
                    variant: p.variant.id.clone(),
                    load: pick.load,
                    target: pick.target,
                })
            })
            .collect()
    }

    /// The step of the ladder that a mark in hand would lead to, for the card that says what follows.
    #[must_use]
    pub fn offer_after_mark(&self, block: &Block, slot: &Slot) -> Option<Offer> {
        match self.turn(block, slot) {
            Turn::Do(plan) => {
                Some(Offer { level: plan.level, variant: plan.variant, load: plan.load, target: plan.target })
            }
            Turn::Over(_) => None,
        }
    }
}
