//! What check-ins, marks and answers of the next day do.

use super::course::level_below_in;
use super::{AtLarge, EarlierToday, Effects, Hold, LadderEffect, Recent, Red, State};
use crate::ground::Ground;
use crate::history::{Mark, Run, Said};
use crate::ids::{LadderId, RecordId, SymptomId};
use crate::record::{NextDay, Symptom};
use crate::rules::{Class, Family, Scope, UNSAID_KIND, Urgency};
use crate::symptom::{Before, Verdict, judge};
use chrono::{DateTime, FixedOffset};
use std::collections::BTreeMap;

const UNSAID: Symptom = Symptom { kind: None, amount: None, place: None, words: None };

impl State {
    /// Symptoms since last time: they concern all ladders. Several drops are one level.
    pub(super) fn take_check_in(&mut self, run: &Run, ground: &Ground<'_>, effects: &mut Effects) {
        let Some(check_in) = &run.check_in else { return };
        let mut drop: Option<(Verdict, DateTime<FixedOffset>)> = None;
        let mut strictest: Option<Verdict> = None;
        let mut judged: Vec<(Verdict, &Said<Symptom>)> = Vec::new();
        for said in &check_in.symptoms {
            judged.push((self.judge_at_large(&said.what, ground, self.trained, false), said));
        }
        judged.extend(confirmed_red(&check_in.confirmed, ground));
        for (verdict, said) in judged {
            match verdict.class {
                Class::Red => self.flag(run, said.record, said.at, &verdict, effects),
                Class::Hold => {
                    let scope = verdict.scope_on(None);
                    self.hold((said.record, said.at), &verdict, None, scope);
                    match scope {
                        Scope::All | Scope::Ladder => effects.all = Some(said.record),
                        Scope::LowerBody => effects.lower = Some(said.record),
                    }
                }
                Class::Drop => {
                    drop.get_or_insert_with(|| (verdict.clone(), said.at));
                }
                Class::Cue | Class::Note => {}
            }
            if strictest.as_ref().is_none_or(|s| verdict.class > s.class) {
                strictest = Some(verdict);
            }
        }
        if let Some((verdict, at)) = drop {
            self.step_all_down(&verdict, ground, (check_in.record, at), run.day);
        }
        if let Some(verdict) = strictest {
            effects.verdicts.insert(check_in.record, verdict);
        }
    }

    /// Judges what belongs to no ladder, said when she had trained so many sessions, by what was said so before, and
    /// keeps it for the next time.
    fn judge_at_large(
        &mut self,
        symptom: &Symptom,
        ground: &Ground<'_>,
        trained: u32,
        next_morning: bool,
    ) -> Verdict {
        let kind = symptom.kind.clone().unwrap_or_else(|| SymptomId::from(UNSAID_KIND));
        // What was said since the session before this one counts, what is said twice of one session does not.
        let then = self.at_large.get(&kind).filter(|l| trained.saturating_sub(l.trained) <= 1).copied();
        let before = Before {
            again: false,
            drops_running: then.map_or(0, |l| if l.trained == trained { l.before } else { l.running }),
            last_amount: then.filter(|l| l.trained != trained).map(|l| l.amount),
            next_morning,
        };
        let verdict = judge(ground.rules, &ground.intake, symptom, before);
        let running = if verdict.class >= Class::Drop { before.drops_running.saturating_add(1) } else { 0 };
        let same = then.filter(|l| l.trained == trained);
        let now = AtLarge {
            trained,
            amount: verdict.amount.max(same.map_or(0, |l| l.amount)),
            running: running.max(same.map_or(0, |l| l.running)),
            before: before.drops_running,
        };
        self.at_large.insert(kind, now);
        verdict
    }

    fn flag(
        &mut self,
        run: &Run,
        record: RecordId,
        at: DateTime<FixedOffset>,
        verdict: &Verdict,
        effects: &mut Effects,
    ) {
        effects.red = Some(record);
        self.flag_after(run, record, at, verdict);
    }

    fn flag_after(&mut self, run: &Run, record: RecordId, at: DateTime<FixedOffset>, verdict: &Verdict) {
        if self.reds.iter().any(|r| r.record == record && r.symptom == verdict.kind) {
            return;
        }
        self.reds.push(Red {
            record,
            at,
            run: run.id,
            symptom: verdict.kind.clone(),
            urgency: verdict.urgency.unwrap_or(Urgency::Call),
            cleared: false,
            opened: false,
        });
    }

