//! Stage, screening and clearances as use cases: what is refused, what either role sees, and what the client sees of
//! every kind of symptom.

// Helpers of tests stand outside of test functions and may unwrap like them.
#![allow(clippy::unwrap_used)]

use chrono::{DateTime, Days, Duration, FixedOffset};
use newel_app::views::{
    CheckInForm, ClearanceForm, ClientForm, FinishForm, Follows, ImpactForm, IntakeForm, Role, SafetyView,
    SetForm, TrainState, TrainView,
};
use newel_app::{AppError, Newel, Refusal};
use newel_engine::ids::PersonId;
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::proposal::Target;
use newel_engine::record::{
    Baseline, CheckOutcome, CheckResult, ClearedThing, Readiness, Reserve, Symptom, SymptomAmount, Voice,
};
use newel_engine::rules::{Class, RulePack, Scope};
use newel_engine::screening::ScreenWhy;
use newel_engine::stage::{BirthMode, Stage, Told};
use newel_engine::units::Weight;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-03-02T09:00:00+01:00").unwrap()
}

struct Two {
    coach: Newel,
    client: Newel,
    person: PersonId,
    _folders: (tempfile::TempDir, tempfile::TempDir),
}

fn two(stage: Option<Stage>, intake: Option<IntakeForm>) -> Two {
    let folders = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let now = now() - Duration::hours(1);
    let mut coach = Newel::open(folders.0.path().to_owned()).unwrap();
    coach.profile_new("Coach Wren", Role::Coach, now).unwrap();
    let folder = coach.out_folder();
    let profile = coach.profile().unwrap();
    let form = ClientForm { name: "Client Ash".into(), stage, intake };
    let roster = profile.client_add(now, form).unwrap();
    let person = roster.clients[0].person;
    profile.programme_give(now, person, roster.programmes[0].id).unwrap();
    let plan = profile.plan_write(&folder, None, now, person).unwrap();
    let mut client = Newel::open(folders.1.path().to_owned()).unwrap();
    client.profile_from_plan(&std::fs::read_to_string(plan.path).unwrap(), now).unwrap();
    let pair = |kg| Dumbbell { weight: Weight::in_kg(kg), pair: true };
    let kit = Kit { dumbbells: [2.0, 4.0, 6.0].map(pair).to_vec(), ..Kit::default() };
    client.profile().unwrap().kit_save(now, kit).unwrap();
    Two { coach, client, person, _folders: folders }
}

fn due_in(days: u64) -> Stage {
    Stage::pregnant(Some(now().date_naive() + Days::new(days)), None)
}

fn refused<T>(result: Result<T, AppError>) -> Refusal {
    match result {
        Err(AppError::Refused(refusal)) => refusal,
        Err(other) => panic!("{other}"),
        Ok(_) => panic!("it was taken"),
    }
}

fn view(of: &mut Newel, person: Option<PersonId>) -> SafetyView {
    of.profile().unwrap().safety_view(now(), person).unwrap()
}

#[test]
fn a_stage_whose_dates_cannot_be_is_refused_and_nothing_is_lost() {
    let mut two = two(Some(due_in(100)), None);
    let her = two.client.profile().unwrap();
    let today = now().date_naive();
    let ahead = today + Days::new(1);
    for stage in [
        Stage::Postpartum { birth: ahead, mode: BirthMode::Vaginal, severe_tear: None },
        Stage::AfterLoss { on: ahead },
        Stage::pregnant(Some(today + Days::new(400)), None),
        Stage::pregnant(None, Some(ahead)),
        Stage::pregnant(None, Some(today - Days::new(400))),
        Stage::Pregnant {
            due: Some(today + Days::new(100)),
            told: Some(Told { who: "midwife".into(), on: Some(ahead) }),
            last_period: None,
            conceived: None,
        },
    ] {
        assert_eq!(refused(her.stage_record(now(), None, stage.clone())), Refusal::DateCannotBe, "{stage:?}");
    }
    assert_eq!(view(&mut two.client, None).recorded, Some(due_in(100)));
    // A day late is no mistake: nobody is born on a date alone.
    let late = Stage::pregnant(Some(today - Days::new(10)), None);
    two.client.profile().unwrap().stage_record(now(), None, late).unwrap();
}

