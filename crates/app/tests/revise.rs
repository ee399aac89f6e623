//! Giving a programme to several with a day to begin, revising it, seeing what changes for whom, and writing the files into
//! one folder; and that nothing of what was trained is rewritten by it.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Days, Duration, FixedOffset};
use newel_app::coach::Whom;
use newel_app::views::{
    CheckInForm, ChosenFile, ClientForm, FinishForm, GiveTo, IntakeForm, Offered, PlanStanding, Role,
    SetForm, TrainState,
};
use newel_app::{AppError, Newel, Profile, Refusal, Replayed};
use newel_engine::ids::{PersonId, ProgrammeId};
use newel_engine::programme::Amount;
use newel_engine::record::{Readiness, Reserve};
use newel_engine::stage::Stage;
use newel_engine::writing::Edit;
use std::path::Path;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-03-02T08:00:00+01:00").unwrap()
}

struct Practice {
    coach: Newel,
    people: Vec<PersonId>,
    programme: ProgrammeId,
    folder: tempfile::TempDir,
}

/// A coach with clients and a programme of her own, a copy of the first built-in one.
fn practice(names: &[&str]) -> Practice {
    let folder = tempfile::tempdir().unwrap();
    let mut coach = Newel::open(folder.path().join("coach")).unwrap();
    coach.profile_new("Ines", Role::Coach, now()).unwrap();
    let profile = coach.profile().unwrap();
    let mut people: Vec<PersonId> = Vec::new();
    for name in names {
        let form = ClientForm {
            name: (*name).into(),
            stage: Some(Stage::pregnant(Some("2026-06-22".parse().unwrap()), None)),
            intake: Some(IntakeForm::default()),
        };
        let roster = profile.client_add(now(), form).unwrap();
        let new = roster.clients.iter().map(|c| c.person).find(|p| !people.contains(p)).unwrap();
        people.push(new);
    }
    let from = profile.roster_view(now()).unwrap().programmes[0].id;
    let programme = profile.programme_new(now(), "Kitchen", Some(from)).unwrap();
    Practice { coach, people, programme, folder }
}

impl Practice {
    fn profile(&mut self) -> &mut Profile {
        self.coach.profile().unwrap()
    }

    fn give(&mut self, begins: Option<&str>) {
        let begins = begins.map(|day| day.parse().unwrap());
        let to: Vec<GiveTo> = self.people.iter().map(|p| GiveTo { person: *p, begins }).collect();
        let programme = self.programme;
        self.profile().programme_give_to(now(), programme, &to).unwrap();
    }

    /// Fewer reps for the first slot of the programme that has more than five.
    fn revise(&mut self) {
        let programme = self.programme;
        let book = self.profile().planbook_view().unwrap();
        let own = &book.programmes.iter().find(|p| p.programme.id == programme).unwrap().programme;
        let (_, slot) = own.sessions[0]
            .slots()
            .find(|(_, s)| matches!(s.dose.amount, Amount::Reps { low, .. } if low > 5))
            .unwrap();
        let edit = Edit::AmountOfSlot { slot: slot.id.clone(), low: Some(4), high: Some(5), week: None };
        self.profile().programme_edit(now(), programme, &edit).unwrap();
    }
}

fn client_of(folder: &Path, plan: &str, at: DateTime<FixedOffset>) -> Newel {
    let mut client = Newel::open(folder.to_owned()).unwrap();
    client.profile_from_plan(plan, at).unwrap();
    client
}