    pub(super) fn hold(
        &mut self,
        (record, at): (RecordId, DateTime<FixedOffset>),
        verdict: &Verdict,
        ladder: Option<LadderId>,
        scope: Scope,
    ) {
        let ladder = ladder.filter(|_| scope == Scope::Ladder);
        let symptom = verdict.kind.clone();
        // One record may name a kind twice.
        let same =
            |h: &Hold| h.record == record && h.symptom == symptom && h.scope == scope && h.ladder == ladder;
        if !self.holds.iter().any(same) {
            let (cleared, opened) = (false, false);
            self.holds.push(Hold { record, at, symptom, ladder, scope, answer: None, cleared, opened });
        }
    }

    /// Judges a mark by what came before it in this session and in the one before on its ladder. With the instant
    /// since which that was said.
    fn verdict_of(
        &mut self,
        run: &Run,
        mark: &Mark,
        ground: &Ground<'_>,
        effects: &Effects,
    ) -> (Verdict, DateTime<FixedOffset>) {
        let mut strictest: Option<(Verdict, DateTime<FixedOffset>)> = None;
        let mut judged: Vec<(Verdict, &Said<Symptom>)> = Vec::new();
        for said in &mark.symptoms {
            judged.push((self.judge_one(run, mark, &said.what, ground, effects), said));
        }
        judged.extend(confirmed_red(&mark.confirmed, ground));
        for (verdict, said) in judged {
            if strictest.as_ref().is_none_or(|(s, _)| verdict.class > s.class) {
                strictest = Some((verdict, said.at));
            }
        }
        strictest.unwrap_or_else(|| {
            let mut nothing = judge(ground.rules, &ground.intake, &UNSAID, Before::default());
            nothing.class = Class::Note;
            nothing.ends_set = false;
            (nothing, mark.at)
        })
    }

    fn judge_one(
        &mut self,
        run: &Run,
        mark: &Mark,
        symptom: &Symptom,
        ground: &Ground<'_>,
        effects: &Effects,
    ) -> Verdict {
        let kind = symptom.kind.clone().unwrap_or_else(|| SymptomId::from(UNSAID_KIND));
        // What is of no movement in particular is there again on whatever ladder it comes.
        let anywhere = ground.rules.symptom(&kind).is_some_and(|k| k.family == Family::General);
        let again = run.marks.iter().take_while(|m| m.record != mark.record).any(|m| {
            (anywhere || m.ladder == mark.ladder)
                && !m.taken_back
                && effects.verdicts.get(&m.record).is_some_and(|v| v.kind == kind)
        });
        let Some(ladder) = &mark.ladder else {
            let begun = run.sets.iter().any(|e| e.at <= mark.at);
            let trained = self.trained.saturating_add(u32::from(begun));
            let at_large = self.judge_at_large(symptom, ground, trained, false);
            let before = Before { again, ..Before::default() };
            let plainly = judge(ground.rules, &ground.intake, symptom, before);
            return if plainly.class > at_large.class { plainly } else { at_large };
        };
        let recent = self.ladders.get(ladder).and_then(|l| l.recent.get(&kind)).copied();
        let before = Before {
            again,
            drops_running: recent.map_or(0, |r| r.running),
            last_amount: recent.map(|r| r.amount),
            next_morning: false,
        };
        judge(ground.rules, &ground.intake, symptom, before)
    }

    pub(super) fn take_mark(
        &mut self,
        run: &Run,
        mark: &Mark,
        ground: &Ground<'_>,
        effects: &mut Effects,
        earlier: &EarlierToday,
    ) {
        let (verdict, at) = self.verdict_of(run, mark, ground, effects);
        match verdict.class {
            Class::Red => self.flag(run, mark.record, at, &verdict, effects),
            Class::Hold => {
                let scope = verdict.scope_on(mark.ladder.as_ref());
                self.hold((mark.record, at), &verdict, mark.ladder.clone(), scope);
                match scope {
                    Scope::All => effects.all = Some(mark.record),
                    Scope::LowerBody => effects.lower = Some(mark.record),
                    Scope::Ladder => {}
                }
                if let Some(ladder) = &mark.ladder {
                    let level = self.level_in(run, mark, ladder, ground);
                    let effect = effect_on(effects, ladder, (mark.record, at), &verdict);
                    effect.ended = true;
                    effect.held = true;
                    effect.drops = effect.drops.saturating_add(1);
                    effect.from = effect.from.or(level);
                }
            }
            Class::Drop => match &mark.ladder {
                Some(ladder) => self.drop_on(run, (mark, at), ladder, &verdict, ground, (effects, earlier)),
                None => self.drop_on_all(run, (mark, at), &verdict, ground, (effects, earlier)),
            },
            Class::Cue => {
                if let Some(ladder) = &mark.ladder {
                    effect_on(effects, ladder, (mark.record, at), &verdict).cue = true;
                }
            }
            Class::Note => {}
        }
        let family = ground.rules.symptom(&verdict.kind).map(|k| k.family);
        if verdict.class >= Class::Drop && family == Some(Family::PelvicFloor) {
            effects.pelvic_floor = effects.pelvic_floor.saturating_add(1);
            let today = effects.pelvic_floor.saturating_add(earlier.pelvic_floor);
            if f64::from(today) >= ground.rules.number("symptom.pelvic-floor-twice", "marks") {
                effects.unloaded = Some(mark.record);
            }
        }
        effects.verdicts.insert(mark.record, verdict);
    }