#[test]
fn a_birth_recorded_by_mistake_is_taken_back_within_a_day() {
    let mut two = two(Some(due_in(10)), None);
    let her = two.client.profile().unwrap();
    let birth = Stage::Postpartum { birth: now().date_naive(), mode: BirthMode::Unsaid, severe_tear: None };
    let rests = her.stage_record(now(), None, birth).unwrap();
    let record = rests.own_stage.unwrap();
    assert!(rests.rest.is_some() && !rests.closed.is_empty());
    assert!(matches!(her.train_view(now()).unwrap().state, TrainState::Closed(_)));
    let late = now() + Duration::hours(25);
    assert_eq!(refused(her.stage_take_back(late, None, record)), Refusal::NoSuchThing);
    let back = her.stage_take_back(now(), None, record).unwrap();
    assert!(back.rest.is_none() && back.closed.is_empty());
    assert_eq!(back.recorded, Some(due_in(10)));
    // What the coach recorded is not hers to take back.
    assert_eq!(back.own_stage, None);
    assert_eq!(refused(her.take_up(now(), None, "")), Refusal::NoSuchThing, "no plan rests");
}

#[test]
fn a_clearance_needs_who_when_what_and_of_what() {
    let intake = IntakeForm { conditions: vec!["twins".into()], ..IntakeForm::default() };
    let mut two = two(Some(due_in(100)), Some(intake));
    let her = two.client.profile().unwrap();
    let today = now().date_naive();
    let form = || ClearanceForm {
        who: "midwife".into(),
        on: today,
        said: "may train".into(),
        speaks_of: vec![ClearedThing::Condition { condition: "twins".into() }],
        until: None,
    };
    let mut tries = |form| refused(her.clearance_record(now(), None, form));
    assert_eq!(tries(ClearanceForm { speaks_of: Vec::new(), ..form() }), Refusal::NothingChosen);
    assert_eq!(tries(ClearanceForm { on: today + Days::new(1), ..form() }), Refusal::OutOfRange);
    assert_eq!(tries(ClearanceForm { until: Some(today - Days::new(1)), ..form() }), Refusal::OutOfRange);
    assert_eq!(tries(ClearanceForm { who: "  ".into(), ..form() }), Refusal::NameMissing);
    assert_eq!(tries(ClearanceForm { said: String::new(), ..form() }), Refusal::NameMissing);
    assert_eq!(view(&mut two.client, None).open.len(), 1, "it waits still");
    let her = two.client.profile().unwrap();
    let cleared = her.clearance_record(now(), None, ClearanceForm { until: Some(today), ..form() }).unwrap();
    assert!(cleared.open.is_empty() && cleared.clearances[0].holds && cleared.clearances[0].own);
    let tomorrow = her.safety_view(now() + Duration::days(1), None).unwrap();
    assert_eq!(tomorrow.open[0].ran_out, Some(today));
    assert!(!tomorrow.clearances[0].holds);
}

