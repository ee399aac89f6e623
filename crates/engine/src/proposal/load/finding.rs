//! Going on to find a load, where "five or more" tells the filter too little.

use super::bounds::Bounds;
use super::{EPS, LoadCase, Pick, with_last};
use crate::catalogue::{Place, Region};
use crate::kit::Load;
use crate::proposal::types::Target;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Exposure, VariantUse};
use crate::units::Kg;

impl LoadCase<'_> {
    pub(in crate::proposal) fn finding_allowed(&self, place: &Place<'_>) -> bool {
        let from = self.number("load.first", "finding_from_week");
        !self.nothing_grows(place) && self.ground.stage.weeks_after().is_none_or(|w| f64::from(w) >= from)
    }

    /// As long as every set of a variant left "five or more" her load is not found: the answer is a bound, and tells
    /// the filter nothing of how far above it she is. Finding goes on from the load held last.
    pub(super) fn still_finding(
        &self,
        place: &Place<'_>,
        bounds: &Bounds,
        uses: &[VariantUse],
        last: &VariantUse,
        (heaviest, beyond): (Option<&Load>, Option<&Load>),
    ) -> Option<Pick> {
        if self.held_back(bounds)
            || !self.finding_allowed(place)
            || !uses.iter().all(|u| u.open_ended && u.symptom_free)
        {
            return None;
        }
        let kg = |l: &Load| place.variant.external(l).0;
        // A load that was tried and not done as planned is no ground to go on from.
        let from = bounds.permitted.iter().rfind(|l| kg(l) <= kg(&last.load) + EPS)?;
        // What the filter permits already is no less for being found still.
        let load = heaviest.filter(|l| kg(l) > kg(from)).unwrap_or(from).clone();
        bounds.all.iter().find(|l| kg(l) > kg(&load) + EPS)?;
        let finding = Reason::new(self.rules(), ReasonCode::StillFinding, "load.first")
            .with("variant", Fact::Variant(place.variant.id.clone()))
            .with("load", Fact::Load(load.clone()));
        let mut reasons = vec![finding];
        if kg(&load) > kg(from) + EPS && beyond.is_some_and(|b| kg(b) > kg(&load) + EPS) {
            reasons.push(self.step_bound());
        }
        Some(Pick {
            load,
            target: self.as_target(self.range.low()),
            aim: self.effort.target,
            purpose: Purpose::Find,
            reasons,
            too_hard: false,
            gap: false,
        })
    }

    /// The heaviest load that a step of finding may go to from one held: so many times as much, or the next of her kit
    /// if that is not far beyond. Legs and hips bear more than arms and shoulders, since body mass moves along.
    #[must_use]
    pub fn finding_reach(&self, place: &Place<'_>, held: Kg) -> (Kg, Kg) {
        if held.0 <= 0.0 {
            // Help that shrinks has no share: the next band, whatever it takes off.
            return (held, Kg(f64::INFINITY));
        }
        let (times, next) = if place.ladder.region == Region::Lower {
            ("times_lower", "next_times_lower")
        } else {
            ("times_upper", "next_times_upper")
        };
        (Kg(held.0 * self.number("load.finding", times)), Kg(held.0 * self.number("load.finding", next)))
    }

    /// A step that the model cannot foresee. "Five or more" is a bound, and where body mass moves along that has no
    /// published share twice the dumbbell is nowhere near twice the load: the mean test could hold her on a load for
    /// ever. So two exposures running at the top of the range with much in reserve earn the next load of her kit, as a first exposure does:
    /// the first set decides. The step is bounded by what is held and by her body mass.
    pub(super) fn unforeseen(
        &self,
        place: &Place<'_>,
        bounds: &Bounds,
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Option<Pick> {
        if self.held_back(bounds) {
            return None;
        }
        let kg = |l: &Load| place.variant.external(l).0;
        let last_kg = kg(&last.load);
        let more = self.number("load.unforeseen", "over_target");
        let wanted = self.number("load.unforeseen", "exposures");
        let running = exposures
            .iter()
            .rev()
            .take_while(|e| {
                e.symptom_free
                    && bounds.counts_from.is_none_or(|from| e.day >= from)
                    && kg(&e.load) >= last_kg - EPS
                    && e.last.is_some_and(|l| {
                        l.count >= self.top(e) && l.reserve_at_least(self.effort.target + more, false)
                    })
            })
            .count();
        if (running as f64) < wanted {
            return None;
        }
        let (_, most) = self.finding_reach(place, Kg(last_kg));
        let most = most.0.min(last_kg + self.body.0 * self.number("load.unforeseen", "most_of_body"));
        let next = bounds.all.iter().find(|l| kg(l) > last_kg + EPS).filter(|l| kg(l) <= most + EPS)?.clone();
        let low = self.range.low();
        let mut main = Reason::new(self.rules(), ReasonCode::LoadUp, "load.unforeseen")
            .with("variant", Fact::Variant(place.variant.id.clone()))
            .with("load", Fact::Load(next.clone()))
            .with("last_load", Fact::Load(last.load.clone()))
            .number("target", self.effort.target)
            .number("reps", f64::from(low));
        main = with_last(main, exposures.last().and_then(|e| e.last).as_ref());
        let by_feel = Reason::new(self.rules(), ReasonCode::Unforeseen, "load.unforeseen")
            .with("load", Fact::Load(next.clone()))
            .number("exposures", wanted);
        Some(Pick {
            load: next,
            target: Target::Reps(low),
            aim: self.effort.target,
            purpose: if self.finding_allowed(place) { Purpose::Find } else { Purpose::Work },
            reasons: vec![main, by_feel],
            too_hard: false,
            gap: false,
        })
    }
}