    /// The level that a mark on a ladder speaks of: that of its variant, else of the last set in the
    /// run, else as it was shown, else where she stands.
    fn level_in(&self, run: &Run, mark: &Mark, ladder: &LadderId, ground: &Ground<'_>) -> Option<u8> {
        let of = |variant| {
            let place = ground.catalogue.place(variant).filter(|p| p.ladder.id == *ladder)?;
            u8::try_from(place.level).ok()
        };
        let done = || run.sets.iter().rfind(|e| e.set.ladder == *ladder && e.at <= mark.at);
        mark.variant
            .as_ref()
            .and_then(of)
            .or_else(|| done().and_then(|e| of(&e.set.variant)))
            .or_else(|| {
                let shown = run.shown.as_ref()?.slots.iter().find(|p| p.ladder == *ladder)?;
                run.prescription(&shown.slot).map(|p| p.level)
            })
            .or_else(|| self.ladders.get(ladder).and_then(|l| l.level))
    }

    fn drop_on(
        &mut self,
        run: &Run,
        (mark, at): (&Mark, DateTime<FixedOffset>),
        ladder: &LadderId,
        verdict: &Verdict,
        ground: &Ground<'_>,
        (effects, earlier): (&mut Effects, &EarlierToday),
    ) {
        let level = self.level_in(run, mark, ladder, ground);
        let below = level.and_then(|l| level_below_in(run, ground, ladder, l));
        let before = earlier.ladders.get(ladder).map_or(0, |l| l.drops);
        let effect = effect_on(effects, ladder, (mark.record, at), verdict);
        effect.drops = effect.drops.saturating_add(1);
        effect.from = effect.from.or(level);
        let first_today = effect.drops.saturating_add(before) == 1;
        // What came of the position is answered by another one, at the lowest level too.
        let sideways = below.is_none() && first_today;
        let down = below
            .or_else(|| level.filter(|l| sideways && another_position(ground, ladder, *l, &verdict.kind)));
        if !first_today || down.is_none() {
            effect.ended = true;
        }
        if let Some(down) = down {
            effect.down_to = Some(down);
        } else {
            effect.held = true;
            self.hold((mark.record, at), verdict, Some(ladder.clone()), Scope::Ladder);
        }
    }

    /// A mark that belongs to no ladder concerns all of them.
    fn drop_on_all(
        &mut self,
        run: &Run,
        (mark, at): (&Mark, DateTime<FixedOffset>),
        verdict: &Verdict,
        ground: &Ground<'_>,
        (effects, earlier): (&mut Effects, &EarlierToday),
    ) {
        let mut shown: Vec<LadderId> = Vec::new();
        for p in run.shown.iter().flat_map(|s| &s.slots) {
            if !shown.contains(&p.ladder) && run.prescription(&p.slot).is_some() {
                shown.push(p.ladder.clone());
            }
        }
        let breathing = |id: &LadderId| {
            ground.catalogue.ladder(id).is_some_and(|l| l.pattern == crate::catalogue::Pattern::Breathing)
        };
        let others: Vec<LadderId> = self.ladders.keys().filter(|id| !shown.contains(id)).cloned().collect();
        for ladder in shown.iter().filter(|id| !breathing(id)) {
            self.drop_on(run, (mark, at), ladder, verdict, ground, (&mut *effects, earlier));
        }
        let from = run.day.succ_opt().unwrap_or(run.day);
        for ladder in others {
            self.step_down_or_hold(&ladder, verdict, ground, (mark.record, at), from);
        }
        self.owed = Some((at, verdict.kind.clone()));
    }

