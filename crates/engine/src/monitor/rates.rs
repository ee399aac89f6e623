//! How often sessions had a symptom, by ladder, position and load band: a pointer for the coach and
//! never a diagnosis.
//!
//! What is counted is sessions and not sets, since a mark changes the rest of its session and the sets
//! of one day are no separate trials. A session counts for a ladder (a position, a band) if she trained
//! it then, and as marked if at least one mark of a cue or stricter fell there. A mark that was taken
//! back does not count; what she said at check-in or of the next morning is no mark. The chances are not
//! corrected for how many are looked at.

use super::Watched;
use super::chance::{fisher_exact, jeffreys};
use crate::catalogue::{Loading, Place, Position};
use crate::history::{Mark, Run, rounds_of};
use crate::ids::{LadderId, RuleId, RunId, VariantId};
use crate::kit::Load;
use crate::rules::Class;
use crate::units::Kg;
use chrono::{Days, NaiveDate};
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// What has to be read with a result.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub enum Notice {
    /// A pointer for the coach and never a diagnosis.
    #[serde(rename = "pointer-never-a-diagnosis")]
    PointerNeverADiagnosis,
}

impl Notice {
    /// Every code, so that the build can check that each has its sentence, `watch-<slug>`.
    pub const ALL: &'static [Self] = &[Self::PointerNeverADiagnosis];

    /// Its slug.
    #[must_use]
    pub fn slug(self) -> &'static str {
        match self {
            Self::PointerNeverADiagnosis => "pointer-never-a-diagnosis",
        }
    }
}

/// Symptom rates of a stretch of time.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Rates {
    /// To be shown with them.
    pub notice: Notice,
    /// First day: some weeks back (rule `watch.rate`), but not before a birth, a loss or a surgery.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
    /// Confidence of the intervals.
    pub confidence: f64,
    /// Rates: ladders, then positions, then load bands.
    pub rates: Vec<Rate>,
    /// Marks that belong to no movement, and stand in no rate.
    pub unplaced: u32,
    /// The rule.
    pub rule: RuleId,
    /// Its source, with its mark.
    pub source: String,
}

/// Sessions with a symptom, of sessions.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Rate {
    /// Of what.
    pub of: RateOf,
    /// Sessions with a mark on it.
    pub marked: u32,
    /// Sessions with it.
    pub sessions: u32,
    /// What that tells; `None` where it is too few to say anything.
    pub tells: Option<Tells>,
}

/// What a rate is of.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[serde(tag = "of", rename_all = "snake_case")]
#[ts(export)]
pub enum RateOf {
    /// A ladder; the rest are the other ladders.
    Ladder {
        /// Which.
        ladder: LadderId,
    },
    /// A position; the rest are the other positions.
    Position {
        /// Which.
        position: Position,
    },
    /// A third of her own loads on a variant; the rest are the other thirds.
    LoadBand {
        /// The variant.
        variant: VariantId,
        /// Which third.
        band: LoadBand,
        /// Its lightest external load (help counts as negative).
        lightest: Kg,
        /// Its heaviest.
        heaviest: Kg,
    },
}

/// A third of her own loads on a variant: by how many of her sets there were lighter, those of the same
/// load counted half.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum LoadBand {
    /// The lightest third.
    Light,
    /// Between.
    Middle,
    /// The heaviest third.
    Heavy,
}

/// What a rate tells.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Tells {
    /// Share of sessions with a mark.
    pub rate: f64,
    /// Lower end of its Jeffreys interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Against the rest; `None` where there is too little of it.
    pub rest: Option<AgainstRest>,
}

/// A rate against the rest.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct AgainstRest {
    /// Sessions of the rest with a mark. A session counts once for each ladder (position, band) of it.
    pub marked: u32,
    /// Sessions of the rest.
    pub sessions: u32,
    /// Two-sided chance of a difference so great if there were none (Fisher's exact test).
    pub chance: f64,
}

#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Key {
    Ladder(LadderId),
    Position(Position),
    Band(VariantId, LoadBand),
}

impl Key {
    /// True for what one is compared with: another of the same kind, of the same variant for bands.
    fn is_rest_of(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Ladder(a), Self::Ladder(b)) => a != b,
            (Self::Position(a), Self::Position(b)) => a != b,
            (Self::Band(v, a), Self::Band(w, b)) => v == w && a != b,
            (Self::Ladder(_) | Self::Position(_) | Self::Band(..), _) => false,
        }
    }
}

