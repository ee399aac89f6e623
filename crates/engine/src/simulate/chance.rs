//! Chance from a seed that is passed in: ChaCha with 8 rounds, whose stream is fixed for ever by its definition, so
//! the same seed gives the same people on every platform and in every version of the library. Logarithm, root and
//! cosine come from `libm`.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng as _, SeedableRng as _};

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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stream_is_the_published_one() {
        // ChaCha8 with an all-zero key and nonce: the first words of the key stream (estreambench test vector,
        // as in the library's own tests [m]): 3e00ef2f 895f40d6.
        let mut chance = Chance::of(0, 0);
        let first = chance.bytes();
        assert_eq!(first[..8], [0x3e, 0x00, 0xef, 0x2f, 0x89, 0x5f, 0x40, 0xd6]);
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
}
