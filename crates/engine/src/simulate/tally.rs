//! What many trials come to, with how sure it is.

use super::trial::{Outcome, SlotSession};
use super::watch::Breaches;
use serde::Serialize;

/// 97.5 % quantile of the standard normal.
const Z975: f64 = 1.959_963_984_540_054;

/// A ratio over clients with its 95 % confidence interval. Sets of one client are alike, so the client is the unit:
/// the ratio estimator of cluster sampling (Cochran WG, Sampling Techniques, 3rd ed., 1977, ch. 6 [m]).
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Estimate {
    /// Estimate.
    pub value: f64,
    /// Low end.
    pub low: f64,
    /// High end.
    pub high: f64,
}

impl Estimate {
    /// Sum of the first over sum of the second; `None` without anything to divide by.
    #[must_use]
    pub fn ratio(clients: &[(f64, f64)]) -> Option<Self> {
        let (x, y) = clients.iter().fold((0.0, 0.0), |(x, y), (a, b)| (x + a, y + b));
        if y <= 0.0 {
            return None;
        }
        let value = x / y;
        let n = clients.len() as f64;
        let squares: f64 = clients.iter().map(|(a, b)| (a - value * b) * (a - value * b)).sum();
        let half = if n > 1.0 { Z975 * libm::sqrt(squares * n / (n - 1.0)) / y } else { f64::INFINITY };
        Some(Self { value, low: value - half, high: value + half })
    }
}

/// One session's place among all, as reps in reserve on a usual day less the aim.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Settling {
    /// Session, from 1.
    pub session: u32,
    /// 10 % of clients are lower.
    pub p10: f64,
    /// Half of clients are lower.
    pub p50: f64,
    /// 90 % of clients are lower.
    pub p90: f64,
    /// The oracle's median.
    pub oracle: f64,
    /// Mean distance of true reps in reserve from the aim, in reps.
    pub distance: f64,
    /// Share of sets in which she could not do what was asked.
    pub failed: f64,
}

/// What a scenario came to.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Report {
    /// Scenario.
    pub scenario: String,
    /// Clients.
    pub clients: u64,
    /// Weeks.
    pub weeks: u32,
    /// Seed.
    pub seed: u64,
    /// Sessions trained.
    pub sessions: u64,
    /// Times a session stayed closed.
    pub closed: u64,
    /// Sets that count.
    pub sets: u64,
    /// Mean distance of true reps in reserve from the aim, in reps.
    pub distance: Option<Estimate>,
    /// The oracle's.
    pub oracle_distance: Option<Estimate>,
    /// Share of sets in which she could not do what was asked.
    pub failed: Option<Estimate>,
    /// Share of sets that left less than one rep.
    pub below_one: Option<Estimate>,
    /// Sessions until the load was found.
    pub reached: Option<Reached>,
    /// Loads proposed and asked for.
    pub loads: u64,
    /// Of these above a bound.
    pub step_breaches: u64,
    /// Levels proposed after another one.
    pub levels: u64,
    /// Of these more than a step away.
    pub level_breaches: u64,
    /// Times a session was asked for while a red flag waited.
    pub red_flags: u64,
    /// Of these with a proposal.
    pub red_breaches: u64,
    /// Symptoms that asked for a level down.
    pub drops: u64,
    /// Of these answered late or not at all.
    pub drops_late: u64,
    /// The first of what was broken, in words.
    pub notes: Vec<String>,
    /// How the first slot's load settles.
    pub settling: Vec<Settling>,
}

/// Sessions until the load was found.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Reached {
    /// Half of clients needed no more.
    pub median: u32,
    /// 95 % confidence interval of the median, by ranks.
    pub median_low: u32,
    /// The same, high end.
    pub median_high: u32,
    /// Nine in ten needed no more; `None` if more than one in ten never got there.
    pub p90: Option<u32>,
    /// Clients that never got there.
    pub never: u64,
}

/// Outcomes of a scenario.
#[derive(Clone, Debug, Default)]
pub struct Tally {
    outcomes: Vec<Outcome>,
}

impl Tally {
    /// Takes in the outcomes of clients, in their order.
    #[must_use]
    pub fn of(outcomes: Vec<Outcome>) -> Self {
        Self { outcomes }
    }

