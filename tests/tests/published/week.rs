//! Published values of session load and weekly activity.

use super::rules;
use newel_engine::monitor::chance::{fisher_exact, jeffreys};
use newel_engine::monitor::load::{monotony, strain};
use newel_engine::monitor::week::guideline;
use newel_engine::stage::{BirthMode, Stage};

#[test]
fn load_monotony_and_strain() {
    // Foster C, MSSE 1998;30:1164-1168 [o]; Foster C et al., JSCR 2001;15:109-115 [o]; sample SD, SD 0 undefined. Check
    // value [d]: 0 300 0 240 0 360 0 gives 900, 0.784, 705.3.
    let week = [0.0, 300.0, 0.0, 240.0, 0.0, 360.0, 0.0];
    assert_eq!(week.iter().sum::<f64>(), 900.0);
    assert!((monotony(&week).unwrap() - 0.784).abs() < 5e-4);
    assert!((strain(&week).unwrap() - 705.3).abs() < 0.05);
    assert_eq!(monotony(&[200.0; 7]), None);
}

#[test]
fn weekly_activity_by_stage() {
    // Pregnancy: at least 150 minutes over at least 3 days (Mottola MF et al., Br J Sports Med 2018;52:1339-1346 [o]). After a
    // birth: at least 120 over at least 4 (Davenport MH et al., BJSM 2025;59:515-526 [s]). No source for the others.
    let rules = rules();
    let of = |stage: Stage| guideline(&rules, Some(&stage)).map(|g| (g.minutes, g.days));
    let day = super::day(2026, 1, 5);
    assert_eq!(of(Stage::pregnant(Some(day), None)), Some((150, 3)));
    assert_eq!(
        of(Stage::Postpartum { birth: day, mode: BirthMode::Unsaid, severe_tear: Some(false) }),
        Some((120, 4))
    );
    assert_eq!(of(Stage::AfterLoss { on: day }), None);
    assert_eq!(of(Stage::Neither), None);
    assert_eq!(guideline(&rules, None), None);
}

#[test]
fn intervals_and_the_exact_test() {
    // Brown LD, Cai TT, DasGupta A, Stat Sci 2001;16:101-133, table of 95 % Jeffreys limits [m]: of 7, none 0 to .292, one
    // .016 to .501.
    let near =
        |(low, high): (f64, f64), (l, h): (f64, f64)| (low - l).abs() < 6e-4 && (high - h).abs() < 6e-4;
    assert!(near(jeffreys(0, 7, 0.95), (0.0, 0.292)), "{:?}", jeffreys(0, 7, 0.95));
    assert!(near(jeffreys(1, 7, 0.95), (0.016, 0.501)), "{:?}", jeffreys(1, 7, 0.95));
    // Fisher RA, The Design of Experiments, 1935 [m]: the lady tasting tea, three of four right, two-sided 34/70 [d].
    assert!((fisher_exact(3, 1, 1, 3) - 34.0 / 70.0).abs() < 1e-15);
}
