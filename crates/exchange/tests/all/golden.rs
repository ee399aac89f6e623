//! The files of each released format version, which must be read for ever.

use crate::support::{log, plan, plan_with_beginning, plan_with_own, plan_with_weeks, plan_with_words};
use newel_engine::record::{Payload, Record};
use newel_exchange::{read_log, read_plan, without_pictures, write_log, write_plan};
use std::collections::BTreeSet;
use std::mem::discriminant;

const LOG_V1: &[u8] = include_bytes!("../golden/log-v1.json");
const PLAN_V1: &[u8] = include_bytes!("../golden/plan-v1.json");
const PLAN_V2: &[u8] = include_bytes!("../golden/plan-v2.json");
const PLAN_V3: &[u8] = include_bytes!("../golden/plan-v3.json");
const PLAN_V4: &[u8] = include_bytes!("../golden/plan-v4.json");
const PLAN_V4_OWN: &[u8] = include_bytes!("../golden/plan-v4-own.json");

#[test]
fn version_1_is_read() {
    let read = read_log(LOG_V1).unwrap();
    assert_eq!(read, log(), "every value is what was written");
    let records: Vec<Record> = read.lines.iter().map(|l| Record::parse(l).unwrap()).collect();
    let unknown = records.iter().filter(|r| r.payload == Payload::Unknown).count();
    assert_eq!(unknown, 1, "only the kind from a newer version is unknown");
    let mut kinds = Vec::new();
    for record in &records {
        if !kinds.contains(&discriminant(&record.payload)) {
            kinds.push(discriminant(&record.payload));
        }
    }
    assert_eq!(kinds.len(), 32, "every kind of the first version is in it");
    assert_eq!(read_plan(PLAN_V1).unwrap(), plan(), "every value is what was written");
}

#[test]
fn version_1_is_still_written_as_it_was() {
    assert!(write_log(&log()).unwrap() == LOG_V1, "the bytes of a log file are part of its format");
    assert!(write_plan(&plan()).unwrap() == PLAN_V1, "the bytes of a plan file are part of its format");
}

#[test]
fn a_record_stands_on_a_line_of_its_own_as_it_stands_in_the_log() {
    let text = std::str::from_utf8(LOG_V1).unwrap();
    let lines: BTreeSet<&str> = text.lines().map(|l| l.trim_end_matches(',')).collect();
    let records = log().lines;
    for line in &records {
        let last = format!("{line}]}}}}");
        assert!(lines.contains(line.as_str()) || text.ends_with(&last), "{line}");
    }
    assert_eq!(text.lines().count(), records.len() + 1, "the envelope, and one line for each record");
}

#[test]
fn version_2_brings_words_and_pictures_and_is_written_as_it_was() {
    assert_eq!(read_plan(PLAN_V2).unwrap(), plan_with_words(), "every value is what was written");
    assert!(write_plan(&plan_with_words()).unwrap() == PLAN_V2, "the bytes are part of the format");
}

#[test]
fn version_3_says_when_it_begins_and_only_then_is_it_version_3() {
    assert_eq!(read_plan(PLAN_V3).unwrap(), plan_with_beginning(), "every value is what was written");
    assert!(write_plan(&plan_with_beginning()).unwrap() == PLAN_V3, "the bytes are part of the format");
    let text = std::str::from_utf8(PLAN_V3).unwrap();
    assert!(text.contains("\"version\":3") && text.contains("\"begins\":\"2026-03-16\""));
    for older in [PLAN_V1, PLAN_V2] {
        assert!(!std::str::from_utf8(older).unwrap().contains("begins"));
        assert_eq!(read_plan(older).unwrap().begins, None, "an older plan begins at once");
    }
}

