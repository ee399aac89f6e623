//! Draws a person, her programme and her kit, and lets her train.

use std::collections::BTreeMap;

use anyhow::Result;
use chrono::{Duration, NaiveDate};
use newel_engine::catalogue::{Catalogue, Ladder, Loading, ReadyMark, Variant};
use newel_engine::ids::VariantId;
use newel_engine::kit::{Band, Barbell, Dumbbell, Kit, Load, PlatePair, Thing};
use newel_engine::programme::{
    Amount, Block, BlockForm, Dose, LevelSpan, PlanSession, Programme, Slot, Start,
};
use newel_engine::record::{Payload, RestrictionKind, Voice};
use newel_engine::rules::RulePack;
use newel_engine::simulate::{Chance, Client, Habits};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::units::{MassUnit, Newtons, Weight};
use serde_json::Value;
use uuid::Uuid;

use crate::answer;
use crate::pen::{PHONE, Pen};
use crate::sets::{self, Habit};

/// Everything about one case while it is drawn.
pub struct Scene<'a> {
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// Rule pack.
    pub rules: &'a RulePack,
    /// Programme of one session.
    pub programme: Programme,
    /// The coach's starts that came with it.
    pub starts: Vec<Start>,
    /// The log.
    pub pen: Pen,
    /// Chance.
    pub chance: Chance,
    /// How she answers.
    pub habit: Habit,
    /// Her true strength, for [`Habit::Honest`].
    pub client: Client,
    /// The loads that she first had, for [`Habit::Steep`].
    pub anchors: BTreeMap<VariantId, Load>,
    /// The first day.
    pub began: NaiveDate,
    /// What was asked on the way, with the answers.
    pub asks: Vec<Value>,
}

/// One of a list.
pub fn one_of<'t, T>(chance: &mut Chance, list: &'t [T]) -> &'t T {
    &list[usize::try_from(chance.between(0, list.len() as i64 - 1)).unwrap_or(0)]
}

/// One log with what the engine says to it.
pub fn case(seed: u64, number: u64, catalogue: &Catalogue, rules: &RulePack) -> Result<Value> {
    let mut chance = Chance::of(seed, number);
    let programme = programme(&mut chance, catalogue);
    let habit = *one_of(&mut chance, &Habit::ALL);
    let client = Client::draw(
        Chance::of(seed.wrapping_add(1_000_003), number),
        Habits::published(chance.happens(0.5)),
    );
    let pen = Pen::at("2026-03-02T09:00:00+01:00".parse()?);
    let mut scene = Scene {
        catalogue,
        rules,
        programme,
        starts: Vec::new(),
        client,
        anchors: BTreeMap::new(),
        began: pen.today(),
        pen,
        chance,
        habit,
        asks: Vec::new(),
    };
    scene.starts = starts(&mut scene);
    settle_in(&mut scene);
    let sessions = scene.chance.between(0, 12);
    let regular = scene.chance.happens(0.6);
    let birth_after = scene.chance.happens(0.15).then(|| scene.chance.between(0, sessions));
    for session in 0..sessions {
        if birth_after == Some(session) {
            birth(&mut scene);
        }
        sets::session(&mut scene);
        between(&mut scene);
        let days = if regular { scene.chance.between(1, 4) } else { gap(&mut scene.chance) };
        scene.pen.days(days);
    }
    // Some logs end with what came late from another device or was put right.
    sets::afterthoughts(&mut scene);
    if !regular {
        let wait =
            *one_of(&mut scene.chance, &[0, 0, 0, 0, 0, 1, 2, 10, 12, 13, 14, 24, 25, 26, 27, 28, 60, 365]);
        scene.pen.days(wait);
    }
    Ok(answer::of(&scene, seed, number))
}

