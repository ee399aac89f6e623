//! Three walks as people are: in a hurry, with one free hand, and at 34 weeks with heaviness in round two.

use anyhow::{Context, Result, ensure};
use newel_engine::catalogue::{Catalogue, Place, Position};
use newel_engine::ids::VariantId;
use newel_tests::job::{self, id};
use newel_tests::{Opening, PHONE, Window, fit, target};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

async fn opened(scratch: &tempfile::TempDir, who: &str) -> Result<Window> {
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    job::opens(&window, job::named(&profiles, who)?).await?;
    Ok(window)
}

/// A picture once what moved in has come to rest.
async fn seen(window: &Window, folder: &Path, name: &str) -> Result<()> {
    fit::settled(window).await?;
    tokio::time::sleep(std::time::Duration::from_millis(200)).await;
    window.picture(folder.join(format!("{name}.png"))).await
}

/// Two taps as fast as a finger makes them, on what is there at the first.
async fn double(window: &Window, name: &str) -> Result<()> {
    window.find(&id(name)).await?;
    let script =
        "const node = document.querySelector(arguments[0]); node.click(); node.click(); node.click();";
    window.run(script, vec![json!(id(name))]).await?;
    Ok(())
}

#[tokio::test]
async fn in_a_hurry_every_tap_is_made_twice_and_nothing_is_logged_twice() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    job::until_card(&window, "ready").await?;
    double(&window, "begin").await?;
    job::until_card(&window, "check-in").await?;
    if window.has(&id("next-day-settled")).await? {
        double(&window, "next-day-settled").await?;
        window.until(&format!("!document.querySelector('{}')", id("next-day-settled"))).await?;
    }
    window.click(&id("readiness-usual")).await?;
    window.click(&id("since-none")).await?;
    double(&window, "start").await?;
    job::until_card(&window, "block").await?;
    let runs = |view: &Value| view["sessions"].as_array().map_or(0, Vec::len);
    let before = job::ask(&window, "path_view", json!({})).await?;
    let mut taps = 0;
    loop {
        match job::card(&window).await?.as_str() {
            "block" => double(&window, "block-go").await?,
            "rest" => double(&window, "rest-go").await?,
            "work" => {
                let done = job::done(&job::session(&window).await?);
                let tap = if window.has(&id("log-done")).await? { "log-done" } else { "reserve-3" };
                double(&window, tap).await?;
                taps += 1;
                for _ in 0..200 {
                    if job::done(&job::session(&window).await?) > done {
                        break;
                    }
                    tokio::time::sleep(std::time::Duration::from_millis(20)).await;
                }
                assert_eq!(job::done(&job::session(&window).await?), done + 1, "three taps, one set");
            }
            "finish" => break,
            other => anyhow::bail!("{other} was not expected"),
        }
        tokio::time::sleep(std::time::Duration::from_millis(60)).await;
        ensure!(taps < 60, "a session ends");
    }
    double(&window, "finish").await?;
    job::until_card(&window, "finished").await?;
    let after = job::ask(&window, "path_view", json!({})).await?;
    assert_eq!(runs(&after), runs(&before), "one session, begun once and ended once");
    let sets = after["sessions"][0]["sets"].as_array().map_or(0, Vec::len);
    assert_eq!(sets, taps, "as many sets as were meant");
    window.close().await
}

/// Where a tap lies, as shares of the screen from its upper left corner.
async fn place(window: &Window, name: &str) -> Result<(f64, f64)> {
    window.find(&id(name)).await?;
    let found = window
        .run(
            "const box = document.querySelector(arguments[0]).getBoundingClientRect();
             return [(box.left + box.width / 2) / innerWidth, (box.top + box.height / 2) / innerHeight];",
            vec![json!(id(name))],
        )
        .await?;
    Ok((found[0].as_f64().context("across")?, found[1].as_f64().context("down")?))
}

#[tokio::test]
async fn with_one_hand_all_that_a_set_asks_for_lies_under_the_thumb() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = opened(&scratch, "Freya").await?;
    let mut high = Vec::new();
    // The upper two fifths are out of a thumb's reach on a phone held in one hand (common practice, no source).
    let mut reach = async |window: &Window, card: &str, names: &[&str]| -> Result<()> {
        for name in names {
            let (_, down) = place(window, name).await?;
            if !(0.4..=1.0).contains(&down) {
                high.push(format!("{card}: {name} at {down:.2}"));
            }
        }
        Ok(())
    };
    job::until_card(&window, "ready").await?;
    reach(&window, "ready", &["begin"]).await?;
    job::begins_a_session(&window).await?;
    reach(&window, "block", &["block-go", "feel"]).await?;
    job::moves_on(&window).await?;
    reach(&window, "timed work", &["timer-start", "log-done", "feel", "skip"]).await?;
    job::logs_the_set(&window, 3).await?;
    job::moves_on(&window).await?;
    let work = [
        "count-less",
        "count-more",
        "load-less",
        "reserve-0",
        "reserve-5",
        "undo-last",
        "feel",
        "easier",
        "skip",
    ];
    reach(&window, "work", &work).await?;
    let right = place(&window, "feel").await?.0;
    job::logs_the_set(&window, 3).await?;
    job::until_card(&window, "rest").await?;
    reach(&window, "rest", &["undo", "rest-go", "rest-more", "feel"]).await?;
    // In the left hand the marker changes its side; what was logged stays where it is.
    window.click(&id("more")).await?;
    newel_tests::tour::taps(&window, "suits-hand-left").await?;
    newel_tests::tour::closes_the_sheet(&window).await?;
    job::moves_on(&window).await?;
    let left = place(&window, "feel").await?.0;
    assert!(
        right < 0.5 && left > 0.5,
        "the marker lies under the thumb of either hand: {right:.2}, {left:.2}"
    );
    assert_eq!(high, Vec::<String>::new());
    window.close().await
}

