//! A ledger gives what folding everything anew gives, whatever arrives in whatever order.

use crate::settings::{class, noted, number};
use crate::story::*;
use newel_engine::history::History;
use newel_engine::ids::RunId;
use newel_engine::ledger::Ledger;
use newel_engine::record::{HoldAnswer, NextDay, Payload, Record, SymptomAmount};
use newel_engine::rules::{Class, RuleSetting};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::state::{Frame, State};
use newel_engine::units::Weight;
use proptest::prelude::*;

/// One thing that happens, with a number to pick what it happens to.
type Event = (u8, usize);

fn happens(s: &mut Story, (what, pick): Event) {
    let any = |s: &Story| (!s.records.is_empty()).then(|| s.records[pick % s.records.len()].clone());
    match what {
        0..=4 => {
            s.trains();
            let count = 6 + u16::try_from(pick % 8).unwrap();
            if !s.is_closed() {
                for name in ["hinge", "squat"] {
                    if !s.is_over(name) {
                        s.does(name, count, left(u8::try_from(pick % 5).unwrap()));
                    }
                    if what == 3 && !s.is_over(name) {
                        s.marks(name, symptom("heaviness", Some(SymptomAmount::Little)));
                    }
                }
            }
            s.ends();
            if what == 1 {
                s.settled();
            }
            s.days(i64::try_from(pick % 5).unwrap());
        }
        5 => {
            let Some(target) = any(s) else { return };
            s.withdraws(target.id);
        }
        6 => {
            let Some(target) = any(s) else { return };
            let instead = match target.payload {
                Payload::SetDone(mut set) => {
                    set.reps += 1;
                    // Once in a while a set is moved into another session.
                    if pick % 3 == 0 {
                        set.run = s
                            .records
                            .iter()
                            .rev()
                            .find_map(|r| match &r.payload {
                                Payload::SessionStarted { run, .. } => Some(*run),
                                _ => None,
                            })
                            .unwrap_or(set.run);
                    }
                    Payload::SetDone(set)
                }
                other => other,
            };
            s.corrects(target.id, instead);
        }
        7 => drop(s.says(Payload::BodyMass { mass: Weight::in_kg(60.0 + (pick % 20) as f64) })),
        8 => drop(s.owns(dumbbells(&[2.0, 4.0, 6.0 + (pick % 4) as f64]))),
        9 => {
            let birth = s.today() - chrono::Duration::days(90);
            let stage = Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) };
            s.says(Payload::StageChanged { stage });
        }
        10 => {
            // An answer about a session of long ago, or of none that is known.
            let runs: Vec<RunId> = s
                .records
                .iter()
                .filter_map(|r| match &r.payload {
                    Payload::SessionStarted { run, .. } => Some(*run),
                    _ => None,
                })
                .collect();
            let run = if runs.is_empty() { RunId(uuid::Uuid::from_u128(9)) } else { runs[pick % runs.len()] };
            s.says(Payload::NextDayAnswer { run, answer: NextDay::NotSettled, symptoms: Vec::new() });
        }
        11 => drop(s.marks_at_home(symptom("heaviness", None))),
        12 => drop(s.overridden("hinge", Some(1), Some(one(4.0)))),
        13 => drop(s.cleared()),
        14 => {
            if s.with_bench(|b| b.state.open_holds().next().is_some()) {
                s.hold_answered(HoldAnswer::GoOn);
            }
        }
        15 => drop(s.on_device(1 + (pick % 2) as u128)),
        16 => {
            let t = i64::try_from(pick % 40).unwrap();
            s.now -= chrono::Duration::hours(t);
        }
        17 => {
            // The coach sets a rule, for a few days or for good, well founded or not.
            let setting = match pick % 4 {
                0 => class("heaviness", Class::Hold),
                1 => noted(class("heaviness", Class::Note)),
                2 => number("load.step", "share", 0.05),
                _ => class("chest-pain", Class::Note),
            };
            let until = (pick % 3 == 0).then(|| s.today() + chrono::Duration::days(6));
            s.says(Payload::RuleSetting(RuleSetting { until, ..setting }));
        }
        _ => drop(s.days(i64::try_from(pick % 30).unwrap())),
    }
}

fn drop(_: &mut Story) {}

fn told(events: &[Event]) -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 5.0, 6.0, 8.0]))
        .programme(vec![slot("hinge", 8, 12, 3), slot("squat", 6, 10, 2)], 2)
        .starts_at("hinge", 1, Some(one(4.0)));
    for event in events {
        happens(&mut s, *event);
    }
    s
}

/// A record now and then arrives later than it was written, by so many places.
fn arrival(records: &[Record], late: &[(usize, usize)]) -> Vec<Record> {
    let mut order: Vec<Record> = records.to_vec();
    for (which, by) in late {
        if order.is_empty() {
            break;
        }
        let from = which % order.len();
        let record = order.remove(from);
        let to = (from + by).min(order.len());
        order.insert(to, record);
    }
    order
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn a_ledger_is_the_whole_fold(
        events in proptest::collection::vec((0u8..19, 0usize..1000), 4..28),
        late in proptest::collection::vec((0usize..1000, 0usize..60), 0..6),
        begun_with in 0usize..30,
    ) {
        let s = told(&events);
        let order = arrival(&s.records, &late);
        let begun_with = begun_with.min(order.len());
        let mut ledger = Ledger::of(s.catalogue.clone().into(), s.rules.clone().into(), (&s.starts, None), &order[..begun_with]);
        let day = s.today();
        let frame = Frame { catalogue: &s.catalogue, rules: &s.rules, starts: &s.starts, starts_of: None, day };
        for n in begun_with..order.len() {
            ledger.add(order[n].clone());
            // Twice changes nothing.
            ledger.add(order[n / 2].clone());
            if n % 3 == 0 || n + 1 == order.len() {
                let history = History::of(&order[..=n]);
                prop_assert_eq!(ledger.history(), &history, "the history after {} records", n + 1);
                prop_assert!(ledger.state(day) == State::of(&history, frame), "the state after {} records", n + 1);
            }
        }
        let session = &s.programme.sessions[0];
        prop_assert_eq!(ledger.bench(&s.programme, day, None).propose(session), {
            let mut alone = told(&events);
            alone.run = None;
            alone.proposal()
        });
    }
}

#[test]
fn most_runs_of_a_long_history_are_settled() {
    // Otherwise the ledger would be right and no faster; the benchmark says how much faster it is.
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 5.0, 6.0, 8.0]));
    let (catalogue, rules) = (s.catalogue.clone(), s.rules.clone());
    let mut known = 0;
    let mut ledger = Ledger::of(catalogue.clone().into(), rules.clone().into(), (&[], None), &[]);
    for _ in 0..20 {
        s.session_of("squat", 10, left(3));
        for record in &s.records[known..] {
            ledger.add(record.clone());
        }
        known = s.records.len();
    }
    assert!(ledger.open_runs() <= 4, "{} runs are folded at each question", ledger.open_runs());
    assert_eq!(ledger.history(), &History::of(&s.records));
}
