//! The harness itself, in the real window: what every other test in the window stands on.

use anyhow::Result;
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Window};
use serde_json::json;

/// A page that reports the version has loaded, run its script, and reached the shell through a command.
#[tokio::test]
async fn the_window_opens_and_its_page_reaches_the_commands() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path())).await?;
    assert_eq!(window.client().title().await?, "Newel", "the page's title");
    let answer = call(&window, "app_view").await?;
    assert_eq!(
        answer["done"]["version"],
        env!("CARGO_PKG_VERSION"),
        "the window and its tests are of one version: {answer}"
    );
    window.close().await
}

#[tokio::test]
async fn the_page_has_no_capability_but_our_commands() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path())).await?;
    for foreign in
        ["plugin:opener|open_url", "plugin:dialog|open", "plugin:event|emit", "plugin:window|close"]
    {
        let answer = call(&window, foreign).await?;
        let reason = answer["refused"].as_str().unwrap_or_default();
        assert!(
            reason.contains("not allowed"),
            "{foreign} has to be refused by the capabilities, and answered {answer}"
        );
    }
    window.close().await
}

#[tokio::test]
async fn the_content_policy_refuses_inline_code_and_remote_addresses() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path())).await?;
    window
        .run(
            "window.refused = [];
             document.addEventListener('securitypolicyviolation', (event) => window.refused.push(event.effectiveDirective));
             const script = document.createElement('script');
             script.textContent = 'window.ranInline = true';
             document.head.append(script);
             document.body.insertAdjacentHTML('beforeend', '<p style=\"color: red\">x</p>');
             document.body.insertAdjacentHTML('beforeend', '<img src=\"https://example.org/x.png\" alt=\"\">');
             fetch('https://example.org/').catch(() => {});",
            Vec::new(),
        )
        .await?;
    window.until("window.refused.length >= 4").await?;
    let refused = window.run("return window.refused.sort();", Vec::new()).await?;
    assert_eq!(
        refused,
        json!(["connect-src", "img-src", "script-src-elem", "style-src-attr"]),
        "what was refused"
    );
    assert_eq!(
        window.run("return window.ranInline ?? null;", Vec::new()).await?,
        json!(null),
        "no inline script ran"
    );
    window.close().await
}

#[tokio::test]
async fn the_page_takes_the_size_and_the_scheme_that_is_asked_for() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    for scheme in Scheme::BOTH {
        let window = Window::open(Opening::new(scratch.path()).scheme(scheme)).await?;
        for size in [PHONE, LAPTOP] {
            window.resize(size).await?;
            let seen = window.run("return [innerWidth, innerHeight];", Vec::new()).await?;
            assert_eq!(seen, json!([size.width, size.height]), "the page's own measure");
        }
        for asked in Scheme::BOTH {
            let script = format!("return matchMedia('(prefers-color-scheme: {})').matches;", asked.name());
            let matches = window.run(&script, Vec::new()).await?;
            assert_eq!(
                matches,
                json!(asked == scheme),
                "opened {}, asked for {}",
                scheme.name(),
                asked.name()
            );
        }
        window.close().await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_killed_window_is_gone_and_opens_again_on_the_same_data() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path())).await?;
    let first = window.process().expect("an open window has a process");
    let window = window.kill_and_reopen().await?;
    let second = window.process().expect("it opened again");
    assert_ne!(first, second, "another process serves the window now");
    assert!(
        scratch.path().join("webview").is_dir(),
        "the web view's own files lie in the data folder asked for"
    );
    assert_eq!(
        call(&window, "app_view").await?["done"]["version"],
        env!("CARGO_PKG_VERSION"),
        "and it works"
    );
    window.close().await
}

/// A clean answer would mean nothing if axe-core could not find a fault: one is planted.
#[tokio::test]
async fn axe_core_finds_a_planted_fault() -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path())).await?;
    window
        .run("document.body.insertAdjacentHTML('beforeend', '<button id=\"planted\"></button>');", Vec::new())
        .await?;
    let found = window.axe().await?;
    assert!(
        found
            .iter()
            .any(|one| one.rule == "button-name" && one.elements.iter().any(|html| html.contains("planted"))),
        "a button without a name has to be found: {found:?}"
    );
    window.close().await
}

/// Calls a command as the page's bridge does, and gives back `{done}` or `{refused}`.
async fn call(window: &Window, command: &str) -> Result<serde_json::Value> {
    window
        .run(
            "window.answer = undefined;
             window.__TAURI_INTERNALS__.invoke(arguments[0]).then(
                (done) => { window.answer = { done }; },
                (refused) => { window.answer = { refused }; });",
            vec![json!(command)],
        )
        .await?;
    window.until("window.answer !== undefined").await?;
    window.run("return window.answer;", Vec::new()).await
}
