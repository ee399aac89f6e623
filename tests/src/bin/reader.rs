//! What a screen reader is told on a work card and on the card that stops training: target/reader/.
//!
//! It needs a session bus with AT-SPI on it; `cargo xtask reader` starts one.

use anyhow::{Context, Result, ensure};
use newel_tests::job;
use newel_tests::{Opening, PHONE, Window, repository, target};
use std::process::Command;

fn told() -> Result<String> {
    // The system's own Python: the bindings of AT-SPI come with it and with no other.
    let done = Command::new("/usr/bin/python3")
        .arg(repository().join("tests/python/reader.py"))
        .output()
        .context("python3 (Debian: apt-get install python3-gi gir1.2-atspi-2.0)")?;
    let words = String::from_utf8_lossy(&done.stderr).into_owned();
    ensure!(done.status.success(), "{words}");
    Ok(String::from_utf8_lossy(&done.stdout).into_owned())
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("reader")?;
    let scratch = tempfile::tempdir()?;
    let opening = Opening::new(scratch.path()).size(PHONE).environment("NO_AT_BRIDGE", "0");
    let window = Window::open(opening).await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    job::moves_on(&window).await?;
    let keep = async |name: &str| -> Result<()> {
        // The bus is told of a new card a moment after the page has drawn it.
        tokio::time::sleep(std::time::Duration::from_millis(800)).await;
        let words = told()?;
        ensure!(words.lines().count() > 5, "a reader would be told next to nothing: {words}");
        std::fs::write(folder.join(format!("{name}.txt")), &words)?;
        println!("--- {name} ---\n{words}");
        Ok(())
    };
    keep("work").await?;
    job::logs_the_set(&window, 3).await?;
    job::until_card(&window, "rest").await?;
    keep("rest").await?;
    job::moves_on(&window).await?;
    window.click(&job::id("feel")).await?;
    job::until_card(&window, "mark").await?;
    window.click(&job::id("kinds-urgent")).await?;
    window.click(&job::id("kind-chest-pain")).await?;
    job::until_card(&window, "stop").await?;
    keep("stop").await?;
    window.close().await
}
