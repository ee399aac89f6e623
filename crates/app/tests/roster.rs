//! The Roster as the coach arranges it: groups, who is laid aside, and what each line says of files and waiting things.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Duration, FixedOffset};
use newel_app::views::{ChosenFile, ClientForm, IntakeForm, PlanStanding, Role, RosterEntry, RosterView};
use newel_app::{AppError, Newel, Profile, Refusal};
use newel_engine::ids::PersonId;
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::programme::BlockPart;
use newel_engine::stage::Stage;
use newel_engine::units::Weight;
use newel_engine::writing::Edit;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-03-02T08:00:00+01:00").unwrap()
}

fn form(name: &str) -> ClientForm {
    ClientForm {
        name: name.into(),
        stage: Some(Stage::pregnant(Some("2026-06-22".parse().unwrap()), None)),
        intake: Some(IntakeForm::default()),
    }
}

struct Practice {
    coach: Newel,
    people: Vec<PersonId>,
    _folder: tempfile::TempDir,
}

fn practice(names: &[&str]) -> Practice {
    let folder = tempfile::tempdir().unwrap();
    let mut coach = Newel::open(folder.path().to_owned()).unwrap();
    coach.profile_new("Ines", Role::Coach, now()).unwrap();
    let mut people = Vec::new();
    for name in names {
        let roster = coach.profile().unwrap().client_add(now(), form(name)).unwrap();
        people.push(roster.clients.iter().find(|c| c.name == *name).unwrap().person);
    }
    Practice { coach, people, _folder: folder }
}

impl Practice {
    fn profile(&mut self) -> &mut Profile {
        self.coach.profile().unwrap()
    }

    fn roster(&mut self) -> RosterView {
        self.profile().roster_view(now()).unwrap()
    }

    fn entry(&mut self, nth: usize) -> RosterEntry {
        let person = self.people[nth];
        self.roster().clients.into_iter().find(|c| c.person == person).unwrap()
    }
}

fn refusal<T: std::fmt::Debug>(result: Result<T, AppError>) -> Refusal {
    match result {
        Err(AppError::Refused(refusal)) => refusal,
        other => panic!("a refusal was expected: {other:?}"),
    }
}

#[test]
fn groups_keep_her_order_and_refuse_who_is_no_client() {
    let mut practice = practice(&["Mara", "Noor", "Imke"]);
    let [mara, noor, imke] = practice.people[..] else { panic!("three clients") };
    let coach = practice.profile();
    let own = coach.person();
    let made = coach.group_make(now(), "  Monday ", vec![imke, mara]).unwrap();
    let group = made.groups[0].clone();
    assert_eq!((group.name.as_str(), &group.members), ("Monday", &vec![imke, mara]));
    assert_eq!(refusal(coach.group_make(now(), " ", vec![])), Refusal::NameMissing);
    assert_eq!(
        refusal(coach.group_make(now(), "x", vec![own])),
        Refusal::NoSuchThing,
        "she is no client of hers"
    );
    let stranger = PersonId(uuid::Uuid::from_u128(9));
    assert_eq!(refusal(coach.group_members(now(), group.id, vec![stranger])), Refusal::NoSuchThing);
    coach.group_members(now(), group.id, vec![noor, imke]).unwrap();
    coach.group_rename(now(), group.id, "Monday evening").unwrap();
    // One who is laid aside is not seen in it, stays in it when others are set, and is back when she is.
    coach.clients_archive(now(), vec![imke], false).unwrap();
    assert_eq!(coach.groups().unwrap()[0].members, [noor]);
    coach.group_members(now(), group.id, vec![mara, noor]).unwrap();
    let back = coach.clients_archive(now(), vec![imke], true).unwrap();
    assert_eq!(back.groups[0].members, [mara, noor, imke]);
    assert!(coach.group_remove(now(), group.id, false).unwrap().groups.is_empty());
    assert_eq!(refusal(coach.group_rename(now(), group.id, "x")), Refusal::NoSuchThing);
    let again = coach.group_remove(now(), group.id, true).unwrap();
    assert_eq!(again.groups[0].name, "Monday evening");
    assert_eq!(again.clients.len(), 3, "nobody was touched");
}

#[test]
fn an_archived_client_leaves_the_screens_and_comes_back_whole() {
    let mut practice = practice(&["Mara", "Noor"]);
    let mara = practice.people[0];
    let folder = practice.coach.out_folder();
    let programme = practice.roster().programmes[0].id;
    let coach = practice.profile();
    coach.programme_give(now(), mara, programme).unwrap();
    let plan = coach.plan_write(&folder, None, now(), mara).unwrap();
    let before = serde_json::to_value(coach.client_view(now(), mara).unwrap()).unwrap();
    let roster = coach.clients_archive(now(), vec![mara], false).unwrap();
    assert_eq!(roster.clients.iter().map(|c| c.name.as_str()).collect::<Vec<_>>(), ["Noor"]);
    assert_eq!(roster.archived.iter().map(|c| c.name.as_str()).collect::<Vec<_>>(), ["Mara"]);
    let desk = coach.desk_view(now()).unwrap();
    assert!(desk.queue.iter().chain(&desk.well).all(|e| e.person != mara), "she is not on the Desk");
    // Her log still comes in, and it is said that she is archived.
    let home = tempfile::tempdir().unwrap();
    let mut client = Newel::open(home.path().to_owned()).unwrap();
    client.profile_from_plan(&std::fs::read_to_string(plan.path).unwrap(), now()).unwrap();
    let out = client.out_folder();
    let log = client.profile().unwrap().log_write(&out, None, now() + Duration::days(1)).unwrap();
    let file = ChosenFile { name: "log".into(), text: std::fs::read_to_string(log.path).unwrap() };
    let coach = practice.profile();
    let report = coach.take_in(&[file], now() + Duration::days(1)).files.remove(0);
    assert!(report.archived && report.new > 0 && report.refused.is_empty(), "{report:?}");
    let later = coach.clients_archive(now(), vec![mara], true).unwrap();
    assert_eq!(later.clients.len(), 2);
    assert!(later.archived.is_empty());
    let after = serde_json::to_value(coach.client_view(now(), mara).unwrap()).unwrap();
    for part in ["answers", "sessions", "holds"] {
        assert_eq!(after[part], before[part], "{part} as it was");
    }
}

