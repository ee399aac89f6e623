//! Every number of the rule pack matters: changed, it changes what is proposed or shown in a story that
//! runs through the real path. A number without such a story fails here, and so does a story that a
//! listed number leaves as it was. Reasons are left out of what is compared: they may quote a number.

use crate::rules_matter_around as around;
use crate::rules_matter_stories as tale;
use newel_engine::rules::{NUMBERS_USED, RULES_JSON, RulePack, SYMPTOMS_JSON};
use serde_json::Value;
use std::collections::BTreeSet;

/// A story told by a rule pack; what is proposed and shown in it.
pub type Tale = fn(RulePack) -> String;

/// A number of a rule, with another value for it: rule, name, value.
type Other = (&'static str, &'static str, f64);

/// A story with the numbers it turns on.
const TABLE: &[(Tale, &[Other])] = &[
    (
        tale::a_strength_that_is_tracked,
        &[
            ("strength.report", "s0", 2.0),
            ("strength.report", "s1", 0.6),
            ("strength.day", "sigma", 0.1),
            ("strength.drift", "fade_days", 20.0),
            ("strength.drift", "early_per_day", 0.02),
            ("strength.drift", "late_per_day", 0.002),
            ("strength.drift", "slope_per_day", 2.0),
            ("strength.slope", "sd", 4.0),
            ("strength.slope", "min", 39.0),
            ("strength.slope", "max", 37.0),
            ("strength.fatigue", "reps_per_set", 1.0),
            ("strength.start", "sd", 0.1),
            ("strength.start", "margin", 4.0),
            ("strength.body", "assumed_kg", 90.0),
        ],
    ),
    (
        tale::a_load_by_the_quarter,
        &[("load.target", "alpha", 0.02), ("load.target", "floor_below_target", 0.0)],
    ),
    (tale::hardly_light_enough, &[("load.target", "slack", 1.0)]),
    (tale::room_for_more_than_a_tenth, &[("load.step", "share", 0.05)]),
    (tale::the_best_was_days_ago, &[("load.step", "days", 3.0)]),
    (
        tale::one_good_day_before_a_big_step,
        &[("load.big-step", "alone_over_target", 1.0), ("load.big-step", "exposures", 1.0)],
    ),
    (tale::two_good_days_before_a_big_step, &[("load.big-step", "exposures", 3.0)]),
    (tale::two_weeks_away, &[("load.lay-off", "days_1", 15.0), ("load.lay-off", "share_1", 0.7)]),
    (tale::four_weeks_away, &[("load.lay-off", "days_2", 29.0), ("load.lay-off", "share_2", 0.6)]),
    (tale::away_with_nothing_to_take_off, &[("load.lay-off", "more_reserve", 3.0)]),
    (tale::the_group_is_known, &[("load.first", "share_of_group", 0.5)]),
    (
        tale::a_step_that_cannot_be_foreseen,
        &[
            ("load.unforeseen", "exposures", 3.0),
            ("load.unforeseen", "over_target", 3.0),
            ("load.unforeseen", "most_of_body", 0.05),
        ],
    ),
    (tale::finding_a_load, &[("load.first", "finding_sets", 1.0)]),
    (tale::finding_a_load_with_a_number, &[("load.first", "room_over_target", 2.0)]),
    (tale::finding_a_load_for_the_hips, &[("load.finding", "times_lower", 1.25)]),
    (tale::finding_a_load_for_the_hips_far_apart, &[("load.finding", "next_times_lower", 1.5)]),
    (tale::finding_a_load_for_the_arms, &[("load.finding", "times_upper", 1.5)]),
    (tale::finding_a_load_for_the_arms_far_apart, &[("load.finding", "next_times_upper", 1.25)]),
    (tale::a_wide_estimate, &[("load.target", "binds_all", 1.0)]),
    (tale::twelve_weeks_after_a_birth, &[("load.first", "finding_from_week", 13.0)]),
    (tale::a_set_that_went_short, &[("load.lighter-now", "chance", 0.9)]),
    (tale::an_easy_first_set, &[("load.reps-now", "grow", 0.0)]),
    (tale::a_gap_in_the_kit, &[("load.kit-gap", "over_target", 4.0), ("load.kit-gap", "more_reps", 1.0)]),
    (tale::ready_for_the_next_level, &[("level.up", "over_target", 2.0), ("level.up", "exposures", 3.0)]),
    (tale::ready_and_the_next_level_is_too_heavy, &[("level.up", "more_reps", 0.0)]),
    (tale::up_again_after_a_symptom, &[("level.back-up", "exposures", 3.0), ("level.back-up", "share", 0.5)]),
    (tale::reps_that_grow, &[("progress.reps", "step_reps", 2.0)]),
    (tale::seconds_that_grow, &[("progress.reps", "step_seconds", 10.0)]),
    (tale::the_same_drop_twice, &[("symptom.repeat", "sessions", 3.0)]),
    (tale::restart_lighter, &[("symptom.lowest", "share", 0.4)]),
    (tale::two_pelvic_floor_marks, &[("symptom.pelvic-floor-twice", "marks", 3.0)]),
    (tale::a_pain_without_a_number, &[("symptom.left-out", "pain", 6.0)]),
    (tale::flat_on_the_back_at_22_weeks, &[("position.supine", "from_week", 24.0)]),
    (tale::a_wide_estimate_thirteen_weeks_after_a_birth, &[("effort.careful", "weeks_after", 14.0)]),
    (tale::in_week_15_of_a_pregnancy, &[("effort.careful", "pregnant_floor", 2.0)]),
    (
        tale::pregnant_and_not_dated,
        &[("stage.undated", "effort_week", 27.0), ("stage.undated", "position_week", 19.0)],
    ),
    (
        around::learning_the_moves,
        &[("learn.first", "sessions", 1.0), ("learn.first", "reserve", 6.0), ("learn.first", "sets", 1.0)],
    ),
    (
        around::a_light_week,
        &[("programme.light-week", "share", 0.9), ("programme.light-week", "more_reserve", 2.0)],
    ),
    (
        around::after_an_illness,
        &[
            ("today.after-illness", "sessions", 1.0),
            ("today.after-illness", "more_reserve", 1.0),
            ("today.after-illness", "sets", 1.0),
        ],
    ),
    (
        around::before_landing,
        &[
            ("impact.wait", "from_week", 14.0),
            ("impact.checks", "asked", 0.0),
            ("impact.pregnant", "from_week", 20.0),
        ],
    ),
    (tale::tired, &[("today.tired", "more_reserve", 3.0)]),
    (tale::unwell, &[("today.unwell", "more_reserve", 4.0), ("today.unwell", "sets", 2.0)]),
    (
        tale::only_ten_minutes,
        &[
            ("session.short", "minutes", 5.0),
            ("session.set-up", "seconds_per_set", 90.0),
            ("session.set-up", "seconds_per_rep", 12.0),
        ],
    ),
    (
        tale::watched_while_pregnant,
        &[
            ("watch.weeks", "weeks", 3.0),
            ("watch.minutes", "cap", 60.0),
            ("watch.hard-set", "over_target", 0.0),
            ("watch.guideline-pregnant", "minutes", 100.0),
            ("watch.guideline-pregnant", "days", 2.0),
            ("watch.rate", "days", 20.0),
            ("watch.rate", "sessions", 15.0),
            ("watch.rate", "rest_sessions", 15.0),
            ("watch.rate", "marked", 9.0),
            ("watch.rate", "confidence", 0.8),
        ],
    ),
    (
        tale::watched_after_a_birth,
        &[("watch.guideline-postpartum", "minutes", 100.0), ("watch.guideline-postpartum", "days", 2.0)],
    ),
    (
        around::a_set_far_from_failure,
        &[("strength.evidence", "most_reps", 25.0), ("strength.evidence", "most_reserve", 3.0)],
    ),
    (
        around::a_log_without_its_proposals,
        &[
            ("log.unknown-dose", "low", 9.0),
            ("log.unknown-dose", "high", 13.0),
            ("log.unknown-dose", "target", 2.0),
            ("log.unknown-dose", "floor", 2.0),
        ],
    ),
    (
        around::dates_that_differ,
        &[
            ("stage.dates-differ", "to_8_weeks", 6.0),
            ("stage.dates-differ", "to_15_weeks", 8.0),
            ("stage.dates-differ", "to_21_weeks", 11.0),
            ("stage.dates-differ", "to_27_weeks", 15.0),
            ("stage.dates-differ", "from_28_weeks", 22.0),
        ],
    ),
    (around::a_birth_of_which_little_is_said, &[("clearance.birth-unsaid", "before_week", 10.0)]),
    (around::no_breath_held, &[("breath.free", "least_reserve", 5.0)]),
    (
        around::screened_once,
        &[
            ("screen.again", "trimester_2", 15.0),
            ("screen.again", "trimester_3", 29.0),
            ("screen.again", "after_birth_1", 7.0),
            ("screen.again", "after_birth_2", 13.0),
            ("screen.again", "stale_weeks", 40.0),
        ],
    ),
    (around::a_birth_put_right, &[("stage.same-birth", "days", 14.0)]),
    (
        around::beside_a_usual_symptom,
        &[
            ("symptom.amounts", "little", 5.0),
            ("symptom.amounts", "clearly", 8.0),
            ("symptom.amounts", "lot", 5.0),
        ],
    ),
    (
        around::on_the_desk,
        &[
            ("watch.desk", "silent_days", 5.0),
            ("watch.desk", "silent_after_symptom_days", 2.0),
            ("watch.desk", "recent_days", 5.0),
            ("watch.desk", "week_days", 2.0),
            ("watch.desk", "unanswered_days", 4.0),
            ("watch.desk", "near_due_days", 40.0),
            ("watch.desk", "over_share", 0.2),
            ("watch.desk", "jump_share", 4.0),
            ("watch.desk", "skipped", 2.0),
        ],
    ),
    (around::left_open, &[("session.open", "hours", 5.0), ("session.next-day", "days", 3.0)]),
    (
        around::looked_through,
        &[
            ("advice.push-pull", "from_sets", 20.0),
            ("advice.push-pull", "most_share", 0.8),
            ("advice.knee-hip", "from_sets", 20.0),
            ("advice.knee-hip", "most_share", 0.8),
            ("advice.week-sets", "least", 3.0),
            ("advice.week-sets", "most", 10.0),
            ("advice.minutes", "over_share", 0.3),
            ("advice.minutes", "logged", 5.0),
            ("advice.minutes", "logged_share", 0.6),
        ],
    ),
    (tale::first_time_after_a_birth, &[("fresh.start", "reserve", 7.0)]),
];

