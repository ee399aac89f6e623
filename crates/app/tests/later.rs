//! A plan with a day of its own: until then the programme of before stays in force, on both devices, and she may begin
//! earlier; what concerns safety holds at once; a run is finished under the plan that it was begun under; and every
//! proposal is made again from the log alone.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_app::coach::Whom;
use newel_app::views::{
    CheckInForm, ChosenFile, ClientForm, FinishForm, GiveTo, IntakeForm, ReadyView, Role, SessionView,
    SetForm, TrainState,
};
use newel_app::{Newel, Profile, Replayed};
use newel_engine::ids::{PersonId, ProgrammeId};
use newel_engine::kit::{Dumbbell, Kit, Load};
use newel_engine::proposal::Outcome;
use newel_engine::record::{Readiness, Reserve, RestrictionKind};
use newel_engine::stage::Stage;
use newel_engine::units::Weight;
use newel_engine::writing::Edit;

const DAY: &str = "2026-03-16";

fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(&format!("{text}+01:00")).unwrap()
}

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

/// A coach, a client who trains "Kitchen", and "Studio", which is to follow.
struct Two {
    coach: Newel,
    client: Newel,
    person: PersonId,
    studio: ProgrammeId,
    folder: tempfile::TempDir,
}

impl Two {
    fn begun() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let start = at("2026-03-02T08:00:00");
        let mut coach = Newel::open(folder.path().join("coach")).unwrap();
        coach.profile_new("Ines", Role::Coach, start).unwrap();
        let profile = coach.profile().unwrap();
        let form = ClientForm {
            name: "Mara".into(),
            stage: Some(Stage::Neither),
            intake: Some(IntakeForm::default()),
        };
        let roster = profile.client_add(start, form).unwrap();
        let (person, from) = (roster.clients[0].person, roster.programmes[0].id);
        let kitchen = profile.programme_new(start, "Kitchen", Some(from)).unwrap();
        let studio = profile.programme_new(start, "Studio", Some(from)).unwrap();
        // Another first session, so that the two differ.
        let book = profile.planbook_view().unwrap();
        let first = &book.programmes.iter().find(|p| p.programme.id == studio).unwrap().programme.sessions[0];
        let title = Edit::TitleSession { session: first.id.clone(), title: "Studio first".into() };
        profile.programme_edit(start, studio, &title).unwrap();
        let mut two =
            Self { coach, client: Newel::open(folder.path().join("mara")).unwrap(), person, studio, folder };
        let plan = two.gives(kitchen, None, start);
        two.client.profile_from_plan(&plan.text, start).unwrap();
        let weights = [4.0, 8.0].map(|kg| Dumbbell { weight: Weight::in_kg(kg), pair: true });
        let kit = Kit { dumbbells: weights.to_vec(), ..Kit::default() };
        two.hers().kit_save(start, kit).unwrap();
        two
    }

    fn hers(&mut self) -> &mut Profile {
        self.client.profile().unwrap()
    }

    fn coachs(&mut self) -> &mut Profile {
        self.coach.profile().unwrap()
    }

    /// The plan file that gives her a programme.
    fn gives(
        &mut self,
        programme: ProgrammeId,
        begins: Option<&str>,
        now: DateTime<FixedOffset>,
    ) -> ChosenFile {
        let to = [GiveTo { person: self.person, begins: begins.map(date) }];
        let out = self.folder.path().join("out");
        let person = self.person;
        let coach = self.coachs();
        coach.programme_give_to(now, programme, &to).unwrap();
        let receipt = coach.plans_write(&out, now, &Whom::These(vec![person]), "en").unwrap();
        let text = std::fs::read_to_string(out.join(&receipt.written[0].file)).unwrap();
        ChosenFile { name: "plan".into(), text }
    }

    fn takes_in(&mut self, plan: ChosenFile, now: DateTime<FixedOffset>) {
        let report = self.hers().take_in(&[plan], now);
        assert!(report.files[0].refused.is_empty(), "{:?}", report.files[0].refused);
    }

    /// Her log reaches the coach.
    fn sends(&mut self, now: DateTime<FixedOffset>) {
        let out = self.client.out_folder();
        let path = self.hers().log_write(&out, None, now).unwrap().path;
        let log = ChosenFile { name: "log".into(), text: std::fs::read_to_string(path).unwrap() };
        let report = self.coachs().take_in(&[log], now);
        assert!(report.files[0].refused.is_empty(), "{:?}", report.files[0].refused);
    }

    fn ready(&mut self, now: DateTime<FixedOffset>) -> ReadyView {
        ready(self.hers().train_onward(now).unwrap().state)
    }

    /// A session of what is in force, or of what waits, wholly or so many sets of it.
    fn trains(&mut self, mut now: DateTime<FixedOffset>, early: bool, sets: usize) {
        let form = CheckInForm::of(Readiness::Usual, Vec::new());
        let hers = self.hers();
        let mut view =
            if early { hers.session_begin_early(now, form) } else { hers.session_begin(now, form) }.unwrap();
        for _ in 0..sets {
            let session = session(view.state);
            let Some(w) = &session.work else { break };
            now += Duration::seconds(90);
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
            view = hers.set_log(now, form).unwrap();
        }
    }

    fn ends(&mut self, now: DateTime<FixedOffset>) {
        let run = session(self.hers().train_view(now).unwrap().state).run;
        let form = FinishForm { run, effort: Some(4), minutes: Some(30), note: None, stopped_at: None };
        self.hers().session_finish(now, form).unwrap();
    }

    /// Every proposal that was shown is made again, on both devices.
    fn replays(&mut self) {
        for entries in [self.hers().replay_all().unwrap(), self.coachs().replay_all().unwrap()] {
            assert!(
                !entries.is_empty() && entries.iter().all(|e| e.replayed == Replayed::Same),
                "{entries:?}"
            );
        }
    }
}

