//! The main job over the use cases, as the window does it: the coach writes, the client trains, marks a
//! symptom in mid-set, reads what comes next, sends her log; the coach takes it in, reads and answers.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Duration, FixedOffset};
use newel_app::views::{
    CheckInForm, ChosenFile, ClearanceForm, ClientForm, FinishForm, Follows, IntakeForm, OverrideForm, Role,
    SessionView, SetForm, StepState, TrainState, TrainView, WordsForm, WorkView,
};
use newel_app::{AppError, Newel, Refusal};
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::programme::{BlockPart, Start};
use newel_engine::proposal::Outcome;
use newel_engine::reason::ReasonCode;
use newel_engine::record::{HoldAnswer, NextDay, Payload, Readiness, Reserve, Symptom, SymptomAmount};
use newel_engine::rules::Class;
use newel_engine::stage::Stage;
use newel_engine::units::Weight;

fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(text).unwrap()
}

fn session(view: &TrainView) -> &SessionView {
    match &view.state {
        TrainState::Session(session) => session,
        other => panic!("a session is under way, found {other:?}"),
    }
}

fn work(view: &TrainView) -> &WorkView {
    session(view).work.as_ref().expect("a set is in hand")
}

fn as_planned(view: &TrainView) -> SetForm {
    let (run, w) = (session(view).run, work(view));
    SetForm {
        run,
        slot: w.slot.clone(),
        round: w.round,
        side: w.side,
        variant: w.variant.clone(),
        load: w.load.clone(),
        done: w.target,
        reserve: w.asks_effort.then_some(Reserve::Exactly(3)),
    }
}

fn felt(kind: &str) -> Symptom {
    Symptom { kind: Some(kind.into()), amount: Some(SymptomAmount::Clearly), place: None, words: None }
}

struct Home {
    coach: Newel,
    client: Newel,
    person: newel_engine::ids::PersonId,
    _folders: (tempfile::TempDir, tempfile::TempDir),
}

