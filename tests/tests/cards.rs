//! The client's cards as a hand meets them: the place of a symptom is shown on a body, counting along counts, what suits
//! her is kept, and a whole session is trained by keys alone.

use anyhow::Result;
use fantoccini::key::Key;
use newel_tests::job::{self, id};
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Window};
use serde_json::{Value, json};

async fn opened(scratch: &tempfile::TempDir, who: &str) -> Result<Window> {
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, who)?).await?;
    Ok(window)
}

#[tokio::test]
async fn where_it_is_is_shown_on_a_body_and_kept_in_the_log() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::marks(&window, "heaviness", "clearly").await?;
    taps(&window, "body-open").await?;
    taps(&window, "spot-pelvic-floor").await?;
    window.until("document.querySelector('[data-testid=spot-said]').innerText === 'Pelvic floor'").await?;
    let marks = job::session(&window).await?["marks"].clone();
    let place = marks.as_array().and_then(|m| m.last()).map(|m| m["symptom"]["place"].clone());
    assert_eq!(place, Some(json!("pelvic-floor")), "{marks}");
    taps(&window, "body-back").await?;
    taps(&window, "spot-low-back").await?;
    window.until("document.querySelector('[data-testid=spot-said]').innerText === 'Low back'").await?;
    window.close().await
}

#[tokio::test]
async fn counting_along_counts_and_what_suits_her_is_kept() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    job::moves_on(&window).await?;
    // Counted along at the slot's tempo; stopped after two, two are what stands to be logged.
    window.click(&id("count-along")).await?;
    window
        .until_for("/^[23]$/.test(document.querySelector('[data-testid=counting] .num')?.innerText)", 15)
        .await?;
    window.until_for("document.querySelector('[data-testid=counting] .num')?.innerText === '3'", 15).await?;
    let folder = newel_tests::target("cards")?;
    window.picture(folder.join("counting.png")).await?;
    window.click(&id("count-along")).await?;
    assert_eq!(window.read(&id("count")).await?.text, "2reps");
    // The figure plays and is paused by a second tap.
    window.click(&id("figure")).await?;
    window.until("document.querySelector('[data-testid=figure]').ariaLabel.endsWith('pause')").await?;
    window.click(&id("figure")).await?;
    window.until("!document.querySelector('[data-testid=figure]').ariaLabel.endsWith('pause')").await?;
    // Effort as a rating from 1 to 10, the left hand, a belly: kept over a restart.
    window.click(&id("more")).await?;
    for name in ["suits-belly", "suits-hand-left", "suits-effort-rating"] {
        taps(&window, name).await?;
    }
    window.picture(folder.join("suits.png")).await?;
    window.run("document.querySelector('dialog[open]')?.close();", Vec::new()).await?;
    let window = window.kill_and_reopen().await?;
    job::moves_on(&window).await?;
    let shown = window
        .run(
            "return [document.querySelector('[data-hand]').dataset.hand,
                     document.querySelectorAll('.figure ellipse').length > 0,
                     document.querySelector('[data-testid=reserve-0] .num').innerText];",
            Vec::new(),
        )
        .await?;
    assert_eq!(shown, json!(["left", true, "10"]));
    window.picture(folder.join("rating-left.png")).await?;
    window.resize(LAPTOP).await?;
    window.picture(folder.join("rating-left-laptop.png")).await?;
    window.resize(PHONE).await?;
    // A ten is no rep left.
    window.click(&id("reserve-0")).await?;
    window.until("document.querySelector('[data-testid=logged], [data-testid=undo-last]')").await?;
    let path = job::ask(&window, "path_view", json!({})).await?;
    let sets = path["sessions"][0]["sets"].as_array().cloned().unwrap_or_default();
    let reserves: Vec<&Value> = sets.iter().map(|s| &s["reserve"]).filter(|r| !r.is_null()).collect();
    assert_eq!(reserves, [&json!({ "said": "exactly", "reps": 0 })], "{sets:?}");
    window.close().await
}

