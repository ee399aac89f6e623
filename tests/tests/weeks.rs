//! A programme of weeks and phases written in the real window, dragged about, and trained by a client.

use anyhow::{Context, Result, ensure};
use fantoccini::actions::{InputSource, MouseActions, PointerAction};
use newel_tests::job::{self, chooses, id};
use newel_tests::looks::looks;
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Window, fit, target};
use serde_json::{Value, json};
use std::time::Duration;

async fn programme(window: &Window) -> Result<Value> {
    Ok(job::ask(window, "planbook_view", json!({})).await?["programmes"][0].clone())
}

async fn until(window: &Window, what: &str, done: impl Fn(&Value) -> bool) -> Result<Value> {
    for _ in 0..200 {
        let seen = programme(window).await?;
        if done(&seen["programme"]) {
            return Ok(seen);
        }
        tokio::time::sleep(Duration::from_millis(25)).await;
    }
    anyhow::bail!("{what}: {}", programme(window).await?)
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

/// Writes a number into a field and leaves it.
async fn sets(window: &Window, name: &str, number: u32) -> Result<()> {
    window.find(&id(name)).await?;
    let script = "const f = document.querySelector(arguments[0]); f.focus(); f.value = arguments[1]; \
                  f.dispatchEvent(new Event('change', { bubbles: true }));";
    window.run(script, vec![json!(id(name)), json!(number.to_string())]).await?;
    Ok(())
}

/// Drags one thing by its grip to the upper part of another, as a hand does.
async fn drags(window: &Window, grip: &str, onto: &str) -> Result<()> {
    let script = "const [grip, onto] = [arguments[0], arguments[1]].map((q) => document.querySelector(q));
        // Both in view, below what stands still at the top.
        const first = grip.getBoundingClientRect().top < onto.getBoundingClientRect().top ? grip : onto;
        first.scrollIntoView({ block: 'start' });
        document.getElementById('content').scrollBy(0, -90);
        const [a, b] = [grip.getBoundingClientRect(), onto.getBoundingClientRect()];
        return [a.left + a.width / 2, a.top + a.height / 2, b.left + b.width / 2, b.top + b.height / 4];";
    let at = window.run(script, vec![json!(id(grip)), json!(id(onto))]).await?;
    let at: Vec<f64> = at.as_array().context("places")?.iter().filter_map(Value::as_f64).collect();
    let at: Vec<f64> = at.into_iter().map(f64::round).collect();
    let [x, y, to_x, to_y] = at[..] else { anyhow::bail!("four numbers") };
    let middle = (((x + to_x) / 2.0).round(), ((y + to_y) / 2.0).round());
    let go = |x: f64, y: f64| PointerAction::MoveTo { duration: Some(Duration::from_millis(80)), x, y };
    let mouse = MouseActions::new("hand".to_owned())
        .then(go(x, y))
        .then(PointerAction::Down { button: fantoccini::actions::MOUSE_BUTTON_LEFT })
        .then(go(middle.0, middle.1))
        .then(go(to_x, to_y))
        .then(go(to_x, to_y + 1.0))
        .then(PointerAction::Up { button: fantoccini::actions::MOUSE_BUTTON_LEFT });
    window
        .client()
        .perform_actions(mouse)
        .await
        .with_context(|| format!("dragging {grip} {x} {y} {to_x} {to_y}"))?;
    Ok(())
}

#[tokio::test]
async fn weeks_phases_light_weeks_and_a_warm_up_are_written_dragged_and_trained() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("weeks")?;
    let window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    let profiles = job::makes_the_demo(&window).await?;
    let coach = profiles.iter().find(|p| p["role"] == "coach").context("a coach")?;
    job::opens(&window, coach).await?;
    window.click(&id("nav-planbook")).await?;
    window.fill(&id("new-title"), "Twelve weeks").await?;
    taps(&window, "new-go").await?;
    window.find(&id("editor")).await?;
    sets(&window, "write-weeks", 6).await?;
    taps(&window, "write-session").await?;
    let seen =
        until(&window, "a session", |p| p["sessions"].as_array().is_some_and(|s| s.len() == 1)).await?;
    let session = text(&seen["programme"]["sessions"][0]["id"]);
    let adds = async |moves: &[&str], part: &str| -> Result<()> {
        for name in moves {
            window.fill(&id(&format!("add-find-{session}")), name).await?;
            window.key(fantoccini::key::Key::Enter).await?;
        }
        chooses(&window, &format!("add-part-{session}"), part).await?;
        taps(&window, &format!("add-go-{session}")).await
    };
    // The warm-up is added last and stands first all the same; the cool-down stays at the end.
    adds(&["squat", "row"], "work").await?;
    adds(&["upper"], "cool_down").await?;
    adds(&["hinge"], "work").await?;
    adds(&["ankle"], "warm_up").await?;
    let seen = until(&window, "four blocks", |p| {
        p["sessions"][0]["blocks"].as_array().is_some_and(|b| b.len() == 4)
    })
    .await?;
    let blocks = seen["programme"]["sessions"][0]["blocks"].clone();
    let forms: Vec<String> = blocks.as_array().into_iter().flatten().map(|b| text(&b["form"])).collect();
    assert_eq!(forms, ["warm_up", "superset", "straight_sets", "cool_down"]);
    let (pair, hinge) = (text(&blocks[1]["id"]), text(&blocks[2]["id"]));

    // The doses rise, the fourth week is light, and the second has a round more.
    window.click(&format!("{} summary", id(&format!("step-up-{session}")))).await?;
    taps(&window, &format!("step-go-{session}")).await?;
    until(&window, "rising", |p| {
        p["sessions"][0]["blocks"][2]["slots"][0]["by_week"].as_array().is_some_and(|w| w.len() == 5)
    })
    .await?;
    taps(&window, "week-4").await?;
    taps(&window, "week-light").await?;
    until(&window, "a light week", |p| p["light_weeks"] == json!([4])).await?;
    taps(&window, "week-2").await?;
    sets(&window, &format!("block-rounds-{pair}"), 4).await?;
    let seen =
        until(&window, "four rounds", |p| p["sessions"][0]["blocks"][1]["by_week"] != json!(null)).await?;
    let block = &seen["programme"]["sessions"][0]["blocks"][1];
    assert_eq!(
        (&block["rounds"], &block["by_week"][0]["rounds"]),
        (&json!(3), &json!(4)),
        "in that week alone"
    );
    let shown = window.run(
        "return [document.querySelector(arguments[0]).value, document.querySelector(arguments[1]).value];",
        vec![
            json!(id(&format!("block-rounds-{pair}"))),
            json!(id(&format!("slot-low-{}", text(&block["slots"][0]["id"])))),
        ],
    );
    assert_eq!(shown.await?, json!(["4", "9"]), "the week in view is what the fields say");
    looks(&window, &folder, "week").await?;
    let script = "document.querySelector(arguments[0]).scrollIntoView({ block: 'center' });";
    for (size, called) in [(PHONE, "phone"), (LAPTOP, "laptop")] {
        window.resize(size).await?;
        window.run(script, vec![json!(id(&format!("block-{pair}")))]).await?;
        fit::settled(&window).await?;
        tokio::time::sleep(Duration::from_millis(200)).await;
        window.picture(folder.join(format!("block-{called}.png"))).await?;
    }
    taps(&window, &format!("block-usual-{pair}")).await?;
    until(&window, "as every week", |p| {
        p["sessions"][0]["blocks"][1]["slots"][0]["by_week"].as_array().is_some_and(|w| w.len() == 4)
    })
    .await?;
    taps(&window, "week-every").await?;

    // By the grip: the row to the hinge, then the hinge block before the pair.
    let row = text(&block["slots"][1]["id"]);
    let stands = text(&blocks[2]["slots"][0]["id"]);
    drags(&window, &format!("grip-{row}"), &format!("slot-{stands}")).await?;
    let seen = until(&window, "the row moved", |p| {
        p["sessions"][0]["blocks"][2]["slots"].as_array().is_some_and(|s| s.len() == 2)
    })
    .await?;
    let slots = &seen["programme"]["sessions"][0]["blocks"][2]["slots"];
    assert_eq!(text(&slots[0]["id"]), row, "before the hinge, where it was let go");
    drags(&window, &format!("grip-{hinge}"), &format!("block-{pair}")).await?;
    until(&window, "the block moved", |p| text(&p["sessions"][0]["blocks"][1]["id"]) == hinge).await?;

    // Two phases: the second a copy of the first, then shorter.
    taps(&window, "phase-add").await?;
    let seen = until(&window, "a phase", |p| p["phases"].as_array().is_some_and(|p| p.len() == 1)).await?;
    let first = text(&seen["programme"]["phases"][0]["id"]);
    taps(&window, &format!("phase-copy-{first}")).await?;
    let seen = until(&window, "two phases", |p| p["weeks"] == json!(12)).await?;
    let second = text(&seen["programme"]["phases"][1]["id"]);
    taps(&window, &format!("phase-open-{second}")).await?;
    sets(&window, &format!("phase-weeks-{second}"), 3).await?;
    let seen = until(&window, "nine weeks", |p| p["weeks"] == json!(9)).await?;
    assert_eq!(
        seen["programme"]["phases"][1]["light_weeks"],
        json!(null),
        "a week that is no more is not light"
    );
    looks(&window, &folder, "phases").await?;
    ensure!(programme(&window).await?["whole"] == json!(true), "it can be given");

    // Given to a client, her Train says where she is, and the warm-up comes first.
    let id_of = seen["programme"]["id"].clone();
    job::changes_profile(&window).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    let person = job::ask(&window, "train_view", json!({})).await?["person"]["person"].clone();
    job::changes_profile(&window).await?;
    job::opens(&window, coach).await?;
    job::ask(&window, "programme_give", json!({ "person": person, "programme": id_of })).await?;
    let written = job::ask(&window, "plan_write", json!({ "person": person, "path": null })).await?;
    let plan = std::fs::read_to_string(written["path"].as_str().unwrap_or_default())?;
    assert!(plan.contains("\"version\":4") && plan.contains("\"phases\":["));
    job::changes_profile(&window).await?;
    window.resize(PHONE).await?;
    job::opens(&window, job::named(&profiles, "Freya")?).await?;
    let taken = job::ask(&window, "take_in", json!({ "files": [{ "name": "plan", "text": plan }] })).await?;
    assert_eq!(taken["files"][0]["refused"], json!([]), "{taken}");
    window.client().refresh().await?;
    job::until_card(&window, "ready").await?;
    let ready = job::ask(&window, "train_view", json!({})).await?;
    let state = &ready["state"];
    assert_eq!((&state["week"], &state["phase"]), (&json!(1), &json!("Phase 1")), "{state}");
    looks(&window, &folder, "ready").await?;
    window.resize(PHONE).await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    let work = job::session(&window).await?["work"].clone();
    assert_eq!(work["purpose"], json!("ease"), "{work}");
    looks(&window, &folder, "warm-up").await?;
    window.close().await
}
