//! Each trouble has its own name.

use crate::support::*;
use newel_exchange::{FileError, MAX_BYTES, MAX_DEPTH, ReadError, WriteError, read, write_log};
use sha2::{Digest, Sha256};
use std::fs;
use std::path::Path;

fn code(text: &str) -> &'static str {
    read(text.as_bytes()).unwrap_err().code()
}

/// An envelope around a content, with its true hash.
fn sealed(content: &str) -> String {
    let hash: String = Sha256::digest(content.as_bytes()).iter().map(|b| format!("{b:02x}")).collect();
    format!(r#"{{"format":"newel.log","version":1,"seal":null,"sha256":"{hash}","content":{content}}}"#)
}

fn text() -> String {
    String::from_utf8(write_log(&log()).unwrap()).unwrap()
}

#[test]
fn what_is_no_file_of_ours() {
    for empty in ["", " ", "\n\n\t"] {
        assert_eq!(code(empty), "empty");
    }
    for foreign in [
        "hello",
        "{\"a\":1}",
        "[]",
        "null",
        "{\"format\":\"png\"}",
        "{\"format\":7}",
        "<html>",
        "[1,2",
        "{\"name\":\"x",
    ] {
        assert_eq!(code(foreign), "not-newel", "{foreign}");
    }
    assert_eq!(read(b"\x89PNG\r\n\x1a\n\0\0").unwrap_err(), ReadError::NotNewel);
    assert_eq!(read(b"SQLite format 3\0\xff").unwrap_err(), ReadError::NotNewel);
}

#[test]
fn what_a_newer_version_wrote() {
    assert_eq!(code(&text().replacen("\"version\":1", "\"version\":2", 1)), "too-new");
    assert_eq!(code(r#"{"format":"newel.log","version":3,"cipher":"x","body":"AAAA"}"#), "too-new");
    assert_eq!(
        code(r#"{"format":"newel.class","version":1}"#),
        "too-new",
        "a kind that this version does not know"
    );
    assert_eq!(code(r#"{"seal":{"to":"x"},"version":2,"format":"newel.log"}"#), "too-new");
    let sealed = text().replacen("\"seal\":null", "\"seal\":{\"by\":\"x\"}", 1);
    assert_eq!(code(&sealed), "sealed");
}

#[test]
fn what_is_not_well_formed() {
    assert_eq!(code(r#"{"format":"newel.log"}"#), "malformed");
    assert_eq!(code(r#"{"format":"newel.log","version":0}"#), "malformed");
    assert_eq!(code(r#"{"format":"newel.log","version":"1"}"#), "malformed");
    assert_eq!(code(&text().replacen("\"seal\":null", "\"seal\":null,\"more\":1", 1)), "malformed");
    assert_eq!(
        code(&text().replacen("\"seal\":null,", "", 1)),
        "malformed",
        "the place of the seal is there"
    );
    assert_eq!(code(&sealed("{}")), "malformed");
    assert_eq!(code(&sealed("7")), "malformed");
    let content = text().split_once("\"content\":").unwrap().1.to_owned();
    let content = &content[..content.len() - 1];
    assert!(read(sealed(content).as_bytes()).is_ok(), "the helper seals as the writer does");
    assert_eq!(code(&sealed(&content.replacen("\"name\"", "\"nom\"", 1))), "malformed");
    let error = read(sealed(&content.replacen("Noor", "\\ud800", 1)).as_bytes()).unwrap_err();
    assert_eq!(error.code(), "malformed", "half a surrogate pair is no text");
    assert!(!error.to_string().contains("Ångström"), "no value of the file stands in an error: {error}");
}

#[test]
fn what_does_not_belong_in_the_file() {
    let content = text().split_once("\"content\":").unwrap().1.to_owned();
    let content = &content[..content.len() - 1];
    assert_eq!(code(&sealed(&content.replacen("\"kind\":\"consent\"", "\"kind\":7", 1))), "record-refused");
    assert_eq!(code(&sealed(&content.replacen("\"v\":1,", "\"v\":1,\n", 1))), "record-refused");
    let person = PERSON.to_string();
    let second = content.match_indices(&person).nth(2).unwrap().0;
    let moved = format!("{}{LAPTOP}{}", &content[..second], &content[second + person.len()..]);
    let error = read(sealed(&moved).as_bytes()).unwrap_err();
    assert!(matches!(error, ReadError::RecordRefused { nth: 1, .. }), "{error:?}");
}

#[test]
fn what_is_too_large_or_too_deep() {
    let large = format!("{}{}", text(), " ".repeat(MAX_BYTES));
    assert_eq!(code(&large), "too-large");
    for open in ["[", "{\"a\":"] {
        assert_eq!(code(&open.repeat(MAX_DEPTH + 1)), "too-deep");
        assert_eq!(code(&open.repeat(1_000_000)), "too-deep", "no stack is exhausted");
    }
    let many = sealed(&format!(r#"{{"lines":[{}0]}}"#, "0,".repeat(newel_exchange::MAX_LINES)));
    assert_eq!(code(&many), "too-large", "more records than a file may have");
}

#[test]
fn every_code_has_its_sentence() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../locales/en/files.ftl");
    let sentences = fs::read_to_string(path).unwrap();
    let codes = ReadError::CODES.iter().chain(&WriteError::CODES).chain(&FileError::CODES);
    for code in codes {
        let start = format!("file-error-{code} = ");
        assert!(sentences.lines().any(|l| l.starts_with(&start)), "files.ftl has no {start}");
    }
}
