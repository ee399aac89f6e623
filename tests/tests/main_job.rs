//! The main job in the real window: trained at 390 by 844, reviewed at 1280 by 800; with a battery that dies.

use anyhow::{Context, Result};
use newel_tests::job;
use newel_tests::{LAPTOP, Opening, PHONE, Window};
use serde_json::{Value, json};

async fn demo(window: &Window) -> Result<Vec<Value>> {
    let profiles = job::makes_the_demo(window).await?;
    assert!(profiles.iter().filter(|p| p["role"] == "client").count() >= 6, "at least six invented clients");
    assert!(profiles.iter().all(|p| p["demo"] == true), "all of them said to be invented");
    Ok(profiles)
}

#[tokio::test]
async fn a_session_is_trained_marked_finished_sent_and_reviewed() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = demo(&window).await?;
    let client = job::named(&profiles, "Freya")?;
    job::opens(&window, client).await?;
    job::begins_a_session(&window).await?;
    assert!(job::moves_on(&window).await?, "a work card comes");
    job::logs_the_set(&window, 3).await?;

    // Between "set logged" and the next card the battery dies.
    let before = job::session(&window).await?;
    let card_before = job::card(&window).await?;
    let window = window.kill_and_reopen().await?;
    let after = job::session(&window).await?;
    assert_eq!(job::done(&after), 1, "the set is there");
    assert_eq!(after["work"]["slot"], before["work"]["slot"], "and the session goes on at the same set");
    assert_eq!(after["rest"]["until"], before["rest"]["until"], "the rest ends when it would have");
    assert_eq!(job::card(&window).await?, card_before, "at the right card");

    // A symptom in mid-set: in the log before anything is asked, an easier option at once.
    let mut marked = false;
    while job::moves_on(&window).await? {
        let session = job::session(&window).await?;
        if !marked && session["work"]["level"].as_u64().unwrap_or(0) > 0 {
            let level = session["work"]["level"].as_u64();
            window.click(&job::id("feel")).await?;
            job::until_card(&window, "mark").await?;
            let known = job::session(&window).await?;
            let mark = known["marks"].as_array().and_then(|m| m.last()).context("the mark is in the log")?;
            assert!(mark["symptom"]["kind"].is_null(), "before its kind was said");
            window.click(&job::id("kind-heaviness")).await?;
            window.click(&job::id("amount-clearly")).await?;
            job::until_said(&window).await?;
            window.click(&job::id("mark-go")).await?;
            window.until("!document.querySelector('[data-testid=card-mark]')").await?;
            let now = job::session(&window).await?;
            assert!(now["work"]["level"].as_u64() < level || now["work"]["slot"] != session["work"]["slot"]);
            marked = true;
            continue;
        }
        job::logs_the_set(&window, 3).await?;
    }
    assert!(marked, "a set above the first step came");
    job::finishes(&window, 4, "Felt it in the second round").await?;
    assert!(window.has(&job::id("next")).await?, "what comes next is shown, with its reasons");

    let log = job::writes_the_log(&window).await?;
    job::changes_profile(&window).await?;
    window.resize(LAPTOP).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(&window, coach).await?;
    let person = client_of(&window, "Freya").await?;
    let records = |view: &Value| view["client"]["records"].as_u64().unwrap_or(0);
    let before = job::ask(&window, "client_view", json!({ "person": person })).await?;
    job::takes_in(&window, "desk-take-in", &log).await?;
    let once = job::ask(&window, "client_view", json!({ "person": person })).await?;
    assert!(records(&once) > records(&before), "what was trained has come over");
    job::takes_in(&window, "desk-take-in", &log).await?;
    let twice = job::ask(&window, "client_view", json!({ "person": person })).await?;
    assert_eq!(twice, once, "the same file twice changes nothing");

    // The coach reads and answers; the answer travels in a plan file.
    window.click(&job::id(&format!("desk-entry-{person}"))).await?;
    let story = window.read(&job::id("story")).await?.text;
    assert!(story.contains("Freya"), "her story is open: {story}");
    let found = once["findings"].as_array().cloned().unwrap_or_default();
    assert!(found.iter().any(|f| f["code"].as_str().is_some_and(|c| c.starts_with("symptom-"))), "{found:?}");
    let written = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    job::changes_profile(&window).await?;
    window.resize(PHONE).await?;
    job::opens(&window, client).await?;
    window.click(&job::id("nav-send")).await?;
    let path = std::path::PathBuf::from(written["path"].as_str().unwrap_or_default());
    job::takes_in(&window, "take-in", &path).await?;
    window.close().await
}

async fn client_of(window: &Window, name: &str) -> Result<String> {
    let roster = job::ask(window, "roster_view", json!({})).await?;
    roster["clients"]
        .as_array()
        .into_iter()
        .flatten()
        .find(|c| c["name"].as_str().is_some_and(|n| n.starts_with(name)))
        .and_then(|c| c["person"].as_str().map(str::to_owned))
        .with_context(|| format!("{name} is on the Roster"))
}

#[tokio::test]
async fn a_red_flag_ends_the_session_and_training_stays_closed() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = demo(&window).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    window.click(&job::id("feel")).await?;
    job::until_card(&window, "mark").await?;
    window.click(&job::id("kinds-urgent")).await?;
    window.click(&job::id("kind-chest-pain")).await?;
    job::until_card(&window, "stop").await?;
    assert!(window.has(&job::id("stop-undo")).await?, "not meant is still possible");
    window.click(&job::id("stop-read")).await?;
    window.until(&format!("!document.querySelector('{}')", job::id("stop-undo"))).await?;
    let window = window.kill_and_reopen().await?;
    job::until_card(&window, "stop").await?;
    let view = job::ask(&window, "train_view", json!({})).await?;
    assert_eq!(view["state"]["state"], "closed", "nothing is proposed until a clearance");
    window.close().await
}
