//! Watching, told as stories: what was logged, and what the weeks, the rates and the trends say of it.

use crate::story::*;
use chrono::{DateTime, Duration, FixedOffset, NaiveDate};
use newel_engine::catalogue::{Pattern, Position};
use newel_engine::history::History;
use newel_engine::monitor::load::Minutes;
use newel_engine::monitor::{LoadBand, Notice, Rate, RateOf, Watch, Watched, Week};
use newel_engine::record::{Payload, SkipWhy, SymptomAmount};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::state::{Frame, State};
use proptest::prelude::*;

/// What is to be watched of a story on its day.
pub fn watch(s: &Story) -> Watch {
    watch_on(s, s.today())
}

fn watch_on(s: &Story, day: NaiveDate) -> Watch {
    let history = History::of(&s.records);
    let frame = Frame { catalogue: &s.catalogue, rules: &s.rules, starts: &s.starts, starts_of: None, day };
    let state = State::of(&history, frame);
    Watch::of(&Watched {
        history: &history,
        state: &state,
        catalogue: &s.catalogue,
        rules: &s.rules,
        per_week: Some(s.programme.per_week),
        day,
    })
}

fn last(s: &Story) -> Week {
    watch(s).weeks.pop().expect("a week")
}

/// Squats with a dumbbell, twice a week.
fn squats() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3)], 2);
    s.starts_at("squat", 3, Some(one(6.0)));
    s
}

/// Ends the session in hand with an effort and minutes.
fn ends_with(s: &mut Story, effort: Option<u8>, minutes: Option<u16>) {
    let run = s.run.take().expect("a session is in hand");
    s.says(Payload::SessionEnded { run, effort, minutes, note: None });
}

fn session(s: &mut Story, effort: Option<u8>, minutes: Option<u16>) {
    s.trains().does_all("squat", 10, left(3));
    ends_with(s, effort, minutes);
}

fn rate(watch: &Watch, of: impl Fn(&RateOf) -> bool) -> &Rate {
    watch.rates.rates.iter().find(|r| of(&r.of)).expect("a rate")
}

fn of_ladder<'a>(watch: &'a Watch, id: &str) -> &'a Rate {
    rate(watch, |of| matches!(of, RateOf::Ladder { ladder } if ladder.as_str() == id))
}

// -- weeks ----------------------------------------------------------------------------------------

#[test]
fn a_week_of_load_as_in_the_check_value() {
    // Foster C 1998 and 2001 [o]; 0 300 0 240 0 360 0 gives 900, 0.784, 705.3 [d].
    let mut s = squats();
    // A week before, so that the first day of the week in question is known to be one of rest.
    session(&mut s, Some(3), Some(20));
    s.days(8);
    session(&mut s, Some(6), Some(50));
    s.days(2);
    session(&mut s, Some(6), Some(40));
    s.days(2);
    session(&mut s, Some(9), Some(40));
    s.days(1);
    let week = last(&s);
    assert!(week.whole);
    assert_eq!(week.load.daily, [0.0, 300.0, 0.0, 240.0, 0.0, 360.0, 0.0]);
    assert_eq!(week.load.sum, 900.0);
    assert!((week.load.monotony.unwrap() - 0.784).abs() < 5e-4);
    assert!((week.load.strain.unwrap() - 705.3).abs() < 0.05);
    assert_eq!((week.sessions, week.minutes.minutes, week.minutes.days), (3, 130, 3));
    assert_eq!(week.adherence.share, Some(1.5), "three where two are meant");
}

#[test]
fn several_sessions_in_a_day_add() {
    let mut s = squats();
    session(&mut s, Some(5), Some(30));
    s.days(7);
    session(&mut s, Some(5), Some(30));
    session(&mut s, Some(4), Some(10));
    let week = last(&s);
    assert_eq!(week.load.daily.last(), Some(&190.0));
    assert_eq!((week.sessions, week.minutes.days), (2, 1), "two sessions on one day");
}

#[test]
fn the_week_of_her_first_session_is_not_whole() {
    let mut s = squats();
    session(&mut s, Some(5), Some(30));
    s.days(3);
    session(&mut s, Some(6), Some(30));
    let week = last(&s);
    assert!(!week.whole && week.load.sum > 0.0);
    assert_eq!((week.load.monotony, week.load.strain, week.adherence.share), (None, None, None));
    s.days(3);
    assert!(last(&s).whole, "seven days with the first session on the first of them");
}

