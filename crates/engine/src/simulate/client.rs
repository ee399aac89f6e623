//! Synthetic clients: people with a known strength who answer as people do. Nobody real is in here.
//!
//! A true client has the same shape as the state that is tracked (DESIGN 5.2): per group a ten-rep max
//! exp(b) and a slope c, for herself a fatigue phi, a day effect and a habit of reporting. Her numbers
//! are drawn from published spreads where there are any; each constant says where it comes from.

use super::chance::Chance;
use crate::ids::GroupId;
use crate::record::Reserve;
use crate::units::Kg;
use std::collections::BTreeMap;

/// SD of c between people, in reps per unit of ln load: c = 1/k with k 0.0263 and an SD of 0.0075
/// between people (from Nuzzo JL et al., Sports Med 2024;54:303-321; derived [d]).
const SLOPE_SD: f64 = 10.0;
/// Least and greatest c drawn: the band of k over the published tables (SOURCES 1 [d]).
const SLOPE_RANGE: (f64, f64) = (20.0, 80.0);
/// SD of a day's ln strength (Grgic J et al., Sports Med Open 2020;6:31 [s]: CV median 4.2 %).
const DAY_SD: f64 = 0.042;
/// Error of a report at failure, in reps, and its growth per rep in reserve (derived [d] from Refalo 2024,
/// Zourdos 2021 and Hackett 2017, SOURCES 2).
const REPORT_SD: (f64, f64) = (1.0, 0.30);
/// Reps in reserve beyond which the error of a report grows no more: the studies end at about RPE 5, and nobody
/// with ten reps left says none. Chosen, no source.
const REPORT_UP_TO: f64 = 5.0;
/// Reps said too few by people in general (Halperin I et al., Sports Med 2022;52:377-390 [o]: 0.95, 0.17-1.73).
const BIAS_NEW: f64 = -0.95;
/// Reps said too few by the trained, close to failure (Refalo MC et al., JSCR 2024 [o]: -0.17 +- 1.00).
const BIAS_TRAINED: f64 = -0.17;
/// SD of that habit between people, in reps: the published interval read as four SDs [d].
const BIAS_SD: f64 = 0.4;
/// Reps lost per earlier set of the day, and its SD between people: chosen, no source.
const FATIGUE: (f64, f64) = (0.5, 0.2);
/// Gain of women new to lifting in 12 weeks, mean and SD (Mayhew JL et al., JSCR 2008;22:1570 [o]: 28 +- 21 %).
const GAIN_12_WEEKS: (f64, f64) = (0.28, 0.21);
/// Days over which most of a gain comes: chosen, no source (early gains come faster).
const GAIN_DAYS: f64 = 35.0;
/// A trained person's share of a newcomer's gain: chosen, no source.
const GAIN_TRAINED: f64 = 0.25;
/// The most that a newcomer gains in 12 weeks: two SDs above the mean.
const MOST_GAIN: f64 = 0.7;

/// How a client differs from others, as mean and SD between people, and how she answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Habits {
    /// Reps added to every report; below zero where she says too few.
    pub bias: (f64, f64),
    /// SD of a report at failure, in reps, and its growth per rep in reserve.
    pub report: (f64, f64),
    /// Reps lost per earlier set of the day.
    pub fatigue: (f64, f64),
    /// Gain after 12 weeks, as a share.
    pub gain: (f64, f64),
    /// SD of a day's ln strength.
    pub day: f64,
}

impl Habits {
    /// As published: new to lifting, or trained.
    #[must_use]
    pub fn published(trained: bool) -> Self {
        let share = if trained { GAIN_TRAINED } else { 1.0 };
        Self {
            bias: (if trained { BIAS_TRAINED } else { BIAS_NEW }, BIAS_SD),
            report: REPORT_SD,
            fatigue: FATIGUE,
            gain: (GAIN_12_WEEKS.0 * share, GAIN_12_WEEKS.1 * share),
            day: DAY_SD,
        }
    }