#[test]
fn an_intake_of_hers_stands_beside_the_coachs_until_it_is_talked_over() {
    let coachs = IntakeForm {
        conditions: vec!["prolapse".into()],
        baselines: vec![Baseline { kind: "heaviness".into(), amount: SymptomAmount::Clearly }],
        trained: true,
        ..IntakeForm::default()
    };
    let mut two = two(None, Some(coachs));
    let before = view(&mut two.client, None);
    assert!(before.screen_due.is_empty() && before.baselines.len() == 1);
    let hers = IntakeForm { conditions: vec!["fracture".into()], trained: true, ..IntakeForm::default() };
    let her = two.client.profile().unwrap();
    let unknown = IntakeForm { conditions: vec!["moon-sickness".into()], ..hers.clone() };
    assert_eq!(refused(her.intake_record(now(), None, unknown)), Refusal::NoSuchThing);
    let red = Baseline { kind: "chest-pain".into(), amount: SymptomAmount::Little };
    let usual_red = IntakeForm { baselines: vec![red], ..hers.clone() };
    assert_eq!(
        refused(her.intake_record(now(), None, usual_red)),
        Refusal::NoSuchThing,
        "no red flag is usual"
    );
    let after = her.intake_record(now(), None, hers).unwrap();
    assert_eq!(after.intakes.len(), 2);
    assert!(after.baselines.is_empty(), "she names none, which is stricter");
    assert_eq!(after.open.len(), 1, "the fracture asks");
    // It travels, and the coach sees both.
    let folder = two.client.out_folder();
    let log = two.client.profile().unwrap().log_write(&folder, None, now()).unwrap();
    let text = std::fs::read_to_string(log.path).unwrap();
    let coach = two.coach.profile().unwrap();
    coach.take_in(&[newel_app::views::ChosenFile { name: "log".into(), text }], now());
    let seen = coach.safety_view(now(), Some(two.person)).unwrap();
    let theirs = seen.intakes.iter().find(|i| i.by == Voice::Client).unwrap().record;
    assert_eq!(seen.conditions.len(), 2);
    // Setting hers aside asks for a note, and is kept as a loosening.
    let over = |note: Option<&str>| IntakeForm {
        conditions: vec!["prolapse".into()],
        trained: true,
        note: note.map(str::to_owned),
        instead_of: vec![theirs],
        ..IntakeForm::default()
    };
    assert_eq!(refused(coach.intake_record(now(), Some(two.person), over(None))), Refusal::NoteMissing);
    let done = coach.intake_record(now(), Some(two.person), over(Some("An old one, healed"))).unwrap();
    assert_eq!((done.intakes.len(), done.open.len()), (1, 0));
    assert_eq!(
        (done.loosened[0].what.as_str(), done.loosened[0].note.as_str()),
        ("intake", "An old one, healed")
    );
}

#[test]
fn never_screened_is_said_to_both() {
    let mut two = two(Some(due_in(100)), None);
    let seen = view(&mut two.client, None);
    assert_eq!(seen.screen_due.iter().map(|d| d.why).collect::<Vec<_>>(), [ScreenWhy::Never]);
    let TrainState::Ready(ready) = two.client.profile().unwrap().train_view(now()).unwrap().state else {
        panic!("a session may begin: nobody is kept from it")
    };
    assert!(ready.about_unknown);
    let coach = two.coach.profile().unwrap();
    let desk = coach.desk_view(now()).unwrap();
    let codes = desk.queue.iter().chain(&desk.well).flat_map(|e| e.findings.iter().map(|f| f.code.as_str()));
    assert!(codes.collect::<Vec<_>>().contains(&"screen-never"));
    assert_eq!(
        refused(two.client.profile().unwrap().safety_view(now(), Some(two.person))),
        Refusal::CoachOnly
    );
}

#[test]
fn nothing_of_a_birth_is_asked_after_a_loss() {
    let on = now().date_naive() - Days::new(30);
    let mut two = two(Some(Stage::AfterLoss { on }), None);
    let choices = view(&mut two.client, None).choices;
    let groups: Vec<String> = choices.iter().map(|c| format!("{:?}", c.group)).collect();
    assert!(!groups.contains(&"AfterBirth".to_owned()) && !groups.contains(&"Pregnancy".to_owned()));
}

// -- what the client sees of every kind --------------------------------------------------------------

fn ladder_of(view: &TrainView) -> String {
    let TrainState::Session(session) = &view.state else { panic!("a session") };
    session.work.as_ref().unwrap().ladder.to_string()
}

