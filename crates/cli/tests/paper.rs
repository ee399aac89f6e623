//! `newel plans` and every kind of `newel print` from outside, over the demonstration: what is written, where, and how a
//! call ends that cannot be answered.

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::OnceLock;

/// The day that the demonstration is made for.
const ON: &str = "2026-11-24";

fn newel(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_newel")).args(arguments).output().expect("newel runs")
}

fn status(output: &Output) -> i32 {
    output.status.code().expect("newel ends by itself")
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("output is UTF-8")
}

fn err(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).expect("messages are UTF-8")
}

fn text(path: &Path) -> &str {
    path.to_str().expect("a plain path")
}

/// The demonstration, made once; none of the tests changes it.
fn demo() -> &'static Path {
    static MADE: OnceLock<tempfile::TempDir> = OnceLock::new();
    MADE.get_or_init(|| {
        let folder = tempfile::tempdir().expect("a folder");
        let made = newel(&["demo", text(folder.path()), "--on", ON]);
        assert_eq!(status(&made), 0, "{}", err(&made));
        folder
    })
    .path()
}

/// A folder with a coach's database of its own in it.
fn practice() -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().expect("a folder");
    let db = folder.path().join("coach.db");
    fs::copy(demo().join("coach.db"), &db).expect("copied");
    (folder, db)
}

