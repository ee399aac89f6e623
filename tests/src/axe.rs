//! axe-core, run inside the page under its own strict content policy.

use anyhow::{Context, Result, ensure};
use serde_json::Value;

use crate::place::repository;
use crate::window::Window;

/// One rule that the screen breaks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Violation {
    /// axe-core's name of the rule.
    pub rule: String,
    /// From `minor` to `critical`.
    pub impact: String,
    /// The elements that break it, as HTML.
    pub elements: Vec<String>,
}

/// Runs axe-core and gives every violation, of any grade. Its answer comes by a promise, so it is put on the window and
/// asked for: a script given to execute/sync must not wait.
pub(crate) async fn all(window: &Window) -> Result<Vec<Violation>> {
    let path = repository().join("ui/node_modules/axe-core/axe.min.js");
    let source =
        std::fs::read_to_string(&path).with_context(|| format!("{} (npm ci in ui)", path.display()))?;
    window.run(&format!("if (!window.axe) {{ {source} }}"), Vec::new()).await.map_err(|reason| {
        // The script is half a megabyte: the reason without it.
        anyhow::anyhow!("axe-core did not load: {}", reason.root_cause())
    })?;
    window
        .run(
            "window.axeAnswer = undefined;
             window.axe.run(document, { resultTypes: ['violations', 'passes'] }).then(
                (answer) => { window.axeAnswer = { violations: answer.violations, passes: answer.passes.length }; },
                (reason) => { window.axeAnswer = { reason: String(reason) }; });",
            Vec::new(),
        )
        .await?;
    window.until("window.axeAnswer !== undefined").await?;
    let answer = window.run("return window.axeAnswer;", Vec::new()).await?;
    ensure!(answer["reason"].is_null(), "axe-core did not run: {}", answer["reason"]);
    ensure!(answer["passes"].as_u64().unwrap_or(0) > 0, "axe-core looked at nothing: not one rule passed");
    let all = answer["violations"].as_array().context("axe-core lists violations")?;
    Ok(all.iter().map(violation).collect())
}

fn violation(found: &Value) -> Violation {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let nodes = found["nodes"].as_array().map(Vec::as_slice).unwrap_or_default();
    Violation {
        rule: text(&found["id"]),
        impact: text(&found["impact"]),
        elements: nodes.iter().map(|node| text(&node["html"])).collect(),
    }
}
