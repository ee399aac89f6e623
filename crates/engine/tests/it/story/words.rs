//! What a story is told with: reserves, symptoms, loads, kits, slots, programmes.

use newel_engine::ids::*;
use newel_engine::kit::{Band, Barbell, Dumbbell, Kit, Load, PlatePair, Thing};
use newel_engine::programme::*;
use newel_engine::record::*;
use newel_engine::units::{Newtons, Weight};
use newel_engine::writing::blank;
use uuid::Uuid;

/// `left(3)`: three more were in it.
pub fn left(n: u8) -> Option<Reserve> {
    Some(Reserve::Exactly(n))
}

/// "Five or more".
pub fn plenty() -> Option<Reserve> {
    Some(Reserve::AtLeast(5))
}

pub fn symptom(kind: &str, amount: Option<SymptomAmount>) -> Symptom {
    Symptom { kind: Some(kind.into()), amount, place: None, words: None }
}

pub fn kg(value: f64) -> Weight {
    Weight::in_kg(value)
}

pub fn one(value: f64) -> Load {
    Load::One { weight: kg(value) }
}

pub fn pair(value: f64) -> Load {
    Load::Pair { weight: kg(value) }
}

/// Pairs of dumbbells, in kg.
pub fn dumbbells(weights: &[f64]) -> Kit {
    Kit {
        dumbbells: weights.iter().map(|w| Dumbbell { weight: kg(*w), pair: true }).collect(),
        ..Kit::default()
    }
}

/// A kit with something of everything.
pub fn full_kit() -> Kit {
    let band = |name: &str, at_100: f64, at_200: f64| Band {
        name: name.into(),
        at_100: Newtons::from_lb(at_100),
        at_200: Newtons::from_lb(at_200),
    };
    Kit {
        barbell: Some(Barbell {
            bar: kg(10.0),
            plates: [1.25, 2.5, 5.0].iter().map(|w| PlatePair { weight: kg(*w) }).collect(),
        }),
        bands: vec![band("thin", 4.6, 6.7), band("thick", 10.2, 15.3)],
        things: vec![Thing::Bench, Thing::PullUpBar, Thing::Step, Thing::Straps, Thing::LoopBand],
        ..dumbbells(&[2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0])
    }
}

pub fn slot(ladder: &str, low: u16, high: u16, target_rir: u8) -> Slot {
    Slot {
        id: ladder.into(),
        ladder: ladder.into(),
        levels: None,
        dose: Dose { amount: Amount::Reps { low, high }, target_rir, tempo: None },
        by_week: Vec::new(),
    }
}

pub fn timed(ladder: &str, low: u16, high: u16) -> Slot {
    Slot {
        dose: Dose { amount: Amount::Seconds { low, high }, target_rir: 3, tempo: None },
        ..slot(ladder, 1, 1, 3)
    }
}

/// A programme of one session: each slot a block of straight sets with as many rounds.
pub fn programme_of(slots: Vec<Slot>, rounds: u8) -> Programme {
    let blocks = slots
        .into_iter()
        .map(|s| Block {
            id: BlockId::from(format!("block-{}", s.id)),
            form: BlockForm::StraightSets,
            rounds,
            rest_seconds: 60,
            rest_between_seconds: 0,
            by_week: Vec::new(),
            slots: vec![s],
        })
        .collect();
    Programme {
        sessions: vec![PlanSession { id: "a".into(), title: "A".into(), minutes: None, phase: None, blocks }],
        ..blank(ProgrammeId(Uuid::from_u128(7)), "Strength at home")
    }
}
