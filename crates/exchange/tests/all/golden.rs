//! The files of each released format version, which must be read for ever.

use crate::support::{log, plan};
use newel_engine::record::{Payload, Record};
use newel_exchange::{read_log, read_plan, write_log, write_plan};
use std::collections::BTreeSet;
use std::mem::discriminant;

const LOG_V1: &[u8] = include_bytes!("../golden/log-v1.json");
const PLAN_V1: &[u8] = include_bytes!("../golden/plan-v1.json");

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
    assert_eq!(kinds.len(), 31, "every kind of the first version is in it");
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
