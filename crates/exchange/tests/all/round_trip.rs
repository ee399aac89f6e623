//! What is written is read again, and record lines come through byte for byte.

use crate::support::*;
use newel_engine::record::Payload;
use newel_exchange::{
    Document, Kind, PlanDocument, WriteError, read, read_log, read_plan, write_log, write_plan,
};
use proptest::prelude::*;

#[test]
fn both_kinds_come_back() {
    let document = read(&write_log(&log()).unwrap()).unwrap();
    assert_eq!((document.kind(), document.person(), document.lines()), (Kind::Log, PERSON, &log().lines[..]));
    let document = read(&write_plan(&plan()).unwrap()).unwrap();
    assert_eq!((document.kind(), document.person()), (Kind::Plan, PERSON));
    assert_eq!(document, Document::Plan(Box::new(plan())));
}

#[test]
fn a_file_of_the_other_kind_is_named() {
    assert_eq!(read_log(&write_plan(&plan()).unwrap()).unwrap_err().code(), "wrong-kind");
    let error = read_plan(&write_log(&log()).unwrap()).unwrap_err();
    assert_eq!(error.to_string(), "a newel.log file, where a newel.plan file is expected");
}

#[test]
fn a_plan_without_a_programme_brings_answers_alone() {
    let mut answers = plan();
    (answers.programme, answers.starts) = (None, vec![]);
    assert_eq!(read_plan(&write_plan(&answers).unwrap()).unwrap(), answers);
}

#[test]
fn weeks_and_minutes_are_of_version_2_and_a_plan_without_them_stays_of_version_1() {
    let version = |plan: &PlanDocument| {
        let text = String::from_utf8(write_plan(plan).unwrap()).unwrap();
        (1..=2).find(|v| text.contains(&format!("\"version\":{v}"))).unwrap()
    };
    assert_eq!(version(&plan()), 1);
    let mut meant = plan();
    meant.programme.as_mut().unwrap().sessions[0].minutes = Some(30);
    assert_eq!(
        version(&meant),
        2,
        "an older program is told to be too old, and does not stumble over a field"
    );
    assert_eq!(read_plan(&write_plan(&meant).unwrap()).unwrap(), meant);
    let mut ends = plan();
    ends.programme.as_mut().unwrap().weeks = Some(4);
    assert_eq!(version(&ends), 2);
}

#[test]
fn what_a_reader_would_refuse_is_not_written() {
    let with = |line: String| {
        let mut file = log();
        file.lines.insert(1, line);
        match write_log(&file).unwrap_err() {
            WriteError::RecordRefused { nth, .. } => nth,
            other => panic!("{other:?}"),
        }
    };
    let line = &log().lines[0];
    assert_eq!(with("{}".into()), 1, "no record");
    assert_eq!(with(line.replace(&PERSON.to_string(), &LAPTOP.to_string())), 1, "about somebody else");
    assert_eq!(with(line.replacen(',', ",\n", 1)), 1, "on two lines");
    let mut spaced = log();
    spaced.lines[0] = format!(" {line}");
    assert_eq!(write_log(&spaced).unwrap_err().code(), "unwritable", "its bytes would not come back");
}

#[test]
fn a_record_that_nests_too_deeply_is_not_written() {
    let mut payload = Payload::Note { text: "x".into() };
    for _ in 0..30 {
        let target = newel_engine::ids::RecordId(uuid::Uuid::from_u128(1));
        payload = Payload::Correction { target, instead: Box::new(payload) };
    }
    let mut deep = log();
    deep.lines = stream(PHONE, vec![payload]);
    assert_eq!(write_log(&deep).unwrap_err().code(), "unwritable");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever she writes into a note, its line comes through byte for byte.
    #[test]
    fn lines_are_verbatim(words in prop::collection::vec(any::<String>(), 0..8), name in any::<String>()) {
        let notes = words.into_iter().map(|text| Payload::Note { text }).collect();
        let mut file = log();
        (file.lines, file.name) = (stream(PHONE, notes), name);
        let bytes = write_log(&file).unwrap();
        prop_assert_eq!(read_log(&bytes).unwrap(), file);
    }
}
