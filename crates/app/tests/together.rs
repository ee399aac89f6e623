//! What goes onto paper, and a session that several train together, over the invented practice of the demo.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, FixedOffset};
use newel_app::print::{LetterForm, PrintForm, PrintWhat};
use newel_app::views::{ClassForm, ClassView, OverrideForm, RosterEntry};
use newel_app::{AppError, Newel, Profile, Refusal};
use newel_engine::class::Laid;
use newel_engine::kit::{Dumbbell, Kit, Load};
use newel_engine::programme::Start;
use newel_engine::proposal::{Gate, Outcome};
use newel_engine::units::Weight;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-11-24T08:00:00+01:00").unwrap()
}

struct Practice {
    newel: Newel,
    _folder: tempfile::TempDir,
}

impl Practice {
    fn demo() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let mut newel = Newel::open(folder.path().to_owned()).unwrap();
        newel.demo_make(now(), |_, _| {}).unwrap();
        newel.profile_open("demo-coach").unwrap();
        Self { newel, _folder: folder }
    }

    fn coach(&mut self) -> &mut Profile {
        self.newel.profile().unwrap()
    }

    fn clients(&mut self) -> Vec<RosterEntry> {
        self.coach().roster_view(now()).unwrap().clients
    }
}

fn refusal<T>(result: Result<T, AppError>) -> Refusal {
    match result {
        Err(AppError::Refused(refusal)) => refusal,
        Err(other) => panic!("{other}"),
        Ok(_) => panic!("a refusal was expected"),
    }
}

fn form(what: PrintWhat, language: &str) -> PrintForm {
    PrintForm { what, language: language.to_owned(), us_letter: false }
}

#[test]
fn every_document_is_printed_in_both_languages_and_no_message_is_missing() {
    let mut practice = Practice::demo();
    let clients = practice.clients();
    let coach = practice.coach();
    let programme = coach.planbook_view().unwrap().programmes[0].programme.clone();
    let letter = LetterForm {
        to: "Dr Example\nSurgery".to_owned(),
        question: "May she?".to_owned(),
        agreed: Some(now().date_naive()),
    };
    for language in ["en", "es"] {
        let mut asked = vec![
            PrintWhat::Booklet { programme: programme.id },
            PrintWhat::Class {
                class: ClassForm {
                    programme: programme.id,
                    session: programme.sessions[0].id.clone(),
                    people: clients.iter().map(|c| c.person).collect(),
                    room: None,
                },
            },
        ];
        asked.extend(
            programme
                .sessions
                .iter()
                .map(|s| PrintWhat::Handout { programme: programme.id, session: s.id.clone() }),
        );
        asked.extend(clients.iter().map(|c| PrintWhat::Letter { person: c.person, letter: letter.clone() }));
        for what in asked {
            let done = coach.print(now(), &form(what.clone(), language)).unwrap();
            assert!(done.pages >= 1 && done.bytes.starts_with(b"%PDF"), "{what:?}");
            assert!(done.name.ends_with(".pdf"), "{}", done.name);
        }
    }
    assert_eq!(
        refusal(coach.print(now(), &form(PrintWhat::Booklet { programme: programme.id }, "tlh"))),
        Refusal::NoSuchThing
    );
}

#[test]
fn a_handout_is_made_for_whoever_trains_and_for_nobody_whose_training_is_closed() {
    let mut practice = Practice::demo();
    let clients = practice.clients();
    let (mut made, mut closed) = (0, 0);
    for client in &clients {
        let coach = practice.coach();
        let gate = coach.client_view(now(), client.person).unwrap().next.map(|n| n.gate);
        let done =
            coach.print(now(), &form(PrintWhat::HandoutFor { person: client.person, session: None }, "en"));
        match gate {
            Some(Gate::Open) => {
                made += 1;
                assert!(done.unwrap().pages >= 1);
            }
            Some(Gate::Closed { .. }) => {
                closed += 1;
                assert_eq!(refusal(done), Refusal::Closed);
            }
            None => assert_eq!(refusal(done), Refusal::NoPlan),
        }
    }
    assert!(made > 0 && closed > 0, "the demo has both: {made} open, {closed} closed");
}

