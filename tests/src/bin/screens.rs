//! Pictures of every card and screen as they are, in four sizes, light and dark: target/screens/.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use newel_tests::job;
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Size, Window, target};
use serde_json::{Value, json};

const NARROW: Size = Size { width: 320, height: 640 };
const LANDSCAPE: Size = Size { width: 844, height: 390 };
const SIZES: [(Size, &str); 4] =
    [(PHONE, "phone"), (NARROW, "narrow"), (LANDSCAPE, "landscape"), (LAPTOP, "laptop")];

struct Album {
    folder: PathBuf,
    scheme: Scheme,
}

impl Album {
    /// A picture in each size; the window ends as a phone.
    async fn shows(&self, window: &Window, name: &str) -> Result<()> {
        for (size, device) in SIZES.into_iter().rev() {
            window.resize(size).await?;
            // A card's way in is over, and the new size has been laid out and painted.
            tokio::time::sleep(std::time::Duration::from_millis(350)).await;
            window
                .run(
                    "window.painted = false;
                     requestAnimationFrame(() => requestAnimationFrame(() => { window.painted = true; }));",
                    Vec::new(),
                )
                .await?;
            window.until("window.painted").await?;
            tokio::time::sleep(std::time::Duration::from_millis(150)).await;
            let file = format!("{name}-{device}-{}.png", self.scheme.name());
            window.picture(self.folder.join(&file)).await?;
            println!("wrote target/screens/{file}");
        }
        Ok(())
    }
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("screens")?;
    for scheme in Scheme::BOTH {
        let scratch = tempfile::tempdir()?;
        let album = Album { folder: folder.clone(), scheme };
        let window = Window::open(Opening::new(scratch.path()).scheme(scheme).size(PHONE)).await?;
        album.shows(&window, "start").await?;
        let profiles = job::makes_the_demo(&window).await?;
        album.shows(&window, "people").await?;
        client(&window, &album, &profiles).await?;
        stopped(&window, &album, &profiles).await?;
        coach(&window, &album, &profiles, scratch.path()).await?;
        window.close().await?;
    }
    Ok(())
}

async fn client(window: &Window, album: &Album, profiles: &[Value]) -> Result<()> {
    job::opens(window, job::named(profiles, "Freya")?).await?;
    job::until_card(window, "ready").await?;
    album.shows(window, "ready").await?;
    window.click(&job::id("begin")).await?;
    job::until_card(window, "check-in").await?;
    album.shows(window, "check-in").await?;
    window.click(&job::id("check-in-back")).await?;
    job::begins_a_session(window).await?;
    album.shows(window, "block").await?;
    job::moves_on(window).await?;
    album.shows(window, "work-timed").await?;
    job::logs_the_set(window, 3).await?;
    job::moves_on(window).await?;
    album.shows(window, "work").await?;
    window.click(&job::id("more")).await?;
    // The sheet alone: it closes when the window changes its size.
    tokio::time::sleep(std::time::Duration::from_millis(350)).await;
    window.picture(album.folder.join(format!("more-phone-{}.png", album.scheme.name()))).await?;
    window.run("document.querySelector('dialog[open]')?.close();", Vec::new()).await?;
    job::logs_the_set(window, 3).await?;
    job::until_card(window, "rest").await?;
    album.shows(window, "rest").await?;
    job::moves_on(window).await?;
    window.click(&job::id("feel")).await?;
    job::until_card(window, "mark").await?;
    album.shows(window, "mark").await?;
    window.click(&job::id("kind-heaviness")).await?;
    window.click(&job::id("amount-clearly")).await?;
    job::until_said(window).await?;
    album.shows(window, "mark-said").await?;
    window.click(&job::id("mark-go")).await?;
    window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    job::trains_the_rest(window).await?;
    album.shows(window, "finish").await?;
    job::finishes(window, 4, "").await?;
    album.shows(window, "finished").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&job::id(&format!("nav-{screen}"))).await?;
        window.find(&job::id(screen)).await?;
        album.shows(window, screen).await?;
    }
    job::changes_profile(window).await
}

async fn stopped(window: &Window, album: &Album, profiles: &[Value]) -> Result<()> {
    job::opens(window, job::named(profiles, "Selin")?).await?;
    job::until_card(window, "stop").await?;
    album.shows(window, "stop").await?;
    job::changes_profile(window).await
}

async fn coach(window: &Window, album: &Album, profiles: &[Value], _data: &Path) -> Result<()> {
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(window, coach).await?;
    window.find(&job::id("desk-take-in")).await?;
    album.shows(window, "desk").await?;
    let desk = job::ask(window, "desk_view", json!({})).await?;
    let queue = desk["queue"].as_array().cloned().unwrap_or_default();
    let with_hold = queue
        .iter()
        .find(|e| e["findings"].as_array().is_some_and(|f| f.iter().any(|f| f["code"] == "hold-waits")));
    let entry = with_hold.or(queue.first()).context("somebody is on the Desk")?;
    let person = entry["person"].as_str().unwrap_or_default();
    window.resize(LAPTOP).await?;
    window.click(&job::id(&format!("desk-entry-{person}"))).await?;
    window.find(&job::id("story")).await?;
    album.shows(window, "story").await?;
    for screen in ["roster", "planbook", "send"] {
        window.click(&job::id(&format!("nav-{screen}"))).await?;
        window.find(&job::id(screen)).await?;
        let name = if screen == "send" { "send-coach" } else { screen };
        album.shows(window, name).await?;
    }
    Ok(())
}
