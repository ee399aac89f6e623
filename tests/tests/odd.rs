//! First and odd moments in the real window: a plan file and nothing else, no plan, a programme that is over, two sessions in
//! a day, one left halfway yesterday, a missed week, a disk that takes nothing, another time zone, very long names.

use anyhow::{Context, Result, ensure};
use chrono::{DateTime, Duration, FixedOffset, Timelike as _, Utc};
use newel_app::Newel;
use newel_app::views::{
    CheckInForm, ClientForm, FinishForm, IntakeForm, Role, SetForm, TrainState, TrainView,
};
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::record::{NextDay, Readiness, Reserve};
use newel_engine::stage::Stage;
use newel_engine::units::Weight;
use newel_exchange::PlanDocument;
use newel_tests::job::{self, id};
use newel_tests::tour::taps;
use newel_tests::{LAPTOP, Opening, PHONE, Size, Window, fit, target};
use serde_json::json;
use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};

const NARROW: Size = Size { width: 320, height: 640 };

/// A zone in which it is around noon now, so that no test comes upon midnight: its offset and its name for `TZ`, in which
/// POSIX counts the sign the other way.
fn noon() -> (FixedOffset, String) {
    let east = 12 - i32::try_from(Utc::now().hour()).unwrap_or(12);
    let offset = FixedOffset::east_opt(east * 3600).unwrap_or_else(|| unreachable!("within half a day"));
    (offset, format!("Etc/GMT{:+}", -east))
}

fn now() -> DateTime<FixedOffset> {
    Utc::now().with_timezone(&noon().0)
}

/// The window on a phone, in the zone where it is noon.
fn opening(data: &Path) -> Opening {
    Opening::new(data).size(PHONE).environment("TZ", &noon().1)
}

/// A plan file of a coach's for a client who has had a birth 30 weeks ago, changed as a test wants it.
fn plan(
    coach: &str,
    name: &str,
    at: DateTime<FixedOffset>,
    change: impl Fn(&mut PlanDocument),
) -> Result<String> {
    let folder = tempfile::tempdir()?;
    let mut newel = Newel::open(folder.path().to_owned())?;
    newel.profile_new(coach, Role::Coach, at)?;
    let birth = at.date_naive() - Duration::weeks(30);
    let stage = serde_json::from_value::<Stage>(
        json!({ "stage": "postpartum", "birth": birth, "mode": "vaginal", "severe_tear": false }),
    )?;
    let form = ClientForm { name: name.to_owned(), stage: Some(stage), intake: Some(IntakeForm::default()) };
    let out = newel.out_folder();
    let profile = newel.profile()?;
    let roster = profile.client_add(at, form)?;
    let (person, programme) = (roster.clients[0].person, roster.programmes[0].id);
    profile.programme_give(at, person, programme)?;
    let written = profile.plan_write(&out, None, at, person)?;
    let mut document = newel_exchange::read_plan(&std::fs::read(written.path)?)?;
    change(&mut document);
    Ok(String::from_utf8(newel_exchange::write_plan(&document)?)?)
}

/// A client's data as it would be had she trained at these times: each session whole, or its first sets alone.
fn trained(
    data: &Path,
    plan: &str,
    begun: DateTime<FixedOffset>,
    sessions: &[(DateTime<FixedOffset>, Option<usize>)],
) -> Result<()> {
    let mut newel = Newel::open(data.to_owned())?;
    newel.profile_from_plan(plan, begun)?;
    let dumbbells = [4.0, 6.0, 8.0].map(|kg| Dumbbell { weight: Weight::in_kg(kg), pair: true }).to_vec();
    let profile = newel.profile()?;
    profile.kit_save(begun, Kit { dumbbells, ..Kit::default() })?;
    for (start, sets) in sessions {
        let mut at = *start;
        if let TrainState::Ready(ready) = profile.train_view(at)?.state
            && let Some(asked) = ready.next_day
        {
            profile.next_day_answer(at, asked.run, NextDay::Settled, Vec::new())?;
        }
        let mut view = profile.session_begin(at, CheckInForm::of(Readiness::Usual, Vec::new()))?;
        let mut done = 0;
        while let Some(form) = in_hand(&view) {
            if sets.is_some_and(|sets| done >= sets) {
                break;
            }
            at += Duration::seconds(60);
            view = profile.set_log(at, form)?;
            done += 1;
        }
        if sets.is_none() {
            let TrainState::Session(session) = &view.state else { anyhow::bail!("a session is under way") };
            let (run, note) = (session.run, None);
            let form = FinishForm { run, effort: Some(4), minutes: Some(30), note, stopped_at: None };
            profile.session_finish(at, form)?;
        }
    }
    Ok(())
}