fn ready(state: TrainState) -> ReadyView {
    match state {
        TrainState::Ready(ready) => ready,
        other => panic!("a session may begin: {other:?}"),
    }
}

fn session(state: TrainState) -> SessionView {
    match state {
        TrainState::Session(session) => session,
        other => panic!("a session is under way: {other:?}"),
    }
}

#[test]
fn the_programme_of_before_stays_in_force_until_the_day_on_both_devices() {
    let mut two = Two::begun();
    two.trains(at("2026-03-03T08:00:00"), false, 200);
    two.ends(at("2026-03-03T08:50:00"));
    let before = two.ready(at("2026-03-05T08:00:00"));
    let path =
        serde_json::to_value(two.hers().path_view(at("2026-03-05T08:00:00")).unwrap().ladders).unwrap();
    let studio = two.studio;
    let plan = two.gives(studio, Some(DAY), at("2026-03-04T08:00:00"));
    two.takes_in(plan, at("2026-03-04T09:00:00"));
    let now = two.ready(at("2026-03-05T08:00:00"));
    assert_eq!((now.programme.as_str(), now.begins), ("Kitchen", None));
    assert_eq!(now.slots, before.slots, "what was proposed is proposed still");
    let later = now.later.expect("it is said what follows");
    assert_eq!((later.programme.as_str(), later.begins), ("Studio", date(DAY)));
    let after = two.hers().path_view(at("2026-03-05T08:00:00")).unwrap().ladders;
    assert_eq!(serde_json::to_value(after).unwrap(), path);

    two.trains(at("2026-03-06T08:00:00"), false, 200);
    two.ends(at("2026-03-06T08:50:00"));
    two.sends(at("2026-03-06T09:00:00"));
    for day in 7..22 {
        let when = at(&format!("2026-03-{day:02}T08:00:00"));
        let hers = two.ready(when);
        let expected = if day < 16 { "Kitchen" } else { "Studio" };
        assert_eq!(hers.programme, expected, "on March {day}");
        assert_eq!(hers.later.is_some(), day < 16, "on March {day}");
        let person = two.person;
        let next = two.coachs().client_view(when, person).unwrap().next.unwrap();
        assert_eq!(next.slots, hers.slots, "the coach sees the same on March {day}");
        let roster = two.coachs().roster_view(when).unwrap();
        assert_eq!(roster.clients[0].programme.as_deref(), Some(expected), "on March {day}");
    }
    two.replays();
}

