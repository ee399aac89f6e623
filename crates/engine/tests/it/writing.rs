//! Writing a programme: a session from nothing, and random edits that never leave one that cannot be written on.

use newel_engine::catalogue::Catalogue;
use newel_engine::ids::{LadderId, ProgrammeId};
use newel_engine::programme::{Amount, BlockForm, BlockPart, Dose, LevelSpan, Phase, Programme, Tempo};
use newel_engine::revision::changes;
use newel_engine::writing::{Edit, EditError, WeekStep, blank, edited};
use proptest::prelude::*;
use std::collections::BTreeSet;
use uuid::Uuid;

struct Desk {
    programme: Programme,
    catalogue: Catalogue,
    count: u32,
}

impl Desk {
    fn new() -> Self {
        let programme = blank(ProgrammeId(Uuid::nil()), "From nothing");
        Self { programme, catalogue: Catalogue::built_in().unwrap(), count: 0 }
    }

    fn tries(&mut self, edit: &Edit) -> Result<(), EditError> {
        let mut count = self.count;
        let mut fresh = || {
            count += 1;
            format!("id-{count}")
        };
        let next = edited(&self.programme, &self.catalogue, edit, &mut fresh)?;
        self.programme = next;
        self.count = count;
        Ok(())
    }

    fn does(&mut self, edit: Edit) -> &mut Self {
        self.tries(&edit).unwrap_or_else(|e| panic!("{edit:?}: {e}"));
        self
    }
}

fn ladders(names: &[&str]) -> Vec<LadderId> {
    names.iter().map(|n| LadderId::from(*n)).collect()
}

#[test]
fn a_session_of_a_tri_set_a_superset_and_a_finisher_is_four_edits() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    for (names, part) in [
        (&["squat", "row", "side-plank"][..], BlockPart::Work),
        (&["hinge", "push-up"], BlockPart::Work),
        (&["carry"], BlockPart::Finisher),
    ] {
        desk.does(Edit::AddBlock { session: session.clone(), ladders: ladders(names), part });
    }
    let forms: Vec<_> = desk.programme.sessions[0].blocks.iter().map(|b| b.form).collect();
    assert_eq!(forms, [BlockForm::TriSet, BlockForm::Superset, BlockForm::Finisher]);
    assert_eq!(desk.programme.check(&desk.catalogue), Ok(()), "and it can be trained");
    let amounts: Vec<_> = desk.programme.sessions[0].slots().map(|(_, s)| s.dose.amount).collect();
    assert_eq!(amounts[0], Amount::Reps { low: 8, high: 12 });
    assert_eq!(amounts[2], Amount::Seconds { low: 20, high: 40 }, "a side plank is held");
}

#[test]
fn a_block_takes_the_form_of_what_stands_in_it_and_goes_when_it_is_empty() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    desk.does(Edit::AddBlock {
        session: session.clone(),
        ladders: ladders(&["squat"]),
        part: BlockPart::Work,
    });
    desk.does(Edit::AddBlock { session, ladders: ladders(&["row", "hinge"]), part: BlockPart::Work });
    let block = |desk: &Desk, n: usize| desk.programme.sessions[0].blocks[n].clone();
    let (first, second) = (block(&desk, 0), block(&desk, 1));
    assert_eq!((first.form, second.form), (BlockForm::StraightSets, BlockForm::Superset));
    // The squat joins the others: its own block goes, theirs is a tri-set.
    desk.does(Edit::MoveSlot { slot: first.slots[0].id.clone(), block: second.id.clone(), to: 1 });
    assert_eq!(desk.programme.sessions[0].blocks.len(), 1);
    let joined = block(&desk, 0);
    assert_eq!(joined.form, BlockForm::TriSet);
    let names: Vec<_> = joined.slots.iter().map(|s| s.ladder.as_str().to_owned()).collect();
    assert_eq!(names, ["row", "squat", "hinge"]);
    for slot in joined.slots {
        desk.does(Edit::DropSlot { slot: slot.id });
    }
    assert_eq!(desk.programme.sessions[0].blocks.len(), 0);
}