fn in_hand(view: &TrainView) -> Option<SetForm> {
    let TrainState::Session(session) = &view.state else { return None };
    let work = session.work.as_ref()?;
    Some(SetForm {
        run: session.run,
        slot: work.slot.clone(),
        round: work.round,
        side: work.side,
        variant: work.variant.clone(),
        load: work.load.clone(),
        done: work.target,
        reserve: work.asks_effort.then_some(Reserve::Exactly(3)),
    })
}

/// Looked at on a phone and kept as a picture: clean, nothing cut, large enough.
async fn holds(window: &Window, name: &str) -> Result<()> {
    let folder = target(&format!("odd/{name}"))?;
    for (size, text) in [(PHONE, ""), (NARROW, ""), (PHONE, "200%"), (LAPTOP, "")] {
        window.resize(size).await?;
        fit::text_size(window, text).await?;
        window.picture(folder.join(format!("{}{text}.png", size.width))).await?;
        let cut = fit::cut(window).await?;
        ensure!(cut.is_empty(), "{name} at {} {text}: {cut:?}", size.width);
        let small = fit::too_small(window).await?;
        ensure!(small.is_empty(), "{name} at {} {text}: {small:?}", size.width);
    }
    window.resize(PHONE).await?;
    fit::text_size(window, "").await?;
    let broken = window.axe().await?;
    ensure!(broken.is_empty(), "{name}: {broken:?}");
    Ok(())
}

#[tokio::test]
async fn from_a_plan_file_to_the_first_set_in_six_taps() -> Result<()> {
    let (scratch, files) = (tempfile::tempdir()?, tempfile::tempdir()?);
    let file = files.path().join("my-plan.newel.json");
    std::fs::write(&file, plan("Wren", "Ash", now(), |_| ())?)?;
    let window = Window::open(opening(scratch.path())).await?;
    window.find(&id("start")).await?;
    let begun = std::time::Instant::now();
    window.fill(&id("start-plan"), &file.display().to_string()).await?;
    job::until_card(&window, "ready").await?;
    holds(&window, "first-ready").await?;
    for name in ["begin", "readiness-usual", "since-none", "start", "block-go"] {
        window.click(&id(name)).await?;
    }
    job::until_card(&window, "work").await?;
    // The file and five taps: each could take her nine seconds, and it would still be under a minute.
    println!("plan file to first set: {:?} by script with four looks", begun.elapsed());
    window.picture(target("odd/first-set")?.join("390.png")).await?;
    window.close().await
}

#[tokio::test]
async fn without_a_plan_every_screen_says_what_to_do() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(opening(scratch.path())).await?;
    window.click(&id("start-role-client")).await?;
    window.fill(&id("start-name"), "Ash").await?;
    taps(&window, "start-go").await?;
    job::until_card(&window, "no-plan").await?;
    holds(&window, "no-plan").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&id(&format!("nav-{screen}"))).await?;
        window.find(&id(screen)).await?;
        holds(&window, &format!("empty-{screen}")).await?;
    }
    window.close().await
}

#[tokio::test]
async fn a_programme_that_is_over_says_so_and_goes_round_once_more() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::days(9);
    let short = plan("Wren", "Ash", begun, |p| {
        if let Some(programme) = &mut p.programme {
            programme.weeks = Some(1);
            programme.per_week = 2;
        }
    })?;
    trained(scratch.path(), &short, begun, &[(begun, None), (now() - Duration::days(5), None)])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::until_card(&window, "ready").await?;
    let said = window.read(&id("programme-over")).await?.text;
    assert!(said.contains("its week is trained") && said.contains("Send your log"), "{said}");
    holds(&window, "programme-over").await?;
    job::begins_a_session(&window).await?;
    window.close().await
}

