//! A stage as several voices tell it: a birth, a loss, what comes too late, and the plan that rests.

use crate::story::*;
use chrono::Duration;
use newel_engine::history::{History, SAME_BIRTH};
use newel_engine::proposal::Gate;
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Payload, Voice};
use newel_engine::rules::RulePack;
use newel_engine::stage::{BirthMode, Stage};

/// The coach's device; a story is told on the client's.
const COACH: u128 = 70;

fn holds(s: &Story) -> Option<Stage> {
    History::of(&s.records).stage().cloned()
}

fn aside(s: &Story) -> usize {
    History::of(&s.records).stages_said.iter().filter(|x| x.aside).count()
}

fn says_stage(s: &mut Story, stage: Stage) {
    s.says(Payload::StageChanged { stage });
}

fn born(s: &Story, days_ago: i64, mode: BirthMode, severe_tear: Option<bool>) -> Stage {
    Stage::Postpartum { birth: s.today() - Duration::days(days_ago), mode, severe_tear }
}

fn due_in(s: &Story, days: i64) -> Stage {
    Stage::pregnant(Some(s.today() + Duration::days(days)), None)
}

#[test]
fn a_birth_is_not_undone_by_what_the_coach_knew_before() {
    let mut s = Story::new();
    let pregnant = due_in(&s, 14);
    s.on_device(COACH);
    says_stage(&mut s, pregnant.clone());
    s.on_device(1).days(7);
    let birth = born(&s, 1, BirthMode::Vaginal, Some(false));
    says_stage(&mut s, birth.clone());
    // The coach, who has not heard of it, puts the due date right, and then knows of none at all.
    s.on_device(COACH).days(3);
    let later = due_in(&s, 6);
    says_stage(&mut s, later);
    assert_eq!(holds(&s), Some(birth.clone()));
    says_stage(&mut s, Stage::pregnant(None, None));
    says_stage(&mut s, Stage::Neither);
    assert_eq!((holds(&s), aside(&s)), (Some(birth), 3));
    // An old record that arrives late changes nothing, whatever the order of arrival.
    s.records.reverse();
    assert!(matches!(holds(&s), Some(Stage::Postpartum { .. })));
}

#[test]
fn a_new_pregnancy_after_a_birth_is_heard() {
    let mut s = Story::new();
    s.birth_weeks_ago(30, BirthMode::Vaginal).on_device(COACH);
    let new = due_in(&s, 200);
    says_stage(&mut s, new.clone());
    assert_eq!((holds(&s), aside(&s)), (Some(new), 0));
    // Without a date, months after the birth.
    let mut s = Story::new();
    s.birth_weeks_ago(30, BirthMode::Vaginal).on_device(COACH);
    says_stage(&mut s, Stage::pregnant(None, None));
    assert_eq!(aside(&s), 0);
    // And "neither", once the first three months are over.
    says_stage(&mut s, Stage::Neither);
    assert_eq!(holds(&s), Some(Stage::Neither));
}

#[test]
fn whoever_said_it_can_take_it_back() {
    let mut s = Story::new();
    s.weeks_pregnant(38);
    let before = holds(&s);
    s.birth_weeks_ago(0, BirthMode::Unsaid);
    let slip = s.last_record();
    s.withdraws(slip);
    assert_eq!(holds(&s), before);
    // The same device that recorded a birth by mistake may say so plainly.
    s.birth_weeks_ago(0, BirthMode::Unsaid);
    let pregnant = due_in(&s, 14);
    says_stage(&mut s, pregnant.clone());
    assert_eq!(holds(&s), Some(pregnant));
}