/// A coach with a client 24 weeks pregnant, and the client's phone with the plan taken in.
fn home() -> Home {
    let folders = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let now = at("2026-03-02T08:00:00+01:00");
    let mut coach = Newel::open(folders.0.path().to_owned()).unwrap();
    coach.profile_new("Ines", Role::Coach, now).unwrap();
    let form = ClientForm {
        name: "Mara".into(),
        // 24 weeks and 0 days on 2 March 2026: due 112 days later.
        stage: Some(Stage::pregnant(Some("2026-06-22".parse().unwrap()), None)),
        intake: Some(IntakeForm::default()),
    };
    let folder = coach.out_folder();
    let profile = coach.profile().unwrap();
    let roster = profile.client_add(now, form).unwrap();
    let person = roster.clients[0].person;
    let programme = roster.programmes[0].id;
    profile.programme_give(now, person, programme).unwrap();
    let plan = profile.plan_write(&folder, None, now, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();

    let mut client = Newel::open(folders.1.path().to_owned()).unwrap();
    client.profile_from_plan(&text, now).unwrap();
    let kit = Kit {
        dumbbells: [4.0, 6.0, 8.0, 10.0]
            .map(|kg| Dumbbell { weight: Weight::in_kg(kg), pair: true })
            .to_vec(),
        ..Kit::default()
    };
    client.profile().unwrap().kit_save(now, kit).unwrap();
    Home { coach, client, person, _folders: folders }
}

impl Home {
    /// Trains a whole session as planned from a moment on; gives back when it ended.
    fn trains(&mut self, mut now: DateTime<FixedOffset>) -> DateTime<FixedOffset> {
        let client = self.client.profile().unwrap();
        if let TrainState::Ready(ready) = client.train_view(now).unwrap().state
            && let Some(asked) = ready.next_day
        {
            client.next_day_answer(now, asked.run, NextDay::Settled, Vec::new()).unwrap();
        }
        let mut view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
        for _ in 0..200 {
            if session(&view).work.is_none() {
                break;
            }
            now += Duration::seconds(90);
            view = client.set_log(now, as_planned(&view)).unwrap();
        }
        assert!(session(&view).work.is_none(), "every set was done");
        let form = FinishForm {
            run: session(&view).run,
            effort: Some(4),
            minutes: Some(30),
            note: None,
            stopped_at: None,
        };
        client.session_finish(now, form).unwrap();
        now
    }

    fn sends_log(&mut self, now: DateTime<FixedOffset>) -> String {
        let folder = self.client.out_folder();
        let written = self.client.profile().unwrap().log_write(&folder, None, now).unwrap();
        std::fs::read_to_string(written.path).unwrap()
    }

    fn coach_takes_in(&mut self, text: &str, now: DateTime<FixedOffset>) -> newel_app::views::FileReport {
        let file = ChosenFile { name: "mara.newel.json".into(), text: text.to_owned() };
        self.coach.profile().unwrap().take_in(&[file], now).files.remove(0)
    }
}

#[test]
fn the_main_job_from_plan_to_answer() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let TrainState::Ready(ready) = client.train_view(now).unwrap().state else {
        panic!("a session is ready")
    };
    assert!(ready.minutes >= 10, "an estimate in minutes, found {}", ready.minutes);

    let mut view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let first = as_planned(&view);
    view = client.set_log(now + Duration::minutes(1), first.clone()).unwrap();
    let done = session(&view).steps.iter().filter(|s| s.state == StepState::Done).count();
    assert_eq!(done, 1, "the set is logged and the card has moved on");
    let again = client.set_log(now + Duration::minutes(1), first).unwrap();
    let done = session(&again).steps.iter().filter(|s| s.state == StepState::Done).count();
    assert_eq!(done, 1, "a double tap logs once");

    // On to the squat; in its first set something feels off.
    let mut clock = now + Duration::minutes(2);
    while work(&view).ladder.as_str() != "squat" {
        clock += Duration::minutes(1);
        view = client.set_log(clock, as_planned(&view)).unwrap();
    }
    let before = work(&view).clone();
    let run = session(&view).run;
    let marked = client.mark(clock, run, false).unwrap();
    assert_eq!(marked.mark.class, Class::Drop, "before anything is said it counts as a drop");
    let told = client.mark_say(clock, marked.mark.mark, felt("heaviness")).unwrap();
    match &told.mark.follows {
        Follows::Easier { offer, .. } => assert!(offer.level < before.level, "the level below"),
        Follows::LadderEnds { held } => assert!(*held && before.level == 0, "the lowest level is held"),
        other => panic!("an easier option at once, found {other:?}"),
    }
    // The rest of the session, whatever is left of it.
    view = told.train;
    while session(&view).work.is_some() {
        clock += Duration::seconds(80);
        view = client.set_log(clock, as_planned(&view)).unwrap();
    }
    let form = FinishForm {
        run,
        effort: Some(5),
        minutes: Some(34),
        note: Some("Felt it twice".into()),
        stopped_at: None,
    };
    let finished = client.session_finish(clock, form).unwrap();
    let TrainState::Finished(after) = finished.state else { panic!("what comes next is shown") };
    assert!(after.next.iter().all(|p| !p.reasons.all().is_empty()), "each with its reasons");

    // Her log to the coach; twice changes nothing.
    let log = home.sends_log(clock);
    let report = home.coach_takes_in(&log, clock);
    assert!(report.refused.is_empty(), "{:?}", report.refused);
    assert!(report.new > 10 && report.gaps.is_empty());
    let twice = home.coach_takes_in(&log, clock);
    assert_eq!((twice.new, twice.refused.len()), (0, 0), "twice changes nothing");
    let desk = home.coach.profile().unwrap().desk_view(clock).unwrap();
    let codes: Vec<&str> = desk.queue[0].findings.iter().map(|f| f.code.as_str()).collect();
    assert!(codes.contains(&"symptom-marked"), "the mark is on the Desk: {codes:?}");
    assert!(codes.contains(&"own-words"), "and her words: {codes:?}");
}

