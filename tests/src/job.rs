//! The main job, told once, in the words of the domain: the walk shows it, the end-to-end tests hold it to its promises.
//!
//! A person is slower than these steps; every wait is for something that she would see.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail, ensure};
use serde_json::{Value, json};

use crate::window::Window;

/// What a card is called in the page (`data-testid="card-NAME"`).
pub type Card = String;

/// Calls a command as the page's bridge does.
///
/// # Errors
/// When the command refuses; its words are part of the reason.
pub async fn ask(window: &Window, command: &str, arguments: Value) -> Result<Value> {
    window
        .run(
            "window.answer = undefined;
             window.__TAURI_INTERNALS__.invoke(arguments[0], arguments[1]).then(
                (done) => { window.answer = { done }; },
                (refused) => { window.answer = { refused }; });",
            vec![json!(command), arguments],
        )
        .await?;
    window.until("window.answer !== undefined").await?;
    let answer = window.run("return window.answer;", Vec::new()).await?;
    ensure!(answer.get("refused").is_none_or(Value::is_null), "{command} refused: {answer}");
    Ok(answer["done"].clone())
}

/// The card that is in view.
///
/// # Errors
/// If none appears in time.
pub async fn card(window: &Window) -> Result<Card> {
    let script = "document.querySelector('[data-testid^=\"card-\"]')";
    window.until(script).await?;
    let name = window.run(&format!("return {script}.dataset.testid.slice(5);"), Vec::new()).await?;
    Ok(name.as_str().unwrap_or_default().to_owned())
}

/// Waits for a card.
///
/// # Errors
/// If it does not come in time.
pub async fn until_card(window: &Window, name: &str) -> Result<()> {
    window.until(&format!("document.querySelector('[data-testid=\"card-{name}\"]')")).await
}

/// A selector for a test id.
#[must_use]
pub fn id(name: &str) -> String {
    format!("[data-testid=\"{name}\"]")
}

/// Makes the invented people of the demo from the start screen, and gives back their profiles.
///
/// # Errors
/// If the start screen is not there, or the people do not come.
pub async fn makes_the_demo(window: &Window) -> Result<Vec<Value>> {
    window.click(&id("start-demo")).await?;
    window
        .until_for("document.querySelectorAll('[data-testid^=\"start-profile-\"]').length > 5", 180)
        .await?;
    let view = ask(window, "app_view", json!({})).await?;
    Ok(view["profiles"].as_array().cloned().unwrap_or_default())
}

/// Opens a profile from the start screen.
///
/// # Errors
/// If it is not listed.
pub async fn opens(window: &Window, profile: &Value) -> Result<()> {
    let key = profile["key"].as_str().context("a profile has a key")?;
    window.click(&id(&format!("start-profile-{key}"))).await?;
    window.until("!document.querySelector('[data-testid=\"start\"]')").await
}

/// Goes back to the choice of profiles.
///
/// # Errors
/// If the way there is not in view.
pub async fn changes_profile(window: &Window) -> Result<()> {
    // A stop card shows nothing that leads away from it but the screens.
    if window.has(&id("card-stop")).await? {
        window.click(&id("nav-path")).await?;
        window.find(&id("path")).await?;
    }
    window.click(&id("profile")).await?;
    window.click(&id("profile-other")).await?;
    window.until("document.querySelector('[data-testid=\"start\"]')").await
}

/// Check-in as on a usual day, and into the first card.
///
/// # Errors
/// If a step of it is not there.
pub async fn begins_a_session(window: &Window) -> Result<()> {
    until_card(window, "ready").await?;
    window.click(&id("begin")).await?;
    until_card(window, "check-in").await?;
    if window.has(&id("next-day-settled")).await? {
        window.click(&id("next-day-settled")).await?;
        window.until(&format!("!document.querySelector('{}')", id("next-day-settled"))).await?;
    }
    window.click(&id("readiness-usual")).await?;
    window.click(&id("since-none")).await?;
    window.click(&id("start")).await?;
    window.until("document.querySelector('[data-testid^=\"card-\"]:not([data-testid=card-check-in])')").await
}

/// The run and the set in hand, as the shell has them.
///
/// # Errors
/// If no session is under way.
pub async fn session(window: &Window) -> Result<Value> {
    let view = ask(window, "train_view", json!({})).await?;
    ensure!(view["state"]["state"] == "session", "no session is under way: {}", view["state"]["state"]);
    Ok(view["state"].clone())
}

/// Logs the set in hand with one tap, as meant.
///
/// # Errors
/// If it is not logged in time.
pub async fn logs_the_set(window: &Window, reserve: u8) -> Result<()> {
    until_card(window, "work").await?;
    let before = done(&session(window).await?);
    if window.has(&id("timer-start")).await? {
        window.click(&id("timer-start")).await?;
        window.click(&id("timer-stop")).await?;
        if window.has(&id("log-done")).await? {
            window.click(&id("log-done")).await?;
        }
    } else if window.has(&id("log-done")).await? {
        window.click(&id("log-done")).await?;
    } else {
        window.click(&id(&format!("reserve-{reserve}"))).await?;
    }
    for _ in 0..200 {
        if done(&session(window).await?) > before {
            return Ok(());
        }
        tokio::time::sleep(std::time::Duration::from_millis(25)).await;
    }
    bail!("the set was not logged")
}

