//! Choosing the load (DESIGN 5.3).

use super::effort::Effort;
use super::types::Target;
use crate::catalogue::{Place, Region};
use crate::ground::Ground;
use crate::history::History;
use crate::ids::{GroupId, VariantId};
use crate::kit::Load;
use crate::programme::{Amount, Start};
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Exposure, LastSet, State, VariantUse, start_for};
use crate::strength::{Constants, Tracker, effective_load};
use crate::units::Kg;
use std::collections::BTreeMap;

/// Loads are told apart by more than this, in kg; float noise is far below it.
const EPS: f64 = 1e-9;

/// What the choice of a load stands on.
#[derive(Clone, Copy)]
pub struct LoadCase<'a> {
    /// Ground.
    pub ground: &'a Ground<'a>,
    /// History.
    pub history: &'a History,
    /// State.
    pub state: &'a State,
    /// The coach's starts.
    pub starts: &'a [Start],
    /// Body mass, or the assumed one.
    pub body: Kg,
    /// Constants.
    pub k: &'a Constants,
    /// Range of the dose.
    pub range: Amount,
    /// Effort today.
    pub effort: &'a Effort,
    /// Sets of each group before this slot today.
    pub earlier: &'a BTreeMap<GroupId, u32>,
    /// Never heavier than this external load.
    pub cap: Option<Kg>,
    /// Reps stay at the bottom of the range.
    pub bottom_only: bool,
    /// More reps than the range allows, because neither load nor level can go up.
    pub more_reps: u16,
    /// The coach set this load anew, after the last exposure.
    pub coach_load: Option<&'a Load>,
}

/// A load with its reps, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Pick {
    /// Load.
    pub load: Load,
    /// Reps or seconds.
    pub target: Target,
    /// Reps in reserve aimed at.
    pub aim: f64,
    /// What the sets are for.
    pub purpose: Purpose,
    /// Why.
    pub reasons: Vec<Reason>,
    /// The lightest load still fails the mean test: a level down is due.
    pub too_hard: bool,
    /// At the top of the range, much in reserve, and no permitted next load.
    pub gap: bool,
}

