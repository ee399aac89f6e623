//! How far up a load may go: the step bound, the lay-off bound and the cap.

use super::{EPS, LoadCase};
use crate::catalogue::Place;
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::{Reason, ReasonCode};
use crate::state::{Course, Exposure, VariantUse};
use crate::units::Kg;
use chrono::NaiveDate;

pub(super) struct Bounds {
    pub(super) all: Vec<Load>,
    pub(super) permitted: Vec<Load>,
    pub(super) step: Option<Load>,
    pub(super) lay_off: Option<(f64, f64)>,
    pub(super) nothing_to_take_off: bool,
    pub(super) fell_short: bool,
    /// Exposures count for an increase from this day on: after a symptom on the ladder.
    pub(super) counts_from: Option<NaiveDate>,
    /// The variant has not been done since a symptom on the ladder: nothing of it grows.
    pub(super) after_symptom: bool,
    /// She is on the way down after a symptom, or restarts lighter.
    pub(super) way_down: bool,
    /// Nothing grows on a day like this.
    pub(super) nothing_grows: bool,
    /// All that her kit makes is far above what she held last, which this is: a level down is due.
    pub(super) leap: Option<Kg>,
}

impl LoadCase<'_> {
    /// Loads within the step bound, the lay-off bound and the cap; with what bound them.
    pub(super) fn within_bounds(
        &self,
        place: &Place<'_>,
        uses: &[VariantUse],
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Bounds {
        let all = self.ground.loads(place);
        let kg = |l: &Load| place.variant.external(l).0;
        let last_kg = kg(&last.load);
        let window = self.number("load.step", "days");
        // What was held before a symptom on the ladder is no measure for an increase after it.
        let counts_from = self.state.ladders.get(&place.ladder.id).and_then(|l| l.counts_from);
        let in_window =
            || uses.iter().filter(|u| u.as_planned && days_between(u.day, self.ground.day) <= window);
        let heaviest =
            |uses: &mut dyn Iterator<Item = &VariantUse>| uses.map(|u| kg(&u.load)).max_by(f64::total_cmp);
        let best = heaviest(&mut in_window().filter(|u| counts_from.is_none_or(|from| u.day >= from)));
        // A tenth more; assistance that shrinks has no such share, so it moves by the next band.
        let a_tenth_on = |b: f64| if b > 0.0 { b * (1.0 + self.number("load.step", "share")) } else { b };
        let mut bound = match best {
            Some(b) => a_tenth_on(b),
            // None done as planned: no increase. What was done before a symptom still bounds it.
            None => heaviest(&mut in_window()).map_or(last_kg, |before| a_tenth_on(before).min(last_kg)),
        };
        // The last time fell short: no more than then, whatever was done before it.
        let last_exposure = exposures.last().filter(|e| e.day == last.day).and_then(|e| e.last);
        let fell_short = last_exposure.is_some_and(|l| !l.as_planned);
        if fell_short {
            bound = bound.min(last_kg);
        }
        let mut step = None;
        let next = all.iter().find(|l| kg(l) > bound + EPS && best.is_some());
        // A step from the best load is earned at that load, not at a lighter one.
        let earned = |b: f64| {
            let at_best: Vec<&Exposure> =
                exposures.iter().rev().take_while(|e| kg(&e.load) >= b - EPS).copied().collect();
            self.big_step_earned(&at_best, counts_from)
        };
        if let Some(next) = next
            && !fell_short
            && best.is_some_and(|b| !all.iter().any(|l| kg(l) > b + EPS && kg(l) <= bound + EPS) && earned(b))
        {
            bound = kg(next);
            step = Some(next.clone());
        }
        let away = days_between(last.day, self.ground.day);
        let lay_off = if away >= self.number("load.lay-off", "days_2") {
            Some(self.number("load.lay-off", "share_2"))
        } else if away >= self.number("load.lay-off", "days_1") {
            Some(self.number("load.lay-off", "share_1"))
        } else {
            None
        };
        if let Some(share) = lay_off {
            // Assistance has no share to take off; it stays at what it was.
            bound = bound.min(if last_kg > 0.0 { last_kg * share } else { last_kg });
            step = None;
        }
        if self.nothing_grows(place) {
            // With help as with a weight: she moves no more of herself than last time.
            bound = bound.min(last_kg);
            step = None;
        }
        if let Some(cap) = self.cap {
            bound = bound.min(cap.0);
        }
        let permitted: Vec<Load> = all.iter().filter(|l| kg(l) <= bound + EPS).cloned().collect();
        // Nor does the lightest come near what she held: no foresight bridges that.
        let (_, reach) = self.finding_reach(place, Kg(last_kg));
        let leap = permitted.is_empty() && all.first().is_some_and(|l| kg(l) > reach.0 + EPS);
        // Her kit makes nothing that light, or nothing can be taken off a body.
        let nothing_to_take_off = lay_off.is_some() && (last_kg <= 0.0 || permitted.is_empty());
        Bounds {
            permitted: if permitted.is_empty() { all.iter().take(1).cloned().collect() } else { permitted },
            all,
            step,
            lay_off: lay_off.map(|share| (away, share)),
            nothing_to_take_off,
            fell_short,
            counts_from,
            after_symptom: counts_from.is_some_and(|from| last.day < from),
            way_down: self.way_down(place),
            nothing_grows: self.nothing_grows(place),
            leap: leap.then_some(Kg(last_kg)),
        }
    }

    /// True on the way down after a symptom, also where nothing was held that a cap could be made of.
    pub(super) fn way_down(&self, place: &Place<'_>) -> bool {
        self.state.ladders.get(&place.ladder.id).is_some_and(|l| l.course != Course::Usual)
    }

    /// True where no load is looked for, and none tried that is not foreseen.
    pub(super) fn held_back(&self, bounds: &Bounds) -> bool {
        self.cap.is_some()
            || self.bottom_only
            || bounds.lay_off.is_some()
            || bounds.fell_short
            || bounds.after_symptom
            || bounds.way_down
            || bounds.nothing_grows
    }

    /// What she held last of a variant, where all that her kit makes of it now is far above that.
    pub(in crate::proposal) fn leap(&self, place: &Place<'_>) -> Option<Kg> {
        let uses = self.uses_of(place);
        self.within_bounds(place, uses, uses.last()?, &self.exposures_of(place)).leap
    }

    /// Exposures running (the latest first) at the top with reserve at target, or one alone with more. What was done before
    /// a symptom on the ladder earns nothing after it.
    pub(super) fn big_step_earned(&self, latest: &[&Exposure], counts_from: Option<NaiveDate>) -> bool {
        let at_top = |e: &Exposure, more: f64| {
            let timed = matches!(e.range, Amount::Seconds { .. });
            e.symptom_free
                && counts_from.is_none_or(|from| e.day >= from)
                && e.last.is_some_and(|l| {
                    l.count >= self.top(e) && l.reserve_at_least(self.effort.target + more, timed)
                })
        };
        let alone = |e: &&Exposure| at_top(e, self.number("load.big-step", "alone_over_target"));
        let running = latest.iter().take_while(|e| at_top(e, 0.0)).count();
        latest.first().is_some_and(alone) || running as f64 >= self.number("load.big-step", "exposures")
    }

    pub(super) fn step_bound(&self) -> Reason {
        Reason::new(self.rules(), ReasonCode::StepBound, "load.step")
            .number("percent", libm::round(self.number("load.step", "share") * 100.0))
    }
}

pub(in crate::proposal) fn days_between(from: NaiveDate, to: NaiveDate) -> f64 {
    f64::from(i32::try_from((to - from).num_days()).unwrap_or(i32::MAX))
}