#[tokio::test]
async fn a_second_session_on_one_day_is_possible_and_a_day_between_is_named() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::hours(1);
    trained(scratch.path(), &plan("Wren", "Ash", begun, |_| ())?, begun, &[(begun, None)])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::until_card(&window, "finished").await?;
    taps(&window, "onward").await?;
    job::until_card(&window, "ready").await?;
    assert!(window.read(&id("trained-today")).await?.text.contains("a day between"));
    holds(&window, "second-session").await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    let path = job::ask(&window, "path_view", json!({})).await?;
    assert_eq!(path["sessions"].as_array().map(Vec::len), Some(2), "two sessions, each on its own");
    window.close().await
}

#[tokio::test]
async fn what_was_left_halfway_yesterday_is_kept_and_today_goes_on_with_the_next() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::hours(25);
    trained(scratch.path(), &plan("Wren", "Ash", begun, |_| ())?, begun, &[(begun, Some(3))])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::until_card(&window, "ready").await?;
    let said = window.read(&id("left-open")).await?.text;
    assert!(said.starts_with("Left halfway: yesterday.") && said.contains("3 sets are kept"), "{said}");
    holds(&window, "left-halfway").await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    let path = job::ask(&window, "path_view", json!({})).await?;
    let sets: Vec<usize> = path["sessions"]
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|s| Some(s["sets"].as_array()?.len()))
        .collect();
    assert_eq!(sets, [1, 3], "today's set, and yesterday's three");
    window.close().await
}

#[tokio::test]
async fn after_a_missed_week_the_next_session_stands_there_without_a_word_of_blame() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::days(12);
    let plan = plan("Wren", "Ash", begun, |_| ())?;
    trained(scratch.path(), &plan, begun, &[(begun, None), (now() - Duration::days(10), None)])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::until_card(&window, "ready").await?;
    let said = window.read(&id("card-ready")).await?.text;
    assert!(said.contains("Last session:"), "{said}");
    for word in ["missed", "behind", "streak", "should have"] {
        assert!(!said.to_lowercase().contains(word), "{word}: {said}");
    }
    holds(&window, "missed-week").await?;
    job::begins_a_session(&window).await?;
    window.close().await
}

/// Another program that holds a database. Only the store's crate may name SQLite, so Python does it.
struct Held(Child);

impl Held {
    fn hold(database: &Path) -> Result<Self> {
        let script = "import sqlite3, sys
held = sqlite3.connect(sys.argv[1], isolation_level=None)
held.execute('BEGIN IMMEDIATE')
print('held', flush=True)
sys.stdin.read()
held.execute('ROLLBACK')";
        let mut child = Command::new("python3")
            .args(["-c", script])
            .arg(database)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .context("python3")?;
        let mut said = String::new();
        BufReader::new(child.stdout.take().context("its words")?).read_line(&mut said)?;
        ensure!(said.trim() == "held", "{said}");
        Ok(Self(child))
    }

    fn let_go(&mut self) -> Result<()> {
        drop(self.0.stdin.take());
        ensure!(self.0.wait()?.success(), "it let go");
        Ok(())
    }
}

#[tokio::test]
async fn a_set_that_the_disk_does_not_take_stays_on_its_card_and_is_logged_by_the_next_tap() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::days(3);
    trained(scratch.path(), &plan("Wren", "Ash", begun, |_| ())?, begun, &[])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::begins_a_session(&window).await?;
    while job::card(&window).await? == "block" || !window.has(&id("reserve-3")).await? {
        job::moves_on(&window).await?;
        if !window.has(&id("reserve-3")).await? {
            job::logs_the_set(&window, 3).await?;
        }
    }
    let before = job::done(&job::session(&window).await?);
    // Another program holds the database, as a backup or a file system without room would: no write gets through.
    let profiles = scratch.path().join("profiles");
    let profile = std::fs::read_dir(&profiles)?.next().context("a profile")??.path();
    let database = std::fs::read_dir(&profile)?
        .filter_map(|e| Some(e.ok()?.path()))
        .find(|p| p.extension().is_some_and(|e| e == "db" || e == "sqlite"))
        .context("a database")?;
    let mut other = Held::hold(&database)?;
    window.click(&id("reserve-3")).await?;
    window.until_for("document.querySelector('[data-testid=error]')", 20).await?;
    let said = window.read(&id("error")).await?.text;
    assert!(said.contains("not logged yet") && said.contains("Nothing is lost"), "{said}");
    assert_eq!(job::card(&window).await?, "work", "the card stays until the set is on the disk");
    window.picture(target("odd/no-room")?.join("390.png")).await?;
    assert_eq!(window.axe().await?, Vec::new());
    other.let_go()?;
    assert_eq!(job::done(&job::session(&window).await?), before, "nothing is counted that was not written");
    taps(&window, "reserve-3").await?;
    window.until("!document.querySelector('[data-testid=error]')").await?;
    assert_eq!(job::done(&job::session(&window).await?), before + 1);
    window.close().await
}

