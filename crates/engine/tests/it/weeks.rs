//! Phases, doses by week, light weeks, warm-up and cool-down: which week asks for what, and what becomes of it.

use crate::story::*;
use newel_engine::catalogue::Catalogue;
use newel_engine::history::History;
use newel_engine::programme::{
    Amount, Block, BlockForm, BlockWeek, Dose, Phase, PlanSession, Programme, SlotWeek,
};
use newel_engine::reason::ReasonCode as R;
use newel_engine::record::{Purpose, SymptomAmount as A};
use newel_engine::weeks::{next_session, planned_session, progress};
use newel_engine::writing::{Edit, WeekStep, edited};
use proptest::prelude::*;

/// A squat, three rounds, once a week.
fn weekly() -> Story {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 20.0]));
    s.programme(vec![slot("squat", 8, 12, 3)], 3).starts_at("squat", 2, Some(one(10.0)));
    s.programme.per_week = 1;
    s
}

fn reps(low: u16, high: u16, target_rir: u8) -> Dose {
    Dose { amount: Amount::Reps { low, high }, target_rir, tempo: None }
}

/// Two phases of two and three weeks: squat and row, then hinge.
fn phased() -> Story {
    let mut s = weekly();
    s.programme.per_week = 2;
    let a = s.programme.sessions[0].clone();
    let named = |id: &str, phase: &str, ladder: &str| {
        let mut session = PlanSession { id: id.into(), phase: Some(phase.into()), ..a.clone() };
        session.blocks[0].id = format!("block-{id}").into();
        session.blocks[0].slots[0].id = format!("slot-{id}").into();
        session.blocks[0].slots[0].ladder = ladder.into();
        session
    };
    s.programme.sessions =
        vec![named("a", "one", "squat"), named("b", "one", "row"), named("c", "two", "hinge")];
    s.programme.phases = vec![
        Phase { id: "one".into(), title: "First".into(), weeks: 2, light_weeks: vec![] },
        Phase { id: "two".into(), title: "Then".into(), weeks: 3, light_weeks: vec![2] },
    ];
    s.programme.weeks = Some(5);
    s
}

/// What comes next after so many sessions, each trained as it came: the week and the session.
fn run_through(s: &mut Story, sessions: usize) -> Vec<(u32, String)> {
    let mut told = Vec::new();
    for _ in 0..sessions {
        let history = History::of(&s.records);
        let week = progress(&history, &s.programme).week;
        let next = next_session(&history, &s.programme).unwrap();
        told.push((week, next.id.to_string()));
        let slot = next.blocks[0].slots[0].id.to_string();
        s.trains().does_all(&slot, 8, left(3)).ends().settled().days(3);
    }
    told
}

#[test]
fn phases_follow_one_another_and_each_begins_with_its_first_session() {
    let mut s = phased();
    assert_eq!(s.programme.check(&Catalogue::built_in().unwrap()), Ok(()));
    let told = run_through(&mut s, 10);
    let said: Vec<(u32, &str)> = told.iter().map(|(w, id)| (*w, id.as_str())).collect();
    assert_eq!(
        said,
        [(1, "a"), (1, "b"), (2, "a"), (2, "b"), (3, "c"), (3, "c"), (4, "c"), (4, "c"), (5, "c"), (5, "c")]
    );
    let history = History::of(&s.records);
    assert!(progress(&history, &s.programme).over);
    assert_eq!(next_session(&history, &s.programme).unwrap().id.as_str(), "c", "the last phase goes on");
}

#[test]
fn a_week_says_its_phase_its_own_number_and_whether_it_is_light() {
    let s = phased();
    let at = |week| {
        let w = s.programme.week(week);
        (w.phase.unwrap().title.as_str(), w.in_phase, w.light)
    };
    assert_eq!(at(1), ("First", 1, false));
    assert_eq!(at(2), ("First", 2, false));
    assert_eq!(at(3), ("Then", 1, false));
    assert_eq!(at(4), ("Then", 2, true));
    assert_eq!(at(5), ("Then", 3, false));
    assert_eq!(at(9), ("Then", 3, false), "past the end the last week goes on");
    assert_eq!(s.programme.first_weeks().collect::<Vec<_>>(), [1, 3]);
    assert_eq!(weekly().programme.first_weeks().collect::<Vec<_>>(), [1]);
}