impl LoadCase<'_> {
    fn rules(&self) -> &crate::rules::RulePack {
        self.ground.rules
    }

    fn number(&self, rule: &str, name: &str) -> f64 {
        self.ground.rules.number(rule, name)
    }

    fn as_target(&self, count: u16) -> Target {
        match self.range {
            Amount::Reps { .. } => Target::Reps(count),
            Amount::Seconds { .. } => Target::Seconds(count),
        }
    }

    /// The state of the variant's group today, if there is one.
    fn tracker(&self, place: &Place<'_>) -> Option<Tracker> {
        let group = place.variant.group.as_ref()?;
        self.state.trackers.get(group).map(|t| t.on(self.k, self.ground.day))
    }

    /// Mean reserve in the middle set and chance of falling under the floor in the last one.
    fn outlook(&self, place: &Place<'_>, tracker: &Tracker, load: Kg, reps: f64) -> (f64, f64) {
        let n = f64::from(self.effort.sets.max(1));
        let earlier = place.variant.group.as_ref().and_then(|g| self.earlier.get(g)).copied().unwrap_or(0);
        let j = f64::from(earlier);
        let (mean, _) = tracker.reserve(self.k, load, reps, j + (n - 1.0) / 2.0);
        let risk = tracker.chance_below(self.k, load, reps, j + n - 1.0, self.effort.floor);
        (mean, risk)
    }

    fn passes_mean(&self, place: &Place<'_>, tracker: &Tracker, load: Kg, aim: f64) -> bool {
        let (mean, _) = self.outlook(place, tracker, load, f64::from(self.range.low()));
        mean >= aim - self.number("load.target", "slack")
    }

    /// True if a load passes the mean test and the test of the floor, both at the bottom of the range.
    fn holds(&self, place: &Place<'_>, tracker: &Tracker, load: &Load) -> bool {
        effective_load(place.variant, load, self.body).is_some_and(|w| {
            let (_, risk) = self.outlook(place, tracker, w, f64::from(self.range.low()));
            self.passes_mean(place, tracker, w, self.effort.target)
                && risk <= self.number("load.target", "alpha")
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
                .number("reps", f64::from(self.range.low()));
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
            .filter(|_| self.finding_allowed());
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
        let group = place.variant.group.as_ref().filter(|_| self.finding_allowed())?;
        let tracker = self.tracker(place)?;
        let last = self.state.held.get(group)?;
        let held = self.ground.catalogue.place(&last.0)?.variant.external(&last.1).0;
        let most = held * self.number("load.first", "share_of_group");
        let load = loads
            .iter()
            .rfind(|l| place.variant.external(l).0 <= most + EPS && self.holds(place, &tracker, l))?;
        Some((load.clone(), last.clone()))
    }

    /// True if her kit makes the variant with a load that is not above the cap.
    #[must_use]
    pub fn can_keep_to_cap(&self, place: &Place<'_>) -> bool {
        let Some(cap) = self.cap else { return true };
        let loads = self.ground.loads(place.variant);
        loads.iter().any(|l| place.variant.external(l).0 <= cap.0 + EPS)
    }

    /// True if an exposure counted what this dose counts: reps with reps, seconds with seconds.
    #[must_use]
    pub fn same_measure(&self, e: &Exposure) -> bool {
        std::mem::discriminant(&e.range) == std::mem::discriminant(&self.range)
    }

    fn permitted_by_cap(&self, place: &Place<'_>) -> Vec<Load> {
        let all = self.ground.loads(place.variant);
        let Some(cap) = self.cap else { return all };
        let under: Vec<Load> =
            all.iter().filter(|l| place.variant.external(l).0 <= cap.0 + EPS).cloned().collect();
        if under.is_empty() { all.into_iter().take(1).collect() } else { under }
    }

    /// Chooses load and reps for a variant; `None` if her kit makes none.
    #[must_use]
    pub fn pick(&self, place: &Place<'_>) -> Option<Pick> {
        let uses = self.state.variants.get(&place.variant.id).map_or(&[][..], Vec::as_slice);
        let Some(last) = uses.last() else { return self.first(place) };
        // A load of another make, say one weight where a pair is held, tells nothing of this variant.
        let same_make =
            |l: &&Load| self.ground.loads(place.variant).first().is_some_and(|own| l.is_same_make(own));
        if let Some(load) = self.coach_load.filter(same_make) {
            return self.by_coach(place, load);
        }
        let exposures: Vec<&Exposure> = self
            .state
            .ladders
            .get(&place.ladder.id)
            .map(|l| {
                let of_variant = |e: &&Exposure| e.variant == place.variant.id && self.same_measure(e);
                l.exposures.iter().filter(of_variant).collect()
            })
            .unwrap_or_default();
        let tracker = self.tracker(place);
        let with_state = match (&tracker, self.range) {
            (Some(t), Amount::Reps { .. }) => effective_load(place.variant, &last.load, self.body).map(|_| t),
            (Some(_), Amount::Seconds { .. }) | (None, _) => None,
        };
        match with_state {
            Some(tracker) => self.by_strength(place, tracker, uses, last, &exposures),
            None => self.by_count(place, uses, last, &exposures),
        }
    }

    fn first(&self, place: &Place<'_>) -> Option<Pick> {
        let (load, reason) = self.start(place)?;
        let finding = matches!(self.range, Amount::Reps { .. })
            && place.variant.group.is_some()
            && !matches!(load, Load::Nothing)
            && self.finding_allowed();
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

    fn finding_allowed(&self) -> bool {
        let from = self.number("load.first", "finding_from_week");
        self.ground.stage.weeks_after().is_none_or(|w| f64::from(w) >= from)
    }

    fn by_coach(&self, place: &Place<'_>, wanted: &Load) -> Option<Pick> {
        let loads = self.permitted_by_cap(place);
        let kg = place.variant.external(wanted).0;
        let load =
            loads.iter().rfind(|l| place.variant.external(l).0 <= kg + EPS).or(loads.first()).cloned()?;
        let reason = Reason::new(self.rules(), ReasonCode::StartCoach, "coach.set")
            .with("variant", Fact::Variant(place.variant.id.clone()))
            .with("load", Fact::Load(load.clone()));
        Some(Pick {
            load,
            target: self.as_target(self.range.low()),
            aim: self.effort.target,
            purpose: Purpose::Work,
            reasons: vec![reason],
            too_hard: false,
            gap: false,
        })
    }

    /// Loads within the step bound, the lay-off bound and the cap; with what bound them.
    fn within_bounds(
        &self,
        place: &Place<'_>,
        uses: &[VariantUse],
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Bounds {
        let all = self.ground.loads(place.variant);
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
            self.big_step_earned(&at_best)
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
        if let Some(cap) = self.cap {
            bound = bound.min(cap.0);
        }
        let permitted: Vec<Load> = all.iter().filter(|l| kg(l) <= bound + EPS).cloned().collect();
        // Her kit makes nothing that light, or nothing can be taken off a body.
        let nothing_to_take_off = lay_off.is_some() && (last_kg <= 0.0 || permitted.is_empty());
        Bounds {
            permitted: if permitted.is_empty() { all.iter().take(1).cloned().collect() } else { permitted },
            all,
            step,
            lay_off: lay_off.map(|share| (away, share)),
            nothing_to_take_off,
            fell_short,
        }
    }

    /// Exposures running (the latest first) at the top with reserve at target, or one alone with more.
    fn big_step_earned(&self, latest: &[&Exposure]) -> bool {
        let at_top = |e: &Exposure, more: f64| {
            let timed = matches!(e.range, Amount::Seconds { .. });
            e.symptom_free
                && e.last.is_some_and(|l| {
                    l.count >= self.range.high() && l.reserve_at_least(self.effort.target + more, timed)
                })
        };
        let alone = |e: &&Exposure| at_top(e, self.number("load.big-step", "alone_over_target"));
        let running = latest.iter().take_while(|e| at_top(e, 0.0)).count();
        latest.first().is_some_and(alone) || running as f64 >= self.number("load.big-step", "exposures")
    }

    fn by_strength(
        &self,
        place: &Place<'_>,
        tracker: &Tracker,
        uses: &[VariantUse],
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Option<Pick> {
        let bounds = self.within_bounds(place, uses, last, exposures);
        let alpha = self.number("load.target", "alpha");
        let heaviest = bounds.permitted.iter().rfind(|l| self.holds(place, tracker, l)).cloned();
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
        let mut aim = self.effort.target;
        if bounds.nothing_to_take_off {
            aim += self.number("load.lay-off", "more_reserve");
        }
        let too_hard =
            (nothing_qualifies || bounds.nothing_to_take_off) && !self.passes_mean(place, tracker, w, aim);

        let at_top = exposures.last().and_then(|e| e.last).filter(|l| l.count >= self.range.high());
        // No next load that is permitted and holds. After a symptom, when the load is capped, a set does
        // not grow beyond its range instead.
        let gap = self.cap.is_none()
            && at_top.is_some_and(|l| {
                l.reserve_at_least(self.effort.target + self.number("load.kit-gap", "over_target"), false)
            })
            && bounds.lay_off.is_none()
            && (kg(&load) - kg(&last.load)).abs() <= EPS;
        let more = if gap { self.number("load.kit-gap", "more_reps") as u16 } else { 0 };

        let hold_bottom = self.bottom_only || bounds.nothing_to_take_off;
        let high = if hold_bottom {
            self.range.low()
        } else {
            self.range.high().saturating_add(more.max(self.more_reps))
        };
        let binds = self.effort.careful || self.number("load.target", "binds_all") >= 1.0;
        let mut reps = self.range.low();
        let mut best = f64::INFINITY;
        for r in self.range.low()..=high {
            let (mean, risk) = self.outlook(place, tracker, w, f64::from(r));
            if binds && r > self.range.low() && risk > alpha {
                break;
            }
            let distance = libm::fabs(mean - aim);
            if distance < best {
                best = distance;
                reps = r;
            }
        }
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
        if nothing_qualifies {
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

    /// As long as every set of a variant left "five or more" her load is not found: the answer is a bound, and tells
    /// the filter nothing of how far above it she is. Finding goes on from the load held last.
    fn still_finding(
        &self,
        place: &Place<'_>,
        bounds: &Bounds,
        uses: &[VariantUse],
        last: &VariantUse,
        (heaviest, beyond): (Option<&Load>, Option<&Load>),
    ) -> Option<Pick> {
        let held_back =
            self.cap.is_some() || self.bottom_only || bounds.lay_off.is_some() || bounds.fell_short;
        if held_back || !self.finding_allowed() || !uses.iter().all(|u| u.open_ended && u.symptom_free) {
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

    /// True if nothing told where to begin with a variant: no start of the coach's, no answer of hers, no other variant
    /// of its group.
    #[must_use]
    pub fn begun_blind(&self, place: &Place<'_>) -> bool {
        let told = |load: &Load| {
            load.is_plausible()
                && self.ground.loads(place.variant).first().is_some_and(|own| load.is_same_make(own))
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
    fn unforeseen(
        &self,
        place: &Place<'_>,
        bounds: &Bounds,
        last: &VariantUse,
        exposures: &[&Exposure],
    ) -> Option<Pick> {
        let held_back =
            self.cap.is_some() || self.bottom_only || bounds.lay_off.is_some() || bounds.fell_short;
        if held_back {
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
                    && kg(&e.load) >= last_kg - EPS
                    && e.last.is_some_and(|l| {
                        l.count >= self.range.high() && l.reserve_at_least(self.effort.target + more, false)
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
            purpose: if self.finding_allowed() { Purpose::Find } else { Purpose::Work },
            reasons: vec![main, by_feel],
            too_hard: false,
            gap: false,
        })
    }

    fn step_bound(&self) -> Reason {
        Reason::new(self.rules(), ReasonCode::StepBound, "load.step")
            .number("percent", libm::round(self.number("load.step", "share") * 100.0))
    }

    /// Rep-only and timed variants, and loads without a state: reps or seconds move, then the load.
    fn by_count(
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
                let room = set.reserve_at_least(self.effort.target, timed);
                let at_top = set.count >= self.range.high();
                let next = bounds.permitted.iter().find(|l| kg(l) > kg(&load) + EPS);
                if let Some(next) = next
                    && at_top
                    && room
                    && self.big_step_earned(&latest)
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
        let count = if self.bottom_only || lay_off { low } else { count };
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
        Some(Pick {
            load,
            target: self.as_target(count),
            aim,
            purpose: Purpose::Work,
            reasons,
            too_hard: false,
            gap: false,
        })
    }
}

struct Bounds {
    all: Vec<Load>,
    permitted: Vec<Load>,
    step: Option<Load>,
    lay_off: Option<(f64, f64)>,
    nothing_to_take_off: bool,
    fell_short: bool,
}

/// Adds what was done last: `last_reps` is 0 and `last_reserve` -1 where it is not known.
fn with_last(reason: Reason, done: Option<&LastSet>) -> Reason {
    use crate::record::Reserve;
    let reserve = match done.and_then(|d| d.reserve) {
        Some(Reserve::Exactly(n) | Reserve::AtLeast(n)) => f64::from(n),
        None => -1.0,
    };
    reason.number("last_reps", done.map_or(0.0, |d| f64::from(d.count))).number("last_reserve", reserve)
}

fn round_tenth(x: f64) -> f64 {
    libm::round(x * 10.0) / 10.0
}

pub(super) fn days_between(from: chrono::NaiveDate, to: chrono::NaiveDate) -> f64 {
    f64::from(i32::try_from((to - from).num_days()).unwrap_or(i32::MAX))
}