    /// Reports without a habit of too few or too many, and nobody grows stronger.
    #[must_use]
    pub fn honest_without_gain() -> Self {
        Self { bias: (0.0, 0.0), gain: (0.0, 0.0), ..Self::published(false) }
    }
}

/// True strength of a group.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Truth {
    /// ln of the ten-rep-max effective load on the first day.
    b: f64,
    /// Reps per unit of ln load.
    c: f64,
}

/// A set as she did it and said it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Reps done: what was asked, or fewer where she could do no more.
    pub reps: u16,
    /// Reps in reserve as said: 0 to 4, or 5 and more.
    pub reserve: Reserve,
    /// Reps in reserve in truth.
    pub truth: f64,
}

/// A client with known strength.
#[derive(Clone, Debug)]
pub struct Client {
    chance: Chance,
    groups: BTreeMap<GroupId, Truth>,
    habits: Habits,
    /// Reps added to every report; below zero where she says too few.
    bias: f64,
    /// Reps lost per earlier set of the day.
    phi: f64,
    /// Gain after 12 weeks as a share.
    gain: f64,
    /// Days since her first day.
    days: f64,
    /// Today's difference, in ln load.
    today: f64,
}

impl Client {
    /// Draws a client.
    #[must_use]
    pub fn draw(mut chance: Chance, habits: Habits) -> Self {
        let bias = chance.normal(habits.bias.0, habits.bias.1);
        let phi = chance.normal(habits.fatigue.0, habits.fatigue.1).max(0.0);
        let gain = chance
            .normal(habits.gain.0, habits.gain.1)
            .clamp(0.0, MOST_GAIN * habits.gain.0 / GAIN_12_WEEKS.0);
        Self { chance, groups: BTreeMap::new(), habits, bias, phi, gain, days: 0.0, today: 0.0 }
    }

    /// Begins a day, so many days after her first.
    pub fn day(&mut self, days: f64) {
        self.days = days;
        self.today = self.chance.normal(0.0, self.habits.day);
    }

    /// Draws her strength in a group, if it has not been drawn: her ten-rep-max effective load on the first
    /// day, and a slope around the group's mean.
    pub fn meet(&mut self, group: &GroupId, mean_slope: f64, ten_rep_max: Kg) {
        if !self.groups.contains_key(group) {
            let c = self.chance.normal(mean_slope, SLOPE_SD).clamp(SLOPE_RANGE.0, SLOPE_RANGE.1);
            self.groups.insert(group.clone(), Truth { b: libm::log(ten_rep_max.0), c });
        }
    }

    /// ln of how much stronger she is than on her first day.
    fn gained(&self) -> f64 {
        let grown = |days: f64| 1.0 - libm::exp(-days / GAIN_DAYS);
        libm::log(1.0 + self.gain * grown(self.days) / grown(84.0))
    }

    /// Reps to failure at an effective load, after `earlier` sets of the group today; `None` for a group
    /// that she has not met.
    #[must_use]
    pub fn reps_to_failure(&self, group: &GroupId, load: Kg, earlier: u32) -> Option<f64> {
        let truth = self.groups.get(group)?;
        let above = truth.b + self.gained() + self.today - libm::log(load.0);
        Some(10.0 + truth.c * above - self.phi * f64::from(earlier))
    }

    /// What an oracle knows of her in a group today: ln of the usual ten-rep-max effective load, reps per unit of ln
    /// load, reps lost per earlier set. The day's difference is not among it.
    #[must_use]
    pub fn known(&self, group: &GroupId) -> Option<(f64, f64, f64)> {
        let truth = self.groups.get(group)?;
        Some((truth.b + self.gained(), truth.c, self.phi))
    }