#[test]
fn a_dose_and_a_shape_of_a_week_hold_in_that_week_alone() {
    let mut s = weekly();
    s.programme.weeks = Some(4);
    let block = &mut s.programme.sessions[0].blocks[0];
    block.by_week = vec![BlockWeek { week: 2, rounds: 4, rest_seconds: 120, rest_between_seconds: 0 }];
    block.slots[0].by_week = vec![SlotWeek { week: 3, dose: reps(5, 7, 4) }];
    assert_eq!(s.programme.check(&Catalogue::built_in().unwrap()), Ok(()));
    let mut told = Vec::new();
    for _ in 0..5 {
        let next = s.next("squat");
        told.push((next.sets, next.range, next.reserve));
        s.trains().does_all("squat", next.range.low(), left(3)).ends().settled().days(7);
    }
    let usual = Amount::Reps { low: 8, high: 12 };
    let heavy = Amount::Reps { low: 5, high: 7 };
    assert_eq!(
        told,
        [
            (3, usual, Some(3.0)),
            (4, usual, Some(3.0)),
            (3, heavy, Some(4.0)),
            (3, usual, Some(3.0)),
            (3, usual, Some(3.0)),
        ]
    );
}

#[test]
fn the_week_of_a_run_is_that_of_its_beginning_however_much_of_it_is_logged() {
    let mut s = weekly();
    s.programme.weeks = Some(2);
    s.programme.sessions[0].blocks[0].by_week =
        vec![BlockWeek { week: 2, rounds: 5, rest_seconds: 60, rest_between_seconds: 0 }];
    s.trains().does("squat", 8, left(3));
    let id = s.programme.sessions[0].id.clone();
    let rounds = |s: &Story, run| {
        let history = History::of(&s.records);
        planned_session(&history, &s.programme, &id, run).unwrap().blocks[0].rounds
    };
    assert_eq!(rounds(&s, s.run), 3, "the one in hand stays in its week");
    assert_eq!(rounds(&s, None), 5, "the next one is in the next");
    assert_eq!(s.flow().steps.len(), 3);
    let first = s.run;
    s.ends().settled().days(7).trains();
    assert_eq!(rounds(&s, s.run), 5);
    assert_eq!(rounds(&s, first), 3, "and looked back at, the first is where it was");
}

#[test]
fn in_a_light_week_there_are_fewer_sets_and_more_is_left_and_nothing_grows() {
    let mut s = weekly();
    s.programme.weeks = Some(6);
    s.programme.light_weeks = vec![3];
    for _ in 0..2 {
        s.trains().does_all("squat", 12, left(5)).ends().settled().days(7);
    }
    let last = s.with_bench(|b| b.state.ladders[&"squat".into()].exposures.last().unwrap().clone());
    let weeks = std::mem::take(&mut s.programme.light_weeks);
    let usual = s.next("squat");
    s.programme.light_weeks = weeks;
    let held = s.external_of(&last.variant, &last.load);
    assert!(
        s.external(&usual) > held || usual.level > last.level,
        "it would have grown: {usual:?} after {last:?}"
    );
    let light = s.next("squat");
    assert!(s.reasons("squat").contains(&R::LightWeek));
    assert_eq!(light.sets, 2, "half of three, rounded up");
    assert_eq!(light.reserve.unwrap(), usual.reserve.unwrap().max(4.0));
    assert!(s.external(&light) <= held && light.level <= last.level, "{light:?} after {last:?}");
    assert!(!s.reasons("squat").contains(&R::LevelUp));
    s.trains().does_all("squat", 10, left(4)).ends().settled().days(7);
    assert!(!s.reasons("squat").contains(&R::LightWeek), "and the week after is as usual");
    assert_eq!(s.next("squat").sets, 3);
}