fn names_in(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).expect("a folder");
    let mut names: Vec<String> =
        entries.map(|e| e.expect("an entry").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

#[test]
fn a_preview_says_what_would_change_and_writes_nothing() {
    let (folder, db) = practice();
    let before = fs::read(&db).expect("a database");
    let plans = folder.path().join("plans");
    let said = newel(&["plans", "--db", text(&db), "--out", text(&plans), "--preview"]);
    assert_eq!(status(&said), 0, "{}", err(&said));
    for name in ["Noemi Castellan", "Selin Duarte", "Josie Tran"] {
        assert!(out(&said).lines().any(|l| l.starts_with(&format!("{name}: "))), "{}", out(&said));
    }
    assert!(!plans.exists(), "nothing is written");
    assert!(fs::read(&db).expect("a database") == before, "the database is as it was");
    let json = newel(&["plans", "--db", text(&db), "--out", text(&plans), "--preview", "--json"]);
    let told: Value = serde_json::from_str(&out(&json)).expect("JSON");
    assert_eq!(told["revisions"].as_array().expect("a list").len(), 7, "everybody");
}

#[test]
fn a_plan_is_written_for_whom_it_was_asked_with_a_receipt_and_is_sound() {
    let (folder, db) = practice();
    let plans = folder.path().join("plans");
    let asked = ["plans", "--db", text(&db), "--out", text(&plans), "--client", "Noemi Castellan"];
    let done = newel(&asked);
    assert_eq!(status(&done), 0, "{}", err(&done));
    let names = names_in(&plans);
    let [plan, receipt] = &names[..] else { panic!("one plan and its receipt: {names:?}") };
    assert!(plan.starts_with("noemi-castellan-plan-") && receipt.starts_with("receipt-"), "{names:?}");
    assert_eq!(out(&done).trim_end(), fs::read_to_string(plans.join(receipt)).expect("a receipt").trim_end());
    assert!(out(&done).contains(plan.as_str()), "the receipt names the file: {}", out(&done));
    let checked = newel(&["check", text(&plans.join(plan)), text(&db)]);
    assert_eq!(status(&checked), 0, "{}", err(&checked));

    // Then nothing is new for her; who is named gets one all the same, with the next number.
    let again = newel(&[&asked[..], &["--json"]].concat());
    assert_eq!(status(&again), 0, "{}", err(&again));
    let told: Value = serde_json::from_str(&out(&again)).expect("JSON");
    let number = |file: &str| -> u32 {
        let tail = file.rsplit("plan-").next().expect("a number");
        tail.trim_end_matches(".newel.json").parse().expect("a number")
    };
    let next = told["written"][0]["file"].as_str().expect("a file");
    assert_eq!(number(next), number(plan) + 1);
    let rest = newel(&["plans", "--db", text(&db), "--out", text(&plans), "--json"]);
    let told: Value = serde_json::from_str(&out(&rest)).expect("JSON");
    let left = told["left_out"].as_array().expect("a list");
    assert!(left.iter().any(|l| l["name"] == "Noemi Castellan" && l["why"] == "up-to-date"), "{left:?}");
}

#[test]
fn the_receipt_is_worded_in_the_language_that_was_asked() {
    let (folder, db) = practice();
    let write = |language: &str| {
        let plans = folder.path().join(language);
        let asked = [
            "plans",
            "--db",
            text(&db),
            "--out",
            text(&plans),
            "--client",
            "Josie Tran",
            "--language",
            language,
        ];
        let done = newel(&asked);
        assert_eq!(status(&done), 0, "{}", err(&done));
        out(&done)
    };
    let (english, spanish) = (write("en"), write("es"));
    let heads = |text: &str| text.lines().next().expect("a line").to_owned();
    assert_ne!(heads(&english), heads(&spanish));
}

#[test]
fn nobody_by_that_name_is_said_and_nothing_is_written() {
    let (folder, db) = practice();
    let plans = folder.path().join("plans");
    for named in [["--client", "Nobody Atall"], ["--group", "Nobody's"]] {
        let done = newel(&[&["plans", "--db", text(&db), "--out", text(&plans)], &named[..]].concat());
        assert_eq!(status(&done), 1, "{}", out(&done));
        assert!(err(&done).contains("no-such-thing"), "{}", err(&done));
        assert!(!plans.exists());
    }
}

/// Prints into a folder of its own and gives the bytes and what was said.
fn printed(kind: &str, more: &[&str]) -> (Vec<u8>, String) {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("out");
    let done = newel(&[&["print", kind, "--on", ON, "--out", text(&file)], more].concat());
    assert_eq!(status(&done), 0, "{kind} {more:?}: {}", err(&done));
    (fs::read(&file).expect("written"), out(&done))
}

/// A call that is refused by name and writes nothing.
fn refused(kind: &str, more: &[&str], code: &str) {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("out");
    let done = newel(&[&["print", kind, "--on", ON, "--out", text(&file)], more].concat());
    assert_eq!(status(&done), 1, "{kind} {more:?}: {}", out(&done));
    assert!(err(&done).contains(code), "{kind} {more:?}: {}", err(&done));
    assert!(!file.exists(), "{kind} {more:?}: nothing is written");
}

fn is_pdf(bytes: &[u8]) -> bool {
    bytes.starts_with(b"%PDF-") && bytes.trim_ascii_end().ends_with(b"%%EOF")
}

#[test]
fn a_class_is_printed_for_whoever_comes() {
    let db = demo().join("coach.db");
    let of = ["--db", text(&db), "--programme", "Steady floor"];
    let (all, said) = printed("class", &of);
    assert!(is_pdf(&all) && said.contains("page"), "{said}");
    let some = [&of[..], &["--with", "Noemi Castellan", "--with", "Freya Mwangi"]].concat();
    let (two, _) = printed("class", &some);
    assert!(is_pdf(&two) && two != all, "fewer come");
    let (other, _) = printed("class", &[&some[..], &["--session", "Session B"]].concat());
    assert_ne!(other, two, "another session");
    let (spanish, _) = printed("class", &[&some[..], &["--language", "es", "--paper", "letter"]].concat());
    assert_ne!(spanish, two, "in Spanish, on another sheet");
    refused("class", &[&of[..], &["--with", "Nobody Atall"]].concat(), "no-such-thing");
    refused("class", &[&of[..], &["--room", "No such room"]].concat(), "no-such-thing");
    refused("class", &[&of[..], &["--session", "Session Z"]].concat(), "no-such-thing");
    refused("class", &["--db", text(&db)], "nothing-chosen");
    refused("class", &["--programme", "Steady floor"], "nothing-chosen");
}

#[test]
fn a_programme_is_printed_with_and_without_a_database() {
    let db = demo().join("coach.db");
    for kind in ["booklet", "handout"] {
        let (alone, said) = printed(kind, &["--programme", "Two short days"]);
        assert!(is_pdf(&alone) && said.contains("page"), "{said}");
        let (coachs, _) = printed(kind, &["--db", text(&db), "--programme", "Two short days"]);
        assert!(is_pdf(&coachs));
        refused(kind, &["--programme", "No such programme"], "no-such-thing");
        refused(kind, &[], "nothing-chosen");
    }
    let (first, _) = printed("handout", &["--programme", "Even ground"]);
    let (second, _) = printed("handout", &["--programme", "Even ground", "--session", "Second day"]);
    assert_ne!(first, second);
}

#[test]
fn what_is_of_one_client_is_the_same_from_the_database_and_refused_where_training_is_closed() {
    let db = demo().join("coach.db");
    let of = |name: &'static str| ["--db", text(&db), "--client", name];
    let (hers, _) = printed("handout", &of("Noemi Castellan"));
    assert!(is_pdf(&hers));
    refused("handout", &of("Selin Duarte"), "closed");
    let letter = ["--to", "Dr Example, Surgery", "--question", "May she go on?"];
    refused("letter", &[&of("Selin Duarte")[..], &letter].concat(), "consent");
    let (letter, said) =
        printed("letter", &[&of("Selin Duarte")[..], &letter, &["--agreed", "2026-11-23"]].concat());
    assert!(is_pdf(&letter) && said.contains("page"), "{said}");
    let (rows, said) = printed("rows", &of("Noemi Castellan"));
    assert!(rows.starts_with(b"\xef\xbb\xbfDay,Time,Session") && !said.contains("page"), "{said}");
    refused("rows", &["--db", text(&db)], "nothing-chosen");
}

#[test]
fn sessions_go_into_a_calendar_on_the_days_that_were_named() {
    let db = demo().join("coach.db");
    let of = ["--db", text(&db), "--programme", "Steady floor"];
    let when = ["--from", "2026-11-30", "--days", "1,4", "--at", "18:30", "--weeks", "2"];
    let (bytes, _) = printed("calendar", &[&of[..], &when].concat());
    let calendar = String::from_utf8(bytes).expect("UTF-8");
    assert!(calendar.starts_with("BEGIN:VCALENDAR\r\n") && calendar.ends_with("END:VCALENDAR\r\n"));
    let starts: Vec<&str> = calendar.lines().filter(|l| l.starts_with("DTSTART")).collect();
    let days = ["20261130T183000", "20261203T183000", "20261207T183000", "20261210T183000"];
    assert_eq!(starts.len(), days.len(), "{starts:?}");
    for (start, day) in starts.iter().zip(days) {
        assert!(start.ends_with(day), "{start} and not {day}");
    }
    refused("calendar", &[&of[..], &["--from", "2026-11-30", "--days", "1"]].concat(), "nothing-chosen");
}