    /// Does a set of so many reps at a load.
    pub fn set(&mut self, group: &GroupId, load: Kg, asked: u16, earlier: u32) -> Option<Answer> {
        let can = self.reps_to_failure(group, load, earlier)?;
        Some(self.answer(can, asked))
    }

    /// Does a set without a meaningful load, of which she could do `fresh` reps on her first day.
    pub fn set_unloaded(&mut self, fresh: f64, asked: u16, earlier: u32) -> Answer {
        let can = fresh * (1.0 + self.gained() + self.today) - self.phi * f64::from(earlier);
        self.answer(can, asked)
    }

    fn answer(&mut self, can: f64, asked: u16) -> Answer {
        let whole = libm::floor(can.clamp(1.0, 200.0)) as u16;
        let reps = asked.min(whole);
        let truth = (can - f64::from(reps)).max(0.0);
        let (s0, s1) = self.habits.report;
        let felt = self.chance.normal(truth + self.bias, s0 + s1 * truth.min(REPORT_UP_TO));
        // She answers in whole reps, and the last tap means "5 or more".
        let said = libm::round(felt).clamp(0.0, 5.0) as u8;
        let reserve = if said >= 5 { Reserve::AtLeast(5) } else { Reserve::Exactly(said) };
        Answer { reps, reserve, truth }
    }

    /// Her chance, for what happens around the sets.
    pub fn chance(&mut self) -> &mut Chance {
        &mut self.chance
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strong(seed: u64, gain: f64) -> (Client, GroupId) {
        let habits = Habits { gain: (0.28 * gain, 0.21 * gain), ..Habits::published(true) };
        let mut client = Client::draw(Chance::of(seed, 0), habits);
        let group = GroupId::from("squat");
        client.meet(&group, 38.0, Kg(60.0));
        (client, group)
    }

    #[test]
    fn the_same_seed_gives_the_same_client_and_another_does_not() {
        let first = |seed| {
            let (mut client, group) = strong(seed, 1.0);
            client.day(3.0);
            client.set(&group, Kg(50.0), 10, 0).unwrap()
        };
        assert_eq!(first(7), first(7), "a seed repeats to the bit");
        assert_ne!(first(7).truth, first(8).truth, "another seed is another client");
    }

    #[test]
    fn a_ten_rep_max_is_ten_reps_on_a_usual_day() {
        let (client, group) = strong(3, 0.0);
        let reps = client.reps_to_failure(&group, Kg(60.0), 0).unwrap();
        assert!((reps - 10.0).abs() < 1e-12, "exp(b) is lifted ten times: {reps}");
        assert!(client.reps_to_failure(&group, Kg(60.0), 2).unwrap() <= reps, "earlier sets never add reps");
    }

    #[test]
    fn newcomers_gain_what_was_published() {
        // Mayhew 2008 [o]: 28 +- 21 % in 12 weeks; clamping at none lifts the mean by about a point.
        let n = 4000;
        let mean = (0..n)
            .map(|seed| {
                let mut client = Client::draw(Chance::of(seed, 1), Habits::published(false));
                client.day(84.0);
                libm::exp(client.gained()) - 1.0
            })
            .sum::<f64>()
            / n as f64;
        assert!((0.27..0.31).contains(&mean), "{mean}");
    }

    #[test]
    fn reports_are_whole_and_end_at_five() {
        let (mut client, group) = strong(5, 0.0);
        let mut seen = std::collections::BTreeSet::new();
        for _ in 0..400 {
            client.day(0.0);
            let answer = client.set(&group, Kg(58.0), 8, 0).unwrap();
            match answer.reserve {
                Reserve::Exactly(n) => assert!(n <= 4, "5 is said as 5 or more"),
                Reserve::AtLeast(n) => assert_eq!(n, 5),
            }
            seen.insert(format!("{:?}", answer.reserve));
            assert!(answer.reps <= 8 && answer.truth >= 0.0);
        }
        assert!(seen.len() >= 4, "reports spread: {seen:?}");
    }
}
