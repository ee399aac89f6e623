//! How soon Roster and Desk stand with hundreds of clients, and whether typing into the search drops frames.
//!
//!     python3 tests/python/crowd.py FOLDER/logs 300
//!     newel take-in --db FOLDER/data/profiles/crowd/newel.db FOLDER/logs/*.json
//!     crowd FOLDER/data
//!
//! The first start after a take-in has to work everything out, as the first of a day has; the second remembers. With
//! `NEWEL_WINDOW` another build of the window is measured by the same program.

use anyhow::{Context, Result};
use newel_tests::job::{self, id};
use newel_tests::{LAPTOP, Opening, Window};
use serde_json::json;
use std::time::Instant;

/// Milliseconds that a command takes, from the page and back.
async fn command(window: &Window, name: &str) -> Result<f64> {
    let begun = Instant::now();
    let answer = job::ask(window, name, json!({})).await?;
    let ms = begun.elapsed().as_secs_f64() * 1000.0;
    println!("{name}: {ms:.0} ms, {} bytes", answer.to_string().len());
    Ok(ms)
}

/// So many lines fill a laptop's window.
const FULL: u32 = 12;

/// From a click on a way to a screen until the frame that shows its first line, and until a windowful stands.
async fn screen(window: &Window, name: &str, line: &str, lines: u32) -> Result<()> {
    let script = "const [way, line, lines] = arguments;
         const begun = performance.now(), at = {};
         window.at = at;
         const look = () => {
             const count = document.querySelectorAll(line).length, now = performance.now() - begun;
             if (count > 0) at.first ??= now;
             if (count >= lines) at.all ??= now;
             if (at.all === undefined) requestAnimationFrame(look);
         };
         document.querySelector(way).click();
         requestAnimationFrame(look);";
    let arguments = vec![json!(id(&format!("nav-{name}"))), json!(line), json!(lines)];
    window.run(script, arguments).await?;
    window.until_for("window.at.all !== undefined", 60).await?;
    let at = window.run("return window.at;", Vec::new()).await?;
    println!(
        "{name}: first line after {:.0} ms, {lines} after {:.0} ms",
        at["first"].as_f64().context("a time")?,
        at["all"].as_f64().context("a time")?
    );
    Ok(())
}

/// Opens the window; says how long after its page began to load the first line of the Desk stands, and the whole of it.
async fn start(data: &str, which: &str) -> Result<Window> {
    let window = Window::open(Opening::new(data).size(LAPTOP)).await?;
    window.until_for("document.querySelector('[data-testid^=desk-entry-]')", 120).await?;
    let since = "return performance.now();";
    let first = window.run(since, Vec::new()).await?.as_f64().context("a time")?;
    window.until_for("!document.querySelector('[data-testid=desk-reading]')", 120).await?;
    let whole = window.run(since, Vec::new()).await?.as_f64().context("a time")?;
    println!(
        "{which}: the Desk's first line stands {first:.0} ms after the page began to load, the whole {whole:.0}"
    );
    Ok(window)
}

/// Median, 90th percentile and longest of times in milliseconds.
fn shares(times: &serde_json::Value) -> String {
    let times = times.as_array().into_iter().flatten();
    let mut times: Vec<f64> = times.filter_map(serde_json::Value::as_f64).collect();
    if times.is_empty() {
        return "none".to_owned();
    }
    times.sort_by(f64::total_cmp);
    let at = |share: f64| times[((times.len() - 1) as f64 * share).round() as usize];
    format!("median {:.0} ms, 90th percentile {:.0}, longest {:.0}", at(0.5), at(0.9), at(1.0))
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let data = std::env::args().nth(1).context("the data folder")?;
    std::fs::write(std::path::Path::new(&data).join("last-profile"), "crowd")?;
    start(&data, "first start").await?.close().await?;
    let window = start(&data, "second start").await?;
    let roster = job::ask(&window, "roster_view", json!({})).await?;
    let clients = u32::try_from(roster["clients"].as_array().map_or(0, Vec::len))?;
    println!("{clients} clients");
    for name in ["roster_view", "desk_view", "roster_view", "desk_view"] {
        command(&window, name).await?;
    }
    let full = FULL.min(clients);
    // Until the first client's story stands beside the list.
    tokio::time::sleep(std::time::Duration::from_secs(4)).await;
    for _ in 0..3 {
        screen(&window, "roster", "[data-testid=roster] > details", full).await?;
        screen(&window, "desk", "[data-testid^=desk-entry-]", 1).await?;
    }
    screen(&window, "roster", "[data-testid=roster] > details", full).await?;
    // Until nothing is drawn any more.
    tokio::time::sleep(std::time::Duration::from_secs(2)).await;
    // A key every 120 ms: what each costs in script and layout, and the times between frames meanwhile; and for
    // comparison the times between frames while nothing happens, which no list can better.
    let script = "const [at, typed] = arguments, field = document.querySelector(at), keys = [...typed];
         const gaps = [], work = []; let last = performance.now(), on = true; window.typed = undefined;
         const tick = (now) => { gaps.push(now - last); last = now; if (on) requestAnimationFrame(tick); };
         requestAnimationFrame((now) => { last = now; requestAnimationFrame(tick); });
         const type = async () => {
             const key = keys.shift();
             if (key === undefined) { on = false; window.typed = { gaps, work }; return; }
             if (key !== '.') {
                 const begun = performance.now();
                 field.value = key === '<' ? field.value.slice(0, -1) : field.value + key;
                 field.dispatchEvent(new Event('input', { bubbles: true }));
                 await Promise.resolve();
                 document.body.getBoundingClientRect();
                 work.push(performance.now() - begun);
             }
             setTimeout(type, 120);
         };
         setTimeout(type, 300);";
    for (what, keys) in [("while nothing is typed", "................"), ("while typing", "chloe 01<<<<<<<<")]
    {
        window.run(script, vec![json!(id("roster-find")), json!(keys)]).await?;
        window.until_for("window.typed !== undefined", 30).await?;
        let typed = window.run("return window.typed;", Vec::new()).await?;
        println!("frames {what}: {}", shares(&typed["gaps"]));
        println!("   script and layout of a key: {}", shares(&typed["work"]));
    }
    window.close().await
}
