//! What a revision changes, told in codes and values.

use newel_engine::ids::ProgrammeId;
use newel_engine::programme::{
    Amount, Block, BlockForm, Dose, LevelSpan, PlanSession, Programme, Slot, Tempo,
};
use newel_engine::reason::Fact;
use newel_engine::revision::{CHANGE_CODES, Change, changes};
use uuid::Uuid;

fn slot(id: &str, ladder: &str) -> Slot {
    let dose = Dose { amount: Amount::Reps { low: 8, high: 12 }, target_rir: 3, tempo: None };
    Slot { id: id.into(), ladder: ladder.into(), levels: None, dose, by_week: Vec::new() }
}

fn block(id: &str, slots: Vec<Slot>) -> Block {
    let form = if slots.len() == 1 { BlockForm::StraightSets } else { BlockForm::Superset };
    Block {
        id: id.into(),
        form,
        rounds: 3,
        rest_seconds: 90,
        rest_between_seconds: 0,
        by_week: Vec::new(),
        slots,
    }
}

fn programme() -> Programme {
    let sessions = vec![
        PlanSession {
            id: "mon".into(),
            title: "Monday".into(),
            minutes: None,
            phase: None,
            blocks: vec![
                block("m1", vec![slot("a", "squat"), slot("b", "row")]),
                block("m2", vec![slot("c", "hinge")]),
            ],
        },
        PlanSession {
            id: "thu".into(),
            title: "Thursday".into(),
            minutes: None,
            phase: None,
            blocks: vec![block("t1", vec![slot("d", "carry")])],
        },
    ];
    Programme {
        id: ProgrammeId(Uuid::from_u128(1)),
        revision: 1,
        title: "Kitchen".into(),
        per_week: 2,
        weeks: None,
        light_weeks: Vec::new(),
        phases: Vec::new(),
        sessions,
    }
}

/// The changes of an edit, with their codes.
fn told(edit: impl FnOnce(&mut Programme)) -> (Vec<&'static str>, Vec<Change>) {
    let before = programme();
    let mut after = Programme { revision: 2, ..before.clone() };
    edit(&mut after);
    let changes = changes(&before, &after);
    assert!(changes.iter().all(|c| CHANGE_CODES.contains(&c.code)), "{changes:?}");
    (changes.iter().map(|c| c.code).collect(), changes)
}

fn number(change: &Change, name: &str) -> f64 {
    match change.facts.get(name) {
        Some(Fact::Number(n)) => *n,
        other => panic!("{name}: {other:?}"),
    }
}

#[test]
fn the_number_of_a_revision_alone_changes_nothing() {
    assert_eq!(told(|_| ()).0, [""; 0]);
}

#[test]
fn a_dose_is_told_from_and_to() {
    let (codes, changes) = told(|p| {
        let slot = &mut p.sessions[0].blocks[0].slots[1];
        slot.dose = Dose {
            amount: Amount::Seconds { low: 20, high: 40 },
            target_rir: 2,
            tempo: Some(Tempo { down: 3, pause: 0, up: 1 }),
        };
        slot.levels = Some(LevelSpan { low: 0, high: 2 });
    });
    assert_eq!(codes, ["slot-amount", "slot-target", "slot-tempo", "slot-levels"]);
    assert_eq!(changes[0].facts.get("ladder"), Some(&Fact::Ladder("row".into())));
    assert_eq!(changes[0].facts.get("session"), Some(&Fact::Words("Monday".into())));
    assert_eq!((number(&changes[0], "from_high"), number(&changes[0], "from_timed")), (12.0, 0.0));
    assert_eq!((number(&changes[0], "to_high"), number(&changes[0], "to_timed")), (40.0, 1.0));
    assert_eq!((number(&changes[1], "from"), number(&changes[1], "to")), (3.0, 2.0));
    assert_eq!((number(&changes[2], "from_free"), number(&changes[2], "to_down")), (1.0, 3.0));
    assert_eq!(
        (number(&changes[3], "from_high"), number(&changes[3], "to_low"), number(&changes[3], "to_high")),
        (0.0, 1.0, 3.0),
        "levels are counted from one, and zero stands for all"
    );
}

#[test]
fn what_is_added_removed_and_moved_is_told_once_where_it_stands() {
    let added = told(|p| p.sessions[1].blocks.push(block("t2", vec![slot("e", "squat"), slot("f", "row")])));
    assert_eq!(added.0, ["block-added"], "its slots come with it");
    assert_eq!(number(&added.1[0], "more"), 1.0);
    assert_eq!(told(|p| drop(p.sessions.remove(1))).0, ["session-removed"], "its blocks go with it");
    assert_eq!(told(|p| drop(p.sessions[0].blocks.remove(1))).0, ["block-removed"]);
    assert_eq!(told(|p| p.sessions.swap(0, 1)).0, ["sessions-order"]);
    assert_eq!(told(|p| p.sessions[0].blocks.swap(0, 1)).0, ["blocks-order"]);
    assert_eq!(told(|p| p.sessions[0].blocks[0].slots.swap(0, 1)).0, ["slots-order"]);
    let moved = told(|p| {
        let block = p.sessions[0].blocks.remove(0);
        p.sessions[1].blocks.push(block);
    });
    assert_eq!(moved.0, ["block-moved"]);
    assert_eq!(moved.1[0].facts.get("from"), Some(&Fact::Words("Monday".into())));
    assert_eq!(moved.1[0].facts.get("session"), Some(&Fact::Words("Thursday".into())));
    let slot_moved = told(|p| {
        let slot = p.sessions[0].blocks[0].slots.remove(1);
        p.sessions[0].blocks[0].form = BlockForm::StraightSets;
        p.sessions[0].blocks[1].slots.push(slot);
        p.sessions[0].blocks[1].form = BlockForm::Superset;
    });
    assert_eq!(slot_moved.0, ["slot-moved"]);
    let gone = told(|p| {
        p.sessions[0].blocks[0].slots.remove(1);
        p.sessions[0].blocks[0].form = BlockForm::StraightSets;
    });
    assert_eq!(gone.0, ["slot-removed"], "the form follows");
}

#[test]
fn a_block_and_the_whole_are_told_from_and_to() {
    let (codes, changes) = told(|p| {
        p.title = "Garden".into();
        p.per_week = 3;
        p.weeks = Some(4);
        p.sessions[1].title = "Friday".into();
        p.sessions[1].minutes = Some(40);
        let block = &mut p.sessions[1].blocks[0];
        (block.rounds, block.rest_seconds, block.rest_between_seconds) = (4, 60, 15);
        block.form = BlockForm::Finisher;
        block.slots[0].ladder = "squat".into();
    });
    let expected = [
        "title",
        "per-week",
        "weeks",
        "session-title",
        "session-minutes",
        "block-form",
        "block-rounds",
        "block-rest",
        "block-between",
        "slot-ladder",
    ];
    assert_eq!(codes, expected);
    assert_eq!((number(&changes[2], "from"), number(&changes[2], "to")), (0.0, 4.0), "zero is an open end");
}

#[test]
fn another_programme_is_told_as_such_and_not_piece_by_piece() {
    let (codes, _) = told(|p| {
        p.id = ProgrammeId(Uuid::from_u128(2));
        p.sessions.clear();
    });
    assert_eq!(codes, ["another-programme"]);
}
