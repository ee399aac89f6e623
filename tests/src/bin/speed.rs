//! How soon the next card stands after a set is logged, and how soon the first card stands after a start.
//!
//! `NEWEL_EMPTY_WINDOW` names the same shell built over an empty page, to have something to hold the start against.

use anyhow::{Context, Result, ensure};
use newel_tests::job::{self, id};
use newel_tests::{Opening, PHONE, Window};
use std::time::Instant;

const STARTS: usize = 10;

fn spread(name: &str, unit: &str, mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    let at = |share: f64| values[((values.len() - 1) as f64 * share).round() as usize];
    println!(
        "{name}: median {:.1} {unit}, 90th percentile {:.1}, least {:.1}, most {:.1} ({} times)",
        at(0.5),
        at(0.9),
        at(0.0),
        at(1.0),
        values.len()
    );
    at(0.5)
}

/// From the answer of the core, which comes once the set is on the disk, to the next card in the page and to the frame
/// that shows it.
async fn taps(window: &Window) -> Result<()> {
    window
        .run(
            "window.seen = [];
             const before = window.fetch;
             window.fetch = async (...asked) => {
                 const logs = String(asked[0]?.url ?? asked[0]).endsWith('/set_log');
                 const answer = await before(...asked);
                 if (logs) {
                     const body = answer.json.bind(answer), at = {};
                     answer.json = async () => { const read = await body(); at.committed = performance.now(); return read; };
                     window.seen.push(at);
                     const card = document.querySelector('[data-testid^=card-]');
                     const watch = new MutationObserver(() => {
                         const now = document.querySelector('[data-testid^=card-]');
                         if (now === card || at.card) return;
                         at.card = performance.now();
                         watch.disconnect();
                         requestAnimationFrame(() => { at.frame = performance.now(); });
                     });
                     watch.observe(document.body, { childList: true, subtree: true });
                 }
                 return answer;
             };
             window.addEventListener('click', () => { window.tapped = performance.now(); }, true);",
            Vec::new(),
        )
        .await?;
    let (mut commit, mut card, mut frame) = (Vec::new(), Vec::new(), Vec::new());
    while job::moves_on(window).await? {
        let kept = window.run("return window.seen.length;", Vec::new()).await?;
        job::logs_the_set(window, 3).await?;
        window.until(&format!("window.seen.length > {kept} && window.seen.at(-1).frame")).await?;
        let at = window.run("return { ...window.seen.at(-1), tapped: window.tapped };", Vec::new()).await?;
        let ms = |from: &str, to: &str| -> Result<f64> {
            Ok(at[to].as_f64().context("a time")? - at[from].as_f64().context("a time")?)
        };
        commit.push(ms("tapped", "committed")?);
        card.push(ms("committed", "card")?);
        frame.push(ms("committed", "frame")?);
    }
    ensure!(card.len() > 5, "sets were logged");
    spread("tap until the set is on the disk and told", "ms", commit);
    spread("from then until the next card is in the page", "ms", card);
    spread("from then until the frame that shows it", "ms", frame);
    Ok(())
}

/// From the start of the program, with the driver before it, until something is there.
async fn opens(opening: &Opening, there: &str) -> Result<f64> {
    let begun = Instant::now();
    let window = Window::open(opening.clone()).await?;
    window.until(there).await?;
    let ms = begun.elapsed().as_secs_f64() * 1000.0;
    window.close().await?;
    Ok(ms)
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    if std::env::args().any(|word| word == "--empty") {
        let opening = Opening::new(scratch.path()).size(PHONE);
        println!("{}", opens(&opening, "document.readyState === 'complete'").await?);
        return Ok(());
    }
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    job::begins_a_session(&window).await?;
    taps(&window).await?;
    job::finishes(&window, 4, "").await?;
    window.click(&id("onward")).await?;
    job::begins_a_session(&window).await?;
    window.close().await?;

    // In mid-session with twelve weeks of log behind her: the first card is the one in hand.
    let ours = Opening::new(scratch.path()).size(PHONE);
    let empty = std::env::var("NEWEL_EMPTY_WINDOW").ok();
    let (mut card, mut page) = (Vec::new(), Vec::new());
    for _ in 0..STARTS {
        card.push(opens(&ours, "document.querySelector('[data-testid^=card-]')").await?);
        if let Some(empty) = &empty {
            let status = std::process::Command::new(std::env::current_exe()?)
                .arg("--empty")
                .env("NEWEL_WINDOW", empty)
                .output()?;
            ensure!(status.status.success(), "the empty window: {}", String::from_utf8_lossy(&status.stderr));
            page.push(String::from_utf8_lossy(&status.stdout).trim().parse::<f64>()?);
        }
    }
    let card = spread("start until the first card", "ms", card);
    if !page.is_empty() {
        let page = spread("start of the same shell over an empty page", "ms", page);
        println!("ratio of the medians: {:.2}", card / page);
    }
    Ok(())
}
