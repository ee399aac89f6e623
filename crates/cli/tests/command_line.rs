//! `newel` from outside: exit statuses, reports, and that the demonstration in the repository is what it says.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::OnceLock;

/// The day and seed of the folder demo-data; its page says them too.
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

/// The demonstration, made once for all tests of this file; none of them changes it.
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

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut all: Vec<PathBuf> =
        fs::read_dir(folder).expect("a folder").map(|e| e.expect("an entry").path()).collect();
    all.sort();
    all
}

fn last_plan(slug: &str) -> PathBuf {
    let name = format!("{slug}-plan-");
    let mine = |p: &PathBuf| p.file_name().is_some_and(|n| n.to_string_lossy().starts_with(&name));
    files(&demo().join("plans")).into_iter().rfind(mine).expect("she has a plan")
}

fn log(slug: &str) -> PathBuf {
    demo().join(format!("logs/{slug}-log-{ON}.newel.json"))
}

#[test]
fn the_repository_holds_what_this_version_makes() {
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data");
    let names = |folder: &Path, part: &str| -> Vec<String> {
        files(&folder.join(part))
            .iter()
            .map(|p| p.file_name().expect("a name").to_string_lossy().into_owned())
            .collect()
    };
    for part in ["plans", "logs"] {
        assert_eq!(names(&kept, part), names(demo(), part), "the same files in {part}");
        for name in names(demo(), part) {
            let (here, made) = (kept.join(part).join(&name), demo().join(part).join(&name));
            let same = fs::read(&here).expect("kept") == fs::read(&made).expect("made");
            assert!(
                same,
                "{part}/{name} differs: make demo-data anew, as its README says, and look at what changed"
            );
        }
    }
    let page = fs::read_to_string(kept.join("README.md")).expect("a page");
    assert_eq!(page, fs::read_to_string(demo().join("README.md")).expect("a page"));
    assert!(page.contains("Nobody in it exists"), "the page says that all of it is invented");
}

#[test]
fn everything_that_it_makes_is_sound_and_replays() {
    let mut arguments = vec!["check".to_owned()];
    for part in ["plans", "logs"] {
        arguments.extend(files(&demo().join(part)).iter().map(|p| text(p).to_owned()));
    }
    arguments.push(text(&demo().join("coach.db")).to_owned());
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let checked = newel(&words);
    assert_eq!(status(&checked), 0, "{}", err(&checked));
    assert!(out(&checked).lines().all(|l| l.ends_with(": sound")), "{}", out(&checked));

    let replayed = newel(&["replay", "--db", text(&demo().join("coach.db"))]);
    assert_eq!(status(&replayed), 0, "{}", err(&replayed));
    let lines: Vec<String> = out(&replayed).lines().map(str::to_owned).collect();
    let shown = lines[0].split(' ').next().expect("a number").to_owned();
    assert!(shown.parse::<u32>().expect("a number") > 100);
    assert_eq!(lines[1], format!("{shown} the same to the bit"));
}

#[test]
fn a_folder_with_a_coachs_database_is_left_alone() {
    let again = newel(&["demo", text(demo()), "--on", ON]);
    assert_eq!(status(&again), 1, "her database may have been used since");
    assert!(err(&again).contains("file-error-unwritten"), "{}", err(&again));
}

#[test]
fn taking_a_file_in_twice_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let db = folder.path().join("coach.db");
    let log = log("noemi");
    let first = newel(&["take-in", "--db", text(&db), text(&log)]);
    assert_eq!(status(&first), 0, "{}", err(&first));
    assert!(out(&first).contains("Noemi Castellan"), "{}", out(&first));
    let before = newel(&["review", "--db", text(&db), "--on", ON, "--json"]);
    let second = newel(&["take-in", "--db", text(&db), text(&log), "--json"]);
    assert_eq!(status(&second), 0, "{}", err(&second));
    let report: serde_json::Value = serde_json::from_str(&out(&second)).expect("JSON");
    assert_eq!(report["files"][0]["new"], 0, "all of it was here");
    assert!(report["files"][0]["known"].as_u64().expect("a number") > 100);
    let after = newel(&["review", "--db", text(&db), "--on", ON, "--json"]);
    assert_eq!(out(&before), out(&after), "the Desk is as it was");
}

