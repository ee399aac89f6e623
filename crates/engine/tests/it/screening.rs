//! What screening asks for and rules out: clearances with their scope and end, intakes of two voices, restrictions.

use crate::story::*;
use chrono::Duration;
use newel_engine::history::History;
use newel_engine::proposal::Gate;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Baseline, ClearedThing, Payload, RestrictionKind, SymptomAmount as A, Voice};
use newel_engine::screening::{ScreenWhy, due};
use newel_engine::stage::BirthMode;

fn with_breathing() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3), timed("breathing", 30, 60)], 2);
    s
}

fn clears(s: &mut Story, speaks_of: Vec<ClearedThing>, days: Option<i64>) {
    let (on, until) = (s.today(), days.map(|n| s.today() + Duration::days(n)));
    let (who, said) = ("midwife".into(), "may train".into());
    s.says(Payload::Clearance { who, on, said, speaks_of: Some(speaks_of), until });
}

fn of(condition: &str) -> ClearedThing {
    ClearedThing::Condition { condition: condition.into() }
}

#[test]
fn an_absolute_contraindication_closes_all_and_a_relative_one_leaves_breathing() {
    let mut s = with_breathing();
    s.weeks_pregnant(30).screened(&["pre-eclampsia"], &[]);
    let Gate::Closed { reasons, .. } = s.proposal().gate else { panic!("closed") };
    assert_eq!(reasons.all()[0].code, R::ClearanceFirst);
    let mut s = with_breathing();
    s.weeks_pregnant(30).screened(&["twins"], &[]);
    assert!(s.rests("squat") && !s.rests("breathing"));
    assert!(s.reasons("squat").contains(&R::ClearanceWaits));
    // Both at once: the stricter.
    s.screened(&["twins", "growth-restriction"], &[]);
    assert!(s.is_closed());
    // What belongs to a pregnancy does not outlast it.
    let mut s = with_breathing();
    s.birth_weeks_ago(20, BirthMode::Vaginal).screened(&["pre-eclampsia", "twins"], &[]);
    assert!(!s.is_closed() && !s.rests("squat"));
}

#[test]
fn a_low_placenta_asks_the_provider_first_and_closes_later() {
    for (weeks, closed) in [(20, false), (25, false), (26, true), (28, true)] {
        let mut s = with_breathing();
        s.weeks_pregnant(weeks).screened(&["placenta-praevia"], &[]);
        assert_eq!(s.is_closed(), closed, "{weeks}");
        assert!(closed || s.rests("squat"));
    }
    let mut s = with_breathing();
    s.pregnant_undated().screened(&["placenta-praevia"], &[]);
    assert!(s.is_closed(), "a week that is not known is taken as a late one");
}

#[test]
fn a_clearance_opens_what_it_speaks_of() {
    let mut s = with_breathing();
    s.birth_weeks_ago(10, BirthMode::Caesarean).screened(&["fracture"], &[]);
    clears(&mut s, vec![of("fracture")], None);
    assert!(s.rests("squat"), "the caesarean still asks");
    clears(&mut s, vec![ClearedThing::Birth], None);
    assert!(!s.rests("squat"));
    // A red flag is opened by a letter that speaks of it.
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("chest-pain", None)).ends().days(2);
    let mark = History::of(&s.records).runs.last().unwrap().marks[0].record;
    clears(&mut s, vec![of("fracture"), ClearedThing::Birth], None);
    assert!(s.is_closed(), "a letter about something else");
    clears(&mut s, vec![ClearedThing::Sign { record: mark }], None);
    assert!(!s.is_closed());
}

