//! What the sets of today change of the sets to come: reps, a lighter load, a load that is still being found.

use super::bench::Bench;
use super::load::LoadCase;
use super::today::SetPlan;
use super::types::Target;
use crate::catalogue::{Place, Region};
use crate::history::SetEntry;
use crate::kit::Load;
use crate::programme::Amount;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::{Purpose, Reserve, SetDone};
use crate::strength::{Tracker, effective_load};
use crate::units::Kg;

impl Bench<'_> {
    /// With a set of the day known the filter regulates: the reps of the set in hand are chosen anew, a lighter load is
    /// offered where they would still likelier than not go under the floor, a heavier one only while the load is being
    /// found.
    pub(super) fn regulate(
        &self,
        plan: &mut SetPlan,
        place: &Place<'_>,
        done: &[&SetEntry],
        (floor, grows): (f64, bool),
        case: &LoadCase<'_>,
    ) {
        let Some(last) = done.iter().rfind(|e| e.set.variant == plan.variant) else { return };
        let kg = |l: &Load| place.variant.external(l).0;
        // A lighter load that she took stays; a heavier one was hers for that set alone.
        if kg(&last.set.load) < kg(&plan.load) - 1e-9 {
            plan.load = last.set.load.clone();
        }
        let Amount::Reps { .. } = plan.range else { return };
        let Some(group) = place.variant.group.as_ref() else { return };
        let Some(tracker) = self.state.trackers.get(group).filter(|t| t.day == self.inputs.day) else {
            return;
        };
        let j = f64::from(self.state.sets_of_day(group, self.inputs.day));
        if plan.purpose == Purpose::Find {
            self.find(plan, place, done, case, (tracker, j));
        }
        if plan.purpose == Purpose::Work && !case.bottom_only {
            let sides =
                done.iter().filter(|e| e.set.round == last.set.round && e.set.variant == plan.variant);
            let half_done = plan.per_side && sides.count() < 2;
            let first_side = half_done.then_some(last.set.reps);
            self.reps_now(plan, place, first_side, (tracker, j), (floor, grows), case);
        }
        let reps = f64::from(plan.target.count());
        let at = |load: &Load| effective_load(place.variant, load, self.body);
        let risk = at(&plan.load).map(|w| tracker.chance_below(&self.k, w, reps, j, floor));
        if plan.purpose != Purpose::Find
            && risk.is_some_and(|p| p > self.inputs.rules.number("load.lighter-now", "chance"))
        {
            // The heaviest that meets the aim again; one step down would let her fail once more.
            let slack = self.inputs.rules.number("load.target", "slack");
            let meets = |load: &Load| {
                at(load).is_some_and(|w| {
                    let (mean, _) = tracker.reserve(&self.k, w, reps, j);
                    mean >= case.effort.target - slack
                })
            };
            let lighter: Vec<&Load> = plan.loads.iter().filter(|l| kg(l) < kg(&plan.load) - 1e-9).collect();
            plan.lighter = lighter.iter().rfind(|l| meets(l)).or(lighter.first()).map(|l| (*l).clone());
        }
    }

    /// Up to two finding sets may step up, one load of the kit at a time. Both sides of a round hold
    /// the same, and the weaker one says whether there is room.
    fn find(
        &self,
        plan: &mut SetPlan,
        place: &Place<'_>,
        done: &[&SetEntry],
        case: &LoadCase<'_>,
        (tracker, j): (&Tracker, f64),
    ) {
        let rules = self.inputs.rules;
        let kg = |l: &Load| place.variant.external(l).0;
        let here: Vec<&SetDone> = done.iter().map(|e| &e.set).filter(|s| s.variant == plan.variant).collect();
        let Some(last) = here.last() else { return };
        let last_kg = kg(&last.load);
        // The load found so far is the one to go on with.
        if let Some(load) = plan.loads.iter().find(|l| (kg(l) - last_kg).abs() < 1e-9) {
            plan.load = load.clone();
        }
        let round: Vec<&&SetDone> = here.iter().filter(|s| s.round == last.round).collect();
        if plan.per_side && round.len() < 2 {
            plan.purpose = last.purpose;
            return;
        }
        plan.purpose = Purpose::Work;
        let mut steps: Vec<f64> = here.iter().map(|s| kg(&s.load)).collect();
        steps.dedup();
        let found = u32::try_from(steps.len().saturating_sub(1)).unwrap_or(u32::MAX);
        if f64::from(found) >= rules.number("load.first", "finding_sets") {
            return;
        }
        let under_cap = |l: &Load| case.cap.is_none_or(|cap| kg(l) <= cap.0 + 1e-9);
        let room = case.effort.target + rules.number("load.first", "room_over_target");
        let all = |enough: &dyn Fn(Reserve) -> bool| round.iter().all(|s| s.reserve.is_some_and(enough));
        // "Five or more" says that there is room, and not how much; a number says how much.
        // Begun at the lightest, the filter's mean tells nothing beyond such a bound; begun at a load that somebody
        // chose for her, it does.
        let open_ended = case.begun_blind(place) && all(&|r| matches!(r, Reserve::AtLeast(_)));
        let said_room = all(&|r| match r {
            Reserve::Exactly(n) => f64::from(n) >= room,
            Reserve::AtLeast(_) => true,
        });
        let (within, next_within) = case.finding_reach(place, Kg(last_kg));
        let next = plan
            .loads
            .iter()
            .find(|l| kg(l) > last_kg + 1e-9)
            .filter(|l| kg(l) <= next_within.0 + 1e-9 && under_cap(l));
        let foreseen = |load: &Load| {
            effective_load(place.variant, load, self.body).is_some_and(|w| {
                let (mean, _) = tracker.reserve(&self.k, w, f64::from(plan.range.low()), j);
                mean >= case.effort.target - rules.number("load.target", "slack")
            })
        };
        // Where body mass moves along and is left out of the load, the curve does not hold far from where she is: a
        // doubled dumbbell is no doubled effort. There her answer alone decides, one load at a time.
        let by_feel = place.variant.share.is_none() && place.ladder.region == Region::Lower;
        let further = plan.loads.iter().rfind(|l| {
            kg(l) > last_kg + 1e-9 && kg(l) <= within.0 + 1e-9 && under_cap(l) && (open_ended || foreseen(l))
        });
        let step = further.or(next.filter(|l| open_ended || by_feel || foreseen(l))).cloned();
        if said_room && let Some(next) = step {
            plan.reasons = vec![
                Reason::new(rules, ReasonCode::FindingUp, "load.first")
                    .with("load", Fact::Load(next.clone()))
                    .number("target", case.effort.target),
            ];
            plan.load = next;
            plan.target = Target::Reps(plan.range.low());
            plan.purpose = Purpose::Find;
        }
    }

    /// True if a set of today may ask for more reps than were shown: never in pregnancy and the first weeks after a birth,
    /// in a light week or after weeks away, and not where the coach said so.
    pub(super) fn reps_may_grow(&self, case: &LoadCase<'_>, place: &Place<'_>, laid_off: bool) -> bool {
        let allowed = self.inputs.rules.number("load.reps-now", "grow") >= 1.0;
        allowed && !laid_off && !case.effort.careful && !case.nothing_grows(place)
    }

    /// The reps of the range that bring the set in hand nearest the reserve aimed at, the fewer on a tie.
    fn reps_now(
        &self,
        plan: &mut SetPlan,
        place: &Place<'_>,
        first_side: Option<u16>,
        (tracker, j): (&Tracker, f64),
        (floor, grows): (f64, bool),
        case: &LoadCase<'_>,
    ) {
        let rules = self.inputs.rules;
        let planned = plan.target.count();
        let high = if grows { plan.range.high().max(planned) } else { planned };
        let Some(w) = effective_load(place.variant, &plan.load, self.body) else { return };
        let mut reps = case.nearest_reps(high, case.effort.target, |r| {
            let (mean, _) = tracker.reserve(&self.k, w, r, j);
            (mean, tracker.chance_below(&self.k, w, r, j, floor))
        });
        // The second side does what the first one did.
        if let Some(first) = first_side {
            reps = first.clamp(plan.range.low(), high.max(plan.range.low()));
        }
        if reps == planned {
            return;
        }
        plan.target = Target::Reps(reps);
        let why = Reason::new(rules, ReasonCode::RepsNow, "load.reps-now")
            .number("reps", f64::from(reps))
            .number("planned", f64::from(planned))
            .number("target", case.effort.target)
            .number("other_side", f64::from(u8::from(first_side.is_some())));
        plan.reasons.insert(0, why);
    }
}