/// External loads of a variant, lightest first, one for each set.
type Loads = BTreeMap<VariantId, Vec<f64>>;
/// By key and run, whether it was marked.
type Trials = BTreeMap<Key, BTreeMap<RunId, bool>>;

/// The rates of the weeks up to the day.
pub(super) fn rates(watched: &Watched<'_>) -> Rates {
    let number = |name: &str| watched.rules.number("watch.rate", name);
    let back = Days::new((number("days") as u64).saturating_sub(1));
    let window = watched.day.checked_sub_days(back).unwrap_or(watched.day);
    // What she did before a birth tells of another body.
    let fresh = watched.state.fresh.filter(|f| *f <= watched.day);
    let from = fresh.map_or(window, |f| f.max(window));
    let runs: Vec<&Run> = watched.runs().filter(|r| r.day >= from).collect();
    let loads = loads_of(watched, &runs);
    let mut trials = Trials::new();
    let mut unplaced = 0;
    for run in &runs {
        for round in rounds_of(run) {
            let Some(place) = watched.catalogue.place(&round.set.variant) else { continue };
            for key in keys(&place, Some(round.load()), &loads) {
                trials.entry(key).or_default().entry(run.id).or_insert(false);
            }
        }
        for mark in run.marks.iter().filter(|m| counts(watched, run, m)) {
            let Some((place, load)) = place_of(watched, run, mark) else {
                unplaced += 1;
                continue;
            };
            // A set that was marked before it was logged is a trial as well.
            for key in keys(&place, load, &loads) {
                trials.entry(key).or_default().insert(run.id, true);
            }
        }
    }
    let rule = RuleId::from("watch.rate");
    Rates {
        notice: Notice::PointerNeverADiagnosis,
        from,
        to: watched.day,
        confidence: number("confidence"),
        rates: trials.keys().filter_map(|key| rate(watched, &trials, &loads, key)).collect(),
        unplaced,
        source: watched.rules.source(&rule).to_owned(),
        rule,
    }
}

/// Marks that count: not taken back, and a cue or stricter.
fn counts(watched: &Watched<'_>, run: &Run, mark: &Mark) -> bool {
    let verdict = watched.state.effects.get(&run.id).and_then(|e| e.verdicts.get(&mark.record));
    !mark.taken_back && verdict.is_none_or(|v| v.class >= Class::Cue)
}

fn loads_of(watched: &Watched<'_>, runs: &[&Run]) -> Loads {
    let mut loads = Loads::new();
    for run in runs {
        for round in rounds_of(run) {
            let Some(place) = watched.catalogue.place(&round.set.variant) else { continue };
            if let Some(external) = external(&place, round.load()) {
                loads.entry(round.set.variant.clone()).or_default().push(external);
            }
        }
    }
    for list in loads.values_mut() {
        list.sort_by(f64::total_cmp);
    }
    loads
}

/// What was held, where the variant is loaded at all.
fn external(place: &Place<'_>, load: &Load) -> Option<f64> {
    match place.variant.loading {
        Loading::Body => None,
        Loading::One | Loading::Pair | Loading::Barbell | Loading::Band { .. } | Loading::Assist { .. } => {
            let external = place.variant.external(load).0;
            (load.is_plausible() && external.is_finite()).then_some(external)
        }
    }
}

/// The third that a load lies in: by the share of sets with less, half of those with the same added.
fn band(loads: &[f64], load: f64) -> LoadBand {
    // Twice the rank, so that it stays whole.
    let below = loads.iter().filter(|l| **l < load).count();
    let same = loads.iter().filter(|l| **l <= load).count() - below;
    let rank = 2 * below + same;
    if 3 * rank < 2 * loads.len() {
        LoadBand::Light
    } else if 3 * rank <= 4 * loads.len() {
        LoadBand::Middle
    } else {
        LoadBand::Heavy
    }
}

fn keys(place: &Place<'_>, load: Option<&Load>, loads: &Loads) -> Vec<Key> {
    let mut keys = vec![Key::Ladder(place.ladder.id.clone()), Key::Position(place.variant.position)];
    let hers = loads.get(&place.variant.id);
    if let (Some(hers), Some(held)) = (hers, load.and_then(|l| external(place, l))) {
        keys.push(Key::Band(place.variant.id.clone(), band(hers, held)));
    }
    keys
}

