//! Reps or seconds first, then the load: where there is no state to foresee anything with.

use super::{EPS, LoadCase, Pick, with_last};
use crate::catalogue::Place;
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Exposure, VariantUse};
use crate::units::Kg;

impl LoadCase<'_> {
    /// Rep-only and timed variants, and loads without a state: reps or seconds move, then the load.
    pub(super) fn by_count(
        &self,
        place: &Place<'_>,
        uses: &[VariantUse],
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Option<Pick> {
        let timed = matches!(self.range, Amount::Seconds { .. });
        let step = if timed {
            self.number("progress.reps", "step_seconds") as u16
        } else {
            self.number("progress.reps", "step_reps") as u16
        };
        let (low, high) = (self.range.low(), self.range.high().saturating_add(self.more_reps));
        let bounds = self.within_bounds(place, uses, last, exposures);
        let kg = |l: &Load| place.variant.external(l).0;
        let mut load = bounds
            .permitted
            .iter()
            .rfind(|l| kg(l) <= kg(&last.load) + EPS)
            .or(bounds.permitted.first())
            .cloned()?;
        let done = exposures.last().and_then(|e| e.last);
        let latest: Vec<&Exposure> = exposures.iter().rev().copied().collect();
        let count = match done {
            Some(set) if set.as_planned && last.symptom_free => {
                let room = !bounds.after_symptom
                    && !self.nothing_grows(place)
                    && set.reserve_at_least(self.effort.target, timed);
                let at_top = set.count >= self.range.high();
                // Nothing foresees this step: it is no bigger than one that finds a load.
                let (_, reach) = self.finding_reach(place, Kg(kg(&load)));
                let next = bounds.permitted.iter().find(|l| kg(l) > kg(&load) + EPS);
                let next = next.filter(|l| kg(l) <= reach.0 + EPS);
                if let Some(next) = next
                    && at_top
                    && room
                    && self.big_step_earned(&latest, bounds.counts_from)
                    && kg(&load) >= kg(&last.load) - EPS
                {
                    load = next.clone();
                    low
                } else if room {
                    set.count.saturating_add(step).clamp(low, high)
                } else {
                    set.count.clamp(low, high)
                }
            }
            Some(set) => set.count.saturating_sub(step).clamp(low, high),
            // The last planned round was left out: as far as she came, neither more nor less.
            None => exposures
                .last()
                .filter(|e| e.symptom_free)
                .and_then(|e| e.count)
                .map_or(low, |count| count.clamp(low, high)),
        };
        let lay_off = bounds.lay_off.is_some();
        let count = if self.bottom_only || lay_off || bounds.leap.is_some() { low } else { count };
        let mut aim = self.effort.target;
        if bounds.nothing_to_take_off {
            aim += self.number("load.lay-off", "more_reserve");
        }
        let unloaded = matches!(load, Load::Nothing);
        let code = if unloaded {
            ReasonCode::BodyOnly
        } else if kg(&load) > kg(&last.load) + EPS {
            ReasonCode::LoadUp
        } else if kg(&load) < kg(&last.load) - EPS {
            ReasonCode::LoadDown
        } else {
            ReasonCode::LoadSame
        };
        let mut main = Reason::new(self.rules(), code, "progress.reps")
            .number("timed", self.timed())
            .with("variant", Fact::Variant(place.variant.id.clone()))
            .with("load", Fact::Load(load.clone()))
            .with("last_load", Fact::Load(last.load.clone()))
            .number("target", aim)
            .number("reps", f64::from(count));
        main = with_last(main, done.as_ref());
        let mut reasons = vec![main];
        if let Some((away, share)) = bounds.lay_off {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::LayOff, "load.lay-off")
                    .number("days", away)
                    .number("percent", libm::round(share * 100.0)),
            );
        }
        if bounds.leap.is_some() {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::NothingLighter, "load.nothing-lighter")
                    .with("load", Fact::Load(load.clone())),
            );
        }
        Some(Pick {
            load,
            target: self.as_target(count),
            aim,
            purpose: Purpose::Work,
            reasons,
            too_hard: bounds.leap.is_some(),
            gap: false,
        })
    }
}
