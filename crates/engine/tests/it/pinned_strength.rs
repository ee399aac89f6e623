//! What sets tell of strength and of where she is, worked out by hand.

use crate::loads::{hinge, kg_next};
use crate::pinned_levels::{chooses, start};
use crate::story::*;
use chrono::NaiveDate;
use newel_engine::kit::Load;
use newel_engine::programme::{BlockForm, Slot};
use newel_engine::proposal::Target;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, Purpose, Reserve, Side, SkipWhy};
use newel_engine::state::VariantUse;
use newel_engine::strength::{Constants, Reach, Tracker, effective_load};
use newel_engine::units::Kg;

// -- the filter ---------------------------------------------------------------------------------

fn constants() -> Constants {
    Constants::of(&Story::new().rules)
}

fn day(n: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 5).unwrap() + chrono::Days::new(n)
}

/// Begun with 20 kg for 8 reps with 3 in reserve: 13 reps to failure, 38 reps for each unit of ln load.
fn begun() -> Tracker {
    Tracker::start(&constants(), 38.0, Kg(20.0), 8.0, 3.0, day(0))
}

fn near(a: f64, b: f64) {
    assert!((a - b).abs() < 1e-9, "{a} for {b}");
}

#[test]
fn the_slope_grows_less_sure_by_a_seventh_a_day() {
    // SD 10 at the start, and a variance of one rep squared more each week.
    let k = constants();
    let week = begun().on(&k, day(7));
    near(week.cov[(1, 1)], 101.0);
    near(week.on(&k, day(14)).cov[(1, 1)], 102.0);
}

#[test]
fn how_sure_a_prediction_is_counts_how_far_off_its_load_is_on_the_day() {
    // c^2 (var b + var d) + (b + d - ln W)^2 var c, with nothing correlated.
    let k = constants();
    let mut t = begun();
    t.mean[2] = 0.1;
    let off = 3.0 / 38.0 + 0.1;
    let (_, variance) = t.reserve(&k, Kg(20.0), 8.0, 0.0);
    near(variance, 38.0 * 38.0 * (0.3 * 0.3 + 0.042 * 0.042) + off * off * 100.0);
}

#[test]
fn a_prediction_without_doubt_is_under_the_floor_or_is_not() {
    // ln W is b, so that ten reps go to failure.
    let k = constants();
    let mut t = begun();
    t.mean[0] = libm::log(20.0);
    t.cov.fill(0.0);
    let chance = |reps| t.chance_below(&k, Kg(20.0), reps, 0.0, 1.0);
    assert_eq!(chance(8.0), 0.0, "two are left");
    assert_eq!(chance(9.0), 0.0, "just the floor is left");
    assert_eq!(chance(10.0), 1.0, "none is left");
}

#[test]
fn a_bound_one_deviation_above_what_was_expected_moves_the_state_by_the_truncated_normal() {
    // The standard normal beyond 1: density over tail 1.525135276, variance less by that times 0.525135276.
    const RATIO: f64 = 1.525_135_276_160_981;
    let k = constants();
    let mut t = begun();
    let off = 3.0 / 38.0;
    let s: f64 = 38.0 * 38.0 * (0.09 + 0.042 * 0.042) + off * off * 100.0 + 1.9 * 1.9;
    let (sd, gain_b, gain_d) = (libm::sqrt(s), 0.09 * 38.0 / s, 0.042 * 0.042 * 38.0 / s);
    let b = t.mean[0];
    t.observe(&k, Kg(20.0), Reach::AtLeast { reps: 10.0 + sd, reserve: 3.0 }, 0.0);
    near(t.mean[0], b + gain_b * sd * RATIO);
    near(t.mean[2], gain_d * sd * RATIO);
    near(t.cov[(0, 0)], 0.09 - gain_b * gain_b * s * RATIO * (RATIO - 1.0));
    near(t.cov[(0, 2)], -gain_b * gain_d * s * RATIO * (RATIO - 1.0));
}

#[test]
fn what_the_slope_may_not_give_up_is_handed_to_strength_and_day() {
    // The least slope is 17, and a light load promised far more reps: c would fall, and b and d are told.
    let k = constants();
    let mut t = Tracker::start(&k, 17.0, Kg(20.0), 8.0, 3.0, day(0));
    let (b, off) = (t.mean[0], 3.0 / 17.0 + libm::log(4.0));
    let s = 17.0 * 17.0 * (0.09 + 0.042 * 0.042) + off * off * 100.0 + 1.0;
    let gain = [0.09 * 17.0 / s, off * 100.0 / s, 0.042 * 0.042 * 17.0 / s];
    let short = 20.0 - (10.0 + 17.0 * off);
    assert!(short < 0.0, "fewer than expected");
    t.observe(&k, Kg(5.0), Reach::Exactly { reps: 20.0, reserve: 0.0 }, 0.0);
    // The slope that would have been, and its covariances after the set.
    let back = -gain[1] * short;
    let variance = 100.0 - gain[1] * gain[1] * s;
    near(t.mean[1], 17.0);
    near(t.mean[0], b + gain[0] * short - gain[0] * gain[1] * s / variance * back);
    near(t.mean[2], gain[2] * short - gain[2] * gain[1] * s / variance * back);
}