#[test]
fn counts_stay_where_they_are_in_a_light_week_and_mobility_goes_on() {
    let mut s = Story::new();
    s.programme(vec![timed("side-plank", 20, 40), timed("mobility", 20, 40)], 3);
    s.programme.per_week = 1;
    for slot in ["side-plank", "mobility"] {
        assert_eq!(s.next(slot).target.count(), 20, "{slot}");
    }
    s.trains().does_all("side-plank", 20, None).does_all("mobility", 20, None).ends().settled().days(7);
    let counts = |s: &Story| ["side-plank", "mobility"].map(|slot| s.next(slot).target.count());
    assert_eq!(counts(&s), [25, 25]);
    s.programme.light_weeks = vec![2];
    assert_eq!(counts(&s), [20, 25], "a hold stays, mobility goes on");
}

#[test]
fn nothing_is_looked_for_in_a_light_week() {
    let mut s = weekly();
    s.programme.weeks = Some(4);
    assert_eq!(s.next("squat").purpose, Purpose::Find);
    s.programme.light_weeks = vec![1];
    assert_eq!(s.next("squat").purpose, Purpose::Work, "a load is found in another week");
}

#[test]
fn breathing_goes_on_in_a_light_week() {
    let mut s = Story::new();
    s.programme(vec![timed("breathing", 45, 60), slot("squat", 8, 12, 3)], 3);
    s.programme.light_weeks = vec![1];
    assert_eq!((s.next("breathing").sets, s.next("squat").sets), (3, 2));
}

/// A squat to warm up with, then the squat itself, and a stretch at the end.
fn with_warm_up() -> Story {
    let mut s = weekly();
    s.programme(vec![slot("squat", 8, 12, 3), timed("mobility", 20, 40)], 3);
    let blocks = &mut s.programme.sessions[0].blocks;
    let mut warm = blocks[0].clone();
    warm.id = "warm".into();
    warm.form = BlockForm::WarmUp;
    warm.rounds = 1;
    warm.slots[0].id = "warm-squat".into();
    blocks[1].form = BlockForm::CoolDown;
    blocks[1].rounds = 1;
    blocks.insert(0, warm);
    s
}

#[test]
fn a_warm_up_is_the_least_load_at_the_bottom_of_the_range_and_no_evidence() {
    let (mut s, mut without) = (with_warm_up(), weekly());
    for session in 0..3 {
        let warm = s.next("warm-squat");
        assert_eq!(warm.purpose, Purpose::Ease);
        assert!(s.reasons("warm-squat").contains(&R::EaseIn));
        assert!(s.external(&warm) <= 2.0, "session {session}: {warm:?}");
        assert_eq!(warm.target.count(), 8);
        let work = s.next("squat");
        assert_eq!(work, without.next("squat"), "session {session}: the work is as it would be without");
        s.trains();
        assert_eq!(s.plan("warm-squat").purpose, Purpose::Ease);
        s.does_all("warm-squat", 8, plenty());
        let before = s.with_bench(|b| (b.state.trackers.clone(), b.state.variants.clone()));
        assert_eq!(before.0.len(), usize::from(session > 0), "a warm-up starts no strength state");
        without.trains();
        for story in [&mut s, &mut without] {
            story.does_all("squat", 12, left(3)).ends().settled().days(7);
        }
        let exposure = s.with_bench(|b| b.state.ladders[&"squat".into()].exposures.last().unwrap().clone());
        assert_eq!(exposure.load, work.load, "the work speaks for the ladder");
    }
}

#[test]
fn a_ladder_that_is_only_warmed_up_with_a_load_earns_nothing() {
    let mut s = with_warm_up();
    s.programme.sessions[0].blocks.remove(1);
    for _ in 0..4 {
        s.trains().does_all("warm-squat", 12, plenty()).ends().settled().days(2);
    }
    assert!(s.with_bench(|b| b.state.trackers.is_empty()));
    assert!(s.with_bench(|b| b.state.ladders.get(&"squat".into()).is_none_or(|l| l.exposures.is_empty())));
    assert!(s.external(&s.next("warm-squat")) <= 2.0);
}