/// Trains what comes next as planned, from a moment on.
fn trains(client: &mut Profile, mut at: DateTime<FixedOffset>) {
    let mut view = client.session_begin(at, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    for _ in 0..200 {
        let TrainState::Session(session) = &view.state else { panic!("a session: {:?}", view.state) };
        let Some(w) = &session.work else { break };
        let form = SetForm {
            run: session.run,
            slot: w.slot.clone(),
            round: w.round,
            side: w.side,
            variant: w.variant.clone(),
            load: w.load.clone(),
            done: w.target,
            reserve: w.asks_effort.then_some(Reserve::Exactly(3)),
        };
        at += Duration::seconds(90);
        view = client.set_log(at, form).unwrap();
    }
    let TrainState::Session(session) = &view.state else { panic!("a session: {:?}", view.state) };
    let form =
        FinishForm { run: session.run, effort: Some(4), minutes: Some(30), note: None, stopped_at: None };
    client.session_finish(at, form).unwrap();
}

fn log_of(client: &mut Newel, at: DateTime<FixedOffset>) -> ChosenFile {
    let out = client.out_folder();
    let path = client.profile().unwrap().log_write(&out, None, at).unwrap().path;
    ChosenFile { name: "log".into(), text: std::fs::read_to_string(path).unwrap() }
}

#[test]
fn a_programme_given_to_several_begins_on_its_day_or_earlier_if_she_wants() {
    let mut practice = practice(&["Mara", "Noor"]);
    practice.give(Some("2026-03-16"));
    let far = now().date_naive() + Days::new(400);
    let to = [GiveTo { person: practice.people[0], begins: Some(far) }];
    let programme = practice.programme;
    let refused = practice.profile().programme_give_to(now(), programme, &to);
    assert!(matches!(refused, Err(AppError::Refused(Refusal::DateCannotBe))), "{refused:?}");
    let out = practice.folder.path().join("out");
    let receipt = practice.profile().plans_write(&out, now(), &Whom::AllDue, "en").unwrap();
    assert_eq!(receipt.written.len(), 2);
    let text = std::fs::read_to_string(out.join(&receipt.written[0].file)).unwrap();
    assert!(text.contains("\"version\":3") && text.contains("\"begins\":\"2026-03-16\""));
    let mut client = client_of(&practice.folder.path().join("mara"), &text, now());
    let begins = |client: &mut Newel, at| match client.profile().unwrap().train_view(at).unwrap().state {
        TrainState::Ready(ready) => ready.begins,
        other => panic!("a session may begin: {other:?}"),
    };
    let day = "2026-03-16".parse().unwrap();
    assert_eq!(begins(&mut client, now()), Some(day), "it is said, and nothing is closed");
    assert_eq!(begins(&mut client, now() + Duration::days(14)), None, "on the day it has begun");
    trains(client.profile().unwrap(), now() + Duration::hours(1));
    assert_eq!(begins(&mut client, now() + Duration::hours(12)), None, "she began of her own accord");
    // Once the day has come a plan file is one that older programs read.
    let later = now() + Duration::days(20);
    let people = practice.people.clone();
    let again = practice.profile().plans_write(&out, later, &Whom::These(people), "en").unwrap();
    assert_eq!(practice.profile().roster_view(later).unwrap().clients[0].files.begins, None);
    for line in &again.written {
        let text = std::fs::read_to_string(out.join(&line.file)).unwrap();
        assert!(text.contains("\"sequence\":2") && !text.contains("begins"), "{}", line.file);
    }
}

#[test]
fn a_revision_says_what_changes_for_whom_and_rewrites_nothing_that_was_trained() {
    let mut practice = practice(&["Mara", "Noor", "Imke"]);
    practice.give(None);
    let out = practice.folder.path().join("out");
    let first = practice.profile().plans_write(&out, now(), &Whom::AllDue, "en").unwrap();
    assert!(first.written.iter().all(|l| l.first && l.changes.is_empty()));
    let mara = practice.people[0];
    let hers = first.written.iter().find(|l| l.person == mara).unwrap();
    let plan = std::fs::read_to_string(out.join(&hers.file)).unwrap();
    let mut client = client_of(&practice.folder.path().join("mara"), &plan, now());
    trains(client.profile().unwrap(), now() + Duration::hours(1));
    let log = log_of(&mut client, now() + Duration::hours(3));
    let coach = practice.profile();
    assert!(coach.take_in(&[log], now() + Duration::hours(4)).files[0].refused.is_empty());
    let before = serde_json::to_value(coach.client_view(now(), mara).unwrap().sessions).unwrap();

    practice.revise();
    let people = practice.people.clone();
    let views = practice.profile().revisions(now() + Duration::hours(5), &people).unwrap();
    assert_eq!(views.iter().map(|v| v.name.as_str()).collect::<Vec<_>>(), ["Imke", "Mara", "Noor"]);
    for view in &views {
        assert_eq!(view.plan, PlanStanding::Older);
        assert_eq!(view.changes.iter().map(|c| c.code).collect::<Vec<_>>(), ["slot-amount"]);
        assert!(!view.proposals.is_empty(), "fewer reps are proposed: {view:?}");
        for change in &view.proposals {
            let Offered::Train { target, .. } = &change.after else { panic!("{change:?}") };
            assert!((4..=5).contains(&target.count()) && change.before.is_some(), "{change:?}");
        }
    }
    // Undone, nothing changes for anybody.
    let programme = practice.programme;
    practice.profile().programme_turn(programme, true).unwrap();
    for view in practice.profile().revisions(now(), &people).unwrap() {
        assert!(view.changes.is_empty() && view.proposals.is_empty(), "{view:?}");
        assert_eq!(view.plan, PlanStanding::UpToDate);
    }
    practice.profile().programme_turn(programme, false).unwrap();

    let later = now() + Duration::days(1);
    let second = practice.profile().plans_write(&out, later, &Whom::These(vec![mara]), "en").unwrap();
    assert_eq!(second.written[0].changes.len(), 1);
    let revised = std::fs::read(out.join(&second.written[0].file)).unwrap();
    let taken = client.profile().unwrap().take_in_one("plan", &revised, later);
    assert!(taken.refused.is_empty(), "{taken:?}");
    trains(client.profile().unwrap(), later + Duration::hours(1));
    // Every proposal, the one before the revision and the one after it, is made again to the bit.
    let replays = client.profile().unwrap().replay_all().unwrap();
    assert!(replays.len() >= 2 && replays.iter().all(|r| r.replayed == Replayed::Same), "{replays:?}");
    let log = log_of(&mut client, later + Duration::hours(3));
    let coach = practice.profile();
    coach.take_in(&[log], later + Duration::hours(4));
    let replays = coach.replay_all().unwrap();
    assert!(replays.len() >= 2, "{replays:?}");
    assert!(replays.iter().all(|r| r.replayed == Replayed::Same), "and at the coach's: {replays:?}");
    let after = serde_json::to_value(coach.client_view(later, mara).unwrap().sessions).unwrap();
    let (after, before) = (after.as_array().unwrap(), before.as_array().unwrap());
    assert_eq!((before.len(), after.len()), (1, 2));
    assert_eq!(after.last(), before.last(), "the session that was trained stands as it was trained");
}

#[test]
fn files_for_all_go_into_one_folder_with_a_receipt_that_names_who_was_left_out() {
    let mut practice = practice(&["Mara", "Mara", "Noor", "Imke"]);
    practice.give(None);
    let [mara, other_mara, noor, imke] = practice.people[..] else { panic!("four clients") };
    let out = practice.folder.path().join("out");
    let coach = practice.profile();
    coach.clients_archive(now(), vec![imke], false).unwrap();
    let first = coach.plans_write(&out, now(), &Whom::AllDue, "en").unwrap();
    assert_eq!(first.written.len(), 3);
    let mut files: Vec<&str> = first.written.iter().map(|l| l.file.as_str()).collect();
    files.sort_unstable();
    assert_eq!(files, ["mara-2-plan-1.newel.json", "mara-plan-1.newel.json", "noor-plan-1.newel.json"]);
    for line in &first.written {
        let bytes = std::fs::read(out.join(&line.file)).unwrap();
        let whose = newel_app::newel::look_at(&bytes).unwrap().person();
        assert_eq!(whose, line.person, "{} is hers", line.file);
    }
    assert!([mara, other_mara].iter().all(|p| first.written.iter().any(|l| l.person == *p)));
    let left: Vec<_> = first.left_out.iter().map(|l| (l.person, l.why.as_str())).collect();
    assert_eq!(left, [(imke, "archived")]);
    let saved = std::fs::read_to_string(out.join(first.file.as_ref().unwrap())).unwrap();
    assert_eq!(saved, first.text);
    for part in
        ["Ines", "2 March 2026", "3 files", "noor-plan-1.newel.json", "Kitchen", "Imke: she is archived."]
    {
        assert!(saved.contains(part), "{part} stands in the receipt: {saved}");
    }
    // Nothing new: nobody gets a file, and no receipt says so in the folder.
    let again = coach.plans_write(&out, now() + Duration::hours(1), &Whom::AllDue, "en").unwrap();
    assert_eq!((again.written.len(), again.file), (0, None));
    assert_eq!(again.left_out.iter().filter(|l| l.why == "up-to-date").count(), 3);
    // A note for one and a revision for all, in Spanish.
    coach.note_write(now() + Duration::hours(2), noor, "Well done").unwrap();
    practice.revise();
    let coach = practice.profile();
    let third = coach.plans_write(&out, now() + Duration::hours(3), &Whom::AllDue, "es").unwrap();
    assert_eq!(third.written.len(), 3);
    let hers = third.written.iter().find(|l| l.person == noor).unwrap();
    assert_eq!((hers.sequence, hers.new_entries, hers.changes.len()), (2, 1, 1));
    assert!(third.text.contains("repeticiones"), "{}", third.text);
    assert!(third.text.contains("2 de marzo de 2026"), "{}", third.text);
    // A folder that cannot be: she is named with the reason, and nothing counts as sent.
    let blocked = practice.folder.path().join("a-file");
    std::fs::write(&blocked, "x").unwrap();
    let coach = practice.profile();
    coach.note_write(now() + Duration::hours(4), noor, "And again").unwrap();
    let whom = Whom::These(vec![noor]);
    let failed = coach.plans_write(&blocked, now() + Duration::hours(5), &whom, "en").unwrap();
    assert!(failed.written.is_empty() && failed.file.is_none());
    assert_eq!(failed.left_out[0].why, "file-error-unwritten");
    assert!(failed.text.contains("could not be written"), "{}", failed.text);
    let roster = coach.roster_view(now()).unwrap();
    let files = &roster.clients.iter().find(|c| c.person == noor).unwrap().files;
    assert_eq!(files.unsent, 1, "the note is still to be sent");
    let nobody = coach.plans_write(&out, now(), &Whom::These(vec![]), "en");
    assert!(matches!(nobody, Err(AppError::Refused(Refusal::NothingChosen))));
}
