//! What happens around the sessions: answers and clearances, loads that the coach sets, symptoms at home.

use super::Floor;
use crate::catalogue::Region;
use crate::ids::{LadderId, RecordId, RunId, SymptomId};
use crate::kit::Load;
use crate::programme::Start;
use crate::record::{HoldAnswer, Payload, Symptom, SymptomAmount};
use crate::rules::{Class, Family, Scope};
use crate::state::Hold;

impl Floor<'_> {
    /// The coach answers holds within days, mostly; a red flag is cleared before about every other session.
    pub(super) fn answers(&mut self) {
        let day = self.now.date_naive();
        let state = self.ledger.state(day);
        let holds: Vec<Hold> = state.open_holds().cloned().collect();
        let red = state.open_reds().next().is_some();
        let mut answered: Vec<RecordId> = Vec::new();
        for hold in &holds {
            if answered.contains(&hold.record) || !self.life.happens(0.8) {
                continue;
            }
            answered.push(hold.record);
            let answer = match self.life.between(0, 9) {
                0..=5 => HoldAnswer::GoOn,
                6..=8 => HoldAnswer::RestartLighter,
                _ => HoldAnswer::KeepResting,
            };
            for opened in holds.iter().filter(|h| h.record == hold.record) {
                match answer {
                    HoldAnswer::GoOn => self.go_lower(opened.scope, opened.ladder.as_ref()),
                    HoldAnswer::RestartLighter => opened.ladder.iter().for_each(|l| self.watch.restarts(l)),
                    HoldAnswer::KeepResting => {}
                }
            }
            let payload = Payload::HoldAnswered { hold: hold.record, answer, note: "as we said".into() };
            self.write(1, payload);
        }
        if red && self.life.happens(0.5) {
            self.write(0, Payload::cleared("midwife", day, "may train"));
            self.go_lower(Scope::All, None);
        }
    }

    /// The second pair of eyes expects a level down on what rested.
    fn go_lower(&mut self, scope: Scope, ladder: Option<&LadderId>) {
        let slots: Vec<LadderId> = self.scenario.slots.iter().map(|s| s.ladder.clone()).collect();
        for id in slots {
            let lower = || self.catalogue.ladder(&id).is_some_and(|l| l.region == Region::Lower);
            let rested = match scope {
                Scope::All => true,
                Scope::LowerBody => lower(),
                Scope::Ladder => ladder == Some(&id),
            };
            if rested {
                self.watch.goes_lower(&id);
            }
        }
    }

    /// Before a session: the coach sets a ladder, she marks a symptom at home, the coach sets another one.
    pub(super) fn between(&mut self) {
        let chances = self.scenario.between;
        if self.likely(chances.coach) {
            self.coach_sets();
        }
        if self.likely(chances.home) {
            let symptom = self.symptom_at_large();
            let payload = Payload::mark_at_large(None, symptom);
            self.watch.begins(self.now.date_naive());
            let mark = self.write(0, payload);
            if self.takes_effect(RunId(mark.0), mark) {
                self.watch.marked_at_home();
            }
        }
        if self.likely(chances.coach) {
            self.coach_sets();
        }
    }

    /// What may be named at check-in or at home; how often which kind: chosen, no source.
    pub(super) fn symptom_at_large(&mut self) -> Symptom {
        let pain = SymptomAmount::Pain(u8::try_from(self.life.between(1, 7)).unwrap_or(5));
        let (kind, amount) = match self.life.between(0, 9) {
            0..=2 => ("heaviness", SymptomAmount::Little),
            3..=5 => ("leak-effort", SymptomAmount::Clearly),
            6..=7 => ("girdle-pain", pain),
            8 => ("bulge", SymptomAmount::Clearly),
            _ => ("fatigue", SymptomAmount::Clearly),
        };
        Symptom { kind: Some(SymptomId::from(kind)), amount: Some(amount), place: None, words: None }
    }

    /// What was said of no ladder moves all of them, if it is a drop; a hold rests until it is answered. True for a drop
    /// or stricter of the pelvic floor.
    pub(super) fn takes_effect(&mut self, run: RunId, record: RecordId) -> bool {
        let state = self.ledger.state(self.now.date_naive());
        let Some(verdict) = state.effects.get(&run).and_then(|e| e.verdicts.get(&record)) else {
            return false;
        };
        if verdict.class == Class::Drop {
            self.go_lower(Scope::All, None);
        }
        let family = self.rules.symptom(&verdict.kind).map(|k| k.family);
        verdict.class >= Class::Drop && family == Some(Family::PelvicFloor)
    }

    /// Level and load as the coach sees fit, up to two levels off and with whatever load her kit makes.
    fn coach_sets(&mut self) {
        let slots = i64::try_from(self.scenario.slots.len()).unwrap_or(1);
        let nth = usize::try_from(self.life.between(0, slots - 1)).unwrap_or(0);
        let Some(slot) = self.scenario.slots.get(nth) else { return };
        let Some(ladder) = self.catalogue.ladder(&slot.ladder) else { return };
        let levels = i64::try_from(ladder.levels.len()).unwrap_or(1);
        let level = usize::try_from(self.life.between(0, levels - 1)).unwrap_or(0);
        let weights = &self.scenario.kit.dumbbells;
        let most = i64::try_from(weights.len()).unwrap_or(1) - 1;
        let weight = usize::try_from(self.life.between(0, most)).ok().and_then(|n| weights.get(n));
        let load = weight.map(|d| Load::One { weight: d.weight }).filter(|_| self.life.happens(0.7));
        let start =
            Start { ladder: slot.ladder.clone(), level: u8::try_from(level).ok(), variant: None, load };
        self.write(1, Payload::Override { start, note: "as we said".into() });
        self.watch.coach_sets(&slot.ladder, level);
    }
}
