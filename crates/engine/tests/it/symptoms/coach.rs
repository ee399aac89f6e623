//! What the coach set, where a symptom came after it.

use super::{client, level, rest_of_it};
use crate::story::*;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{HoldAnswer, Payload, Purpose, SymptomAmount as A};

#[test]
fn what_the_coach_set_before_a_symptom_does_not_outlast_it() {
    // Set to level 4 on the evening, a leak at home next day: a level down from where she stands.
    let mut s = client();
    s.overridden("squat", Some(4), Some(pair(8.0)));
    assert_eq!(level(&s, "squat"), 4);
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    let next = s.next("squat");
    assert_eq!(next.level, 2, "one down from what she did last");
    // What the coach sets after it holds.
    s.overridden("squat", Some(3), Some(one(4.0)));
    let next = s.next("squat");
    assert_eq!((next.level, s.external(&next)), (3, 4.0));
}

#[test]
fn what_the_coach_set_lower_before_a_symptom_still_holds_back() {
    let mut s = client();
    s.overridden("squat", Some(1), None);
    s.since_last_time(symptom("heaviness", None)).checks_in();
    assert_eq!(level(&s, "squat"), 1, "not up to one below what she did last");
    // A load that was set light is not passed either.
    let mut s = client();
    s.overridden("row", None, Some(one(3.0)));
    s.marks_at_home(symptom("heaviness", None)).days(1);
    let next = s.next("row");
    assert!(s.external(&next) <= 3.0, "{}", s.external(&next));
}

#[test]
fn a_mark_before_the_first_set_counts_against_what_the_coach_set_before() {
    let mut s = client();
    s.overridden("squat", Some(4), Some(pair(8.0)));
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(3))));
    rest_of_it(&mut s);
    s.ends().settled().days(2);
    assert_eq!(level(&s, "squat"), 3);
    let mut s = client();
    s.overridden("squat", Some(4), Some(pair(8.0)));
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(3)))).ends().settled().days(2);
    assert_eq!(level(&s, "squat"), 3, "no set was done on it, and the mark counts all the same");
}

#[test]
fn a_restart_lighter_that_came_after_an_override_is_lighter() {
    let mut s = client();
    s.overridden("squat", Some(3), Some(one(8.0)));
    s.trains().marks("squat", symptom("girdle-pain", Some(A::Pain(7)))).ends().settled();
    assert!(s.rests("squat"));
    s.hold_answered(HoldAnswer::RestartLighter).days(1);
    let next = s.next("squat");
    assert!(s.external(&next) <= 0.8 * 6.0 + 1e-9, "6 kg was done last: {}", s.external(&next));
}

#[test]
fn finding_sets_do_not_pass_what_was_held_before_a_symptom() {
    // Two dumbbells of 3 kg; then one in both hands, which is new to her, and her kit makes heavier ones for it.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3)], 3).starts_at("hinge", 2, Some(pair(3.0)));
    s.session_of("hinge", 10, left(3));
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    s.trains();
    for _ in 0..3 {
        let plan = s.plan("hinge");
        assert_eq!(plan.level, 1);
        let kg = s.external_of(&plan.variant, &plan.load);
        assert!(kg <= 6.0 + 1e-9, "{kg} kg after a symptom with 6 kg");
        assert!(plan.purpose != Purpose::Find, "nothing is found after a symptom");
        s.does("hinge", 8, plenty());
    }
    // A proposal that an older version showed as a set to find the load does not step over it either.
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("hinge", 8, 12, 3)], 4).starts_at("hinge", 2, Some(pair(2.0)));
    s.session_of("hinge", 10, left(3));
    s.marks_at_home(symptom("leak-effort", None)).days(1);
    s.trains();
    for record in &mut s.records {
        if let Payload::ProposalShown { result, .. } = &mut record.payload {
            for slot in &mut std::sync::Arc::make_mut(result).slots {
                if let newel_engine::proposal::Outcome::Train(plan) = &mut slot.outcome {
                    plan.purpose = Purpose::Find;
                }
            }
        }
    }
    for _ in 0..4 {
        let plan = s.plan("hinge");
        let kg = s.external_of(&plan.variant, &plan.load);
        assert!(kg <= 4.0 + 1e-9, "{kg} kg after a symptom with 4 kg");
        s.does("hinge", 8, plenty());
    }
}

#[test]
fn what_was_set_before_a_symptom_is_named_where_it_holds_back_and_only_there() {
    let note = |s: &Story, slot: &str| {
        let reasons = s.of_slot(slot).reasons.all().to_vec();
        reasons.into_iter().find(|r| r.code == R::CoachSet).and_then(|r| r.facts.get("note").cloned())
    };
    // Higher and heavier: it says nothing any more.
    let mut s = client();
    s.overridden("squat", Some(4), Some(pair(8.0))).marks_at_home(symptom("heaviness", None)).days(1);
    assert_eq!(note(&s, "squat"), None);
    // Lower: the note is there.
    let mut s = client();
    s.overridden("squat", Some(1), None).marks_at_home(symptom("heaviness", None)).days(1);
    assert_eq!(note(&s, "squat"), Some(newel_engine::reason::Fact::Words("as we said".into())));
    assert_eq!(level(&s, "squat"), 1);
    // Lighter, for a variant that is named.
    let mut s = client();
    let start = newel_engine::programme::Start {
        ladder: "hinge".into(),
        level: None,
        variant: Some("hinge-two-dumbbells".into()),
        load: Some(pair(2.0)),
    };
    s.says(Payload::Override { start, note: "as we said".into() });
    s.marks_at_home(symptom("heaviness", None)).days(1);
    let next = s.next("hinge");
    assert!(s.external(&next) <= 4.0, "two of 2 kg: {}", s.external(&next));
    assert!(note(&s, "hinge").is_some());
}
