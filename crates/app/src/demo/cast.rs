//! The invented people. Nobody here exists; names, bodies and weeks are made up.

use super::part::{Deed, Felt, Morning, Part, kit, one, pair, start, with_barbell, with_pair_in_lb};
use super::story::days_from;
use newel_engine::ids::LadderId;
use newel_engine::kit::Thing;
use newel_engine::record::{Baseline, HoldAnswer, RestrictionKind, SymptomAmount};
use newel_engine::stage::{BirthMode, Stage};

/// A deed before the first session.
const FIRST: i64 = super::story::DAYS + 1;

/// Pregnant with so many weeks and days on the day of the demonstration, by a clinician's due date.
fn pregnant(on: chrono::NaiveDate, weeks: i64, days: i64) -> Stage {
    let left = newel_engine::stage::TERM_DAYS - (weeks * 7 + days);
    Stage::pregnant(Some(days_from(on, -left)), None)
}

fn after_birth(on: chrono::NaiveDate, days: i64, mode: BirthMode) -> Stage {
    Stage::Postpartum { birth: days_from(on, days), mode, severe_tear: Some(false) }
}

/// All clients.
pub(super) fn parts() -> Vec<Part> {
    vec![amara(), noemi(), josie(), freya(), lucia(), hana(), selin()]
}

fn base() -> Part {
    Part {
        slug: "",
        line: "",
        name: "",
        clinic: "",
        stage: |_| Stage::Neither,
        conditions: Vec::new(),
        baselines: Vec::new(),
        trained: false,
        programme: "Even ground",
        body_kg: (68.0, true),
        strength: 1.0,
        gain: 1.0,
        kit: kit(&[], &[], &[], &[]),
        week: &[0, 3],
        missed: 0.12,
        away: &[],
        last: 1,
        ten_reps: Vec::new(),
        felt: Vec::new(),
        notes: &[],
        deeds: Vec::new(),
        answers_last: true,
    }
}

/// 31 weeks pregnant, trained before; pairs in kg.
fn amara() -> Part {
    let trained = "You know this one. Start here and tell me how it goes.";
    Part {
        slug: "amara",
        line: "31 weeks pregnant, trained before, pairs of dumbbells in kg",
        name: "Amara Lindqvist",
        clinic: "Midwife, 555 0101",
        stage: |on| pregnant(on, 31, 2),
        trained: true,
        programme: "Steady floor",
        body_kg: (71.0, true),
        strength: 1.15,
        gain: 0.6,
        kit: kit(
            &[],
            &[2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0],
            &["medium band", "firm band", "strong band"],
            &[Thing::LoopBand, Thing::Step],
        ),
        week: &[0, 2, 5],
        missed: 0.14,
        away: &[(48, 44)],
        ten_reps: vec![("squat-goblet".into(), one(12.0)), ("row-hinged".into(), pair(8.0))],
        felt: vec![
            Felt::at(58, "push-up", 1, "doming", Some(SymptomAmount::Little)).place("belly").at_rest(),
            Felt::at(33, "squat", 2, "heaviness", Some(SymptomAmount::Little)).place("pelvic-floor"),
            Felt::at(12, "side-plank", 0, "tightenings-painless", None).at_rest(),
        ],
        notes: &[(47, "First week back after a cold."), (5, "Breathing out on the way up helps.")],
        deeds: vec![
            (
                FIRST,
                vec![
                    Deed::Start(start("squat", 3, Some("squat-goblet"), None), trained),
                    Deed::Start(start("hinge", 2, None, Some(pair(12.0))), trained),
                    Deed::Start(start("row", 2, None, None), trained),
                    Deed::Start(start("push-up", 2, None, None), trained),
                    Deed::Start(start("chest-press", 1, None, Some(one(8.0))), trained),
                    Deed::Start(
                        start("split-squat", 2, Some("split-squat-loaded"), Some(pair(4.0))),
                        trained,
                    ),
                    Deed::Start(start("side-plank", 1, None, None), trained),
                ],
            ),
            (
                31,
                vec![Deed::Note(
                    "Heaviness once is worth a step down and nothing more. Breathe out as you stand up.",
                )],
            ),
        ],
        answers_last: false,
        ..base()
    }
}

