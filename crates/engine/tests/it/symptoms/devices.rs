//! Two devices that speak of one thing.

use super::client;
use crate::story::*;
use newel_engine::record::{Payload, SymptomAmount as A};

#[test]
fn of_two_corrections_the_stricter_holds() {
    for swap in [false, true] {
        let mut s = client();
        s.trains().does("squat", 8, left(3));
        let mild = s.mark_of("squat", symptom("girdle-pain", Some(A::Pain(2))));
        let hard = s.mark_of("squat", symptom("girdle-pain", Some(A::Pain(8))));
        let mark = s.tap("squat");
        let (first, second) = if swap { (hard, mild) } else { (mild, hard) };
        s.corrects(mark, first).on_device(9).corrects(mark, second);
        assert!(s.is_over("squat"), "8 of 10 holds, whichever came first");
    }
    // Of a set: fewer reps to failure.
    let mut s = client();
    s.trains().does("squat", 10, left(3));
    let set = s.last_record();
    let done = |reps| {
        let Payload::SetDone(mut d) = s.records.iter().find(|r| r.id == set).unwrap().payload.clone() else {
            panic!("a set")
        };
        d.reps = reps;
        Payload::SetDone(d)
    };
    let (low, high) = (done(6), done(12));
    s.corrects(set, high).on_device(9).corrects(set, low);
    let history = newel_engine::history::History::of(&s.records);
    assert_eq!(history.run(s.run.unwrap()).unwrap().sets[0].set.reps, 6);
}

#[test]
fn of_two_check_ins_corrected_side_by_side_the_stricter_readiness_holds() {
    for (first, second) in [("tired", "usual"), ("usual", "tired")] {
        let of = |name: &str| match name {
            "tired" => newel_engine::record::Readiness::Tired,
            _ => newel_engine::record::Readiness::Usual,
        };
        let mut s = client();
        s.checks_in();
        let (record, run) = (s.last_record(), s.run.unwrap());
        let says = |name| Payload::CheckIn { run, readiness: of(name), symptoms: vec![], today: vec![] };
        let (a, b) = (says(first), says(second));
        s.corrects(record, a).on_device(9).corrects(record, b);
        assert_eq!(s.with_bench(|b| b.readiness()), Some(of("tired")));
    }
}

#[test]
fn of_two_next_day_answers_both_sets_of_symptoms_count() {
    let mut s = client();
    s.trains().does("squat", 8, left(3)).ends().not_settled(vec![symptom("poor-sleep", None)]);
    s.on_device(9).not_settled(vec![symptom("chest-pain", None)]);
    assert!(s.is_closed());
}