#[test]
fn a_restart_in_mid_session_goes_on_at_the_right_card() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let view = client.set_log(now + Duration::minutes(1), as_planned(&view)).unwrap();
    let expected =
        (work(&view).slot.clone(), work(&view).round, session(&view).rest.clone().map(|r| r.until));
    let data = home.client.data().to_owned();
    // The power goes: nothing is closed in order, the next start opens the same files.
    let lost = std::mem::replace(
        &mut home.client,
        Newel::open(tempfile::tempdir().unwrap().path().to_owned()).unwrap(),
    );
    std::mem::forget(lost);
    let mut again = Newel::open(data).unwrap();
    let view = again.profile().unwrap().train_view(now + Duration::minutes(3)).unwrap();
    let found = (work(&view).slot.clone(), work(&view).round, session(&view).rest.clone().map(|r| r.until));
    assert_eq!(found, expected, "the same set and the same rest deadline");
}

#[test]
fn what_comes_after_a_symptom_is_a_level_down_and_up_again_later() {
    let mut home = home();
    // The coach lets her start on the third step, and two sessions go well there.
    let mut day = at("2026-03-02T09:00:00+01:00");
    let (person, folder) = (home.person, home.coach.out_folder());
    let start = Start { ladder: "squat".into(), level: Some(2), variant: None, load: None };
    let coach = home.coach.profile().unwrap();
    coach.override_write(day, person, OverrideForm { start, note: "She lifted before".into() }).unwrap();
    let plan = coach.plan_write(&folder, None, day, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    home.client.profile().unwrap().take_in(&[ChosenFile { name: "plan".into(), text }], day);
    for _ in 0..2 {
        home.trains(day);
        day += Duration::days(2);
    }
    let client = home.client.profile().unwrap();
    let mut view = client.session_begin(day, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let mut clock = day;
    while session(&view).work.as_ref().is_some_and(|w| w.ladder.as_str() != "squat") {
        clock += Duration::minutes(1);
        view = client.set_log(clock, as_planned(&view)).unwrap();
    }
    let level = work(&view).level;
    assert_eq!(level, 2, "where the coach let her start");
    let run = session(&view).run;
    let marked = client.mark(clock, run, false).unwrap();
    let told = client.mark_say(clock, marked.mark.mark, felt("heaviness")).unwrap();
    let Follows::Easier { offer, .. } = &told.mark.follows else { panic!("{:?}", told.mark.follows) };
    assert_eq!(offer.level, level - 1);
    view = told.train;
    assert_eq!(work(&view).level, level - 1, "for the rest of today");
    while session(&view).work.is_some() {
        clock += Duration::minutes(1);
        view = client.set_log(clock, as_planned(&view)).unwrap();
    }
    client
        .session_finish(
            clock,
            FinishForm { run, effort: Some(4), minutes: Some(30), note: None, stopped_at: None },
        )
        .unwrap();
    let path = client.path_view(clock + Duration::days(1)).unwrap();
    let squat = path.ladders.iter().find(|l| l.ladder.as_str() == "squat").unwrap();
    assert_eq!(squat.level, Some(level - 1), "next time starts there");
    assert!(squat.reasons.iter().any(|r| r.code == ReasonCode::LevelDownSymptom));
}

#[test]
fn a_red_flag_closes_training_until_a_clearance() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let run = session(&view).run;
    let marked = client.mark(now, run, false).unwrap();
    let told = client.mark_say(now, marked.mark.mark, felt("bleeding")).unwrap();
    assert!(matches!(told.mark.follows, Follows::Stop { .. }));
    let TrainState::Closed(closed) = told.train.state else { panic!("closed at once") };
    assert!(closed.can_withdraw, "not meant is still possible");
    let view = client.record_withdraw(now, marked.mark.mark).unwrap();
    assert!(matches!(view.state, TrainState::Session(_)), "and opens it again");

    let marked = client.mark(now, run, false).unwrap();
    client.mark_say(now, marked.mark.mark, felt("bleeding")).unwrap();
    client
        .session_finish(now, FinishForm { run, effort: None, minutes: None, note: None, stopped_at: None })
        .unwrap();
    let refused = client.record_withdraw(now, marked.mark.mark);
    assert!(matches!(refused, Err(AppError::Refused(Refusal::Confirmed))), "confirmed is confirmed");
    // Talking it down later does not open it either.
    client.mark_say(now, marked.mark.mark, felt("soreness-both-legs")).unwrap();
    let later = now + Duration::days(2);
    assert!(matches!(client.train_view(later).unwrap().state, TrainState::Closed(_)));

    // The coach records a clearance; it travels in a plan file.
    let log = home.sends_log(later);
    let folder = home.coach.out_folder();
    home.coach_takes_in(&log, later);
    let coach = home.coach.profile().unwrap();
    assert_eq!(coach.desk_view(later).unwrap().queue[0].findings[0].code, "red-flag");
    let person = home.person;
    let open = coach.safety_view(later, Some(person)).unwrap().open;
    let form = ClearanceForm {
        who: "Midwife at the clinic".into(),
        on: later.date_naive(),
        said: "Seen, all well, may train".into(),
        speaks_of: open.into_iter().map(|o| o.thing).collect(),
        until: None,
    };
    coach.clearance_record(later, Some(person), form).unwrap();
    let plan = coach.plan_write(&folder, None, later, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let client = home.client.profile().unwrap();
    let report = client.take_in(&[ChosenFile { name: "plan".into(), text }], later).files.remove(0);
    assert!(report.refused.is_empty(), "{:?}", report.refused);
    assert!(matches!(client.train_view(later).unwrap().state, TrainState::Ready(_)), "open again");
}

#[test]
fn every_shown_proposal_is_made_again_exactly() {
    let mut home = home();
    let mut day = at("2026-03-02T09:00:00+01:00");
    for _ in 0..5 {
        home.trains(day);
        day += Duration::days(2);
    }
    let log = home.sends_log(day);
    home.coach_takes_in(&log, day);
    let person = home.person;
    let coach = home.coach.profile().unwrap();
    let shown: Vec<_> = coach
        .known(person)
        .unwrap()
        .records
        .iter()
        .filter(|r| matches!(r.payload, newel_engine::record::Payload::ProposalShown { .. }))
        .map(|r| r.id)
        .collect();
    assert_eq!(shown.len(), 5);
    for record in shown {
        let replay = coach.replay(person, record).unwrap();
        assert!(replay.same, "from the log alone, on the coach's device");
    }
}

#[test]
fn a_hold_is_answered_by_the_coach_and_the_ladder_comes_back() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let mut view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let mut clock = now;
    while work(&view).ladder.as_str() != "squat" {
        clock += Duration::minutes(1);
        view = client.set_log(clock, as_planned(&view)).unwrap();
    }
    let run = session(&view).run;
    let marked = client.mark(clock, run, false).unwrap();
    let told = client.mark_say(clock, marked.mark.mark, felt("bulge")).unwrap();
    assert!(matches!(told.mark.follows, Follows::Hold { .. }), "{:?}", told.mark.follows);
    client
        .session_finish(clock, FinishForm { run, effort: None, minutes: None, note: None, stopped_at: None })
        .unwrap();
    let log = home.sends_log(clock);
    home.coach_takes_in(&log, clock);
    let person = home.person;
    let folder = home.coach.out_folder();
    let coach = home.coach.profile().unwrap();
    let story = coach.client_view(clock, person).unwrap();
    assert_eq!(story.holds.len(), 1);
    let hold = story.holds[0].hold;
    let answered =
        coach.hold_answer(clock, person, hold, HoldAnswer::GoOn, "Seen by her physiotherapist").unwrap();
    assert!(answered.holds.is_empty());
    let squat = answered.next.unwrap().slots.into_iter().find(|p| p.ladder.as_str() == "hinge");
    assert!(squat.is_none_or(|p| matches!(p.outcome, Outcome::Train(_))), "the lower body is open again");
    let plan = coach.plan_write(&folder, None, clock, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let report = home.client.profile().unwrap().take_in(&[ChosenFile { name: "plan".into(), text }], clock);
    assert!(report.files[0].refused.is_empty());
}

#[test]
fn a_plan_for_somebody_else_changes_nothing() {
    let mut home = home();
    let other = self::home();
    let mut other = other;
    let now = at("2026-03-02T10:00:00+01:00");
    let folder = other.coach.out_folder();
    let person = other.person;
    let plan = other.coach.profile().unwrap().plan_write(&folder, None, now, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let client = home.client.profile().unwrap();
    let before = client.own().unwrap().records.len();
    let report = client.take_in(&[ChosenFile { name: "plan".into(), text }], now).files.remove(0);
    assert_eq!(report.refused[0].code, "app-error-plan-for-somebody-else");
    assert!(!report.refused[0].message.is_empty() && !report.refused[0].remedy.is_empty());
    assert_eq!(client.own().unwrap().records.len(), before);
}

#[test]
fn the_short_version_keeps_the_first_round_and_pausing_loses_nothing() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let view = client.session_begin(now, CheckInForm::of(Readiness::Tired, Vec::new())).unwrap();
    assert!(!session(&view).changed.is_empty(), "what check-in changed is said");
    let all = session(&view).steps.len();
    let short = client.session_shorten(now, session(&view).run).unwrap();
    let left =
        session(&short).steps.iter().filter(|s| matches!(s.state, StepState::Now | StepState::Ahead)).count();
    assert!(left > 0 && left < all, "{left} of {all} are left");
    assert_eq!(work(&short).round, 1);
}

#[test]
fn what_closed_training_is_not_talked_down_by_checking_in_again() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let said = vec![felt("chest-pain")];
    let view = client.session_begin(now, CheckInForm::of(Readiness::Usual, said)).unwrap();
    assert!(matches!(view.state, TrainState::Closed(_)));
    // A second tap from a screen that is behind, with nothing named this time.
    let again = client
        .session_begin(now + Duration::minutes(2), CheckInForm::of(Readiness::Usual, Vec::new()))
        .unwrap();
    assert!(matches!(again.state, TrainState::Closed(_)), "{:?}", again.state);
    // What she names beside it is kept, and opens nothing.
    let more = vec![felt("leak-effort")];
    let again =
        client.session_begin(now + Duration::minutes(3), CheckInForm::of(Readiness::Usual, more)).unwrap();
    assert!(matches!(again.state, TrainState::Closed(_)));
    let kept = client.own().unwrap().history().runs.iter().filter(|r| r.check_in.is_some()).count();
    assert_eq!(kept, 2);
}

#[test]
fn only_what_she_did_or_felt_in_training_is_taken_back() {
    let mut home = home();
    let now = at("2026-03-02T09:00:00+01:00");
    let client = home.client.profile().unwrap();
    let view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let run = session(&view).run;
    client.set_log(now + Duration::minutes(1), as_planned(&view)).unwrap();
    let records = client.own().unwrap().records.clone();
    let refused = |client: &mut newel_app::profile::Profile, id| {
        matches!(
            client.record_withdraw(now + Duration::minutes(2), id),
            Err(AppError::Refused(Refusal::NoSuchThing))
        )
    };
    let mut others = 0;
    for record in &records {
        let training = matches!(record.payload, Payload::SetDone(_) | Payload::CheckIn { .. });
        if !training {
            assert!(refused(client, record.id), "{:?}", record.payload);
            others += 1;
        }
    }
    assert!(others >= 3, "{others}");
    let set = records.iter().find(|r| matches!(r.payload, Payload::SetDone(_))).unwrap().id;
    client.record_withdraw(now + Duration::minutes(3), set).unwrap();
    // A red flag that stood for a day is sealed, though its session was never ended.
    let mark = client.mark(now + Duration::minutes(4), run, true).unwrap().mark.mark;
    client.mark_say(now + Duration::minutes(4), mark, felt("chest-pain")).unwrap();
    let next_day = now + Duration::hours(25);
    assert!(matches!(client.record_withdraw(next_day, mark), Err(AppError::Refused(Refusal::Confirmed))));
}

#[test]
fn a_coachs_own_cues_and_picture_reach_the_card_and_the_built_in_ones_come_back() {
    let mut home = home();
    let usual = CheckInForm::of(Readiness::Usual, Vec::new());
    let client = home.client.profile().unwrap();
    let begun = client.session_begin(at("2026-03-03T18:00:00+01:00"), usual).unwrap();
    let variant = work(&begun).variant.clone();
    assert_eq!(work(&begun).own, None);
    // Bytes that begin as a JPEG does; larger than nothing and smaller than too much.
    let bytes = [&b"\xFF\xD8\xFF\xE0"[..], &[7; 60_000]].concat();
    let picture = newel_exchange::Picture::of(bytes.clone()).unwrap();
    let form = WordsForm {
        variant: variant.clone(),
        cues: vec!["  Long neck ".into(), " ".into()],
        keep_picture: false,
        new_picture: Some(picture.base64()),
    };
    let now = at("2026-03-03T18:05:00+01:00");
    let folder = home.coach.out_folder();
    let (person, coach) = (home.person, home.coach.profile().unwrap());
    let none = WordsForm { new_picture: Some("PHN2Zz48L3N2Zz4=".into()), ..form.clone() };
    assert!(matches!(coach.words_save(now, none), Err(AppError::Refused(Refusal::NotAPicture))));
    let unknown = WordsForm { variant: "no-such".into(), ..form.clone() };
    assert!(matches!(coach.words_save(now, unknown), Err(AppError::Refused(Refusal::NoSuchThing))));
    let view = coach.words_save(now, form.clone()).unwrap();
    let own = view.iter().flat_map(|l| l.levels.iter().flatten()).find_map(|v| v.own.clone()).unwrap();
    assert_eq!(
        (own.cues.as_slice(), own.picture.clone()),
        (&["Long neck".to_owned()][..], Some(picture.name()))
    );
    let plan = coach.plan_write(&folder, None, now, person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let client = home.client.profile().unwrap();
    let report = client.take_in_one("plan", text.as_bytes(), at("2026-03-03T18:10:00+01:00"));
    assert_eq!(report.refused.len(), 0, "{report:?}");
    let view = client.train_view(at("2026-03-03T18:11:00+01:00")).unwrap();
    assert_eq!(work(&view).own, Some(own.clone()), "in mid-session, for the set in hand");
    assert_eq!(client.picture(&picture.name()).unwrap().base64, picture.base64());
    assert_eq!(client.picture(&picture.name()).unwrap().media, "image/jpeg");
    // The picture does not weigh on the log that goes back.
    let (log, _) = client.log_bytes(at("2026-03-03T18:12:00+01:00")).unwrap();
    let log = String::from_utf8(log).unwrap();
    assert!(log.contains("Long neck") && !log.contains(&picture.base64()[..200]));
    // The same file once more brings nothing new; a client cannot write words.
    let again = client.take_in_one("plan", text.as_bytes(), at("2026-03-03T18:13:00+01:00"));
    assert_eq!((again.new, again.refused.len()), (0, 0));
    assert!(matches!(client.words_save(now, form), Err(AppError::Refused(Refusal::CoachOnly))));
    // With neither cues nor picture the built-in ones are back.
    let back = WordsForm { variant, cues: vec![], keep_picture: false, new_picture: None };
    let coach = home.coach.profile().unwrap();
    let view = coach.words_save(at("2026-03-03T19:00:00+01:00"), back).unwrap();
    assert!(view.iter().flat_map(|l| l.levels.iter().flatten()).all(|v| v.own.is_none()));
}

#[test]
fn a_programme_is_written_given_trained_and_written_on_without_touching_what_was_trained() {
    use newel_engine::writing::Edit;
    let mut home = home();
    let coach = home.coach.profile().unwrap();
    let at_desk = at("2026-03-02T10:00:00+01:00");
    let id = coach.programme_new(at_desk, "  Kitchen strength ", None).unwrap();
    let mine = |view: &newel_app::views::PlanbookView| view.programmes[0].clone();
    let begun = mine(&coach.planbook_view().unwrap());
    assert_eq!((begun.programme.title.as_str(), begun.own, begun.whole), ("Kitchen strength", true, false));
    coach.programme_edit(at_desk, id, &Edit::AddSession { title: "Monday".into(), phase: None }).unwrap();
    let session = mine(&coach.planbook_view().unwrap()).programme.sessions[0].id.clone();
    assert!(
        coach.roster_view(at_desk).unwrap().programmes.iter().all(|p| p.id != id),
        "an empty session cannot be given"
    );
    for (ladders, part) in [(vec!["squat", "row"], BlockPart::Work), (vec!["carry"], BlockPart::Finisher)] {
        let ladders = ladders.into_iter().map(Into::into).collect();
        coach
            .programme_edit(at_desk, id, &Edit::AddBlock { session: session.clone(), ladders, part })
            .unwrap();
    }
    let written = mine(&coach.planbook_view().unwrap());
    assert!(written.whole && written.can_undo && !written.can_redo);
    // By hand: superset 3 x (10 reps x 3 s + 20 s, twice, 15 s between, 90 s rest) = 615 s; carry 2 x (30 s, both
    // sides if its options are one-sided, + 20 s set-up + 45 s rest).
    assert!((13..=15).contains(&written.minutes[0]), "{}", written.minutes[0]);
    let sets: Vec<f64> = written.week.iter().map(|w| w.sets).collect();
    assert_eq!(sets, [6.0, 6.0], "three rounds, twice a week, of squat and row; the finisher is not counted");
    // Undone wholly it is as it began, and redone as it was.
    for _ in 0..3 {
        coach.programme_turn(id, true).unwrap();
    }
    let undone = mine(&coach.planbook_view().unwrap());
    assert_eq!(undone.programme.sessions, begun.programme.sessions);
    assert!(!undone.can_undo && undone.can_redo);
    for _ in 0..3 {
        coach.programme_turn(id, false).unwrap();
    }
    assert_eq!(mine(&coach.planbook_view().unwrap()).programme.sessions, written.programme.sessions);
    // Given, sent, trained.
    coach.programme_give(at_desk, home.person, id).unwrap();
    let folder = home.coach.out_folder();
    let send = |home: &mut Home, now: &str| {
        let plan = home.coach.profile().unwrap().plan_write(&folder, None, at(now), home.person).unwrap();
        let text = std::fs::read_to_string(plan.path).unwrap();
        let report = home.client.profile().unwrap().take_in_one("plan", text.as_bytes(), at(now));
        assert_eq!(report.refused.len(), 0, "{report:?}");
    };
    send(&mut home, "2026-03-02T11:00:00+01:00");
    home.trains(at("2026-03-03T18:00:00+01:00"));
    let path = |home: &mut Home| {
        let now = at("2026-03-04T08:00:00+01:00");
        serde_json::to_value(home.client.profile().unwrap().path_view(now).unwrap().sessions).unwrap()
    };
    let trained = path(&mut home);
    assert_eq!(trained[0]["sets"].as_array().map(Vec::len), Some(3 * 2 + 2));
    // Written on: another ladder in the place of the first, and a copy of the session. What was trained stays.
    let coach = home.coach.profile().unwrap();
    let slot = mine(&coach.planbook_view().unwrap()).programme.sessions[0].blocks[0].slots[0].id.clone();
    let later = at("2026-03-03T20:00:00+01:00");
    coach.programme_edit(later, id, &Edit::LadderOfSlot { slot, ladder: "hinge".into() }).unwrap();
    coach.programme_edit(later, id, &Edit::CopySession { session }).unwrap();
    let revised = mine(&coach.planbook_view().unwrap());
    assert!(revised.programme.revision > written.programme.revision);
    send(&mut home, "2026-03-03T21:00:00+01:00");
    assert_eq!(path(&mut home), trained, "what was trained is not written anew");
    let ready = home.client.profile().unwrap().train_view(at("2026-03-05T18:00:00+01:00")).unwrap();
    let TrainState::Ready(ready) = ready.state else { panic!("{ready:?}") };
    assert_eq!(ready.blocks[0].slots[0].ladder.as_str(), "hinge");
    // Put away it is no longer offered, and what was given stays given.
    let coach = home.coach.profile().unwrap();
    let view = coach.programme_away(id, true).unwrap();
    assert_eq!((view.away.len(), view.programmes.iter().filter(|p| p.own).count()), (1, 0));
    let folder = tempfile::tempdir().unwrap();
    let again = coach.plan_write(folder.path(), None, at("2026-03-06T08:00:00+01:00"), home.person);
    assert!(again.is_ok(), "{again:?}");
}
