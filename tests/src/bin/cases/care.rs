//! What bears on a day beside the plan: an intake with its conditions, clearances, what the coach rules out, and what she
//! says at check-in.

use chrono::Duration;
use newel_engine::catalogue::{Caution, Position};
use newel_engine::ids::{ConditionId, LadderId, RunId};
use newel_engine::record::{ClearedThing, Payload, Readiness, RestrictionKind, TodayThing, Voice};

use crate::draw::{Scene, one_of};
use crate::things::weight;

/// Conditions that are drawn: those that ask for more in reserve, that rule something out, that wait for the provider, at
/// every stage or in pregnancy alone, and one that stops all training before a clearance.
const CONDITIONS: [&str; 16] = [
    "anaemia",
    "anaemia",
    "anaemia",
    "anaemia-felt",
    "anaemia-felt",
    "wrist-pain",
    "wrist-pain",
    "shoulder-pain",
    "shoulder-pain",
    "girdle-pain",
    "prolapse",
    "pelvic-floor-tense",
    "gestational-diabetes",
    "twins",
    "placenta-praevia",
    "thyroid-unsettled",
];

/// An intake as the coach fills it in. Now and then a clearance for a condition of it follows.
pub fn screening(scene: &mut Scene<'_>) {
    let never = scene.chance.happens(0.25);
    let trained = !never && scene.chance.happens(0.5);
    let mut conditions: Vec<ConditionId> = Vec::new();
    if scene.chance.happens(0.45) {
        for _ in 0..scene.chance.between(1, 2) {
            let id = ConditionId::from(*one_of(&mut scene.chance, &CONDITIONS));
            if !conditions.contains(&id) {
                conditions.push(id);
            }
        }
    }
    scene.pen.write(Payload::Screening {
        conditions: conditions.clone(),
        baselines: Vec::new(),
        trained,
        never,
        by: Some(Voice::Coach),
        note: None,
        instead_of: Vec::new(),
    });
    for condition in conditions {
        if scene.chance.happens(0.5) {
            clearance(scene, condition);
        }
    }
}

/// A letter that speaks of a condition, or of all that waits; some of them end.
fn clearance(scene: &mut Scene<'_>, condition: ConditionId) {
    let today = scene.pen.today();
    let speaks_of = match scene.chance.between(0, 4) {
        0 => None,
        1 => Some(vec![ClearedThing::Birth]),
        _ => Some(vec![ClearedThing::Condition { condition }]),
    };
    let until = scene.chance.happens(0.3).then(|| today + Duration::days(scene.chance.between(0, 40)));
    scene.pen.write(Payload::Clearance {
        who: "midwife".into(),
        on: today,
        said: "may train".into(),
        speaks_of,
        until,
    });
}

/// Something is ruled out by the coach or a provider.
pub fn restriction(scene: &mut Scene<'_>) {
    let ladder: LadderId = scene.some_ladder();
    let level = u8::try_from(scene.chance.between(0, 3)).unwrap_or(0);
    let what = match scene.chance.between(0, 9) {
        0 => RestrictionKind::LevelAbove { ladder, level },
        1 => RestrictionKind::AllLoad,
        2 | 3 => {
            let most = weight(&mut scene.chance, 1.0, 20.0);
            let ladder = scene.chance.happens(0.5).then_some(ladder);
            RestrictionKind::LoadAbove { most, ladder }
        }
        4 | 5 => {
            let reps = u8::try_from(scene.chance.between(2, 7)).unwrap_or(4);
            RestrictionKind::ReserveBelow { reps }
        }
        6 => RestrictionKind::BreathHolding,
        7 => RestrictionKind::Position {
            position: *one_of(
                &mut scene.chance,
                &[Position::Standing, Position::Seated, Position::Supine, Position::Prone],
            ),
        },
        8 => RestrictionKind::Caution { caution: *one_of(&mut scene.chance, &Caution::ALL) },
        _ => {
            let places: Vec<_> = scene.catalogue.places().filter(|p| p.ladder.id == ladder).collect();
            let variant = one_of(&mut scene.chance, &places).variant.id.clone();
            RestrictionKind::Variant { variant }
        }
    };
    let until = scene.chance.happens(0.5).then(|| scene.pen.today() + Duration::days(20));
    scene.pen.write(Payload::Restriction { what, until, note: "clinic".into() });
}

/// What she says before a session; now and then twice.
pub fn check_in(scene: &mut Scene<'_>, run: RunId) {
    for _ in 0..if scene.chance.happens(0.04) { 2 } else { 1 } {
        let readiness = match scene.chance.between(0, 11) {
            0 => Readiness::Tired,
            1 => Readiness::Unwell,
            _ => Readiness::Usual,
        };
        let things = [
            (TodayThing::AfterIllness, 0.06),
            (TodayThing::NoKit, 0.07),
            (TodayThing::ChildNear, 0.06),
            (TodayThing::Period, 0.03),
        ];
        let today = things.into_iter().filter(|(_, p)| scene.chance.happens(*p)).map(|(t, _)| t).collect();
        scene.pen.write(Payload::CheckIn { run, readiness, symptoms: Vec::new(), today });
    }
}