#[test]
fn a_letter_goes_out_with_leave_an_address_and_a_question_alone() {
    let mut practice = Practice::demo();
    let person = practice.clients()[0].person;
    let whole = LetterForm {
        to: "Dr Example".to_owned(),
        question: "May she?".to_owned(),
        agreed: Some(now().date_naive()),
    };
    let mut ask =
        |letter: LetterForm| practice.coach().print(now(), &form(PrintWhat::Letter { person, letter }, "en"));
    assert_eq!(refusal(ask(LetterForm { agreed: None, ..whole.clone() })), Refusal::ConsentMissing);
    let ahead = now().date_naive().succ_opt();
    assert_eq!(refusal(ask(LetterForm { agreed: ahead, ..whole.clone() })), Refusal::DateCannotBe);
    assert_eq!(refusal(ask(LetterForm { question: " ".to_owned(), ..whole.clone() })), Refusal::NameMissing);
    assert_eq!(refusal(ask(LetterForm { to: String::new(), ..whole.clone() })), Refusal::NameMissing);
    assert_eq!(refusal(ask(LetterForm { to: "x".repeat(401), ..whole.clone() })), Refusal::OutOfRange);
    assert!(ask(whole).is_ok());
}

fn class(practice: &mut Practice) -> (ClassForm, ClassView) {
    let people = practice.clients().iter().map(|c| c.person).collect();
    let programme = practice.coach().planbook_view().unwrap().programmes[0].programme.clone();
    let form =
        ClassForm { programme: programme.id, session: programme.sessions[0].id.clone(), people, room: None };
    let view = practice.coach().class_view(now(), &form).unwrap();
    (form, view)
}

#[test]
fn a_class_shows_what_each_would_be_proposed_by_herself() {
    let mut practice = Practice::demo();
    let (form, view) = class(&mut practice);
    assert_eq!(view.rows.len(), form.people.len());
    let slots: usize = view.session.blocks.iter().map(|b| b.slots.len()).sum();
    for row in &view.rows {
        match row.proposal.gate {
            Gate::Open => assert_eq!(row.proposal.slots.len(), slots, "{}", row.name),
            Gate::Closed { .. } => {
                assert!(row.proposal.slots.is_empty() && row.late.is_empty(), "{}", row.name)
            }
        }
        for late in &row.late {
            let slot = row.proposal.slots.iter().find(|p| p.slot == late.slot).unwrap();
            let Outcome::Train(p) = &slot.outcome else { panic!("who comes late trains it") };
            assert!(late.first.level <= p.level, "never a higher step: {} {:?}", row.name, late.first);
        }
    }
    // In a class of her own next session each is proposed what her own page says.
    for client in practice.clients() {
        let coach = practice.coach();
        let Some(own) = coach.client_view(now(), client.person).unwrap().next else { continue };
        let hers = ClassForm {
            programme: own.programme,
            session: own.session.clone(),
            people: vec![client.person],
            room: None,
        };
        assert_eq!(coach.class_view(now(), &hers).unwrap().rows[0].proposal, own, "{}", client.name);
    }
    assert_eq!(
        refusal(practice.coach().class_view(now(), &ClassForm { people: Vec::new(), ..form })),
        Refusal::NothingChosen
    );
}