/// The variant that a mark belongs to, and the load: of the set that it names, else of the last set
/// there before it, else as shown. A mark that was moved to another ladder belongs to that one.
fn place_of<'a>(watched: &Watched<'a>, run: &'a Run, mark: &Mark) -> Option<(Place<'a>, Option<&'a Load>)> {
    let on_ladder = |place: &Place<'_>| mark.ladder.as_ref().is_none_or(|l| place.ladder.id == *l);
    let named = mark.variant.as_ref().and_then(|v| watched.catalogue.place(v)).filter(on_ladder);
    let before = |e: &&crate::history::SetEntry| e.at <= mark.at;
    if let Some(place) = named {
        let mine = |e: &&crate::history::SetEntry| e.set.variant == place.variant.id;
        let this = run
            .sets
            .iter()
            .filter(mine)
            .find(|e| Some(&e.set.slot) == mark.slot.as_ref() && Some(e.set.round) == mark.round);
        let last = || run.sets.iter().filter(mine).rfind(before);
        let load = this.or_else(last).map(|e| &e.set.load).or_else(|| {
            let shown = run.prescription(mark.slot.as_ref()?)?;
            (shown.variant == place.variant.id).then_some(&shown.load)
        });
        return Some((place, load));
    }
    let ladder = mark.ladder.as_ref()?;
    let last = run.sets.iter().filter(|e| e.set.ladder == *ladder).rfind(before)?;
    let place = watched.catalogue.place(&last.set.variant).filter(on_ladder)?;
    Some((place, Some(&last.set.load)))
}

fn rate(watched: &Watched<'_>, trials: &Trials, loads: &Loads, key: &Key) -> Option<Rate> {
    let number = |name: &str| watched.rules.number("watch.rate", name);
    let count = |runs: &BTreeMap<RunId, bool>| {
        let marked = runs.values().filter(|m| **m).count();
        (u32::try_from(marked).unwrap_or(u32::MAX), u32::try_from(runs.len()).unwrap_or(u32::MAX))
    };
    let (marked, sessions) = trials.get(key).map(count)?;
    let others = trials.iter().filter(|(other, _)| other.is_rest_of(key));
    let (rest_marked, rest_sessions) =
        others.map(|(_, runs)| count(runs)).fold((0u32, 0u32), |(m, n), (more, of)| (m + more, n + of));
    let of = match key {
        Key::Ladder(ladder) => RateOf::Ladder { ladder: ladder.clone() },
        Key::Position(position) => RateOf::Position { position: *position },
        // One load, or loads too alike for thirds: there is nothing to compare.
        Key::Band(..) if rest_sessions == 0 => return None,
        Key::Band(variant, third) => {
            let hers = loads.get(variant)?;
            let mut in_it = hers.iter().copied().filter(|l| band(hers, *l) == *third);
            let lightest = in_it.next()?;
            let heaviest = in_it.next_back().unwrap_or(lightest);
            RateOf::LoadBand {
                variant: variant.clone(),
                band: *third,
                lightest: Kg(lightest),
                heaviest: Kg(heaviest),
            }
        }
    };
    let enough = f64::from(sessions) >= number("sessions");
    let tells = enough.then(|| {
        let (low, high) = jeffreys(marked, sessions, number("confidence"));
        let comparable = f64::from(rest_sessions) >= number("rest_sessions")
            && f64::from(marked + rest_marked) >= number("marked");
        let rest = comparable.then(|| AgainstRest {
            marked: rest_marked,
            sessions: rest_sessions,
            chance: fisher_exact(marked, sessions - marked, rest_marked, rest_sessions - rest_marked),
        });
        Tells { rate: f64::from(marked) / f64::from(sessions), low, high, rest }
    });
    Some(Rate { of, marked, sessions, tells })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thirds_of_her_own_loads() {
        let all = |loads: &[f64]| loads.iter().map(|l| band(loads, *l)).collect::<Vec<_>>();
        use LoadBand::{Heavy, Light, Middle};
        assert_eq!(all(&[4.0, 6.0, 8.0]), [Light, Middle, Heavy]);
        assert_eq!(all(&[4.0, 4.0, 8.0, 8.0]), [Light, Light, Heavy, Heavy], "two loads are two bands");
        assert_eq!(all(&[6.0; 5]), [Middle; 5], "one load is one band");
        assert_eq!(all(&[4.0, 5.0, 6.0, 7.0, 8.0, 9.0]), [Light, Light, Middle, Middle, Heavy, Heavy]);
        assert_eq!(all(&[-20.0, -10.0, -10.0, -5.0]), [Light, Middle, Middle, Heavy], "help is negative");
        assert_eq!(band(&[4.0, 6.0], 12.0), Heavy, "a load of a set that was never logged");
    }
}
