//! The demonstration holds together, and its people are where their lines say that they are.

use super::*;
use crate::replay::Replayed;
use crate::views::CheckInForm;
use crate::views::{TrainState, Urge};
use chrono::TimeZone as _;
use newel_engine::reason::ReasonCode;
use newel_engine::rules::Class;
use newel_engine::stage::StageOn;

fn now() -> DateTime<FixedOffset> {
    FixedOffset::east_opt(0).unwrap().with_ymd_and_hms(2026, 11, 24, 7, 0, 0).unwrap()
}

fn her<'s>(scenario: &'s mut Scenario, slug: &str) -> &'s mut Profile {
    let member = scenario.clients.iter_mut().find(|m| m.slug == slug).unwrap();
    &mut member.profile
}

#[test]
fn everybody_is_where_her_line_says_and_every_proposal_replays() {
    let books = Books::built_in().unwrap();
    let mut told = Vec::new();
    let mut scenario = make(&books, now(), SEED, |done, of| told.push((done, of))).unwrap();
    let last = told.last().copied().unwrap();
    assert_eq!(last.0, last.1, "progress ends at its end");
    assert!(told.is_sorted(), "progress never goes back");
    assert!(scenario.clients.len() >= 6, "at least six clients");

    let weeks = |profile: &mut Profile| match profile
        .own()
        .unwrap()
        .history()
        .stage()
        .unwrap()
        .on(now().date_naive())
    {
        StageOn::Pregnant { age, .. } => ("pregnant", age.unwrap().weeks),
        StageOn::Postpartum { age, .. } => ("after birth", age.weeks),
        StageOn::AfterLoss { age } => ("after loss", age.weeks),
        StageOn::Neither => ("neither", 0),
    };
    assert_eq!(weeks(her(&mut scenario, "amara")), ("pregnant", 31));
    assert_eq!(weeks(her(&mut scenario, "noemi")), ("after birth", 11));
    assert_eq!(weeks(her(&mut scenario, "josie")), ("pregnant", 24));
    assert_eq!(weeks(her(&mut scenario, "freya")), ("after birth", 30));
    assert_eq!(weeks(her(&mut scenario, "lucia")), ("neither", 0));
    assert_eq!(weeks(her(&mut scenario, "hana")), ("after birth", 40));

    let ready = |profile: &mut Profile| match profile.train_view(now()).unwrap().state {
        TrainState::Ready(ready) => ready,
        state => panic!("a session may begin: {state:?}"),
    };
    let amara = ready(her(&mut scenario, "amara"));
    assert_eq!(
        amara.next_day.map(|n| n.day),
        now().date_naive().pred_opt(),
        "the question about yesterday waits"
    );
    for slug in ["noemi", "josie", "freya", "hana"] {
        ready(her(&mut scenario, slug));
    }
    match her(&mut scenario, "selin").train_view(now()).unwrap().state {
        TrainState::Closed(closed) => assert_eq!(closed.class, Class::Red, "a red flag closes training"),
        state => panic!("closed for Selin: {state:?}"),
    }
    let noemi = her(&mut scenario, "noemi").own().unwrap().clone();
    let bench = noemi.bench(now().date_naive(), None).unwrap();
    let holds: Vec<_> = bench.state.open_holds().filter_map(|h| h.ladder.clone()).collect();
    assert_eq!(holds, ["split-squat".into()], "two sessions with heaviness: held, and waiting for the coach");

    let plan = noemi.plan.as_ref().unwrap();
    let next = newel_engine::weeks::next_session(noemi.history(), &plan.programme).unwrap();
    let slots = bench.propose(&next).slots;
    let rests = slots.iter().find(|p| p.ladder == "split-squat".into()).unwrap();
    assert!(rests.reasons.has(ReasonCode::HoldWaits), "her next session says that it rests, and why");

    let desk = scenario.coach.desk_view(now()).unwrap();
    assert!(desk.queue[0].name.starts_with("Selin"), "the red flag comes first");
    assert_eq!(desk.queue[0].findings[0].urge, Urge::Stop);
    let lucia = desk.queue.iter().find(|e| e.name.starts_with("Lucia")).unwrap();
    assert!(lucia.findings.iter().any(|f| f.code == "silence"), "twelve days without a log are seen");

    let entries = scenario.coach.replay_all().unwrap();
    assert!(entries.len() > 100, "twelve weeks of proposals: {}", entries.len());
    assert!(entries.iter().all(|e| e.replayed == Replayed::Same), "each replays to the bit");

    // What the weeks are there to show did happen somewhere in them.
    let mut seen = std::collections::BTreeSet::new();
    for member in &mut scenario.clients {
        for run in &member.profile.own().unwrap().history().runs {
            let shown = run.shown.iter().flat_map(|s| &s.slots).flat_map(|p| p.reasons.all());
            seen.extend(shown.map(|r| r.code));
        }
    }
    for code in [
        ReasonCode::LoadUp,
        ReasonCode::LevelUp,
        ReasonCode::LevelDownSymptom,
        ReasonCode::StayDown,
        ReasonCode::BackUp,
        ReasonCode::CueChange,
        ReasonCode::ClearanceWaits,
        ReasonCode::PositionStage,
        ReasonCode::StageEffort,
        ReasonCode::FreshStart,
        ReasonCode::TiredToday,
    ] {
        assert!(seen.contains(&code), "{code:?} was never shown");
    }
}

#[test]
fn made_twice_it_is_there_once_and_each_profile_goes_on() {
    let folder = tempfile::tempdir().unwrap();
    let mut newel = Newel::open(folder.path().to_owned()).unwrap();
    let first = newel.demo_make(now(), |_, _| ()).unwrap();
    assert!(first.open.is_none(), "the start screen lists them, none is opened");
    let again = newel.demo_make(now(), |_, _| panic!("nothing is made twice")).unwrap();
    let keys = |view: &AppView| view.profiles.iter().map(|p| p.key.clone()).collect::<Vec<_>>();
    assert_eq!(keys(&first), keys(&again));

    let lines = include_str!("../../../../locales/en/screens.ftl");
    for card in &first.profiles {
        let about = card.about.as_ref().unwrap();
        assert!(card.demo && lines.contains(&format!("\n{about} = ")), "{about} has its line");
    }

    newel.profile_open("demo-freya").unwrap();
    let freya = newel.profile().unwrap();
    let begun = freya
        .session_begin(now(), CheckInForm::of(newel_engine::record::Readiness::Usual, Vec::new()))
        .unwrap();
    assert!(matches!(begun.state, TrainState::Session(_)), "she trains on");
    let (bytes, _) = freya.log_bytes(now()).unwrap();
    newel.profile_open(COACH_KEY).unwrap();
    let report = newel.profile().unwrap().take_in_one("log", &bytes, now());
    assert!(report.refused.is_empty(), "her log goes on where it was: {:?}", report.refused);
    assert_eq!(report.new, 3, "check-in, session, proposal");
}