/// Days between sessions: mostly a few, none for two on one day, now and then weeks, rarely a year.
fn gap(chance: &mut Chance) -> i64 {
    match chance.between(0, 19) {
        0 => 0,
        1..=13 => chance.between(1, 4),
        14..=16 => chance.between(5, 13),
        17 => *one_of(chance, &[13, 14, 14, 15, 27, 28, 28, 29]),
        18 => chance.between(20, 90),
        _ => chance.between(200, 400),
    }
}

fn programme(chance: &mut Chance, catalogue: &Catalogue) -> Programme {
    let count = chance.between(1, 3);
    let mut blocks: Vec<Block> = Vec::new();
    let mut last: Option<Ladder> = None;
    for n in 0..count {
        // Now and then two slots of one ladder in one session.
        let same = last.take().filter(|_| chance.happens(0.15));
        let ladder = same.unwrap_or_else(|| ladder(chance, catalogue));
        let slot = slot(chance, &ladder, n);
        last = Some(ladder);
        if chance.happens(0.2)
            && let Some(block) = blocks.last_mut()
            && block.form == BlockForm::StraightSets
        {
            block.form = BlockForm::Superset;
            block.slots.push(slot);
            continue;
        }
        let form = if n > 0 && chance.happens(0.06) { BlockForm::Finisher } else { BlockForm::StraightSets };
        blocks.push(Block {
            id: format!("block-{n}").as_str().into(),
            form,
            rounds: u8::try_from(chance.between(1, 4)).unwrap_or(1),
            rest_seconds: 60,
            rest_between_seconds: 0,
            by_week: Vec::new(),
            slots: vec![slot],
        });
    }
    Programme {
        id: newel_engine::ids::ProgrammeId(Uuid::from_u128(7)),
        revision: 1,
        title: "drawn".into(),
        per_week: 2,
        weeks: None,
        light_weeks: Vec::new(),
        phases: Vec::new(),
        sessions: vec![PlanSession { id: "a".into(), title: "A".into(), minutes: None, phase: None, blocks }],
    }
}

/// Any ladder, more often one with loads, and now and then one of the few with a barbell.
fn ladder(chance: &mut Chance, catalogue: &Catalogue) -> Ladder {
    let any = |l: &Ladder, what: fn(&Variant) -> bool| l.levels.iter().flat_map(|l| &l.variants).any(what);
    let loaded = |l: &&Ladder| any(l, |v| v.group.is_some());
    let barbell = |l: &&Ladder| any(l, |v| matches!(v.loading, Loading::Barbell));
    let list: Vec<&Ladder> = if chance.happens(0.1) {
        catalogue.ladders.iter().filter(barbell).collect()
    } else if chance.happens(0.7) {
        catalogue.ladders.iter().filter(loaded).collect()
    } else {
        catalogue.ladders.iter().collect()
    };
    (*one_of(chance, &list)).clone()
}

fn slot(chance: &mut Chance, ladder: &Ladder, number: i64) -> Slot {
    let timed =
        ladder.levels.iter().flat_map(|l| &l.variants).any(|v| matches!(v.ready, ReadyMark::Seconds { .. }));
    // A coach may also ask for seconds of what is usually counted, and the other way round.
    let timed = timed != chance.happens(0.03);
    let amount = if timed {
        let low = u16::try_from(chance.between(1, 8) * 5).unwrap_or(20);
        Amount::Seconds { low, high: low + u16::try_from(chance.between(0, 6) * 5).unwrap_or(20) }
    } else {
        let low = u16::try_from(chance.between(4, 12)).unwrap_or(8);
        Amount::Reps { low, high: low + u16::try_from(chance.between(0, 6)).unwrap_or(4) }
    };
    let levels = chance.happens(0.15).then(|| {
        let top = i64::try_from(ladder.levels.len()).unwrap_or(1) - 1;
        let low = chance.between(0, top);
        LevelSpan {
            low: u8::try_from(low).unwrap_or(0),
            high: u8::try_from(chance.between(low, top)).unwrap_or(0),
        }
    });
    Slot {
        id: format!("slot-{number}").as_str().into(),
        ladder: ladder.id.clone(),
        by_week: Vec::new(),
        levels,
        dose: Dose { amount, target_rir: u8::try_from(chance.between(0, 5)).unwrap_or(3), tempo: None },
    }
}

