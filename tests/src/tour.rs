//! A walk past every card and screen, told once: whoever comes along looks at each.

use anyhow::{Context, Result};
use serde_json::{Value, json};

use crate::job::{self, id};
use crate::window::{LAPTOP, PHONE, Window};

/// Brings something into view as a person does, and taps it.
///
/// # Errors
/// If it does not appear or cannot be tapped.
pub async fn taps(window: &Window, name: &str) -> Result<()> {
    window.find(&id(name)).await?;
    let script = "document.querySelector(arguments[0]).scrollIntoView({ block: 'center' });";
    window.run(script, vec![json!(id(name))]).await?;
    window.click(&id(name)).await
}

/// Closes the sheet that is open.
///
/// # Errors
/// If none is, or it stays.
pub async fn closes_the_sheet(window: &Window) -> Result<()> {
    window.click(&id("dialog-close")).await?;
    window.until("!document.querySelector('dialog[open]')").await
}

/// Past a client's cards, through a whole session, and her other screens; `look` is told the name of each. The window is
/// a phone, and has to be one again after each look.
///
/// # Errors
/// If a step is not there, and what `look` says.
pub async fn client(
    window: &Window,
    profiles: &[Value],
    mut look: impl AsyncFnMut(&str) -> Result<()>,
) -> Result<()> {
    job::opens(window, job::named(profiles, "Freya")?).await?;
    job::until_card(window, "ready").await?;
    look("ready").await?;
    window.click(&id("begin")).await?;
    job::until_card(window, "check-in").await?;
    look("check-in").await?;
    window.click(&id("check-in-back")).await?;
    job::begins_a_session(window).await?;
    look("block").await?;
    job::moves_on(window).await?;
    look("work-timed").await?;
    job::logs_the_set(window, 3).await?;
    job::moves_on(window).await?;
    look("work").await?;
    window.click(&id("more")).await?;
    window.find(&id("more-pause")).await?;
    look("more").await?;
    taps(window, "more-pause").await?;
    job::until_card(window, "pause").await?;
    look("pause").await?;
    window.click(&id("pause-go")).await?;
    job::logs_the_set(window, 3).await?;
    job::until_card(window, "rest").await?;
    look("rest").await?;
    taps(window, "correct").await?;
    window.find("dialog[open]").await?;
    look("correct").await?;
    closes_the_sheet(window).await?;
    job::moves_on(window).await?;
    window.click(&id("feel")).await?;
    job::until_card(window, "mark").await?;
    look("mark").await?;
    window.click(&id("kind-heaviness")).await?;
    window.click(&id("amount-clearly")).await?;
    job::until_said(window).await?;
    look("mark-said").await?;
    taps(window, "body-open").await?;
    window.find(&id("spot-pelvic-floor")).await?;
    look("body").await?;
    taps(window, "mark-go").await?;
    window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    job::trains_the_rest(window).await?;
    look("finish").await?;
    job::finishes(window, 4, "").await?;
    look("finished").await?;
    window.click(&id("onward")).await?;
    job::until_card(window, "ready").await?;
    look("ready-again").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&id(&format!("nav-{screen}"))).await?;
        window.find(&id(screen)).await?;
        look(screen).await?;
    }
    window.click(&id("nav-path")).await?;
    taps(window, "safety-more").await?;
    look("about-her").await?;
    job::changes_profile(window).await?;
    job::opens(window, job::named(profiles, "Selin")?).await?;
    job::until_card(window, "stop").await?;
    look("stop").await?;
    job::changes_profile(window).await
}