/// Rules that stand beside a figure and behind no reason of a proposal.
const BESIDE_A_FIGURE: &[&str] = &["watch.load"];

/// The built-in pack with something in its two files changed.
pub fn changed(change: impl FnOnce(&mut Value, &mut Value)) -> RulePack {
    let mut rules: Value = serde_json::from_str(RULES_JSON).unwrap();
    let mut symptoms: Value = serde_json::from_str(SYMPTOMS_JSON).unwrap();
    change(&mut rules, &mut symptoms);
    RulePack::parse(&rules.to_string(), &symptoms.to_string()).unwrap()
}

/// The entry with this id in a list of a file.
pub fn entry<'v>(file: &'v mut Value, list: &str, id: &str) -> &'v mut Value {
    let all = file[list].as_array_mut().unwrap();
    all.iter_mut().find(|e| e["id"] == id).unwrap_or_else(|| panic!("{list} has {id}"))
}

fn with_number(rule: &str, name: &str, value: f64) -> RulePack {
    let pack = changed(|rules, _| entry(rules, "rules", rule)["numbers"][name] = Value::from(value));
    assert_eq!(pack.number(rule, name), value);
    pack
}

#[test]
fn each_number_of_the_table_changes_its_story() {
    for (tale, numbers) in TABLE {
        let plain = tale(RulePack::built_in().unwrap());
        assert_eq!(plain, tale(RulePack::built_in().unwrap()), "a story is told the same way each time");
        for (rule, name, value) in *numbers {
            let other = tale(with_number(rule, name, *value));
            assert!(plain != other, "{rule}: {name} at {value} changes nothing:\n{plain}");
        }
    }
}