#[test]
fn without_an_effort_the_load_is_not_known() {
    let mut s = squats();
    session(&mut s, Some(5), Some(30));
    s.days(7);
    session(&mut s, Some(5), Some(30));
    s.days(1);
    session(&mut s, None, Some(30));
    let week = last(&s);
    assert_eq!((week.load.sum, week.load.unknown, week.minutes.minutes), (150.0, 1, 60));
    assert_eq!(week.load.monotony, None, "a session of unknown load is no rest day");
}

#[test]
fn weeks_go_back_without_a_gap() {
    let mut s = squats();
    for _ in 0..20 {
        session(&mut s, Some(5), Some(25));
        s.days(7);
    }
    s.days(-1);
    let weeks = watch(&s).weeks;
    assert_eq!(weeks.len(), 12, "as many as the rule says");
    assert_eq!(weeks.last().unwrap().to, s.today());
    for pair in weeks.windows(2) {
        assert_eq!(pair[0].to.succ_opt(), Some(pair[1].from));
        assert_eq!((pair[0].to - pair[0].from).num_days(), 6);
    }
    assert!(weeks.iter().all(|w| w.sessions == 1 && w.adherence.share == Some(0.5)));
}

#[test]
fn what_comes_after_the_day_is_not_seen() {
    let mut s = squats();
    session(&mut s, Some(5), Some(25));
    let then = s.today();
    let before = watch_on(&s, then);
    s.days(2);
    session(&mut s, Some(9), Some(60));
    assert_eq!(watch_on(&s, then).weeks, before.weeks);
    assert_eq!(watch_on(&s, then).trends[0].points, before.trends[0].points);
    assert!(watch_on(&s, then - Duration::days(1)).weeks.is_empty(), "nothing yet");
}

#[test]
fn a_session_without_a_set_is_none() {
    let mut s = squats();
    session(&mut s, Some(5), Some(25));
    s.days(1).trains();
    ends_with(&mut s, Some(8), Some(90));
    let week = last(&s);
    assert_eq!((week.sessions, week.load.sum, week.minutes.minutes), (1, 125.0, 25));
}

// -- minutes --------------------------------------------------------------------------------------

#[test]
fn missing_minutes_come_from_the_times_of_the_records() {
    let mut s = squats();
    s.trains();
    s.now += Duration::minutes(24);
    s.does_all("squat", 10, left(3));
    ends_with(&mut s, Some(5), None);
    let week = last(&s);
    assert_eq!((week.minutes.minutes, week.minutes.estimated), (24, 1), "some seconds over 24 minutes");
    assert_eq!((week.load.sum, week.load.estimated), (120.0, 1));

    s.days(1).trains().does_all("squat", 10, left(3));
    s.now += Duration::hours(9);
    ends_with(&mut s, Some(5), None);
    assert_eq!(last(&s).minutes.minutes, 24 + 120, "ended in the evening: capped");
}

#[test]
fn minutes_that_were_said_win_over_the_clock() {
    let mut s = squats();
    s.trains();
    s.now += Duration::minutes(50);
    s.does_all("squat", 10, left(3));
    ends_with(&mut s, Some(5), Some(30));
    let week = last(&s);
    assert_eq!((week.minutes.minutes, week.minutes.estimated), (30, 0));
}

#[test]
fn one_instant_tells_no_minutes() {
    let at: DateTime<FixedOffset> = "2026-03-02T09:00:00+01:00".parse().unwrap();
    let mut s = squats();
    session(&mut s, Some(5), None);
    let mut run = History::of(&s.records).runs.remove(0);
    run.started = at;
    run.ended.as_mut().unwrap().at = at;
    run.sets.iter_mut().for_each(|e| e.at = at);
    assert_eq!(Minutes::of(&run, 120.0), Minutes::Unknown);
    run.ended.as_mut().unwrap().at = at - Duration::hours(1);
    assert_eq!(Minutes::of(&run, 120.0), Minutes::Unknown, "a clock that was set back");
}

#[test]
fn the_guideline_is_that_of_her_stage() {
    // Mottola MF et al. 2018 [o]: at least 150 minutes over at least 3 days in pregnancy; Davenport MH et al. 2025 [s]: at
    // least 120 over at least 4 after a birth. The sources name none after a loss or for neither.
    let guideline = |prepare: &dyn Fn(&mut Story)| {
        let mut s = squats();
        prepare(&mut s);
        session(&mut s, Some(5), Some(25));
        last(&s).minutes.guideline.map(|g| {
            assert!(!g.source.is_empty());
            (g.minutes, g.days)
        })
    };
    assert_eq!(
        guideline(&|s| {
            s.weeks_pregnant(16);
        }),
        Some((150, 3))
    );
    assert_eq!(
        guideline(&|s| {
            s.birth_weeks_ago(20, BirthMode::Vaginal);
        }),
        Some((120, 4))
    );
    assert_eq!(
        guideline(&|s| {
            s.says(Payload::StageChanged { stage: Stage::Neither });
        }),
        None
    );
    assert_eq!(
        guideline(&|s| {
            let on = s.today() - Duration::weeks(10);
            s.says(Payload::StageChanged { stage: Stage::AfterLoss { on } });
        }),
        None
    );
}

