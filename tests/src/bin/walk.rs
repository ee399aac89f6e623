//! The main job in the real window, without a display: a session trained, a symptom tapped in mid-set, the next
//! proposal read, the log written, taken in by the coach, the Desk read. Pictures and files stay in target/walk/.

use std::path::{Path, PathBuf};
use std::time::Instant;

use anyhow::{Context, Result};
use newel_tests::job;
use newel_tests::{LAPTOP, Opening, PHONE, Window, target};
use serde_json::json;

/// Takes numbered pictures and says what was done.
struct Album {
    folder: PathBuf,
    count: u32,
    begun: Instant,
}

impl Album {
    async fn shows(&mut self, window: &Window, name: &str, said: &str) -> Result<()> {
        self.count += 1;
        let file = format!("{:02}-{name}.png", self.count);
        window.picture(self.folder.join(&file)).await?;
        println!("[{:>4.0} s] {said}  (target/walk/{file})", self.begun.elapsed().as_secs_f64());
        Ok(())
    }

    fn says(&self, said: &str) {
        println!("[{:>4.0} s] {said}", self.begun.elapsed().as_secs_f64());
    }
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("walk")?;
    let data = folder.join("data");
    let mut album = Album { folder: folder.clone(), count: 0, begun: Instant::now() };
    let window = Window::open(Opening::new(&data).size(PHONE)).await?;
    album.shows(&window, "start", "opened the window at 390 by 844").await?;
    let profiles = job::makes_the_demo(&window).await?;
    album.shows(&window, "people", &format!("made the demo: {} invented people", profiles.len())).await?;

    let (window, log) = trains(window, &profiles, &mut album).await?;
    job::changes_profile(&window).await?;
    reviews(&window, &profiles, &log, &mut album).await?;
    window.close().await?;
    album.says("done; target/walk/ holds the pictures, target/walk/data/files/ the files");
    Ok(())
}

/// The client's part: a session with a symptom in mid-set and a dead battery, then her log.
async fn trains(
    window: Window,
    profiles: &[serde_json::Value],
    album: &mut Album,
) -> Result<(Window, PathBuf)> {
    let client = profiles
        .iter()
        .find(|p| p["role"] == "client" && p["about"].as_str().is_some_and(|a| a.contains("third")))
        .or_else(|| profiles.iter().find(|p| p["role"] == "client"))
        .context("a client is among the people")?;
    job::opens(&window, client).await?;
    job::until_card(&window, "ready").await?;
    album.shows(&window, "ready", "a client of the demo: what today holds").await?;
    job::begins_a_session(&window).await?;
    let mut pictured = std::collections::BTreeSet::new();
    let mut sets = 0;
    let mut marked = false;
    let mut window = window;
    loop {
        let card = job::card(&window).await?;
        if pictured.insert(card.clone()) {
            album.shows(&window, &card, &format!("the {card} card")).await?;
        }
        if card == "finish" {
            break;
        }
        if card != "work" {
            job::moves_on(&window).await?;
            continue;
        }
        if sets == 4 && !marked {
            marked = true;
            job::marks(&window, "heaviness", "clearly").await?;
            album.shows(&window, "mark", "something felt off in mid-set: heaviness, clearly").await?;
            window.click(&job::id("mark-go")).await?;
            window.until("!document.querySelector('[data-testid=card-mark]')").await?;
            if job::card(&window).await? == "work" {
                album.shows(&window, "easier", "the easier option, at once").await?;
            }
            continue;
        }
        job::logs_the_set(&window, 3).await?;
        sets += 1;
        if sets == 2 {
            let before = job::done(&job::session(&window).await?);
            window = window.kill_and_reopen().await?;
            window.until("document.querySelector('[data-testid^=\"card-\"]')").await?;
            let after = job::done(&job::session(&window).await?);
            album
                .shows(&window, "back", &format!("kill -9 after a set: {before} sets before, {after} after"))
                .await?;
        }
    }
    job::finishes(&window, 4, "A long day, but fine").await?;
    album.shows(&window, "finished", &format!("{sets} sets logged; what comes next, and why")).await?;
    window.click(&job::id("nav-path")).await?;
    window.find(&job::id("path")).await?;
    album.shows(&window, "path", "her path").await?;
    window.click(&job::id("nav-kit")).await?;
    window.find(&job::id("kit")).await?;
    album.shows(&window, "kit", "her kit").await?;
    let log = job::writes_the_log(&window).await?;
    album.shows(&window, "send", &format!("the log file is written: {}", name_of(&log))).await?;
    Ok((window, log))
}

/// The coach's part on a laptop: the log taken in, the Desk read, a note sent back.
async fn reviews(
    window: &Window,
    profiles: &[serde_json::Value],
    log: &Path,
    album: &mut Album,
) -> Result<()> {
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("the coach is among the people")?;
    window.resize(LAPTOP).await?;
    job::opens(window, coach).await?;
    window.find(&job::id("desk-take-in")).await?;
    album.shows(window, "desk", "the coach's Desk at 1280 by 800").await?;
    let report = job::takes_in(window, "desk-take-in", log).await?;
    album.shows(window, "report", &format!("took the log in: {}", report.replace('\n', ", "))).await?;
    let desk = job::ask(window, "desk_view", json!({})).await?;
    for entry in desk["queue"].as_array().into_iter().flatten() {
        let codes: Vec<&str> =
            entry["findings"].as_array().into_iter().flatten().filter_map(|f| f["code"].as_str()).collect();
        album.says(&format!("Desk: {}: {}", entry["name"].as_str().unwrap_or_default(), codes.join(", ")));
    }
    let first = desk["queue"][0]["person"].as_str().context("somebody is on the Desk")?.to_owned();
    window.click(&job::id(&format!("desk-entry-{first}"))).await?;
    window.find(&job::id("story")).await?;
    album.shows(window, "story", "one client's story").await?;
    for screen in ["roster", "planbook", "send"] {
        window.click(&job::id(&format!("nav-{screen}"))).await?;
        window.find(&job::id(screen)).await?;
        album.shows(window, screen, &format!("the coach's {screen}")).await?;
    }
    Ok(())
}

fn name_of(path: &Path) -> String {
    path.file_name().unwrap_or_default().to_string_lossy().into_owned()
}
