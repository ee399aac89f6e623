//! What to do for the set in hand: the proposal as shown, changed by what has happened since.

use super::load::{LoadCase, Pick};
use super::session::Bench;
use super::types::{Offer, Prescription, Target};
use crate::catalogue::{Place, Region};
use crate::history::SetEntry;
use crate::ids::SlotId;
use crate::kit::Load;
use crate::programme::{Amount, Block, Slot};
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::{Purpose, Reserve};
use crate::state::{Effects, LadderEffect};
use crate::strength::effective_load;
use crate::units::Kg;

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
        let done: Vec<&SetEntry> = run.sets.iter().filter(|e| e.set.slot == slot.id).collect();
        let mut ground = self.ground.clone();
        ground.unloaded_today = effects.unloaded.is_some();
        let open = ground.open(ladder, slot.levels);

        // The option in hand: what she chose, a level down after a mark, else what was shown.
        let mut wanted = self.inputs.catalogue.place(&shown.variant);
        let mut reasons = shown_reasons;
        let chosen = run.chosen.iter().rfind(|(s, _)| *s == slot.id).map(|(_, v)| v);
        if let Some(place) = chosen.and_then(|v| self.inputs.catalogue.place(v)) {
            reasons = vec![
                Reason::new(self.inputs.rules, ReasonCode::SheChose, "client.choice")
                    .with("variant", Fact::Variant(place.variant.id.clone())),
            ];
            wanted = Some(place);
        }
        if let Some((down, reason)) = effect.and_then(|e| self.down_to(e, &open)) {
            // Once she is at or below it by her own choice, that choice stands.
            if wanted.is_none_or(|w| w.level > down.level) {
                wanted = Some(down);
                reasons = vec![reason];
            }
        }
        let Some(mut place) = wanted else { return Turn::Over(Vec::new()) };
        if !open.iter().any(|p| p.variant.id == place.variant.id) {
            // Closed since it was shown: the nearest open level at or below, never above.
            let Some(nearest) = open.iter().rfind(|p| p.level <= place.level) else {
                let bar = ground.bar(&place, slot.levels);
                return Turn::Over(bar.map(|b| ground.bar_reason(&b, &place)).into_iter().collect());
            };
            if let Some(bar) = ground.bar(&place, slot.levels) {
                reasons = vec![ground.bar_reason(&bar, &place)];
            }
            place = *nearest;
        }
        let effort = self.effort(block, slot, ladder);
        let heaviest_today = Self::heaviest_held(shown, &done, self);
        let dropped = effect.is_some_and(|e| e.drops > 0);
        let base = LoadCase {
            ground: &ground,
            cap: dropped.then_some(heaviest_today).flatten(),
            ..self.case(slot.dose.amount, &effort, 0)
        };
        // "Ten reps with what?" may be answered after the proposal was shown and before the first set.
        let answered = done.is_empty()
            && self.inputs.history.ten_reps.iter().any(|a| a.what.0 == place.variant.id && a.at >= run.started);
        let as_shown = place.variant.id == shown.variant && !dropped && !answered;
        let pick = if as_shown {
            Pick {
                load: shown.load.clone(),
                target: shown.target,
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
        if !as_shown {
            reasons.extend(pick.reasons.clone());
        }
        let loads: Vec<Load> = ground.loads(place.variant);
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
            purpose: if shown.purpose == Purpose::Finisher { Purpose::Finisher } else { pick.purpose },
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
            && plan.reasons.iter().any(|r| r.code == ReasonCode::StartLightest)
            && plan.loads.len() > 1;
        self.regulate(&mut plan, &place, &done, shown, &base);
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
        let effect = effects.ladders.get(&slot.ladder)?;
        effect.ended.then(|| {
            let code = if effect.held { ReasonCode::HoldWaits } else { ReasonCode::EndsToday };
            vec![
                Reason::new(self.inputs.rules, code, "symptom.drop")
                    .with("symptom", Fact::Symptom(effect.symptom.clone()))
                    .with("ladder", Fact::Ladder(slot.ladder.clone())),
            ]
        })
    }

    fn down_to<'p>(&self, effect: &LadderEffect, open: &[Place<'p>]) -> Option<(Place<'p>, Reason)> {
        let level = usize::from(effect.down_to?);
        let place = open.iter().find(|p| p.level == level).or_else(|| open.iter().rfind(|p| p.level < level))?;
        let reason = Reason::new(self.inputs.rules, ReasonCode::EasierToday, "symptom.drop")
            .with("symptom", Fact::Symptom(effect.symptom.clone()))
            .with("variant", Fact::Variant(place.variant.id.clone()));
        Some((*place, reason))
    }

    /// The heaviest external load of the slot so far today, shown or held, in kg.
    fn heaviest_held(shown: &Prescription, done: &[&SetEntry], bench: &Bench<'_>) -> Option<Kg> {
        let external = |variant, load: &Load| {
            bench.inputs.catalogue.place(variant).map(|p| p.variant.external(load).0)
        };
        done.iter()
            .filter_map(|e| external(&e.set.variant, &e.set.load))
            .chain(external(&shown.variant, &shown.load))
            .max_by(f64::total_cmp)
            .filter(|kg| *kg > 0.0)
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

    /// With a set of the day known the filter regulates: a lighter load is offered where the next set
    /// would likelier than not go under the floor; a heavier one only while the load is being found.
    fn regulate(
        &self,
        plan: &mut SetPlan,
        place: &Place<'_>,
        done: &[&SetEntry],
        shown: &Prescription,
        case: &LoadCase<'_>,
    ) {
        let Some(last) = done.iter().rfind(|e| e.set.variant == plan.variant) else { return };
        let kg = |l: &Load| place.variant.external(l).0;
        // A lighter load that she took stays; a heavier one was hers for that set alone.
        if kg(&last.set.load) < kg(&plan.load) - 1e-9 {
            plan.load = last.set.load.clone();
        }
        let Amount::Reps { .. } = plan.range else { return };
        let Some(tracker) = place.variant.group.as_ref().and_then(|g| self.state.trackers.get(g)) else {
            return;
        };
        if tracker.day != self.inputs.day {
            return;
        }
        let j = f64::from(tracker.sets_today);
        let reps = f64::from(plan.target.count());
        let risk_at = |load: &Load, reps: f64| {
            effective_load(place.variant, load, self.body)
                .map(|w| tracker.chance_below(&self.k, w, reps, j, shown.floor))
        };
        if risk_at(&plan.load, reps)
            .is_some_and(|p| p > self.inputs.rules.number("load.lighter-now", "chance"))
        {
            plan.lighter = plan.loads.iter().rfind(|l| kg(l) < kg(&plan.load) - 1e-9).cloned();
        }
        if plan.purpose == Purpose::Find {
            self.find(plan, place, done, case, j);
        }
    }

    /// Up to two finding sets may step up, one load of the kit at a time.
    fn find(&self, plan: &mut SetPlan, place: &Place<'_>, done: &[&SetEntry], case: &LoadCase<'_>, j: f64) {
        let rules = self.inputs.rules;
        let kg = |l: &Load| place.variant.external(l).0;
        let mut steps: Vec<f64> = done
            .iter()
            .filter(|e| e.set.variant == plan.variant)
            .map(|e| kg(&e.set.load))
            .collect();
        let last_load = steps.last().copied();
        steps.dedup();
        let found = u32::try_from(steps.len().saturating_sub(1)).unwrap_or(u32::MAX);
        let Some(last_kg) = last_load else { return };
        // The load found so far is the one to go on with.
        if let Some(load) = plan.loads.iter().find(|l| (kg(l) - last_kg).abs() < 1e-9) {
            plan.load = load.clone();
        }
        plan.purpose = Purpose::Work;
        if f64::from(found) >= rules.number("load.first", "finding_sets") {
            return;
        }
        let last_reserve = done.last().and_then(|e| e.set.reserve);
        let room = case.effort.target + 1.0;
        let said_room = match last_reserve {
            Some(Reserve::Exactly(n)) => f64::from(n) >= room,
            Some(Reserve::AtLeast(_)) => true,
            None => false,
        };
        let Some(next) = plan.loads.iter().find(|l| kg(l) > last_kg + 1e-9).cloned() else { return };
        let Some(tracker) = place.variant.group.as_ref().and_then(|g| self.state.trackers.get(g)) else {
            return;
        };
        let Some(w) = effective_load(place.variant, &next, self.body) else { return };
        let (mean, _) = tracker.reserve(&self.k, w, f64::from(plan.range.low()), j);
        if said_room && mean >= case.effort.target - rules.number("load.target", "slack") {
            plan.reasons = vec![
                Reason::new(rules, ReasonCode::FindingUp, "load.first")
                    .with("load", Fact::Load(next.clone()))
                    .number("target", case.effort.target),
            ];
            plan.load = next;
            plan.target = Target::Reps(plan.range.low());
            plan.purpose = Purpose::Find;
        }
    }

    /// The step of the ladder that a mark in hand would lead to, for the card that says what follows.
    #[must_use]
    pub fn offer_after_mark(&self, block: &Block, slot: &Slot) -> Option<Offer> {
        match self.turn(block, slot) {
            Turn::Do(plan) => Some(Offer {
                level: plan.level,
                variant: plan.variant,
                load: plan.load,
                target: plan.target,
            }),
            Turn::Over(_) => None,
        }
    }

    /// True if a slot is over for today.
    #[must_use]
    pub fn slot_over(&self, block: &Block, slot: &Slot) -> bool {
        matches!(self.turn(block, slot), Turn::Over(_))
    }

    /// Slots of the run in hand that are over, by id.
    #[must_use]
    pub fn over_slots(&self, blocks: &[Block]) -> Vec<SlotId> {
        blocks
            .iter()
            .flat_map(|b| b.slots.iter().map(move |s| (b, s)))
            .filter(|(b, s)| self.slot_over(b, s))
            .map(|(_, s)| s.id.clone())
            .collect()
    }
}