#[test]
fn a_birth_counts_from_its_day_though_it_was_recorded_later() {
    let mut s = squats();
    s.weeks_pregnant(30);
    session(&mut s, Some(5), Some(25));
    s.days(10 * 7);
    let birth = s.today() - Duration::days(20);
    s.says(Payload::StageChanged {
        stage: Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) },
    });
    let minutes = |day| watch_on(&s, day).weeks.pop().unwrap().minutes.guideline.unwrap().minutes;
    assert_eq!(minutes(birth - Duration::days(1)), 150);
    assert_eq!(minutes(birth), 120);
}

// -- sets and effort ------------------------------------------------------------------------------

#[test]
fn hard_sets_are_those_near_their_target() {
    let mut s = squats();
    s.programme(vec![slot("squat", 8, 12, 3)], 4).trains();
    s.does("squat", 10, left(3)).does("squat", 10, left(4)).does("squat", 10, plenty());
    s.does("squat", 10, None);
    ends_with(&mut s, Some(5), Some(25));
    let week = last(&s);
    let sets = &week.patterns[0];
    assert_eq!((sets.pattern, sets.sets, sets.hard, sets.unrated), (Pattern::Squat, 4, 2, 1));
    let effort = week.effort.unwrap();
    assert_eq!((effort.sets, effort.at_least), (3, 1), "an answer that is missing is not in it");
    // 0, 1 and at least 2 over a target of 3.
    assert!((effort.mean - 1.0).abs() < 1e-12, "{}", effort.mean);
}

#[test]
fn both_sides_are_one_set_and_the_weaker_speaks() {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("split-squat", 8, 12, 3)], 2);
    s.starts_at("split-squat", 2, Some(one(4.0))).trains();
    assert!(s.plan("split-squat").per_side);
    use newel_engine::record::Side;
    s.does_side("split-squat", Side::Left, 10, left(6)).does_side("split-squat", Side::Right, 10, left(2));
    s.does("split-squat", 10, left(3));
    ends_with(&mut s, Some(5), Some(25));
    let week = last(&s);
    assert_eq!((week.patterns[0].sets, week.patterns[0].hard), (2, 2));
    assert_eq!(week.effort.unwrap().mean, -0.5, "two left of three, then three of three");
    assert_eq!((week.adherence.planned_sets, week.adherence.done_sets), (2, 2));
}

#[test]
fn a_set_that_a_mark_ended_is_worked_but_not_hard() {
    let mut s = squats();
    s.trains().stops("squat", 5);
    ends_with(&mut s, Some(5), Some(10));
    let week = last(&s);
    let sets = &week.patterns[0];
    assert_eq!((sets.sets, sets.hard, sets.unrated), (1, 0, 0));
    assert_eq!(week.effort, None);
}

#[test]
fn sets_left_out_are_counted_by_why() {
    let mut s = squats();
    s.programme(vec![slot("squat", 8, 12, 3)], 5).trains().does("squat", 10, left(3));
    let run = s.run.unwrap();
    for (round, why) in
        [(0, SkipWhy::Chosen), (1, SkipWhy::Chosen), (2, SkipWhy::Short), (3, SkipWhy::Symptom)]
    {
        s.says(Payload::SetSkipped { run, slot: "squat".into(), round, why });
    }
    ends_with(&mut s, Some(5), Some(10));
    let a = last(&s).adherence;
    assert_eq!((a.planned_sets, a.done_sets), (5, 1), "the last set is open");
    assert_eq!((a.skipped_chosen, a.skipped_short, a.skipped_symptom), (1, 1, 1), "the first was done");
}

// -- rates ----------------------------------------------------------------------------------------

/// `marked` of `n` sessions of squats and rows with a leak in the squat.
fn leaks(n: u32, marked: u32) -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3)], 1);
    s.starts_at("squat", 2, Some(one(6.0)));
    for i in 0..n {
        s.trains();
        if i < marked {
            s.tap_and_say("squat", "doming");
        }
        s.does_all("squat", 10, left(3)).does_all("row", 10, left(3)).ends().settled().days(2);
    }
    s
}

