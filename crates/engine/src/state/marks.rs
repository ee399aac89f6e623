//! What check-ins, marks and answers of the next day do.

use super::course::level_below_in;
use super::{Effects, Hold, LadderEffect, Recent, Red, State};
use crate::ground::Ground;
use crate::history::{Mark, Run};
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
        let by = (check_in.record, run.started);
        let judged = |s: &Symptom| judge(ground.rules, &ground.intake, s, Before::default());
        let confirmed = check_in.confirmed.iter().map(judged).filter(|v| v.class == Class::Red);
        let mut drop: Option<Verdict> = None;
        let mut strictest: Option<Verdict> = None;
        for verdict in check_in.symptoms.iter().map(judged).chain(confirmed) {
            match verdict.class {
                Class::Red => self.flag(run, check_in.record, run.started, &verdict, effects),
                Class::Hold => {
                    // Without a ladder of its own it concerns all of them.
                    let scope = if verdict.scope == Scope::Ladder { Scope::All } else { verdict.scope };
                    self.hold(check_in.record, run.started, &verdict, None, scope, false);
                    match scope {
                        Scope::All | Scope::Ladder => effects.all = Some(check_in.record),
                        Scope::LowerBody => effects.lower = Some(check_in.record),
                    }
                }
                Class::Drop => {
                    drop.get_or_insert_with(|| verdict.clone());
                }
                Class::Cue | Class::Note => {}
            }
            if strictest.as_ref().is_none_or(|s| verdict.class > s.class) {
                strictest = Some(verdict);
            }
        }
        if let Some(verdict) = drop {
            self.step_all_down(&verdict, ground, by, run.day);
        }
        if let Some(verdict) = strictest {
            effects.verdicts.insert(check_in.record, verdict);
        }
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
        });
    }

    pub(super) fn hold(
        &mut self,
        record: RecordId,
        at: DateTime<FixedOffset>,
        verdict: &Verdict,
        ladder: Option<LadderId>,
        scope: Scope,
        lowest: bool,
    ) {
        self.holds.push(Hold {
            record,
            at,
            symptom: verdict.kind.clone(),
            ladder: if scope == Scope::Ladder { ladder } else { None },
            scope,
            lowest,
            answer: None,
        });
    }

    /// Judges a mark by what came before it in this session and in the one before on its ladder.
    fn verdict_of(&self, run: &Run, mark: &Mark, ground: &Ground<'_>, effects: &Effects) -> Verdict {
        let judge_one = |symptom: &Symptom| {
            let kind = symptom.kind.clone().unwrap_or_else(|| SymptomId::from(UNSAID_KIND));
            // What is of no movement in particular is there again on whatever ladder it comes.
            let anywhere = ground.rules.symptom(&kind).is_some_and(|k| k.family == Family::General);
            let again = run.marks.iter().take_while(|m| m.record != mark.record).any(|m| {
                (anywhere || m.ladder == mark.ladder)
                    && !m.taken_back
                    && effects.verdicts.get(&m.record).is_some_and(|v| v.kind == kind)
            });
            let recent = mark.ladder.as_ref().and_then(|l| self.ladders.get(l)?.recent.get(&kind)).copied();
            let before = Before {
                again,
                drops_running: recent.map_or(0, |r| r.running),
                last_amount: recent.map(|r| r.amount),
                next_morning: false,
            };
            judge(ground.rules, &ground.intake, symptom, before)
        };
        let mut strictest: Option<Verdict> = None;
        let now = mark.symptoms.iter().map(judge_one);
        // Of what was confirmed only a red flag outlives a later change.
        let confirmed = mark.confirmed.iter().map(judge_one).filter(|v| v.class == Class::Red);
        for verdict in now.chain(confirmed) {
            if strictest.as_ref().is_none_or(|s| verdict.class > s.class) {
                strictest = Some(verdict);
            }
        }
        strictest.unwrap_or_else(|| {
            let mut nothing = judge(ground.rules, &ground.intake, &UNSAID, Before::default());
            nothing.class = Class::Note;
            nothing.ends_set = false;
            nothing
        })
    }

    pub(super) fn take_mark(&mut self, run: &Run, mark: &Mark, ground: &Ground<'_>, effects: &mut Effects) {
        let verdict = self.verdict_of(run, mark, ground, effects);
        match verdict.class {
            Class::Red => self.flag(run, mark.record, mark.at, &verdict, effects),
            Class::Hold => {
                let scope = if verdict.scope == Scope::Ladder && mark.ladder.is_none() {
                    Scope::All
                } else {
                    verdict.scope
                };
                self.hold(mark.record, mark.at, &verdict, mark.ladder.clone(), scope, false);
                match scope {
                    Scope::All => effects.all = Some(mark.record),
                    Scope::LowerBody => effects.lower = Some(mark.record),
                    Scope::Ladder => {}
                }
                if let Some(ladder) = &mark.ladder {
                    let level = self.level_in(run, mark, ladder, ground);
                    let effect = effect_on(effects, ladder, mark, &verdict);
                    effect.ended = true;
                    effect.held = true;
                    effect.drops = effect.drops.saturating_add(1);
                    effect.from = effect.from.or(level);
                }
            }
            Class::Drop => match &mark.ladder {
                Some(ladder) => self.drop_on(run, mark, ladder, &verdict, ground, effects),
                None => self.drop_on_all(run, mark, &verdict, ground, effects),
            },
            Class::Cue => {
                if let Some(ladder) = &mark.ladder {
                    effect_on(effects, ladder, mark, &verdict).cue = true;
                }
            }
            Class::Note => {}
        }
        let family = ground.rules.symptom(&verdict.kind).map(|k| k.family);
        if verdict.class >= Class::Drop && family == Some(Family::PelvicFloor) {
            effects.pelvic_floor = effects.pelvic_floor.saturating_add(1);
            if f64::from(effects.pelvic_floor) >= ground.rules.number("symptom.pelvic-floor-twice", "marks") {
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
        mark: &Mark,
        ladder: &LadderId,
        verdict: &Verdict,
        ground: &Ground<'_>,
        effects: &mut Effects,
    ) {
        let level = self.level_in(run, mark, ladder, ground);
        let below = level.and_then(|l| level_below_in(run, ground, ladder, l));
        let effect = effect_on(effects, ladder, mark, verdict);
        effect.drops = effect.drops.saturating_add(1);
        effect.from = effect.from.or(level);
        // What came of the position is answered by another one, at the lowest level too.
        let sideways = below.is_none() && effect.drops == 1;
        let down = below
            .or_else(|| level.filter(|l| sideways && another_position(ground, ladder, *l, &verdict.kind)));
        if effect.drops > 1 || down.is_none() {
            effect.ended = true;
        }
        if let Some(down) = down {
            effect.down_to = Some(down);
        } else {
            effect.held = true;
            self.hold(mark.record, mark.at, verdict, Some(ladder.clone()), Scope::Ladder, true);
        }
    }

    /// A mark that belongs to no ladder concerns all of them.
    fn drop_on_all(
        &mut self,
        run: &Run,
        mark: &Mark,
        verdict: &Verdict,
        ground: &Ground<'_>,
        effects: &mut Effects,
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
            self.drop_on(run, mark, ladder, verdict, ground, effects);
        }
        for ladder in others {
            let from = run.day.succ_opt().unwrap_or(run.day);
            self.step_down(&ladder, verdict, ground, (mark.record, mark.at), from);
        }
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
        let by = (next.record, next.at);
        let from = run.day.succ_opt().unwrap_or(run.day);
        let marked = || run.marks.iter().filter(|m| !m.taken_back);
        let mut symptoms = next.symptoms.clone();
        if symptoms.is_empty() && next.answer == NextDay::NotSettled {
            // Not settled, and no word of what: what was marked is still there; else it is unsaid.
            symptoms = marked().flat_map(|m| m.symptoms.iter().cloned()).collect();
            if symptoms.is_empty() {
                symptoms.push(UNSAID);
            }
        }
        let mut all: Option<Verdict> = None;
        for symptom in &symptoms {
            let verdict = judged(symptom);
            // It belongs to the ladders it was marked on; without one it concerns all.
            let mut ladders: Vec<LadderId> = Vec::new();
            for mark in marked().filter(|m| m.symptoms.iter().any(|s| s.kind == symptom.kind)) {
                ladders.extend(mark.ladder.clone().filter(|l| !ladders.contains(l)));
            }
            match verdict.class {
                Class::Red => self.flag_after(run, next.record, next.at, &verdict),
                Class::Hold if verdict.scope == Scope::Ladder && !ladders.is_empty() => {
                    for ladder in ladders {
                        self.hold(next.record, next.at, &verdict, Some(ladder), Scope::Ladder, false);
                    }
                }
                Class::Hold => {
                    let scope = if verdict.scope == Scope::Ladder { Scope::All } else { verdict.scope };
                    self.hold(next.record, next.at, &verdict, None, scope, false);
                }
                Class::Drop if ladders.is_empty() => {
                    all.get_or_insert(verdict);
                }
                Class::Drop => {
                    for ladder in ladders {
                        self.step_down(&ladder, &verdict, ground, by, from);
                    }
                }
                Class::Cue | Class::Note => {}
            }
        }
        if let Some(verdict) = all {
            self.step_all_down(&verdict, ground, by, from);
        }
    }
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
    mark: &Mark,
    verdict: &Verdict,
) -> &'e mut LadderEffect {
    let effect = effects.ladders.entry(ladder.clone()).or_insert_with(|| LadderEffect {
        by: mark.record,
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
    effect.by = mark.record;
    effect.symptom = verdict.kind.clone();
    let seen =
        effect.seen.entry(verdict.kind.clone()).or_insert(Recent { amount: 0, dropped: false, running: 0 });
    seen.amount = seen.amount.max(verdict.amount);
    seen.dropped |= verdict.class >= Class::Drop;
    effect
}