/// Eleven weeks after a caesarean, cleared; single dumbbells. Heaviness on the split squat.
fn noemi() -> Part {
    let again = "A new beginning after the birth. Slow, and stop early.";
    Part {
        slug: "noemi",
        line: "11 weeks after a caesarean, cleared, single dumbbells; heaviness on the split squat",
        name: "Noemi Castellan",
        clinic: "Clinic, 555 0102",
        stage: |on| pregnant(on, 51, 2),
        trained: true,
        programme: "Steady floor",
        body_kg: (66.0, true),
        strength: 1.1,
        gain: 0.8,
        kit: kit(&[4.0, 6.0, 8.0, 10.0, 12.0], &[], &["light band", "medium band"], &[Thing::LoopBand]),
        week: &[0, 2, 4],
        missed: 0.1,
        away: &[(80, 66), (59, 55), (52, 48), (45, 41), (38, 36)],
        last: 3,
        felt: vec![
            Felt::at(13, "split-squat", 1, "heaviness", Some(SymptomAmount::Little)).place("pelvic-floor"),
            Felt::at(9, "split-squat", 0, "heaviness", Some(SymptomAmount::Clearly)).place("pelvic-floor"),
        ],
        notes: &[(64, "Ten quiet minutes. Good to be back."), (20, "Baby awake, so the rests were long.")],
        deeds: vec![
            (78, vec![Deed::Stage(|on| after_birth(on, 79, BirthMode::Caesarean))]),
            (66, vec![Deed::TakeUp("Breathing first. More when the clinic has said yes.")]),
            (
                35,
                vec![
                    Deed::Clear(
                        "Consultant at the six-week visit",
                        "Wound healed, training may be built up slowly",
                    ),
                    Deed::Start(start("squat", 2, Some("squat-goblet-chair"), Some(one(4.0))), again),
                    Deed::Start(start("hinge", 1, Some("hinge-one-dumbbell"), Some(one(8.0))), again),
                    Deed::Start(start("row", 1, None, Some(one(6.0))), again),
                    Deed::Start(start("chest-press", 1, None, Some(one(6.0))), again),
                    Deed::Start(start("split-squat", 1, None, None), again),
                    Deed::Note("Cleared. Everything begins light, whatever you lifted before."),
                ],
            ),
        ],
        ..base()
    }
}

/// 24 weeks pregnant, new to lifting, girdle pain; bands and one pair in lb.
fn josie() -> Part {
    Part {
        slug: "josie",
        line: "24 weeks pregnant, new to lifting, girdle pain, bands and one pair in lb",
        name: "Josie Tran",
        clinic: "Midwife, 555 0103",
        stage: |on| pregnant(on, 24, 3),
        conditions: vec!["girdle-pain".into()],
        baselines: vec![Baseline { kind: "girdle-pain".into(), amount: SymptomAmount::Pain(2) }],
        body_kg: (63.0, false),
        strength: 0.95,
        gain: 0.8,
        kit: with_pair_in_lb(
            kit(&[], &[], &["light band", "medium band", "firm band"], &[Thing::LoopBand]),
            8.0,
        ),
        missed: 0.1,
        last: 2,
        felt: vec![
            Felt::at(60, "squat", 1, "girdle-pain", Some(SymptomAmount::Pain(2))).place("pelvis-back"),
            Felt::at(38, "hinge", 1, "girdle-pain", Some(SymptomAmount::Pain(4))).place("pelvis-back"),
            Felt::at(16, "squat", 0, "girdle-pain", Some(SymptomAmount::Pain(2))).place("pelvis-front"),
        ],
        notes: &[
            (70, "I did not know that I could do this."),
            (37, "Sitting all day made it worse, I think."),
        ],
        deeds: vec![
            (
                FIRST,
                vec![
                    Deed::Start(
                        start("squat", 1, None, None),
                        "From a chair, slowly. That is enough to begin with.",
                    ),
                    Deed::Start(
                        start("hinge", 1, Some("hinge-band"), None),
                        "With the band under both feet.",
                    ),
                ],
            ),
            (36, vec![Deed::Note("Short range on the hinge for now, both feet level.")]),
        ],
        ..base()
    }
}

