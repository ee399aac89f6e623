//! Draws ladders and moves of the coach's own, as they stand in her stream: made, renamed, retired, and now and then a
//! record that would make another thing of an old id.

use std::collections::BTreeMap;

use anyhow::Result;
use newel_engine::catalogue::{
    Catalogue, Caution, Loading, OwnCatalogue, OwnLadder, OwnVariant, Pattern, Position, ReadyMark,
};
use newel_engine::ids::{LadderId, VariantId};
use newel_engine::kit::Thing;
use newel_engine::record::{Payload, Record};
use newel_engine::simulate::Chance;
use uuid::Uuid;

use crate::draw::one_of;
use crate::pen::Pen;

/// The coach's device.
const DESK: u128 = 3;

/// What is the coach's own, in a fifth of the logs: her records, the catalogue with it, and the ladders that hold some.
pub fn draw(chance: &mut Chance, built_in: &Catalogue) -> Result<(Vec<Record>, Catalogue, Vec<LadderId>)> {
    let mut pen = Pen::at("2026-03-01T09:00:00+01:00".parse()?);
    pen.device = DESK;
    if chance.happens(0.2) {
        let mut variants: Vec<OwnVariant> = Vec::new();
        if chance.happens(0.6) {
            let ladder = OwnLadder {
                id: LadderId::from(Uuid::from_u128(501).to_string()),
                name: "mine".into(),
                pattern: *one_of(
                    chance,
                    &[Pattern::Hinge, Pattern::Arms, Pattern::VerticalPush, Pattern::Carry],
                ),
                retired: chance.happens(0.05),
            };
            pen.write(Payload::OwnLadder(ladder.clone()));
            for level in 0..chance.between(1, 4) {
                for _ in 0..chance.between(1, 2) {
                    let level = u8::try_from(level).unwrap_or(0);
                    variants.push(variant(chance, built_in, &ladder.id, level, variants.len()));
                }
            }
        }
        for _ in 0..chance.between(0, 2) {
            let ladder = one_of(chance, &built_in.ladders).clone();
            let level = chance.between(0, ladder.levels.len() as i64 + 1);
            let level = u8::try_from(level).unwrap_or(0);
            variants.push(variant(chance, built_in, &ladder.id, level, variants.len()));
        }
        for mut own in variants {
            pen.write(Payload::OwnVariant(Box::new(own.clone())));
            if chance.happens(0.1) {
                // Hands, kit and cautions may be put right.
                own.needs.clear();
                own.cautions.insert(Caution::OneSided, false);
                pen.write(Payload::OwnVariant(Box::new(own.clone())));
            }
            if chance.happens(0.1) {
                // Another move under an old id has no effect.
                let other = OwnVariant { level: own.level + 1, per_side: !own.per_side, ..own.clone() };
                pen.write(Payload::OwnVariant(Box::new(other)));
            }
            if chance.happens(0.06) {
                pen.write(Payload::OwnVariant(Box::new(OwnVariant { retired: true, ..own })));
            }
        }
    }
    let own = OwnCatalogue::standing(&pen.records);
    let catalogue = built_in.with_own(&own)?;
    let hers = |id: &LadderId| own.variants.iter().any(|v| v.ladder == *id);
    let ladders = catalogue.ladders.iter().map(|l| l.id.clone()).filter(hers).collect();
    Ok((pen.records, catalogue, ladders))
}

fn variant(
    chance: &mut Chance,
    built_in: &Catalogue,
    ladder: &LadderId,
    level: u8,
    number: usize,
) -> OwnVariant {
    let places: Vec<_> = built_in.places().collect();
    let like = chance.happens(0.4).then(|| one_of(chance, &places).variant.id.clone());
    let loading = *one_of(
        chance,
        &[
            Loading::Body,
            Loading::One,
            Loading::One,
            Loading::Pair,
            Loading::Barbell,
            Loading::Band { stretch: 1.2 },
            Loading::Assist { stretch: 1.0 },
        ],
    );
    let helped = matches!(loading, Loading::Assist { .. });
    let ready = match chance.between(0, 9) {
        0 => ReadyMark::Seconds { seconds: 40 },
        1..=4 => ReadyMark::Reps { reps: 10 },
        _ if loading == Loading::Body => ReadyMark::Reps { reps: 12 },
        _ if helped => ReadyMark::Load { kg: -5.0 },
        _ => ReadyMark::Load { kg: 12.0 },
    };
    let mut cautions: BTreeMap<Caution, bool> = BTreeMap::new();
    for caution in Caution::ALL {
        // One that she leaves open counts.
        if chance.happens(0.8) {
            cautions.insert(caution, chance.happens(0.15));
        }
    }
    OwnVariant {
        id: VariantId::from(Uuid::from_u128(600 + number as u128).to_string()),
        ladder: ladder.clone(),
        level,
        like,
        position: *one_of(
            chance,
            &[Position::Standing, Position::Seated, Position::Supine, Position::Kneeling],
        ),
        needs: if chance.happens(0.15) { vec![Thing::Bench] } else { Vec::new() },
        loading,
        share: (helped || chance.happens(0.3)).then_some(0.6),
        per_side: chance.happens(0.2),
        cautions,
        ready,
        usual_start: None,
        name: "mine".into(),
        setup: String::new(),
        breath: String::new(),
        cues: Vec::new(),
        slips: Vec::new(),
        retired: false,
    }
}
