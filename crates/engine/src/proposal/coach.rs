//! What the coach set on a ladder: by her plan, or since the last exposure of it.

use super::bench::Bench;
use crate::catalogue::Ladder;
use crate::programme::Start;
use crate::reason::{Fact, Reason, ReasonCode};

impl<'a> Bench<'a> {
    /// What the coach set on a ladder after the last exposure of it, with her note.
    pub(super) fn fresh_override(&self, ladder: &Ladder) -> Option<(&'a Start, &'a str)> {
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

    pub(super) fn coach_variant<'s>(
        &'s self,
        ladder: &Ladder,
        fresh: Option<(&'s Start, &'s str)>,
    ) -> Option<&'s crate::ids::VariantId> {
        fresh
            .and_then(|(s, _)| s.variant.as_ref())
            .or_else(|| self.starts.iter().rfind(|s| s.ladder == ladder.id)?.variant.as_ref())
    }

    pub(super) fn coach_level(&self, ladder: &Ladder, fresh: Option<(&Start, &str)>) -> Option<(u8, Reason)> {
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
}
