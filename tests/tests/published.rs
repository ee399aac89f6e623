//! Published values beside each formula that the engine uses. Marks as in the list of sources: [o] read in
//! the original, [s] read second-hand, [m] from memory, [d] derived by arithmetic.

use chrono::{Days, NaiveDate};
use newel_engine::catalogue::Catalogue;
use newel_engine::kit::{Band, Load};
use newel_engine::rules::RulePack;
use newel_engine::stage::{Age, due_date, gestational_age, trimester};
use newel_engine::strength::{Constants, Reach, Tracker, effective_load};
use newel_engine::units::{KG_PER_LB, Kg, Newtons, STANDARD_GRAVITY, Weight};

fn day(y: i32, m: u32, d: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(y, m, d).unwrap()
}

fn constants() -> Constants {
    Constants::of(&RulePack::built_in().unwrap())
}

/// Somebody whose one-rep max is 100 kg and whose slope is `c` reps per unit of ln load.
fn of_slope(c: f64) -> Tracker {
    let k = constants();
    let mut t = Tracker::start(&k, c, Kg(100.0), 8.0, 3.0, day(2026, 1, 5));
    t.mean[0] = 100f64.ln() - 9.0 / c;
    t
}

fn reps_at(c: f64, share: f64) -> f64 {
    of_slope(c).reps_to_failure(&constants(), Kg(100.0 * share), 0.0)
}

/// The prior of c as the engine holds it: mean of a general group, and SD.
fn prior() -> (f64, f64) {
    let catalogue = Catalogue::built_in().unwrap();
    (catalogue.group(&"hinge".into()).unwrap().prior_c, constants().c_sd)
}

// -- reps and the one-rep max -------------------------------------------------------------------

#[test]
fn mean_reps_at_a_share_of_the_maximum() {
    // Nuzzo JL et al., Sports Med 2024;54:303-321, doi 10.1007/s40279-023-01937-7 [s]: all exercises but bench
    // and leg press. The fit is within about 5 % of k, that is 6 % of the reps.
    let (c, _) = prior();
    for (share, reps) in [(0.9, 4.94), (0.8, 9.75), (0.7, 14.80), (0.6, 19.53)] {
        let ours = reps_at(c, share);
        assert!((ours - reps).abs() < 0.06 * reps, "{share}: {ours} for {reps}");
    }
}

#[test]
fn reps_of_bench_like_and_leg_press_like_movements() {
    // The same work [s]: bench press 8.8 reps at 80 %, 14.1 at 70 %; leg press 8.7 at 90 %, 13.1 at 80 %, 19.0 at
    // 70 %. The fit through zero misses the leg press at 90 % by two reps; elsewhere it is within a tenth.
    let catalogue = Catalogue::built_in().unwrap();
    let c = |group: &str| catalogue.group(&group.into()).unwrap().prior_c;
    for (group, share, reps, within) in [
        ("push-up", 0.8, 8.8, 0.1),
        ("push-up", 0.7, 14.1, 0.1),
        ("squat", 0.9, 8.7, 0.25),
        ("squat", 0.8, 13.1, 0.1),
        ("squat", 0.7, 19.0, 0.1),
    ] {
        let ours = reps_at(c(group), share);
        assert!((ours - reps).abs() < within * reps, "{group} at {share}: {ours} for {reps}");
    }
}

#[test]
fn the_spread_between_people() {
    // The same table [s]: SD between people 2.51, 3.31, 4.37 reps at 80, 70, 60 %. Ours is the prior SD of c times
    // the distance in ln load; one SD serves all shares, so it lies within a fifth of each.
    let (_, sd) = prior();
    for (share, published) in [(0.8f64, 2.51), (0.7, 3.31), (0.6, 4.37)] {
        let ours = sd * -share.ln();
        assert!((ours - published).abs() < 0.2 * published, "{share}: {ours} for {published}");
    }
}

/// True if a table's reps at a share lie in the 95 % band of the prior.
fn in_band(share: f64, reps: f64) -> bool {
    let (c, sd) = prior();
    let (low, high) = (c - 1.96 * sd, c + 1.96 * sd);
    // A single is the maximum, whatever the slope.
    let (least, most) = (reps_at(low, share), reps_at(high, share));
    (least - 1e-9..=most + 1e-9).contains(&reps)
}