#[test]
fn every_number_of_the_pack_stands_in_the_table() {
    let listed = |table: &[(Tale, &[Other])]| -> BTreeSet<(String, String)> {
        let all = table.iter().flat_map(|(_, numbers)| *numbers);
        all.map(|(rule, name, _)| ((*rule).to_owned(), (*name).to_owned())).collect()
    };
    let told = listed(TABLE);
    let pack = RulePack::built_in().unwrap();
    let mut numbers = 0;
    for rule in pack.rules() {
        for name in rule.numbers.keys() {
            let key = (rule.id.to_string(), name.clone());
            assert!(told.contains(&key), "{key:?} has no story");
            numbers += 1;
        }
    }
    assert_eq!(numbers, NUMBERS_USED.len());
    assert_eq!(numbers, told.len(), "no story of a number that is not there");
}

#[test]
fn every_rule_without_numbers_stands_behind_a_reason_of_a_story() {
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for story in tale::with_reasons() {
        seen.extend(story);
    }
    let pack = RulePack::built_in().unwrap();
    for rule in pack.rules().filter(|r| r.numbers.is_empty()) {
        let beside = BESIDE_A_FIGURE.contains(&rule.id.as_str());
        assert!(seen.contains(rule.id.as_str()) != beside, "{} stands behind no reason", rule.id);
    }
}