/// How many steps of a session are done.
#[must_use]
pub fn done(session: &Value) -> usize {
    session["steps"].as_array().map_or(0, |steps| steps.iter().filter(|s| s["state"] == "done").count())
}

/// From a rest or block card on to the next work card; false when the finish card is reached.
///
/// # Errors
/// If a card that is not expected comes.
pub async fn moves_on(window: &Window) -> Result<bool> {
    for _ in 0..6 {
        match card(window).await?.as_str() {
            "rest" => {
                window.click(&id("rest-go")).await?;
                window.until("!document.querySelector('[data-testid=card-rest]')").await?;
            }
            "block" => {
                window.click(&id("block-go")).await?;
                window.until("!document.querySelector('[data-testid=card-block]')").await?;
            }
            "work" => return Ok(true),
            "finish" => return Ok(false),
            other => bail!("the card {other} was not expected"),
        }
    }
    bail!("no work card within six cards")
}

/// Trains what is left of a session, every set as meant, and ends on the finish card.
///
/// # Errors
/// If a step of it does not come in time.
pub async fn trains_the_rest(window: &Window) -> Result<usize> {
    let mut sets = 0;
    while moves_on(window).await? {
        logs_the_set(window, 3).await?;
        sets += 1;
        ensure!(sets < 100, "a session ends");
    }
    Ok(sets)
}

/// Marks a symptom in mid-set and says what it was.
///
/// # Errors
/// If the marker or the kind is not there.
pub async fn marks(window: &Window, kind: &str, amount: &str) -> Result<()> {
    window.click(&id("feel")).await?;
    until_card(window, "mark").await?;
    window.click(&id(&format!("kind-{kind}"))).await?;
    window.click(&id(&format!("amount-{amount}"))).await?;
    until_said(window).await
}

/// Waits until what was said of the last mark is in the log and the card speaks of it.
///
/// # Errors
/// If it does not get there in time.
pub async fn until_said(window: &Window) -> Result<()> {
    for _ in 0..400 {
        let session = session(window).await?;
        let last = session["marks"].as_array().and_then(|m| m.last()).cloned().unwrap_or_default();
        if !last["symptom"]["kind"].is_null() && !last["symptom"]["amount"].is_null() {
            return window
                .until("!document.querySelector('[data-testid=mark-go]')?.innerText.includes('without')")
                .await;
        }
        tokio::time::sleep(std::time::Duration::from_millis(25)).await;
    }
    bail!("what was said of the mark did not reach the log")
}

/// Ends the session from the finish card.
///
/// # Errors
/// If what comes next is not shown.
pub async fn finishes(window: &Window, effort: u8, note: &str) -> Result<()> {
    until_card(window, "finish").await?;
    window.click(&id(&format!("effort-{effort}"))).await?;
    if !note.is_empty() {
        window.fill(&id("note"), note).await?;
    }
    window.click(&id("finish")).await?;
    until_card(window, "finished").await
}

/// Writes the log file from the Send screen; gives back where it lies.
///
/// # Errors
/// If it is not written.
pub async fn writes_the_log(window: &Window) -> Result<PathBuf> {
    window.click(&id("nav-send")).await?;
    window.click(&id("log-write")).await?;
    let said = window.read(&id("log-written")).await?.text;
    let view = ask(window, "send_view", json!({})).await?;
    let name = view["file_name"].as_str().unwrap_or_default();
    let folder = view["folder"].as_str().unwrap_or_default();
    let path = Path::new(folder).join(name);
    ensure!(path.is_file(), "{} was said to be written ({said})", path.display());
    Ok(path)
}

/// Takes a file in on the screen in view; gives back what the report says of it.
///
/// # Errors
/// If there is no report.
pub async fn takes_in(window: &Window, input: &str, path: &Path) -> Result<String> {
    let before = window
        .run("return document.querySelectorAll('[data-testid=report-file]').length;", Vec::new())
        .await?;
    window.fill(&id(input), &path.display().to_string()).await?;
    let _ = before;
    Ok(window.read(&id("report")).await?.text)
}

/// The client of a demo whose profile name is given.
///
/// # Errors
/// If she is not there.
pub fn named<'v>(profiles: &'v [Value], name: &str) -> Result<&'v Value> {
    profiles
        .iter()
        .find(|p| p["name"].as_str().is_some_and(|n| n.starts_with(name)))
        .with_context(|| format!("no profile named {name}"))
}

/// Chooses what a list offers, by its value.
///
/// # Errors
/// If the list is not there.
pub async fn chooses(window: &Window, name: &str, value: &str) -> Result<()> {
    window.find(&id(name)).await?;
    let script = "const s = document.querySelector(arguments[0]); s.value = arguments[1]; \
                  s.dispatchEvent(new Event('change', { bubbles: true }));";
    window.run(script, vec![json!(id(name)), json!(value)]).await?;
    Ok(())
}
