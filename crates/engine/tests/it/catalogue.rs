//! The built-in catalogue: every variant has all its parts, every ladder is whole, every restriction has something to
//! rule out and leaves a way, and mobility is treated as what it is.
//!
//! That each has its words is held by the build of the app, that each has its figure by `figure.test.ts`.

use crate::story::*;
use newel_engine::catalogue::{Catalogue, Caution, Loading, Pattern, Place, Position, ReadyMark};
use newel_engine::kit::{Load, Thing};
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Purpose, RestrictionKind};
use newel_engine::rules::RulePack;
use std::collections::BTreeSet;

fn catalogue() -> Catalogue {
    Catalogue::built_in().unwrap()
}

/// All positions; the match fails to build when one is added, so that it is added here as well.
fn positions() -> Vec<Position> {
    use Position::{AllFours, Hanging, Incline, Kneeling, Prone, Seated, SideLying, Standing, Supine};
    let all = vec![Standing, Seated, Kneeling, AllFours, SideLying, Incline, Supine, Prone, Hanging];
    for p in &all {
        match p {
            Standing | Seated | Kneeling | AllFours | SideLying | Incline | Supine | Prone | Hanging => {}
        }
    }
    all
}

fn cautions() -> Vec<Caution> {
    use Caution::{Impact, Midline, OneSided, Overhead, PelvicHold, Wrist};
    let all = vec![OneSided, Wrist, Midline, Overhead, Impact, PelvicHold];
    for c in &all {
        match c {
            OneSided | Wrist | Midline | Overhead | Impact | PelvicHold => {}
        }
    }
    all
}

fn things() -> Vec<Thing> {
    use Thing::{Bench, LoopBand, PullUpBar, Step, Straps};
    let all = vec![Bench, PullUpBar, Step, Straps, LoopBand];
    for t in &all {
        match t {
            Bench | PullUpBar | Step | Straps | LoopBand => {}
        }
    }
    all
}

#[test]
fn every_restriction_has_something_to_rule_out() {
    let c = catalogue();
    let unused = |used: &dyn Fn(&Place<'_>) -> bool| !c.places().any(|p| used(&p));
    let mut without: Vec<String> = Vec::new();
    without.extend(
        positions().iter().filter(|x| unused(&|p| p.variant.position == **x)).map(|x| format!("{x:?}")),
    );
    without.extend(
        cautions().iter().filter(|x| unused(&|p| p.variant.cautions.contains(x))).map(|x| format!("{x:?}")),
    );
    without.extend(
        things().iter().filter(|x| unused(&|p| p.variant.needs.contains(x))).map(|x| format!("{x:?}")),
    );
    assert_eq!(without, Vec::<String>::new(), "nothing in the catalogue touches these");
    for condition in RulePack::built_in().unwrap().conditions() {
        for caution in &condition.rules_out {
            assert!(
                c.places().any(|p| p.variant.cautions.contains(caution)),
                "{}: {caution:?}",
                condition.id
            );
        }
    }
}

/// What closes as a whole with a caution, and why that is right or doubtful.
const CLOSED_WHOLE: [(Caution, &str); 8] = [
    (Caution::OneSided, "offset-hinge"),
    (Caution::OneSided, "split-squat"),
    (Caution::OneSided, "lunge"),
    (Caution::OneSided, "side-lunge"),
    (Caution::OneSided, "step-up"),
    (Caution::OneSided, "step-down"),
    // Doubtful, and marked so in the catalogue.
    (Caution::OneSided, "hip-adduction"),
    (Caution::Wrist, "push-up"),
];

#[test]
fn a_restriction_leaves_a_way_on_each_ladder_but_for_those_that_are_known() {
    // Overhead, the midline and landing are what their ladders are made of.
    let of_its_nature = |c: Caution, ladder: &str| match c {
        Caution::Overhead => ["overhead-press", "vertical-pull"].contains(&ladder),
        Caution::Midline => ["push-up", "front-plank", "dead-bug", "curl-up"].contains(&ladder),
        Caution::Impact => ladder == "impact",
        Caution::OneSided | Caution::Wrist | Caution::PelvicHold => false,
    };
    let c = catalogue();
    for caution in cautions() {
        for ladder in &c.ladders {
            let left = ladder.levels.iter().flat_map(|l| &l.variants).any(|v| !v.cautions.contains(&caution));
            let known = of_its_nature(caution, ladder.id.as_str())
                || CLOSED_WHOLE.contains(&(caution, ladder.id.as_str()));
            assert_ne!(left, known, "{caution:?} on {}", ladder.id);
        }
    }
}

#[test]
fn what_lies_flat_on_the_back_has_another_way_on_the_same_level() {
    for ladder in &catalogue().ladders {
        for (n, level) in ladder.levels.iter().enumerate() {
            let flat = |v: &newel_engine::catalogue::Variant| v.position == Position::Supine;
            let flat_only = level.variants.iter().all(flat);
            assert!(!flat_only, "{} level {}: nothing for who cannot lie flat", ladder.id, n + 1);
        }
    }
}

#[test]
fn a_ready_mark_can_be_met_by_what_is_held_or_counted() {
    for place in catalogue().places() {
        let v = place.variant;
        let loaded = match v.loading {
            Loading::Body => false,
            Loading::One
            | Loading::Pair
            | Loading::Barbell
            | Loading::Band { .. }
            | Loading::Assist { .. } => true,
        };
        match v.ready {
            ReadyMark::Load { kg } => {
                assert!(loaded, "{} holds nothing and is ready at a load", v.id);
                let helped = matches!(v.loading, Loading::Assist { .. });
                assert!(if helped { kg < 0.0 } else { kg > 0.0 }, "{}: {kg} kg", v.id);
            }
            ReadyMark::Reps { reps } => assert!((3..=20).contains(&reps), "{}: {reps} reps", v.id),
            ReadyMark::Seconds { seconds } => assert!((10..=120).contains(&seconds), "{}: {seconds} s", v.id),
        }
        // Whoever begins at what is usual has something to come to before the next step.
        if let (Some(start), ReadyMark::Load { kg }) = (v.usual_start, v.ready) {
            assert!(start.from < kg && start.to <= kg, "{}: begins where it should be done", v.id);
        }
    }
}

#[test]
fn every_strength_group_has_a_variant() {
    let c = catalogue();
    let used: BTreeSet<_> = c.places().filter_map(|p| p.variant.group.clone()).collect();
    let idle: Vec<_> = c.groups.iter().filter(|g| !used.contains(&g.id)).map(|g| g.id.to_string()).collect();
    assert_eq!(idle, Vec::<String>::new());
}

const MOBILITY: [&str; 5] =
    ["mobility", "mobility-turn", "mobility-hip", "mobility-ankle", "mobility-shoulder"];

#[test]
fn mobility_holds_nothing_and_never_lies_on_the_front_or_flat_on_the_back() {
    let c = catalogue();
    let ladders: Vec<_> = c.ladders.iter().filter(|l| l.pattern == Pattern::Mobility).collect();
    assert_eq!(ladders.iter().map(|l| l.id.as_str()).collect::<Vec<_>>(), MOBILITY);
    for ladder in ladders {
        assert!((2..=4).contains(&ladder.levels.len()), "{}: {} levels", ladder.id, ladder.levels.len());
        for level in &ladder.levels {
            assert!(
                level.variants.iter().any(|v| !v.cautions.contains(&Caution::Wrist)),
                "{}: a level for sore wrists",
                ladder.id
            );
            for v in &level.variants {
                assert!(
                    matches!(v.loading, Loading::Body) && v.group.is_none() && v.share.is_none(),
                    "{}",
                    v.id
                );
                assert!(!matches!(v.position, Position::Prone | Position::Supine), "{}", v.id);
            }
        }
    }
}

/// All mobility ladders in one session, in a body of no stage.
fn mobile() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(MOBILITY.map(|l| slot(l, 6, 8, 4)).to_vec(), 1);
    s
}