#[test]
fn a_copy_has_ids_of_its_own_and_everything_else_the_same() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    desk.does(Edit::AddBlock {
        session: session.clone(),
        ladders: ladders(&["squat", "row"]),
        part: BlockPart::Work,
    });
    desk.does(Edit::CopySession { session });
    let [a, b] = &desk.programme.sessions[..] else { panic!("two sessions") };
    assert_eq!((a.title.as_str(), b.title.as_str()), ("Monday", "Monday 2"));
    assert_eq!(a.blocks[0].slots[0].dose, b.blocks[0].slots[0].dose);
    assert_eq!(desk.programme.check(&desk.catalogue), Ok(()), "no id stands twice");
}

#[test]
fn another_ladder_keeps_the_dose_where_it_is_counted_alike_and_forgets_levels_of_the_old_one() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    desk.does(Edit::AddBlock { session, ladders: ladders(&["squat"]), part: BlockPart::Work });
    let slot = desk.programme.sessions[0].blocks[0].slots[0].id.clone();
    let dose = Dose {
        amount: Amount::Reps { low: 5, high: 8 },
        target_rir: 2,
        tempo: Some(Tempo { down: 3, pause: 0, up: 1 }),
    };
    desk.does(Edit::AmountOfSlot { slot: slot.clone(), low: Some(5), high: None, week: None });
    desk.does(Edit::AmountOfSlot { slot: slot.clone(), low: None, high: Some(8), week: None });
    desk.does(Edit::ReserveOfSlot { slot: slot.clone(), target_rir: 2, week: None });
    desk.does(Edit::TempoOfSlot { slot: slot.clone(), down: Some(3), pause: None, up: None, week: None });
    desk.does(Edit::LevelsOfSlot { slot: slot.clone(), low: Some(1), high: None });
    desk.does(Edit::LevelsOfSlot { slot: slot.clone(), low: None, high: Some(3) });
    let first = desk.programme.sessions[0].blocks[0].slots[0].clone();
    assert_eq!((first.dose, first.levels), (dose, Some(LevelSpan { low: 1, high: 3 })));
    desk.does(Edit::LadderOfSlot { slot: slot.clone(), ladder: "hinge".into() });
    let now = |desk: &Desk| desk.programme.sessions[0].blocks[0].slots[0].clone();
    assert_eq!((now(&desk).dose, now(&desk).levels), (dose, None));
    desk.does(Edit::LadderOfSlot { slot: slot.clone(), ladder: "side-plank".into() });
    assert_eq!(
        now(&desk).dose.amount,
        Amount::Seconds { low: 20, high: 40 },
        "a plank is not counted in reps"
    );
    assert_eq!(now(&desk).dose.target_rir, 2, "the rest stays");
    let wrong = Edit::LevelsOfSlot { slot: slot.clone(), low: None, high: Some(99) };
    assert_eq!(desk.tries(&wrong), Err(EditError::Range));
    // An end that passes the other takes it along; all levels are none named; a tempo is left free again.
    desk.does(Edit::AmountOfSlot { slot: slot.clone(), low: Some(60), high: None, week: None });
    assert_eq!(now(&desk).dose.amount, Amount::Seconds { low: 60, high: 60 });
    desk.does(Edit::LevelsOfSlot { slot: slot.clone(), low: None, high: Some(1) });
    assert_eq!(now(&desk).levels, Some(LevelSpan { low: 0, high: 1 }));
    desk.does(Edit::LevelsOfSlot { slot: slot.clone(), low: Some(0), high: Some(2) });
    assert_eq!(now(&desk).levels, None);
    desk.does(Edit::FreeTempo { slot, week: None });
    assert_eq!(now(&desk).dose.tempo, None);
}

