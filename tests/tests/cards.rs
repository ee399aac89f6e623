//! The client's cards as a hand meets them: what is tapped is large enough on every size, nothing is cut, the place of a
//! symptom is shown on a body, counting along counts, and what suits her is kept.

use anyhow::{Result, ensure};
use fantoccini::key::Key;
use newel_tests::job::{self, id};
use newel_tests::{LAPTOP, Opening, PHONE, Size, Window};
use serde_json::{Value, json};

const NARROW: Size = Size { width: 320, height: 640 };
const LANDSCAPE: Size = Size { width: 844, height: 390 };

/// The least side of what is tapped, in CSS pixels.
const TAP: f64 = 48.0;

/// What is tapped and smaller than a fingertip, or pushed out of the page: one line each.
const TOO_SMALL: &str = "
    const seen = (node) => node.checkVisibility() && node.getBoundingClientRect().width > 0;
    const dialog = document.querySelector('dialog[open]');
    const within = dialog ?? document;
    return [...within.querySelectorAll('button, select, textarea, summary, input, [role=button]')]
        .filter((node) => seen(node) && node.type !== 'file')
        .map((node) => [node, (node.closest('label') ?? node).getBoundingClientRect()])
        .filter(([, box]) => Math.min(box.width, box.height) < arguments[0] - 0.5
            || box.left < -1 || box.right > innerWidth + 1)
        .map(([node, box]) => `${node.dataset.testid ?? node.tagName} ${Math.round(box.width)}x${Math.round(box.height)}`);";

async fn is_tappable(window: &Window, card: &str) -> Result<()> {
    for size in [NARROW, PHONE, LANDSCAPE, LAPTOP] {
        window.resize(size).await?;
        tokio::time::sleep(std::time::Duration::from_millis(200)).await;
        let small = window.run(TOO_SMALL, vec![json!(TAP)]).await?;
        ensure!(small == json!([]), "{card} at {}x{}: {small}", size.width, size.height);
    }
    window.resize(PHONE).await
}

async fn taps(window: &Window, name: &str) -> Result<()> {
    window.find(&id(name)).await?;
    let script = "document.querySelector(arguments[0]).scrollIntoView({ block: 'center' });";
    window.run(script, vec![json!(id(name))]).await?;
    window.click(&id(name)).await
}

async fn opened(scratch: &tempfile::TempDir, who: &str) -> Result<Window> {
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, who)?).await?;
    Ok(window)
}

#[tokio::test]
async fn what_is_tapped_is_large_enough_on_every_card_and_size() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    job::until_card(&window, "ready").await?;
    is_tappable(&window, "ready").await?;
    window.click(&id("begin")).await?;
    job::until_card(&window, "check-in").await?;
    is_tappable(&window, "check-in").await?;
    window.click(&id("check-in-back")).await?;
    job::begins_a_session(&window).await?;
    is_tappable(&window, "block").await?;
    job::moves_on(&window).await?;
    is_tappable(&window, "work, timed").await?;
    job::logs_the_set(&window, 3).await?;
    job::moves_on(&window).await?;
    is_tappable(&window, "work").await?;
    window.click(&id("more")).await?;
    window.find(&id("suits-sound")).await?;
    is_tappable(&window, "more").await?;
    window.run("document.querySelector('dialog[open]')?.close();", Vec::new()).await?;
    job::logs_the_set(&window, 3).await?;
    job::until_card(&window, "rest").await?;
    is_tappable(&window, "rest").await?;
    job::moves_on(&window).await?;
    window.click(&id("feel")).await?;
    job::until_card(&window, "mark").await?;
    is_tappable(&window, "mark").await?;
    window.click(&id("kind-heaviness")).await?;
    window.click(&id("amount-clearly")).await?;
    job::until_said(&window).await?;
    taps(&window, "body-open").await?;
    is_tappable(&window, "mark, said").await?;
    // Where it is: on the drawing, kept in the log.
    taps(&window, "spot-pelvic-floor").await?;
    window.until("document.querySelector('[data-testid=spot-said]').innerText === 'Pelvic floor'").await?;
    let marks = job::session(&window).await?["marks"].clone();
    let place = marks.as_array().and_then(|m| m.last()).map(|m| m["symptom"]["place"].clone());
    assert_eq!(place, Some(json!("pelvic-floor")), "{marks}");
    taps(&window, "body-back").await?;
    taps(&window, "spot-low-back").await?;
    window.until("document.querySelector('[data-testid=spot-said]').innerText === 'Low back'").await?;
    window.picture(newel_tests::target("cards")?.join("body-back.png")).await?;
    window.click(&id("mark-go")).await?;
    window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    job::trains_the_rest(&window).await?;
    is_tappable(&window, "finish").await?;
    job::finishes(&window, 4, "").await?;
    is_tappable(&window, "finished").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&id(&format!("nav-{screen}"))).await?;
        window.find(&id(screen)).await?;
        is_tappable(&window, screen).await?;
    }
    window.close().await
}

#[tokio::test]
async fn the_card_that_stops_training_is_tappable_too() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Selin").await?;
    job::until_card(&window, "stop").await?;
    is_tappable(&window, "stop").await?;
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

#[tokio::test]
async fn in_spanish_everything_is_said_large_enough_and_clean() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    window.click(&id("language-es")).await?;
    window
        .until("document.documentElement.lang === 'es' && document.querySelector('[data-testid=start]')")
        .await?;
    let folder = newel_tests::target("spanish")?;
    let shows = async |name: &str| -> Result<()> {
        is_tappable(&window, name).await?;
        window.picture(folder.join(format!("{name}.png"))).await?;
        let found = window.axe().await?;
        ensure!(found.is_empty(), "{name}: {found:?}");
        // No id is shown in place of its words.
        let bare = window
            .run(
                "return [...document.body.innerText.matchAll(/\\b[a-z]+(?:-[a-z_]+){2,}\\b/g)].map((m) => m[0])
                    .filter((word) => !word.startsWith('freya-'));",
                Vec::new(),
            )
            .await?;
        ensure!(bare == json!([]), "{name}: {bare}");
        Ok(())
    };
    shows("start").await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    job::until_card(&window, "ready").await?;
    shows("ready").await?;
    window.click(&id("begin")).await?;
    job::until_card(&window, "check-in").await?;
    shows("check-in").await?;
    window.click(&id("check-in-back")).await?;
    job::begins_a_session(&window).await?;
    shows("block").await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    job::moves_on(&window).await?;
    shows("work").await?;
    job::logs_the_set(&window, 3).await?;
    job::until_card(&window, "rest").await?;
    shows("rest").await?;
    job::moves_on(&window).await?;
    window.click(&id("feel")).await?;
    job::until_card(&window, "mark").await?;
    shows("mark").await?;
    window.click(&id("kind-heaviness")).await?;
    window.click(&id("amount-clearly")).await?;
    job::until_said(&window).await?;
    shows("mark-said").await?;
    window.click(&id("mark-go")).await?;
    window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    job::trains_the_rest(&window).await?;
    shows("finish").await?;
    job::finishes(&window, 4, "").await?;
    shows("finished").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&id(&format!("nav-{screen}"))).await?;
        window.find(&id(screen)).await?;
        shows(screen).await?;
    }
    job::changes_profile(&window).await?;
    job::opens(&window, job::named(&profiles, "Selin")?).await?;
    job::until_card(&window, "stop").await?;
    shows("stop").await?;
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