#[test]
fn of_two_accounts_of_one_birth_the_more_careful_holds() {
    let mut s = Story::new();
    let hers = born(&s, 40, BirthMode::Vaginal, None);
    says_stage(&mut s, hers);
    s.on_device(COACH);
    let coachs = born(&s, 45, BirthMode::Caesarean, Some(false));
    says_stage(&mut s, coachs);
    let both = born(&s, 40, BirthMode::Caesarean, Some(false));
    assert_eq!((holds(&s), aside(&s)), (Some(both.clone()), 0));
    // Her own correction counts for her account, and not for the coach's.
    s.on_device(1);
    let hers = born(&s, 41, BirthMode::Assisted, Some(true));
    says_stage(&mut s, hers);
    let Some(Stage::Postpartum { mode, severe_tear, .. }) = holds(&s) else { panic!("after a birth") };
    assert_eq!((mode, severe_tear), (BirthMode::Caesarean, Some(true)));
    // And so does the coach's: with hers as it is now.
    s.on_device(COACH);
    let coachs = born(&s, 40, BirthMode::Vaginal, Some(false));
    says_stage(&mut s, coachs);
    let both = born(&s, 40, BirthMode::Assisted, Some(true));
    assert_eq!(holds(&s), Some(both));
    // A birth of before this one changes nothing.
    s.on_device(COACH);
    let older = born(&s, 900, BirthMode::Vaginal, Some(false));
    says_stage(&mut s, older);
    assert_eq!(aside(&s), 1);
    let pack = RulePack::built_in().unwrap();
    assert_eq!(SAME_BIRTH as f64, pack.number("stage.same-birth", "days"));
}

#[test]
fn an_earlier_birth_does_not_end_a_pregnancy() {
    let mut s = Story::new();
    s.weeks_pregnant(20).on_device(COACH);
    let first_child = born(&s, 700, BirthMode::Caesarean, Some(false));
    says_stage(&mut s, first_child);
    assert!(matches!(holds(&s), Some(Stage::Pregnant { .. })));
    assert_eq!(aside(&s), 1);
}

#[test]
fn nobody_talks_of_a_birth_after_a_loss() {
    let mut s = Story::new();
    s.weeks_pregnant(30);
    let lost = Stage::AfterLoss { on: s.today() };
    says_stage(&mut s, lost.clone());
    s.on_device(COACH).days(4);
    let birth = born(&s, 2, BirthMode::Vaginal, Some(false));
    says_stage(&mut s, birth);
    let pregnant = due_in(&s, 60);
    says_stage(&mut s, pregnant);
    assert_eq!((holds(&s), aside(&s)), (Some(lost.clone()), 2));
    // The other way round the loss is heard.
    let mut s = Story::new();
    s.weeks_pregnant(40).on_device(COACH).birth_weeks_ago(0, BirthMode::Unsaid).on_device(1);
    let lost = Stage::AfterLoss { on: s.today() };
    says_stage(&mut s, lost.clone());
    assert_eq!(holds(&s), Some(lost));
}

#[test]
fn the_plan_rests_after_a_birth_until_both_say_that_it_goes_on() {
    let mut s = Story::new();
    s.weeks_pregnant(39).days(10).birth_weeks_ago(0, BirthMode::Vaginal);
    let birth = s.last_record();
    let Gate::Closed { by, reasons } = s.proposal().gate else { panic!("rests") };
    assert_eq!(by, Some(birth));
    assert_eq!(reasons.all().iter().map(|r| r.code).collect::<Vec<_>>(), [R::PlanRests]);
    s.days(56);
    assert!(s.is_closed(), "time alone does not take it up");
    s.says(Payload::TakenUp { by: Voice::Client, note: String::new() });
    assert!(s.is_closed(), "she alone does not");
    assert_eq!(History::of(&s.records).rests().unwrap().taken_up, [Voice::Client]);
    s.on_device(COACH).says(Payload::TakenUp { by: Voice::Coach, note: "slowly".into() });
    assert!(!s.is_closed());
    // The date put right is no second birth.
    s.on_device(1);
    let better = born(&s, 57, BirthMode::Vaginal, Some(false));
    says_stage(&mut s, better);
    assert!(!s.is_closed());
    // What was said before the birth takes nothing up.
    let mut s = Story::new();
    s.weeks_pregnant(39).taken_up().days(10).birth_weeks_ago(0, BirthMode::Vaginal);
    assert!(s.is_closed());
}