#[test]
fn the_textbook_table_lies_in_the_band_of_the_prior() {
    // Haff & Triplett, Essentials of Strength Training and Conditioning, 4th ed., ch. 17 [s to 10, m above].
    let table = [
        (1.0, 100.0),
        (2.0, 95.0),
        (3.0, 93.0),
        (4.0, 90.0),
        (5.0, 87.0),
        (6.0, 85.0),
        (7.0, 83.0),
        (8.0, 80.0),
        (9.0, 77.0),
        (10.0, 75.0),
        (11.0, 70.0),
        (12.0, 67.0),
        (15.0, 65.0),
    ];
    for (reps, percent) in table {
        assert!(in_band(percent / 100.0, reps), "{reps} reps at {percent} %");
    }
    assert!(!in_band(0.75, 30.0) && !in_band(0.75, 3.0), "the band does shut something out");
}

#[test]
fn steeper_tables_lie_in_the_band_too() {
    // Reynolds JM, Gordon TJ, Robergs RA, JSCR 2006;20:584-592 [s]: 5, 10, 20RM.
    for (reps, share) in
        [(5.0, 0.875), (10.0, 0.757), (20.0, 0.616), (5.0, 0.859), (10.0, 0.701), (20.0, 0.516)]
    {
        assert!(in_band(share, reps), "{reps} reps at {share}");
    }
}

// -- effort -------------------------------------------------------------------------------------

#[test]
fn reps_and_reserve_add() {
    // RPE 10 = 0 in reserve, 9 = 1, 8 = 2: Zourdos MC et al., J Strength Cond Res 2016;30:267-275 [o]. In the chart of
    // Helms ER et al., Strength Cond J 2016;38(4):42-49 [s] a cell depends on reps + reserve alone: 5 at RPE 8 is 7 at
    // RPE 10, 81 %.
    let exact = |reps: f64, rpe: f64| Reach::Exactly { reps, reserve: 10.0 - rpe };
    assert_eq!(exact(5.0, 8.0).total(), exact(7.0, 10.0).total());
    let k = constants();
    let t = of_slope(prior().0);
    let (five, _) = t.reserve(&k, Kg(81.0), 5.0, 0.0);
    let (seven, _) = t.reserve(&k, Kg(81.0), 7.0, 0.0);
    assert!((five - seven - 2.0).abs() < 1e-12, "two reps more are two in reserve less");
    // Its RPE 10 row, reps 1 to 10.
    let row = [100.0, 95.0, 91.0, 87.0, 85.0, 83.0, 81.0, 79.0, 76.0, 73.0];
    for (reps, percent) in (1u8..).zip(row) {
        assert!(in_band(percent / 100.0, f64::from(reps)), "{reps} at {percent} %");
    }
}

#[test]
fn the_noise_of_reports_is_of_the_published_size() {
    // Refalo MC et al., JSCR 2024 [o]: +- 1.00 at 1 to 3 in reserve. Zourdos MC et al., JSCR 2021 [o]: +- 1.73, 2.46, 2.92
    // at RPE 9, 7, 5 in sets of 16, which are long ones: ours lies between the two.
    let k = constants();
    let ours = |reserve: f64| k.s0 + k.s1 * reserve;
    for (reserve, most) in [(1.0, 1.73), (3.0, 2.46), (5.0, 2.92)] {
        assert!(ours(reserve) >= 1.0 && ours(reserve) <= most, "{reserve} in reserve: {}", ours(reserve));
    }
    // Grgic J et al., Sports Med Open 2020;6:31 [s]: CV of the daily maximum 4.2 %.
    assert_eq!(k.sigma_d, 0.042);
}

// -- dates --------------------------------------------------------------------------------------

#[test]
fn due_dates_are_280_days_on() {
    // ACOG Committee Opinion 700, Obstet Gynecol 2017;129:e150 [s]; checks by the calendar [d].
    for (period, due) in [
        (day(2026, 1, 1), day(2026, 10, 8)),
        (day(2022, 5, 7), day(2023, 2, 11)),
        (day(2027, 5, 25), day(2028, 2, 29)),
    ] {
        assert_eq!(due_date(None, Some(period)), Some(due));
        assert_eq!(gestational_age(due, period), Age { weeks: 0, days: 0 });
        assert_eq!(gestational_age(due, due), Age { weeks: 40, days: 0 });
    }
    let due = day(2026, 10, 8);
    assert_eq!(gestational_age(due, day(2026, 4, 9)), Age { weeks: 14, days: 0 });
    assert_eq!(gestational_age(due, day(2026, 7, 16)), Age { weeks: 28, days: 0 });
    // A transfer of a day-5 embryo + 261, day-3 + 263 [s] is a due date that the clinic gives; it stands as given.
    let transfer = day(2026, 3, 10);
    assert_eq!(transfer + Days::new(261), day(2026, 11, 26));
    assert_eq!(transfer + Days::new(263), day(2026, 11, 28));
    assert_eq!(due_date(Some(day(2026, 11, 26)), Some(day(2026, 1, 1))), Some(day(2026, 11, 26)));
}