    /// The morning after.
    pub(super) fn take_next_day(&mut self, run: &Run, ground: &Ground<'_>) {
        let judged = |symptom: &Symptom| {
            let before = Before { next_morning: true, ..Before::default() };
            judge(ground.rules, &ground.intake, symptom, before)
        };
        for said in &run.next_day_confirmed {
            let verdict = judged(&said.what);
            if verdict.class == Class::Red {
                self.flag_after(run, said.record, said.at, &verdict);
            }
        }
        let Some(next) = &run.next_day else { return };
        let from = run.day.succ_opt().unwrap_or(run.day);
        let marked = || run.marks.iter().filter(|m| !m.taken_back);
        let mut symptoms = next.symptoms.clone();
        if symptoms.is_empty() && next.answer == NextDay::NotSettled {
            // Not settled, and no word of what: what was marked is still there; else it is unsaid.
            let now = |what: Symptom| Said { record: next.record, at: next.at, what };
            symptoms = marked().flat_map(|m| m.symptoms.iter().map(|s| now(s.what.clone()))).collect();
            if symptoms.is_empty() {
                symptoms.push(now(UNSAID));
            }
        }
        let mut all: Option<(Verdict, DateTime<FixedOffset>)> = None;
        for said in &symptoms {
            let symptom = &said.what;
            // It belongs to the ladders it was marked on; without one it concerns all.
            let mut ladders: Vec<LadderId> = Vec::new();
            for mark in marked().filter(|m| m.symptoms.iter().any(|s| s.what.kind == symptom.kind)) {
                ladders.extend(mark.ladder.clone().filter(|l| !ladders.contains(l)));
            }
            let verdict = if ladders.is_empty() {
                self.judge_at_large(symptom, ground, self.trained, true)
            } else {
                judged(symptom)
            };
            let by = (said.record, said.at);
            match verdict.class {
                Class::Red => self.flag_after(run, said.record, said.at, &verdict),
                Class::Hold if verdict.scope == Scope::Ladder && !ladders.is_empty() => {
                    for ladder in ladders {
                        self.hold(by, &verdict, Some(ladder), Scope::Ladder);
                    }
                }
                Class::Hold => self.hold(by, &verdict, None, verdict.scope_on(None)),
                Class::Drop if ladders.is_empty() => {
                    all.get_or_insert((verdict, said.at));
                }
                Class::Drop => {
                    for ladder in ladders {
                        self.step_down_or_hold(&ladder, &verdict, ground, by, from);
                    }
                }
                Class::Cue | Class::Note => {}
            }
        }
        if let Some((verdict, at)) = all {
            self.step_all_down(&verdict, ground, (next.record, at), from);
        }
    }
}

/// Of what was confirmed only a red flag outlives a later change.
fn confirmed_red<'s>(
    confirmed: &'s [Said<Symptom>],
    ground: &Ground<'_>,
) -> impl Iterator<Item = (Verdict, &'s Said<Symptom>)> {
    let judged =
        |said: &'s Said<Symptom>| (judge(ground.rules, &ground.intake, &said.what, Before::default()), said);
    let verdicts: Vec<_> = confirmed.iter().map(judged).filter(|(v, _)| v.class == Class::Red).collect();
    verdicts.into_iter()
}

/// True if a kind gives up a position and the level has an open option in another one.
fn another_position(ground: &Ground<'_>, ladder: &LadderId, level: u8, kind: &SymptomId) -> bool {
    let Some(given_up) = ground.rules.symptom(kind).and_then(|k| k.gives_up) else { return false };
    ground.catalogue.ladder(ladder).is_some_and(|l| {
        let open = ground.open(l, None);
        open.iter().any(|p| p.level == usize::from(level) && p.variant.position != given_up)
    })
}

fn effect_on<'e>(
    effects: &'e mut Effects,
    ladder: &LadderId,
    (by, at): (RecordId, DateTime<FixedOffset>),
    verdict: &Verdict,
) -> &'e mut LadderEffect {
    let effect = effects.ladders.entry(ladder.clone()).or_insert_with(|| LadderEffect {
        by,
        at,
        symptom: verdict.kind.clone(),
        from: None,
        down_to: None,
        ended: false,
        held: false,
        cue: false,
        drops: 0,
        seen: BTreeMap::new(),
    });
    // The reason names the latest mark.
    effect.by = by;
    effect.at = effect.at.max(at);
    effect.symptom = verdict.kind.clone();
    let seen =
        effect.seen.entry(verdict.kind.clone()).or_insert(Recent { amount: 0, dropped: false, running: 0 });
    seen.amount = seen.amount.max(verdict.amount);
    seen.dropped |= verdict.class >= Class::Drop;
    effect
}