#[test]
fn mobility_in_a_cool_down_goes_on_by_seconds() {
    let mut s = with_warm_up();
    let first = s.next("mobility");
    assert_eq!(first.purpose, Purpose::Ease);
    for _ in 0..2 {
        let count = s.next("mobility").target.count();
        s.trains().does_all("mobility", count, None).ends().settled().days(2);
    }
    assert!(s.next("mobility").target.count() > first.target.count(), "{:?}", s.next("mobility"));
}

#[test]
fn a_symptom_in_the_warm_up_answers_for_the_whole_ladder() {
    let mut s = with_warm_up();
    s.trains().does_all("warm-squat", 8, plenty()).does_all("squat", 8, left(3)).ends().settled().days(7);
    let usual = s.next("squat").level;
    assert!(usual > 0);
    s.trains().marks("warm-squat", symptom("heaviness", None));
    assert!(s.plan("squat").level < usual, "the work of today is a level down, too");
    assert_eq!(s.plan("warm-squat").purpose, Purpose::Ease);
}

// -- steps over weeks ---------------------------------------------------------------------------

fn edits(s: &mut Story, edit: &Edit) {
    // No id stands twice, however many edits there are.
    let mut n = serde_json::to_string(&s.programme).unwrap().len();
    let mut fresh = || {
        n += 1;
        format!("fresh-{n}")
    };
    s.programme = edited(&s.programme, &s.catalogue, edit, &mut fresh).unwrap();
}

fn doses(p: &Programme) -> Vec<(u8, Dose)> {
    (1..=u32::from(p.weeks.unwrap()))
        .map(|w| {
            let week = p.in_week(w);
            (week.sessions[0].blocks[0].rounds, week.sessions[0].blocks[0].slots[0].dose)
        })
        .collect()
}

#[test]
fn a_dose_rises_from_week_to_week_and_a_light_week_repeats_the_one_before() {
    let mut s = weekly();
    s.programme.weeks = Some(6);
    s.programme.light_weeks = vec![4];
    let id = s.programme.sessions[0].id.clone();
    let step = WeekStep { reps: 1, seconds: 0, rounds: 0, reserve: 1 };
    edits(&mut s, &Edit::StepUp { session: id.clone(), from: 1, to: 6, every: 1, step });
    let told: Vec<Dose> = doses(&s.programme).into_iter().map(|d| d.1).collect();
    assert_eq!(
        told,
        [reps(8, 12, 3), reps(9, 13, 2), reps(10, 14, 1), reps(10, 14, 1), reps(11, 15, 1), reps(12, 16, 1)],
        "one in reserve stays"
    );
    let step = WeekStep { rounds: 1, ..WeekStep::default() };
    edits(&mut s, &Edit::EvenWeeks { session: id.clone() });
    edits(&mut s, &Edit::StepUp { session: id.clone(), from: 2, to: 6, every: 2, step });
    let rounds: Vec<u8> = doses(&s.programme).into_iter().map(|d| d.0).collect();
    assert_eq!(rounds, [3, 3, 3, 3, 4, 4], "weeks two and three, the light fourth like them, then one more");
    edits(&mut s, &Edit::EvenWeeks { session: id });
    assert!(doses(&s.programme).iter().all(|d| *d == (3, reps(8, 12, 3))));
}

