//! The coach's writing desk in the real window: her own cues and a picture of hers reach the client's card.

use anyhow::{Context, Result};
use fantoccini::key::Key;
use newel_tests::job::{self, id};
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Window, fit, repository, target};
use serde_json::json;

#[tokio::test]
async fn own_cues_and_a_picture_from_a_file_stand_on_the_clients_card() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("planbook")?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    // What Freya has in hand in her session.
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    let work = job::session(&window).await?["work"].clone();
    let (variant, ladder) =
        (work["variant"].as_str().unwrap_or_default(), work["ladder"].as_str().unwrap_or_default());
    let person = job::ask(&window, "train_view", json!({})).await?["person"]["person"].clone();
    // In mid-session the way to another profile is behind the pause.
    let window = window.reopen(newel_tests::Scheme::Light).await?;
    window.resize(LAPTOP).await?;
    job::ask(&window, "profile_close", json!({})).await?;
    window.client().refresh().await?;
    window.find(&id("start")).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(&window, coach).await?;
    window.click(&id("nav-planbook")).await?;
    window.click(&format!("{} summary", id(&format!("moves-{ladder}")))).await?;
    taps(&window, &format!("move-{variant}")).await?;
    // A file that is no picture is told, and nothing is lost of what was typed.
    window.fill(&id("words-cue-1"), "Long neck, soft knees").await?;
    window.fill(&id("words-picture"), &repository().join("README.md").display().to_string()).await?;
    window.until("document.querySelector('dialog[open] [role=alert]')").await?;
    let icon = repository().join("icons/icon.png");
    window.fill(&id("words-picture"), &icon.display().to_string()).await?;
    window.find(&id("words-fresh")).await?;
    window.until("!document.querySelector('dialog[open] [role=alert]')").await?;
    window.picture(folder.join("own-words.png")).await?;
    taps(&window, "words-keep").await?;
    window.until("!document.querySelector('dialog[open]')").await?;
    let own = window.read(&id(&format!("move-own-{variant}"))).await?.text;
    assert_eq!(own, "your cues and picture");
    let written = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    let plan = std::fs::read_to_string(written["path"].as_str().unwrap_or_default())?;
    assert!(plan.contains("\"version\":2") && plan.contains("\"pictures\":["));
    job::changes_profile(&window).await?;
    window.resize(PHONE).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    let text = job::ask(&window, "take_in", json!({ "files": [{ "name": "plan", "text": plan }] })).await?;
    assert_eq!(text["files"][0]["refused"], json!([]), "{text}");
    window.client().refresh().await?;
    job::moves_on(&window).await?;
    assert_eq!(window.read(&id("cue")).await?.text, "Long neck, soft knees");
    window.until("document.querySelector('[data-testid=own-picture]')?.naturalWidth > 0").await?;
    let alt =
        window.run("return document.querySelector('[data-testid=own-picture]').alt;", Vec::new()).await?;
    assert!(alt.as_str().is_some_and(|a| a.ends_with("as your coach shows it")), "{alt}");
    assert!(!window.has(&id("figure")).await?, "the picture stands in the figure's place");
    assert_eq!(window.axe().await?, Vec::new());
    window.picture(folder.join("own-card.png")).await?;
    window.close().await
}

/// A hand at the desk: what it clicks and types is counted, at the pace of a person (1.5 s for a click, 0.25 s for a key;
/// common practice, no source).
struct Hand<'w> {
    window: &'w Window,
    clicks: u32,
    keys: u32,
}

impl Hand<'_> {
    async fn clicks(&mut self, name: &str) -> Result<()> {
        self.clicks += 1;
        taps(self.window, name).await
    }

    async fn types(&mut self, text: &str) -> Result<()> {
        for key in text.chars() {
            self.keys += 1;
            let field = self.window.client().active_element().await?;
            field.send_keys(&key.to_string()).await?;
        }
        Ok(())
    }

    /// A click on a list and one on what is wanted of it.
    async fn chooses(&mut self, name: &str, value: &str) -> Result<()> {
        self.clicks += 2;
        job::chooses(self.window, name, value).await
    }

    async fn presses(&mut self, key: Key) -> Result<()> {
        self.keys += 1;
        self.window.key(key).await
    }

    fn seconds(&self) -> f64 {
        f64::from(self.clicks) * 1.5 + f64::from(self.keys) * 0.25
    }
}

async fn book(window: &Window) -> Result<serde_json::Value> {
    Ok(job::ask(window, "planbook_view", json!({})).await?["programmes"][0].clone())
}

