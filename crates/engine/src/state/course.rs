//! How levels move after a session.

use super::signs::closes;
use super::{Course, Effects, Exposure, LadderEffect, LadderState, Recent, State};
use crate::ground::Ground;
use crate::history::Run;
use crate::ids::{LadderId, RecordId, SymptomId, VariantId};
use crate::kit::Load;
use crate::record::{NextDay, TodayThing};
use crate::rules::Scope;
use crate::symptom::Verdict;
use chrono::{DateTime, FixedOffset, NaiveDate};

impl State {
    /// Moves levels after a session.
    pub(super) fn close_run(&mut self, run: &Run, ground: &Ground<'_>, effects: &Effects) {
        self.trained = self.trained.saturating_add(u32::from(!run.sets.is_empty()));
        let mut touched: Vec<LadderId> = effects.ladders.keys().cloned().collect();
        for (id, entry) in &self.ladders {
            if entry.exposures.last().is_some_and(|e| e.run == run.id) && !touched.contains(id) {
                touched.push(id.clone());
            }
        }
        for id in touched {
            let entry = self.ladders.entry(id.clone()).or_default();
            let effect = effects.ladders.get(&id);
            let before = std::mem::take(&mut entry.recent);
            for (kind, now) in effect.iter().flat_map(|e| &e.seen) {
                let then = before.get(kind).map_or(0, |r| r.running);
                let running = if now.dropped { then.saturating_add(1) } else { 0 };
                entry.recent.insert(kind.clone(), Recent { running, ..*now });
            }
            let effect = effect.filter(|e| e.drops > 0);
            entry.moved = entry.moved.max(effect.map(|e| e.at));
            match effect {
                Some(effect) => drop_level(entry, &id, run, ground, effect),
                None => go_on(entry, &id, run, effects),
            }
        }
    }

    /// A drop outside a session, or one that concerns all ladders: one level down from where she
    /// stands. A ladder that is already below what she did last stays there, since a drop is one level;
    /// at the lowest it stays as well. Loads count anew from `from`. True if there was nowhere to go.
    fn step_down(
        &mut self,
        id: &LadderId,
        kind: &SymptomId,
        ground: &Ground<'_>,
        at: DateTime<FixedOffset>,
        from: NaiveDate,
    ) -> bool {
        let Some(entry) = self.ladders.get_mut(id) else { return false };
        entry.moved = entry.moved.max(Some(at));
        let Some(level) = entry.level else { return false };
        entry.counts_anew(from);
        if let Course::Down { clean, .. } = &mut entry.course {
            *clean = 0;
        }
        if entry.exposures.last().is_some_and(|e| level < e.level) {
            return false;
        }
        // What she did last with a symptom counts, where that was below where she stands.
        let at = entry.exposures.last().filter(|e| !e.symptom_free).map_or(level, |e| level.min(e.level));
        let lowest = entry.exposures.last().map_or(0, |e| e.lowest);
        let below = level_below(ground, id, at).filter(|b| *b >= lowest);
        let to = below.unwrap_or(at);
        if to < level {
            let back = level_above(ground, id, to).unwrap_or(level).min(level);
            let last = last_at(&entry.exposures, back);
            entry.level = Some(to);
            entry.course = Course::Down { from: back, clean: 0, last, symptom: kind.clone() };
        }
        below.is_none()
    }

    /// As [`State::step_down`]; at the lowest level the ladder is held.
    pub(super) fn step_down_or_hold(
        &mut self,
        id: &LadderId,
        verdict: &Verdict,
        ground: &Ground<'_>,
        by: (RecordId, DateTime<FixedOffset>),
        from: NaiveDate,
    ) {
        let nowhere = self.step_down(id, &verdict.kind, ground, by.1, from);
        // Breathing and letting the pelvic floor go, the lowest step of its ladder, go on whatever else rests.
        let breathing = ground.catalogue.ladder(id).is_some_and(|l| l.pattern.is_of_the_first_days());
        let held = self.open_holds().any(|h| h.ladder.as_ref() == Some(id));
        if nowhere && !breathing && !held {
            self.hold(by, verdict, Some(id.clone()), Scope::Ladder);
        }
    }

    /// Every ladder goes down one level; one that she has not trained begins a step lower.
    pub(super) fn step_all_down(
        &mut self,
        verdict: &Verdict,
        ground: &Ground<'_>,
        by: (RecordId, DateTime<FixedOffset>),
        from: NaiveDate,
    ) {
        let ids: Vec<LadderId> = self.ladders.keys().cloned().collect();
        for id in ids {
            self.step_down_or_hold(&id, verdict, ground, by, from);
        }
        self.owed = Some((by.1, verdict.kind.clone()));
    }

    /// She goes on after a hold or a red flag: the ladders that rested do so a level lower, or where they are if there
    /// is nothing below.
    pub(super) fn go_on_lower(
        &mut self,
        kind: &SymptomId,
        ground: &Ground<'_>,
        (scope, ladder): (Scope, Option<&LadderId>),
        at: DateTime<FixedOffset>,
    ) {
        let region = |id: &LadderId| ground.catalogue.ladder(id).map(|l| l.region);
        let rested = |id: &LadderId| region(id).is_some_and(|region| closes(scope, ladder, id, region));
        let ids: Vec<LadderId> = self.ladders.keys().filter(|id| rested(id)).cloned().collect();
        for id in ids {
            self.step_down(&id, kind, ground, at, at.date_naive());
        }
        if scope == Scope::All {
            self.owed = Some((at, kind.clone()));
        }
    }
}