/// Who she is when the log begins.
fn settle_in(scene: &mut Scene<'_>) {
    let today = scene.pen.today();
    let stage = stage(&mut scene.chance, today);
    let caesarean = matches!(stage, Some(Stage::Postpartum { mode: BirthMode::Caesarean, .. }))
        && scene.chance.happens(0.8);
    if let Some(stage) = stage {
        scene.pen.write(Payload::StageChanged { stage });
    }
    if caesarean {
        scene.pen.write(Payload::cleared("midwife", today, "may train"));
    }
    if scene.chance.happens(0.5) {
        let trained = scene.chance.happens(0.5);
        scene.pen.write(Payload::screened(Vec::new(), Vec::new(), trained));
    }
    if scene.chance.happens(0.6) {
        let mass = weight(&mut scene.chance, 45.0, 110.0);
        scene.pen.write(Payload::BodyMass { mass });
    }
    let mut kit = kit(&mut scene.chance);
    if scene.habit == Habit::Steep {
        kit.dumbbells = half_kilograms();
    }
    scene.pen.write(Payload::KitChanged { kit });
    if scene.chance.happens(0.3) {
        ten_reps(scene);
    }
}

/// What happens between sessions.
fn between(scene: &mut Scene<'_>) {
    if scene.chance.happens(0.06) {
        let mass = weight(&mut scene.chance, 45.0, 110.0);
        scene.pen.write(Payload::BodyMass { mass });
    }
    if scene.chance.happens(0.08) {
        let kit = kit(&mut scene.chance);
        scene.pen.write(Payload::KitChanged { kit });
    }
    if scene.chance.happens(0.06) {
        ten_reps(scene);
    }
    if scene.chance.happens(0.06) {
        let ladder = scene.programme.sessions[0].blocks[0].slots[0].ladder.clone();
        if let Some(start) = scene.catalogue.ladder(&ladder).map(|l| start(&mut scene.chance, l)) {
            scene.pen.write(Payload::Override { start, note: "as we said".into() });
        }
    }
    if scene.chance.happens(0.04) {
        let ladder = scene.programme.sessions[0].blocks[0].slots[0].ladder.clone();
        let level = u8::try_from(scene.chance.between(0, 3)).unwrap_or(0);
        let what = match scene.chance.between(0, 2) {
            0 => RestrictionKind::LevelAbove { ladder, level },
            1 => RestrictionKind::AllLoad,
            _ => {
                let places: Vec<_> = scene.catalogue.places().filter(|p| p.ladder.id == ladder).collect();
                let variant = one_of(&mut scene.chance, &places).variant.id.clone();
                RestrictionKind::Variant { variant }
            }
        };
        let until = scene.chance.happens(0.5).then(|| scene.pen.today() + Duration::days(20));
        scene.pen.write(Payload::Restriction { what, until, note: "clinic".into() });
    }
}

fn birth(scene: &mut Scene<'_>) {
    let late = scene.chance.between(0, 60);
    let day = scene.pen.today() - Duration::days(late);
    let stage = if scene.chance.happens(0.8) {
        Stage::Postpartum { birth: day, mode: BirthMode::Vaginal, severe_tear: Some(false) }
    } else {
        Stage::AfterLoss { on: day }
    };
    // By one voice, and taken up at once: how several voices are heard and a plan that rests are no matter of load and
    // level, and are told as stories of the engine.
    scene.pen.write_on(PHONE, Payload::StageChanged { stage });
    for by in [Voice::Client, Voice::Coach] {
        scene.pen.write_on(PHONE, Payload::TakenUp { by, note: String::new() });
    }
}