async fn until_written(
    window: &Window,
    done: impl Fn(&serde_json::Value) -> bool,
) -> Result<serde_json::Value> {
    for _ in 0..200 {
        let seen = book(window).await?;
        if done(&seen) {
            return Ok(seen);
        }
        tokio::time::sleep(std::time::Duration::from_millis(25)).await;
    }
    anyhow::bail!("not written: {}", book(window).await?)
}

fn blocks(view: &serde_json::Value, session: usize) -> usize {
    view["programme"]["sessions"][session]["blocks"].as_array().map_or(0, Vec::len)
}

#[tokio::test]
async fn a_session_is_written_from_nothing_undone_redone_and_survives_a_crash() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("writing")?;
    let window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    job::ask(&window, "profile_new", json!({ "name": "Coach Wren", "role": "coach" })).await?;
    job::ask(
        &window,
        "client_add",
        json!({ "form": { "name": "Client Ash", "stage": null, "intake": null } }),
    )
    .await?;
    window.client().refresh().await?;
    window.find(&id("desk")).await?;
    let begun = std::time::Instant::now();
    let mut hand = Hand { window: &window, clicks: 0, keys: 0 };
    hand.clicks("nav-planbook").await?;
    hand.clicks("new-title").await?;
    hand.types("Kitchen strength").await?;
    hand.presses(Key::Enter).await?;
    window.find(&id("editor")).await?;
    hand.clicks("write-session").await?;
    let seen =
        until_written(&window, |b| b["programme"]["sessions"].as_array().map(Vec::len) == Some(1)).await?;
    let session = seen["programme"]["sessions"][0]["id"].as_str().unwrap_or_default().to_owned();
    // Moves by the beginning of their names, Enter after each, Enter once more for the block.
    hand.clicks(&format!("add-find-{session}")).await?;
    for (nth, moves) in
        [&["squ", "row", "side p"][..], &["hinge", "push"], &["carry"]].into_iter().enumerate()
    {
        for name in moves {
            hand.types(name).await?;
            hand.presses(Key::Enter).await?;
        }
        if nth == 2 {
            hand.chooses(&format!("add-part-{session}"), "finisher").await?;
            hand.clicks(&format!("add-go-{session}")).await?;
        } else {
            hand.presses(Key::Enter).await?;
        }
        until_written(&window, |b| blocks(b, 0) == nth + 1).await?;
    }
    let written = book(&window).await?;
    let forms: Vec<&str> = written["programme"]["sessions"][0]["blocks"]
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|b| b["form"].as_str())
        .collect();
    assert_eq!(forms, ["tri_set", "superset", "finisher"]);
    let (clicks, keys, seconds) = (hand.clicks, hand.keys, hand.seconds());
    println!(
        "a session: {clicks} clicks, {keys} keys, {seconds:.0} s at a person's pace, {:?} by script",
        begun.elapsed()
    );
    assert!(seconds < 300.0, "under five minutes");
    // Four weeks of it, three times a week, in two sessions of which the second has a hinge where the first has a squat.
    hand.clicks("write-per-week").await?;
    hand.presses(Key::Delete).await?;
    hand.presses(Key::Backspace).await?;
    hand.types("3").await?;
    hand.presses(Key::Tab).await?;
    hand.types("4").await?;
    hand.presses(Key::Tab).await?;
    until_written(&window, |b| b["programme"]["weeks"] == json!(4) && b["programme"]["per_week"] == json!(3))
        .await?;
    hand.clicks(&format!("session-copy-{session}")).await?;
    let two =
        until_written(&window, |b| b["programme"]["sessions"].as_array().map(Vec::len) == Some(2)).await?;
    println!(
        "four weeks of two sessions: {} clicks, {} keys, {:.0} s",
        hand.clicks,
        hand.keys,
        hand.seconds()
    );
    assert!(hand.seconds() < 300.0);
    window.picture(folder.join("written.png")).await?;
    let cut = fit::cut(&window).await?;
    assert_eq!(cut, Vec::<String>::new());
    assert_eq!(window.axe().await?, Vec::new());
    // Undone to the beginning, redone to the end.
    let mut undone = 0;
    while book(&window).await?["can_undo"] == json!(true) {
        taps(&window, "undo-edit").await?;
        undone += 1;
        tokio::time::sleep(std::time::Duration::from_millis(60)).await;
        anyhow::ensure!(undone < 50, "undoing ends");
    }
    assert_eq!(book(&window).await?["programme"]["sessions"], json!([]));
    for _ in 0..undone {
        taps(&window, "redo-edit").await?;
        tokio::time::sleep(std::time::Duration::from_millis(60)).await;
    }
    let redone = until_written(&window, |b| b["can_redo"] == json!(false)).await?;
    assert_eq!(redone["programme"]["sessions"], two["programme"]["sessions"], "byte for byte what it was");
    // The plug is pulled; all of it is there.
    let window = window.kill_and_reopen().await?;
    window.find(&id("desk")).await?;
    assert_eq!(book(&window).await?["programme"]["sessions"], two["programme"]["sessions"]);
    // Given on the Roster, it is what the plan file carries.
    let roster = job::ask(&window, "roster_view", json!({})).await?;
    let person = roster["clients"][0]["person"].clone();
    let programme = two["programme"]["id"].clone();
    assert!(
        roster["programmes"].as_array().into_iter().flatten().any(|p| p["id"] == programme),
        "it is offered"
    );
    job::ask(&window, "programme_give", json!({ "person": person, "programme": programme })).await?;
    let plan = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    let text = std::fs::read_to_string(plan["path"].as_str().unwrap_or_default())?;
    assert!(text.contains("Kitchen strength") && text.contains("\"weeks\":4"));
    window.close().await
}

