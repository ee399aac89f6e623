//! A session that several train together, in the real window: who comes, who does what, what the room needs, a change in
//! one cell, the view for the room with somebody who comes late, and the sheet for the wall. And what is printed for one
//! client: her session, and a letter that is not made without her leave.

use anyhow::{Context, Result, ensure};
use fantoccini::key::Key;
use newel_tests::job::{self, id};
use newel_tests::looks::looks;
use newel_tests::tour::{closes_the_sheet, taps};
use newel_tests::{LAPTOP, Opening, Window, target};
use serde_json::{Value, json};
use std::path::Path;

/// Fills in a day.
const DATED: &str = "const field = document.querySelector(arguments[0]); field.value = arguments[1];
    field.dispatchEvent(new Event('input', { bubbles: true }));";

async fn coach(scratch: &Path) -> Result<Window> {
    let window = Window::open(Opening::new(scratch).size(LAPTOP)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("the demo has a coach")?;
    job::opens(&window, coach).await?;
    Ok(window)
}

async fn pdf(window: &Window) -> Result<String> {
    written(window, b"%PDF-").await
}

/// Writes the file of the sheet that is open; it begins as it should.
async fn written(window: &Window, head: &[u8]) -> Result<String> {
    taps(window, "print-write").await?;
    window.find(&id("print-written")).await?;
    let said = window.read(&id("print-written")).await?.text;
    let path = said.split(" in ").nth(1).context("it says where")?.trim().to_owned();
    let bytes = std::fs::read(&path)?;
    ensure!(bytes.starts_with(head), "{path} begins as it should");
    Ok(said)
}

/// A room is written down with one pair of 3 kg; the table follows it, it says who takes turns, and back with her own kit
/// all is as it was.
async fn with_the_kit_of_a_room(window: &Window, folder: &Path) -> Result<()> {
    let table = "return document.querySelector('[data-testid=class]').querySelector('.scroll').innerText";
    let own = window.run(table, vec![]).await?;
    taps(window, "class-kit-new").await?;
    window.find(&id("room-kit")).await?;
    window.fill(&id("room-name"), "Studio").await?;
    taps(window, "kit-w-3-kg").await?;
    taps(window, "kit-w-3-kg").await?;
    looks(window, folder, "room-kit").await?;
    taps(window, "room-save").await?;
    window.find(&id("class-table")).await?;
    window
        .until("document.querySelector('[data-testid=class-kit-said]').innerText.includes('Studio')")
        .await?;
    let there = window.run(table, vec![]).await?;
    ensure!(there != own, "with what stands in the room another table");
    let turns = "document.querySelectorAll('[data-testid=class-turn]').length > 0";
    window.until(turns).await?;
    looks(window, folder, "room-table").await?;
    let shown = "document.querySelector('[data-testid=class-room]').scrollIntoView();";
    window.run(shown, vec![]).await?;
    looks(window, folder, "room-turns").await?;
    taps(window, "class-show").await?;
    window.find(&id("room")).await?;
    let head = window.read(&id("room-block")).await?.text;
    ensure!(head.contains("Studio"), "the view for the room says which kit: {head}");
    taps(window, "room-leave").await?;
    taps(window, "class-kit-own").await?;
    window
        .until("!document.querySelector('[data-testid=class-kit-said]').innerText.includes('Studio')")
        .await?;
    ensure!(window.run(table, vec![]).await? == own, "her own kit, her own table");
    Ok(())
}

/// A copy that is given to nobody changes nothing; given to a client, it is said what changes for her.
async fn what_would_change_is_seen_while_writing(
    window: &Window,
    folder: &Path,
    book: &Value,
    person: &str,
) -> Result<()> {
    let from = &book["programmes"][0]["programme"]["id"];
    let copy = job::ask(window, "programme_new", json!({ "title": "A copy", "from": from })).await?;
    let copy = copy.as_str().context("its id")?.to_owned();
    window.click(&id("nav-desk")).await?;
    window.click(&id("nav-planbook")).await?;
    taps(window, &format!("programme-write-{copy}")).await?;
    taps(window, "changes-open").await?;
    window.find(&id("changes-list")).await?;
    looks(window, folder, "changes-nobody").await?;
    closes_the_sheet(window).await?;
    job::ask(window, "programme_give", json!({ "person": person, "programme": copy })).await?;
    let roster = job::ask(window, "roster_view", json!({})).await?;
    let mut clients = roster["clients"].as_array().into_iter().flatten();
    let hers = clients.find(|c| c["person"] == person).context("she is a client")?;
    let name = hers["name"].as_str().context("her name")?.to_owned();
    taps(window, "changes-open").await?;
    window
        .until(&format!(
            "(document.querySelector('[data-testid=changes-list]')?.innerText ?? '').includes({name:?})"
        ))
        .await?;
    looks(window, folder, "changes").await
}

#[tokio::test]
async fn a_class_is_laid_out_shown_to_the_room_and_printed() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("together")?;
    let window = coach(scratch.path()).await?;
    let roster = job::ask(&window, "roster_view", json!({})).await?;
    let people: Vec<String> = roster["clients"]
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|c| Some(c["person"].as_str()?.to_owned()))
        .collect();
    job::ask(&window, "group_make", json!({ "name": "Monday", "members": people })).await?;
    let group = job::ask(&window, "roster_view", json!({})).await?["groups"][0]["id"].clone();
    let group = group.as_str().context("a group")?.to_owned();
    let book = job::ask(&window, "planbook_view", json!({})).await?;
    let session = book["programmes"][0]["programme"]["sessions"][0].clone();
    let session = session["id"].as_str().context("a session")?.to_owned();
    window.click(&id("nav-planbook")).await?;
    window.find(&id("planbook")).await?;
    looks(&window, &folder, "planbook").await?;
    taps(&window, &format!("together-{session}")).await?;
    window.find(&id("class")).await?;
    looks(&window, &folder, "who").await?;

    // The whole group by one tap; one of them does not come after all.
    taps(&window, &format!("class-group-{group}")).await?;
    window.find(&id("class-table")).await?;
    let rows = |count: usize| {
        format!(
            "document.querySelector('[data-testid=class-table]').querySelectorAll('tbody tr').length === {count}"
        )
    };
    window.until(&rows(people.len())).await?;
    looks(&window, &folder, "table").await?;
    let absent = people.last().context("somebody")?;
    taps(&window, &format!("class-comer-{absent}")).await?;
    window.until(&rows(people.len() - 1)).await?;

    // Fewer in the room than are needed: it is said, with the names.
    let needed = "Number(document.querySelector('[data-testid=class-room] li strong').innerText) > 1";
    ensure!(
        window.run(&format!("return {needed}"), vec![]).await? == json!(true),
        "several need the first thing"
    );
    window.fill(&id("room-have-0"), "1\n").await?;
    window.run("document.activeElement.blur()", vec![]).await?;
    window.find(&id("class-short")).await?;
    looks(&window, &folder, "short").await?;

    with_the_kit_of_a_room(&window, &folder).await?;

    // Why, in one cell; and another step for her, with a note.
    let form = json!({
        "programme": book["programmes"][0]["programme"]["id"],
        "session": session,
        "people": &people[..people.len() - 1],
    });
    let class = job::ask(&window, "class_view", json!({ "form": form })).await?;
    let trains = |row: &&Value| {
        row["proposal"]["slots"]
            .as_array()
            .is_some_and(|s| s.iter().any(|p| p["outcome"]["level"].as_u64() > Some(0)))
    };
    let row = class["rows"]
        .as_array()
        .into_iter()
        .flatten()
        .find(trains)
        .context("somebody above the first step")?;
    let slots = row["proposal"]["slots"].as_array().context("slots")?;
    let slot = slots.iter().find(|p| p["outcome"]["level"].as_u64() > Some(0)).context("a slot")?;
    let (who, where_) = (row["person"].as_str().context("hers")?, slot["slot"].as_str().context("its")?);
    let cell = format!("cell-{who}-{where_}");
    let before = window.read(&id(&cell)).await?.text;
    taps(&window, &cell).await?;
    looks(&window, &folder, "cell").await?;
    taps(&window, "cell-change").await?;
    let choose = "const field = document.querySelector(arguments[0]); field.value = arguments[1];
         field.dispatchEvent(new Event('change', { bubbles: true }));";
    window.run(choose, vec![json!(id("override-level")), json!("0")]).await?;
    window.fill(&id("override-note"), "Knees are sore today").await?;
    looks(&window, &folder, "change").await?;
    taps(&window, "override-keep").await?;
    window.until("!document.querySelector('dialog[open]')").await?;
    let after = window.read(&id(&cell)).await?.text;
    ensure!(after != before && after.contains("changed by you"), "{before} became {after}");

    // Large, for the room; the arrow keys turn the blocks; who comes late is told her first round.
    taps(&window, "class-show").await?;
    window.find(&id("room")).await?;
    let block = window.read(&id("room-block")).await?.text;
    window.key(Key::Right).await?;
    window
        .until(&format!(
            "!document.querySelector('[data-testid=room-block]').innerText.includes({:?})",
            block.lines().next().unwrap_or_default()
        ))
        .await?;
    looks(&window, &folder, "room").await?;
    taps(&window, &format!("room-late-{who}")).await?;
    window.until("document.querySelector('[data-testid=room]').innerText.includes('first round')").await?;
    looks(&window, &folder, "late").await?;
    taps(&window, "room-leave").await?;
    window.find(&id("class")).await?;

    taps(&window, "print-class").await?;
    let said = pdf(&window).await?;
    ensure!(said.contains("page"), "{said}");
    looks(&window, &folder, "printed").await?;
    closes_the_sheet(&window).await?;
    taps(&window, "class-back").await?;
    window.find(&id("planbook")).await?;

    // The sessions of a programme for a calendar: nothing is written before a day and a date are chosen.
    taps(&window, "print-calendar").await?;
    let barred = "return document.querySelector('[data-testid=print-write]').disabled";
    ensure!(window.run(barred, vec![]).await? == json!(true), "no day is chosen yet");
    let today = chrono::Local::now().date_naive().to_string();
    window.run(DATED, vec![json!(id("calendar-from")), json!(today)]).await?;
    taps(&window, "calendar-day-1").await?;
    taps(&window, "calendar-day-4").await?;
    looks(&window, &folder, "calendar").await?;
    written(&window, b"BEGIN:VCALENDAR").await?;
    closes_the_sheet(&window).await?;
    what_would_change_is_seen_while_writing(&window, &folder, &book, &people[0]).await?;
    window.close().await
}