impl Story {
    fn tap_and_say(&mut self, slot: &str, kind: &str) -> &mut Self {
        self.marks(slot, symptom(kind, Some(SymptomAmount::Little)))
    }
}

#[test]
fn a_rate_stands_against_the_rest() {
    let w = watch(&leaks(10, 4));
    assert_eq!(w.rates.notice, Notice::PointerNeverADiagnosis);
    let squat = of_ladder(&w, "squat");
    assert_eq!((squat.marked, squat.sessions), (4, 10));
    let tells = squat.tells.as_ref().unwrap();
    assert!((tells.rate - 0.4).abs() < 1e-12 && tells.low < 0.4 && tells.high > 0.4);
    let rest = tells.rest.as_ref().unwrap();
    assert_eq!((rest.marked, rest.sessions), (0, 10));
    // 4 of 10 against 0 of 10: 2 C(10, 4) / C(20, 4) = 420 / 4845 [d].
    assert!((rest.chance - 420.0 / 4845.0).abs() < 1e-12, "{}", rest.chance);
    let row = of_ladder(&w, "row").tells.as_ref().unwrap();
    assert_eq!((row.rate, row.low), (0.0, 0.0));
    assert!(
        (row.rest.as_ref().unwrap().chance - rest.chance).abs() < 1e-15,
        "the same table from the other side"
    );
}

#[test]
fn too_few_sessions_say_nothing() {
    let w = watch(&leaks(7, 3));
    let squat = of_ladder(&w, "squat");
    assert_eq!((squat.marked, squat.sessions), (3, 7), "the counts are shown");
    assert_eq!(squat.tells, None, "and nothing is made of them");
    let once = watch(&leaks(9, 1));
    let tells = of_ladder(&once, "squat").tells.as_ref().unwrap();
    assert_eq!(tells.rest, None, "one mark is not compared");
}

#[test]
fn a_mark_that_was_taken_back_does_not_count() {
    let mut s = leaks(9, 2);
    s.trains();
    let mark = s.tap("squat");
    s.withdraws(mark);
    s.does_all("squat", 10, left(3)).does_all("row", 10, left(3)).ends();
    let w = watch(&s);
    let squat = of_ladder(&w, "squat");
    assert_eq!((squat.marked, squat.sessions), (2, 10));
    // After the end a red flag stays; it is no rate.
    s.days(1).trains();
    let said = s.mark_of("squat", symptom("chest-pain", None));
    let mark = s.tap("squat");
    s.corrects(mark, said).does_nothing_more();
    s.withdraws(mark);
    let w = watch(&s);
    assert_eq!(of_ladder(&w, "squat").marked, 2);
}

impl Story {
    fn does_nothing_more(&mut self) -> &mut Self {
        let run = self.run.take().unwrap();
        self.says(Payload::SessionEnded { run, effort: None, minutes: None, note: None })
    }
}

#[test]
fn several_marks_in_a_session_are_one_and_a_note_is_none() {
    let mut s = leaks(8, 1);
    s.trains().tap_and_say("squat", "doming").tap_and_say("row", "joint-pain");
    s.does_all("row", 10, left(3)).ends();
    let w = watch(&s);
    assert_eq!(
        (of_ladder(&w, "squat").marked, of_ladder(&w, "squat").sessions),
        (2, 9),
        "a mark before a set"
    );
    let row = of_ladder(&w, "row");
    assert!(row.sessions == 9 && row.marked <= row.sessions);
}

#[test]
fn a_mark_of_no_movement_stands_in_no_rate() {
    let mut s = leaks(8, 0);
    s.marks_at_home(symptom("heaviness", Some(SymptomAmount::Little)));
    let w = watch(&s);
    assert_eq!(w.rates.unplaced, 1);
    assert!(w.rates.rates.iter().all(|r| r.marked == 0));
}

#[test]
fn positions_are_told_apart() {
    let w = watch(&leaks(10, 4));
    let marked: u32 =
        w.rates.rates.iter().filter(|r| matches!(r.of, RateOf::Position { .. })).map(|r| r.marked).sum();
    assert_eq!(marked, 4);
    let standing = rate(&w, |of| matches!(of, RateOf::Position { position: Position::Standing }));
    assert!(standing.sessions >= 8);
}

