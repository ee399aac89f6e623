//! What is put right after it was written, and what comes late from the other device.

use newel_engine::ids::{RecordId, RunId};
use newel_engine::record::{Payload, SetDone};
use newel_engine::simulate::Chance;

use crate::draw::{Scene, one_of};
use crate::pen::{LAPTOP, PHONE};
use crate::sets::reserve_of;

/// Sets of a run so far, with their records.
fn sets_of(scene: &Scene<'_>, run: Option<RunId>) -> Vec<(RecordId, SetDone)> {
    let records = scene.pen.records.iter();
    records
        .filter_map(|r| match &r.payload {
            Payload::SetDone(set) if run.is_none_or(|run| set.run == run) => Some((r.id, set.clone())),
            _ => None,
        })
        .collect()
}

/// Corrections and withdrawals: by one device or two, of one another, taken back.
pub fn put_right(scene: &mut Scene<'_>, run: RunId) {
    let sets = sets_of(scene, Some(run));
    if sets.is_empty() {
        return;
    }
    let (target, set) = one_of(&mut scene.chance, &sets).clone();
    let changed = |chance: &mut Chance, set: &SetDone| {
        let mut set = set.clone();
        if set.seconds.is_none() {
            set.reps = u16::try_from(chance.between(1, 16)).unwrap_or(8);
        }
        set.reserve = (!chance.happens(0.1)).then(|| reserve_of(chance.between(0, 5)));
        Payload::SetDone(set)
    };
    let corrects =
        |target: RecordId, instead: Payload| Payload::Correction { target, instead: Box::new(instead) };
    match scene.chance.between(0, 5) {
        0 => {
            scene.pen.write(Payload::Withdrawal { target });
        }
        1 | 2 => {
            let instead = changed(&mut scene.chance, &set);
            scene.pen.write(corrects(target, instead));
        }
        3 => {
            let (one, other) = (changed(&mut scene.chance, &set), changed(&mut scene.chance, &set));
            scene.pen.write_on(PHONE, corrects(target, one));
            scene.pen.write_on(LAPTOP, corrects(target, other));
        }
        4 => {
            let instead = changed(&mut scene.chance, &set);
            let first = scene.pen.write(corrects(target, instead));
            let instead = changed(&mut scene.chance, &set);
            scene.pen.write(corrects(first, instead));
        }
        _ => {
            let instead = changed(&mut scene.chance, &set);
            let first = scene.pen.write(corrects(target, instead));
            scene.pen.write(Payload::Withdrawal { target: first });
        }
    }
}

/// What comes after the last session: a set of an earlier one that was written late, by the other device.
pub fn afterthoughts(scene: &mut Scene<'_>) {
    let sets = sets_of(scene, None);
    if sets.is_empty() || !scene.chance.happens(0.2) {
        return;
    }
    let (_, mut late) = one_of(&mut scene.chance, &sets).clone();
    late.round = late.round.saturating_add(u8::try_from(scene.chance.between(0, 1)).unwrap_or(0));
    late.reps = u16::try_from(scene.chance.between(1, 14)).unwrap_or(8);
    scene.pen.write_on(LAPTOP, Payload::SetDone(late));
}