#[test]
fn trimesters() {
    // To 13w6d [o]; 14w0d to 27w6d; from 28w0d [m].
    for (weeks, days, expected) in [(0, 0, 1), (13, 6, 1), (14, 0, 2), (27, 6, 2), (28, 0, 3), (41, 3, 3)] {
        assert_eq!(trimester(Age { weeks, days }), expected, "{weeks}w{days}d");
    }
}

// -- effective load -----------------------------------------------------------------------------

#[test]
fn body_mass_shares_stand_in_the_catalogue_as_published() {
    // Push-up, women, static, lower position: standard .703, kneeling .566 (Mier CM et al., Int J Exerc Sci
    // 2014;7:161-168 [o]).
    let catalogue = Catalogue::built_in().unwrap();
    let share =
        |variant: &str| catalogue.place(&variant.into()).unwrap().variant.share.as_ref().map(|s| s.share);
    assert_eq!(share("push-up-floor"), Some(0.703));
    assert_eq!(share("push-up-kneeling"), Some(0.566));
    // Segment masses, women, % of body mass per limb (de Leva P, J Biomech 1996;29:1223 [o]): shank 4.81, foot 1.29,
    // forearm 1.38, hand .56. What moves in a squat is all but shanks and feet, in a pull-up all but forearms and
    // hands [d].
    let squat: f64 = 1.0 - 2.0 * (4.81 + 1.29) / 100.0;
    let pull_up: f64 = 1.0 - 2.0 * (1.38 + 0.56) / 100.0;
    assert!((squat - 0.878).abs() < 1e-9);
    for variant in ["squat-chair", "squat-free", "squat-goblet", "squat-two-dumbbells"] {
        assert!((share(variant).unwrap() - squat).abs() < 5e-4, "{variant}");
    }
    for variant in ["vertical-pull-full", "vertical-pull-band-assisted"] {
        assert!((share(variant).unwrap() - pull_up).abs() < 5e-4, "{variant}");
    }
    // No published share for lunge, bridge or step-up: body mass stays out.
    for variant in ["split-squat-loaded", "bridge-loaded", "step-up-loaded"] {
        assert_eq!(share(variant), None, "{variant}");
    }
    let goblet = catalogue.place(&"squat-goblet".into()).unwrap().variant;
    let load = Load::One { weight: Weight::in_kg(8.0) };
    let effective = effective_load(goblet, &load, Kg(60.0)).unwrap();
    assert!((effective.0 - (8.0 + 0.878 * 60.0)).abs() < 1e-9);
}

#[test]
fn bands_give_back_their_makers_table() {
    // One maker's table, lb at 100 % and 200 % stretch [s]; the line between, down to 50 % (Patterson RM et al., Phys Ther
    // 2001;81:1437 [o]: steeper below 50 %, then straight). Two bands side by side give the sum.
    let table = [(3.0, 4.3), (3.7, 5.5), (4.6, 6.7), (5.8, 8.6), (7.3, 10.2), (10.2, 15.3), (14.2, 21.3)];
    let mut sum = 0.0;
    let mut bands = Vec::new();
    for (at_100, at_200) in table {
        let band =
            Band { name: "band".into(), at_100: Newtons::from_lb(at_100), at_200: Newtons::from_lb(at_200) };
        assert!((band.force(1.0).as_kg().0 - at_100 * KG_PER_LB).abs() < 1e-12);
        assert!((band.force(2.0).as_kg().0 - at_200 * KG_PER_LB).abs() < 1e-12);
        let below = (band.force(0.5).0 - band.force(0.25).0) / 0.25;
        let above = (band.force(2.0).0 - band.force(1.0).0) / 1.0;
        assert!(below > above, "steeper below half");
        sum += at_100 * KG_PER_LB;
        bands.push(band);
    }
    assert!((Load::Bands { bands }.external(1.0).0 - sum).abs() < 1e-9);
}

// -- units --------------------------------------------------------------------------------------

#[test]
fn units_follow_the_standard() {
    // NIST SP 811 [s]: 1 lb = 0.45359237 kg exactly; standard gravity 9.80665 m/s2 [m].
    assert_eq!(Weight::lb(1.0).kg(), Kg(0.453_592_37));
    assert_eq!(STANDARD_GRAVITY, 9.806_65);
    // NIST SP 811, appendix B.8: 1 lbf = 4.448 222 N [m].
    assert!((Newtons::from_lb(1.0).0 - 4.448_222).abs() < 5e-7);
}
