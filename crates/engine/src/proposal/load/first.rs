//! The first load of a variant: the coach's start, her answer, what her group is known to hold, or the lightest.

use super::{EPS, LoadCase, Pick, with_last};
use crate::catalogue::Place;
use crate::ids::VariantId;
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::start_for;

impl LoadCase<'_> {
    /// The load to start a variant with: the coach's, else her answer, else the lightest.
    #[must_use]
    pub fn start(&self, place: &Place<'_>) -> Option<(Load, Reason)> {
        let loads = self.permitted_by_cap(place);
        let lightest = loads.first()?.clone();
        let not_above = |wanted: &Load| {
            let kg = place.variant.external(wanted).0;
            loads
                .iter()
                .rfind(|l| place.variant.external(l).0 <= kg + EPS)
                .cloned()
                .unwrap_or_else(|| lightest.clone())
        };
        let why = |code, load: &Load| {
            Reason::new(self.rules(), code, "load.first")
                .with("variant", Fact::Variant(place.variant.id.clone()))
                .with("load", Fact::Load(load.clone()))
        };
        if matches!(lightest, Load::Nothing) {
            let reason = Reason::new(self.rules(), ReasonCode::BodyOnly, "body.only")
                .with("variant", Fact::Variant(place.variant.id.clone()))
                .number("reps", f64::from(self.range.low()))
                .number("timed", self.timed());
            return Some((lightest, with_last(reason, None)));
        }
        let coach = start_for(self.starts, &place.ladder.id, &place.variant.id)
            .and_then(|s| s.load.as_ref())
            .filter(|l| l.is_same_make(&lightest) && l.is_plausible());
        if let Some(wanted) = coach {
            let load = not_above(wanted);
            let reason = why(ReasonCode::StartCoach, &load);
            return Some((load, reason));
        }
        let answer = self
            .history
            .ten_reps
            .iter()
            .rfind(|a| {
                a.what.0 == place.variant.id
                    && a.what.1.is_same_make(&lightest)
                    && a.what.1.is_plausible()
                    && !self.state.is_before_fresh(a.at.date_naive())
            })
            // Early after a birth she starts at the coach's load or the lightest, not where she was.
            .filter(|_| self.finding_allowed(place));
        if let Some(answer) = answer {
            let load = not_above(&answer.what.1);
            let reason = why(ReasonCode::StartAnswer, &load);
            return Some((load, reason));
        }
        if let Some((load, last)) = self.group_start(place, &loads) {
            let reason = why(ReasonCode::StartGroup, &load)
                .with("last_variant", Fact::Variant(last.0))
                .with("last_load", Fact::Load(last.1));
            return Some((load, reason));
        }
        let reason = why(ReasonCode::StartLightest, &lightest);
        Some((lightest, reason))
    }

    /// A start for a variant whose group is known from another one: somewhat less than was held there, and no more
    /// than passes the tests. With what was held.
    fn group_start(&self, place: &Place<'_>, loads: &[Load]) -> Option<(Load, (VariantId, Load))> {
        let group = place.variant.group.as_ref().filter(|_| self.finding_allowed(place))?;
        // The tests foresee reps; of seconds they tell nothing.
        if matches!(self.range, Amount::Seconds { .. }) {
            return None;
        }
        let tracker = self.tracker(place)?;
        let last = self.state.held.get(group)?;
        let held = self.ground.catalogue.place(&last.0)?.variant.external(&last.1).0;
        let most = held * self.number("load.first", "share_of_group");
        let load = loads
            .iter()
            .rfind(|l| place.variant.external(l).0 <= most + EPS && self.holds(place, &tracker, l))?;
        Some((load.clone(), last.clone()))
    }

    /// While she learns, the moves come first: the lightest that there is, whatever was written, answered or done before.
    pub(super) fn learn(&self, place: &Place<'_>) -> Option<Pick> {
        let load = self.permitted_by_cap(place).into_iter().next()?;
        let reason = if matches!(load, Load::Nothing) {
            self.start(place)?.1
        } else {
            Reason::new(self.rules(), ReasonCode::StartLightest, "load.first")
                .with("variant", Fact::Variant(place.variant.id.clone()))
                .with("load", Fact::Load(load.clone()))
        };
        Some(Pick {
            load,
            target: self.as_target(self.range.low()),
            aim: self.effort.target,
            purpose: Purpose::Learn,
            reasons: vec![reason],
            too_hard: false,
            gap: false,
        })
    }

    pub(super) fn first(&self, place: &Place<'_>) -> Option<Pick> {
        let (load, reason) = self.start(place)?;
        let finding = matches!(self.range, Amount::Reps { .. })
            && place.variant.group.is_some()
            && !matches!(load, Load::Nothing)
            // After a symptom a load is not looked for.
            && self.cap.is_none()
            && !self.bottom_only
            && !self.way_down(place)
            && self.finding_allowed(place);
        Some(Pick {
            load,
            target: self.as_target(self.range.low()),
            aim: self.effort.target,
            purpose: if finding { Purpose::Find } else { Purpose::Work },
            reasons: vec![reason],
            too_hard: false,
            gap: false,
        })
    }

    /// True if nothing told where to begin with a variant: no start of the coach's, no answer of hers, no other variant
    /// of its group.
    #[must_use]
    pub fn begun_blind(&self, place: &Place<'_>) -> bool {
        let told = |load: &Load| {
            load.is_plausible() && self.ground.loads(place).first().is_some_and(|own| load.is_same_make(own))
        };
        let coach = start_for(self.starts, &place.ladder.id, &place.variant.id).and_then(|s| s.load.as_ref());
        let answers = || {
            self.history.ten_reps.iter().any(|a| {
                a.what.0 == place.variant.id
                    && told(&a.what.1)
                    && !self.state.is_before_fresh(a.at.date_naive())
            })
        };
        let others = || {
            self.state.variants.keys().filter(|id| **id != place.variant.id).any(|id| {
                self.ground.catalogue.place(id).is_some_and(|p| p.variant.group == place.variant.group)
            })
        };
        !(coach.is_some_and(told) || answers() || place.variant.group.is_some() && others())
    }
}
