//! The coach's writing desk in the real window: her own cues and a picture of hers reach the client's card.

use anyhow::{Context, Result};
use newel_tests::job::{self, id};
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Window, repository, target};
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