#[test]
fn a_file_that_is_cut_or_altered_is_refused_by_name() {
    let folder = tempfile::tempdir().expect("a folder");
    let whole = fs::read(log("lucia")).expect("a log");
    let cut = folder.path().join("cut.json");
    fs::write(&cut, &whole[..whole.len() - 1]).expect("written");
    let altered = folder.path().join("altered.json");
    let other = String::from_utf8(whole).expect("text").replacen("Lucia", "Luisa", 1);
    fs::write(&altered, other).expect("written");
    let foreign = folder.path().join("foreign.txt");
    fs::write(&foreign, "a letter").expect("written");
    for (file, code) in [
        (&cut, "file-error-cut-short"),
        (&altered, "file-error-altered"),
        (&foreign, "file-error-not-newel"),
        (&folder.path().join("nowhere"), "file-error-unreadable"),
    ] {
        let checked = newel(&["check", text(file)]);
        assert_eq!(status(&checked), 1, "{}", file.display());
        let said = err(&checked);
        assert!(said.contains(code), "{said}");
        assert!(said.lines().count() >= 2, "what happened, and what to do: {said}");

        let db = folder.path().join("coach.db");
        let taken = newel(&["take-in", "--db", text(&db), text(file)]);
        assert_eq!(status(&taken), 1, "{}", file.display());
        assert!(err(&taken).contains(code), "{}", err(&taken));
    }
    let mut damaged = fs::read(demo().join("coach.db")).expect("a database");
    // The middle of the file: a page of records.
    let middle = damaged.len() / 2;
    damaged[middle..middle + 4096].fill(0x55);
    let db = folder.path().join("damaged.db");
    fs::write(&db, damaged).expect("written");
    let checked = newel(&["check", text(&db)]);
    assert_eq!(status(&checked), 1, "{}", out(&checked));
}

#[test]
fn a_call_that_makes_no_sense_is_a_matter_of_usage() {
    for arguments in [
        &[][..],
        &["propose"],
        &["propose", "--plan", "a", "--log", "b", "--on", "tomorrow"],
        &["take-in", "--db", "x"],
        &["check"],
        &["juggle"],
    ] {
        assert_eq!(status(&newel(arguments)), 2, "{arguments:?}");
    }
}

#[test]
fn a_proposal_says_what_and_why() {
    let propose = |slug: &str, json: bool| {
        let (plan, log) = (last_plan(slug), log(slug));
        let mut arguments = vec!["propose", "--plan", text(&plan), "--log", text(&log), "--on", ON];
        arguments.extend(json.then_some("--json"));
        let proposed = newel(&arguments);
        assert_eq!(status(&proposed), 0, "{}", err(&proposed));
        out(&proposed)
    };
    let noemi = propose("noemi", false);
    assert!(noemi.starts_with("Noemi Castellan: Steady floor, Session B, on 2026-11-24"), "{noemi}");
    assert!(
        noemi.contains("Split squat: rests today\n    This rests until it has been answered."),
        "{noemi}"
    );
    assert!(noemi.trim_end().ends_with("comes first."), "it says what it is not: {noemi}");
    assert!(
        propose("selin", false).contains("Training waits until the midwife, doctor or clinic has said yes")
    );

    let json: serde_json::Value = serde_json::from_str(&propose("hana", true)).expect("JSON");
    let slots = json["slots"].as_array().expect("slots");
    assert!(!slots.is_empty());
    for slot in slots {
        let reasons = slot["proposal"]["reasons"].as_array().expect("reasons");
        let sentences = slot["sentences"].as_array().expect("sentences");
        assert!(!reasons.is_empty(), "no proposal without a reason");
        assert_eq!(reasons.len(), sentences.len(), "a sentence for each");
        for (reason, sentence) in reasons.iter().zip(sentences) {
            assert!(!reason["source"].as_str().expect("a source").is_empty(), "{reason}");
            let said = sentence.as_str().expect("a sentence");
            assert!(said.len() > 5 && !said.contains("{$"), "every value is filled in: {said}");
        }
    }
}

fn watch(slug: &str, json: bool) -> String {
    let (plan, log) = (last_plan(slug), log(slug));
    let mut arguments = vec!["watch", "--plan", text(&plan), "--log", text(&log), "--on", ON];
    arguments.extend(json.then_some("--json"));
    let watched = newel(&arguments);
    assert_eq!(status(&watched), 0, "{}", err(&watched));
    out(&watched)
}

#[test]
fn watching_shows_weeks_rates_and_trends() {
    let told = watch("noemi", false);
    assert!(told.starts_with("Noemi Castellan, Steady floor, on 2026-11-24\n"), "{told}");
    assert!(told.contains("never a diagnosis"), "the pointer says what it is: {told}");
    assert!(told.contains("120 on 4"), "after a birth 120 minutes over 4 days are advised: {told}");
    assert!(watch("amara", false).contains("150 on 3"), "in pregnancy 150 over 3");
    for slug in ["noemi", "amara", "lucia", "hana", "selin", "freya", "josie"] {
        let told = watch(slug, false);
        for id in ["watch-", "pattern-", "position-", "load-band-", "{", "NaN", "inf "] {
            assert!(!told.contains(id), "{slug}: {id} where a word or number should be: {told}");
        }
    }
}

