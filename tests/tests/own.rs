//! The coach's own ladders and moves in the real window: a move from a copy, a ladder from nothing, in a client's plan, on
//! her card.

use anyhow::{Context, Result};
use newel_tests::job::{self, id};
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Window, target};
use serde_json::{Value, json};

/// Chooses an option of a list, as a person does.
async fn chooses(window: &Window, name: &str, value: &str) -> Result<()> {
    window
        .run(
            "const list = document.querySelector(`[data-testid='${arguments[0]}']`);
             list.value = arguments[1];
             list.dispatchEvent(new Event('change', { bubbles: true }));",
            vec![json!(name), json!(value)],
        )
        .await?;
    Ok(())
}

async fn until_closed(window: &Window) -> Result<()> {
    window.until("!document.querySelector('dialog[open]')").await
}

/// What of the coach's own has a name, as `words_view` lists it.
async fn named(window: &Window, name: &str) -> Result<Value> {
    let ladders = job::ask(window, "words_view", json!({})).await?;
    let all = ladders.as_array().into_iter().flatten();
    let levels = all.flat_map(|l| l["levels"].as_array().into_iter().flatten());
    let moves = levels.flat_map(|l| l.as_array().into_iter().flatten());
    let found = moves.map(|m| m["yours"].clone()).find(|m| m["name"] == name && m["retired"] == false);
    found.with_context(|| format!("{name} is there"))
}

async fn looks(window: &Window, folder: &std::path::Path, name: &str) -> Result<()> {
    window.picture(folder.join(format!("{name}.png"))).await?;
    assert_eq!(window.axe().await?, Vec::new(), "{name}");
    Ok(())
}

#[tokio::test]
async fn a_move_from_a_copy_and_a_ladder_from_nothing_reach_the_clients_card() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("own")?;
    let window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    job::ask(&window, "profile_new", json!({ "name": "Coach Wren", "role": "coach" })).await?;
    let client = json!({ "form": { "name": "Client Ash", "stage": null, "intake": null } });
    let roster = job::ask(&window, "client_add", client).await?;
    let person = roster["clients"][0]["person"].clone();
    window.client().refresh().await?;
    window.find(&id("desk")).await?;
    window.click(&id("nav-planbook")).await?;

    // Like one that is there: the copy is offered first, so that a name is all that is missing.
    window.click(&format!("{} summary", id("moves-hinge"))).await?;
    looks(&window, &folder, "moves-laptop").await?;
    taps(&window, "own-add-hinge-1").await?;
    window.find(&id("own-name")).await?;
    assert!(
        window.run("return document.querySelector('[data-testid=own-keep]').disabled;", vec![]).await?
            == json!(true)
    );
    window.fill(&id("own-name"), "Hinge at the kitchen counter").await?;
    looks(&window, &folder, "copy-laptop").await?;
    window.resize(PHONE).await?;
    window.picture(folder.join("copy-phone.png")).await?;
    window.click(&format!("{} summary", id("own-words"))).await?;
    window.fill(&id("own-cue-1"), "Push the counter away").await?;
    looks(&window, &folder, "copy-words-phone").await?;
    taps(&window, "own-keep").await?;
    until_closed(&window).await?;
    let copy = named(&window, "Hinge at the kitchen counter").await?;
    assert_eq!(copy["cues"][0], json!("Push the counter away"), "{copy}");
    assert_eq!(
        (&copy["ladder"], &copy["level"], &copy["like"]),
        (&json!("hinge"), &json!(0), &json!("hinge-wall-tap"))
    );
    assert_eq!(copy["cautions"].as_object().map(serde_json::Map::len), Some(6), "every question is answered");

    // A ladder from nothing, in the dark, with a step above it.
    let window = window.reopen(Scheme::Dark).await?;
    window.click(&id("nav-planbook")).await?;
    taps(&window, "own-new").await?;
    window.fill(&id("own-ladder"), "Kitchen stairs").await?;
    chooses(&window, "own-pattern", "single_leg").await?;
    window.fill(&id("own-name"), "Stair walk").await?;
    window.find(&id("own-open")).await?;
    for caution in ["one_sided", "wrist", "midline", "overhead", "impact", "pelvic_hold"] {
        chooses(&window, &format!("own-mind-{caution}"), "no").await?;
    }
    window.until("!document.querySelector('[data-testid=own-open]')").await?;
    looks(&window, &folder, "ladder-laptop-dark").await?;
    window.resize(PHONE).await?;
    looks(&window, &folder, "ladder-phone-dark").await?;
    taps(&window, "own-keep").await?;
    until_closed(&window).await?;
    let walk = named(&window, "Stair walk").await?;
    let ladder = walk["ladder"].as_str().context("a ladder")?.to_owned();
    window.click(&format!("{} summary", id(&format!("moves-{ladder}")))).await?;
    taps(&window, &format!("own-above-{ladder}")).await?;
    window.fill(&id("own-name"), "Stair walk, two steps").await?;
    taps(&window, "own-keep").await?;
    until_closed(&window).await?;
    assert_eq!(named(&window, "Stair walk, two steps").await?["level"], json!(1));
    looks(&window, &folder, "moves-phone-dark").await?;
    window.resize(LAPTOP).await?;
    looks(&window, &folder, "moves-laptop-dark").await?;

    // Put away and taken out again; then changed.
    let walk_id = walk["id"].as_str().context("an id")?.to_owned();
    taps(&window, &format!("move-{walk_id}")).await?;
    looks(&window, &folder, "move-laptop-dark").await?;
    taps(&window, "own-away").await?;
    until_closed(&window).await?;
    taps(&window, &format!("move-{walk_id}")).await?;
    taps(&window, "own-away").await?;
    until_closed(&window).await?;
    taps(&window, &format!("move-{walk_id}")).await?;
    taps(&window, "own-change").await?;
    window.fill(&id("own-name"), "Stair walk, hand on the rail").await?;
    assert!(!window.has(&id("own-another")).await?, "a name makes no other move of it");
    taps(&window, "own-keep").await?;
    until_closed(&window).await?;
    assert_eq!(named(&window, "Stair walk, hand on the rail").await?["id"], json!(walk_id));
    window.until("document.body.textContent.includes('Stair walk, hand on the rail')").await?;

    // Into a programme, into a plan, onto her phone.
    let programme = job::ask(&window, "programme_new", json!({ "title": "Stairs", "from": null })).await?;
    let edit = |edit: Value| json!({ "programme": programme, "edit": edit });
    let book = job::ask(&window, "programme_edit", edit(json!({ "edit": "add_session", "title": "Monday" })))
        .await?;
    let session = book["programmes"][0]["programme"]["sessions"][0]["id"].clone();
    let block = json!({ "edit": "add_block", "session": session, "ladders": [ladder], "part": "work" });
    job::ask(&window, "programme_edit", edit(block)).await?;
    job::ask(&window, "programme_give", json!({ "person": person, "programme": programme })).await?;
    let written = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    let plan = std::fs::read_to_string(written["path"].as_str().unwrap_or_default())?;
    assert!(plan.contains("\"version\":4") && !plan.contains("kitchen counter"), "what it uses and no more");
    job::ask(&window, "profile_from_plan", json!({ "text": plan })).await?;
    window.resize(PHONE).await?;
    window.client().refresh().await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    let heading = window.run("return document.querySelector('h1').textContent;", vec![]).await?;
    assert_eq!(heading, json!("Stair walk, hand on the rail"));
    looks(&window, &folder, "card-phone-dark").await?;
    window.close().await
}