#[tokio::test]
async fn a_flight_across_the_date_line_in_mid_session_changes_nothing_of_it() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::days(3);
    trained(scratch.path(), &plan("Wren", "Ash", begun, |_| ())?, begun, &[])?;
    let east = Opening::new(scratch.path()).size(PHONE).environment("TZ", "Pacific/Kiritimati");
    let window = Window::open(east).await?;
    job::begins_a_session(&window).await?;
    job::moves_on(&window).await?;
    job::logs_the_set(&window, 3).await?;
    let before = job::session(&window).await?;
    window.close().await?;
    // Twenty-four hours and a day earlier by the calendar, a moment later by the clock.
    let west = Opening::new(scratch.path()).size(PHONE).environment("TZ", "Pacific/Honolulu");
    let window = Window::open(west).await?;
    let after = job::session(&window).await?;
    assert_eq!(after["run"], before["run"], "the same session");
    assert_eq!(job::done(&after), job::done(&before));
    // A rest is not a day long.
    let rest = window
        .run("return document.querySelector('[data-testid=rest-left]')?.innerText ?? '0:00';", Vec::new())
        .await?;
    let minutes: i32 = rest
        .as_str()
        .and_then(|r| r.split(':').next()?.trim_start_matches(['+', '-', '−']).parse().ok())
        .unwrap_or(99);
    assert!(minutes < 10, "{rest}");
    job::trains_the_rest(&window).await?;
    job::finishes(&window, 4, "").await?;
    let path = job::ask(&window, "path_view", json!({})).await?;
    assert_eq!(path["sessions"].as_array().map(Vec::len), Some(1));
    window.close().await
}

#[tokio::test]
async fn very_long_names_are_shown_whole_and_push_nothing_out() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let begun = now() - Duration::days(3);
    let name = "Wilhelmina-Konstantina Donaudampfschifffahrtsgesellschaftskapitän von Overbeekxx";
    assert_eq!(name.chars().count(), 80, "as long as a name may be");
    let coach = "Maximiliana".repeat(7);
    let plan = plan(&coach, name, begun, |p| {
        if let Some(programme) = &mut p.programme {
            programme.title =
                "Aufbauprogrammfürdiezeitnachdergeburtmitvielkraft und Ruhe, zweite Fassung".to_owned();
            for session in &mut programme.sessions {
                session.title =
                    "Ganzkörperkräftigungseinheit mit Kurzhanteln und Bändern am Vormittag".to_owned();
            }
        }
    })?;
    trained(scratch.path(), &plan, begun, &[(begun, None)])?;
    let window = Window::open(opening(scratch.path())).await?;
    job::until_card(&window, "ready").await?;
    holds(&window, "long-ready").await?;
    for screen in ["path", "kit", "send"] {
        window.click(&id(&format!("nav-{screen}"))).await?;
        window.find(&id(screen)).await?;
        holds(&window, &format!("long-{screen}")).await?;
    }
    window.click(&id("profile")).await?;
    window.find(&id("profile-other")).await?;
    holds(&window, "long-profile").await?;
    window.click(&id("profile-other")).await?;
    window.find(&id("start")).await?;
    holds(&window, "long-start").await?;
    // The coach has her on Desk and Roster.
    job::ask(&window, "profile_new", json!({ "name": coach, "role": "coach" })).await?;
    job::ask(&window, "client_add", json!({ "form": { "name": name, "stage": null, "intake": null } }))
        .await?;
    window.client().refresh().await?;
    window.find(&id("desk")).await?;
    holds(&window, "long-desk").await?;
    window.click(&id("nav-roster")).await?;
    window.find(&id("roster")).await?;
    holds(&window, "long-roster").await?;
    window.close().await
}
