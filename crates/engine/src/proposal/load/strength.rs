//! The load by what the strength filter foresees: the heaviest that passes the tests, and the reps that come nearest
//! the reserve aimed at.

use super::{EPS, LoadCase, Pick, with_last};
use crate::catalogue::Place;
use crate::kit::Load;
use crate::proposal::types::Target;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Exposure, VariantUse};
use crate::strength::{Tracker, effective_load};
use crate::units::Kg;

impl LoadCase<'_> {
    /// Mean reserve in the middle set and chance of falling under the floor in the last one.
    fn outlook(&self, place: &Place<'_>, tracker: &Tracker, load: Kg, reps: f64) -> (f64, f64) {
        let n = f64::from(self.effort.sets.max(1));
        let earlier = place.variant.group.as_ref().and_then(|g| self.earlier.get(g)).copied().unwrap_or(0);
        let j = f64::from(earlier);
        let (mean, _) = tracker.reserve(self.k, load, reps, j + (n - 1.0) / 2.0);
        let risk = tracker.chance_below(self.k, load, reps, j + n - 1.0, self.effort.floor);
        (mean, risk)
    }

    pub(super) fn passes_mean(&self, place: &Place<'_>, tracker: &Tracker, load: Kg, aim: f64) -> bool {
        let (mean, _) = self.outlook(place, tracker, load, f64::from(self.range.low()));
        mean >= aim - self.number("load.target", "slack")
    }

    /// True if a load passes the mean test and the test of the floor, both at the bottom of the range.
    pub(super) fn holds(&self, place: &Place<'_>, tracker: &Tracker, load: &Load) -> bool {
        self.holds_at(place, tracker, load, self.effort.target)
    }

    /// The same with another reserve aimed at.
    fn holds_at(&self, place: &Place<'_>, tracker: &Tracker, load: &Load, aim: f64) -> bool {
        effective_load(place.variant, load, self.body).is_some_and(|w| {
            let (_, risk) = self.outlook(place, tracker, w, f64::from(self.range.low()));
            self.passes_mean(place, tracker, w, aim) && risk <= self.number("load.target", "alpha")
        })
    }

    /// True if a load passes the mean test, or nothing is known to predict it with.
    #[must_use]
    pub fn start_passes(&self, place: &Place<'_>, load: &Load) -> bool {
        match (self.tracker(place), effective_load(place.variant, load, self.body)) {
            (Some(tracker), Some(w)) => self.passes_mean(place, &tracker, w, self.effort.target),
            (None, _) | (_, None) => true,
        }
    }

    /// The reps from the bottom of the range up to `high` whose mean reserve comes nearest the aim, the fewer on a tie.
    /// `outlook` gives mean and chance of falling under the floor; where care is due, alpha binds that.
    pub(in crate::proposal) fn nearest_reps(
        &self,
        high: u16,
        aim: f64,
        outlook: impl Fn(f64) -> (f64, f64),
    ) -> u16 {
        let alpha = self.number("load.target", "alpha");
        let binds = self.effort.careful || self.number("load.target", "binds_all") >= 1.0;
        let low = self.range.low();
        let (mut reps, mut best) = (low, f64::INFINITY);
        for r in low..=high {
            let (mean, risk) = outlook(f64::from(r));
            if binds && r > low && risk > alpha {
                break;
            }
            let distance = libm::fabs(mean - aim);
            if distance < best {
                (reps, best) = (r, distance);
            }
        }
        reps
    }

    pub(super) fn by_strength(
        &self,
        place: &Place<'_>,
        tracker: &Tracker,
        uses: &[VariantUse],
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Option<Pick> {
        let bounds = self.within_bounds(place, uses, last, exposures);
        // Where weeks away took no load off, one more is aimed at: with less help as with a body's own weight.
        let mut aim = self.effort.target;
        if bounds.nothing_to_take_off {
            aim += self.number("load.lay-off", "more_reserve");
        }
        let heaviest = bounds.permitted.iter().rfind(|l| self.holds_at(place, tracker, l, aim)).cloned();
        let beyond = bounds.all.iter().rfind(|l| self.holds(place, tracker, l)).cloned();
        let kg = |l: &Load| place.variant.external(l).0;
        if let Some(pick) =
            self.still_finding(place, &bounds, uses, last, (heaviest.as_ref(), beyond.as_ref()))
        {
            return Some(pick);
        }
        if heaviest.as_ref().is_none_or(|l| kg(l) <= kg(&last.load) + EPS)
            && let Some(pick) = self.unforeseen(place, &bounds, last, exposures)
        {
            return Some(pick);
        }
        let (load, nothing_qualifies) = match heaviest {
            Some(load) => (load, false),
            None => (bounds.all.first()?.clone(), true),
        };
        let w = effective_load(place.variant, &load, self.body)?;
        let too_hard = (nothing_qualifies || bounds.nothing_to_take_off)
            && !self.passes_mean(place, tracker, w, aim)
            || bounds.leap.is_some();

        let at_top = exposures.last().and_then(|e| e.last.filter(|l| l.count >= self.top(e)));
        // No next load that is permitted and holds. After a symptom, when the load is capped, a set does
        // not grow beyond its range instead.
        let gap = self.cap.is_none()
            && !self.nothing_grows(place)
            && at_top.is_some_and(|l| {
                l.reserve_at_least(self.effort.target + self.number("load.kit-gap", "over_target"), false)
            })
            && bounds.lay_off.is_none()
            && (kg(&load) - kg(&last.load)).abs() <= EPS;
        let more = if gap { self.number("load.kit-gap", "more_reps") as u16 } else { 0 };

        let hold_bottom = self.bottom_only || bounds.nothing_to_take_off || bounds.leap.is_some();
        let high = if hold_bottom {
            self.range.low()
        } else if bounds.nothing_grows {
            // No more than in the last round that was done whole, and where there is none the bottom of the range.
            let last = exposures.last().and_then(|e| e.count).unwrap_or(0);
            last.clamp(self.range.low(), self.range.high())
        } else {
            self.range.high().saturating_add(more.max(self.more_reps))
        };
        let reps = self.nearest_reps(high, aim, |r| self.outlook(place, tracker, w, r));
        let (expected, _) = self.outlook(place, tracker, w, f64::from(reps));

        let mut reasons = Vec::new();
        let moved = kg(&load) - kg(&last.load);
        let code = if matches!(load, Load::Nothing) {
            ReasonCode::BodyOnly
        } else if moved > EPS {
            ReasonCode::LoadUp
        } else if moved < -EPS {
            ReasonCode::LoadDown
        } else {
            ReasonCode::LoadSame
        };
        let rule = if code == ReasonCode::BodyOnly { "body.only" } else { "load.target" };
        let mut main = Reason::new(self.rules(), code, rule)
            .with("variant", Fact::Variant(place.variant.id.clone()))
            .with("load", Fact::Load(load.clone()))
            .with("last_load", Fact::Load(last.load.clone()))
            .number("target", aim)
            .number("reps", f64::from(reps))
            .number("timed", self.timed())
            .number("expected", round_tenth(expected));
        main = with_last(main, exposures.last().and_then(|e| e.last).as_ref());
        reasons.push(main);
        if let Some(next) = &bounds.step
            && *next == load
        {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::BigStep, "load.big-step")
                    .with("load", Fact::Load(load.clone())),
            );
        }
        if let Some((away, share)) = bounds.lay_off {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::LayOff, "load.lay-off")
                    .number("days", away)
                    .number("percent", libm::round(share * 100.0)),
            );
        } else if let Some(beyond) = beyond
            && kg(&beyond) > kg(&load) + EPS
            && bounds.step.as_ref() != Some(&load)
        {
            reasons.push(self.step_bound());
        }
        // It may hold by the plain aim, and only the one more after weeks away be too much for it.
        if bounds.leap.is_some() || nothing_qualifies && !self.holds(place, tracker, &load) {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::NothingLighter, "load.nothing-lighter")
                    .with("load", Fact::Load(load.clone())),
            );
        }
        if more > 0 {
            reasons.push(
                Reason::new(self.rules(), ReasonCode::KitGap, "load.kit-gap")
                    .number("more", f64::from(more))
                    .number(
                        "heavier",
                        f64::from(u8::from(bounds.all.iter().any(|l| kg(l) > kg(&load) + EPS))),
                    ),
            );
        }
        Some(Pick { load, target: Target::Reps(reps), aim, purpose: Purpose::Work, reasons, too_hard, gap })
    }
}

fn round_tenth(x: f64) -> f64 {
    libm::round(x * 10.0) / 10.0
}