#[tokio::test]
async fn at_34_weeks_heaviness_in_round_two_makes_it_easier_at_once_and_next_time() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder: PathBuf = target("walks/heaviness")?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    // A coach's own client, 34 weeks and 0 days today.
    let due = chrono::Local::now().date_naive() + chrono::Days::new(42);
    let stage = json!({ "stage": "pregnant", "due": due.to_string(),
        "told": { "who": "midwife", "on": null }, "last_period": null, "conceived": null });
    let intake =
        json!({ "conditions": [], "baselines": [], "trained": true, "note": null, "instead_of": [] });
    job::ask(&window, "profile_new", json!({ "name": "Coach Wren", "role": "coach" })).await?;
    let form = json!({ "name": "Client Ash", "stage": stage, "intake": intake });
    let roster = job::ask(&window, "client_add", json!({ "form": form })).await?;
    let person = roster["clients"][0]["person"].clone();
    let programme = roster["programmes"][0]["id"].clone();
    job::ask(&window, "programme_give", json!({ "person": person, "programme": programme })).await?;
    let plan = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    let text = std::fs::read_to_string(plan["path"].as_str().unwrap_or_default())?;
    job::ask(&window, "profile_from_plan", json!({ "text": text })).await?;
    let weights: Vec<Value> = [2.0, 4.0, 6.0, 8.0]
        .map(|kg| json!({ "weight": { "value": kg, "unit": "kg" }, "pair": true }))
        .into();
    let kit = json!({ "dumbbells": weights, "barbell": null, "bands": [], "things": ["bench"] });
    job::ask(&window, "kit_save", json!({ "kit": kit })).await?;
    window.client().refresh().await?;
    job::until_card(&window, "ready").await?;
    seen(&window, &folder, "1-ready").await?;
    let said = window.read(&id("card-ready")).await?.text;
    assert!(said.contains("34 weeks"), "{said}");
    // No option flat on the back is in today's session (ACOG CO 804, SOGC/CSEP 2019 by the rule pack).
    let view = job::ask(&window, "train_view", json!({})).await?;
    let catalogue = Catalogue::built_in()?;
    let slots = view["state"]["slots"].as_array().cloned().unwrap_or_default();
    let proposed: Vec<_> = slots
        .iter()
        .filter_map(|s| catalogue.place(&VariantId::from(s["outcome"]["variant"].as_str()?)))
        .collect();
    ensure!(proposed.len() > 3, "options are proposed: {slots:?}");
    let on_the_back = |p: &Place<'_>| p.variant.position == Position::Supine;
    assert!(!proposed.iter().any(on_the_back), "{slots:?}");
    let has_such = |p: &Place<'_>| {
        p.ladder.levels.iter().flat_map(|l| &l.variants).any(|v| v.position == Position::Supine)
    };
    assert!(
        proposed.iter().any(has_such),
        "a ladder that has one is among them, so that something was left out"
    );
    job::begins_a_session(&window).await?;
    let mut round_two = Value::Null;
    while job::moves_on(&window).await? {
        let session = job::session(&window).await?;
        if session["work"]["round"] == json!(2) {
            round_two = session["work"].clone();
            break;
        }
        job::logs_the_set(&window, 3).await?;
    }
    seen(&window, &folder, "2-round-two").await?;
    window.click(&id("feel")).await?;
    job::until_card(&window, "mark").await?;
    seen(&window, &folder, "3-marked").await?;
    window.click(&id("kind-heaviness")).await?;
    window.click(&id("amount-clearly")).await?;
    job::until_said(&window).await?;
    seen(&window, &folder, "4-what-follows").await?;
    let follows = window.read(&id("card-mark")).await?.text;
    assert!(follows.to_lowercase().contains("midwife"), "whom to ask is said: {follows}");
    window.click(&id("mark-go")).await?;
    window.until("!document.querySelector('[data-testid=card-mark]')").await?;
    seen(&window, &folder, "5-then").await?;
    let now = job::session(&window).await?;
    // The set in hand is on an easier step, or, from the lowest, on another ladder.
    let (level, before) = (now["work"]["level"].as_u64(), round_two["level"].as_u64());
    let same = now["work"]["ladder"] == round_two["ladder"];
    assert!(!same || level < before, "{now}");
    job::trains_the_rest(&window).await?;
    job::finishes(&window, 4, "").await?;
    seen(&window, &folder, "6-finished").await?;
    let next = window.read(&id("card-finished")).await?.text;
    assert!(next.contains("Heaviness"), "{next}");
    window.close().await
}
