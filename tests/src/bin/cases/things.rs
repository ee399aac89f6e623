//! What she owns, and what a coach or she herself could name: kits, weights, bands, loads.

use newel_engine::catalogue::Variant;
use newel_engine::kit::{Band, Barbell, Dumbbell, Kit, Load, PlatePair, Thing};
use newel_engine::simulate::Chance;
use newel_engine::units::{MassUnit, Newtons, Weight};

use crate::draw::one_of;

/// A load of the make that a variant asks for, whether or not her kit has it.
pub fn some_load(chance: &mut Chance, variant: &Variant) -> Load {
    use newel_engine::catalogue::Loading;
    match variant.loading {
        Loading::Body => Load::Nothing,
        Loading::One => Load::One { weight: weight(chance, 1.0, 24.0) },
        Loading::Pair => Load::Pair { weight: weight(chance, 1.0, 16.0) },
        Loading::Barbell => Load::Barbell {
            bar: Weight::in_kg(*one_of(chance, &[10.0, 15.0, 20.0])),
            plates: (0..chance.between(0, 2)).map(|_| weight(chance, 1.0, 10.0)).collect(),
        },
        Loading::Band { .. } => Load::Bands { bands: vec![band(chance, 0)] },
        Loading::Assist { .. } => Load::Assist { bands: vec![band(chance, 0)] },
    }
}

/// A weight in steps of half a kilogram or of two and a half pounds.
pub fn weight(chance: &mut Chance, low: f64, high: f64) -> Weight {
    let kg = low + (high - low) * chance.unit();
    if chance.happens(0.75) {
        Weight { value: ((kg * 2.0) as i64).max(1) as f64 / 2.0, unit: MassUnit::Kg }
    } else {
        Weight { value: ((kg / 0.453_592_37 / 2.5) as i64).max(1) as f64 * 2.5, unit: MassUnit::Lb }
    }
}

pub fn band(chance: &mut Chance, number: i64) -> Band {
    // Rows of one maker's table [s], in lb at 100 % and 200 %; the last is invented, and carries nearly all of her.
    let rows = [(3.0, 4.3), (4.6, 6.7), (7.3, 10.2), (10.2, 15.3), (14.2, 21.3), (90.0, 130.0)];
    let (at_100, at_200) = *one_of(chance, &rows);
    Band {
        name: format!("band {number}"),
        at_100: Newtons::from_lb(at_100),
        at_200: Newtons::from_lb(at_200),
    }
}

/// Dumbbells in steps of half a kilogram: here the bounds themselves decide.
pub fn half_kilograms() -> Vec<Dumbbell> {
    (1..=50).map(|w| Dumbbell { weight: Weight::in_kg(f64::from(w) / 2.0), pair: true }).collect()
}

/// Dumbbells of which none is light.
pub fn heavy() -> Vec<Dumbbell> {
    (8..=32).map(|w| Dumbbell { weight: Weight::in_kg(f64::from(w)), pair: true }).collect()
}

/// A kit: fine or coarse, of one load alone, or nothing.
pub fn kit(chance: &mut Chance) -> Kit {
    let dumbbells = match chance.between(0, 9) {
        0 => Vec::new(),
        1 => vec![Dumbbell { weight: weight(chance, 2.0, 16.0), pair: chance.happens(0.7) }],
        2 | 8 => [2.0, 4.0, 8.0, 16.0].map(|w| Dumbbell { weight: Weight::in_kg(w), pair: true }).to_vec(),
        3 => (1..=20).map(|w| Dumbbell { weight: Weight::in_kg(f64::from(w)), pair: true }).collect(),
        4 | 5 => half_kilograms(),
        6 => (1..=12).map(|w| Dumbbell { weight: Weight::lb(f64::from(w) * 2.5), pair: true }).collect(),
        // Nothing light: here steps of finding have room, and what was held before is out of reach.
        7 => heavy(),
        _ => (0..chance.between(2, 7))
            .map(|_| Dumbbell { weight: weight(chance, 1.0, 24.0), pair: chance.happens(0.7) })
            .collect(),
    };
    let barbell = chance.happens(0.3).then(|| Barbell {
        bar: Weight::in_kg(*one_of(chance, &[7.0, 10.0, 15.0, 20.0])),
        plates: (0..chance.between(0, 4)).map(|_| PlatePair { weight: weight(chance, 0.5, 12.0) }).collect(),
    });
    let bands = if chance.happens(0.5) { chance.between(1, 3) } else { 0 };
    let things = [Thing::Bench, Thing::PullUpBar, Thing::Step, Thing::Straps, Thing::LoopBand];
    Kit {
        dumbbells,
        barbell,
        bands: (0..bands).map(|n| band(chance, n)).collect(),
        things: things.into_iter().filter(|_| chance.happens(0.6)).collect(),
    }
}
