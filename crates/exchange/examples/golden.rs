//! Writes the golden files of the present format version. To be run once, when a format version is
//! released: from then on the files are never written again, and every later program must read them.
#![allow(clippy::unwrap_used, reason = "shares the tests' documents, where a panic is the report")]

#[path = "../tests/all/support.rs"]
#[allow(dead_code, reason = "the tests use more of it")]
mod support;

use newel_exchange::{write_log, write_plan, write_whole};
use std::path::Path;

fn main() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden");
    std::fs::create_dir_all(&folder).unwrap();
    write_whole(folder.join("log-v1.json"), &write_log(&support::log()).unwrap()).unwrap();
    write_whole(folder.join("plan-v3.json"), &write_plan(&support::plan_with_beginning()).unwrap()).unwrap();
    write_whole(folder.join("plan-v2.json"), &write_plan(&support::plan_with_words()).unwrap()).unwrap();
    write_whole(folder.join("plan-v1.json"), &write_plan(&support::plan()).unwrap()).unwrap();
}