#[test]
fn the_first_phase_takes_in_what_stands_and_the_last_gives_it_back() {
    let mut s = weekly();
    s.programme.weeks = Some(6);
    s.programme.light_weeks = vec![4];
    let before = s.programme.clone();
    edits(&mut s, &Edit::AddPhase { title: "Base".into() });
    let phase = s.programme.phases[0].clone();
    assert_eq!((phase.weeks, &phase.light_weeks[..]), (6, &[4][..]));
    assert!(s.programme.sessions.iter().all(|x| x.phase.as_ref() == Some(&phase.id)));
    edits(&mut s, &Edit::CopyPhase { phase: phase.id.clone() });
    assert_eq!(s.programme.weeks, Some(12));
    assert_eq!(s.programme.phases[1].title, "Base 2");
    assert_eq!(s.programme.check(&s.catalogue), Ok(()));
    let second = s.programme.phases[1].id.clone();
    edits(&mut s, &Edit::DropPhase { phase: second });
    edits(&mut s, &Edit::DropPhase { phase: phase.id });
    assert_eq!(s.programme, before, "as it was");
}

#[test]
fn a_week_of_its_own_follows_in_what_it_shares_with_every_week() {
    let mut s = weekly();
    s.programme.weeks = Some(3);
    let slot = s.programme.sessions[0].blocks[0].slots[0].id.clone();
    let amount = |low, week| Edit::AmountOfSlot { slot: slot.clone(), low: Some(low), high: None, week };
    edits(&mut s, &amount(10, Some(2)));
    edits(&mut s, &Edit::ReserveOfSlot { slot: slot.clone(), target_rir: 4, week: None });
    let told: Vec<Dose> = doses(&s.programme).into_iter().map(|d| d.1).collect();
    assert_eq!(told, [reps(8, 12, 4), reps(10, 12, 4), reps(8, 12, 4)]);
    edits(&mut s, &amount(9, None));
    let told: Vec<Dose> = doses(&s.programme).into_iter().map(|d| d.1).collect();
    assert_eq!(told, [reps(9, 12, 4), reps(10, 12, 4), reps(9, 12, 4)], "its reps are its own");
}

#[test]
fn weeks_that_are_no_more_take_their_doses_along() {
    let mut s = weekly();
    s.programme.weeks = Some(6);
    let id = s.programme.sessions[0].id.clone();
    let step = WeekStep { reps: 1, ..WeekStep::default() };
    edits(&mut s, &Edit::StepUp { session: id, from: 1, to: 6, every: 1, step });
    edits(&mut s, &Edit::LightWeek { phase: None, week: 5, light: true });
    edits(&mut s, &Edit::Weeks { weeks: Some(3) });
    let slot = &s.programme.sessions[0].blocks[0].slots[0];
    assert_eq!(slot.by_week.iter().map(|w| w.week).collect::<Vec<_>>(), [2, 3]);
    assert!(s.programme.light_weeks.is_empty());
}

#[test]
fn what_no_programme_may_say_is_named() {
    let catalogue = Catalogue::built_in().unwrap();
    let bad = |change: &dyn Fn(&mut Programme)| {
        let mut p = phased().programme;
        change(&mut p);
        p.check(&catalogue).is_err()
    };
    assert!(bad(&|p| p.weeks = Some(6)), "weeks that are not those of the phases");
    assert!(bad(&|p| p.light_weeks = vec![1]), "light weeks beside phases");
    assert!(bad(&|p| p.phases[1].light_weeks = vec![4]), "a light week that the phase does not have");
    assert!(bad(&|p| p.phases[1].id = "one".into()), "one id twice");
    assert!(bad(&|p| p.sessions[0].phase = None), "a session without a phase");
    assert!(bad(&|p| p.sessions.truncate(2)), "a phase without a session");
    let twice = BlockWeek { week: 1, rounds: 3, rest_seconds: 0, rest_between_seconds: 0 };
    assert!(bad(&|p| p.sessions[0].blocks[0].by_week = vec![twice, twice]));
    let none = BlockWeek { rounds: 0, ..twice };
    assert!(bad(&|p| p.sessions[0].blocks[0].by_week = vec![none]));
    let held = Dose { amount: Amount::Seconds { low: 20, high: 30 }, ..reps(8, 12, 3) };
    assert!(
        bad(&|p| p.sessions[0].blocks[0].slots[0].by_week = vec![SlotWeek { week: 1, dose: held }]),
        "seconds in one week and reps in the others"
    );
    assert!(!bad(&|_| ()));
}