#[test]
fn mobility_begins_lowest_without_load_question_or_search() {
    let mut s = mobile();
    for ladder in MOBILITY {
        let p = s.next(ladder);
        assert_eq!((p.level, &p.load, p.purpose), (0, &Load::Nothing, Purpose::Work), "{ladder}");
        assert!(p.options.iter().all(|o| o.load == Load::Nothing), "{ladder}: options hold nothing");
    }
    // "Ten reps with what?" is asked where there is a load to ask about.
    s.trains();
    for ladder in MOBILITY {
        assert!(!s.plan(ladder).ask_ten_reps, "{ladder}");
    }
}

#[test]
fn mobility_goes_up_one_step_when_it_is_easy_and_not_beyond_the_top() {
    let mut s = mobile();
    let mut levels = vec![s.next("mobility-ankle").level];
    for _ in 0..8 {
        s.session_of("mobility-ankle", 8, plenty());
        let p = s.next("mobility-ankle");
        assert_eq!(p.load, Load::Nothing);
        levels.push(p.level);
    }
    assert!(levels.windows(2).all(|w| w[1] >= w[0] && w[1] - w[0] <= 1), "one at a time: {levels:?}");
    assert_eq!(levels.last(), Some(&2), "and stays on the highest: {levels:?}");
}

#[test]
fn a_mark_on_mobility_drops_it_and_at_the_lowest_step_holds_it_alone() {
    let mut s = mobile();
    s.starts_at("mobility-hip", 1, None);
    s.trains().marks("mobility-hip", symptom("girdle-pain", None)).ends().settled();
    assert_eq!(s.next("mobility-hip").level, 0);
    assert!(s.reasons("mobility-hip").contains(&R::LevelDownSymptom));
    s.trains().marks("mobility-hip", symptom("girdle-pain", None)).ends().settled();
    assert!(s.rests("mobility-hip"), "nothing below it");
    assert!(!s.rests("mobility-shoulder"), "the others go on");
    s.hold_answered(HoldAnswer::GoOn);
    assert!(!s.rests("mobility-hip"));
}

#[test]
fn mobility_keeps_to_what_is_closed() {
    let mut s = mobile();
    s.restricted(RestrictionKind::Caution { caution: Caution::Wrist });
    s.restricted(RestrictionKind::Caution { caution: Caution::OneSided });
    s.restricted(RestrictionKind::Caution { caution: Caution::Overhead });
    let open = |s: &Story, ladder: &str| {
        s.with_bench(|b| {
            let ladder = b.ground.catalogue.ladder(&ladder.into()).unwrap();
            b.ground.open(ladder, None).iter().map(|p| p.variant.id.to_string()).collect::<Vec<_>>()
        })
    };
    assert_eq!(
        open(&s, "mobility-hip"),
        ["mobility-hip-fold-seated", "mobility-hip-rock-counter", "mobility-hip-squat-held"]
    );
    assert_eq!(
        open(&s, "mobility-shoulder"),
        ["mobility-shoulder-circles-seated", "mobility-shoulder-open-seated"]
    );
    assert_eq!(open(&s, "mobility-ankle").len(), 2);
}