    /// Sums it up.
    #[must_use]
    pub fn report(&self, scenario: &str, weeks: u32, seed: u64) -> Report {
        let ratio = |x: &dyn Fn(&Outcome) -> f64| {
            let clients: Vec<(f64, f64)> = self.outcomes.iter().map(|o| (x(o), o.sets as f64)).collect();
            Estimate::ratio(&clients)
        };
        let sum = |x: &dyn Fn(&Outcome) -> u64| self.outcomes.iter().map(x).sum::<u64>();
        let mut breaches = Breaches::default();
        for outcome in &self.outcomes {
            breaches.add(&outcome.breaches);
        }
        Report {
            scenario: scenario.to_owned(),
            clients: self.outcomes.len() as u64,
            weeks,
            seed,
            sessions: sum(&|o| o.sessions),
            closed: sum(&|o| o.closed),
            sets: sum(&|o| o.sets),
            distance: ratio(&|o| o.distance),
            oracle_distance: {
                // The oracle's sets are those proposed; a few of them were then cut short.
                let clients: Vec<(f64, f64)> =
                    self.outcomes.iter().map(|o| (o.oracle_distance, o.oracle_sets as f64)).collect();
                Estimate::ratio(&clients)
            },
            failed: ratio(&|o| o.failed as f64),
            below_one: ratio(&|o| o.below_one as f64),
            reached: self.reached(),
            loads: breaches.loads,
            step_breaches: breaches.step,
            levels: breaches.levels,
            level_breaches: breaches.level,
            red_flags: breaches.reds,
            red_breaches: breaches.red,
            drops: breaches.drops,
            drops_late: breaches.late,
            notes: self
                .outcomes
                .iter()
                .enumerate()
                .flat_map(|(n, o)| o.notes.iter().map(move |note| format!("client {n}, {note}")))
                .take(12)
                .collect(),
            settling: self.settling(),
        }
    }

    fn reached(&self) -> Option<Reached> {
        let mut sessions: Vec<u32> = self.outcomes.iter().map(|o| o.reached.unwrap_or(u32::MAX)).collect();
        sessions.sort_unstable();
        let n = sessions.len();
        let never = sessions.iter().filter(|s| **s == u32::MAX).count();
        let at = |rank: f64| sessions.get((rank.max(0.0) as usize).min(n.saturating_sub(1))).copied();
        let (half, spread) = (n as f64 / 2.0, Z975 * libm::sqrt(n as f64) / 2.0);
        let median = at(half).filter(|m| *m < u32::MAX)?;
        Some(Reached {
            median,
            median_low: at(half - spread)?,
            median_high: at(half + spread)?,
            p90: at(0.9 * n as f64).filter(|m| *m < u32::MAX),
            never: never as u64,
        })
    }

    fn settling(&self) -> Vec<Settling> {
        let longest = self.outcomes.iter().map(|o| o.settling.len()).max().unwrap_or(0);
        let mut found = Vec::new();
        for nth in 0..longest {
            let mut here: Vec<SlotSession> =
                self.outcomes.iter().filter_map(|o| o.settling.get(nth).copied()).collect();
            let n = here.len();
            let at = |list: &[SlotSession], share: f64| {
                list.get(((n as f64 * share) as usize).min(n - 1)).copied()
            };
            here.sort_by(|a, b| a.offset.total_cmp(&b.offset));
            let [p10, p50, p90] = [0.1, 0.5, 0.9].map(|q| at(&here, q).map_or(f64::NAN, |x| x.offset));
            here.sort_by(|a, b| a.oracle.total_cmp(&b.oracle));
            let oracle = at(&here, 0.5).map_or(f64::NAN, |x| x.oracle);
            let sum = |of: &dyn Fn(&SlotSession) -> f64| here.iter().map(of).sum::<f64>();
            let sets = sum(&|d| d.sets).max(1.0);
            found.push(Settling {
                session: u32::try_from(nth + 1).unwrap_or(u32::MAX),
                p10,
                p50,
                p90,
                oracle,
                distance: sum(&|d| d.distance) / sets,
                failed: sum(&|d| d.failed) / sets,
            });
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ratio_with_equal_clusters_is_a_mean_with_its_interval() {
        // 1, 2, 3 of one set each: mean 2, SD 1, standard error 1/sqrt(3).
        let e = Estimate::ratio(&[(1.0, 1.0), (2.0, 1.0), (3.0, 1.0)]).unwrap();
        assert!((e.value - 2.0).abs() < 1e-15);
        assert!((e.high - (2.0 + Z975 / libm::sqrt(3.0))).abs() < 1e-12, "{e:?}");
        assert_eq!(Estimate::ratio(&[(0.0, 0.0)]), None);
    }

    #[test]
    fn the_median_counts_who_never_got_there() {
        let outcome = |reached| Outcome { reached, ..Outcome::default() };
        let tally = Tally::of(vec![outcome(Some(1)), outcome(Some(2)), outcome(Some(2)), outcome(None)]);
        let reached = tally.reached().unwrap();
        assert_eq!((reached.median, reached.never, reached.p90), (2, 1, None));
    }
}
