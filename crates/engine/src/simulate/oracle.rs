//! An oracle: knows ln of the ten-rep max, the slope and the fatigue of a client, and not how today differs.

use crate::strength::normal_cdf;
use crate::units::Kg;

/// What is known of a client in a group.
#[derive(Clone, Copy, Debug)]
pub(super) struct Known {
    /// ln of the ten-rep-max effective load, in kg, on a usual day.
    pub b: f64,
    /// Reps per unit of ln load.
    pub c: f64,
    /// Reps lost per earlier set.
    pub phi: f64,
    /// SD of a day's ln strength.
    pub day: f64,
}

impl Known {
    /// Reps in reserve on a usual day after `reps` at an effective load, `j` sets in.
    pub fn reserve(&self, load: Kg, reps: f64, j: f64) -> f64 {
        10.0 + self.c * (self.b - libm::log(load.0)) - self.phi * j - reps
    }

    /// Which of some effective loads, and how many reps of a range, bring the reserve nearest to a target over so many
    /// sets, on average over days; the fewer reps on a tie. `None` without a load.
    pub fn choose(
        &self,
        loads: &[Kg],
        (low, high): (u16, u16),
        sets: u8,
        earlier: u32,
        target: f64,
    ) -> Option<(Kg, u16)> {
        let sd = self.c * self.day;
        let mut best: Option<(f64, Kg, u16)> = None;
        for load in loads {
            for reps in low..=high {
                let distance: f64 = (0..u32::from(sets))
                    .map(|j| {
                        mean_distance(
                            self.reserve(*load, f64::from(reps), f64::from(earlier + j)) - target,
                            sd,
                        )
                    })
                    .sum();
                if best.is_none_or(|(d, ..)| distance < d) {
                    best = Some((distance, *load, reps));
                }
            }
        }
        best.map(|(_, load, reps)| (load, reps))
    }
}

/// E|X| of a normal distribution (the folded normal's mean: Leone FC et al., Technometrics 1961;3:543 [m]).
fn mean_distance(mean: f64, sd: f64) -> f64 {
    if sd <= 0.0 {
        return libm::fabs(mean);
    }
    let z = mean / sd;
    sd * libm::sqrt(2.0 / core::f64::consts::PI) * libm::exp(-0.5 * z * z)
        + mean * (1.0 - 2.0 * normal_cdf(-z))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mean_distance_is_that_of_a_folded_normal() {
        // E|N(0,1)| = sqrt(2/pi); far from zero it is the distance itself.
        assert!((mean_distance(0.0, 1.0) - 0.797_884_560_802_865_4).abs() < 1e-15);
        assert!((mean_distance(-9.0, 1.0) - 9.0).abs() < 1e-12);
        assert!((mean_distance(3.0, 0.0) - 3.0).abs() < 1e-15);
    }

    #[test]
    fn an_oracle_hits_the_target_on_a_usual_day() {
        let known = Known { b: libm::log(20.0), c: 38.0, phi: 0.5, day: 0.042 };
        let loads: Vec<Kg> = (0..40).map(|i| Kg(5.0 * libm::pow(1.08, f64::from(i)))).collect();
        let (load, reps) = known.choose(&loads, (8, 12), 3, 0, 3.0).unwrap();
        let middle = known.reserve(load, f64::from(reps), 1.0);
        assert!(
            (middle - 3.0).abs() <= 0.5,
            "reps go by one, so the middle set is within half a rep: {middle}"
        );
    }
}