/// Reaches something by Tab alone and presses a key, as somebody without a pointer does. Whether the focus is seen cannot
/// be asked here: without a window manager the window itself has none.
async fn keys_to(window: &Window, name: &str, key: Key) -> Result<()> {
    window.find(&id(name)).await?;
    for _ in 0..80 {
        let here = window
            .run("return document.activeElement?.dataset?.testid === arguments[0];", vec![json!(name)])
            .await?;
        if here == json!(true) {
            return window.key(key).await;
        }
        window.key(Key::Tab).await?;
    }
    anyhow::bail!("{name} is not reached by Tab")
}

#[tokio::test]
async fn a_whole_session_is_trained_by_keys_alone() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    job::until_card(&window, "ready").await?;
    keys_to(&window, "begin", Key::Enter).await?;
    job::until_card(&window, "check-in").await?;
    if window.has(&id("next-day-settled")).await? {
        keys_to(&window, "next-day-settled", Key::Enter).await?;
        window.until(&format!("!document.querySelector('{}')", id("next-day-settled"))).await?;
    }
    keys_to(&window, "readiness-usual", Key::Enter).await?;
    keys_to(&window, "since-none", Key::Enter).await?;
    keys_to(&window, "start", Key::Enter).await?;
    window
        .until("document.querySelector('[data-testid^=\"card-\"]:not([data-testid=card-check-in])')")
        .await?;
    let mut marked = false;
    for _ in 0..80 {
        match job::card(&window).await?.as_str() {
            "block" => {
                keys_to(&window, "block-go", Key::Enter).await?;
                window.until("!document.querySelector('[data-testid=card-block]')").await?;
            }
            "rest" => {
                keys_to(&window, "rest-go", Key::Enter).await?;
                window.until("!document.querySelector('[data-testid=card-rest]')").await?;
            }
            "work" if !marked && window.has(&id("reserve-3")).await? => {
                // Once on the way a symptom is marked, with its place on the body, by keys as well.
                marked = true;
                keys_to(&window, "feel", Key::Enter).await?;
                job::until_card(&window, "mark").await?;
                keys_to(&window, "kind-heaviness", Key::Enter).await?;
                keys_to(&window, "amount-little", Key::Enter).await?;
                job::until_said(&window).await?;
                keys_to(&window, "body-open", Key::Enter).await?;
                keys_to(&window, "spot-pelvic-floor", Key::Enter).await?;
                keys_to(&window, "mark-go", Key::Enter).await?;
                window.until("!document.querySelector('[data-testid=card-mark]')").await?;
            }
            "work" => {
                let before = job::done(&job::session(&window).await?);
                let timed = window.has(&id("log-done")).await?;
                keys_to(&window, if timed { "log-done" } else { "reserve-3" }, Key::Enter).await?;
                for _ in 0..200 {
                    if job::done(&job::session(&window).await?) > before {
                        break;
                    }
                    tokio::time::sleep(std::time::Duration::from_millis(25)).await;
                }
            }
            "finish" => {
                keys_to(&window, "finish", Key::Enter).await?;
                job::until_card(&window, "finished").await?;
                assert!(marked);
                return window.close().await;
            }
            other => anyhow::bail!("{other} was not expected"),
        }
    }
    anyhow::bail!("the session does not end")
}

#[tokio::test]
async fn the_trend_is_walked_by_keys_and_said() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    window.click(&id("nav-path")).await?;
    window.find(&id("trend-walk")).await?;
    let last = window
        .run("return document.querySelector('[data-testid=trend-walk]').ariaValueText ?? document.querySelector('[data-testid=trend-walk]').getAttribute('aria-valuetext');", Vec::new())
        .await?;
    window.run("document.querySelector('[data-testid=trend-walk]').focus();", Vec::new()).await?;
    window.key(Key::Left).await?;
    let before = window.read(&id("trend-at")).await?.text;
    assert!(before.contains("kg, between"), "{before}");
    assert_ne!(json!(before), last, "a day earlier than the last");
    window.key(Key::Home).await?;
    window
        .until(&format!("document.querySelector('[data-testid=trend-at]').innerText !== {}", json!(before)))
        .await?;
    let spoken = window
        .run(
            "return document.querySelector('[data-testid=trend-walk]').getAttribute('aria-valuetext');",
            Vec::new(),
        )
        .await?;
    assert_eq!(json!(window.read(&id("trend-at")).await?.text), spoken, "what is seen is what is read out");
    window.picture(newel_tests::target("cards/trend")?.join("walked.png")).await?;
    window.close().await
}