#[test]
fn the_minutes_that_a_session_is_meant_to_take_stand_in_it_and_are_written_only_where_they_are() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    let written = |desk: &Desk| serde_json::to_string(&desk.programme).unwrap();
    let before = written(&desk);
    assert!(!before.contains("minutes"));
    desk.does(Edit::MinutesOfSession { session: session.clone(), minutes: Some(30) });
    assert_eq!(desk.programme.sessions[0].minutes, Some(30));
    let read: Programme = serde_json::from_str(&written(&desk)).unwrap();
    assert_eq!(read, desk.programme);
    desk.does(Edit::MinutesOfSession { session, minutes: None });
    assert_eq!(written(&desk), before, "byte for byte");
}

#[test]
fn what_is_out_of_range_or_not_there_changes_nothing() {
    let mut desk = Desk::new();
    desk.does(Edit::AddSession { title: "Monday".into(), phase: None });
    let session = desk.programme.sessions[0].id.clone();
    desk.does(Edit::AddBlock {
        session: session.clone(),
        ladders: ladders(&["squat"]),
        part: BlockPart::Work,
    });
    let before = desk.programme.clone();
    let block = before.sessions[0].blocks[0].id.clone();
    let shape = |rounds: u8, rest: u16| Edit::ShapeBlock {
        block: block.clone(),
        rounds: Some(rounds),
        rest_seconds: Some(rest),
        rest_between_seconds: None,
        part: None,
        week: None,
    };
    for (edit, why) in [
        (Edit::Title { title: " ".into() }, EditError::Range),
        (Edit::Title { title: "x".repeat(81) }, EditError::Range),
        (Edit::PerWeek { per_week: 0 }, EditError::Range),
        (Edit::Weeks { weeks: Some(53) }, EditError::Range),
        (Edit::MinutesOfSession { session: session.clone(), minutes: Some(4) }, EditError::Range),
        (Edit::MinutesOfSession { session: session.clone(), minutes: Some(181) }, EditError::Range),
        (Edit::MinutesOfSession { session: "elsewhere".into(), minutes: None }, EditError::NotThere),
        (shape(0, 60), EditError::Range),
        (shape(13, 60), EditError::Range),
        (shape(3, 601), EditError::Range),
        (
            Edit::AddBlock { session: session.clone(), ladders: vec![], part: BlockPart::Work },
            EditError::Range,
        ),
        (
            Edit::AddBlock {
                session: session.clone(),
                ladders: ladders(&["no-such"]),
                part: BlockPart::Work,
            },
            EditError::NotThere,
        ),
        (Edit::DropSession { session: "elsewhere".into() }, EditError::NotThere),
        (Edit::MoveSession { session, to: 1 }, EditError::Range),
        (Edit::DropSlot { slot: "elsewhere".into() }, EditError::NotThere),
    ] {
        assert_eq!(desk.tries(&edit), Err(why), "{edit:?}");
        assert_eq!(desk.programme, before, "{edit:?}");
    }
}