#[test]
fn every_rule_is_named_in_the_code() {
    fn read(folder: &std::path::Path, text: &mut String) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            // The list that names every number is no use of one.
            if path.is_dir() {
                read(&path, text);
            } else if !path.ends_with("rules/read.rs") {
                let file = std::fs::read_to_string(&path).unwrap();
                // What stands in unit tests is no use either.
                text.push_str(file.split("#[cfg(test)]").next().unwrap());
            }
        }
    }
    let mut code = String::new();
    read(&std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut code);
    let pack = RulePack::built_in().unwrap();
    for rule in pack.rules() {
        assert!(code.contains(&format!("\"{}\"", rule.id)), "{} is named nowhere", rule.id);
    }
    for (rule, name) in NUMBERS_USED {
        assert!(code.contains(&format!("\"{name}\"")), "{rule}: {name} is asked for nowhere");
    }
}

#[test]
fn every_source_bears_a_mark_or_says_that_there_is_none() {
    let pack = RulePack::built_in().unwrap();
    let sources = (pack.rules().map(|r| (r.id.to_string(), &r.source)))
        .chain(pack.effort().iter().map(|e| (e.id.to_string(), &e.source)))
        .chain(pack.symptoms().iter().map(|k| (k.id.to_string(), &k.source)))
        .chain(pack.conditions().iter().map(|c| (c.id.to_string(), &c.source)));
    let mut count = 0;
    for (id, source) in sources {
        // The marks of the list of sources, or words that say that there is none or whose setting it is.
        let marked = ["[o]", "[s]", "[m]", "[d]"].iter().any(|m| source.contains(m));
        let said = source.contains("common practice, no source")
            || source.contains("chosen, no source")
            || source.contains("in simulation, no source")
            || source.contains("own setting");
        assert!(marked || said, "{id}: {source}");
        count += 1;
    }
    assert!(count > 100, "{count}");
    for (list, id) in [("rules", "load.step"), ("effort", "effort.plain"), ("conditions", "anaemia")] {
        let mut rules: Value = serde_json::from_str(RULES_JSON).unwrap();
        entry(&mut rules, list, id)["source"] = Value::from("somebody said so");
        assert!(
            RulePack::parse(&rules.to_string(), SYMPTOMS_JSON).is_err(),
            "{id} without a mark is refused"
        );
    }
    let mut symptoms: Value = serde_json::from_str(SYMPTOMS_JSON).unwrap();
    entry(&mut symptoms, "kinds", "bulge")["source"] = Value::from("");
    assert!(RulePack::parse(RULES_JSON, &symptoms.to_string()).is_err());
}

#[test]
fn a_number_that_nobody_asks_for_is_refused() {
    let mut rules: Value = serde_json::from_str(RULES_JSON).unwrap();
    entry(&mut rules, "rules", "symptom.drop")["numbers"]["levels"] = Value::from(1.0);
    assert!(RulePack::parse(&rules.to_string(), SYMPTOMS_JSON).is_err());
}