#[test]
fn a_slope_without_doubt_is_put_into_its_bounds_and_tells_strength_and_day_nothing() {
    let k = constants();
    let mut t = begun();
    t.mean[1] = 10.0;
    t.cov.fill(0.0);
    let b = t.mean[0];
    t.observe(&k, Kg(20.0), Reach::Exactly { reps: 8.0, reserve: 3.0 }, 0.0);
    assert_eq!((t.mean[0], t.mean[1], t.mean[2]), (b, 17.0, 0.0));
}

#[test]
fn the_band_of_a_rep_max_knows_that_strength_and_slope_move_together() {
    // ln of the one-rep max is b + 9 / c; by the slopes 1 and -9 / c^2.
    let mut t = begun();
    t.mean[0] = libm::log(20.0);
    t.mean[1] = 30.0;
    t.cov[(0, 0)] = 0.01;
    t.cov[(1, 1)] = 25.0;
    t.cov[(0, 1)] = 0.3;
    t.cov[(1, 0)] = 0.3;
    let sd = libm::sqrt(0.01 - 2.0 * 0.01 * 0.3 + 0.01 * 0.01 * 25.0);
    let (estimate, low, high) = t.one_rep_max();
    near(estimate.0, 20.0 * libm::exp(0.3));
    near(low.0, estimate.0 * libm::exp(-1.281_551_565_544_600_4 * sd));
    near(high.0, estimate.0 * libm::exp(1.281_551_565_544_600_4 * sd));
}

#[test]
fn nothing_held_and_no_known_share_of_body_mass_is_no_load() {
    let s = Story::new();
    let of = |variant: &str| {
        let place = s.catalogue.place(&variant.into()).unwrap();
        effective_load(place.variant, &Load::Nothing, Kg(70.0)).map(|w| w.0)
    };
    assert_eq!(of("hinge-wall-tap"), None);
    near(of("squat-chair").unwrap(), 0.878 * 70.0);
}

// -- evidence -----------------------------------------------------------------------------------

#[test]
fn of_two_sides_the_one_with_fewer_reps_to_failure_tells() {
    type Told = (u16, Option<Reserve>);
    let b = |one_side: Told, other: Told| {
        let mut s = Story::new();
        s.owns(dumbbells(&[6.0])).programme(vec![slot("row", 8, 12, 3)], 1).starts_at(
            "row",
            1,
            Some(one(6.0)),
        );
        s.trains().does_side("row", Side::Left, one_side.0, one_side.1);
        s.does_side("row", Side::Right, other.0, other.1).ends();
        s.with_bench(|b| b.state.trackers[&"row-one-arm".into()].mean[0])
    };
    let (sixteen, exact, bound) = ((12, left(4)), (9, left(4)), (8, plenty()));
    assert_ne!(b(exact, exact), b(bound, bound));
    assert_eq!(b(sixteen, bound), b(bound, bound), "thirteen or more, though it is a bound");
    // Thirteen, and thirteen or more: the one that is known for sure, whichever side it was.
    assert_eq!(b(exact, bound), b(exact, exact));
    assert_eq!(b(bound, exact), b(exact, exact));
}

#[test]
fn sixty_reps_and_ten_in_reserve_still_tell_and_more_tells_nothing() {
    let b = |reps, reserve| {
        let mut s = hinge(&[6.0, 8.0], 8.0);
        s.session_of("hinge", 10, left(3)).trains();
        if let Some(reserve) = reserve {
            s.does_with("hinge", one(8.0), reps, left(reserve));
        }
        s.with_bench(|b| b.state.trackers[&"hinge".into()].mean[0])
    };
    let before = b(0, None);
    assert!(b(60, Some(3)) > before && b(12, Some(10)) > before);
    assert_eq!((b(61, Some(3)), b(12, Some(11))), (before, before));
}

