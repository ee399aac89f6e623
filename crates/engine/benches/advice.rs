//! How long it takes to look a programme of four sessions with six slots each through for two hundred clients.

// A bench stands with the tests and unwraps as they do; it has nothing to document.
#![allow(clippy::unwrap_used, missing_docs, dead_code)]

#[path = "../tests/it/story/mod.rs"]
mod story;

use criterion::{Criterion, criterion_group, criterion_main};
use newel_engine::advice::{Client, Draft, advice, session_minutes};
use newel_engine::ids::PersonId;
use newel_engine::ledger::Ledger;
use newel_engine::programme::Programme;
use newel_engine::stage::BirthMode;
use std::hint::black_box;
use std::sync::Arc;
use story::{Story, dumbbells, full_kit, left, programme_of, slot};
use uuid::Uuid;

const CLIENTS: usize = 200;

const SESSIONS: [[&str; 6]; 4] = [
    ["squat", "row", "hinge", "push-up", "split-squat", "dead-bug"],
    ["lunge", "vertical-pull", "bridge", "overhead-press", "step-up", "side-plank"],
    ["squat", "chest-press", "offset-hinge", "row", "carry", "bird-dog"],
    ["side-lunge", "row", "thrust", "push-up", "hip-abduction", "press-out"],
];

fn programme() -> Programme {
    let mut sessions = Vec::new();
    for (n, names) in SESSIONS.iter().enumerate() {
        let mut session =
            programme_of(names.iter().map(|name| slot(name, 8, 12, 2)).collect(), 3).sessions.remove(0);
        session.id = format!("session-{n}").as_str().into();
        for block in &mut session.blocks {
            block.id = format!("{n}-{}", block.id).as_str().into();
            block.slots[0].id = format!("{n}-{}", block.slots[0].id).as_str().into();
        }
        sessions.push(session);
    }
    let weeks = Some(12);
    Programme { sessions, per_week: 4, weeks, ..programme_of(Vec::new(), 3) }
}

/// Clients of all stages and kits, each with thirty sessions in her log.
fn clients() -> Vec<Ledger> {
    let rules = Arc::new(Story::new().rules);
    let catalogue = Arc::new(Story::new().catalogue);
    let one = |n: usize| {
        let mut s = Story::new();
        let weeks = i64::try_from(n % 39).unwrap();
        s.owns(if n.is_multiple_of(3) { full_kit() } else { dumbbells(&[4.0, 6.0]) }).screened(&[], &[]);
        for _ in 0..30 {
            s.session_of("squat", 8, left(4)).days(3);
        }
        match n % 4 {
            0 | 1 => s.weeks_pregnant(weeks),
            2 => s.birth_weeks_ago(weeks, BirthMode::Vaginal).taken_up(),
            _ => &mut s,
        };
        Ledger::of(Arc::clone(&catalogue), Arc::clone(&rules), (&[], None), &s.records)
    };
    (0..CLIENTS).map(one).collect()
}

fn look(c: &mut Criterion) {
    let ledgers = clients();
    let programme = programme();
    let story = Story::new();
    let day = story.today() + chrono::Duration::days(91);
    let draft = Draft { programme: &programme, catalogue: &story.catalogue, rules: &story.rules, day };
    programme.check(&story.catalogue).unwrap();
    let mut group = c.benchmark_group("advice");
    group.sample_size(20);
    group.bench_function("24 slots, 200 clients", |b| {
        b.iter(|| {
            let benches: Vec<_> = ledgers.iter().map(|l| l.bench(&programme, day, None)).collect();
            let clients: Vec<Client<'_>> = (0u128..)
                .zip(&benches)
                .map(|(n, bench)| Client { person: PersonId(Uuid::from_u128(n)), bench })
                .collect();
            let minutes = session_minutes(&draft, ledgers.iter().map(Ledger::history));
            black_box(advice(&draft, &clients, &minutes))
        });
    });
    group.finish();
}

criterion_group!(benches, look);
criterion_main!(benches);