#[test]
fn heavy_loads_are_told_from_light_ones() {
    let mut s = squats();
    for i in 0..18u32 {
        s.trains();
        let load = [4.0, 6.0, 8.0][(i % 3) as usize];
        s.does_with("squat", one(load), 10, left(4));
        if i % 3 == 2 && i > 5 {
            // Marked at rest, after the set.
            let last = s.records.iter().rev().find_map(|r| match &r.payload {
                Payload::SetDone(set) => Some(set.clone()),
                _ => None,
            });
            let set = last.unwrap();
            s.says(Payload::SymptomMark {
                run: s.run,
                slot: Some(set.slot),
                ladder: Some(set.ladder),
                variant: Some(set.variant),
                round: Some(set.round),
                at_rest: true,
                symptom: symptom("doming", Some(SymptomAmount::Little)),
            });
        }
        ends_with(&mut s, Some(5), Some(20));
        s.settled().days(1);
    }
    let w = watch(&s);
    let of_band = |third: LoadBand| {
        rate(&w, |of| {
            matches!(of, RateOf::LoadBand { variant, band, .. }
                if variant.as_str() == "squat-goblet" && *band == third)
        })
    };
    let heavy = of_band(LoadBand::Heavy);
    assert!(heavy.marked >= 3, "{heavy:?}");
    assert_eq!(of_band(LoadBand::Light).marked, 0);
    let RateOf::LoadBand { lightest, heaviest, .. } = &heavy.of else { panic!("a band") };
    assert_eq!((lightest.0, heaviest.0), (8.0, 8.0));
}

#[test]
fn what_was_before_a_birth_is_of_before() {
    let mut s = Story::new();
    s.weeks_pregnant(36);
    s.owns(full_kit()).programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3)], 1);
    s.trains().tap_and_say("squat", "doming").does_all("row", 10, left(4)).ends().days(28);
    let birth = s.today();
    s.says(Payload::StageChanged {
        stage: Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) },
    });
    s.days(7);
    let w = watch(&s);
    assert_eq!(w.rates.from, birth);
    assert!(w.rates.rates.is_empty() && w.rates.unplaced == 0);
    assert!(w.trends.is_empty(), "old states are no longer used");
    assert!(!w.weeks.is_empty(), "the weeks themselves stay");
}

// -- trends and the whole -------------------------------------------------------------------------

#[test]
fn a_trend_has_a_point_for_each_day_within_its_band() {
    let mut s = squats();
    for _ in 0..5 {
        s.session_of("squat", 10, left(3));
    }
    let w = watch(&s);
    let trend = &w.trends[0];
    assert_eq!(trend.points.len(), 5);
    for p in &trend.points {
        assert!(p.low.0 < p.estimate.0 && p.estimate.0 < p.high.0);
    }
    let width = |i: usize| trend.points[i].high.0 / trend.points[i].low.0;
    assert!(width(4) < width(0), "what is known grows");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn whatever_is_logged_the_sums_hold(
        days in proptest::collection::vec((0u8..5, 0u8..=12, 0u16..2000, 0u8..12, any::<bool>()), 1..14),
    ) {
        let mut s = squats();
        for (gap, effort, minutes, reserve, mark) in days {
            s.days(i64::from(gap)).trains();
            if mark {
                s.tap_and_say("squat", "doming");
            }
            if !s.is_over("squat") {
                s.does("squat", 10, left(reserve));
            }
            let (effort, minutes) = ((effort < 12).then_some(effort), (minutes < 1900).then_some(minutes));
            ends_with(&mut s, effort, minutes);
        }
        let w = watch(&s);
        for week in &w.weeks {
            prop_assert_eq!(week.load.daily.len(), 7);
            prop_assert!((week.load.daily.iter().sum::<f64>() - week.load.sum).abs() < 1e-9);
            prop_assert!(week.load.sum.is_finite() && week.load.sum >= 0.0);
            prop_assert!(week.load.monotony.is_none_or(|m| m.is_finite() && m > 0.0));
            prop_assert!(week.minutes.days <= week.sessions && week.load.unknown <= week.sessions);
            for p in &week.patterns {
                prop_assert!(p.hard + p.unrated <= p.sets);
            }
            let a = &week.adherence;
            let gone = a.done_sets + a.skipped_chosen + a.skipped_short + a.skipped_symptom;
            prop_assert!(gone <= a.planned_sets);
        }
        for r in &w.rates.rates {
            prop_assert!(r.marked <= r.sessions && r.sessions > 0);
            if let Some(t) = &r.tells {
                prop_assert!(0.0 <= t.low && t.low <= t.rate && t.rate <= t.high && t.high <= 1.0);
                if let Some(rest) = &t.rest {
                    prop_assert!(rest.chance > 0.0 && rest.chance <= 1.0);
                }
            }
        }
        let json = serde_json::to_string(&w).unwrap();
        prop_assert_eq!(serde_json::to_string(&watch(&s)).unwrap(), json, "the same log says the same");
    }
}