/// Past a coach's screens and the sheets on them.
///
/// # Errors
/// If a step is not there, and what `look` says.
pub async fn coach(
    window: &Window,
    profiles: &[Value],
    mut look: impl AsyncFnMut(&str) -> Result<()>,
) -> Result<()> {
    window.resize(LAPTOP).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(window, coach).await?;
    window.find(&id("desk-take-in")).await?;
    look("desk").await?;
    let desk = job::ask(window, "desk_view", json!({})).await?;
    let queue = desk["queue"].as_array().cloned().unwrap_or_default();
    let with_hold = queue
        .iter()
        .find(|e| e["findings"].as_array().is_some_and(|f| f.iter().any(|f| f["code"] == "hold-waits")));
    let entry = with_hold.or(queue.first()).context("somebody is on the Desk")?;
    let person = entry["person"].as_str().unwrap_or_default();
    window.click(&id(&format!("desk-entry-{person}"))).await?;
    window.find(&id("story")).await?;
    look("story").await?;
    taps(window, "do-override").await?;
    window.find(&id("override-keep")).await?;
    look("override").await?;
    closes_the_sheet(window).await?;
    taps(window, "print-letter").await?;
    window.find(&id("letter-to")).await?;
    look("letter").await?;
    closes_the_sheet(window).await?;
    window.click(&id("nav-roster")).await?;
    window.find(&id("roster")).await?;
    look("roster").await?;
    taps(window, "roster-add").await?;
    window.find(&id("client-name")).await?;
    look("client-form").await?;
    closes_the_sheet(window).await?;
    window.click("[data-testid=roster] summary").await?;
    taps(window, "client-restrict").await?;
    window.find(&id("restrict-keep")).await?;
    look("restriction").await?;
    closes_the_sheet(window).await?;
    taps(window, "client-safety").await?;
    window.find(&id("rule-open")).await?;
    look("client-safety").await?;
    closes_the_sheet(window).await?;
    window.click(&id("nav-planbook")).await?;
    window.find(&id("planbook")).await?;
    look("planbook").await?;
    window.fill(&id("new-title"), "Kitchen strength").await?;
    window.click(&id("new-go")).await?;
    window.find(&id("editor")).await?;
    let book = job::ask(window, "planbook_view", json!({})).await?;
    let programme = book["programmes"][0]["programme"]["id"].clone();
    taps(window, "write-session").await?;
    window.find("[data-testid^=session-title-]").await?;
    let book = job::ask(window, "planbook_view", json!({})).await?;
    let session = book["programmes"][0]["programme"]["sessions"][0]["id"].clone();
    let edit =
        json!({ "edit": "add_block", "session": session, "ladders": ["squat", "row"], "part": "work" });
    job::ask(window, "programme_edit", json!({ "programme": programme, "edit": edit })).await?;
    // One change more from the page, so that it shows both.
    taps(window, "write-session").await?;
    window.find("[data-testid^=block-rounds-]").await?;
    look("editor").await?;
    taps(window, "write-done").await?;
    window.click("[data-testid=moves-squat] summary").await?;
    taps(window, "move-squat-goblet").await?;
    window.find(&id("words-keep")).await?;
    look("own-words").await?;
    closes_the_sheet(window).await?;
    // The first of the built-in programmes, trained by everybody together.
    window.run("document.querySelector('[data-testid^=together-]').click()", Vec::new()).await?;
    window.find("[data-testid^=class-comer-]").await?;
    let all = "for (const chip of document.querySelectorAll('[data-testid^=class-comer-]')) chip.click()";
    window.run(all, Vec::new()).await?;
    let people = desk["queue"].as_array().map_or(0, Vec::len) + desk["well"].as_array().map_or(0, Vec::len);
    window
        .until(&format!("document.querySelectorAll('[data-testid=class-table] tbody tr').length >= {people}"))
        .await?;
    look("class").await?;
    taps(window, "class-show").await?;
    window.find(&id("room")).await?;
    window.click(&id("room-later")).await?;
    window.run("document.querySelector('[data-testid^=room-late-]').click()", Vec::new()).await?;
    look("room").await?;
    taps(window, "room-leave").await?;
    window.find(&id("class")).await?;
    taps(window, "class-back").await?;
    window.find(&id("planbook")).await?;
    window.click(&id("nav-send")).await?;
    window.find(&id("send")).await?;
    look("send-coach").await?;
    window.resize(PHONE).await?;
    job::changes_profile(window).await
}