/// An edit by numbers: what they name is looked up in the programme as it is, and may be nothing.
fn edit_by(desk: &Desk, kind: u8, a: usize, b: usize, c: u16) -> Edit {
    const LADDERS: [&str; 6] = ["squat", "row", "side-plank", "carry", "breathing", "no-such-ladder"];
    let p = &desk.programme;
    let pick = |n: usize| {
        p.sessions.get(n % p.sessions.len().max(1)).map_or_else(|| "none".into(), |s| s.id.clone())
    };
    let blocks: Vec<_> = p.sessions.iter().flat_map(|s| &s.blocks).map(|b| b.id.clone()).collect();
    let slots: Vec<_> = p.sessions.iter().flat_map(|s| s.slots().map(|(_, slot)| slot.id.clone())).collect();
    let block = |n: usize| blocks.get(n % blocks.len().max(1)).cloned().unwrap_or_else(|| "none".into());
    let slot = |n: usize| slots.get(n % slots.len().max(1)).cloned().unwrap_or_else(|| "none".into());
    let ladder = LadderId::from(LADDERS[b % LADDERS.len()]);
    let small = u8::try_from(c % 15).unwrap_or(0);
    let some = !b.is_multiple_of(3);
    let week = a.is_multiple_of(3).then(|| u8::try_from(b % 7).unwrap_or(0));
    let phases: Vec<_> = p.phases.iter().map(|p| p.id.clone()).collect();
    let phase = |n: usize| phases.get(n % phases.len().max(1)).cloned().unwrap_or_else(|| "none".into());
    let part = |n: usize| {
        [BlockPart::WarmUp, BlockPart::Work, BlockPart::Work, BlockPart::Finisher, BlockPart::CoolDown][n % 5]
    };
    match kind % 31 {
        0 => Edit::Title { title: format!("title {c}") },
        1 if a.is_multiple_of(2) => Edit::PerWeek { per_week: small },
        1 => Edit::Weeks { weeks: some.then_some(small) },
        2 => Edit::AddSession { title: format!("session {c}"), phase: (!some).then(|| phase(a)) },
        3 => Edit::CopySession { session: pick(a) },
        4 => Edit::MoveSession { session: pick(a), to: small },
        5 => Edit::TitleSession { session: pick(a), title: "x".repeat(usize::from(c % 100)) },
        6 => Edit::DropSession { session: pick(a) },
        7 | 8 => {
            let names = (0..b % 5).map(|n| LadderId::from(LADDERS[(a + n) % LADDERS.len()])).collect();
            Edit::AddBlock { session: pick(a), ladders: names, part: part(usize::from(c)) }
        }
        9 => Edit::CopyBlock { block: block(a) },
        10 => Edit::MoveBlock { block: block(a), session: pick(b), to: small },
        11 => Edit::ShapeBlock {
            block: block(a),
            rounds: some.then_some(small),
            rest_seconds: Some(c),
            rest_between_seconds: some.then_some(c / 2),
            part: (b.is_multiple_of(2)).then_some(part(b / 2)),
            week: week.filter(|_| c.is_multiple_of(2)),
        },
        12 => Edit::DropBlock { block: block(a) },
        13 => Edit::AddSlot { block: block(a), ladder },
        14 => Edit::MoveSlot { slot: slot(a), block: block(b), to: small },
        15 => Edit::LadderOfSlot { slot: slot(a), ladder },
        16 => Edit::AmountOfSlot {
            slot: slot(a),
            low: some.then_some(c),
            high: (c.is_multiple_of(2)).then_some(c / 2),
            week,
        },
        17 => Edit::ReserveOfSlot { slot: slot(a), target_rir: small, week },
        18 => Edit::TempoOfSlot {
            slot: slot(a),
            down: some.then_some(small),
            pause: None,
            up: Some(small * 2),
            week,
        },
        19 if some => Edit::LevelsOfSlot {
            slot: slot(a),
            low: Some(small),
            high: (c.is_multiple_of(2)).then_some(small),
        },
        19 => Edit::FreeTempo { slot: slot(a), week },
        20 => Edit::MinutesOfSession { session: pick(a), minutes: some.then_some(c) },
        21 => Edit::DropSlot { slot: slot(a) },
        22 => Edit::LightWeek { phase: some.then(|| phase(a)), week: small, light: !c.is_multiple_of(4) },
        23 => Edit::AddPhase { title: format!("phase {c}") },
        24 => Edit::CopyPhase { phase: phase(a) },
        25 => Edit::MovePhase { phase: phase(a), to: small % 4 },
        26 => Edit::TitlePhase { phase: phase(a), title: format!("phase {c}") },
        27 => Edit::WeeksOfPhase { phase: phase(a), weeks: small },
        28 if some => Edit::PhaseOfSession { session: pick(a), phase: phase(b) },
        28 => Edit::DropPhase { phase: phase(a) },
        29 if some => Edit::AsEveryWeek { block: block(a), week: small },
        29 => Edit::EvenWeeks { session: pick(a) },
        _ => Edit::StepUp {
            session: pick(a),
            from: u8::try_from(b % 4).unwrap_or(0),
            to: small,
            every: u8::try_from(a % 4).unwrap_or(0),
            step: WeekStep {
                reps: small % 3,
                seconds: u8::try_from(c % 70).unwrap_or(0),
                rounds: u8::try_from(b % 3).unwrap_or(0),
                reserve: u8::try_from(a % 3).unwrap_or(0),
            },
        },
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]
    #[test]
    fn random_edits_leave_ids_unique_forms_right_and_no_block_empty(
        edits in prop::collection::vec((any::<u8>(), 0..40_usize, 0..40_usize, 0..700_u16), 1..80)
    ) {
        let mut desk = Desk::new();
        let mut made = 0;
        for (kind, a, b, c) in edits {
            let edit = edit_by(&desk, kind, a, b, c);
            let before = desk.programme.clone();
            match desk.tries(&edit) {
                Ok(()) => made += 1,
                Err(_) => prop_assert_eq!(&desk.programme, &before),
            }
            // Whatever was changed is told, and nothing else is.
            let same = Programme { revision: before.revision, ..desk.programme.clone() } == before;
            prop_assert_eq!(changes(&before, &desk.programme).is_empty(), same, "{:?}", edit);
            let mut seen = BTreeSet::new();
            for session in &desk.programme.sessions {
                prop_assert!(seen.insert(session.id.as_str().to_owned()));
                for block in &session.blocks {
                    prop_assert!(seen.insert(block.id.as_str().to_owned()));
                    prop_assert!(!block.slots.is_empty(), "{:?}", edit);
                    let part = block.form.part();
                    prop_assert_eq!(block.form, newel_engine::writing::form_of(block.slots.len(), part));
                    for slot in &block.slots {
                        prop_assert!(seen.insert(slot.id.as_str().to_owned()));
                    }
                }
            }
            // Whatever is written can be trained as soon as no session is empty.
            let whole = !desk.programme.sessions.is_empty()
                && desk.programme.sessions.iter().all(|s| s.slots().next().is_some());
            let filled = |phase: &Phase| desk.programme.sessions.iter().any(|s| s.is_of(Some(phase)));
            let whole = whole && desk.programme.phases.iter().all(filled);
            prop_assert_eq!(desk.programme.check(&desk.catalogue).is_ok(), whole, "{:?}", edit);
        }
        prop_assert!(made > 0 || desk.programme.sessions.is_empty());
    }
}

#[test]
fn a_copy_of_a_session_gets_the_next_number_or_letter_that_is_free() {
    let titles = |names: &[&str], copy: usize| {
        let mut desk = Desk::new();
        for name in names {
            desk.does(Edit::AddSession { title: (*name).into(), phase: None });
        }
        let session = desk.programme.sessions[copy].id.clone();
        desk.does(Edit::CopySession { session });
        desk.programme.sessions[copy + 1].title.clone()
    };
    assert_eq!(titles(&["Session 1"], 0), "Session 2");
    assert_eq!(titles(&["Session 1", "Session 2"], 0), "Session 3");
    assert_eq!(titles(&["Session A"], 0), "Session B");
    assert_eq!(titles(&["Session A", "Session B"], 0), "Session C");
    assert_eq!(titles(&["Session Z"], 0), "Session Z 2");
    assert_eq!(titles(&["Lower body"], 0), "Lower body 2");
    assert_eq!(titles(&["7"], 0), "8");
    let long = "é".repeat(80);
    assert_eq!(titles(&[&long], 0), format!("{} 2", "é".repeat(78)), "within its length");
}
