//! More small stories, each turning on a number of the rule pack: what counts as evidence, what a log lacks, what is
//! usual for her, what the Desk tells, how long a session stays open.

use crate::rules_matter_stories::{by_the_quarter, client, hinge, in_hand, proposed};
use crate::story::*;
use newel_engine::history::History;
use newel_engine::record::{Payload, Readiness, RestrictionKind, SkipWhy, SymptomAmount as A};
use newel_engine::rules::RulePack;
use newel_engine::stage::{BirthMode, Stage, Told};

/// A set of many reps, or with much said to be left: is it evidence?
pub fn a_set_far_from_failure(rules: RulePack) -> String {
    let mut s = hinge(rules, &by_the_quarter(), 8.0);
    s.trains();
    s.does_with("hinge", one(8.0), 30, left(4)).ends().settled().days(2);
    s.with_bench(|b| format!("{:?}", b.state.trackers))
}

/// Sets whose proposal the log does not hold; the last fell short of what is taken for the dose.
pub fn a_log_without_its_proposals(rules: RulePack) -> String {
    let mut s = hinge(rules, &by_the_quarter(), 8.0);
    for (reps, reserve) in [(12, 3), (8, 1)] {
        s.trains().does_all("hinge", reps, left(reserve)).ends().settled().days(2);
    }
    s.records.retain(|r| !matches!(r.payload, Payload::ProposalShown { .. }));
    let told = s.with_bench(|b| format!("{:?} {:?}", b.state.ladders, b.state.trackers));
    told + &proposed(&s)
}

/// A due date that a clinician gave in the 8th, 15th, 21st, 27th and 30th week, so many days off the period's.
pub fn dates_that_differ(rules: RulePack) -> String {
    let period: chrono::NaiveDate = "2026-01-01".parse().unwrap();
    let differs = |weeks: i64, days: i64| {
        let on = Some(period + chrono::Duration::days(weeks * 7 + 6));
        let due = Some(period + chrono::Duration::days(280 + days));
        let told = Some(Told { who: "midwife".into(), on });
        Stage::Pregnant { due, told, last_period: Some(period), conceived: None }
            .disagreement(&rules)
            .is_some()
    };
    let told: Vec<_> = [8, 15, 21, 27, 30]
        .map(|weeks| [5, 6, 7, 8, 10, 11, 14, 15, 21, 22].map(|days| differs(weeks, days)))
        .into_iter()
        .collect();
    format!("{told:?}")
}

/// Eleven weeks after a birth of which she said the day alone.
pub fn a_birth_of_which_little_is_said(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.birth_weeks_ago(11, BirthMode::Unsaid);
    proposed(&s)
}

/// The coach rules out holding the breath.
pub fn no_breath_held(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.programme(vec![slot("squat", 8, 12, 2)], 2).restricted(RestrictionKind::BreathHolding);
    proposed(&s)
}

/// Screened in the tenth week, and looked at week by week until a year after the birth.
pub fn screened_once(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.weeks_pregnant(10).screened(&[], &[]);
    let mut told = Vec::new();
    let mut look = |s: &Story| told.push(s.with_bench(|b| format!("{:?}", newel_engine::screening::due(b))));
    for week in 0..56 {
        if week == 30 {
            s.birth_weeks_ago(0, BirthMode::Vaginal).screened(&[], &[]);
        }
        look(&s);
        s.days(7);
    }
    for _ in 0..30 {
        look(&s);
        s.days(7);
    }
    told.join("\n")
}

/// The day of a birth is put right by three weeks, after a session.
pub fn a_birth_put_right(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.owns(dumbbells(&[4.0, 5.0])).birth_weeks_ago(30, BirthMode::Vaginal);
    s.session_of("squat", 10, left(5)).birth_weeks_ago(33, BirthMode::Vaginal);
    proposed(&s)
}

/// Heaviness that is usual at one amount comes at another.
pub fn beside_a_usual_symptom(rules: RulePack) -> String {
    let mut told = Vec::new();
    for usual in [A::Little, A::Clearly, A::Lot] {
        for felt in [A::Little, A::Clearly, A::Lot] {
            let mut s = client(rules.clone());
            s.screened(&[], &[("heaviness", usual)]);
            s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(felt)));
            told.push(in_hand(&s, "squat"));
        }
    }
    told.join("\n")
}

/// What the Desk says day by day of somebody who marked, went under the floor, held more, left sets out, wrote,
/// was unwell, was redated, and then was silent.
pub fn on_the_desk(rules: RulePack) -> String {
    let mut s = client(rules);
    s.weeks_pregnant(34);
    s.says(Payload::StageChanged { stage: Stage::pregnant(None, None) }).weeks_pregnant(35);
    let mut told = Vec::new();
    let mut look = |s: &Story| {
        let codes = s.with_bench(|b| {
            newel_engine::review::findings(b).iter().map(|f| f.code).collect::<Vec<_>>().join(" ")
        });
        told.push(codes);
    };
    for n in 0..3 {
        s.feels(if n == 0 { Readiness::Unwell } else { Readiness::Usual }).trains();
        let run = s.run.unwrap();
        let more = if n == 1 { one(7.0) } else { one(6.0) };
        s.does_with("squat", more, 8, left(if n == 2 { 0 } else { 4 }));
        s.says(Payload::SetSkipped { run, slot: "row".into(), round: 0, why: SkipWhy::Chosen });
        if n == 2 {
            s.marks("row", symptom("heaviness", None));
        }
        s.ends();
        look(&s);
        s.days(2);
    }
    for _ in 0..20 {
        look(&s);
        s.days(1);
    }
    // The same without a mark.
    let mut s = Story::by(s.rules);
    s.trains().does("squat", 8, left(3)).ends();
    for _ in 0..12 {
        look(&s);
        s.days(1);
    }
    told.join("\n")
}