#[test]
fn after_a_loss_it_rests_in_other_words_and_without_a_pregnancy_before_it_does_not_rest() {
    let mut s = Story::new();
    s.weeks_pregnant(12);
    let lost = Stage::AfterLoss { on: s.today() };
    says_stage(&mut s, lost);
    let Gate::Closed { reasons, .. } = s.proposal().gate else { panic!("rests") };
    assert_eq!(reasons.all()[0].code, R::PlanRestsLoss);
    s.taken_up();
    assert!(!s.is_closed());
    let mut s = Story::new();
    s.birth_weeks_ago(9, BirthMode::Vaginal);
    assert!(!s.is_closed(), "she came after the birth, and no plan was there to rest");
}

#[test]
fn what_the_desk_says_of_it() {
    let codes = |s: &Story| {
        s.with_bench(|b| newel_engine::review::findings(b).iter().map(|f| f.code).collect::<Vec<_>>())
    };
    let mut s = Story::new();
    s.weeks_pregnant(39).days(10).birth_weeks_ago(0, BirthMode::Vaginal);
    assert!(codes(&s).contains(&"plan-rests"));
    s.on_device(COACH);
    says_stage(&mut s, Stage::Neither);
    assert!(codes(&s).contains(&"stage-differs"));
}

#[test]
fn a_date_at_the_end_of_time_from_a_file_brings_nothing_down() {
    for day in [chrono::NaiveDate::MIN, chrono::NaiveDate::MAX] {
        for stage in [
            Stage::pregnant(Some(day), None),
            Stage::pregnant(None, Some(day)),
            Stage::Postpartum { birth: day, mode: BirthMode::Vaginal, severe_tear: None },
            Stage::AfterLoss { on: day },
        ] {
            // As the first stage, after a birth by another voice, and in a pregnancy.
            for before in 0..3 {
                let mut s = Story::new();
                s.screened(&[], &[]).days(1);
                match before {
                    0 => {}
                    1 => drop(s.birth_weeks_ago(3, BirthMode::Vaginal).today()),
                    _ => drop(s.weeks_pregnant(20).today()),
                }
                s.on_device(COACH);
                says_stage(&mut s, stage.clone());
                s.with_bench(|b| {
                    let _ = newel_engine::review::findings(b).len() + newel_engine::screening::due(b).len();
                });
                let _ = s.is_closed();
            }
        }
    }
}

#[test]
fn an_operation_closes_the_load_history_and_every_ladder_starts_anew() {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0, 10.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts_at("hinge", 1, Some(one(8.0)));
    for _ in 0..3 {
        s.session_of("hinge", 12, left(4));
    }
    assert!(s.external(&s.next("hinge")) >= 8.0);
    let hinge = s.catalogue.place(&"hinge-one-dumbbell".into()).unwrap().variant.group.clone().unwrap();
    s.starts.clear();
    s.screened(&["recent-surgery"], &[]);
    assert!(s.rests("hinge"), "the provider is asked first");
    // Named again, as by the other voice, it is the same one.
    s.days(10).cleared().screened(&["recent-surgery"], &[]).cleared();
    s.with_bench(|b| {
        assert!(!b.state.trackers.contains_key(&hinge));
        assert!(b.state.ladders.is_empty() && b.state.operated);
    });
    let next = s.next("hinge");
    assert_eq!((next.level, s.external(&next)), (0, 0.0), "the easiest that there is: {next:?}");
    assert!(next.reserve.unwrap() >= 5.0, "{next:?}");
    assert!(s.reasons("hinge").contains(&R::FreshStart));
    s.session_of("hinge", 8, left(6));
    s.screened(&["recent-surgery"], &[]).cleared();
    assert!(s.with_bench(|b| !b.state.ladders.is_empty()), "what came after it counts");
}
