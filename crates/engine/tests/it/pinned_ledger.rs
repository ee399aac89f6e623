//! A ledger that takes in what comes late, told case by case.

use crate::story::*;
use newel_engine::history::History;
use newel_engine::kit::Kit;
use newel_engine::ledger::Ledger;
use newel_engine::record::{NextDay, Payload, Record, SetDone, SymptomAmount as A};
use newel_engine::stage::BirthMode;
use newel_engine::state::{Frame, State};

fn ledger_of(s: &Story, records: &[Record]) -> Ledger {
    Ledger::of(s.catalogue.clone().into(), s.rules.clone().into(), (&s.starts, None), records)
}

/// Asserts that a ledger holds what folding these records anew gives.
fn same(s: &Story, ledger: &Ledger, records: &[Record]) {
    let history = History::of(records);
    let (catalogue, rules, starts) = (&s.catalogue, &s.rules, &s.starts);
    let frame = Frame { catalogue, rules, starts, starts_of: None, day: s.today() };
    assert_eq!(ledger.history(), &history);
    assert!(ledger.state(s.today()) == State::of(&history, frame), "where she stands");
}

/// So many sessions of the squat at level 3.
fn sessions(n: usize) -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).starts_at("squat", 3, Some(one(6.0)));
    for _ in 0..n {
        s.session_of("squat", 10, left(3));
    }
    s
}

/// The sets of a story, in order.
fn sets(s: &Story) -> Vec<Record> {
    s.records.iter().filter(|r| matches!(r.payload, Payload::SetDone(_))).cloned().collect()
}

/// Adds what a story says to a ledger of what was said before.
fn then(mut s: Story, say: impl FnOnce(&mut Story)) -> (Story, Ledger) {
    let mut ledger = ledger_of(&s, &s.records);
    let known = s.records.len();
    say(&mut s);
    for record in &s.records[known..] {
        ledger.add(record.clone());
    }
    same(&s, &ledger, &s.records);
    (s, ledger)
}

#[test]
fn four_runs_stay_open_at_the_most_and_beyond_them_all_but_two_are_settled() {
    let s = sessions(12);
    let mut ledger = ledger_of(&s, &[]);
    let mut open = Vec::new();
    for record in &s.records {
        ledger.add(record.clone());
        open.push(ledger.open_runs());
    }
    open.dedup();
    // Two more than the two that stay are waited for, and the fifth settles three of them.
    assert_eq!(open, [0, 1, 2, 3, 4, 2, 3, 4, 2, 3, 4, 2, 3]);
}

#[test]
fn what_is_said_later_of_settled_sessions_is_taken_in() {
    // A set of the first session is taken back.
    let (s, _) = then(sessions(6), |s| {
        let first = sets(s)[0].id;
        s.withdraws(first);
    });
    assert_eq!(sets(&s).len(), 12);
    // The kit of the very beginning is put right.
    then(sessions(6), |s| {
        let kit = s.records.iter().find(|r| matches!(r.payload, Payload::KitChanged { .. })).unwrap().id;
        s.corrects(kit, Payload::KitChanged { kit: Kit::default() });
    });
    // A set of the latest session belonged to the first one.
    then(sessions(6), |s| {
        let (first, last) = (sets(s)[0].clone(), sets(s)[11].clone());
        let (Payload::SetDone(first), Payload::SetDone(mut moved)) = (first.payload, last.payload) else {
            panic!("sets")
        };
        moved.run = first.run;
        s.corrects(last.id, Payload::SetDone(moved));
    });
}

#[test]
fn an_answer_about_the_one_settled_session_is_taken_in_and_keeps_no_run_open() {
    let mut s = Story::new();
    s.owns(dumbbells(&[4.0, 6.0, 8.0])).starts_at("squat", 3, Some(one(6.0)));
    s.trains().does_all("squat", 10, left(3));
    let run = s.run.unwrap();
    s.ends().days(3);
    s.session_of("squat", 10, left(3)).session_of("squat", 10, left(3));
    let (_, ledger) = then(s, |s| {
        let symptoms = vec![symptom("heaviness", None)];
        s.says(Payload::NextDayAnswer { run, answer: NextDay::NotSettled, symptoms });
    });
    assert_eq!(ledger.open_runs(), 2);
}

