//! What the coach set on a ladder: by her plan, or since the last exposure of it.

use super::bench::Bench;
use super::level::LevelPick;
use crate::catalogue::{Ladder, Place};
use crate::ids::RunId;
use crate::programme::Start;
use crate::reason::{Fact, Reason, ReasonCode};

/// What the coach set on a ladder after the last exposure of it.
#[derive(Clone, Copy)]
pub(super) struct SetByCoach<'a> {
    pub(super) start: &'a Start,
    pub(super) note: &'a str,
    /// False where a symptom, or the answer to one, came later: then it holds her back and brings her no further.
    pub(super) stands: bool,
}

impl<'a> Bench<'a> {
    /// What the coach set on a ladder after the last exposure of it.
    pub(super) fn set_by_coach(&self, ladder: &Ladder) -> Option<SetByCoach<'a>> {
        // One that came where nothing grows has not used it up.
        let exposures = self.state.ladders.get(&ladder.id).map_or(&[][..], |l| &l.exposures);
        let last = exposures.iter().rev().map(|e| e.run).find(|run| !self.nothing_grew(*run, ladder));
        let since = last.and_then(|run| self.inputs.history.run(run)).map(|r| r.started);
        let moved = self.state.last_moved(&ladder.id);
        self.inputs
            .history
            .overrides
            .iter()
            .rfind(|o| {
                o.what.0.ladder == ladder.id
                    && since.is_none_or(|s| o.at > s)
                    && !self.state.is_before_fresh(o.at.date_naive())
            })
            .map(|o| SetByCoach {
                start: &o.what.0,
                note: o.what.1.as_str(),
                stands: moved.is_none_or(|m| o.at > m),
            })
    }

    /// True if a run was shown a ladder on a day on which nothing grows.
    fn nothing_grew(&self, run: RunId, ladder: &Ladder) -> bool {
        let shown = self.inputs.history.run(run).and_then(|r| r.shown.as_ref());
        let of_it = shown.into_iter().flat_map(|s| &s.slots).filter(|p| p.ladder == ladder.id);
        // An unwell day has its reason beside breathing and mobility, too, which go on.
        let easy = ["programme.light-week", "today.after-illness", "today.unwell"];
        let eased = |r: &Reason| easy.contains(&r.rule.as_str());
        !ladder.pattern.goes_on_meanwhile() && of_it.flat_map(|p| p.reasons.all()).any(eased)
    }

    /// True where nothing grows today, and what the coach set is above where she stands or heavier than what she held.
    pub(super) fn waits(&self, set: &SetByCoach<'_>, ladder: &Ladder) -> bool {
        if !self.ground.nothing_grows(ladder.pattern) {
            return false;
        }
        let Some(state) = self.state.ladders.get(&ladder.id) else { return false };
        let higher = || state.level.is_some_and(|now| self.level_of(set.start).is_some_and(|to| to > now));
        let heavier = || {
            let last = state.exposures.last()?;
            let held = self.inputs.catalogue.place(&last.variant)?.variant.external(&last.load);
            let named = set.start.variant.as_ref().unwrap_or(&last.variant);
            let wanted = self.inputs.catalogue.place(named)?.variant.external(set.start.load.as_ref()?);
            Some(wanted.0 > held.0)
        };
        higher() || heavier().unwrap_or(false)
    }

    /// Keeps a level to what the coach set before a symptom: no higher, and no heavier.
    pub(super) fn keep_to_set(
        &self,
        ladder: &Ladder,
        set: SetByCoach<'_>,
        open: &[Place<'_>],
        pick: &mut LevelPick,
    ) {
        let level = self.level_of(set.start);
        let below = level.and_then(|most| {
            let here = open.iter().filter_map(|p| u8::try_from(p.level).ok());
            here.filter(|l| *l <= most).max()
        });
        let lower = below.filter(|l| *l < pick.level);
        let lightest = set.start.load.as_ref().and_then(|load| {
            let named = set.start.variant.as_ref();
            let of = open.iter().find(|p| named.is_none_or(|v| p.variant.id == *v))?;
            Some(of.variant.external(load)).filter(|kg| kg.0 >= 0.0)
        });
        let lighter = lightest.filter(|kg| pick.cap.is_none_or(|cap| kg.0 < cap.0));
        if let Some(level) = lower {
            pick.level = level;
        }
        if lighter.is_some() {
            pick.cap = lighter;
        }
        if lower.is_some() || lighter.is_some() {
            pick.reasons.push(self.coach_set(ladder, pick.level, set.note));
        }
    }

    fn coach_set(&self, ladder: &Ladder, level: u8, note: &str) -> Reason {
        Reason::new(self.inputs.rules, ReasonCode::CoachSet, "coach.set")
            .with("ladder", Fact::Ladder(ladder.id.clone()))
            .with("note", Fact::Words(note.to_owned()))
            .number("level", f64::from(level) + 1.0)
    }

    pub(super) fn coach_variant<'s>(
        &'s self,
        ladder: &Ladder,
        set: Option<SetByCoach<'s>>,
    ) -> Option<&'s crate::ids::VariantId> {
        set.and_then(|s| s.start.variant.as_ref())
            .or_else(|| self.starts.iter().rfind(|s| s.ladder == ladder.id)?.variant.as_ref())
    }

    pub(super) fn coach_level(&self, ladder: &Ladder, set: Option<SetByCoach<'_>>) -> Option<(u8, Reason)> {
        if let Some(set) = set
            && let Some(level) = self.level_of(set.start)
        {
            return Some((level, self.coach_set(ladder, level, set.note)));
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
}