#[test]
fn watching_as_json_holds_together() {
    for slug in ["noemi", "amara", "lucia", "hana", "selin", "freya", "josie"] {
        let json: serde_json::Value = serde_json::from_str(&watch(slug, true)).expect("JSON");
        assert_eq!(json["on"], ON);
        assert_eq!(json["rates"]["notice"], "pointer-never-a-diagnosis");
        assert!(json["notice_sentence"].as_str().expect("a sentence").contains("never a diagnosis"));
        let weeks = json["weeks"].as_array().expect("weeks");
        assert!(!weeks.is_empty() && weeks.len() <= 12, "{slug}: {}", weeks.len());
        assert_eq!(weeks[weeks.len() - 1]["to"], ON);
        for week in weeks {
            let daily = week["load"]["daily"].as_array().expect("days");
            let sum: f64 = daily.iter().map(|d| d.as_f64().expect("a number")).sum();
            assert_eq!(daily.len(), 7);
            assert!((sum - week["load"]["sum"].as_f64().expect("a sum")).abs() < 1e-9, "{slug}");
            let done = week["adherence"]["done_sets"].as_u64().expect("a count");
            assert!(done <= week["adherence"]["planned_sets"].as_u64().expect("a count"), "{slug}");
        }
        for rate in json["rates"]["rates"].as_array().expect("rates") {
            assert!(rate["marked"].as_u64() <= rate["sessions"].as_u64(), "{slug}: {rate}");
            if let Some(tells) = rate["tells"].as_object() {
                let end = |name: &str| tells[name].as_f64().expect("a number");
                assert!(0.0 <= end("low") && end("low") <= end("rate"), "{slug}: {rate}");
                assert!(end("rate") <= end("high") && end("high") <= 1.0, "{slug}: {rate}");
            }
        }
    }
    let trends = |slug: &str| {
        let json: serde_json::Value = serde_json::from_str(&watch(slug, true)).expect("JSON");
        json["trends"].as_array().expect("trends").len()
    };
    assert!(trends("amara") > 0);
}

#[test]
fn watching_refuses_what_does_not_belong_together() {
    let (plan, log) = (last_plan("hana"), log("freya"));
    let watched = newel(&["watch", "--plan", text(&plan), "--log", text(&log), "--on", ON]);
    assert_eq!(status(&watched), 1);
    assert!(err(&watched).contains("app-error-plan-for-somebody-else"), "{}", err(&watched));
    let alone = newel(&["watch", "--plan", text(&plan)]);
    assert_eq!(status(&alone), 2, "a log is needed");
}

#[test]
fn somebody_elses_plan_is_refused() {
    let (plan, log) = (last_plan("hana"), log("freya"));
    let proposed = newel(&["propose", "--plan", text(&plan), "--log", text(&log), "--on", ON]);
    assert_eq!(status(&proposed), 1);
    assert!(err(&proposed).contains("app-error-plan-for-somebody-else"), "{}", err(&proposed));
    let swapped = newel(&["propose", "--plan", text(&log), "--log", text(&plan), "--on", ON]);
    assert!(err(&swapped).contains("file-error-wrong-kind"), "{}", err(&swapped));
}

#[test]
fn review_puts_the_stop_sign_first() {
    let db = demo().join("coach.db");
    let review = newel(&["review", "--db", text(&db), "--on", ON, "--json"]);
    assert_eq!(status(&review), 0, "{}", err(&review));
    let desk: serde_json::Value = serde_json::from_str(&out(&review)).expect("JSON");
    assert_eq!(desk["queue"][0]["findings"][0]["code"], "red-flag");
    let named = |list: &str| desk[list].as_array().expect("a list").len();
    assert_eq!(named("queue") + named("well"), 7, "everybody is on the Desk");
    assert!(out(&newel(&["review", "--db", text(&db), "--on", ON])).starts_with("Selin Duarte"));
}

#[test]
fn the_rule_pack_is_printed_and_its_pages_are_the_ones_in_docs() {
    let plain = newel(&["rules"]);
    assert_eq!(status(&plain), 0);
    let said = out(&plain);
    assert!(said.contains("load.step  days 28, share 0.1\n    A load goes up by at most 10 %"), "{said}");
    assert!(said.contains("symptom.chest-pain\n"));
    let json: serde_json::Value = serde_json::from_str(&out(&newel(&["rules", "--json"]))).expect("JSON");
    let step = json["rules"].as_array().expect("rules").iter().find(|r| r["id"] == "load.step");
    assert_eq!(step.expect("the step")["may_set"]["share"]["stricter"], "less");
    assert_eq!(json["symptoms"][0]["id"], "heaviness");
    let docs = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs");
    for (call, page) in
        [(vec!["rules", "--table"], "symptoms.md"), (vec!["rules", "--table", "rules"], "rules.md")]
    {
        assert_eq!(out(&newel(&call)), fs::read_to_string(docs.join(page)).expect("a page"), "{page}");
    }
    assert_eq!(status(&newel(&["rules", "--json", "--table"])), 2);
}
