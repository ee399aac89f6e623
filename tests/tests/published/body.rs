//! Published values of symptoms, effective load, bands and units.

use super::rules;
use newel_engine::catalogue::Catalogue;
use newel_engine::history::Intake;
use newel_engine::kit::{Band, Load};
use newel_engine::record::{Symptom, SymptomAmount};
use newel_engine::rules::{AmountForm, Class, Family};
use newel_engine::strength::effective_load;
use newel_engine::symptom::{Before, judge};
use newel_engine::units::{KG_PER_LB, Kg, Newtons, STANDARD_GRAVITY, Weight};

// -- symptoms -----------------------------------------------------------------------------------

/// The class of a pain, as it alone tells.
fn class_of_pain(kind: &str, pain: u8) -> Class {
    let symptom = Symptom {
        kind: Some(kind.into()),
        amount: Some(SymptomAmount::Pain(pain)),
        place: None,
        words: None,
    };
    judge(&rules(), &Intake::default(), &symptom, Before::default()).class
}

#[test]
fn pain_of_a_limb_is_bounded_as_in_the_pain_monitoring_model() {
    // "At most 5, settled by next morning": Silbernagel KG et al., AJSM 2007;35:897; Thomee R, Phys Ther 1997;77:1690 [s],
    // tendon and knee work. Above 5 rests; up to 5 never more than a level down.
    for kind in ["joint-pain", "wrist-pain", "knee-pain", "shoulder-pain"] {
        for pain in 0..=10 {
            let class = class_of_pain(kind, pain);
            assert_eq!(class >= Class::Hold, pain > 5, "{kind} of {pain} is {class:?}");
        }
    }
}

#[test]
fn girdle_pain_goes_down_whatever_its_number() {
    // The model is not validated for the pelvis, so the number only ever makes it stricter [p].
    let rules = rules();
    let girdle =
        rules.symptoms().iter().filter(|k| k.family == Family::Girdle && k.amount == AmountForm::Pain);
    let kinds: Vec<&str> = girdle.map(|k| k.id.as_str()).collect();
    assert!(kinds.contains(&"girdle-pain") && kinds.contains(&"back-pain"), "{kinds:?}");
    for kind in kinds {
        let classes: Vec<Class> = (0..=10).map(|pain| class_of_pain(kind, pain)).collect();
        assert!(classes.iter().all(|c| *c >= Class::Drop), "{kind}: {classes:?}");
        assert!(classes.is_sorted(), "{kind}: {classes:?}");
    }
}

#[test]
fn the_terms_of_the_pelvic_floor_have_each_a_kind() {
    // Haylen BT et al., Int Urogynecol J 2010;21:5-26 [s]: loss on effort, loss with urgency, bulging, pressure. Loss on
    // effort, bulging and pressure drop a level or more, at any amount [p].
    let rules = rules();
    for kind in ["leak-effort", "leak-urge", "bulge", "heaviness"] {
        let known = rules.symptom(&kind.into()).map(|k| k.family);
        assert_eq!(known, Some(Family::PelvicFloor), "{kind}");
    }
    for kind in ["leak-effort", "bulge", "heaviness"] {
        for amount in [SymptomAmount::Little, SymptomAmount::Clearly, SymptomAmount::Lot] {
            let symptom = Symptom { kind: Some(kind.into()), amount: Some(amount), place: None, words: None };
            let class = judge(&rules, &Intake::default(), &symptom, Before::default()).class;
            assert!(class >= Class::Drop, "{kind}, {amount:?}: {class:?}");
        }
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
    assert!((pull_up - 0.961).abs() < 5e-4);
    for variant in ["vertical-pull-full", "vertical-pull-band-assisted"] {
        assert!((share(variant).unwrap() - pull_up).abs() < 5e-4, "{variant}");
    }
    // No published share for lunge, bridge or step-up: body mass stays out.
    for variant in ["split-squat-loaded", "bridge-loaded", "step-up-loaded"] {
        assert_eq!(share(variant), None, "{variant}");
    }
    // What is not used: the upper positions .651 and .515 (the hardest point is the lower one), and the dynamic shares with
    // hands raised, .55 and .41 (Ebben WP et al., JSCR 2011;25:2891 [s]), which do not mix with static ones in one ladder.
    let push_ups = catalogue.places().filter(|p| p.ladder.id.as_str() == "push-up");
    let shares: Vec<f64> = push_ups.filter_map(|p| p.variant.share.as_ref()).map(|s| s.share).collect();
    assert_eq!(shares, [0.566, 0.703], "static shares alone, easiest first");
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
    // Two bands side by side give the sum [p], at every stretch.
    let pair = Load::Bands { bands: bands[1..3].to_vec() };
    assert!((pair.external(1.0).0 - (3.7 + 4.6) * KG_PER_LB).abs() < 1e-12);
    assert!((pair.external(2.0).0 - (5.5 + 6.7) * KG_PER_LB).abs() < 1e-12);
    assert!((Load::Bands { bands }.external(1.0).0 - sum).abs() < 1e-9);
}

// -- units --------------------------------------------------------------------------------------

#[test]
fn units_follow_the_standard() {
    // NIST SP 811 [s]: 1 lb = 0.45359237 kg exactly; standard gravity 9.80665 m/s2 [m].
    assert_eq!(Weight::lb(1.0).kg(), Kg(0.453_592_37));
    assert_eq!(STANDARD_GRAVITY, 9.806_65);
    // The number entered comes back: what is kept is the number, and the exact kg stand beside it.
    for entered in [2.5, 5.0, 12.5, 17.6, 25.0, 45.0] {
        assert_eq!(Weight::lb(entered).value, entered);
        assert!((Weight::lb(entered).kg().0 / KG_PER_LB - entered).abs() < 1e-13 * entered);
    }
    // NIST SP 811, appendix B.8: 1 lbf = 4.448 222 N [m].
    assert!((Newtons::from_lb(1.0).0 - 4.448_222).abs() < 5e-7);
}