#[test]
fn a_record_written_long_ago_that_arrives_late_is_put_in_its_place() {
    let mut s = sessions(3);
    s.owns(dumbbells(&[4.0, 6.0]));
    let late = s.records.last().unwrap().id;
    for _ in 0..3 {
        s.session_of("squat", 10, left(3));
    }
    s.owns(dumbbells(&[4.0, 6.0, 8.0, 10.0]));
    let (mut order, kit): (Vec<Record>, Vec<Record>) = s.records.iter().cloned().partition(|r| r.id != late);
    let mut ledger = ledger_of(&s, &order);
    ledger.add(kit[0].clone());
    order.extend(kit);
    same(&s, &ledger, &order);
}

#[test]
fn a_birth_written_long_ago_that_arrives_late_starts_anew_from_its_own_day() {
    let mut s = sessions(3);
    let then = s.now;
    for _ in 0..4 {
        s.session_of("squat", 10, left(3));
    }
    let (order, now) = (s.records.clone(), s.now);
    s.now = then;
    s.on_device(9).birth_weeks_ago(0, BirthMode::Vaginal);
    s.now = now;
    let birth = s.records.last().unwrap().clone();
    let mut ledger = ledger_of(&s, &order);
    assert_eq!(ledger.open_runs(), 2, "two of the four after it are settled");
    ledger.add(birth);
    same(&s, &ledger, &s.records);
    assert_eq!(ledger.state(s.today()).ladders[&"squat".into()].exposures.len(), 4, "those since the birth");
}

#[test]
fn two_sessions_begun_at_one_instant_are_settled_together() {
    let mut s = sessions(1);
    let at = s.now;
    s.trains().does("squat", 10, left(3)).marks("squat", symptom("heaviness", Some(A::Clearly))).ends();
    // Another device begins at the same second, and a session of another day follows.
    s.now = at;
    s.on_device(9).trains().ends();
    s.days(2).trains().ends();
    let mut ledger = ledger_of(&s, &s.records);
    assert_eq!(ledger.open_runs(), 3, "the first one alone is settled");
    // What was said at that very second counts for both: so much heaviness is usual for her.
    s.now = at;
    s.screened(&[], &[("heaviness", A::Clearly)]);
    s.now = at + chrono::Duration::days(3);
    ledger.add(s.records.last().unwrap().clone());
    same(&s, &ledger, &s.records);
    assert!(ledger.state(s.today()).ladders[&"squat".into()].level == Some(3), "a cue, and no drop");
}

#[test]
fn a_set_that_two_devices_put_into_two_sessions_is_settled_with_neither() {
    let mut s = sessions(5);
    let (first, last) = (sets(&s)[0].clone(), sets(&s)[9].clone());
    let (Payload::SetDone(first), Payload::SetDone(set)) = (first.payload, last.payload) else {
        panic!("sets")
    };
    // Of two corrections side by side the stricter holds: the one that leaves it where it is.
    s.corrects(last.id, Payload::SetDone(SetDone { reps: 6, ..set.clone() }));
    s.on_device(9).corrects(last.id, Payload::SetDone(SetDone { run: first.run, reps: 12, ..set }));
    let mut ledger = ledger_of(&s, &s.records);
    same(&s, &ledger, &s.records);
    s.owns(dumbbells(&[4.0, 6.0]));
    ledger.add(s.records.last().unwrap().clone());
    same(&s, &ledger, &s.records);
}

#[test]
fn what_names_no_session_and_is_put_into_a_settled_one_is_settled_with_neither() {
    let mut s = sessions(5);
    let Payload::SetDone(first) = sets(&s)[0].payload.clone() else { panic!("a set") };
    // Said after the latest session, it stays; what it is corrected into would close.
    let late = s.owns(dumbbells(&[4.0, 6.0])).last_record();
    s.corrects(late, Payload::SetDone(SetDone { reps: 6, ..first }));
    let mut ledger = ledger_of(&s, &s.records);
    assert_eq!(ledger.open_runs(), 5, "all stay open");
    same(&s, &ledger, &s.records);
    s.owns(dumbbells(&[4.0, 8.0]));
    ledger.add(s.records.last().unwrap().clone());
    same(&s, &ledger, &s.records);
}