proptest! {
    /// However weeks are written: what is trained in one is the block as it stands, or as that week says.
    #[test]
    fn a_week_is_the_usual_one_or_its_own(
        weeks in prop::collection::btree_map(1..=12_u8, 1..=12_u8, 0..8),
        week in 1..20_u32,
        light in prop::collection::btree_set(1..=12_u8, 0..5),
    ) {
        let mut s = weekly();
        s.programme.weeks = Some(12);
        s.programme.light_weeks = light.iter().copied().collect();
        let block: &mut Block = &mut s.programme.sessions[0].blocks[0];
        let own = |(week, rounds): (&u8, &u8)| {
            BlockWeek { week: *week, rounds: *rounds, rest_seconds: 60, rest_between_seconds: 0 }
        };
        block.by_week = weeks.iter().map(own).collect();
        prop_assert_eq!(s.programme.check(&s.catalogue), Ok(()));
        let at = u8::try_from(week.min(12)).unwrap();
        let rounds = s.programme.in_week(week).sessions[0].blocks[0].rounds;
        prop_assert_eq!(rounds, weeks.get(&at).copied().unwrap_or(3));
        prop_assert_eq!(s.programme.week(week).light, week <= 12 && light.contains(&at));
        // Resolved once, it is resolved.
        let once = s.programme.in_week(week);
        prop_assert_eq!(once.in_week(week), once.clone());
    }
}

#[test]
fn a_start_is_lower_by_its_level_and_at_one_level_by_what_is_held() {
    use newel_engine::programme::Start;
    let start =
        |ladder: &str, level, load| Start { ladder: ladder.into(), level: Some(level), variant: None, load };
    let at = start("squat", 2, Some(one(10.0)));
    assert!(start("squat", 1, Some(one(20.0))).is_lower_than(&at));
    assert!(start("squat", 2, Some(one(8.0))).is_lower_than(&at));
    for other in [
        at.clone(),
        start("squat", 2, Some(one(12.0))),
        start("squat", 3, Some(one(4.0))),
        start("squat", 2, Some(pair(4.0))),
        start("squat", 2, None),
        start("row", 1, None),
    ] {
        assert!(!other.is_lower_than(&at), "{other:?}");
    }
}

#[test]
fn the_options_of_a_warm_up_are_as_light_as_it_is() {
    let mut s = with_warm_up();
    s.trains().does_all("squat", 12, left(3)).ends().settled().days(2);
    s.overridden("squat", Some(3), None);
    let warm = s.next("warm-squat");
    assert_eq!(warm.level, 3);
    let held = s.with_bench(|b| b.state.held.values().map(|(variant, _)| variant.clone()).next().unwrap());
    assert!(warm.options.iter().any(|o| o.variant == held), "what she did last is among them");
    for option in &warm.options {
        let place = s.catalogue.place(&option.variant).unwrap();
        let lightest = s.with_bench(|b| b.ground.loads(&place)[0].clone());
        assert_eq!((&option.load, option.target.count()), (&lightest, 8), "{}", option.variant);
    }
}

#[test]
fn on_the_way_back_up_a_light_week_goes_by_what_was_held_last() {
    let mut s = weekly();
    let fine: Vec<f64> = (16..=48).map(|n| f64::from(n) / 4.0).collect();
    s.owns(dumbbells(&fine)).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.starts = vec![];
    s.starts_at("hinge", 2, Some(one(10.0)));
    s.programme.per_week = 1;
    s.trains().does("hinge", 8, left(3)).marks("hinge", symptom("heaviness", Some(A::Clearly)));
    s.ends().settled().days(2).trains();
    for _ in 0..2 {
        s.does_with("hinge", one(6.0), 12, left(5));
    }
    s.ends().settled().days(2);
    let held = |s: &Story| s.external(&s.next("hinge"));
    assert!(held(&s) > 6.0 && held(&s) < 10.0, "more is allowed: {}", held(&s));
    s.programme.light_weeks = vec![3];
    assert_eq!(held(&s), 6.0);
}