fn stage(chance: &mut Chance, today: NaiveDate) -> Option<Stage> {
    match chance.between(0, 9) {
        0..=2 => None,
        3 => Some(Stage::Neither),
        4 => Some(Stage::pregnant(None, None)),
        5 | 6 => {
            let due = Some(today + Duration::days(chance.between(-7, 250)));
            Some(Stage::pregnant(due, None))
        }
        7 | 8 => {
            let mode = *one_of(chance, &[BirthMode::Vaginal, BirthMode::Vaginal, BirthMode::Caesarean]);
            let birth = today - Duration::days(chance.between(0, 420));
            Some(Stage::Postpartum { birth, mode, severe_tear: Some(false) })
        }
        _ => Some(Stage::AfterLoss { on: today - Duration::days(chance.between(0, 90)) }),
    }
}

fn starts(scene: &mut Scene<'_>) -> Vec<Start> {
    let ladders: Vec<_> = scene.programme.sessions[0].slots().map(|(_, slot)| slot.ladder.clone()).collect();
    let mut starts = Vec::new();
    for id in ladders {
        if scene.chance.happens(0.65)
            && let Some(ladder) = scene.catalogue.ladder(&id)
        {
            starts.push(start(&mut scene.chance, ladder));
        }
    }
    starts
}

fn start(chance: &mut Chance, ladder: &Ladder) -> Start {
    let level = usize::try_from(chance.between(0, ladder.levels.len() as i64 - 1)).unwrap_or(0);
    let variant = one_of(chance, &ladder.levels[level].variants).clone();
    Start {
        ladder: ladder.id.clone(),
        level: chance.happens(0.8).then(|| u8::try_from(level).unwrap_or(0)),
        variant: chance.happens(0.4).then(|| variant.id.clone()),
        load: chance.happens(0.6).then(|| some_load(chance, &variant)),
    }
}

fn ten_reps(scene: &mut Scene<'_>) {
    let ladders: Vec<_> = scene.programme.sessions[0].slots().map(|(_, slot)| slot.ladder.clone()).collect();
    let ladder = one_of(&mut scene.chance, &ladders).clone();
    let places: Vec<_> = scene.catalogue.places().filter(|p| p.ladder.id == ladder).collect();
    let variant = one_of(&mut scene.chance, &places).variant;
    let load = some_load(&mut scene.chance, variant);
    scene.pen.write(Payload::TenReps { variant: variant.id.clone(), load });
}

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
fn weight(chance: &mut Chance, low: f64, high: f64) -> Weight {
    let kg = low + (high - low) * chance.unit();
    if chance.happens(0.75) {
        Weight { value: ((kg * 2.0) as i64).max(1) as f64 / 2.0, unit: MassUnit::Kg }
    } else {
        Weight { value: ((kg / 0.453_592_37 / 2.5) as i64).max(1) as f64 * 2.5, unit: MassUnit::Lb }
    }
}

fn band(chance: &mut Chance, number: i64) -> Band {
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
fn half_kilograms() -> Vec<Dumbbell> {
    (1..=50).map(|w| Dumbbell { weight: Weight::in_kg(f64::from(w) / 2.0), pair: true }).collect()
}

/// A kit: fine or coarse, of one load alone, or nothing.
fn kit(chance: &mut Chance) -> Kit {
    let dumbbells = match chance.between(0, 9) {
        0 => Vec::new(),
        1 => vec![Dumbbell { weight: weight(chance, 2.0, 16.0), pair: chance.happens(0.7) }],
        2 => [2.0, 4.0, 8.0, 16.0].map(|w| Dumbbell { weight: Weight::in_kg(w), pair: true }).to_vec(),
        3 => (1..=20).map(|w| Dumbbell { weight: Weight::in_kg(f64::from(w)), pair: true }).collect(),
        4 | 5 => half_kilograms(),
        6 => (1..=12).map(|w| Dumbbell { weight: Weight::lb(f64::from(w) * 2.5), pair: true }).collect(),
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