fn work_of(view: &TrainView) -> SetForm {
    let TrainState::Session(session) = &view.state else { panic!("a session") };
    let w = session.work.as_ref().unwrap();
    SetForm {
        run: session.run,
        slot: w.slot.clone(),
        round: w.round,
        side: w.side,
        variant: w.variant.clone(),
        load: w.load.clone(),
        done: w.target,
        reserve: w.asks_effort.then_some(Reserve::Exactly(3)),
    }
}

#[test]
fn what_she_sees_follows_from_the_class() {
    let pack = RulePack::built_in().unwrap();
    for kind in pack.symptoms() {
        let mut two = two(Some(due_in(120)), Some(IntakeForm::default()));
        let her = two.client.profile().unwrap();
        let mut view = her.session_begin(now(), CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
        let mut clock = now();
        // To the squat: breathing comes first and goes on whatever rests.
        while ladder_of(&view) != "squat" {
            clock += Duration::minutes(1);
            view = her.set_log(clock, work_of(&view)).unwrap();
        }
        let run = work_of(&view).run;
        let mark = her.mark(clock, run, false).unwrap().mark.mark;
        let amount = SymptomAmount::Clearly;
        let said = Symptom { kind: Some(kind.id.clone()), amount: Some(amount), place: None, words: None };
        let told = her.mark_say(clock, mark, said).unwrap().mark;
        let id = &kind.id;
        match (told.class, &told.follows) {
            (Class::Red, Follows::Stop { urgency }) => assert_eq!(Some(*urgency), kind.urgency, "{id}"),
            (Class::Hold, Follows::Hold { scope, ends_session }) => {
                assert_eq!(*scope, kind.scope, "{id}");
                assert_eq!(*ends_session, kind.scope == Scope::All, "{id}");
            }
            (Class::Hold, Follows::LadderEnds { held: true }) => {
                assert_eq!(kind.scope, Scope::Ladder, "{id}")
            }
            (Class::Drop, Follows::Easier { .. } | Follows::LadderEnds { .. })
            | (Class::Cue, Follows::Cue)
            | (Class::Note, Follows::Noted) => {}
            (class, follows) => panic!("{id} is {class:?} and what follows is {follows:?}"),
        }
        assert!(told.class < Class::Drop || told.ends_set, "{id}: a drop ends the set in hand");
        let closed = matches!(her.train_view(clock).unwrap().state, TrainState::Closed(_));
        let all = told.class == Class::Red || (told.class == Class::Hold && kind.scope == Scope::All);
        assert_eq!(closed, all, "{id}: training is closed for a red flag and for what rests everything");
        if closed {
            let TrainState::Closed(card) = her.train_view(clock).unwrap().state else { panic!("closed") };
            assert_eq!(
                (card.symptom.as_ref(), card.can_withdraw),
                (Some(id), true),
                "{id}: not meant is possible"
            );
        }
    }
}

#[test]
fn how_far_the_set_went_that_a_red_flag_stopped_is_kept_and_is_no_evidence() {
    let mut two = two(Some(due_in(70)), None);
    let client = two.client.profile().unwrap();
    let view = client.session_begin(now(), CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let TrainState::Session(session) = view.state else { panic!("begun") };
    let (run, work) = (session.run, session.work.unwrap());
    let marked = client.mark(now(), run, false).unwrap();
    let felt = Symptom { kind: Some("bleeding".into()), amount: None, place: None, words: None };
    let told = client.mark_say(now(), marked.mark.mark, felt).unwrap();
    let TrainState::Closed(closed) = told.train.state else { panic!("closed") };
    let stopped = closed.stopped.expect("a set was in hand");
    assert_eq!((stopped.variant, stopped.timed), (work.variant.clone(), true), "breathing comes first");
    let form = |stopped_at| FinishForm {
        run,
        effort: None,
        minutes: None,
        note: None,
        stopped_at: Some(stopped_at),
    };
    assert!(matches!(client.session_finish(now(), form(5000)), Err(AppError::Refused(_))), "too many");
    client.session_finish(now(), form(4)).unwrap();
    let path = client.path_view(now() + Duration::hours(1)).unwrap();
    let sets = &path.sessions[0].sets;
    assert_eq!(sets.len(), 1);
    assert!(sets[0].stopped, "marked as broken off");
    assert_eq!((sets[0].done, sets[0].variant.clone()), (Target::Seconds(4), work.variant));

    // A mark at rest breaks nothing off.
    let mut two = self::two(Some(due_in(70)), None);
    let client = two.client.profile().unwrap();
    let view = client.session_begin(now(), CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
    let TrainState::Session(session) = view.state else { panic!("begun") };
    let marked = client.mark(now(), session.run, true).unwrap();
    let felt = Symptom { kind: Some("bleeding".into()), amount: None, place: None, words: None };
    let told = client.mark_say(now(), marked.mark.mark, felt).unwrap();
    let TrainState::Closed(closed) = told.train.state else { panic!("closed") };
    assert!(closed.stopped.is_none());
    let form = FinishForm { run: session.run, effort: None, minutes: None, note: None, stopped_at: Some(4) };
    assert_eq!(refused(client.session_finish(now(), form)), Refusal::NoSuchThing);
}

#[test]
fn checks_before_impact_are_recorded_by_either_and_open_what_they_speak_of() {
    let birth = now().date_naive() - Days::new(14 * 7);
    let stage = Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) };
    let mut two = two(Some(stage), None);
    let person = two.person;
    let impact = view(&mut two.client, None).impact.expect("asked after a birth");
    assert_eq!((impact.from_week, impact.asked, impact.opens_first), (None, true, false));
    let first: Vec<_> = impact.checks.iter().filter(|c| !c.what.lands).map(|c| c.what.id.clone()).collect();
    let form = |on, outcome| ImpactForm {
        on,
        results: first.iter().map(|check| CheckResult { check: check.clone(), outcome }).collect(),
        note: String::new(),
    };
    let today = now().date_naive();
    let her = two.client.profile().unwrap();
    for day in [today + Days::new(1), birth - Days::new(1)] {
        let wrong = her.impact_record(now(), None, form(day, CheckOutcome::Clear));
        assert_eq!(refused(wrong), Refusal::DateCannotBe);
    }
    let nothing = ImpactForm { on: today, results: Vec::new(), note: String::new() };
    assert_eq!(refused(her.impact_record(now(), None, nothing)), Refusal::NothingChosen);
    let unknown = CheckResult { check: "somersault".into(), outcome: CheckOutcome::Clear };
    let unknown = ImpactForm { on: today, results: vec![unknown], note: String::new() };
    assert_eq!(refused(her.impact_record(now(), None, unknown)), Refusal::NoSuchThing);
    let seen = her.impact_record(now(), None, form(today, CheckOutcome::Clear)).unwrap();
    let impact = seen.impact.unwrap();
    assert_eq!((impact.opens_first, impact.opens_all), (true, false));
    // The coach tried with her on the same day, and one of them brought a sign: the stricter holds on her page.
    let results = vec![CheckResult { check: first[0].clone(), outcome: CheckOutcome::Sign }];
    let coach = two.coach.profile().unwrap();
    let tried = ImpactForm { on: today, results, note: "heaviness".into() };
    let seen = coach.impact_record(now(), Some(person), tried).unwrap();
    assert!(!seen.impact.unwrap().opens_first);
    let found = coach.desk_view(now()).unwrap();
    let codes: Vec<_> = found.queue.iter().flat_map(|c| &c.findings).map(|f| f.code.clone()).collect();
    assert!(codes.iter().any(|c| c == "check-sign"), "{codes:?}");
    // A pregnancy asks for none of it.
    assert!(view(&mut self::two(Some(due_in(100)), None).client, None).impact.is_none());
}