#[test]
fn the_state_of_a_plan_follows_what_is_written_given_and_sent() {
    let mut practice = practice(&["Mara"]);
    let mara = practice.people[0];
    let folder = practice.coach.out_folder();
    assert_eq!(practice.entry(0).files.plan, PlanStanding::None);
    let from = practice.roster().programmes[0].id;
    let coach = practice.profile();
    let id = coach.programme_new(now(), "Kitchen", Some(from)).unwrap();
    coach.programme_give(now(), mara, id).unwrap();
    let given = practice.entry(0);
    assert_eq!((given.files.plan, given.files.sent), (PlanStanding::NotSent, None));
    assert_eq!(given.programme.as_deref(), Some("Kitchen"));
    let sent_at = now() + Duration::minutes(5);
    practice.profile().plan_write(&folder, None, sent_at, mara).unwrap();
    let sent = practice.entry(0);
    assert_eq!((sent.files.plan, sent.files.unsent), (PlanStanding::UpToDate, 0));
    assert_eq!(sent.files.sent, Some(sent_at));
    assert!(!sent.files.arrived, "her log has not said so");
    // Written on, it is older; undone, it is what she has, though the revision counts on.
    let coach = practice.profile();
    coach.programme_edit(now(), id, &Edit::AddSession { title: "Extra".into(), phase: None }).unwrap();
    let session = coach.planbook_view().unwrap().programmes[0].programme.sessions.last().unwrap().id.clone();
    assert_eq!(practice.entry(0).files.plan, PlanStanding::Unfinished, "it has a session without a set");
    let coach = practice.profile();
    let ladders = vec!["squat".into()];
    coach.programme_edit(now(), id, &Edit::AddBlock { session, ladders, part: BlockPart::Work }).unwrap();
    assert_eq!(practice.entry(0).files.plan, PlanStanding::Older);
    let coach = practice.profile();
    coach.programme_turn(id, true).unwrap();
    coach.programme_turn(id, true).unwrap();
    assert_eq!(practice.entry(0).files.plan, PlanStanding::UpToDate);
    // What is recorded since is counted.
    practice.profile().note_write(sent_at + Duration::minutes(1), mara, "Well done").unwrap();
    assert_eq!(practice.entry(0).files.unsent, 1);
    // Another programme given is another to send, and it is named.
    practice.profile().programme_give(now(), mara, from).unwrap();
    assert_eq!(practice.entry(0).files.plan, PlanStanding::Older);
}

#[test]
fn a_line_says_kit_week_and_what_waits() {
    let mut practice = practice(&["Mara"]);
    let mara = practice.people[0];
    let bare = practice.entry(0);
    assert_eq!((bare.kit, bare.week, bare.last_days), (None, None, None));
    let folder = practice.coach.out_folder();
    let programme = practice.roster().programmes[0].id;
    practice.profile().programme_give(now(), mara, programme).unwrap();
    let plan = practice.profile().plan_write(&folder, None, now(), mara).unwrap();
    let home = tempfile::tempdir().unwrap();
    let mut client = Newel::open(home.path().to_owned()).unwrap();
    client.profile_from_plan(&std::fs::read_to_string(plan.path).unwrap(), now()).unwrap();
    let dumbbell = |kg: f64, pair| Dumbbell { weight: Weight::in_kg(kg), pair };
    let kit = Kit {
        dumbbells: vec![dumbbell(4.0, true), dumbbell(12.0, false), dumbbell(6.0, true)],
        ..Kit::default()
    };
    client.profile().unwrap().kit_save(now(), kit).unwrap();
    let out = client.out_folder();
    let log = client.profile().unwrap().log_write(&out, None, now()).unwrap();
    let file = ChosenFile { name: "log".into(), text: std::fs::read_to_string(log.path).unwrap() };
    practice.profile().take_in(&[file], now());
    let entry = practice.entry(0);
    let kit = entry.kit.unwrap();
    assert_eq!((kit.singles, kit.pairs, kit.heaviest), (1, 2, Some(Weight::in_kg(12.0))));
    assert_eq!(entry.week.unwrap().week, 1);
    assert!(entry.files.arrived && entry.files.taken_in == Some(now()));
    assert!(!entry.waits.any(), "{:?}", entry.waits);
    // A screening grows old: it is due, on the Desk and here, on the day and not by the day it was last looked at.
    let later = now() + Duration::weeks(60);
    let due = practice.profile().roster_view(later).unwrap().clients[0].waits;
    assert!(due.screen.is_some() && due.any());
    assert!(practice.entry(0).waits.screen.is_none(), "and on the earlier day it was not");
}
