//! The coach's Roster and plan files in the real window: a group of three, a programme for it from a day on, a revision
//! that is read before it is sent, all files in one folder with a receipt; one client archived and brought back.

use anyhow::{Context, Result, ensure};
use newel_tests::job::{self, id};
use newel_tests::looks::looks;
use newel_tests::tour::{closes_the_sheet, taps};
use newel_tests::{LAPTOP, Opening, Window, target};
use serde_json::{Value, json};

const NAMES: [&str; 5] = ["Amélie Ash", "Bren Oak", "Chloé Elm", "Dora Fir", "Eda Yew"];

fn person<'r>(roster: &'r Value, name: &str) -> Result<&'r str> {
    let clients = roster["clients"].as_array().into_iter().chain(roster["archived"].as_array()).flatten();
    let found = clients.into_iter().find(|c| c["name"] == name);
    found.and_then(|c| c["person"].as_str()).with_context(|| format!("{name} is a client"))
}

#[tokio::test]
async fn a_group_gets_a_programme_a_revision_is_read_first_and_all_files_lie_in_one_folder() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let folder = target("roster")?;
    let window = Window::open(Opening::new(scratch.path()).size(LAPTOP)).await?;
    job::ask(&window, "profile_new", json!({ "name": "Coach Wren", "role": "coach" })).await?;
    for name in NAMES {
        let form = json!({ "name": name, "stage": null, "intake": null });
        job::ask(&window, "client_add", json!({ "form": form })).await?;
    }
    let roster = job::ask(&window, "roster_view", json!({})).await?;
    let from = roster["programmes"][0]["id"].clone();
    let programme = job::ask(&window, "programme_new", json!({ "title": "Kitchen", "from": from })).await?;
    let kitchen = programme.as_str().context("an id")?.to_owned();
    window.client().refresh().await?;

    // A group of three, found by typing, without accents.
    window.click(&id("nav-roster")).await?;
    window.find(&id("roster")).await?;
    window.click(&id("roster-groups")).await?;
    taps(&window, "group-new").await?;
    window.fill(&id("group-name"), "Monday").await?;
    for name in [NAMES[2], NAMES[0], NAMES[1]] {
        let who = person(&roster, name)?;
        let typed = name.split(' ').next().unwrap_or_default().replace('é', "e").to_lowercase();
        window.fill(&id("group-find"), &typed).await?;
        window.until("document.querySelectorAll('[data-testid^=group-add-]').length === 1").await?;
        taps(&window, &format!("group-add-{who}")).await?;
    }
    taps(&window, &format!("group-up-{}", person(&roster, NAMES[1])?)).await?;
    looks(&window, &folder, "group").await?;
    taps(&window, "group-keep").await?;
    window.find(&id("group-new")).await?;
    let roster = job::ask(&window, "roster_view", json!({})).await?;
    let group = roster["groups"][0].clone();
    assert_eq!(group["name"], "Monday");
    let members = [person(&roster, NAMES[2])?, person(&roster, NAMES[1])?, person(&roster, NAMES[0])?];
    assert_eq!(group["members"], json!(members), "in her order");
    closes_the_sheet(&window).await?;

    // Found by name and by group; what came of it is told.
    window.fill(&id("roster-find"), "chloe").await?;
    window.until("document.querySelectorAll('[data-testid=roster] > details').length === 1").await?;
    assert_eq!(window.read(&id("roster-count")).await?.text, "1 of 5 in view");
    taps(&window, "filter-clear").await?;
    window.until("document.querySelectorAll('[data-testid=roster] > details').length === 5").await?;

    // A programme for the group, from a day on.
    let group = group["id"].as_str().context("an id")?.to_owned();
    taps(&window, "roster-give").await?;
    window.find(&id("give-programme")).await?;
    let choose = "const field = document.querySelector(arguments[0]); field.value = arguments[1];
         field.dispatchEvent(new Event(arguments[2], { bubbles: true }));";
    let chosen = |name: &str, value: &str, event: &str| vec![json!(id(name)), json!(value), json!(event)];
    window.run(choose, chosen("give-programme", &kitchen, "change")).await?;
    let begins = chrono::Local::now().date_naive() + chrono::Days::new(10);
    window.run(choose, chosen("give-begins", &begins.to_string(), "input")).await?;
    taps(&window, &format!("give-group-{group}")).await?;
    looks(&window, &folder, "give").await?;
    taps(&window, "give-keep").await?;
    window.until("!document.querySelector('dialog[open]')").await?;
    window
        .until("document.querySelector('[data-testid=roster-said]').innerText.includes('3 clients')")
        .await?;
    looks(&window, &folder, "roster").await?;

    // All that are due: first plans are written at once.
    window.click(&id("nav-send")).await?;
    taps(&window, "plans-due").await?;
    window.find(&id("receipt")).await?;
    let text = window.read(&id("receipt")).await?.text;
    ensure!(text.contains("3 files") && text.contains("Her first plan"), "{text}");

    // Written on: the preview says what changes for whom, and nothing is written before the yes.
    let book = job::ask(&window, "planbook_view", json!({})).await?;
    let own = book["programmes"].as_array().into_iter().flatten().find(|p| p["programme"]["id"] == programme);
    let sessions = own.context("hers")?["programme"]["sessions"].clone();
    let slots = sessions[0]["blocks"].as_array().into_iter().flatten();
    let slot = slots
        .flat_map(|b| b["slots"].as_array().into_iter().flatten())
        .find(|s| s["dose"]["amount"]["by"] == "reps" && s["dose"]["amount"]["low"].as_u64() > Some(5))
        .context("a slot with reps")?["id"]
        .clone();
    let edit = json!({ "edit": "amount_of_slot", "slot": slot, "low": 4, "high": 5 });
    job::ask(&window, "programme_edit", json!({ "programme": programme, "edit": edit })).await?;
    window.client().refresh().await?;
    window.click(&id("nav-send")).await?;
    taps(&window, "plans-due").await?;
    window.find(&id("plans-preview")).await?;
    let text = window.read(&id("plans-preview")).await?.text;
    ensure!(NAMES[..3].iter().all(|n| text.contains(n)) && !text.contains(NAMES[3]), "{text}");
    ensure!(text.contains("4 – 5 reps, were"), "{text}");
    let plans = scratch.path().join("files").join(format!("plans-{}", chrono::Local::now().date_naive()));
    let files = || -> Result<Vec<String>> {
        let all = std::fs::read_dir(&plans)?.map(|f| Ok(f?.file_name().to_string_lossy().into_owned()));
        let mut all = all.collect::<Result<Vec<_>>>()?;
        all.sort_unstable();
        Ok(all)
    };
    assert_eq!(files()?.len(), 4, "three files and a receipt: {:?}", files()?);
    looks(&window, &folder, "preview").await?;
    taps(&window, "plans-go").await?;
    window.find(&id("receipt")).await?;
    looks(&window, &folder, "receipt").await?;
    let all = files()?;
    assert_eq!(all.iter().filter(|f| f.ends_with("-plan-2.newel.json")).count(), 3, "{all:?}");
    let receipts: Vec<&String> = all.iter().filter(|f| f.starts_with("receipt-")).collect();
    assert_eq!(receipts.len(), 2, "{all:?}");
    let last = std::fs::read_to_string(plans.join(receipts[1]))?;
    ensure!(last.contains("4 – 5 reps") && last.contains("no programme was given"), "{last}");

    // One leaves the Roster and the Desk, and comes back whole.
    let dora = person(&roster, NAMES[3])?;
    window.click(&id("nav-roster")).await?;
    window.click(&format!("{} summary", id(&format!("client-{dora}")))).await?;
    looks(&window, &folder, "open").await?;
    taps(&window, "client-archive").await?;
    window.until("document.querySelectorAll('[data-testid=roster] > details').length === 4").await?;
    let desk = job::ask(&window, "desk_view", json!({})).await?;
    ensure!(!desk.to_string().contains(NAMES[3]), "she is not on the Desk");
    taps(&window, "roster-archived").await?;
    window.click(&format!("{} summary", id(&format!("client-{dora}")))).await?;
    looks(&window, &folder, "archived").await?;
    taps(&window, "client-archive").await?;
    window.until("document.querySelectorAll('[data-testid=roster] > details').length === 5").await?;
    window.close().await
}