#[test]
fn what_the_room_needs_is_counted_by_hand_too_and_what_is_short_is_said() {
    let mut practice = Practice::demo();
    let (form, view) = class(&mut practice);
    // Counted once more, slot by slot, for weights alone: in a block each client needs the most that one slot of hers asks.
    for thing in view.room.iter().filter(|t| matches!(t.need.what, Laid::Weight { .. })) {
        let Laid::Weight { weight } = thing.need.what else { continue };
        let mut most = 0;
        for block in &view.session.blocks {
            let mut sum = 0;
            for row in &view.rows {
                let held = block.slots.iter().map(|slot| {
                    row.proposal.slots.iter().find(|p| p.slot == slot.id).map_or(0, |p| match &p.outcome {
                        Outcome::Train(p) => match &p.load {
                            Load::One { weight: w } if *w == weight => 1,
                            Load::Pair { weight: w } if *w == weight => 2,
                            _ => 0,
                        },
                        Outcome::Rest => 0,
                    })
                });
                sum += held.max().unwrap_or(0);
            }
            most = most.max(sum);
        }
        assert_eq!(thing.need.most, most, "{weight:?}");
    }
    let thing = view.room.iter().find(|t| t.need.most > 1).unwrap().clone();
    assert!(!thing.short && thing.have.is_none(), "nothing is short before anything is counted");
    let coach = practice.coach();
    let short = coach.room_set(now(), &form, thing.need.what.clone(), Some(thing.need.most - 1)).unwrap();
    let found = |view: &ClassView| view.room.iter().find(|t| t.need.what == thing.need.what).unwrap().clone();
    assert!(found(&short).short);
    let enough = coach.room_set(now(), &form, thing.need.what.clone(), Some(thing.need.most)).unwrap();
    assert!(!found(&enough).short, "just enough is enough");
    let unsaid = coach.room_set(now(), &form, thing.need.what.clone(), None).unwrap();
    assert_eq!(found(&unsaid).have, None);
}

#[test]
fn a_cell_that_the_coach_changes_is_an_override_with_its_note() {
    let mut practice = Practice::demo();
    let (form, view) = class(&mut practice);
    // Somebody above the easiest step, so that one step down is a change.
    let (row, slot, level) = view
        .rows
        .iter()
        .find_map(|row| {
            row.proposal.slots.iter().find_map(|p| match &p.outcome {
                Outcome::Train(t) if t.level > 0 && t.options.iter().any(|o| o.level == t.level - 1) => {
                    Some((row, p, t.level))
                }
                _ => None,
            })
        })
        .unwrap();
    let start = Start { ladder: slot.ladder.clone(), level: Some(level - 1), variant: None, load: None };
    let change = |note: &str| OverrideForm { start: start.clone(), note: note.to_owned() };
    let coach = practice.coach();
    assert_eq!(refusal(coach.class_set(now(), &form, row.person, change(" "))), Refusal::NameMissing);
    let after = coach.class_set(now(), &form, row.person, change("knees today")).unwrap();
    let changed = after.rows.iter().find(|r| r.person == row.person).unwrap();
    let now_there = changed.proposal.slots.iter().find(|p| p.slot == slot.slot).unwrap();
    let Outcome::Train(p) = &now_there.outcome else { panic!("she trains it") };
    assert_eq!(p.level, level - 1);
    assert!(changed.changed.contains(&slot.slot), "the cell says that the coach changed it");
    let client = coach.client_view(now(), row.person).unwrap();
    assert!(client.answers.iter().any(|a| a.kind == "override" && a.text == "knees today" && !a.sent));
    for (before, after) in view.rows.iter().zip(&after.rows).filter(|(b, _)| b.person != row.person) {
        assert_eq!(before.proposal, after.proposal, "{}: nobody else is touched", before.name);
    }
}

