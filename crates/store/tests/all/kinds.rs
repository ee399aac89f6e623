//! Every error and refusal has its sentence.

use newel_store::{Finding, Refusal, StoreError};
use std::fs;
use std::path::Path;

#[test]
fn every_code_has_its_sentence() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../locales/en/files.ftl");
    let text = fs::read_to_string(path).unwrap();
    let has = |id: String| {
        assert!(
            text.lines().any(|l| l.strip_prefix(id.as_str()).is_some_and(|r| r.starts_with(" = "))),
            "files.ftl has no {id}"
        );
    };
    StoreError::CODES.iter().for_each(|code| has(format!("store-error-{code}")));
    Refusal::ALL.iter().for_each(|why| has(format!("take-in-refused-{}", why.code())));
    Finding::CODES.iter().for_each(|code| has(format!("check-{code}")));
}
