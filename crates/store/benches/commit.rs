//! How long from the tap on "how many more" to the set that a power cut cannot take: one write of a
//! set on disk, in a log that holds three months already and in an empty one.

use chrono::{DateTime, FixedOffset};
use criterion::{Criterion, criterion_group, criterion_main};
use newel_engine::ids::{PersonId, RunId};
use newel_engine::kit::Load;
use newel_engine::record::{Payload, Purpose, Reserve, SetDone};
use newel_engine::units::Weight;
use newel_store::{Action, Store};
use std::hint::black_box;
use std::time::Duration;

const PERSON: PersonId = PersonId(uuid::Uuid::from_u128(1));

fn set(round: u8) -> Payload {
    Payload::SetDone(SetDone {
        run: RunId(uuid::Uuid::from_u128(2)),
        slot: "a1".into(),
        round,
        side: None,
        ladder: "squat".into(),
        variant: "squat-goblet".into(),
        load: Load::One { weight: Weight::in_kg(12.0) },
        reps: 10,
        seconds: None,
        reserve: Some(Reserve::Exactly(3)),
        purpose: Purpose::Work,
        stopped: false,
    })
}

fn at() -> DateTime<FixedOffset> {
    DateTime::UNIX_EPOCH.fixed_offset()
}

fn commit(c: &mut Criterion) {
    let mut group = c.benchmark_group("one set, on disk");
    group.measurement_time(Duration::from_secs(10));
    // In the build folder and not in the system's temporary one, which is often no disk at all.
    let room = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).expect("room on the disk");
    for (name, before) in [("empty log", 0), ("log of 4000 records", 4000)] {
        let mut store = Store::open(room.path().join(format!("{before}.db"))).expect("a new database");
        store.write(Action::LogSet, at(), PERSON, vec![set(0); before]).expect("the sets before");
        group.bench_function(name, |b| {
            b.iter(|| {
                let change = store.write(Action::LogSet, at(), PERSON, vec![set(1)]).expect("a durable set");
                black_box(change)
            });
        });
    }
    group.finish();
}

criterion_group!(benches, commit);
criterion_main!(benches);
