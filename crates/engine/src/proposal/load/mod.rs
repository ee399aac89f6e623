//! Choosing the load (DESIGN 5.3): `pick` says which way. A variant that is new begins in `first`; one with a state
//! goes by `strength`, or on by `finding` while its load is not found; the rest goes by `count`. `bounds` says how far
//! up any of them may go.

mod bounds;
mod count;
mod finding;
mod first;
mod strength;

pub(super) use bounds::days_between;

use crate::catalogue::Place;
use crate::ground::Ground;
use crate::history::History;
use crate::ids::GroupId;
use crate::kit::Load;
use crate::programme::{Amount, Start};
use crate::proposal::effort::Effort;
use crate::proposal::types::Target;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::Purpose;
use crate::state::{Exposure, LastSet, State, VariantUse};
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

    pub(super) fn number(&self, rule: &str, name: &str) -> f64 {
        self.ground.rules.number(rule, name)
    }

    /// 1 where seconds are counted, 0 where reps are: for the sentence of a reason.
    fn timed(&self) -> f64 {
        f64::from(u8::from(matches!(self.range, Amount::Seconds { .. })))
    }

    /// True where neither load nor count may grow today.
    pub(super) fn nothing_grows(&self, place: &Place<'_>) -> bool {
        self.ground.nothing_grows(place.ladder.pattern)
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

    /// True if her kit makes the variant with a load that is not above the cap.
    #[must_use]
    pub fn can_keep_to_cap(&self, place: &Place<'_>) -> bool {
        let Some(cap) = self.cap else { return true };
        let loads = self.ground.loads(place);
        loads.iter().any(|l| place.variant.external(l).0 <= cap.0 + EPS)
    }

    /// True if an exposure counted what this dose counts: reps with reps, seconds with seconds.
    #[must_use]
    pub fn same_measure(&self, e: &Exposure) -> bool {
        std::mem::discriminant(&e.range) == std::mem::discriminant(&self.range)
    }

    /// The top of the range for an exposure: of its own dose or of today's, whichever asks for more. The bottom of a
    /// long range is no top of a short one.
    #[must_use]
    pub fn top(&self, e: &Exposure) -> u16 {
        if self.same_measure(e) { e.range.high().max(self.range.high()) } else { self.range.high() }
    }

    fn permitted_by_cap(&self, place: &Place<'_>) -> Vec<Load> {
        let all = self.ground.loads(place);
        let Some(cap) = self.cap else { return all };
        let under: Vec<Load> =
            all.iter().filter(|l| place.variant.external(l).0 <= cap.0 + EPS).cloned().collect();
        if under.is_empty() { all.into_iter().take(1).collect() } else { under }
    }

    /// Chooses load and reps for a variant; `None` if her kit makes none.
    #[must_use]
    pub fn pick(&self, place: &Place<'_>) -> Option<Pick> {
        let mut pick = self.pick_within(place)?;
        if let Some((_, restriction)) = self.ground.most_load(&place.ladder.id)
            && self.ground.loads(place).last() == Some(&pick.load)
            && self.ground.kit_loads(place.variant).last() != Some(&pick.load)
        {
            pick.reasons.push(
                Reason::new(self.rules(), ReasonCode::RestrictedLoad, "coach.set")
                    .with("load", Fact::Load(pick.load.clone()))
                    .with("note", Fact::Words(restriction.note.clone())),
            );
        }
        Some(pick)
    }

    fn uses_of(&self, place: &Place<'_>) -> &[VariantUse] {
        self.state.variants.get(&place.variant.id).map_or(&[][..], Vec::as_slice)
    }

    /// Exposures of a variant by the measure of today's dose, in order.
    fn exposures_of(&self, place: &Place<'_>) -> Vec<&Exposure> {
        let of_variant = |e: &&Exposure| e.variant == place.variant.id && self.same_measure(e);
        let ladder = self.state.ladders.get(&place.ladder.id);
        ladder.map(|l| l.exposures.iter().filter(of_variant).collect()).unwrap_or_default()
    }

    fn pick_within(&self, place: &Place<'_>) -> Option<Pick> {
        let uses = self.uses_of(place);
        if self.ground.learning && !place.ladder.pattern.goes_on_meanwhile() {
            return self.learn(place);
        }
        let Some(last) = uses.last() else { return self.first(place) };
        // A load of another make, say one weight where a pair is held, tells nothing of this variant.
        let same_make = |l: &&Load| self.ground.loads(place).first().is_some_and(|own| l.is_same_make(own));
        if let Some(load) = self.coach_load.filter(same_make) {
            return self.by_coach(place, load);
        }
        let exposures = self.exposures_of(place);
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