#[test]
fn a_clearance_runs_out() {
    let mut s = with_breathing();
    s.birth_weeks_ago(10, BirthMode::Caesarean);
    clears(&mut s, vec![ClearedThing::Birth], Some(20));
    s.days(20);
    assert!(!s.rests("squat"), "on its last day");
    s.days(1);
    assert!(s.rests("squat"));
    assert!(s.reasons("squat").contains(&R::ClearanceOver));
    s.cleared();
    assert!(!s.rests("squat"), "a newer one without an end");
    // A sign that was cleared for a while waits again, and goes on a level lower once alone.
    let mut s = with_breathing();
    s.starts_at("squat", 3, Some(one(6.0)));
    s.session_of("squat", 10, left(3));
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("chest-pain", None)).ends().days(2);
    let mark = History::of(&s.records).runs.last().unwrap().marks[0].record;
    clears(&mut s, vec![ClearedThing::Sign { record: mark }], Some(10));
    let level = s.next("squat").level;
    assert_eq!(level, 2);
    s.session_of("squat", 10, left(3));
    s.days(11);
    assert!(s.is_closed(), "run out");
    s.cleared();
    assert!(!s.is_closed());
    assert_eq!(s.next("squat").level, level, "the same sign moves her down once");
    // Beside one that holds on, one that ends takes nothing away.
    let mut s = with_breathing();
    s.birth_weeks_ago(10, BirthMode::Caesarean).cleared();
    clears(&mut s, vec![ClearedThing::Birth], Some(3));
    s.days(10);
    assert!(!s.rests("squat"));
}

#[test]
fn a_birth_of_which_little_is_said_asks_until_it_is_said() {
    let mut s = with_breathing();
    s.birth_weeks_ago(8, BirthMode::Unsaid);
    assert!(s.rests("squat") && !s.rests("breathing"));
    s.birth_weeks_ago(8, BirthMode::Vaginal);
    assert!(!s.rests("squat"));
    let mut s = with_breathing();
    s.birth_weeks_ago(12, BirthMode::Unsaid);
    assert!(!s.rests("squat"), "months later nobody asks");
}

#[test]
fn two_voices_fill_in_an_intake_and_the_stricter_holds() {
    let usual = |amount| vec![Baseline { kind: "heaviness".into(), amount }];
    let intake = |by, conditions: &[&str], baselines, trained| Payload::Screening {
        never: false,
        conditions: conditions.iter().map(|c| (*c).into()).collect(),
        baselines,
        trained,
        by: Some(by),
        note: None,
        instead_of: Vec::new(),
    };
    let mut s = with_breathing();
    s.says(intake(Voice::Client, &["wrist-pain", "fracture"], usual(A::Lot), true));
    let hers = s.last_record();
    s.on_device(70).says(intake(Voice::Coach, &["prolapse"], usual(A::Little), true));
    let history = History::of(&s.records);
    let both = history.intake();
    let named: Vec<&str> = both.conditions.iter().map(|c| c.as_str()).collect();
    assert_eq!(named, ["wrist-pain", "fracture", "prolapse"]);
    assert_eq!(both.baselines, usual(A::Little));
    assert!(both.trained && s.rests("squat"));
    assert_eq!(history.standing_intakes().len(), 2, "both are kept side by side");
    // Her own next one takes the place of hers.
    s.on_device(1).says(intake(Voice::Client, &["wrist-pain"], Vec::new(), false));
    let both = History::of(&s.records).intake();
    assert_eq!(both.conditions.len(), 2);
    assert!(both.baselines.is_empty() && !both.trained && !s.rests("squat"));
    // The coach has talked it over with her: hers stands no longer. Only the coach's word does that.
    let latest = s.last_record();
    let over = |by, instead_of| Payload::Screening {
        never: false,
        conditions: vec!["prolapse".into()],
        baselines: usual(A::Little),
        trained: true,
        by: Some(by),
        note: Some("talked over".into()),
        instead_of,
    };
    s.on_device(70).says(over(Voice::Coach, vec![hers, latest]));
    let all = History::of(&s.records).intake();
    assert_eq!((all.conditions.len(), all.trained), (1, true));
    let coachs = s.last_record();
    s.on_device(1).says(over(Voice::Client, vec![coachs]));
    assert_eq!(History::of(&s.records).standing_intakes().len(), 2);
}