#[test]
fn a_finisher_speaks_for_a_ladder_on_which_nothing_else_was_done() {
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3)], 2);
    s.programme.sessions[0].blocks[0].form = BlockForm::Finisher;
    s.session_of("bridge", 12, left(4)).session_of("bridge", 12, left(4));
    assert_eq!(s.next("bridge").level, 1);
    // Where work was done on it, the work speaks.
    let mut s = Story::new();
    let last = Slot { id: "bridge-last".into(), ..slot("bridge", 8, 12, 3) };
    s.programme(vec![slot("bridge", 8, 12, 3), last], 2);
    s.programme.sessions[0].blocks[1].form = BlockForm::Finisher;
    s.trains().does_all("bridge", 9, left(3)).does_all("bridge-last", 12, left(4)).ends().settled().days(2);
    assert_eq!(s.next("bridge").target, Target::Reps(10), "nine, and one more");
}

#[test]
fn a_load_that_no_home_can_hold_is_a_slip_of_writing() {
    let mut s = hinge(&[8.0, 10.0], 8.0);
    s.session_of("hinge", 10, left(3));
    let exposures = |s: &Story| s.with_bench(|b| b.state.ladders[&"hinge".into()].exposures.len());
    assert_eq!(exposures(&s), 1);
    s.trains().does_with("hinge", one(8000.0), 10, left(3)).does_with("hinge", one(8000.0), 10, left(3));
    s.ends().settled().days(2);
    assert_eq!((exposures(&s), kg_next(&s)), (1, 8.0));
}

#[test]
fn of_two_slots_of_a_ladder_the_later_one_says_how_far_she_is() {
    let again = Slot { id: "bridge-again".into(), ..slot("bridge", 8, 12, 3) };
    let mut s = Story::new();
    s.programme(vec![slot("bridge", 8, 12, 3), again], 2);
    s.trains().does_all("bridge", 8, left(3)).does_all("bridge-again", 10, left(3)).ends().settled().days(2);
    assert_eq!(s.next("bridge").target, Target::Reps(11), "ten, and one more");
}

#[test]
fn each_option_of_a_session_is_remembered_once_with_its_own_load() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 5.0, 6.0])).programme(vec![slot("squat", 8, 12, 3)], 3);
    s.starts_at("squat", 3, Some(one(6.0))).trains();
    s.does_with("squat", one(6.0), 10, left(3)).does_with("squat", one(5.0), 10, left(3));
    s.marks("squat", symptom("heaviness", None)).does_with("squat", one(4.0), 10, left(3)).ends();
    let uses = |s: &Story| -> Vec<(String, Vec<VariantUse>)> {
        s.with_bench(|b| b.state.variants.iter().map(|(id, uses)| (id.to_string(), uses.clone())).collect())
    };
    let loads: Vec<(String, Vec<Load>)> =
        uses(&s).into_iter().map(|(id, uses)| (id, uses.into_iter().map(|u| u.load).collect())).collect();
    let expected = [("squat-goblet", one(5.0)), ("squat-goblet-chair", one(4.0))];
    assert_eq!(loads, expected.map(|(id, load)| (id.to_owned(), vec![load])));
}

#[test]
fn with_the_last_round_left_out_nothing_was_done_as_planned_and_the_load_stays() {
    let loads: Vec<f64> = (16..=80).map(|n| f64::from(n) / 4.0).collect();
    let mut s = hinge(&loads, 8.0);
    for _ in 0..4 {
        s.trains().does_with("hinge", one(8.0), 12, left(5));
        let run = s.run.unwrap();
        s.says(Payload::SetSkipped { run, slot: "hinge".into(), round: 1, why: SkipWhy::Short });
        s.ends().settled().days(2);
    }
    assert_eq!(kg_next(&s), 8.0);
}

#[test]
fn an_easy_option_that_was_answered_with_a_number_ends_no_finding_of_another() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 8.0, 12.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts_at("hinge", 1, None).session_of("hinge", 12, plenty());
    s.trains().does("hinge", 12, plenty());
    chooses(&mut s, "hinge", "hinge-wall-tap");
    s.does("hinge", 12, left(2)).ends().settled().days(2);
    let next = s.next("hinge");
    assert_eq!((next.variant.as_str(), next.purpose), ("hinge-one-dumbbell", Purpose::Find));
    assert!(s.reasons("hinge").contains(&R::StillFinding));
}

#[test]
fn a_start_that_names_its_option_goes_before_one_for_the_ladder() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0]));
    s.starts.push(start("squat", Some(3), "squat-goblet", Some(one(6.0))));
    s.starts_at("squat", 3, Some(one(8.0))).starts_at("hinge", 1, Some(one(4.0)));
    assert_eq!(s.external(&s.next("squat")), 6.0);
    let below = s.next("squat").options.into_iter().find(|o| o.variant.as_str() == "squat-goblet-chair");
    assert_eq!(below.unwrap().load, one(8.0), "for any other option the one of the ladder");
}