fn drop_level(entry: &mut LadderState, id: &LadderId, run: &Run, ground: &Ground<'_>, effect: &LadderEffect) {
    let from = effect.from.or(entry.level).unwrap_or(0);
    // The level below the last one that was marked; the lowest stays and is held.
    let below = || level_below_in(run, ground, id, from);
    let to = effect.down_to.or_else(below).unwrap_or(from);
    entry.level = Some(to);
    entry.counts_from = run.day.succ_opt();
    if to < from {
        // Back up one level at a time, even if two were left in one session.
        let back = level_above(ground, id, to).unwrap_or(from).min(from);
        entry.course = Course::Down {
            from: back,
            clean: 0,
            last: last_at_in_run(run, ground, id, back).or_else(|| last_at(&entry.exposures, back)),
            symptom: effect.symptom.clone(),
        };
    } else if let Course::Down { clean, .. } = &mut entry.course {
        *clean = 0;
    }
}

fn go_on(entry: &mut LadderState, id: &LadderId, run: &Run, effects: &Effects) {
    let Some(exposed) = entry.exposures.last().filter(|e| e.run == run.id).cloned() else { return };
    // What was proposed bounds the level: nobody moves up by a choice of her own.
    let shown = shown_level(run, id);
    // A session that went on unloaded because of another ladder says nothing of the level of this one.
    let unloaded = effects.unloaded.is_some() && shown.is_some_and(|s| exposed.level < s);
    // Neither does a day without her kit, or with a child in the room: her place is kept, also where the nearest that was
    // left lay above it.
    let said = run.check_in.as_ref().map_or(&[][..], |c| &c.today);
    let for_the_day = said.iter().any(|t| matches!(t, TodayThing::NoKit | TodayThing::ChildNear));
    if for_the_day && exposed.symptom_free && entry.level.is_some_and(|standing| exposed.level != standing) {
        return;
    }
    if !exposed.symptom_free || unloaded {
        // Once begun she stands somewhere, and not where she might have begun; and what the coach set lower holds.
        let most = shown.unwrap_or(exposed.level);
        entry.level = Some(entry.level.map_or(most.min(exposed.level), |standing| standing.min(most)));
        return;
    }
    let adopt = |level: u8| shown.map_or(level, |s| level.min(s));
    let settled = run.next_day.as_ref().map(|n| n.answer == NextDay::Settled);
    match &mut entry.course {
        Course::Usual => {
            let before = entry.exposures.iter().rev().nth(1);
            let twice = before.is_some_and(|b| b.chosen && b.level == exposed.level);
            if !exposed.chosen || twice || entry.level.is_none() {
                entry.level = Some(adopt(exposed.level));
            }
        }
        Course::Down { from, clean, .. } => {
            if adopt(exposed.level) >= *from {
                entry.level = Some(adopt(exposed.level));
                entry.course = Course::Usual;
                return;
            }
            if !exposed.chosen {
                entry.level = Some(adopt(exposed.level));
            }
            match settled {
                Some(true) => *clean = clean.saturating_add(1),
                Some(false) => *clean = 0,
                // Silence is not settled.
                None => {}
            }
        }
        Course::Lighter { then, .. } => {
            let next = then.take().map_or(Course::Usual, |course| *course);
            entry.level = Some(adopt(exposed.level));
            entry.course = next;
        }
    }
}

/// The level that was proposed for a ladder in a run, if it was.
fn shown_level(run: &Run, ladder: &LadderId) -> Option<u8> {
    let shown = run.shown.as_ref()?;
    let slots = shown.slots.iter().filter(|p| p.ladder == *ladder);
    slots.filter_map(|p| run.prescription(&p.slot)).map(|p| p.level).max()
}

/// The next lower level that was open in the run as it was shown (the coach's locks count), or by the
/// ground where nothing was shown.
pub(super) fn level_below_in(run: &Run, ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<u8> {
    let shown = run.shown.as_ref().and_then(|shown| {
        let slot = shown.slots.iter().find(|p| p.ladder == *ladder)?;
        run.prescription(&slot.slot)
    });
    match shown {
        Some(p) => p.options.iter().map(|o| o.level).chain([p.level]).filter(|l| *l < level).max(),
        None => level_below(ground, ladder, level),
    }
}

/// The next lower level with an option that is open, if there is one.
#[must_use]
pub fn level_below(ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<u8> {
    let ladder = ground.catalogue.ladder(ladder)?;
    open_levels(ground, ladder).into_iter().rfind(|l| *l < level)
}

/// The next higher level with an option that is open, if there is one.
#[must_use]
pub fn level_above(ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<u8> {
    let ladder = ground.catalogue.ladder(ladder)?;
    open_levels(ground, ladder).into_iter().find(|l| *l > level)
}

fn open_levels(ground: &Ground<'_>, ladder: &crate::catalogue::Ladder) -> Vec<u8> {
    let mut levels: Vec<u8> = ladder
        .levels
        .iter()
        .enumerate()
        .filter(|(level, l)| {
            l.variants.iter().any(|variant| {
                let place = crate::catalogue::Place { ladder, level: *level, variant };
                ground.bar(&place, None).is_none()
            })
        })
        .filter_map(|(level, _)| u8::try_from(level).ok())
        .collect();
    levels.dedup();
    levels
}

fn last_at(exposures: &[Exposure], level: u8) -> Option<(VariantId, Load)> {
    exposures.iter().rfind(|e| e.level == level).map(|e| (e.variant.clone(), e.load.clone()))
}

fn last_at_in_run(run: &Run, ground: &Ground<'_>, ladder: &LadderId, level: u8) -> Option<(VariantId, Load)> {
    run.sets
        .iter()
        .rfind(|e| {
            let place = ground.catalogue.place(&e.set.variant);
            place.is_some_and(|p| p.ladder.id == *ladder && p.level == usize::from(level))
        })
        .map(|e| (e.set.variant.clone(), e.set.load.clone()))
}