/// Seven months after a vaginal birth, much kit, ready for more.
fn freya() -> Part {
    let ready = "You did this before the pregnancy. Try it at the lower end.";
    Part {
        slug: "freya",
        line: "seven months after a vaginal birth, much kit, ready for more",
        name: "Freya Mwangi",
        clinic: "Surgery, 555 0104",
        stage: |on| after_birth(on, 214, BirthMode::Vaginal),
        trained: true,
        programme: "Steady floor",
        body_kg: (67.0, true),
        strength: 1.3,
        gain: 1.4,
        kit: with_barbell(
            kit(
                &[20.0],
                &[2.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 14.0, 16.0],
                &["light band", "medium band", "firm band", "strong band"],
                &[Thing::Bench, Thing::PullUpBar, Thing::Step, Thing::LoopBand, Thing::Straps],
            ),
            15.0,
            &[1.25, 2.5, 5.0, 10.0],
        ),
        week: &[1, 3, 6],
        missed: 0.08,
        last: 2,
        ten_reps: vec![("squat-goblet".into(), one(12.0))],
        felt: vec![Felt::at(44, "squat", 0, "soreness-both-legs", None).at_rest()],
        notes: &[(30, "Slept through, felt strong."), (9, "I could do more on nearly everything.")],
        deeds: vec![
            (
                FIRST,
                vec![
                    Deed::Start(start("squat", 3, Some("squat-goblet"), None), ready),
                    Deed::Start(start("hinge", 2, None, Some(pair(10.0))), ready),
                    Deed::Start(start("row", 2, Some("row-hinged"), Some(pair(8.0))), ready),
                    Deed::Start(start("chest-press", 2, Some("chest-press-floor"), Some(pair(6.0))), ready),
                    Deed::Start(start("push-up", 2, None, None), ready),
                    Deed::Start(start("split-squat", 1, None, None), ready),
                ],
            ),
            (26, vec![Deed::Note("All of it looks easy for you by now. We look at the pull-up bar next.")]),
        ],
        ..base()
    }
}

/// Neither pregnant nor after a birth, seldom lifts, wrist pain, hardly any kit; silent for twelve days.
fn lucia() -> Part {
    Part {
        slug: "lucia",
        line: "neither, seldom lifts, wrist pain, one band; silent for twelve days",
        name: "Lucia Petrov",
        clinic: "Surgery, 555 0105",
        conditions: vec!["wrist-pain".into()],
        body_kg: (74.0, false),
        kit: kit(&[], &[], &["light band"], &[]),
        week: &[1, 5],
        missed: 0.25,
        away: &[(55, 43)],
        last: 12,
        felt: vec![
            Felt::at(65, "row", 1, "wrist-pain", Some(SymptomAmount::Pain(2))).place("wrist-left").at_rest(),
        ],
        notes: &[(42, "Long gap, sorry. Work.")],
        ..base()
    }
}