#[tokio::test]
async fn a_slot_that_a_client_cannot_do_names_her_and_one_press_mends_it() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("advice")?;
    let window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    job::ask(&window, "profile_new", json!({ "name": "Coach Wren", "role": "coach" })).await?;
    job::ask(
        &window,
        "client_add",
        json!({ "form": { "name": "Client Ash", "stage": null, "intake": null } }),
    )
    .await?;
    window.client().refresh().await?;
    window.find(&id("desk")).await?;
    let mut hand = Hand { window: &window, clicks: 0, keys: 0 };
    hand.clicks("nav-planbook").await?;
    hand.clicks("new-title").await?;
    hand.types("Bars").await?;
    hand.presses(Key::Enter).await?;
    window.find(&id("editor")).await?;
    hand.clicks("write-session").await?;
    let seen =
        until_written(&window, |b| b["programme"]["sessions"].as_array().map(Vec::len) == Some(1)).await?;
    let session = seen["programme"]["sessions"][0]["id"].as_str().unwrap_or_default().to_owned();
    hand.clicks(&format!("add-find-{session}")).await?;
    hand.types("vertical").await?;
    hand.presses(Key::Enter).await?;
    hand.presses(Key::Enter).await?;
    let seen = until_written(&window, |b| blocks(b, 0) == 1).await?;
    let slot = seen["programme"]["sessions"][0]["blocks"][0]["slots"][0]["id"].as_str().unwrap_or_default();
    // She owns nothing: of a pull from above the easiest step alone is hers.
    window.until("document.querySelector('[data-testid=advice-line-lowest-kit]')").await?;
    assert!(!window.has(&id("advice-line-no-kit")).await?, "the easiest step is still allowed");
    // From step 2 on there is nothing left for her, and she is named without anything being asked.
    hand.clicks(&format!("slot-more-{slot}")).await?;
    hand.chooses(&format!("slot-from-{slot}"), "1").await?;
    let begun = std::time::Instant::now();
    window.until("document.querySelector('[data-testid=advice-line-no-kit]')").await?;
    println!("named {:?} after the change", begun.elapsed());
    let line = window.read(&id("advice-line-no-kit")).await?.text;
    assert!(line.contains("Client Ash") && line.contains("pull-up bar"), "{line}");
    let mark = window
        .run(
            "return document.querySelector(`[data-testid=slot-mark-${arguments[0]}] .unseen`).textContent;",
            vec![json!(slot)],
        )
        .await?;
    assert!(mark.as_str().is_some_and(|m| m.starts_with("One remark: ")), "{mark}");
    taps(&window, &format!("slot-mark-{slot}")).await?;
    let there = window.run("return document.activeElement.parentElement.id;", Vec::new()).await?;
    assert_eq!(there, json!(format!("advice-{slot}")), "the mark leads to what is said");
    assert_eq!(window.axe().await?, Vec::new());
    assert_eq!(fit::cut(&window).await?, Vec::<String>::new());
    window.picture(folder.join("named.png")).await?;
    hand.clicks("fix-levels").await?;
    window.until("!document.querySelector('[data-testid=advice-line-no-kit]')").await?;
    let mended = book(&window).await?;
    assert_eq!(mended["programme"]["sessions"][0]["blocks"][0]["slots"][0]["levels"], json!(null));
    // Undone, she is named again; looked through for one, the same.
    taps(&window, "undo-edit").await?;
    window.until("document.querySelector('[data-testid=advice-line-no-kit]')").await?;
    window.resize(PHONE).await?;
    assert_eq!(fit::cut(&window).await?, Vec::<String>::new());
    assert_eq!(window.axe().await?, Vec::new());
    window.picture(folder.join("named-phone.png")).await?;
    window.close().await
}
