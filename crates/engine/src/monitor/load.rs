//! Session load, weekly sum, monotony and strain (Foster C, MSSE 1998;30:1164-1168 [o]; Foster C et al., JSCR
//! 2001;15:109-115 [o]). A ratio of a recent to a longer span is not worked out: it says nothing of risk (Impellizzeri
//! FM et al., Sports Med 2021;51:581-592 [o]).

use crate::history::Run;

/// Most of the CR10 scale of session effort.
const MOST_EFFORT: u8 = 10;
/// Minutes of a day: no session is longer, so a greater number is a slip of writing.
const MINUTES_OF_A_DAY: u16 = 1440;

/// How long a session took, in minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Minutes {
    /// As she said.
    Said(u32),
    /// From its first record to its last, capped.
    Estimated(u32),
    /// Neither was said nor can it be told from the records.
    Unknown,
}

impl Minutes {
    /// Minutes of a run; where none were said, from its first to its last record, at most `cap`.
    #[must_use]
    pub fn of(run: &Run, cap: f64) -> Self {
        let said = run.ended.as_ref().and_then(|e| e.minutes);
        if let Some(minutes) = said.filter(|m| (1..=MINUTES_OF_A_DAY).contains(m)) {
            return Self::Said(u32::from(minutes));
        }
        let sets = run.sets.iter().map(|e| e.at);
        let marks = run.marks.iter().map(|m| m.at);
        let last = sets.chain(marks).chain(run.ended.as_ref().map(|e| e.at)).max();
        let seconds = last.map_or(0, |at| (at - run.started).num_seconds());
        if seconds <= 0 {
            return Self::Unknown;
        }
        // To the nearest minute. A cap is some hours, so the cast is exact; it would saturate anyway.
        let minutes = u32::try_from((seconds + 30) / 60).unwrap_or(u32::MAX).max(1);
        Self::Estimated(minutes.min(cap as u32))
    }

    /// The number, however it came about.
    #[must_use]
    pub fn count(self) -> Option<u32> {
        match self {
            Self::Said(n) | Self::Estimated(n) => Some(n),
            Self::Unknown => None,
        }
    }
}

/// Session load: session effort (CR10) times minutes. `None` where either is not known.
#[must_use]
pub fn session_load(run: &Run, minutes: Minutes) -> Option<f64> {
    let effort = run.ended.as_ref()?.effort.filter(|e| *e <= MOST_EFFORT)?;
    Some(f64::from(effort) * f64::from(minutes.count()?))
}

/// Mean and sample SD (n - 1) of daily loads; `None` of fewer than two days.
#[must_use]
pub fn mean_and_sd(daily: &[f64]) -> Option<(f64, f64)> {
    let count = u32::try_from(daily.len()).ok().filter(|n| *n >= 2)?;
    let n = f64::from(count);
    let mean = daily.iter().sum::<f64>() / n;
    let squares: f64 = daily.iter().map(|x| (x - mean) * (x - mean)).sum();
    Some((mean, libm::sqrt(squares / (n - 1.0))))
}

/// Monotony: mean daily load over its SD, rest days counting 0. Undefined, and not without bound,
/// where every day is alike or there are fewer than two.
#[must_use]
pub fn monotony(daily: &[f64]) -> Option<f64> {
    let first = *daily.first()?;
    // Alike is asked of the days themselves: the SD of equal numbers may come out as a speck of rounding.
    if daily.iter().all(|x| (x - first).abs() <= 0.0) {
        return None;
    }
    let (mean, sd) = mean_and_sd(daily)?;
    (sd > 0.0).then(|| mean / sd)
}

/// Strain: weekly load times monotony.
#[must_use]
pub fn strain(daily: &[f64]) -> Option<f64> {
    monotony(daily).map(|m| daily.iter().sum::<f64>() * m)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_check_value_of_monotony_and_strain() {
        // Formulas: Foster C 1998 and 2001 [o]. By arithmetic [d]: 0 300 0 240 0 360 0 sum to 900; monotony 0.784, strain
        // 705.3 with the sample SD.
        let week = [0.0, 300.0, 0.0, 240.0, 0.0, 360.0, 0.0];
        assert_eq!(week.iter().sum::<f64>(), 900.0);
        assert!((monotony(&week).unwrap() - 0.784).abs() < 5e-4);
        assert!((strain(&week).unwrap() - 705.3).abs() < 0.05);
    }

    #[test]
    fn days_that_are_all_alike_have_no_monotony() {
        for alike in [&[0.0; 7][..], &[120.0; 7], &[0.1; 7], &[50.0], &[]] {
            assert_eq!(monotony(alike), None, "{alike:?}");
            assert_eq!(strain(alike), None, "{alike:?}");
        }
        assert!(monotony(&[100.0, 101.0]).is_some(), "two days that differ have one");
    }

    proptest! {
        #[test]
        fn monotony_has_no_unit(week in proptest::collection::vec(0.0f64..2000.0, 7), unit in 0.1f64..10.0) {
            let scaled: Vec<f64> = week.iter().map(|x| x * unit).collect();
            match (monotony(&week), monotony(&scaled)) {
                (Some(a), Some(b)) => {
                    prop_assert!(a.is_finite() && a >= 0.0);
                    prop_assert!((a - b).abs() < 1e-9 * a.max(1.0));
                    let (here, there) = (strain(&week).unwrap(), strain(&scaled).unwrap());
                    prop_assert!((there - here * unit).abs() < 1e-9 * there.max(1.0), "strain has the load's unit");
                }
                (None, None) => {}
                (a, b) => prop_assert!(false, "{a:?} {b:?}"),
            }
        }
    }
}