#[test]
fn she_may_begin_it_earlier_and_from_her_first_set_on_it_has_begun() {
    let mut two = Two::begun();
    let studio = two.studio;
    let plan = two.gives(studio, Some(DAY), at("2026-03-04T08:00:00"));
    two.takes_in(plan, at("2026-03-04T09:00:00"));
    let look = ready(two.hers().train_early(at("2026-03-05T08:00:00")).unwrap().state);
    assert_eq!((look.programme.as_str(), look.title.as_str()), ("Studio", "Studio first"));
    assert_eq!((look.begins, look.until_then.as_deref()), (Some(date(DAY)), Some("Kitchen")));
    assert_eq!(two.ready(at("2026-03-05T08:00:00")).programme, "Kitchen", "a look begins nothing");

    // Begun and given up without a set: nothing has changed.
    two.trains(at("2026-03-05T09:00:00"), true, 0);
    let open = session(two.hers().train_view(at("2026-03-05T09:01:00")).unwrap().state);
    assert_eq!(open.title, "Studio first");
    two.ends(at("2026-03-05T09:02:00"));
    assert_eq!(two.ready(at("2026-03-05T13:00:00")).programme, "Kitchen");

    two.trains(at("2026-03-06T09:00:00"), true, 200);
    two.ends(at("2026-03-06T09:50:00"));
    let begun = two.ready(at("2026-03-07T09:00:00"));
    assert_eq!((begun.programme.as_str(), begun.begins, begun.later), ("Studio", None, None));
    two.sends(at("2026-03-07T10:00:00"));
    let person = two.person;
    let next = two.coachs().client_view(at("2026-03-07T10:00:00"), person).unwrap().next.unwrap();
    assert_eq!((next.programme, next.slots), (studio, begun.slots));
    two.replays();
}

#[test]
fn a_run_is_finished_under_the_plan_that_it_was_begun_under() {
    let mut two = Two::begun();
    let studio = two.studio;
    let plan = two.gives(studio, Some(DAY), at("2026-03-04T08:00:00"));
    two.takes_in(plan, at("2026-03-04T09:00:00"));
    let night = at("2026-03-15T23:50:00");
    let title = two.ready(night).title;
    two.trains(night, false, 2);
    let after_midnight = session(two.hers().train_view(at("2026-03-16T00:10:00")).unwrap().state);
    assert_eq!(after_midnight.title, title);
    assert!(after_midnight.work.is_some(), "it goes on where it was");
    two.ends(at("2026-03-16T00:20:00"));
    assert_eq!(two.ready(at("2026-03-16T08:00:00")).title, "Studio first");
    two.sends(at("2026-03-16T09:00:00"));
    two.replays();
}

#[test]
fn what_concerns_safety_holds_at_once() {
    let mut two = Two::begun();
    let loads = |ready: &ReadyView| -> Vec<Load> {
        let trained = |o: &Outcome| match o {
            Outcome::Train(p) => Some(p.load.clone()),
            Outcome::Rest => None,
        };
        ready.slots.iter().filter_map(|p| trained(&p.outcome)).collect()
    };
    let before = loads(&two.ready(at("2026-03-05T08:00:00")));
    let (studio, person) = (two.studio, two.person);
    let coach = two.coachs();
    coach
        .restriction_add(at("2026-03-04T07:00:00"), person, RestrictionKind::AllLoad, None, "for now")
        .unwrap();
    let plan = two.gives(studio, Some(DAY), at("2026-03-04T08:00:00"));
    two.takes_in(plan, at("2026-03-04T09:00:00"));
    let now = two.ready(at("2026-03-05T08:00:00"));
    assert_eq!(now.programme, "Kitchen");
    assert!(loads(&now).iter().all(|l| *l == Load::Nothing), "{:?}", loads(&now));
    assert!(!before.is_empty());
}

#[test]
fn a_plan_that_is_replaced_before_its_day_never_comes_to_hold() {
    let mut two = Two::begun();
    let studio = two.studio;
    let first = two.gives(studio, Some("2026-03-10"), at("2026-03-04T08:00:00"));
    two.takes_in(first, at("2026-03-04T09:00:00"));
    let moved = two.gives(studio, Some(DAY), at("2026-03-05T08:00:00"));
    two.takes_in(moved, at("2026-03-05T09:00:00"));
    assert_eq!(two.ready(at("2026-03-12T08:00:00")).programme, "Kitchen", "the day was moved");
    assert_eq!(two.ready(at("2026-03-16T08:00:00")).programme, "Studio");
}
