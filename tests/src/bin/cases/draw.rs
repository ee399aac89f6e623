//! Draws a person, her programme and her kit, and lets her train.

use std::collections::BTreeMap;

use anyhow::Result;
use chrono::{Duration, NaiveDate};
use newel_engine::catalogue::{Catalogue, Ladder, Loading, Variant};
use newel_engine::ids::{LadderId, VariantId};
use newel_engine::kit::{Load, Thing};
use newel_engine::programme::{Programme, Start};
use newel_engine::record::{Payload, Record, Voice};
use newel_engine::rules::RulePack;
use newel_engine::simulate::{Chance, Client, Habits};
use newel_engine::stage::{BirthMode, Stage};
use serde_json::Value;

use crate::pen::{PHONE, Pen};
use crate::sets::{self, Habit};
use crate::things::{band, half_kilograms, heavy, kit, some_load, weight};
use crate::{answer, care, own, plan, put_right};

/// Everything about one case while it is drawn.
pub struct Scene<'a> {
    /// Catalogue, with what is the coach's own.
    pub catalogue: &'a Catalogue,
    /// Rule pack.
    pub rules: &'a RulePack,
    /// Programme.
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
    /// What each set in hand asked for in the sessions that were watched.
    pub turns: Vec<Value>,
    /// The coach's own ladders and moves, as records.
    pub own: Vec<Record>,
}

impl Scene<'_> {
    /// Ladders of the programme, in order of its slots.
    pub fn ladders(&self) -> Vec<LadderId> {
        let slots = self.programme.sessions.iter().flat_map(|s| s.slots());
        slots.map(|(_, slot)| slot.ladder.clone()).collect()
    }

    /// One of them, mostly the first: what is said of it is then said of what she trains most.
    pub fn some_ladder(&mut self) -> LadderId {
        let ladders = self.ladders();
        if self.chance.happens(0.6) { ladders[0].clone() } else { one_of(&mut self.chance, &ladders).clone() }
    }
}

/// One of a list.
pub fn one_of<'t, T>(chance: &mut Chance, list: &'t [T]) -> &'t T {
    &list[usize::try_from(chance.between(0, list.len() as i64 - 1)).unwrap_or(0)]
}

/// One log with what the engine says to it.
pub fn case(seed: u64, number: u64, built_in: &Catalogue, rules: &RulePack) -> Result<Value> {
    let mut chance = Chance::of(seed, number);
    let (own, catalogue, own_ladders) = own::draw(&mut chance, built_in)?;
    let catalogue = &catalogue;
    let programme = plan::programme(&mut chance, catalogue, &own_ladders);
    programme.check(catalogue)?;
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
        turns: Vec::new(),
        own,
    };
    scene.starts = starts(&mut scene);
    settle_in(&mut scene);
    let sessions = scene.chance.between(0, 15);
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
    put_right::afterthoughts(&mut scene);
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
    if scene.chance.happens(0.6) {
        care::screening(scene);
    }
    if scene.chance.happens(0.6) {
        let mass = weight(&mut scene.chance, 45.0, 110.0);
        scene.pen.write(Payload::BodyMass { mass });
    }
    let mut kit = kit(&mut scene.chance);
    if scene.habit == Habit::Steep {
        kit.dumbbells = half_kilograms();
    }
    // Who is to be helped up by bands mostly has them, and a bar.
    let helped = scene.ladders().iter().any(|id| {
        let ladder = scene.catalogue.ladder(id);
        ladder.is_some_and(|l| help_level(l).is_some())
    });
    if helped && scene.chance.happens(0.7) {
        kit.bands = (0..4).map(|n| band(&mut scene.chance, n)).collect();
        kit.things.push(Thing::PullUpBar);
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
        let mut kit = kit(&mut scene.chance);
        if scene.chance.happens(0.2) {
            // The light ones are gone: what was held is out of reach.
            kit.dumbbells = heavy();
        }
        scene.pen.write(Payload::KitChanged { kit });
    }
    if scene.chance.happens(0.06) {
        ten_reps(scene);
    }
    if scene.chance.happens(0.06) {
        let ladder = scene.some_ladder();
        if let Some(start) = scene.catalogue.ladder(&ladder).map(|l| start(&mut scene.chance, l)) {
            scene.pen.write(Payload::Override { start, note: "as we said".into() });
        }
    }
    if scene.chance.happens(0.05) {
        care::restriction(scene);
    }
    if scene.chance.happens(0.03) {
        care::screening(scene);
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
    let ladders = scene.ladders();
    let mut starts = Vec::new();
    for id in ladders {
        if scene.chance.happens(0.75)
            && let Some(ladder) = scene.catalogue.ladder(&id)
        {
            starts.push(start(&mut scene.chance, ladder));
        }
    }
    starts
}

fn start(chance: &mut Chance, ladder: &Ladder) -> Start {
    let drawn = usize::try_from(chance.between(0, ladder.levels.len() as i64 - 1)).unwrap_or(0);
    let level = help_level(ladder).filter(|_| chance.happens(0.6)).unwrap_or(drawn);
    let variant = one_of(chance, &ladder.levels[level].variants).clone();
    Start {
        ladder: ladder.id.clone(),
        level: chance.happens(0.8).then(|| u8::try_from(level).unwrap_or(0)),
        variant: chance.happens(0.4).then(|| variant.id.clone()),
        load: chance.happens(0.6).then(|| some_load(chance, &variant)),
    }
}

/// The level of a ladder on which bands carry part of her.
fn help_level(ladder: &Ladder) -> Option<usize> {
    let helped = |v: &Variant| matches!(v.loading, Loading::Assist { .. });
    ladder.levels.iter().position(|l| l.variants.iter().any(helped))
}

fn ten_reps(scene: &mut Scene<'_>) {
    let ladder = scene.some_ladder();
    let places: Vec<_> = scene.catalogue.places().filter(|p| p.ladder.id == ladder).collect();
    let variant = one_of(&mut scene.chance, &places).variant;
    let load = some_load(&mut scene.chance, variant);
    scene.pen.write(Payload::TenReps { variant: variant.id.clone(), load });
}
