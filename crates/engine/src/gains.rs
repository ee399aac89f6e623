//! What a piece that she does not own would open: the steps of her plan's ladders that wait for it.

use crate::ground::Ground;
use crate::ids::LadderId;
use crate::kit::{Band, Barbell, Dumbbell, Kit, Thing};
use crate::programme::Programme;
use crate::stage::StageOn;
use crate::units::{Newtons, Weight};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;

/// A piece of kit, whatever its weight or force.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, TS)]
#[serde(tag = "piece", content = "thing", rename_all = "snake_case")]
#[ts(export)]
pub enum Piece {
    /// One dumbbell or kettlebell.
    OneWeight,
    /// Two dumbbells of one weight.
    PairOfWeights,
    /// A long band.
    LongBand,
    /// A barbell.
    Barbell,
    /// Something else.
    Thing(Thing),
}

/// Every piece, the usual first purchase first.
pub const PIECES: [Piece; 9] = [
    Piece::OneWeight,
    Piece::PairOfWeights,
    Piece::LongBand,
    Piece::Thing(Thing::LoopBand),
    Piece::Thing(Thing::Step),
    Piece::Thing(Thing::Bench),
    Piece::Thing(Thing::PullUpBar),
    Piece::Thing(Thing::Straps),
    Piece::Barbell,
];

/// Steps that a piece would open.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct Gain {
    /// The piece.
    #[serde(flatten)]
    pub piece: Piece,
    /// Ladder and level, 0 for the easiest, in order.
    pub levels: Vec<(LadderId, u8)>,
}

/// The kit with a piece more. Its weight or force is of no matter: any opens the step.
fn with(kit: &Kit, piece: Piece) -> Kit {
    let mut kit = kit.clone();
    let weight = Weight::in_kg(8.0);
    match piece {
        Piece::OneWeight => kit.dumbbells.push(Dumbbell { weight, pair: false }),
        Piece::PairOfWeights => kit.dumbbells.push(Dumbbell { weight, pair: true }),
        Piece::LongBand => {
            let (at_100, at_200) = (Newtons(60.0), Newtons(100.0));
            kit.bands.push(Band { name: String::new(), at_100, at_200 });
        }
        Piece::Barbell => {
            kit.barbell.get_or_insert(Barbell { bar: weight, plates: Vec::new() });
        }
        Piece::Thing(thing) => kit.things.push(thing),
    }
    kit
}

/// The levels of a programme's ladders that are open with a kit, by ladder.
fn open(ground: &Ground<'_>, programme: &Programme) -> BTreeMap<LadderId, BTreeSet<u8>> {
    let mut levels: BTreeMap<LadderId, BTreeSet<u8>> = BTreeMap::new();
    for (_, slot) in programme.sessions.iter().flat_map(|s| s.slots()) {
        if let Some(ladder) = ground.catalogue.ladder(&slot.ladder) {
            let open =
                ground.open(ladder, slot.levels).into_iter().filter_map(|p| u8::try_from(p.level).ok());
            levels.entry(slot.ladder.clone()).or_default().extend(open);
        }
    }
    levels
}

/// What each piece that she lacks would open, the most first; a piece that opens nothing is left out. Whatever waits for
/// her stage or a clearance is looked at as if it did not: it is no matter of the kit.
#[must_use]
pub fn gains(ground: &Ground<'_>, programme: &Programme) -> Vec<Gain> {
    let mut plain = ground.clone();
    plain.stage = StageOn::Neither;
    plain.waits.clear();
    plain.checks.clear();
    plain.given_up.clear();
    plain.unloaded_today = false;
    let now = open(&plain, programme);
    let mut found: Vec<Gain> = PIECES
        .iter()
        .filter_map(|piece| {
            let more = Ground { kit: with(&plain.kit, *piece), ..plain.clone() };
            let levels: Vec<(LadderId, u8)> = open(&more, programme)
                .into_iter()
                .flat_map(|(ladder, levels)| {
                    let had = now.get(&ladder).cloned().unwrap_or_default();
                    levels.into_iter().filter(move |l| !had.contains(l)).map(move |l| (ladder.clone(), l))
                })
                .collect();
            (!levels.is_empty()).then_some(Gain { piece: *piece, levels })
        })
        .collect();
    found.sort_by_key(|gain| std::cmp::Reverse(gain.levels.len()));
    found
}
