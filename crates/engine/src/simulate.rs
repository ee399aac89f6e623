//! Synthetic clients: people with a known strength who answer as people do. For the demonstration and
//! for tests; nobody real is in here.
//!
//! A true client has the same shape as the state that is tracked (DESIGN 5.2): per group a ten-rep max
//! exp(b) and a slope c, for herself a fatigue phi, a day effect and a habit of reporting. Her numbers
//! are drawn from published spreads where there are any; each constant says where it comes from.
//!
//! The numbers are drawn by ChaCha with 8 rounds, whose stream is fixed for ever by its definition, from
//! a seed that is passed in: the same seed gives the same client on every platform and in every version
//! of the library. Logarithm, root and cosine come from `libm`.

use crate::ids::GroupId;
use crate::record::Reserve;
use crate::units::Kg;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng as _, SeedableRng as _};
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

/// Chance from a seed.
#[derive(Clone, Debug)]
pub struct Chance(ChaCha8Rng);

impl Chance {
    /// The stream `number` of a seed; streams of one seed have nothing in common.
    #[must_use]
    pub fn of(seed: u64, number: u64) -> Self {
        let mut key = [0_u8; 32];
        key[..8].copy_from_slice(&seed.to_le_bytes());
        key[8..16].copy_from_slice(&number.to_le_bytes());
        Self(ChaCha8Rng::from_seed(key))
    }

    /// From 0 up to, not including, 1.
    pub fn unit(&mut self) -> f64 {
        // 53 bits: every double of this spacing is equally likely.
        (self.0.next_u64() >> 11) as f64 / 9_007_199_254_740_992.0
    }

    /// True with a probability.
    pub fn happens(&mut self, probability: f64) -> bool {
        self.unit() < probability
    }

    /// A whole number from `low` to `high`, both included.
    pub fn between(&mut self, low: i64, high: i64) -> i64 {
        let span = (high - low).max(0) as f64 + 1.0;
        low + libm::floor(self.unit() * span) as i64
    }

    /// From a normal distribution (Box and Muller 1958 [m]).
    pub fn normal(&mut self, mean: f64, sd: f64) -> f64 {
        // 1 - u is above zero, so that its logarithm exists.
        let radius = libm::sqrt(-2.0 * libm::log(1.0 - self.unit()));
        mean + sd * radius * libm::cos(core::f64::consts::TAU * self.unit())
    }

    /// Ten bytes, for an id.
    pub fn bytes(&mut self) -> [u8; 10] {
        let mut bytes = [0; 10];
        self.0.fill_bytes(&mut bytes);
        bytes
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
    /// Draws a client. `gain` scales the gain of a newcomer (0 for none).
    #[must_use]
    pub fn draw(mut chance: Chance, trained: bool, gain: f64) -> Self {
        let bias = chance.normal(if trained { BIAS_TRAINED } else { BIAS_NEW }, BIAS_SD);
        let phi = chance.normal(FATIGUE.0, FATIGUE.1).max(0.0);
        let drawn = chance.normal(GAIN_12_WEEKS.0, GAIN_12_WEEKS.1).clamp(0.0, 0.7);
        let share = if trained { GAIN_TRAINED } else { 1.0 };
        Self { chance, groups: BTreeMap::new(), bias, phi, gain: drawn * share * gain, days: 0.0, today: 0.0 }
    }

    /// Begins a day, so many days after her first.
    pub fn day(&mut self, days: f64) {
        self.days = days;
        self.today = self.chance.normal(0.0, DAY_SD);
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
        let felt = self.chance.normal(truth + self.bias, REPORT_SD.0 + REPORT_SD.1 * truth.min(REPORT_UP_TO));
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
        let mut client = Client::draw(Chance::of(seed, 0), true, gain);
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
    fn the_stream_is_the_published_one() {
        // ChaCha8 with an all-zero key and nonce: the first words of the key stream (estreambench test vector,
        // as in the library's own tests [m]): 3e00ef2f 895f40d6.
        let mut chance = Chance::of(0, 0);
        let first = chance.bytes();
        assert_eq!(first[..8], [0x3e, 0x00, 0xef, 0x2f, 0x89, 0x5f, 0x40, 0xd6]);
    }

    #[test]
    fn a_ten_rep_max_is_ten_reps_on_a_usual_day() {
        let (client, group) = strong(3, 0.0);
        let reps = client.reps_to_failure(&group, Kg(60.0), 0).unwrap();
        assert!((reps - 10.0).abs() < 1e-12, "exp(b) is lifted ten times: {reps}");
        assert!(client.reps_to_failure(&group, Kg(60.0), 2).unwrap() <= reps, "earlier sets never add reps");
    }

    #[test]
    fn draws_have_the_mean_and_spread_they_claim() {
        let mut chance = Chance::of(11, 5);
        let n = 20_000;
        let draws: Vec<f64> = (0..n).map(|_| chance.normal(2.0, 3.0)).collect();
        let mean = draws.iter().sum::<f64>() / f64::from(n);
        let var = draws.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / f64::from(n - 1);
        // Five standard errors: 3/sqrt(n) for the mean, 3/sqrt(2n) for the SD.
        assert!((mean - 2.0).abs() < 0.107, "{mean}");
        assert!((libm::sqrt(var) - 3.0).abs() < 0.075, "{}", libm::sqrt(var));
    }

    #[test]
    fn newcomers_gain_what_was_published() {
        // Mayhew 2008 [o]: 28 +- 21 % in 12 weeks; clamping at none lifts the mean by about a point.
        let n = 4000;
        let mean = (0..n)
            .map(|seed| {
                let mut client = Client::draw(Chance::of(seed, 1), false, 1.0);
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