/// A session that was left open, looked at hour by hour; then the question about the next day.
pub fn left_open(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.trains().does("squat", 8, left(3));
    let mut told = Vec::new();
    for _ in 0..14 {
        let history = History::of(&s.records);
        told.push(newel_engine::flow::open_run(&history, &s.rules, s.now).is_some());
        s.now += chrono::Duration::hours(1);
    }
    for _ in 0..9 {
        let history = History::of(&s.records);
        told.push(newel_engine::flow::next_day_asked(&history, &s.rules, s.today()).is_some());
        s.days(1);
    }
    format!("{told:?}")
}

/// Ten weeks pregnant, and thirteen after a birth with and without the checks before impact: what lands?
pub fn before_landing(rules: RulePack) -> String {
    let mut told = String::new();
    for (pregnant, tried) in [(true, false), (false, false), (false, true)] {
        let mut s = Story::by(rules.clone());
        s.programme(vec![slot("impact", 8, 12, 5)], 2);
        if pregnant {
            s.weeks_pregnant(10);
        } else {
            s.birth_weeks_ago(13, BirthMode::Vaginal).taken_up();
        }
        if tried {
            let all: Vec<String> = rules.checks().iter().map(|c| c.id.to_string()).collect();
            let all: Vec<&str> = all.iter().map(String::as_str).collect();
            s.tries(&all, newel_engine::record::CheckOutcome::Clear);
        }
        told += &proposed(&s);
    }
    told
}

/// Two sessions of somebody who has never trained, and the one after.
pub fn learning_the_moves(rules: RulePack) -> String {
    let mut s = Story::by(rules);
    s.owns(dumbbells(&by_the_quarter())).programme(vec![slot("hinge", 8, 12, 3)], 4).never_trained();
    s.starts_at("hinge", 1, None);
    let mut told = String::new();
    for _ in 0..3 {
        told += &proposed(&s);
        s.trains().does_all("hinge", 8, left(4)).ends().settled();
    }
    told
}

/// A week, and a light one after it.
pub fn a_light_week(rules: RulePack) -> String {
    let mut s = hinge(rules, &by_the_quarter(), 8.0);
    s.programme(vec![slot("hinge", 8, 12, 2)], 4);
    (s.programme.per_week, s.programme.light_weeks) = (1, vec![2]);
    s.trains().does_all("hinge", 8, left(3)).ends().settled().days(7);
    proposed(&s)
}

/// Back after an illness: three sessions.
pub fn after_an_illness(rules: RulePack) -> String {
    let mut s = hinge(rules, &by_the_quarter(), 8.0);
    let mut told = String::new();
    s.programme(vec![slot("hinge", 8, 12, 3)], 4);
    s.trains().does_all("hinge", 8, left(3)).ends().settled();
    s.today_has(&[newel_engine::record::TodayThing::AfterIllness]).checks_in();
    told += &proposed(&s);
    s.begins().does_all("hinge", 8, left(5)).ends().settled();
    for _ in 0..2 {
        told += &proposed(&s);
        s.trains().does_all("hinge", 8, left(5)).ends().settled();
    }
    told
}

/// What is said of programmes of so many sets, and of sessions that took so many minutes.
pub fn looked_through(rules: RulePack) -> String {
    let mut s = Story::by(rules.clone());
    s.owns(full_kit()).screened(&[], &[]);
    let mut told = Vec::new();
    let mut look = |s: &Story, programme: &newel_engine::programme::Programme| {
        let all = crate::advice::looked(&rules, programme, &[s]);
        told.push(format!("{:?}", all.iter().map(|a| a.code).collect::<Vec<_>>()));
    };
    for rounds in 1..8 {
        for names in [
            &["push-up", "overhead-press", "row"][..],
            &["push-up"],
            &["squat", "lunge", "hinge"],
            &["squat"],
        ] {
            for twice in [1, 2] {
                let slots = names.iter().map(|n| slot(n, 8, 12, 3)).collect();
                let mut programme = programme_of(slots, rounds);
                programme.sessions[0].blocks[0].rounds = rounds * twice;
                look(&s, &programme);
            }
        }
    }
    s.programme(vec![slot("squat", 8, 12, 3)], 3);
    let mut programme = s.programme.clone();
    for (took, meant) in [(9, 9), (9, 8), (9, 8), (9, 7), (14, 8), (14, 8), (14, 14)] {
        s.trains().does_all("squat", 8, left(4));
        let run = s.run.take().unwrap();
        let minutes = Some(took);
        s.says(Payload::SessionEnded { run, effort: Some(5), minutes, note: None }).settled().days(3);
        for meant in [meant, 6, 7, 8, 9, 10] {
            programme.sessions[0].minutes = Some(meant);
            look(&s, &programme);
        }
    }
    told.join("\n")
}