#[test]
fn version_4_has_phases_and_weeks_and_only_then_is_it_version_4() {
    assert_eq!(read_plan(PLAN_V4).unwrap(), plan_with_weeks(), "every value is what was written");
    assert!(write_plan(&plan_with_weeks()).unwrap() == PLAN_V4, "the bytes are part of the format");
    let text = std::str::from_utf8(PLAN_V4).unwrap();
    assert!(text.contains("\"version\":4"));
    for name in ["phases", "light_weeks", "by_week", "\"phase\"", "warm_up"] {
        assert!(text.contains(name), "{name}");
        for older in [PLAN_V1, PLAN_V2, PLAN_V3] {
            assert!(!std::str::from_utf8(older).unwrap().contains(name), "{name}");
        }
    }
}

#[test]
fn version_4_brings_what_is_the_coachs_own_and_only_then_is_it_version_4() {
    assert_eq!(read_plan(PLAN_V4_OWN).unwrap(), plan_with_own(), "every value is what was written");
    assert!(write_plan(&plan_with_own()).unwrap() == PLAN_V4_OWN, "the bytes are part of the format");
    assert!(std::str::from_utf8(PLAN_V4_OWN).unwrap().contains("\"version\":4"));
    for older in [PLAN_V1, PLAN_V2, PLAN_V3] {
        assert!(!std::str::from_utf8(older).unwrap().contains("\"own\""));
        assert_eq!(read_plan(older).unwrap().own, None, "an older plan has the built-in ones alone");
    }
}

#[test]
fn what_is_out_of_bounds_in_the_coachs_own_is_neither_written_nor_read() {
    let wrong: [fn(&mut newel_engine::catalogue::OwnCatalogue); 4] = [
        |own| own.variants[0].name = "x".repeat(1000),
        |own| own.ladders[0].id = "squat".into(),
        |own| own.ladders[0].pattern = newel_engine::catalogue::Pattern::Breathing,
        |own| own.variants = vec![own.variants[0].clone(); newel_exchange::MAX_OWN_VARIANTS + 1],
    ];
    for change in wrong {
        let mut plan = plan_with_own();
        change(plan.own.as_mut().unwrap());
        assert_eq!(write_plan(&plan).unwrap_err().code(), "unwritable");
        // As somebody else might write it: a content with a hash of its own.
        let content = serde_json::to_string(&plan).unwrap();
        let hash = newel_hash(&content);
        let text = format!(
            r#"{{"format":"newel.plan","version":4,"seal":null,"sha256":"{hash}","content":{content},"pictures":["{}"]}}"#,
            plan.pictures[0].base64()
        );
        assert_eq!(read_plan(text.as_bytes()).unwrap_err().code(), "malformed");
    }
}

fn newel_hash(text: &str) -> String {
    use sha2::Digest;
    sha2::Sha256::digest(text.as_bytes()).iter().map(|b| format!("{b:02x}")).collect()
}

#[test]
fn a_plan_is_kept_without_its_pictures_and_reads_the_same() {
    let text = std::str::from_utf8(PLAN_V2).unwrap();
    let kept = without_pictures(text).unwrap();
    assert!(!kept.contains("\"pictures\"") && kept.len() < text.len());
    let expected = newel_exchange::PlanDocument { pictures: Vec::new(), ..plan_with_words() };
    assert_eq!(read_plan(kept.as_bytes()).unwrap(), expected);
    let v1 = std::str::from_utf8(PLAN_V1).unwrap();
    assert_eq!(without_pictures(v1).unwrap(), v1, "a plan without pictures stays as it is");
}

#[test]
fn a_picture_that_was_altered_is_told() {
    let text = std::str::from_utf8(PLAN_V2).unwrap();
    let at = text.find("\"pictures\":[").unwrap();
    let (before, after) = text.split_at(at);
    // The base64 of the beginning stays, so it still is a picture.
    let altered = format!("{before}{}", after.replacen("BubyBtb", "BubyBub", 1));
    assert_ne!(altered, text, "something is altered");
    assert_eq!(read_plan(altered.as_bytes()).unwrap_err().code(), "altered");
    let svg = format!("{before}{}", after.replacen("/9j/", "PHN2", 1));
    assert_eq!(read_plan(svg.as_bytes()).unwrap_err().code(), "malformed", "not a picture at all");
}