#[tokio::test]
async fn a_client_is_printed_her_session_and_a_letter_waits_for_her_leave() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("together")?;
    let window = coach(scratch.path()).await?;
    let desk = job::ask(&window, "desk_view", json!({})).await?;
    // Somebody who trains: her page offers her next session.
    let mut open = None;
    for entry in desk["well"].as_array().into_iter().chain(desk["queue"].as_array()).flatten() {
        let view = job::ask(&window, "client_view", json!({ "person": entry["person"] })).await?;
        if view["next"]["gate"]["gate"] == "open" {
            open = entry["person"].as_str().map(str::to_owned);
            break;
        }
    }
    let person = open.context("somebody trains")?;
    window.click(&id("nav-desk")).await?;
    taps(&window, &format!("desk-entry-{person}")).await?;
    window.find(&id("story")).await?;
    taps(&window, "print-handout").await?;
    let said = pdf(&window).await?;
    ensure!(said.contains("page"), "{said}");
    closes_the_sheet(&window).await?;

    taps(&window, "print-letter").await?;
    window.fill(&id("letter-to"), "Dr Example, Surgery").await?;
    window.fill(&id("letter-question"), "May she go on as she does?").await?;
    let barred = "return document.querySelector('[data-testid=print-write]').disabled";
    ensure!(window.run(barred, vec![]).await? == json!(true), "without her leave nothing is written");
    looks(&window, &folder, "letter").await?;
    let today = chrono::Local::now().date_naive().to_string();
    window.run(DATED, vec![json!(id("letter-agreed")), json!(today)]).await?;
    window.until("!document.querySelector('[data-testid=print-write]').disabled").await?;
    let said = pdf(&window).await?;
    ensure!(said.contains("page"), "{said}");
    closes_the_sheet(&window).await?;

    // Her log as rows, with the mark that tells a spreadsheet that it is UTF-8.
    taps(&window, "print-rows").await?;
    written(&window, b"\xef\xbb\xbfDay,Time,Session").await?;
    window.close().await
}