#[test]
fn a_ceiling_on_load_says_that_it_moved_the_load() {
    let mut s = Story::new();
    s.owns(full_kit()).starts_at("squat", 2, Some(one(8.0)));
    assert_eq!(s.external(&s.next("squat")), 8.0);
    let until = Some(s.today() + Duration::days(30));
    let ceiling = |kg_: f64, ladder: Option<&str>| Payload::Restriction {
        what: RestrictionKind::LoadAbove { most: kg(kg_), ladder: ladder.map(Into::into) },
        until,
        note: "the surgeon said so".into(),
    };
    s.says(ceiling(5.0, Some("row")));
    assert_eq!(s.external(&s.next("squat")), 8.0, "of another ladder");
    s.says(ceiling(5.0, None));
    assert!(s.external(&s.next("squat")) <= 5.0);
    assert!(s.reasons("squat").contains(&R::RestrictedLoad), "{:?}", s.reasons("squat"));
    s.trains();
    let plan = s.plan("squat");
    assert!(plan.loads.iter().all(|l| s.external_of(&plan.variant, l) <= 5.0), "nor can she choose more");
    s.ends().days(31);
    assert!(!s.reasons("squat").contains(&R::RestrictedLoad), "it has an end");
    // Where nothing is light enough, options without a load stay open.
    let mut s = Story::new();
    s.owns(dumbbells(&[8.0])).starts_at("squat", 2, Some(one(8.0))).says(ceiling(5.0, None));
    assert_eq!(s.external(&s.next("squat")), 0.0);
}

#[test]
fn a_ceiling_on_effort_says_that_it_moved_the_target() {
    let mut s = Story::new();
    s.restricted(RestrictionKind::ReserveBelow { reps: 5 });
    assert_eq!(s.next("squat").reserve, Some(5.0));
    assert!(s.reasons("squat").contains(&R::RestrictedReserve));
    // The stage asks for more already: nothing is moved by it.
    let mut s = Story::new();
    s.birth_weeks_ago(8, BirthMode::Vaginal).restricted(RestrictionKind::ReserveBelow { reps: 4 });
    assert!(!s.reasons("squat").contains(&R::RestrictedReserve));
}

#[test]
fn screening_is_due_again_at_set_points() {
    let whys = |s: &Story| s.with_bench(|b| due(b).iter().map(|d| d.why).collect::<Vec<_>>());
    let mut s = Story::new();
    assert_eq!(whys(&s), [ScreenWhy::Never]);
    s.weeks_pregnant(13).screened(&[], &[]);
    assert_eq!(whys(&s), []);
    s.days(7);
    assert_eq!(whys(&s), [ScreenWhy::Trimester(2)]);
    s.days(14 * 7);
    assert_eq!(whys(&s), [ScreenWhy::Trimester(3), ScreenWhy::Trimester(2)], "the latest first");
    s.screened(&[], &[]);
    assert_eq!(whys(&s), []);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("fatigue", None)).ends();
    assert_eq!(whys(&s), [ScreenWhy::Sign]);
    s.screened(&[], &[]).days(80).birth_weeks_ago(0, BirthMode::Vaginal);
    assert_eq!(whys(&s), [ScreenWhy::Birth]);
    s.screened(&[], &[]).days(42);
    assert_eq!(whys(&s), [ScreenWhy::WeeksAfter(6)]);
    s.screened(&[], &[]).days(42);
    assert_eq!(whys(&s), [ScreenWhy::WeeksAfter(12)]);
    s.screened(&[], &[]).days(364);
    assert_eq!(whys(&s), [ScreenWhy::Stale]);
}

#[test]
fn what_rests_takes_no_minutes() {
    let minutes = |s: &Story| {
        let proposed = s.proposal().slots;
        s.with_bench(|b| newel_engine::flow::minutes(b, s.session(), &proposed))
    };
    let mut s = with_breathing();
    s.birth_weeks_ago(10, BirthMode::Caesarean);
    let breathing = minutes(&s);
    s.cleared();
    assert!(minutes(&s) > breathing, "{breathing}");
    s.screened(&["pre-eclampsia"], &[]).weeks_pregnant(30);
    assert!(s.is_closed() && s.proposal().slots.is_empty());
}
