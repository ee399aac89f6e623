//! axe-core on every screen and card, light and dark: no serious or critical violation.

use anyhow::{Context, Result};
use newel_tests::job;
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Window};

async fn clean(window: &Window, what: &str, scheme: Scheme) -> Result<()> {
    let found = window.axe().await?;
    assert!(found.is_empty(), "{what}, {}: {found:?}", scheme.name());
    Ok(())
}

#[tokio::test]
async fn the_clients_cards_and_screens_are_clean() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let mut window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    clean(&window, "start", Scheme::Light).await?;
    let profiles = job::makes_the_demo(&window).await?;
    let client = job::named(&profiles, "Amara")?;
    job::opens(&window, client).await?;
    for scheme in Scheme::BOTH {
        if scheme == Scheme::Dark {
            // The profile that was open last opens again.
            window = window.reopen(scheme).await?;
            window.resize(PHONE).await?;
        } else {
            job::until_card(&window, "ready").await?;
            clean(&window, "ready", scheme).await?;
            job::begins_a_session(&window).await?;
        }
        let mut seen = std::collections::BTreeSet::new();
        for _ in 0..12 {
            let card = job::card(&window).await?;
            if seen.insert(card.clone()) {
                clean(&window, &card, scheme).await?;
            }
            match card.as_str() {
                "work" => job::logs_the_set(&window, 3).await?,
                "finish" => break,
                _ => {
                    job::moves_on(&window).await?;
                }
            }
        }
        assert!(seen.contains("work") && seen.contains("rest"), "{seen:?}");
        job::moves_on(&window).await?;
        window.click(&job::id("more")).await?;
        clean(&window, "more", scheme).await?;
        window.run("document.querySelector('dialog[open]')?.close();", Vec::new()).await?;
        window.click(&job::id("feel")).await?;
        job::until_card(&window, "mark").await?;
        clean(&window, "mark", scheme).await?;
        window.click(&job::id("mark-undo")).await?;
        window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    }
    while job::moves_on(&window).await? {
        job::logs_the_set(&window, 3).await?;
    }
    clean(&window, "finish", Scheme::Dark).await?;
    job::finishes(&window, 3, "").await?;
    clean(&window, "finished", Scheme::Dark).await?;
    for scheme in Scheme::BOTH {
        window = window.reopen(scheme).await?;
        window.resize(PHONE).await?;
        job::until_card(&window, "finished").await?;
        clean(&window, "finished", scheme).await?;
        for screen in ["path", "kit", "send"] {
            window.click(&job::id(&format!("nav-{screen}"))).await?;
            window.find(&job::id(screen)).await?;
            clean(&window, screen, scheme).await?;
        }
    }
    window.close().await
}

#[tokio::test]
async fn the_coachs_screens_and_the_stop_card_are_clean() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let mut window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    clean(&window, "profiles", Scheme::Light).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(&window, coach).await?;
    for scheme in Scheme::BOTH {
        if scheme == Scheme::Dark {
            window = window.reopen(scheme).await?;
            window.resize(LAPTOP).await?;
        }
        window.find(&job::id("desk-take-in")).await?;
        clean(&window, "desk", scheme).await?;
        window.click("[data-testid^=\"desk-entry-\"]").await?;
        window.find(&job::id("story")).await?;
        clean(&window, "story", scheme).await?;
        for screen in ["roster", "planbook", "send"] {
            window.click(&job::id(&format!("nav-{screen}"))).await?;
            window.find(&job::id(screen)).await?;
            clean(&window, screen, scheme).await?;
        }
        window.click(&job::id("nav-desk")).await?;
    }
    job::changes_profile(&window).await?;
    window.resize(PHONE).await?;
    job::opens(&window, job::named(&profiles, "Selin")?).await?;
    for scheme in Scheme::BOTH {
        window = window.reopen(scheme).await?;
        window.resize(PHONE).await?;
        job::until_card(&window, "stop").await?;
        clean(&window, "stop", scheme).await?;
    }
    window.close().await
}