#[test]
fn with_the_kit_of_a_room_the_class_is_proposed_what_stands_there_and_nobody_is_changed() {
    let mut practice = Practice::demo();
    let (own, view) = class(&mut practice);
    assert_eq!(view.with_kit_of, None);
    let before: Vec<_> =
        own.people.iter().map(|p| practice.coach().client_view(now(), *p).unwrap().next).collect();
    let coach = practice.coach();
    let kit = Kit {
        dumbbells: vec![
            Dumbbell { weight: Weight::in_kg(3.0), pair: true },
            Dumbbell { weight: Weight::in_kg(7.0), pair: true },
        ],
        ..Kit::default()
    };
    assert_eq!(refusal(coach.room_save(None, " ", kit.clone())), Refusal::NameMissing);
    let rooms = coach.room_save(None, "Studio", kit.clone()).unwrap().rooms;
    let [studio] = &rooms[..] else { panic!("{rooms:?}") };
    let form = ClassForm { room: Some(studio.id), ..own.clone() };
    let there = coach.class_view(now(), &form).unwrap();
    assert_eq!(there.with_kit_of.as_deref(), Some("Studio"));
    let mut held = 0;
    for (hers, row) in view.rows.iter().zip(&there.rows) {
        assert_eq!(
            hers.proposal.gate, row.proposal.gate,
            "{}: whether she trains is no matter of the kit",
            row.name
        );
        for proposal in &row.proposal.slots {
            let Outcome::Train(p) = &proposal.outcome else { continue };
            match &p.load {
                Load::Nothing => {}
                Load::One { weight } | Load::Pair { weight } => {
                    held += 1;
                    assert!(
                        [3.0, 7.0].contains(&weight.value),
                        "{}: {weight:?} does not stand there",
                        row.name
                    );
                }
                other => panic!("{}: {other:?} does not stand there", row.name),
            }
        }
    }
    assert!(held > 1, "some hold what stands there");
    assert_ne!(
        view.rows.iter().map(|r| &r.proposal).collect::<Vec<_>>(),
        there.rows.iter().map(|r| &r.proposal).collect::<Vec<_>>()
    );
    let after: Vec<_> =
        own.people.iter().map(|p| practice.coach().client_view(now(), *p).unwrap().next).collect();
    assert_eq!(before, after, "nobody's own page changes");

    // One pair of each stands there until she counts: who goes without is named, and what she may do meanwhile can be made.
    let coach = practice.coach();
    let short = there.room.iter().find(|t| t.short).expect("one pair is not enough for all").clone();
    assert_eq!(short.have, Some(2));
    assert!(!short.turns.is_empty());
    let order: Vec<_> = short.turns.iter().map(|t| own.people.iter().position(|p| *p == t.person)).collect();
    for block in there.session.blocks.iter().map(|b| &b.id) {
        let of_block: Vec<_> =
            short.turns.iter().zip(&order).filter(|(t, _)| t.block == *block).map(|(_, o)| *o).collect();
        assert!(of_block.is_sorted(), "in the order of the table: {of_block:?}");
    }
    for turn in &short.turns {
        let row = there.rows.iter().find(|r| r.person == turn.person).unwrap();
        let slot = row.proposal.slots.iter().find(|p| p.slot == turn.slot).unwrap();
        let Outcome::Train(p) = &slot.outcome else { panic!("she trains it") };
        assert!(
            turn.instead.as_ref().is_none_or(|o| p.options.contains(o)),
            "{}: of what is open to her",
            row.name
        );
    }
    let counted = coach.room_set(now(), &form, short.need.what.clone(), Some(short.need.most)).unwrap();
    let enough = counted.room.iter().find(|t| t.need.what == short.need.what).unwrap();
    assert!(!enough.short && enough.turns.is_empty());
    let elsewhere = coach.class_view(now(), &own).unwrap();
    assert!(elsewhere.room.iter().all(|t| t.have.is_none()), "counted in the studio alone");

    // The sheet says which kit; a room that is renamed keeps its count, one that is removed is gone.
    for language in ["en", "es"] {
        assert!(coach.print(now(), &form_of(form.clone(), language)).unwrap().pages >= 1);
    }
    let rooms = coach.room_save(Some(studio.id), "Hall", kit).unwrap().rooms;
    assert_eq!((rooms.len(), rooms[0].room.name.as_str(), rooms[0].room.counted.len()), (1, "Hall", 1));
    assert!(coach.room_remove(studio.id).unwrap().rooms.is_empty());
    assert_eq!(refusal(coach.class_view(now(), &form)), Refusal::NoSuchThing);
}

fn form_of(class: ClassForm, language: &str) -> PrintForm {
    form(PrintWhat::Class { class }, language)
}

#[test]
fn with_a_room_that_has_just_her_own_kit_the_proposal_is_her_own() {
    let mut practice = Practice::demo();
    let (form, view) = class(&mut practice);
    for (row, person) in view.rows.iter().zip(form.people.clone()) {
        let coach = practice.coach();
        let kit = coach.known(person).unwrap().history().kit();
        let rooms = coach.room_save(None, &row.name, kit).unwrap().rooms;
        let room = rooms.iter().find(|r| r.room.name == row.name).unwrap().id;
        let alone = ClassForm { people: vec![person], room: Some(room), ..form.clone() };
        assert_eq!(coach.class_view(now(), &alone).unwrap().rows[0].proposal, row.proposal, "{}", row.name);
    }
}