/// A known prolapse with heaviness as usual, 40 weeks after birth; trains at her baseline.
fn hana() -> Part {
    let usual = "You know what is usual for you. Anything above it, tap.";
    Part {
        slug: "hana",
        line: "40 weeks after a birth, a known prolapse, trains at her usual heaviness",
        name: "Hana Kowalczyk",
        clinic: "Pelvic health physiotherapist, 555 0106",
        stage: |on| after_birth(on, 283, BirthMode::Assisted),
        conditions: vec!["prolapse".into()],
        baselines: vec![Baseline { kind: "heaviness".into(), amount: SymptomAmount::Little }],
        programme: "Two short days",
        body_kg: (62.0, true),
        kit: kit(
            &[12.0, 16.0],
            &[2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0],
            &["light band", "medium band", "firm band"],
            &[Thing::Step, Thing::LoopBand],
        ),
        week: &[0, 3],
        missed: 0.06,
        last: 1,
        felt: vec![
            Felt::at(70, "squat", 2, "heaviness", Some(SymptomAmount::Little)).place("pelvic-floor"),
            Felt::at(50, "step-up", 1, "knee-pain", Some(SymptomAmount::Pain(6))).place("knee-right"),
            Felt::at(34, "hinge", 2, "heaviness", Some(SymptomAmount::Clearly)).place("pelvic-floor"),
            Felt::at(14, "squat", 2, "heaviness", Some(SymptomAmount::Little)).place("pelvic-floor"),
        ],
        notes: &[(49, "The knee is from the stairs at home."), (4, "Evening session, pessary in.")],
        deeds: vec![
            (
                FIRST,
                vec![
                    Deed::Restrict(
                        RestrictionKind::LevelAbove { ladder: LadderId::from("step-up"), level: 2 },
                        "No high step before the check at the physiotherapist",
                    ),
                    Deed::Start(start("squat", 2, Some("squat-goblet-chair"), Some(one(6.0))), usual),
                    Deed::Start(start("hinge", 1, Some("hinge-one-dumbbell"), Some(one(12.0))), usual),
                    Deed::Start(start("row", 1, None, Some(one(8.0))), usual),
                    Deed::Start(start("overhead-press", 1, None, Some(pair(3.0))), usual),
                    Deed::Start(start("push-up", 1, None, None), usual),
                    Deed::Start(start("step-up", 1, None, None), usual),
                ],
            ),
            (46, vec![Deed::Answer(HoldAnswer::GoOn, "Lower step, slowly, and stop at the first twinge.")]),
        ],
        ..base()
    }
}

/// 34 weeks pregnant; a sign this week that stops training, and no clearance yet.
fn selin() -> Part {
    let begin = "A light beginning; the first set tells us.";
    Part {
        slug: "selin",
        line: "34 weeks pregnant; a red flag this week, no clearance yet",
        name: "Selin Duarte",
        clinic: "Midwife, 555 0107",
        stage: |on| pregnant(on, 34, 0),
        programme: "Two short days",
        body_kg: (70.0, true),
        gain: 0.7,
        kit: kit(&[6.0, 8.0, 12.0, 16.0], &[3.0, 5.0], &["light band", "medium band"], &[Thing::Step]),
        week: &[2, 5],
        missed: 0.12,
        last: 3,
        felt: vec![
            Felt::at(40, "squat", 1, "leak-effort", Some(SymptomAmount::Little)).place("pelvic-floor"),
            Felt::at(3, "", 1, "dizzy-staying", None)
                .words("Sat down for ten minutes and it did not go away.")
                .at_rest()
                .morning(Morning::Unanswered),
        ],
        notes: &[(60, "Nausea is gone, this is fun.")],
        deeds: vec![
            (
                FIRST,
                vec![
                    Deed::Start(start("squat", 2, Some("squat-goblet-chair"), Some(one(6.0))), begin),
                    Deed::Start(start("hinge", 1, Some("hinge-one-dumbbell"), Some(one(8.0))), begin),
                    Deed::Start(start("row", 1, None, Some(one(6.0))), begin),
                    Deed::Start(start("push-up", 1, None, None), begin),
                ],
            ),
            (
                38,
                vec![Deed::Note("Thank you for telling me. Exhale before you stand up; we keep it lighter.")],
            ),
        ],
        ..base()
    }
}
