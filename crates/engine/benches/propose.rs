//! How long the next session takes to work out: six slots, two years of records with 3,000 sets, replayed
//! whole, and by a ledger that is kept up with what is written.

// A bench stands with the tests and unwraps as they do; it has nothing to document.
#![allow(clippy::unwrap_used, missing_docs, dead_code)]

#[path = "../tests/it/story/mod.rs"]
mod story;

use criterion::{Criterion, criterion_group, criterion_main};
use newel_engine::ledger::Ledger;
use newel_engine::proposal::Outcome;
use newel_engine::record::{Payload, SetDone, Side};
use std::hint::black_box;
use story::{Story, dumbbells, full_kit, left, one, slot};

/// Sessions of six slots with three sets each: 167 of them are 3,006 sets, in 728 days.
const SESSIONS: i64 = 167;

fn two_years() -> Story {
    let mut s = Story::new();
    let mut kit = full_kit();
    kit.dumbbells = dumbbells(&[2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0]).dumbbells;
    s.owns(kit).programme(
        ["squat", "hinge", "chest-press", "overhead-press", "split-squat", "bridge"]
            .into_iter()
            .map(|ladder| slot(ladder, 8, 12, 3))
            .collect(),
        3,
    );
    s.starts_at("squat", 3, Some(one(6.0))).starts_at("hinge", 1, Some(one(6.0)));
    let mut sets = 0;
    for session in 0..SESSIONS {
        s.trains();
        let run = s.run.unwrap();
        let Some(Payload::ProposalShown { result, .. }) = s.records.last().map(|r| r.payload.clone()) else {
            panic!("a proposal was shown")
        };
        for p in &result.slots {
            let Outcome::Train(shown) = &p.outcome else { continue };
            let per_side = s.catalogue.place(&shown.variant).unwrap().variant.per_side;
            for round in 0..shown.sets {
                sets += 1;
                let sides = if per_side { vec![Some(Side::Left), Some(Side::Right)] } else { vec![None] };
                for side in sides {
                    s.says(Payload::SetDone(SetDone {
                        run,
                        slot: p.slot.clone(),
                        round,
                        side,
                        ladder: p.ladder.clone(),
                        variant: shown.variant.clone(),
                        load: shown.load.clone(),
                        reps: shown.target.count(),
                        seconds: None,
                        reserve: left(u8::try_from(2 + (session + i64::from(round)) % 3).unwrap()),
                        purpose: shown.purpose,
                        stopped: false,
                    }));
                }
            }
        }
        s.ends().settled();
        s.days(if session % 3 == 0 { 4 } else { 3 });
    }
    assert!(sets >= 3000, "{sets} sets");
    s
}

fn propose(c: &mut Criterion) {
    let s = two_years();
    println!("{} records", s.records.len());
    let session = &s.programme.sessions[0];
    c.bench_function("propose six slots after two years", |b| b.iter(|| black_box(s.proposal())));

    let kept = Ledger::of(s.catalogue.clone().into(), s.rules.clone().into(), (&s.starts, None), &s.records);
    c.bench_function("propose six slots from a kept ledger", |b| {
        b.iter(|| black_box(kept.bench(&s.programme, s.today(), None).propose(session)));
    });
    // The last record is taken in, and the session proposed.
    let (last, before) = s.records.split_last().unwrap();
    let kept = Ledger::of(s.catalogue.clone().into(), s.rules.clone().into(), (&s.starts, None), before);
    c.bench_function("take in a record and propose six slots", |b| {
        b.iter_batched(
            || kept.clone(),
            |mut ledger| {
                ledger.add(last.clone());
                black_box(ledger.bench(&s.programme, s.today(), None).propose(session));
                ledger
            },
            criterion::BatchSize::LargeInput,
        );
    });
}

criterion_group! {
    name = benches;
    config = Criterion::default().sample_size(20);
    targets = propose
}
criterion_main!(benches);
